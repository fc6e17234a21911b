"""Counts and times of requests, for Prometheus; needs the package `prometheus-client`."""

import os
from functools import cache
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from prometheus_client import Counter, Histogram


@cache
def _instruments() -> tuple["Counter", "Histogram"]:
    from prometheus_client import Counter, Histogram

    labels = ("method", "route", "status")
    return (
        Counter("anchorcalc_requests", "Requests answered", labels),
        Histogram("anchorcalc_request_seconds", "Time to answer", labels[:2], buckets=(0.0005, 0.001, 0.0025, 0.005, 0.01, 0.025, 0.1, 0.5, 2.5)),
    )


class Counts:
    """Counts by method, route and status; with several workers they are joined where PROMETHEUS_MULTIPROC_DIR is set."""

    def __init__(self) -> None:
        self.requests, self.seconds = _instruments()

    def add(self, *, method: str, route: str, status: int, seconds: float) -> None:
        """Count a request."""
        self.requests.labels(method, route, str(status)).inc()
        self.seconds.labels(method, route).observe(seconds)


def exposition() -> tuple[bytes, str]:
    """Return all counts as text, and its media type."""
    from prometheus_client import CONTENT_TYPE_LATEST, REGISTRY, CollectorRegistry, generate_latest
    from prometheus_client.multiprocess import MultiProcessCollector

    registry = REGISTRY
    if "PROMETHEUS_MULTIPROC_DIR" in os.environ:
        registry = CollectorRegistry()
        MultiProcessCollector(registry)  # type: ignore[no-untyped-call]
    return generate_latest(registry), CONTENT_TYPE_LATEST
