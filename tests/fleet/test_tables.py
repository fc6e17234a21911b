"""Tables of every kind in, the same kind out: untouched, in order, with the answers beside."""

import json
import time
import warnings
from typing import Any

import numpy as np
import pandas as pd
import polars as pl
import pyarrow as pa
import pytest

import anchorcalc
from anchorcalc import InputError, TableError, UnknownQuestion, check_table
from anchorcalc.doors import fleet

FLEET: dict[str, list[Any]] = {
    "boat": ["Skarv", "Lom", "Teist", "Alke"],
    "depth [ft]": [12.0, 900.0, None, 30.0],
    "bow_height": ["5 ft", "4 ft", "1 m", ""],
    "scope": [7.0, 5.0, 7.0, 5.0],
}
ROWS = {"rode_out [ft]": [119.0, None, None, (30 + 1.2 / 0.3048) * 5]}
KINDS = {"dict": dict, "pandas": pd.DataFrame, "polars": pl.DataFrame, "pyarrow": pa.table}


def listed(table: Any, name: str) -> list[Any]:
    """Return a column of any kind of table as a list, None where nothing is."""
    column = table[name]
    if isinstance(column, pa.ChunkedArray):
        return column.to_pylist()
    return [None if one is pd.NA or (isinstance(one, float) and np.isnan(one)) else one for one in list(column)]


@pytest.mark.parametrize("kind", KINDS)
def test_the_same_kind_comes_back_with_every_row_in_order(kind: str) -> None:
    given = KINDS[kind](FLEET)
    got = check_table("rode_to_let_out", given)
    assert type(got) is type(given)
    assert listed(got, "boat") == FLEET["boat"]
    assert listed(got, "depth [ft]") == FLEET["depth [ft]"]
    assert listed(got, "bow_height") == FLEET["bow_height"]
    found = listed(got, "rode_out [ft]")
    assert [one is None for one in found] == [False, True, True, False]
    assert found[0] == pytest.approx(119.0, rel=1e-15)
    assert found[3] == pytest.approx(ROWS["rode_out [ft]"][3], rel=1e-15)
    assert [bool(one) for one in listed(got, "problem")] == [False, True, True, False]
    assert listed(got, "problem")[2].startswith("depth: is missing")
    assert listed(got, "cautions")[0].split()[0] == "no_tide"


def test_what_was_given_is_not_written_to() -> None:
    given = pd.DataFrame(FLEET)
    before = given.copy(deep=True)
    check_table("rode_to_let_out", given)
    pd.testing.assert_frame_equal(given, before)
    arrays = {"depth [m]": np.array([4.0, 5.0])}
    got = check_table("rode_to_let_out", arrays)
    assert list(arrays) == ["depth [m]"]
    assert got["depth [m]"] is arrays["depth [m]"]


INDEXES = [[7, 7, 2, 1], ["d", "c", "b", "a"], pd.date_range("2026-06-01", periods=4), pd.MultiIndex.from_product([["a", "b"], [1, 2]])]


@pytest.mark.parametrize("index", INDEXES)
def test_a_pandas_index_stays(index: Any) -> None:
    given = pd.DataFrame(FLEET, index=index)
    got = check_table("rode_to_let_out", given)
    pd.testing.assert_frame_equal(got[given.columns.tolist()], given)
    assert got["problem"].iloc[0] == ""


def test_columns_keep_their_types_whatever_stands_in_them() -> None:
    full, empty = pd.DataFrame(FLEET), pd.DataFrame(FLEET).iloc[:0]
    assert check_table("rode_to_let_out", full).dtypes.equals(check_table("rode_to_let_out", empty).dtypes)
    with_rode = full.assign(**{"rode_aboard": "60 m"})
    assert str(check_table("rode_to_let_out", with_rode)["enough"].dtype) == "boolean"


@pytest.mark.parametrize("kind", KINDS)
def test_a_table_without_rows_has_the_columns_of_the_answer(kind: str) -> None:
    given = KINDS[kind]({"depth [m]": np.array([], dtype=float)})
    got = check_table("rode_to_let_out", given)
    names = got.column_names if kind == "pyarrow" else list(got.columns) if kind != "dict" else list(got)
    assert names[0] == "depth [m]"
    assert {"rode_out [m]", "cautions", "problem"} <= set(names)
    assert len(listed(got, "rode_out [m]")) == 0


def test_more_rows_than_a_batch_are_answered_in_order() -> None:
    rows = 2 * fleet.BATCH + 5
    depth = np.linspace(1.0, 150.0, rows)
    depth[::1000] = np.nan
    got = check_table("rode_to_let_out", {"depth [m]": depth})
    np.testing.assert_array_equal(np.isnan(got["rode_out [m]"]), np.isnan(depth))
    np.testing.assert_allclose(got["rode_out [m]"], (depth + 1.2) * 7.0, rtol=1e-15)
    assert got["problem"][1000] != "" and got["problem"][1001] == ""


