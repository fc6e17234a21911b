"""Tokens side by side: the word at a place, the number at a place, several made one."""

from anchorcalc.reader.mention import Mention
from anchorcalc.reader.sentence import Token
from anchorcalc.units.clock import Clock
from anchorcalc.units.kinds import UNIT, Amount


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


_THOSE = frozenset(("those", "them", "these", "that", "it"))
KEPT = frozenset("kept keep keeping held hold stay stays left never back spare inboard reserve".split())


def of_those(tokens: list[Token]) -> list[Token]:
    """Return the tokens with `45 fathoms aboard, two of those kept back` in the unit of what it is a part of."""
    lengths = (one.mention.amount.unit for one in tokens if one.mention and one.mention.kind == "length" and isinstance(one.mention.amount, Amount))
    found, unit = list(tokens), next(lengths, "")
    for at, token in enumerate(tokens):
        value, mention = number_at(tokens, at), token.mention
        if mention is not None and mention.kind == "length" and isinstance(mention.amount, Amount):
            unit = mention.amount.unit
        elif value and mention is not None and unit in UNIT and _is_part(tokens, at):
            size = value * UNIT[unit].factor
            found[at] = token._replace(
                word="<length>", mention=mention._replace(kind="length", amount=Amount("length", size, size, unit, value, value))
            )
    return found


def _is_part(tokens: list[Token], at: int) -> bool:
    if word_at(tokens, at + 1) != "of" or word_at(tokens, at + 2) not in _THOSE:
        return False
    return any(one.word in KEPT for one in [*tokens[max(0, at - 4) : at], *tokens[at + 3 : at + 7]])
