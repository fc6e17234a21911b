"""Quantities in any form into SI: written amounts, numbers, results of earlier answers, pint's, and JSON's."""

import math
from collections.abc import Mapping
from typing import Any

import msgspec

from anchorcalc.answering.taken import Taken, bounded, plain_number, worked_text
from anchorcalc.errors import Fault, fault
from anchorcalc.units.kinds import RATIO, SLOPE, UNIT, Amount, symbols_of, units_spelled
from anchorcalc.units.pints import from_pint, is_pint
from anchorcalc.units.quantity import Quantity
from anchorcalc.vocabulary.term import Term


def _wrong_dimension(term: Term, given: Any, kind: str) -> Fault:
    units = ", ".join(symbols_of(kind=term.kind.name)[:8])
    if not term.kind.has_unit:
        return fault(term.name, "wrong_dimension", given, f"is a {kind}, not a {term.kind.name}", term.would_do)
    return fault(
        term.name, "wrong_dimension", given, f"is a {kind}, not a {term.kind.name}", f"a {term.kind.name} in {units}, such as {term.would_do},"
    )


def from_amount(term: Term, amount: Amount, given: Any) -> Taken | Fault:
    """Return an amount as taken for a term, where its dimension is the term's."""
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


def take_quantity(term: Term, raw: Any) -> Taken | Fault:
    """Return a value that is no text as taken for a term."""
    if isinstance(raw, Amount):
        return from_amount(term, raw, _amount_text(raw))
    if isinstance(raw, Quantity):
        return _from_si(term, raw.si, raw.unit, raw.shown)
    if is_pint(raw):
        return _from_pint(term, raw)
    if isinstance(raw, Mapping):
        return _from_mapping(term, raw)
    number = plain_number(raw)
    if number is None:
        return fault(term.name, "wrong_kind", raw, f"is no {term.kind.name}", term.would_do)
    if not math.isfinite(number):
        return fault(term.name, "not_finite", raw, "is not a finite number", term.would_do)
    return from_amount(term, Amount("number", number, number, "", number, number), raw)


def _amount_text(amount: Amount) -> str:
    low, high = f"{amount.value:.12g}", f"{amount.value_high:.12g}"
    return f"{low if low == high else f'{low} to {high}'} {amount.unit}".rstrip()


def _from_si(term: Term, si: float, unit: str, given: Any) -> Taken | Fault:
    kind = UNIT[unit].kind if unit else "number"
    if kind != term.kind.name and (term.kind.has_unit or unit):
        return _wrong_dimension(term, given, kind)
    taken = bounded(term=term, low=si, high=si, unit=unit, given=given)
    return taken if isinstance(taken, Fault) else msgspec.structs.replace(taken, text=worked_text(term=term, low=si, high=si, unit=unit))


def _from_pint(term: Term, raw: Any) -> Taken | Fault:
    if getattr(raw.magnitude, "ndim", 0) or not isinstance(plain_number(raw.magnitude), float):
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
    numbers = [plain_number(raw.get(key)) for key in (("si",) if "si" in raw else ("low", "high") if "low" in raw else ("value",))]
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
    return from_amount(term, Amount(kind, ends[0] * factor, ends[-1] * factor, unit.symbol if unit else "", ends[0], ends[-1]), raw)
