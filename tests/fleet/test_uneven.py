"""Rows of a CSV file with fewer or more cells than headings: each is dealt with alone, in its place."""

import csv
import random
from pathlib import Path

import pytest
from pyarrow import parquet

from anchorcalc import FileError
from anchorcalc.doors import fleet_uneven
from anchorcalc.doors.fleet_csv import BLOCK
from anchorcalc.doors.fleet_files import run_files

HEAD = "boat,depth [m],bow_height\n"
FINE = "Skarv,4,1 m\n"


def rows_of(folder: Path, text: str, *, delimiter: str = ",") -> list[dict[str, str]]:
    """Return the answered rows of a CSV file."""
    (folder / "in.csv").write_text(text)
    run_files(question="rode_to_let_out", source=str(folder / "in.csv"), target=str(folder / "out.csv"), boat=None, units=None, strict=False)
    with (folder / "out.csv").open(encoding="utf-8-sig", newline="") as file:
        return list(csv.DictReader(file, delimiter=delimiter))


def test_cells_that_are_not_there_are_missing_cells(tmp_path: Path) -> None:
    rows = rows_of(tmp_path, HEAD + "Lom,4\n" + "Alke\n" + FINE)
    whole = rows_of(tmp_path, HEAD + "Lom,4,\n" + "Alke,,\n" + FINE)
    assert rows == whole
    assert [row["rode_out [m]"] for row in rows] == ["36.4", "", "35"]
    assert rows[1]["problem"].startswith("depth: is missing")


def test_cells_without_a_heading_are_a_problem_of_that_row_alone(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    rows = rows_of(tmp_path, HEAD + FINE + 'Teist,4,1 m,more,"and, more"\n' + FINE)
    assert [row["rode_out [m]"] for row in rows] == ["35", "", "35"]
    assert rows[1] | {"boat": "Teist", "depth [m]": "4", "bow_height": "1 m", "cautions": ""} == rows[1], "what has a heading is kept"
    said = "table: 'more,and, more' stands beyond the last heading (5 cells, 3 headings); 3 cells or fewer would do"
    assert [row["problem"] for row in rows] == ["", said, ""]
    assert capsys.readouterr().err == "3 rows: 2 answered, 1 with a problem (unreadable 1)\n"


def test_a_boat_under_all_rows_answers_no_row_with_a_cell_too_many(tmp_path: Path) -> None:
    (tmp_path / "in.csv").write_text("depth [m]\n4\n4,5\n")
    source, target = str(tmp_path / "in.csv"), str(tmp_path / "out.parquet")
    boat = {"depth": "4 m", "bow_height": "1 m"}
    assert run_files(question="rode_to_let_out", source=source, target=target, boat=boat, units=None, strict=False) == 1
    assert parquet.read_table(tmp_path / "out.parquet")["rode_out [m]"].to_pylist() == [35.0, None]


@pytest.mark.parametrize(
    "text",
    [
        HEAD + "Lom,4\n" * 3,
        HEAD + "Lom,4,1 m,x\n" * 3,
        HEAD + "Lom\n\n\n" + FINE + "\n" + "Lom,4,1 m,x\n",
        HEAD + '"two\nlines",4,1 m,"three\nmore\nlines"\n' + FINE + '"two\nlines",4',
        HEAD.replace("\n", "\r\n") + "Lom,4\r\n" + "Lom,4,1 m,x\r\n",
        "\ufeff" + HEAD + "Lom,4\n" + FINE,
    ],
)
def test_every_row_is_kept_and_in_order(tmp_path: Path, text: str) -> None:
    assert _boats(rows_of(tmp_path, text)) == [row[0] for row in list(csv.reader(text.splitlines(keepends=True)))[1:] if row]


def test_uneven_rows_of_a_file_of_many_blocks_stay_in_their_places(tmp_path: Path) -> None:
    rng = random.Random(1)
    lines = [f"{row},4{rng.choice(['', ',1 m', ',1 m', ',1 m,x', ',1 m,,'])}\n" for row in range(120_000)]
    lines += [f"{row},4,1 m,x\n" for row in range(120_000, 350_000)]  # a block and more of nothing else
    lines += [f"{row},4,1 m\n" for row in range(350_000, 400_000)]
    assert sum(map(len, lines)) > 4 * BLOCK
    rows = rows_of(tmp_path, HEAD + "".join(lines))
    assert _boats(rows) == [str(row) for row in range(400_000)]
    many = [line.count(",") > 2 for line in lines]
    assert [row["problem"] != "" for row in rows] == many
    assert [row["rode_out [m]"] == "" for row in rows] == many


def test_semicolons_stand_between_the_cells_beyond_too(tmp_path: Path) -> None:
    rows = rows_of(tmp_path, "boat;depth [m]\nLom;4,5;x;y\n", delimiter=";")
    assert rows[0]["depth [m]"] == "4,5"
    assert rows[0]["problem"].startswith("table: 'x;y' stands beyond the last heading (4 cells, 2 headings)")


def test_a_file_without_end_in_which_no_row_fits_is_refused(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(fleet_uneven, "MOST_ASIDE", 1000)
    assert len(rows_of(tmp_path, HEAD + "Lom,4,1 m,x\n" * 1000)) == 1000
    with pytest.raises(FileError, match="Row #1002: Expected 3 columns, got 4: Lom,4,1 m,x"):
        rows_of(tmp_path, HEAD + "Lom,4,1 m,x\n" * 1001)


def test_a_cell_that_is_too_long_to_take_apart_stops_the_file(tmp_path: Path) -> None:
    with pytest.raises(FileError, match="cannot be read on"):
        rows_of(tmp_path, HEAD + FINE + "Lom,4,1 m," + "x" * 200_000 + "\n")


def _boats(rows: list[dict[str, str]]) -> list[str]:
    return [row["boat"] for row in rows]
