"""The REST layer: HTTP only, no arithmetic.

`anchorcalc_api.app` is the ASGI application, set up by the environment; `create_app(...)` makes one with options of one's own.

Serving
-------
`granian --interface asgi --workers 2 anchorcalc_api:app`, or `anchorcalc serve`. Workers share nothing: any number will do, one a core is
enough. A rate limit counts in each worker. On SIGTERM requests in flight are finished.

Options
-------
See `anchorcalc_api.options.Options`; each is a keyword of `create_app` and an environment variable (`rate_per_minute=600` is
`ANCHORCALC_RATE_PER_MINUTE=600`).

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
