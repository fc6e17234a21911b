"""What must hold of the questions of force: turned round they meet, nothing is made smaller, and the worst is said first."""

from typing import Any, get_args

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import anchorcalc
from anchorcalc import cautions, findings
from anchorcalc.catalogue import question
from anchorcalc.findings import FINDINGS, Level
from anchorcalc.physics.tables import chain, rope, shackle
from anchorcalc.units.quantity import Quantity

FORCE_QUESTIONS = (
    "wind_load",
    "pull_at_anchor",
    "rode_for_flat_pull",
    "holding",
    "setting_pull",
    "weigh_anchor",
    "anchor_size",
    "chain_and_line",
    "tackle_check",
)
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


# --- tackle_check -------------------------------------------------------------------------------------------------------------------

SOUND: dict[str, Any] = {
    "boat_length": "9.5 m", "wind": "15 kn", "anchor_kind": "scoop", "anchor_mass": "40 kg", "bottom": "sand", "chain": "30 m", "chain_size": "10 mm",
    "line": "70 m", "line_size": "16 mm", "depth": "8 m", "shackle_size": "18 mm", "bitter_end": "tied", "shackles": "seized", "spare_anchor": True,
}  # fmt: skip
AMISS: dict[str, dict[str, Any]] = {
    "bitter_end_free": {"bitter_end": "free"},
    "bitter_end_fixed": {"bitter_end": "fixed"},
    "anchor_will_drag": {"wind": "60 kn", "anchor_mass": "15 kg", "anchor_kind": "mushroom"},
    "anchor_far_too_light": {"anchor_mass": "6 kg"},
    "chain_may_part": {"wind": "80 kn", "chain_size": "6 mm"},
    "line_may_part": {"wind": "80 kn"},
    "rode_far_too_short": {"depth": "40 m"},
    "shackles_open": {"shackles": "open"},
    "shackle_weaker_than_chain": {"shackle_size": "10 mm"},
    "shackle_weak": {"shackle_size": "6 mm", "wind": "30 kn"},
    "chain_weak": {"wind": "45 kn", "chain_size": "8 mm"},
    "line_weak": {"wind": "35 kn"},
    "anchor_light": {"anchor_mass": "12 kg"},
    "anchor_may_drag": {"anchor_kind": "claw", "anchor_mass": "15 kg", "wind": "30 kn"},
    "rode_short": {"depth": "18 m"},
    "no_chain": {"chain": "0 m", "line": "100 m"},
    "chain_short": {"chain": "6 m", "line": "100 m"},
    "chain_thin": {"chain_size": "7 mm"},
    "line_thin": {"line_size": "10 mm"},
    "chain_without_figure": {"chain_size": "5 mm"},
    "line_without_figure": {"line_size": "6 mm"},
    "bottom_without_figure": {"bottom": "rock"},
    "no_second_anchor": {"spare_anchor": False},
}  # fmt: skip


def test_sound_tackle_has_no_findings_and_nothing_unchecked() -> None:
    found = anchorcalc.tackle_check(**SOUND)
    assert found.results.findings == () and found.results.not_checked == ()
    assert found.headline == "Nothing wrong was found in what was said."


def test_every_finding_has_a_case_here() -> None:
    assert set(AMISS) == {finding.code for finding in FINDINGS}


@pytest.mark.parametrize("code", AMISS)
def test_what_is_amiss_is_found(code: str) -> None:
    assert code in {finding.code for finding in results("tackle_check", **{**SOUND, **AMISS[code]}).findings}


def test_inner_end_is_a_stop_loose_and_shackled_hard() -> None:
    for end in ("free", "fixed"):
        (finding,) = results("tackle_check", **{**SOUND, "bitter_end": end}).findings
        assert finding.level == "stop"


def test_findings_stand_worst_first() -> None:
    order = get_args(Level)
    assert [order.index(finding.level) for finding in FINDINGS] == sorted(order.index(finding.level) for finding in FINDINGS)
    everything: dict[str, Any] = {**SOUND, "bitter_end": "free", "shackles": "open", "spare_anchor": False, "anchor_mass": "12 kg"}
    levels = [finding.level for finding in results("tackle_check", **everything).findings]
    assert levels == ["stop", "mend", "mend", "note"]


