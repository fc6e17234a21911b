"""A rode of nothing but chain under a steady load, all in closed form; assumptions as in ``catenary``."""

import numpy as np

from anchorcalc.physics.arrays import Array
from anchorcalc.physics.catenary import RodeShape
from anchorcalc.physics.hanging import LEAST_LOAD, hanging_rode, length_to_rise


def chain_shape(*, rode_out: Array, height: Array, load: Array, chain_weight: Array) -> RodeShape:
    """Pull at the anchor, chain lying, tension and reach of a rode of nothing but chain.

    Parameters
    ----------
    rode_out : float or array
        Chain outboard, roller to anchor, [m]; more than the height.
    height : float or array
        Roller above the seabed, [m]; > 0.
    load : float or array
        Horizontal pull of the boat, [N]; below 1e-6 N it is taken as 1e-6 N.
    chain_weight : float or array
        Weight of a metre of chain in water, [N/m]; >= 0.

    Returns
    -------
    RodeShape
        As ``rode_shape``; line_lying and line_floating are 0.

    Examples
    --------
    >>> shape = chain_shape(rode_out=60.0, height=11.0, load=1000.0, chain_weight=11.94)
    >>> round(float(shape.chain_lying), 2), float(shape.pull_angle)
    (15.69, 0.0)
    """
    height = np.where(rode_out > height, height, np.nan)
    load = np.maximum(load, LEAST_LOAD)
    hanging = np.minimum(rode_out, flat_pull_chain(height=height, load=load, chain_weight=chain_weight))
    ends = hanging_rode(length=hanging, rise=height, load=load, weight=chain_weight)
    flat = hanging < rode_out
    return RodeShape(
        pull_angle=np.where(flat, 0.0, np.arctan2(np.maximum(ends.low_pull, 0.0), load)),
        chain_lying=rode_out - hanging,
        bow_tension=np.hypot(load, ends.high_pull),
        reach=rode_out - hanging + ends.span,
        line_lying=0.0 * hanging,
        line_floating=0.0 * hanging,
    )


def flat_pull_chain(*, height: Array, load: Array, chain_weight: Array) -> Array:
    """Chain for which the pull at the anchor is just horizontal, with no line behind it.

    Parameters
    ----------
    height : float or array
        Roller above the seabed, [m]; > 0.
    load : float or array
        Horizontal pull of the boat, [N]; below 1e-6 N it is taken as 1e-6 N.
    chain_weight : float or array
        Weight of a metre of chain in water, [N/m]; >= 0.

    Returns
    -------
    float or array
        Length of chain, [m]; infinite for chain of no weight.

    Notes
    -----
    √(height² + 2 · height · load / chain_weight). Source: MIT course 2.019, Design of Ocean Systems, lecture 13.

    Examples
    --------
    >>> round(float(flat_pull_chain(height=11.0, load=1000.0, chain_weight=11.936)), 2)
    44.32
    """
    length: Array = length_to_rise(slope=0.0, rise=height, bend=chain_weight / np.maximum(load, LEAST_LOAD))
    return length


def flat_pull_load(*, rode_out: Array, height: Array, chain_weight: Array) -> Array:
    """Greatest load under which a rode of nothing but chain still pulls the anchor level.

    Parameters
    ----------
    rode_out : float or array
        Chain outboard, roller to anchor, [m]; more than the height.
    height : float or array
        Roller above the seabed, [m]; > 0.
    chain_weight : float or array
        Weight of a metre of chain in water, [N/m]; >= 0.

    Returns
    -------
    float or array
        Horizontal pull, [N].

    Examples
    --------
    >>> float(flat_pull_load(rode_out=312.5, height=25.0, chain_weight=2.0))
    3881.25
    """
    return chain_weight * (rode_out - height) * (rode_out + height) / (2.0 * height)
