"""How hard an engine pulls a boat that is held, ahead and astern."""

from typing import NamedTuple

import numpy as np

from anchorcalc.physics.arrays import Array
from anchorcalc.physics.constants import FOOT, HORSEPOWER
from anchorcalc.physics.tables.engine import (
    ASTERN,
    MARINERS_HIGH,
    MARINERS_LOW,
    PROPELLER_POWER,
    PULL_OF_PROPELLER,
    PULL_PER_HORSEPOWER_HIGH,
    PULL_PER_HORSEPOWER_LOW,
)


class PullBand(NamedTuple):
    """Least and most pull that the published rules give, [N]."""

    low: Array
    high: Array


def bollard_pull_of_propeller(*, engine_power: Array, propeller_diameter: Array) -> Array:
    """Pull full ahead of an open three-bladed propeller, the boat held.

    Parameters
    ----------
    engine_power : float or array
        Shaft power, [W]; > 0.
    propeller_diameter : float or array
        Diameter of the propeller, [m]; > 0.

    Returns
    -------
    float or array
        Pull, [N]; good to 30 %.

    Notes
    -----
    Source: ``sources.BOLLARD_PULL``, 62.72·(power·diameter)^0.67 lbf, in horsepower and feet.

    Examples
    --------
    >>> horsepower, inch, pound_force = 745.6998715822702, 0.0254, 4.4482216152605
    >>> round(float(bollard_pull_of_propeller(engine_power=20 * horsepower, propeller_diameter=14 * inch)) / pound_force)
    518
    """
    pull: Array = PULL_OF_PROPELLER * np.power(np.divide(engine_power, HORSEPOWER) * np.divide(propeller_diameter, FOOT), PROPELLER_POWER)
    return pull


def bollard_pull_band(*, engine_power: Array, propeller_diameter: Array | None = None) -> PullBand:
    """Least and most pull full ahead that the published rules give, the boat held.

    Parameters
    ----------
    engine_power : float or array
        Shaft power, [W]; > 0.
    propeller_diameter : float or array, optional
        Diameter of the propeller, [m]; > 0; not given or nan: the rules by power alone.

    Returns
    -------
    PullBand
        low, high: [N].

    Notes
    -----
    Source: ``sources.BOLLARD_PULL``: 20 to 30 lbf a horsepower, 9.9 to 12.6 kgf a horsepower, and the propeller's formula.

    Examples
    --------
    >>> band = bollard_pull_band(engine_power=30 * 745.6998715822702)
    >>> round(float(band.low) / 4.4482216152605), round(float(band.high) / 4.4482216152605)
    (600, 900)
    """
    power = np.divide(engine_power, HORSEPOWER)
    low, high = min(PULL_PER_HORSEPOWER_LOW, MARINERS_LOW) * power, max(PULL_PER_HORSEPOWER_HIGH, MARINERS_HIGH) * power
    if propeller_diameter is None:
        return PullBand(low, high)
    of_propeller = bollard_pull_of_propeller(engine_power=engine_power, propeller_diameter=propeller_diameter)
    return PullBand(np.fmin(low, of_propeller), np.fmax(high, of_propeller))


def pull_astern(*, engine_power: Array, propeller_diameter: Array | None = None) -> Array:
    """Pull astern that an engine gives at the least: half of the least published pull ahead.

    Parameters
    ----------
    engine_power, propeller_diameter
        As for `bollard_pull_band`.

    Returns
    -------
    float or array
        Pull, [N].

    Notes
    -----
    Source: ``sources.BOLLARD_PULL``; the half (of a half to two thirds) is from memory.

    Examples
    --------
    >>> round(float(pull_astern(engine_power=30 * 745.6998715822702)) / 4.4482216152605)
    300
    """
    return ASTERN * bollard_pull_band(engine_power=engine_power, propeller_diameter=propeller_diameter).low
