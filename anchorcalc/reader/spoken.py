"""What people say in two words and mean as one thing: `half past six`, `one in twenty`, `3 ft 6`, `a metre twenty`, `9.4 × 3.1 m`."""

from anchorcalc.reader.fits import with_unit
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.spoken_parts import KEPT, number_at, of_those, token_of, word_at
from anchorcalc.reader.spoken_times import half_told, o_clock, tide_time
from anchorcalc.reader.spoken_winds import force_of_wind
from anchorcalc.units.kinds import UNIT, Amount

_PRODUCT = frozenset(("x", "×", "by"))
_BEGINS = frozenset(("half", "quarter", "shackle"))  # words that may begin what is joined, as quantities do
_TIDAL = frozenset(("low", "high", "lw", "hw", "tide", "tides", "flood", "ebb", "tops", "table", "tables"))


def joined(tokens: list[Token]) -> list[Token]:
    """Return the tokens with what belongs together made one mention."""
    words = {token.word for token in tokens}
    tokens = of_those(tokens) if "of" in words and not words.isdisjoint(KEPT) else tokens.copy()
    if len(words & _TIDAL) >= 2:
        tokens = [tide_time(tokens, at) for at in range(len(tokens))]
    found: list[Token] = []
    at = 0
    while at < len(tokens):
        token = tokens[at]
        if token.word not in _BEGINS if token.mention is None else _alone(token.mention, word_at(tokens, at + 1)):
            found.append(token)
            at += 1
            continue
        if _pronoun(tokens, at) or _of_a_name(tokens, at):
            found.append(token._replace(word=token.mention.text.lower() if token.mention else token.word, mention=None))
            at += 1
            continue
        _doubt_unit(tokens, at)
        _split(tokens, at)
        token = tokens[at]
        made = _made(tokens, at) if token.mention is not None or token.word in ("half", "quarter") else _a_shackle(tokens, at)
        if made is None:
            found.append(token)
            at += 1
        else:
            found.append(made[0])
            at = made[1]
    return found if words.isdisjoint(_PRODUCT) else _products(found)


_GO_ON = frozenset(("or", "of", "down", "in", "every", "for", "to", "each", "and", "<number>"))  # words behind a length with which it may be one
_JOINED = frozenset(("number", "time", "clock", "other"))


def _alone(mention: Mention, behind: str) -> bool:
    """Say whether a quantity is joined with nothing, by its kind and the word behind it."""
    if mention.kind != "length":
        return mention.kind not in _JOINED
    return behind not in _GO_ON and isinstance(mention.amount, Amount) and mention.amount.unit != "cable"


def _made(tokens: list[Token], at: int) -> tuple[Token, int] | None:
    mention = tokens[at].mention
    if mention is not None and mention.kind == "length":
        return _one_in(tokens, at) or _and_a_rest(tokens, at) or _trade_cable(tokens, at) or _and_a_half(tokens, at)
    if mention is not None and mention.kind == "clock":
        return half_told(tokens, at)
    if mention is not None and mention.kind not in ("number", "time"):
        return None
    return (
        o_clock(tokens, at)
        or _one_in(tokens, at)
        or _parts_to_one(tokens, at)
        or _and_a_rest(tokens, at)
        or _part_of_a_cable(tokens, at)
        or _trade_cable(tokens, at)
        or _horses(tokens, at)
        or force_of_wind(tokens, at)
        or _and_a_half(tokens, at)
    )


def _pronoun(tokens: list[Token], at: int) -> bool:
    """Say whether a `one` is no number: `this one has`, `which one`."""
    mention = tokens[at].mention
    return mention is not None and mention.text.lower() == "one" and word_at(tokens, at - 1) in _WHICH_ONE if at else False


_UNITS = frozenset("ft feet foot m metre metres fathom fathoms".split())
_PERHAPS = frozenset("perhaps maybe possibly it is was in are they".split())


def _doubt_unit(tokens: list[Token], at: int) -> None:
    """Take the unit off `3.5 m or perhaps it's ft`, which the text itself does not know."""
    mention = tokens[at].mention
    if mention is None or mention.kind != "length" or not isinstance(mention.amount, Amount) or word_at(tokens, at + 1) != "or":
        return
    rest = [token.word for token in tokens[at + 2 : at + 6]]
    while rest and rest[0] in _PERHAPS:
        rest.pop(0)
    if rest and rest[0] in _UNITS:
        value = mention.amount.value
        tokens[at] = token_of(tokens, at, at + 1, "number", Amount("number", value, value, "", value, value), mention.flags)


def _of_a_name(tokens: list[Token], at: int) -> bool:
    """Say whether a bare number belongs to a word: `grade thirty`, `three strand`."""
    return (number_at(tokens, at) is not None and (word_at(tokens, at - 1) == "grade" if at else False)) or (
        number_at(tokens, at) is not None and _strand(tokens, at)
    )


