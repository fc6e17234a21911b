"""What chain, line and shackle carry, by size and grade or material; a size between two rows counts as the weaker."""

import numpy as np

from anchorcalc.physics.arrays import Array
from anchorcalc.physics.codes import G30, NYLON_3_STRAND, Codes
from anchorcalc.physics.lookup import SAME_SIZE, Places, Rows, row_at_or_above, row_at_or_below, value_at_or_below
from anchorcalc.physics.tables import chain, frozen, rope, shackle


def _carried_down(values: Rows) -> Rows:
    """Rows without a figure get that of the row before them, the weaker."""
    place = np.maximum.accumulate(np.where(np.isnan(values), 0, np.arange(len(values))))
    return np.asarray(values[place], dtype=np.float64)


def _as_metric(loads: Rows) -> Rows:
    """Working loads of the inch table at all metric sizes, from those that it prints beside some of them."""
    return np.asarray(value_at_or_below(sizes=chain.INCH_SIZES_AS_METRIC, values=_carried_down(loads), size=chain.METRIC_SIZES))


def _metric_g30() -> Rows:
    """Grade 30 at the metric sizes: of a quarter of the breaking load and the inch table's figure for just that size, the lesser."""
    quarter = np.fmin(chain.BREAKING_G30_FIRST, chain.BREAKING_G30_SECOND) / chain.BREAKING_OVER_WORKING[0]
    printed = np.isin(chain.METRIC_SIZES, chain.INCH_SIZES_AS_METRIC)
    return np.asarray(np.fmin(quarter, np.where(printed, _as_metric(chain.AS_METRIC_G30), np.nan)))


def _metric_g40(g30: Rows) -> Rows:
    """Grade 40 at the metric sizes: a quarter of the breaking load, that of the row before where none is printed, never under grade 30."""
    quarter = np.fmin(chain.BREAKING_G40_FIRST, chain.BREAKING_G40_SECOND) / chain.BREAKING_OVER_WORKING[1]
    return np.maximum(_carried_down(quarter), g30)


_G30 = _metric_g30()
# By grade and size. No table prints grade 40 in inches: it is taken as grade 30 there.
METRIC_CHAIN_LOADS = frozen(
    [_G30, _metric_g40(_G30), *(_as_metric(loads) for loads in (chain.AS_METRIC_G43, chain.AS_METRIC_G70, chain.AS_METRIC_G80))]
)
INCH_CHAIN_LOADS = frozen([_carried_down(loads) for loads in (chain.INCH_G30, chain.INCH_G30, chain.INCH_G43, chain.INCH_G70, chain.INCH_G80)])


def _chain_loads_below(*, sizes: Rows, loads: Rows, chain_size: Array, chain_grade: Codes) -> Array:
    row = row_at_or_below(sizes=sizes, size=chain_size)
    return np.where(row < 0, np.nan, loads[chain_grade, np.maximum(row, 0)])


def _is_row(*, sizes: Rows, size: Array) -> Array:
    row: Places = np.maximum(row_at_or_below(sizes=sizes, size=size), 0)
    return np.isclose(size, sizes[row], rtol=2.0 * SAME_SIZE, atol=0.0)


def chain_working_load(*, chain_size: Array, chain_grade: Codes = G30) -> Array:
    """Working load of short-link chain.

    Parameters
    ----------
    chain_size : float or array
        Diameter of the wire of a link, [m]; the tables run from 6 mm (or 1/4 in) to 16 mm (or 5/8 in).
    chain_grade : int or array of int
        Place in ``CHAIN_GRADES``.

    Returns
    -------
    float or array
        Load, [N]; nan below the first row of the grade, for there is no figure to be safe with. Above the last row: that row's.

    Notes
    -----
    Source: ``sources.CFR_CHAIN`` for inch sizes; for metric ones a quarter of the breaking load of ``sources.ISO_CHAIN``, or
    the first where it is less; any other size is the weakest of the rows beside it. The two are different chains under nearly
    the same number: 8 mm is weaker than 5/16 in (7.94 mm), a trade size whose wire is thicker than its name.

    Examples
    --------
    >>> round(float(chain_working_load(chain_size=0.0254 * 5 / 16)) / 4.4482216152605), float(chain_working_load(chain_size=0.008))
    (1900, 7500.0)
    """
    inch = _chain_loads_below(sizes=chain.INCH_SIZES, loads=INCH_CHAIN_LOADS, chain_size=chain_size, chain_grade=chain_grade)
    metric = _chain_loads_below(sizes=chain.METRIC_SIZES, loads=METRIC_CHAIN_LOADS, chain_size=chain_size, chain_grade=chain_grade)
    above = METRIC_CHAIN_LOADS[chain_grade, np.minimum(row_at_or_above(sizes=chain.METRIC_SIZES, size=chain_size), len(chain.METRIC_SIZES) - 1)]
    weaker = np.where(_is_row(sizes=chain.METRIC_SIZES, size=chain_size), metric, np.minimum(np.fmin(inch, metric), above))
    return np.where(_is_row(sizes=chain.INCH_SIZES, size=chain_size), inch, weaker)[()]


