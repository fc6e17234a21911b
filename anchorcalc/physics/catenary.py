"""An anchor rode of chain and line under a steady load: how it pulls on the anchor, what lies, how far the bow reaches.

Statics only: a level frictionless seabed, no current on the rode, no snatch from waves. Weights are those in water all the
way to the roller. ``load`` is the horizontal pull of the boat, which is the horizontal part of the tension everywhere in
the rode. The kernel is in ``hanging`` (closed forms) and ``lifting`` (the one search).
"""

from typing import Any, NamedTuple

import numpy as np

from anchorcalc.physics.arrays import Array
from anchorcalc.physics.hanging import LEAST_LOAD, length_to_rise, part_rise, part_run, taut
from anchorcalc.physics.lifting import Lifted, Rode, joint_slope, lifted, line_off_bottom

# So many rows at a time stay in the processor's cache through the search.
ROWS_AT_A_TIME = 32768


class _Given(NamedTuple):
    """What is given of a rode, under the names of ``rode_shape``."""

    rode_out: Any
    chain: Any
    height: Any
    load: Any
    chain_weight: Any
    line_weight: Any
    line_stiffness: Any


class RodeShape(NamedTuple):
    """Angle of pull at the shank [rad], tension at the bow [N], reach from bow to anchor [m], what lies on the bottom or floats [m]."""

    pull_angle: Array
    chain_lying: Array
    bow_tension: Array
    reach: Array
    line_lying: Array
    line_floating: Array


def rode_shape(
    *,
    rode_out: Array,
    chain: Array,
    height: Array,
    load: Array,
    chain_weight: Array,
    line_weight: Array,
    line_stiffness: Array = np.inf,
) -> RodeShape:
    """Pull at the anchor, chain lying, tension and reach of a rode of chain at the anchor and line behind it.

    Parameters
    ----------
    rode_out : float or array
        Chain and line outboard, roller to anchor, without stretch, [m]; more than the height.
    chain : float or array
        Chain at the anchor, [m]; >= 0; of more than is out, what is out counts, so ``np.inf`` is an all-chain rode.
    height : float or array
        Roller above the seabed, [m]; > 0.
    load : float or array
        Horizontal pull of the boat, [N]; below 1e-6 N it is taken as 1e-6 N.
    chain_weight : float or array
        Weight of a metre of chain in water, [N/m]; >= 0.
    line_weight : float or array
        Weight of a metre of line in water, [N/m]; below zero where it floats.
    line_stiffness : float or array
        Pull over strain of the line, [N]; > 0; not given: the line does not stretch. Chain is taken not to stretch.

    Returns
    -------
    RodeShape
        pull_angle: of the rode at the shank above the level seabed, [rad], 0 while any chain or line lies;
        chain_lying, line_lying: length on the seabed, [m] (line lies only where all chain does); bow_tension: whole
        tension at the roller, [N], >= load; reach: level distance from bow to anchor, [m]; line_floating: line that floats
        level, [m]. The inputs broadcast together. All are nan where the rode is not longer than the height,
        or the height not above 0.

    Notes
    -----
    What is assumed, and which side it is on:

    * In-water weight also above the water: the rode is lighter than it is, so pull_angle comes out too great and
      chain_lying too small (safe); bow_tension too small, by less than the height of the roller above the water times
      what a metre weighs more in air.
    * Line lighter than water that would arch higher than the roller floats level at the height of the roller. In truth
      it floats at the surface, lower down, and lifts less on the chain: pull_angle comes out too great (safe).
    * Stretch makes pull_angle and bow_tension less, and reach greater. So the safe side is *no* stretch for the angle, the
      chain lying and the tension, and the stretch of the line for the reach.
    * chain_lying, bow_tension and reach move one way only with each of rode_out (more line), height and load. So does
      pull_angle with rode_out and height, and with the load where the line neither stretches nor floats: a rode that stretches
      much, or is held up by its own line, may pull flatter under more load.
    * pull_angle is at most asin(height / rode_out), that of a taut line, unless floating line outweighs the chain.

    Two catenary parts in series; their formula as in MIT course 2.019, Design of Ocean Systems, lecture 13. How the
    search is bracketed and why it always ends stands in ``lifting.joint_slope``.

    Examples
    --------
    >>> shape = rode_shape(rode_out=50.0, chain=10.0, height=9.0, load=1000.0, chain_weight=11.94, line_weight=0.3)
    >>> round(float(np.degrees(shape.pull_angle)), 2), round(float(shape.bow_tension), 1), round(float(shape.reach), 2)
    (4.06, 1020.3, 49.16)
    """
    return _by_rows(_Given(rode_out, chain, height, load, chain_weight, line_weight, line_stiffness))


