"""Pages and documents beside version 1: the greeting, the documentation, the OpenAPI document, health and counts."""

from functools import cache
from importlib.resources import files
from typing import Any

import msgspec
from litestar import Request
from litestar.handlers import HTTPRouteHandler, route
from litestar.types import ASGIApp

from anchorcalc.errors import fault
from anchorcalc.version import VERSION

from .common import options_handler
from .negotiation import HTML, JSON, media_type, wishes
from .options import Options
from .problems import Refused
from .reply import Reply, fixed, unkept
from .schema import document

PAGE_POLICY = (
    b"default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; font-src 'self'; base-uri 'none'; "
    b"form-action 'none'; frame-ancestors 'none'"
)
_ASSETS = {
    "swagger-ui-bundle.js": b"text/javascript; charset=utf-8",
    "swagger-ui.css": b"text/css; charset=utf-8",
    "docs.js": b"text/javascript; charset=utf-8",
    "page.css": b"text/css; charset=utf-8",
    "swagger-ui-LICENSE.txt": b"text/plain; charset=utf-8",
}
_HTML = b"text/html; charset=utf-8"
LINKS = {"questions": "v1/questions", "ask": "v1/ask", "openapi": "openapi.json", "docs": "docs", "health": "health"}
_encode = msgspec.json.Encoder().encode


def page_handlers(options: Options) -> list[HTTPRouteHandler]:
    """Return the handlers of everything that is no question. Further pages add theirs here."""
    handlers = [*_greeting(options), *_health(), *_openapi()]
    if options.docs:
        handlers += _docs()
    return [*handlers, *_metrics()] if options.metrics else handlers


@cache
def asset(name: str) -> bytes:
    """Return a file of the folder `static`."""
    return files("anchorcalc_api").joinpath("static", name).read_bytes()


def _greeting(options: Options) -> list[HTTPRouteHandler]:
    links = {name: link for name, link in LINKS.items() if name != "docs" or options.docs}
    as_json = _encode({"name": "anchorcalc", "version": VERSION, "links": links})
    listed = "".join(f'<li><a href="{link}">{name}</a></li>' for name, link in links.items() if name != "ask")
    as_html = asset("greeting.html").decode().replace("{{links}}", listed).replace("{{version}}", VERSION).encode()

    @route("/", http_method=["GET", "HEAD"], sync_to_thread=False)
    def greeting(request: Request[Any, Any, Any]) -> ASGIApp:
        wish = wishes(request.scope)
        found = media_type(accept=wish.accept, offered=(JSON, HTML))
        if found is None:
            raise Refused(
                406, fault("Accept", "not_acceptable", wish.accept.decode("latin-1"), "asks for no form that this has", f"{JSON} or {HTML}")
            )
        if found == HTML:
            return fixed(as_html, wish, media=_HTML, policy=PAGE_POLICY)
        return fixed(as_json, wish, media=JSON.encode())

    return [options_handler("/", "GET", "HEAD"), greeting]


def _health() -> list[HTTPRouteHandler]:
    body = _encode({"status": "ok", "version": VERSION})

    @route("/health", http_method=["GET", "HEAD"], sync_to_thread=False)
    def health(request: Request[Any, Any, Any]) -> ASGIApp:
        return unkept(body, wishes(request.scope), media=JSON.encode())

    return [options_handler("/health", "GET", "HEAD"), health]


@cache
def openapi_bytes() -> bytes:
    """Return the OpenAPI document as JSON."""
    return _encode(document())


def _openapi() -> list[HTTPRouteHandler]:
    @route("/openapi.json", http_method=["GET", "HEAD"], sync_to_thread=False)
    def openapi(request: Request[Any, Any, Any]) -> ASGIApp:
        body = openapi_bytes()
        return fixed(body, wishes(request.scope), media=JSON.encode())

    return [options_handler("/openapi.json", "GET", "HEAD"), openapi]


def _docs() -> list[HTTPRouteHandler]:
    @route("/docs", http_method=["GET", "HEAD"], sync_to_thread=False)
    def docs(request: Request[Any, Any, Any]) -> ASGIApp:
        body = asset("docs.html")
        return fixed(body, wishes(request.scope), media=_HTML, policy=PAGE_POLICY)

    @route("/docs/{name:str}", http_method=["GET", "HEAD"], sync_to_thread=False)
    def docs_asset(request: Request[Any, Any, Any]) -> ASGIApp:
        name = request.path_params["name"]
        if name not in _ASSETS:
            raise Refused(404, fault("path", "not_found", name, "leads nowhere", "/docs"))
        body = asset(name)
        return fixed(body, wishes(request.scope), media=_ASSETS[name], policy=PAGE_POLICY)

    return [options_handler("/docs", "GET", "HEAD"), docs, options_handler("/docs/{name:str}", "GET", "HEAD"), docs_asset]


def _metrics() -> list[HTTPRouteHandler]:
    from .counts import exposition

    @route("/metrics", http_method=["GET", "HEAD"], sync_to_thread=False)
    def metrics(request: Request[Any, Any, Any]) -> Reply:
        body, media = exposition()
        return unkept(body, wishes(request.scope), media=media.encode())

    return [options_handler("/metrics", "GET", "HEAD"), metrics]
