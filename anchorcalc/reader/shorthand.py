"""What is jotted down, not said: `HW +1.9`, `2.2 m @ 09:15 low`, `nine. metres that is`."""

from anchorcalc.reader.fits import with_unit
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.rode_said import ROPES, SIZE_TOLD, WHOLE_TOLD, in_as_many, of_ours, sized
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.spoken_parts import number_at, word_at
from anchorcalc.units.kinds import Amount


def jotted(tokens: list[Token]) -> list[Token]:
    """Return the tokens of a text as they would stand if it had been said in full."""
    words = {token.word for token in tokens}
    if "/" in words:
        tokens = [token._replace(word=",") if _twice(tokens, at) else token for at, token in enumerate(tokens)]
    if "when" in words and "," in words:  # `at high water, when it will be 10.5 m`
        tokens = [token for at, token in enumerate(tokens) if token.word != "," or at == 0 or not _tide_when(tokens, at)]
    if "nautical" in words:
        tokens = [_nautical(token) for token in tokens]
    if not words.isdisjoint(_FOLD):
        tokens = [_as_ratio(token) if token.word in _FOLD else token for token in tokens]
    if not words.isdisjoint(_EACH) and not words.isdisjoint(_MARKS):
        tokens = [_each_one(tokens, at) for at in range(len(tokens))]
    numbers = "<number>" in words
    if "+" in words or (not words.isdisjoint(("ebb", "tide")) and any(_below_nought(token) for token in tokens)):
        tokens = _rises(tokens)
    if "<clock>" in words and not _SIDES.isdisjoint(words):
        tokens = _sides_first(tokens)
    if numbers and not words.isdisjoint(_UNIT):
        tokens = _more_of_them(_unit_behind(tokens))
    if not words.isdisjoint(ROPES) and not words.isdisjoint(SIZE_TOLD):
        tokens = sized(tokens)
    if numbers and "in" in words:
        tokens = in_as_many(tokens)
    if "of" in words and not words.isdisjoint(WHOLE_TOLD):
        tokens = of_ours(tokens)
    return [_valued(tokens, at) if token.word == "<number>" else token for at, token in enumerate(tokens)] if numbers else tokens


def _tide_when(tokens: list[Token], at: int) -> bool:
    return word_at(tokens, at - 1) in ("water", "tide", "hw", "lw") and word_at(tokens, at + 1) == "when"


def _below_nought(token: Token) -> bool:
    mention = token.mention
    return mention is not None and isinstance(mention.amount, Amount) and mention.amount.value < 0.0


_FOLD = {"threefold": 3.0, "fourfold": 4.0, "fivefold": 5.0, "sixfold": 6.0, "sevenfold": 7.0, "eightfold": 8.0, "tenfold": 10.0}


def _as_ratio(token: Token) -> Token:
    value = _FOLD[token.word]
    mention = Mention("ratio", Amount("ratio", value, value, "", value, value), token.start, token.end, token.word)
    return token._replace(word="<ratio>", mention=mention)


def _nautical(token: Token) -> Token:
    """Make a mile a nautical one where the text says elsewhere that it is: `0.05 miles from my anchor ... nautical`."""
    mention = token.mention
    if mention is None or not isinstance(mention.amount, Amount) or mention.amount.unit != "mi":
        return token
    bare = Amount("number", 0.0, 0.0, "", mention.amount.value, mention.amount.value_high)
    return token._replace(mention=mention._replace(amount=with_unit(bare, unit="nmi")))


_EACH, _MARKS = frozenset(("each", "every")), frozenset("mark marks tag tags knot knots ribbon ribbons leather leathers rag rags tape".split())
_ONE = {"fathom": "fathom", "metre": "m", "yard": "yd", "foot": "ft"}


def _each_one(tokens: list[Token], at: int) -> Token:
    """Make the unit of `marks every fathom` one fathom."""
    token = tokens[at]
    if token.word not in _ONE or at == 0 or tokens[at - 1].word not in _EACH:
        return token
    amount = with_unit(Amount("number", 1.0, 1.0, "", 1.0, 1.0), unit=_ONE[token.word])
    return token._replace(word="<length>", mention=Mention("length", amount, token.start, token.end, token.word))


_NAMES = frozenset(
    "rise rises rising fall falls falling drop drops dropping bow roller chock stem depth reserve spare margin draught ebb flood out".split()
)
_ACROSS = frozenset(("across", "wide"))
_KEEPS, _BACK = frozenset(("keep", "keeping", "leave", "leaving")), frozenset(("back", "inboard", "spare", "aboard"))
_STAYS = frozenset("stay stays staying kept left remain remaining held".split())  # `forty fathoms, two of them staying on the bitts`
_FEW = frozenset(("one", "two", "three"))


def _valued(tokens: list[Token], at: int) -> Token:
    """Mark a small number in words right behind the name of a measure as a value, no count: `bow two`, `rise three scope six`."""
    token, mention = tokens[at], tokens[at].mention
    before, behind = tokens[at - 1].word if at else "", word_at(tokens, at + 1)
    if mention is None or mention.kind != "number" or mention.text.lower() not in _FEW:
        return token
    kept = (before in _KEEPS and behind in _BACK) or (behind == "of" and _STAYS & {word_at(tokens, at + 3), word_at(tokens, at + 4)})
    to_come = behind == "more" and word_at(tokens, at + 2) == "to"  # `two more to come`
    if before not in _NAMES and not kept and not to_come and behind not in _ACROSS:
        return token
    counted = behind.isalpha() and behind.endswith("s") and behind not in ("us", "is", "across")
    return token if counted else token._replace(mention=mention._replace(flags=mention.flags | {"valued"}))


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
    bracketed = before == "(" and not _FLOOD.isdisjoint(token.word for token in found[-6:])  # `HW in 3 h (+1.4 m)`
    if before not in _FLOOD and not follows and not bracketed:
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


def _more_of_them(tokens: list[Token]) -> list[Token]:
    """Return the tokens with `four more feet` made the length that it is."""
    found: list[Token] = []
    at = 0
    while at < len(tokens):
        value, unit, mention = number_at(tokens, at), _UNIT.get(word_at(tokens, at + 2)), tokens[at].mention
        if value is not None and mention is not None and unit and word_at(tokens, at + 1) == "more":
            length = with_unit(Amount("number", 0.0, 0.0, "", value, value), unit=unit)
            made = mention._replace(kind="length", amount=length, flags=mention.flags | {"another"})
            found += [tokens[at]._replace(word="<length>", mention=made), tokens[at + 1]]
            at += 3
        else:
            found.append(tokens[at])
            at += 1
    return found


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


__all__ = ["jotted"]
