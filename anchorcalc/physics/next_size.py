"""The smallest size sold of chain, line and shackle whose working load meets a load, and what lies outside the tables."""

import numpy as np

from anchorcalc.physics.arrays import Array
from anchorcalc.physics.codes import G30, NYLON_3_STRAND, Codes
from anchorcalc.physics.lookup import SAME_SIZE, Rows, least_size, row_at_or_above
from anchorcalc.physics.strength import INCH_CHAIN_LOADS, METRIC_CHAIN_LOADS, line_working_load, shackle_working_load
from anchorcalc.physics.tables import chain, rope, shackle


def chain_size_for(*, load: Array, chain_grade: Codes = G30, inch: Array = False) -> Array:
    """Smallest chain of a grade whose working load meets a load.

    Parameters
    ----------
    load : float or array
        Load to meet, [N].
    chain_grade : int or array of int
        Place in ``CHAIN_GRADES``.
    inch : bool or array of bool
        Whether to choose among inch sizes (1/4 to 5/8 in) instead of metric ones (6 to 16 mm).

    Returns
    -------
    float or array
        Diameter of the wire, [m]; nan where no size in the table does.

    Notes
    -----
    Inverse of ``chain_working_load``.

    Examples
    --------
    >>> float(chain_size_for(load=9000.0))
    0.01
    """
    metric_size = least_size(sizes=chain.METRIC_SIZES, strengths=METRIC_CHAIN_LOADS[chain_grade], load=load)
    inch_size = least_size(sizes=chain.INCH_SIZES, strengths=INCH_CHAIN_LOADS[chain_grade], load=load)
    return np.where(inch, inch_size, metric_size)[()]


def line_size_for(*, load: Array, line_material: Codes = NYLON_3_STRAND, inch: Array = False) -> Array:
    """Smallest rope of a material whose working load meets a load.

    Parameters
    ----------
    load : float or array
        Load to meet, [N].
    line_material : int or array of int
        Place in ``LINE_MATERIALS``.
    inch : bool or array of bool
        Whether to choose among inch sizes (1/4 to 1 1/8 in) instead of metric ones (8 to 32 mm).

    Returns
    -------
    float or array
        Diameter, [m]; nan where no size in the table does.

    Notes
    -----
    Inverse of ``line_working_load``.

    Examples
    --------
    >>> float(line_size_for(load=3114.0))
    0.016
    """
    in_nylon = load / rope.STRENGTH_OF_NYLON[line_material]
    metric_size = least_size(sizes=rope.METRIC_SIZES, strengths=np.asarray(line_working_load(line_size=rope.METRIC_SIZES)), load=in_nylon)
    inch_size = least_size(sizes=rope.SIZES, strengths=rope.WORKING_LOADS, load=in_nylon)
    return np.where(inch, inch_size, metric_size)[()]


def shackle_size_for(*, load: Array, inch: Array = False) -> Array:
    """Smallest shackle whose safe load meets a load.

    Parameters
    ----------
    load : float or array
        Load to meet, [N].
    inch : bool or array of bool
        Whether to choose among inch sizes (3/16 to 2 in) instead of metric ones (5 to 50 mm).

    Returns
    -------
    float or array
        Diameter of the bow, [m]; nan where no size sold does.

    Notes
    -----
    Inverse of ``shackle_working_load``.

    Examples
    --------
    >>> float(shackle_size_for(load=9000.0))
    0.016
    """
    sizes = (shackle.METRIC_SIZES, shackle.INCH_SIZES)
    metric_size, inch_size = (least_size(sizes=size, strengths=np.asarray(shackle_working_load(shackle_size=size)), load=load) for size in sizes)
    return np.where(inch, inch_size, metric_size)[()]


def no_size_down(*, size: Array, present: Array, sizes: Rows) -> Array:
    """Size to change to, which is never thinner than the present one.

    Parameters
    ----------
    size : float or array
        Smallest size sold whose working load meets the load, [m]; nan where none does.
    present : float or array
        Size that there is, [m].
    sizes : array
        Sizes sold, rising, [m].

    Returns
    -------
    float or array
        The greater of `size` and the first size sold that is not under `present`, [m]; nan where there is none.

    Examples
    --------
    >>> float(no_size_down(size=0.008, present=0.011, sizes=chain.METRIC_SIZES))
    0.011
    """
    row = row_at_or_above(sizes=sizes, size=present)
    not_under = np.where(row < len(sizes), sizes[np.minimum(row, len(sizes) - 1)], np.nan)
    return np.maximum(size, not_under)


def chain_is_outside_table(*, chain_size: Array) -> Array:
    """Whether a chain is thinner than the first row of the tables or thicker than the last.

    Parameters
    ----------
    chain_size : float or array
        Diameter of the wire of a link, [m].

    Returns
    -------
    bool or array of bool
        True under 6 mm and over 16 mm. Under 1/4 in the grades 43, 70 and 80 have no figure at all.

    Examples
    --------
    >>> bool(chain_is_outside_table(chain_size=0.008)), bool(chain_is_outside_table(chain_size=0.02))
    (False, True)
    """
    return _outside(chain_size, least=chain.METRIC_SIZES[0], greatest=chain.METRIC_SIZES[-1])


def line_is_outside_table(*, line_size: Array) -> Array:
    """Whether a rope is thinner than the first row of the table or thicker than the last.

    Parameters
    ----------
    line_size : float or array
        Diameter, [m].

    Returns
    -------
    bool or array of bool
        True under 1/4 in and over 1 1/8 in.

    Examples
    --------
    >>> bool(line_is_outside_table(line_size=0.012)), bool(line_is_outside_table(line_size=0.04))
    (False, True)
    """
    return _outside(line_size, least=rope.SIZES[0], greatest=rope.SIZES[-1])


def _outside(size: Array, *, least: float, greatest: float) -> Array:
    return np.less(size, least * (1.0 - SAME_SIZE)) | np.greater(size, greatest * (1.0 + SAME_SIZE))
