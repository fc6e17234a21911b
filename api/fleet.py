"""Tables over HTTP: one question for every row of the body, the answer in the same form."""

import asyncio
from collections.abc import Callable, Generator
from contextlib import suppress
from typing import Any

from litestar import Request
from litestar.handlers import HTTPRouteHandler, route
from litestar.types import ASGIApp, Receive, Scope, Send

from anchorcalc.catalogue import question as named
from anchorcalc.doors.python import checked_boat
from anchorcalc.errors import InputError, fault

from .bodies import given_in_query
from .common import options_handler
from .negotiation import media_type, wishes
from .options import Options
from .problems import Refused
from .reply import API_POLICY, NO_STORE
from .tables import ALSO_CALLED, ARROW, FORMS, JSON_ARRAY, Form, Spool, parts, row_limit_of_arrow

PATH = "/v1/fleet/{question:str}"
_BESIDE = ("boat", "units", "strict")
_YES_NO = {"true": True, "1": True, "yes": True, "": True, "false": False, "0": False, "no": False}


def fleet_routes(options: Options) -> list[HTTPRouteHandler]:
    """Return the handlers of tables."""
    under_way = 0

    @route(PATH, http_method="POST", status_code=200)
    async def fleet(request: Request[Any, Any, Any]) -> ASGIApp:
        nonlocal under_way
        question = named(request.path_params["question"])
        form = _form(request)
        beside = _beside(request.scope["query_string"])
        if under_way >= options.most_tables:
            one = fault("client", "too_many_requests", None, f"met a server that answers {under_way} tables already", "to wait 5 s")
            raise Refused(429, one, {"Retry-After": "5"})
        under_way += 1
        spool = _spool(form, options)
        try:
            await _receive(request.receive, spool, seconds=options.body_seconds)
            if form.media == ARROW:
                await asyncio.to_thread(row_limit_of_arrow, spool)
            answer = parts(question, spool, form, **beside)
            first = await asyncio.to_thread(next, answer)
        except BaseException:
            under_way -= 1
            spool.close()
            raise

        def done() -> None:
            nonlocal under_way
            under_way -= 1
            spool.close()

        return Streamed(form.media, first, answer, done)

    return [options_handler(PATH, "POST"), fleet]


class Streamed:
    """An answer that goes out part by part. A fault on the way breaks the connection off: the end of the body never comes."""

    def __init__(self, media: str, first: bytes, rest: Generator[bytes, None, None], done: Callable[[], None]) -> None:
        self.media, self.first, self.rest, self.done = media, first, rest, done

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Send it."""
        kind = f"{self.media}; charset=utf-8" if self.media.startswith("text/") else self.media
        headers = [
            (b"content-type", kind.encode()),
            (b"cache-control", NO_STORE),
            (b"content-security-policy", API_POLICY),
            (b"vary", b"Accept"),
        ]
        gone = asyncio.ensure_future(receive())
        try:
            await send({"type": "http.response.start", "status": 200, "headers": headers})
            part: bytes | None = self.first
            while part is not None and not gone.done():
                await send({"type": "http.response.body", "body": part, "more_body": True})
                part = await asyncio.to_thread(next, self.rest, None)
            if part is None:
                await send({"type": "http.response.body", "body": b"", "more_body": False})
        finally:
            gone.cancel()
            with suppress(ValueError):  # a part is still being made: its thread ends with it
                await asyncio.to_thread(self.rest.close)
            self.done()


def _form(request: Request[Any, Any, Any]) -> Form:
    """Return the form of the body, in which the answer goes out as well."""
    kind, coded = b"", b""
    for name, value in request.scope["headers"]:
        kind = value if name == b"content-type" else kind
        coded = value if name == b"content-encoding" else coded
    if coded.strip().lower() not in (b"", b"identity"):
        one = fault("Content-Encoding", "unsupported_media_type", coded.decode("latin-1"), "is not read here", "identity")
        raise Refused(415, one, {"Accept-Encoding": "identity"})
    said, _, parameters = kind.decode("latin-1").lower().partition(";")
    media = ALSO_CALLED.get(said.strip(), said.strip())
    charset = parameters.replace(" ", "").replace('"', "")
    if media not in FORMS or (charset.startswith("charset=") and charset not in ("charset=utf-8", "charset=utf8")):
        one = fault("Content-Type", "unsupported_media_type", kind.decode("latin-1"), "is no table that is read here", " or ".join(FORMS))
        raise Refused(415, one, {"Accept": ", ".join(FORMS)})
    accept = wishes(request.scope).accept
    if accept and media_type(accept=accept, offered=(media,)) is None and media_type(accept=accept, offered=(said.strip(),)) is None:
        one = fault("Accept", "not_acceptable", accept.decode("latin-1"), "asks for another form than the table came in", media)
        raise Refused(406, one)
    return FORMS[media]


def _beside(query: bytes) -> dict[str, Any]:
    """Return what the query says: boat, units, strict."""
    given = given_in_query(query)
    faults = [
        fault(name[:60], "unknown_input", value, "does not stand beside a table", " or ".join(_BESIDE))
        for name, value in given.items()
        if name not in _BESIDE
    ]
    strict = str(given.get("strict", "false")).lower()
    if strict not in _YES_NO:
        faults.append(fault("strict", "unknown_word", strict, "is neither yes nor no", "true or false"))
    if faults:
        raise InputError(faults)
    return {"boat": checked_boat(given.get("boat")), "units": given.get("units"), "strict": _YES_NO[strict]}


def _spool(form: Form, options: Options) -> Spool:
    most = options.most_table_json if form.media == JSON_ARRAY else options.most_table_body
    return Spool(most=most, rows=options.most_table_rows, counted=form.lines)


async def _receive(receive: Receive, spool: Spool, *, seconds: float) -> None:
    """Take the whole body, each part of which must arrive in time."""
    while True:
        try:
            async with asyncio.timeout(seconds):
                message = await receive()
        except TimeoutError as error:
            one = fault("body", "unreadable_request", None, f"stopped for {seconds:g} s", "a faster body")
            raise Refused(408, one, {"Connection": "close"}) from error
        if message["type"] != "http.request":
            raise Refused(400, fault("body", "unreadable_request", None, "broke off", "a whole body"))
        spool.add(message["body"])
        if not message["more_body"]:
            return
