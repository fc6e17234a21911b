"""Is the anchor dragging? What a track of fixes about the anchor says.

**The rule.** No boat that lies to a holding anchor can carry her antenna farther from it than `bow radius +
antenna_from_bow`: the taut-line circle of the bow, and the antenna straight astern of it. Twice the 95 % error of a fix
beyond that is the watch circle. She is dragging

1. where at least two of the last five fixes lie outside the watch circle, or
2. where the last fix lies outside it and the last three go outwards steadily: each of the three beyond the reach of her
   antenna, and neither of the two steps more than twice as fast as the other.

One fix outside is never dragging by itself. A fix outside to which she could not have gone from the fixes beside it (20
m/s and the error of both) is a stray: it is counted and told, but it proves nothing, unless not one fix lies inside the
circle, for then there is nothing to hold against it. The last fix, which has no fix after it yet, is judged by the one
before.

**What it cannot see.** Dragging that stays inside the circle; and a rode that stretches puts her beyond a circle
reckoned without it. Source of the watch circle: definition in this library; of the error: a 95 % radius is 2.448 standard
deviations of either coordinate, Rayleigh distribution. The rates at which the rule errs are measured on simulated nights.
"""

from typing import Any, NamedTuple

import numpy as np

from anchorcalc.physics.arrays import Array
from anchorcalc.physics.geodesy import bearing, offset_from

Column = np.ndarray[Any, np.dtype[Any]]

LAST_FIXES = 5
OUTSIDE_TO_CALL_IT = 2
FASTEST_STEP = 20.0  # m/s; no small boat at anchor, nor under way from it, goes faster
STEADY = 2.0  # steps of a steady drift are alike within this factor
DRIFT_TIME = 120.0  # s; over less than this the error of the fixes hides the drift
STILL = 1e-6  # m/s; below it the last bits of the positions move, not the boat


def watch_radius(*, bow_radius: Array, antenna_from_bow: Array, position_error: Array) -> Array:
    """Radius about the anchor beyond which fixes say that she drags.

    Parameters
    ----------
    bow_radius : float or array
        Radius of the bow's circle to a taut line at low water, √(rode_out² − h_low²), [m].
    antenna_from_bow : float or array
        Antenna aft of the bow, [m]; >= 0.
    position_error : float or array
        Error of a fix, 95 %, [m]; > 0.

    Returns
    -------
    float or array
        Radius, [m].

    Notes
    -----
    The bow's circle is that of the straight taut line at low water since this is the largest that a holding anchor allows:
    a sagging rode or a higher tide only draws her in, so what lies beyond it is dragging and nothing else (but stretch).
    A smaller circle would cry out at every gust. Twice the 95 % error is 4.9 standard deviations of the outward error,
    where chance puts one fix in two million.

    Examples
    --------
    >>> watch_radius(bow_radius=30.0, antenna_from_bow=8.0, position_error=5.0)
    48.0
    """
    return bow_radius + antenna_from_bow + 2.0 * position_error


def distinct_fixes(*, at: Column, latitude: Column, longitude: Column) -> Column:
    """Order of the fixes in time, each written once.

    Parameters
    ----------
    at, latitude, longitude : array
        Moments [s] and places [rad] of the fixes, in any order.

    Returns
    -------
    array of int
        Places of the fixes in the input, by rising time; of fixes alike in time and place only the first.

    Examples
    --------
    >>> distinct_fixes(at=np.array([30.0, 0.0, 30.0]), latitude=np.zeros(3), longitude=np.zeros(3)).tolist()
    [1, 0]
    """
    order: Column = np.lexsort((longitude, latitude, at))
    columns = (at[order], latitude[order], longitude[order])
    same = np.logical_and.reduce([column[1:] == column[:-1] for column in columns])
    once: Column = order[np.concatenate([[True], ~same])]
    return once


class DragSigns(NamedTuple):
    """What each fix says: outside the watch circle, a stray, and dragging by the fixes up to it."""

    outside: Column
    stray: Column
    dragging: Column


