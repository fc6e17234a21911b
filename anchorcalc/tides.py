"""What the questions that take a tide's two waters have in common."""

import numpy as np

from anchorcalc import cautions
from anchorcalc.declare import refuse, warn

_HOUR = 3600.0
_LONGEST = 18 * _HOUR  # a tide that comes once a day takes some 12 h, and seldom 16

TIDE_REFUSALS = (
    refuse(
        "low_height",
        lambda *, low_height, high_height: np.greater(low_height, high_height),
        why="is higher than high water",
        would_do="low_height below high_height",
    ),
    refuse(
        "low_at",
        lambda *, low_at, high_at: np.isnan(low_at) | np.isnan(high_at) | np.equal(low_at, high_at),
        why="is no low water less than 10 h from that high water",
        would_do="the pair that the time lies between, or ISO dates with the times",
    ),
    refuse(
        "low_at",
        lambda *, low_at, high_at: np.abs(high_at - low_at) > _LONGEST,
        why="is more than 18 h from that high water: other tides lie between the two",
        would_do="the low water next to it",
    ),
    refuse(
        "at",
        lambda *, at, low_at, high_at: np.less(at, np.minimum(low_at, high_at)) | np.greater(at, np.maximum(low_at, high_at)),
        why="does not lie between that low and that high water",
        would_do="the low and the high water that it lies between",
        code="outside_tide",
    ),
)
TIDE_WARNINGS = (
    warn(cautions.DOUBLE_TIDES),
    warn(cautions.CLOCK_ZONE),
    warn(cautions.EXTRAPOLATED, lambda *, low_at, high_at: (np.abs(high_at - low_at) < 5 * _HOUR) | (np.abs(high_at - low_at) > 7 * _HOUR)),
)
