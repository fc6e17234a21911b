"""How a rode is told in its parts: `60 m of our 80`, `fifty metres out, twenty of them 8 mm chain`, `rope as thick as 12 mm`."""

from anchorcalc.reader.fits import is_size, with_unit
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.spoken_parts import number_at, word_at
from anchorcalc.reader.words import STOPS
from anchorcalc.units.kinds import UNIT, Amount

SIZE_TOLD = frozenset(("thick", "from", "long", "of"))  # words without one of which a size, or the whole, is told plainly
WHOLE_TOLD = frozenset(("our", "my", "the", "them", "those", "these", "it", "that", "which", "out"))
_FIGURES = frozenset(("length", "number"))

_OUR = frozenset(("our", "my", "the"))
_THEM = frozenset(("them", "those", "these", "it", "that", "which"))
ROPES = frozenset(("chain", "rope", "line", "warp", "nylon"))


def of_ours(tokens: list[Token]) -> list[Token]:
    """Return the tokens with the whole said in its unit and first (`our 80 m aboard`), and with parts of what is out in its unit."""
    found: list[Token] = []
    unit, at = "", 0
    while at < len(tokens):
        token = tokens[at]
        mention = token.mention
        if mention is not None and mention.kind == "length" and isinstance(mention.amount, Amount):
            unit = mention.amount.unit if mention.amount.unit in UNIT and not is_size(mention) else unit
        if mention is None:
            found.append(token)
            at += 1
        elif (whole := _whole(tokens, at)) is not None:
            first, last = whole
            found += [last, last._replace(word="aboard", mention=None), last._replace(word=",", mention=None), first]
            at += 4
        elif _of_all(tokens, at):
            found = found[:-2] if [one.word for one in found[-2:]] == ["out", "of"] else found
            found += [token, token._replace(word="aboard", mention=None), token._replace(word=",", mention=None)]
            at += 1
        elif (part := _part_of_them(tokens, at, unit)) is not None:
            found += [part, tokens[at + 1]]
            at += 3
        else:
            found.append(token)
            at += 1
    return found


def _whole(tokens: list[Token], at: int) -> tuple[Token, Token] | None:
    """Return both figures of `60 m of our 80`, in one unit."""
    if word_at(tokens, at + 1) != "of" or word_at(tokens, at + 2) not in _OUR or at + 3 >= len(tokens):
        return None
    first, last = tokens[at].mention, tokens[at + 3].mention
    if first is None or last is None or not {first.kind, last.kind} <= _FIGURES or "length" not in (first.kind, last.kind):
        return None
    if first.kind == "number" and "fraction" in first.flags:
        return None  # `two thirds of our 90 m is chain`
    if not isinstance(first.amount, Amount) or not isinstance(last.amount, Amount) or is_size(first) or is_size(last):
        return None
    unit = first.amount.unit or last.amount.unit
    if unit not in UNIT or (last.amount.unit or unit) != unit or last.amount.value <= first.amount.value or word_at(tokens, at + 4) in ROPES:
        return None
    one, two = (
        token._replace(word="<length>", mention=mention._replace(kind="length", amount=with_unit(mention.amount, unit=unit)))  # type: ignore[arg-type]
        for token, mention in ((tokens[at], first), (tokens[at + 3], last))
    )
    return one, two


_LET_OUT = frozenset("of chain rode rope line warp cable out veered streamed down let paid over bow roller".split())


def in_as_many(tokens: list[Token]) -> list[Token]:
    """Return the tokens with the depth of `twenty fathoms veered in three` in the unit of what is out."""
    found = list(tokens)
    for at in range(2, len(tokens)):
        value, mention = number_at(tokens, at), tokens[at].mention
        if value is None or mention is None or tokens[at - 1].word != "in" or word_at(tokens, at + 1) not in ("", ",", ".", ";", "?", ")", "\n"):
            continue
        before = at - 2
        while before > at - 6 and before > 0 and tokens[before].word in _LET_OUT:
            before -= 1
        out = tokens[before].mention
        if out is None or out.kind != "length" or not isinstance(out.amount, Amount) or out.amount.unit not in UNIT or is_size(out):
            continue
        if value * 2 < out.amount.value:
            length = with_unit(Amount("number", 0.0, 0.0, "", value, value), unit=out.amount.unit)
            found[at] = tokens[at]._replace(word="<length>", mention=mention._replace(kind="length", amount=length))
    return found


