"""Abuse on the loopback, for a bounded time: `python -m tests.api.abuse [SECONDS]`, 120 where nothing is said.

Malformed HTTP, oversized and slow requests, floods of connections, clients that hang up. All the while one client that behaves must be
answered, and at the end the memory of the server must be where it was once all kinds of abuse had been met.
"""

import asyncio
import json
import random
import statistics
import sys
import time
from collections import Counter
from collections.abc import Awaitable, Callable
from pathlib import Path
from typing import NamedTuple

import httpx

from tests.api.server import Server, served

GOOD = "/v1/rode-to-let-out?depth=4+m&bow_height=1+m"
POST = b"POST /v1/rode-to-let-out HTTP/1.1\r\nHost: a.test\r\nContent-Type: application/json\r\n"
WARM = 0.35  # part of the time after which memory must have stopped growing
MAY_GROW = 24.0  # MiB


class Raw(NamedTuple):
    """A connection that says what it likes."""

    reader: asyncio.StreamReader
    writer: asyncio.StreamWriter


Attack = Callable[[int, random.Random], Awaitable[str]]
_last_slow: list[asyncio.Task[None]] = []


async def _connect(port: int) -> Raw:
    return Raw(*await asyncio.wait_for(asyncio.open_connection("127.0.0.1", port), 10))


async def _said(raw: Raw, *parts: bytes) -> str:
    """Send parts, and return the status that comes, or that the connection was closed."""
    try:
        for part in parts:
            raw.writer.write(part)
            await asyncio.wait_for(raw.writer.drain(), 10)
        line = await asyncio.wait_for(raw.reader.readline(), 10)
        return line[9:12].decode("latin-1") or "closed"
    except (ConnectionError, TimeoutError):
        return "closed"
    finally:
        raw.writer.close()


async def malformed(port: int, chance: random.Random) -> str:
    """Say what is no HTTP."""
    lines = (
        b"\x00\xff\xfe garbage\r\n\r\n", b"GET\r\n\r\n", b"GET / HTTP/9.9\r\n\r\n", b"GET /v1/ask?text=\x80\xff HTTP/1.1\r\nHost: a\r\n\r\n",
        b"GET / HTTP/1.1\r\nHost: a\r\nHost: b\r\n\r\n", b"GET / HTTP/1.1\r\nNo colon here\r\n\r\n", b"GET / HTTP/1.1\r\nContent-Length: -5\r\n\r\n",
        POST + b"Content-Length: 5\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n", POST + b"Transfer-Encoding: chunked\r\n\r\nzz\r\nxx\r\n",
        b"\x16\x03\x01\x02\x00\x01\x00\x01\xfc\x03\x03" + chance.randbytes(200), chance.randbytes(500) + b"\r\n\r\n",
    )  # fmt: skip
    return await _said(await _connect(port), chance.choice(lines))


async def oversized(port: int, chance: random.Random) -> str:
    """Send more than is taken: of headers, of a query, of a body."""
    much = b"x" * chance.randint(70_000, 1_500_000)
    parts = chance.choice(
        (
            (b"GET / HTTP/1.1\r\nHost: a\r\nX-Long: " + much[:300_000] + b"\r\n\r\n",),
            (b"GET /v1/ask?text=" + much[:60_000] + b" HTTP/1.1\r\nHost: a\r\n\r\n",),
            (b"GET / HTTP/1.1\r\nHost: a\r\n" + b"X-Many: y\r\n" * 3000 + b"\r\n",),
            (POST + b"Content-Length: %d\r\n\r\n" % len(much), much),
            (POST + b"Transfer-Encoding: chunked\r\n\r\n", *(b"10000\r\n" + b"x" * 65536 + b"\r\n" for _ in range(12)), b"0\r\n\r\n"),
        )
    )
    return await _said(await _connect(port), *parts)


async def confusing(port: int, chance: random.Random) -> str:
    """Send well-formed HTTP whose content is meant to hurt."""
    unlike = chance.randbytes(25_000).hex().encode()  # never the same twice: nothing that is remembered may grow with it
    marks = b";".join(b"%d" % chance.randint(1, 9_999_999) for _ in range(1400))
    bodies = (
        b"[" * 60_000,
        b'{"a":' * 10_000,
        b'{"depth": 1' + b"0" * 60_000 + b"}",
        b'{"depth": "' + unlike + b' m"}',
        b'{"depth": "9**9**9 m"}',
        b"{" + b",".join(b'"k%d": 1' % number for number in range(5000)) + b"}",
        b'{"depth": "4 m", "marks": [' + b'"1 m",' * 9000 + b'"2 m"]}',
        b'{"depth": "4 m", "marks": "' + marks + b' m"}',
        b'{"depth": "4 m", "' + unlike[:40_000] + b'": 1}',
        b'{"depth": "4 m", "marks_from": "' + unlike + b'"}',
        chance.randbytes(5000),
        b'{"depth": "' + "\u0662\u0663 m\ud7ff".encode() * 2000 + b'"}',
        b'{"depth": {"si": 1e308, "unit": "m"}, "scope": 1e308}',
    )
    body = chance.choice(bodies)
    return await _said(await _connect(port), POST + b"Content-Length: %d\r\n\r\n" % len(body), body)