def _strand(tokens: list[Token], at: int) -> bool:
    return word_at(tokens, at + 1) in ("strand", "plait") or (word_at(tokens, at + 1) == "-" and word_at(tokens, at + 2) in ("strand", "plait"))


_WHICH_ONE = frozenset(
    "this that which each the new old last big small at every no any some other someone first right wrong type ones another".split()
)


# --- beaches, and lengths in two parts ----------------------------------------------------------------------------------------------

_ONE_IN = frozenset(("in", "every", "for", "to", "each"))


def _one_in(tokens: list[Token], at: int) -> tuple[Token, int] | None:
    """`one in twenty`, `1 to 19`, `1 m every 18 m`, `one metre in twenty two`."""
    joint = at + 1 + (word_at(tokens, at + 1) == "down")  # `one down for each ten`
    if word_at(tokens, joint) not in _ONE_IN:
        return None
    end = joint + 1 + (word_at(tokens, joint + 1) in ("each", "every"))
    first, last = tokens[at].mention, tokens[end].mention if end < len(tokens) else None
    if first is None or last is None or not isinstance(first.amount, Amount) or not isinstance(last.amount, Amount):
        return None
    if first.amount.value != 1.0 or first.amount.low != first.amount.high or last.amount.value <= 1.0 or last.amount.low != last.amount.high:
        return None
    if (
        first.kind not in ("number", "length")
        or last.kind not in ("number", "length")
        or (last.kind == "length" and last.amount.unit != first.amount.unit)
    ):
        return None
    if first.kind == "number" and last.kind == "length":
        return None
    slope = 1.0 / last.amount.value
    return token_of(tokens, at, end + 1, "ratio", Amount("ratio", slope, slope, "", slope, slope)), end + 1


def _parts_to_one(tokens: list[Token], at: int) -> tuple[Token, int] | None:
    """`five parts of rope to one of height`."""
    value = number_at(tokens, at)
    if value is None or word_at(tokens, at + 1) not in ("parts", "times", "lengths"):
        return None
    for place in range(at + 2, min(at + 6, len(tokens) - 1)):
        if tokens[place].word == "to" and (number_at(tokens, place + 1) == 1.0 or word_at(tokens, place + 1) == "one"):
            return token_of(tokens, at, place + 2, "ratio", Amount("ratio", value, value, "", value, value)), place + 2
    return None


def _and_a_rest(tokens: list[Token], at: int) -> tuple[Token, int] | None:
    """`3 ft 6` with nothing behind, `a metre twenty`, `1 metre 70`."""
    mention, rest = tokens[at].mention, number_at(tokens, at + 1)
    if (
        mention is None
        or mention.kind != "length"
        or rest is None
        or not isinstance(mention.amount, Amount)
        or mention.amount.low != mention.amount.high
    ):
        return None
    value, unit, second = mention.amount.value, mention.amount.unit, tokens[at + 1].mention
    if value != int(value) or rest != int(rest) or second is None or second.start - mention.end > 1 or {"label", "fraction"} & second.flags:
        return None
    if unit == "ft" and 0 < rest < 12 and word_at(tokens, at + 2) in ("", ",", ".", ";", "?", "\n", ")", "of", "in", "and", "draught", "beam", "up"):
        value += rest / 12.0
    elif unit == "m" and 10 <= rest < 100:
        value += rest / 100.0
    else:
        return None
    return token_of(tokens, at, at + 2, "length", with_unit(Amount("number", value, value, "", value, value), unit=unit), mention.flags), at + 2


def _part_of_a_cable(tokens: list[Token], at: int) -> tuple[Token, int] | None:
    """`a third of a cable`."""
    value = number_at(tokens, at)
    for place in range(at + 1, at + 4):
        if (
            value is not None
            and word_at(tokens, place) in ("cable", "cables")
            and all(word_at(tokens, one) in ("of", "a") for one in range(at + 1, place))
        ):
            return token_of(tokens, at, place + 1, "length", with_unit(Amount("number", value, value, "", value, value), unit="cable")), place + 1
    return None


def _trade_cable(tokens: list[Token], at: int) -> tuple[Token, int] | None:
    """`three-eighths cable` is chain of three eighths of an inch, no part of a mile."""
    mention = tokens[at].mention
    if mention is None or mention.kind != "length" or not isinstance(mention.amount, Amount) or mention.amount.unit != "cable":
        return None
    if not any(part in mention.text.lower() for part in ("eighth", "sixteenth", "/8", "/16")) or mention.amount.value >= 1.0:
        return None
    value = mention.amount.value
    made = Mention("number", Amount("number", value, value, "", value, value), mention.start, mention.end, mention.text, mention.flags | {"fraction"})
    tokens.insert(at + 1, Token("cable", mention.end, mention.end))
    return tokens[at]._replace(word="<number>", mention=made), at + 1


