"""Tables over HTTP: one question for every row of the body, the answer in the same form."""

import asyncio
import sys
from collections.abc import AsyncGenerator, Callable
from typing import Any

import msgspec
from litestar import Request
from litestar.handlers import HTTPRouteHandler, route
from litestar.types import ASGIApp, Receive, Scope, Send

from anchorcalc.catalogue import question as named
from anchorcalc.declare import Question
from anchorcalc.doors.python import checked_boat
from anchorcalc.errors import InputError, fault

from .bodies import given_in_query
from .common import options_handler
from .negotiation import media_type, wishes
from .options import Options
from .problems import Refused
from .reply import API_POLICY, NO_STORE
from .table_worker import Begun, Job
from .tables import ALSO_CALLED, CSV, FORMS, JSON_ARRAY, Form, Spool, parts

PATH = "/v1/fleet/{question:str}"
SMALL = 65_536  # bytes of a table up to which a thread answers it: a process takes longer to start
AT_ONCE = 262_144  # bytes that are sent at once
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
            _check_lines(spool, form)
            answer = _in_process(question.name, spool, form, beside) if spool.size > SMALL else _in_thread(question, spool, form, beside)
            first = await anext(answer)
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

    def __init__(self, media: str, first: bytes, rest: AsyncGenerator[bytes, None], done: Callable[[], None]) -> None:
        self.media, self.first, self.rest, self.done = media, first, rest, done

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Send it, for as long as the client is there."""
        kind = f"{self.media}; charset=utf-8" if self.media.startswith("text/") else self.media
        headers = [(b"content-type", kind.encode()), (b"cache-control", NO_STORE), (b"content-security-policy", API_POLICY), (b"vary", b"Accept")]
        gone = asyncio.ensure_future(receive())
        try:
            await send({"type": "http.response.start", "status": 200, "headers": headers})
            await send({"type": "http.response.body", "body": self.first, "more_body": True})
            async for part in self.rest:
                if gone.done():
                    return
                await send({"type": "http.response.body", "body": part, "more_body": True})
            await send({"type": "http.response.body", "body": b"", "more_body": False})
        finally:
            gone.cancel()
            await self.rest.aclose()
            self.done()


async def _in_thread(question: Question, spool: Spool, form: Form, beside: dict[str, Any]) -> AsyncGenerator[bytes, None]:
    """Yield the answer to a small table."""
    if form.check is not None:
        form.check(spool)
    answer = parts(question, spool, form, **beside)
    while (part := await asyncio.to_thread(next, answer, None)) is not None:
        yield part


async def _in_process(name: str, spool: Spool, form: Form, beside: dict[str, Any]) -> AsyncGenerator[bytes, None]:
    """Yield the answer to a large table, made in a process of its own, which ends with the request."""
    job = Job(question=name, media=form.media, rows=spool.rows, **beside)
    spool.file.flush()
    spool.file.seek(0)
    command = (sys.executable, "-m", "anchorcalc_api.table_worker", msgspec.json.encode(job).decode())
    worker = await asyncio.create_subprocess_exec(*command, stdin=spool.file.fileno(), stdout=asyncio.subprocess.PIPE, limit=1 << 20)
    try:
        assert worker.stdout is not None
        line = await worker.stdout.readline()
        begun = msgspec.json.decode(line, type=Begun) if line else Begun()
        if begun.faults and begun.status != 422:
            raise Refused(begun.status, begun.faults[0])
        if begun.faults:
            raise InputError(begun.faults)
        while part := await worker.stdout.read(AT_ONCE):
            yield part
        if await worker.wait() != 0:
            raise RuntimeError(f"the answer to a table ended early ({worker.returncode})")
    finally:
        if worker.returncode is None:
            worker.kill()
            await worker.wait()


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


def _check_lines(spool: Spool, form: Form) -> None:
    """Refuse CSV of one line: some clients take the ends of lines out of a body, and every row would count as headings."""
    if form.media == CSV and spool.one_line and spool.size:
        why = "is one line: it has no rows, or the ends of its lines were lost on the way"
        raise Refused(400, fault("body", "unreadable_request", None, why, "the file byte by byte (`curl --data-binary @FILE`)"))


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
