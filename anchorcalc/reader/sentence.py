"""A text as the reader sees it: words in one spelling, signs, and what it mentions, in order."""

import re
from collections.abc import Iterable
from functools import lru_cache
from sys import intern

from anchorcalc.reader.mention import Mention, Part
from anchorcalc.reader.quantities import mentions
from anchorcalc.reader.typos import known_words, mended
from anchorcalc.reader.words import SAME
from anchorcalc.units.numbers import plain

_PIECE = re.compile(r"[^\W\d_]+(?:'[^\W\d_]+)*|\d+|[.,;:?!()\n–=~/&+<>×@|•·±-]")


class Token(Part, frozen=True, gc=False):
    """A word in its one spelling, a sign, or a mention (`word` is then its kind in angle brackets); a name is written with a capital."""

    word: str
    start: int
    end: int
    mention: Mention | None = None
    named: bool = False


class Sentence:
    """A whole text: its tokens, the same as one line of words with a space on either side of each, which words it has, and all as first read."""

    __slots__ = ("line", "text", "tokens", "whole", "words")

    def __init__(self, text: str, tokens: tuple[Token, ...], *, whole: tuple[Token, ...] | None = None) -> None:
        self.text, self.tokens, self.whole = text, tokens, tokens if whole is None else whole
        words = [token.word for token in tokens]
        self.line, self.words = f" {' '.join(words)} ", frozenset(words)


def read(text: str) -> Sentence:
    """Return a text as tokens."""
    written = plain(text)
    low = _lower(written)
    tokens: list[Token] = []
    at = 0
    for one in mentions(text):
        _words(low, written, at, one.start, tokens)
        tokens.append(Token(f"<{one.kind}>", one.start, one.end, one))
        at = one.end
    _words(low, written, at, len(low), tokens)
    return Sentence(text, tuple(tokens))


def _lower(text: str) -> str:
    lowered = text.lower()
    return lowered if len(lowered) == len(text) else "".join(sign.lower() if len(sign.lower()) == 1 else sign for sign in text)


def _words(low: str, written: str, start: int, end: int, tokens: list[Token]) -> None:
    for found in _PIECE.finditer(low, start, end):
        word, (first, last) = _meant(found[0]), found.span()
        if word in ("!", "?") and tokens and tokens[-1].word == word:
            continue  # `5 m!!!` says no more than `5 m!`
        tokens.append(Token(word, first, last, None, written[first].isupper() and _a_name(written[first:last], word)))


def _a_name(written: str, word: str) -> bool:
    """Say whether a word with a capital is a name: none of the words that mean something here."""
    return len(written) > 2 and not written.isupper() and word not in known_words()


@lru_cache(maxsize=4096)
def _meant(word: str) -> str:
    """Return a word in the spelling of the tables, a slip of the finger mended."""
    return intern(mended(spelled(word)))


def without_figures(tokens: list[Token], out: Iterable[int], dropped: list[Mention]) -> list[Token]:
    """Return the tokens without the figures at some places, which are added to those that were dropped; words there stay."""
    places = set(out)
    dropped.extend(mention for at in sorted(places) if (mention := tokens[at].mention) is not None)
    return [token for at, token in enumerate(tokens) if at not in places or token.mention is None]


_CONTRACTED = {
    "i'm": "iam",
    "we're": "weare",
    "i've": "i",
    "we've": "we",
    "i'd": "i",
    "we'd": "we",
    "i'll": "i",
    "we'll": "we",
    "she'll": "she",
    "they're": "they",
    "you're": "you",
    "it'll": "it",
    "he'll": "he",
}


def spelled(word: str) -> str:
    """Return a word in the spelling of the tables."""
    if "'" in word:
        word = _CONTRACTED.get(word, word).removesuffix("'s").replace("'", "") if not word.endswith("n't") else word.replace("'", "")
    return SAME.get(word, word)
