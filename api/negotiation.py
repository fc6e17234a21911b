"""What a client will take: media types and encodings, by their q-values (RFC 9110, section 12)."""

import gzip
from collections.abc import Iterator
from functools import lru_cache
from typing import NamedTuple

import brotli  # type: ignore[import-untyped]
from litestar.types import Scope

JSON, SVG, HTML = "application/json", "image/svg+xml", "text/html"
SMALLEST = 1024  # bytes that are worth compressing
LONGEST = 1000  # bytes of a header that are looked at


class Wishes(NamedTuple):
    """The headers by which a client says what it wants, empty where it did not."""

    accept: bytes
    encodings: bytes
    none_match: bytes


def wishes(scope: Scope) -> Wishes:
    """Return what a request asks for."""
    accept = encodings = none_match = b""
    for name, value in scope["headers"]:
        if name == b"accept":
            accept = accept + b"," + value if accept else value
        elif name == b"accept-encoding":
            encodings = encodings + b"," + value if encodings else value
        elif name == b"if-none-match":
            none_match = none_match + b"," + value if none_match else value
    return Wishes(accept[:LONGEST], encodings[:LONGEST], none_match[: 8 * LONGEST])


def _weighted(header: bytes) -> Iterator[tuple[str, float]]:
    """Yield what a header lists, each with its weight; parameters other than `q` are passed over."""
    for part in header.decode("latin-1").lower().split(","):
        name, *parameters = (piece.strip() for piece in part.split(";"))
        weight = 1.0
        for parameter in parameters:
            key, _, value = parameter.partition("=")
            if key.strip() == "q":
                weight = _weight(value.strip())
        if name:
            yield name, weight


def _weight(text: str) -> float:
    """Return a q-value; one that is malformed counts as 0."""
    digits = text.replace(".", "", 1)
    return min(float(text), 1.0) if digits.isascii() and digits.isdigit() and len(text) < 8 else 0.0


@lru_cache(maxsize=512)
def media_type(*, accept: bytes, offered: tuple[str, ...]) -> str | None:
    """Return which of the types offered the client wants most; of those it wants alike, the first. None: it takes none of them.

    Examples
    --------
    >>> media_type(accept=b"image/svg+xml, application/json;q=0.9", offered=(JSON, SVG))
    'image/svg+xml'
    >>> media_type(accept=b"*/*", offered=(JSON, SVG))
    'application/json'
    """
    if not accept:
        return offered[0]
    listed = dict(_weighted(accept))
    weights = {one: _of_ranges(one, listed) for one in offered}
    best = max(offered, key=lambda one: weights[one])
    return best if weights[best] > 0.0 else None


def _of_ranges(media: str, listed: dict[str, float]) -> float:
    """Return the weight of the most specific range that a type falls in."""
    for media_range in (media, media.partition("/")[0] + "/*", "*/*"):
        if media_range in listed:
            return listed[media_range]
    return 0.0


@lru_cache(maxsize=512)
def encoding(accepted: bytes) -> str:
    """Return the encoding to answer in: `br`, `gzip` or none (an empty text)."""
    listed = dict(_weighted(accepted))
    weights = {one: listed.get(one, listed.get("*", 0.0)) for one in ("br", "gzip")}
    best = max(weights, key=lambda one: weights[one])
    return best if weights[best] > 0.0 and weights[best] >= listed.get("identity", 0.0) else ""


def compressed(body: bytes, how: str) -> bytes:
    """Return a body in an encoding; the same body gives the same bytes."""
    if how == "br":
        packed: bytes = brotli.compress(body, quality=4)
        return packed
    return gzip.compress(body, compresslevel=6, mtime=0)
