"""What holds of every rode: limits, bounds, which way things move; and how the search for it goes."""

import math
from typing import Any

import numpy as np
import numpy.testing as npt
import pytest
from hypothesis import given
from hypothesis import strategies as st

from anchorcalc.physics.all_chain import chain_shape, flat_pull_chain, flat_pull_load
from anchorcalc.physics.catenary import ROWS_AT_A_TIME, rode_for_flat_pull, rode_points, rode_shape
from anchorcalc.physics.hanging import LEAST_LOAD
from anchorcalc.physics.lifting import Rode, first_guess, line_off_bottom, regime, stepped, whole_rise

Given = dict[str, Any]
HIGHEST = 0.999  # of the rode out: how high the roller may stand


@st.composite
def rodes(draw: st.DrawFn, *, least_line_weight: float = -1.0, stretchy: bool = False, all_chain: bool = False) -> Given:
    """A rode such as boats carry, and somewhat beyond."""
    rode_out = draw(st.floats(3.0, 200.0))
    rode: Given = {
        "rode_out": rode_out,
        "chain": rode_out if all_chain else rode_out * draw(st.sampled_from([0.0, 1.0]) | st.floats(1e-4, 1.0)),
        "height": rode_out * draw(st.floats(0.02, HIGHEST)),
        "load": 10.0 ** draw(st.floats(0.0, 5.0)),
        "chain_weight": draw(st.floats(2.0, 100.0)),
        "line_weight": draw(st.just(max(least_line_weight, 0.0)) | st.floats(least_line_weight, 2.0).map(lambda weight: round(weight, 4))),
    }
    return {**rode, "line_stiffness": 10.0 ** draw(st.floats(3.5, 7.0))} if stretchy else rode


def random_rows(*, rows: int, seed: int) -> Given:
    """Rodes far beyond what any boat carries, from piled up to bar taut; line heavy, neutral and buoyant, stiff and springy."""
    rng = np.random.default_rng(seed)
    height = 10.0 ** rng.uniform(-1.0, 2.3, rows)
    rode_out = height * (1.0 + 10.0 ** rng.uniform(-4.0, 3.0, rows))
    return {
        "rode_out": rode_out,
        "chain": rode_out * rng.choice([0.0, 1.0, 0.5, 0.05], rows) * rng.uniform(0.5, 1.0, rows),
        "height": height,
        "load": 10.0 ** rng.uniform(-7.0, 6.0, rows),
        "chain_weight": 10.0 ** rng.uniform(-3.0, 3.0, rows),
        "line_weight": rng.choice([-1.0, 0.0, 1.0], rows) * 10.0 ** rng.uniform(-4.0, 2.3, rows),
        "line_stiffness": np.where(rng.random(rows) < 0.2, np.inf, 10.0 ** rng.uniform(2.0, 9.0, rows)),
    }


def taut_angle(rode: Given) -> float:
    """Angle of a straight line from anchor to roller."""
    return math.asin(rode["height"] / rode["rode_out"])


def test_every_one_of_200_000_rodes_reaches_the_roller() -> None:
    rows = random_rows(rows=200_000, seed=1)
    ends = rode_points(**rows, points=2)
    npt.assert_allclose(np.asarray(ends.y)[:, -1], rows["height"], rtol=1e-9)
    shape = rode_shape(**rows)
    npt.assert_allclose(np.asarray(ends.x)[:, -1], shape.reach, rtol=1e-9)
    for result in shape:
        assert np.isfinite(result).all()
        assert (np.asarray(result) >= 0.0).all()


def test_the_search_climbs_from_below_and_ends_within_30_steps() -> None:
    rows = random_rows(rows=20_000, seed=4)
    load = np.maximum(rows["load"], LEAST_LOAD)
    whole = Rode(
        chain=rows["chain"],
        chain_bend=rows["chain_weight"] / load,
        line=rows["rode_out"] - rows["chain"],
        line_bend=rows["line_weight"] / load,
        stretch=load / rows["line_stiffness"],
        height=rows["height"],
    )
    rode = line_off_bottom(whole)
    case = regime(rode)
    slope = np.minimum(np.maximum(first_guess(rode=rode, case=case), case.least), case.most)
    for _ in range(30):
        slope, _ = stepped(slope=slope, rode=rode, case=case)
        assert (whole_rise(joint=slope, rode=rode) <= rode.height * (1.0 + 1e-13)).all()
    npt.assert_allclose(whole_rise(joint=slope, rode=rode), rode.height, rtol=1e-13)


