"""Would a test notice? Small wrong changes are made to physics and catalogue, one at a time, and the tests must fail.

`python -m tests.benchmarks.mutation --mutants 60 --seed 1` draws so many changes from all that can be made, runs for each the tests that know
the changed module until one fails, and prints how many were noticed and which were not. It works on copies in a temporary folder, one for each
of the processes side by side; a process is forked with the libraries loaded and the package not, so that every change is met afresh.
"""

import argparse
import ast
import compileall
import os
import random
import shutil
import signal
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from importlib import import_module
from pathlib import Path
from py_compile import PycInvalidationMode
from typing import NamedTuple

import pytest

ROOT = Path(__file__).parents[2]
SHARED = ("derive", "findings", "marking", "tackle", "tides")
PLACES = ("anchorcalc/physics", "anchorcalc/catalogue", *(f"anchorcalc/{name}.py" for name in SHARED))
LIBRARIES = ("numpy", "scipy.optimize", "scipy.integrate", "msgspec", "hypothesis", "pint", "geographiclib.geodesic", "pyproj")
OPERATORS: dict[type[ast.AST], type[ast.AST]] = {
    ast.Add: ast.Sub, ast.Sub: ast.Add, ast.Mult: ast.Div, ast.Div: ast.Mult, ast.Lt: ast.LtE, ast.LtE: ast.Lt, ast.Gt: ast.GtE, ast.GtE: ast.Gt,
    ast.Eq: ast.NotEq, ast.NotEq: ast.Eq, ast.And: ast.Or, ast.Or: ast.And, ast.BitAnd: ast.BitOr, ast.BitOr: ast.BitAnd,
}  # fmt: skip
NAMES = {"maximum": "minimum", "minimum": "maximum", "up": "down", "down": "up", "sin": "cos", "cos": "sin", "less": "greater", "greater": "less"}
WORDS = {"greatest": "least", "least": "greatest"}
SECONDS = 240  # a change that makes the tests hang is noticed too


class Mutant(NamedTuple):
    """One wrong change: in which file, at which node of its tree (-1: none at all), which of the node's changes; and for people, where and what."""

    file: str
    node: int
    change: int
    line: int
    what: str

    def text(self) -> str:
        """The module with the change in it."""
        tree = ast.parse((ROOT / self.file).read_text(encoding="utf-8"))
        if self.node < 0:
            return ast.unparse(tree)
        changed = next(node for number, node in enumerate(ast.walk(tree)) if number == self.node)
        list(changes_of(changed))[self.change][1](changed)
        return ast.unparse(ast.fix_missing_locations(tree))


def changes_of(node: ast.AST) -> Iterator[tuple[str, Callable[[ast.AST], None]]]:
    """Yield the wrong changes that can be made to a node: what, and how."""
    if isinstance(node, ast.BinOp) and type(node.op) in OPERATORS and not isinstance(node.left, ast.Constant | ast.JoinedStr):
        yield _operator(node.op), lambda other: setattr(other, "op", OPERATORS[type(other.op)]())  # type: ignore[attr-defined]
    if isinstance(node, ast.BoolOp):
        yield _operator(node.op), lambda other: setattr(other, "op", OPERATORS[type(other.op)]())  # type: ignore[attr-defined]
    if isinstance(node, ast.Compare) and type(node.ops[0]) in OPERATORS:
        yield _operator(node.ops[0]), lambda other: other.ops.__setitem__(0, OPERATORS[type(other.ops[0])]())  # type: ignore[attr-defined]
    if isinstance(node, ast.Constant) and isinstance(node.value, int | float) and not isinstance(node.value, bool):
        yield f"{node.value} → {node.value + 1}", lambda other: setattr(other, "value", other.value + 1)  # type: ignore[attr-defined]
    if isinstance(node, ast.Constant) and isinstance(node.value, str) and node.value in WORDS:
        yield f"{node.value} → {WORDS[node.value]}", lambda other: setattr(other, "value", WORDS[other.value])  # type: ignore[attr-defined]
    if isinstance(node, ast.Attribute) and node.attr in NAMES:
        yield f"{node.attr} → {NAMES[node.attr]}", lambda other: setattr(other, "attr", NAMES[other.attr])  # type: ignore[attr-defined]
    if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in ("up", "down"):
        yield f"{node.func.id} → {NAMES[node.func.id]}", lambda other: setattr(other.func, "id", NAMES[other.func.id])  # type: ignore[attr-defined]
    if isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute) and node.func.attr == "where" and len(node.args) == 3:
        yield "where: branches swapped", lambda other: other.args.__setitem__(slice(1, 3), other.args[:0:-1])  # type: ignore[attr-defined]


def _operator(operator: ast.AST) -> str:
    return f"{type(operator).__name__} → {OPERATORS[type(operator)].__name__}"


def mutants() -> list[Mutant]:
    """Every wrong change that can be made."""
    files = [file for place in PLACES for file in ([ROOT / place] if place.endswith(".py") else sorted((ROOT / place).rglob("*.py")))]
    return [mutant for file in files if file.name != "__init__.py" for mutant in mutants_of(file)]


