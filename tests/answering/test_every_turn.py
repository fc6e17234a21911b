"""Every turn that a headline or a working may take, word for word, the figures worked by hand (and rounded to the safe side)."""

from typing import Any

import pytest

import anchorcalc

SWING = {"rode_out": "5 m", "depth": "2 m", "bow_height": "1 m", "boat_length": "6 m"}  # a circle of 4 + 6 m
TIDE = {"low_height": "1 m", "high_height": "3 m"}
RISING, FALLING = {**TIDE, "low_at": "06:00", "high_at": "12:00"}, {**TIDE, "low_at": "12:00", "high_at": "06:00"}
VEER = {"depth": "4 m", "bow_height": "1 m", "at": "09:00"}  # 2 m of tide then, 1 m to come: 25 m now, 30 m at high water
ROPE = {"depth": "6 m", "bow_height": "1 m", "line_size": "14 mm"}
PLOUGH = {"anchor_kind": "plough", "anchor_mass": "10 kg", "bottom": "sand", "pull_angle": "0 deg"}  # 980.7 N, and 35 · 45.36 · 0.2205^0.8 kg

HEADLINES: list[tuple[str, dict[str, Any], str]] = [
    # --- marks: before they begin, at one, past the last, and beyond what is aboard
    ("mark_to_stop_at", {"mark_interval": "10 m", "rode_out": "6 m", "chain": "6 m", "marks_from": "chain_end"},
     "Stop with 6 m of chain out, before the marks begin."),
    ("mark_to_stop_at", {"mark_interval": "10 m", "rode_out": "7 m", "chain": "6 m", "marks_from": "chain_end"},
     "Stop at mark 1, or 1 m from where the marks begin."),
    ("mark_to_stop_at", {"mark_interval": "10 m", "depth": "4 m", "bow_height": "1 m", "scope": 7},
     "Stop at mark 4, or 5 m past mark 3. There the scope is 8:1."),
    ("mark_to_stop_at", {"mark_interval": "10 m", "rode_out": "10 m"}, "Stop at mark 1."),
    ("rode_to_let_out", {"depth": "4 m", "bow_height": "1 m", "mark_interval": "10 m", "rode_aboard": "42 m", "reserve": "2 m"},
     "Let out 35 m of rode: stop at mark 4, or 5 m past mark 3."),
    ("rode_to_let_out", {"depth": "4 m", "bow_height": "1 m", "mark_interval": "10 m", "rode_aboard": "41.9 m", "reserve": "2 m"},
     "Let out 35 m of rode: stop 5 m past mark 3 (mark 4 is beyond the rode aboard)."),
    ("rode_to_let_out", {"depth": "4 m", "bow_height": "1 m", "rode_aboard": "30 m"},
     "Let out 35 m of rode. There is not that much aboard: what there is gives 6:1."),
    ("mark_plan", {"rode_aboard": "30 m", "mark_interval": "10 m", "scope": 5, "bow_height": "1 m"},
     "3 marks; the last, mark 3 at 30 m, serves 5 m of water at high water."),
    ("mark_plan", {"rode_aboard": "30 m", "mark_interval": "10 m", "reserve": "21 m"}, "No mark comes before the end of the rode that can go out."),
    ("deepest_anchorage", {"rode_aboard": "35 m", "bow_height": "1 m", "tide_rise": "1 m"},
     "Anchor in 3 m of water at the most (4 m at high water)."),
    ("rode_to_carry", {"depth": "9 m", "bow_height": "1 m"}, "Carry 70 m of rode, chain and line."),
    ("scope_now", {"rode_out": "15 m", "depth": "5 m", "bow_height": "1 m"}, "Scope 2.5:1 now: too short."),
    ("scope_now", {"rode_out": "42 m", "depth": "4 m", "bow_height": "1 m", "tide_rise": "1 m"}, "Scope 7:1 at high water (8.4:1 now): ample."),
    # --- room
    ("swing_radius", SWING, "She may swing 10 m from the anchor, stern outermost."),
    ("swing_clearance", {**SWING, "distance": "13 m"}, "She swings clear by 3 m."),
    ("swing_clearance", {**SWING, "distance": "13 m", "margin": "2 m"}, "She swings clear by 1 m beyond the margin of 2 m."),
    ("swing_clearance", {**SWING, "distance": "10 m"}, "She only just swings clear, with nothing to spare."),
    ("swing_clearance", {**SWING, "distance": "8 m"}, "She does not swing clear: 2 m is lacking."),
    ("swing_clearance", {**SWING, "distance": "11 m", "margin": "2 m"}, "She does not swing clear: 1 m is lacking with the margin of 2 m."),
    # two of 10 m need 20; lying the same way 10 − 4
    ("swing_clearance", {**SWING, "distance": "15 m", "other_rode_out": "5 m", "other_boat_length": "6 m"},
     "She does not swing clear: 5 m is lacking. While both boats lie the same way there is 9 m."),
    ("swing_clearance", {**SWING, "distance": "6 m", "other_rode_out": "5 m", "other_boat_length": "6 m"},
     "She does not swing clear: 14 m is lacking. While both boats lie the same way there is 0 m."),
    ("swing_clearance", {**SWING, "distance": "5 m", "other_rode_out": "5 m", "other_boat_length": "6 m"},
     "She does not swing clear: 15 m is lacking. Nor do they clear lying the same way."),
    ("rode_for_room", {"distance": "13 m", "boat_length": "9 m", "depth": "2 m", "bow_height": "1 m", "scope": 1.5},
     "Let out 5 m at the most: scope 1.6:1, which will do."),
    ("rode_for_room", {"distance": "13 m", "boat_length": "9 m", "depth": "2 m", "bow_height": "1 m"},
     "Not here: 5 m is the most there is room for, and that is only 1.6:1, not 7:1."),
    ("rode_for_room", {"distance": "9 m", "boat_length": "9 m", "depth": "2 m"}, "No room here: the boat alone is longer than the room there is."),
    ("where_to_drop", {"rode_out": "5 m", "depth": "2 m", "bow_height": "1 m"},
     "Drop the anchor 4 m upwind of where the bow is to lie, and let out 5 m."),
    ("where_to_drop", SWING, "Drop the anchor 4 m upwind of where the bow is to lie, and let out 5 m; the stern will lie 10 m from it."),
    ("true_depth", {"reading": "3 m", "reads_from": "keel", "draught": "1.5 m"}, "The water is 4.5 m deep."),
    ("shallowest_anchorage", {"draught": "1 m", "tide_fall": "1 m"}, "Anchor in no less than 2.3 m of water now."),
    ("shallowest_anchorage", {"draught": "1 m", "tide_fall": "1 m", "depth": "2 m"},
     "She will touch at low water. Anchor in no less than 2.3 m of water now."),
    ("shallowest_anchorage", {"draught": "1 m", "tide_fall": "1 m", "depth": "2.2 m"},
     "Too shallow: 0.2 m under the keel at low water, less than the 0.3 m wanted. Anchor in no less than 2.3 m of water now."),
    ("shallowest_anchorage", {"draught": "1 m", "tide_fall": "1 m", "depth": "2.3 m"},
     "0.3 m under the keel at low water. Anchor in no less than 2.3 m of water now."),
    # √8 · 1 + 18 over 1 − √8/10 is 29.05, up to the half metre; 3 · (2.905 + 1) is 11.72
    ("bow_and_stern", {"slope": "1:10", "boat_length": "8 m", "draught": "1 m", "scope": 3, "bow_height": "1 m", "under_keel": "0 m"},
     "Drop the bow anchor 29.5 m from the water's edge, let out 11.8 m, and hold the stern 10 m off."),
    ("bow_and_stern", {"slope": "1:10", "boat_length": "8 m", "draught": "1 m", "scope": 3, "bow_height": "1 m", "under_keel": "0 m",
     "rode_aboard": "11 m"},
     "The rode aboard is too short: this beach asks 11.8 m to an anchor 29.5 m out."),
    ("bow_and_stern", {"slope": "1:2", "boat_length": "8 m", "draught": "1 m"},
     "Too steep for 7:1: the bottom falls away faster than the rode gains on it."),
    # --- time
    ("tide_at", {**RISING, "at": "09:00"}, "At 09:00 the tide stands at 2 m, rising: 1 m still to come."),
    ("tide_at", {**FALLING, "at": "08:00"}, "At 08:00 the tide stands at 2.5 m, falling: 1.5 m still to go."),
    ("when_to_veer", {**RISING, **VEER, "rode_out": "24 m"}, "Veer now: 24 m is already less than 5:1. At high water it takes 30 m."),
    ("when_to_veer", {**RISING, **VEER, "rode_out": "25 m"}, "Veer to 30 m by 09:00."),
    ("when_to_veer", {**RISING, **VEER, "rode_out": "30 m"}, "No need to veer: 30 m serves at high water, which asks 30 m."),
    ("when_to_veer", {**FALLING, **VEER, "rode_out": "25 m"}, "No need to veer on this falling tide. The next high water, if as high, asks 30 m."),
    # rode 5, height 3, boat 6: 10 m of room; at 1 m/s
    ("time_to_let_go", {**SWING, "rode_aboard": "5 m", "rode_out": None, "distance_off": "40 m", "drift": "1 m/s"},
     "Let go within 0.5 min: 5 m of rode."),
    ("time_to_let_go", {**SWING, "rode_aboard": "5 m", "rode_out": None, "distance_off": "39.9 m", "drift": "1 m/s"}, "LET GO NOW: 5 m of rode."),
    ("time_to_let_go", {**SWING, "rode_aboard": "5 m", "rode_out": None, "distance_off": "9 m", "drift": "1 m/s"}, "LET GO NOW: 5 m of rode."),
    # --- forces
    ("two_anchor_load", {"load": "1 kN", "spread": "120 deg"}, "1 kN on each rode."),
    ("two_anchor_load", {"load": "1 kN", "spread": "90 deg", "wind_off": "15 deg"}, "0.87 kN on one rode, 0.5 kN on the other."),
    ("two_anchor_load", {"load": "1 kN", "spread": "90 deg", "wind_off": "45 deg"}, "One rode carries it all, 1 kN; the other is slack."),
    ("two_anchor_load", {"load": "1 kN", "spread": "171 deg"}, "So far apart she lies to one anchor at a time: 1 kN on either."),
    ("pull_at_anchor", {**ROPE, "rode_out": "60 m", "load": "1 N"}, "The pull at the anchor is flat."),
    ("pull_at_anchor", {**ROPE, "chain": "5 m", "chain_size": "8 mm", "rode_out": "60 m", "load": "1 N"},
     "The pull at the anchor is flat and 5 m of chain lies on the bottom."),
    # as good as taut: asin(7/48.5) is 8.30 degrees; 0.91 at 8.21 and 0.85 at 9.59 degrees, so 0.906 there
    ("pull_at_anchor", {**ROPE, "rode_out": "48.5 m", "load": "500 kN"},
     "The rode lifts at the anchor: it pulls at 8.3°, where an anchor keeps about 90 % of its holding."),
    ("pull_at_anchor", {**ROPE, "rode_out": "80 m", "load": "500 kN"},
     "The rode lifts at the anchor: it pulls at 5.1°, where an anchor keeps all of its holding."),
    ("anchor_size", {"boat_length": "8 m", "load": "1 kN", "anchor_kind": "plough", "bottom": "grass"},
     "There is no figure for holding on weed, so none for the anchor; a published table for her length alone asks 10 kg."),
    ("anchor_size", {"boat_length": "8 m", "load": "1 kN", "anchor_kind": "plough", "bottom": "rock"},
     "There is no figure for holding on rock, so none for the anchor; a published table for her length alone asks 10 kg."),
    ("anchor_size", {"boat_length": "8 m", "load": "1 kN", "anchor_kind": "pivoting_fluke", "bottom": "sand", "scope": 1.2},
     "No pivoting fluke holds at scope 1.2:1: the pull is too steep. Let out more rode; a published table for her length alone asks 10 kg."),
    ("holding", {**PLOUGH, "bottom": "grass"}, "There is no figure: nobody can say what a plough holds on weed."),
    ("holding", PLOUGH, "Well set in sand, this plough may hold 0.98 kN at the least and 4.64 kN at the most."),
    ("holding", {**PLOUGH, "load": "490.3325 N"},
     "Well set in sand, this plough may hold 0.98 kN at the least and 4.64 kN at the most. Even the least is 2 times the load."),
    ("holding", {**PLOUGH, "load": "980.665 N"},
     "Well set in sand, this plough may hold 0.98 kN at the least and 4.64 kN at the most. Even the least is 1 times the load."),
    ("holding", {**PLOUGH, "load": "1961.33 N"},
     "Well set in sand, this plough may hold 0.98 kN at the least and 4.64 kN at the most. The least is only 0.5 of the load. It may drag."),
    ("holding", {**PLOUGH, "load": "9806.65 N"},
     "Well set in sand, this plough may hold 0.98 kN at the least and 4.64 kN at the most. The least is only 0.1 of the load. "
     "Even the most is less than the load: reckon with dragging."),
    # 30 kn · √(980.665 / 3113.76) is 16.8 kn
    ("holding", {**PLOUGH, "boat_length": "30 ft"},
     "Well set in sand, this plough may hold 220 lbf at the least and 1040 lbf at the most. The least is reached at 16 kn of wind."),
    ("chain_and_line", {"load": "7500 N", "chain_size": "8 mm"},
     "Strong enough for 7500 N. The 8 mm chain is the weakest part: its working load is 1 times the load."),
    ("chain_and_line", {"load": "1 kN", "line_size": "5 mm"},
     "Not proved strong enough for 1 kN: the tables have no figure for the 5 mm line. What would do: line of 10 mm."),
    ("chain_and_line", {"load": "90 kN", "chain_size": "8 mm"},
     "Not strong enough for 90 kN: the 8 mm chain is the weakest part, 0.08 times the load. What would do: no chain in the tables."),
    ("tackle_check", {"boat_length": "8 m", "bitter_end": "free", "shackles": "open", "spare_anchor": False},
     "1 to put right before you anchor, 1 to put right before it blows, 1 to know. First: The inner end of the rode is not made fast: all of it can "
     "run out and be lost. Lash it to a strong point with line that reaches the deck, so that it holds and yet can be cut. "
     "10 things were not said and not checked."),
]  # fmt: skip


@pytest.mark.parametrize(("question", "inputs", "headline"), HEADLINES, ids=[f"{one[0]}-{place}" for place, one in enumerate(HEADLINES)])
def test_headline_takes_the_turn_that_belongs(question: str, inputs: dict[str, Any], headline: str) -> None:
    assert anchorcalc.answer(question, **{name: value for name, value in inputs.items() if value is not None}).headline == headline
