"""anchorcalc: what a skipper who anchors a small boat by hand must settle, in plain words or as typed calls.

Everything is loaded when first used; `questions()` lists what can be asked.
"""

from pathlib import Path
from typing import Any

_PUBLIC = {
    "answer": "anchorcalc.doors.python",
    "questions": "anchorcalc.doors.python",
    "load": "anchorcalc.doors.python",
    "ask": "anchorcalc.doors.ask",
    "find_quantities": "anchorcalc.reader.quantities",
    "check_table": "anchorcalc.doors.fleet",
    "draw": "anchorcalc.doors.drawing",
    "load_boat": "anchorcalc.doors.boats",
    "AnchorcalcError": "anchorcalc.errors",
    "Fault": "anchorcalc.errors",
    "InputError": "anchorcalc.errors",
    "UnknownQuestion": "anchorcalc.errors",
    "TextError": "anchorcalc.errors",
    "FileError": "anchorcalc.errors",
    "TableError": "anchorcalc.errors",
    "PictureError": "anchorcalc.errors",
    "DecodeError": "anchorcalc.errors",
    "Answer": "anchorcalc.answering.replies",
    "Needs": "anchorcalc.answering.replies",
    "Unclear": "anchorcalc.answering.replies",
    "Cannot": "anchorcalc.answering.replies",
    "Quantity": "anchorcalc.units.quantity",
    "__version__": "anchorcalc.version",
}


def __getattr__(name: str) -> Any:
    """Load a public name, or a question's function or answer type, when it is first used."""
    from importlib import import_module

    if name in _PUBLIC:
        found = getattr(import_module(_PUBLIC[name]), "VERSION" if name == "__version__" else name)
    elif name.endswith(("Answer", "Read")):
        found = getattr(import_module("anchorcalc.answering.answers"), name)
    elif name.isidentifier() and Path(__file__).with_name("catalogue").joinpath(f"{name}.py").exists():
        found = import_module("anchorcalc.doors.python").function_of(name)
    else:
        raise AttributeError(f"module 'anchorcalc' has no attribute {name!r}")
    globals()[name] = found
    return found


def __dir__() -> list[str]:
    """List the public names and the questions."""
    from anchorcalc.catalogue import names

    return sorted({*_PUBLIC, *names()})
