"""What must hold for every question, tried on inputs made from its declaration."""

import math
import re
from functools import partial
from typing import Any

import numpy as np
import pytest
from hypothesis import HealthCheck, Phase, find, given, settings
from hypothesis import strategies as st

from anchorcalc.answering.answer import answer
from anchorcalc.answering.gate import admit
from anchorcalc.catalogue import catalogue
from anchorcalc.declare import Field, Question
from anchorcalc.errors import InputError
from anchorcalc.physics.arrays import somewhere
from anchorcalc.units import kinds
from anchorcalc.units.kinds import UNIT, UNITS
from anchorcalc.units.quantity import Quantity
from anchorcalc.units.shown import rounded_text
from tests.properties.generated import Inputs, admitted, as_given, raw_inputs, solved, values_of

QUESTIONS = pytest.mark.parametrize("question", catalogue(), ids=lambda question: question.name)
MOVES = re.compile(r"([+\-~^])(\w+)")
SLACK = 1e-9  # of the greatest number about: what the sums of a solver may be off


def tried(cases: int) -> settings:
    """Run a property on so many cases, the same every time."""
    phases = (Phase.explicit, Phase.generate, Phase.shrink)
    return settings(max_examples=cases, deadline=None, derandomize=True, database=None, phases=phases, suppress_health_check=list(HealthCheck))


def moves_of(question: Question, result: str) -> dict[str, str]:
    """Which way a result moves with each input."""
    return {name: way for way, name in MOVES.findall(question.moves.get(result, ""))}


def field_of(question: Question, name: str) -> Field:
    """The field that a number belongs to."""
    return next(field for field in question.fields if field.name == name.partition("[")[0])


def slack(*numbers: float) -> float:
    return SLACK * max([1.0, *(abs(one) for one in numbers if math.isfinite(one))])


# --- which way each result moves ----------------------------------------------------------------------------------------------------


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


# --- units --------------------------------------------------------------------------------------------------------------------------


@QUESTIONS
@tried(20)
@given(data=st.data())
def test_the_same_question_in_feet_metres_and_fathoms_has_the_same_answer(question: Question, data: st.DataObject) -> None:
    raw = data.draw(raw_inputs(question=question))
    in_metres, in_feet, in_fathoms = (solved(question, as_given(question, raw, unit=unit)) for unit in ("m", "ft", "fathom"))
    if in_metres is None or in_feet is None or in_fathoms is None:
        return
    about = max([1.0, *(abs(value) for value in raw.values() if isinstance(value, float))])
    for name, value in in_metres.items():
        for other in (in_feet[name], in_fathoms[name]):
            # 1e-12 of what goes in: a difference of two lengths keeps no more digits than they have
            assert other == pytest.approx(value, rel=1e-11, abs=1e-12 * about * 10, nan_ok=True), f"{question.name}.{name}"


# --- rounding -----------------------------------------------------------------------------------------------------------------------


def number_shown(text: str) -> float:
    found = re.match(r"-?\d+(?:\.\d+)?", text.removeprefix("1:"))
    assert found is not None, text
    return float(found[0])


def check_side(*, value: float, shown: str, way: str, said: str) -> None:
    number, slight = number_shown(shown), 5e-12 * abs(value)
    if way == "up":
        assert number >= value - 2 * slight, f"{said}: {value} is shown as {shown}"
    elif way == "down":
        assert number <= value + 2 * slight, f"{said}: {value} is shown as {shown}"


