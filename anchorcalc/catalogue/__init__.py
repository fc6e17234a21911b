"""The catalogue: finds the files beside it, one question each."""

from difflib import get_close_matches
from functools import cache
from importlib import import_module
from pathlib import Path
from pkgutil import iter_modules

from anchorcalc.declare import Question
from anchorcalc.errors import UnknownQuestion, fault


@cache
def names() -> tuple[str, ...]:
    """Return the names of all questions, in alphabetical order."""
    return tuple(sorted(module.name for module in iter_modules([str(Path(__file__).parent)])))


@cache
def _load(name: str) -> Question:
    found: Question = import_module(f"anchorcalc.catalogue.{name}").QUESTION
    return found


def question(name: str) -> Question:
    """Return the question of that name (`-` and `_` are alike)."""
    wanted = name.replace("-", "_") if isinstance(name, str) else name
    if wanted not in names():
        raise UnknownQuestion([fault("question", "unknown_question", name, "is no question of this library", nearest(name=str(name)))])
    return _load(wanted)


def nearest(*, name: str) -> str:
    """Return the nearest known question to a misspelt name, as a hint."""
    best = get_close_matches(name[:60].replace("-", "_"), names(), n=1)
    return best[0] if best else f"one of {', '.join(names())}"


@cache
def catalogue() -> tuple[Question, ...]:
    """Return all questions."""
    return tuple(_load(name) for name in names())
