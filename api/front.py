"""What stands before every route: request ids, limits, CORS, security headers, the access log and counts."""

import gc
import logging
import re
import sys
from secrets import token_hex
from time import perf_counter
from typing import Any

import msgspec
from litestar.enums import ScopeType
from litestar.types import ASGIApp, HTTPScope, Message

import anchorcalc
from anchorcalc.errors import Fault, fault

from .counts import Counts
from .limits import Buckets
from .options import Options
from .problems import PROBLEM_JSON, encoded
from .reply import NO_STORE, Header, Reply, empty

LONGEST_PATH = 1024
_REQUEST_ID = re.compile(rb"[A-Za-z0-9._-]{1,64}\Z")
_SECURITY: tuple[Header, ...] = (
    (b"x-content-type-options", b"nosniff"),
    (b"cross-origin-resource-policy", b"cross-origin"),
    (b"referrer-policy", b"no-referrer"),
)
_EXPOSED = b"ETag, X-Request-ID, Retry-After"
_PREFLIGHT: tuple[Header, ...] = (
    (b"access-control-allow-methods", b"GET, HEAD, POST"),
    (b"access-control-allow-headers", b"Accept, Content-Type, If-None-Match, X-Request-ID"),
    (b"access-control-max-age", b"86400"),
    (b"content-length", b"0"),
)
_access = logging.getLogger("anchorcalc_api.access")


class Line(msgspec.Struct, frozen=True):
    """A line of the access log. It names the route and never the query, the body or an unknown path: texts and positions stay out of it."""

    request_id: str
    method: str
    route: str
    status: int
    ms: float
    client: str


class Front:
    """The application as the server sees it: all that is the same for every route, around the routes."""

    def __init__(self, inner: ASGIApp, options: Options) -> None:
        self.inner, self.options = inner, options
        self.buckets = Buckets(per_minute=options.rate_per_minute) if options.rate_per_minute else None
        self.counts = Counts() if options.metrics else None
        self.watched = options.access_log or options.metrics
        if options.access_log and not _access.handlers:
            _access.addHandler(logging.StreamHandler(sys.stdout))
            _access.setLevel(logging.INFO)
            _access.propagate = False
        self.any_origin = "*" in options.cors_origins
        self.origins = frozenset(one.encode() for one in options.cors_origins)

    async def __call__(self, scope: Any, receive: Any, send: Any) -> None:
        """Answer a request; lifespan goes straight through. (Each framework types ASGI in its own way: any will do here.)"""
        if scope["type"] != ScopeType.HTTP:
            if scope["type"] == "lifespan":
                _settle()
            await self.inner(scope, receive, send)
            return
        origin, preflight, request_id, size, hosts = self._look(scope)
        scope.setdefault("state", {})["request_id"] = request_id.decode()
        common = [*_SECURITY, (b"x-request-id", request_id), *self._cors(origin)]
        began = perf_counter()
        status = 0

        async def send_with_headers(message: Message) -> None:
            nonlocal status
            if message["type"] == "http.response.start":
                status = message["status"]
                message["headers"] = [*message["headers"], *common]
            await send(message)

        refusal = self._preflight(origin) if preflight else self._refusal(scope, size, hosts)
        await (refusal or self.inner)(scope, receive, send_with_headers)
        if self.watched:
            self._watch(scope, status, perf_counter() - began, request_id)

    def _look(self, scope: HTTPScope) -> tuple[bytes, bool, bytes, int, int]:
        """Return the origin, whether this is a preflight, the request's id, how large its headers are, and how many hosts they name."""
        origin = request_id = b""
        asks_method, size, hosts = False, 0, 0
        for name, value in scope["headers"]:
            size += len(name) + len(value) + 4
            if name == b"host":
                hosts += 1
            elif name == b"origin":
                origin = value
            elif name == b"x-request-id" and _REQUEST_ID.match(value):
                request_id = value
            elif name == b"access-control-request-method":
                asks_method = True
        return origin, asks_method and bool(origin) and scope["method"] == "OPTIONS", request_id or token_hex(8).encode(), size, hosts

    def _refusal(self, scope: HTTPScope, size: int, hosts: int) -> Reply | None:
        """Return the refusal of a request that goes beyond a limit."""
        if hosts > 1:
            return _refused(400, fault("Host", "unreadable_request", None, "was given more than once", "one host"))
        if size > self.options.most_headers:
            most = self.options.most_headers
            return _refused(431, fault("headers", "too_large", None, f"are larger than {most} bytes", f"{most} bytes or less"))
        if len(scope["query_string"]) > self.options.most_query or len(scope["path"]) > LONGEST_PATH:
            most = self.options.most_query
            return _refused(414, fault("query", "too_large", None, f"is longer than {most} bytes", f"{most} bytes or less, or a POST"))
        if self.buckets is not None:
            client = scope.get("client")
            wait = self.buckets.wait(client[0] if client else "")
            if wait:
                one = fault(
                    "client", "too_many_requests", None, f"asked more than {self.options.rate_per_minute} times a minute", f"to wait {wait} s"
                )
                return _refused(429, one, (b"retry-after", b"%d" % wait))
        return None

    # --- other origins: the framework's own CORS writes over Vary and takes every OPTIONS for a preflight ---

    def _cors(self, origin: bytes) -> tuple[Header, ...]:
        if self.any_origin:
            return ((b"access-control-allow-origin", b"*"), (b"access-control-expose-headers", _EXPOSED))
        if origin in self.origins:
            return ((b"access-control-allow-origin", origin), (b"access-control-expose-headers", _EXPOSED), (b"vary", b"Origin"))
        return ((b"vary", b"Origin"),) if self.origins else ()

    def _preflight(self, origin: bytes) -> Reply:
        return empty(headers=_PREFLIGHT if self.any_origin or origin in self.origins else _PREFLIGHT[-1:])

    # --- the log and the counts ---

    def _watch(self, scope: HTTPScope, status: int, seconds: float, request_id: bytes) -> None:
        route = scope.get("path_template") or "(none)"
        method = scope["method"] if scope["method"] in ("GET", "HEAD", "POST", "OPTIONS") else "(other)"
        if self.counts is not None:
            self.counts.add(method=method, route=str(route), status=status, seconds=seconds)
        if self.options.access_log:
            client = scope.get("client")
            line = Line(request_id.decode(), method, str(route), status, round(1000 * seconds, 3), client[0] if client else "")
            _access.info(msgspec.json.encode(line).decode())


def _settle() -> None:
    """Load what the first requests would load, and tell the collector that all of it stays: a long pass would hold up answers."""
    anchorcalc.ask("How much rode in 4 m of water?")
    gc.collect()
    gc.freeze()


def _refused(status: int, one: Fault, *more: Header) -> Reply:
    body = encoded(status=status, faults=(one,))
    headers = [(b"content-type", PROBLEM_JSON.encode()), (b"cache-control", NO_STORE), (b"content-length", b"%d" % len(body)), *more]
    return Reply(status=status, headers=headers, body=body)
