"""Height of tide between one low and one high water.

Nothing here asks whether the tide rises or falls: time is counted from low water towards high water, forwards on a rise and
backwards on a fall, since both curves are the same seen from either end.
"""

import numpy as np

from anchorcalc.physics.arrays import Array

# Rule of twelfths: what has come in by the end of each of six hours. Source: yachting-magazine almanac glossary.
SIXTHS_OF_THE_TIME = np.arange(7) / 6.0
TWELFTHS_OF_THE_RANGE = np.array([0, 1, 3, 6, 9, 11, 12]) / 12.0
SIXTHS_OF_THE_TIME.flags.writeable = False
TWELFTHS_OF_THE_RANGE.flags.writeable = False


DAY = 86400.0
LONGEST_PAIR = 36000.0  # s; low and high water of one tide lie less than 10 h apart


def plain_times_about(*, low_at: Array, high_at: Array, at: Array) -> tuple[Array, Array]:
    """Low and high water about a moment, where all three are times of day without a date.

    Parameters
    ----------
    low_at, high_at, at : float or array
        Times of day, [s] from midnight; 0 to 86400.

    Returns
    -------
    tuple of float or array
        low_at and high_at, [s] on the day of `at` (before 0 the day before, above 86400 the day after): the pair less than 10 h
        apart, either first, that starts last before `at`. nan for times that are no such pair.

    Examples
    --------
    >>> [float(time) / 3600.0 for time in plain_times_about(low_at=22 * 3600.0, high_at=4 * 3600.0, at=1 * 3600.0)]
    [-2.0, 4.0]
    """
    rise, fall = np.mod(np.subtract(high_at, low_at), DAY), np.mod(np.subtract(low_at, high_at), DAY)
    rises = np.less(rise, fall)
    length = np.where(rises, rise, fall)
    length = np.where((length > 0.0) & (length < LONGEST_PAIR), length, np.nan)
    start = at - np.mod(np.subtract(at, np.where(rises, low_at, high_at)), DAY)
    return np.where(rises, start, start + length), np.where(rises, start + length, start)


def elapsed_part(*, low_at: Array, high_at: Array, at: Array) -> Array:
    """Part of the time from low to high water at which a moment stands.

    Parameters
    ----------
    low_at, high_at : float or array
        Moments of low and of high water, [s] from any one start; either may come first, but not both at once.
    at : float or array
        The moment asked for, [s] from the same start.

    Returns
    -------
    float or array
        0 at low water, 1 at high water, [-]; outside 0..1 the moment does not lie between the two.

    Examples
    --------
    >>> elapsed_part(low_at=0.0, high_at=21600.0, at=7200.0) == elapsed_part(low_at=21600.0, high_at=0.0, at=14400.0)
    True
    """
    return (at - low_at) / (high_at - low_at)


def tide_height(*, low: Array, high: Array, elapsed: Array) -> Array:
    """Height of tide between low and high water, as half a cosine.

    Parameters
    ----------
    low, high : float or array
        Heights of low and of high water above one datum, [m]; low <= high.
    elapsed : float or array
        Part of the time from low to high water that has passed, [-]; 0 to 1.

    Returns
    -------
    float or array
        Height above the same datum, [m]; the inputs broadcast together.

    Notes
    -----
    For two highs a day; poor in estuaries, wrong where tides stand or double. Source: Australian Hydrographic Service,
    method to find heights between high and low waters, good where a rise or fall lasts 5 to 7 hours.

    Examples
    --------
    >>> float(tide_height(low=1.0, high=5.0, elapsed=0.5))
    3.0
    """
    return low + (high - low) * (1.0 - np.cos(np.pi * elapsed)) / 2.0


def tide_height_by_twelfths(*, low: Array, high: Array, elapsed: Array) -> Array:
    """Height of tide between low and high water, by the rule of twelfths.

    Parameters
    ----------
    low, high : float or array
        Heights of low and of high water above one datum, [m]; low <= high.
    elapsed : float or array
        Part of the time from low to high water that has passed, [-]; 0 to 1.

    Returns
    -------
    float or array
        Height above the same datum, [m]; evenly between the sixths of the time.

    Notes
    -----
    1, 2, 3, 3, 2 and 1 twelfths of the range in six equal parts of the time. Source: yachting-magazine almanac glossary.

    Examples
    --------
    >>> float(tide_height_by_twelfths(low=0.0, high=12.0, elapsed=2 / 6))
    3.0
    """
    return low + (high - low) * np.interp(elapsed, SIXTHS_OF_THE_TIME, TWELFTHS_OF_THE_RANGE)


def part_of_tide_at_height(*, low: Array, high: Array, height: Array) -> Array:
    """Part of the time from low to high water at which the tide stands at a height.

    Parameters
    ----------
    low, high : float or array
        Heights of low and of high water above one datum, [m]; low <= high.
    height : float or array
        Height asked for, above the same datum, [m].

    Returns
    -------
    float or array
        0 at low water, 1 at high water, [-]; nan for a height that this tide does not reach.

    Notes
    -----
    Inverse of `tide_height`, by the half angle: tan² = (height - low)/(high - height) keeps its digits at both ends,
    where an arc cosine loses half of them.

    Examples
    --------
    >>> round(float(part_of_tide_at_height(low=1.0, high=5.0, height=3.0)), 9)
    0.5
    """
    reached = np.greater_equal(height, low) & np.less_equal(height, high)
    height = np.where(reached, height, low)
    part = 2.0 / np.pi * np.arctan2(np.sqrt(height - low), np.sqrt(high - height))
    return np.where(reached, part, np.nan)[()]  # a number stays a number


def moment_at_height(*, low: Array, high: Array, low_at: Array, high_at: Array, height: Array) -> Array:
    """Moment at which the tide stands at a height, between one low and one high water.

    Parameters
    ----------
    low, high : float or array
        Heights of low and of high water above one datum, [m]; low <= high.
    low_at, high_at : float or array
        Moments of low and of high water, [s] from any one start; either may come first.
    height : float or array
        Height asked for, above the same datum, [m].

    Returns
    -------
    float or array
        Moment, [s] from the same start; nan for a height that this tide does not reach.

    Examples
    --------
    >>> round(float(moment_at_height(low=1.0, high=5.0, low_at=0.0, high_at=21600.0, height=3.0)), 6)
    10800.0
    """
    return low_at + part_of_tide_at_height(low=low, high=high, height=height) * (high_at - low_at)
