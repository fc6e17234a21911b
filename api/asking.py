"""A question in plain words: `GET` and `POST /v1/ask`."""

import asyncio
import re
from typing import Any

import msgspec
from litestar import Request
from litestar.handlers import HTTPRouteHandler, route
from litestar.types import ASGIApp

from anchorcalc.answering.gate import SYSTEMS
from anchorcalc.answering.replies import Reply
from anchorcalc.errors import Code, Fault, InputError, fault

from .bodies import body_of, given_in_body, given_in_query, only_json
from .common import options_handler, wanted
from .negotiation import JSON, wishes
from .options import Options
from .reply import PRIVATE, PUBLIC, kept, not_modified, remember, remembered, tag_of, unkept

TAKES = ("text", "boat", "before", "units")
_encode = msgspec.json.Encoder().encode
# What may hold a position: degrees, a hemisphere beside a number, two long decimals, or a term of place. It errs to the private side.
_PLACE = re.compile(
    rb"\xc2\xb0|\d\s*(?:deg\w*)?\s*[NSEW]\b|\b[NSEW]\s*\d|\d\.\d{3,}\D{1,4}\d+\.\d{3,}|anchor_at|fixes|\bposition|\blat|\blon(?:gitude)?\b", re.I
)


def asked(given: dict[str, Any]) -> Reply:
    """Return the reply to a text; its names are few, and each has one form."""
    from anchorcalc.doors.ask import ask

    faults = [_unknown(name, value) for name, value in given.items() if name not in TAKES]
    if not isinstance(given.get("text"), str):
        code: Code = "wrong_kind" if "text" in given else "missing"
        faults.append(fault("text", code, given.get("text"), "must be a text", '"How much rode in 12 ft of water?"'))
    faults.extend(
        fault(name, "wrong_kind", given[name], "is no JSON object", '{"bow_height": "4 ft"}')
        for name in ("boat", "before")
        if name in given and not isinstance(given[name], dict)
    )
    if given.get("units", "us") not in SYSTEMS:
        faults.append(fault("units", "unknown_word", given["units"], "is no system of units", "us or metric"))
    if faults:
        raise InputError(faults)
    return ask(given["text"], **{name: given[name] for name in TAKES[1:] if name in given})


def _unknown(name: str, value: Any) -> Fault:
    return fault(name[:60], "unknown_input", value, "is no input of ask", "text, boat, before or units")


def ask_routes(options: Options) -> list[HTTPRouteHandler]:
    """Return the handlers of `ask`."""

    @route("/v1/ask", http_method=["GET", "HEAD"], sync_to_thread=False)
    def ask_by_query(request: Request[Any, Any, Any]) -> ASGIApp:
        wish = wishes(request.scope)
        wanted(wish, picture=False)
        query = request.scope["query_string"]
        if wish.none_match:
            known = remembered(name="ask", media=JSON, query=query)
            unchanged = not_modified(known, wish) if known is not None else None
            if unchanged is not None:
                return unchanged
        given = given_in_query(query)
        body = _encode(asked(given))
        tag = tag_of(body, keep=PRIVATE if _PLACE.search(_encode(given)) else PUBLIC)
        if wish.none_match:
            remember(tag, name="ask", media=JSON, query=query)
        return kept(body, tag, wish, media=JSON.encode())

    @route("/v1/ask", http_method="POST", status_code=200)
    async def ask_by_body(request: Request[Any, Any, Any]) -> ASGIApp:
        wish = wishes(request.scope)
        wanted(wish, picture=False)
        only_json(request.scope)
        body = await body_of(request.receive, most=options.most_fixes_body, seconds=options.body_seconds)
        given = given_in_body(body)
        reply = await asyncio.to_thread(asked, given) if len(body) > 4096 else asked(given)
        return unkept(_encode(reply), wish, media=JSON.encode())

    return [options_handler("/v1/ask", "GET", "HEAD", "POST"), ask_by_query, ask_by_body]
