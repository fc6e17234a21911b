"""What chain, line and anchor weigh, in air and in water.

Tables of chain differ by 5 to 15 %, so there are two masses: the lesser is the safe side for how a rode hangs (a light chain lifts
sooner), the greater for what must be hauled.
"""

import numpy as np

from anchorcalc.physics.arrays import Array
from anchorcalc.physics.codes import NYLON_3_STRAND, Codes
from anchorcalc.physics.constants import GRAVITY, SEA_WATER_DENSITY, STEEL_DENSITY
from anchorcalc.physics.lookup import Rows
from anchorcalc.physics.tables import chain, frozen, rope

# Beyond the last row mass goes on with the square of the size; no chain or rope of a boat is thicker than this, [m].
_THICKEST = 0.2


def _squares(sizes: Rows) -> Rows:
    return frozen([0.0, *np.square(sizes), _THICKEST**2])


def _masses(sizes: Rows, masses: Rows) -> Rows:
    return frozen([0.0, *masses, masses[-1] * (_THICKEST / sizes[-1]) ** 2])


# The inch table prints a metric size beside each inch size: 1/4 in is the chain of 7 mm wire, and weighs as much.
_INCH_MASSES = np.interp(np.square(chain.INCH_SIZES_AS_METRIC), np.square(chain.MASS_SIZES), chain.MASSES_HIGH)
_ALL_SIZES, _ORDER = np.unique(np.concatenate([chain.MASS_SIZES, chain.INCH_SIZES]), return_index=True)
_ALL_MASSES = np.concatenate([chain.MASSES_HIGH, _INCH_MASSES])[_ORDER]

_LOW = (_squares(chain.MASS_SIZES), _masses(chain.MASS_SIZES, chain.MASSES_LOW))
_HIGH = (_squares(_ALL_SIZES), _masses(_ALL_SIZES, _ALL_MASSES))
_NYLON = (_squares(rope.SIZES), _masses(rope.SIZES, rope.MASSES))


def chain_mass_low(*, chain_size: Array) -> Array:
    """Mass of a metre of short-link chain by the lightest of the tables.

    Parameters
    ----------
    chain_size : float or array
        Diameter of the wire of a link, [m]; >= 0. The tables run from 6 to 16 mm; outside, mass goes with the square of the size.

    Returns
    -------
    float or array
        Mass, [kg/m]; between rows straight in the square of the size.

    Notes
    -----
    Source: ``sources.CHAIN_MASS``.

    Examples
    --------
    >>> float(chain_mass_low(chain_size=0.008))
    1.4
    """
    mass: Array = np.interp(np.square(chain_size), *_LOW)
    return mass


def chain_mass_high(*, chain_size: Array) -> Array:
    """Mass of a metre of short-link chain by the heaviest of the tables.

    Parameters
    ----------
    chain_size : float or array
        Diameter of the wire of a link, [m]; >= 0. The tables run from 6 to 16 mm; outside, mass goes with the square of the size.

    Returns
    -------
    float or array
        Mass, [kg/m]; between rows straight in the square of the size. An inch size weighs what the metric size printed beside it does.

    Notes
    -----
    Source: ``sources.CHAIN_MASS``.

    Examples
    --------
    >>> float(chain_mass_high(chain_size=0.008))
    1.45
    """
    mass: Array = np.interp(np.square(chain_size), *_HIGH)
    return mass


def line_mass(*, line_size: Array, line_material: Codes = NYLON_3_STRAND) -> Array:
    """Mass of a metre of dry rope.

    Parameters
    ----------
    line_size : float or array
        Diameter, [m]; >= 0. The table runs from 1/4 to 1 1/8 in; outside, mass goes with the square of the size.
    line_material : int or array of int
        Place in ``LINE_MATERIALS``; of other materials than nylon the same volume is taken.

    Returns
    -------
    float or array
        Mass, [kg/m]; between rows straight in the square of the size.

    Notes
    -----
    Source: ``sources.NYLON``.

    Examples
    --------
    >>> round(float(line_mass(line_size=0.0127)), 4)
    0.0967
    """
    of_nylon: Array = rope.DENSITIES[line_material] / rope.DENSITIES[NYLON_3_STRAND]
    return of_nylon * np.interp(np.square(line_size), *_NYLON)


def line_density(*, line_material: Codes = NYLON_3_STRAND) -> Array:
    """Density of what a rope is made of.

    Parameters
    ----------
    line_material : int or array of int
        Place in ``LINE_MATERIALS``.

    Returns
    -------
    float or array
        Density, [kg/m³]; polypropylene floats.

    Notes
    -----
    General tables, from memory.

    Examples
    --------
    >>> float(line_density(line_material=3))
    910.0
    """
    return rope.DENSITIES[line_material]


def weight_in_air(*, mass: Array) -> Array:
    """Weight of a mass.

    Parameters
    ----------
    mass : float or array
        Mass, [kg], or mass of a metre, [kg/m].

    Returns
    -------
    float or array
        Weight, [N] or [N/m].

    Examples
    --------
    >>> weight_in_air(mass=1.0)
    9.80665
    """
    return mass * GRAVITY


def weight_in_water(*, mass: Array, density: Array = STEEL_DENSITY, water_density: Array = SEA_WATER_DENSITY) -> Array:
    """Weight of a mass less the weight of the water that it displaces.

    Parameters
    ----------
    mass : float or array
        Mass, [kg], or mass of a metre, [kg/m].
    density : float or array
        Density of the thing, [kg/m³].
    water_density : float or array
        Density of the water, [kg/m³]; 1000 for fresh water.

    Returns
    -------
    float or array
        Weight, [N] or [N/m]; below zero where it floats. Steel in sea water keeps 0.87 of its weight.

    Notes
    -----
    Archimedes.

    Examples
    --------
    >>> round(float(weight_in_water(mass=1.40)), 2)
    11.94
    """
    return mass * GRAVITY * (1.0 - np.divide(water_density, density))


def rode_weights(*, chain_size: Array | None, line_size: Array | None, line_material: Codes = NYLON_3_STRAND) -> tuple[Array, Array]:
    """Weight in sea water of a metre of chain, by the lightest table, and of a metre of line.

    Parameters
    ----------
    chain_size, line_size : float or array or None
        Diameter of the wire of a link, of the rope, [m]; None: there is none, so it weighs nothing.
    line_material : int or array of int
        Place in ``LINE_MATERIALS``.

    Returns
    -------
    tuple of float or array
        Chain, line, [N/m]; below zero where the line floats.

    Notes
    -----
    Source: ``sources.CHAIN_MASS``, ``sources.NYLON``. The lightest chain lifts first, which is the safe side for how a rode pulls.

    Examples
    --------
    >>> [round(float(weight), 2) for weight in rode_weights(chain_size=0.008, line_size=0.0127)]
    [11.94, 0.1]
    """
    mass = 0.0 if chain_size is None else chain_mass_low(chain_size=chain_size)
    of_line = 0.0 if line_size is None else line_mass(line_size=line_size, line_material=line_material)
    return weight_in_water(mass=mass), weight_in_water(mass=of_line, density=line_density(line_material=line_material))
