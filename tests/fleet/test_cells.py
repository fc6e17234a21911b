"""What may stand in a column and in a cell: anything is read, or told of in its own row."""

import datetime as dt
import decimal
import json
from typing import Any

import numpy as np
import pandas as pd
import pint
import polars as pl
import pyarrow as pa
import pytest

import anchorcalc
from anchorcalc import check_table
from tests.fleet.test_tables import listed

# --- what may stand in a cell -------------------------------------------------------------------------------------------------------


def one_depth(cell: Any, *, name: str = "depth") -> Any:
    """Return the rode for one cell of depth, or what is wrong with it."""
    got = check_table("rode_to_let_out", {name: [cell], "bow_height": ["1 m"]}, units="metric")
    return got["problem"][0] or round(float(got["rode_out [m]"][0]), 9)


@pytest.mark.parametrize(
    ("cell", "name"),
    [
        ("4 m", "depth"), ("4 m", "depth [ft]"), ("4", "depth [m]"), (4, "depth [m]"), (np.float32(4), "depth [m]"), (np.int64(4), "depth [m]"),
        (decimal.Decimal(4), "depth [m]"), ({"value": 400, "unit": "cm"}, "depth"), (pint.UnitRegistry()("400 cm"), "depth"),
        (anchorcalc.true_depth(reading="4 m", reads_from="surface").results.depth, "depth"), ("3..4 m", "depth"),
        (" 3 - 4 ", "depth [m]"), ("3 to 4", "depth [m]"),
        ("400 centimetres", "depth [ft]"),
    ],
)  # fmt: skip
def test_a_cell_holds_what_a_call_takes(cell: Any, name: str) -> None:
    assert one_depth(cell, name=name) == 35.0


@pytest.mark.parametrize("nothing", [None, "", "   ", np.nan, float("nan"), pd.NA, pd.NaT, np.ma.masked])
def test_an_empty_cell_is_nothing_given(nothing: Any) -> None:
    got = check_table("rode_to_let_out", {"depth": ["4 m"], "bow_height": ["1 m"], "tide_rise": [nothing]})
    assert got["rode_out [m]"].tolist() == [35.0]
    assert got["cautions"][0].startswith("no_tide")


@pytest.mark.parametrize(
    ("cell", "code"), [("inf", "is not a finite number"), ("4 kg", "is a mass"), ("deep", "cannot be read"), ("-4", "more than 0 m")]
)
def test_a_bad_cell_is_told_as_in_a_call(cell: str, code: str) -> None:
    assert code in one_depth(cell, name="depth [m]")


def test_a_number_without_a_unit_is_refused_row_by_row() -> None:
    assert one_depth(12.0).startswith("depth: has numbers without a unit; ")
    assert one_depth("12") == "depth: '12' has no unit; \"12 ft\" would do"


def test_nullable_categorical_masked_and_dated_columns_are_read() -> None:
    table = pd.DataFrame(
        {
            "low_height [m]": pd.array([1, None, 1], dtype="Int64"),
            "high_height [m]": pd.Series([3.0, 3.0, 3.0], dtype="float32"),
            "low_at": pd.to_datetime(["2026-06-01T06:00", "2026-06-01T06:00", None]),
            "high_at": pd.Categorical(["2026-06-01T12:00"] * 3),
            "at": [dt.datetime(2026, 6, 1, 9)] * 3,
        }
    )
    got = check_table("tide_at", table)
    assert got["height [m]"][0] == pytest.approx(2.0, rel=1e-12)
    assert [problem.split(":")[0] for problem in got["problem"]] == ["", "low_height", "low_at"]
    masked = np.ma.masked_array([4.0, 5.0], mask=[False, True])
    assert check_table("rode_to_let_out", {"depth [m]": masked})["problem"][1].startswith("depth: is missing")


