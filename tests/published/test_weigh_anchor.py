"""Weight of what hangs from the roller, and the windlass rules, against printed and worked figures."""

import numpy as np
import numpy.testing as npt
import pytest

from anchorcalc.physics.constants import GRAVITY
from anchorcalc.physics.hauling import continuous_duty_pull, hanging_load, hauling_load, is_work_for_hands, rode_weight_hanging, windlass_pull
from anchorcalc.physics.weights import weight_in_water


def test_iron_anchor_of_833_n_pulls_723_54_n_in_sea_water() -> None:
    # Physics textbook exercise with worked solution (read): 7800 and 1025 kg/m³, g 9.8.
    ours = weight_in_water(mass=833 / GRAVITY, density=7800.0, water_density=1025.0)
    npt.assert_allclose(ours, 723.54, rtol=0, atol=0.02)


def test_15_kg_anchor_and_10_m_of_chain_hang_with_247_3_n() -> None:
    # Archimedes (computed): 1.40 kg/m, 7850 and 1025 kg/m³.
    rode_weight = rode_weight_hanging(depth=10.0, bow_height=0.0, chain=10.0, chain_mass=1.40)
    npt.assert_allclose(hanging_load(rode_weight=rode_weight, anchor_mass=15.0), 247.3, rtol=0, atol=0.05)


def test_chain_above_the_water_weighs_its_full_weight() -> None:
    # Archimedes (computed): a metre of 1.40 kg/m in air is 13.729 N.
    dry, wet = (rode_weight_hanging(depth=10.0, bow_height=height, chain=30.0, chain_mass=1.40) for height in (1.0, 0.0))
    npt.assert_allclose(dry - wet, 13.729, rtol=0, atol=0.0005)


def test_short_chain_leaves_the_rest_to_line() -> None:
    # Archimedes (computed): 4 m of 1.40 kg/m chain, then 6 m of 0.1 kg/m nylon (1140 kg/m³) in sea water and 1 m in air:
    # 4 × 11.937 + 6 × 0.0989 + 0.981 N.
    ours = rode_weight_hanging(depth=10.0, bow_height=1.0, chain=4.0, chain_mass=1.40, line_mass=0.1, line_density=1140.0)
    npt.assert_allclose(ours, 4 * 11.937 + 6 * 0.0989 + 0.981, rtol=0, atol=0.003)


def test_line_that_floats_lifts_nothing() -> None:
    ours = rode_weight_hanging(depth=10.0, bow_height=0.0, chain=4.0, chain_mass=1.40, line_mass=0.1, line_density=910.0)
    npt.assert_allclose(ours, 4 * 11.937, rtol=0, atol=0.003)


def test_hauling_up_to_the_anchor_takes_drag_and_the_weight_of_the_height() -> None:
    # Top tension of a hanging chain with a flat pull at the bottom, T = H + w·h: textbook statics (computed).
    horizontal, weight, height = 600.0, 11.94, 11.0
    length = np.sqrt(height**2 + 2 * height * horizontal / weight)  # catenary from a flat start
    npt.assert_allclose(hauling_load(load_steady=horizontal, rode_weight=weight * height), np.hypot(horizontal, weight * length), rtol=1e-12)


def test_deep_water_adds_0_27_d_squared_newtons_a_metre() -> None:
    # IACS UR A3 (Rev. 1, June 2019), 3.1.2 (formula read; figure worked): 22 mm at 100 m, beyond 82.5 m: 2286.9 N.
    extra = continuous_duty_pull(chain_size=0.022, depth=100.0) - continuous_duty_pull(chain_size=0.022, depth=82.5)
    npt.assert_allclose(extra, 2286.9, rtol=0, atol=0.05)


def test_deep_water_pull_is_the_chain_in_sea_water_over_a_hawse_efficiency_of_70_per_cent() -> None:
    # The same rule (70 % read; 0.0219·d² kg/m of stud-link chain from memory): 0.267 N, printed as 0.27.
    per_metre = weight_in_water(mass=0.0219) / 0.70
    npt.assert_allclose(per_metre, 0.267, rtol=0, atol=0.003)
    npt.assert_allclose(per_metre, continuous_duty_pull(chain_size=0.001, depth=83.5) - continuous_duty_pull(chain_size=0.001), rtol=0, atol=0.005)


@pytest.mark.parametrize(("ship_grade", "kilonewtons"), [(1, 18.15), (2, 20.57), (3, 22.99)])
def test_continuous_pull_for_22_mm_is_that_of_the_rule(ship_grade: int, kilonewtons: float) -> None:
    # IACS UR A3, 3.1.2, 37.5, 42.5, 47.5·d² N: from memory.
    npt.assert_allclose(continuous_duty_pull(chain_size=0.022, ship_grade=ship_grade) / 1000, kilonewtons, rtol=0, atol=0.005)


def test_short_pull_is_one_and_a_half_times_the_continuous_one() -> None:
    # IACS UR A3, 3.1.3 (rule read; figures worked): 1000 N continuous, 1500 N short. The continuous pull is the load over 70 %.
    npt.assert_allclose(windlass_pull(hanging_load=700.0), 1500.0, rtol=1e-12)
    npt.assert_allclose(windlass_pull(hanging_load=100.0, hauling_load=700.0), 1500.0, rtol=1e-12)
    npt.assert_allclose(windlass_pull(hanging_load=100.0, chain_size=0.022), 1.5 * 18150, rtol=1e-12)


def test_by_hand_ends_at_the_weight_of_23_kg() -> None:
    # Load constant of the revised NIOSH lifting equation (1991): from memory.
    npt.assert_array_equal(is_work_for_hands(load=np.array([22.9, 23.1]) * GRAVITY), [True, False])
