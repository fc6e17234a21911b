"""The patterns of the tables: `..` for a gap, `(a|b)`, `[a]`, `#` for a quantity, a word in capitals for one of a list."""

import re
import tomllib
from collections import Counter
from collections.abc import Iterator, Sequence
from functools import cache
from importlib.resources import files
from itertools import pairwise
from typing import Any

from anchorcalc.reader.mention import Part

Unit = str | tuple[str, str]  # a word, or two words side by side


class Cue(Part, frozen=True, gc=False):
    """One pattern: its weight, its wordings (none where it has gaps), sets of which one each must be there, and its regular expression."""

    weight: float
    wordings: tuple[tuple[str, ...], ...]
    needs: tuple[frozenset[Unit], ...]
    regex: str


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
    said = _INNER.sub(r"\1", said)
    wordings = _wordings(said)
    return Cue(weight, wordings, () if wordings else tuple(_needs(said)), _regex(said))


_INNER = re.compile(r"(?<=[(|])\(([^()]*)\)(?=[|)])")
_OUTERMOST = re.compile(r"(\[[^\]]*\]|\((?:[^()]|\([^()]*\))*\)|[^\s\[(]+)(\s*)")
_AS_IT_STANDS = re.compile(r"[a-z]+|<[a-z]+>|[0-9]+|[-,:;?]")
_MOST_PAIRS, _MOST_WORDINGS = 60, 400


def _wordings(said: str) -> tuple[tuple[str, ...], ...]:
    """Return all that a pattern can be as plain words, nothing where it is more than that."""
    parts = _OUTERMOST.findall(said)
    found: list[tuple[str, ...]] = [()]
    for number, (part, space) in enumerate(parts):
        choices = [tuple(choice.split(" ")) for choice in (part[1:-1] if part[0] in "([" else part).split("|")]
        if space != ("" if number == len(parts) - 1 else " ") or not all(_AS_IT_STANDS.fullmatch(word) for choice in choices for word in choice):
            return ()
        found = [(*begun, *choice) for begun in found for choice in (choices if part[0] != "[" else [*choices, ()])]
        if len(found) > _MOST_WORDINGS:
            return ()
    return tuple(found) if () not in found else ()


def _needs(said: str) -> Iterator[frozenset[Unit]]:
    """Yield the words, and the pairs of words side by side, without which a pattern cannot match: of a choice the first or last ones."""
    alone: list[str] = []  # what must be there by itself, unless it is part of a pair
    lasts: list[str] = []
    for part, space in _OUTERMOST.findall(said):
        choices = [choice.split(" ") for choice in (part[1:-1].split("|") if part[0] == "(" and part.count("(") < 2 else [part])]
        firsts = _plain(choices, 0)
        pairs = [(last, first) for last in lasts for first in firsts]
        if alone and not 0 < len(pairs) <= _MOST_PAIRS:
            yield frozenset(alone)
        if 0 < len(pairs) <= _MOST_PAIRS:
            yield frozenset(pairs)
            alone = []
        else:
            alone = firsts
        lasts = _plain(choices, -1) if space == " " else []
    if alone:
        yield frozenset(alone)


def _plain(choices: list[list[str]], at: int) -> list[str]:
    """Return the first or last words of all choices, none where one is no word as it stands."""
    words = [choice[at] for choice in choices]
    return words if all(_AS_IT_STANDS.fullmatch(word) for word in words) else []


Calls = dict[int, tuple[re.Pattern[str], tuple[frozenset[Unit], ...]]]  # patterns with gaps, and what else of each must be there
_NOT_FURTHER: dict[str, "_Wording"] = {}  # most words are the last of theirs: these two stay empty
_NO_CALLS: Calls = {}


class _Wording:
    """What begins with the same words: the patterns that are said with them, those that they call up, and how it goes on."""

    __slots__ = ("calls", "further", "said")

    def __init__(self) -> None:
        self.further = _NOT_FURTHER
        self.said: tuple[int, ...] = ()
        self.calls = _NO_CALLS

    def at(self, words: tuple[str, ...]) -> "_Wording":
        """Return what begins with further words."""
        here = self
        for word in words:
            here.further = here.further or {}
            here = here.further.setdefault(word, _Wording())
        return here

    def call(self, number: int, matches: re.Pattern[str], needs: tuple[frozenset[Unit], ...]) -> None:
        """Let a pattern with gaps be called up here."""
        self.calls = self.calls or {}
        self.calls[number] = (matches, needs)


class Called:
    """Patterns, found in a line all at once: those of plain words word by word, the others where their rarest words call them up."""

    def __init__(self, cues: Sequence[Cue]) -> None:
        self.top = _Wording()
        common = Counter(unit for one in cues if not one.wordings for need in one.needs for unit in need)
        for number, one in enumerate(cues):
            for wording in one.wordings:
                self.top.at(wording).said += (number,)
            if one.wordings:
                continue
            matches = re.compile(one.regex)
            rarest_first = sorted(one.needs, key=lambda need: sum(common[unit] for unit in need))
            for unit in rarest_first[0] if rarest_first else ((),):
                self.top.at((unit,) if isinstance(unit, str) else unit).call(number, matches, tuple(rarest_first[1:]))

    def by(self, line: str) -> list[tuple[int, int]]:
        """Return the numbers of the patterns that match a line, in order, and where each first does."""
        words = line.split(" ")[1:]
        found, called = self._word_by_word(words)
        units: set[Unit] = {*words, *pairwise(words)} if called else set()
        for number, (matches, needs) in called.items():
            for need in needs:
                if units.isdisjoint(need):
                    break
            else:
                if number not in found and (at := matches.search(line)) is not None:
                    found[number] = at.start()
        return sorted(found.items())

    def _word_by_word(self, words: list[str]) -> tuple[dict[int, int], Calls]:
        """Return the patterns of plain words (the last one empty), and where each first begins; and those that the words call up."""
        found: dict[int, int] = {}
        called = self.top.calls.copy()
        at, top = 0, self.top.further
        for place, word in enumerate(words):
            here, following = top.get(word), place
            while here is not None:
                for number in here.said:
                    if number not in found:
                        found[number] = at
                if here.calls:
                    called |= here.calls
                following += 1
                here = here.further.get(words[following])
            at += len(word) + 1
        return found, called


def _regex(said: str) -> str:
    """Return the regular expression of a pattern; every gap is bounded, so that the time stays linear."""
    said = said.replace("?", r"\?").replace("(", "(?:").replace("#", r"<\w+>")
    said = re.sub(r"\[([^\]]*)\]", r"(?:\1)?", said)
    said = said.replace(" ... ", r" (?:\S+ ){0,10}?").replace(" .. ", r" (?:\S+ ){0,4}?")
    optional = r"(\(\?:[^()]*(?:\(\?:[^()]*\)[^()]*)*\)\?)"
    said = re.sub(optional + " ", lambda found: f"(?:{found[1][:-1]} )?", said)
    said = re.sub(" ?" + optional + "$", lambda found: f"(?: {found[1][:-1]})?", said)
    return rf" {said}(?= )"