_OF_PINS = frozenset("pin pins wired wire seized seize moused mouse mousing bow".split())


def _a_shackle(tokens: list[Token], at: int) -> tuple[Token, int] | None:
    """`a shackle and a half`, `a shackle out`, `each shackle`: a length of chain, not the thing."""
    if tokens[at].word != "shackle" or at == 0:
        return None
    if _OF_PINS & {token.word for token in tokens[max(0, at - 5) : at + 7]}:
        return None
    each = word_at(tokens, at - 1) in ("each", "every", "per")
    if not each and not (word_at(tokens, at - 1) in ("a", "one") and word_at(tokens, at + 1) in ("and", "out", "veered", "on", "of", "in")):
        return None
    rest = tokens[at + 2].mention if at + 2 < len(tokens) and word_at(tokens, at + 1) == "and" else None
    value, end = 1.0, at + 1
    if rest is not None and rest.text.lower().startswith(("a half", "half")):
        value, end = 1.5, at + 3
        if rest.text.lower().endswith(" in"):
            tokens.insert(end, Token("in", rest.end - 2, rest.end))
    return token_of(tokens, at, end, "length", with_unit(Amount("number", 0.0, 0.0, "", value, value), unit="shackle")), end


def _and_a_half(tokens: list[Token], at: int) -> tuple[Token, int] | None:
    """`a shackle and a half in the water`: no half inch."""
    mention, rest = tokens[at].mention, tokens[at + 2].mention if at + 2 < len(tokens) else None
    if mention is None or rest is None or mention.kind != "length" or word_at(tokens, at + 1) != "and" or not isinstance(mention.amount, Amount):
        return None
    if not rest.text.lower().endswith("half in") or mention.amount.unit == "in":
        return None
    value = mention.amount.value + 0.5
    tokens.insert(at + 3, Token("in", rest.end - 2, rest.end))
    return token_of(tokens, at, at + 3, "length", with_unit(Amount("number", 0.0, 0.0, "", value, value), unit=mention.amount.unit)), at + 3


_CHAINS = frozenset(("chain", "rode", "line", "rope", "cable", "warp", "nylon"))


def _split(tokens: list[Token], at: int) -> None:
    """Part `22 feet to 130 feet of 3/8 chain`: a depth and a rode, no range."""
    mention = tokens[at].mention
    if (
        mention is None
        or mention.kind != "length"
        or "range" not in mention.flags
        or not isinstance(mention.amount, Amount)
        or word_at(tokens, at + 1) != "of"
    ):
        return
    if not any(word_at(tokens, place) in _CHAINS for place in (at + 2, at + 3)) or " to " not in mention.text:
        return
    amount, gap = mention.amount, mention.start + mention.text.index(" to ")
    ends = ((amount.value, mention.start, gap), (amount.value_high, gap + 4, mention.end))
    made = [
        Token(
            "<length>",
            start,
            end,
            Mention(
                "length",
                with_unit(Amount("number", 0.0, 0.0, "", value, value), unit=amount.unit),
                start,
                end,
                mention.text[start - mention.start : end - mention.start],
            ),
        )
        for value, start, end in ends
    ]
    tokens[at : at + 1] = [made[0], Token("to", gap, gap + 4), made[1]]


def _horses(tokens: list[Token], at: int) -> tuple[Token, int] | None:
    """`twelve horse`."""
    value = number_at(tokens, at)
    if value is None or word_at(tokens, at + 1) not in ("horse", "horses"):
        return None
    return token_of(tokens, at, at + 2, "power", with_unit(Amount("number", value, value, "", value, value), unit="hp")), at + 2


def _products(tokens: list[Token]) -> list[Token]:
    """Mark both lengths of `13.4 m × 7.2 m`, the first in the unit of the second where it has none."""
    for at in range(len(tokens) - 2):
        if tokens[at + 1].word not in _PRODUCT or word_at(tokens, at + 3) == "oclock":
            continue
        first, last = tokens[at].mention, tokens[at + 2].mention
        if first is None or last is None or not isinstance(first.amount, Amount) or not isinstance(last.amount, Amount):
            continue
        if first.kind == "length" and last.kind == "number" and first.amount.unit in UNIT and first.amount.value > last.amount.value > 1.0:
            last = last._replace(amount=with_unit(last.amount, unit=first.amount.unit), kind="length")
        if last.kind != "length" or first.kind not in ("number", "length") or not isinstance(last.amount, Amount):
            continue
        amount = with_unit(first.amount, unit=last.amount.unit) if first.kind == "number" and last.amount.unit in UNIT else first.amount
        for place, mention, value in ((at, first, amount), (at + 2, last, last.amount)):
            made = mention._replace(kind="length", amount=value, flags=mention.flags | {"product"})
            tokens[place] = tokens[place]._replace(word="<length>", mention=made)
    return tokens
