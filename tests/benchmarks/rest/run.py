"""How fast the REST layer answers, beside a bare echo: `python -m tests.benchmarks.rest.run [ROUNDS] [SECONDS]`.

Needs `wrk`. Echo and application stand on the same server, one worker each, and take turns: first requests as fast as they come, then at
half of the echo's top rate for the latency; at last one worker stands beside two. Two figures are given: the ratio of rates, and that of
processor time a request (echo over application), which other work on the machine disturbs less.
"""

import os
import re
import statistics
import subprocess
import sys
from pathlib import Path
from typing import NamedTuple

import httpx

from tests.api.server import Server, served

HERE = Path(__file__).parent
ROUTE = "/v1/rode-to-let-out"
CONNECTIONS, PACED_CONNECTIONS = 16, 64
TICKS = os.sysconf("SC_CLK_TCK")


class Load(NamedTuple):
    """A kind of request, of the application or of the echo."""

    name: str
    mode: str
    path: str
    extra: str = ""


class Measured(NamedTuple):
    """What one round gave: requests a second, processor time a request [µs], and the 99th percentile of the latency [ms]."""

    rate: float
    processor: float
    p99: float


def processor_seconds(server: Server) -> float:
    """Return the processor time that the server and its worker have used."""
    total = 0
    for folder in Path("/proc").iterdir():
        if folder.name.isdigit():
            try:
                fields = (folder / "stat").read_text().rpartition(")")[2].split()
            except OSError:
                continue
            if server.process.pid in (int(folder.name), int(fields[1])):
                total += int(fields[11]) + int(fields[12])
    return total / TICKS


def round_of(server: Server, load: Load, *, seconds: int, pause: int = 0) -> Measured:
    """Send requests for a while."""
    connections, script = (PACED_CONNECTIONS, "paced.lua") if pause else (CONNECTIONS, "ask.lua")
    command = [
        "wrk",
        "-t1",
        f"-c{connections}",
        f"-d{seconds}s",
        "--latency",
        "-s",
        str(HERE / script),
        server.url,
        "--",
        load.mode,
        load.path,
        load.extra,
    ]
    before = processor_seconds(server)
    said = subprocess.run([*command, str(pause)], capture_output=True, text=True, check=True).stdout
    used = processor_seconds(server) - before
    if "Non-2xx" in said and load.mode != "kept":
        sys.exit(f"{load.name} was refused:\n{said}")
    requests = int(found(r"(\d+) requests in", said))
    return Measured(float(found(r"Requests/sec:\s+([\d.]+)", said)), used / requests * 1e6, milliseconds(found(r"\n\s+99%\s+(\S+)", said)))


def found(pattern: str, text: str) -> str:
    """Return what a pattern finds in the report of the load generator."""
    match = re.search(pattern, text)
    if match is None:
        sys.exit(f"the load generator said nothing of {pattern}:\n{text}")
    return match[1]


def milliseconds(text: str) -> float:
    """Return a time of the report in ms."""
    number, unit = re.fullmatch(r"([\d.]+)(us|ms|s)", text).groups()  # type: ignore[union-attr]
    return float(number) * {"us": 0.001, "ms": 1.0, "s": 1000.0}[unit]


def compared(name: str, ours: list[Measured], echo: list[Measured]) -> None:
    """Print how one kind of request compares with the echo, by the median of the rounds."""
    rate = statistics.median(one.rate / other.rate for one, other in zip(ours, echo, strict=True))
    processor = statistics.median(other.processor / one.processor for one, other in zip(ours, echo, strict=True))
    mine, theirs = (statistics.median(one.rate for one in every) for every in (ours, echo))
    print(f"| {name} | {mine:,.0f} | {theirs:,.0f} | {rate:.2f} | {processor:.2f} |")


GET, BARE, BOUND = Load("GET", "get", ROUTE, "scope"), Load("echo", "get", "/bare", "scope"), Load("echo", "get", "/bound", "ratio")
POST, BARE_POST = Load("POST", "post", ROUTE), Load("echo", "post", "/bare")
ASK = Load("GET ask", "ask", "/v1/ask")
PLAIN = {"Accept-Encoding": "identity"}


