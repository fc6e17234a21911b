"""Writes the validation page beside it from the published tests themselves: every value they check, theirs and ours, with its source.

The tests are run, and every comparison they make is written down as it passes: nothing on the page is typed a second time. The source
is the comment that stands nearest to the comparison and says how the figure was come by. `python -m tests.published.page` writes the
page, `--check` says whether it is current.
"""

import ast
import re
import sys
from collections.abc import Callable, Iterator
from contextlib import redirect_stdout
from functools import cache
from io import StringIO
from pathlib import Path
from typing import Any, NamedTuple

import numpy as np
import numpy.testing as npt
import pytest

FOLDER = Path(__file__).parent
PAGE = FOLDER / "README.md"
MOST_ROWS = 40  # values of one comparison that are written out; of more (random cases against a library) the greatest difference
STATUS = {
    "read": r"\bread\b", "reproduction": r"\breproduc", "memory": r"\bmemory\b|\brecalled\b", "common practice": r"\bcommon practice\b",
    "computed": r"\bcomputed\b|\bworked\b|\bstatics\b|\btrigonometry\b|\bdistribution\b|\bPythagoras\b", "definition": r"\bdefinition\b",
    "own estimate": r"\bown estimate\b", "rule of this library": r"\brule of this library\b",
}  # fmt: skip


class Compared(NamedTuple):
    """One comparison that a test made."""

    file: str
    test: str
    case: str
    line: int
    ours: Any
    theirs: Any
    given_source: str


class Recorder:
    """A pytest plugin that writes down what the tests compare."""

    def __init__(self) -> None:
        self.compared: list[Compared] = []
        self.failed: list[str] = []
        self._item: Any = None

    @pytest.hookimpl(wrapper=True)
    def pytest_runtest_call(self, item: Any) -> Iterator[None]:
        """Note which test runs."""
        self._item = item
        return (yield)

    def pytest_runtest_logreport(self, report: Any) -> None:
        """Note what fails."""
        if report.failed:
            self.failed.append(report.nodeid)

    def around(self, check: Callable[..., None]) -> Callable[..., None]:
        """Return a check that is written down when it has passed."""

        def recorded(actual: Any, desired: Any, *rest: Any, **named: Any) -> None:
            check(actual, desired, *rest, **named)
            frame = sys._getframe(1)
            while frame.f_back is not None and not frame.f_code.co_filename.startswith(str(FOLDER)):
                frame = frame.f_back
            self.compared.append(self._noted(frame.f_lineno, actual, desired))

        return recorded

    def _noted(self, line: int, actual: Any, desired: Any) -> Compared:
        params = dict(self._item.callspec.params) if hasattr(self._item, "callspec") else {}
        case = ", ".join(f"{name} {_plain(value)}" for name, value in params.items() if name != "source" and _plain(value))
        return Compared(self._item.path.name, self._item.originalname, case, line, actual, desired, str(params.get("source", "")))


def _plain(value: Any) -> str:
    """Return a parameter as text, where it is short and plain."""
    if isinstance(value, bool | int | str):
        return str(value)
    if isinstance(value, float):
        return f"{value:.6g}"
    return " ".join(map(_plain, value)) if isinstance(value, tuple) and len(value) < 4 else ""


def run() -> Recorder:
    """Run the published tests and return what they compared."""
    recorder = Recorder()
    with pytest.MonkeyPatch.context() as patch:
        for name in ("assert_allclose", "assert_array_equal"):
            patch.setattr(npt, name, recorder.around(getattr(npt, name)))
        files = sorted(str(file) for file in FOLDER.glob("test_*.py") if file.name != "test_page.py")
        with redirect_stdout(StringIO()):
            pytest.main([*files, "-p", "no:cacheprovider", "-p", "no:xdist"], plugins=[recorder])
    return recorder


# --- where the source of a comparison stands ----------------------------------------------------------------------------------------


