"""One part of a rode hanging still: the catenary in closed form.

Here everything is divided by the load, the horizontal pull that is the same all along the rode. The vertical pull over it
is the *slope* of the rode, and the whole tension over it is ``taut(slope)``. *Bend* is the weight in water of a metre over
the load: the slope gained along each metre, [1/m]; below zero where the line floats. *Stretch* is load over stiffness, [-].
"""

from typing import Any, NamedTuple

import numpy as np

from anchorcalc.physics.arrays import Array

# A load below this is reckoned as this, [N]: without any load the rode has no shape of its own.
LEAST_LOAD = 1e-6
# Stands for zero where a quotient has a limit there; far below every slope that a rode can have.
NEXT_TO_NOTHING = 1e-200


class Hanging(NamedTuple):
    """Vertical pull up at the low end (below zero: down, the rode dips), and down at the high end [N]; span [m]."""

    low_pull: Array
    high_pull: Array
    span: Array


def taut(slope: Any) -> Any:
    """Tension over load, [-], where the rode has this slope, [-]."""
    return np.sqrt(1.0 + slope * slope)


def part_rise(*, low: Any, high: Any, length: Any, stretch: Any = 0.0) -> Any:
    """Height that a part gains between its two end slopes, [m].

    The same as (taut(high) - taut(low)) / bend, but good for a part of no weight as well; the stretch of a straight spring
    under the mean vertical pull comes on top.
    """
    return length * (low + high) * (1.0 / (taut(low) + taut(high)) + stretch / 2.0)


def part_run(*, low: Any, high: Any, length: Any, bend: Any, stretch: Any = 0.0) -> Any:
    """Level distance that a part covers, [m]; its end slopes must not differ in sign."""
    low_taut, high_taut = taut(low), taut(high)
    product = low_taut * high_taut + low * high
    level = length * np.sqrt(2.0 + 2.0 * (1.0 + low * low + high * high) / product) / (low_taut + high_taut)
    sag = np.maximum(np.abs(level * bend / 2.0), NEXT_TO_NOTHING)
    return level * np.arcsinh(sag) / sag + length * stretch


def length_to_rise(*, slope: Any, rise: Any, bend: Any, stretch: Any = 0.0) -> Any:
    """Unstretched length of a part that leaves its low end with this slope and gains this height, [m]; infinite if none does.

    None does where a part lighter than water levels out before it is up there, nor where one of no weight starts level.
    Tension grows with height: with t for its growth over the load, bend * rise = t + (t**2 / 2 + t * taut(slope)) * stretch.
    """
    low_taut = taut(slope)
    firm = 1.0 + low_taut * stretch
    root = firm + np.sqrt(np.maximum(firm * firm + 2.0 * bend * rise * stretch, 0.0))
    growth = 2.0 * bend * rise / root
    over = slope * slope / (1.0 + low_taut) + growth
    high = np.sqrt(np.maximum(over * (over + 2.0), 0.0))
    with np.errstate(divide="ignore", invalid="ignore", over="ignore"):
        length = 2.0 * rise * (2.0 * low_taut + growth) / (root * (slope + high))
    return np.where(over < 0.0, np.inf, length)[()]


def hanging_rode(*, length: Array, rise: Array, load: Array, weight: Array) -> Hanging:
    """Pull at the ends and span of one uniform rode, of known length, that hangs clear of the bottom.

    Parameters
    ----------
    length : float or array
        Length of the rode, [m]; more than the rise.
    rise : float or array
        Height of the high end above the low end, [m]; >= 0.
    load : float or array
        Horizontal pull, [N]; > 0.
    weight : float or array
        Weight of a metre, [N/m]; >= 0.

    Returns
    -------
    Hanging
        low_pull: how hard the rode pulls its low end up, [N], below zero where it dips under that end and weighs it down;
        high_pull: how hard it pulls its high end down, [N]; span: level distance between the ends, [m].

    Notes
    -----
    With u = asinh(slope), the mean of u at both ends is atanh(rise / length) and half their difference is
    asinh(√(length² - rise²) · weight / (2 · load)): the sum and the difference of the two end conditions of a catenary.
    Inextensible. Checked in the tests against printed textbook problems.

    Examples
    --------
    >>> ends = hanging_rode(length=500.0, rise=200.0, load=43694.581, weight=200.0)
    >>> round(float(ends.span), 3), round(float(ends.high_pull), 1)
    (400.0, 77634.4)
    """
    level = np.sqrt((length - rise) * (length + rise))
    sag = np.maximum(level * weight / (2.0 * load), NEXT_TO_NOTHING)
    half, mean = np.arcsinh(sag), np.arctanh(rise / length)
    return Hanging(low_pull=load * np.sinh(mean - half), high_pull=load * np.sinh(mean + half), span=level * half / sag)
