"""Rode shapes against an integration of the hanging cable, metre by metre, by a general library."""

import math
from typing import Any

import numpy.testing as npt
import pytest
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

from anchorcalc.physics.catenary import rode_shape

Given = dict[str, Any]


def integrated(*, lift: float, rode: Given) -> tuple[float, float, float]:
    """Reach, height and tension at the bow by integration: lift is the vertical pull at the anchor, or minus the length that lies."""
    load, lying = rode["load"], max(-lift, 0.0)
    x, y, pull = lying + max(lying - rode["chain"], 0.0) * load / rode["line_stiffness"], 0.0, max(lift, 0.0)
    parts = ((0.0, rode["chain"], rode["chain_weight"], math.inf), (rode["chain"], rode["rode_out"], rode["line_weight"], rode["line_stiffness"]))
    for start, end, weight, stiffness in parts:

        def along(_: float, state: Any, weight: float = weight, stiffness: float = stiffness) -> list[float]:
            tension = math.hypot(load, state[2])
            longer = 1.0 + tension / stiffness
            return [load / tension * longer, state[2] / tension * longer, weight]

        def level(_: float, state: Any) -> float:
            return float(state[2])

        level.terminal, level.direction = True, -1.0  # type: ignore[attr-defined]
        if max(start, lying) < end:
            done = solve_ivp(along, (max(start, lying), end), [x, y, pull], rtol=1e-10, atol=1e-10, method="DOP853", events=level)
            x, y, pull = done.y[:, -1]
            x += (end - done.t[-1]) * (1.0 + load / stiffness)  # what floats level
    return x, y, math.hypot(load, pull)


HANGING = {
    "chain lies": {"rode_out": 50.0, "chain": 20.0, "height": 9.0, "load": 300.0, "line_weight": 0.3},
    "all lifts": {"rode_out": 50.0, "chain": 10.0, "height": 9.0, "load": 1000.0, "line_weight": 0.3},
    "springy line": {"rode_out": 40.0, "chain": 5.0, "height": 9.0, "load": 3000.0, "line_weight": 0.3, "line_stiffness": 15e3},
    "springy line, chain lies": {"rode_out": 40.0, "chain": 15.0, "height": 6.0, "load": 250.0, "line_weight": 0.3, "line_stiffness": 4e3},
    "line lies": {"rode_out": 60.0, "chain": 5.0, "height": 6.0, "load": 8.0, "line_weight": 0.6, "line_stiffness": 15e3},
    "buoyant line": {"rode_out": 50.0, "chain": 6.0, "height": 7.0, "load": 500.0, "line_weight": -0.2, "line_stiffness": 20e3},
    "buoyant line, chain lies": {"rode_out": 50.0, "chain": 12.0, "height": 7.0, "load": 120.0, "line_weight": -0.2, "line_stiffness": 20e3},
    "line floats": {"rode_out": 60.0, "chain": 2.0, "height": 5.0, "load": 20.0, "line_weight": -0.8, "line_stiffness": 5e3},
    "line floats, chain lies": {"rode_out": 60.0, "chain": 6.0, "height": 5.0, "load": 20.0, "line_weight": -0.8, "line_stiffness": 5e3},
    "no chain": {"rode_out": 35.0, "chain": 0.0, "height": 5.0, "load": 400.0, "line_weight": 0.4, "line_stiffness": 20e3},
    "short and steep": {"rode_out": 10.0, "chain": 4.0, "height": 9.8, "load": 900.0, "line_weight": 0.0},
}


@pytest.mark.parametrize("name", HANGING)
def test_shape_is_that_of_the_integrated_hanging_cable(name: str) -> None:
    rode: Given = {"chain_weight": 12.0, "line_stiffness": math.inf, **HANGING[name]}
    steep = 2.0 * rode["load"] / math.sqrt((rode["rode_out"] / rode["height"]) ** 2 - 1.0) + 200.0
    lift = brentq(lambda lift: integrated(lift=lift, rode=rode)[1] - rode["height"], -rode["rode_out"], steep, xtol=1e-10)
    reach, height, tension = integrated(lift=lift, rode=rode)
    shape = rode_shape(**rode)
    npt.assert_allclose(height, rode["height"], rtol=1e-8)
    npt.assert_allclose(shape.pull_angle, math.atan2(max(lift, 0.0), rode["load"]), rtol=1e-7, atol=1e-9)
    npt.assert_allclose(shape.chain_lying + shape.line_lying, max(-lift, 0.0), rtol=1e-7, atol=1e-7)
    npt.assert_allclose(shape.bow_tension, tension, rtol=1e-8)
    npt.assert_allclose(shape.reach, reach, rtol=1e-8)
