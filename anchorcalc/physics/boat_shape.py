"""Breadth, draught and windage of a boat of usual shape, for where they were not given."""

import numpy as np

from anchorcalc.physics.arrays import Array
from anchorcalc.physics.codes import MOTOR, MULTIHULL, Codes
from anchorcalc.physics.constants import FOOT
from anchorcalc.physics.tables.drag import FRONTAL_AREA_SHARE, MULTIHULL_BEAM_SHARE, USUAL_DRAUGHT_SHARE


def usual_beam(*, boat_length: Array, boat_form: Codes = MOTOR) -> Array:
    """Beam of a boat of usual shape, for where no beam was given.

    Parameters
    ----------
    boat_length : float or array
        Length over all, [m]; > 0.
    boat_form : int or array of int
        Place in ``BOAT_FORMS``.

    Returns
    -------
    float or array
        Beam, [m]: length^(2/3) + 1 in feet for one hull (common practice, memory), 0.55 of the length for a multihull, if that is more (own
        estimate).

    Examples
    --------
    >>> round(float(usual_beam(boat_length=9.144)), 2)
    3.25
    """
    one_hull = FOOT * (np.cbrt(np.square(np.divide(boat_length, FOOT))) + 1.0)
    multihull = np.maximum(np.multiply(boat_length, MULTIHULL_BEAM_SHARE), one_hull)
    return np.where(np.equal(boat_form, MULTIHULL), multihull, one_hull)[()]


def usual_draught(*, boat_length: Array, boat_form: Codes = MOTOR) -> Array:
    """Draught of a boat of usual shape, for where no draught was given.

    Parameters
    ----------
    boat_length : float or array
        Length over all, [m]; > 0.
    boat_form : int or array of int
        Place in ``BOAT_FORMS``.

    Returns
    -------
    float or array
        Draught, [m]: 0.10 (motor, multihull) or 0.18 (sail) of the length. An own estimate.

    Examples
    --------
    >>> round(float(usual_draught(boat_length=10.0, boat_form=1)), 9)
    1.8
    """
    return USUAL_DRAUGHT_SHARE[boat_form] * boat_length


def beam_or_usual(*, beam: Array | None, boat_length: Array, boat_form: Codes = MOTOR) -> Array:
    """Beam where it was given, else `usual_beam`.

    Parameters
    ----------
    beam : float or array or None
        Greatest beam, [m]; None or nan: not given.
    boat_length, boat_form
        As for `usual_beam`.

    Returns
    -------
    float or array
        Beam, [m].

    Examples
    --------
    >>> float(beam_or_usual(beam=3.0, boat_length=9.0))
    3.0
    """
    usual = usual_beam(boat_length=boat_length, boat_form=boat_form)
    return usual if beam is None else np.where(np.isnan(beam), usual, beam)[()]


def draught_or_usual(*, draught: Array | None, boat_length: Array, boat_form: Codes = MOTOR) -> Array:
    """Draught where it was given, else `usual_draught`.

    Parameters
    ----------
    draught : float or array or None
        Draught, [m]; None or nan: not given.
    boat_length, boat_form
        As for `usual_draught`.

    Returns
    -------
    float or array
        Draught, [m].

    Examples
    --------
    >>> float(draught_or_usual(draught=1.5, boat_length=9.0))
    1.5
    """
    usual = usual_draught(boat_length=boat_length, boat_form=boat_form)
    return usual if draught is None else np.where(np.isnan(draught), usual, draught)[()]


def frontal_area(*, boat_length: Array, beam: Array | None = None, boat_form: Codes = MOTOR) -> Array:
    """Area that a boat shows to a wind from ahead: hull, house, mast and rigging.

    Parameters
    ----------
    boat_length : float or array
        Length over all, [m]; > 0.
    beam : float or array, optional
        Greatest beam, [m]; > 0; not given or nan: `usual_beam`.
    boat_form : int or array of int
        Place in ``BOAT_FORMS``.

    Returns
    -------
    float or array
        Area, [m²]: 0.30 (motor) or 0.25 (sail, multihull) of length × beam. An own estimate, a third either way.

    Examples
    --------
    >>> round(float(frontal_area(boat_length=10.0, beam=3.2, boat_form=1)), 9)
    8.0
    """
    return FRONTAL_AREA_SHARE[boat_form] * boat_length * beam_or_usual(beam=beam, boat_length=boat_length, boat_form=boat_form)