@given(rodes())
def test_a_rode_of_no_weight_is_a_straight_line(rode: Given) -> None:
    shape = rode_shape(**{**rode, "chain_weight": 0.0, "line_weight": 0.0})
    level = math.sqrt((rode["rode_out"] - rode["height"]) * (rode["rode_out"] + rode["height"]))
    npt.assert_allclose(shape.pull_angle, taut_angle(rode), rtol=1e-8)
    npt.assert_allclose(shape.reach, level, rtol=1e-8)
    npt.assert_allclose(shape.bow_tension, rode["load"] * rode["rode_out"] / level, rtol=1e-7)
    assert shape.chain_lying == 0.0


@given(rodes())
def test_a_load_without_end_pulls_the_rode_straight(rode: Given) -> None:
    shape = rode_shape(**{**rode, "load": 1e12})
    npt.assert_allclose(shape.pull_angle, taut_angle(rode), rtol=1e-4)
    npt.assert_allclose(shape.reach, math.sqrt(rode["rode_out"] ** 2 - rode["height"] ** 2), rtol=1e-6)


@given(rodes(all_chain=True))
def test_without_load_the_chain_hangs_straight_down_and_the_rest_lies(rode: Given) -> None:
    shape = rode_shape(**{**rode, "load": 0.0})
    npt.assert_allclose(shape.chain_lying, rode["rode_out"] - rode["height"], rtol=1e-3, atol=1e-3)
    npt.assert_allclose(shape.reach, rode["rode_out"] - rode["height"], rtol=1e-3, atol=1e-3)
    npt.assert_allclose(shape.bow_tension, rode["chain_weight"] * rode["height"], rtol=1e-3)
    assert shape.pull_angle == 0.0


@given(rodes(least_line_weight=0.01), st.floats(0.0, 1e5))
def test_reach_lies_between_a_piled_and_a_straight_rode(rode: Given, load: float) -> None:
    reach = float(rode_shape(**{**rode, "load": load}).reach)
    assert rode["rode_out"] - rode["height"] <= reach * (1.0 + 1e-9)
    assert reach <= math.sqrt(rode["rode_out"] ** 2 - rode["height"] ** 2) * (1.0 + 1e-9)


@given(rodes(stretchy=True))
def test_pull_is_never_steeper_than_the_taut_line_unless_the_line_holds_up_the_chain(rode: Given) -> None:
    angle = float(rode_shape(**rode).pull_angle)
    line = rode["rode_out"] - rode["chain"]
    assert angle >= 0.0
    if rode["chain"] * rode["chain_weight"] + line * rode["line_weight"] >= 0.0:
        assert angle <= taut_angle(rode) * (1.0 + 1e-7)


def test_floating_line_without_chain_pulls_steeper_than_the_taut_line() -> None:
    rode: Given = {"rode_out": 40.0, "chain": 0.0, "height": 6.0, "load": 100.0, "chain_weight": 0.0, "line_weight": -0.5}
    assert float(rode_shape(**rode).pull_angle) > taut_angle(rode)


@given(rodes(all_chain=True))
def test_the_search_agrees_with_the_closed_form_of_all_chain(rode: Given) -> None:
    searched = rode_shape(**{**rode, "chain": math.inf})
    closed = chain_shape(**{name: rode[name] for name in ("rode_out", "height", "load", "chain_weight")})
    scale = rode["rode_out"] / (rode["rode_out"] - rode["height"])
    for one, other, size in zip(searched, closed, (1.0, rode["rode_out"], rode["load"] * scale, rode["rode_out"], 1.0, 1.0), strict=True):
        npt.assert_allclose(one, other, rtol=1e-6 * scale, atol=1e-8 * size * scale)


