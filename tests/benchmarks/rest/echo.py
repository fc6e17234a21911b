"""A bare typed echo behind the same front: it reads as many inputs, answers as many bytes, and reckons nothing.

Two of them: `bound` leaves inputs and answer to the framework, as one would write it; `bare` takes the shortest way there is.
"""

from typing import Any

import msgspec
from litestar import Litestar, Request, get, post, route
from litestar.handlers import HTTPRouteHandler
from litestar.types import ASGIApp

from anchorcalc_api.bodies import body_of, given_in_body, given_in_query, only_json
from anchorcalc_api.front import Front
from anchorcalc_api.negotiation import JSON, wishes
from anchorcalc_api.options import Options, options_from_environment
from anchorcalc_api.reply import PUBLIC, kept, tag_of, unkept

FILLER = "x" * 1775  # with the rest about as long as the answers asked for beside it
_encode = msgspec.json.Encoder().encode


class Inputs(msgspec.Struct, kw_only=True):
    """What the echo takes."""

    depth: str
    bow_height: str
    tide_rise: str
    scope: str


class Echo(msgspec.Struct, kw_only=True):
    """What it says."""

    depth: str
    bow_height: str
    tide_rise: str
    scope: str
    filler: str = FILLER


@get("/bound", sync_to_thread=False)
def bound(depth: str, bow_height: str, tide_rise: str, ratio: str) -> Echo:
    """Echo a query that the framework reads."""
    return Echo(depth=depth, bow_height=bow_height, tide_rise=tide_rise, scope=ratio)


@post("/bound", status_code=200, sync_to_thread=False)
def bound_body(data: Inputs) -> Echo:
    """Echo a body that the framework reads."""
    return Echo(depth=data.depth, bow_height=data.bow_height, tide_rise=data.tide_rise, scope=data.scope)


def _echoed(given: dict[str, Any]) -> bytes:
    taken = msgspec.convert(given, Inputs)
    return _encode(Echo(depth=taken.depth, bow_height=taken.bow_height, tide_rise=taken.tide_rise, scope=taken.scope))


@route("/bare", http_method=["GET", "HEAD"], sync_to_thread=False)
def bare(request: Request[Any, Any, Any]) -> ASGIApp:
    """Echo a query, by the shortest way."""
    body = _echoed(given_in_query(request.scope["query_string"]))
    return kept(body, tag_of(body, keep=PUBLIC), wishes(request.scope), media=JSON.encode())


@route("/bare", http_method="POST", status_code=200)
async def bare_body(request: Request[Any, Any, Any]) -> ASGIApp:
    """Echo a body, by the shortest way."""
    only_json(request.scope)
    body = await body_of(request.receive, most=65536, seconds=20.0)
    return unkept(_echoed(given_in_body(body)), wishes(request.scope), media=JSON.encode())


HANDLERS: list[HTTPRouteHandler] = [bound, bound_body, bare, bare_body]


def echo_app(options: Options) -> Front:
    """Return the echo behind the same front as the application."""
    return Front(Litestar(route_handlers=HANDLERS, openapi_config=None, logging_config=None), options)


app = echo_app(options_from_environment())