def test_clock_times_with_an_offset_come_back_in_it() -> None:
    row = {"rode_out": "30 m", "depth": "4 m", "bow_height": "1 m", "low_height": "0.6 m", "high_height": "4.4 m"}
    times = {"low_at": "2026-06-01T06:10+02:00", "high_at": "2026-06-01T12:25+02:00", "at": "2026-06-01T07:00+02:00"}
    plain = {"low_at": "22:10", "high_at": "04:25", "at": "23:00"}
    got = check_table("when_to_veer", {name: [{**row, **times}[name], {**row, **plain}[name]] for name in (*row, *times)})
    singles = [anchorcalc.when_to_veer(**row, **one).results.veer_by.shown for one in (times, plain)]
    assert got["veer_by"].tolist() == singles
    assert singles[0].endswith("+02:00") and singles[1].endswith("(day +1)")


def test_lists_are_read_and_written() -> None:
    table = {"rode_aboard": ["60 m", "60 m", "60 m"], "marks [m]": ["10, 20, 40", "10 m, 30 m", None], "mark_interval": [None, None, "20 m"]}
    got = check_table("mark_plan", table)
    lengths = [[row["rode_out"]["si"] for row in json.loads(plan)] for plan in got["plan"]]
    assert lengths == [[10.0, 20.0, 40.0], [10.0, 30.0], [20.0, 40.0, 60.0]]
    given = check_table("mark_plan", {"rode_aboard": ["60 m"], "marks [m]": [[10.0, 20.0, 40.0]]})
    assert given["plan"][0] == got["plan"][0]


# --- columns of any type ------------------------------------------------------------------------------------------------------------

GAP = "is missing"
MIXED = [4, "5 ft", None, np.nan, pd.NA, "", True, {"value": 4, "unit": "m"}, [4], dt.date(2026, 1, 1), float("inf"), "NA", "nan", b"4"]
OF_MIXED = [
    36.4, 19.068, GAP, GAP, GAP, GAP, "no length", 36.4, "no quantity", "no length", "not a finite", "cannot be read", "not a finite", "no length",
]  # fmt: skip
PANDAS: dict[str, tuple[Any, list[Any]]] = {
    "Float32": (pd.Series([4, None], dtype="Float32"), [36.4, GAP]),
    "UInt16": (pd.Series([4, None], dtype="UInt16"), [36.4, GAP]),
    "float16": (pd.Series([4, None], dtype="float16"), [36.4, GAP]),
    "string": (pd.Series(["4", None], dtype="string"), [36.4, GAP]),
    "numbers as categories": (pd.Series([4.0, None], dtype="category"), [36.4, GAP]),
    "arrow numbers": (pd.Series([4, None], dtype=pd.ArrowDtype(pa.float32())), [36.4, GAP]),
    "sparse": (pd.Series(pd.arrays.SparseArray([4.0, np.nan])), [36.4, GAP]),
    "anything": (pd.Series(MIXED, dtype=object), OF_MIXED),
    "boolean": (pd.Series([True, None], dtype="boolean"), ["no length", GAP]),
    "intervals": (pd.Series(pd.interval_range(3, 5)), ["is not read here"] * 2),
    "years": (pd.Series(pd.period_range("2026", periods=1, freq="Y")), ["is not read here"]),
    "complex": (pd.Series([4 + 0j]), ["no length"]),
    "lengths of time": (pd.Series(pd.to_timedelta([1], unit="s")), ["no length"]),
}
POLARS: dict[str, tuple[Any, list[Any]]] = {
    "Float32": (pl.Series([4, None], dtype=pl.Float32), [36.4, GAP]),
    "Categorical": (pl.Series(["4", None], dtype=pl.Categorical), [36.4, GAP]),
    "Enum": (pl.Series(["4", None], dtype=pl.Enum(["4"])), [36.4, GAP]),
    "Decimal": (pl.Series([decimal.Decimal("4.0"), None]), [36.4, GAP]),
    "Struct": (pl.Series([{"value": 4.0, "unit": "m"}, None]), [36.4, GAP]),
    "Object": (pl.Series([{"value": 4, "unit": "m"}, 4, None, "4 kg"], dtype=pl.Object), [36.4, 36.4, GAP, "is a mass"]),
    "Null": (pl.Series([None]), [GAP]),
    "nan": (pl.Series([float("nan")]), ["not a finite"]),
    "List": (pl.Series([[4.0]]), ["no quantity"]),
}
ARROW: dict[str, tuple[Any, list[Any]]] = {
    "chunks": (pa.chunked_array([[4.0], [], [None]]), [36.4, GAP]),
    "no chunk": (pa.chunked_array([], pa.float64()), []),
    "chunks of categories": (pa.chunked_array([pa.array([one]).dictionary_encode() for one in ("4", "4 m", "x")]), [36.4, 36.4, "cannot be read"]),
    "runs": (pa.RunEndEncodedArray.from_arrays([2, 3], [4.0, 900.0]), [36.4, 36.4, "200 m or less"]),
    "either": (pa.UnionArray.from_sparse(pa.array([0, 1], pa.int8()), [pa.array([4.0, 5.0]), pa.array(["a", "5 ft"])]), [36.4, 19.068]),
    "an extension": (pa.array([b"1" * 16, None], pa.uuid()), ["is not read here", GAP]),
}
ARRAYS: dict[str, tuple[Any, list[Any]]] = {
    "big-endian": (np.array([4.0], dtype=">f8"), [36.4]),
    "every second": (np.arange(4.0, 8.0)[::2], [36.4, 50.4]),
    "a masked array": (np.ma.masked_array([4, 5], mask=[0, 1]), [36.4, GAP]),
    "texts": (np.array(["4", "5 ft"]), [36.4, 19.068]),
    "bytes": (np.array([b"4"]), ["no length"]),
    "dates": (np.array(["2026-01-01"], dtype="M8[s]"), ["no length"]),
    "a series with an index of its own": (pd.Series([4.0, None], index=[5, 6]), [36.4, GAP]),
    "a quantity": (pint.UnitRegistry().Quantity(np.array([400.0]), "cm"), [36.4]),
    "a range": (range(4, 5), [36.4]),
}


