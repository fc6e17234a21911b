"""Whole questions worked by hand: triangles of 3, 4 and 5, whole metres, and a slope whose sum is written out."""

from typing import Any

import pytest

import anchorcalc

# question, inputs, results in SI (or words and flags); each sum in one line
WORKED: list[tuple[str, dict[str, Any], dict[str, Any]]] = [
    # (4 + 1 + 0.5) × 7 = 38.5; less 10 of chain; (60 − 5) / 5.5 = 10
    ("rode_to_let_out", {"depth": "4 m", "bow_height": "1 m", "tide_rise": "0.5 m", "scope": 7, "chain": "10 m", "rode_aboard": "60 m",
      "reserve": "5 m"},
     {"rode_out": 38.5, "total_height": 5.5, "line_out": 28.5, "enough": True, "scope_possible": 10.0}),
    ("rode_to_let_out", {"depth": "4 m", "bow_height": "1 m", "scope": 7, "chain": "10 m", "line": "24 m", "mark_interval": "10 m"},
     {"rode_out": 35.0, "enough": False, "scope_possible": 6.8, "mark": 3, "past": 5.0, "to_next": 5.0, "stop_at": 4, "scope_there": 8.0}),
    ("rode_to_let_out", {"depth": "4 m", "bow_height": "1 m", "scope": 7, "chain": "40 m"}, {"line_out": 0.0}),
    # 36 by 10: 6 past the third; with 6 of chain that the marks leave out, 30 of line is the third itself
    ("mark_to_stop_at", {"mark_interval": "10 m", "rode_out": "36 m"}, {"mark": 3, "past": 6.0, "to_next": 4.0, "stop_at": 4, "line_out": 36.0}),
    ("mark_to_stop_at", {"mark_interval": "10 m", "rode_out": "36 m", "chain": "6 m", "marks_from": "chain_end"}, {"mark": 3, "past": 0.0,
      "stop_at": 3}),
    ("mark_to_stop_at", {"marks": "10,20,40 m", "depth": "5 m", "bow_height": "1 m", "scope": 6},
     {"rode_out": 36.0, "mark": 2, "past": 16.0, "to_next": 4.0, "stop_at": 3, "scope_there": 40.0 / 6.0}),
    ("mark_to_stop_at", {"marks": "10,20 m", "rode_out": "36 m"}, {"mark": 2, "past": 16.0, "stop_at": None, "to_next": None}),
    ("mark_to_stop_at", {"mark_interval": "10 m", "rode_out": "8 m"}, {"mark": 0, "past": 8.0, "to_next": 2.0, "stop_at": 1}),
    # 35 / 7 − 1 − 0.5; nothing where that is less than nothing
    ("deepest_anchorage", {"rode_aboard": "40 m", "reserve": "5 m", "bow_height": "1 m", "tide_rise": "0.5 m"},
     {"deepest_depth": 3.5, "possible": True, "deepest_at_high_water": 4.0}),
    ("deepest_anchorage", {"rode_aboard": "7 m", "bow_height": "1 m"}, {"deepest_depth": 0.0, "possible": False, "deepest_at_high_water": 0.0}),
    # 36 / 6 = 6 now, 36 / 9 = 4 at high water
    ("scope_now", {"rode_out": "36 m", "depth": "5 m", "bow_height": "1 m", "tide_rise": "3 m"},
     {"scope": 6.0, "scope_at_high_water": 4.0, "verdict": "short"}),
    ("scope_now", {"rode_out": "42 m", "depth": "5 m", "bow_height": "1 m"}, {"verdict": "ample"}),
    ("scope_now", {"rode_out": "30 m", "depth": "5 m", "bow_height": "1 m"}, {"verdict": "fair"}),
    ("scope_now", {"rode_out": "18 m", "depth": "5 m", "bow_height": "1 m"}, {"verdict": "short"}),
    ("scope_now", {"rode_out": "17.9 m", "depth": "5 m", "bow_height": "1 m"}, {"verdict": "too_short"}),
    # 3, 4, 5: rode 5, height 3, reach 4; and 6 of boat
    ("swing_radius", {"rode_out": "5 m", "depth": "3 m", "tide_fall": "1 m", "bow_height": "1 m", "boat_length": "6 m"},
     {"bow_radius": 4.0, "swing_radius": 10.0, "area": 314.159265358979}),
    ("swing_radius", {"rode_out": "5 m", "depth": "1 m", "tide_fall": "2 m", "bow_height": "3 m", "boat_length": "6 m"}, {"bow_radius": 4.0}),
    ("swing_clearance", {"rode_out": "5 m", "depth": "2 m", "bow_height": "1 m", "boat_length": "6 m", "distance": "20 m", "margin": "2 m"},
     {"clearance": 8.0, "swing_radius": 10.0, "clear": True, "other_swing_radius": None}),
    ("swing_clearance", {"rode_out": "5 m", "depth": "2 m", "bow_height": "1 m", "boat_length": "6 m", "distance": "20 m", "margin": "2 m",
                         "other_rode_out": "5 m", "other_boat_length": "2 m"},
     {"clearance": 2.0, "other_swing_radius": 6.0, "clearance_same_wind": 12.0, "clear": True}),
    ("swing_clearance", {"rode_out": "5 m", "depth": "2 m", "bow_height": "1 m", "boat_length": "6 m", "distance": "11 m", "margin": "2 m"},
     {"clearance": -1.0, "clear": False}),
    ("rode_for_room", {"distance": "15 m", "margin": "2 m", "boat_length": "9 m", "depth": "3 m", "tide_fall": "1 m", "bow_height": "1 m",
      "scope": 2},
     {"longest_rode": 5.0, "scope_there": 1.25, "fits": False}),
    ("rode_for_room", {"distance": "11 m", "margin": "2 m", "boat_length": "9 m", "depth": "2 m"}, {"longest_rode": 0.0, "fits": False}),
    ("where_to_drop", {"rode_out": "5 m", "depth": "2 m", "bow_height": "1 m", "boat_length": "6 m"},
     {"ahead_of_spot": 4.0, "stern_lies_at": 10.0, "rode_out": 5.0}),
    # 5 of rode there is (7 × 3 was wanted): reach 4, boat 6; 30 − 10 at 2 a second
    ("time_to_let_go", {"depth": "2 m", "bow_height": "1 m", "rode_aboard": "6 m", "reserve": "1 m", "boat_length": "6 m", "distance_off": "30 m",
                        "drift": "2 m/s"},
     {"rode_to_use": 5.0, "room_needed": 10.0, "time_left": 10.0, "let_go_now": False, "scope_got": 5.0 / 3.0}),
    ("time_to_let_go", {"depth": "2 m", "bow_height": "1 m", "rode_aboard": "5 m", "boat_length": "6 m", "distance_off": "10 m", "drift": "2 m/s"},
     {"time_left": 0.0, "let_go_now": True}),
    ("time_to_let_go", {"depth": "2 m", "bow_height": "1 m", "rode_aboard": "50 m", "boat_length": "6 m", "distance_off": "100 m", "drift": "2 m/s"},
     {"rode_to_use": 21.0}),
    # 1.6 + 0.3 + 1.2
    ("shallowest_anchorage", {"draught": "1.6 m", "tide_fall": "1.2 m", "depth": "4 m"},
     {"shallowest_depth": 3.1, "under_keel_at_low_water": 1.2, "aground": False}),
    ("shallowest_anchorage", {"draught": "1.6 m", "tide_fall": "1.2 m", "depth": "2.8 m"}, {"aground": True}),
    ("rode_to_carry", {"depth": "12 m", "bow_height": "1 m", "tide_rise": "2 m", "scope": 5, "reserve": "3 m"},
     {"rode_aboard": 78.0, "total_height": 15.0}),
    ("line_angle", {"scope": 2}, {"angle": 0.523598775598299, "scope": None}),
    # X = 9 + 8 + √24·(X/10 + 1.5): X = (17 + 1.5·√24) / (1 − √24/10)
    ("bow_and_stern", {"slope": "1:10", "boat_length": "8 m", "draught": "0.6 m", "under_keel": "0.3 m", "scope": 5, "bow_height": "1 m",
                       "tide_rise": "0.5 m"},
     {"stern_distance": 9.0, "anchor_distance": 47.732545, "bow_rode": 31.366273, "water_at_stern": 0.9, "too_steep": False}),
    ("bow_and_stern", {"slope": "1:10", "boat_length": "8 m", "draught": "0.6 m", "under_keel": "0.3 m", "scope": 5, "bow_height": "1 m",
                       "tide_rise": "0.5 m", "rode_aboard": "31 m"}, {"too_steep": True}),
    ("bow_and_stern", {"slope": "1:4", "boat_length": "8 m", "draught": "0.6 m", "scope": 5}, {"too_steep": True, "anchor_distance": None,
      "bow_rode": None}),
    # half of the time is half of the tide; a third of the time of a rise, 3 of its 12 twelfths
    ("tide_at", {"low_height": "1 m", "low_at": "06:00", "high_height": "5 m", "high_at": "12:00", "at": "09:00"},
     {"height": 3.0, "tide_rise": 2.0, "tide_fall": 2.0, "rising": True, "by_twelfths": 3.0}),
    ("tide_at", {"low_height": "1 m", "low_at": "12:00", "high_height": "5 m", "high_at": "06:00", "at": "10:00"},
     {"height": 2.0, "tide_rise": 3.0, "tide_fall": 1.0, "rising": False, "by_twelfths": 2.0}),
    # 30 / 5 − 4 − 1 = 1 of rise; half of a tide of 2, that is at half of the time
    ("when_to_veer", {"rode_out": "30 m", "depth": "4 m", "bow_height": "1 m", "low_height": "1 m", "low_at": "06:00", "high_height": "3 m",
                      "high_at": "12:00", "at": "06:00"},
     {"veer": "later", "veer_by": "09:00", "rode_at_high_water": 35.0, "tide_rise": 2.0}),
    ("when_to_veer", {"rode_out": "35 m", "depth": "4 m", "bow_height": "1 m", "low_height": "1 m", "low_at": "06:00", "high_height": "3 m",
                      "high_at": "12:00", "at": "06:00"}, {"veer": "never", "veer_by": None}),
    ("when_to_veer", {"rode_out": "24 m", "depth": "4 m", "bow_height": "1 m", "low_height": "1 m", "low_at": "06:00", "high_height": "3 m",
                      "high_at": "12:00", "at": "06:00"}, {"veer": "now", "veer_by": None}),
    ("when_to_veer", {"rode_out": "26 m", "depth": "4 m", "bow_height": "1 m", "low_height": "1 m", "low_at": "12:00", "high_height": "3 m",
                      "high_at": "06:00", "at": "09:00"}, {"veer": "never", "veer_by": None, "tide_rise": 1.0}),
]  # fmt: skip


