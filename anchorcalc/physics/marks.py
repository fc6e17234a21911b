"""Where a length of rode stands among the marks on it."""

from typing import NamedTuple

import numpy as np

from anchorcalc.physics.arrays import Array

# A mark that the line falls short of by less than this part of its length counts as reached: 70 ft by 10 ft is mark 7
# in every unit, whatever the last bit of the sum says.
SAME_LENGTH = 1e-9


class MarksReached(NamedTuple):
    """Where a length of rode stands among its marks: numbers [-] and lengths [m], as `marks_reached` tells."""

    mark: Array
    past: Array
    to_next: Array
    stop_at: Array
    stop_length: Array


def marks_reached(*, length: Array, mark_interval: Array) -> MarksReached:
    """Place of a length of rode among marks at even distances.

    Parameters
    ----------
    length : float or array
        Line that is out, counted from where the marks begin, [m]; nothing is out where it is negative.
    mark_interval : float or array
        Distance between marks, [m]; > 0.

    Returns
    -------
    MarksReached
        mark: number of the last mark at the roller or beyond, 0 for none; past: line beyond it, [m]; to_next: what is
        short of the next, [m]; stop_at: number of the first mark at or beyond the length; stop_length: its length, [m].

    Notes
    -----
    A mark within 1e-9 of the length counts as reached.

    Examples
    --------
    >>> place = marks_reached(length=21.336, mark_interval=3.048)
    >>> int(place.mark), float(place.past), int(place.stop_at)
    (7, 0.0, 7)
    """
    length = np.maximum(length, 0.0)
    mark = np.floor(length / mark_interval * (1.0 + SAME_LENGTH))
    past = length - mark * mark_interval
    past = np.where(past <= SAME_LENGTH * length, 0.0, past)[()]  # a number stays a number
    stop_at = np.where((past > 0.0) | (mark < 1.0), mark + 1.0, mark)[()]
    return MarksReached(mark, past, mark_interval - past, stop_at, stop_at * mark_interval)


def listed_marks_reached(*, length: Array, marks: Array) -> MarksReached:
    """Place of a length of rode among marks at lengths of their own.

    Parameters
    ----------
    length : float or array
        Line that is out, counted from where the marks begin, [m].
    marks : array
        Lengths at which the marks stand, in rising order along the last axis, [m]; > 0. Rows with fewer marks than
        others are filled up with infinity.

    Returns
    -------
    MarksReached
        As `marks_reached` tells. Where no mark is left ahead, to_next and stop_length are nan and stop_at is 0.

    Notes
    -----
    A mark within 1e-9 of the length counts as reached.

    Examples
    --------
    >>> place = listed_marks_reached(length=25.0, marks=np.array([10.0, 20.0, 40.0]))
    >>> int(place.mark), float(place.past), float(place.to_next), int(place.stop_at)
    (2, 5.0, 15.0, 3)
    """
    length = np.maximum(length, 0.0)
    reached = np.less_equal(marks, np.expand_dims(length * (1.0 + SAME_LENGTH), -1))
    mark = np.sum(reached, axis=-1)
    last = np.max(np.where(reached, marks, 0.0), axis=-1, initial=0.0)
    following = np.min(np.where(reached, np.inf, marks), axis=-1, initial=np.inf)
    following = np.where(np.isinf(following), np.nan, following)
    past = length - last
    past = np.where(past <= SAME_LENGTH * length, 0.0, past)[()]  # a number stays a number
    at_mark = (past == 0.0) & (mark > 0)
    stop_length = np.where(at_mark, last, following)[()]
    stop_at = np.where(np.isnan(stop_length), 0, np.where(at_mark, mark, mark + 1))[()]
    return MarksReached(mark, past, following - last - past, stop_at, stop_length)
