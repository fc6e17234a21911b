"""One value for one term, in any form that a door may bring, into SI: or the fault that it is."""

import math
import sys
from collections.abc import Callable, Mapping, Sequence
from datetime import datetime, time
from difflib import get_close_matches
from functools import lru_cache
from itertools import pairwise
from numbers import Real
from typing import Any, NamedTuple

from anchorcalc.errors import Code, Fault, fault
from anchorcalc.units import clock, position, written
from anchorcalc.units.kinds import CLOCK, FIXES, FLAG, LENGTH, LENGTHS, POSITION, RATIO, SLOPE, UNIT, WORD, Amount, symbols_of, units_spelled
from anchorcalc.units.pints import from_pint, is_pint
from anchorcalc.units.quantity import Quantity
from anchorcalc.units.shown import exact_text, tidy, working_text
from anchorcalc.vocabulary.term import Term

LONGEST = 200  # characters of one value


class Taken(NamedTuple):
    """A value as it was taken: SI from `low` to `high` (equal where it is no range), the unit it is shown in, and its text.

    Words are the index among the term's choices, flags are bools, clock times and positions their own types, lists are tuples.
    """

    low: Any
    high: Any
    unit: str = ""
    text: str = ""
    beaufort: bool = False
    is_range: bool = False


def take(*, term: Term, raw: Any) -> Taken | Fault:
    """Return a raw value as taken for a term, or the fault."""
    if isinstance(raw, str):
        return _from_text(term, raw) if len(raw) <= LONGEST else _read_text(term, raw)
    return _TAKERS.get(term.kind.name, _take_quantity)(term, raw)


@lru_cache(maxsize=8192)
def _from_text(term: Term, text: str) -> Taken | Fault:
    return _read_text(term, text)


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
    return _from_amount(term, found, text)


def _wrong_dimension(term: Term, given: Any, kind: str) -> Fault:
    units = ", ".join(symbols_of(kind=term.kind.name)[:8])
    if not term.kind.has_unit:
        return fault(term.name, "wrong_dimension", given, f"is a {kind}, not a {term.kind.name}", term.would_do)
    return fault(
        term.name, "wrong_dimension", given, f"is a {kind}, not a {term.kind.name}", f"a {term.kind.name} in {units}, such as {term.would_do},"
    )


def _from_amount(term: Term, amount: Amount, given: Any) -> Taken | Fault:
    if amount.kind == "number" and term.kind.has_unit:
        return fault(term.name, "bare_number", given, "has no unit", term.would_do)
    low, high = amount.low, amount.high
    if term.kind is RATIO or term.kind is SLOPE:
        if amount.kind not in ("number", "ratio"):
            return _wrong_dimension(term, given, amount.kind)
        if term.kind is SLOPE:  # 1:20 and 0.05 are the same beach; so is 20, one down for twenty out
            low, high = sorted(1.0 / end if 0.0 < end < 1.0 else end for end in (low, high))
    elif amount.kind != term.kind.name:
        return _wrong_dimension(term, given, amount.kind)
    return bounded(term=term, low=low, high=high, unit=amount.unit, given=given, beaufort=amount.beaufort)


def bounded(*, term: Term, low: float, high: float, unit: str, given: Any, beaufort: bool = False) -> Taken | Fault:
    """Return two ends in SI as taken, where both are finite and within the term's bounds."""
    for end in (low, high) if low != high else (low,):
        if not math.isfinite(end):
            return fault(term.name, "not_finite", given, "is not a finite number", term.would_do)
        why = term.out_of_bounds(value=end)
        if why:
            code: Code = "negative" if end < 0.0 and (term.least or 0.0) >= 0.0 else "out_of_bounds"
            return fault(term.name, code, given, why, term.would_do)
    return Taken(low, high, unit, text_of(term=term, low=low, high=high, unit=unit), beaufort, low != high)


def text_of(*, term: Term, low: float, high: float, unit: str) -> str:
    """Return ends in SI as they are shown: all their digits, in their unit."""
    factor = UNIT[unit].factor if unit else 1.0
    if low == high:
        return exact_text(value=low / factor, unit=unit, kind=term.kind)
    first = f"{tidy(low / factor):.12g}" if unit else exact_text(value=low, unit=unit, kind=term.kind)
    return f"{first} to {exact_text(value=high / factor, unit=unit, kind=term.kind)}"


def worked_text(*, term: Term, low: float, high: float, unit: str) -> str:
    """Return ends in SI that were worked out, not written by anybody: to five significant digits."""
    factor = UNIT[unit].factor if unit else 1.0
    end = working_text(value=high / factor, unit=unit, kind=term.kind)
    return end if low == high else f"{float(f'{low / factor:.5g}'):.12g} to {end}"


# --- values that are not text -------------------------------------------------------------------------------------------------------


