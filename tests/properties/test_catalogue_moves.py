"""What must hold for every question: results move with each input as declared, and of a range the worst counts."""

import math
import re
from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from anchorcalc.answering.answer import answer
from anchorcalc.declare import Field, Question
from anchorcalc.errors import InputError
from anchorcalc.units import kinds
from anchorcalc.units.quantity import Quantity
from tests.properties.generated import QUESTIONS, as_given, raw_inputs, slack, solved, tried, values_of

MOVES = re.compile(r"([+\-~^])(\w+)")


def moves_of(question: Question, result: str) -> dict[str, str]:
    """Which way a result moves with each input."""
    return {name: way for way, name in MOVES.findall(question.moves.get(result, ""))}


def field_of(question: Question, name: str) -> Field:
    """The field that a number belongs to."""
    return next(field for field in question.fields if field.name == name.partition("[")[0])


@QUESTIONS
@tried(40)
@given(data=st.data())
def test_results_move_with_each_input_as_declared(question: Question, data: st.DataObject) -> None:
    raw = data.draw(raw_inputs(question=question))
    before = solved(question, as_given(question, raw))
    if before is None:
        return
    for name in [one for one, value in raw.items() if isinstance(value, float)]:
        other = data.draw(values_of(question.inputs[name].term))
        less, more = sorted((raw[name], other))
        low, high = (solved(question, as_given(question, {**raw, name: value})) for value in (less, more))
        if low is not None and high is not None:
            check_moves(question, name, low, high)


def check_moves(question: Question, name: str, low: dict[str, float], high: dict[str, float]) -> None:
    for result in low.keys() & high.keys():
        field = field_of(question, result)
        if field.side.follows or math.isnan(low[result]) or math.isnan(high[result]):
            continue
        way = moves_of(question, field.name).get(name, "")
        step = high[result] - low[result] if low[result] != high[result] else 0.0
        said = f"{question.name}.{result} went from {low[result]} to {high[result]} as {name} grew"
        if way in ("", "+"):
            assert step >= -slack(low[result], high[result]), said
        if way in ("", "-"):
            assert step <= slack(low[result], high[result]), said


@QUESTIONS
def test_every_name_in_moves_is_an_input_and_every_result_stands_there(question: Question) -> None:
    for result, moves in question.moves.items():
        assert result in {field.name for field in question.fields}
        assert {name for _, name in MOVES.findall(moves)} <= set(question.inputs)
        assert MOVES.sub("", moves).strip() == ""


# --- ranges -------------------------------------------------------------------------------------------------------------------------


@QUESTIONS
@tried(40)
@given(data=st.data())
def test_no_point_inside_a_range_is_worse_than_the_end_that_was_shown(question: Question, data: st.DataObject) -> None:
    raw = data.draw(raw_inputs(question=question))
    names = [name for name, value in raw.items() if isinstance(value, float) and name not in question.takes_no_range]
    if not names:
        return
    chosen = data.draw(st.lists(st.sampled_from(names), min_size=1, max_size=4, unique=True))
    ends: dict[str, tuple[float, float]] = {}
    for name in chosen:
        wide = data.draw(st.floats(1.01, 2.0))
        ends[name] = (raw[name], raw[name] * wide + 0.01)
    try:
        shown = answer(question, as_given(question, raw, ends=ends))
    except InputError:
        return
    for _ in range(4):
        parts = {name: data.draw(st.floats(0.0, 1.0)) for name in chosen}
        inside = {name: low + parts[name] * (high - low) for name, (low, high) in ends.items()}
        found = solved(question, as_given(question, {**raw, **inside}))
        if found is not None:
            check_worst(question, shown.results, found, inside)


def check_worst(question: Question, results: Any, found: dict[str, float], inside: dict[str, float]) -> None:
    for field in question.fields:
        value = getattr(results, field.name)
        if field.many or field.side.follows or field.kind is kinds.CLOCK or value is None or field.name not in found:
            continue
        number = _number(field, value)
        if math.isnan(found[field.name]) or number is None:
            continue
        gap = found[field.name] - number
        said = f"{question.name}.{field.name} is {found[field.name]} at {inside}, worse than the {number} shown"
        tolerance = 0.0 if field.kind in (kinds.FLAG, kinds.WORD) else slack(number, found[field.name])
        assert (gap <= tolerance) if field.side.worst == "greatest" else (gap >= -tolerance), said


def _number(field: Field, value: Any) -> float | None:
    if isinstance(value, Quantity):
        return value.si
    if isinstance(value, bool):
        return float(value)
    return float(field.choices.index(value)) if field.choices else None
