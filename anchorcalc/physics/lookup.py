"""Rows of a printed table: the one at or above a size, the one at or below it, and never anything in between."""

from typing import Any

import numpy as np

from anchorcalc.physics.arrays import Array

Rows = np.ndarray[Any, np.dtype[np.floating[Any]]]
Places = np.ndarray[Any, np.dtype[np.integer[Any]]]

# A size (or load) within this part of a row's is that row's, whatever the last bit of a unit's factor says: 30 ft is the 30 ft row.
SAME_SIZE = 1e-9


def row_at_or_above(*, sizes: Rows, size: Array) -> Places:
    """Place of the first row whose size is not less; the number of rows where there is none.

    Parameters
    ----------
    sizes : array
        Sizes of the rows, rising.
    size : float or array
        Size to look up, in the same unit; nan counts as beyond the last row.

    Returns
    -------
    array of int
        Place of the row, 0 to ``len(sizes)``.

    Examples
    --------
    >>> int(row_at_or_above(sizes=np.array([6.0, 8.0, 10.0]), size=6.5))
    1
    """
    return np.asarray(np.searchsorted(sizes, np.multiply(size, 1.0 - SAME_SIZE), side="left"))


def row_at_or_below(*, sizes: Rows, size: Array) -> Places:
    """Place of the last row whose size is not more; -1 where there is none.

    Parameters
    ----------
    sizes : array
        Sizes of the rows, rising.
    size : float or array
        Size to look up, in the same unit; not nan.

    Returns
    -------
    array of int
        Place of the row, -1 to ``len(sizes) - 1``.

    Examples
    --------
    >>> int(row_at_or_below(sizes=np.array([6.0, 8.0, 10.0]), size=9.9))
    1
    """
    return np.asarray(np.searchsorted(sizes, np.multiply(size, 1.0 + SAME_SIZE), side="right")) - 1


def value_at_or_below(*, sizes: Rows, values: Rows, size: Array) -> Array:
    """Value of the last row whose size is not more, the weaker of two neighbours; nan below the first row.

    Parameters
    ----------
    sizes, values : array
        Sizes of the rows, rising, and what each row gives.
    size : float or array
        Size to look up, in the unit of `sizes`.

    Returns
    -------
    float or array
        Value of that row, in the unit of `values`.

    Examples
    --------
    >>> float(value_at_or_below(sizes=np.array([6.0, 8.0]), values=np.array([10.0, 20.0]), size=7.0))
    10.0
    """
    place = row_at_or_below(sizes=sizes, size=size)
    return np.where(place < 0, np.nan, values[np.maximum(place, 0)])[()]  # a number stays a number


def least_size(*, sizes: Rows, strengths: Rows, load: Array) -> Array:
    """Smallest size of a table whose strength meets a load; nan where none does.

    Parameters
    ----------
    sizes : array
        Sizes of the rows, rising.
    strengths : array
        What each row carries; nan where it has no figure. A row that is printed weaker than one before it keeps its own figure.
    load : float or array
        Load to meet, in the unit of `strengths`.

    Returns
    -------
    float or array
        Size, in the unit of `sizes`.

    Examples
    --------
    >>> float(least_size(sizes=np.array([6.0, 8.0]), strengths=np.array([10.0, 20.0]), load=12.0))
    8.0
    """
    meets = np.greater_equal(strengths, np.expand_dims(np.multiply(load, 1.0 - SAME_SIZE), -1))
    return np.where(meets.any(axis=-1), sizes[np.argmax(meets, axis=-1)], np.nan)[()]
