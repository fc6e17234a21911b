"""Rodes against printed catenary problems; tolerance is half the last digit printed.

Textbook cables between level supports are two rodes back to back: half the length, with the sag as the height and no lift at
the low end. Statics knows no units, so each problem is worked in its own (feet and pounds, metres and newtons).
"""

import math
from collections.abc import Callable
from typing import Any

import numpy.testing as npt
import pytest
from scipy.optimize import brentq

from anchorcalc.physics.all_chain import chain_shape, flat_pull_chain, flat_pull_load
from anchorcalc.physics.catenary import rode_for_flat_pull, rode_shape
from anchorcalc.physics.hanging import hanging_rode

STANDARD_GRAVITY = 9.80665
STEEL_IN_WATER = 1.0 - 1025.0 / 7850.0  # share of the weight of steel that is left in sea water


def half_cable(*, length: float, sag: float, weight: float) -> tuple[float, Any]:
    """Least tension of a cable between level supports, and the shape of one half of it."""
    load = float(flat_pull_load(rode_out=length / 2, height=sag, chain_weight=weight))
    return load, chain_shape(rode_out=length / 2, height=sag, load=load, chain_weight=weight)


def found(wanted: Callable[[float], Any], low: float, high: float) -> float:
    """Where a function crosses zero."""
    return float(brentq(lambda x: float(wanted(x)), low, high, xtol=1e-12, rtol=1e-14))


def test_ship_chain_in_25_m_lifts_as_printed() -> None:
    # MIT course 2.019 Design of Ocean Systems, lecture 13 (28 March 2011), example [read].
    load = 1_510_000.0 - 828.0 * 25.0  # tension at the top less the weight of a length as long as the height
    hanging = flat_pull_chain(height=25.0, load=load, chain_weight=828.0)
    npt.assert_allclose(hanging, 300.93, rtol=0, atol=0.005)
    shape = chain_shape(rode_out=350.0, height=25.0, load=load, chain_weight=828.0)
    npt.assert_allclose(load / 1000, 1489.3, rtol=0, atol=0.05)
    npt.assert_allclose(shape.bow_tension / 1000, 1510.0, rtol=0, atol=0.05)
    npt.assert_allclose(shape.reach - shape.chain_lying, 299.54, rtol=0, atol=0.005)
    npt.assert_allclose(828.0 * (350.0 - shape.chain_lying) / 1000, 249.17, rtol=0, atol=0.005)


def test_wire_of_625_ft_sags_25_ft() -> None:
    # University catenary problem sheet with solutions, problem 1 [read].
    load, half = half_cable(length=625.0, sag=25.0, weight=2.0)
    npt.assert_allclose(load / 2.0, 1940.625, rtol=0, atol=0.0005)
    npt.assert_allclose(2 * half.reach, 622.33, rtol=0, atol=0.005)
    npt.assert_allclose(half.bow_tension, 3931.25, rtol=0, atol=0.005)
    npt.assert_allclose(math.degrees(math.acos(load / half.bow_tension)), 9.0, rtol=0, atol=0.5)


def test_line_of_140_m_between_towers_120_m_apart() -> None:
    # Statics lecture set, section 6.7 Cables: catenaries, example 1 [read]; the tension from the printed rule T = w y.
    weight = 3.0 * 9.81
    sag = found(lambda sag: half_cable(length=140.0, sag=sag, weight=weight)[1].reach - 60.0, 1.0, 69.0)
    load, half = half_cable(length=140.0, sag=sag, weight=weight)
    npt.assert_allclose(sag, 31.70, rtol=0, atol=0.005)
    npt.assert_allclose(load / weight, 61.45, rtol=0, atol=0.005)
    npt.assert_allclose(half.bow_tension, 2741.0, rtol=0, atol=0.5)


