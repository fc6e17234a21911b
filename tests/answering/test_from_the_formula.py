"""Questions of water, room and time reckoned apart from the code: by hand from the formula, in plain arithmetic, at odd corners.

Each case holds the question, its inputs and the sums; a result that must be absent is None. No published source: triangles and divisions.
"""

from math import acos, asin, cos, pi, radians, sin, sqrt
from typing import Any

import pytest

import anchorcalc

FT, KN = 0.3048, 1852.0 / 3600.0
Case = tuple[str, dict[str, Any], dict[str, Any]]

RODE: list[Case] = [
    # feet and metres in one question
    ("rode_to_let_out", {"depth": "12 ft", "bow_height": "1.2 m", "scope": 5}, {"rode_out": (12 * FT + 1.2) * 5, "line_out": (12 * FT + 1.2) * 5}),
    # two ranges: the greatest height counts, for what is possible too
    ("rode_to_let_out", {"depth": "4..5 m", "bow_height": "1..1.5 m", "rode_aboard": "45 m"},
     {"rode_out": 6.5 * 7, "total_height": 6.5, "enough": False, "scope_possible": 45 / 6.5}),
    # more kept aboard than there is: nothing can go out
    ("rode_to_let_out", {"depth": "4 m", "bow_height": "1 m", "rode_aboard": "5 m", "reserve": "8 m"}, {"enough": False, "scope_possible": 0.0}),
    # exactly enough, in feet: (4 + 2) × 7 = 42 and 2 kept
    ("rode_to_let_out", {"depth": "4 ft", "bow_height": "2 ft", "rode_aboard": "44 ft", "reserve": "2 ft"}, {"enough": True, "scope_possible": 7.0}),
    # irregular marks on the line behind 6 m of chain: 35 − 6 = 29
    ("rode_to_let_out", {"depth": "4 m", "bow_height": "1 m", "chain": "6 m", "marks": "10,20,40 m", "marks_from": "chain_end"},
     {"line_out": 29.0, "mark": 2, "past": 9.0, "to_next": 11.0, "stop_at": 3, "scope_there": 46 / 5}),
    # all of it chain, and 25 m of chain more: the first mark is 25 + 10 away
    ("rode_to_let_out", {"depth": "4 m", "bow_height": "1 m", "chain": "60 m", "mark_interval": "10 m", "marks_from": "chain_end"},
     {"rode_out": 35.0, "line_out": 0.0, "mark": 0, "past": 0.0, "to_next": 35.0, "stop_at": 1, "scope_there": 70 / 5}),
    ("mark_to_stop_at", {"mark_interval": "10 ft", "rode_out": "70 ft"}, {"mark": 7, "past": 0.0, "to_next": 10 * FT, "stop_at": 7}),
    ("mark_to_stop_at", {"mark_interval": "10 m", "rode_out": "5 m", "chain": "6 m", "marks_from": "chain_end"},
     {"mark": 0, "past": 0.0, "to_next": 11.0, "stop_at": 1, "line_out": 0.0}),
    ("mark_to_stop_at", {"marks": "10,20,40 m", "rode_out": "5 m", "chain": "6 m", "marks_from": "chain_end"},
     {"mark": 0, "to_next": 11.0, "stop_at": 1}),
    # a mark just at the roller is reached; the next is a whole gap off
    ("mark_to_stop_at", {"marks": "10,20,40 m", "rode_out": "20 m"}, {"mark": 2, "past": 0.0, "to_next": 20.0, "stop_at": 2}),
    ("mark_to_stop_at", {"marks": "10,20 m", "rode_out": "20 m"}, {"mark": 2, "past": 0.0, "to_next": None, "stop_at": 2}),
    # a range of depths: marks follow the greatest rode, (6 + 1) × 5 = 35
    ("mark_to_stop_at", {"mark_interval": "10 m", "depth": "4..6 m", "bow_height": "1 m", "scope": 5},
     {"rode_out": 35.0, "mark": 3, "past": 5.0, "to_next": 5.0, "stop_at": 4, "scope_there": 40 / 7}),
    # the scope at the mark is that at high water: 50 over 5 + 1 + 1.5
    ("mark_to_stop_at", {"mark_interval": "10 m", "depth": "5 m", "bow_height": "1 m", "tide_rise": "1.5 m", "scope": 6},
     {"rode_out": 45.0, "mark": 4, "past": 5.0, "stop_at": 5, "scope_there": 50 / 7.5}),
    # (90 + 10 − 4) ft / 6 − 3 − 2 = 11 ft
    ("deepest_anchorage", {"chain": "10 ft", "line": "90 ft", "reserve": "4 ft", "scope": 6, "bow_height": "3 ft", "tide_rise": "2 ft"},
     {"deepest_depth": 11 * FT, "possible": True, "deepest_at_high_water": 13 * FT}),
    ("deepest_anchorage", {"rode_aboard": "10 m", "reserve": "12 m"}, {"deepest_depth": 0.0, "possible": False, "deepest_at_high_water": 0.0}),
    # just nothing: 14 / 7 − 1 − 1
    ("deepest_anchorage", {"rode_aboard": "14 m", "bow_height": "1 m", "tide_rise": "1 m"}, {"deepest_depth": 0.0, "possible": False}),
    # half a metre is a depth: 10.5 / 7 − 1
    ("deepest_anchorage", {"rode_aboard": "10.5 m", "bow_height": "1 m"}, {"deepest_depth": 0.5, "possible": True, "deepest_at_high_water": 0.5}),
    ("deepest_anchorage", {"rode_aboard": "40..50 m", "bow_height": "1 m", "scope": "5..7"}, {"deepest_depth": 40 / 7 - 1}),
    ("scope_now", {"rode_out": "105 ft", "depth": "15 ft", "bow_height": "3 ft", "tide_rise": "8 ft"},
     {"scope": 105 / 18, "scope_at_high_water": 105 / 26, "verdict": "short"}),
    ("scope_now", {"rode_out": "30..40 m", "depth": "5 m", "bow_height": "1 m", "tide_rise": "0..4 m"},
     {"scope": 5.0, "scope_at_high_water": 3.0, "verdict": "short"}),
    ("scope_now", {"rode_out": "6.1 m", "depth": "5 m", "bow_height": "1 m", "tide_rise": "2 m"},
     {"scope_at_high_water": 6.1 / 8, "verdict": "too_short"}),
    ("rode_to_carry", {"depth": "50 ft", "bow_height": "4 ft", "tide_rise": "6 ft", "scope": 4, "reserve": "3 m"}, {"rode_aboard": 60 * FT * 4 + 3}),
    ("rode_to_carry", {"depth": "10..15 m", "bow_height": "1 m"}, {"rode_aboard": 16 * 7, "total_height": 16.0}),
    ("rode_to_carry", {"depth": "10 m"}, {"rode_aboard": 11.2 * 7}),
    ("line_angle", {"angle": "10 deg"}, {"scope": 1 / sin(radians(10))}),
    ("line_angle", {"angle": "89 deg"}, {"scope": 1 / sin(radians(89))}),
    ("line_angle", {"angle": "8..12 deg"}, {"scope": 1 / sin(radians(12))}),
    ("line_angle", {"scope": "5..7"}, {"angle": asin(1 / 5)}),
]  # fmt: skip

