"""What must hold of the questions of force: turned round they meet, no size is made smaller, and the worst of a range counts."""

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import anchorcalc
from anchorcalc.physics.tables import chain, rope, shackle

lengths = st.floats(3.0, 25.0)
winds = st.floats(1.0, 40.0)
loads = st.floats(50.0, 20e3)
kinds = st.sampled_from(["pivoting_fluke", "plough", "scoop", "claw", "fisherman", "grapnel", "mushroom"])
grounds = st.sampled_from(["sand", "mud", "clay", "gravel"])
grades = st.sampled_from(["G30", "G40", "G43", "G70", "G80"])
materials = st.sampled_from(["nylon_3_strand", "nylon_braid", "polyester", "polypropylene"])
forms = st.sampled_from(["motor", "sail", "multihull"])


def tried(cases: int) -> settings:
    """Run a property on so many cases, the same every time."""
    return settings(max_examples=cases, deadline=None, derandomize=True, database=None)


def si(value: float, unit: str) -> dict[str, Any]:
    """A number in SI as a typed call takes it."""
    return {"value": value, "unit": unit}


def results(name: str, **inputs: Any) -> Any:
    """Results of a question."""
    return anchorcalc.answer(name, **inputs).results


# --- turned round -------------------------------------------------------------------------------------------------------------------


@tried(150)
@given(length=lengths, load=loads, kind=kinds, bottom=grounds, scope=st.floats(2.5, 12.0))
def test_anchor_of_the_mass_by_holding_holds_just_the_load(length: float, load: float, kind: str, bottom: str, scope: float) -> None:
    place: dict[str, Any] = {"anchor_kind": kind, "bottom": bottom, "scope": scope, "load": si(load, "N")}
    sized = results("anchor_size", boat_length=si(length, "m"), **place)
    if not 0.001 < sized.mass_by_holding.si < 1000.0:
        return
    held = results("holding", anchor_mass=si(sized.mass_by_holding.si, "kg"), **place)
    assert held.holding_low.si == pytest.approx(load, rel=1e-9)
    assert held.hold_margin.si == pytest.approx(1.0, rel=1e-9)
    assert sized.anchor_mass.si == max(sized.mass_by_holding.si, sized.mass_by_table.si)


@tried(150)
@given(length=lengths, pull=loads, form=forms)
def test_wind_that_a_pull_stands_for_loads_the_boat_with_that_pull(length: float, pull: float, form: str) -> None:
    boat: dict[str, Any] = {"boat_length": si(length, "m"), "boat_form": form}
    wind = results("setting_pull", pull=si(pull, "N"), **boat).wind_equivalent.si
    if wind < 103.0:
        assert results("wind_load", wind=si(wind, "m/s"), **boat).load_standard.si == pytest.approx(pull, rel=1e-9)


@tried(150)
@given(length=lengths, wind=winds, mass=st.floats(2.0, 80.0), kind=kinds, bottom=grounds)
def test_at_the_wind_that_she_drags_at_the_margin_is_one(length: float, wind: float, mass: float, kind: str, bottom: str) -> None:
    place: dict[str, Any] = {"anchor_kind": kind, "bottom": bottom, "anchor_mass": si(mass, "kg"), "boat_length": si(length, "m")}
    drags_at = results("holding", wind=si(wind, "m/s"), **place).drags_at_wind.si
    if drags_at < 103.0:
        assert results("holding", wind=si(drags_at, "m/s"), **place).hold_margin.si == pytest.approx(1.0, rel=1e-9)


@tried(150)
@given(depth=st.floats(1.0, 25.0), load=loads, chain_out=st.floats(0.0, 80.0), size=st.floats(0.006, 0.014), line=st.floats(0.008, 0.025))
def test_rode_for_a_flat_pull_pulls_flat_and_a_shorter_one_does_not(depth: float, load: float, chain_out: float, size: float, line: float) -> None:
    place: dict[str, Any] = {
        "depth": si(depth, "m"),
        "load": si(load, "N"),
        "chain": si(chain_out, "m"),
        "chain_size": si(size, "m"),
        "line_size": si(line, "m"),
    }
    flat = results("rode_for_flat_pull", **place).rode_out.si
    if not depth + 1.2 < flat * 0.98 < flat * 1.01 < 1000.0:
        return
    assert results("pull_at_anchor", rode_out=si(flat * 1.01, "m"), **place).pull_angle.si == 0.0
    assert results("pull_at_anchor", rode_out=si(flat * 0.98, "m"), **place).pull_angle.si > 0.0


