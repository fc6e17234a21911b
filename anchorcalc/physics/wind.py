"""What wind and stream put on the rode: the published design load, which strength and size go by, and the steady drag alone.

The design load is a convention for sizing that includes surge and yaw: several times the steady drag. Neither knows of seas.
"""

import numpy as np

from anchorcalc.physics.arrays import Array
from anchorcalc.physics.boat_shape import frontal_area, usual_beam
from anchorcalc.physics.codes import MOTOR, MULTIHULL, Codes
from anchorcalc.physics.constants import AIR_DENSITY
from anchorcalc.physics.current import current_drag
from anchorcalc.physics.lookup import Rows, row_at_or_above
from anchorcalc.physics.tables.design_load import BEAMS_MOTOR, BEAMS_SAIL, LENGTHS, WORKING_LOADS, WORKING_WIND
from anchorcalc.physics.tables.drag import WIND_DRAG


def wind_pressure(*, wind: Array, air_density: Array = AIR_DENSITY) -> Array:
    """Dynamic pressure of the wind, ½·air_density·wind².

    Parameters
    ----------
    wind : float or array
        Speed of the wind, [m/s]; >= 0.
    air_density : float or array
        Density of the air, [kg/m³]; 1.225 in the standard atmosphere, 5 % more at 0 °C.

    Returns
    -------
    float or array
        Pressure, [Pa].

    Notes
    -----
    General fluid mechanics; checked against a reference table of wind load by wind speed.

    Examples
    --------
    >>> round(wind_pressure(wind=10.0, air_density=1.2), 9)
    60.0
    """
    return 0.5 * air_density * wind * wind


def wind_drag(*, wind: Array, area: Array, drag_coefficient: Array, air_density: Array = AIR_DENSITY) -> Array:
    """Steady push of the wind on an area.

    Parameters
    ----------
    wind : float or array
        Speed of the wind, [m/s]; >= 0.
    area : float or array
        Area across the wind, [m²]; >= 0.
    drag_coefficient : float or array
        Force over pressure × area, [-].
    air_density : float or array
        Density of the air, [kg/m³].

    Returns
    -------
    float or array
        Force, [N].

    Notes
    -----
    Source of the coefficient for a sailing boat bow to wind (0.7): ``sources.WIND_DRAG``. No yaw, no gusts beyond `wind`.

    Examples
    --------
    >>> round(float(wind_drag(wind=15.0, area=6.0, drag_coefficient=0.7)))
    579
    """
    return wind_pressure(wind=wind, air_density=air_density) * area * drag_coefficient


def load_steady(
    *,
    boat_length: Array,
    wind: Array,
    beam: Array | None = None,
    boat_form: Codes = MOTOR,
    current: Array = 0.0,
    draught: Array | None = None,
) -> Array:
    """Steady drag of wind and stream on a boat that lies bow on.

    Parameters
    ----------
    boat_length : float or array
        Length over all, [m]; > 0.
    wind : float or array
        Speed of the wind, [m/s]; >= 0.
    beam, draught : float or array, optional
        Greatest beam and draught, [m]; > 0; not given or nan: `usual_beam`, ``usual_draught``.
    boat_form : int or array of int
        Place in ``BOAT_FORMS``.
    current : float or array
        Speed of the stream, [m/s]; >= 0; taken to set the same way as the wind blows, the worst case.

    Returns
    -------
    float or array
        Force, [N]. The coefficient and the area leave it uncertain by half, either way.

    Notes
    -----
    Source: ``sources.WIND_DRAG``, ``sources.FRONTAL_AREA``, ``sources.UFC_CURRENT``.

    Examples
    --------
    >>> round(float(load_steady(boat_length=10.0, beam=3.2, wind=15.0, boat_form=1)), 1)
    771.8
    """
    area = frontal_area(boat_length=boat_length, beam=beam, boat_form=boat_form)
    drag = wind_drag(wind=wind, area=area, drag_coefficient=WIND_DRAG[boat_form])
    return drag + current_drag(boat_length=boat_length, beam=beam, current=current, boat_form=boat_form, draught=draught)


def _row_load(*, sizes: Rows, size: Array, power: float) -> Array:
    """Load of the row at or above a size; beyond the last row it grows from that row's load with a power of the size."""
    row = np.minimum(row_at_or_above(sizes=sizes, size=size), len(sizes) - 1)
    growth: Array = np.power(np.maximum(np.divide(size, sizes[-1]), 1.0), power)
    return WORKING_LOADS[row] * growth


