"""What is jotted down, not said: `HW +1.9`, `2.2 m @ 09:15 low`, `nine. metres that is`, `60 m of our 80`."""

from anchorcalc.reader.fits import is_size, with_unit
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.spoken_parts import number_at, word_at
from anchorcalc.units.kinds import UNIT, Amount


def jotted(tokens: list[Token]) -> list[Token]:
    """Return the tokens of a text as they would stand if it had been said in full."""
    words = {token.word for token in tokens}
    if "/" in words:
        tokens = [token._replace(word=",") if _twice(tokens, at) else token for at, token in enumerate(tokens)]
    if "+" in words or not words.isdisjoint(("ebb", "tide")):
        tokens = _rises(tokens)
    if "<clock>" in words and not _SIDES.isdisjoint(words):
        tokens = _sides_first(tokens)
    if not words.isdisjoint(_UNIT):
        tokens = _unit_behind(tokens)
    if "of" in words:
        tokens = _of_ours(tokens)
    return tokens


def _twice(tokens: list[Token], at: int) -> bool:
    """Say whether a stroke is one of two that part facts: `rode 38m // roller 1.1`."""
    return tokens[at].word == "/" and "/" in (tokens[at - 1].word if at else "", word_at(tokens, at + 1))


# --- `+4 tide`, `flood +4`, `HW +1.9`; `ebb -1.5` -----------------------------------------------------------------------------------

_FLOOD = frozenset(("tide", "tides", "flood", "rise", "hw", "springs", "neaps"))
_BY_HIGH = frozenset(("at", "by", "on"))
_KINDS = frozenset(("length", "number"))
_LOW_TOO = frozenset(("lw", "low"))


def _rises(tokens: list[Token]) -> list[Token]:
    """A plus beside a word for the flood is a rise, a minus beside the ebb a fall; where low water is told beside, they are heights."""
    words = {token.word for token in tokens}
    found: list[Token] = []
    at = 0
    while at < len(tokens):
        token = tokens[at]
        mention = tokens[at + 1].mention if at + 1 < len(tokens) and token.word == "+" else token.mention
        taken = 0
        if mention is not None and mention.kind in _KINDS and isinstance(mention.amount, Amount) and _LOW_TOO.isdisjoint(words):
            before = _named(found)
            if token.word == "+":
                taken = _rise(tokens, at, found, before=before)
            elif before in ("ebb", "tide") and mention.amount.value < 0.0 and "<clock>" not in words:
                amount = mention.amount
                positive = Amount(amount.kind, -amount.high, -amount.low, amount.unit, -amount.value_high, -amount.value)
                found += [token._replace(word="tide", mention=None), token._replace(word="fall", mention=None)]
                found.append(token._replace(mention=mention._replace(amount=positive)))
                taken = 1
        if not taken:
            found.append(token)
        at += taken or 1
    return found


def _named(found: list[Token]) -> str:
    """Return the word right before, a colon or an `is` passed over."""
    place = len(found) - 1
    while place >= 0 and found[place].word in (":", "is", "of", "=", "another"):
        place -= 1
    return found[place].word if place >= 0 else ""


def _rise(tokens: list[Token], at: int, found: list[Token], *, before: str) -> int:
    """Put a rise of tide for a plus and its figure; return how many tokens that takes, nought where it is none."""
    behind = [word_at(tokens, place) for place in (at + 2, at + 3)]
    follows = behind[0] in _FLOOD or (behind[0] in _BY_HIGH and behind[1] in ("hw", "high"))
    if before not in _FLOOD and not follows:
        return 0
    while found and before in _FLOOD and (word := found.pop().word) != before:
        assert word
    said = tokens[at]
    found += [said._replace(word=one) for one in (",", "tide", "rise")]
    found.append(tokens[at + 1])
    return 3 if behind[0] in _FLOOD and before not in _FLOOD else 2


# --- `2.2 m @ 09:15 low` ------------------------------------------------------------------------------------------------------------

_SIDES = frozenset(("low", "high", "lw", "hw"))
_PARTS = frozenset((",", ";", ".", "/", "–", "-", "and", "then", ")", "?", "\n", ""))


def _sides_first(tokens: list[Token]) -> list[Token]:
    """Return the tokens with a word for low or high water that stands behind its height and time put before them."""
    found = list(tokens)
    for at in range(2, len(found)):
        start = _pair_before(found, at) if found[at].word in _SIDES and word_at(found, at + 1) in _PARTS else -1
        if start >= 0 and (start == 0 or found[start - 1].word not in _SIDES | {"water", "tide"}):
            found[start : at + 1] = [found[at], *found[start:at]]
    return found


