"""Drag of a stream on a hull that lies end on to it: form, skin friction and a locked screw.

Formulas for ships at their moorings, the only published ones; for a small boat they are uncertain by half, either way.
"""

import numpy as np

from anchorcalc.physics.arrays import Array
from anchorcalc.physics.boat_shape import beam_or_usual, draught_or_usual
from anchorcalc.physics.codes import MOTOR, Codes
from anchorcalc.physics.constants import SEA_WATER_DENSITY, SEA_WATER_VISCOSITY
from anchorcalc.physics.tables.drag import CURRENT_FORM_DRAG, HULL_FULLNESS, SCREW_BLADE_SHARE, SCREW_DIAMETER_SHARE, SCREW_DRAG

# The friction line runs off to infinity at a Reynolds number of 100; ships and boats in a stream that matters are above this.
LEAST_REYNOLDS = 1e5


def current_form_drag(*, beam: Array, draught: Array, current: Array, water_density: Array = SEA_WATER_DENSITY) -> Array:
    """Form drag of a stream from ahead, ½·water_density·current²·beam·draught·0.1.

    Parameters
    ----------
    beam, draught : float or array
        Greatest beam and draught, [m]; > 0.
    current : float or array
        Speed of the stream, [m/s]; >= 0.
    water_density : float or array
        Density of the water, [kg/m³].

    Returns
    -------
    float or array
        Force, [N].

    Notes
    -----
    Source: ``sources.UFC_CURRENT``, eq. (16).

    Examples
    --------
    >>> round(current_form_drag(beam=3.5, draught=1.0, current=1.0), 1)
    179.4
    """
    return 0.5 * water_density * current * current * beam * draught * CURRENT_FORM_DRAG


def friction_coefficient(*, reynolds: Array) -> Array:
    """Skin friction of a smooth hull, 0.075/(log10 R − 2)².

    Parameters
    ----------
    reynolds : float or array
        Reynolds number by waterline and stream, [-]; below 1e5 it is taken as 1e5.

    Returns
    -------
    float or array
        Coefficient on the wetted surface, [-].

    Notes
    -----
    Source: ``sources.UFC_CURRENT``, eq. (19), the ITTC 1957 line.

    Examples
    --------
    >>> round(float(friction_coefficient(reynolds=1e7)), 6)
    0.003
    """
    return 0.075 / np.square(np.log10(np.maximum(reynolds, LEAST_REYNOLDS)) - 2.0)


def wetted_surface(*, waterline: Array, draught: Array, displaced_volume: Array) -> Array:
    """Wetted surface of a hull, 1.7·draught·waterline + displaced_volume/draught.

    Parameters
    ----------
    waterline, draught : float or array
        Length of the waterline and draught, [m]; > 0.
    displaced_volume : float or array
        Volume of water displaced, [m³]; > 0.

    Returns
    -------
    float or array
        Area, [m²].

    Notes
    -----
    Source: ``sources.UFC_CURRENT``, eq. (18).

    Examples
    --------
    >>> round(wetted_surface(waterline=9.0, draught=0.9, displaced_volume=50.0 / 10.05), 2)
    19.3
    """
    return 1.7 * draught * waterline + displaced_volume / draught


def current_drag(
    *,
    boat_length: Array,
    current: Array,
    beam: Array | None = None,
    boat_form: Codes = MOTOR,
    draught: Array | None = None,
    water_density: Array = SEA_WATER_DENSITY,
) -> Array:
    """Drag of a stream from ahead: form, friction and a locked screw.

    Parameters
    ----------
    boat_length : float or array
        Length over all, taken for the waterline, [m]; > 0.
    current : float or array
        Speed of the stream, [m/s]; >= 0.
    beam, draught : float or array, optional
        Greatest beam and draught, [m]; > 0; not given or nan: ``usual_beam``, ``usual_draught``.
    boat_form : int or array of int
        Place in ``BOAT_FORMS``.
    water_density : float or array
        Density of the water, [kg/m³].

    Returns
    -------
    float or array
        Force, [N]; uncertain by half, either way.

    Notes
    -----
    Source: ``sources.UFC_CURRENT``. Own estimates: the hull fills 0.4 of length × beam × draught; the screw is 0.04 of the length
    across and half of its disc is blade, with a drag coefficient of 1.

    Examples
    --------
    >>> round(float(current_drag(boat_length=10.0, beam=3.2, draught=1.5, current=1.0)))
    339
    """
    if not np.any(current):
        return 0.0 * current  # most anchorages: spares the logarithm
    beam = beam_or_usual(beam=beam, boat_length=boat_length, boat_form=boat_form)
    draught = draught_or_usual(draught=draught, boat_length=boat_length, boat_form=boat_form)
    pressure = 0.5 * water_density * np.square(current)
    hull = wetted_surface(waterline=boat_length, draught=draught, displaced_volume=HULL_FULLNESS * boat_length * beam * draught)
    friction = pressure * hull * friction_coefficient(reynolds=np.multiply(current, boat_length) / SEA_WATER_VISCOSITY)
    screw = pressure * SCREW_DRAG * SCREW_BLADE_SHARE * np.pi / 4.0 * np.square(np.multiply(boat_length, SCREW_DIAMETER_SHARE))
    return current_form_drag(beam=beam, draught=draught, current=current, water_density=water_density) + friction + screw
