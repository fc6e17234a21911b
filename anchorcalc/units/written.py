"""A whole text that is one quantity, as typed calls, tables and boat files give it: `12 ft`, `5'6"`, `3..4 m`, `F6`, `7:1`.

The whole text must be read, in one way only; whatever does not fit comes back as `Unread`, with what would do.
"""

import math
import re
from difflib import get_close_matches
from functools import lru_cache
from typing import NamedTuple

from anchorcalc.errors import Code
from anchorcalc.units.kinds import BEAUFORT_KNOTS, FOLDED, UNIT, Amount, Unit, symbols_of, units_spelled
from anchorcalc.units.number_words import spelled
from anchorcalc.units.numbers import NUMERAL, numeral, plain

LONGEST = 120
_KNOT = UNIT["kn"].factor
PLAINLY = re.compile(r"\s*([+-]?\d+(?:\.\d+)?)[ ]?([A-Za-z]*)\s*\Z")
_LEAD = re.compile(rf"\s*([+-]?)[ \xa0]?({NUMERAL})\s*")
_GROUPED = re.compile(r"\s*[1-9]\d{0,2}(?:[ \xa0]\d{3})+(?![\d/])")
_RANGE = re.compile(r"\s*(?:\.\.\.?|…|–)\s*|\s+to\s+|(?<=[\w'\"°²½¼¾⅛⅜⅝⅞])\s?-\s?(?=[\d.½¼¾])", re.I)
_BEAUFORT = re.compile(
    r"\s*(?:(?:f|force|bft?|beaufort|beaufort force|force beaufort)\.?[ \xa0]*(\d{1,2})(?:\s*(?:\.\.\.?|–|-|to)\s*(?:f|force|bft)?[ ]?(\d{1,2}))?"
    r"|(\d{1,2})(?:\s*(?:\.\.\.?|–|-|to)\s*(\d{1,2}))?[ \xa0]?(?:bft?|beaufort)\.?)\s*\Z",
    re.I,
)
_RATIO = re.compile(rf"\s*(?:({NUMERAL})(?::1)?\s*(?:\.\.\.?|–|-|to)\s*)?({NUMERAL})\s*(?::|\s+to\s+|\s+(in)\s+)\s*({NUMERAL})\s*\Z", re.I)
_BOUNDLESS = re.compile(r"\s*[+-]?\s*(?:nan|inf|infinity|infinite|∞)(?![a-z])", re.I)
_COMPOUND = re.compile(rf"([^\d,;:.{'¼½¾'}]+?)\.?,?\s*(?:and\s+)?({NUMERAL})\s*([^\d]*)\Z")
_DEGREES = re.compile(r"(?:°|deg(?:rees?)?)\s*(\d+(?:\.\d+)?)\s*(?:'|min(?:utes?)?)(?:\s*(\d+(?:\.\d+)?)\s*(?:\"|''|sec(?:onds?)?))?\s*\Z", re.I)
_SHARED_SPACE = re.compile(r"\s+")


class Unread(NamedTuple):
    """Why a text could not be taken, and what would do."""

    code: Code
    why: str
    would_do: str


_UNREADABLE = Unread("unreadable", "cannot be read as one quantity", '"12 ft", "3.6 m", "5 ft 6 in" or "3..4 m"')
_TON = Unread("unknown_unit", "may be a short, a long or a metric ton", '"8 t", "8 short_ton" or "8 long_ton"')
_BACKWARDS = Unread("unreadable", "runs from high to low; the low end comes first", '"3..4 m"')


@lru_cache(maxsize=8192)
def amount(text: str, *, kind: str | None = None) -> Amount | Unread:
    """Return the quantity that a text is, or why it is none; `kind` is preferred where letter case alone decides (`KN`).

    A bare number is an `Amount` of kind "number", a ratio (`7:1`, `7 to 1`, `1:20` = 0.05) of kind "ratio", Beaufort a range of speed in kn.
    """
    found = PLAINLY.match(text)
    if found:
        if not found[2]:
            value = float(found[1])
            return Amount("number", value, value, "", value, value) if math.isfinite(value) else _not_finite()
        unit = _unit(found[2], kind=kind)
        if type(unit) is Unit:
            return _one(value=float(found[1]), unit=unit)
    return _slow(text, kind=kind)


def _not_finite() -> Unread:
    return Unread("not_finite", "is not a finite number", '"12 ft" or "3.6 m"')


def _one(*, value: float, unit: Unit | None) -> Amount | Unread:
    si = value * unit.factor if unit else value
    if not math.isfinite(si):
        return _not_finite()
    return Amount(unit.kind, si, si, unit.symbol, value, value) if unit else Amount("number", value, value, "", value, value)


