"""Pull of the engine against the printed rules, and the wind that it stands for."""

import numpy as np
import numpy.testing as npt
import pytest

from anchorcalc.physics.constants import FOOT, HORSEPOWER, INCH, KILOGRAM_FORCE, KNOT, POUND_FORCE
from anchorcalc.physics.engine import bollard_pull_band, bollard_pull_of_propeller, pull_astern
from anchorcalc.physics.tables.engine import MARINERS_HIGH, MARINERS_LOW
from anchorcalc.physics.wind import wind_equivalent


@pytest.mark.parametrize(("power", "diameter", "pull", "per_horsepower"), [(20, 14, 518, 25.9), (30, 16, 743, 24.8), (50, 18, 1132, 22.6)])
def test_propeller_formula_gives_the_worked_figures(power: int, diameter: int, pull: int, per_horsepower: float) -> None:
    # 62.72·(SHP·D/12)^0.67 lbf, propeller-handbook formula quoted on a question-and-answer page (reproduction; figures worked).
    ours = bollard_pull_of_propeller(engine_power=power * HORSEPOWER, propeller_diameter=diameter * INCH) / POUND_FORCE
    npt.assert_allclose(ours, pull, rtol=0, atol=0.5)
    npt.assert_allclose(ours / power, per_horsepower, rtol=0, atol=0.05)


def test_band_without_a_propeller_holds_the_rules_by_power() -> None:
    # 20 to 30 lbf a horsepower: common practice, no source: 30 hp, 600 to 900 lbf.
    band = bollard_pull_band(engine_power=30 * HORSEPOWER)
    npt.assert_allclose(np.array(band) / POUND_FORCE, [600, 900], rtol=1e-12)


def test_band_holds_the_master_mariners_rule() -> None:
    # Captain-authored formula sheet (read): 100 BHP, 0.99 to 1.26 t.
    band = bollard_pull_band(engine_power=100 * HORSEPOWER)
    npt.assert_allclose(100 * np.array([MARINERS_LOW, MARINERS_HIGH]) / KILOGRAM_FORCE, [990, 1260], rtol=1e-12)
    assert band.low <= 990 * KILOGRAM_FORCE
    assert band.high >= 1260 * KILOGRAM_FORCE


def test_pull_astern_is_half_of_the_least_rule() -> None:
    # A half to two thirds astern: memory; the half of the least figure counts.
    npt.assert_allclose(pull_astern(engine_power=30 * HORSEPOWER) / POUND_FORCE, 300, rtol=1e-12)
    by_propeller = bollard_pull_of_propeller(engine_power=100 * HORSEPOWER, propeller_diameter=16 * INCH)
    npt.assert_allclose(pull_astern(engine_power=100 * HORSEPOWER, propeller_diameter=16 * INCH), by_propeller / 2, rtol=1e-12)


def test_350_lbf_on_a_30_ft_boat_stands_for_21_2_knots() -> None:
    # ABYC H-40 Table 1, 30 ft row (reproduction), and the square law (computed).
    npt.assert_allclose(wind_equivalent(load=350 * POUND_FORCE, boat_length=30 * FOOT) / KNOT, 21.2, rtol=0, atol=0.05)
