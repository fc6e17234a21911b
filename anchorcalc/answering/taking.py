"""One value for one term, in any form that a door may bring, into SI: or the fault that it is."""

import math
from collections.abc import Callable, Mapping, Sequence
from datetime import datetime, time
from difflib import get_close_matches
from functools import lru_cache
from itertools import pairwise
from typing import Any

from anchorcalc.answering.plainly import plainly
from anchorcalc.answering.taken import Taken, bounded, plain_number, text_of
from anchorcalc.answering.taking_quantities import from_amount, take_quantity
from anchorcalc.errors import Fault, fault
from anchorcalc.units import clock, position, written
from anchorcalc.units.kinds import CLOCK, FIXES, FLAG, LENGTH, LENGTHS, POSITION, UNIT, WORD
from anchorcalc.units.shown import tidy
from anchorcalc.vocabulary.term import Term

LONGEST = 200  # characters of one value


def take(*, term: Term, raw: Any) -> Taken | Fault:
    """Return a raw value as taken for a term, or the fault."""
    if isinstance(raw, str):
        return _from_text(term, raw) if len(raw) <= LONGEST else _read_text(term, raw)
    return _TAKERS.get(term.kind.name, take_quantity)(term, raw)


@lru_cache(maxsize=1024)  # what comes again; a larger one would only put more out of the processor's caches
def _from_text(term: Term, text: str) -> Taken | Fault:
    mostly = plainly(term).read(text)
    return _read_text(term, text) if mostly is None else mostly


def _read_text(term: Term, text: str) -> Taken | Fault:
    if len(text) > LONGEST and term.kind not in (FIXES, LENGTHS):
        return fault(term.name, "too_long", text, "is too long", term.would_do)
    reader = _TEXT_READERS.get(term.kind.name)
    if reader is not None:
        return reader(term, text)
    found = written.amount.__wrapped__(text, kind=term.kind.name)  # what is taken is kept by itself
    if isinstance(found, written.Unread):
        lengths_would_do = found.code != "unreadable" or term.kind.name == LENGTH.name
        return fault(term.name, found.code, text, found.why, (found.would_do if lengths_would_do else "") or term.would_do)
    return from_amount(term, found, text)


def _plain(text: str) -> str:
    return " ".join(text.casefold().replace("_", " ").replace("-", " ").split())


@lru_cache(maxsize=64)
def spoken(term: Term) -> dict[str, str]:
    """Return what may be said for each of a term's words."""
    table = {_plain(word): word for word in term.choices}
    for word, sayings in term.said_as:
        for saying in sayings:
            table.setdefault(_plain(saying), word)
    return table


def _word(term: Term, text: str) -> Taken | Fault:
    word = spoken(term).get(_plain(text))
    if word is None:
        near = get_close_matches(_plain(text)[:60], list(spoken(term)), n=1, cutoff=0.75)
        hint = spoken(term)[near[0]] if near else term.would_do
        return fault(term.name, "unknown_word", text, "is none of the words for it", hint)
    code = term.code(word)
    return Taken(code, code, text=word)


_YES, _NO = frozenset({"yes", "true", "1", "y", "on"}), frozenset({"no", "false", "0", "n", "off"})


def _flag(term: Term, text: str) -> Taken | Fault:
    said = text.strip().casefold()
    if said not in _YES | _NO:
        return fault(term.name, "unknown_word", text, "is neither yes nor no", "yes or no")
    return Taken(said in _YES, said in _YES, text="yes" if said in _YES else "no")


def _clock(term: Term, text: str) -> Taken | Fault:
    found = clock.clock(text)
    if isinstance(found, written.Unread):
        return fault(term.name, found.code, text, found.why, found.would_do or term.would_do)
    return Taken(found, found, text=clock.clock_text(seconds=found.seconds, like=found)[0])


def _position(term: Term, text: str) -> Taken | Fault:
    found = position.position(text)
    if isinstance(found, written.Unread):
        return fault(term.name, found.code, text, found.why, found.would_do or term.would_do)
    return Taken(found, found, text=position.position_text(found))


def _lengths(term: Term, text: str) -> Taken | Fault:
    found = written.lengths(text)
    if isinstance(found, written.Unread):
        return fault(term.name, found.code, text, found.why, found.would_do or term.would_do)
    return _list_of_lengths(term, list(found), text)


def _list_of_lengths(term: Term, raw: Sequence[Any], given: Any) -> Taken | Fault:
    taken = [take(term=_one_of(term), raw=one) for one in raw]
    for one in taken:
        if isinstance(one, Fault):
            return one
    ends = [one for one in taken if isinstance(one, Taken)]
    if not ends or any(one.is_range for one in ends):
        return fault(term.name, "unreadable", given, "is no list of lengths", term.would_do)
    if any(a.low >= b.low for a, b in pairwise(ends)):
        return fault(term.name, "contradiction", given, "is not in rising order", term.would_do)
    unit = ends[0].unit
    numbers = ", ".join(f"{tidy(one.low / UNIT[unit].factor):.12g}" for one in ends)
    values = tuple(one.low for one in ends)
    return Taken(values, values, unit, f"{numbers} {unit}")


@lru_cache(maxsize=64)
def _one_of(term: Term) -> Term:
    """Return the term of one item of a list."""
    import msgspec

    return msgspec.structs.replace(term, kind=LENGTH)


