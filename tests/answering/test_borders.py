"""Where a caution, a refusal or a question back begins: just at the border and just on its other side."""

from typing import Any

import pytest

import anchorcalc

SWING = {"rode_out": "40 m", "boat_length": "9 m", "bow_height": "1 m"}
TIDE = {"low_height": "1 m", "high_height": "3 m", "low_at": "06:00"}
LOAD = {"load": "2 kN"}
ROPE = {"rode_out": "40 m", "depth": "6 m", "line_size": "14 mm"}
FIX = {"anchor_at": "64.1, 10.2", "fixes": [{"at": "10:00", "position": "64.1, 10.2"}]}
BOAT = {"boat_length": "9 m", "wind": "20 kn"}
HOLD = {"anchor_kind": "pivoting_fluke", "anchor_mass": "100 lb"}
Side = tuple[str, str, dict[str, Any], dict[str, Any]]  # question, caution, inputs that it is said of, inputs that it is not

SAID: list[Side] = [
    ("scope_now", "no_tide", {"rode_out": "40 m", "depth": "6 m"}, {"rode_out": "40 m", "depth": "6 m", "tide_rise": "0 m"}),
    ("swing_radius", "no_tide", {**SWING, "depth": "6 m"}, {**SWING, "depth": "6 m", "tide_fall": "0 m"}),
    ("bow_and_stern", "no_tide", {"slope": "1:20", "boat_length": "8 m", "draught": "1 m", "tide_rise": "0 m"},
     {"slope": "1:20", "boat_length": "8 m", "draught": "1 m", "tide_rise": "0 m", "tide_fall": "0 m"}),
    # the rode out was said: no rise is asked for, and none is missed
    ("where_to_drop", "no_tide", {"depth": "6 m"}, {"depth": "6 m", "rode_out": "40 m"}),
    ("mark_to_stop_at", "no_tide", {"mark_interval": "10 m", "depth": "6 m"}, {"mark_interval": "10 m", "rode_out": "36 m"}),
    *((question, "dries_at_low_water", {**others, "depth": "3 m", "tide_fall": "3 m"}, {**others, "depth": "3 m", "tide_fall": "2.99 m"})
      for question, others in (("swing_radius", SWING), ("swing_clearance", {**SWING,
     "distance": "90 m"}), ("shallowest_anchorage", {"draught": "1 m"}),
                               ("rode_for_room", {"distance": "90 m", "boat_length": "9 m"}), ("drag_check", {**SWING, **FIX}))),
    *((question, "marks_from_assumed", {**others, "chain": "5 m"}, {**others, "chain": "5 m", "marks_from": "anchor"})
      for question, others in (("mark_to_stop_at", {"mark_interval": "10 m", "rode_out": "36 m"}), ("mark_to_stop_at", {"marks": "10,20 m",
     "rode_out": "36 m"}),
                               ("mark_plan", {"mark_interval": "10 m", "rode_aboard": "36 m"}), ("rode_to_let_out", {"mark_interval": "10 m",
     "depth": "6 m"}),
                               ("rode_to_let_out", {"marks": "10,20 m", "depth": "6 m"}))),
    ("mark_to_stop_at", "marks_from_assumed", {"mark_interval": "10 m", "rode_out": "36 m", "chain": "0.5 m"},
     {"mark_interval": "10 m", "rode_out": "36 m"}),
    ("mark_to_stop_at", "marks_from_assumed", {"mark_interval": "10 m", "rode_out": "36 m", "chain": "5 m"},
     {"mark_interval": "10 m", "rode_out": "36 m", "chain": "0 m"}),
    ("rode_to_let_out", "rode_short", {"depth": "4 m", "bow_height": "1 m", "rode_aboard": "34.9 m"},
     {"depth": "4 m", "bow_height": "1 m", "rode_aboard": "35 m"}),
    # 5 to 7 hours are published
    ("tide_at", "extrapolated", {**TIDE, "high_at": "10:59", "at": "08:00"}, {**TIDE, "high_at": "11:00", "at": "08:00"}),
    ("tide_at", "extrapolated", {**TIDE, "high_at": "13:01", "at": "08:00"}, {**TIDE, "high_at": "13:00", "at": "08:00"}),
    ("when_to_veer", "extrapolated", {**TIDE, **ROPE, "line_size": None, "high_at": "13:01", "at": "08:00"},
     {**TIDE, **ROPE, "line_size": None, "high_at": "11:00", "at": "08:00"}),
    # all that is aboard runs out: its end must hold
    ("time_to_let_go", "bitter_end", {"depth": "6 m", "bow_height": "1 m", "boat_length": "9 m", "distance_off": "90 m", "drift": "1 kn",
     "rode_aboard": "49 m"},
     {"depth": "6 m", "bow_height": "1 m", "boat_length": "9 m", "distance_off": "90 m", "drift": "1 kn", "rode_aboard": "49.1 m"}),
    ("pull_at_anchor", "stretch", {**ROPE, **LOAD}, {**ROPE, **LOAD, "chain": "40 m", "chain_size": "8 mm"}),
    ("rode_for_flat_pull", "stretch", {"depth": "6 m", "load": "1 kN", "chain": "34 m", "chain_size": "8 mm", "line_size": "14 mm",
     "bow_height": "1 m"},
     {"depth": "6 m", "load": "1 kN", "chain": "35 m", "chain_size": "8 mm", "line_size": "14 mm", "bow_height": "1 m"}),
    ("setting_pull", "drag_of_engine_unlikely_full", {"boat_length": "9 m", "engine_power": "0.5 W"}, {"boat_length": "9 m", "pull": "1 kN"}),
    *((question, "extrapolated", {**others, "boat_length": "60.1 ft"}, {**others, "boat_length": "60 ft"})
      for question, others in (("wind_load", {"wind": "20 kn"}), ("setting_pull", {"pull": "1 kN"}), ("two_anchor_load", {"wind": "20 kn",
     "spread": "60 deg"}),
                               ("pull_at_anchor", {**ROPE, "wind": "20 kn"}), ("rode_for_flat_pull", {"depth": "6 m", "line_size": "14 mm",
     "wind": "20 kn"}),
                               ("chain_and_line", {"wind": "20 kn", "line_size": "14 mm"}), ("holding", {**HOLD, "bottom": "sand", "wind": "20 kn"}),
                               ("weigh_anchor", {"depth": "6 m", "anchor_mass": "16 kg", "wind": "20 kn"}), ("tackle_check", {"wind": "20 kn"}))),
    *((question, "extrapolated", {**others, "beam": "18.1 ft"}, {**others, "beam": "18 ft"})
      for question, others in (("wind_load", BOAT), ("setting_pull", {"pull": "1 kN", "boat_length": "9 m"}), ("two_anchor_load", {**BOAT,
     "spread": "60 deg"}))),
    # with a load the boat is asked for a size alone, and her table is another
    ("anchor_size", "extrapolated", {"boat_length": "24.1 m", "load": "90 kN", "anchor_kind": "pivoting_fluke", "bottom": "sand"},
     {"boat_length": "24 m", "load": "90 kN", "anchor_kind": "pivoting_fluke", "bottom": "sand"}),
    ("tackle_check", "extrapolated", {"boat_length": "5.9 m"}, {"boat_length": "6 m"}),
    *((question, "extrapolated", {**others, "chain_size": "5.9 mm"}, {**others, "chain_size": "6 mm"})
      for question, others in (("chain_and_line", LOAD), ("tackle_check", {"boat_length": "9 m"}),
                               ("weigh_anchor", {"depth": "6 m", "anchor_mass": "16 kg", "chain": "9 m"}))),
    ("weigh_anchor", "extrapolated", {"depth": "6 m", "anchor_mass": "16 kg", "chain": "0.5 m", "chain_size": "5 mm"},
     {"depth": "6 m", "anchor_mass": "16 kg", "chain": "0 m", "chain_size": "5 mm"}),
    *((question, "extrapolated", {**others, "line_size": "29 mm"}, {**others, "line_size": "28 mm"})
      for question, others in (("chain_and_line", LOAD), ("tackle_check", {"boat_length": "9 m"}))),
    *(("holding", code, {**HOLD, "bottom": bottom}, {**HOLD, "bottom": "sand"}) for code, bottom in (("rock", "rock"), ("coral", "coral"), ("weed",
     "grass"))),
    *(("anchor_size", code, {**LOAD, "boat_length": "9 m", "anchor_kind": "plough", "bottom": bottom},
     {**LOAD, "boat_length": "9 m", "anchor_kind": "plough", "bottom": "mud"})
      for code, bottom in (("rock", "rock"), ("coral", "coral"), ("weed", "grass"))),
    *(("tackle_check", code, {"boat_length": "9 m", "bottom": bottom}, {"boat_length": "9 m", "bottom": "mud"})
      for code, bottom in (("rock", "rock"), ("coral", "coral"), ("weed", "grass"))),
    ("holding", "wide_band", {**HOLD, "bottom": "gravel"}, {**HOLD, "bottom": "rock"}),
    ("anchor_size", "wide_band", {**LOAD, "boat_length": "9 m", "anchor_kind": "plough", "bottom": "clay"},
     {**LOAD, "boat_length": "9 m", "anchor_kind": "plough", "bottom": "coral"}),
    # a band was reckoned with only where kind, mass, bottom and wind are there, and the bottom has a figure
    ("tackle_check", "wide_band", {**HOLD, **BOAT, "bottom": "sand"}, {**HOLD, **BOAT, "bottom": "rock"}),
    ("tackle_check", "wide_band", {**HOLD, **BOAT, "bottom": "sand"}, {**HOLD, "boat_length": "9 m", "bottom": "sand"}),
    *((question, "mean_wind", {**others, "wind": "F5"}, {**others, "wind": "20 kn"})
      for question, others in (("wind_load", {"boat_length": "9 m"}), ("holding", {**HOLD, "bottom": "sand", "boat_length": "9 m"}),
                               ("tackle_check", {"boat_length": "9 m"}), ("weigh_anchor", {"depth": "6 m", "anchor_mass": "16 kg",
     "boat_length": "9 m"}))),
]  # fmt: skip