def _pair_before(tokens: list[Token], at: int) -> int:
    """Return where a height with its time (or a time with its height) begins that ends at a place, or -1."""
    pair = {"<length>", "<clock>"}
    for gap in (1, 2):
        start = at - 1 - gap
        if start >= 0 and {tokens[start].word, tokens[at - 1].word} == pair and (gap == 1 or tokens[at - 2].word == "at"):
            return start
    return -1


# --- `nine. metres that is`, `50 of rope, m I mean` ---------------------------------------------------------------------------------

_UNIT = {"metres": "m", "metre": "m", "m": "m", "feet": "ft", "foot": "ft", "ft": "ft", "fathoms": "fathom"}
_MEANT = (("that", "is"), ("i", "mean"), ("of", "course"), ("that", "it"))


def _unit_behind(tokens: list[Token]) -> list[Token]:
    """Return the tokens with a number that gets its unit after a sign, as an afterthought, made a length."""
    found = list(tokens)
    for at in range(2, len(found) - 1):
        unit, value = _UNIT.get(found[at].word), number_at(found, at - 2)
        meant = (found[at + 1].word, word_at(found, at + 2))
        mention = found[at - 2].mention
        if unit and value is not None and mention is not None and found[at - 1].word in (".", ",", "-", "–", "(") and meant in _MEANT:
            length = with_unit(Amount("number", 0.0, 0.0, "", value, value), unit=unit)
            found[at - 2] = found[at - 2]._replace(word="<length>", mention=mention._replace(kind="length", amount=length))
    return found


# --- `60 m of our 80 is over the bow`, `fifty metres out, twenty of them 8 mm chain` ------------------------------------------------

_OUR = frozenset(("our", "my", "the"))
_THEM = frozenset(("them", "those", "these", "it", "that", "which"))
_CHAIN = frozenset(("chain", "rope", "line", "warp", "nylon"))


def _of_ours(tokens: list[Token]) -> list[Token]:
    """Return the tokens with the whole said in its unit and first (`our 80 m aboard`), and with parts of what is out in its unit."""
    found: list[Token] = []
    unit, at = "", 0
    while at < len(tokens):
        token = tokens[at]
        mention = token.mention
        if mention is not None and mention.kind == "length" and isinstance(mention.amount, Amount):
            unit = mention.amount.unit if mention.amount.unit in UNIT and not is_size(mention) else unit
        if (whole := _whole(tokens, at)) is not None:
            first, last = whole
            found += [last, last._replace(word="aboard", mention=None), last._replace(word=",", mention=None), first]
            at += 4
        elif _of_all(tokens, at):
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
    if first is None or last is None or not {first.kind, last.kind} <= _KINDS or "length" not in (first.kind, last.kind):
        return None
    if not isinstance(first.amount, Amount) or not isinstance(last.amount, Amount) or is_size(first) or is_size(last):
        return None
    unit = first.amount.unit or last.amount.unit
    if unit not in UNIT or (last.amount.unit or unit) != unit or last.amount.value <= first.amount.value or word_at(tokens, at + 4) in _CHAIN:
        return None
    one, two = (
        token._replace(word="<length>", mention=mention._replace(kind="length", amount=with_unit(mention.amount, unit=unit)))  # type: ignore[arg-type]
        for token, mention in ((tokens[at], first), (tokens[at + 3], last))
    )
    return one, two


def _of_all(tokens: list[Token], at: int) -> bool:
    """Say whether a length is the whole of which another is out: `of my 80 m I've 48 m over the bow`."""
    begins = at >= 2 and tokens[at - 1].word in _OUR and tokens[at - 2].word == "of" and (at == 2 or tokens[at - 3].word in (*_PARTS, "out"))
    return begins and tokens[at].word == "<length>" and "<length>" in [token.word for token in tokens[at + 1 : at + 5]]


def _part_of_them(tokens: list[Token], at: int, unit: str) -> Token | None:
    """Return the length of `twenty of them 8 mm chain`, in the unit of what it is a part of."""
    value, mention = number_at(tokens, at), tokens[at].mention
    if value is None or mention is None or not unit or word_at(tokens, at + 1) != "of" or word_at(tokens, at + 2) not in _THEM:
        return None
    behind = [token for token in tokens[at + 3 : at + 6] if token.word not in ("is", "are", "being", "in")][:2]
    size = len(behind) == 2 and behind[0].mention is not None and is_size(behind[0].mention)
    if not size or behind[1].word not in _CHAIN:
        return None
    length = with_unit(Amount("number", 0.0, 0.0, "", value, value), unit=unit)
    return tokens[at]._replace(word="<length>", mention=mention._replace(kind="length", amount=length))


__all__ = ["jotted"]