def test_rounding_is_on_the_safe_side_over_a_hundred_thousand_numbers() -> None:
    random = np.random.default_rng(7)
    units = [unit for unit in UNITS if unit.kind in ("length", "force", "mass", "speed", "angle", "area", "time")]
    kind_of = {
        "length": kinds.LENGTH,
        "force": kinds.FORCE,
        "mass": kinds.MASS,
        "speed": kinds.SPEED,
        "angle": kinds.ANGLE,
        "area": kinds.AREA,
        "time": kinds.TIME,
    }
    values = 10.0 ** random.uniform(-3.0, 5.0, 40_000) * random.choice([1.0, 1.0, 1.0, -1.0], 40_000)
    whole = np.round(np.where(np.abs(values) < 0.1, 0.1, values), 1)  # on a step, and the least step of a float to either side of it
    for place, value in enumerate(np.concatenate([values, whole, np.nextafter(whole, np.inf)])):
        unit, way = units[place % len(units)], ("up", "down")[place // 7 % 2]
        shown = rounded_text(value=float(value), unit=unit, kind=kind_of[unit.kind], way=way)  # type: ignore[arg-type]
        check_side(value=float(value), shown=shown, way=way, said=unit.symbol)
        step = next((step for below, step in unit.steps if abs(value) < below), unit.steps[-1][1])
        assert abs(number_shown(shown) - value) <= step * (1.0 + 1e-9), f"{value} {unit.symbol} is shown as {shown}"


@QUESTIONS
@tried(25)
@given(data=st.data())
def test_what_an_answer_shows_is_on_the_safe_side_of_what_it_found(question: Question, data: st.DataObject) -> None:
    raw = data.draw(raw_inputs(question=question))
    units = data.draw(st.sampled_from(["us", "metric"]))
    try:
        found = answer(question, as_given(question, raw), units=units)
    except InputError:
        return
    for field in question.fields:
        value = getattr(found.results, field.name)
        for one in value if field.many else (value,):
            if isinstance(one, Quantity) and math.isfinite(one.si):
                factor = UNIT[one.unit].factor if one.unit else 1.0
                check_side(value=one.si / factor, shown=one.shown, way=field.side.way, said=f"{question.name}.{field.name}")


# --- cautions -----------------------------------------------------------------------------------------------------------------------


@st.composite
def mean_winds(draw: st.DrawFn, *, question: Question) -> Inputs:
    """Inputs of a question, the wind by its force where there is one."""
    raw = as_given(question, draw(raw_inputs(question=question)))
    if "wind" in raw:
        raw["wind"] = f"F{draw(st.integers(1, 11))}"
    return raw


def cautions_said(question: Question, given_: Inputs) -> set[str] | None:
    """The codes of the cautions that an answer would say, or None where there is no answer."""
    passed = admitted(question, given_)
    if passed is None:
        return None
    found = question.solve(**{name: passed.values[name] for name in question.direct if name in passed.values})
    return {rule.caution.code for rule in question.cautions if somewhere(rule.holds({**passed.values, **found}))}


def says(question: Question, code: str, wanted: bool, given_: Inputs) -> bool:
    """Whether there is an answer, and it says the caution as wanted."""
    said = cautions_said(question, given_)
    return said is not None and (code in said) is wanted


@QUESTIONS
def test_every_caution_with_a_condition_is_said_and_not_said(question: Question) -> None:
    always = {rule.caution.code for rule in question.cautions if rule.condition is None}
    sets = st.one_of(raw_inputs(question=question).map(lambda raw: as_given(question, raw)), mean_winds(question=question))
    quick = settings(tried(500), phases=(Phase.generate,))
    for code in sorted({rule.caution.code for rule in question.cautions} - always):
        find(sets, partial(says, question, code, True), settings=quick)  # fails where there is none
        find(sets, partial(says, question, code, False), settings=quick)


@QUESTIONS
@tried(15)
@given(data=st.data())
def test_cautions_without_a_condition_are_always_said(question: Question, data: st.DataObject) -> None:
    said = cautions_said(question, as_given(question, data.draw(raw_inputs(question=question))))
    assert said is None or {rule.caution.code for rule in question.cautions if rule.condition is None} <= said


# --- one question turned round is another -------------------------------------------------------------------------------------------

LENGTH = st.floats(0.5, 60.0)
SMALL = st.floats(0.0, 5.0)


def results(name: str, **inputs: Any) -> Any:
    """Results of a question for SI numbers."""
    question = next(one for one in catalogue() if one.name == name)
    return answer(question, as_given(question, inputs), units="metric").results


@tried(80)
@given(depth=LENGTH, bow_height=SMALL, tide_rise=SMALL, scope=st.floats(2.0, 10.0), reserve=SMALL)
def test_deepest_anchorage_of_the_rode_let_out_is_the_depth(depth: float, bow_height: float, tide_rise: float, scope: float, reserve: float) -> None:
    same = {"bow_height": bow_height, "tide_rise": tide_rise, "scope": scope}
    rode = results("rode_to_let_out", depth=depth, **same).rode_out.si
    assert results("deepest_anchorage", rode_aboard=rode + reserve, reserve=reserve, **same).deepest_depth.si == pytest.approx(
        depth, rel=1e-9, abs=1e-9
    )
    assert results("rode_to_carry", depth=depth, reserve=reserve, **same).rode_aboard.si == pytest.approx(rode + reserve, rel=1e-12)
    assert results("scope_now", rode_out=rode, depth=depth, bow_height=bow_height, tide_rise=tide_rise).scope_at_high_water.si == pytest.approx(scope)


@tried(80)
@given(depth=LENGTH, bow_height=SMALL, tide_fall=SMALL, margin=SMALL, boat_length=st.floats(3.0, 20.0), room=st.floats(5.0, 100.0))
def test_rode_for_the_room_leaves_no_clearance(
    depth: float, bow_height: float, tide_fall: float, margin: float, boat_length: float, room: float
) -> None:
    same = {"depth": depth, "bow_height": bow_height, "tide_fall": tide_fall, "margin": margin, "boat_length": boat_length}
    distance = room + margin + boat_length
    longest = results("rode_for_room", distance=distance, **same).longest_rode.si
    if longest <= (depth + bow_height) * 1.0001:
        return
    assert results("swing_clearance", rode_out=longest, distance=distance, **same).clearance.si == pytest.approx(0.0, abs=1e-9 * distance * 10)
    swing = {name: value for name, value in same.items() if name != "margin"}
    assert results("swing_radius", rode_out=longest, **swing).bow_radius.si == pytest.approx(room, rel=1e-9)


@tried(80)
@given(scope=st.floats(1.05, 30.0))
def test_angle_of_a_scope_has_that_scope(scope: float) -> None:
    angle = results("line_angle", scope=scope).angle.si
    assert results("line_angle", angle=angle).scope.si == pytest.approx(scope, rel=1e-9)


@tried(100)
@given(times=st.integers(240, 560), part=st.integers(0, 100), depth=st.floats(1.0, 20.0), rise=st.floats(0.5, 9.0), least=st.floats(3.0, 7.0),
       spare=st.floats(0.0, 1.0))  # fmt: skip
def test_scope_at_veer_by_is_the_least_scope(times: int, part: int, depth: float, rise: float, least: float, spare: float) -> None:
    """Found before the cut to whole minutes: the moment itself."""
    question = next(one for one in catalogue() if one.name == "when_to_veer")
    at = int(times * part / 100)
    given_ = {
        "low_height": {"value": 0.0, "unit": "m"}, "high_height": {"value": rise, "unit": "m"}, "depth": {"value": depth, "unit": "m"},
        "bow_height": {"value": 1.0, "unit": "m"}, "least_scope": least, "low_at": "2026-06-01T00:00",
        "high_at": f"2026-06-01T{times // 60:02d}:{times % 60:02d}", "at": f"2026-06-01T{at // 60:02d}:{at % 60:02d}",
        "rode_out": {"value": (depth + 1.0 + spare * rise) * least, "unit": "m"},
    }  # fmt: skip
    passed = admit(question, given_)
    found = question.solve(**{name: passed.values[name] for name in question.direct if name in passed.values})
    if not math.isfinite(found["veer_by"]):
        return
    start = passed.values["low_at"]
    height_now, height_then = (
        rise * (1 - math.cos(math.pi * (moment - start) / (60.0 * times))) / 2 for moment in (passed.values["at"], found["veer_by"])
    )
    rode_out = (depth + 1.0 + spare * rise) * least
    assert rode_out / (depth + 1.0 + height_then - height_now) == pytest.approx(least, rel=1e-9)


@tried(100)
@given(data=st.data())
def test_more_tide_never_asks_for_less_rode(data: st.DataObject) -> None:
    question = next(one for one in catalogue() if one.name == "rode_to_let_out")
    raw = data.draw(raw_inputs(question=question))
    rises = sorted(data.draw(st.lists(st.floats(0.0, 15.0), min_size=2, max_size=5)))
    rodes = [solved(question, as_given(question, {**raw, "tide_rise": rise})) for rise in rises]
    lengths = [one["rode_out"] for one in rodes if one is not None]
    assert lengths == sorted(lengths)


# --- the safe sides that are promised -----------------------------------------------------------------------------------------------

UP = """rode_out total_height line_out past stop_at rode_by_rule rode_of_chain rode_aboard rode_to_use rode_at_high_water rode_asked bow_rode
swing_radius bow_radius other_swing_radius area reach room_needed ahead_of_spot stern_lies_at stern_distance anchor_distance
shallowest_depth pull_angle angle load_standard load_steady load_each bow_tension hanging_load hauling_load windlass_pull anchor_mass
mass_by_holding mass_by_table anchor_mass_asked chain_asked tide_rise tide_fall farthest outside drift_speed"""
DOWN = """longest_rode scope scope_there scope_possible scope_at_high_water scope_got deepest_depth deepest_at_high_water clearance
clearance_same_wind under_keel_at_low_water water_at_stern holding_low holding_high hold_margin strength_ratio working_load pull
wind_equivalent drags_at_wind chain_lying watch_radius time_left veer_by mark to_next"""
NEAR = "height by_twelfths depth drift_bearing size size_metric size_inch chain_size_asked line_size_asked"
WORSE_IF_SO = "too_steep dragging aground let_go_now slack veer verdict"
WORSE_IF_NOT = "enough possible fits clear passes by_hand figure"
SIDES = {name: way for names, way in ((UP, "up"), (DOWN, "down"), (NEAR, "near")) for name in names.split()}
AT_A_MARK = ("mark_plan", "rode_out")  # what is out with a mark at the roller, not what to let out


@QUESTIONS
def test_every_result_is_rounded_to_the_side_that_is_promised(question: Question) -> None:
    for field in [inner for outer in question.fields for inner in (outer, *outer.fields)]:
        if field.side.way == "told":
            wanted = {**dict.fromkeys(WORSE_IF_SO.split(), "greatest"), **dict.fromkeys(WORSE_IF_NOT.split(), "least")}.get(field.name)
            assert wanted in (None, field.side.worst), field.name
            assert wanted is not None or field.kind not in (kinds.FLAG,) or field.name == "rising", field.name
        else:
            assert field.side.way == ("down" if (question.name, field.name) == AT_A_MARK else SIDES[field.name]), field.name