def said(question: str, inputs: dict[str, Any]) -> set[str]:
    """The codes of the cautions of an answer."""
    found = anchorcalc.answer(question, **{name: value for name, value in inputs.items() if value is not None})
    return {one.code for one in found.cautions}


@pytest.mark.parametrize(("question", "code", "there", "not_there"), SAID, ids=[f"{one[0]}-{one[1]}-{place}" for place, one in enumerate(SAID)])
def test_caution_is_said_where_it_belongs_and_only_there(question: str, code: str, there: dict[str, Any], not_there: dict[str, Any]) -> None:
    assert code in said(question, there)
    assert code not in said(question, not_there)


# --- asked back ---------------------------------------------------------------------------------------------------------------------

# question, what it asks for, inputs with which it does, and what to add for it not to
ASKED: list[tuple[str, str, dict[str, Any], dict[str, Any]]] = [
    ("pull_at_anchor", "chain_size", {**ROPE, **LOAD, "chain": "0.5 m"}, {"chain": "0 m"}),
    ("pull_at_anchor", "line_size", {**LOAD, "rode_out": "40 m", "depth": "6 m", "chain": "39.9 m", "chain_size": "8 mm",
     "line_material": "polypropylene"}, {"chain": "40 m"}),
    ("rode_for_flat_pull", "chain_size", {**LOAD, "depth": "6 m", "line_size": "14 mm", "chain": "0.5 m"}, {"chain": "0 m"}),
    ("rode_for_flat_pull", "line_size", {**LOAD, "depth": "6 m"}, {"line_size": "14 mm"}),
    # √(7² + 2 · 7 · 1000 / 11.936) = 34.96 m of chain
    ("rode_for_flat_pull", "line_size", {"load": "1 kN", "depth": "6 m", "bow_height": "1 m", "chain": "34.9 m", "chain_size": "8 mm",
     "line_material": "polypropylene"},
     {"chain": "35 m"}),
    ("weigh_anchor", "chain_size", {"depth": "6 m", "anchor_mass": "16 kg", "chain": "0.5 m"}, {"chain": "0 m"}),
    ("weigh_anchor", "boat_length", {"depth": "6 m", "anchor_mass": "16 kg", "wind": "0 kn"}, {"boat_length": "9 m"}),
    ("holding", "boat_length", {**HOLD, "bottom": "sand", "wind": "0 kn"}, {"load": "1 kN"}),
    ("chain_and_line", "chain_size", {"load": "0.5 N"}, {"shackle_size": "10 mm"}),
    ("true_depth", "draught", {"reading": "3 m", "reads_from": "keel"}, {"draught": "1 m"}),
    ("true_depth", "transducer_depth", {"reading": "3 m", "reads_from": "transducer"}, {"transducer_depth": "0 m"}),
]  # fmt: skip


