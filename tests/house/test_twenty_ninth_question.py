"""A question is one file: put beside the others it is there at every door, with nothing else changed."""

import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
FILE = Path(__file__).with_name("twenty_ninth.py.txt")


@pytest.fixture(scope="module")
def house(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A copy of the library with one more question, and of the server as it is installed."""
    folder = tmp_path_factory.mktemp("house")
    left_out = shutil.ignore_patterns("__pycache__", "*.pyi")
    shutil.copytree(ROOT / "anchorcalc", folder / "anchorcalc", ignore=left_out)
    shutil.copytree(ROOT / "api", folder / "anchorcalc_api", ignore=left_out)
    shutil.copy(FILE, folder / "anchorcalc" / "catalogue" / "painter_to_let_out.py")
    return folder


def run(house: Path, *words: str) -> str:
    environment = {**os.environ, "PYTHONPATH": str(house)}
    done = subprocess.run([sys.executable, *words], capture_output=True, text=True, cwd=house, env=environment, timeout=120, check=False)
    assert done.returncode == 0, done.stderr
    return done.stdout


def test_it_is_one_file_of_less_than_80_lines() -> None:
    assert len(FILE.read_text(encoding="utf-8").splitlines()) < 80


def test_python_knows_it(house: Path) -> None:
    said = run(house, "-c", "import anchorcalc; print(anchorcalc.painter_to_let_out(boat_length='9 m').headline); print(len(anchorcalc.questions()))")
    here = run(ROOT, "-c", "import anchorcalc; print(len(anchorcalc.questions()))")
    assert said.splitlines() == ["Let out 27 m of painter.", str(int(here) + 1)]


def test_it_is_asked_in_plain_words(house: Path) -> None:
    said = run(house, "-m", "anchorcalc", "how much painter for a boat of 9 m?", "--json")
    assert (json.loads(said)["question"], json.loads(said)["headline"]) == ("painter_to_let_out", "Let out 27 m of painter.")


def test_the_command_has_its_flags(house: Path) -> None:
    assert run(house, "-m", "anchorcalc", "painter-to-let-out", "--boat-length", "28 ft", "--margin", "3 ft").startswith("Let out 87 ft of painter.")


def test_it_has_a_route_and_stands_in_the_document_of_the_rest_layer(house: Path) -> None:
    program = """
from litestar.testing import TestClient
import anchorcalc_api
with TestClient(app=anchorcalc_api.create_app()) as client:
    print(client.get("/v1/painter-to-let-out?boat_length=9m").json()["headline"])
    print("/v1/painter-to-let-out" in client.get("/openapi.json").json()["paths"])
"""
    assert run(house, "-c", program).splitlines() == ["Let out 27 m of painter.", "True"]


def test_its_stub_is_written(house: Path) -> None:
    run(house, "-m", "anchorcalc.doors.stubs")
    assert "def painter_to_let_out(" in (house / "anchorcalc" / "__init__.pyi").read_text(encoding="utf-8")
    assert run(house, "-m", "anchorcalc.doors.stubs", "--check") == ""
