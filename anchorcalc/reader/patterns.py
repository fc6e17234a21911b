"""The patterns of the tables: `..` for a gap, `(a|b)`, `[a]`, `#` for a quantity, a word in capitals for one of a list."""

import re
import tomllib
from functools import cache
from importlib.resources import files
from typing import Any, NamedTuple


class Cue(NamedTuple):
    """One pattern: its weight, the words that must be there, and the pattern itself."""

    weight: float
    needs: frozenset[str]
    matches: re.Pattern[str]


def table(folder: str, name: str = "") -> dict[str, Any]:
    """Return the table of a file, or of all files of a folder together."""
    found: dict[str, Any] = {}
    for one in sorted(files("anchorcalc.reader").joinpath(folder).iterdir(), key=lambda one: one.name):
        if one.name.endswith(".toml") and (one.name == name if name else one.name != "words.toml"):
            found |= tomllib.loads(one.read_text(encoding="utf-8"))
    return found


@cache
def _lists() -> dict[str, str]:
    return {name: f"({'|'.join(words)})" for name, words in table("asked", "words.toml").items()}


_CAPITALS = re.compile(r"\b[A-Z]{2,}\b")


def cue(said: str, *, weight: float) -> Cue:
    """Return a pattern of a table ready for use."""
    depth, needed = 0, set()
    for part in said.split():
        depth += part.count("(") + part.count("[")
        if depth == 0 and part.isalpha() and part.islower():
            needed.add(part)
        depth -= part.count(")") + part.count("]")
    said = _CAPITALS.sub(lambda found: _lists()[found[0]], said.strip())
    return Cue(weight, frozenset(needed), re.compile(_regex(said)))


def _regex(said: str) -> str:
    """Return the regular expression of a pattern; every gap is bounded, so that the time stays linear."""
    said = said.replace("?", r"\?").replace("(", "(?:").replace("#", r"<\w+>")
    said = re.sub(r"\[([^\]]*)\]", r"(?:\1)?", said)
    said = said.replace(" ... ", r" (?:\S+ ){0,10}?").replace(" .. ", r" (?:\S+ ){0,4}?")
    optional = r"(\(\?:[^()]*(?:\(\?:[^()]*\)[^()]*)*\)\?)"
    said = re.sub(optional + " ", lambda found: f"(?:{found[1][:-1]} )?", said)
    said = re.sub(" ?" + optional + "$", lambda found: f"(?: {found[1][:-1]})?", said)
    return rf"(?<= ){said}(?= )"
