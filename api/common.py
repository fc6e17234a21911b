"""What all routes share: paths, OPTIONS, and the choice of a form."""

from litestar.handlers import HTTPRouteHandler, route
from litestar.types import ASGIApp

from anchorcalc.errors import fault

from .negotiation import JSON, SVG, Wishes, media_type
from .problems import Refused
from .reply import empty

_OFFERED = {False: (JSON,), True: (JSON, SVG)}


def path_of(name: str) -> str:
    """Return the path of a question: hyphens for underscores."""
    return f"/v1/{name.replace('_', '-')}"


def options_handler(path: str, *methods: str) -> HTTPRouteHandler:
    """Return the handler of OPTIONS on a path; the framework's own knows only the first handler of a path."""
    allow = [(b"allow", ", ".join((*methods, "OPTIONS")).encode()), (b"content-length", b"0")]

    @route(path, http_method="OPTIONS", sync_to_thread=False)
    def allowed() -> ASGIApp:
        return empty(headers=allow)

    return allowed


def wanted(wish: Wishes, *, picture: bool) -> str:
    """Return the media type that a client wants most, or refuse to give it what it would not take."""
    if wish.accept in (b"", b"*/*", b"application/json"):
        return JSON
    offered = _OFFERED[picture]
    found = media_type(accept=wish.accept, offered=offered)
    if found is None:
        one = fault("Accept", "not_acceptable", wish.accept.decode("latin-1"), "asks for no form that this answer has", " or ".join(offered))
        raise Refused(406, one)
    return found
