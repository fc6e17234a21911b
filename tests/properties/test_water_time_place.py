"""What must hold of the sums for water, time and place, whatever the numbers."""

import numpy as np
import numpy.testing as npt
from hypothesis import assume, given
from hypothesis import strategies as st
from pyproj import Geod

from anchorcalc.physics.beach import anchor_height, beach_anchor_distance, stern_distance
from anchorcalc.physics.geodesy import bearing, distance_off, offset_from
from anchorcalc.physics.geometry import deepest_depth, line_angle, rode_at_reach, rode_at_scope, scope_at_angle, scope_of, taut_reach
from anchorcalc.physics.marks import listed_marks_reached, marks_reached
from anchorcalc.physics.statics import two_anchor_loads
from anchorcalc.physics.tide import elapsed_part, moment_at_height, part_of_tide_at_height, tide_height, tide_height_by_twelfths

WGS84 = Geod(ellps="WGS84")
heights = st.floats(0.3, 100.0)
lengths = st.floats(0.0, 500.0)
scopes = st.floats(1.0, 20.0)
parts = st.floats(0.0, 1.0)
tides = st.floats(-5.0, 17.0)


@given(height=heights, scope=scopes)
def test_scope_of_the_rode_for_a_scope_is_that_scope(height: float, scope: float) -> None:
    rode_out = rode_at_scope(height=height, scope=scope)
    npt.assert_allclose(scope_of(rode_out=rode_out, height=height), scope, rtol=1e-12)
    npt.assert_allclose(deepest_depth(rode=rode_out, scope=scope, bow_height=0.0, tide_rise=0.0), height, rtol=1e-12)


@given(reach=lengths, height=heights)
def test_reach_of_the_rode_for_a_reach_is_that_reach(reach: float, height: float) -> None:
    rode_out = rode_at_reach(reach=reach, height=height)
    npt.assert_allclose(taut_reach(rode_out=rode_out, height=height), reach, rtol=1e-9, atol=1e-5)


@given(height=heights, scope=scopes, lower=parts)
def test_reach_grows_as_the_tide_falls_and_never_passes_the_rode(height: float, scope: float, lower: float) -> None:
    rode_out = height * scope
    reach = taut_reach(rode_out=rode_out, height=np.array([height, height * lower]))
    assert np.all(np.diff(reach) >= 0.0) and np.all(reach <= rode_out)


def test_rode_shorter_than_the_height_reaches_nowhere() -> None:
    assert np.isnan(taut_reach(rode_out=4.0, height=5.0))
    npt.assert_array_equal(taut_reach(rode_out=np.array([4.0, 5.0]), height=5.0), [np.nan, 0.0])


@given(scope=scopes)
def test_scope_at_the_angle_of_a_scope_is_that_scope(scope: float) -> None:
    npt.assert_allclose(scope_at_angle(angle=line_angle(scope=scope)), scope, rtol=1e-9)


@given(length=lengths, mark_interval=st.floats(0.5, 30.0))
def test_line_out_is_its_last_mark_and_what_is_past_it(length: float, mark_interval: float) -> None:
    place = marks_reached(length=length, mark_interval=mark_interval)
    npt.assert_allclose(place.mark * mark_interval + place.past, length, rtol=1e-9, atol=1e-12)
    npt.assert_allclose(length + place.to_next, (place.mark + 1) * mark_interval, rtol=1e-9)
    assert 0.0 <= place.past < mark_interval
    assert place.stop_at >= 1 and place.stop_length >= length * (1.0 - 1e-9)


@given(number=st.integers(1, 60), mark_interval=st.floats(0.5, 30.0), off=st.floats(-1e-10, 1e-10))
def test_mark_within_a_thousand_millionth_counts_as_reached(number: int, mark_interval: float, off: float) -> None:
    place = marks_reached(length=number * mark_interval * (1.0 + off), mark_interval=mark_interval)
    assert (place.mark, place.past, place.stop_at) == (number, 0.0, number)


@given(length=lengths, mark_interval=st.floats(1.0, 30.0))
def test_listed_marks_at_even_distances_are_the_even_marks(length: float, mark_interval: float) -> None:
    marks = np.arange(1, 601) * mark_interval
    listed, even = listed_marks_reached(length=length, marks=marks), marks_reached(length=length, mark_interval=mark_interval)
    npt.assert_allclose(np.array(listed), np.array(even), rtol=1e-9, atol=1e-9)


def test_beyond_the_last_listed_mark_there_is_none_to_stop_at() -> None:
    place = listed_marks_reached(length=50.0, marks=np.array([10.0, 20.0, 40.0]))
    assert (place.mark, place.past, place.stop_at) == (3, 10.0, 0)
    assert np.isnan(place.to_next) and np.isnan(place.stop_length)


