"""What a quantity likely stands for, by all that is said around it, with weights that were counted in the corpus.

The cue tables (`slots`) know what a phrase means where it is found; this knows how much each word, pair of words, unit and cue tells when
they stand together. `tests/reading/counting_roles.py` fits the weights and writes them; here they are only added up.
"""

from collections.abc import Iterator, Sequence

from anchorcalc.reader.counted import Sign, counted
from anchorcalc.reader.fits import Fit, is_size
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.slots import ARTICLES
from anchorcalc.reader.words import FILLERS, STOPS
from anchorcalc.units.kinds import Amount

NO_INPUT = "none"  # the outcome beside the terms: a quantity that is no input of the question
KINDS = frozenset(("length", "mass", "speed", "force", "angle", "power", "number", "ratio"))
_REACH, _NO_CONTENT = 6, FILLERS | frozenset(",-–()")
_BEST, _BUCKET = 3, 2.0

Cue = tuple[str | None, float, Fit, bool]  # what the cue tables make of a quantity: a term, how strongly, whether it fits, and is an input here


def signs(tokens: Sequence[Token], at: int, *, question: str, cues: Sequence[Cue]) -> Iterator[Sign]:
    """Yield the signs of a quantity: its kind, its unit, the question, the words on both sides, and what the cue tables make of it."""
    mention = tokens[at].mention
    assert mention is not None and isinstance(mention.amount, Amount)
    kind = "size" if is_size(mention) else mention.kind
    yield from (("k", kind), ("q", question), f"q {question} {kind}", ("u", mention.amount.unit))
    yield from (("f", flag) for flag in mention.flags)
    yield from _beside(_words(tokens, range(at - 1, -1, -1)), "p", kind)
    yield from _beside(_words(tokens, range(at + 1, len(tokens))), "n", kind)
    yield from _of_cues([cue for cue in cues if cue[3]])
    foreign = next(((term, score) for term, score, _, here in cues if not here), None)
    if foreign is not None:
        yield from (("x", str(foreign[0])), f"xs {foreign[1] // _BUCKET:.0f}", f"xq {foreign[0]} {question}")


def _of_cues(cues: Sequence[Cue]) -> Iterator[Sign]:
    """Yield what the cue tables make of a quantity, how strongly, and how far the strongest is ahead."""
    if not cues:
        yield ("c", "-")
        return
    for place, (term, _, fits, _) in enumerate(cues[:_BEST]):
        yield f"c{min(place, 1)} {term} {fits}"
    yield f"cs {cues[0][0]} {cues[0][1] // _BUCKET:.0f}"
    yield f"cm {(cues[0][1] - (cues[1][1] if len(cues) > 1 else 0.0)) // _BUCKET:.0f}"


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


def _beside(words: list[str], side: str, kind: str) -> Iterator[Sign]:
    one, two, three = (*words, "^", "^", "^")[:3]
    yield from ((f"{side}1", one), (f"{side}2", two), f"{side}12 {one} {two}", f"{side}123 {one} {two} {three}", f"{side}k {one} {kind}")
    for word in words:
        if word[0] == "<":
            yield (f"{side}m", word)
            break
        yield (f"{side}b", word)
    content = [word for word in words if word not in _NO_CONTENT]
    if content:
        yield from ((f"{side}c", content[0]), f"{side}ck {content[0]} {kind}")
    if len(content) > 1:
        yield from ((f"{side}d", content[1]), f"{side}cd {content[0]} {content[1]}")


def likely(tokens: Sequence[Token], at: int, *, question: str, cues: Sequence[Cue], takes: frozenset[str]) -> dict[str, float]:
    """Return the logarithm of the share of each term that a question takes, and of `NO_INPUT`."""
    return counted("roles").logs(signs(tokens, at, question=question, cues=cues), among=takes | {NO_INPUT})


__all__ = ["KINDS", "NO_INPUT", "Cue", "likely", "signs"]
