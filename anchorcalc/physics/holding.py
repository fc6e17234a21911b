"""What an anchor holds in a bottom: a published power law where there is one, a wide band where there is none."""

from typing import NamedTuple

import numpy as np

from anchorcalc.physics.arrays import Array
from anchorcalc.physics.codes import MUD, PIVOTING_FLUKE, SAND, Codes
from anchorcalc.physics.constants import GRAVITY
from anchorcalc.physics.tables.holding import (
    EDGE_MASS,
    EXPONENTS,
    RATIO_HIGH,
    RATIO_LOW,
    REFERENCE_MASS,
    SCOPES,
    SHARE_ANGLES,
    SHARES_AT_ANGLES,
    TESTED_MOST,
)


class HoldingBand(NamedTuple):
    """Least and most that an anchor may hold when it is well set, [N]; nan where the bottom has no figure."""

    low: Array
    high: Array


def holding_by_power_law(*, anchor_mass: Array, reference_ratio: Array, exponent: Array) -> Array:
    """Holding of an anchor of a tested kind.

    Parameters
    ----------
    anchor_mass : float or array
        Mass of the anchor, [kg]; > 0. Tested from hundreds to tens of thousands of pounds.
    reference_ratio : float or array
        Holding over weight of an anchor of 10 000 lb (4536 kg) of this kind in this bottom, [-].
    exponent : float or array
        Power of the mass, [-]: 0.8 in sand, 0.92 in mud.

    Returns
    -------
    float or array
        Holding under a flat pull, [N]; good to 30 %.

    Notes
    -----
    Source: ``sources.UFC_HOLDING``, eq. (26).

    Examples
    --------
    >>> round(holding_by_power_law(anchor_mass=3000 * 0.45359237, reference_ratio=12.6, exponent=0.8) / 4.4482216152605)
    48091
    """
    return reference_ratio * REFERENCE_MASS * GRAVITY * np.power(np.divide(anchor_mass, REFERENCE_MASS), exponent)


def share_of_flat_pull(*, pull_angle: Array) -> Array:
    """Share of its full holding that an anchor keeps when the rode pulls upward.

    Parameters
    ----------
    pull_angle : float or array
        Angle of the rode at the shank above a level seabed, [rad]; 0 to π/2.

    Returns
    -------
    float or array
        Share, [-]: 1 to 5.7 degrees (a taut line at scope 10), 0.91 at scope 7, 0.35 at scope 2; straight between the rows; 0
        from 50 degrees on.

    Notes
    -----
    Source: ``sources.HOLDING_BY_SCOPE``; good to 10 points. Beyond 30 degrees an own estimate.

    Examples
    --------
    >>> round(float(share_of_flat_pull(pull_angle=np.arcsin(1 / 7))), 9)
    0.91
    """
    share: Array = np.interp(pull_angle, SHARE_ANGLES, SHARES_AT_ANGLES)
    return share


def holding_band(*, anchor_kind: Codes, anchor_mass: Array, bottom: Codes, pull_angle: Array = 0.0) -> HoldingBand:
    """Least and most that a well-set anchor may hold.

    Parameters
    ----------
    anchor_kind : int or array of int
        Place in ``ANCHOR_KINDS``.
    anchor_mass : float or array
        Mass of the anchor, [kg]; > 0.
    bottom : int or array of int
        Place in ``BOTTOMS``.
    pull_angle : float or array
        Angle of the rode at the shank above a level seabed, [rad]; 0 to π/2.

    Returns
    -------
    HoldingBand
        low, high: [N]; nan on rock, coral and grass, which have no figure.

    Notes
    -----
    Source: for a pivoting fluke of 100 lb or more in sand and mud ``sources.UFC_HOLDING`` less and plus 30 %; for the rest
    ``sources.HOLDING_BANDS``. Below 100 lb the low end goes with the mass and the high end with the power of the law, so
    that the band widens; above it both go with the power. Less than flat pull lowers both: `share_of_flat_pull`.

    Examples
    --------
    >>> band = holding_band(anchor_kind=0, anchor_mass=100 * 0.45359237, bottom=0)
    >>> round(float(band.low) / 4.4482216152605), round(float(band.high) / 4.4482216152605)
    (2215, 4114)
    """
    mass = np.divide(anchor_mass, EDGE_MASS)
    full = EDGE_MASS * GRAVITY * share_of_flat_pull(pull_angle=pull_angle)
    by_power = np.power(mass, EXPONENTS[bottom])
    low = RATIO_LOW[anchor_kind, bottom] * full * np.minimum(mass, by_power)
    return HoldingBand(low, RATIO_HIGH[anchor_kind, bottom] * full * by_power)


