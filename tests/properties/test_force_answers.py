"""What the questions of force assume, ask for and refuse, warn of, and say aloud."""

from typing import Any

import numpy as np
import pytest

import anchorcalc
from anchorcalc.catalogue import question
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


def results(name: str, **inputs: Any) -> Any:
    """Results of a question."""
    return anchorcalc.answer(name, **inputs).results


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
    assert missing("pull_at_anchor", rode_out="40 m", depth="6 m", chain="10 m", load="2 kN") == ["chain_size"]
    assert missing("pull_at_anchor", rode_out="40 m", depth="6 m", load="2 kN") == ["line_size"]
    assert missing("pull_at_anchor", rode_out="40 m", depth="6 m", chain="40 m", load="2 kN") == ["chain_size"]
    assert missing("chain_and_line", load="2 kN") == ["chain_size"]
    assert missing("chain_and_line", boat_length="9.5 m") == ["wind"]


def test_line_that_is_not_needed_for_a_flat_pull_is_not_asked_about() -> None:
    place: dict[str, Any] = {"depth": "6 m", "load": "2 kN", "chain_size": "8 mm"}
    assert results("rode_for_flat_pull", chain="60 m", **place).rode_out.si < 60.0
    assert missing("rode_for_flat_pull", chain="30 m", **place, line_material="polypropylene") == ["line_size"]


def test_line_of_unknown_size_behind_known_chain_is_reckoned_without_weight_which_is_the_worse() -> None:
    pull: dict[str, Any] = {"rode_out": "40 m", "depth": "6 m", "chain": "20 m", "chain_size": "8 mm", "load": "2.5 kN"}
    flat = {name: value for name, value in pull.items() if name != "rode_out"}
    for name, place, result in (("pull_at_anchor", pull, "pull_angle"), ("rode_for_flat_pull", flat, "rode_out")):
        left_out: Any = anchorcalc.answer(name, **place)
        assert (left_out.read.line_size.si, left_out.read.line_size.origin) == (0.0, "assumed")
        assert "line_weightless" in {one.code for one in left_out.cautions}
        for size in ("6 mm", "14 mm", "40 mm"):
            sized: Any = anchorcalc.answer(name, **place, line_size=size)
            assert getattr(sized.results, result).si < getattr(left_out.results, result).si
            assert "line_weightless" not in {one.code for one in sized.cautions}
        assert missing(name, **place, line_material="polypropylene") == ["line_size"]


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


def test_light_anchor_is_no_work_for_hands_where_the_boat_is_hard_to_bring_up_to_it() -> None:
    place: dict[str, Any] = {"depth": "5 m", "anchor_mass": "10 kg", "chain": "0 m"}
    alone, in_a_blow = results("weigh_anchor", **place), results("weigh_anchor", **place, boat_length="9.5 m", wind="25 kn")
    assert (alone.by_hand, in_a_blow.by_hand) == (True, False)
    assert in_a_blow.windlass_pull.si == pytest.approx(1.5 * in_a_blow.hauling_load.si / 0.7, rel=1e-12)


def said(name: str, **inputs: Any) -> set[str]:
    """The codes of the cautions of an answer."""
    return {one.code for one in anchorcalc.answer(name, **inputs).cautions}


def test_wind_without_a_boat_is_asked_about() -> None:
    assert missing("holding", anchor_kind="plough", anchor_mass="16 kg", bottom="sand", wind="20 kn") == ["boat_length"]
    assert missing("weigh_anchor", depth="6 m", anchor_mass="16 kg", wind="20 kn") == ["boat_length"]
    assert results("holding", anchor_kind="plough", anchor_mass="16 kg", bottom="sand", wind="20 kn", load="1 kN").hold_margin is not None


def test_chain_without_a_size_is_asked_about_and_no_chain_needs_none() -> None:
    assert missing("rode_for_flat_pull", depth="6 m", load="2 kN", chain="30 m", line_size="14 mm") == ["chain_size"]
    assert missing("weigh_anchor", depth="6 m", anchor_mass="16 kg", chain="30 m") == ["chain_size"]
    read: Any = anchorcalc.weigh_anchor(depth="6 m", anchor_mass="16 kg", boat_length="9.5 m").read
    assert read.chain_size is None and read.chain.si == 0.0


def test_line_that_hangs_is_weighed_by_its_size_from_the_table_and_else_left_out_in_words() -> None:
    place: dict[str, Any] = {"depth": "10 m", "anchor_mass": "16 kg", "chain_size": "8 mm"}
    read: Any = anchorcalc.weigh_anchor(**place, chain="11 m", boat_length="9.5 m").read
    assert (read.line_size.shown, read.line_size.origin) == ("12 mm", "assumed")
    read = anchorcalc.weigh_anchor(**place, chain="11.3 m", boat_length="9.5 m").read
    assert read.line_size is None
    left_out = [any("left out" in line for line in anchorcalc.weigh_anchor(**place, chain=chain).working) for chain in ("11 m", "11.3 m")]
    assert left_out == [True, False]