def drag_signs(*, at: Column, east: Column, north: Column, antenna_radius: Array, position_error: Array) -> DragSigns:
    """Whether she drags, judged at every fix by the fixes up to it.

    Parameters
    ----------
    at : array
        Moments of the fixes, rising along the last axis, [s].
    east, north : array
        Fixes from the anchor, [m]; the last axis is time, axes before it are other boats.
    antenna_radius : float or array
        Farthest that the antenna can lie from a holding anchor, bow radius + antenna_from_bow, [m].
    position_error : float or array
        Error of a fix, 95 %, [m]; > 0. Of many boats both have a last axis of 1.

    Returns
    -------
    DragSigns
        outside: outside the watch circle; stray: a jump that no boat makes; dragging: the rule above.

    Examples
    --------
    >>> at, north = np.arange(6) * 30.0, np.array([30.0, 34.0, 39.0, 51.0, 57.0, 63.0])
    >>> signs = drag_signs(at=at, east=0.0 * at, north=north, antenna_radius=38.0, position_error=5.0)
    >>> signs.dragging.tolist()
    [False, False, False, False, True, True]
    """
    distance: Column = np.hypot(east, north)
    outside: Column = distance > antenna_radius + 2.0 * position_error
    step = np.hypot(np.diff(east), np.diff(north))
    jump: Column = step > FASTEST_STEP * np.diff(at) + 4.0 * position_error
    jump_before, jump_after = _led(jump, True), _followed(jump, True)
    lone, lone_as_last = outside & jump_before & jump_after, outside & _led(jump, False)
    some_inside = np.logical_or.accumulate(~outside, axis=-1)
    enough = np.where(some_inside, _outside_lately(outside & ~lone, outside & ~lone_as_last), _outside_lately(outside, outside))
    beyond: Column = distance > antenna_radius
    outwards = _goes_outwards(at, distance, beyond, jump)
    stray = some_inside[..., -1:] & np.concatenate([lone[..., :-1], lone_as_last[..., -1:]], axis=-1)
    return DragSigns(outside, stray, (enough >= OUTSIDE_TO_CALL_IT) | (outside & outwards))


def _led(steps: Column, first: bool) -> Column:
    """Each fix's step before it."""
    return np.concatenate([np.full((*steps.shape[:-1], 1), first), steps], axis=-1)


def _followed(steps: Column, last: bool) -> Column:
    """Each fix's step after it."""
    return np.concatenate([steps, np.full((*steps.shape[:-1], 1), last)], axis=-1)


def _outside_lately(earlier: Column, last: Column) -> Column:
    """How many of the last fixes up to each one are outside, that one itself judged as the last."""
    so_far = np.cumsum(earlier, axis=-1)
    before = so_far - earlier
    too_old = np.zeros_like(before)
    too_old[..., LAST_FIXES:] = so_far[..., :-LAST_FIXES]
    count: Column = before - too_old + last
    return count


def _goes_outwards(at: Column, distance: Column, beyond: Column, jump: Column) -> Column:
    """Whether the three fixes up to each one lie beyond the antenna's reach and go outwards steadily."""
    steady = np.zeros(distance.shape, dtype=bool)
    out, time = np.diff(distance), np.diff(at)
    first, second = out[..., :-1] * time[..., 1:], out[..., 1:] * time[..., :-1]  # speeds of two steps, cross-multiplied
    alike = (first > 0.0) & (second > 0.0) & (first <= STEADY * second) & (second <= STEADY * first)
    steady[..., 2:] = alike & beyond[..., :-2] & ~jump[..., :-1] & ~jump[..., 1:]  # outwards: the later two are beyond too
    return steady


class Drift(NamedTuple):
    """Drift over the last fixes: speed [m/s] and true bearing [rad]; nan where the fixes give none."""

    speed: float
    bearing: float


