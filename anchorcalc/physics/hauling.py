"""What must be pulled to get the anchor up: bringing the boat up to it, and the anchor off the bottom. Breaking it out asks more."""

import numpy as np

from anchorcalc.physics.arrays import Array
from anchorcalc.physics.constants import SEA_WATER_DENSITY
from anchorcalc.physics.tables.hauling import BY_HAND, DEEP_FROM, DEEP_PULL, DUTY_BY_SHIP_GRADE, HAWSE_EFFICIENCY, SHORT_OVER_CONTINUOUS
from anchorcalc.physics.weights import weight_in_air, weight_in_water


def rode_weight_hanging(
    *,
    depth: Array,
    bow_height: Array,
    chain: Array,
    chain_mass: Array,
    line_mass: Array = 0.0,
    line_density: Array = 1140.0,
    water_density: Array = SEA_WATER_DENSITY,
) -> Array:
    """Weight of the rode that hangs straight from the roller to the seabed: in water what is in it, in air what is above.

    Parameters
    ----------
    depth : float or array
        Depth of the water, [m]; > 0.
    bow_height : float or array
        Roller above the water, [m]; >= 0.
    chain : float or array
        Length of chain at the anchor, [m]; >= 0; ``np.inf`` for an all-chain rode.
    chain_mass, line_mass : float or array
        Mass of a metre of chain, of line, [kg/m]; >= 0.
    line_density : float or array
        Density of the line, [kg/m³].
    water_density : float or array
        Density of the water, [kg/m³].

    Returns
    -------
    float or array
        Weight, [N]. A line that floats counts as weightless in the water.

    Notes
    -----
    Archimedes.

    Examples
    --------
    >>> round(float(rode_weight_hanging(depth=10.0, bow_height=0.0, chain=30.0, chain_mass=1.40)), 1)
    119.4
    """
    chain_in_water = np.minimum(chain, depth)
    chain_in_air = np.clip(np.subtract(chain, depth), 0.0, bow_height)
    line_in_water = np.maximum(weight_in_water(mass=line_mass, density=line_density, water_density=water_density), 0.0)
    of_chain = chain_in_water * weight_in_water(mass=chain_mass, water_density=water_density) + chain_in_air * weight_in_air(mass=chain_mass)
    return of_chain + (depth - chain_in_water) * line_in_water + (bow_height - chain_in_air) * weight_in_air(mass=line_mass)


def hanging_load(*, rode_weight: Array, anchor_mass: Array, water_density: Array = SEA_WATER_DENSITY) -> Array:
    """Load as the anchor leaves the bottom: the rode that hangs and the anchor in water.

    Parameters
    ----------
    rode_weight : float or array
        Weight of the hanging rode, [N]; see `rode_weight_hanging`.
    anchor_mass : float or array
        Mass of the anchor, taken as steel, [kg]; > 0.
    water_density : float or array
        Density of the water, [kg/m³].

    Returns
    -------
    float or array
        Load, [N]. Mud in the flukes and friction at the roller come on top.

    Notes
    -----
    Archimedes.

    Examples
    --------
    >>> rode_weight = rode_weight_hanging(depth=10.0, bow_height=0.0, chain=30.0, chain_mass=1.40)
    >>> round(float(hanging_load(rode_weight=rode_weight, anchor_mass=15.0)), 1)
    247.3
    """
    return rode_weight + weight_in_water(mass=anchor_mass, water_density=water_density)


def hauling_load(*, load_steady: Array, rode_weight: Array) -> Array:
    """Pull at the roller to bring the boat up to her anchor.

    Parameters
    ----------
    load_steady : float or array
        Steady drag of wind and stream, [N]; >= 0.
    rode_weight : float or array
        Weight of the rode between roller and seabed, hanging straight, [N]; see `rode_weight_hanging`.

    Returns
    -------
    float or array
        Load, [N].

    Notes
    -----
    Statics of a hanging chain: the tension at the top is the horizontal pull and the weight of the height's worth of chain.

    Examples
    --------
    >>> hauling_load(load_steady=800.0, rode_weight=120.0)
    920.0
    """
    return load_steady + rode_weight


def continuous_duty_pull(*, chain_size: Array, depth: Array = 0.0, ship_grade: int = 1) -> Array:
    """Pull that a windlass should keep up, by the size of the chain.

    Parameters
    ----------
    chain_size : float or array
        Diameter of the wire of a link, [m]; >= 0.
    depth : float or array
        Depth of the water, [m]; counts beyond 82.5 m.
    ship_grade : int
        Grade of ship's chain: 1, 2 or 3; 1 is the mildest and asks least.

    Returns
    -------
    float or array
        Pull, [N].

    Notes
    -----
    Source: ``sources.WINDLASS``; a rule for ships. The 37.5·d² N of grade 1 is from memory.

    Examples
    --------
    >>> round(float(continuous_duty_pull(chain_size=0.022)))
    18150
    """
    by_metre = DUTY_BY_SHIP_GRADE[ship_grade - 1] + DEEP_PULL * np.maximum(np.subtract(depth, DEEP_FROM), 0.0)
    pull: Array = by_metre * np.square(chain_size)
    return pull


def windlass_pull(*, hanging_load: Array, hauling_load: Array = 0.0, chain_size: Array = 0.0, depth: Array = 0.0) -> Array:
    """Pull to look for in a windlass: what it should give for two minutes.

    Parameters
    ----------
    hanging_load : float or array
        Load as the anchor leaves the bottom, [N]; > 0.
    hauling_load : float or array
        Pull to bring the boat up to the anchor, [N]; 0 where it is not known.
    chain_size : float or array
        Diameter of the wire of a link, [m]; 0 where there is no chain.
    depth : float or array
        Depth of the water, [m].

    Returns
    -------
    float or array
        Pull, [N]: 1.5 times the continuous pull, which is the greater of the two loads over a hawse efficiency of 70 %, or
        the rule by the size of the chain if that is more. Breaking out a well-set anchor asks more: let the boat do it.

    Notes
    -----
    Source: ``sources.WINDLASS``; a rule for ships.

    Examples
    --------
    >>> round(float(windlass_pull(hanging_load=700.0)), 6)
    1500.0
    """
    carried = np.maximum(hanging_load, hauling_load) / HAWSE_EFFICIENCY
    return SHORT_OVER_CONTINUOUS * np.maximum(carried, continuous_duty_pull(chain_size=chain_size, depth=depth))


def is_work_for_hands(*, load: Array) -> Array:
    """Whether a person should haul a load by hand.

    Parameters
    ----------
    load : float or array
        The greatest load that comes while weighing, breaking out aside, [N].

    Returns
    -------
    bool or array of bool
        True up to the weight of 23 kg.

    Notes
    -----
    Source: ``sources.MANUAL_HANDLING`` (memory): a lift in the best posture, which a wet deck is not.

    Examples
    --------
    >>> bool(is_work_for_hands(load=200.0)), bool(is_work_for_hands(load=250.0))
    (True, False)
    """
    return np.less_equal(load, BY_HAND)
