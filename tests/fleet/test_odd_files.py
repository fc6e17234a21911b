"""Files as other people keep them: each gives rows with their problems, or one clear error; never a wrong answer without a word."""

import csv
import datetime as dt
import decimal
import json
from pathlib import Path
from typing import Any

import pyarrow as pa
import pytest
from pyarrow import parquet

from anchorcalc import AnchorcalcError
from anchorcalc.doors.fleet_files import run_files

TIDE: dict[str, Any] = {"low_height [m]": [1.0, 1.0], "high_height [m]": [3.0, 3.0]}
DAY = dt.datetime(2026, 6, 1)


def rows_of(folder: Path, source: Path, *, question: str = "rode_to_let_out", ending: str = ".jsonl") -> list[dict[str, Any]]:
    """Return the answered rows of a file."""
    target = folder / f"out{ending}"
    run_files(question=question, source=str(source), target=str(target), boat=None, units=None, strict=False)
    if ending == ".jsonl":
        return [json.loads(line) for line in target.read_text().split("\n") if line]
    if ending == ".parquet":
        return list(parquet.read_table(target).to_pylist())
    with target.open(encoding="utf-8-sig", newline="") as file:
        return list(csv.DictReader(file))


def told(rows: list[dict[str, Any]], result: str = "rode_out [m]") -> list[Any]:
    """Return of each row the result, or the beginning of its problem."""
    return [row["problem"] or round(float(row[result]), 6) for row in rows]


# --- CSV ----------------------------------------------------------------------------------------------------------------------------

NOT_CLEAR = "that may be decimal or stand between thousands"
CSV: dict[str, tuple[str | bytes, list[Any]]] = {  # the rode out for each row, or what its problem says
    "headings only": ("depth [m],scope", []),
    "blank lines": ("depth [m],boat\n\n4,a\n\n\n5,b\n", [36.4, 43.4]),
    "lines that end in a carriage return": ("depth [m],boat\r4,a\r5,b\r", [36.4, 43.4]),
    "lines that end in more than one way": ("depth [m],boat\r\n4,a\n5,b\r\n", [36.4, 43.4]),
    "cells that are not there, and too many": ("depth [m],scope,note\n4\n4,5,a,b\n", [36.4, "stands beyond the last heading"]),
    "a delimiter at the end of each row": ("depth [m],boat\n4,a,\n", ["has an empty cell beyond the last heading"]),
    "delimiters at the end of every line": ("depth [m],boat,\n4,a,\n", [36.4]),
    "a decimal comma without quotes": ("depth [m]\n4,5\n", ["'5' stands beyond the last heading (2 cells, 1 heading); 1 cell or fewer"]),
    "a decimal comma in quotes": ('depth [m],scope\n"4,5",7\n"1,234",7\n', [39.9, NOT_CLEAR]),
    "thousands in quotes": ('depth [m],scope\n4.5,7\n"1,234",7\n', [39.9, "'1,234 m' must be 200 m or less"]),
    "decimal commas": ("depth [m];scope\n4,5;7\n4,125;7\n", [39.9, 37.275]),
    "decimal commas and points between thousands": ("depth [m];scope\n4,5;7\n1.200;7\n1.200,5;7\n", [39.9, NOT_CLEAR, "'1.200,5' cannot be read"]),
    "decimal points between semicolons": ("depth [m];scope\n4.5;7\n4.125;7\n", [39.9, 37.275]),
    "tabs, decimal commas and thousands": ("depth [m]\tscope\n4,5\t7\n1,200\t7\n", [39.9, NOT_CLEAR]),
    "a line that says the delimiter": ("sep=;\r\nboat;depth [m]\r\na;4\r\n", [36.4]),
    "units in cells": ("depth\n4 m\n12 ft\n4\n4 kg\n", [36.4, 34.0032, "has no unit", "is a mass, not a length"]),
    "words for nothing": ("depth [m]\nNA\nNULL\n-\nnan\n", ["cannot be read", "cannot be read", "cannot be read", "is not a finite number"]),
    "yes and no, dates, faults of a spreadsheet": ("depth [m]\ntrue\n2026-06-01\n#REF!\n", ["cannot be read"] * 3),
    "signs about a number": ("depth [m]\n~4\n>4\n4+\n−4\n4½\n", ["cannot be read", "cannot be read", "has no unit known", "more than 0 m", 39.9]),
    "zero bytes in cells": (b"boat,depth [m]\na\0b,4\nc,5\0\n", [36.4, "has no unit known"]),
    "a cell of many digits": (f"depth [m]\n{'9' * 3000}\n", ["is too long"]),
    "a cell of 200 kB": (f"depth [m],note\n4,{'x' * 200_000}\n", [36.4]),
    "a blank name": (",depth [m]\na,4\n", [36.4]),
}  # fmt: skip


