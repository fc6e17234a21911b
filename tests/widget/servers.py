"""What the widget's tests stand on: the API as a process on a port of its own, and pages of another origin with a strict policy."""

import http.server
import os
import signal
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from functools import partial
from pathlib import Path
from threading import Thread

import httpx

ROOT = Path(__file__).parents[2]


def free_port() -> int:
    """A port that nobody listens on."""
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port: int = probe.getsockname()[1]
        return port


class Api:
    """The API as a process that can be stopped and started again on its port."""

    def __init__(self) -> None:
        self.port = free_port()
        self.url = f"http://127.0.0.1:{self.port}"
        self.process: subprocess.Popen[bytes] | None = None

    def start(self) -> None:
        """Start it and wait until it answers."""
        command = [sys.executable, "-m", "granian", "--interface", "asgi", "--http", "1", "--no-ws", "--host", "127.0.0.1", "--port", str(self.port)]
        self.process = subprocess.Popen(
            [*command, "anchorcalc_api:app"], cwd=ROOT, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, env=os.environ
        )
        for _ in range(300):
            try:
                if httpx.get(f"{self.url}/health", timeout=2.0).is_success:
                    return
            except httpx.TransportError:
                time.sleep(0.1)
        raise RuntimeError("the server did not answer")

    def stop(self) -> None:
        """Stop it."""
        if self.process is not None:
            self.process.send_signal(signal.SIGTERM)
            self.process.wait(timeout=20)
            self.process = None


class _Page(http.server.BaseHTTPRequestHandler):
    def __init__(self, *args: object, body: str, policy: str) -> None:
        self.body, self.policy = body.encode(), policy
        super().__init__(*args)  # type: ignore[arg-type]

    def do_GET(self) -> None:
        self.send_response(200)
        self.send_header("Content-Type", "text/html; charset=utf-8")
        self.send_header("Content-Security-Policy", self.policy)
        self.send_header("Content-Length", str(len(self.body)))
        self.end_headers()
        self.wfile.write(self.body)

    def log_message(self, format: str, *args: object) -> None:
        pass


@contextmanager
def running(server: http.server.ThreadingHTTPServer) -> Iterator[str]:
    """The address of a server that runs until the block is left."""
    thread = Thread(target=server.serve_forever, kwargs={"poll_interval": 0.05})
    thread.start()
    try:
        yield f"http://127.0.0.1:{server.server_address[1]}/"
    finally:
        server.shutdown()
        thread.join()
        server.server_close()


@contextmanager
def page(body: str, *, policy: str) -> Iterator[str]:
    """The address of one page."""
    with running(http.server.ThreadingHTTPServer(("127.0.0.1", 0), partial(_Page, body=body, policy=policy))) as address:
        yield address
