"""What must hold of the drag rule, whatever the track: strays, order, copies, and whole nights of fresh noise."""

from typing import Any

import numpy as np
import numpy.testing as npt
import pytest
from hypothesis import given
from hypothesis import strategies as st
from pyproj import Geod

from anchorcalc.physics.track import DragCheck, drag_check, drag_signs
from tests.benchmarks.drag_nights import any_boats, bow_outside_when_found, false_alarms, simulated_night, with_strays

WGS84 = Geod(ellps="WGS84")
ANCHOR = np.radians((59.314, 18.912))
WATCH = 30.0 + 8.0 + 2 * 5.0
Fixes = list[tuple[float, float, float]]


def checked(fixes: Fixes) -> DragCheck:
    """Drag check of fixes (seconds, metres east, metres north) about an anchor among northern islands; the watch circle is 48 m."""
    at, east, north = np.array(fixes, dtype=float).T
    longitude, latitude, _ = WGS84.fwd(
        np.full(at.size, np.degrees(ANCHOR[1])),
        np.full(at.size, np.degrees(ANCHOR[0])),
        np.degrees(np.arctan2(east, north)),
        np.hypot(east, north),
    )
    return drag_check(
        at=at,
        latitude=np.radians(latitude),
        longitude=np.radians(longitude),
        anchor_latitude=float(ANCHOR[0]),
        anchor_longitude=float(ANCHOR[1]),
        bow_radius=30.0,
        antenna_from_bow=8.0,
        position_error=5.0,
    )


QUIET: Fixes = [(30.0 * step, 35.0, 3.0 * (step % 3)) for step in range(10)]
AFTER = 300.0


@pytest.mark.parametrize(
    ("fixes", "dragging", "outside", "strays"),
    [
        (QUIET, False, 0, 0),
        (QUIET[:1], False, 0, 0),
        ([(0.0, 60.0, 0.0)], False, 1, 0),  # one fix, outside
        ([(0.0, 60.0, 0.0), (30.0, 61.0, 0.0)], True, 2, 0),  # two fixes, both outside
        ([*QUIET, (AFTER, 60.0, 0.0)], False, 1, 0),  # the last one outside
        ([*QUIET, (AFTER, 60.0, 0.0), (AFTER + 30.0, 66.0, 0.0)], True, 2, 0),
        ([*QUIET, (AFTER, 60.0, 0.0), (AFTER + 30.0, 35.0, 0.0)], False, 1, 0),  # one outside, and back
        ([*QUIET, (AFTER, 1852.0, 0.0)], False, 1, 1),  # a mile off at the last
        ([*QUIET[:5], (140.0, 1852.0, 0.0), *QUIET[5:]], False, 1, 1),  # a mile off between good ones
        ([*QUIET[:5], (140.0, 1852.0, 0.0), *QUIET[5:7], (200.0, 1852.0, 0.0), *QUIET[7:]], False, 2, 2),  # twice
        ([*QUIET, (AFTER, 1852.0, 0.0), (AFTER + 30.0, 1855.0, 0.0)], True, 2, 0),  # a mile off, and the next fix says so too
        ([(0.0, 2000.0, 0.0), (30.0, -2000.0, 0.0)], True, 2, 0),  # nothing inside to hold against them
        ([*QUIET, (AFTER, 39.0, 0.0), (AFTER + 30.0, 44.0, 0.0), (AFTER + 60.0, 50.0, 0.0)], True, 1, 0),  # steadily outwards
        ([*QUIET, (AFTER, 39.0, 0.0), (AFTER + 30.0, 39.5, 0.0), (AFTER + 60.0, 90.0, 0.0)], False, 1, 0),  # a stray, not a drift
        ([*QUIET[:-1], (AFTER, 20.0, 0.0), (AFTER + 30.0, 35.0, 0.0), (AFTER + 60.0, 50.0, 0.0)], False, 1, 0),  # a surge from inside
        ([(-30.0, 60.0, 0.0), *QUIET, (AFTER, 60.0, 0.0)], False, 2, 0),  # two, but ten fixes apart
    ],
)
def test_two_fixes_outside_or_a_steady_drift_are_dragging_and_one_stray_is_not(fixes: Fixes, dragging: bool, outside: int, strays: int) -> None:
    check = checked(fixes)
    assert (check.dragging, check.outside, check.strays, check.duplicates) == (dragging, outside, strays, 0)
    npt.assert_allclose(check.farthest, max(np.hypot(east, north) for _, east, north in fixes), rtol=0, atol=0.001)
    assert check.watch_radius == WATCH


