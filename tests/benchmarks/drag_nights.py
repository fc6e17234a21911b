"""How often the drag rule cries out for nothing, and how soon it finds an anchor that drags, on simulated nights.

Run ``python -m tests.benchmarks.drag_nights``: two thousand quiet nights and as many drags, a fresh seed each time. A night
is eight hours of fixes 30 s apart, the rule asked again at every new fix with all the fixes so far. The boat swings with a
wind that veers right round, yaws, and is blown about by gusts; for two hours of the night she lies at 0.95 of her
circle or more. The error of a fix is that of a first-order Gauss-Markov process of 10 minutes, as large as position_error
says (95 %: 2.4477 standard deviations of either coordinate, Rayleigh distribution). Nothing in the rule was tuned to a seed.

Measured in three runs at 5 m: no false alarm in 6,000 nights, and none in 6,000 with two stray fixes each; 6,000 of 6,000 drags
found before the bow was 30 m outside, at 16.7 m in the median and 24.0 m at the latest. A greater error asks a wider circle: of
2,000 drags 99.8 % were found before 30 m at 8 m, 97 % at 10 m.
"""

import argparse
from typing import Any, NamedTuple

import numpy as np
from pyproj import Geod

from anchorcalc.physics.geodesy import offset_from
from anchorcalc.physics.geometry import taut_reach
from anchorcalc.physics.track import drag_signs

Column = np.ndarray[Any, np.dtype[Any]]

INTERVAL = 30.0  # s between fixes
NIGHT = 8 * 3600.0  # s
BLOW = 2 * 3600.0  # s at 0.95 of her circle or more
ERROR_TIME = 600.0  # s
R95_IN_SIGMAS = np.sqrt(-2.0 * np.log(0.05))
DRAG_SPEED = 0.2  # m/s
WGS84 = Geod(ellps="WGS84")


class Boats(NamedTuple):
    """One row a night, of shape (nights, 1): lengths in [m], places in [deg]."""

    bow_radius: Column
    antenna_from_bow: Column
    anchor_latitude: Column
    anchor_longitude: Column


class Night(NamedTuple):
    """The bow's true distance from where the anchor was let go [m], and the fixes in metres east and north of there."""

    at: Column
    bow_distance: Column
    east: Column
    north: Column


def gauss_markov(*, rng: np.random.Generator, nights: int, steps: int, time: float) -> Column:
    """Noise of unit deviation whose memory fades over a time [s]."""
    fade = np.exp(-INTERVAL / time)
    noise = rng.standard_normal((nights, steps))
    for step in range(1, steps):
        noise[:, step] = fade * noise[:, step - 1] + np.sqrt(1.0 - fade * fade) * noise[:, step]
    return noise


def any_boats(*, rng: np.random.Generator, nights: int) -> Boats:
    """Small boats of all lengths, on all scopes from 4 to 8, anywhere that is not a pole."""
    shape = (nights, 1)
    height = rng.uniform(3.0, 10.0, shape)
    boat_length = rng.uniform(5.0, 14.0, shape)
    return Boats(
        bow_radius=np.asarray(taut_reach(rode_out=height * rng.uniform(4.0, 8.0, shape), height=height)),
        antenna_from_bow=boat_length * rng.uniform(0.0, 1.0, shape),
        anchor_latitude=rng.uniform(-72.0, 72.0, shape),
        anchor_longitude=rng.uniform(-180.0, 180.0, shape),
    )


def part_of_circle(*, rng: np.random.Generator, at: Column, blow_from: Column) -> Column:
    """Distance of the bow from the anchor over the radius of her circle: slack at first, 0.95 to 1 while it blows."""
    gusts = gauss_markov(rng=rng, nights=blow_from.size, steps=at.size, time=90.0)
    blowing = (at >= blow_from) & (at < blow_from + BLOW)
    return np.where(blowing, np.clip(0.98 + 0.015 * gusts, 0.95, 1.0), np.clip(0.7 + 0.12 * gusts, 0.1, 1.0))


def simulated_night(*, rng: np.random.Generator, boats: Boats, position_error: float, drag_from: Column) -> Night:
    """Fixes of a night on which the anchor drags downwind from a moment [s] on; infinity for one on which it holds."""
    nights, at = boats.bow_radius.size, np.arange(0.0, NIGHT + INTERVAL, INTERVAL)
    blow_from = np.where(np.isinf(drag_from), rng.uniform(0.0, NIGHT - BLOW, (nights, 1)), drag_from - BLOW / 2.0)
    veer = np.cumsum(rng.gamma(0.2, 1.0, (nights, at.size)), axis=-1)  # by fits and starts
    noise = {time: gauss_markov(rng=rng, nights=nights, steps=at.size, time=time) for time in (120.0, 60.0)}
    downwind = rng.uniform(0.0, 2.0 * np.pi, (nights, 1)) + 2.0 * np.pi * veer / veer[:, -1:] + np.radians(12.0) * noise[120.0]
    bow_off = boats.bow_radius * part_of_circle(rng=rng, at=at, blow_from=blow_from)
    astern = downwind + np.radians(15.0) * noise[60.0]
    dragged = DRAG_SPEED * INTERVAL * np.cumsum((at > drag_from) * np.exp(1j * downwind), axis=-1)
    bow = dragged + bow_off * np.exp(1j * downwind)  # north + i·east
    antenna = bow + boats.antenna_from_bow * np.exp(1j * astern)
    errors = [gauss_markov(rng=rng, nights=nights, steps=at.size, time=ERROR_TIME) for _ in range(2)]
    fix = antenna + position_error / R95_IN_SIGMAS * (errors[0] + 1j * errors[1])
    east, north = through_positions(boats=boats, fix=fix)
    return Night(at, np.abs(bow), east, north)


