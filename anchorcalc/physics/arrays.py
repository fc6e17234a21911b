"""The one type that physics takes and gives: a number or a numpy array of numbers, in SI."""

from typing import Any

import numpy as np

Array = float | np.ndarray[Any, np.dtype[Any]]
