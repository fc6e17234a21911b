"""What a request brings: a query or a JSON body, read whole and once, into plain names and values."""

import asyncio
import json
import re
from collections.abc import Iterable
from typing import Any
from urllib.parse import parse_qsl

import msgspec
from litestar.types import Receive, Scope

from anchorcalc.errors import Fault, InputError, fault

from .problems import Refused

MOST_PAIRS = 200
BESIDE = ("boat", "units")
IN_JSON = ("boat", "before")  # what a query gives as JSON

_decode = msgspec.json.Decoder().decode
_KEY = re.compile(rb'"\s*:')


def given_in_query(query: bytes) -> dict[str, Any]:
    """Return the names and values of a query; a name given twice is a fault."""
    if not query:
        return {}
    try:
        pairs = parse_qsl(query.decode("ascii"), keep_blank_values=True, max_num_fields=MOST_PAIRS, errors="strict")
    except UnicodeError as error:
        raise _unreadable("query", "is not UTF-8, percent-encoded", "?depth=12%20ft") from error
    except ValueError as error:
        raise _unreadable("query", f"has more than {MOST_PAIRS} names", "one value a name") from error
    given: dict[str, Any] = dict(pairs)
    if len(given) != len(pairs):
        raise InputError(_twice(pairs))
    for name in IN_JSON:
        if name in given:
            given[name] = _object(given[name].encode(), name=name)
    return given


def _twice(pairs: Iterable[tuple[str, Any]]) -> list[Fault]:
    values: dict[str, list[Any]] = {}
    for name, value in pairs:
        values.setdefault(name, []).append(value)
    return [
        fault(name[:60], "given_twice", " and ".join(str(one) for one in every), "was given more than once", "one value")
        for name, every in values.items()
        if len(every) > 1
    ]


def _unreadable(name: str, why: str, would_do: str) -> Refused:
    return Refused(400, fault(name, "unreadable_request", None, why, would_do))


def _object(body: bytes, *, name: str) -> dict[str, Any]:
    """Return a JSON object; what is no JSON is unreadable, what is no object a fault."""
    try:
        given = _decode(body)
    except msgspec.DecodeError as error:
        raise _unreadable(name, f"is no JSON ({error})", '{"depth": "12 ft"}') from error
    except (RecursionError, UnicodeError) as error:
        raise _unreadable(name, "is no JSON that can be read (nested too deep, or not UTF-8)", '{"depth": "12 ft"}') from error
    if not isinstance(given, dict):
        raise InputError([fault(name, "wrong_kind", given, "is no JSON object", '{"depth": "12 ft"}')])
    if len(given) > MOST_PAIRS:
        raise InputError([fault(name, "too_large", None, f"has more than {MOST_PAIRS} names", "the inputs of the question")])
    if len(_KEY.findall(body)) != len(given):
        _each_once(body)
    return given


def _each_once(body: bytes) -> None:
    """Look at every name of every object, where more names than values were seen: the decoder keeps only the last of two."""
    found: list[Fault] = []

    def look(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
        made = dict(pairs)
        if len(made) != len(pairs):
            found.extend(_twice(pairs))
        return made

    json.loads(body, object_pairs_hook=look)
    if found:
        raise InputError(found)


def given_in_body(body: bytes) -> dict[str, Any]:
    """Return the names and values of a JSON body; a name given twice, or null, is a fault."""
    given = _object(body, name="body")
    nulls = [name for name, value in given.items() if value is None]
    if nulls:
        raise InputError(fault(name[:60], "wrong_kind", "null", "is no value", "a value, or leave the name out; one") for name in nulls)
    return given


def only_json(scope: Scope) -> None:
    """Refuse a body that is not said to be plain JSON, and a query beside it: nothing that was given may be passed over unseen."""
    if scope["query_string"]:
        raise InputError([fault("query", "contradiction", None, "was given beside a body", "all of it in the body")])
    kind = b""
    for name, value in scope["headers"]:
        if name == b"content-type":
            kind = value
        elif name == b"content-encoding" and value.strip().lower() not in (b"", b"identity"):
            one = fault("Content-Encoding", "unsupported_media_type", value.decode("latin-1"), "is not read here", "identity")
            raise Refused(415, one, {"Accept-Encoding": "identity"})
    media, _, parameters = kind.partition(b";")
    charset = parameters.replace(b" ", b"").replace(b'"', b"").lower()
    if media.strip().lower() != b"application/json" or (charset.startswith(b"charset=") and charset != b"charset=utf-8"):
        one = fault("Content-Type", "unsupported_media_type", kind.decode("latin-1"), "is not read here", "application/json")
        raise Refused(415, one, {"Accept": "application/json"})


async def body_of(receive: Receive, *, most: int, seconds: float) -> bytes:
    """Return the whole body, which must arrive in time and within its limit."""
    parts: list[bytes] = []
    size = 0
    try:
        async with asyncio.timeout(seconds):
            while True:
                message = await receive()
                if message["type"] != "http.request":
                    raise _unreadable("body", "broke off", "a whole body")
                part = message.get("body", b"")
                size += len(part)
                if size > most:
                    raise too_large(most)
                parts.append(part)
                if not message.get("more_body", False):
                    return parts[0] if len(parts) == 1 else b"".join(parts)
    except TimeoutError as error:
        raise Refused(
            408, fault("body", "unreadable_request", None, f"did not arrive within {seconds:g} s", "a faster body"), {"Connection": "close"}
        ) from error


def too_large(most: int) -> Refused:
    """Return the refusal of a body that is too large."""
    return Refused(413, fault("body", "too_large", None, f"is larger than {most} bytes", f"{most} bytes or less"))