@given(order=st.permutations(range(12)))
def test_order_in_which_fixes_are_written_does_not_matter(order: list[int]) -> None:
    fixes = [*QUIET, (AFTER, 60.0, 0.0), (AFTER + 30.0, 66.0, 0.0)]
    assert checked([fixes[place] for place in order]) == checked(fixes)


@given(again=st.lists(st.integers(0, 11), min_size=1, max_size=5))
def test_fix_written_again_counts_once(again: list[int]) -> None:
    fixes = [*QUIET, (AFTER, 60.0, 0.0), (AFTER + 30.0, 35.0, 0.0)]
    once, more = checked(fixes), checked([*fixes, *(fixes[place] for place in again)])
    assert more == once._replace(duplicates=len(again))


@given(speed=st.floats(0.01, 2.0), course=st.floats(0.0, 359.9), count=st.integers(2, 40))
def test_drift_is_that_of_a_boat_that_goes_straight(speed: float, course: float, count: int) -> None:
    moments = np.arange(count) * 30.0
    fixes = [(moment, speed * moment * np.sin(np.radians(course)), speed * moment * np.cos(np.radians(course))) for moment in moments]
    check = checked([(at, float(east), float(north)) for at, east, north in fixes])
    npt.assert_allclose(check.drift_speed, speed, rtol=1e-4)
    npt.assert_allclose(np.angle(np.exp(1j * (check.drift_bearing - np.radians(course)))), 0.0, rtol=0, atol=1e-3)


def test_boat_that_lies_still_has_no_drift_bearing_and_one_fix_no_drift() -> None:
    still = checked([(30.0 * step, 20.0, 20.0) for step in range(6)])
    assert still.drift_speed < 1e-6 and np.isnan(still.drift_bearing)
    assert np.isnan(checked(QUIET[:1]).drift_speed)


def test_stray_fix_does_not_spoil_the_drift() -> None:
    assert checked([*QUIET, (AFTER, 1852.0, 0.0)])[4:6] == checked(QUIET)[4:6]


def test_signs_at_each_fix_are_the_check_of_the_fixes_so_far() -> None:
    rng = np.random.default_rng()
    boats = any_boats(rng=rng, nights=4)
    error, drag_from = 5.0, np.array([[np.inf], [np.inf], [9000.0], [12000.0]])
    night = with_strays(rng=rng, night=simulated_night(rng=rng, boats=boats, position_error=error, drag_from=drag_from))
    reach = boats.bow_radius + boats.antenna_from_bow
    signs = drag_signs(at=night.at, east=night.east, north=night.north, antenna_radius=reach, position_error=error)
    for row in range(4):
        track: dict[str, Any] = {"antenna_radius": reach[row], "position_error": error}
        for end in range(1, night.at.size, 7):
            part = drag_signs(at=night.at[:end], east=night.east[row, :end], north=night.north[row, :end], **track)
            assert part.dragging[-1] == signs.dragging[row, end - 1]


# The acceptance is 10 of 2,000 nights, and every drag found; a night of fresh noise each run. The benchmark has the full figures.
@pytest.mark.parametrize("strays", [False, True])
def test_quiet_nights_give_hardly_a_false_alarm(strays: bool) -> None:
    assert false_alarms(rng=np.random.default_rng(), nights=60, position_error=5.0, strays=strays) <= 2


def test_drag_is_found_before_the_bow_is_30_m_outside_its_circle() -> None:
    assert np.all(bow_outside_when_found(rng=np.random.default_rng(), nights=60, position_error=5.0) < 30.0)