def _unit(spelling: str, *, kind: str | None) -> Unit | Unread:
    """Return the unit of a spelling: the preferred kind's where two fit."""
    found = units_spelled(text=spelling)
    if len(found) == 1:
        return found[0]
    if found:
        for unit in found:
            if unit.kind == kind:
                return unit
        symbols = " or ".join(unit.symbol for unit in found)
        return Unread("unknown_unit", f"has a unit that could be {symbols}: letter case decides", f"{symbols}, written so")
    return _unknown(spelling, kind=kind)


def _unknown(spelling: str, *, kind: str | None) -> Unread:
    folded = spelling.casefold().strip(" .")
    if folded in ("ton", "tons"):
        return _TON
    head = folded.rsplit(" ", 1)[0]
    while head != folded:
        if units_spelled(text=head):
            return Unread("unreadable", "says more than one quantity", f'the quantity alone, such as "3 {units_spelled(text=head)[0].symbol}"')
        folded, head = head, head.rsplit(" ", 1)[0]
    near = get_close_matches(spelling.casefold()[:40], FOLDED, n=3, cutoff=0.6)
    symbols = [*dict.fromkeys(FOLDED[one][0].symbol for one in near)] or list(symbols_of(kind=kind or "length"))
    return Unread("unknown_unit", f"has no unit known here ({spelling.strip()[:24]!r})", ", ".join(symbols))


def _slow(text: str, *, kind: str | None) -> Amount | Unread:
    if len(text) > LONGEST:
        return Unread("unreadable", "is too long for one quantity", _UNREADABLE.would_do)
    said = plain(text).strip()
    if _BOUNDLESS.match(said):
        return _not_finite()
    found = _BEAUFORT.match(said)
    if found:
        low, high = found[1] or found[3], found[2] or found[4]
        return beaufort(low=int(low), high=int(high or low))
    found = _RATIO.match(said)
    if found:
        return _ratio(found)
    ends = _RANGE.split(said)
    whole = _single(said, kind=kind) if len(ends) == 1 or "-" in said else _UNREADABLE  # a hyphen may stand in 1-1/2 or before -5
    if type(whole) is Amount:
        return whole
    if len(ends) == 2 and all(ends):
        return _range(low=ends[0], high=ends[1], kind=kind)
    return whole


def beaufort(*, low: int, high: int) -> Amount | Unread:
    """Return the WMO range of one or two Beaufort forces, as a speed in kn."""
    if low > high:
        return _BACKWARDS
    if high >= len(BEAUFORT_KNOTS) - 1:
        why = "has no upper end" if high == len(BEAUFORT_KNOTS) - 1 else "is no force of the Beaufort scale"
        return Unread("out_of_bounds", why, '"F11" or a speed, such as "65 kn"')
    slow, fast = BEAUFORT_KNOTS[low][0], BEAUFORT_KNOTS[high][1]
    return Amount("speed", slow * _KNOT, fast * _KNOT, "kn", slow, fast, True)


def _ratio(found: re.Match[str]) -> Amount | Unread:
    lowest, over, under = (numeral(found[one]) if found[one] else None for one in (1, 2, 4))
    if over is None or under is None or not under or not over or (found[3] and over != 1.0):
        return _UNREADABLE
    if not math.isfinite(over / under):
        return _not_finite()
    if 1.0 not in (over, under):
        return Unread("unreadable", "is a ratio of two numbers, neither of them 1", '"7:1" or "1:20"')
    if lowest is None:
        return Amount("ratio", over / under, over / under, "", over / under, over / under)
    if under != 1.0 or lowest > over:
        return _BACKWARDS if lowest > over else _UNREADABLE
    return Amount("ratio", lowest, over, "", lowest, over)


def _single(said: str, *, kind: str | None) -> Amount | Unread:
    """Return one quantity without a range: a number and its unit, or several that add up (`5 ft 6 in`)."""
    found = _LEAD.match(said)
    if not found:
        return _in_words(said, kind=kind)
    grouped = _GROUPED.match(said)
    value = float(_SHARED_SPACE.sub("", grouped[0])) if grouped else numeral(found[2])
    if value is None:
        return _UNREADABLE
    sign = -1.0 if found[1] == "-" and not grouped else 1.0
    rest = said[(grouped or found).end() :].strip()
    if not rest:
        return _one(value=sign * value, unit=None)
    if not any(mark.isdigit() for mark in rest.rstrip("2²")) and not any(mark in "¼½¾" for mark in rest):
        unit = _unit(_SHARED_SPACE.sub(" ", rest), kind=kind)
        return _one(value=sign * value, unit=unit) if type(unit) is Unit else unit  # type: ignore[return-value]
    return _sum(value=value, sign=sign, rest=rest)


