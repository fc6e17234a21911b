"""Lying between an anchor seaward and the beach astern.

The beach falls evenly: one down for `slope` out. Distances run seaward from the water's edge of the present tide.
"""

import numpy as np

from anchorcalc.physics.arrays import Array


def stern_distance(*, slope: Array, draught: Array, under_keel: Array, tide_fall: Array) -> Array:
    """How far out the stern must lie to float at low water.

    Parameters
    ----------
    slope : float or array
        Run of the beach for one down, [-]; > 0 (1:20 is 20).
    draught : float or array
        Draught of the boat, [m].
    under_keel : float or array
        Water wanted under the keel at low water, [m].
    tide_fall : float or array
        Fall still to come, [m]; >= 0.

    Returns
    -------
    float or array
        Distance of the stern from the water's edge now, [m].

    Notes
    -----
    Even slope, full draught taken at the stern: the safe side. Source: trigonometry of the slope, nothing published.

    Examples
    --------
    >>> round(stern_distance(slope=20.0, draught=0.7, under_keel=0.3, tide_fall=0.5), 9)
    30.0
    """
    return slope * (draught + under_keel + tide_fall)


def beach_anchor_distance(*, slope: Array, stern: Array, boat_length: Array, scope: Array, above_edge: Array) -> Array:
    """How far out the bow anchor must lie to give the scope at high water.

    Parameters
    ----------
    slope : float or array
        Run of the beach for one down, [-]; > 0.
    stern : float or array
        Distance of the stern from the water's edge now, [m].
    boat_length : float or array
        Length over all, [m].
    scope : float or array
        Scope wanted at high water, [-]; >= 1.
    above_edge : float or array
        Roller above the present surface at high water, tide_rise + bow_height, [m].

    Returns
    -------
    float or array
        Distance of the anchor from the water's edge now, [m]; nan where the beach is too steep: the bottom falls away
        faster than the rode gains on it, and no distance will do.

    Notes
    -----
    X = stern + boat_length + √(scope² − 1)·(X/slope + above_edge), solved for X: deeper water asks more rode, and more
    rode reaches deeper water.

    Examples
    --------
    >>> distance = beach_anchor_distance(slope=20.0, stern=30.0, boat_length=9.0, scope=5.0, above_edge=1.5)
    >>> round(float(distance), 2)
    61.38
    """
    reach_per_height = np.sqrt(scope * scope - 1.0)
    gain = np.where(np.less(reach_per_height, slope), 1.0 - reach_per_height / slope, np.nan)
    return (stern + boat_length + reach_per_height * above_edge) / gain


def anchor_height(*, slope: Array, anchor_distance: Array, above_edge: Array) -> Array:
    """Height of the roller above the seabed at the anchor, at high water.

    Parameters
    ----------
    slope : float or array
        Run of the beach for one down, [-]; > 0.
    anchor_distance : float or array
        Distance of the anchor from the water's edge now, [m].
    above_edge : float or array
        Roller above the present surface at high water, tide_rise + bow_height, [m].

    Returns
    -------
    float or array
        Height, [m]; times the scope it is the bow rode.

    Examples
    --------
    >>> anchor_height(slope=20.0, anchor_distance=90.0, above_edge=1.5)
    6.0
    """
    return anchor_distance / slope + above_edge
