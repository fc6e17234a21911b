"""Speed and worth of the rode search, measured in one run: ``python -m tests.benchmarks.catenary``.

Against it stand a scalar root finder in a Python loop and a general library's element-wise one. Both get the same equation, the
proven bracket and as good an end as ours, and have only the root to find; ours is timed for the whole shape.
"""

import math
import time
import timeit
from collections.abc import Callable
from functools import partial
from typing import Any

import numpy as np
from scipy.optimize import brentq
from scipy.optimize.elementwise import find_root

from anchorcalc.physics.catenary import ROWS_AT_A_TIME, rode_points, rode_shape
from anchorcalc.physics.lifting import CLOSE_ENOUGH
from tests.properties.test_rode_shape import Given, random_rows

ROWS = 1_000_000
LOOPED_ROWS = 5_000
WILD_ROWS, WILD_ROWS_AT_A_TIME = 10_000_000, 500_000
SCALAR_CALLS = 2_000
A_WHISKER = 1e-12  # by which line is cut short where the rest lies: the slope is 0 there, and rounding must not lose it


def boat_rows(*, rows: int, seed: int) -> Given:
    """Rodes such as small boats carry, from a light air to a storm."""
    rng = np.random.default_rng(seed)
    height = rng.uniform(2.0, 25.0, rows)
    rode_out = height * rng.uniform(1.5, 10.0, rows)
    return {
        "rode_out": rode_out,
        "chain": np.minimum(rode_out, rng.choice([0.0, 1.0, 1.0, 10.0], rows) * rng.uniform(2.0, 30.0, rows)),
        "height": height,
        "load": 10.0 ** rng.uniform(1.0, 4.3, rows),
        "chain_weight": rng.uniform(5.0, 40.0, rows),
        "line_weight": rng.uniform(-0.3, 1.0, rows),
        "line_stiffness": 10.0 ** rng.uniform(3.7, 6.0, rows),
    }


def equation(given: Given) -> tuple[Any, ...]:
    """Chain, its slope over load, line, its slope, stretch and height; line that lies on the bottom taken off."""
    load, chain, height = given["load"], given["chain"], given["height"]
    line, bend, stretch = given["rode_out"] - chain, given["line_weight"] / load, load / given["line_stiffness"]
    heavy = np.maximum(bend, 1e-9)
    growth = 2.0 * heavy * height / (1.0 + stretch + np.sqrt((1.0 + stretch) ** 2 + 2.0 * heavy * height * stretch))
    line = np.where(bend > 0.0, np.minimum(line, np.sqrt(growth * (growth + 2.0)) / heavy * (1.0 - A_WHISKER)), line)
    return chain, chain * given["chain_weight"] / load, line, line * bend, stretch, height


def bracket(chain_turn: Any, line_turn: Any, given: Given) -> Any:
    """A slope at the joint that is surely too steep."""
    taut_slope = given["height"] / np.sqrt(given["rode_out"] ** 2 - given["height"] ** 2)
    return (np.maximum(chain_turn, -line_turn) + taut_slope) * (1.0 + 1e-9)


def misfit(joint: float, *row: float) -> float:
    """Rise less height of one rode, in plain floats."""
    chain, chain_turn, line, line_turn, stretch, height = row
    anchor, bow = max(joint - chain_turn, 0.0), joint + line_turn
    if joint < chain_turn:
        chain *= joint / chain_turn
    if bow < 0.0:
        line, bow = line * joint / -line_turn, 0.0
    at_anchor, at_joint, at_bow = math.sqrt(1.0 + anchor * anchor), math.sqrt(1.0 + joint * joint), math.sqrt(1.0 + bow * bow)
    rise = chain * (anchor + joint) / (at_anchor + at_joint)
    return rise + line * (joint + bow) * (1.0 / (at_joint + at_bow) + stretch / 2.0) - height


def misfits(joint: Any, *fields: Any) -> Any:
    """Rise less height of many rodes, in arrays."""
    chain, chain_turn, line, line_turn, stretch, height = fields
    anchor, bow = np.maximum(joint - chain_turn, 0.0), joint + line_turn
    chain = chain * np.minimum(joint / np.maximum(chain_turn, 1e-200), 1.0)
    line = np.where(bow < 0.0, line * joint / np.maximum(-line_turn, 1e-200), line)
    bow = np.maximum(bow, 0.0)
    at_anchor, at_joint, at_bow = np.sqrt(1.0 + anchor * anchor), np.sqrt(1.0 + joint * joint), np.sqrt(1.0 + bow * bow)
    rise = chain * (anchor + joint) / (at_anchor + at_joint)
    return rise + line * (joint + bow) * (1.0 / (at_joint + at_bow) + stretch / 2.0) - height