def _in_words(said: str, *, kind: str | None) -> Amount | Unread:
    """Return a quantity whose number is in words: `six feet`, `half a cable`."""
    number = spelled(text=said.lower(), at=0) if said.isascii() else None
    if number is None or number.rough or said[number.end : number.end + 1].isalnum():
        return _UNREADABLE
    rest = said[number.end :].strip(" -")
    unit = _unit(_SHARED_SPACE.sub(" ", rest), kind=kind) if rest else None
    return unit if isinstance(unit, Unread) else _one(value=number.value, unit=unit)


def _sum(*, value: float, sign: float, rest: str) -> Amount | Unread:
    """Return the sum of a quantity and what follows it in a smaller unit: `5 ft 6 in`, `5'6"`, `5°30'`, `1 h 30 min`."""
    arc = _DEGREES.match(rest)
    if arc:
        return _one(value=sign * (value + float(arc[1]) / 60 + float(arc[2] or 0) / 3600), unit=UNIT["deg"])
    found = _COMPOUND.match(rest)
    if not found:
        return _UNREADABLE
    first, more = units_spelled(text=found[1].strip()), numeral(found[2])
    spelling = found[3].strip() or ("in" if first and first[0].symbol == "ft" else "")
    second = units_spelled(text=spelling)
    if more is None or len(first) != 1 or len(second) != 1:
        return _UNREADABLE
    big, small = first[0], second[0]
    if big.kind != small.kind or more * small.factor >= big.factor * (1 - 1e-12):
        return Unread("unreadable", "is two quantities that do not add up", _UNREADABLE.would_do)
    return _one(value=sign * (value + more * small.factor / big.factor), unit=big)


def _range(*, low: str, high: str, kind: str | None) -> Amount | Unread:
    """Return a range from the texts of its ends; the low end may leave its unit to the high one."""
    top, bottom = _single(high, kind=kind), _single(low, kind=kind)
    if isinstance(top, Unread):
        return top
    if isinstance(bottom, Unread):
        return bottom
    if not bottom.unit and top.unit:
        bottom = Amount(top.kind, bottom.value * UNIT[top.unit].factor, 0.0, top.unit, bottom.value, 0.0)
    if bottom.kind != top.kind:
        return Unread("unreadable", "has ends of two kinds", '"3..4 m"')
    if bottom.low > top.low:
        return _BACKWARDS
    return Amount(top.kind, bottom.low, top.low, bottom.unit, bottom.value, top.low / UNIT[bottom.unit].factor if bottom.unit else top.value)


_SEPARATED = re.compile(r"\s*;\s*|\s*,\s+and\s+|\s+and\s+|\s*&\s*|\s*,\s*", re.I)
_TWO_WAYS = re.compile(r"[1-9]\d{0,2},\d{3}(?![\d,])")


def lengths(text: str) -> tuple[Amount, ...] | Unread:
    """Return a list of lengths that may share the last one's unit: `10,20,40 m`, `10 m; 20 m`, `10, 20 and 40 m`.

    Commas separate here; no decimal comma may stand in a list, unless `;` separates.
    """
    if len(text) > 100 * LONGEST:
        return Unread("unreadable", "is too long for a list of lengths", '"10,20,40 m"')
    return _short_lengths(text) if len(text) <= LONGEST else _lengths(text)


@lru_cache(maxsize=1024)
def _short_lengths(text: str) -> tuple[Amount, ...] | Unread:
    """Remember short lists only: long ones would fill the memory."""
    return _lengths(text)


def _lengths(text: str) -> tuple[Amount, ...] | Unread:
    said = plain(text).strip()
    semicolons = ";" in said
    if not semicolons and _TWO_WAYS.search(said) and said.count(",") == 1:
        return Unread("unreadable", "may be one length or a list of two", '"1200 ft", or "1; 200 ft"')
    parts = said.split(";") if semicolons else _SEPARATED.split(said)
    read = [amount(part.strip(), kind="length") for part in parts if part.strip()]
    if not read:
        return Unread("unreadable", "has no length in it", '"10,20,40 m"')
    return _with_shared_unit(read)


def _with_shared_unit(read: list[Amount | Unread]) -> tuple[Amount, ...] | Unread:
    found: list[Amount] = []
    unit = ""
    for one in reversed(read):
        if isinstance(one, Unread):
            return one
        if one.is_range:
            return Unread("range_not_taken", "has a range in a list", '"10,20,40 m"')
        unit = one.unit or unit
        si = one.value * UNIT[unit].factor if unit else one.value
        found.append(Amount(UNIT[unit].kind, si, si, unit, one.value, one.value) if unit else one)
    return tuple(reversed(found))