def test_marks_of_many_lengths_are_the_marks_of_each() -> None:
    length, marks = np.linspace(-5.0, 60.0, 131), np.array([10.0, 20.0, 40.0])
    many = np.array(listed_marks_reached(length=length, marks=marks))
    npt.assert_array_equal(many.T, [np.array(listed_marks_reached(length=one, marks=marks)) for one in length])
    many = np.array(marks_reached(length=length, mark_interval=7.0))
    npt.assert_array_equal(many.T, [np.array(marks_reached(length=one, mark_interval=7.0)) for one in length])


@given(low=tides, tide_range=st.floats(0.01, 17.0), part=parts)
def test_tide_stands_at_a_height_when_it_is_said_to(low: float, tide_range: float, part: float) -> None:
    high = low + tide_range
    height = low + part * tide_range
    assume(low <= height <= high)
    again = tide_height(low=low, high=high, elapsed=part_of_tide_at_height(low=low, high=high, height=height))
    npt.assert_allclose(again, height, rtol=0, atol=1e-9)


@given(low=tides, tide_range=st.floats(0.1, 17.0), part=st.floats(0.001, 0.999))
def test_part_of_the_tide_at_the_height_of_a_part_is_that_part(low: float, tide_range: float, part: float) -> None:
    height = tide_height(low=low, high=low + tide_range, elapsed=part)
    npt.assert_allclose(part_of_tide_at_height(low=low, high=low + tide_range, height=height), part, rtol=0, atol=1e-9)


def test_height_that_the_tide_does_not_reach_has_no_moment() -> None:
    part = part_of_tide_at_height(low=1.0, high=3.0, height=np.array([0.999, 1.0, 3.0, 3.001]))
    npt.assert_allclose(part, [np.nan, 0.0, 1.0, np.nan], rtol=0, atol=1e-12)


@given(low=tides, tide_range=st.floats(0.0, 17.0), parts_of=st.lists(parts, min_size=2, max_size=20))
def test_both_rules_rise_all_the_way_from_low_to_high(low: float, tide_range: float, parts_of: list[float]) -> None:
    elapsed = np.sort(parts_of)
    for rule in (tide_height, tide_height_by_twelfths):
        height = rule(low=low, high=low + tide_range, elapsed=elapsed)
        assert np.all(np.diff(height) >= -1e-12)
        assert np.all(height >= low - 1e-12) and np.all(height <= low + tide_range + 1e-12)


@given(low=tides, tide_range=st.floats(0.1, 17.0), duration=st.floats(3e3, 4e4), part=st.floats(0.01, 0.99))
def test_falling_tide_is_the_rising_one_read_backwards(low: float, tide_range: float, duration: float, part: float) -> None:
    high, at = low + tide_range, duration * part
    rising = tide_height(low=low, high=high, elapsed=elapsed_part(low_at=0.0, high_at=duration, at=at))
    falling = tide_height(low=low, high=high, elapsed=elapsed_part(low_at=duration, high_at=0.0, at=duration - at))
    npt.assert_allclose(falling, rising, rtol=0, atol=1e-9)
    moment = moment_at_height(low=low, high=high, low_at=duration, high_at=0.0, height=falling)
    npt.assert_allclose(moment, duration - at, rtol=0, atol=1e-4)


@given(load=st.floats(1.0, 1e5), spread=st.floats(0.01, np.radians(169.0)), off=st.floats(-0.999, 0.999))
def test_two_rodes_together_pull_just_against_the_wind(load: float, spread: float, off: float) -> None:
    wind_off = off * spread / 2.0
    loads = two_anchor_loads(load=load, spread=spread, wind_off=wind_off)
    windward, leeward = np.exp(1j * np.sign(wind_off or 1.0) * spread / 2.0), np.exp(-1j * np.sign(wind_off or 1.0) * spread / 2.0)
    npt.assert_allclose(loads.greater * windward + loads.less * leeward, load * np.exp(1j * wind_off), rtol=0, atol=1e-9 * load)
    assert loads.greater >= loads.less >= 0.0


@given(load=st.floats(1.0, 1e5), spread=st.floats(0.0, np.radians(170.0)), beyond=st.floats(0.001, 1.0))
def test_wind_outside_the_rodes_hangs_all_on_one(load: float, spread: float, beyond: float) -> None:
    loads = two_anchor_loads(load=load, spread=spread, wind_off=spread / 2.0 + beyond)
    assert (loads.greater, loads.less, bool(loads.slack)) == (load, 0.0, True)