def through_positions(*, boats: Boats, fix: Column) -> tuple[Column, Column]:
    """Fixes written as latitude and longitude to 1e-6 minutes by the reference library, and read back by ours."""
    anchor_longitude, anchor_latitude = (np.broadcast_to(column, fix.shape) for column in (boats.anchor_longitude, boats.anchor_latitude))
    longitude, latitude, _ = WGS84.fwd(anchor_longitude, anchor_latitude, np.degrees(np.angle(fix)), np.abs(fix))
    written = [np.round(np.asarray(degrees) * 60.0, 6) / 60.0 for degrees in (latitude, longitude)]
    offset = offset_from(
        anchor_latitude=np.radians(boats.anchor_latitude),
        anchor_longitude=np.radians(boats.anchor_longitude),
        latitude=np.radians(written[0]),
        longitude=np.radians(written[1]),
    )
    return np.asarray(offset.east), np.asarray(offset.north)


def with_strays(*, rng: np.random.Generator, night: Night) -> Night:
    """The same night with two stray fixes in it: one a mile off, one 20 to 100 m."""
    nights, steps = night.east.shape
    stray = np.zeros((nights, steps), dtype=complex)
    rows = np.arange(nights)
    for size in (np.full(nights, 1852.0), rng.uniform(20.0, 100.0, nights)):
        stray[rows, rng.integers(0, steps, nights)] = size * np.exp(1j * rng.uniform(0.0, 2.0 * np.pi, nights))
    return night._replace(east=night.east + stray.imag, north=night.north + stray.real)


def alarms(*, boats: Boats, night: Night, position_error: float) -> Column:
    """Whether the rule calls it dragging, at every fix of every night."""
    reach = boats.bow_radius + boats.antenna_from_bow
    return drag_signs(at=night.at, east=night.east, north=night.north, antenna_radius=reach, position_error=position_error).dragging


def false_alarms(*, rng: np.random.Generator, nights: int, position_error: float, strays: bool) -> int:
    """Nights with a false alarm, of so many on which the anchor held."""
    boats = any_boats(rng=rng, nights=nights)
    night = simulated_night(rng=rng, boats=boats, position_error=position_error, drag_from=np.full((nights, 1), np.inf))
    night = with_strays(rng=rng, night=night) if strays else night
    return int(np.sum(np.any(alarms(boats=boats, night=night, position_error=position_error), axis=-1)))


def bow_outside_when_found(*, rng: np.random.Generator, nights: int, position_error: float) -> Column:
    """How far outside her circle the bow was [m], night by night, when the drag was found; infinity where it was not."""
    boats = any_boats(rng=rng, nights=nights)
    drag_from = rng.uniform(BLOW, NIGHT - BLOW, (nights, 1))
    night = simulated_night(rng=rng, boats=boats, position_error=position_error, drag_from=drag_from)
    found = alarms(boats=boats, night=night, position_error=position_error) & (night.at > drag_from)
    outside = np.where(found, night.bow_distance - boats.bow_radius, np.inf)
    when_found: Column = outside[np.arange(nights), np.argmax(found, axis=-1)]
    return when_found


def in_batches(nights: int, batch: int = 500) -> list[int]:
    """Sizes of batches that make up so many nights, so that memory stays small."""
    return [min(batch, nights - start) for start in range(0, nights, batch)]


def main() -> None:
    """Print the figures."""
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--nights", type=int, default=2000)
    options.add_argument("--position-error", type=float, default=5.0, help="95 %% error of a fix [m]")
    options.add_argument("--seed", type=int, default=None, help="a fresh one each time if not given")
    chosen = options.parse_args()
    seed = np.random.SeedSequence(chosen.seed).entropy
    rng, nights, error = np.random.default_rng(seed), chosen.nights, chosen.position_error
    print(f"seed {seed}, error of a fix {error:g} m (95 %), fixes every {INTERVAL:g} s")
    for strays in (False, True):
        alarmed = sum(false_alarms(rng=rng, nights=batch, position_error=error, strays=strays) for batch in in_batches(nights))
        print(f"false alarms: {alarmed} of {nights} eight-hour nights{', two stray fixes in each' if strays else ''}")
    outside = np.concatenate([bow_outside_when_found(rng=rng, nights=batch, position_error=error) for batch in in_batches(nights)])
    print(
        f"drags of {DRAG_SPEED:g} m/s: {np.sum(outside < 30.0)} of {nights} found before the bow is 30 m outside its circle; "
        f"found at {np.median(outside):.1f} m (median), {np.max(outside):.1f} m (latest)"
    )


if __name__ == "__main__":
    main()
