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


def test_two_hundred_marks_are_a_plan_and_one_more_is_not() -> None:
    assert len(anchorcalc.mark_plan(rode_aboard="200 m", mark_interval="1 m").results.plan) == 200
    with pytest.raises(anchorcalc.InputError):
        anchorcalc.mark_plan(rode_aboard="201 m", mark_interval="1 m")


def test_even_half_a_metre_of_chain_has_a_size_for_the_boat() -> None:
    read = anchorcalc.pull_at_anchor(rode_out="30 m", depth="5 m", boat_length="8 m", wind="20 kn", chain="0.5 m").read
    assert read.chain_size is not None and read.chain_size.origin == "assumed"
    assert anchorcalc.pull_at_anchor(rode_out="30 m", depth="5 m", boat_length="8 m", wind="20 kn").read.chain_size is None


# (5 + 1.2 of bow height) over 30 of rode that hangs nearly straight: no chain may flatten the pull that nobody said was there.
def test_a_size_of_chain_without_its_length_is_no_chain_where_chain_flatters_and_the_answer_says_so() -> None:
    place: dict[str, Any] = {"rode_out": "30 m", "depth": "5 m", "load": "2 kN", "line_size": "14 mm"}
    said = anchorcalc.pull_at_anchor(**place, chain_size="8 mm")
    assert said.read.chain is not None and (said.read.chain.si, said.read.chain.origin) == (0.0, "assumed")
    assert said.results == anchorcalc.pull_at_anchor(**place).results
    assert said.results.pull_angle.si > anchorcalc.pull_at_anchor(**place, chain_size="8 mm", chain="5 m").results.pull_angle.si
    assert "chain_assumed" in {one.code for one in said.cautions}
    given = anchorcalc.pull_at_anchor(**place, chain_size="8 mm", chain="0.5 m")
    assert "chain_assumed" not in {one.code for one in given.cautions}


def test_a_size_of_chain_without_its_length_is_chain_all_the_way_where_it_must_be_lifted_even_with_line() -> None:
    place: dict[str, Any] = {"depth": "10 m", "anchor_mass": "16 kg", "chain_size": "8 mm"}
    for said in (anchorcalc.weigh_anchor(**place), anchorcalc.weigh_anchor(**place, line_size="14 mm")):
        assert said.results.hanging_load == anchorcalc.weigh_anchor(**place, chain="50 m").results.hanging_load
        assert "chain_assumed" in {one.code for one in said.cautions}


# What a skipper is told, word for word; the figures are those of the sums above.
HEADLINES: list[tuple[str, dict[str, Any], str]] = [
    ("rode_to_let_out", {"depth": "4 m", "bow_height": "1 m", "scope": 7, "mark_interval": "10 m"},
     "Let out 35 m of rode: stop at mark 4, or 5 m past mark 3."),
    ("rode_to_let_out", {"depth": "4 m", "bow_height": "1 m", "scope": 8, "mark_interval": "10 m"}, "Let out 40 m of rode: stop at mark 4."),
    ("rode_to_let_out", {"depth": "1 m", "bow_height": "1 m", "scope": 4, "mark_interval": "10 m"},
     "Let out 8 m of rode: stop at mark 1, or 8 m from where the marks begin."),
    ("mark_to_stop_at", {"marks": "10,20 m", "rode_out": "36 m"}, "Stop 16 m past mark 2, the last one."),
    ("scope_now", {"rode_out": "36 m", "depth": "5 m", "bow_height": "1 m", "tide_rise": "3 m"}, "Scope 4:1 at high water (6:1 now): short."),
    ("scope_now", {"rode_out": "36 m", "depth": "5 m", "bow_height": "1 m"}, "Scope 6:1 now: fair."),
    ("deepest_anchorage", {"rode_aboard": "7 m", "bow_height": "1 m"}, "No water at all: the rode aboard does not give 7:1 here."),
    ("line_angle", {"scope": 2}, "At a scope of 2:1 a taut line lies 30° below the horizontal."),
    ("line_angle", {"angle": "30 deg"}, "At a scope of 2:1 a taut line lies 30° below the horizontal."),
    ("tide_at", {"low_height": "1 m", "low_at": "12:00", "high_height": "5 m", "high_at": "06:00", "at": "10:00"},
     "At 10:00 the tide stands at 2 m, falling: 1 m still to go."),
    ("time_to_let_go", {"depth": "2 m", "bow_height": "1 m", "rode_aboard": "5 m", "boat_length": "6 m", "distance_off": "60 m", "drift": "2 m/s"},
     "LET GO NOW: 5 m of rode."),
    ("time_to_let_go", {"depth": "2 m", "bow_height": "1 m", "rode_aboard": "5 m", "boat_length": "6 m", "distance_off": "130 m", "drift": "2 m/s"},
     "Let go within 1 min: 5 m of rode."),
]  # fmt: skip


@pytest.mark.parametrize(("question", "inputs", "headline"), HEADLINES, ids=[f"{one[0]}-{place}" for place, one in enumerate(HEADLINES)])
def test_headline_says_it(question: str, inputs: dict[str, Any], headline: str) -> None:
    assert anchorcalc.answer(question, **inputs).headline == headline


def test_working_of_a_circle_says_the_fall_only_where_there_is_one_and_when_the_place_dries() -> None:
    same: dict[str, Any] = {"rode_out": "5 m", "boat_length": "6 m", "bow_height": "1 m"}
    assert "fall" not in anchorcalc.swing_radius(depth="2 m", **same).working[0]
    assert "3 m of water − 0.5 m of fall" in anchorcalc.swing_radius(depth="3 m", tide_fall="0.5 m", **same).working[0]
    assert "dry at low water" in anchorcalc.swing_radius(depth="3 m", tide_fall="3 m", **same).working[0]


def test_fixes_across_midnight_are_the_same_with_and_without_their_dates() -> None:
    places = ["64.1003 N, 10.2 E", "64.1004 N, 10.2 E", "64.1005 N, 10.2 E"]
    same: dict[str, Any] = {"anchor_at": "64.1 N, 10.2 E", "rode_out": "30 m", "depth": "5 m", "boat_length": "9 m"}
    plain = [{"at": at, "position": place} for at, place in zip(("23:50", "00:00", "00:10"), places, strict=True)]
    dated = [{"at": at, "position": place} for at, place in zip(("2026-06-01T23:50", "2026-06-02T00:00", "2026-06-02T00:10"), places, strict=True)]
    one, other = (anchorcalc.drag_check(fixes=fixes, **same).results for fixes in (plain, dated))
    assert one == other
    assert one.drift_speed is not None and one.drift_speed.si == pytest.approx(22.3 / 1200.0, rel=0.01)
