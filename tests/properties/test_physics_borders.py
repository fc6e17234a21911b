"""Physics at its borders: just there, just beyond, and alike for a number and for an array; figures worked by hand."""

import math
from typing import Any

import numpy as np
import numpy.testing as npt
import pytest

from anchorcalc.physics.beach import beach_anchor_distance
from anchorcalc.physics.boat_shape import usual_beam
from anchorcalc.physics.current import current_drag
from anchorcalc.physics.hauling import continuous_duty_pull, is_work_for_hands, rode_weight_hanging, windlass_pull
from anchorcalc.physics.lifting import MOST_STEPS, Rode, first_guess, line_off_bottom, regime, stepped, taut_tension
from anchorcalc.physics.marks import listed_marks_reached, marks_reached
from anchorcalc.physics.statics import two_anchor_loads
from anchorcalc.physics.strength import line_breaking_left, line_stiffness
from anchorcalc.physics.tide import part_of_tide_at_height, plain_times_about
from anchorcalc.physics.track import drag_signs, drift_over_last, watch_radius
from anchorcalc.physics.weights import weight_in_water


def signs(*distances: float, seconds: float = 60.0, error: float = 5.0) -> Any:
    """What fixes due north say of an antenna that reaches 40 m: the watch circle is of 50 m."""
    at = np.arange(len(distances)) * seconds
    return drag_signs(at=at, east=0.0 * at, north=np.array(distances), antenna_radius=40.0, position_error=error)


# --- dragging -----------------------------------------------------------------------------------------------------------------------


def test_fix_on_the_watch_circle_is_inside_and_one_beyond_it_is_not() -> None:
    assert signs(50.0, np.nextafter(50.0, 60.0)).outside.tolist() == [False, True]
    assert watch_radius(bow_radius=30.0, antenna_from_bow=10.0, position_error=5.0) == 50.0


def test_fix_at_the_reach_of_the_antenna_is_not_beyond_it() -> None:
    assert signs(40.0, 46.0, 52.0).dragging.tolist() == [False, False, False]
    assert signs(40.1, 46.0, 52.0).dragging.tolist() == [False, False, True]


def test_one_step_just_twice_as_fast_as_the_other_is_steady_still() -> None:
    assert signs(41.0, 45.0, 53.0).dragging.tolist() == [False, False, True]  # 4 and 8
    assert signs(41.0, 49.0, 53.0).dragging.tolist() == [False, False, True]  # 8 and 4
    assert signs(49.99, 49.995, 50.004).dragging.tolist() == [False, False, True]  # 5 and 9 mm a minute
    assert not signs(41.0, 45.0, 53.5).dragging.any() and not signs(41.0, 49.5, 53.5).dragging.any()
    assert not signs(41.0, 41.0, 51.0).dragging.any() and not signs(41.0, 51.0, 51.0).dragging[:2].any()


def test_step_just_as_long_as_a_boat_can_go_is_no_jump() -> None:
    # 20 m/s for 60 s, and 4 errors of 5 m: 1220 m
    assert signs(10.0, 1230.0, 10.0).stray.tolist() == [False, False, False]
    assert signs(10.0, 1230.1, 10.0).stray.tolist() == [False, True, False]
    assert signs(10.0, 1230.1).stray.tolist() == [False, True]  # the last is judged by the one before
    assert signs(1230.1, 10.0).stray.tolist() == [True, False]
    assert not signs(1230.1, 2500.0).stray.any()  # not one inside to hold against them


def test_five_fixes_back_count_and_six_do_not() -> None:
    assert signs(51.0, 10.0, 10.0, 10.0, 51.0).dragging.tolist() == [False] * 4 + [True]
    assert not signs(51.0, 10.0, 10.0, 10.0, 10.0, 51.0).dragging.any()
    assert signs(10.0, 51.0, 10.0, 10.0, 10.0, 51.0, 10.0).dragging.tolist() == [False] * 5 + [True, False]