# --- chain_and_line -----------------------------------------------------------------------------------------------------------------

SOLD = {
    "chain": (chain.METRIC_SIZES, chain.INCH_SIZES),
    "line": (rope.METRIC_SIZES, rope.SIZES),
    "shackle": (shackle.METRIC_SIZES, shackle.INCH_SIZES),
}


@tried(300)
@given(
    load=loads, size=st.floats(0.006, 0.018), grade=grades, line=st.floats(0.007, 0.03), material=materials, bow=st.floats(0.005, 0.03)
)  # fmt: skip
def test_next_sizes_pass_are_sold_and_are_never_a_size_down(load: float, size: float, grade: str, line: float, material: str, bow: float) -> None:
    parts = {"chain": size, "line": line, "shackle": bow}
    fixed: dict[str, Any] = {"load": si(load, "N"), "chain_grade": grade, "line_material": material}
    found = results("chain_and_line", **fixed, **{f"{part}_size": si(one, "m") for part, one in parts.items()})
    failing = [one.part for one in found.parts if one.strength_ratio is None or one.strength_ratio.si < 1.0]
    assert [row.part for row in found.next_sizes] == failing
    assert found.passes is (not failing)
    for row in found.next_sizes:
        assert row.possible is (row.size_metric is not None or row.size_inch is not None)
        for next_size, sold in zip((row.size_metric, row.size_inch), SOLD[row.part], strict=True):
            if next_size is not None:
                assert next_size.si in sold
                assert next_size.si >= parts[row.part] * (1.0 - 1e-9)
                assert results("chain_and_line", **fixed, **{f"{row.part}_size": next_size}).passes


@tried(150)
@given(load=loads, size=st.floats(0.004, 0.018), line=st.floats(0.005, 0.03), bow=st.floats(0.005, 0.03))
def test_weakest_part_is_the_one_that_carries_least(load: float, size: float, line: float, bow: float) -> None:
    found = results("chain_and_line", load=si(load, "N"), chain_size=si(size, "m"), line_size=si(line, "m"), shackle_size=si(bow, "m"))
    carried = {one.part: one.working_load.si if one.working_load else 0.0 for one in found.parts}
    assert carried[found.weakest] == min(carried.values())
    if min(carried.values()) > 0.0:
        assert found.strength_ratio.si == pytest.approx(min(carried.values()) / load, rel=1e-12)
    else:
        assert found.strength_ratio is None and not found.passes


def test_size_between_two_rows_counts_as_the_weaker() -> None:
    between, row = (results("chain_and_line", load="1 kN", chain_size=size).parts[0].working_load.si for size in ("9.2 mm", "8 mm"))
    assert between == row


# --- ranges of what stands in lists -------------------------------------------------------------------------------------------------


MILDER = {"anchor_may_drag": "anchor_will_drag", "chain_weak": "chain_may_part", "line_weak": "line_may_part"}  # the worse stands for both


@tried(60)
@given(low=st.floats(5.0, 20.0), wider=st.floats(0.0, 15.0), part=st.floats(0.0, 1.0))
def test_no_wind_within_a_range_finds_more_amiss_than_the_range(low: float, wider: float, part: float) -> None:
    boat: dict[str, Any] = {
        "boat_length": "9.5 m", "anchor_kind": "claw", "anchor_mass": "20 kg", "bottom": "sand", "chain_size": "6 mm", "line_size": "12 mm",
        "shackle_size": "8 mm",
    }  # fmt: skip
    wind, inside = {"low": low, "high": low + wider, "unit": "m/s"}, si(low + part * wider, "m/s")
    whole, one = (results("tackle_check", wind=asked, **boat) for asked in (wind, inside))
    worst = {found.code for found in whole.findings}
    assert all(found.code in worst or MILDER.get(found.code) in worst for found in one.findings)
    whole, one = (results("chain_and_line", wind=asked, boat_length="9.5 m", chain_size="6 mm", line_size="12 mm") for asked in (wind, inside))
    assert {row.part for row in one.next_sizes} <= {row.part for row in whole.next_sizes}
    for wide, narrow in zip(whole.parts, one.parts, strict=True):
        assert wide.strength_ratio.si <= narrow.strength_ratio.si * (1.0 + 1e-12)
