"""One question turned round is another: depth and rode, room and clearance, scope and angle, tide and the moment to veer."""

import math
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from anchorcalc.answering.answer import answer
from anchorcalc.answering.gate import admit
from anchorcalc.catalogue import catalogue
from tests.properties.generated import as_given, raw_inputs, solved, tried

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
