"""Serve the application with Granian: what `anchorcalc serve` runs."""

from granian import Granian
from granian.constants import Interfaces
from granian.http import HTTP1Settings


def serve(*, host: str, port: int, workers: int) -> None:
    """Serve until told to stop; requests in flight are finished first."""
    Granian(
        "anchorcalc_api:app",
        address=host,
        port=port,
        interface=Interfaces.ASGI,
        workers=workers,
        websockets=False,
        http1_settings=HTTP1Settings(header_read_timeout=10_000),  # [ms]: slow clients do not hold a connection
        workers_kill_timeout=30,  # [s]: nor do they hold up a stop
        log_access=False,  # the application writes its own log, without positions and texts
    ).serve()