def test_cable_over_500_ft_sags_100_ft() -> None:
    # Beer & Johnston, Vector Mechanics: Statics, sample problem on the catenary [from memory; recomputed, agrees].
    length = found(lambda length: half_cable(length=length, sag=100.0, weight=3.0)[1].reach - 250.0, 505.0, 700.0)
    load, half = half_cable(length=length, sag=100.0, weight=3.0)
    npt.assert_allclose(length, 550.0, rtol=0, atol=0.5)
    npt.assert_allclose(load / 3.0, 328.0, rtol=0, atol=0.5)
    npt.assert_allclose(load, 984.0, rtol=0, atol=0.5)
    npt.assert_allclose(half.bow_tension, 1284.0, rtol=0, atol=0.5)


@pytest.mark.parametrize(
    ("length", "weight", "sag", "span", "greatest", "tolerance"),
    [
        (25.0, 30.0 / 25.0, 10.0, 12.36, 15.38, 0.005),  # Beer & Johnston, Statics, 10th ed., problem 7.127 [read; answer computed]
        (500.0, 2.8, 125.0, 412.0, 875.0, 0.5),  # the same, problem 7.128 [read; answer computed]
    ],
)
def test_sag_of_a_cable_gives_its_span_and_tension(
    *, length: float, weight: float, sag: float, span: float, greatest: float, tolerance: float
) -> None:
    _, half = half_cable(length=length, sag=sag, weight=weight)
    npt.assert_allclose(2 * half.reach, span, rtol=0, atol=tolerance)
    npt.assert_allclose(half.bow_tension, greatest, rtol=0, atol=tolerance * (1.0 + 1e-9))  # 15.375 lies just between two figures


def test_tape_of_50_m_pulled_to_60_n() -> None:
    # Beer & Johnston, Statics, 10th ed., problem 7.130 [read; answer computed].
    weight = 1.6 * 9.81 / 50.0
    load = math.sqrt(60.0**2 - (weight * 25.0) ** 2)
    level = hanging_rode(length=50.0, rise=0.0, load=load, weight=weight)
    npt.assert_allclose(level.span, 49.86, rtol=0, atol=0.005)
    npt.assert_allclose(math.hypot(load, float(level.high_pull)), 60.0, rtol=1e-12)


def test_end_tension_of_seven_times_the_least() -> None:
    # Physics problem collection [read; answer computed].
    load = 1.5 / math.sqrt(48.0)  # of 1 N/m: half the chain weighs √(7² - 1) loads
    npt.assert_allclose(hanging_rode(length=3.0, rise=0.0, load=load, weight=1.0).span, 1.141, rtol=0, atol=0.0005)


def test_slack_wire_over_100_m() -> None:
    # Physics problem collection [read; answer computed].
    length = found(lambda length: half_cable(length=length, sag=0.7, weight=0.2 * 9.8)[1].reach - 50.0, 100.001, 100.1)
    npt.assert_allclose(half_cable(length=length, sag=0.7, weight=0.2 * 9.8)[0], 3500.0, rtol=0, atol=0.5)


def test_catenary_through_10_6() -> None:
    # Mathematics forum exercise [read]: y = C cosh(x/C) - C; of 1 N/m, the load is C.
    def run(load: float) -> Any:
        return chain_shape(rode_out=float(flat_pull_chain(height=6.0, load=load, chain_weight=1.0)), height=6.0, load=load, chain_weight=1.0).reach

    npt.assert_allclose(found(lambda load: run(load) - 10.0, 1.0, 100.0), 9.1889, rtol=0, atol=0.00005)


# NREL MoorPy, public test suite for its catenary routine [read]: 500 m of line, ends 400 m apart and 200 m different in height.
@pytest.mark.parametrize("stiffness", [math.inf, 7.51e12])
def test_mooring_line_partly_on_the_bottom(stiffness: float) -> None:
    shape = rode_shape(rode_out=500.0, chain=0.0, height=200.0, load=96643.428, chain_weight=0.0, line_weight=800.0, line_stiffness=stiffness)
    npt.assert_allclose(shape.reach, 400.0, rtol=1e-6)
    npt.assert_allclose(shape.line_lying, 202.8103, rtol=0, atol=0.00005)
    npt.assert_allclose(math.sqrt(float(shape.bow_tension) ** 2 - 96643.428**2), 237751.755, rtol=1e-6)
    assert shape.pull_angle == 0.0


