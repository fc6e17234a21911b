"""The workings, line by line and turn by turn, with figures worked by hand."""

from typing import Any

import pytest

import anchorcalc

SWING = {"rode_out": "5 m", "depth": "2 m", "bow_height": "1 m", "boat_length": "6 m"}  # a circle of 4 + 6 m
RISING = {"low_height": "1 m", "high_height": "3 m", "low_at": "06:00", "high_at": "12:00"}
LET_OUT = {"depth": "4 m", "bow_height": "1 m", "scope": 7}
WEIGH = {"depth": "10 m", "bow_height": "0 m", "anchor_mass": "10 kg"}
PLOUGH = {"anchor_kind": "plough", "anchor_mass": "10 kg", "bottom": "sand", "pull_angle": "0 deg"}

WORKINGS: list[tuple[str, dict[str, Any], list[str]]] = [
    ("rode_to_let_out", LET_OUT, ["4 m of water + 1 m of bow height + 0 m of tide = 5 m", "5 m × 7 = 35 m"]),
    ("rode_to_let_out", {**LET_OUT, "chain": "0.5 m", "rode_aboard": "42 m", "reserve": "2 m", "mark_interval": "10 m", "marks_from": "anchor"},
     ["4 m of water + 1 m of bow height + 0 m of tide = 5 m", "5 m × 7 = 35 m", "35 m − 0.5 m of chain = 34.5 m of line",
      "(42 m aboard − 2 m kept) / 5 m = 8:1", "that is 5 m past mark 3"]),
    ("mark_to_stop_at", {"mark_interval": "10 m", "rode_out": "36 m", "chain": "6 m", "marks_from": "chain_end"},
     ["36 m of rode − 6 m of chain = 30 m of line, which the marks count", "marks every 10 m: 0 m past mark 3"]),
    ("mark_to_stop_at", {"marks": "10,20 m", "rode_out": "36 m"}, ["36 m of rode, all of which the marks count",
     "marks at 10, 20 m: 16 m past mark 2"]),
    ("deepest_anchorage", {"rode_aboard": "37 m", "reserve": "2 m", "bow_height": "1 m", "tide_rise": "1 m"},
     ["(37 m of rode − 2 m kept aboard) / 7 − 1 m of bow height − 1 m of tide", "= 3 m of water now"]),
    ("deepest_anchorage", {"rode_aboard": "7 m", "bow_height": "1 m"},
     ["(7 m of rode − 0 m kept aboard) / 7 − 1 m of bow height − 0 m of tide", "is nothing or less"]),
    ("mark_plan", {"rode_aboard": "20 m", "mark_interval": "10 m", "scope": 5, "bow_height": "1 m"},
     ["water at high water = rode out / 5 − 1 m of bow height", "mark 1: 10 m out, for 1 m of water at high water",
      "mark 2: 20 m out, for 3 m of water at high water"]),
    ("scope_now", {"rode_out": "36 m", "depth": "5 m", "bow_height": "1 m", "tide_rise": "0.5 m"},
     ["36 m of rode / (5 m of water + 1 m of bow height) = 6:1 now", "36 m of rode / (5 m + 1 m + 0.5 m of tide) = 5.5385:1 at high water",
      "ample from 7:1, fair from 5:1, short from 3:1, below that too short (common practice)"]),
    ("scope_now", {"rode_out": "36 m", "depth": "5 m", "bow_height": "1 m"},
     ["36 m of rode / (5 m of water + 1 m of bow height) = 6:1 now",
     "ample from 7:1, fair from 5:1, short from 3:1, below that too short (common practice)"]),
    ("swing_radius", SWING, ["√(5 m² − (2 m of water + 1 m of bow height)²) = 4 m from the anchor to the bow", "4 m + 6 m of boat = 10 m"]),
    ("swing_radius", {**SWING, "depth": "2.5 m", "tide_fall": "0.5 m"},
     ["√(5 m² − (2.5 m of water − 0.5 m of fall + 1 m of bow height)²) = 4 m from the anchor to the bow", "4 m + 6 m of boat = 10 m"]),
    ("swing_radius", {**SWING, "bow_height": "3 m", "depth": "1 m", "tide_fall": "1 m"},
     ["√(5 m² − (3 m of bow height, dry at low water)²) = 4 m from the anchor to the bow", "4 m + 6 m of boat = 10 m"]),
    ("swing_clearance", {**SWING, "distance": "13 m", "margin": "1 m"},
     ["her circle: √(5 m² − height at low water²) + 6 m of boat = 10 m", "13 m − 1 m of margin − 10 m = 2 m"]),
    ("swing_clearance", {**SWING, "distance": "23 m", "margin": "1 m", "other_rode_out": "5 m", "other_boat_length": "4 m"},
     ["her circle: √(5 m² − height at low water²) + 6 m of boat = 10 m", "the neighbour's circle, in the same depth: √(5 m² − height²) + 4 m = 8 m",
      "23 m − 1 m of margin − 10 m − 8 m = 4 m", "both lying the same way: 16 m"]),
    ("where_to_drop", {key: value for key, value in SWING.items() if key != "boat_length"},
     ["√(5 m² − (2 m of water + 1 m of bow height)²) = 4 m",
     "an anchor drags in some way before it sets, line stretches, and she sheers about: leave room for all three"]),
    ("where_to_drop", SWING,
     ["√(5 m² − (2 m of water + 1 m of bow height)²) = 4 m", "4 m + 6 m of boat = 10 m",
      "an anchor drags in some way before it sets, line stretches, and she sheers about: leave room for all three"]),
    ("true_depth", {"reading": "3 m", "reads_from": "transducer",
     "transducer_depth": "0.5 m"}, ["3 m shown + 0.5 m from the surface to the transducer = 3.5 m"]),
    ("true_depth", {"reading": "3 m", "reads_from": "keel", "draught": "1.5 m"}, ["3 m shown + 1.5 m of draught = 4.5 m"]),
    ("true_depth", {"reading": "3 m", "reads_from": "surface"}, ["3 m shown from the surface = 3 m"]),
    ("shallowest_anchorage", {"draught": "1 m", "tide_fall": "1 m", "depth": "3 m"},
     ["1 m of draught + 0.3 m under the keel + 1 m of fall = 2.3 m", "3 m of water − 1 m of fall − 1 m of draught = 1 m"]),
    ("tide_at", {**RISING, "at": "08:00"},
     ["08:00 is 33% of the way from low to high water", "half cosine between 1 m at 06:00 and 3 m at 12:00: 1.5 m", "rule of twelfths: 1.5 m"]),
    ("tide_at", {**RISING, "low_at": "12:00", "high_at": "06:00", "at": "08:00"},
     ["08:00 is 33% of the way from high to low water", "half cosine between 1 m at 12:00 and 3 m at 06:00: 2.5 m", "rule of twelfths: 2.5 m"]),
    ("two_anchor_load", {"load": "1 kN", "spread": "150 deg", "wind_off": "0 deg"},  # 1 / (2 cos 75°)
     ["1 kN between two rodes 150° apart, wind 0° off the middle", "the harder rode carries 1.93 times the load"]),
    ("two_anchor_load", {"load": "1 kN", "spread": "90 deg", "wind_off": "15 deg"},  # sin 60° and sin 30°
     ["1 kN between two rodes 90° apart, wind 15° off the middle", "the harder rode carries 0.866 times the load"]),
    ("holding", {**PLOUGH, "load": "490.3325 N", "pull_angle": "90 deg",
     "bottom": "rock"}, ["no test and no trade figure for rock was found: a number would be a guess"]),
    ("holding", {**PLOUGH, "load": "500 N"},
     ["10 kg plough in sand, flat pull × 1.00 for a pull at 0°: 0.98067 kN to 4.6443 kN", "0.98067 kN / 500 N (0.5 kN) = 1.9613"]),
    ("anchor_size", {"boat_length": "8 m", "load": "1 kN", "anchor_kind": "plough", "bottom": "rock"}, ["row of the table for 8 m: 10 kg"]),
    # 1000 / (10 · 9.80665 · 0.91) kg
    ("anchor_size", {"boat_length": "8 m", "load": "1 kN", "anchor_kind": "plough", "bottom": "sand"},
     ["least mass that holds 1 kN at scope 7:1, by the low end of the band: 11.206 kg",
      "row of the table for 8 m: 10 kg", "the greater counts: 11.206 kg"]),
    # 10 kg in water are 85.26 N, 8.69 kg; a windlass of 1.5 / 0.7 as much
    ("weigh_anchor", WEIGH,
     ["10 kg of anchor in 10 m of water; no chain was reckoned",
     "the size of the line was not given: its weight, a few newtons in water, was left out",
      "steel keeps 0.87 of its weight in sea water: 0.085262 kN, as a weight 9 kg or 19 lb",
      "without the boat and the wind the pull that brings her up to the anchor was not reckoned",
      "windlass: 1.5 × the greatest load / 0.7 for the roller, or the rule by the chain where that is more: 0.1827 kN",
      "a person: up to 23 kg or 51 lb (226 N)"]),
]  # fmt: skip