class RodePoints(NamedTuple):
    """Points along a rode: level distance from the anchor and height above the seabed, [m]."""

    x: Array
    y: Array


def rode_points(
    *,
    rode_out: Array,
    chain: Array,
    height: Array,
    load: Array,
    chain_weight: Array,
    line_weight: Array,
    line_stiffness: Array = np.inf,
    points: int = 32,
) -> RodePoints:
    """Where the rode runs, for a picture of it from the side.

    Parameters
    ----------
    rode_out, chain, height, load, chain_weight, line_weight, line_stiffness : float or array
        As in ``rode_shape``.
    points : int
        How many points on the chain, and as many on the line; >= 2.

    Returns
    -------
    RodePoints
        x: level distance from the anchor, y: height above the seabed, [m]; along the last axis 2 * points of them from
        anchor to roller, even in length on each part. The last of the chain and the first of the line are both the joint.

    Examples
    --------
    >>> run = rode_points(rode_out=50.0, chain=10.0, height=9.0, load=1000.0, chain_weight=11.94, line_weight=0.3, points=2)
    >>> run.x.round(2).tolist(), run.y.round(2).tolist()
    ([0.0, 9.91, 9.91, 49.16], [0.0, 1.29, 1.29, 9.0])
    """
    given = _Given(rode_out, chain, height, load, chain_weight, line_weight, line_stiffness)
    rode, off, up, _ = _hung(_Given(*(np.asarray(one, dtype=float)[..., np.newaxis] for one in given)))
    part = np.linspace(0.0, 1.0, points)
    x, y = _points(along=part * rode.chain, lying=rode.chain - up.chain, hanging=up.chain, low=up.anchor, bend=rode.chain_bend)
    x_line, y_line = _points(
        along=part * rode.line, lying=rode.line - off.line, hanging=up.line, low=up.joint, bend=rode.line_bend, stretch=rode.stretch
    )
    return RodePoints(x=np.concatenate([x, x[..., -1:] + x_line], axis=-1), y=np.concatenate([y, y[..., -1:] + y_line], axis=-1))


def _points(*, along: Any, lying: Any, hanging: Any, low: Any, bend: Any, stretch: Any = 0.0) -> tuple[Any, Any]:
    """Level distance and height that a part has gained [m], so far along it: first it lies, then hangs, then floats level."""
    flat = np.minimum(along, lying)
    hung = np.minimum(along - flat, hanging)
    high = np.maximum(low + bend * hung, 0.0)
    run = part_run(low=low, high=high, length=hung, bend=bend, stretch=stretch)
    return (along - hung) * (1.0 + stretch) + run, part_rise(low=low, high=high, length=hung, stretch=stretch)


