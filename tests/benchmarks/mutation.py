"""Would a test notice? Small wrong changes are made to physics and catalogue, one at a time, and the tests must fail.

`python -m tests.benchmarks.mutation --mutants 60 --seed 1` draws so many changes from all that can be made, runs for each the tests that know
the changed module, and prints how many were noticed and which were not. It works on a copy in a temporary folder.
"""

import argparse
import ast
import os
import random
import shutil
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from copy import deepcopy
from pathlib import Path
from typing import NamedTuple

ROOT = Path(__file__).parents[2]
PLACES = ("anchorcalc/physics", "anchorcalc/catalogue", "anchorcalc/derive.py", "anchorcalc/marking.py", "anchorcalc/tides.py")
OPERATORS: dict[type[ast.AST], type[ast.AST]] = {
    ast.Add: ast.Sub, ast.Sub: ast.Add, ast.Mult: ast.Div, ast.Div: ast.Mult, ast.Lt: ast.LtE, ast.LtE: ast.Lt, ast.Gt: ast.GtE, ast.GtE: ast.Gt,
    ast.Eq: ast.NotEq, ast.NotEq: ast.Eq, ast.And: ast.Or, ast.Or: ast.And, ast.BitAnd: ast.BitOr, ast.BitOr: ast.BitAnd,
}  # fmt: skip
NAMES = {"maximum": "minimum", "minimum": "maximum", "up": "down", "down": "up", "sin": "cos", "cos": "sin", "less": "greater", "greater": "less"}
WORDS = {"greatest": "least", "least": "greatest"}
SECONDS = 240  # a change that makes the tests hang is noticed too


class Mutant(NamedTuple):
    """One wrong change: where, what, and the text of the module with it."""

    file: str
    line: int
    what: str
    text: str


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
    tree = ast.parse(file.read_text(encoding="utf-8"))
    for number, node in enumerate(ast.walk(tree)):
        for place, (what, _) in enumerate(changes_of(node)):
            changed = deepcopy(tree)
            other = next(one for count, one in enumerate(ast.walk(changed)) if count == number)
            list(changes_of(other))[place][1](other)
            yield Mutant(str(file.relative_to(ROOT)), getattr(node, "lineno", 0), what, ast.unparse(ast.fix_missing_locations(changed)))


def tests_of(file: str) -> list[str]:
    """The tests that know a module: by its name in their text, and the properties of every question."""
    name = Path(file).stem
    known = [str(test.relative_to(ROOT)) for part in ("published", "properties") for test in sorted((ROOT / "tests" / part).glob("test_*.py"))]
    named = [test for test in known if name in (ROOT / test).read_text(encoding="utf-8") and not test.endswith(("test_page.py", "test_catalogue.py"))]
    return [*named, "tests/answering", "tests/properties/test_catalogue.py"]


def is_noticed(mutant: Mutant, copy: Path) -> bool:
    """Run the tests on the copy with the change in it."""
    target = copy / mutant.file
    sound = target.read_text(encoding="utf-8")
    target.write_text(mutant.text, encoding="utf-8")
    environment = {**os.environ, "PYTHONPATH": str(copy), "PYTHONDONTWRITEBYTECODE": "1"}
    question = Path(mutant.file).stem if "catalogue" in mutant.file else ""
    chosen = ["-k", f"({question} or not test_catalogue or promised) and not threads"] if question else ["-k", "not threads"]
    try:
        command = [sys.executable, "-m", "pytest", "-x", "-p", "no:cacheprovider", "-p", "no:xdist", *chosen, *tests_of(mutant.file)]
        return subprocess.run(command, cwd=copy, env=environment, capture_output=True, timeout=SECONDS, check=False).returncode != 0
    except subprocess.TimeoutExpired:
        return True
    finally:
        target.write_text(sound, encoding="utf-8")


def main(arguments: list[str]) -> int:
    """Draw mutants, run the tests on each, and print what was noticed."""
    reader = argparse.ArgumentParser(description=__doc__)
    reader.add_argument("--mutants", type=int, default=60)
    reader.add_argument("--seed", type=int, default=1)
    reader.add_argument("--minutes", type=float, default=30.0)
    reader.add_argument("--only", default="", help="part of the name of the modules to change")
    given = reader.parse_args(arguments)
    every = [mutant for mutant in mutants() if given.only in mutant.file]
    drawn = random.Random(given.seed).sample(every, min(given.mutants, len(every)))
    until, noticed, unnoticed = time.monotonic() + 60.0 * given.minutes, 0, []
    with tempfile.TemporaryDirectory() as folder:
        copy = Path(folder)
        for part in ("anchorcalc", "tests"):
            shutil.copytree(ROOT / part, copy / part, ignore=shutil.ignore_patterns("__pycache__", "node_modules"))
        shutil.copy(ROOT / "pyproject.toml", copy)
        for mutant in drawn:
            if time.monotonic() > until:
                break
            if is_noticed(mutant, copy):
                noticed += 1
            else:
                unnoticed.append(mutant)
                print(f"not noticed: {mutant.file}:{mutant.line} {mutant.what}", flush=True)
    done = noticed + len(unnoticed)
    print(f"{noticed} of {done} noticed ({noticed / max(done, 1):.0%}), drawn from {len(every)} with seed {given.seed}")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