def test_what_nobody_said_is_not_checked_and_named() -> None:
    found = results("tackle_check", boat_length="9.5 m", anchor_mass="16 kg", bitter_end="tied")
    assert found.findings == ()
    assert set(found.not_checked) == {
        "depth", "anchor_kind", "bottom", "wind", "chain", "chain_size", "rode_aboard", "line_size", "shackle_size", "shackles", "spare_anchor",
    }  # fmt: skip


def test_codes_of_findings_are_no_codes_of_cautions_but_for_the_short_rode() -> None:
    assert {finding.code for finding in FINDINGS} & set(cautions.CAUTIONS) == {findings.RODE_SHORT.code}


# --- bottoms without a figure -------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("bottom", "caution"), [("rock", "rock"), ("coral", "coral"), ("grass", "weed")])
def test_bottom_without_a_figure_gets_none_and_is_warned_of(bottom: str, caution: str) -> None:
    held = anchorcalc.holding(anchor_kind="plough", anchor_mass="16 kg", bottom=bottom, boat_length="9.5 m", wind="20 kn")
    sized = anchorcalc.anchor_size(anchor_kind="plough", bottom=bottom, boat_length="9.5 m", wind="20 kn")
    assert held.results.figure is False and sized.results.figure is False
    for absent in ("holding_low", "holding_high", "hold_margin", "drags_at_wind"):
        assert getattr(held.results, absent) is None
    assert sized.results.anchor_mass is None and sized.results.mass_by_holding is None and sized.results.mass_by_table.si == 13.0
    for found in (held, sized):
        assert caution in {one.code for one in found.cautions} and "extrapolated" not in {one.code for one in found.cautions}


# --- assumed, asked for and refused -------------------------------------------------------------------------------------------------


def missing(name: str, **inputs: Any) -> list[str]:
    """What a question asks for."""
    with pytest.raises(anchorcalc.InputError) as caught:
        anchorcalc.answer(name, **inputs)
    assert {fault.code for fault in caught.value.faults} == {"missing"}
    return sorted(fault.input for fault in caught.value.faults)


def test_sizes_come_from_the_table_for_the_boat_and_are_asked_for_where_only_a_load_is_given() -> None:
    read: Any = anchorcalc.pull_at_anchor(rode_out="40 m", depth="6 m", chain="10 m", boat_length="9.5 m", wind="20 kn").read
    assert (read.chain_size.shown, read.chain_size.origin, read.line_size.shown, read.line_size.origin) == ("8 mm", "assumed", "12 mm", "assumed")
    assert missing("pull_at_anchor", rode_out="40 m", depth="6 m", chain="10 m", load="2 kN") == ["chain_size", "line_size"]
    assert missing("pull_at_anchor", rode_out="40 m", depth="6 m", load="2 kN") == ["line_size"]
    assert missing("pull_at_anchor", rode_out="40 m", depth="6 m", chain="40 m", load="2 kN") == ["chain_size"]
    assert missing("chain_and_line", load="2 kN") == ["chain_size"]
    assert missing("chain_and_line", boat_length="9.5 m") == ["wind"]


def test_line_that_is_not_needed_for_a_flat_pull_is_not_asked_about() -> None:
    place: dict[str, Any] = {"depth": "6 m", "load": "2 kN", "chain_size": "8 mm"}
    assert results("rode_for_flat_pull", chain="60 m", **place).rode_out.si < 60.0
    assert missing("rode_for_flat_pull", chain="30 m", **place) == ["line_size"]


def test_pull_angle_is_that_of_a_taut_line_at_the_scope_and_as_much_assumed() -> None:
    anchor: dict[str, Any] = {"anchor_kind": "plough", "anchor_mass": "16 kg", "bottom": "sand"}
    read: Any = anchorcalc.holding(**anchor).read
    assert read.pull_angle.si == pytest.approx(np.arcsin(1 / 7)) and read.pull_angle.origin == read.scope.origin == "assumed"
    read = anchorcalc.holding(**anchor, scope="5:1").read
    assert read.pull_angle.si == pytest.approx(np.arcsin(1 / 5)) and read.pull_angle.origin == "asked"
    read = anchorcalc.holding(**anchor, pull_angle="0 deg").read
    assert read.pull_angle.si == 0.0 and read.scope is None