def _fixes(term: Term, text: str) -> Taken | Fault:
    found = position.fixes(text)
    if isinstance(found, written.Unread):
        return fault(term.name, found.code, text, found.why, found.would_do or term.would_do)
    if len(found) > MOST_FIXES:
        return _list_of_fixes(term, found, text)
    return _taken_fixes(term, [(one.at, one.position) for one in found], text)


MOST_FIXES = 20_000


def _list_of_fixes(term: Term, raw: Sequence[Any], given: Any) -> Taken | Fault:
    if not raw or len(raw) > MOST_FIXES:
        return fault(term.name, "unreadable" if not raw else "too_large", given, f"must hold 1 to {MOST_FIXES} fixes", term.would_do)
    fixes = []
    for number, one in enumerate(raw, start=1):
        at, where = _at_and_position(one)
        when, place = clock.clock(str(at)), position.position(where) if isinstance(where, str) else _pair(where)
        for found in (when, place):
            if isinstance(found, written.Unread):
                return fault(term.name, found.code, one, f"(fix {number}) {found.why}", found.would_do or term.would_do)
        fixes.append((when, place))
    return _taken_fixes(term, fixes, given)


def _taken_fixes(term: Term, fixes: Sequence[Any], given: Any) -> Taken | Fault:
    values = tuple(fixes)
    if len({when.form for when, _ in values}) > 1:
        return fault(term.name, "clock_mixed", given, "has times written in more than one form", "plain times or ISO 8601 for all")
    return Taken(values, values, text=f"{len(values)} fix{'es' if len(values) > 1 else ''}")


def _pair(value: Any) -> position.Position | written.Unread:
    """Return two plain numbers, or a latitude and a longitude by name, as a position."""
    if isinstance(value, Mapping):
        value = (value.get("latitude"), value.get("longitude"))
    numbers = [plain_number(one) for one in value] if isinstance(value, list | tuple) and len(value) == 2 else [None]
    if any(number is None or not math.isfinite(number) for number in numbers):
        return written.Unread("unreadable", "is no position", '"59.314 N, 18.912 E"')
    return position.position(f"{numbers[0]:.9f}, {numbers[1]:.9f}")


def _at_and_position(one: Any) -> tuple[Any, Any]:
    if isinstance(one, Mapping):
        return one.get("at", ""), one.get("position", "")
    if isinstance(one, Sequence) and not isinstance(one, str) and len(one) == 2:
        return one[0], one[1]
    return getattr(one, "at", ""), getattr(one, "position", "")


def _not_text(term: Term, raw: Any) -> Taken | Fault:
    return fault(term.name, "wrong_kind", raw, f"is no {term.kind.name}", term.would_do)


def _take_word(term: Term, raw: Any) -> Taken | Fault:
    value = raw.get("value") if isinstance(raw, Mapping) else getattr(raw, "value", raw)
    return _word(term, value) if isinstance(value, str) else _not_text(term, raw)


def _take_flag(term: Term, raw: Any) -> Taken | Fault:
    value = raw.get("value") if isinstance(raw, Mapping) else getattr(raw, "value", raw)
    if isinstance(value, bool) or type(value).__name__ in ("bool", "bool_"):
        return Taken(bool(value), bool(value), text="yes" if value else "no")
    return _not_text(term, raw)


def _take_clock(term: Term, raw: Any) -> Taken | Fault:
    value = raw.get("value") if isinstance(raw, Mapping) else getattr(raw, "value", raw)
    if isinstance(value, datetime | time):
        value = value.isoformat()
    return _clock(term, value) if isinstance(value, str) else _not_text(term, raw)


def _take_position(term: Term, raw: Any) -> Taken | Fault:
    value = raw.get("value", raw) if isinstance(raw, Mapping) else getattr(raw, "value", raw)
    if isinstance(value, str):
        return _position(term, value)
    found = _pair(value)
    if isinstance(found, written.Unread):
        return fault(term.name, found.code, raw, found.why, found.would_do or term.would_do)
    return Taken(found, found, text=position.position_text(found))


def _take_lengths(term: Term, raw: Any) -> Taken | Fault:
    if isinstance(raw, Mapping) and isinstance(raw.get("value"), list | tuple) and isinstance(raw.get("unit"), str):
        raw = [{"value": one, "unit": raw["unit"]} for one in raw["value"]]
    if isinstance(raw, list | tuple):
        return _list_of_lengths(term, raw, raw)
    return _not_text(term, raw)


def _take_fixes(term: Term, raw: Any) -> Taken | Fault:
    value = raw.get("value") if isinstance(raw, Mapping) else getattr(raw, "value", raw)
    return _list_of_fixes(term, value, raw) if isinstance(value, list | tuple) else _not_text(term, raw)


_TEXT_READERS: dict[str, Callable[[Term, str], Taken | Fault]] = {
    WORD.name: _word,
    FLAG.name: _flag,
    CLOCK.name: _clock,
    POSITION.name: _position,
    LENGTHS.name: _lengths,
    FIXES.name: _fixes,
}
_TAKERS: dict[str, Callable[[Term, Any], Taken | Fault]] = {
    WORD.name: _take_word,
    FLAG.name: _take_flag,
    CLOCK.name: _take_clock,
    POSITION.name: _take_position,
    LENGTHS.name: _take_lengths,
    FIXES.name: _take_fixes,
}

__all__ = ["LONGEST", "MOST_FIXES", "Taken", "bounded", "spoken", "take", "text_of"]