CIRCLE = {"rode_out": "35 m", "depth": "5 m", "bow_height": "1 m", "boat_length": "9 m"}
ROOM: list[Case] = [
    ("swing_radius", {**CIRCLE, "tide_fall": "1.5 m"},
     {"bow_radius": sqrt(35**2 - 4.5**2), "swing_radius": sqrt(35**2 - 4.5**2) + 9, "area": pi * (sqrt(35**2 - 4.5**2) + 9) ** 2}),
    ("swing_radius", {**CIRCLE, "tide_fall": "8 m"}, {"bow_radius": sqrt(35**2 - 1)}),  # dries: the bow height alone
    ("swing_radius", {**CIRCLE, "rode_out": "30..35 m", "depth": "5..8 m", "tide_fall": "0..2 m"}, {"bow_radius": sqrt(35**2 - 4**2)}),
    ("swing_clearance", {**CIRCLE, "distance": "200 ft", "margin": "20 ft", "tide_fall": "2 m"},
     {"clearance": 180 * FT - sqrt(35**2 - 4**2) - 9, "clear": True, "clearance_same_wind": None}),
    # the neighbour's circle reaches less, and she lies within ours: the greater difference counts
    ("swing_clearance", {**CIRCLE, "distance": "80 m", "margin": "5 m", "other_rode_out": "20 m", "other_boat_length": "14 m"},
     {"other_swing_radius": sqrt(20**2 - 36) + 14, "clearance": 75 - sqrt(35**2 - 36) - 9 - sqrt(20**2 - 36) - 14,
      "clearance_same_wind": 75 - max(sqrt(35**2 - 36) + 9 - sqrt(20**2 - 36), sqrt(20**2 - 36) + 14 - sqrt(35**2 - 36)), "clear": False}),
    ("swing_clearance", {**CIRCLE, "distance": "40..60 m"}, {"clearance": 40 - sqrt(35**2 - 36) - 9, "clear": False}),
    ("rode_for_room", {"distance": "120 ft", "boat_length": "28 ft", "depth": "9 ft", "bow_height": "4 ft", "tide_rise": "3 ft", "margin": "20 ft",
                       "tide_fall": "20 ft", "scope": 4},
     {"longest_rode": sqrt(72**2 + 4**2) * FT, "scope_there": sqrt(72**2 + 4**2) / 16, "fits": True}),
    ("rode_for_room", {"distance": "10 m", "boat_length": "9 m", "margin": "1 m", "depth": "5 m"},
     {"longest_rode": 0.0, "scope_there": 0.0, "fits": False}),
    ("rode_for_room", {"distance": "8 m", "boat_length": "9 m", "depth": "5 m"}, {"longest_rode": 0.0, "fits": False}),
    ("rode_for_room", {"distance": "9.4 m", "boat_length": "9 m", "depth": "0.2 m", "bow_height": "0.1 m", "scope": 2}, {"longest_rode": 0.5}),
    ("rode_for_room", {"distance": "40..50 m", "boat_length": "9..10 m", "depth": "5 m", "bow_height": "1 m"},
     {"longest_rode": sqrt(30**2 + 6**2), "scope_there": sqrt(30**2 + 6**2) / 6, "fits": False}),
    ("where_to_drop", {"rode_out": "30 m", "depth": "5 m", "bow_height": "1 m"}, {"ahead_of_spot": sqrt(900 - 36), "stern_lies_at": None}),
    # the rode by the height at high water, the reach by the height now
    ("where_to_drop", {"depth": "12 ft", "bow_height": "4 ft", "tide_rise": "2 ft", "scope": 5, "boat_length": "28 ft"},
     {"rode_out": 90 * FT, "ahead_of_spot": sqrt(90**2 - 16**2) * FT, "stern_lies_at": (sqrt(90**2 - 16**2) + 28) * FT}),
    ("where_to_drop", {"depth": "4..6 m", "bow_height": "1 m", "scope": 5}, {"rode_out": 35.0, "ahead_of_spot": 7 * sqrt(24)}),
    ("true_depth", {"reading": "9.5 ft", "reads_from": "transducer", "transducer_depth": "18 in"}, {"depth": 11 * FT}),
    ("true_depth", {"reading": "2.2 m", "reads_from": "keel", "draught": "5 ft", "transducer_depth": "1 m"}, {"depth": 2.2 + 5 * FT}),
    ("true_depth", {"reading": "2.2 m", "reads_from": "surface", "draught": "5 ft", "transducer_depth": "1 m"}, {"depth": 2.2}),
    ("shallowest_anchorage", {"draught": "5 ft", "under_keel": "2 ft", "tide_fall": "4 ft", "depth": "12 ft"},
     {"shallowest_depth": 11 * FT, "under_keel_at_low_water": 3 * FT, "aground": False}),
    ("shallowest_anchorage", {"draught": "1 m", "tide_fall": "2 m", "depth": "2.5 m"}, {"under_keel_at_low_water": -0.5, "aground": True}),
    ("shallowest_anchorage", {"draught": "1 m", "under_keel": "0 m", "tide_fall": "1..2 m", "depth": "3..4 m"},
     {"shallowest_depth": 3.0, "under_keel_at_low_water": 0.0, "aground": True}),
    ("bow_and_stern", {"slope": "1:20", "boat_length": "24 ft", "draught": "2 ft", "under_keel": "1 ft", "tide_fall": "2 ft", "bow_height": "3 ft",
     "scope": 4},
     {"stern_distance": 100 * FT, "anchor_distance": (124 + sqrt(15) * 3) / (1 - sqrt(15) / 20) * FT, "water_at_stern": 5 * FT,
      "bow_rode": 4 * ((124 + sqrt(15) * 3) / (1 - sqrt(15) / 20) / 20 + 3) * FT, "too_steep": False}),
    # √(scope² − 1) just at the slope is too steep, and a little under it is not
    ("bow_and_stern", {"slope": sqrt(24), "boat_length": "8 m", "draught": "1 m", "scope": 5}, {"too_steep": True, "anchor_distance": None}),
    ("bow_and_stern", {"slope": "1:5", "boat_length": "8 m", "draught": "1 m", "scope": 5, "bow_height": "1 m", "under_keel": "0 m"},
     {"anchor_distance": (13 + sqrt(24)) / (1 - sqrt(24) / 5), "too_steep": False}),
    ("bow_and_stern", {"slope": "1:10", "boat_length": "8 m", "draught": "1 m", "scope": 3, "bow_height": "1 m", "under_keel": "0 m", "chain": "5 m",
                       "line": "20 m"},
     {"bow_rode": 3 * ((18 + sqrt(8)) / (1 - sqrt(8) / 10) / 10 + 1), "too_steep": False}),
]  # fmt: skip