# --- headings -----------------------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("heading", "units", "wanted"),
    [
        ("depth [ft]", None, "rode_out [ft]"), ("depth [fathom]", None, "rode_out [fathom]"), ("depth [fm]", None, "rode_out [fathom]"),
        ("depth [m]", None, "rode_out [m]"), ("depth", None, "rode_out [m]"), ("depth [ft]", "metric", "rode_out [m]"),
        ("depth [m]", "us", "rode_out [ft]"),
        (" depth[ ft ] ", None, "rode_out [ft]"),
    ],
)  # fmt: skip
def test_results_come_in_the_unit_of_the_depth_heading(heading: str, units: str | None, wanted: str) -> None:
    got = check_table("rode_to_let_out", {heading: ["4"], "bow_height [ft]": [4.0]}, units=units)
    assert wanted in got


def test_a_result_with_an_input_s_name_is_called_answer() -> None:
    got = check_table("line_angle", {"angle": ["10 deg", None], "scope": [None, "5:1"], "problem": ["none", "old"]})
    assert list(got) == ["angle", "scope", "problem", "scope_answer", "angle_answer [deg]", "cautions", "problem_answer"]
    assert got["problem"] == ["none", "old"]


def test_answers_can_be_asked_on() -> None:
    first = check_table("rode_to_let_out", {"depth [m]": [4.0], "boat_length [m]": [9.0]})
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        second = check_table("swing_radius", first)
    single = anchorcalc.swing_radius(rode_out=anchorcalc.rode_to_let_out(depth="4 m").results.rode_out, depth="4 m", boat_length="9 m")
    assert second["swing_radius [m]"][0] == pytest.approx(single.results.swing_radius.si, rel=1e-15)
    assert second["problem_answer"].tolist() == [""]


@pytest.mark.parametrize(
    ("column", "would_do"),
    [
        ("bow_heigth [ft]", "bow_height [ft]"), ("bow height", "bow_height [m]"), ("Bow_Height", "bow_height [m]"), ("bowHeight", "bow_height [m]"),
        ("bow_height (m)", "bow_height [m]"), ("Bow height, ft", "bow_height [ft]"), ("bow_height_in_ft", "bow_height [ft]"), ("SCOPE", "scope"),
        ("bow height [kg]", "bow_height [m]"), ("tide-rise", "tide_rise [m]"), ("rise of the tide [m]", "tide_rise [m], if it is that,"),
        ("chain out [m]", "chain [m], if it is that,"), ("depth", ""), ("charted depth [m]", ""), ("chain colour", ""), ("wind direction [deg]", ""),
        ("Depth [m]", "depth [m]"), ("boat", ""), ("", ""),
    ],
)  # fmt: skip
def test_a_near_miss_of_an_input_is_warned_of_with_the_heading_that_would_do(column: str, would_do: str) -> None:
    question = "rode_to_let_out" if column != "depth" else "line_angle"
    with warnings.catch_warnings(record=True) as said:
        warnings.simplefilter("always")
        got = check_table(question, {"depth [m]" if question == "rode_to_let_out" else "scope": [4.0], column: [2.0]})
    assert got[column] == [2.0]
    wanted = (
        f"table: {column!r} is no input of {question}, though it looks like one; {would_do} would do; as it is, the column is passed through unread"
    )
    assert [str(one.message) for one in said] == [wanted] * bool(would_do)


def test_headings_that_only_come_near_are_named_where_nothing_else_is_an_input() -> None:
    with pytest.raises(TableError) as refused:
        check_table("rode_to_let_out", {"Depth [m]": [4.0], "depth (ft)": [4.0], "boat": ["Skarv"]})
    first, *near = (str(one) for one in refused.value.faults)
    assert first.startswith("table: 'Depth [m], depth (ft), boat' are its headings: it has no column that is an input of rode_to_let_out; ")
    assert near == [
        f"table: {one!r} is no input of rode_to_let_out, though it looks like one; depth [{one[7:-1]}] would do"
        for one in ("Depth [m]", "depth (ft)")
    ]


@pytest.mark.parametrize("column", ["boat", "notes", "displacement", "engine_power [kW]", "rode_out [m]", "height", "length", 5])
def test_other_columns_pass_through_in_silence(column: Any) -> None:
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        assert check_table("rode_to_let_out", {"depth [m]": [4.0], column: ["as it was"]})[column] == ["as it was"]