def test_range_of_depths_is_taken_where_the_end_of_the_chain_stays_on_one_side_of_the_surface() -> None:
    place: dict[str, Any] = {"depth": "8..14 m", "anchor_mass": "16 kg", "chain_size": "8 mm", "line_size": "12 mm"}
    for chain_length, deep in (("30 m", "14 m"), ("5 m", "14 m")):
        worst = results("weigh_anchor", **place, chain=chain_length).hanging_load
        assert worst.si == results("weigh_anchor", **{**place, "depth": deep}, chain=chain_length).hanging_load.si


def test_chain_taken_for_granted_is_warned_of_and_none_is_not() -> None:
    place: dict[str, Any] = {"rode_out": "40 m", "depth": "6 m", "load": "2 kN", "line_size": "14 mm"}
    assert "chain_assumed" in said("pull_at_anchor", **place, chain_size="8 mm")
    assert "chain_assumed" not in said("pull_at_anchor", **place, chain_size="8 mm", chain="40 m")
    assert "chain_assumed" not in said("pull_at_anchor", **place)


def test_more_rode_is_asked_for_a_flat_pull_where_the_length_of_the_chain_was_not_said() -> None:
    place: dict[str, Any] = {"depth": "6 m", "load": "500 N", "chain_size": "8 mm", "line_size": "14 mm"}
    flat: Any = anchorcalc.rode_for_flat_pull(**place)
    assert (flat.read.chain.si, flat.read.chain.origin) == (0.0, "assumed") and "chain_assumed" in {one.code for one in flat.cautions}
    assert flat.results.rode_of_chain.si < results("rode_for_flat_pull", **place, chain="10 m").rode_out.si < flat.results.rode_out.si
    assert missing("rode_for_flat_pull", depth="6 m", load="500 N", chain_size="8 mm", chain="0 m") == ["line_size"]


def test_flat_pull_with_a_size_of_chain_alone_promises_nothing_and_says_what_chain_would_do() -> None:
    # 1.4 kg/m of chain in sea water: √(7² + 2 · 7 · 1000 / 11.936) = 34.96 m
    flat = anchorcalc.rode_for_flat_pull(depth="6 m", bow_height="1 m", load="1 kN", chain_size="8 mm")
    assert (flat.results.rode_out, flat.results.possible) == (None, False)
    assert flat.headline == "Line of unknown size gives no figure, and no length of chain was said. Of 8 mm chain alone: 35 m. Scope 7:1 gives 49 m."


def test_stretch_is_warned_of_where_there_is_line() -> None:
    place: dict[str, Any] = {"rode_out": "40 m", "depth": "6 m", "load": "2 kN", "chain_size": "8 mm", "line_size": "14 mm"}
    assert "stretch" in said("pull_at_anchor", **place, chain="39 m")
    assert "stretch" not in said("pull_at_anchor", **place, chain="40 m")


def test_part_throttle_is_warned_of_where_the_pull_was_not_measured() -> None:
    assert "drag_of_engine_unlikely_full" in said("setting_pull", boat_length="9.5 m", engine_power="20 kW")
    assert "drag_of_engine_unlikely_full" not in said("setting_pull", boat_length="9.5 m", pull="1.6 kN")


def test_engine_that_cannot_test_for_a_forecast_is_said_to() -> None:
    # 30 ft boat: 700 lbf at 30 knots, 1244 lbf at 40 (ABYC H-40, reproduction, and the square law).
    def cannot(pull: str) -> list[str]:
        return [line for line in anchorcalc.setting_pull(boat_length="30 ft", pull=pull).working if "cannot test" in line]

    assert [line[:60] for line in cannot("350 lbf")] == [
        "at 30 kn that load is 2.0 times this pull: the engine cannot",
        "at 40 kn that load is 3.6 times this pull: the engine cannot",
    ]
    assert [line[:8] for line in cannot("800 lbf")] == ["at 40 kn"]
    assert cannot("1300 lbf") == []


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
        ("setting_pull", {"boat_length": "30 ft", "pull": "200 N"}),
        ("holding", {"anchor_kind": "pivoting_fluke", "anchor_mass": "110 lb", "bottom": "sand"}),
        ("chain_and_line", {"load": "1 kN", "chain_size": "8 mm", "line_size": "14 mm"}),
        ("weigh_anchor", {"depth": "5 m", "anchor_mass": "16 kg", "chain": "10 m", "chain_size": "8 mm"}),
        ("weigh_anchor", {"depth": "5 m", "anchor_mass": "16 kg", "chain": "0 m", "chain_size": "20 mm"}),
        ("tackle_check", {"boat_length": "9 m", "chain_size": "8 mm", "line_size": "14 mm"}),
    ]
    for name, inputs in inside:
        assert "extrapolated" not in {one.code for one in anchorcalc.answer(name, **inputs).cautions}, name


def test_sizes_are_shown_as_the_trade_names_them() -> None:
    metric, inch = (results("chain_and_line", load="1 kN", chain_size=size, line_size="14 mm") for size in ("8 mm", "5/16 in"))
    assert [part.size.shown for part in metric.parts] == ["8 mm", "14 mm"]
    assert inch.parts[0].size.shown == "5/16 in" and isinstance(inch.parts[0].size, Quantity)