@pytest.mark.parametrize(("question", "inputs", "lines"), WORKINGS, ids=[f"{one[0]}-{place}" for place, one in enumerate(WORKINGS)])
def test_working_shows_the_sum_and_what_was_left_out(question: str, inputs: dict[str, Any], lines: list[str]) -> None:
    working = [line for line in anchorcalc.answer(question, units="metric", **inputs).working if "assumed" not in line and "not said" not in line]
    assert working == lines


def lines_of(question: str, **inputs: Any) -> str:
    """The working of an answer, as one text."""
    return "\n".join(anchorcalc.answer(question, units="metric", **inputs).working)


@pytest.mark.parametrize(("chain", "left_out"), [("10.9 m", True), ("11 m", False)])
def test_line_is_left_out_only_where_it_hangs(chain: str, left_out: bool) -> None:
    said = lines_of("weigh_anchor", depth="10 m", bow_height="1 m", anchor_mass="10 kg", chain=chain, chain_size="8 mm")
    assert ("left out" in said) is left_out
    assert f"10 kg of anchor and {chain} of 8 mm chain: 10 m below the surface, 1 m above it" in said


def test_half_a_metre_of_chain_is_chain() -> None:
    assert "0.5 m of 8 mm chain" in lines_of("weigh_anchor", **WEIGH, chain="0.5 m", chain_size="8 mm")
    rode = {"rode_out": "40 m", "depth": "6 m", "load": "2 kN", "line_size": "14 mm"}
    assert "40 m of rode with 0.5 m of 8 mm chain" in lines_of("pull_at_anchor", **rode, chain="0.5 m", chain_size="8 mm")
    assert "40 m of rode with no chain" in lines_of("pull_at_anchor", **rode)
    assert "40 m of rode with no chain" in lines_of("pull_at_anchor", **rode, chain="0 m", chain_size="8 mm")