@pytest.mark.parametrize(("question", "name", "inputs", "settled"), ASKED, ids=[f"{one[0]}-{one[1]}-{place}" for place, one in enumerate(ASKED)])
def test_input_is_asked_for_where_it_matters_and_only_there(question: str, name: str, inputs: dict[str, Any], settled: dict[str, Any]) -> None:
    with pytest.raises(anchorcalc.InputError) as caught:
        anchorcalc.answer(question, **inputs)
    assert [(fault.input, fault.code) for fault in caught.value.faults] == [(name, "missing")]
    assert anchorcalc.answer(question, **{**inputs, **settled}).status == "answered"


# --- refused ------------------------------------------------------------------------------------------------------------------------

ROOM = {"boat_length": "9 m", "depth": "2 m", "bow_height": "1 m"}
ADRIFT = {"depth": "6 m", "bow_height": "1 m", "boat_length": "9 m", "distance_off": "90 m", "drift": "1 kn", "scope": 5}
# question, input at fault and why, inputs with which it is refused, and what to change for it not to be
REFUSED: list[tuple[str, str, str, dict[str, Any], dict[str, Any]]] = [
    ("scope_now", "rode_out", "contradiction", {"rode_out": "7 m", "depth": "6 m", "bow_height": "1 m"}, {"rode_out": "7.01 m"}),
    ("swing_clearance", "other_rode_out", "contradiction",
     {**SWING, "depth": "6 m", "distance": "90 m", "other_rode_out": "7 m", "other_boat_length": "9 m"}, {"other_rode_out": "7.01 m"}),
    ("pull_at_anchor", "rode_out", "contradiction", {**ROPE, **LOAD, "rode_out": "9 m", "bow_height": "1 m", "tide_rise": "2 m"},
     {"rode_out": "9.01 m"}),
    ("time_to_let_go", "rode_aboard", "contradiction", {**ADRIFT, "rode_aboard": "9 m", "reserve": "2 m"}, {"rode_aboard": "9.01 m"}),
    ("tide_at", "low_height", "contradiction", {**TIDE, "low_height": "3.01 m", "high_at": "12:00", "at": "08:00"}, {"low_height": "3 m"}),
    # ten hours and more are no pair; eighteen with their dates, since a tide that comes once a day is as long
    ("tide_at", "low_at", "contradiction", {**TIDE, "high_at": "16:00", "at": "08:00"}, {"high_at": "15:59"}),
    ("tide_at", "low_at", "contradiction", {**TIDE, "low_at": "2026-06-01T00:00", "high_at": "2026-06-01T18:01", "at": "2026-06-01T08:00"},
     {"high_at": "2026-06-01T18:00"}),
    ("tide_at", "at", "outside_tide", {**TIDE, "low_at": "2026-06-01T06:00", "high_at": "2026-06-01T12:00", "at": "2026-06-01T05:59"},
     {"at": "2026-06-01T06:00"}),
    ("tide_at", "at", "outside_tide", {**TIDE, "low_at": "2026-06-01T12:00", "high_at": "2026-06-01T06:00", "at": "2026-06-01T12:01"},
     {"at": "2026-06-01T12:00"}),
    ("mark_plan", "mark_interval", "contradiction", {"rode_aboard": "100.5 m", "mark_interval": "0.5 m"}, {"rode_aboard": "100 m"}),
    # 4 m of room; a height of 3 m at low water times 6 m of tide is more than 16, times 5 m less
    ("rode_for_room", "depth", "range_not_taken", {**ROOM, "distance": "13 m", "depth": "4..4.5 m", "tide_fall": "3 m", "tide_rise": "6 m"},
     {"tide_rise": "0 m"}),
    ("rode_for_room", "bow_height", "range_not_taken", {**ROOM, "distance": "13 m", "bow_height": "2..2.5 m", "tide_rise": "6 m"},
     {"tide_rise": "3 m"}),
    # scope 5 at 7 m is 35: 40 of rode are enough there, and at 9 m they are not
    ("time_to_let_go", "depth", "range_not_taken", {**ADRIFT, "depth": "6..8 m", "rode_aboard": "40 m"}, {"rode_aboard": "45 m"}),
    ("time_to_let_go", "bow_height", "range_not_taken", {**ADRIFT, "bow_height": "1..3 m", "rode_aboard": "40 m"}, {"rode_aboard": "35 m"}),
    ("weigh_anchor", "depth", "range_not_taken", {"depth": "8..14 m", "anchor_mass": "16 kg", "chain": "8.1 m", "chain_size": "8 mm"},
     {"chain": "8 m"}),
    ("weigh_anchor", "depth", "range_not_taken", {"depth": "8..14 m", "bow_height": "1 m", "anchor_mass": "16 kg", "chain": "14.9 m",
     "chain_size": "8 mm"},
     {"chain": "15 m"}),
    ("pull_at_anchor", "load", "range_not_taken", {**ROPE, "load": "1..2 kN", "line_material": "polypropylene"}, {"line_material": "polyester"}),
]  # fmt: skip