@pytest.mark.parametrize("name", CSV)
def test_an_odd_csv_file_is_answered_row_by_row(tmp_path: Path, name: str) -> None:
    content, wanted = CSV[name]
    source = tmp_path / "in.csv"
    source.write_bytes(content if isinstance(content, bytes) else content.encode())
    got = told(rows_of(tmp_path, source, ending=".parquet"))
    assert len(got) == len(wanted)
    for one, other in zip(got, wanted, strict=True):
        assert other in one if isinstance(other, str) and isinstance(one, str) else one == other


REFUSED: dict[str, tuple[str, str | bytes, str]] = {
    "nothing": (".csv", b"", "is empty"),
    "a mark only": (".csv", b"\xef\xbb\xbf", "is empty"),
    "latin letters": (".csv", "båt,depth [m]\na,4\n".encode("latin-1"), "is not in UTF-8"),
    "latin letters far down": (".csv", b"boat,depth [m]\n" + b"a,4\n" * 400_000 + b"\xc4,4\n", "400002"),
    "an archive": (".csv", b"PK\x03\x04" + b"\0" * 100, "is no text: there are zero bytes"),
    "16-bit letters without a mark": (".csv", "boat,depth [m]\na,4\n".encode("utf-16-le"), "is no text: there are zero bytes"),
    "a title above the headings": (".csv", "Our boats,\nboat,depth [m]\na,4\n", "'Our boats, ' are its headings: it has no column that is an input"),
    "a web page": (".csv", "<html>\n", "'<html>' are its headings"),
    "one input twice": (".csv", "depth [m],depth\n4,5 m\n", "is a second column for it, beside depth"),
    "one heading twice": (".csv", "depth [m],depth [m]\n4,5\n", "is a second column for it, beside depth"),
    "a quotation that is never closed": (".csv", 'boat,depth [m],note\na,4,"fine\nb,5,\nc,6,\n', "ends within a quotation"),
    "a quotation that is never closed, in a long file": (".csv", 'boat,depth [m],note\na,4,"fine\n' + "b,5,\n" * 300_000, "quotation that is never"),
    "a row of 4 MB": (".csv", "boat,depth [m]\n" + "x" * 4_000_000 + ",4\n", "has a row of more than 1 MB"),
    "no objects": (".jsonl", b"\n\n", "is empty"),
    "an array": (".jsonl", '[{"depth": "4 m"}]', "line 1: Expected `object`"),
    "half an object": (".jsonl", '{"depth": "4 m"}\n{"dep', "line 2"),
    "an object over several lines": (".jsonl", '{\n"depth": "4 m"\n}\n', "line 1"),
    "a number that is none": (".jsonl", '{"depth [m]": NaN}\n', "line 1"),
    "latin letters in an object": (".jsonl", '{"boat": "båt"}\n'.encode("latin-1"), "line 1"),
    "a list in a list in a list": (".jsonl", '{"depth": ' + "[" * 50_000 + "]" * 50_000 + "}\n", "line 1"),
    "a line of 2 MB": (".jsonl", '{"depth": "4 m", "note": "' + "x" * 2_000_000 + '"}\n', "a line of more than 1 MB"),
    "a unit that does not fit, far down": (".jsonl", '{"depth [m]": 4}\n' * 200 + '{"depth [kg]": 4}\n', "has a unit of mass"),
    "text for Parquet": (".parquet", "depth [m]\n4\n", "is no Parquet file"),
}  # fmt: skip