@pytest.mark.parametrize(
    ("table", "code"),
    [
        ({"depth [parsec]": [1.0]}, "unknown_unit"), ({"depth [kg]": [1.0]}, "wrong_dimension"), ({"scope [m]": [1.0]}, "wrong_dimension"),
        ({"depth": ["1 m"], "depth [m]": [1.0]}, "given_twice"), ({"boat": ["Skarv"]}, "missing"), ({}, "missing"),
        ({"depth [m]": [1.0], "scope": [1.0, 2.0]}, "contradiction"), ({"depth [m]": 4.0}, "wrong_kind"), ([1, 2], "wrong_kind"),
        ({"depth [m]": np.ones((2, 2))}, "wrong_kind"), ({"depth": "4 m"}, "wrong_kind"), ({"depth [m]": {0: 4.0, 1: 5.0}}, "wrong_kind"),
        ({"depth [m]": {4.0, 5.0}}, "wrong_kind"), ({"depth [m]": iter([4.0])}, "wrong_kind"), (pa.record_batch({"depth [m]": [4.0]}), "wrong_kind"),
        (pd.Series([4.0], name="depth [m]"), "wrong_kind"), (None, "wrong_kind"), (pd.DataFrame(), "missing"),
        (pa.table([pa.array([4.0]), pa.array([1]), pa.array([2])], names=["depth [m]", "n", "n"]), "given_twice"),
        (pd.DataFrame({"depth [m]": [4.0]}).set_index("depth [m]"), "missing"), (pl.LazyFrame({"depth [m]": [1.0]}), "wrong_kind"),
        (pd.DataFrame([[1.0, 2.0]], columns=["depth [m]", "depth [m]"]), "given_twice"),
    ],
)  # fmt: skip
def test_headings_and_shapes_that_will_not_do_are_refused_at_once(table: Any, code: str) -> None:
    with pytest.raises(TableError) as refused:
        check_table("rode_to_let_out", table)
    assert [one.code for one in refused.value.faults] == [code]


def test_unknown_question_units_and_boat_names_are_refused_at_once() -> None:
    with pytest.raises(UnknownQuestion):
        check_table("rode_to_let_ot", FLEET)
    with pytest.raises(InputError, match="units"):
        check_table("rode_to_let_out", FLEET, units="roman")
    with pytest.raises(InputError, match=r"bow_hight.*bow_height would do"):
        check_table("rode_to_let_out", FLEET, boat={"bow_hight": "1 m"})


# --- the boat under all rows --------------------------------------------------------------------------------------------------------


def test_a_boat_lies_under_every_row() -> None:
    boat = {"name": "Skarv", "bow_height": "1.5..2 m", "chain": "10 m", "line": "60 m", "engine_power": "20 kW"}
    table = {"depth": ["4 m", "5 m", "3..4 m", "900 m"], "bow_height": [None, "1 m", None, None]}
    got = check_table("rode_to_let_out", table, boat=boat)
    for row in range(3):
        asked = {name: column[row] for name, column in table.items() if column[row] is not None}
        single = anchorcalc.rode_to_let_out(**asked, boat=boat).results
        assert got["rode_out [m]"][row] == pytest.approx(single.rode_out.si, rel=1e-15)
        assert got["line_out [m]"][row] == pytest.approx(single.line_out.si, rel=1e-15)
        assert got["enough"][row] is single.enough
    assert got["problem"][3].startswith("depth: '900 m'")


def test_a_bad_value_of_the_boat_is_told_where_no_row_says_better() -> None:
    got = check_table("rode_to_let_out", {"depth": ["4 m", "5 m"], "bow_height": [None, "1 m"]}, boat={"bow_height": "tall"})
    assert [problem.split(":")[0] for problem in got["problem"]] == ["bow_height", ""]


def test_the_boat_may_say_all_that_is_needed() -> None:
    got = check_table("rode_to_let_out", {"mark_interval": ["10 m", None, ""]}, boat={"depth": "4 m", "scope": "5:1", "bow_height": "1 m"})
    assert got["rode_out [m]"].tolist() == [25.0] * 3
    assert got["problem"].tolist() == [""] * 3
    alone = check_table("line_angle", {"angle": [None]}, boat={"scope": "5:1"})["angle_answer [deg]"]
    assert alone.tolist() == [pytest.approx(np.degrees(np.arcsin(0.2)), rel=1e-15)]


def test_an_alternative_of_the_boat_gives_way_to_the_row_s() -> None:
    boat = {"mark_interval": "10 m"}
    got = check_table("mark_plan", {"rode_aboard [m]": [60.0, 60.0], "marks": ["20, 50 m", None]}, boat=boat)
    assert [len(json.loads(plan)) for plan in got["plan"]] == [2, 6]


@pytest.mark.parametrize("kind", [np.float64, np.int64])
def test_numbers_without_a_unit_are_refused_all_alike_and_gaps_are_gaps(kind: Any) -> None:
    column = pa.array([12, None, -1], pa.from_numpy_dtype(kind))
    got = check_table("rode_to_let_out", pa.table({"depth": column, "bow_height [m]": [1.0, 1.0, 99.0]}))["problem"].to_pylist()
    said = 'depth: has numbers without a unit; the heading "depth [m]", or "12 ft" in each cell, would do'
    assert got[0] == said
    assert got[1].startswith("depth: is missing")
    assert got[2].startswith(f"{said} | bow_height: '99 m' must be 10 m or less")


def test_many_numbers_without_a_unit_are_refused_as_fast_as_others_are_answered() -> None:
    depths = np.random.default_rng(1).uniform(3.0, 9.0, 400_000)
    began = time.process_time()
    check_table("rode_to_let_out", {"depth [m]": depths})
    answered, began = time.process_time() - began, time.process_time()
    assert set(check_table("rode_to_let_out", {"depth": depths})["problem"]) != {""}
    assert time.process_time() - began < 3.0 * answered + 0.2