ADRIFT = {"depth": "8 m", "bow_height": "1 m", "boat_length": "9 m", "rode_aboard": "50 m"}
EARLY = {"low_height": "0.6 m", "low_at": "06:10", "high_height": "4.4 m", "high_at": "12:25"}  # 375 min, 3.8 m


def risen(part: float) -> float:
    """What part of its range a tide has risen in a part of its time."""
    return (1 - cos(pi * part)) / 2


TIME: list[Case] = [
    ("time_to_let_go", {**ADRIFT, "distance_off": "150 m", "drift": "1 kn"},
     {"rode_to_use": 50.0, "room_needed": sqrt(2500 - 81) + 9, "time_left": (150 - sqrt(2500 - 81) - 9) / KN, "let_go_now": False,
     "scope_got": 50 / 9}),
    ("time_to_let_go", {**ADRIFT, "distance_off": "50 m", "drift": "2 m/s"}, {"time_left": (50 - sqrt(2500 - 81) - 9) / 2, "let_go_now": True}),
    ("time_to_let_go", {**ADRIFT, "distance_off": "200 ft", "drift": "1..2 kn", "scope": 3, "reserve": "40 ft"},
     {"rode_to_use": 27.0, "time_left": (200 * FT - sqrt(27**2 - 81) - 9) / (2 * KN)}),
    ("tide_at", {**EARLY, "at": "09:30"},
     {"height": 0.6 + 3.8 * risen(200 / 375), "tide_rise": 3.8 * (1 - risen(200 / 375)), "tide_fall": 3.8 * risen(200 / 375), "rising": True,
      "by_twelfths": 0.6 + 3.8 * (6 + 3 * (200 / 62.5 - 3)) / 12}),
    # across midnight, falling, from above to below the datum: 17 to 01 is 8 h, and 00:20 is 40 min before the end of it
    ("tide_at", {"low_height": "-0.4 m", "low_at": "01:00", "high_height": "3 m", "high_at": "17:00", "at": "00:20"},
     {"height": -0.4 + 3.4 * risen(40 / 480), "tide_fall": 3.4 * risen(40 / 480), "rising": False, "by_twelfths": -0.4 + 3.4 * 0.5 / 12}),
    ("tide_at", {"low_height": "2 ft", "low_at": "06:00", "high_height": "2 ft", "high_at": "12:00", "at": "08:00"},
     {"height": 2 * FT, "tide_rise": 0.0, "tide_fall": 0.0}),  # no tide at all
    ("tide_at", {**EARLY, "at": "12:25"}, {"height": 4.4, "tide_rise": 0.0, "tide_fall": 3.8}),
    # 35 / 5 − 4 − 1 = 2 m of rise to spare, from what it stands at at 07:00; the half cosine turned round
    ("when_to_veer", {**EARLY, "at": "07:00", "rode_out": "35 m", "depth": "4 m", "bow_height": "1 m"},
     {"veer": "later", "tide_rise": 3.8 * (1 - risen(50 / 375)), "rode_at_high_water": 5 * (5 + 3.8 * (1 - risen(50 / 375))),
      "veer_by": int(370 + 375 * acos(1 - 2 * (risen(50 / 375) + 2 / 3.8)) / pi)}),
    # late in the evening: 100 / 5 − 12 − 4 = 4 ft of a tide of 8 ft that began at 18:00 and ends at 02:00, four hours on, past no midnight
    ("when_to_veer", {"low_height": "1 ft", "low_at": "18:00", "high_height": "9 ft", "high_at": "02:00", "at": "18:00", "rode_out": "100 ft",
                      "depth": "12 ft", "bow_height": "4 ft"}, {"veer": "later", "veer_by": 22 * 60}),
    # 6 of 8 ft: two thirds of the time by the half cosine, 23:20; of 7 ft, past midnight
    ("when_to_veer", {"low_height": "1 ft", "low_at": "18:00", "high_height": "9 ft", "high_at": "02:00", "at": "18:00", "rode_out": "110 ft",
                      "depth": "12 ft", "bow_height": "4 ft"}, {"veer": "later", "veer_by": 18 * 60 + 480 * 2 // 3}),
    ("when_to_veer", {"low_height": "1 ft", "low_at": "18:00", "high_height": "9 ft", "high_at": "02:00", "at": "18:00", "rode_out": "115 ft",
                      "depth": "12 ft", "bow_height": "4 ft"}, {"veer": "later", "veer_by": int(18 * 60 + 480 * acos(1 - 7 / 4) / pi) - 24 * 60}),
    # at high water nothing is still to come
    ("when_to_veer", {**EARLY, "at": "12:25", "rode_out": "35 m", "depth": "4 m", "bow_height": "1 m"},
     {"veer": "never", "tide_rise": 0.0, "rode_at_high_water": 25.0}),
    # falling: what serves now serves all the fall; what does not is short now
    ("when_to_veer", {"low_height": "1 m", "low_at": "12:00", "high_height": "3 m", "high_at": "06:00", "at": "09:00", "rode_out": "25 m",
     "depth": "4 m",
                      "bow_height": "1 m"}, {"veer": "never", "veer_by": None, "tide_rise": 1.0, "rode_at_high_water": 30.0}),
    ("when_to_veer", {"low_height": "1 m", "low_at": "12:00", "high_height": "3 m", "high_at": "06:00", "at": "09:00", "rode_out": "24.9 m",
                      "depth": "4 m", "bow_height": "1 m"}, {"veer": "now", "veer_by": None}),
]  # fmt: skip


@pytest.mark.parametrize(("question", "inputs", "sums"), [*RODE, *ROOM, *TIME], ids=lambda one: one if isinstance(one, str) else "")
def test_answer_is_what_the_formula_gives_in_plain_arithmetic(question: str, inputs: dict[str, Any], sums: dict[str, Any]) -> None:
    found = anchorcalc.answer(question, **inputs).results
    for name, wanted in sums.items():
        ours = getattr(found, name)
        if isinstance(ours, anchorcalc.Quantity):
            assert ours.si == pytest.approx(wanted, rel=1e-9, abs=1e-9), name
        elif name == "veer_by" and ours is not None:
            assert ours.value == f"{wanted // 60:02d}:{wanted % 60:02d}"
        else:
            assert ours == wanted, name