def test_chain_of_a_size_whose_length_nobody_said_hangs_all_the_way() -> None:
    found: Any = anchorcalc.weigh_anchor(depth="10 m", anchor_mass="16 kg", chain_size="8 mm")
    assert (found.read.chain.si, found.read.chain.origin) == (11.2, "assumed")
    assert (
        found.results.hanging_load.si == results("weigh_anchor", depth="10 m", anchor_mass="16 kg", chain_size="8 mm", chain="50 m").hanging_load.si
    )


def test_hauling_load_needs_boat_and_wind() -> None:
    place: dict[str, Any] = {"depth": "10 m", "anchor_mass": "16 kg", "chain": "30 m", "chain_size": "8 mm"}
    assert results("weigh_anchor", **place).hauling_load is None
    assert results("weigh_anchor", **place, boat_length="9.5 m").hauling_load is None
    hauled = results("weigh_anchor", **place, boat_length="9.5 m", wind="20 kn")
    assert hauled.hauling_load.si > hauled.hanging_load.si - 16 * 9.81
    assert hauled.windlass_pull.si > hauled.hauling_load.si


RANGED: list[tuple[str, dict[str, Any], str]] = [
    ("pull_at_anchor", {"rode_out": "40 m", "depth": "6 m", "chain": "10 m", "boat_length": "9..10 m", "wind": "20 kn"}, "boat_length"),
    ("pull_at_anchor", {"rode_out": "40 m", "depth": "6 m", "load": "1..2 kN", "line_size": "14 mm", "line_material": "polypropylene"}, "load"),
    ("weigh_anchor", {"depth": "8..14 m", "anchor_mass": "16 kg", "chain": "10 m", "chain_size": "8 mm"}, "depth"),
    ("chain_and_line", {"load": "2 kN", "chain_size": "8..10 mm"}, "chain_size"),
]


@pytest.mark.parametrize(("name", "inputs", "at_fault"), RANGED)
def test_range_whose_worse_end_is_not_sure_is_refused(name: str, inputs: dict[str, Any], at_fault: str) -> None:
    with pytest.raises(anchorcalc.InputError) as caught:
        anchorcalc.answer(name, **inputs)
    assert [(fault.input, fault.code) for fault in caught.value.faults] == [(at_fault, "range_not_taken")]


def test_rode_that_only_just_reaches_the_seabed_at_high_water_is_refused() -> None:
    with pytest.raises(anchorcalc.InputError) as caught:
        anchorcalc.pull_at_anchor(rode_out="9 m", depth="6 m", tide_rise="2 m", bow_height="1 m", load="1 kN", chain="9 m", chain_size="8 mm")
    assert [(fault.input, fault.code) for fault in caught.value.faults] == [("rode_out", "contradiction")]


# --- what a skipper hears -----------------------------------------------------------------------------------------------------------

HEARD: list[tuple[str, dict[str, Any], str]] = [
    ("wind_load", {"boat_length": "30 ft", "wind": "30 kn"}, "Reckon with 700 lbf on the rode. The steady drag alone is about 265 lbf."),
    ("setting_pull", {"boat_length": "30 ft", "engine_power": "30 hp"},
     "300 lbf astern tests the anchor for 19 kn of wind, gusts included, and for no more."),
    ("pull_at_anchor", {"rode_out": "60 m", "depth": "5 m", "load": "500 N", "chain": "60 m", "chain_size": "8 mm"},
     "The pull at the anchor is flat and 36 m of chain lies on the bottom."),
    ("holding", {"anchor_kind": "grapnel", "anchor_mass": "5 kg", "bottom": "rock"},
     "There is no figure: nobody can say what a grapnel holds on rock."),
    ("anchor_size", {"boat_length": "8 m", "wind": "25 kn", "anchor_kind": "scoop", "bottom": "sand"},
     "Carry a scoop of 17 kg or more: holding in sand at 7:1 asks 17 kg, and a published table for her length alone asks 10 kg."),
    ("chain_and_line", {"load": "3 kN", "chain_size": "8 mm", "line_size": "18 mm"},
     "Strong enough for 3 kN. The 18 mm line is the weakest part: its working load is 1.38 times the load."),
    ("chain_and_line", {"load": "1500 lbf", "chain_size": "3/8 in", "line_size": "3/4 in"},
     "Not strong enough for 1500 lbf: the 3/4 in line is the weakest part, 0.94 times the load. What would do: line of 7/8 in."),
]  # fmt: skip