def _of_all(tokens: list[Token], at: int) -> bool:
    """Say whether a length is the whole of which another is out: `of my 80 m I've 48 m over the bow`."""
    lengths_behind = "<length>" in [token.word for token in tokens[at + 1 : at + 5]]
    if at >= 2 and tokens[at].word == "<length>" and (tokens[at - 2].word, tokens[at - 1].word) == ("out", "of"):
        begins = at == 2 or tokens[at - 3].word in (*STOPS, ",", ")", ":")
        return begins and lengths_behind and not _LET_OUT.isdisjoint(token.word for token in tokens[at + 3 : at + 9])
    begins = (
        at >= 2
        and tokens[at - 1].word in _OUR
        and tokens[at - 2].word == "of"
        and (at == 2 or tokens[at - 3].word in (*STOPS, ",", ")", "–", "-", "out"))
    )
    return begins and tokens[at].word == "<length>" and lengths_behind


def _part_of_them(tokens: list[Token], at: int, unit: str) -> Token | None:
    """Return the length of `twenty of them 8 mm chain`, in the unit of what it is a part of."""
    value, mention = number_at(tokens, at), tokens[at].mention
    if value is None or mention is None or not unit or word_at(tokens, at + 1) != "of" or word_at(tokens, at + 2) not in _THEM:
        return None
    behind = [token for token in tokens[at + 3 : at + 6] if token.word not in ("is", "are", "being", "in")][:2]
    size = len(behind) == 2 and behind[0].mention is not None and is_size(behind[0].mention)
    if not size or behind[1].word not in ROPES:
        return None
    length = with_unit(Amount("number", 0.0, 0.0, "", value, value), unit=unit)
    return tokens[at]._replace(word="<length>", mention=mention._replace(kind="length", amount=length))


# --- `rope as thick as 12 mm`, `rope from 10 mm`, `chain 10 mm 60 m long`, `5/16 of an inch thick` ----------------------------------

_AS_THICK = frozenset("as thick from in is at being of that which thickness diameter and a".split())
_SHIP = frozenset("boat ship yacht sloop ketch hull she vessel boats".split())


def sized(tokens: list[Token]) -> list[Token]:
    """Return the tokens with the size of a chain or a rope right beside its word."""
    if not any(token.mention is not None and is_size(token.mention) for token in tokens):
        return tokens
    found: list[Token] = []
    at = 0
    while at < len(tokens):
        token = tokens[at]
        size = _size_behind(tokens, at) if token.word in ROPES else -1
        if size > at + 1 and word_at(tokens, size + 1) not in ROPES | {"shackle", "shackles"}:
            found += [tokens[size], token]
            at = size + 1 + (word_at(tokens, size + 1) == "thick")
        elif size == at + 1 and _long(tokens, size + 1):
            found += [tokens[size + 1], token._replace(word="of"), tokens[size], token]
            at = size + 3
        elif token.word == "chain" and _length_of_size(tokens, at):
            found += [*tokens[at + 1 : at + 4], token]
            at += 4
        elif token.word == "thick" and _is_small(tokens, at - 1) and (noun := _rope_before(tokens, at)):
            found.append(token._replace(word=noun))
            at += 1
        else:
            found.append(token)
            at += 1
    return found


def _is_small(tokens: list[Token], at: int) -> bool:
    mention = tokens[at].mention if 0 <= at < len(tokens) else None
    return mention is not None and is_size(mention)


def _size_behind(tokens: list[Token], at: int) -> int:
    """Return where the size of a rope stands behind its word, with only small words between that tell of thickness; or -1."""
    for place in range(at + 1, min(len(tokens), at + 6)):
        if _is_small(tokens, place):
            words = [token.word for token in tokens[at + 1 : place]]
            return place if not words or words == ["from"] or "thick" in words else -1
        if tokens[place].word not in _AS_THICK:
            return -1
    return -1


def _long(tokens: list[Token], at: int) -> bool:
    """Say whether a length behind a size is told as the length of that chain: `60 m long`, and no boat's."""
    long = word_at(tokens, at) == "<length>" and not _is_small(tokens, at) and word_at(tokens, at + 1) == "long"
    return long and word_at(tokens, at + 2) not in _SHIP


def _length_of_size(tokens: list[Token], at: int) -> bool:
    """Say whether the length and the size of a chain stand behind its word: `chain thirty metres of ten mil`."""
    length = word_at(tokens, at + 1) == "<length>" and not _is_small(tokens, at + 1) and word_at(tokens, at + 2) == "of"
    return length and _is_small(tokens, at + 3) and word_at(tokens, at + 4) not in ROPES and not (at and tokens[at - 1].word in ("<length>", "of"))


def _rope_before(tokens: list[Token], at: int) -> str:
    """Return `chain` or `rope` by the nearest word for either before a place in the same sentence; a grade is a chain's."""
    for token in reversed(tokens[max(0, at - 12) : at]):
        if token.word in STOPS or token.word in ("shackle", "swivel"):
            return ""
        if token.word == "chain" or token.word in _GRADES:
            return "chain"
        if token.word in ROPES:
            return "rope"
    return ""


_GRADES = frozenset(("g", "grade"))

__all__ = ["ROPES", "SIZE_TOLD", "WHOLE_TOLD", "in_as_many", "of_ours", "sized"]