def working_load_of_boat(*, boat_length: Array, beam: Array | None = None, boat_form: Codes = MOTOR) -> Array:
    """Design load of a boat at the wind that the published table is drawn for (30 knots).

    Parameters
    ----------
    boat_length : float or array
        Length over all, [m]; > 0. The table runs from 3.048 m (10 ft) to 18.288 m (60 ft).
    beam : float or array, optional
        Greatest beam, [m]; > 0; not given or nan: the length alone counts (of a multihull, `usual_beam`).
    boat_form : int or array of int
        Place in ``BOAT_FORMS``.

    Returns
    -------
    float or array
        Load, [N]; never falls with length or beam.

    Notes
    -----
    Source: ``sources.ABYC_H40``. Length and beam are each entered upward, as in the source: the first row that is not less; the
    greater load counts. Shorter boats have the first row's load. Beyond the last row the load grows from it with the square
    of the length (boats of one shape), and in proportion to the beam (wider, no higher). A multihull is entered in the beams
    for sailing boats, the narrower, so with the greater load. `load_is_extrapolated` tells these.

    Examples
    --------
    >>> round(float(working_load_of_boat(boat_length=32 * 0.3048, beam=12 * 0.3048)) / 4.4482216152605)
    900
    """
    by_length = _row_load(sizes=LENGTHS, size=boat_length, power=2.0)
    multihull = np.equal(boat_form, MULTIHULL)
    if beam is None and not np.any(multihull):
        return by_length
    given = np.nan if beam is None else beam
    width = np.where(np.isnan(given) & multihull, usual_beam(boat_length=boat_length, boat_form=boat_form), given)
    width = np.fmax(width, 0.0)  # not given: the first row, which never counts before the length's
    of_motor, of_sail = (_row_load(sizes=beams, size=width, power=1.0) for beams in (BEAMS_MOTOR, BEAMS_SAIL))
    return np.maximum(by_length, np.where(np.equal(boat_form, MOTOR), of_motor, of_sail))


def load_standard(
    *,
    boat_length: Array,
    wind: Array,
    beam: Array | None = None,
    boat_form: Codes = MOTOR,
    current: Array = 0.0,
    draught: Array | None = None,
) -> Array:
    """Load that strength and size of ground tackle go by: the published design load × wind², and the drag of the stream.

    Parameters
    ----------
    boat_length : float or array
        Length over all, [m]; > 0.
    wind : float or array
        The strongest wind to expect at the boat, gusts included, [m/s]; >= 0.
    beam, draught : float or array, optional
        Greatest beam and draught, [m]; > 0; see `working_load_of_boat`, ``usual_draught``.
    boat_form : int or array of int
        Place in ``BOAT_FORMS``.
    current : float or array
        Speed of the stream, [m/s]; >= 0; taken to set the same way as the wind blows.

    Returns
    -------
    float or array
        Load, [N].

    Notes
    -----
    Source: ``sources.ABYC_H40``, 30-knot column, with the square of the wind; ``sources.UFC_CURRENT``. The storm column of the
    table (42 knots) is printed 2 % above this, being twice the 30-knot column, which stands for 42.4 knots.

    Examples
    --------
    >>> knot, pound_force = 1852 / 3600, 4.4482216152605
    >>> round(float(load_standard(boat_length=30 * 0.3048, wind=15 * knot)) / pound_force, 6)
    175.0
    """
    working = working_load_of_boat(boat_length=boat_length, beam=beam, boat_form=boat_form)
    stream = current_drag(boat_length=boat_length, beam=beam, current=current, boat_form=boat_form, draught=draught)
    return working * np.square(np.divide(wind, WORKING_WIND)) + stream


def wind_equivalent(
    *,
    load: Array,
    boat_length: Array,
    beam: Array | None = None,
    boat_form: Codes = MOTOR,
    current: Array = 0.0,
    draught: Array | None = None,
) -> Array:
    """Wind whose standard load is this load.

    Parameters
    ----------
    load : float or array
        Load, [N]; >= 0.
    boat_length, beam, boat_form, current, draught
        As for `load_standard`.

    Returns
    -------
    float or array
        Speed of the wind, [m/s]; 0 where the stream alone makes the load.

    Notes
    -----
    Inverse of `load_standard`.

    Examples
    --------
    >>> knot, pound_force = 1852 / 3600, 4.4482216152605
    >>> round(float(wind_equivalent(load=350 * pound_force, boat_length=30 * 0.3048)) / knot, 1)
    21.2
    """
    stream = current_drag(boat_length=boat_length, beam=beam, current=current, boat_form=boat_form, draught=draught)
    working = working_load_of_boat(boat_length=boat_length, beam=beam, boat_form=boat_form)
    return WORKING_WIND * np.sqrt(np.maximum(load - stream, 0.0) / working)


def load_is_extrapolated(*, boat_length: Array, beam: Array | None = None, boat_form: Codes = MOTOR) -> Array:
    """Whether `load_standard` of a boat lies outside the published table.

    Parameters
    ----------
    boat_length, beam, boat_form
        As for `working_load_of_boat`.

    Returns
    -------
    bool or array of bool
        True for lengths under 10 ft or over 60 ft, for beams beyond the last row, and for every multihull.

    Examples
    --------
    >>> bool(load_is_extrapolated(boat_length=9.144)), bool(load_is_extrapolated(boat_length=9.144, boat_form=2))
    (False, True)
    """
    near = 1e-9
    widest = np.where(np.equal(boat_form, MOTOR), BEAMS_MOTOR[-1], BEAMS_SAIL[-1])[()]
    wide = np.greater(np.nan if beam is None else beam, widest * (1.0 + near))
    length_outside = np.less(boat_length, LENGTHS[0] * (1.0 - near)) | np.greater(boat_length, LENGTHS[-1] * (1.0 + near))
    outside: Array = length_outside | wide | np.equal(boat_form, MULTIHULL)
    return outside