def test_drift_needs_two_moments_and_has_no_bearing_where_nothing_moves() -> None:
    zero = np.zeros(2)
    assert math.isnan(drift_over_last(at=np.zeros(1), east=np.zeros(1), north=np.zeros(1)).speed)
    assert math.isnan(drift_over_last(at=np.array([60.0, 60.0]), east=zero, north=np.array([0.0, 9.0])).speed)
    late = np.array([0.0, 200.0, 200.0, 200.0, 200.0, 200.0])
    assert math.isnan(drift_over_last(at=late, east=0.0 * late, north=np.arange(6.0)).speed)  # the last five in one moment
    still = drift_over_last(at=np.array([0.0, 60.0]), east=zero, north=zero)
    assert still.speed == 0.0 and math.isnan(still.bearing)
    crawling = drift_over_last(at=np.array([0.0, 1e5]), east=zero, north=np.array([0.0, -1.0]))
    assert math.degrees(crawling.bearing) == pytest.approx(180.0)


@pytest.mark.parametrize(("seconds", "speed"), [(30.0, 6 * 1.0 / (5 * 6 * 30)), (24.0, 6 * 1.0 / (6 * 7 * 24)), (20.0, 6 * 1.0 / (7 * 8 * 20))])
def test_drift_goes_by_five_fixes_or_by_all_of_two_minutes(seconds: float, speed: float) -> None:
    # n fixes at rest but for a last step of 1 m: by least squares the speed is 6 / (n (n + 1) seconds); 120 s hold 5, 6 and 7 of them
    at = np.arange(40) * seconds
    assert drift_over_last(at=at, east=0.0 * at, north=(at == at[-1]) * 1.0).speed == pytest.approx(speed, rel=1e-9)


# --- tides --------------------------------------------------------------------------------------------------------------------------

HOUR = 3600.0


@pytest.mark.parametrize(
    ("low", "high", "at", "wanted"),
    [(6, 12, 9, (6, 12)), (12, 6, 9, (12, 6)), (22, 4, 1, (-2, 4)), (22, 4, 23, (22, 28)),
     (4, 22, 23, (28, 22)), (6, 12, 6, (6, 12)), (6, 12, 5, (-18, -12)),
     (0, 9.99, 9, (0, 9.99))],
)  # fmt: skip
def test_plain_times_are_the_pair_that_starts_last_before_the_moment(low: float, high: float, at: float, wanted: tuple[float, float]) -> None:
    found = plain_times_about(low_at=low * HOUR, high_at=high * HOUR, at=at * HOUR)
    npt.assert_allclose([float(one) / HOUR for one in found], wanted, rtol=1e-12)


@pytest.mark.parametrize("high", [6.0, 16.0, 18.0, 20.0])
def test_plain_times_ten_hours_apart_and_more_or_alike_are_no_pair(high: float) -> None:
    assert np.isnan(np.array(plain_times_about(low_at=6.0 * HOUR, high_at=high * HOUR, at=7.0 * HOUR))).any()


def test_heights_at_both_ends_are_reached_and_those_beyond_are_not() -> None:
    parts = part_of_tide_at_height(low=1.0, high=5.0, height=np.array([0.99, 1.0, 2.0, 5.0, 5.01]))
    npt.assert_allclose(parts, [np.nan, 0.0, 1 / 3, 1.0, np.nan], rtol=1e-12)


# --- marks --------------------------------------------------------------------------------------------------------------------------


def test_mark_within_a_billionth_is_reached_and_a_millionth_short_is_not() -> None:
    for length, mark, stop in ((70.0 * (1 - 5e-10), 7, 7), (70.0 * (1 - 1e-6), 6, 7), (70.0, 7, 7), (70.0 * (1 + 5e-10), 7, 7), (70.01, 7, 8)):
        place, listed = marks_reached(length=length, mark_interval=10.0), listed_marks_reached(length=length, marks=np.arange(10.0, 110.0, 10.0))
        for one in (place, listed):
            assert (float(one.mark), float(one.stop_at), float(one.stop_length)) == (mark, stop, 10.0 * stop)
        assert float(place.past) == pytest.approx(float(listed.past), abs=1e-9)
        assert float(place.to_next) == pytest.approx(float(listed.to_next), abs=1e-6)


