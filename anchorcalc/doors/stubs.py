"""Writes the type stubs: every question as a function with its real inputs, and the types of every answer.

`python -m anchorcalc.doors.stubs` writes them, `--check` says whether they are current.
"""

import sys
from collections.abc import Iterator
from pathlib import Path

import msgspec

from anchorcalc import _PUBLIC
from anchorcalc.answering.replies import ReadSoFar, camel, read_class, read_type
from anchorcalc.catalogue import catalogue
from anchorcalc.declare import Question
from anchorcalc.doors.python import required
from anchorcalc.units import kinds
from anchorcalc.units.kinds import Kind

PACKAGE = Path(__file__).parent.parent
HEADER = '"""Written by `python -m anchorcalc.doors.stubs`: do not edit."""\n'

# What a typed call may be given, by kind of input.
ALIASES = '''
class _Pint(Protocol):
    """A pint quantity of any registry."""

    @property
    def magnitude(self) -> Any: ...
    @property
    def units(self) -> Any: ...
    @property
    def dimensionality(self) -> Any: ...

_Quantity = str | Quantity | Mapping[str, object] | _Pint
_Number = float | Decimal | str | Quantity | Mapping[str, object]
_Word = str | ReadWord
_Flag = bool | str | ReadFlag
_Clock = str | datetime | time | ClockTime
_Position = str | tuple[float, float] | Mapping[str, float] | ReadPosition
_Lengths = str | Sequence[_Quantity] | Mapping[str, object] | ReadLengths
_Fixes = str | Sequence[Mapping[str, object] | tuple[str, _Position] | Fix] | ReadFixes
'''
_ALIAS = {
    kinds.RATIO.name: "_Number",
    kinds.SLOPE.name: "_Number",
    kinds.FACTOR.name: "_Number",
    kinds.COUNT.name: "_Number",
    kinds.WORD.name: "_Word",
    kinds.FLAG.name: "_Flag",
    kinds.CLOCK.name: "_Clock",
    kinds.POSITION.name: "_Position",
    kinds.LENGTHS.name: "_Lengths",
    kinds.FIXES.name: "_Fixes",
}


def accepted(kind: Kind) -> str:
    """Return the name of the type that an input of a kind accepts."""
    return _ALIAS.get(kind.name, "_Quantity")


def public_stub() -> str:
    """Return the stub of the package: public names, answer types, and a function a question."""
    lines = [
        HEADER,
        "from collections.abc import Mapping, Sequence",
        "from datetime import datetime, time",
        "from decimal import Decimal",
        "from typing import Any, Protocol\n",
    ]
    lines += _imports()
    lines += [ALIASES, "_PUBLIC: dict[str, str]", "__version__: str"]
    for question in catalogue():
        lines += ["", *_function(question)]
    return "\n".join(lines) + "\n"


def _imports() -> Iterator[str]:
    """Import what the stub uses, and hand the public names on."""
    handed_on = [(module, name) for name, module in _PUBLIC.items() if name != "__version__"]
    handed_on += [("anchorcalc.answering.answers", f"{camel(question.name)}{ending}") for question in catalogue() for ending in ("Answer", "Read")]
    used = ["ClockTime", "Fix", "ReadFixes", "ReadFlag", "ReadLengths", "ReadPosition", "ReadWord"]
    lines = [(module, 1, not name[0].isupper(), name, f"from {module} import {name} as {name}") for module, name in handed_on]
    lines.append(("anchorcalc.units.quantity", 0, False, "", _imported("anchorcalc.units.quantity", used)))
    yield from (line[-1] for line in sorted(lines))


def _imported(module: str, names: list[str]) -> str:
    """Return one import of several names, one a line."""
    return f"from {module} import (\n" + "".join(f"    {name},\n" for name in sorted(names)) + ")"


def _function(question: Question) -> Iterator[str]:
    yield f"def {question.name}("
    yield "    *,"
    for name, one in question.inputs.items():
        kind = accepted(one.term.kind)
        yield f"    {name}: {kind}," if required(question, name) else f"    {name}: {kind} | None = None,"
    yield "    boat: Mapping[str, Any] | None = None,"
    yield "    units: str | None = None,"
    yield f") -> {camel(question.name)}Answer:"
    first, *rest = question.doc.replace("\\", "\\\\").splitlines()
    yield f'    """{first}' + ('"""' if not rest else "")
    for line in rest:
        yield f"    {line}" if line else ""
    if rest:
        yield '    """'


def answers_stub() -> str:
    """Return the stub of the answer types of all questions."""
    used = [read_type(name=field.name).__name__ for field in msgspec.structs.fields(ReadSoFar)]
    lines = [HEADER, "from typing import Literal\n", "import msgspec\n", "from anchorcalc.answering.replies import Answer"]
    lines += [f"from anchorcalc.catalogue.{question.name} import {question.results.__name__}" for question in catalogue()]
    lines += [_imported("anchorcalc.units.quantity", sorted(set(used))), "", *_read_type(ReadSoFar), ""]
    for question in catalogue():
        lines += [*_read_type(read_class(question)), "", *_answer_type(question), ""]
    return "\n".join(lines).rstrip("\n") + "\n"


def _read_type(made: type[msgspec.Struct]) -> Iterator[str]:
    yield f"class {made.__name__}(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):"
    for field in msgspec.structs.fields(made):
        kind = read_type(name=field.name).__name__
        yield f"    {field.name}: {kind}" if field.required else f"    {field.name}: {kind} | None = None"


def _answer_type(question: Question) -> Iterator[str]:
    yield f"class {camel(question.name)}Answer(Answer, frozen=True, kw_only=True, omit_defaults=True):"
    yield f'    question: Literal["{question.name}"]'
    yield f"    results: {question.results.__name__}"
    yield f"    read: {camel(question.name)}Read"


def stubs() -> dict[Path, str]:
    """Return every stub by its file."""
    return {PACKAGE / "__init__.pyi": public_stub(), PACKAGE / "answering" / "answers.pyi": answers_stub()}


def main(arguments: list[str]) -> int:
    """Write the stubs, or with `--check` say which are not current."""
    stale = [file for file, text in stubs().items() if not file.exists() or file.read_text(encoding="utf-8") != text]
    if "--check" in arguments:
        for file in stale:
            print(f"{file.relative_to(PACKAGE.parent)} is not current: run python -m anchorcalc.doors.stubs")
        return 1 if stale else 0
    for file in stale:
        file.write_text(stubs()[file], encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
