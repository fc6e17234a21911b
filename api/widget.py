"""The widget for shops: one script under a path with its version, and the tag that brings it into a page.

A version never changes once it is released, so that the hash a page names goes on fitting: a change makes the next version, beside it.
"""

from base64 import b64encode
from functools import cache
from hashlib import sha384
from typing import Any

import msgspec
from litestar import Request
from litestar.handlers import HTTPRouteHandler, route
from litestar.types import ASGIApp

from anchorcalc.errors import fault

from .common import options_handler, wanted
from .negotiation import JSON, wishes
from .pages import asset
from .problems import Refused
from .reply import PUBLIC, kept, tag_of

VERSIONS = {"1": "anchor-counter.js"}
NEWEST = "1"
FOREVER = b"public, max-age=31536000, immutable"
_SCRIPT = b"text/javascript; charset=utf-8"


@cache
def integrity(version: str) -> str:
    """Return the hash of a version, as a page names it in `integrity`."""
    return f"sha384-{b64encode(sha384(asset(VERSIONS[version])).digest()).decode()}"


@cache
def _description() -> bytes:
    source = f"widget/{NEWEST}/anchor-counter.js"
    tag = f'<script type="module" src="{source}" integrity="{integrity(NEWEST)}" crossorigin="anonymous"></script>'
    element = "<anchor-counter></anchor-counter>"
    return msgspec.json.encode({"version": NEWEST, "script": source, "integrity": integrity(NEWEST), "html": f"{tag}\n{element}"})


def widget_handlers() -> list[HTTPRouteHandler]:
    """Return the handlers of the widget."""

    @route("/widget", http_method=["GET", "HEAD"], sync_to_thread=False)
    def description(request: Request[Any, Any, Any]) -> ASGIApp:
        wish = wishes(request.scope)
        wanted(wish, picture=False)
        return kept(_description(), tag_of(_description(), keep=PUBLIC), wish, media=JSON.encode())

    @route("/widget/{version:str}/anchor-counter.js", http_method=["GET", "HEAD"], sync_to_thread=False)
    def script(request: Request[Any, Any, Any]) -> ASGIApp:
        version = request.path_params["version"]
        if version not in VERSIONS:
            raise Refused(404, fault("path", "not_found", version, "is no version of the widget", f"/widget/{NEWEST}/anchor-counter.js"))
        body = asset(VERSIONS[version])
        return kept(body, tag_of(body, keep=FOREVER), wishes(request.scope), media=_SCRIPT)

    path = "/widget/{version:str}/anchor-counter.js"
    return [options_handler("/widget", "GET", "HEAD"), description, options_handler(path, "GET", "HEAD"), script]
