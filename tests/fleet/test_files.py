"""`anchorcalc fleet`: from file to file, in any sane dialect, whole or not at all."""

import csv
import json
import os
import pty
import signal
import subprocess
import sys
import termios
import time
from pathlib import Path
from typing import Any

import pyarrow as pa
import pytest
from pyarrow import parquet

from anchorcalc import FileError, TableError, check_table
from anchorcalc.doors.command import main
from anchorcalc.doors.fleet_files import run_files

HEAD = "boat,depth [m],bow_height,notes"
COMMAND = (sys.executable, "-m", "anchorcalc", "fleet")
LINES = ["Skarv,4.0,1 m,", "Lom,900,1 m,too deep", "Teist,5.5,,ok"]


def ran(source: Any, target: Any, **more: Any) -> int:
    """Run rode_to_let_out from file to file."""
    options = {"boat": None, "units": None, "strict": False} | more
    return run_files(question="rode_to_let_out", source=str(source), target=str(target), **options)


def rows_of(path: Path, delimiter: str = ",") -> list[dict[str, str]]:
    """Return the rows of a CSV file."""
    with path.open(encoding="utf-8-sig", newline="") as file:
        return list(csv.DictReader(file, delimiter=delimiter))


def test_a_file_is_answered_row_by_row_with_a_summary(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    source, target = tmp_path / "in.csv", tmp_path / "out.csv"
    source.write_text("\n".join([HEAD, *LINES]) + "\n")
    assert ran(source, target) == 1
    rows = rows_of(target)
    assert [row["boat"] for row in rows] == ["Skarv", "Lom", "Teist"]
    assert [row["depth [m]"] for row in rows] == ["4.0", "900", "5.5"]
    assert rows[0]["rode_out [m]"] == "35" and rows[1]["rode_out [m]"] == ""
    assert rows[1]["problem"].startswith("depth: '900 m' must be 200 m or less")
    said = capsys.readouterr().err
    assert said == "3 rows: 2 answered, 1 with a problem (out_of_bounds 1)\n"
    source.write_text("\n".join([HEAD, LINES[0]]) + "\n")
    assert ran(source, target) == 0


DIALECTS = {
    "semicolons and decimal commas": ("boat;depth [m];notes\r\nSkarv;4,5;a, b\r\n", ";", "39,9"),
    "tabs": ("boat\tdepth [m]\tnotes\nSkarv\t4.5\ta, b\n", "\t", "39.9"),
    "bars": ("boat|depth [m]|notes\nSkarv|4.5|a, b\n", "|", "39.9"),
    "quotes": ('"boat","depth [m]","notes"\n"Skarv","4.5","a, b"\n', ",", "39.9"),
    "a byte order mark": ('\ufeffboat,depth [m],notes\nSkarv,4.5,"a, b"\n', ",", "39.9"),
    "no end of line at the end": ('boat,depth [m],notes\nSkarv,4.5,"a, b"', ",", "39.9"),
    "a comma in a heading": ('"boat, name",depth [m],notes\nSkarv,4.5,"a, b"\n', ",", "39.9"),
}


@pytest.mark.parametrize("name", DIALECTS)
def test_any_sane_dialect_is_read_and_written_back(tmp_path: Path, name: str) -> None:
    text, delimiter, rode = DIALECTS[name]
    source, target = tmp_path / "in.csv", tmp_path / "out.csv"
    source.write_bytes(text.encode())
    assert ran(source, target) == 0
    row = rows_of(target, delimiter)[0]
    assert row["rode_out [m]"] == rode
    assert row["notes"] == "a, b"
    assert target.read_bytes().startswith(b"\xef\xbb\xbf") == text.startswith("\ufeff")
    assert (b"\r\n" in target.read_bytes()) == ("\r\n" in text)


def test_utf_16_is_read(tmp_path: Path) -> None:
    (tmp_path / "in.csv").write_text("boat\tdepth [m]\nÄlva\t4\n", encoding="utf-16")
    assert ran(tmp_path / "in.csv", tmp_path / "out.csv") == 0
    assert rows_of(tmp_path / "out.csv", "\t")[0]["boat"] == "Älva"


def test_cells_with_ends_of_line_and_quotes_stay(tmp_path: Path) -> None:
    (tmp_path / "in.csv").write_text('depth [m],notes\n4,"two\nlines"\n5,"says ""hi"""\n6, spaces \n')
    ran(tmp_path / "in.csv", tmp_path / "out.csv")
    assert [row["notes"] for row in rows_of(tmp_path / "out.csv")] == ["two\nlines", 'says "hi"', " spaces "]


def test_every_format_goes_into_every_other(tmp_path: Path) -> None:
    first = tmp_path / "first.csv"
    first.write_text("\n".join([HEAD, *LINES]) + "\n")
    wanted = check_table("rode_to_let_out", {"depth [m]": [4.0, 900.0, 5.5], "bow_height": ["1 m", "1 m", None]})
    for middle in (".csv", ".parquet", ".jsonl"):
        for last in (".csv", ".parquet", ".jsonl"):
            between, end = tmp_path / f"between{middle}", tmp_path / f"end{last}"
            copied(first, between)
            assert ran(between, end) == 1
            got = answers_in(end)
            assert [problem for _, problem in got] == wanted["problem"].tolist(), (middle, last)
            assert [rode for rode, _ in got] == [35.0, None, wanted["rode_out [m]"][2]], (middle, last)


def copied(source: Path, target: Path) -> None:
    """Write the rows of a CSV file in another format."""
    rows = [{name: value or None for name, value in row.items()} for row in rows_of(source)]
    if target.suffix == ".csv":
        target.write_bytes(source.read_bytes())
    elif target.suffix == ".jsonl":
        target.write_text("".join(json.dumps({name: value for name, value in row.items() if value}) + "\n" for row in rows))
    else:
        table = pa.Table.from_pylist([row | {"depth [m]": float(row["depth [m]"] or 0)} for row in rows])
        parquet.write_table(table, target, row_group_size=2)


def answers_in(path: Path) -> list[tuple[float | None, str]]:
    """Return the rode and the problem of each row of a file."""
    if path.suffix == ".csv":
        rows: list[dict[str, Any]] = list(rows_of(path))
    elif path.suffix == ".jsonl":
        rows = [json.loads(line) for line in path.read_text().splitlines()]
    else:
        rows = parquet.read_table(path).to_pylist()
    return [(float(row["rode_out [m]"]) if row.get("rode_out [m]") not in (None, "") else None, row["problem"]) for row in rows]


def test_parquet_keeps_the_types_of_what_was_given(tmp_path: Path) -> None:
    given = pa.table({"depth [m]": pa.array([4.0, 5.0], pa.float32()), "when": pa.array([1, None], pa.timestamp("ms")), "n": pa.array([[1], []])})
    parquet.write_table(given, tmp_path / "in.parquet")
    ran(tmp_path / "in.parquet", tmp_path / "out.parquet")
    assert parquet.read_table(tmp_path / "out.parquet").select(given.column_names).equals(given)


def test_json_lines_keep_what_was_given_and_may_differ_in_names(tmp_path: Path) -> None:
    lines = [{"depth": {"value": 4, "unit": "m"}, "x": [1, {"y": None}]}, {"depth": "12 ft", "bow_height": "4 ft"}, {"boat": "Lom"}]
    (tmp_path / "in.jsonl").write_text("\n".join(json.dumps(line) for line in lines))
    assert ran(tmp_path / "in.jsonl", tmp_path / "out.jsonl") == 1
    got = [json.loads(line) for line in (tmp_path / "out.jsonl").read_text().splitlines()]
    assert [{name: line[name] for name in given} for line, given in zip(got, lines, strict=True)] == lines
    assert [line["problem"][:17] for line in got] == ["", "", "depth: is missing"]


def test_a_file_with_headings_only_gives_the_headings_of_the_answer(tmp_path: Path) -> None:
    (tmp_path / "in.csv").write_text(HEAD + "\n")
    assert ran(tmp_path / "in.csv", tmp_path / "out.csv") == 0
    assert (tmp_path / "out.csv").read_text().startswith(HEAD + ",rode_out [m],")


# --- whole or not at all ------------------------------------------------------------------------------------------------------------


BAD = {
    "no file": (None, FileError, "cannot be read"),
    "an empty file": (b"", FileError, "is empty"),
    "bytes that are no text": (b"depth [m]\n4\n\xff\xfe\xfd\n", FileError, "UTF-?8"),
    "no column that is asked for": (b"boat\nSkarv\n", TableError, "no column that is an input"),
}


@pytest.mark.parametrize("name", BAD)
def test_a_file_that_cannot_be_answered_leaves_the_old_one_as_it_was(tmp_path: Path, name: str) -> None:
    content, error, said = BAD[name]
    if content is not None:
        (tmp_path / "in.csv").write_bytes(content)
    (tmp_path / "out.csv").write_text("the old one")
    with pytest.raises(error, match=said):
        ran(tmp_path / "in.csv", tmp_path / "out.csv")
    assert (tmp_path / "out.csv").read_text() == "the old one"
    assert {path.name for path in tmp_path.iterdir()} <= {"in.csv", "out.csv"}


@pytest.mark.parametrize(("source", "target"), [("in.txt", "out.csv"), ("in.csv", "out.xls"), ("in.csv", "nowhere/out.csv"), ("in.parquet", "o.csv")])
def test_other_endings_and_places_are_refused(tmp_path: Path, source: str, target: str) -> None:
    (tmp_path / source).write_text("depth [m]\n4\n")
    with pytest.raises(FileError):
        ran(tmp_path / source, tmp_path / target)


def test_the_file_that_is_read_is_not_written_over(tmp_path: Path) -> None:
    source = tmp_path / "in.csv"
    source.write_text("depth [m]\n4\n")
    (tmp_path / "link.csv").symlink_to(source)
    (tmp_path / "hard.csv").hardlink_to(source)
    (tmp_path / "folder").symlink_to(tmp_path)
    for target in ("in.csv", "link.csv", "hard.csv", "folder/in.csv"):
        for given in ("in.csv", "link.csv"):
            with pytest.raises(FileError, match=r"is the file that is read, which would be lost; another file to write to would do"):
                ran(tmp_path / given, tmp_path / target)
    with source.open("rb") as file:
        done = subprocess.run([*COMMAND, "rode_to_let_out", "-", str(source)], stdin=file, capture_output=True, check=False, timeout=60)
    assert done.returncode == 2
    assert b"is the file that is read" in done.stderr
    assert source.read_text() == "depth [m]\n4\n"
    assert {path.name for path in tmp_path.iterdir()} == {"in.csv", "link.csv", "hard.csv", "folder"}


def test_a_file_that_is_written_again_keeps_its_mode_and_a_link_to_it_stays_one(tmp_path: Path) -> None:
    (tmp_path / "in.csv").write_text("depth [m]\n4\n")
    old, link = tmp_path / "old.csv", tmp_path / "link.csv"
    old.write_text("the old one")
    old.chmod(0o640)
    link.symlink_to(old)
    assert ran(tmp_path / "in.csv", link) == 0
    assert link.is_symlink() and rows_of(old)[0]["problem"] == ""
    assert old.stat().st_mode & 0o777 == 0o640


def test_interrupting_leaves_the_old_file(tmp_path: Path) -> None:
    pipe, target = tmp_path / "in.csv", tmp_path / "out.csv"
    os.mkfifo(pipe)
    target.write_text("the old one")
    command = [*COMMAND, "rode_to_let_out", str(pipe), str(target)]
    process = subprocess.Popen(command, stderr=subprocess.PIPE)
    with pipe.open("wb", buffering=0) as feed:
        feed.write(b"depth [m]\n" + b"4\n" * 200_000)
        while not list(tmp_path.glob(".out.csv.*.part")):
            time.sleep(0.05)
        process.send_signal(signal.SIGINT)
        time.sleep(0.1)
    _, said = process.communicate(timeout=20)
    assert process.returncode == 130
    assert b"interrupted" in said
    assert target.read_text() == "the old one"
    assert not list(tmp_path.glob("*.part")) + list(tmp_path.glob(".*.part"))


# --- the command --------------------------------------------------------------------------------------------------------------------


def command(*arguments: str, given: bytes = b"") -> subprocess.CompletedProcess[bytes]:
    """Run the command with some input."""
    return subprocess.run([*COMMAND, *arguments], input=given, capture_output=True, check=False, timeout=60)


def test_pipes_take_the_format_of_what_comes_in() -> None:
    done = command("rode-to-let-out", "-", "-", "--units", "us", given=b"depth\n12 ft\n")
    assert done.returncode == 0
    assert done.stdout.splitlines()[0].startswith(b"depth,rode_out [ft]")
    assert done.stderr == b"1 row: 1 answered, 0 with a problem\n"
    lines = command("rode-to-let-out", "-", "-", given=b'{"depth": "4 m"}\n')
    assert json.loads(lines.stdout)["problem"] == ""


def test_the_exit_code_says_how_it_went(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    source, boat = tmp_path / "in.csv", tmp_path / "skarv.toml"
    source.write_text("depth [m],bow hight [m]\n4,1\n")
    boat.write_text('bow_height = "2 m"')
    base = ["fleet", "rode_to_let_out", str(source), str(tmp_path / "out.csv")]
    for arguments, code in [([*base, "--boat", str(boat)], 0), ([*base, "--strict"], 2), (["fleet", "rode_to_let_ot", "a.csv", "b.csv"], 2)]:
        with pytest.raises(SystemExit) as left:
            main(arguments)
        assert left.value.code == code
    said = capsys.readouterr().err
    assert "warning: table: 'bow hight [m]' is no input of rode_to_let_out, though it looks like one" in said
    assert rows_of(tmp_path / "out.csv")[0]["rode_out [m]"] == "42"


def test_progress_is_shown_on_a_terminal_only(tmp_path: Path) -> None:
    (tmp_path / "in.csv").write_text("depth [m]\n" + "4.5\n" * 300_000)
    terminal, end = pty.openpty()
    termios.tcsetwinsize(end, (24, 80))
    command = [*COMMAND, "rode_to_let_out", str(tmp_path / "in.csv"), str(tmp_path / "out.csv")]
    process = subprocess.Popen(command, stderr=end)
    os.close(end)
    said = b""
    while part := _read(terminal):
        said += part
    os.close(terminal)
    assert process.wait(timeout=20) == 0
    assert b"%|" in said and b"B/s" in said
    assert said.endswith(b"300000 rows: 300000 answered, 0 with a problem\r\n")


def _read(terminal: int) -> bytes:
    try:
        return os.read(terminal, 4096)
    except OSError:  # the other end is closed
        return b""


def test_memory_does_not_grow_with_the_file(tmp_path: Path) -> None:
    used = []
    for rows in (200_000, 800_000):
        (tmp_path / "in.csv").write_text("depth [m],bow_height [m]\n" + "4.5,1.2\n" * rows)
        script = f"""
from pathlib import Path
from anchorcalc.doors.fleet_files import run_files
source, target = {str(tmp_path / "in.csv")!r}, {str(tmp_path / "out.csv")!r}
run_files(question="rode_to_let_out", source=source, target=target, boat=None, units=None, strict=False)
print(next(line.split()[1] for line in Path("/proc/self/status").read_text().splitlines() if line.startswith("VmHWM")))
"""
        used.append(int(subprocess.run([sys.executable, "-c", script], capture_output=True, check=True).stdout))
    assert used[1] < 1.3 * used[0]


def test_each_row_of_many_has_its_own_problem(tmp_path: Path) -> None:
    (tmp_path / "in.csv").write_text("rode_out [m],depth [m]\n" + "".join(f"{row % 97 + 1},{row % 89 + 1}\n" for row in range(20_000)))
    source, target = str(tmp_path / "in.csv"), str(tmp_path / "out.csv")
    assert run_files(question="scope_now", source=source, target=target, boat=None, units=None, strict=False) == 1
    rows = rows_of(tmp_path / "out.csv")
    assert all((float(row["rode_out [m]"]) <= float(row["depth [m]"]) + 1.2) == bool(row["problem"]) for row in rows)