def best_of(work: Callable[[], Any], *, times: int = 3) -> float:
    """Least time of a piece of work, [s]."""
    taken = []
    for _ in range(times):
        start = time.perf_counter()
        work()
        taken.append(time.perf_counter() - start)
    return min(taken)


def looped(given: Given) -> list[float]:
    """Joint slopes by the scalar root finder, row by row."""
    fields = equation(given)
    rows = zip(*(np.asarray(field).tolist() for field in fields), strict=True)
    ends = bracket(fields[1], fields[3], given).tolist()
    return [brentq(misfit, 0.0, end, args=row, xtol=1e-12, rtol=CLOSE_ENOUGH) for row, end in zip(rows, ends, strict=True)]


def elementwise(given: Given) -> Any:
    """Joint slopes by the element-wise root finder, as many rows at a time as ours."""
    found = []
    for start in range(0, len(given["load"]), ROWS_AT_A_TIME):
        some = {name: values[start : start + ROWS_AT_A_TIME] for name, values in given.items()}
        fields = equation(some)
        ends = np.zeros(len(some["load"])), bracket(fields[1], fields[3], some)
        tolerances = {"xatol": 1e-12, "xrtol": CLOSE_ENOUGH, "fatol": 0.0, "frtol": CLOSE_ENOUGH}
        found.append(find_root(misfits, ends, args=fields, tolerances=tolerances).x)
    return np.concatenate(found)


def speed() -> None:
    """Time of a million rows, against two others."""
    given = boat_rows(rows=ROWS, seed=3)
    few = {name: values[:LOOPED_ROWS] for name, values in given.items()}
    fifth = {name: values[: ROWS // 5] for name, values in given.items()}
    ours = best_of(lambda: rode_shape(**given)) / ROWS
    loop = best_of(lambda: looped(few)) / LOOPED_ROWS
    library = best_of(lambda: elementwise(fifth)) / (ROWS // 5)
    print(f"{ROWS:,} rows: {ours * ROWS:.3f} s, {ours * 1e6:.3f} µs a row")
    print(f"scalar root finder in a loop, {LOOPED_ROWS:,} rows: {loop * 1e6:.2f} µs a row, {loop / ours:.1f} times ours")
    print(f"element-wise root finder, {ROWS // 5:,} rows: {library * 1e6:.2f} µs a row, {library / ours:.1f} times ours")
    shape, slopes = rode_shape(**few), np.array(looped(few))
    anchor = np.arctan(np.maximum(slopes - few["chain"] * few["chain_weight"] / few["load"], 0.0))
    print(f"greatest difference of pull angle from the loop's: {np.max(np.abs(np.asarray(shape.pull_angle) - anchor)):.1e} rad")
    both = np.abs(elementwise(few) - slopes) / (1.0 + slopes)
    print(f"and between the other two, in slope: {np.nanmax(both):.1e}; rows without an answer from the element-wise one: {np.isnan(both).sum()}")


def one_row() -> None:
    """Time of a call for one boat."""
    for name, load in (("all lifts", 1000.0), ("chain lies", 200.0)):
        one: Given = {"rode_out": 50.0, "chain": 10.0, "height": 9.0, "load": load, "chain_weight": 11.94, "line_weight": 0.3}
        taken = min(timeit.repeat(partial(rode_shape, **one), number=SCALAR_CALLS, repeat=3))
        print(f"one boat, {name}: {taken / SCALAR_CALLS * 1e6:.0f} µs a call")


def worth() -> None:
    """Misfit in height of rodes far beyond any boat's."""
    worst, failed = 0.0, 0
    for seed in range(WILD_ROWS // WILD_ROWS_AT_A_TIME):
        rows = random_rows(rows=WILD_ROWS_AT_A_TIME, seed=100 + seed)
        off = np.abs(np.asarray(rode_points(**rows, points=2).y)[:, -1] / rows["height"] - 1.0)
        finite = np.all([np.isfinite(result) for result in rode_shape(**rows)], axis=0)
        worst, failed = max(worst, float(np.nanmax(off))), failed + int(np.sum(~(off <= CLOSE_ENOUGH) | ~finite))
    print(f"{WILD_ROWS:,} random rows: {failed} failed, worst misfit {worst:.1e} of the height")


if __name__ == "__main__":
    speed()
    one_row()
    worth()
