"""Shares of two anchors against statics and the sling tables of the lifting trade; and the slope of a beach."""

import numpy as np
import numpy.testing as npt
import pytest

from anchorcalc.physics.beach import anchor_height, beach_anchor_distance, stern_distance
from anchorcalc.physics.statics import SharedLoad, two_anchor_loads


def shared(*, load: float, spread: float, wind_off: float = 0.0) -> SharedLoad:
    """Shares of a load, angles in degrees."""
    return two_anchor_loads(load=load, spread=np.radians(spread), wind_off=np.radians(wind_off))


# Statics: each of two equal legs carries T/(2·cos(spread/2)); computed, printed to 0.1 N of 1000 N.
@pytest.mark.parametrize(
    ("spread", "each"),
    [(0, 500.0), (30, 517.6), (60, 577.4), (90, 707.1), (120, 1000.0), (150, 1931.9), (160, 2879.4), (170, 5736.9)],
)
def test_wind_down_the_middle_loads_both_alike(spread: float, each: float) -> None:
    loads = shared(load=1000.0, spread=spread)
    npt.assert_allclose(np.array(loads[:2]), [each, each], rtol=0, atol=0.05)
    assert not loads.slack


# Statics, triangle of forces (Lami's theorem); computed, printed to 0.1 N of 1000 N.
@pytest.mark.parametrize(
    ("spread", "wind_off", "greater", "less", "slack"),
    [(60, 15, 816.5, 298.9, False), (90, 20, 906.3, 422.6, False), (60, 30, 1000.0, 0.0, True), (60, -15, 816.5, 298.9, False)],
)
def test_rode_nearer_the_wind_carries_more(spread: float, wind_off: float, greater: float, less: float, slack: bool) -> None:
    loads = shared(load=1000.0, spread=spread, wind_off=wind_off)
    npt.assert_allclose(np.array(loads[:2]), [greater, less], rtol=0, atol=0.05)
    assert bool(loads.slack) is slack


# Lifting-trade table of two-leg slings by leg angle from the horizontal (read): the spread is 180 degrees less twice the angle.
SLINGS = {90: 1.0, 85: 1.004, 80: 1.015, 75: 1.035, 70: 1.064, 60: 1.155, 55: 1.221, 50: 1.305, 45: 1.414, 30: 2.0}
SLIPS = {65: 1.104, 40: 1.555, 35: 1.742}  # 1.1034, 1.5557 and 1.7434 by statics: slips in the source's last digit


@pytest.mark.parametrize(("leg_angle", "multiplier"), SLINGS.items())
def test_share_is_that_of_a_two_leg_sling(leg_angle: float, multiplier: float) -> None:
    npt.assert_allclose(shared(load=2.0, spread=180.0 - 2.0 * leg_angle).greater, multiplier, rtol=0, atol=0.0005)


@pytest.mark.parametrize(("leg_angle", "multiplier"), SLIPS.items())
def test_share_is_that_of_a_two_leg_sling_but_for_slips_of_the_print(leg_angle: float, multiplier: float) -> None:
    npt.assert_allclose(shared(load=2.0, spread=180.0 - 2.0 * leg_angle).greater, multiplier, rtol=0, atol=0.0015)


# Crane-training reference table, factor by included angle (read); its 1.16 at 60 degrees is 1.1547 rounded up.
@pytest.mark.parametrize(
    ("spread", "factor", "tolerance"), [(0, 1.0, 0.005), (30, 1.04, 0.005), (60, 1.16, 0.01), (90, 1.41, 0.005), (120, 2.0, 0.005)]
)
def test_share_is_that_of_the_crane_table(spread: float, factor: float, tolerance: float) -> None:
    npt.assert_allclose(shared(load=2.0, spread=spread).greater, factor, rtol=0, atol=tolerance)


def test_at_90_degrees_each_takes_about_70_percent() -> None:  # Spanish-language nautical dictionary (read), to ten in a thousand
    npt.assert_allclose(shared(load=1000.0, spread=90.0).greater, 700.0, rtol=0, atol=10.0)


def test_at_120_degrees_each_takes_as_much_as_one_alone() -> None:  # the same dictionary, and the crane-training table (read)
    npt.assert_allclose(np.array(shared(load=1000.0, spread=120.0)[:2]), [1000.0, 1000.0], rtol=1e-12)


def test_above_170_degrees_each_is_good_for_the_full_load() -> None:  # common practice, no source: one at a time
    loads = shared(load=1000.0, spread=175.0, wind_off=10.0)
    npt.assert_array_equal([loads.greater, loads.less, loads.slack], [1000, 1000, False])


def test_wind_outside_the_two_rodes_leaves_one_slack() -> None:  # statics: no rode pushes
    loads = shared(load=1000.0, spread=60.0, wind_off=50.0)
    npt.assert_array_equal([loads.greater, loads.less, loads.slack], [1000, 0, True])


# Trigonometry, computed: a beach of 1:n slopes at the angle whose tangent is 1/n, and is 1 deep at n off.
@pytest.mark.parametrize(("slope", "angle"), [(10, 5.71), (20, 2.86), (50, 1.15)])
def test_slope_of_the_beach_is_one_down_for_so_many_out(slope: float, angle: float) -> None:
    deep = anchor_height(slope=slope, anchor_distance=1.0, above_edge=0.0)
    npt.assert_allclose(np.degrees(np.arctan(deep)), angle, rtol=0, atol=0.005)
    npt.assert_allclose(stern_distance(slope=slope, draught=1.0, under_keel=0.0, tide_fall=0.0), slope, rtol=1e-12)


def test_scope_5_rode_on_a_level_bottom_lies_a_taut_reach_beyond_the_bow() -> None:  # Pythagoras: 5² = 4.899² + 1²
    distance = beach_anchor_distance(slope=1e12, stern=0.0, boat_length=0.0, scope=5.0, above_edge=1.0)
    npt.assert_allclose(distance, np.sqrt(24.0), rtol=1e-9)
