"""The patterns of the tables: `..` for a gap, `(a|b)`, `[a]`, `#` for a quantity, a word in capitals for one of a list."""

import re
import tomllib
from collections.abc import Iterator, Sequence
from functools import cache
from importlib.resources import files
from itertools import pairwise
from typing import Any, NamedTuple


class Cue(NamedTuple):
    """One pattern: its weight, sets of words (or of two words side by side) of each of which one must be there, and the pattern itself."""

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


_OUTERMOST = re.compile(r"(\[[^\]]*\]|\((?:[^()]|\([^()]*\))*\)|[^\s\[(]+)(\s*)")
_AS_IT_STANDS = re.compile(r"[a-z]+|<[a-z]+>|[0-9]+|[-,:;?]")
_MOST_PAIRS = 60


def _needs(said: str) -> Iterator[frozenset[str]]:
    """Yield the words, and the pairs of words side by side, without which a pattern cannot match: of a choice the first or last ones."""
    alone: frozenset[str] = frozenset()  # what must be there by itself, unless it is part of a pair
    lasts: list[str] = []
    for part, space in _OUTERMOST.findall(said):
        choices = [choice.split(" ") for choice in (part[1:-1].split("|") if part[0] == "(" and part.count("(") < 2 else [part])]
        firsts = _plain(choices, 0)
        pairs = frozenset(f"{last} {first}" for last in lasts for first in firsts)
        if alone and not 0 < len(pairs) <= _MOST_PAIRS:
            yield alone
        if 0 < len(pairs) <= _MOST_PAIRS:
            yield pairs
            alone = frozenset()
        else:
            alone = frozenset(firsts)
        lasts = _plain(choices, -1) if space == " " else []
    if alone:
        yield alone


def _plain(choices: list[list[str]], at: int) -> list[str]:
    """Return the first or last words of all choices, none where one is no word as it stands."""
    words = [choice[at] for choice in choices]
    return words if all(_AS_IT_STANDS.fullmatch(word) for word in words) else []


class Called:
    """The patterns that a line calls up: those of which every need is there, found with a bit for each need of each pattern."""

    def __init__(self, cues: Sequence[Cue]) -> None:
        self.many, self.most = len(cues), max(len(one.needs) for one in cues)
        self.free = 0
        self.bits: dict[str, int] = {}
        for number, one in enumerate(cues):
            for slot in range(self.most):
                bit = 1 << (slot * self.many + number)
                if slot >= len(one.needs):
                    self.free |= bit
                for word in one.needs[slot] if slot < len(one.needs) else ():
                    self.bits[word] = self.bits.get(word, 0) | bit

    def by(self, line: str) -> Iterator[int]:
        """Yield the numbers of the patterns that may match a line, in order."""
        words, bits, there = line.split(" ")[1:-1], self.bits, self.free
        for unit in {*words, *map(" ".join, pairwise(words))}:
            if unit in bits:
                there |= bits[unit]
        called = there
        for slot in range(1, self.most):
            called &= there >> (slot * self.many)
        called &= (1 << self.many) - 1
        while called:
            lowest = called & -called
            yield lowest.bit_length() - 1
            called ^= lowest


def _regex(said: str) -> str:
    """Return the regular expression of a pattern; every gap is bounded, so that the time stays linear."""
    said = said.replace("?", r"\?").replace("(", "(?:").replace("#", r"<\w+>")
    said = re.sub(r"\[([^\]]*)\]", r"(?:\1)?", said)
    said = said.replace(" ... ", r" (?:\S+ ){0,10}?").replace(" .. ", r" (?:\S+ ){0,4}?")
    optional = r"(\(\?:[^()]*(?:\(\?:[^()]*\)[^()]*)*\)\?)"
    said = re.sub(optional + " ", lambda found: f"(?:{found[1][:-1]} )?", said)
    said = re.sub(" ?" + optional + "$", lambda found: f"(?: {found[1][:-1]})?", said)
    return rf" {said}(?= )"
