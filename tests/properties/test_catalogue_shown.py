"""What must hold for every question: the same in every unit, and rounded to the side that is promised."""

import math
import re

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from anchorcalc.answering.answer import answer
from anchorcalc.declare import Question
from anchorcalc.errors import InputError
from anchorcalc.units import kinds
from anchorcalc.units.kinds import UNIT, UNITS
from anchorcalc.units.quantity import Quantity
from anchorcalc.units.shown import rounded_text
from tests.properties.generated import QUESTIONS, as_given, raw_inputs, solved, tried


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