@cache
def _lines(file: str) -> tuple[str, ...]:
    return tuple((FOLDER / file).read_text(encoding="utf-8").splitlines())


@cache
def _tree(file: str) -> ast.Module:
    return ast.parse("\n".join(_lines(file)))


def comment(file: str, line: int) -> str:
    """Return the comment on a line, or an empty text."""
    found = re.search(r"(?:^|\s)#\s+(.*)$", _lines(file)[line - 1])
    return found[1].strip() if found and not found[1].startswith(("noqa", "fmt:", "type:")) else ""


def _above(file: str, line: int) -> str:
    """Return the block of comments right above a line."""
    block: list[str] = []
    while line > 1 and _lines(file)[line - 2].lstrip().startswith("#"):
        line -= 1
        block.insert(0, comment(file, line))
    return " ".join(block)


def _function(file: str, name: str) -> ast.FunctionDef:
    return next(node for node in _tree(file).body if isinstance(node, ast.FunctionDef) and node.name == name)


def candidates(one: Compared) -> Iterator[str]:
    """Yield the texts in which a comparison's source may stand, the nearest first."""
    yield one.given_source
    function = _function(one.file, one.test)
    first = min([function.lineno, *(part.lineno for part in function.decorator_list)])
    yield comment(one.file, one.line)
    for line in range(one.line, function.lineno - 1, -1):  # upwards through the body, to the line of the name
        yield " ".join(part for part in (_above(one.file, line), comment(one.file, line)) if part)
    for line in range(function.body[0].lineno, (function.end_lineno or first) + 1):
        yield comment(one.file, line)
    yield ast.get_docstring(function) or ""
    yield from _of_case(one, first, function.lineno)
    yield _above(one.file, first)
    yield from _of_constants(one.file, function, set())
    yield (ast.get_docstring(_tree(one.file)) or "").replace("\n", " ")


def _of_case(one: Compared, first: int, last: int) -> Iterator[str]:
    """Yield the comments beside the cases of a test: that of the case first, by the numbers in it."""
    wanted = set(re.findall(r"\d+(?:\.\d+)?", one.case))
    texts = [(len(wanted & set(re.findall(r"\d+(?:\.\d+)?", _lines(one.file)[line - 1]))), comment(one.file, line)) for line in range(first, last)]
    for _, text in sorted(texts, key=lambda pair: -pair[0]):
        yield text


def _of_constants(file: str, node: ast.AST, seen: set[str]) -> Iterator[str]:
    """Yield the comments above the tables that a test uses, and above what they are made of."""
    for name in [part.id for part in ast.walk(node) if isinstance(part, ast.Name)]:
        for other in _tree(file).body:
            targets = other.targets if isinstance(other, ast.Assign) else ()
            if name not in seen and any(isinstance(target, ast.Name) and target.id == name for target in targets):
                seen.add(name)
                yield " ".join(part for part in (_above(file, other.lineno), comment(file, other.lineno)) if part)
                yield from (comment(file, line) for line in range(other.lineno, (other.end_lineno or other.lineno) + 1))
                yield from _of_constants(file, other, seen)


def source_of(one: Compared) -> tuple[str, str]:
    """Return the source of a comparison and how its figure was come by."""
    for text in candidates(one):
        how = [status for status, pattern in STATUS.items() if re.search(pattern, text)]
        if how:
            return text.rstrip("."), ", ".join(how)
    return "", ""


# --- the page -----------------------------------------------------------------------------------------------------------------------


class Row(NamedTuple):
    """One line of the page."""

    file: str
    what: str
    theirs: str
    ours: str
    difference: str
    status: str
    source: str


def number(value: float) -> str:
    """Return a number as the page shows it."""
    return str(bool(value)).lower() if isinstance(value, bool | np.bool_) else f"{float(value):.7g}"