def test_bottom_friction_takes_its_share_of_the_pull() -> None:
    shape = chain_shape(rode_out=500.0, height=200.0, load=96643.428, chain_weight=800.0)
    npt.assert_allclose(96643.428 - 0.1 * 800.0 * shape.chain_lying, 80418.604, rtol=0, atol=0.2)


def test_mooring_line_that_dips_below_its_low_end() -> None:
    ends = hanging_rode(length=500.0, rise=200.0, load=43694.581, weight=200.0)
    npt.assert_allclose(ends.span, 400.0, rtol=1e-6)
    npt.assert_allclose(ends.high_pull, 77634.401, rtol=0, atol=0.05)
    npt.assert_allclose(ends.low_pull, -22365.599, rtol=0, atol=0.05)


# All chain, pull at the anchor just flat: figures worked from √(h² + 2 h H / w), the formula of the MIT lecture [computed].
@pytest.mark.parametrize(
    ("mass", "height", "load", "rode_out", "bow_tension", "reach"),
    [
        (1.4, 11.0, 1000.0, 44.32, 1131.3, 42.47),
        (1.4, 7.2, 2000.0, 49.64, 2085.9, 48.95),
        (2.25, 11.5, 4000.0, 70.20, 4220.6, 68.94),
    ],
)
def test_chain_that_just_pulls_flat(*, mass: float, height: float, load: float, rode_out: float, bow_tension: float, reach: float) -> None:
    weight = mass * STANDARD_GRAVITY * STEEL_IN_WATER
    alone = flat_pull_chain(height=height, load=load, chain_weight=weight)
    npt.assert_allclose(alone, rode_out, rtol=0, atol=0.005)
    npt.assert_allclose(rode_for_flat_pull(chain=100.0, height=height, load=load, chain_weight=weight, line_weight=0.3), rode_out, rtol=0, atol=0.005)
    shape = rode_shape(rode_out=alone, chain=math.inf, height=height, load=load, chain_weight=weight, line_weight=0.0)
    npt.assert_allclose(shape.bow_tension, bow_tension, rtol=0, atol=0.05)
    npt.assert_allclose(shape.reach, reach, rtol=0, atol=0.005)
    npt.assert_allclose(shape.pull_angle, 0.0, rtol=0, atol=1e-6)
    npt.assert_allclose(shape.chain_lying, 0.0, rtol=0, atol=1e-6)


# Two catenary parts in series, cross-checked by quadrature of the equilibrium equations [computed].
@pytest.mark.parametrize(
    ("chain", "chain_weight", "line", "line_weight", "height", "load", "lying", "angle", "bow_tension", "reach"),
    [
        (20.0, 11.94, 30.0, 0.3, 9.0, 300.0, 13.31, 0.00, 312.9, 48.80),
        (10.0, 11.94, 40.0, 0.3, 9.0, 1000.0, 0.00, 4.06, 1020.3, 49.16),
        (6.0, 11.94, 29.0, 0.3, 7.0, 3000.0, 0.00, 10.26, 3064.1, 34.29),
        (15.0, 19.18, 55.0, 0.45, 10.0, 2500.0, 0.00, 2.17, 2532.9, 69.25),
    ],
)
def test_chain_and_line_in_series(
    *, chain: float, chain_weight: float, line: float, line_weight: float, height: float, load: float,
    lying: float, angle: float, bow_tension: float, reach: float,
) -> None:  # fmt: skip
    shape = rode_shape(rode_out=chain + line, chain=chain, height=height, load=load, chain_weight=chain_weight, line_weight=line_weight)
    npt.assert_allclose(shape.chain_lying, lying, rtol=0, atol=0.005)
    npt.assert_allclose(math.degrees(float(shape.pull_angle)), angle, rtol=0, atol=0.005)
    npt.assert_allclose(shape.bow_tension, bow_tension, rtol=0, atol=0.05)
    npt.assert_allclose(shape.reach, reach, rtol=0, atol=0.005)