def drift_over_last(*, at: Column, east: Column, north: Column) -> Drift:
    """Speed and bearing at which the last fixes move, swinging included.

    Parameters
    ----------
    at : array
        Moments of the fixes, rising, [s].
    east, north : array
        Fixes from the anchor, [m], without strays.

    Returns
    -------
    Drift
        The straight line of least squares through the last five fixes, or all of the last two minutes where these are
        more. nan for fewer than two moments, and no bearing for a boat that lies still.

    Examples
    --------
    >>> drift = drift_over_last(at=np.array([0.0, 30.0]), east=np.array([0.0, 6.0]), north=np.array([0.0, 0.0]))
    >>> round(drift.speed, 9), round(float(np.degrees(drift.bearing)), 6)
    (0.2, 90.0)
    """
    if at.size < 2 or at[0] == at[-1]:
        return Drift(np.nan, np.nan)
    start = min(int(np.searchsorted(at, at[-1] - DRIFT_TIME)), max(at.size - LAST_FIXES, 0))
    time = at[start:] - np.mean(at[start:])
    spread = np.sum(time * time)
    if spread == 0.0:
        return Drift(np.nan, np.nan)
    velocity_east, velocity_north = np.sum(time * east[start:]) / spread, np.sum(time * north[start:]) / spread
    speed = float(np.hypot(velocity_east, velocity_north))
    return Drift(speed, float(bearing(east=velocity_east, north=velocity_north)) if speed > STILL else np.nan)


class DragCheck(NamedTuple):
    """What a track of fixes says of the anchor; lengths in [m], drift in [m/s] and [rad], the rest are counts."""

    dragging: bool
    watch_radius: float
    farthest: float
    outside: int
    drift_speed: float
    drift_bearing: float
    strays: int
    duplicates: int


def drag_check(
    *,
    at: Column,
    latitude: Column,
    longitude: Column,
    anchor_latitude: float,
    anchor_longitude: float,
    bow_radius: float,
    antenna_from_bow: float,
    position_error: float,
) -> DragCheck:
    """Whether she drags, by all the fixes there are.

    Parameters
    ----------
    at, latitude, longitude : array
        Moments [s] and places (geodetic WGS 84, [rad]) of the fixes, in any order; at least one.
    anchor_latitude, anchor_longitude : float
        Where the anchor lies, [rad].
    bow_radius, antenna_from_bow, position_error : float
        As `watch_radius` takes them, [m].

    Returns
    -------
    DragCheck
        dragging: by the rule above; watch_radius; farthest: greatest distance of a fix from the anchor, and outside: how
        many fixes lie outside the watch circle, strays in both; drift_speed, drift_bearing: over the last fixes that are no
        strays, nan for none; strays: fixes that no boat could have made; duplicates: fixes left out as written twice.

    Examples
    --------
    >>> latitude = np.radians(59.314) + np.array([30.0, 40.0, 50.0, 60.0]) / 6.4e6
    >>> check = drag_check(at=np.arange(4) * 50.0, latitude=latitude, longitude=np.full(4, 0.33),
    ...                    anchor_latitude=np.radians(59.314), anchor_longitude=0.33,
    ...                    bow_radius=25.0, antenna_from_bow=8.0, position_error=5.0)
    >>> check.dragging, check.outside, round(check.drift_speed, 2)
    (True, 2, 0.2)
    """
    order = distinct_fixes(at=at, latitude=latitude, longitude=longitude)
    east, north = offset_from(
        anchor_latitude=anchor_latitude, anchor_longitude=anchor_longitude, latitude=latitude[order], longitude=longitude[order]
    )
    columns = (at[order], np.asarray(east), np.asarray(north))
    antenna_radius = bow_radius + antenna_from_bow
    signs = drag_signs(at=columns[0], east=columns[1], north=columns[2], antenna_radius=antenna_radius, position_error=position_error)
    moments, east_kept, north_kept = (column[~signs.stray] for column in columns)
    drift = drift_over_last(at=moments, east=east_kept, north=north_kept)
    return DragCheck(
        dragging=bool(signs.dragging[-1]),
        watch_radius=float(watch_radius(bow_radius=bow_radius, antenna_from_bow=antenna_from_bow, position_error=position_error)),
        farthest=float(np.max(np.hypot(columns[1], columns[2]))),
        outside=int(np.sum(signs.outside)),
        drift_speed=drift.speed,
        drift_bearing=drift.bearing,
        strays=int(np.sum(signs.stray)),
        duplicates=at.size - order.size,
    )