def mutants_of(file: Path) -> Iterator[Mutant]:
    """Every wrong change that can be made to a file."""
    for number, node in enumerate(ast.walk(ast.parse(file.read_text(encoding="utf-8")))):
        for place, (what, _) in enumerate(changes_of(node)):
            yield Mutant(str(file.relative_to(ROOT)), number, place, getattr(node, "lineno", 0), what)


def tests_of(file: str) -> list[str]:
    """The tests of sums and answers, those that name the module first; the page's own search through the tables would only repeat them."""
    name, parts = Path(file).stem, ("published", "answering", "review", "properties")
    every = [test for part in parts for test in sorted((ROOT / "tests" / part).glob("test_*.py")) if test.name != "test_page.py"]
    return [str(test.relative_to(ROOT)) for test in sorted(every, key=lambda test: name not in test.read_text(encoding="utf-8"))]


def chosen(file: str) -> str:
    """Which of them: of the properties of every question, a question's own."""
    return f"({Path(file).stem} or not test_catalogue or promised) and not threads" if "catalogue" in file else "not threads"


def start(mutant: Mutant, copy: Path) -> int:
    """Put the change into a copy, and run the tests there in a process of their own, which ends with 0 where none fails."""
    (copy / mutant.file).write_text(mutant.text(), encoding="utf-8")
    process = os.fork()
    if process:
        return process
    try:
        os.setsid()
        os._exit(_tests_fail(mutant, copy))
    finally:
        os._exit(1)  # whatever happens, the child must not live on as its parent


def _tests_fail(mutant: Mutant, copy: Path) -> int:
    nowhere = os.open(os.devnull, os.O_RDWR)
    for stream in (0, 1, 2):
        os.dup2(nowhere, stream)
    os.chdir(copy)
    sys.path[0] = str(copy)
    for name in [name for name in sys.modules if name.partition(".")[0] == "tests"]:
        del sys.modules[name]
    return int(pytest.main(["-x", "--assert=plain", "-p", "no:cacheprovider", "-p", "no:xdist", "-k", chosen(mutant.file), *tests_of(mutant.file)]))


class Running(NamedTuple):
    """A change that is being tried."""

    mutant: Mutant
    copy: Path
    since: float


def tried(drawn: list[Mutant], copies: list[Path], until: float) -> Iterator[tuple[Mutant, bool]]:
    """Yield each change with whether it was noticed, as the processes end; none is begun when the time is over."""
    waiting, free, running = list(reversed(drawn)), list(copies), dict[int, Running]()
    while running or (waiting and time.monotonic() < until):
        while free and waiting and time.monotonic() < until:
            mutant, copy = waiting.pop(), free.pop()
            running[start(mutant, copy)] = Running(mutant, copy, time.monotonic())
        time.sleep(0.05)
        for process, one in list(running.items()):
            ended, status = os.waitpid(process, os.WNOHANG)
            if not ended and time.monotonic() - one.since > SECONDS:
                os.killpg(process, signal.SIGKILL)
                ended, status = os.waitpid(process, 0)
            if ended:
                (one.copy / one.mutant.file).write_text((ROOT / one.mutant.file).read_text(encoding="utf-8"), encoding="utf-8")
                free.append(running.pop(process).copy)
                yield one.mutant, status != 0


def copied(folder: Path) -> Path:
    """Copy package and tests; what is compiled there is trusted by its contents, not by its date."""
    for part in ("anchorcalc", "tests"):
        shutil.copytree(ROOT / part, folder / part, ignore=shutil.ignore_patterns("__pycache__", "node_modules"))
    shutil.copy(ROOT / "pyproject.toml", folder)
    compileall.compile_dir(folder / "anchorcalc", quiet=1, invalidation_mode=PycInvalidationMode.CHECKED_HASH)
    return folder


def main(arguments: list[str]) -> int:
    """Draw mutants, run the tests on each, and print what was noticed."""
    reader = argparse.ArgumentParser(description=__doc__)
    reader.add_argument("--mutants", type=int, default=60)
    reader.add_argument("--seed", type=int, default=1)
    reader.add_argument("--minutes", type=float, default=30.0)
    reader.add_argument("--only", default="", help="part of the name of the modules to change")
    reader.add_argument("--processes", type=int, default=2)
    given = reader.parse_args(arguments)
    for name in LIBRARIES:
        import_module(name)
    every = [mutant for mutant in mutants() if given.only in mutant.file]
    drawn = random.Random(given.seed).sample(every, min(given.mutants, len(every)))
    noticed, unnoticed = 0, 0
    with tempfile.TemporaryDirectory() as folder:
        copies = [copied(Path(folder) / str(number)) for number in range(given.processes)]
        untouched = [one._replace(node=-1, what="nothing") for one in drawn[: given.processes]]
        if any(seen for _, seen in tried(untouched, copies, time.monotonic() + SECONDS)):
            print("the tests fail with nothing changed")
            return 1
        for mutant, seen in tried(drawn, copies, time.monotonic() + 60.0 * given.minutes):
            noticed, unnoticed = noticed + seen, unnoticed + (not seen)
            if not seen:
                print(f"not noticed: {mutant.file}:{mutant.line} {mutant.what}", flush=True)
    done = noticed + unnoticed
    print(f"{noticed} of {done} noticed ({noticed / max(done, 1):.0%}), drawn from {len(every)} with seed {given.seed}")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