@pytest.mark.parametrize(("name", "inputs", "headline"), HEARD)
def test_headline_is_what_a_tired_skipper_can_take_in(name: str, inputs: dict[str, Any], headline: str) -> None:
    assert anchorcalc.answer(name, **inputs).headline == headline


@pytest.mark.parametrize("name", FORCE_QUESTIONS)
def test_texts_are_whole_sentences_without_leftovers(name: str) -> None:
    for units in ("us", "metric"):
        for example in question(name).examples:
            found = anchorcalc.answer(name, units=units, **example)
            assert found.headline[0].isupper() or found.headline[0].isdigit()
            assert found.headline.endswith(".")
            for text in (found.headline, *found.working, *found.sources):
                assert "{" not in text and "None" not in text and "nan" not in text.replace("nylon", "") and "  " not in text


@pytest.mark.parametrize("name", FORCE_QUESTIONS)
def test_answer_names_its_sources_how_they_were_come_by_and_what_is_left_out(name: str) -> None:
    said = " ".join(question(name).sources)
    assert "left out" in said
    assert any(status in said for status in ("[read", "[reproduction", "[memory", "read]", "reproduction]", "memory]"))
    assert "seas_and_snatch" in {rule.caution.code for rule in question(name).cautions}


def test_every_figure_outside_its_table_says_so() -> None:
    outside: list[tuple[str, dict[str, Any]]] = [
        ("wind_load", {"boat_length": "70 ft", "wind": "20 kn"}),
        ("wind_load", {"boat_length": "12 m", "wind": "20 kn", "boat_form": "multihull"}),
        ("setting_pull", {"boat_length": "2.5 m", "pull": "200 N"}),
        ("holding", {"anchor_kind": "plough", "anchor_mass": "16 kg", "bottom": "sand"}),
        ("anchor_size", {"boat_length": "30 m", "load": "20 kN", "anchor_kind": "pivoting_fluke", "bottom": "sand"}),
        ("chain_and_line", {"load": "1 kN", "chain_size": "5 mm"}),
        ("chain_and_line", {"load": "1 kN", "line_size": "40 mm"}),
        ("weigh_anchor", {"depth": "5 m", "anchor_mass": "16 kg", "chain": "10 m", "chain_size": "20 mm"}),
        ("tackle_check", {"boat_length": "4 m"}),
    ]
    for name, inputs in outside:
        assert "extrapolated" in {one.code for one in anchorcalc.answer(name, **inputs).cautions}, name
    inside: list[tuple[str, dict[str, Any]]] = [
        ("wind_load", {"boat_length": "30 ft", "wind": "20 kn"}),
        ("chain_and_line", {"load": "1 kN", "chain_size": "8 mm"}),
    ]
    for name, inputs in inside:
        assert "extrapolated" not in {one.code for one in anchorcalc.answer(name, **inputs).cautions}, name


def test_sizes_are_shown_as_the_trade_names_them() -> None:
    metric, inch = (results("chain_and_line", load="1 kN", chain_size=size, line_size="14 mm") for size in ("8 mm", "5/16 in"))
    assert [part.size.shown for part in metric.parts] == ["8 mm", "14 mm"]
    assert inch.parts[0].size.shown == "5/16 in" and isinstance(inch.parts[0].size, Quantity)