@given(rodes(least_line_weight=0.01))
def test_chain_at_the_end_of_no_line_is_the_same_as_line_of_the_same_weight(rode: Given) -> None:
    one = rode_shape(**{**rode, "line_weight": rode["chain_weight"]})
    other = rode_shape(**{**rode, "chain": rode["rode_out"]})
    npt.assert_allclose(one.reach, other.reach, rtol=1e-7)
    npt.assert_allclose(one.bow_tension, other.bow_tension, rtol=1e-6)
    npt.assert_allclose(one.chain_lying + one.line_lying, other.chain_lying, rtol=1e-6, atol=1e-6 * rode["rode_out"])


# Which way each result moves. With the load only where the line neither floats nor stretches.
MOVES = [
    ("rode_out", 1.0, {"pull_angle": -1, "chain_lying": 1, "bow_tension": -1, "reach": 1}),
    ("height", -1.0, {"pull_angle": 1, "chain_lying": -1, "bow_tension": 1, "reach": -1}),
    ("load", 0.0, {"pull_angle": 1, "chain_lying": -1, "bow_tension": 1, "reach": 1}),
    ("chain_weight", -1.0, {"pull_angle": -1, "chain_lying": 1, "bow_tension": 1}),
    ("line_weight", -1.0, {"pull_angle": -1, "chain_lying": 1, "bow_tension": 1}),
]


@pytest.mark.parametrize(("name", "least_line_weight", "ways"), MOVES, ids=[move[0] for move in MOVES])
@given(data=st.data(), more=st.floats(0.0, 1.0))
def test_each_result_moves_one_way_only(*, name: str, least_line_weight: float, ways: dict[str, int], data: st.DataObject, more: float) -> None:
    rode = data.draw(rodes(least_line_weight=min(least_line_weight, 0.0)))
    changed = rode[name] + abs(rode[name]) * more
    before, after = rode_shape(**rode), rode_shape(**{**rode, name: min(changed, HIGHEST * rode["rode_out"]) if name == "height" else changed})
    for result, way in ways.items():
        was, now = float(getattr(before, result)), float(getattr(after, result))
        size = {"pull_angle": 1.0, "bow_tension": was}.get(result, rode["rode_out"])
        assert way * (now - was) >= -1e-6 * size


@given(rodes(stretchy=True))
def test_stretch_eases_the_pull_and_lets_the_bow_further_off(rode: Given) -> None:
    springy, stiff = rode_shape(**rode), rode_shape(**{**rode, "line_stiffness": math.inf})
    assert springy.pull_angle <= stiff.pull_angle + 1e-7
    assert springy.chain_lying >= stiff.chain_lying - 1e-7 * rode["rode_out"]
    assert springy.bow_tension <= stiff.bow_tension * (1.0 + 1e-6)
    assert springy.reach >= stiff.reach * (1.0 - 1e-9)


@given(rodes(stretchy=True), st.floats(0.01, 0.2))
def test_rode_for_flat_pull_is_the_least_that_pulls_flat(rode: Given, part: float) -> None:
    least = float(rode_for_flat_pull(**{name: value for name, value in rode.items() if name != "rode_out"}))
    if not math.isfinite(least):
        assert rode_shape(**{**rode, "rode_out": 1e4 * rode["height"]}).pull_angle > 0.0
        return
    assert rode_shape(**{**rode, "rode_out": least * (1.0 + part)}).pull_angle == 0.0
    if least > rode["height"]:
        at = rode_shape(**{**rode, "rode_out": least})
        npt.assert_allclose(at.pull_angle, 0.0, rtol=0, atol=1e-5)
        npt.assert_allclose(at.chain_lying + at.line_lying, 0.0, rtol=0, atol=1e-5 * least)
    if least * (1.0 - part) > rode["height"]:
        assert rode_shape(**{**rode, "rode_out": least * (1.0 - part)}).pull_angle > 0.0


@pytest.mark.parametrize("line_weight", [0.0, -0.5])
def test_no_length_of_line_without_weight_and_chain_pulls_flat(line_weight: float) -> None:
    assert rode_for_flat_pull(chain=0.0, height=5.0, load=200.0, chain_weight=12.0, line_weight=line_weight) == math.inf


