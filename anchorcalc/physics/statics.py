"""Forces in balance: how two rodes share one load."""

from typing import NamedTuple

import numpy as np

from anchorcalc.physics.arrays import Array

# Above this spread she lies to one anchor at a time: a gust throws the whole load on either, and the sum of forces for a
# wind dead in the middle (5.7 times the load at 170 degrees, without end at 180) says nothing of use. Common practice.
ONE_AT_A_TIME = np.radians(170.0)
# Wind within this part of the spread along one rode counts as along it, whatever the last bit of the angles says; and a spread
# of so few radians is none.
SAME_ANGLE = 1e-9


class SharedLoad(NamedTuple):
    """Load on each of two rodes [N], and whether one of them carries nothing."""

    greater: Array
    less: Array
    slack: Array


def two_anchor_loads(*, load: Array, spread: Array, wind_off: Array) -> SharedLoad:
    """How two rodes from one bow share a load, by the triangle of forces.

    Parameters
    ----------
    load : float or array
        Pull of wind and stream on the boat, [N]; >= 0.
    spread : float or array
        Angle between the two rodes, [rad]; 0 to π.
    wind_off : float or array
        Wind off the line that halves the spread, to either side, [rad]; -π to π.

    Returns
    -------
    SharedLoad
        greater, less: load on the harder and on the easier rode, [N]; slack: true where the wind stands along one
        rode or outside both, and that one carries the whole load. Above 170 degrees each carries the full load.

    Notes
    -----
    Lami's theorem: T = load·sin(spread/2 ± wind_off)/sin(spread), written here as the part along the middle and the part
    across it. Rodes of one length, seen from above. A wide spread multiplies the load: 1.93 at 150, 2.88 at 160 degrees.

    Examples
    --------
    >>> shared = two_anchor_loads(load=1000.0, spread=np.radians(120.0), wind_off=0.0)
    >>> round(float(shared.greater), 6), round(float(shared.less), 6)
    (1000.0, 1000.0)
    """
    half, off = spread * 0.5, np.abs(wind_off)
    one_at_a_time = spread > ONE_AT_A_TIME * (1.0 + SAME_ANGLE)
    shared = np.logical_not(one_at_a_time) & ((off < half * (1.0 - SAME_ANGLE)) | (off == 0.0))
    along = load * np.cos(off) / (2.0 * np.cos(half))
    across = load * np.sin(off) / (2.0 * np.maximum(np.sin(half), SAME_ANGLE))  # two rodes in one line: no spread to divide by
    greater = np.where(shared, along + across, load)[()]  # a number stays a number
    less = np.where(shared, along - across, load * one_at_a_time)[()]
    return SharedLoad(greater, less, np.logical_not(shared | one_at_a_time))