def rode_for_flat_pull(*, chain: Array, height: Array, load: Array, chain_weight: Array, line_weight: Array, line_stiffness: Array = np.inf) -> Array:
    """Least rode for which the pull at the anchor is just horizontal: the chain is given, the line grows.

    Parameters
    ----------
    chain, height, load, chain_weight, line_weight, line_stiffness : float or array
        As in ``rode_shape``.

    Returns
    -------
    float or array
        Rode out, chain and line, without stretch, [m]; not less than the height, however much the line stretches. Less than
        the chain where a part of the chain will do. Infinite where no length of line does it: the chain is too light to
        turn the pull level, and line that is not heavier than water cannot.

    Notes
    -----
    Closed form. Weight gained upward is tension gained, whatever the shape, so the tensions at joint and roller follow from
    their heights, and the lengths from the tensions; with stretch a quadratic equation comes between. More rode than this
    also pulls level. Stretch makes it less, so without stretch it is on the safe side. Assumptions as in ``rode_shape``.
    Source of the formula of each part: MIT course 2.019, Design of Ocean Systems, lecture 13.

    Examples
    --------
    >>> at = dict(chain=10.0, height=7.0, load=500.0, chain_weight=11.94)
    >>> round(float(rode_for_flat_pull(line_weight=0.3, **at)), 2)
    34.36
    >>> float(rode_for_flat_pull(line_weight=-3.0, **at))
    inf
    """
    load = np.maximum(load, LEAST_LOAD)
    bend, line_bend, stretch = chain_weight / load, line_weight / load, load / line_stiffness
    turn = chain * bend
    chain_rise = part_rise(low=0.0, high=turn, length=chain)
    line = length_to_rise(slope=turn, rise=np.maximum(height - chain_rise, 0.0), bend=line_bend, stretch=stretch)
    rode_out = np.where(chain_rise >= height, length_to_rise(slope=0.0, rise=height, bend=bend), chain + line)
    at_least_the_height: Array = np.maximum(rode_out, height)
    return at_least_the_height


def _hung(given: _Given) -> tuple[Rode, Rode, Lifted, Any]:
    """The rode over its load, the same without line on the bottom, what of it hangs, and the load reckoned with [N]."""
    height = np.where((given.rode_out > given.height) & (given.height > 0.0), given.height, np.nan)[()]
    load = np.maximum(given.load, LEAST_LOAD)
    chain = np.minimum(given.chain, given.rode_out)
    rode = Rode(
        chain=chain,
        chain_bend=given.chain_weight / load,
        line=given.rode_out - chain,
        line_bend=given.line_weight / load,
        stretch=load / given.line_stiffness,
        height=height,
    )
    off = line_off_bottom(rode)
    joint = (off.line >= rode.line) * joint_slope(off)
    return rode, off, lifted(joint=joint, rode=off), load


def _shape(given: _Given) -> RodeShape:
    """The shape of these rows, all at once."""
    rode, off, up, load = _hung(given)
    chain_lying, line_lying, line_floating = rode.chain - up.chain, rode.line - off.line, off.line - up.line
    chain_run = part_run(low=up.anchor, high=up.joint, length=up.chain, bend=rode.chain_bend)
    line_run = part_run(low=up.joint, high=up.bow, length=up.line, bend=rode.line_bend, stretch=rode.stretch)
    return RodeShape(
        pull_angle=np.arctan(up.anchor),
        chain_lying=chain_lying,
        bow_tension=load * taut(up.bow),
        reach=chain_lying + chain_run + line_run + (line_lying + line_floating) * (1.0 + rode.stretch),
        line_lying=line_lying,
        line_floating=line_floating,
    )


def _by_rows(given: _Given) -> RodeShape:
    """The shape of every row that the inputs make together, some thousand at a time."""
    given = _Given(*(np.asarray(one, dtype=float)[()] for one in given))
    rows = np.broadcast(*given)
    if rows.size <= ROWS_AT_A_TIME:
        return _shape(given)
    fields = [one if np.ndim(one) == 0 else np.broadcast_to(one, rows.shape).reshape(-1) for one in given]
    shapes = np.empty((len(RodeShape._fields), rows.size))
    for start in range(0, rows.size, ROWS_AT_A_TIME):
        some = slice(start, start + ROWS_AT_A_TIME)
        part = _shape(_Given(*(one if np.ndim(one) == 0 else one[some] for one in fields)))
        for whole, values in zip(shapes, part, strict=True):
            whole[some] = values
    return RodeShape(*shapes.reshape(-1, *rows.shape))
