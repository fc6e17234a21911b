"""Which question a text asks: the patterns that it holds, weighed."""

import re
from functools import cache
from typing import NamedTuple

from anchorcalc.catalogue import catalogue, names
from anchorcalc.reader.patterns import Cue, cue, table
from anchorcalc.reader.sentence import spelled

_LEAST, _FURTHER, _OWN = 5.0, 0.2, 7.0


class Weighed(NamedTuple):
    """A question with the weight of its patterns, and where the heaviest of them stands in the line."""

    question: str
    weight: float
    strongest: float
    first: int


@cache
def cues() -> dict[str, tuple[tuple[Cue, ...], tuple[Cue, ...]]]:
    """Return the patterns of every question, and its hints: the tables', and the phrases of the question itself."""
    asked = table("asked")
    found = {}
    for one in catalogue():
        held = asked.get(one.name, {})
        asks = [cue(said, weight=float(weight)) for weight, patterns in held.items() if weight != "hints" for said in patterns]
        asks += [cue(" ".join(spelled(word) for word in phrase.lower().split()), weight=_OWN) for phrase in one.asks]
        hints = [cue(said, weight=float(weight)) for weight, patterns in held.get("hints", {}).items() for said in patterns]
        found[one.name] = (tuple(asks), tuple(hints))
    return found


_SECOND = re.compile(r" (?:, |; |\? |\. )?and (?:what|how|which|when|where|will|is|does|do|can|would|could) ")
_OWN_ASK, _FIRST = 8.0, 20.0


def weigh(line: str) -> list[Weighed]:
    """Return the questions that a line of words may ask, the heaviest first; of two questions in a text the first one counts."""
    found = _weigh(line)
    if len(found) < 2 or (second := _SECOND.search(line)) is None:
        return found
    first = [one for one in found if one.first < second.start() and one.strongest >= _OWN_ASK]
    return [one._replace(weight=one.weight + _FIRST) for one in first] + [one for one in found if one not in first] if first else found


def second_question(line: str, weighed: list[Weighed]) -> int:
    """Return where a second question begins in a line that was read for its first, or -1."""
    second = _SECOND.search(line)
    if second is None or not weighed or not any(one.question != weighed[0].question and one.first >= second.start() and one.strongest >= _OWN_ASK for one in weighed):
        return -1
    return second.end()


def telling_words(line: str) -> list[str]:
    """Return the words of a line and each two in a row, as the table of telling words counts them."""
    words = [word for word in line.split() if word not in _SIGNS]
    return words + [f"{one} {other}" for one, other in zip(words, words[1:], strict=False)]


_SIGNS = frozenset(". , ; : ? ! ( ) - – ~ = / & + × < > \" |".split())


@cache
def _telling() -> dict[str, tuple[tuple[str, float], ...]]:
    """Return the questions that a word tells of, each with its weight."""
    found: dict[str, list[tuple[str, float]]] = {}
    known = set(names())
    for name, by_weight in table("telling").items():
        for weight, words in by_weight.items() if name in known else ():
            for word in words.split(" | "):
                found.setdefault(word, []).append((name, float(weight) / 10.0))
    return {word: tuple(held) for word, held in found.items()}


def _told(line: str) -> dict[str, float]:
    """Return what the single words of a line tell of each question."""
    telling = _telling()
    found: dict[str, float] = {}
    for word in set(telling_words(line)):
        for name, weight in telling.get(word, ()):
            found[name] = found.get(name, 0.0) + weight
    return {name: min(weight, _TOLD_MOST) for name, weight in found.items()}


_TOLD_MOST, _TOLD_ALONE = 8.0, 5.0


def _weigh(line: str) -> list[Weighed]:
    told = _told(line)
    words = frozenset(line.split())
    found: list[Weighed] = []
    for name, (asks, hints) in cues().items():
        one = _weighed(name, asks, hints, line, words)
        more = told.get(name, 0.0)
        if one is not None and one.weight + more >= _LEAST:
            found.append(one._replace(weight=one.weight + more))
        elif one is None and more >= _TOLD_ALONE:
            found.append(Weighed(name, more, 0.0, len(line)))
    return sorted(found, key=lambda one: (-one.weight, one.question))


def _weighed(name: str, asks: tuple[Cue, ...], hints: tuple[Cue, ...], line: str, words: frozenset[str]) -> Weighed | None:
    strongest, total, first = 0.0, 0.0, len(line)
    for one in asks:
        if one.needs <= words:
            at = one.matches.search(line)
            if at is not None:
                total += one.weight
                if one.weight > strongest or (one.weight == strongest and at.start() < first):
                    strongest, first = one.weight, at.start()
    if not strongest:
        return None
    weight = strongest + _FURTHER * min(total - strongest, 15.0)
    weight += sum(one.weight for one in hints if one.needs <= words and one.matches.search(line))
    return Weighed(name, weight, strongest, first)


def asks_something(line: str, weighed: list[Weighed]) -> bool:
    """Say whether there is a question in a line of words, a request, or the bare name of what is wanted."""
    if _REQUEST.search(line) or _BEGINS.search(line) or _FRAGMENT.search(line):
        return True
    return bool(weighed) and weighed[0].strongest >= _NAMED and not _STATES.search(line)


_NAMED = 10.0
_REQUEST = re.compile(
    r"(?<= )(?:\?|look over|go over|go through|is that|is this|is it|give my|working out|what|which|when|where|how|tell|give me|show|list|calculate|compute|work out|check|please|estimate|recommend|survey|inspect|rate|vet|convert|wanted|needed|need|i want the|want to know|like to know|wonder|wondering|id know|i would know|anything wrong|someone|help|explain|find|figure out)(?= )")
_BEGINS = re.compile(r"(?:^ |[.,;:!\n] |<\w+> |so |and )(?:is|are|am|do|does|can|could|will|would|should|shall|must|may|might|has|have i|have we|did)(?= \S)")
_FRAGMENT = re.compile(r"(?:[,;:.] |^ )(?:rode|scope|swing|load|mark plan|drag check|tackle check|longest|max|deepest|shallowest|true depth|real depth|depth per mark|hold)(?= )")
_STATES = re.compile(r"(?<= )(?:i|we|is|are|have|has|was|were|lies|she|they|draws|my|our)(?= )")
