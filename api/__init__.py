"""The REST layer: HTTP only, no arithmetic.

`anchorcalc_api.app` is the ASGI application, set up by the environment; `create_app(...)` makes one with options of one's own.

Serving
-------
`anchorcalc serve --host 127.0.0.1 --port 8000 --workers 2`, or any ASGI server: `granian --interface asgi --workers 2 anchorcalc_api:app`.
Workers share nothing: one a core is enough. On SIGTERM requests in flight are finished; what has not ended after 30 s is broken off. Behind
a proxy let the proxy end TLS, send `Strict-Transport-Security`, and limit rates: a client is known here by its address.

Options
-------
Each is a keyword of `create_app` and an environment variable (`rate_per_minute=600` is `ANCHORCALC_RATE_PER_MINUTE=600`):

- `cors_origins` (all): who may read answers from a web page, never with credentials; separated by commas in the environment; empty: nobody.
- `docs` (true): serve `/docs`.
- `access_log` (false): a line of JSON a request to standard output: id, method, route, status, time, client; never a query or body.
- `metrics` (false): serve `/metrics` for Prometheus (needs `anchorcalc[metrics]`; with several workers set PROMETHEUS_MULTIPROC_DIR).
- `rate_per_minute` (0: no limit): requests a client and minute, counted in each worker; beyond it 429 with `Retry-After`.
- `most_query` (8192), `most_headers` (16384), `most_body` (65536), `most_fixes_body` (2 MiB, where a question takes fixes): limits in bytes.
- `body_seconds` (20): the time in which a body must have arrived.

`anchorcalc_api.options.Options` has them all, those for tables too.

Mounting
--------
Any ASGI service can mount it; links, documentation and the OpenAPI document are relative::

    from starlette.applications import Starlette
    from starlette.routing import Mount
    import anchorcalc_api

    service = Starlette(routes=[Mount("/anchor", app=anchorcalc_api.create_app(docs=False))])
"""

from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from .application import create_app
    from .front import Front

    app: Front

__all__ = ["app", "create_app"]


def __getattr__(name: str) -> Any:
    """Make the application when it is first asked for."""
    if name not in __all__:
        raise AttributeError(f"module 'anchorcalc_api' has no attribute {name!r}")
    from msgspec.structs import asdict

    from . import application, options

    found = application.create_app if name == "create_app" else application.create_app(**asdict(options.options_from_environment()))
    globals()[name] = found
    return found