@pytest.mark.parametrize("name", REFUSED)
@pytest.mark.parametrize("ending", [".csv", ".parquet", ".jsonl"])
def test_a_file_that_cannot_be_read_is_refused_in_one_fault_and_nothing_is_written(tmp_path: Path, name: str, ending: str) -> None:
    kind, content, said = REFUSED[name]
    source = tmp_path / f"in{kind}"
    source.write_bytes(content if isinstance(content, bytes) else content.encode())
    with pytest.raises(AnchorcalcError) as refused:
        rows_of(tmp_path, source, ending=ending)
    assert len(refused.value.faults) == 1
    assert said in str(refused.value)
    assert "\n" not in str(refused.value)
    assert [path.name for path in tmp_path.iterdir()] == [source.name]


def test_quotations_that_are_closed_are_not_taken_for_open(tmp_path: Path) -> None:
    for number, end in enumerate(('"two\nlines"', '"two\nlines"\n', '"two\r\nlines"\r\n\r\n', 'no "quotation" here', "5'6\"", '"')):
        source = tmp_path / f"{number}.csv"
        source.write_text(f'boat,depth [m],note\n"a\nb",4,{end}', newline="")
        assert told(rows_of(tmp_path, source)) == [36.4]


def test_the_line_that_says_the_delimiter_is_kept(tmp_path: Path) -> None:
    source = tmp_path / "in.csv"
    source.write_bytes(b"\xef\xbb\xbfsep=;\r\nboat;depth [m]\r\na;4,5\r\n")
    run_files(question="rode_to_let_out", source=str(source), target=str(tmp_path / "out.csv"), boat=None, units=None, strict=False)
    assert (tmp_path / "out.csv").read_bytes().startswith(b"\xef\xbb\xbfsep=;\r\nboat;depth [m];rode_out [m];")


# --- JSON lines ---------------------------------------------------------------------------------------------------------------------


def test_any_value_of_json_is_an_answer_or_a_problem_of_its_row(tmp_path: Path) -> None:
    values = [4, 4.5, "4", " ", None, True, [4], {"value": 400, "unit": "cm"}, {"value": 4}, {"low": 3, "high": 4, "unit": "m"}, 10**30, {"a": {}}]
    (tmp_path / "in.jsonl").write_text("\ufeff" + "\r\n".join(json.dumps({"depth [m]": value}) for value in values))
    got = told(rows_of(tmp_path, tmp_path / "in.jsonl"))
    missing, none = "depth: is missing", "is no quantity"
    wanted = [36.4, 39.9, 36.4, missing, missing, "is no length", none, 36.4, "has no unit", 36.4, "must be 200 m or less", none]
    for one, other in zip(got, wanted, strict=True):
        assert other in one if isinstance(other, str) else one == other


def test_objects_without_any_input_are_rows_with_a_problem_wherever_they_stand(tmp_path: Path) -> None:
    (tmp_path / "in.jsonl").write_text('{"depth [m]": 4}\n' * 20_000 + '{"boat": "Lom"}\n' * 20_000)
    got = rows_of(tmp_path, tmp_path / "in.jsonl")
    assert [row["problem"][:17] for row in got] == [""] * 20_000 + ["depth: is missing"] * 20_000


def test_a_near_miss_is_warned_of_once(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "in.jsonl").write_text('{"depth [m]": 4, "Scope": 5}\n' * 100_000 + '{"depth [m]": 4, "Scope": 5, "boat": "Lom"}\n' * 10)
    rows_of(tmp_path, tmp_path / "in.jsonl")
    assert capsys.readouterr().err.count("warning: table: 'Scope' is no input") == 1


@pytest.mark.parametrize("source", ["in.csv", "in.parquet"])
def test_columns_of_one_name_do_not_go_into_json_where_one_would_be_lost(tmp_path: Path, source: str) -> None:
    if source == "in.csv":
        (tmp_path / source).write_text("depth [m],note,note\n4,a,b\n")
    else:
        parquet.write_table(pa.table([pa.array([4.0]), pa.array(["a"]), pa.array(["b"])], names=["depth [m]", "note", "note"]), tmp_path / source)
    with pytest.raises(AnchorcalcError, match="'note' is the name of two columns, which JSON cannot hold"):
        rows_of(tmp_path, tmp_path / source)
    assert (
        run_files(question="rode_to_let_out", source=str(tmp_path / source), target=str(tmp_path / "o.csv"), boat=None, units=None, strict=False) == 0
    )
    assert (tmp_path / "o.csv").read_text().startswith("depth [m],note,note,")


# --- Parquet ------------------------------------------------------------------------------------------------------------------------

