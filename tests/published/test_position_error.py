"""The error of a fix: the published measures of it, held against the errors of the simulated nights and the watch circle.

"National Academies" is their report on the global positioning system (1995), appendix on accuracy measures.
"""

import numpy as np
import numpy.testing as npt

from anchorcalc.physics.track import watch_radius
from tests.benchmarks.drag_nights import INTERVAL, R95_IN_SIGMAS, gauss_markov

RNG = np.random.default_rng(95)
EAST, NORTH = (gauss_markov(rng=RNG, nights=200000, steps=1, time=600.0).ravel() for _ in range(2))
ERROR = np.hypot(EAST, NORTH)  # of unit deviation on either axis
CEP = np.median(ERROR)
DRMS = np.sqrt(np.mean(ERROR**2))


def test_95_percent_radius_is_2_448_sigma_2_079_cep_1_731_drms() -> None:  # Rayleigh distribution (computed)
    npt.assert_allclose(R95_IN_SIGMAS, 2.448, rtol=0, atol=0.0005)
    r95 = np.quantile(ERROR, 0.95)  # of 200 000 errors: good to half a percent
    npt.assert_allclose([r95, r95 / CEP, r95 / DRMS], [2.448, 2.079, 1.731], rtol=0.006)


def test_95_percent_of_the_simulated_errors_lie_within_position_error() -> None:  # what the 95 % error of a fix means
    # By definition of the 95 % error of a fix.
    npt.assert_allclose(np.mean(ERROR <= R95_IN_SIGMAS), 0.95, rtol=0, atol=0.002)


def test_2_drms_is_2_4_cep() -> None:  # National Academies (read); the Federal Radionavigation Plan has 2.5
    npt.assert_allclose(2.0 * DRMS / CEP, 2.4, rtol=0, atol=0.05)


def test_2_drms_holds_98_2_percent_of_a_circular_error() -> None:  # National Academies (read): 95.5 to 98.2 %
    npt.assert_allclose(np.mean(ERROR <= 2.0 * DRMS), 0.982, rtol=0, atol=0.001)


def test_cep_of_unit_deviations_is_1_178() -> None:  # National Academies, 0.589·(σN + σE) (rule read, figure worked)
    npt.assert_allclose(CEP, 1.178, rtol=0.005)


def test_one_of_twenty_fixes_lies_outside_its_error_by_chance() -> None:  # binomial distribution (computed): 1.0, none 0.358
    outside = np.sum(ERROR.reshape(-1, 20) > R95_IN_SIGMAS, axis=-1)
    npt.assert_allclose([np.mean(outside), np.mean(outside == 0)], [1.0, 0.358], rtol=0, atol=0.02)


def test_error_fades_from_the_memory_in_ten_minutes() -> None:  # definition of a first-order Gauss-Markov process: 1/e
    noise = gauss_markov(rng=RNG, nights=4000, steps=200, time=600.0)
    later = int(600.0 / INTERVAL)
    npt.assert_allclose(np.mean(noise[:, later:] * noise[:, :-later]), np.exp(-1.0), rtol=0, atol=0.02)


def test_chance_outward_error_beyond_the_watch_circle_is_one_in_two_million() -> None:  # normal distribution: 4.896 sigma one-sided
    beyond = watch_radius(bow_radius=0.0, antenna_from_bow=0.0, position_error=R95_IN_SIGMAS)  # sigma 1
    tail = np.exp(-(beyond**2) / 2.0) / (beyond * np.sqrt(2.0 * np.pi))  # upper bound of the normal tail
    assert 4.5e-7 < tail < 5.5e-7