@given(rodes(all_chain=True))
def test_load_and_length_of_chain_for_a_flat_pull_are_inverse(rode: Given) -> None:
    load = flat_pull_load(rode_out=rode["rode_out"], height=rode["height"], chain_weight=rode["chain_weight"])
    npt.assert_allclose(flat_pull_chain(height=rode["height"], load=load, chain_weight=rode["chain_weight"]), rode["rode_out"], rtol=1e-9)


def test_line_that_floats_level_adds_nothing_at_the_anchor() -> None:
    rode: Given = {"chain": 2.0, "height": 5.0, "load": 20.0, "chain_weight": 8.0, "line_weight": -0.8}
    shorter, longer = rode_shape(rode_out=60.0, **rode), rode_shape(rode_out=90.0, **rode)
    npt.assert_allclose(longer.pull_angle, shorter.pull_angle, rtol=1e-9)
    npt.assert_allclose(longer.line_floating - shorter.line_floating, 30.0, rtol=1e-9)
    npt.assert_allclose(longer.reach - shorter.reach, 30.0, rtol=1e-9)
    assert shorter.line_floating > 0.0


@given(st.lists(rodes(stretchy=True), min_size=1, max_size=4))
def test_a_fleet_gets_what_each_boat_gets(boats: list[Given]) -> None:
    fleet = rode_shape(**{name: np.array([boat[name] for boat in boats]) for name in boats[0]})
    for row, boat in enumerate(boats):
        for many, one in zip(fleet, rode_shape(**boat), strict=True):
            npt.assert_allclose(np.asarray(many)[row], one, rtol=1e-11, atol=1e-11)


def test_a_large_fleet_gets_what_its_parts_get_and_keeps_its_order() -> None:
    rows = random_rows(rows=2 * ROWS_AT_A_TIME + 5, seed=2)
    whole = rode_shape(**rows)
    for some in (slice(0, 40), slice(ROWS_AT_A_TIME - 20, ROWS_AT_A_TIME + 20), slice(-40, None)):
        for many, few in zip(whole, rode_shape(**{name: values[some] for name, values in rows.items()}), strict=True):
            npt.assert_allclose(np.asarray(many)[some], few, rtol=1e-9, atol=1e-9)


def test_inputs_broadcast_together() -> None:
    shape = rode_shape(
        rode_out=np.array([[30.0], [50.0], [70.0]]), chain=10.0, height=np.array([4.0, 8.0]), load=600.0, chain_weight=12.0, line_weight=0.3
    )
    assert {np.shape(result) for result in shape} == {(3, 2)}
    one = rode_shape(rode_out=50, chain=10, height=8, load=600, chain_weight=12, line_weight=0.3)
    npt.assert_allclose(np.asarray(shape.reach)[1, 1], one.reach, rtol=1e-12)


@pytest.mark.parametrize(("rode_out", "height"), [(5.0, 5.0), (5.0, 6.0), (5.0, 0.0), (5.0, -1.0), (math.nan, 3.0)])
def test_a_rode_that_does_not_reach_the_bottom_has_no_shape(rode_out: float, height: float) -> None:
    shape = rode_shape(rode_out=rode_out, chain=2.0, height=height, load=100.0, chain_weight=12.0, line_weight=0.3)
    assert all(np.isnan(result) for result in shape)


@given(rodes(stretchy=True))
def test_points_run_from_the_anchor_up_to_the_roller(rode: Given) -> None:
    run, shape = rode_points(**rode, points=9), rode_shape(**rode)
    x, y = np.asarray(run.x), np.asarray(run.y)
    assert x.shape == y.shape == (18,)
    assert x[0] == y[0] == 0.0
    npt.assert_allclose([x[-1], y[-1]], [shape.reach, rode["height"]], rtol=1e-9)
    npt.assert_allclose([x[8], y[8]], [x[9], y[9]], rtol=1e-12)
    assert (np.diff(x) >= -1e-9).all()
    assert (np.diff(y) >= -1e-9).all()
