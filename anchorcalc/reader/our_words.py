"""The words of a text that tell of our own gear; what was so once, and what is taken back, is still among them."""

from itertools import groupby

from anchorcalc.reader.sentence import Sentence, Token, read
from anchorcalc.reader.words import STOPS

_ARTICLES = frozenset("the a an my our her his their your".split())
OTHERS = frozenset(
    "neighbour neighbours their theirs cousin cousins brother brothers sister friend friends mate mates uncle grandad dad father they he owner old "
    "yesterday".split()
)
_RETRACTS = frozenset(("no", "sorry", "isnt", "arent", "neither", "nor", "says", "said"))


def our_words(sentence: Sentence) -> list[Token]:
    """Return the words of a text, articles left out; of a sentence about others only what is left of it."""
    ours, tokens = {token.start for token in sentence.tokens}, read(sentence.text).tokens
    kept: list[Token] = []
    for stops, part in groupby(tokens, key=lambda token: token.word in STOPS):
        told = list(part)
        words = {token.word for token in told}
        kept += told if stops or not OTHERS & words or _RETRACTS & words else [token for token in told if token.start in ours]
    return [token for token in kept if token.word not in _ARTICLES]


__all__ = ["OTHERS", "our_words"]
