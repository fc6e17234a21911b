"""A table of a million rows through the server, and single questions meanwhile: ``python -m tests.benchmarks.fleet_http [--rows 1000000]``.

Both p99 are of the same client against the same server process, the one just before the table is sent.
"""

import argparse
import subprocess
import sys
import threading
import time
from pathlib import Path

import httpx
import numpy as np

from tests.api.server import Server, served

SINGLE = "/v1/rode-to-let-out?depth=4+m&bow_height=1+m"
IDLE_SECONDS, PAUSE = 5.0, 0.005


_CLIENT = """
import sys, httpx
with httpx.stream("POST", sys.argv[1], content=sys.stdin.buffer.read(), headers={"Content-Type": "text/csv"}, timeout=300) as got:
    print(sum(part.count(b"\\n") for part in got.raise_for_status().iter_raw()))
"""  # in a process of its own, so that its work does not slow the single questions' client


def single_times(server: Server, *, until: threading.Event) -> list[float]:
    """Return how long single questions took until an event, in ms, one after the other with a pause between."""
    taken = []
    with httpx.Client(base_url=server.url) as client:
        while not until.is_set():
            began = time.perf_counter()
            client.get(SINGLE).raise_for_status()
            taken.append((time.perf_counter() - began) * 1e3)
            time.sleep(PAUSE)
    return taken


def peak_memory(server: Server) -> float:
    """Return the most memory that a process of the server has held, in MB."""
    pids = [server.process.pid, *(int(pid) for pid in Path(f"/proc/{server.process.pid}/task/{server.process.pid}/children").read_text().split())]
    peaks = [next(line for line in Path(f"/proc/{pid}/status").read_text().splitlines() if line.startswith("VmHWM")) for pid in pids]
    return max(int(peak.split()[1]) for peak in peaks) / 1024


def main() -> None:
    """Measure it."""
    options = argparse.ArgumentParser()
    options.add_argument("--rows", type=int, default=1_000_000)
    rows = options.parse_args().rows
    rng = np.random.default_rng(1)
    numbers = np.round(rng.uniform(2.0, 9.0, (rows, 3)), 1)
    body = b"depth [m],bow_height [m],scope\n" + b"".join(b"%.1f,%.1f,%.1f\n" % tuple(row) for row in numbers.tolist())
    with served() as server:
        idle_over = threading.Event()
        threading.Timer(IDLE_SECONDS, idle_over.set).start()
        idle = single_times(server, until=idle_over)
        done, received = threading.Event(), [0, 0.0]

        def table() -> None:
            began = time.perf_counter()
            url = f"{server.url}/v1/fleet/rode-to-let-out"
            got = subprocess.run([sys.executable, "-c", _CLIENT, url], input=body, capture_output=True, check=True)
            received[:] = [int(got.stdout), time.perf_counter() - began]
            done.set()

        threading.Thread(target=table).start()
        meanwhile = single_times(server, until=done)
        memory = peak_memory(server)
    assert received[0] == rows + 1, received
    print(f"{rows:,} rows of CSV, {len(body) / 1e6:.0f} MB: {received[1]:.1f} s, the server held {memory:.0f} MB at most")
    p99 = {name: float(np.percentile(times, 99)) for name, times in (("idle", idle), ("meanwhile", meanwhile))}
    said = ", ".join(f"{name} {p99[name]:.1f} ms ({len(times)})" for name, times in (("idle", idle), ("meanwhile", meanwhile)))
    print(f"single questions, p99: {said}: {p99['meanwhile'] / p99['idle']:.1f}")


if __name__ == "__main__":
    main()
