"""Serve the application with Granian: what `anchorcalc serve` runs."""

from granian import Granian
from granian.constants import Interfaces


def serve(*, host: str, port: int, workers: int) -> None:
    """Serve until told to stop; requests in flight are finished first."""
    Granian(
        "anchorcalc_api:app",
        address=host,
        port=port,
        interface=Interfaces.ASGI,
        workers=workers,
        log_access=False,  # the application writes its own log, without positions and texts
    ).serve()
