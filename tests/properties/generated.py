"""Inputs for any question, made from its declaration: for hypothesis, and for whatever else must hold for every question."""

import math
from collections.abc import Iterator, Mapping
from typing import Any

import numpy as np
import pytest
from hypothesis import HealthCheck, Phase, settings
from hypothesis import strategies as st

from anchorcalc.answering.gate import Admitted, admit
from anchorcalc.catalogue import catalogue
from anchorcalc.declare import Field, Question
from anchorcalc.errors import InputError
from anchorcalc.units import kinds
from anchorcalc.units.kinds import UNIT, symbols_of
from anchorcalc.vocabulary.term import Term

# What a small boat meets, in SI: narrower than the bounds of the terms, wide enough to pass every turn of every question.
WINDOWS: dict[str, tuple[float, float]] = {
    "depth": (0.5, 30.0), "bow_height": (0.2, 3.0), "tide_rise": (0.0, 9.0), "tide_fall": (0.0, 9.0), "scope": (1.5, 12.0),
    "least_scope": (2.0, 8.0), "rode_out": (5.0, 120.0), "rode_aboard": (10.0, 150.0), "chain": (0.0, 60.0), "line": (10.0, 120.0),
    "reserve": (0.0, 8.0), "chain_size": (0.005, 0.018), "line_size": (0.007, 0.035), "mark_interval": (1.0, 15.0), "shackle_size": (0.005, 0.03),
    "boat_length": (2.5, 25.0), "beam": (1.0, 7.0), "draught": (0.2, 3.0), "wind": (1.0, 40.0), "current": (0.0, 3.0), "load": (50.0, 30e3),
    "pull_angle": (0.0, 1.2), "anchor_mass": (1.0, 90.0), "pull": (50.0, 20e3), "engine_power": (1e3, 200e3), "propeller_diameter": (0.1, 1.0),
    "distance": (5.0, 300.0), "margin": (0.0, 30.0), "other_rode_out": (5.0, 120.0), "other_boat_length": (2.5, 25.0), "reading": (0.3, 30.0),
    "transducer_depth": (0.0, 2.0), "angle": (0.05, 1.5), "spread": (0.0, 3.1), "wind_off": (0.0, 1.5), "low_height": (-1.0, 3.0),
    "high_height": (2.0, 10.0), "slope": (1.5, 60.0), "under_keel": (0.0, 3.0), "position_error": (1.0, 15.0), "antenna_from_bow": (0.0, 25.0),
    "distance_off": (10.0, 1000.0), "drift": (0.1, 4.0), "displacement": (300.0, 30e3),
}  # fmt: skip
TIDE_TIMES = frozenset({"low_at", "high_at", "at"})
METRIC_UNITS = {"length": "m", "mass": "kg", "speed": "m/s", "force": "N", "angle": "rad", "power": "W", "time": "s", "area": "m²"}

Inputs = dict[str, Any]


def quantity(term: Term, si: float, unit: str | None = None) -> Any:
    """A value in SI as a typed call gives it, in SI or in another unit of its kind."""
    if not term.kind.has_unit:
        return si
    symbol = unit if unit in symbols_of(kind=term.kind.name) else METRIC_UNITS[term.kind.name]
    return {"value": si / UNIT[symbol].factor, "unit": symbol}


def window(term: Term) -> tuple[float, float]:
    """Between what values a term is tried."""
    return WINDOWS.get(term.name) or (float(term.least or term.above or 0.0), float(term.most or 1.0))


def values_of(term: Term) -> st.SearchStrategy[Any]:
    """Values of a term: SI numbers, words, flags, lists."""
    if term.kind.name == kinds.WORD.name:
        return st.sampled_from(term.choices)
    if term.kind is kinds.FLAG:
        return st.booleans()
    if term.kind is kinds.POSITION:
        return st.just("64.1 N, 10.2 E")
    if term.kind is kinds.FIXES:
        metres = st.lists(st.tuples(st.floats(0.0, 60.0), st.floats(-60.0, 60.0)), min_size=1, max_size=8)
        return metres.map(_fixes)
    if term.kind is kinds.LENGTHS:
        return st.lists(st.integers(1, 100), min_size=1, max_size=6, unique=True).map(
            lambda marks: ",".join(str(one) for one in sorted(marks)) + " m"
        )
    low, high = window(term)
    return st.floats(low, high).map(lambda value: float(f"{value:.9g}"))


def _fixes(metres: list[tuple[float, float]]) -> list[dict[str, str]]:
    north, east = 1.0 / 111_400.0, 1.0 / 48_700.0  # degrees a metre at 64 north
    return [
        {"at": f"2026-06-01T{number // 6:02d}:{number % 6}0", "position": f"{64.1 + one * north:.7f} N, {10.2 + other * east:.7f} E"}
        for number, (one, other) in enumerate(metres)
    ]


@st.composite
def tide_times(draw: st.DrawFn) -> dict[str, str]:
    """The times of a low and a high water, either first, and one between them."""
    start, length = draw(st.integers(0, 600)), draw(st.integers(240, 560))
    part = draw(st.integers(0, length))
    first, last, at = (f"2026-06-01T{minute // 60:02d}:{minute % 60:02d}" for minute in (start, start + length, start + part))
    low_at, high_at = (first, last) if draw(st.booleans()) else (last, first)
    return {"low_at": low_at, "high_at": high_at, "at": at}


