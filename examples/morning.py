"""A morning in the boat Skarv, asked by all three doors: Python, the command, and HTTP.

`python examples/morning.py` asks a dozen things that a skipper settles between breakfast and the anchor, and checks that the doors agree.
The server it starts listens on this machine alone, and is stopped at the end.
"""

import json
import socket
import subprocess
import sys
import time
import urllib.error
import urllib.parse
import urllib.request
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import anchorcalc

BOAT = Path(__file__).with_name("skarv.toml")
TIDE = {"low_height": "0.4 m", "low_at": "06:10", "high_height": "3.1 m", "high_at": "12:25"}


def by_python(boat: dict[str, Any]) -> Iterator[anchorcalc.Answer]:
    """Typed calls; results go from one question into the next."""
    tide = anchorcalc.tide_at(**TIDE, at="08:40")
    yield tide
    depth = anchorcalc.true_depth(reading="4.6 m", reads_from="transducer", boat=boat)
    yield depth
    rode = anchorcalc.rode_to_let_out(depth=depth.results.depth, tide_rise=tide.results.tide_rise, scope=5, boat=boat)
    yield rode
    out = rode.results.rode_out
    yield anchorcalc.where_to_drop(rode_out=out, depth=depth.results.depth, boat=boat)
    yield anchorcalc.swing_clearance(
        rode_out=out,
        depth=depth.results.depth,
        tide_fall=tide.results.tide_fall,
        distance="90 m",
        margin="10 m",
        boat_length=boat["boat_length"],
        boat=boat,
    )
    yield anchorcalc.when_to_veer(rode_out="38 m", depth=depth.results.depth, **TIDE, at="08:40", boat=boat)
    yield anchorcalc.scope_now(rode_out=out, depth=depth.results.depth, tide_rise=tide.results.tide_rise, boat=boat)


def by_command() -> Iterator[str]:
    """The command: a question by name, one in plain words, both with the boat file; the first line is the headline."""
    for words in (
        ["rode_to_let_out", "--depth", "5.1 m", "--scope", "5", "--tide-rise", "1.6 m"],
        ["how much rode in 5.1 m of water with 1.6 m of tide still to come, at 5:1?"],
        ["deepest_anchorage", "--scope", "5:1", "--tide-rise", "1.6 m"],
    ):
        done = subprocess.run([sys.executable, "-m", "anchorcalc", *words, "--boat", str(BOAT)], capture_output=True, text=True, check=True)
        yield done.stdout.splitlines()[0]


@contextmanager
def server() -> Iterator[str]:
    """Start the server on a free port of this machine, and stop it afterwards."""
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    process = subprocess.Popen(
        [sys.executable, "-m", "anchorcalc", "serve", "--port", str(port)], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL
    )
    try:
        yield f"http://127.0.0.1:{port}"
    finally:
        process.terminate()
        process.wait(timeout=20)


def got(url: str, body: dict[str, Any] | None = None) -> Any:
    """Return the JSON of a reply; the server is given some seconds to come up."""
    request = urllib.request.Request(url, data=json.dumps(body).encode() if body else None, headers={"Content-Type": "application/json"})
    for _ in range(300):
        try:
            with urllib.request.urlopen(request, timeout=20) as reply:
                return json.load(reply)
        except urllib.error.HTTPError as problem:
            return json.load(problem)
        except urllib.error.URLError:
            time.sleep(0.1)
    raise SystemExit("the server did not come up")


def by_http(address: str) -> Iterator[dict[str, Any]]:
    """The REST layer: by query, by body, in plain words, and what it says to an input that will not do."""
    query = urllib.parse.urlencode({"depth": "5.1 m", "bow_height": "1.1 m", "scope": "5", "tide_rise": "1.6 m"})
    yield got(f"{address}/v1/rode-to-let-out?{query}")
    yield got(f"{address}/v1/scope-now", {"rode_out": "39 m", "depth": {"value": 5.1, "unit": "m"}, "bow_height": "1.1 m"})
    yield got(f"{address}/v1/ask?" + urllib.parse.urlencode({"text": "how much rode in 5.1 m of water, bow 1.1 m up, at 5:1?"}))
    yield got(f"{address}/v1/rode-to-let-out?depth=5.1")


def main() -> int:
    """Ask by every door, and compare."""
    boat = anchorcalc.load_boat(BOAT)
    print("Python")
    for answer in by_python(boat):
        print(f"  {answer.question}: {answer.headline}")
    print("The command")
    lines = list(by_command())
    print(*(f"  {line}" for line in lines), sep="\n")
    print("HTTP")
    with server() as address:
        replies = list(by_http(address))
    for reply in replies:
        print(f"  {reply.get('headline') or reply.get('detail')}")
    python = anchorcalc.rode_to_let_out(depth="5.1 m", bow_height="1.1 m", scope=5, tide_rise="1.6 m").headline
    agree = lines[0] == lines[1] == replies[0]["headline"] == python
    print("The doors agree." if agree else "The doors do not agree.")
    return 0 if agree else 1


if __name__ == "__main__":
    sys.exit(main())
