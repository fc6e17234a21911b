"""The patterns of the tables: `..` for a gap, `(a|b)`, `[a]`, `#` for a quantity, a word in capitals for one of a list."""

import re
import tomllib
from collections.abc import Iterator
from functools import cache
from importlib.resources import files
from typing import Any, NamedTuple


class Cue(NamedTuple):
    """One pattern: its weight, sets of words of each of which one must be there, and the pattern itself."""

    weight: float
    needs: tuple[frozenset[str], ...]
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
    said = _CAPITALS.sub(lambda found: _lists()[found[0]], said.strip())
    return Cue(weight, tuple(_needs(said)), re.compile(_regex(said)))


_OUTERMOST = re.compile(r"\[[^\]]*\]|\((?:[^()]|\([^()]*\))*\)|[^\s\[(]+")


def _needs(said: str) -> Iterator[frozenset[str]]:
    """Yield the plain words, and the first words of the choices, without which a pattern cannot match."""
    for part in _OUTERMOST.findall(said):
        firsts = [choice.split(" ")[0] for choice in part[1:-1].split("|")] if part[0] == "(" else [part]
        if all(first.isalpha() and first.islower() for first in firsts) and part.count("(") < 2:
            yield frozenset(firsts)


def _regex(said: str) -> str:
    """Return the regular expression of a pattern; every gap is bounded, so that the time stays linear."""
    said = said.replace("?", r"\?").replace("(", "(?:").replace("#", r"<\w+>")
    said = re.sub(r"\[([^\]]*)\]", r"(?:\1)?", said)
    said = said.replace(" ... ", r" (?:\S+ ){0,10}?").replace(" .. ", r" (?:\S+ ){0,4}?")
    optional = r"(\(\?:[^()]*(?:\(\?:[^()]*\)[^()]*)*\)\?)"
    said = re.sub(optional + " ", lambda found: f"(?:{found[1][:-1]} )?", said)
    said = re.sub(" ?" + optional + "$", lambda found: f"(?: {found[1][:-1]})?", said)
    return rf" {said}(?= )"
