"""Anchor, chain and line that a published table asks of a boat of a length."""

import numpy as np

from anchorcalc.physics.arrays import Array
from anchorcalc.physics.codes import PIVOTING_FLUKE, Codes
from anchorcalc.physics.lookup import SAME_SIZE, Places, row_at_or_above
from anchorcalc.physics.tables import anchor

# Beyond the table: the load grows with the square of the length, holding with the 0.8th power of the mass (sand).
MASS_GROWTH = 2.0 / 0.8


def _row(boat_length: Array) -> Places:
    return np.minimum(row_at_or_above(sizes=anchor.LENGTHS, size=boat_length), len(anchor.LENGTHS) - 1)


def _growth(boat_length: Array) -> Array:
    growth: Array = np.power(np.maximum(np.divide(boat_length, anchor.LENGTHS[-1]), 1.0), MASS_GROWTH)
    return growth


def anchor_mass_by_table(*, boat_length: Array, anchor_kind: Codes = PIVOTING_FLUKE) -> Array:
    """Mass of the main anchor that the code for small commercial vessels asks.

    Parameters
    ----------
    boat_length : float or array
        Length over all, [m]; > 0. The table runs from 6 to 24 m.
    anchor_kind : int or array of int
        Place in ``ANCHOR_KINDS``; fisherman, grapnel and mushroom are no anchors of high holding power and count a third heavier.

    Returns
    -------
    float or array
        Mass, [kg]: of the first row that is not shorter; under 6 m that of the 6 m row; over 24 m it grows from the last row
        with the 2.5th power of the length (own estimate).

    Notes
    -----
    Source: ``sources.SMALL_VESSEL_CODE``; for other kinds ``sources.HIGH_HOLDING_CREDIT``.

    Examples
    --------
    >>> float(anchor_mass_by_table(boat_length=9.5)), round(float(anchor_mass_by_table(boat_length=16.0, anchor_kind=4)), 1)
    (13.0, 39.9)
    """
    return anchor.ANCHOR_MASSES[_row(boat_length)] * anchor.MASS_OF_HIGH_HOLDING[anchor_kind] * _growth(boat_length)


def kedge_mass_by_table(*, boat_length: Array) -> Array:
    """Mass of the second, lighter anchor that the code for small commercial vessels asks.

    Parameters
    ----------
    boat_length : float or array
        Length over all, [m]; > 0.

    Returns
    -------
    float or array
        Mass of a high-holding anchor, [kg]; rows as for `anchor_mass_by_table`.

    Notes
    -----
    Source: ``sources.SMALL_VESSEL_CODE``.

    Examples
    --------
    >>> float(kedge_mass_by_table(boat_length=9.5))
    6.0
    """
    return anchor.KEDGE_MASSES[_row(boat_length)] * _growth(boat_length)


def chain_size_by_table(*, boat_length: Array) -> Array:
    """Chain that the code for small commercial vessels asks for the main anchor: the usual chain of a boat of that length.

    Parameters
    ----------
    boat_length : float or array
        Length over all, [m]; > 0.

    Returns
    -------
    float or array
        Diameter of the wire, [m]: of the first row that is not shorter; over 24 m that of the last row, which is too thin there.

    Notes
    -----
    Source: ``sources.SMALL_VESSEL_CODE``.

    Examples
    --------
    >>> float(chain_size_by_table(boat_length=9.5))
    0.008
    """
    return anchor.CHAIN_SIZES[_row(boat_length)]


def line_size_by_table(*, boat_length: Array) -> Array:
    """Rope that the code for small commercial vessels asks for the main anchor: the usual line of a boat of that length.

    Parameters
    ----------
    boat_length : float or array
        Length over all, [m]; > 0.

    Returns
    -------
    float or array
        Diameter, [m]: of the first row that is not shorter. Printed to 14 m only; beyond, 14 mm stands, the weaker.

    Notes
    -----
    Source: ``sources.SMALL_VESSEL_CODE``.

    Examples
    --------
    >>> float(line_size_by_table(boat_length=9.5))
    0.012
    """
    return anchor.LINE_SIZES[_row(boat_length)]


def boat_is_outside_anchor_table(*, boat_length: Array) -> Array:
    """Whether a boat is shorter than the first row of the code's table or longer than the last.

    Parameters
    ----------
    boat_length : float or array
        Length over all, [m].

    Returns
    -------
    bool or array of bool
        True under 6 m and over 24 m.

    Examples
    --------
    >>> bool(boat_is_outside_anchor_table(boat_length=5.0)), bool(boat_is_outside_anchor_table(boat_length=6.0))
    (True, False)
    """
    shorter = np.less(boat_length, anchor.LENGTHS[0] * (1.0 - SAME_SIZE))
    outside: Array = shorter | np.greater(boat_length, anchor.LENGTHS[-1] * (1.0 + SAME_SIZE))
    return outside