def test_loads_of_many_boats_are_the_loads_of_each() -> None:
    spread, wind_off = (angle.ravel() for angle in np.meshgrid(np.linspace(0.0, np.pi, 37), np.linspace(-np.pi, np.pi, 25)))
    many = two_anchor_loads(load=1.0, spread=spread, wind_off=wind_off)
    each = [two_anchor_loads(load=1.0, spread=one, wind_off=off) for one, off in zip(spread, wind_off, strict=True)]
    npt.assert_array_equal(np.array(many).T, np.array(each))


@given(slope=st.floats(5.0, 100.0), stern=st.floats(1.0, 200.0), boat_length=st.floats(3.0, 15.0), above_edge=st.floats(0.3, 8.0), scope=scopes)
def test_beach_anchor_lies_a_taut_reach_beyond_the_bow(slope: float, stern: float, boat_length: float, above_edge: float, scope: float) -> None:
    distance = beach_anchor_distance(slope=slope, stern=stern, boat_length=boat_length, scope=scope, above_edge=above_edge)
    if np.sqrt(scope**2 - 1.0) >= slope:
        assert np.isnan(distance)
        return
    height = anchor_height(slope=slope, anchor_distance=distance, above_edge=above_edge)
    reach = taut_reach(rode_out=rode_at_scope(height=height, scope=scope), height=height)
    npt.assert_allclose(stern + boat_length + reach, distance, rtol=1e-9, atol=1e-6)  # at scope 1 the reach keeps half its digits


@given(slope=st.floats(1.0, 100.0), draught=st.floats(0.1, 3.0), under_keel=st.floats(0.0, 2.0), tide_fall=st.floats(0.0, 8.0))
def test_stern_floats_by_what_was_asked_at_low_water(slope: float, draught: float, under_keel: float, tide_fall: float) -> None:
    distance = stern_distance(slope=slope, draught=draught, under_keel=under_keel, tide_fall=tide_fall)
    npt.assert_allclose(distance / slope - tide_fall - draught, under_keel, rtol=0, atol=1e-9)


@given(latitude=st.floats(-90.0, 90.0), longitude=st.floats(-180.0, 180.0), azimuth=st.floats(0.0, 360.0), distance=st.floats(0.0, 5000.0))
def test_local_metres_are_those_of_the_geodesic_to_1_mm(latitude: float, longitude: float, azimuth: float, distance: float) -> None:
    there_longitude, there_latitude, _ = WGS84.fwd(longitude, latitude, azimuth, distance)
    azimuth, _, distance = WGS84.inv(longitude, latitude, there_longitude, there_latitude)
    here, there = np.radians((latitude, longitude)), np.radians((there_latitude, there_longitude))
    east, north = offset_from(anchor_latitude=here[0], anchor_longitude=here[1], latitude=there[0], longitude=there[1])
    npt.assert_allclose(distance_off(east=east, north=north), distance, rtol=0, atol=0.001)
    apart = np.angle(np.exp(1j * (bearing(east=east, north=north) - np.radians(azimuth)))) * distance
    npt.assert_allclose(apart, 0.0, rtol=0, atol=0.001)


@given(turns=st.integers(-2, 2), longitude=st.floats(-180.0, 180.0))
def test_longitude_written_a_whole_turn_away_is_the_same_place(turns: int, longitude: float) -> None:
    east, north = offset_from(
        anchor_latitude=1.0, anchor_longitude=np.radians(longitude), latitude=1.0, longitude=np.radians(longitude + 360.0 * turns)
    )
    npt.assert_allclose(np.hypot(east, north), 0.0, rtol=0, atol=1e-7)


def test_fix_at_the_antipodes_is_half_the_earth_away() -> None:
    east, north = offset_from(anchor_latitude=0.0, anchor_longitude=0.0, latitude=0.0, longitude=np.pi)
    assert distance_off(east=east, north=north) > 1.9e7


def test_a_number_in_is_a_number_out() -> None:
    outs = [
        taut_reach(rode_out=30.0, height=5.0),
        rode_at_reach(reach=30.0, height=5.0),
        line_angle(scope=5.0),
        *marks_reached(length=30.0, mark_interval=7.0),
        *listed_marks_reached(length=30.0, marks=np.array([10.0, 20.0])),
        *two_anchor_loads(load=1.0, spread=1.0, wind_off=0.2),
        tide_height(low=0.0, high=1.0, elapsed=0.2),
        tide_height_by_twelfths(low=0.0, high=1.0, elapsed=0.2),
        moment_at_height(low=0.0, high=1.0, low_at=0.0, high_at=1.0, height=0.2),
        beach_anchor_distance(slope=20.0, stern=30.0, boat_length=9.0, scope=5.0, above_edge=1.5),
        *offset_from(anchor_latitude=1.0, anchor_longitude=1.0, latitude=1.0, longitude=1.0001),
    ]
    assert all(np.isscalar(out) for out in outs)
