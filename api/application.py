"""The application: the routes, and what stands before them."""

from typing import Any

from litestar import Litestar

from .front import Front
from .options import options_from
from .pages import page_handlers
from .problems import EXCEPTION_HANDLERS
from .routes import route_handlers
from .widget import widget_handlers


def create_app(**options: Any) -> Front:
    """Return the application as an ASGI app, to be served or mounted in another service.

    Parameters
    ----------
    **options
        Fields of `Options`: `cors_origins`, `docs`, `access_log`, `metrics`, `rate_per_minute`, `most_query`, `most_headers`, `most_body`,
        `most_fixes_body`, `body_seconds`.

    Returns
    -------
    Front
        An ASGI application.

    Raises
    ------
    InputError
        With one fault for every option that is unknown or of the wrong kind.
    """
    chosen = options_from(options)
    inner = Litestar(
        route_handlers=[*page_handlers(chosen), *widget_handlers(), *route_handlers(chosen)],
        exception_handlers=EXCEPTION_HANDLERS,
        openapi_config=None,
        request_max_body_size=None,
        logging_config=None,
    )
    return Front(inner, chosen)