def least_anchor_mass(*, load: Array, anchor_kind: Codes, bottom: Codes, pull_angle: Array = 0.0) -> Array:
    """Least mass of an anchor whose holding, at the low end of the band, meets a load.

    Parameters
    ----------
    load : float or array
        Load to meet, [N]; >= 0.
    anchor_kind : int or array of int
        Place in ``ANCHOR_KINDS``.
    bottom : int or array of int
        Place in ``BOTTOMS``.
    pull_angle : float or array
        Angle of the rode at the shank above a level seabed, [rad]; 0 to π/2.

    Returns
    -------
    float or array
        Mass, [kg]; nan where the bottom has no figure, inf where the pull is too steep for any.

    Notes
    -----
    Inverse of `holding_band`, low end.

    Examples
    --------
    >>> round(float(least_anchor_mass(load=2215.4 * 4.4482216152605, anchor_kind=0, bottom=0)) / 0.45359237)
    100
    """
    full = EDGE_MASS * GRAVITY * RATIO_LOW[anchor_kind, bottom] * share_of_flat_pull(pull_angle=pull_angle)
    with np.errstate(divide="ignore", invalid="ignore"):  # a share of nothing: inf, which no anchor is
        part = np.where(np.equal(load, 0.0), 0.0, np.divide(load, full))
    part = np.where(np.isnan(full), np.nan, part)[()]
    by_power: Array = np.power(part, 1.0 / EXPONENTS[bottom])
    return EDGE_MASS * np.maximum(part, by_power)


def has_holding_figure(*, bottom: Codes) -> Array:
    """Whether there is any figure for the holding of a bottom.

    Parameters
    ----------
    bottom : int or array of int
        Place in ``BOTTOMS``.

    Returns
    -------
    bool or array of bool
        False for rock, coral and grass.

    Examples
    --------
    >>> bool(has_holding_figure(bottom=0)), bool(has_holding_figure(bottom=5))
    (True, False)
    """
    has: Array = np.isfinite(RATIO_LOW[PIVOTING_FLUKE, bottom])
    return has


def holding_is_extrapolated(*, anchor_kind: Codes, anchor_mass: Array, bottom: Codes, pull_angle: Array = 0.0) -> Array:
    """Whether `holding_band` lies outside what was tested or printed.

    Parameters
    ----------
    anchor_kind, anchor_mass, bottom, pull_angle
        As for `holding_band`.

    Returns
    -------
    bool or array of bool
        False only for a pivoting fluke of 100 to 40 000 lb in sand or mud at a pull of 30 degrees or less.

    Examples
    --------
    >>> bool(holding_is_extrapolated(anchor_kind=0, anchor_mass=15.0, bottom=0))
    True
    """
    tested_kind = np.equal(anchor_kind, PIVOTING_FLUKE) & (np.equal(bottom, SAND) | np.equal(bottom, MUD))
    tested_mass = np.greater_equal(anchor_mass, EDGE_MASS) & np.less_equal(anchor_mass, TESTED_MOST)
    tested: Array = tested_kind & tested_mass & np.less_equal(pull_angle, np.arcsin(1.0 / SCOPES[-1]))
    return np.logical_not(tested)
