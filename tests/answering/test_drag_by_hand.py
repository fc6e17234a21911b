"""Dragging reckoned apart from the code: fixes laid out in metres by the radii of curvature of WGS 84, in every quarter of the earth."""

from math import cos, degrees, hypot, radians, sin, sqrt
from typing import Any

import pytest

import anchorcalc

# Major axis and flattening of WGS 84: NGA.STND.0036 (definition).
AXIS, FLATTENING = 6378137.0, 1 / 298.257223563
SQUARE = FLATTENING * (2 - FLATTENING)
Metres = list[tuple[float, float]]  # east, north of the anchor
PLACES = [(64.1, 10.2), (-52.3, -71.6), (58.9, -3.1), (-46.6, 168.3), (0.0, 0.0), (64.0, 180.0)]


def position(*, anchor: tuple[float, float], east: float, north: float) -> str:
    """A place so many metres from the anchor; past 180 degrees it is on the other side."""
    latitude, longitude = anchor
    bend = 1 - SQUARE * sin(radians(latitude)) ** 2
    there = longitude + degrees(east / (AXIS / sqrt(bend) * cos(radians(latitude))))
    there = there - 360 if there > 180 else there
    return f"{latitude + degrees(north / (AXIS * (1 - SQUARE) / bend**1.5)):.9f}, {there:.9f}"


def checked(metres: Metres, *, anchor: tuple[float, float] = (64.1, 10.2), seconds: int = 60, **inputs: Any) -> Any:
    """Answer for fixes at even times: a bow circle of 40 m, an antenna at the bow and an error of 5 m unless said otherwise."""
    times = [f"2026-06-01T{second // 3600:02d}:{second // 60 % 60:02d}:{second % 60:02d}" for second in range(0, seconds * len(metres), seconds)]
    fixes = [{"at": at, "position": position(anchor=anchor, east=east, north=north)} for at, (east, north) in zip(times, metres, strict=True)]
    usual = {"rode_out": "50 m", "depth": "29 m", "bow_height": "1 m", "boat_length": "9 m", "antenna_from_bow": "0 m"}
    return anchorcalc.drag_check(**{**usual, "anchor_at": f"{anchor[0]}, {anchor[1]}", "fixes": fixes, **inputs})


@pytest.mark.parametrize("anchor", PLACES)
def test_farthest_fix_speed_and_bearing_are_those_laid_out_in_metres(anchor: tuple[float, float]) -> None:
    found = checked([(0.0, 10.0), (-6.0, 18.0), (-12.0, 26.0)], anchor=anchor).results  # 10 m a minute, to the north-west
    assert found.farthest.si == pytest.approx(hypot(12, 26), abs=0.001)
    assert found.drift_speed.si == pytest.approx(10 / 60, abs=1e-5)
    assert degrees(found.drift_bearing.si) == pytest.approx(323.13, abs=0.01)
    assert (found.dragging, found.outside.si) == (False, 0)


@pytest.mark.parametrize(
    ("start", "stop", "bearing"), [((2, 0), (-2, 20), 348.69), ((-2, 0), (2, 20), 11.31), ((0, 20), (0, 0), 180.0), ((9, 5), (-9, 5), 270)]
)
def test_bearing_across_north_and_to_the_south_and_west(start: tuple[float, float], stop: tuple[float, float], bearing: float) -> None:
    assert degrees(checked([start, stop]).results.drift_bearing.si) == pytest.approx(bearing, abs=0.01)


# rode 50, height 30: 40 m of bow circle; the lower the water the greater: 50 and 14 is 48
RADII: list[tuple[dict[str, Any], float]] = [
    ({}, 50.0),
    ({"antenna_from_bow": "7.5 m", "position_error": "2 m"}, 51.5),
    ({"tide_fall": "16 m"}, 58.0),
    ({"depth": "9 m", "tide_fall": "10 m"}, sqrt(2499) + 10),
    ({"rode_out": "50..60 m", "position_error": "3..5 m"}, 46.0),  # a watch circle is on the safe side where it is small
]


