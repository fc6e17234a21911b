"""The house is in order: layers, examples in docstrings, the stubs, the examples, and no more lines than a page holds."""

import ast
import doctest
import importlib
import pkgutil
import re
import subprocess
import sys
from pathlib import Path

import pytest
from importlinter.cli import EXIT_STATUS_SUCCESS, lint_imports

import anchorcalc
from anchorcalc.doors.stubs import stubs

ROOT = Path(__file__).parents[2]
MODULES = sorted(one.name for one in pkgutil.walk_packages(anchorcalc.__path__, "anchorcalc.") if one.name != "anchorcalc.__main__")
FILES = sorted([*(ROOT / "anchorcalc").rglob("*.py"), *(ROOT / "api").rglob("*.py")])


def run(*words: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run([sys.executable, *words], capture_output=True, text=True, cwd=ROOT, timeout=240, check=False)


def test_every_layer_imports_only_from_those_below_it(capsys: pytest.CaptureFixture[str]) -> None:
    assert lint_imports(config_filename=str(ROOT / "pyproject.toml"), no_cache=True) == EXIT_STATUS_SUCCESS, capsys.readouterr().out


@pytest.mark.parametrize("name", MODULES)
def test_examples_in_docstrings_say_what_they_print(name: str) -> None:
    assert doctest.testmod(importlib.import_module(name), raise_on_error=False).failed == 0


def test_examples_in_the_docstrings_of_questions_say_what_they_print() -> None:
    for entry in anchorcalc.questions():
        function = getattr(anchorcalc, entry.name)
        (test,) = doctest.DocTestFinder(recurse=False).find(function, entry.name, module=False, globs={})
        assert test.examples and doctest.DocTestRunner(verbose=False).run(test).failed == 0


def test_the_stubs_are_current() -> None:
    stale = [file.name for file, text in stubs().items() if not file.exists() or file.read_text(encoding="utf-8") != text]
    assert stale == [], "run python -m anchorcalc.doors.stubs"


def test_modules_and_functions_are_short() -> None:
    long = []
    for file in (ROOT / "anchorcalc").rglob("*.py"):
        text = file.read_text(encoding="utf-8")
        if len(text.splitlines()) > 400:
            long.append(f"{file.name}: {len(text.splitlines())} lines")
        for node in ast.walk(ast.parse(text)):
            if isinstance(node, ast.FunctionDef) and _lines_of_code(node) > 40:
                long.append(f"{file.name}: {node.name} has {_lines_of_code(node)} lines")
    assert long == []


def _lines_of_code(node: ast.FunctionDef) -> int:
    body = node.body[1:] if ast.get_docstring(node) else node.body
    return (node.end_lineno or 0) - body[0].lineno + 1 if body else 0


def test_every_caution_that_is_declared_is_said_somewhere() -> None:
    text = "\n".join(file.read_text(encoding="utf-8") for file in FILES if file.name != "cautions.py")
    codes = re.findall(r"^([A-Z_]+) = Caution", (ROOT / "anchorcalc" / "cautions.py").read_text(encoding="utf-8"), re.M)
    assert [code for code in codes if not re.search(rf"\bcautions\.{code}\b|\b{code}\b", text)] == []


def test_nothing_is_guessed_by_a_clock_on_the_wall() -> None:
    assert [
        file.name for file in FILES if re.search(r"\b(?:datetime|time|date)\.(?:now|today|time|utcnow)\(", file.read_text(encoding="utf-8"))
    ] == []


# --- the examples -------------------------------------------------------------------------------------------------------------------


def test_the_anchor_page_follows_the_log_of_a_night_to_its_end() -> None:
    done = run("examples/app/anchor_page.py")
    assert (done.returncode, done.stderr) == (0, "")
    said = done.stdout.splitlines()
    assert said[0] == "2026-06-14T00:30Z scope: Scope 3.8:1 at high water (5.8:1 now): short."
    assert said[-1].startswith("2026-06-14T06:30Z end of the log")
    veer = [line for line in said if " veer: " in line]
    assert re.match(r"2026-06-14T00:30Z veer: Veer to 42 m by 2026-06-14T02:\d\dZ\.", veer[0])
    assert veer[1].startswith("2026-06-14T02:30Z veer: No need to veer: 45 m serves")
    watch = [line for line in said if " watch: " in line]
    assert "No sign of dragging" in watch[0]
    assert "05:35" <= watch[1][11:16] <= "05:55" and "She is dragging" in watch[1]  # she begins to drag at 05:30, nothing is called before
    assert len(watch) == 2


def test_the_log_of_the_night_is_what_its_maker_makes() -> None:
    sys.path.insert(0, str(ROOT / "examples" / "app"))
    try:
        log = "\n".join(importlib.import_module("record").log()) + "\n"
    finally:
        sys.path.pop(0)
    assert log == (ROOT / "examples" / "app" / "night.nmea").read_text(encoding="ascii")


def test_a_morning_is_asked_by_all_three_doors_and_they_agree() -> None:
    done = run("examples/morning.py")
    assert (done.returncode, done.stderr) == (0, "")
    assert done.stdout.splitlines()[-1] == "The doors agree."


@pytest.mark.parametrize("file", sorted((ROOT / "examples").glob("*.toml")), ids=lambda file: file.stem)
def test_every_boat_file_is_one(file: Path) -> None:
    assert anchorcalc.load_boat(file)["name"]