@pytest.mark.parametrize(
    ("question", "name", "code", "inputs", "mended"), REFUSED, ids=[f"{one[0]}-{one[1]}-{place}" for place, one in enumerate(REFUSED)]
)
def test_contradiction_is_refused_at_its_border_and_not_beyond(
    question: str, name: str, code: str, inputs: dict[str, Any], mended: dict[str, Any]
) -> None:
    with pytest.raises(anchorcalc.InputError) as caught:
        anchorcalc.answer(question, **inputs)
    assert [(fault.input, fault.code) for fault in caught.value.faults] == [(name, code)]
    assert anchorcalc.answer(question, **{**inputs, **mended}).status == "answered"


def test_rode_just_long_enough_for_the_beach_is_long_enough() -> None:
    beach: dict[str, Any] = {"slope": "1:10", "boat_length": "8 m", "draught": "0.6 m", "scope": 5, "bow_height": "1 m"}
    asked = anchorcalc.answer("bow_and_stern", **beach).results.bow_rode.si
    for rode, too_steep in ((asked, False), (asked * 0.999, True)):
        assert anchorcalc.answer("bow_and_stern", **beach, rode_aboard={"value": rode, "unit": "m"}).results.too_steep is too_steep


def test_pull_that_just_meets_a_gale_tests_for_it() -> None:
    # ABYC H-40, 30 ft row (reproduction): 700 lbf at 30 kn
    def said(pull: str) -> list[str]:
        return [line[:8] for line in anchorcalc.setting_pull(boat_length="30 ft", pull=pull).working if "cannot test" in line]

    assert said("700 lbf") == ["at 40 kn"] and said("699 lbf") == ["at 30 kn", "at 40 kn"]
