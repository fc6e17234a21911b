"""Which question a text asks: the patterns that it holds, weighed."""

import re
from functools import cache
from typing import NamedTuple

from anchorcalc.catalogue import catalogue, names
from anchorcalc.reader.asked import ASKED, WORDS
from anchorcalc.reader.sentence import spelled

_LEAST = 4.0


class Cue(NamedTuple):
    """One pattern of a question: its weight, the words that must be there, and the pattern itself."""

    weight: float
    needs: frozenset[str]
    matches: re.Pattern[str]


class Weighed(NamedTuple):
    """A question with the weight of its patterns, and where the first of them stands in the line."""

    question: str
    weight: float
    first: int


def compiled(cue: str) -> Cue:
    """Return a pattern of the table ready for use."""
    weight, _, said = cue.partition(" ")
    depth, needed = 0, set()
    for part in said.split():
        depth += part.count("(") + part.count("[")
        if depth == 0 and part.isalpha() and part.islower():
            needed.add(part)
        depth -= part.count(")") + part.count("]")
    for name, words in WORDS.items():
        said = re.sub(rf"\b{name}\b", words, said)
    return Cue(float(weight), frozenset(needed), re.compile(_regex(said)))


def _regex(said: str) -> str:
    """Return the regular expression of a pattern; every gap is bounded, so that the time stays linear."""
    said = said.replace("?", r"\?").replace("(", "(?:").replace("#", r"<\w+>")
    said = re.sub(r"\[([^\]]*)\]", r"(?:\1)?", said)
    said = said.replace(" ... ", r" (?:\S+ ){0,10}?").replace(" .. ", r" (?:\S+ ){0,4}?")
    said = re.sub(r"(\(\?:[^()]*(?:\([^()]*\)[^()]*)*\)\?) ", lambda found: f"(?:{found[1][:-1]} )?", said)
    said = re.sub(r" (\(\?:[^()]*(?:\([^()]*\)[^()]*)*\)\?)$", lambda found: f"(?: {found[1][:-1]})?", said)
    return rf"(?<= ){said}(?= )"


@cache
def cues() -> dict[str, tuple[Cue, ...]]:
    """Return the patterns of every question: the table's, and the phrases of the question itself."""
    found = {name: [compiled(cue) for cue in ASKED.get(name, ())] for name in names()}
    for one in catalogue():
        for phrase in one.asks:
            words = [spelled(word) for word in phrase.lower().split()]
            found[one.name].append(compiled("7 " + " ".join(words)))
    return {name: tuple(held) for name, held in found.items()}


def weigh(line: str) -> list[Weighed]:
    """Return the questions that a line of words may ask, the heaviest first."""
    words = frozenset(line.split())
    found: list[Weighed] = []
    for name, held in cues().items():
        total, first = 0.0, len(line)
        for cue in held:
            if cue.needs <= words:
                at = cue.matches.search(line)
                if at is not None:
                    total += cue.weight
                    first = min(first, at.start())
        if total >= _LEAST:
            found.append(Weighed(name, total, first))
    return sorted(found, key=lambda one: (-one.weight, one.question))


_ASKING = frozenset(
    "what which when where how why who is are am was do does did can could will would should shall must may might has have whether tell give show list calculate compute work check need needed want wanted "
    "find estimate recommend survey inspect rate please vet make convert let look go would've enough say put need".split()
)
_CONVERT = re.compile(r"(?<= )(?:\?|what|which|when|where|how|tell|give|show|list|calculate|compute|work out|check|please|estimate|recommend|survey|inspect|rate|vet|convert|wanted|needed)(?= )")


def asks_something(line: str) -> bool:
    """Say whether there is a question in a line of words, or a request."""
    return _CONVERT.search(line) is not None or _BEGINS.search(line) is not None or _FRAGMENT.search(line) is not None


_BEGINS = re.compile(r"(?:^ |[.,;:!\n] |<\w+> |so |and )(?:is|are|am|do|does|can|could|will|would|should|shall|must|may|might|has|have i|have we|did)(?= (?:i|we|she|it|the|my|our|that|this|there|they|you|he|her|a|\S+))")
_FRAGMENT = re.compile(r"(?:[,;:.] |^ )(?:rode|scope|swing|load|mark plan|drag check|tackle check|longest|max|deepest|shallowest|true depth|real depth|depth per mark|hold)(?= )")