@pytest.mark.parametrize(("inputs", "radius"), RADII)
def test_watch_radius_is_bow_circle_and_antenna_and_twice_the_error(inputs: dict[str, Any], radius: float) -> None:
    assert checked([(0.0, 10.0)], **inputs).results.watch_radius.si == pytest.approx(radius, abs=1e-9)


def test_antenna_that_nobody_placed_is_at_the_stern_and_the_answer_says_so() -> None:
    found: Any = anchorcalc.drag_check(
        anchor_at="64.1, 10.2", fixes=[{"at": "10:00", "position": "64.1, 10.2"}], rode_out="50 m", depth="29 m", bow_height="1 m", boat_length="9 m"
    )
    assert found.results.watch_radius.si == pytest.approx(40 + 9 + 10)
    assert (found.read.antenna_from_bow.si, found.read.antenna_from_bow.origin) == (9.0, "assumed")


# The rule: two of the last five beyond 50 m; or the last beyond it and three steady steps outwards beyond 40 m. 51 m is outside, 49 is not.
INSIDE, OUT = (0.0, 20.0), (0.0, 51.0)
TRACKS: list[tuple[Metres, bool, int]] = [
    ([INSIDE, OUT], False, 1),
    ([INSIDE, OUT, INSIDE, OUT], True, 2),
    ([OUT, INSIDE, INSIDE, INSIDE, OUT], True, 2),
    ([OUT, INSIDE, INSIDE, INSIDE, INSIDE, OUT], False, 2),  # the first is the sixth from the end
    ([(0.0, 50.01)], False, 1),
    ([(0.0, 49.99)], False, 0),
    ([(0.0, 20.0), (0.0, 41.0), (0.0, 46.0), (0.0, 51.0)], True, 1),  # 5 m a minute, three of them beyond 40 m
    ([(0.0, 20.0), (0.0, 39.0), (0.0, 45.0), (0.0, 51.0)], False, 1),  # the first of the three is not
    ([(0.0, 40.5), (0.0, 43.5), (0.0, 51.0)], False, 1),  # 3 and 7.5: more than twice as fast
    ([(0.0, 41.0), (0.0, 44.5), (0.0, 51.0)], True, 1),  # 3.5 and 6.5: less than twice
    ([(0.0, 40.5), (0.0, 48.0), (0.0, 51.0)], False, 1),  # and the other way round
    ([(0.0, 46.0), (0.0, 41.0), (0.0, 51.0)], False, 1),  # in and out again
    ([(2.0, 41.0), (0.0, 46.0), (0.0, 49.0)], False, 0),  # outwards, but not outside
    ([INSIDE, (0.0, 1500.0), INSIDE, OUT, INSIDE], False, 2),  # a jump of 1480 m in a minute is no boat: 20 m/s are 1200 m, and 20 m of error
    ([INSIDE, (0.0, 1230.0), INSIDE, OUT, INSIDE], True, 2),
    ([(0.0, 1500.0), (0.0, 3200.0)], True, 2),  # jumps, but not one fix inside to hold against them
]  # fmt: skip


@pytest.mark.parametrize(("metres", "dragging", "outside"), TRACKS)
def test_track_is_judged_by_the_rule_as_it_is_written(metres: Metres, dragging: bool, outside: int) -> None:
    found = checked(metres).results
    assert (found.dragging, found.outside.si) == (dragging, outside)


def test_drift_is_that_of_the_last_five_fixes_or_of_two_minutes() -> None:
    assert checked([(0.0, 0.0)] * 4 + [(0.0, 1.0 * step) for step in range(5)]).results.drift_speed.si == pytest.approx(1 / 60, abs=1e-6)
    # ten seconds apart: thirteen fixes make two minutes. Twelve at rest and one step of 13 m at the end: by least squares 6·13/(10·13·14)
    assert checked([(0.0, 0.0)] * 40 + [(0.0, 13.0)], seconds=10).results.drift_speed.si == pytest.approx(6 * 13 / (10 * 13 * 14), abs=1e-6)
