"""Scope, taut lines and circles against printed examples; each length stays in the unit of its source, since both sides have the same.

The ship rules at the end are no rules of this library: they show on which side of them the taut line stands.
"""

import numpy as np
import numpy.testing as npt
import pytest

from anchorcalc.physics.geometry import (
    circle_area,
    deepest_depth,
    line_angle,
    rode_at_reach,
    rode_at_scope,
    scope_at_angle,
    scope_of,
    taut_reach,
)
from anchorcalc.physics.marks import marks_reached

US_SAILING = "US Sailing basic keelboat text, electronic 5th ed., p. 84 (read)"
JAMIESON = "J. Jamieson, Seamanship Secrets (2009), p. 234 (read)"
SAIL_TRAINING = "sail-training skipper's tip page, January 2002 (height and multiples read, product worked here)"
BOAT_COURSE = "boating-course example (from memory, not re-found; worked again here)"
BOAT_SAFETY = "US boating-safety foundation online course, anchoring page (read)"
LECTURE = "K. Klaka, lecture notes on anchors and anchoring gear, 2018 (rule read, figures worked here)"


@pytest.mark.parametrize(
    ("depth", "bow_height", "tide_rise", "scope", "rode_out", "source"),
    [
        (10, 2, 3, 7, 105, US_SAILING),  # ft
        (15, 3, 8, 7, 182, JAMIESON),  # ft
        (7, 3, 0, 7, 70, BOAT_COURSE),  # ft
        (3, 1.5, 0, 6, 27, SAIL_TRAINING),  # m
        (10, 0, 0, 7, 70, BOAT_SAFETY),  # ft, from the bow
        (10, 0, 0, 5, 50, LECTURE),  # m, chain
        (10, 0, 0, 7, 70, LECTURE),  # m, rope and chain
    ],
)
def test_rode_is_scope_times_the_whole_height(
    *, depth: float, bow_height: float, tide_rise: float, scope: float, rode_out: float, source: str
) -> None:
    height = depth + bow_height + tide_rise
    npt.assert_allclose(rode_at_scope(height=height, scope=scope), rode_out, rtol=1e-12, err_msg=source)
    npt.assert_allclose(deepest_depth(rode=rode_out, scope=scope, bow_height=bow_height, tide_rise=tide_rise), depth, rtol=1e-12, err_msg=source)


def test_water_at_high_tide_that_182_ft_serves_is_23_ft() -> None:  # Jamieson, p. 234, inverted
    # J. Jamieson, Seamanship Secrets (2009), p. 234 (read), inverted.
    npt.assert_allclose(deepest_depth(rode=182.0, scope=7.0, bow_height=3.0, tide_rise=8.0) + 8.0, 23, rtol=1e-12)


def test_forgotten_tide_leaves_a_scope_of_4() -> None:  # Jamieson, p. 234, printed to the whole number
    # J. Jamieson, Seamanship Secrets (2009), p. 234 (read), printed to the whole number.
    npt.assert_allclose(scope_of(rode_out=105.0, height=15.0 + 8.0 + 3.0), 4.0, rtol=0, atol=0.5)


def test_30_ft_in_6_ft_of_water_is_scope_3_from_a_roller_4_ft_up() -> None:  # marine blog on scope, 8 November 2019 (read)
    npt.assert_allclose(scope_of(rode_out=30.0, height=6.0 + 4.0), 3, rtol=1e-12)


def test_25_ft_seen_from_a_bow_5_ft_up_is_scope_5() -> None:  # A. and D. Blackwell, yachting magazine (read): similar triangles
    npt.assert_allclose(scope_of(rode_out=25.0, height=5.0), 5, rtol=1e-12)
    npt.assert_allclose(scope_at_angle(angle=np.arcsin(5.0 / 25.0)), 5.0, rtol=1e-12)


def test_class_rule_of_a_tenth_to_a_sixth_of_the_cable_is_scope_6_to_10() -> None:  # Bureau Veritas NR 600, ch. 5 sec. 4 (read)
    npt.assert_allclose(scope_of(rode_out=1.0, height=np.array([1 / 6, 1 / 10])), [6.0, 10.0], rtol=1e-12)


