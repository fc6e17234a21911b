"""The Beaufort scale as the World Meteorological Organization prints it, in two reproductions: knots on one page, m/s on the other."""

import numpy.testing as npt
import pytest

from anchorcalc.physics.constants import KNOT
from anchorcalc.units.kinds import BEAUFORT_KNOTS

# force, knots from and to, m/s from and to (reproduction)
SCALE = [
    (0, 0, 1, 0.0, 0.2),
    (1, 1, 3, 0.3, 1.5),
    (2, 4, 6, 1.6, 3.3),
    (3, 7, 10, 3.4, 5.4),
    (4, 11, 16, 5.5, 7.9),
    (5, 17, 21, 8.0, 10.7),
    (6, 22, 27, 10.8, 13.8),
    (7, 28, 33, 13.9, 17.1),
    (8, 34, 40, 17.2, 20.7),
    (9, 41, 47, 20.8, 24.4),
    (10, 48, 55, 24.5, 28.4),
    (11, 56, 63, 28.5, 32.6),
]


@pytest.mark.parametrize(("force", "low", "high", "low_ms", "high_ms"), SCALE)
def test_force_has_the_printed_range_of_knots(force: int, low: int, high: int, low_ms: float, high_ms: float) -> None:
    npt.assert_array_equal(BEAUFORT_KNOTS[force], (low, high))


@pytest.mark.parametrize(("force", "low", "high", "low_ms", "high_ms"), SCALE[1:])
def test_middle_of_a_force_lies_in_the_printed_range_of_metres_a_second(force: int, low: int, high: int, low_ms: float, high_ms: float) -> None:
    assert low_ms <= sum(BEAUFORT_KNOTS[force]) / 2 * KNOT <= high_ms


def test_force_12_begins_at_64_knots_and_has_no_end() -> None:
    low, high = BEAUFORT_KNOTS[12]
    assert low == 64
    assert high == float("inf")
    npt.assert_allclose(low * KNOT, 32.7, rtol=0, atol=0.25)  # printed 32.7 m/s and over; half a knot