def test_nothing_out_is_before_the_first_mark() -> None:
    for length in (0.0, -3.0):
        assert [float(one) for one in marks_reached(length=length, mark_interval=10.0)] == [0.0, 0.0, 10.0, 1.0, 10.0]
        assert [float(one) for one in listed_marks_reached(length=length, marks=np.array([10.0, 25.0]))] == [0.0, 0.0, 10.0, 1.0, 10.0]


def test_rows_of_marks_are_counted_each_by_its_own() -> None:
    marks = np.array([[10.0, 20.0, 40.0], [15.0, np.inf, np.inf]])
    place = listed_marks_reached(length=np.array([25.0, 25.0]), marks=marks)
    npt.assert_allclose(place.mark, [2, 1])
    npt.assert_allclose(place.past, [5.0, 10.0])
    npt.assert_allclose(place.to_next, [15.0, np.nan])
    npt.assert_allclose(place.stop_at, [3, 0])


# --- forces -------------------------------------------------------------------------------------------------------------------------


def test_wind_along_one_rode_leaves_the_other_slack_and_a_hair_inside_it_does_not() -> None:
    off = np.radians([30.0, 29.9, 30.1, 0.0, 90.0])
    shared = two_anchor_loads(load=1000.0, spread=np.radians(60.0), wind_off=off)
    npt.assert_array_equal(shared.slack, [True, False, True, False, True])
    assert np.asarray(shared.less)[1] == pytest.approx(1000.0 * math.sin(math.radians(0.1)) / math.sin(math.radians(60.0)), rel=1e-9)
    npt.assert_allclose(np.asarray(shared.greater)[[0, 2, 4]], 1000.0)
    both_ways = two_anchor_loads(load=1000.0, spread=np.radians(60.0), wind_off=-off)
    npt.assert_allclose(both_ways.greater, shared.greater)


def test_170_degrees_are_shared_and_a_little_more_are_not() -> None:
    shared = two_anchor_loads(load=1000.0, spread=np.radians([170.0, 170.001]), wind_off=0.0)
    npt.assert_allclose(shared.greater, [500.0 / math.cos(math.radians(85.0)), 1000.0], rtol=1e-9)
    npt.assert_array_equal(shared.slack, [False, False])


def test_beach_just_as_steep_as_the_rode_gains_is_too_steep() -> None:
    distances = beach_anchor_distance(slope=np.array([0.75, 0.7501]), stern=10.0, boat_length=8.0, scope=1.25, above_edge=1.0)
    npt.assert_allclose(distances, [np.nan, 18.75 / (1 - 0.75 / 0.7501)], rtol=1e-9)


def test_23_kg_are_work_for_hands_and_a_gram_more_is_not() -> None:
    npt.assert_array_equal(is_work_for_hands(load=np.array([23.0, 23.001]) * 9.80665), [True, False])


def test_windlass_pulls_for_the_deep_beyond_82_5_m_by_grade() -> None:
    # IACS UR A3 (read): 0.27 d² a metre beyond 82.5 m; 37.5, 42.5 and 47.5 d² by grade: memory.
    npt.assert_allclose(continuous_duty_pull(chain_size=0.010, depth=np.array([50.0, 82.5, 92.5])), [3750.0, 3750.0, 4020.0], rtol=1e-12)
    for grade, pull in ((1, 3750.0), (2, 4250.0), (3, 4750.0)):
        assert float(continuous_duty_pull(chain_size=0.010, ship_grade=grade)) == pytest.approx(pull, rel=1e-12)
    assert float(windlass_pull(hanging_load=700.0, hauling_load=1400.0)) == pytest.approx(3000.0)


def test_line_that_floats_weighs_nothing_on_the_way_up_but_what_is_above_water() -> None:
    hung = rode_weight_hanging(depth=10.0, bow_height=1.0, chain=0.0, chain_mass=1.4, line_mass=0.1, line_density=910.0)
    assert float(hung) == pytest.approx(0.1 * 9.80665)
    fresh = rode_weight_hanging(depth=10.0, bow_height=1.0, chain=np.inf, chain_mass=1.4, water_density=1000.0)
    assert float(fresh) == pytest.approx(10 * 1.4 * 9.80665 * (1 - 1000 / 7850) + 1.4 * 9.80665)
    assert float(weight_in_water(mass=1.0, density=1000.0, water_density=1000.0)) == 0.0