def kept_by(server: Server) -> Load:
    """Return requests for an answer that the client has."""
    path = f"{ROUTE}?depth=4+m&bow_height=1.2+m"
    return Load("GET, kept (304)", "kept", path, httpx.get(server.url + path, headers=PLAIN).headers["etag"])


def sizes(ours: Server, echo: Server) -> str:
    """Say how long an answer and an echo are."""
    query = "?depth=4.0000+m&bow_height=1.2+m&tide_rise=1.00000+m&scope=7"
    answer, other = (len(httpx.get(url + query, headers=PLAIN).content) for url in (ours.url + ROUTE, f"{echo.url}/bare"))
    return f"bytes of an answer: {answer}; of the echo: {other}"


def rates(ours: Server, echo: Server, *, rounds: int, seconds: int) -> float:
    """Measure and print how many of each kind are answered; return the echo's top rate."""
    turns = (
        (GET, BARE),
        (GET._replace(name="GET, beside the echo bound by the framework"), BOUND),
        (POST, BARE_POST),
        (kept_by(ours), BARE),
        (ASK, BARE),
    )
    mine: dict[str, list[Measured]] = {load.name: [] for load, _ in turns}
    theirs: dict[str, list[Measured]] = {load.name: [] for load, _ in turns}
    for _ in range(rounds):
        for load, other in turns:
            theirs[load.name].append(round_of(echo, other, seconds=seconds))
            mine[load.name].append(round_of(ours, load, seconds=seconds))
    print("| request | answers/s | echo/s | ratio of rates | ratio of processor time |\n| --- | --- | --- | --- | --- |")
    for load, _ in turns:
        compared(load.name, mine[load.name], theirs[load.name])
    return statistics.median(one.rate for one in theirs[GET.name])


def latencies(ours: Server, echo: Server, *, top: float, rounds: int, seconds: int) -> None:
    """Measure and print the latency at half of the echo's top rate."""
    pause = round(PACED_CONNECTIONS / (top / 2) * 1000)
    print(f"\nat half of the echo's top rate ({PACED_CONNECTIONS} connections, {pause} ms between two requests of one):")
    pairs = [[round_of(server, load, seconds=seconds, pause=pause) for server, load in ((echo, BARE), (ours, GET))] for _ in range(rounds)]
    for place, name in enumerate(("echo", "answers")):
        rate, p99 = (statistics.median(getattr(pair[place], what) for pair in pairs) for what in ("rate", "p99"))
        print(f"{name}: {rate:,.0f}/s, p99 {p99:.2f} ms")
    print(f"ratio of p99: {statistics.median(pair[1].p99 / pair[0].p99 for pair in pairs):.2f}")


def workers(*, rounds: int, seconds: int) -> None:
    """Measure and print how many more answers two workers give than one."""
    with served() as one, served(workers=2) as two:
        pairs = [[round_of(server, GET, seconds=seconds) for server in (one, two)] for _ in range(rounds)]
    alone, both = (statistics.median(pair[place].rate for pair in pairs) for place in (0, 1))
    ratio = statistics.median(pair[1].rate / pair[0].rate for pair in pairs)
    print(f"\nGET, one worker: {alone:,.0f}/s; two workers: {both:,.0f}/s, {ratio:.2f} times as many")


def main(arguments: list[str]) -> int:
    """Measure and print."""
    rounds, seconds = (int(one) for one in (arguments + ["5", "5"][len(arguments) :]))
    with served(target="tests.benchmarks.rest.echo:app") as echo, served() as ours:
        print(sizes(ours, echo))
        top = rates(ours, echo, rounds=rounds, seconds=seconds)
        latencies(ours, echo, top=top, rounds=rounds, seconds=seconds)
    workers(rounds=rounds, seconds=seconds)
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
