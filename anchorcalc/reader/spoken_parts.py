"""Tokens side by side: the word at a place, the number at a place, several made one."""

from anchorcalc.reader.mention import Mention
from anchorcalc.reader.sentence import Token
from anchorcalc.units.clock import Clock
from anchorcalc.units.kinds import Amount


def word_at(tokens: list[Token], at: int) -> str:
    """Return the word at a place, none behind the end."""
    return tokens[at].word if at < len(tokens) else ""


def number_at(tokens: list[Token], at: int) -> float | None:
    """Return the plain number at a place, or None."""
    mention = tokens[at].mention if 0 <= at < len(tokens) else None
    if mention is None or mention.kind != "number" or not isinstance(mention.amount, Amount) or mention.amount.low != mention.amount.high:
        return None
    return mention.amount.value


def token_of(tokens: list[Token], start: int, end: int, kind: str, amount: Amount | Clock, flags: frozenset[str] = frozenset()) -> Token:
    """Return one token for a stretch of them."""
    first, last = tokens[start], tokens[end - 1]
    texts = [token.mention.text if token.mention is not None else token.word for token in tokens[start:end]]
    return Token(f"<{kind}>", first.start, last.end, Mention(kind, amount, first.start, last.end, " ".join(texts), flags))
