"""Responses: bytes that are ready, with the headers that say how long they keep."""

from collections import OrderedDict
from collections.abc import Callable, Iterable
from functools import lru_cache
from hashlib import blake2b

import msgspec
from litestar.enums import ScopeType
from litestar.types import Receive, Scope, Send

from anchorcalc.version import VERSION

from .negotiation import SMALLEST, Wishes, compressed, encoding

PUBLIC, PRIVATE, NO_STORE = b"public, max-age=3600", b"private, max-age=3600", b"no-store"
API_POLICY = b"default-src 'none'; frame-ancestors 'none'"
_VARY = (b"vary", b"Accept, Accept-Encoding")
_KEY = VERSION.encode()
_REMEMBERED, _LONGEST_REMEMBERED = 4096, 512

Header = tuple[bytes, bytes]


class Reply:
    """A response whose bytes are ready; to HEAD it says all but the body."""

    __slots__ = ("body", "headers", "status")

    def __init__(self, *, status: int, headers: list[Header], body: bytes = b"") -> None:
        self.status, self.headers, self.body = status, headers, body

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Send it."""
        body = b"" if scope["type"] == ScopeType.HTTP and scope["method"] == "HEAD" else self.body
        await send({"type": "http.response.start", "status": self.status, "headers": self.headers})
        await send({"type": "http.response.body", "body": body, "more_body": False})


class Tag(msgspec.Struct, frozen=True, gc=False):
    """The entity tag of an answer before its encoding, and how it may be kept."""

    text: bytes
    keep: bytes


_remembered: OrderedDict[tuple[str, str, bytes], Tag] = OrderedDict()  # a plain dict is slow to give up its oldest


def remembered(*, name: str, media: str, query: bytes) -> Tag | None:
    """Return the tag of a question that was answered before: the same question has the same answer."""
    return _remembered.get((name, media, query))


def remember(tag: Tag, *, name: str, media: str, query: bytes) -> None:
    """Keep the tag of an answer that a client asks after, so that its next time costs no answer."""
    if len(query) <= _LONGEST_REMEMBERED:
        if len(_remembered) >= _REMEMBERED:
            _remembered.popitem(last=False)
        _remembered[name, media, query] = tag


def tag_of(body: bytes, *, keep: bytes) -> Tag:
    """Return the strong tag of a body and the version."""
    return Tag(blake2b(body, key=_KEY, digest_size=12).hexdigest().encode(), keep)


def _matches(etag: bytes, none_match: bytes) -> bool:
    return none_match.strip() == b"*" or any(one.strip().removeprefix(b"W/") == etag for one in none_match.split(b","))


def not_modified(tag: Tag, wish: Wishes) -> Reply | None:
    """Return 304 where the client has these bytes already, in one of the encodings they come in."""
    if not wish.none_match:
        return None
    how = encoding(wish.encodings) if wish.encodings else ""
    for etag in (_etag(tag, how), _etag(tag, "")) if how else (_etag(tag, ""),):
        if _matches(etag, wish.none_match):
            return Reply(status=304, headers=[(b"etag", etag), (b"cache-control", tag.keep), _VARY])
    return None


def _etag(tag: Tag, how: str) -> bytes:
    return b'"%b-%b"' % (tag.text, how.encode()) if how else b'"%b"' % tag.text


def kept(body: bytes, tag: Tag, wish: Wishes, *, media: bytes, policy: bytes = API_POLICY, pack: Callable[[bytes, str], bytes] = compressed) -> Reply:
    """Return an answer that the client may keep, in an encoding that it takes; 304 where it has it."""
    unchanged = not_modified(tag, wish)
    if unchanged is not None:
        return unchanged
    how = encoding(wish.encodings) if wish.encodings and len(body) >= SMALLEST else ""
    headers = [(b"content-type", media), (b"etag", _etag(tag, how)), (b"cache-control", tag.keep), _VARY, (b"content-security-policy", policy)]
    return _sized(headers, pack(body, how) if how else body, how)


def fixed(body: bytes, wish: Wishes, *, media: bytes, policy: bytes = API_POLICY) -> Reply:
    """Return a page or document that stays the same while the server runs: hashed and compressed once."""
    return kept(body, _fixed_tag(body), wish, media=media, policy=policy, pack=_fixed_compressed)


@lru_cache(maxsize=64)
def _fixed_tag(body: bytes) -> Tag:
    return tag_of(body, keep=PUBLIC)


@lru_cache(maxsize=64)
def _fixed_compressed(body: bytes, how: str) -> bytes:
    return compressed(body, how)


def unkept(body: bytes, wish: Wishes, *, media: bytes, policy: bytes = API_POLICY) -> Reply:
    """Return an answer that nobody keeps (to POST, or of the moment)."""
    how = encoding(wish.encodings) if wish.encodings and len(body) >= SMALLEST else ""
    headers = [(b"content-type", media), (b"cache-control", NO_STORE), _VARY, (b"content-security-policy", policy)]
    return _sized(headers, compressed(body, how) if how else body, how)


def _sized(headers: list[Header], body: bytes, how: str) -> Reply:
    if how:
        headers.append((b"content-encoding", how.encode()))
    headers.append((b"content-length", b"%d" % len(body)))
    return Reply(status=200, headers=headers, body=body)


def empty(*, status: int = 204, headers: Iterable[Header] = ()) -> Reply:
    """Return a response without a body."""
    return Reply(status=status, headers=list(headers))
