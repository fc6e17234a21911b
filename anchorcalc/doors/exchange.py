"""The exchange before: what was asked, and which of it lies under a new text."""

from collections.abc import Mapping
from typing import Any

import msgspec

from anchorcalc.catalogue import names
from anchorcalc.errors import InputError, fault

_WOULD_DO = "an earlier reply, its JSON, or {question, inputs}"


class Before(msgspec.Struct, frozen=True, kw_only=True):
    """An earlier exchange: its question, what was asked in it, and what it asked back."""

    question: str
    inputs: dict[str, Any]
    missing: tuple[str, ...] = ()


def exchange(before: Any) -> Before | None:
    """Return an earlier exchange in one form: from any reply, its JSON, or {question, inputs}; None where it holds no question."""
    if before is None:
        return None
    if isinstance(before, str | bytes):
        before = _decoded(before)
    if isinstance(before, msgspec.Struct):
        before = msgspec.to_builtins(before)
    if not isinstance(before, Mapping):
        raise InputError([fault("before", "wrong_kind", before, "is no earlier exchange", _WOULD_DO)])
    name = before.get("question")
    if name is None and before.get("status") in ("unclear", "cannot"):
        return None
    if not isinstance(name, str) or name.replace("-", "_") not in names():
        raise InputError([fault("before", "unreadable", name, "names no question of this library", _WOULD_DO)])
    missing = before.get("missing") or ()
    inputs = before["inputs"] if "inputs" in before else _asked(before.get("read"))
    if not isinstance(inputs, Mapping) or not isinstance(missing, list | tuple):
        raise InputError([fault("before", "wrong_kind", before, "holds no inputs by name", _WOULD_DO)])
    return Before(question=name.replace("-", "_"), inputs=dict(inputs), missing=tuple(one for one in missing if isinstance(one, str)))


def _decoded(text: str | bytes) -> Any:
    try:
        return msgspec.json.decode(text)
    except (msgspec.MsgspecError, UnicodeError) as error:
        raise InputError([fault("before", "unreadable", text if isinstance(text, str) else repr(text), "is no JSON", _WOULD_DO)]) from error


def _asked(read: Any) -> dict[str, Any]:
    """Return what was asked, or lay under it before; assumptions and the boat's never carry over."""
    if not isinstance(read, Mapping):
        return {}
    return {name: _plain(one) for name, one in read.items() if isinstance(one, Mapping) and one.get("from") in ("asked", "before")}


def _plain(one: Mapping[str, Any]) -> Any:
    """Return a value of `read` as the gate takes it; a range keeps both its ends."""
    if one.get("low") is not None and one.get("unit") is not None and isinstance(one.get("si"), int | float) and one["si"]:
        size = one["si"] / one["value"] if one.get("value") else 1.0
        return {"low": one["low"] / size, "high": one["high"] / size, "unit": one["unit"]}
    if "latitude" in one:
        return f"{one['latitude']:.9f}, {one['longitude']:.9f}"
    return one