def _number(raw: Any) -> float | None:
    """Return a plain number (also numpy's) as a float."""
    if isinstance(raw, bool | str | bytes | bytearray):
        return None
    if isinstance(raw, int | float):
        return float(raw) if abs(raw) < 1e300 or isinstance(raw, float) else math.inf
    if isinstance(raw, Real) or ("decimal" in sys.modules and isinstance(raw, sys.modules["decimal"].Decimal)) or (hasattr(raw, "dtype") and getattr(raw, "ndim", 1) == 0 and raw.dtype.kind in "fiu"):
        try:
            return float(raw)
        except (OverflowError, ValueError):  # a fraction beyond all floats, a signalling nan
            return math.nan
    return None


def _take_quantity(term: Term, raw: Any) -> Taken | Fault:
    if isinstance(raw, Amount):
        return _from_amount(term, raw, _amount_text(raw))
    if isinstance(raw, Quantity):
        return _from_si(term, raw.si, raw.unit, raw.shown)
    if is_pint(raw):
        return _from_pint(term, raw)
    if isinstance(raw, Mapping):
        return _from_mapping(term, raw)
    number = _number(raw)
    if number is None:
        return fault(term.name, "wrong_kind", raw, f"is no {term.kind.name}", term.would_do)
    if not math.isfinite(number):
        return fault(term.name, "not_finite", raw, "is not a finite number", term.would_do)
    return _from_amount(term, Amount("number", number, number, "", number, number), raw)


def _amount_text(amount: Amount) -> str:
    low, high = f"{amount.value:.12g}", f"{amount.value_high:.12g}"
    return f"{low if low == high else f'{low} to {high}'} {amount.unit}".rstrip()


def _from_si(term: Term, si: float, unit: str, given: Any) -> Taken | Fault:
    kind = UNIT[unit].kind if unit else "number"
    if kind != term.kind.name and (term.kind.has_unit or unit):
        return _wrong_dimension(term, given, kind)
    taken = bounded(term=term, low=si, high=si, unit=unit, given=given)
    return taken if isinstance(taken, Fault) else taken._replace(text=worked_text(term=term, low=si, high=si, unit=unit))


def _from_pint(term: Term, raw: Any) -> Taken | Fault:
    if getattr(raw.magnitude, "ndim", 0) or not isinstance(_number(raw.magnitude), float):
        return fault(term.name, "wrong_kind", f"{raw}", "is not one number with a unit", term.would_do)
    si = from_pint(value=raw, kind=term.kind.name)
    if si is None:
        return _wrong_dimension(term, f"{raw}", str(raw.dimensionality))
    number = float(raw.magnitude)
    alike = (unit.symbol for unit in UNIT.values() if unit.kind == term.kind.name and math.isclose(number * unit.factor, si, rel_tol=1e-12))
    return bounded(term=term, low=si, high=si, unit=next(alike, term.kind.si), given=f"{raw}")


def _from_mapping(term: Term, raw: Mapping[str, Any]) -> Taken | Fault:
    unit_text = raw.get("unit", "")
    units = [unit for unit in units_spelled(text=unit_text) if unit.kind == term.kind.name] if isinstance(unit_text, str) and unit_text else []
    if isinstance(unit_text, str) and unit_text and not units:
        known = units_spelled(text=unit_text)
        if known:
            return _wrong_dimension(term, raw, known[0].kind)
        return fault(term.name, "unknown_unit", raw, f"has a unit that is not known ({unit_text[:20]})", term.would_do)
    numbers = [_number(raw.get(key)) for key in (("si",) if "si" in raw else ("low", "high") if "low" in raw else ("value",))]
    if not isinstance(unit_text, str) or not numbers or any(number is None for number in numbers):
        return fault(term.name, "unreadable", raw, "is no quantity", '{"value": 12, "unit": "ft"}' if term.kind.has_unit else term.would_do)
    ends = [number for number in numbers if number is not None]
    unit = units[0] if units else None
    if "si" in raw:
        return _from_si(term, ends[0], unit.symbol if unit else "", raw)
    if unit is None and term.kind.has_unit:
        return fault(term.name, "bare_number", raw, "has no unit", term.would_do)
    factor = unit.factor if unit else 1.0
    kind = unit.kind if unit else "number"
    if ends[0] > ends[-1]:
        return fault(term.name, "contradiction", raw, "has a low end above its high end", "the low end first")
    return _from_amount(term, Amount(kind, ends[0] * factor, ends[-1] * factor, unit.symbol if unit else "", ends[0], ends[-1]), raw)


# --- words, flags, times, places, lists ---------------------------------------------------------------------------------------------


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
    numbers = [_number(one) for one in value] if isinstance(value, list | tuple) and len(value) == 2 else [None]
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
