"""What a quantity likely stands for, by all that is said around it, with weights that were counted in the corpus.

The cue tables (`slots`) know what a phrase means where it is found; this knows how much each word, pair of words, unit and cue tells when
they stand together. `tests/reading/counting_roles.py` fits the weights and writes them; here they are only added up.
"""

from collections.abc import Sequence

from anchorcalc.reader.between import ALL_TERMS
from anchorcalc.reader.counted import Sign, counted
from anchorcalc.reader.fits import Fit, is_size
from anchorcalc.reader.mention import Part
from anchorcalc.reader.neighbour import others_quantities
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.slots import ARTICLES, cued
from anchorcalc.reader.words import FILLERS, STOPS
from anchorcalc.units.kinds import Amount

NO_INPUT = "none"  # the outcome beside the terms: a quantity that is no input of the question
KINDS = frozenset(("length", "mass", "speed", "force", "angle", "power", "number", "ratio"))
_REACH, _NO_CONTENT = 6, FILLERS | frozenset(",-–()")
_BEST, _BUCKET = 3, 2.0

Cue = tuple[str | None, float, Fit, bool]  # what the cue tables make of a quantity: a term, how strongly, whether it fits, and is an input here


def wordless(tokens: tuple[Token, ...]) -> bool:
    """Say whether a text has lengths only, two or more, and no word that tells what any of them is: `25 ft 100 ft 12 ft ok?`."""
    lengths = [at for at, token in enumerate(tokens) if token.mention is not None]
    return len(lengths) > 1 and all(tokens[at].word == "<length>" for at in lengths) and not any(cued(tokens, takes=_ALL).values())


_ALL = frozenset(ALL_TERMS)


def signs(tokens: Sequence[Token], at: int, *, question: str, cues: Sequence[Cue]) -> list[Sign]:
    """Return the signs of a quantity: its kind, its unit, the question, the words on both sides, and what the cue tables make of it."""
    mention = tokens[at].mention
    assert mention is not None and isinstance(mention.amount, Amount)
    kind = "size" if is_size(mention) else mention.kind
    found: list[Sign] = [("k", kind), ("q", question), ("q", question, kind), ("u", mention.amount.unit)]
    found += [("f", flag) for flag in mention.flags]
    theirs = others_quantities(tuple(tokens))
    if mention.start in theirs.likely:
        how = "theirs" if mention.start in theirs.surely else "maybe_theirs"
        found += (how, (how, question), (how, kind))
    found += _beside(_words(tokens, range(at - 1, -1, -1)), _BEFORE, kind)
    found += _beside(_words(tokens, range(at + 1, len(tokens))), _BEHIND, kind)
    found += _of_cues([cue for cue in cues if cue[3]])
    foreign = next((cue for cue in cues if not cue[3]), None)
    if foreign is not None:
        term = foreign[0] or ""
        found += (("x", term), ("xs", _steps(foreign[1])), ("xq", term, question))
    return found


def _of_cues(cues: Sequence[Cue]) -> list[Sign]:
    """Return what the cue tables make of a quantity, how strongly, and how far the strongest is ahead."""
    if not cues:
        return [("c", "-")]
    found: list[Sign] = [("c1" if place else "c0", term or "", fits) for place, (term, _, fits, _) in enumerate(cues[:_BEST])]
    ahead = cues[0][1] - (cues[1][1] if len(cues) > 1 else 0.0)
    return [*found, ("cs", cues[0][0] or "", _steps(cues[0][1])), ("cm", _steps(ahead))]


def _steps(score: float) -> str:
    return str(int(score // _BUCKET))


def _words(tokens: Sequence[Token], places: range) -> list[str]:
    """Return the words on one side, the nearest first, up to the end of the sentence; articles are passed over."""
    found: list[str] = []
    for place in places:
        token = tokens[place]
        word = token.word
        if word in ARTICLES:
            continue
        found.append("<size>" if token.mention is not None and is_size(token.mention) else word)
        if len(found) == _REACH or word in STOPS:
            break
    return found


class _Side(Part, frozen=True, gc=False):
    """What the signs of the words on one side are called: the first, the second, two and three in a row, any of them, those with a content."""

    first: str
    second: str
    two: str
    three: str
    of_kind: str
    quantity: str
    any: str
    content: str
    content_of_kind: str
    further: str
    contents: str


_BEFORE, _BEHIND = (_Side(*(f"{side}{name}" for name in "1 2 12 123 k m b c ck d cd".split())) for side in "pn")


def _beside(words: list[str], side: _Side, kind: str) -> list[Sign]:
    one, two, three = (*words, "^", "^", "^")[:3]
    found: list[Sign] = [(side.first, one), (side.second, two), (side.two, one, two), (side.three, one, two, three), (side.of_kind, one, kind)]
    for word in words:
        if word[0] == "<":
            found.append((side.quantity, word))
            break
        found.append((side.any, word))
    content = [word for word in words if word not in _NO_CONTENT]
    if content:
        found += ((side.content, content[0]), (side.content_of_kind, content[0], kind))
    if len(content) > 1:
        found += ((side.further, content[1]), (side.contents, content[0], content[1]))
    return found


def likely(tokens: Sequence[Token], at: int, *, question: str, cues: Sequence[Cue], takes: frozenset[str]) -> dict[str, float]:
    """Return the logarithm of the share of each term that a question takes, and of `NO_INPUT`."""
    return counted("roles").logs(signs(tokens, at, question=question, cues=cues), among=takes | {NO_INPUT})


__all__ = ["KINDS", "NO_INPUT", "Cue", "likely", "signs"]
