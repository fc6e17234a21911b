"""The invented charter fleet: every boat is judged once, the worst stand first, and what is kept is what the script makes."""

import csv
import subprocess
import sys
from pathlib import Path
from xml.etree import ElementTree

import pytest

import anchorcalc

EXAMPLE = Path(__file__).parents[2] / "examples" / "fleet"


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, str]:
    folder = tmp_path_factory.mktemp("tonight")
    done = subprocess.run([sys.executable, EXAMPLE / "tonight.py", folder], capture_output=True, text=True, check=True)
    return folder, done.stdout


def listed(folder: Path) -> list[list[str]]:
    lines = (folder / "tonight.md").read_text(encoding="utf-8").splitlines()
    return [[cell.strip() for cell in line.strip("|").split("|")] for line in lines if line.startswith("| ")][2:]


def test_all_two_hundred_boats_are_judged(made: tuple[Path, str]) -> None:
    folder, said = made
    counts = dict(part.split() for part in said.strip().split(", "))
    assert sum(map(int, counts.values())) == 200
    rows = listed(folder)
    assert {do: sum(row[2] == do for row in rows) for do in ("move", "look", "veer")} == {do: int(counts[do]) for do in ("move", "look", "veer")}
    assert len({row[0] for row in rows}) == len(rows)


def test_the_worst_stand_first(made: tuple[Path, str]) -> None:
    rows = listed(made[0])
    assert [row[2] for row in rows] == sorted((row[2] for row in rows), key=("move", "look", "veer").index)
    clearances = [float(row[3].removesuffix(" m")) for row in rows if row[2] == "move"]
    assert clearances == sorted(clearances)
    scopes = [float(row[4].removesuffix(":1")) for row in rows if row[2] == "veer"]
    assert scopes == sorted(scopes) and scopes[-1] < 5.0


def test_the_worst_boat_is_judged_as_by_single_calls(made: tuple[Path, str]) -> None:
    worst = listed(made[0])[0]
    with (EXAMPLE / "boats.csv").open(encoding="utf-8", newline="") as file:
        row = next(row for row in csv.DictReader(file) if row["boat"] == worst[0])
    said = {
        heading.partition(" [")[0]: f"{cell} m" if "[m]" in heading else cell for heading, cell in row.items() if heading not in ("bay", "remarks")
    }
    need = ("depth", "bow_height", "tide_rise")
    rode = anchorcalc.rode_to_let_out(**{name: said[name] for name in need}, scope="5:1").results.rode_out
    takes = ("boat_length", "depth", "bow_height", "tide_fall", "distance", "margin")
    clearance = anchorcalc.swing_clearance(rode_out=rode, **{name: said[name] for name in takes}).results.clearance
    assert clearance.shown == worst[3]


def test_what_is_kept_is_what_the_scripts_make(made: tuple[Path, str]) -> None:
    for name in ("tonight.md", "tonight.svg"):
        assert (made[0] / name).read_text(encoding="utf-8") == (EXAMPLE / name).read_text(encoding="utf-8")
    assert ElementTree.fromstring((EXAMPLE / "tonight.svg").read_text(encoding="utf-8")).tag.endswith("svg")
