"""The one type that physics takes and gives: a number or a numpy array of numbers, in SI."""

from typing import Any

import numpy as np

Array = float | np.ndarray[Any, np.dtype[Any]]


def at_least(value: Array, least: Array) -> Array:
    """Whether a value reaches a least one, alike in every unit: a shortfall in the twelfth digit does not count.

    Examples
    --------
    >>> bool(at_least(6.999999999999999, 7.0)), bool(at_least(6.9999, 7.0))
    (True, False)
    """
    return value >= least - 1e-12 * np.abs(least)


def not_below_zero(value: Array) -> Array:
    """Return a value, or 0 where it is less; one plain number stays one, since numpy's own takes longer over it than all the sum.

    Examples
    --------
    >>> not_below_zero(1.5), not_below_zero(-1.5), not_below_zero(np.array([1.5, -1.5])).tolist()
    (1.5, 0.0, [1.5, 0.0])
    """
    if isinstance(value, np.ndarray):
        return np.maximum(value, 0.0)
    return 0.0 if value <= 0.0 else value  # a nan stays one


def somewhere(condition: Any) -> bool:
    """Whether a condition holds for the one boat asked about, or for any of many.

    Examples
    --------
    >>> somewhere(True), somewhere(np.array([False, True])), somewhere(False)
    (True, True, False)
    """
    return bool(condition.any()) if isinstance(condition, np.ndarray) else bool(condition)
