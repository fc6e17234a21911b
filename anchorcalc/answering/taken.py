"""A value as it was taken: in SI, within its bounds, and as it is shown."""

import math
import sys
from numbers import Real
from typing import Any

import msgspec

from anchorcalc.errors import Code, Fault, fault
from anchorcalc.units.kinds import UNIT
from anchorcalc.units.shown import exact, exact_text, tidy, working_text
from anchorcalc.vocabulary.term import Term


class Taken(msgspec.Struct, frozen=True, gc=False):  # no cycles: nothing for the collector
    """A value as it was taken: SI from `low` to `high` (equal where it is no range), the unit it is shown in, and its text.

    Words are the index among the term's choices, flags are bools, clock times and positions their own types, lists are tuples.
    `value` is the number in its unit, as an answer reads it, where it was settled with the text.
    """

    low: Any
    high: Any
    unit: str = ""
    text: str = ""
    beaufort: bool = False
    is_range: bool = False
    value: float | None = None


def bounded(*, term: Term, low: float, high: float, unit: str, given: Any, beaufort: bool = False) -> Taken | Fault:
    """Return two ends in SI as taken, where both are finite and within the term's bounds."""
    for end in (low, high) if low != high else (low,):
        if not math.isfinite(end):
            return fault(term.name, "not_finite", given, "is not a finite number", term.would_do)
        why = term.out_of_bounds(value=end)
        if why:
            code: Code = "negative" if end < 0.0 and (term.least or 0.0) >= 0.0 else "out_of_bounds"
            return fault(term.name, code, given, why, term.would_do)
    if low != high:
        return Taken(low, high, unit, text_of(term=term, low=low, high=high, unit=unit), beaufort, True)
    value, text = exact(value=low / UNIT[unit].factor if unit else low, unit=unit, kind=term.kind)
    return Taken(low, low, unit, text, beaufort, False, value)


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


def plain_number(raw: Any) -> float | None:
    """Return a plain number (also numpy's) as a float."""
    if isinstance(raw, bool | str | bytes | bytearray):
        return None
    if isinstance(raw, int | float):
        return float(raw) if abs(raw) < 1e300 or isinstance(raw, float) else math.inf
    decimal = "decimal" in sys.modules and isinstance(raw, sys.modules["decimal"].Decimal)
    of_numpy = hasattr(raw, "dtype") and getattr(raw, "ndim", 1) == 0 and raw.dtype.kind in "fiu"
    if isinstance(raw, Real) or decimal or of_numpy:
        try:
            return float(raw)
        except (OverflowError, ValueError):  # a fraction beyond all floats, a signalling nan
            return math.nan
    return None