def difference(ours: float, theirs: float) -> str:
    """Return how far the two are apart; what lies in the last digits of a float is nothing, and may differ from machine to machine."""
    gap = ours - theirs
    return "0" if abs(gap) <= 1e-9 * max(abs(theirs), 1e-3) else f"{gap:.2g}"


def rows_of(one: Compared) -> Iterator[Row]:
    """Yield a row for each value of a comparison."""
    ours, theirs = np.broadcast_arrays(np.asarray(one.ours), np.asarray(one.theirs))
    source, status = source_of(one)
    what = one.test.removeprefix("test_").replace("_", " ") + (f" ({one.case})" if one.case else "")
    if ours.size > MOST_ROWS:
        worst = f"{np.max(np.abs(ours.astype(float) - theirs.astype(float))):.1g}"
        yield Row(one.file, f"{what}: {ours.size} values", "", "", f"{worst} at most", status, source)
        return
    for our, their in zip(ours.ravel(), theirs.ravel(), strict=True):
        if np.isnan(float(their)):
            continue  # nothing is printed there, and nothing is given
        gap = "" if ours.dtype == bool or not np.isfinite(float(their)) else difference(float(our), float(their))
        yield Row(one.file, what, number(their), number(our), gap, status, source)


def rows(recorder: Recorder) -> list[Row]:
    """Return every row, each once."""
    return list(dict.fromkeys(row for one in recorder.compared for row in rows_of(one)))


def page(recorder: Recorder) -> str:
    """Return the validation page."""
    every = rows(recorder)
    counts = {status: sum(status in row.status.split(", ") for row in every) for status in STATUS}
    lines = ["# Validation", "", *INTRODUCTION, ""]
    lines += [f"- {status}: {count}" for status, count in counts.items() if count]
    for file in dict.fromkeys(row.file for row in every):
        title = (ast.get_docstring(_tree(file)) or file).splitlines()[0]
        lines += ["", f"## {title}", "", f"`{file}`", ""]
        lines += ["| what is checked | published | ours | difference | status | source |", "| --- | ---: | ---: | ---: | --- | --- |"]
        lines += [
            f"| {_cell(row.what)} | {row.theirs} | {row.ours} | {row.difference} | {row.status} | {_cell(row.source)} |"
            for row in every
            if row.file == file
        ]
    return "\n".join(lines) + "\n"


INTRODUCTION = (
    "Written by `python -m tests.published.page` from the tests of this folder as they run: do not edit.",
    "",
    "Each line is one published value that the library is checked against: the value as its source has it, what the library finds, and the "
    "difference. Tests fail where the difference is more than half the last printed digit, or more than the tolerance that their comment gives.",
    "",
    "How a figure was come by: **read** (the source's own text), **reproduction** (another page's copy of it), **memory** (recalled, not seen "
    "again: treat as unverified), **computed** (worked from a rule or a definition), **definition**, **common practice** (taught widely, no "
    "single source), **own estimate**, **rule of this library** (what it does where nothing is "
    "printed). Lines by status (a figure worked from a rule that was read counts in both):",
)


def _cell(text: str) -> str:
    return text.replace("|", "\\|")


def main(arguments: list[str]) -> int:
    """Write the page, or with `--check` say whether it is current."""
    recorder = run()
    if recorder.failed:
        print("\n".join(["These tests fail:", *recorder.failed]))
        return 1
    text = page(recorder)
    if "--check" in arguments:
        current = PAGE.exists() and PAGE.read_text(encoding="utf-8") == text
        print("" if current else "tests/published/README.md is not current: run python -m tests.published.page", end="\n" if not current else "")
        return 0 if current else 1
    PAGE.write_text(text, encoding="utf-8")
    nameless = [row for row in rows(recorder) if not row.source]
    print(f"{len(rows(recorder))} values, {len(nameless)} without a source" + "".join(f"\n  {row.file}: {row.what}" for row in nameless))
    return 1 if nameless else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