@pytest.mark.parametrize(("question", "inputs", "results"), WORKED, ids=[f"{one[0]}-{place}" for place, one in enumerate(WORKED)])
def test_question_worked_by_hand(question: str, inputs: dict[str, Any], results: dict[str, Any]) -> None:
    found = anchorcalc.answer(question, **inputs).results
    for name, wanted in results.items():
        ours = getattr(found, name)
        if isinstance(ours, anchorcalc.Quantity):
            assert ours.si == pytest.approx(wanted, rel=1e-6, abs=1e-9), name
        else:
            assert getattr(ours, "value", ours) == wanted, name


@pytest.mark.parametrize(
    ("inputs", "plan"),
    [
        ({"rode_aboard": "60 m", "mark_interval": "10 m"}, [(10, 1), (20, 3), (30, 5), (40, 7), (50, 9), (60, 11)]),
        ({"rode_aboard": "40 m", "mark_interval": "10 m", "chain": "6 m", "marks_from": "chain_end"}, [(16, 2.2), (26, 4.2), (36, 6.2)]),
        ({"rode_aboard": "40 m", "reserve": "5 m", "marks": "10,20,30 m", "chain": "6 m", "marks_from": "chain_end"}, [(16, 2.2), (26, 4.2)]),
        ({"rode_aboard": "40 m", "marks": "4,20,40,60 m"}, [(4, 0), (20, 3), (40, 7)]),
    ],
)
def test_plan_of_marks_worked_by_hand(inputs: dict[str, Any], plan: list[tuple[float, float]]) -> None:
    rows = anchorcalc.mark_plan(**inputs, scope=5, bow_height="1 m").results.plan
    assert [row.mark.si for row in rows] == list(range(1, len(plan) + 1))
    assert [(row.rode_out.si, row.deepest_depth.si) for row in rows] == [pytest.approx(one) for one in plan]
