"""What tests of the REST layer stand on: a client in process, and the application under Granian in a process of its own."""

import asyncio
import os
import signal
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any, NamedTuple

import httpx

ROOT = Path(__file__).parents[2]


class _InProcess(httpx.BaseTransport):
    """Runs each request of a plain client through an ASGI application."""

    def __init__(self, app: Any) -> None:
        self.inner = httpx.ASGITransport(app=app)

    def handle_request(self, request: httpx.Request) -> httpx.Response:
        """Answer a request."""

        async def answered() -> httpx.Response:
            async with httpx.AsyncClient(transport=self.inner) as client:
                response = await client.send(request, stream=True)
                body = b"".join([part async for part in response.aiter_raw()])
            return httpx.Response(response.status_code, headers=response.headers, stream=httpx.ByteStream(body))

        return asyncio.run(answered())


def client_of(app: Any) -> httpx.Client:
    """Return a client that talks to an application in process, and asks for no compression."""
    return httpx.Client(transport=_InProcess(app), base_url="http://anchorage.test", headers={"Accept-Encoding": "identity"})


class Server(NamedTuple):
    """A server process: where it listens, and what it has said."""

    url: str
    port: int
    process: subprocess.Popen[bytes]
    log: Path


def _free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port: int = probe.getsockname()[1]
        return port


@contextmanager
def served(*, target: str = "anchorcalc_api:app", workers: int = 1, **options: str) -> Iterator[Server]:
    """Serve the application under Granian until the block is left; options are those of the environment."""
    with TemporaryDirectory() as folder:
        log = Path(folder) / "server.log"
        port = _free_port()
        environment = os.environ | {f"ANCHORCALC_{name.upper()}": value for name, value in options.items()}
        command = [sys.executable, "-m", "granian", "--interface", "asgi", "--http", "1", "--no-ws", "--host", "127.0.0.1", "--port", str(port)]
        command += ["--workers", str(workers), "--workers-kill-timeout", "15", target]
        with log.open("wb") as out:
            process = subprocess.Popen(command, stdout=out, stderr=out, cwd=ROOT, env=environment)
        try:
            found = Server(f"http://127.0.0.1:{port}", port, process, log)
            _wait(found)
            yield found
        finally:
            if process.poll() is None:
                process.send_signal(signal.SIGTERM)
            process.wait(timeout=40)


def _wait(server: Server) -> None:
    for _ in range(300):
        if server.process.poll() is not None:
            raise RuntimeError(f"the server did not start: {server.log.read_text()}")
        try:
            httpx.get(f"{server.url}/health", timeout=2.0)
            return
        except httpx.TransportError:
            time.sleep(0.1)
    raise RuntimeError(f"the server did not answer: {server.log.read_text()}")