@st.composite
def raw_inputs(draw: st.DrawFn, *, question: Question) -> Inputs:
    """A full set of inputs of a question, SI numbers and words; not every set passes the gate."""
    found: Inputs = {}
    for name, wanted in _wanted(draw, question).items():
        if wanted and name not in TIDE_TIMES:
            found[name] = draw(values_of(question.inputs[name].term))
    if set(question.inputs) >= TIDE_TIMES:
        found |= draw(tide_times())
    return _made_possible(draw, found)


def _wanted(draw: st.DrawFn, question: Question) -> dict[str, bool]:
    derived = {one.gives: one for one in question.derives}
    wanted = {name: one.need == "asked" or draw(st.booleans()) for name, one in question.inputs.items()}
    for gives, derivation in derived.items():
        if question.inputs[gives].need == "asked":
            wanted[gives] = draw(st.booleans())
            for name in (*derivation.asks_for, *derivation.needs) if not wanted[gives] else ():
                wanted[name] = True
    for group in question.one_of:
        wanted |= dict.fromkeys(group, False)
    if question.one_of:
        wanted |= dict.fromkeys(draw(st.sampled_from(question.one_of)), True)
    for pair in question.pairs:
        wanted |= dict.fromkeys(pair, draw(st.booleans()))
    for name in dict.fromkeys(rule.input for rule in question.requires):  # mostly given, and at times left to what stands in for it
        wanted[name] = wanted[name] or draw(st.sampled_from([True, True, False]))
    return wanted


def _made_possible(draw: st.DrawFn, found: Inputs) -> Inputs:
    """Lay enough rode out for the anchor to be on the bottom, mostly."""
    height = found.get("depth", 0.0) + found.get("bow_height", 1.2)
    for name in ("rode_out", "other_rode_out", "rode_aboard"):
        if name in found and found[name] <= height * 1.05:
            found[name] = float(f"{height * draw(st.floats(1.1, 8.0)):.9g}")
    if found.get("high_height", 9.0) < found.get("low_height", 0.0):
        found["high_height"], found["low_height"] = found["low_height"], found["high_height"]
    return found


def as_given(question: Question, raw: Mapping[str, Any], *, unit: str | None = None, ends: Mapping[str, tuple[float, float]] | None = None) -> Inputs:
    """The inputs as a typed call takes them, lengths in a unit; `ends` makes ranges of some."""
    given: Inputs = {}
    for name, value in raw.items():
        term = question.inputs[name].term
        plain = isinstance(value, float) and not isinstance(value, bool)
        given[name] = quantity(term, value, unit) if plain else value
    for name, (low, high) in (ends or {}).items():
        given[name] = _range(question.inputs[name].term, low, high)
    return given


def _range(term: Term, low: float, high: float) -> Any:
    if not term.kind.has_unit:
        return {"low": low, "high": high}
    return {"low": low, "high": high, "unit": METRIC_UNITS[term.kind.name]}


def admitted(question: Question, given: Inputs) -> Admitted | None:
    """What passes the gate, or None."""
    try:
        return admit(question, given)
    except InputError:
        return None


def solved(question: Question, given: Inputs) -> dict[str, float] | None:
    """Every result by name as a number (words by their place, flags 0 or 1, lists item by item; nan for absent), or None where refused."""
    passed = admitted(question, given)
    if passed is None:
        return None
    found = question.solve(**{name: passed.values[name] for name in question.direct if name in passed.values})
    return dict(numbers(question.fields, found))


def numbers(fields: tuple[Field, ...], found: Mapping[str, Any], before: str = "") -> Iterator[tuple[str, float]]:
    """Results as numbers; the name of an item of a list is `list[place]` or `list[place].field`."""
    for field in fields:
        value = found.get(field.name)
        name = before + field.name
        if field.many:
            for place, one in enumerate(value or ()):
                if isinstance(one, Mapping):
                    if np.all(one.get("when", True)):
                        yield from numbers(field.fields, one, f"{name}[{one.get('part', place)}].")
                elif not isinstance(one, str):
                    yield f"{name}[{place}]", float(one)
        elif isinstance(value, str):
            yield name, float(sum(ord(sign) * 131**place for place, sign in enumerate(value[:6])))
        else:
            number = float("nan") if value is None else float(value)
            yield name, float("nan") if field.kind is kinds.CLOCK and math.isinf(number) else number


QUESTIONS = pytest.mark.parametrize("question", catalogue(), ids=lambda question: question.name)
SLACK = 1e-9  # of the greatest number about: what the sums of a solver may be off


def tried(cases: int) -> settings:
    """Run a property on so many cases, the same every time."""
    phases = (Phase.explicit, Phase.generate, Phase.shrink)
    return settings(max_examples=cases, deadline=None, derandomize=True, database=None, phases=phases, suppress_health_check=list(HealthCheck))


def slack(*numbers: float) -> float:
    """How far numbers may lie apart that should be alike."""
    return SLACK * max([1.0, *(abs(one) for one in numbers if math.isfinite(one))])