GAP = "depth: is missing"
COLUMNS: dict[str, tuple[Any, list[Any]]] = {
    "categories": (pa.array([4.0, None, 4.0]).dictionary_encode(), [36.4, GAP, 36.4]),
    "categories of texts": (pa.array(["4 m", None, "bad"]).dictionary_encode(), [36.4, GAP, "cannot be read"]),
    "decimals": (pa.array([decimal.Decimal("4.50"), None], pa.decimal128(10, 2)), [39.9, GAP]),
    "small whole numbers": (pa.array([4, None], pa.int8()), [36.4, GAP]),
    "large whole numbers": (pa.array([4, 2**63], pa.uint64()), [36.4, "must be 200 m or less"]),
    "half floats": (pa.array([4.0, None], pa.float16()), [36.4, GAP]),
    "views of texts": (pa.array(["4", None], pa.string_view()), [36.4, GAP]),
    "objects": (pa.array([{"value": 4.0, "unit": "m"}, {"value": 4.0, "unit": None}, None]), [36.4, "has no unit", GAP]),
    "lists": (pa.array([[4.0], None]), ["is no quantity", GAP]),
    "yes and no": (pa.array([True, None]), ["is no length", GAP]),
    "bytes": (pa.array([b"4", None]), ["is no length", GAP]),
    "dates": (pa.array([dt.date(2026, 6, 1), None]), ["is no length", GAP]),
    "times": (pa.array([4, None], pa.duration("s")), ["is no length", GAP]),
    "numbers that are none": (pa.array([float("inf"), float("nan"), -0.0]), ["not a finite number", "not a finite number", "more than 0 m"]),
    "nothing at all": (pa.nulls(2), [GAP, GAP]),
}  # fmt: skip


@pytest.mark.parametrize("name", COLUMNS)
@pytest.mark.parametrize("ending", [".csv", ".parquet", ".jsonl"])
def test_a_column_of_any_type_is_read_or_told_of_row_by_row(tmp_path: Path, name: str, ending: str) -> None:
    column, wanted = COLUMNS[name]
    parquet.write_table(pa.table({"depth [m]": column}), tmp_path / "in.parquet")
    for one, other in zip(told(rows_of(tmp_path, tmp_path / "in.parquet", ending=ending)), wanted, strict=True):
        assert other in one if isinstance(other, str) else one == other


@pytest.mark.parametrize(
    "kind", [pa.timestamp("s"), pa.timestamp("ns"), pa.timestamp("us", "Europe/Stockholm"), pa.timestamp("ms", "UTC"), pa.time64("us")]
)
def test_times_of_any_kind_are_clock_times(tmp_path: Path, kind: Any) -> None:
    hours = {"low_at": 6, "high_at": 12, "at": 9}
    at = {name: DAY.replace(hour=hour) if pa.types.is_timestamp(kind) else dt.time(hour) for name, hour in hours.items()}
    columns = {name: pa.array([one, None if name == "at" else one], kind) for name, one in at.items()}
    parquet.write_table(pa.table({**TIDE, **columns}), tmp_path / "in.parquet")
    got = told(rows_of(tmp_path, tmp_path / "in.parquet", question="tide_at"), "height [m]")
    assert got[0] == 2.0
    assert got[1].startswith("at: is missing")


def test_parts_of_a_day_and_dates_without_a_time_are_no_clock_times(tmp_path: Path) -> None:
    parquet.write_table(
        pa.table({**TIDE, "low_at": [0.25] * 2, "high_at": [dt.date(2026, 6, 1)] * 2, "at": ["0.375", "9:00"]}), tmp_path / "in.parquet"
    )
    got = told(rows_of(tmp_path, tmp_path / "in.parquet", question="tide_at"))
    assert ["low_at: '0.25' is no clock" in one and "high_at" in one for one in got] == [True, True]
    assert "at: '0.375' is no clock time" in got[0]


def test_lists_of_an_answer_are_lists_in_json_whatever_they_come_from(tmp_path: Path) -> None:
    (tmp_path / "in.csv").write_text("rode_aboard [m],mark_interval [m]\n30,10\n")
    assert [row["mark"]["value"] for row in rows_of(tmp_path, tmp_path / "in.csv", question="mark_plan")[0]["plan"]] == [1, 2, 3]
