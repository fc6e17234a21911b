"""Errors as problem details (RFC 9457): what is wrong, input by input, and nothing of the inside."""

import logging
from typing import Any

import msgspec
from litestar import Request, Response
from litestar.exceptions import HTTPException
from litestar.types import ExceptionHandlersMap

from anchorcalc.errors import AnchorcalcError, Code, Fault, PictureError, UnknownQuestion, fault

PROBLEM_JSON = "application/problem+json"
TITLES: dict[int, str] = {
    400: "The request cannot be read",
    404: "Nothing is there",
    405: "The method will not do",
    406: "There is no answer in that form",
    408: "The request took too long",
    413: "The request is too large",
    414: "The address is too long",
    415: "The body is of a kind that is not read",
    422: "An input will not do",
    429: "Too many requests",
    431: "The headers are too large",
    500: "The server failed",
}
SLUGS: dict[int, str] = {
    400: "unreadable",
    404: "not-found",
    405: "method-not-allowed",
    406: "not-acceptable",
    408: "timeout",
    413: "too-large",
    414: "address-too-long",
    415: "unsupported-media-type",
    422: "inputs",
    429: "too-many-requests",
    431: "headers-too-large",
    500: "internal",
}
_PLAIN = {"Cache-Control": "no-store", "Vary": "Accept, Accept-Encoding", "Content-Security-Policy": "default-src 'none'; frame-ancestors 'none'"}
_ENCODER = msgspec.json.Encoder()
_log = logging.getLogger("anchorcalc_api")


class Problem(msgspec.Struct, frozen=True, kw_only=True):
    """What went wrong with a request: RFC 9457, with one entry in `errors` for every input at fault."""

    type: str
    title: str
    status: int
    detail: str
    errors: tuple[Fault, ...]


class Refused(Exception):
    """A request that is refused before any question is answered."""

    def __init__(self, status: int, one: Fault, headers: dict[str, str] | None = None) -> None:
        self.status, self.faults, self.headers = status, (one,), headers or {}
        super().__init__(str(one))


def problem(*, status: int, faults: tuple[Fault, ...]) -> Problem:
    """Return the problem that some faults are."""
    more = f" (and {len(faults) - 1} more)" if len(faults) > 1 else ""
    return Problem(type=type_of(status), title=TITLES[status], status=status, detail=f"{faults[0]}{more}", errors=faults)


def type_of(status: int) -> str:
    """Return the URI that names a type of problem."""
    return f"urn:anchorcalc:problem:{SLUGS[status]}"


def encoded(*, status: int, faults: tuple[Fault, ...]) -> bytes:
    """Return a problem as JSON."""
    return _ENCODER.encode(problem(status=status, faults=faults))


def status_of(error: AnchorcalcError) -> int:
    """Return the status that an error of the library has."""
    if isinstance(error, UnknownQuestion):
        return 404
    return 406 if isinstance(error, PictureError) else 422


def _response(*, status: int, faults: tuple[Fault, ...], headers: dict[str, str] | None = None) -> Response[bytes]:
    return Response(encoded(status=status, faults=faults), status_code=status, media_type=PROBLEM_JSON, headers={**_PLAIN, **(headers or {})})


def _of_library(request: Request[Any, Any, Any], error: AnchorcalcError) -> Response[bytes]:
    return _response(status=status_of(error), faults=error.faults)


def _of_refusal(request: Request[Any, Any, Any], error: Refused) -> Response[bytes]:
    return _response(status=error.status, faults=error.faults, headers=error.headers)


def _of_framework(request: Request[Any, Any, Any], error: HTTPException) -> Response[bytes]:
    """Answer what the framework refuses: unknown paths, wrong methods, malformed hosts."""
    status = error.status_code
    if status == 404:
        return _response(status=404, faults=(nothing_there(request.scope["path"]),))
    if status == 405:
        headers = {name: value for name, value in (error.headers or {}).items() if name.lower() == "allow"}
        allowed = ", ".join(sorted(next(iter(headers.values()), "").split(", ")))
        one = fault("method", "method_not_allowed", request.scope["method"], "will not do here", allowed)
        return _response(status=405, faults=(one,), headers={"Allow": allowed})
    if status in TITLES and status < 500:
        code: Code = "too_large" if status == 413 else "unreadable_request"
        return _response(status=status, faults=(fault("request", code, None, "cannot be read", "a well-formed HTTP request"),))
    return _of_failure(request, error)


def nothing_there(path: str) -> Fault:
    """Return the fault of a path that leads nowhere, with the nearest question."""
    from anchorcalc.catalogue import nearest

    parts = path.strip("/").split("/")
    if parts[0] == "v1" and len(parts) > 1:
        return fault("question", "unknown_question", parts[-1], "is no question of this server", nearest(name=parts[-1]).replace("_", "-"))
    return fault("path", "not_found", path, "leads nowhere", "/v1/questions, /docs or /openapi.json")


def _of_failure(request: Request[Any, Any, Any], error: Exception) -> Response[bytes]:
    """Answer a failure of our own: it is logged, and the client learns only that it happened."""
    _log.error("request %s failed", request.scope["state"].get("request_id", ""), exc_info=error)
    return _response(
        status=500, faults=(fault("request", "internal", None, "met a failure of the server", "the same request later, or a report of it"),)
    )


EXCEPTION_HANDLERS: ExceptionHandlersMap = {AnchorcalcError: _of_library, Refused: _of_refusal, HTTPException: _of_framework, Exception: _of_failure}