async def slow(port: int, chance: random.Random) -> str:
    """Begin a request and go on as slowly as can be: the head or the body, a byte at a time."""
    raw = await _connect(port)
    start = chance.choice((b"GET / HTTP/1.1\r\nHost: a\r\nX-", POST + b"Content-Length: 5000\r\n\r\n", b""))

    async def drip() -> None:
        try:
            raw.writer.write(start)
            for _ in range(chance.randint(5, 40)):
                raw.writer.write(b"y")
                await raw.writer.drain()
                await asyncio.sleep(1.0)
        except ConnectionError:
            pass
        finally:
            raw.writer.close()

    if len(_last_slow) >= 300:
        _last_slow.pop(0).cancel()
    _last_slow.append(asyncio.create_task(drip()))
    return "left dripping"


async def hung_up(port: int, chance: random.Random) -> str:
    """Ask and hang up without reading, or before all is said."""
    raw = await _connect(port)
    whole = f"GET {GOOD} HTTP/1.1\r\nHost: a\r\n\r\n".encode() * chance.randint(1, 50)
    raw.writer.write(whole[: chance.randint(1, len(whole))])
    raw.writer.transport.abort()
    return "hung up"


async def flood(port: int, chance: random.Random) -> str:
    """Open many connections at once that say nothing, and drop them."""
    found = await asyncio.gather(*(asyncio.open_connection("127.0.0.1", port) for _ in range(chance.randint(20, 120))), return_exceptions=True)
    await asyncio.sleep(chance.random())
    for one in found:
        if isinstance(one, tuple):
            one[1].close()
    return "dropped"


ATTACKS: tuple[Attack, ...] = (malformed, oversized, confusing, slow, hung_up, flood)


async def attack(port: int, until: float, seed: int, seen: Counter[str]) -> None:
    """Abuse the server in one way after another."""
    chance = random.Random(seed)
    while time.monotonic() < until:
        kind = chance.choice(ATTACKS)
        try:
            came = await kind(port, chance)
        except (OSError, TimeoutError) as error:
            came = type(error).__name__
        seen[f"{kind.__name__}: {came}"] += 1


async def behave(url: str, until: float, waits: list[float], wrong: list[str]) -> None:
    """Ask as one should, ten times a second."""
    async with httpx.AsyncClient(timeout=60.0) as client:
        while time.monotonic() < until:
            began = time.monotonic()
            try:
                answer = await client.get(f"{url}{GOOD}")
                if answer.status_code != 200:
                    wrong.append(f"{answer.status_code} {answer.text[:200]}")
            except httpx.HTTPError as error:
                wrong.append(repr(error))
            waits.append(time.monotonic() - began)
            await asyncio.sleep(0.1)


def memory(server: Server) -> float:
    """Return the resident memory of the server's workers [MiB]."""
    total = 0
    for folder in Path("/proc").iterdir():
        if folder.name.isdigit():
            try:
                parent = (folder / "stat").read_text().rpartition(")")[2].split()[1]
                if int(parent) == server.process.pid:
                    total += int((folder / "statm").read_text().split()[1]) * 4096
            except OSError:
                continue
    return total / 2**20


async def watched(server: Server, until: float, held: list[float]) -> None:
    """Look at the memory twice a second."""
    while time.monotonic() < until:
        held.append(memory(server))
        began = time.monotonic()
        await asyncio.sleep(0.5)
        if time.monotonic() - began > 2.0:
            print(f"this script itself stood still for {time.monotonic() - began:.1f} s", file=sys.stderr)


async def abused(server: Server, seconds: float) -> dict[str, object]:
    """Abuse a server for a while, and return what was seen."""
    began = time.monotonic()
    until = began + seconds
    seen: Counter[str] = Counter()
    waits: list[float] = []
    wrong: list[str] = []
    held: list[float] = []
    attackers = [attack(server.port, until, seed, seen) for seed in range(12)]
    await asyncio.gather(*attackers, behave(server.url, until, waits, wrong), watched(server, until, held))
    for one in _last_slow:
        one.cancel()
    warm = statistics.median(held[int(len(held) * WARM) :][:10])
    end = statistics.median(held[-10:])
    return {
        "seconds": round(time.monotonic() - began), "abuses": sum(seen.values()), "by kind": dict(seen.most_common()),
        "good requests": len(waits), "not answered": wrong[:5], "median wait [ms]": round(1000 * statistics.median(waits), 1),
        "longest wait [ms]": round(1000 * max(waits), 1), "memory at start, warm, end [MiB]": [round(held[0], 1), round(warm, 1), round(end, 1)],
        "holds": not wrong and end - warm < MAY_GROW and server.process.poll() is None,
    }  # fmt: skip


def main(arguments: list[str]) -> int:
    """Run, and print what was seen."""
    with served(body_seconds="5") as server:
        found = asyncio.run(abused(server, float(arguments[0]) if arguments else 120.0))
    print(json.dumps(found, indent=2))
    return 0 if found["holds"] else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