@pytest.mark.parametrize(
    ("kind", "column", "wanted"),
    [(kind, *one) for kind, columns in (("pandas", PANDAS), ("polars", POLARS), ("pyarrow", ARROW), ("dict", ARRAYS)) for one in columns.values()],
)
def test_a_column_of_any_type_is_read_or_told_of_row_by_row(kind: str, column: Any, wanted: list[Any]) -> None:
    made = {"dict": dict, "pandas": pd.DataFrame, "polars": pl.DataFrame, "pyarrow": pa.table}[kind]({"depth [m]": column})
    got = check_table("rode_to_let_out", made)
    problems, found = listed(got, "problem"), listed(got, "rode_out [m]")
    assert len(problems) == len(wanted)
    for problem, one, other in zip(problems, found, wanted, strict=True):
        assert other in problem if isinstance(other, str) else (problem, round(one, 6)) == ("", other)
    if kind == "pandas":
        pd.testing.assert_frame_equal(got[["depth [m]"]], made)


def test_floats_are_read_where_they_lie_and_not_written_to() -> None:
    depth = np.array([4.0, np.nan, 900.0, np.inf, -0.0])
    before = depth.copy()
    for given in ({"depth [m]": depth}, pd.DataFrame({"depth [m]": depth})):
        problems = listed(check_table("rode_to_let_out", given), "problem")
        assert [problem[:17] for problem in problems] == ["", "depth: is missing", "depth: '900 m' mu", "depth: 'inf m' is", "depth: '-0 m' mus"]
    np.testing.assert_array_equal(depth, before)
    assert depth.flags.writeable
    assert listed(check_table("rode_to_let_out", {"depth": depth}), "problem")[1].startswith("depth: is missing")
    assert set(listed(check_table("rode_to_let_out", {"depth [m]": np.full(3, np.nan)}), "problem")[0][:17].split(": ")) == {"depth", "is missing"}
