"""A chandler's shop page with the widget on it: starts the API and the page's own server, each on its origin.

python examples/chandlery/shop.py, then open http://127.0.0.1:8100/
"""

import argparse
import subprocess
import sys
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

HERE = Path(__file__).parent
# The hash of version 1 of the widget, as `GET /widget` of the server says it. A page that names it runs that script and no other.
INTEGRITY = "sha384-5IT9QrhB8l3I6v3W5cQqnc1XEfcjR1WIocBwxDYXQQyf1WT1C1jFhTtzCn/hi1XF"


def policy(api: str) -> str:
    """Return a content policy that lets in the page's own files and the API, and nothing written inline."""
    return (
        f"default-src 'none'; script-src 'self' {api}; connect-src {api}; style-src 'self'; img-src 'self' data:; "
        "base-uri 'none'; form-action 'none'; frame-ancestors 'none'; require-trusted-types-for 'script'"
    )


class Page(SimpleHTTPRequestHandler):
    """Serves the files beside this one, with the strict policy."""

    def __init__(self, *args: object, api: str, **rest: object) -> None:
        self.api = api
        super().__init__(*args, directory=str(HERE), **rest)  # type: ignore[arg-type]

    def end_headers(self) -> None:
        """Add the policy to every response."""
        self.send_header("Content-Security-Policy", policy(self.api))
        self.send_header("X-Content-Type-Options", "nosniff")
        super().end_headers()

    def do_GET(self) -> None:
        """Serve the page with the API's address in it, and other files as they are."""
        if self.path not in ("/", "/index.html"):
            super().do_GET()
            return
        body = (HERE / "index.html").read_text(encoding="utf-8").replace("{{api}}", self.api).replace("{{integrity}}", INTEGRITY).encode()
        self.send_response(200)
        self.send_header("Content-Type", "text/html; charset=utf-8")
        self.send_header("Content-Length", str(len(body)))
        self.end_headers()
        self.wfile.write(body)

    def log_message(self, format: str, *args: object) -> None:
        """Say nothing."""


def page_server(*, api: str, port: int) -> ThreadingHTTPServer:
    """Return the server of the page, bound to a port (0: any that is free)."""
    return ThreadingHTTPServer(("127.0.0.1", port), partial(Page, api=api))


def main() -> None:
    """Serve until interrupted."""
    parser = argparse.ArgumentParser(description="A chandler's shop page with the widget on it.")
    parser.add_argument("--port", type=int, default=8100, help="port of the page; the API takes the next")
    port = parser.parse_args().port
    api = f"http://127.0.0.1:{port + 1}"
    served = subprocess.Popen([sys.executable, "-m", "anchorcalc", "serve", "--port", str(port + 1)])
    try:
        print(f"The shop is open at http://127.0.0.1:{port}/ (the API at {api}); Ctrl-C closes it.")
        page_server(api=api, port=port).serve_forever()
    except KeyboardInterrupt:
        pass
    finally:
        served.terminate()
        served.wait(timeout=10)


if __name__ == "__main__":
    main()
