"""Published figures as read-only arrays, each row group with its source and how the figure was come by beside it.

How a figure was come by: **read** (the source's own text), **reproduction** (another page's copy), **memory** (recalled, not
seen again), **computed** (worked from a rule that was read), **common practice** (taught widely, no single source),
**own estimate** (a figure of this library's, said so wherever it is used).
"""

from typing import Any

import numpy as np
from numpy.typing import ArrayLike


def frozen(values: ArrayLike, *, times: float = 1.0) -> np.ndarray[Any, np.dtype[np.float64]]:
    """Return figures as an array that cannot be written to, multiplied by a unit."""
    array = np.asarray(values, dtype=np.float64) * times
    array.setflags(write=False)
    return array
