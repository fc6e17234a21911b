"""Strength of shackles against the old Navy rule and a federal specification."""

import numpy as np
import numpy.testing as npt

from anchorcalc.physics.constants import INCH, POUND_FORCE, SHORT_TON_FORCE
from anchorcalc.physics.next_size import shackle_size_for
from anchorcalc.physics.strength import forged_shackle_working_load, shackle_working_load


def test_2_in_shackle_carries_12_tons() -> None:
    # Seamanship-formula page, old Navy rule 3·D² tons (read); exact.
    npt.assert_allclose(shackle_working_load(shackle_size=2 * INCH) / SHORT_TON_FORCE, 12, rtol=1e-12)


def test_5_8_in_shackle_carries_2343_75_lbf() -> None:
    # The same rule (computed).
    npt.assert_allclose(shackle_working_load(shackle_size=5 / 8 * INCH) / POUND_FORCE, 2343.75, rtol=0, atol=0.005)


def test_5_1_tons_ask_for_1_30_in() -> None:
    # Rigging question-and-answer page (read): the rule turned round.
    npt.assert_allclose(np.sqrt(5.1 * SHORT_TON_FORCE / shackle_working_load(shackle_size=INCH)), 1.30, rtol=0, atol=0.005)
    npt.assert_allclose(shackle_size_for(load=5.1 * SHORT_TON_FORCE, inch=True) / INCH, 1.5, rtol=1e-12)  # the next that is sold


def test_forged_shackle_carries_a_fifth_of_its_least_breaking_load() -> None:
    # US Federal Specification RR-C-271D as quoted in a city utility's material standard 6966.1 (reproduction); exact.
    inches = np.array([1 / 2, 5 / 8, 3 / 4])
    npt.assert_allclose(forged_shackle_working_load(shackle_size=inches * INCH) / POUND_FORCE, [4000, 6500, 9500], rtol=1e-12)


def test_of_two_conflicting_figures_the_lesser_is_taken() -> None:
    inches = np.array([1 / 2, 5 / 8, 3 / 4])
    assert np.all(shackle_working_load(shackle_size=inches * INCH) < forged_shackle_working_load(shackle_size=inches * INCH))


def test_forged_shackle_between_two_rows_is_the_weaker_and_a_thinner_one_has_no_figure() -> None:
    # A rule of this library, on the safe side; no published figure.
    loads = forged_shackle_working_load(shackle_size=np.array([0.45, 0.6, 1.0]) * INCH) / POUND_FORCE
    npt.assert_allclose(loads, [np.nan, 4000, 9500], rtol=1e-12)