SCOPES = np.array([2, 3, 4, 5, 6, 7, 8, 10])
ANGLES = np.array([30.0, 19.5, 14.5, 11.5, 9.6, 8.2, 7.2, 5.7])  # deg; sine rule, any trigonometry table (computed)


def test_taut_line_stands_at_the_angle_whose_sine_is_one_over_scope() -> None:
    npt.assert_allclose(np.degrees(line_angle(scope=SCOPES)), ANGLES, rtol=0, atol=0.05)


def test_scope_of_a_printed_angle_is_the_scope_it_was_printed_for() -> None:
    error_of_print = SCOPES * np.radians(0.05) / np.tan(np.radians(ANGLES - 0.05))  # what half a digit of angle moves the scope
    assert np.all(np.abs(scope_at_angle(angle=np.radians(ANGLES)) - SCOPES) <= error_of_print)


# Length over all + √(rode² − (depth + freeboard)²), the form read on two seamanship pages; figures worked from it.
@pytest.mark.parametrize(
    ("rode_out", "depth", "bow_height", "boat_length", "radius"),
    [
        (100, 15, 5, 30, 127.98),  # ft
        (30, 4, 1, 10, 39.58),  # m
        (182, 15, 3, 32, 213.11),  # ft
        (50, 9, 1.5, 12, 60.89),  # m
    ],
)
def test_swing_radius_is_the_taut_line_and_the_boat(rode_out: float, depth: float, bow_height: float, boat_length: float, radius: float) -> None:
    npt.assert_allclose(taut_reach(rode_out=rode_out, height=depth + bow_height) + boat_length, radius, rtol=0, atol=0.005)
    npt.assert_allclose(rode_at_reach(reach=radius - boat_length, height=depth + bow_height), rode_out, rtol=0, atol=0.006)


def test_rode_and_boat_laid_flat_are_more_than_the_swing_radius() -> None:  # US sailing-school page on swinging (both rules read)
    assert taut_reach(rode_out=100.0, height=20.0) + 30.0 < 130.0


def test_ship_rule_of_cable_and_ship_laid_flat_bounds_the_taut_line() -> None:  # training page: 6 × 27.5 m + 100 m = 265 m (read)
    assert np.all(taut_reach(rode_out=6 * 27.5, height=np.array([0.0, 10.0, 25.0])) + 100.0 <= 265.0)


def test_navy_circles_laid_flat_bound_the_taut_line() -> None:  # US Navy practice: chain + ship 1040 ft, + pelorus 690 ft
    reach = taut_reach(rode_out=540.0, height=np.array([0.0, 60.0]))
    assert np.all(reach + 500.0 <= 1040.0) and np.all(reach + 150.0 <= 690.0)


def test_ship_rule_that_takes_off_the_whole_depth_is_short_of_the_taut_line() -> None:  # training page: 275 m (read); √ form 289.3 m
    npt.assert_allclose(taut_reach(rode_out=165.0, height=15.0) + 125.0, 289.3, rtol=0, atol=0.05)


def test_ship_cable_of_six_shackles_in_25_m_is_a_scope_between_6_and_7() -> None:  # fair-weather rule 3·25 + 90 = 165 m (reproduction)
    assert 6.0 < scope_of(rode_out=3 * 25.0 + 90.0, height=25.0) < 7.0


def test_circle_of_radius_one_has_area_pi() -> None:  # definition
    npt.assert_allclose(circle_area(radius=np.array([1.0, 10.0])), [3.14159, 314.159], rtol=2e-6)


@pytest.mark.parametrize("unit", [1.0, 0.3048, 1.8288, 0.9144])  # ft, m, fathoms, yards: the mark is the same in all of them
def test_70_ft_by_10_ft_is_mark_7(unit: float) -> None:  # boating-course example: 7 ft + 3 ft at scope 7
    # Boating-course example (from memory, not re-found; worked again here), in four units.
    place = marks_reached(length=rode_at_scope(height=(7.0 + 3.0) * unit, scope=7.0), mark_interval=10.0 * unit)
    npt.assert_array_equal([place.mark, place.past, place.stop_at], [7, 0, 7])
