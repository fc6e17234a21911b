"""Words that fill a term: kinds of anchor, bottoms, boats, grades, shackles, and what is said not to be."""

from functools import cache

from anchorcalc.reader.mention import Part
from anchorcalc.reader.our_words import lies_beside_us, tells_of_others, tells_of_spare
from anchorcalc.reader.sentence import Token, spelled
from anchorcalc.reader.withdrawn import only_thought
from anchorcalc.reader.words import NEGATIONS, STOPS, sentence_end
from anchorcalc.units.kinds import WORD
from anchorcalc.vocabulary import TERMS

_NEGATED_WITHIN = 4
_CLOSE, _SHORT = 2, frozenset(("no", "without", "nor", "neither"))
_APART = frozenset(("units", "reads_from", "marks_from", "bitter_end", "shackles", "line_material"))


class WordSaid(Part, frozen=True, gc=False):
    """A word for a term at a place in the text."""

    term: str
    word: str
    at: int
    end: int
    negated: bool


@cache
def _sayings() -> dict[str, list[tuple[tuple[str, ...], str, str]]]:
    found: dict[str, list[tuple[tuple[str, ...], str, str]]] = {}
    for name, term in TERMS.items():
        if term.kind.name != WORD.name or name in _APART:
            continue
        for word, sayings in (
            *((choice, (("form motor" if choice == "motor" else choice.replace("_", " ")),)) for choice in term.choices),
            *term.said_as,
        ):
            for saying in sayings:
                if saying == "motor":
                    continue  # an engine, more often than a boat
                words = tuple(spelled(part) for part in saying.lower().replace("-", " - ").split())
                found.setdefault(words[0], []).append((words, name, word))
    for held in found.values():
        held.sort(key=lambda one: -len(one[0]))
    return found


def _by_motor(tokens: tuple[Token, ...], at: int) -> bool:
    """Say whether a word calls the boat whose length stands before it one that goes by motor: `boat 8.2 m motor.`."""
    behind = tokens[at + 1].word if at + 1 < len(tokens) else "."
    return tokens[at].word == "motor" and tokens[at - 1].word == "<length>" and behind in STOPS | {","}


def words_said(*, tokens: tuple[Token, ...], takes: frozenset[str]) -> list[WordSaid]:
    """Return the words that fill terms of a question, in order, the longest sayings first."""
    sayings = _sayings()
    words = [token.word if token.mention is None else _plain(token) for token in tokens]
    found: list[WordSaid] = []
    taken: dict[str, int] = {}
    for at, word in enumerate(words):
        for said, term, choice in sayings.get(word, ()):
            if term in takes and at >= taken.get(term, 0) and tuple(words[at : at + len(said)]) == said:
                taken[term] = at + len(said)
                found.append(WordSaid(term, choice, at, at + len(said), not NEGATIONS & set(said) and _negated(words, at)))
    if "boat_form" in takes and "boat_form" not in taken:
        found += [WordSaid("boat_form", "motor", at, at + 1, False) for at in range(1, len(words)) if _by_motor(tokens, at)]
    return found


def ours(found: list[WordSaid], tokens: tuple[Token, ...], text: str) -> list[WordSaid]:
    """Leave out what is told of another's boat, of a spare anchor, or is part of another name: `a mud hook`."""
    words = [token.word for token in tokens]
    kept: list[WordSaid] = []
    for one in found:
        if _means_another_thing(one, tokens, words):
            continue
        beside = one.term == "boat_form" and lies_beside_us(text[tokens[one.end - 1].end :])
        another = beside or (one.term != "bottom" and tells_of_others(words, one.at))
        told = any(other.term == one.term for other in kept)
        spare = one.term == "anchor_kind" and tells_of_spare(words, one.at, told=told)
        name = one.term == "bottom" and words[one.end : one.end + 1] and words[one.end] in ("hook", "berth", "anchor", "weight", "guard", "box")
        if not (another or spare or name):
            kept.append(one)
    return kept


_SAILS = frozenset("we i they you to will can cannot could would shall set".split())
_TELLS = frozenset("says said reckons told thinks swears claims".split())
_ASHORE = frozenset("off beach shore ashore bank coast island".split())


def _means_another_thing(one: WordSaid, tokens: tuple[Token, ...], words: list[str]) -> bool:
    """Say whether a word is none for its term here: `we sail`, `the cat's anchor`, `a fisherman says`, `off the rocks`, `the beach is sand`."""
    before, behind = words[max(0, one.at - 3) : one.at], words[one.end : one.end + 6]
    if one.term == "boat_form":
        whose = tokens[one.end - 1]
        another = whose.end - whose.start > len(whose.word) and words[one.at - 1 : one.at] == ["the"]
        return another or (words[one.at] == "sail" and bool(_SAILS & set(before[-1:]))) or before[-1:] in (["ship"], ["ships"])
    if one.word == "fisherman" and one.term == "anchor_kind":
        cut = next((at for at, word in enumerate(behind) if word in STOPS), len(behind))
        return bool(_TELLS & set(behind[:cut]))
    return one.term == "bottom" and "," not in before and bool(_ASHORE & set(before))


def corrected(found: list[WordSaid], tokens: tuple[Token, ...]) -> list[WordSaid]:
    """Leave out a word that the text takes back for a later one: `G40? No, G43`."""
    kept: list[WordSaid] = []
    words = [token.word for token in tokens]
    for one in found:
        last = next((other for other in reversed(kept) if other.term == one.term), None)
        if last is not None and not one.negated and last.word != one.word and _gives_way(last, one, words, sentence_end(words, one.end)):
            kept = [other for other in kept if other.term != one.term]
        kept.append(one)
    return kept


_TAKEN_BACK = frozenset(("no", "sorry", "correction", "nope", "oops"))


# `we had a claw, now it is a plough`: what is gone gives way to what is there now.
_GONE = frozenset(("gone", "went", "lost", "had", "sold", "swapped", "scrap", "scrapped", "broke", "bent", "replaced", "used", "old"))
_THERE_NOW = frozenset(("now", "instead", "today", "tonight"))
_ANY = frozenset(("anything", "everything", "all", "other", "rather"))  # `anything but a plough`


def _gives_way(first: WordSaid, later: WordSaid, words: list[str], end: int) -> bool:
    """Say whether a word told first is taken back, or is of what is no more where the later is of what is there now."""
    between = set(words[first.end : later.at])
    gone = bool(_GONE & {*words[max(0, first.at - 5) : first.at], *between})
    if only_thought(words[max(0, first.at - 6) : first.at], words[first.end : later.at]):
        return True
    return bool(_TAKEN_BACK & between) or (gone and bool(_THERE_NOW & {*between, *words[later.end : end]}))


def _plain(token: Token) -> str:
    assert token.mention is not None
    return token.mention.text.lower() if token.mention.kind == "number" else token.word


def _negated(words: list[str], at: int) -> bool:
    """Say whether a negation rules the word: close before it, with no sign between."""
    for back in range(1, _NEGATED_WITHIN + 1):
        if at - back > 0 and words[at - back] in ("but", "except", "than", "bar") and words[at - back - 1] in _ANY:
            return True
        if at - back < 0 or words[at - back] in STOPS or words[at - back] in (",", ":", "but", "and"):
            return False
        if words[at - back] in NEGATIONS:
            return back <= _CLOSE or words[at - back] not in _SHORT
        if words[at - back] == "of" and at - back > 0 and words[at - back - 1] == "instead":
            return True
    return False