def chain_breaking_load(*, chain_size: Array, chain_grade: Codes = G30) -> Array:
    """Breaking load of short-link chain: its working load times the factor that the tables are built on.

    Parameters
    ----------
    chain_size, chain_grade
        As for `chain_working_load`.

    Returns
    -------
    float or array
        Load, [N]; 4 (G30, G40, G80) or 3 (G43, G70) times the working load; nan where that is.

    Notes
    -----
    Source: ``sources.ISO_CHAIN``; for G43, G70 and G80 the factors that go with ``sources.CFR_CHAIN``.

    Examples
    --------
    >>> float(chain_breaking_load(chain_size=0.008))
    30000.0
    """
    return chain_working_load(chain_size=chain_size, chain_grade=chain_grade) * chain.BREAKING_OVER_WORKING[chain_grade]


def line_breaking_load(*, line_size: Array, line_material: Codes = NYLON_3_STRAND) -> Array:
    """Least breaking load of new rope.

    Parameters
    ----------
    line_size : float or array
        Diameter, [m]; the table runs from 1/4 to 1 1/8 in.
    line_material : int or array of int
        Place in ``LINE_MATERIALS``.

    Returns
    -------
    float or array
        Load, [N]; nan below 1/4 in; above the last row that row's.

    Notes
    -----
    Source: ``sources.NYLON``; for other materials ``sources.OTHER_ROPE``.

    Examples
    --------
    >>> round(float(line_breaking_load(line_size=0.0127)) / 4.4482216152605)
    5750
    """
    return rope.STRENGTH_OF_NYLON[line_material] * value_at_or_below(sizes=rope.SIZES, values=rope.BREAKING_LOADS, size=line_size)


def line_working_load(*, line_size: Array, line_material: Codes = NYLON_3_STRAND) -> Array:
    """Working load of rope, a ninth to a twelfth of its breaking load, which leaves room for a knot and for wet, not for age.

    Parameters
    ----------
    line_size, line_material
        As for `line_breaking_load`.

    Returns
    -------
    float or array
        Load, [N]; nan below 1/4 in; above the last row that row's.

    Notes
    -----
    Source: ``sources.NYLON``; for other materials ``sources.OTHER_ROPE``.

    Examples
    --------
    >>> round(float(line_working_load(line_size=0.014)) / 4.4482216152605)  # between 1/2 and 9/16 in: the weaker
    525
    """
    return rope.STRENGTH_OF_NYLON[line_material] * value_at_or_below(sizes=rope.SIZES, values=rope.WORKING_LOADS, size=line_size)


def line_breaking_left(*, breaking_load: Array, knotted: Array = False, wet: Array = False, old: Array = False) -> Array:
    """Breaking load that knot, wet and age leave of a nylon line, the low end of each.

    Parameters
    ----------
    breaking_load : float or array
        Breaking load when new, [N].
    knotted, wet, old : bool or array of bool
        Whether there is a knot in it (a half is left), it is wet (three quarters), 10 years old or more (a quarter).

    Returns
    -------
    float or array
        Load, [N].

    Notes
    -----
    Source: ``sources.ROPE_FACTORS``. Each was measured alone; together they are multiplied, which errs low.

    Examples
    --------
    >>> float(line_breaking_left(breaking_load=8000.0, knotted=True, wet=True))
    3000.0
    """
    left = np.where(knotted, rope.LEFT_BY_KNOT, 1.0) * np.where(wet, rope.LEFT_WHEN_WET, 1.0) * np.where(old, rope.LEFT_BY_AGE, 1.0)
    return breaking_load * left


def line_stiffness(*, breaking_load: Array) -> Array:
    """Pull over strain of worked three-strand nylon, on the soft side.

    Parameters
    ----------
    breaking_load : float or array
        Breaking load when new, [N].

    Returns
    -------
    float or array
        Stiffness, [N]: a fifth of the breaking load over a stretch of 20 %.

    Notes
    -----
    Source: ``sources.ROPE_STRETCH`` (15 to 20 % at a fifth of the breaking load, memory).

    Examples
    --------
    >>> line_stiffness(breaking_load=20000.0)
    20000.0
    """
    return 0.2 / rope.STRETCH_AT_A_FIFTH * breaking_load


def shackle_working_load(*, shackle_size: Array) -> Array:
    """Safe load of a shackle of unknown steel, 3·size² short tons, size in inches.

    Parameters
    ----------
    shackle_size : float or array
        Diameter of the bow, [m]; > 0.

    Returns
    -------
    float or array
        Load, [N].

    Notes
    -----
    Source: ``sources.SHACKLE_RULE``. A forged shackle stamped with its working load carries up to three times as much
    (`forged_shackle_working_load`); the lesser is taken.

    Examples
    --------
    >>> round(shackle_working_load(shackle_size=0.0254 * 5 / 8) / 4.4482216152605, 2)
    2343.75
    """
    return shackle.RULE * shackle_size * shackle_size


def forged_shackle_working_load(*, shackle_size: Array) -> Array:
    """Working load of a forged carbon-steel anchor shackle that is stamped to the US federal specification.

    Parameters
    ----------
    shackle_size : float or array
        Diameter of the bow, [m]; the figures run from 1/2 to 3/4 in.

    Returns
    -------
    float or array
        Load, [N], a fifth of the breaking load; a size between two rows counts as the weaker; nan below 1/2 in.

    Notes
    -----
    Source: ``sources.FORGED_SHACKLE``.

    Examples
    --------
    >>> round(float(forged_shackle_working_load(shackle_size=0.0254 * 5 / 8)) / 4.4482216152605)
    6500
    """
    values = shackle.FORGED_BREAKING / shackle.FORGED_BREAKING_OVER_WORKING
    return value_at_or_below(sizes=shackle.FORGED_SIZES, values=values, size=shackle_size)