def test_load_is_told_as_a_weight_and_the_steady_drag_by_its_area() -> None:
    # 700 lbf is 318 kgf; 0.30 · 9.144 · 3.25 m² of motor boat, 0.25 of a sailing boat
    said = lines_of("wind_load", boat_length="30 ft", wind="30 kn")
    assert "as a weight: 318 kg or 700 lb" in said and "about 8.91 m² across the wind × 0.9" in said and "stream" not in said
    said = lines_of("wind_load", boat_length="30 ft", wind="30 kn", beam="3 m", boat_form="sail", current="0.5 m/s")
    assert "about 6.86 m² across the wind × 0.7" in said and said.count("of stream") == 2


def test_a_part_that_is_too_thin_for_the_tables_and_a_shackle_are_told_of() -> None:
    said = lines_of("chain_and_line", load="1 kN", chain_size="5 mm", line_size="14 mm", shackle_size="10 mm")
    assert "5 mm chain: thinner than the tables begin, so it counts as not strong enough" in said
    assert "14 mm line: working load 2.33 kN, 2.33 times the load" in said  # 525 lbf
    assert "10 mm shackle: working load 4.13 kN, 4.13 times the load" in said and "a forged shackle" in said  # 3 · 0.3937² tons
    assert "a forged shackle" not in lines_of("chain_and_line", load="1 kN", chain_size="8 mm")