def test_knot_wet_and_age_each_leave_their_share() -> None:
    # A half, three quarters and a quarter: rope-strength page, The Knot Handbook, break tests of old lines (read).
    assert float(line_breaking_left(breaking_load=8000.0, knotted=True)) == 4000.0
    assert float(line_breaking_left(breaking_load=8000.0, wet=True)) == 6000.0
    assert float(line_breaking_left(breaking_load=8000.0, old=True)) == 2000.0
    assert float(line_breaking_left(breaking_load=8000.0)) == 8000.0
    assert line_stiffness(breaking_load=8000.0) == pytest.approx(8000.0)  # 20 % at a fifth of it


def test_no_stream_drags_nothing_and_a_row_of_none_among_others_neither() -> None:
    assert current_drag(boat_length=9.0, current=0.0) == 0.0
    drags = np.asarray(current_drag(boat_length=9.0, current=np.array([0.0, 1.0]), draught=np.array([np.nan, 0.9]), beam=np.nan))
    assert drags[0] == 0.0
    assert drags[1] == pytest.approx(float(current_drag(boat_length=9.0, current=1.0)))


def test_beam_of_a_multihull_is_0_55_of_the_length_or_that_of_one_hull_where_she_is_short() -> None:
    # length^(2/3) + 1 ft: common practice, memory; 0.55 of the length: own estimate. 8 ft: 5 ft against 4.4.
    feet = np.array([8.0, 27.0])
    npt.assert_allclose(usual_beam(boat_length=feet * 0.3048) / 0.3048, [5.0, 10.0], rtol=1e-12)
    npt.assert_allclose(usual_beam(boat_length=feet * 0.3048, boat_form=2) / 0.3048, [5.0, 14.85], rtol=1e-12)


# --- the search for the shape of a rode ---------------------------------------------------------------------------------------------


def test_taut_rode_of_3_4_5_pulls_with_five_quarters_of_the_load() -> None:
    assert float(taut_tension(whole=5.0, height=3.0)) == pytest.approx(1.25, rel=1e-12)
    assert math.isfinite(float(taut_tension(whole=2.999, height=3.0)))


def test_first_guess_is_the_answer_for_a_rode_of_no_weight() -> None:
    for chain in (0.0, 2.0, 5.0):
        rode = Rode(chain=np.float64(chain), chain_bend=0.0, line=5.0 - chain, line_bend=0.0, stretch=0.0, height=3.0)
        assert float(first_guess(rode=rode, case=regime(rode))) == pytest.approx(0.75, rel=1e-9)


@pytest.mark.parametrize("stretch", [0.0, 0.05])
def test_search_is_there_in_seven_steps_for_rodes_that_boats_carry_and_mostly_in_two(stretch: float) -> None:
    random = np.random.default_rng(3)
    height, load = random.uniform(1.0, 30.0, 20_000), 10.0 ** random.uniform(1.0, 4.5, 20_000)
    whole = height * random.uniform(1.05, 12.0, 20_000)
    chain = whole * random.uniform(0.0, 1.0, 20_000)
    line_bend = random.choice([0.0, 0.05, 0.3, 0.6], 20_000) / load
    rode = Rode(
        chain=chain, chain_bend=random.uniform(5.0, 60.0, 20_000) / load, line=whole - chain, line_bend=line_bend, stretch=stretch, height=height
    )
    rode = line_off_bottom(rode)
    case = regime(rode)
    slope = np.minimum(np.maximum(first_guess(rode=rode, case=case), case.least), case.most)
    there = []
    for _ in range(8):  # a step tells how far the one before it came
        slope, short = stepped(slope=slope, rode=rode, case=case)
        there.append(np.mean(np.abs(short) <= 1e-9 * height))
    assert there[2] > 0.6 and there[4] > 0.9 and there[7] == 1.0 and MOST_STEPS >= 18
