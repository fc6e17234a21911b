"""What the words and figures of a text tell of the question that it asks, by weights that were counted in the corpus.

`tests/reading/counting.py` fits the weights (multinomial logistic regression) and writes them beside this file; here they are only added up.
"""

from collections.abc import Iterator, Sequence
from itertools import pairwise

from anchorcalc.reader.counted import SCALE, Sign, counted
from anchorcalc.reader.fits import is_size
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.slots import cued, roles
from anchorcalc.reader.words import STOPS
from anchorcalc.vocabulary import TERMS

NOTHING_ASKED = "cannot"  # the answer beside the questions: nothing here that could be reckoned
_SIGNS = frozenset('.,;:!()-–~=/&+×<>"|\n')
_MANY = 4


def telling(tokens: Sequence[Token]) -> set[str]:
    """Return the signs of a text: words, each two in a row, how it begins and ends, what it asks, the kinds of its figures, their terms."""
    return {sign if isinstance(sign, str) else " ".join(sign) for sign in _signs(tokens)}


def _signs(tokens: Sequence[Token]) -> set[Sign]:
    words = [_word(token) if token.mention is not None else token.word for token in tokens if token.word not in _SIGNS]
    found: set[Sign] = {*words, *pairwise(words)}
    for asking in _asking(tokens) if "?" in words else ():
        found |= {*(("?", word) for word in asking), *(("?", *pair) for pair in pairwise(asking))}
    found |= {("^", *words[:2]), (*words[-2:], "$"), ("^", words[0]), (words[-1], "$")} if words else set()
    figures = [word for word in words if word[0] == "<"]
    found |= {(kind, str(min(figures.count(kind), _MANY))) for kind in set(figures)}
    known = cued(tuple(tokens), takes=_ALL)
    found |= {("=", role.term) for role in roles(tuple(tokens), known=known) if role.term is not None and role.fit != "no"}
    return found if "?" in words else found | {("no", "?")}


def _asking(tokens: Sequence[Token]) -> Iterator[list[str]]:
    """Yield the words of each sentence that ends in a question mark."""
    words: list[str] = []
    for token in tokens:
        if token.word == "?":
            yield words
        if token.word in STOPS:
            words = []
        elif token.mention is None and token.word not in _SIGNS:
            words.append(token.word)


_ALL = frozenset(TERMS)


def _word(token: Token) -> str:
    return "<size>" if token.mention is not None and is_size(token.mention) else token.word


def told(tokens: Sequence[Token]) -> dict[str, float]:
    """Return the logarithm of the share that each question has in what a text may ask, and `NOTHING_ASKED` among them."""
    return counted("counted").logs(_signs(tokens))


__all__ = ["NOTHING_ASKED", "SCALE", "telling", "told"]
