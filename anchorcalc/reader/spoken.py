"""What people say in two words and mean as one thing: `half past six`, `one in twenty`, `3 ft 6`, `a metre twenty`, `9.4 × 3.1 m`."""

import re

from anchorcalc.reader.fits import with_unit
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.sentence import Token
from anchorcalc.units.clock import Clock
from anchorcalc.units.kinds import BEAUFORT_KNOTS, UNIT, Amount

_PRODUCT = frozenset(("x", "×", "by"))
_HALF_DAY = {"am": 0.0, "a": 0.0, "morning": 0.0, "pm": 43200.0, "p": 43200.0, "evening": 43200.0, "afternoon": 43200.0, "night": 43200.0}
_MINUTES = {"half": 30.0, "quarter": 15.0}


_TIDAL = frozenset(("low", "high", "lw", "hw", "tide", "tides", "flood", "ebb", "tops"))
_DIGITS = re.compile(r"(?:[01]\d|2[0-3])[0-5]\d\Z|(?:[01]?\d|2[0-3])\.[0-5]\d\Z")


def joined(tokens: list[Token]) -> list[Token]:
    """Return the tokens with what belongs together made one mention."""
    if len(_TIDAL.intersection(token.word for token in tokens)) >= 2:
        tokens = [_tide_time(tokens, at) for at in range(len(tokens))]
    found: list[Token] = []
    at = 0
    while at < len(tokens):
        token = tokens[at]
        if _pronoun(tokens, at) or _of_a_name(tokens, at):
            found.append(token._replace(word=token.mention.text.lower() if token.mention else token.word, mention=None))
            at += 1
            continue
        _split(tokens, at)
        token = tokens[at]
        made = _made(tokens, at) if token.mention is not None or token.word in ("half", "quarter") else _a_shackle(tokens, at)
        if made is None:
            found.append(token)
            at += 1
        else:
            found.append(made[0])
            at = made[1]
    return _products(found)


def _made(tokens: list[Token], at: int) -> tuple[Token, int] | None:
    return (
        _o_clock(tokens, at)
        or _one_in(tokens, at)
        or _and_a_rest(tokens, at)
        or _part_of_a_cable(tokens, at)
        or _trade_cable(tokens, at)
        or _horses(tokens, at)
        or _gale(tokens, at)
        or _and_a_half(tokens, at)
    )


def _tide_time(tokens: list[Token], at: int) -> Token:
    """Make a bare `1130` or `10.40` in a text on tides the time that it is."""
    token = tokens[at]
    if token.mention is None or not _DIGITS.match(token.mention.text) or (_number(tokens, at) is None and "shared_unit" not in token.mention.flags):
        return token
    digits = token.mention.text.replace(".", "")
    if (
        "." in token.mention.text
        and _word(tokens, at - 1) in ("low", "high", "depth", "bow", "height", "roller", "of", "is", "was", "water", "tide", "lw", "hw", "and")
        and _word(tokens, at + 1) != "<length>"
    ):
        return token
    seconds = int(digits[:-2]) * 3600.0 + int(digits[-2:]) * 60.0
    return _token(tokens, at, at + 1, "clock", Clock(seconds, "plain"))


def _pronoun(tokens: list[Token], at: int) -> bool:
    """Say whether a `one` is no number: `this one has`, `which one`."""
    mention = tokens[at].mention
    return mention is not None and mention.text.lower() == "one" and _word(tokens, at - 1) in _WHICH_ONE if at else False


def _of_a_name(tokens: list[Token], at: int) -> bool:
    """Say whether a bare number belongs to a word: `grade thirty`, `three strand`."""
    return (_number(tokens, at) is not None and (_word(tokens, at - 1) == "grade" if at else False)) or (
        _number(tokens, at) is not None and _strand(tokens, at)
    )


def _strand(tokens: list[Token], at: int) -> bool:
    return _word(tokens, at + 1) in ("strand", "plait") or (_word(tokens, at + 1) == "-" and _word(tokens, at + 2) in ("strand", "plait"))


_WHICH_ONE = frozenset(
    "this that which each the new old last big small at every no any some other someone first right wrong type ones another".split()
)


def _word(tokens: list[Token], at: int) -> str:
    return tokens[at].word if at < len(tokens) else ""


def _number(tokens: list[Token], at: int) -> float | None:
    mention = tokens[at].mention if 0 <= at < len(tokens) else None
    if mention is None or mention.kind != "number" or not isinstance(mention.amount, Amount) or mention.amount.low != mention.amount.high:
        return None
    return mention.amount.value


def _token(tokens: list[Token], start: int, end: int, kind: str, amount: Amount | Clock, flags: frozenset[str] = frozenset()) -> Token:
    """Return one token for a stretch of them."""
    first, last = tokens[start], tokens[end - 1]
    texts = [token.mention.text if token.mention is not None else token.word for token in tokens[start:end]]
    return Token(f"<{kind}>", first.start, last.end, Mention(kind, amount, first.start, last.end, " ".join(texts), flags))


# --- clock times in words -----------------------------------------------------------------------------------------------------------


def _o_clock(tokens: list[Token], at: int) -> tuple[Token, int] | None:
    """`half past six`, `ten to nine`, `seventeen forty`, `five fifteen am`, `nine am`, `thirteen hundred hours`."""
    mention = tokens[at].mention
    if mention is not None and mention.kind == "time" and isinstance(mention.amount, Amount):
        hours = mention.amount.value
        if mention.amount.unit == "h" and 100 <= hours <= 2359 and hours % 100 < 60:
            return _token(tokens, at, at + 1, "clock", Clock(hours // 100 * 3600.0 + hours % 100 * 60.0, "plain")), at + 1
        return None
    found = _quarter_to(tokens, at) or _past(tokens, at) or _run_on(tokens, at)
    if found is None:
        return None
    seconds, end, sure = found
    half = _half_of_day(tokens, end)
    if half is not None:
        seconds, end = seconds % 43200.0 + half[0], half[1]
    elif not sure:
        return None
    return _token(tokens, at, end, "clock", Clock(seconds % 86400.0, "plain")), end


def _half_of_day(tokens: list[Token], at: int) -> tuple[float, int] | None:
    word = _word(tokens, at)
    if word in ("am", "pm"):
        return _HALF_DAY[word], at + 1
    if word == "in" and _word(tokens, at + 1) == "the" and _word(tokens, at + 2) in _HALF_DAY:
        return _HALF_DAY[_word(tokens, at + 2)], at + 3
    return None


def _quarter_to(tokens: list[Token], at: int) -> tuple[float, int, bool] | None:
    """`quarter to nine` is found as a range of numbers."""
    mention = tokens[at].mention
    if mention is None or mention.kind != "number" or not isinstance(mention.amount, Amount) or mention.amount.low == mention.amount.high:
        return None
    low, hour = mention.text.lower(), mention.amount.value_high
    if (
        " to " not in low
        or mention.amount.value not in (0.25, 5.0, 10.0, 20.0)
        or hour != int(hour)
        or not 1 <= hour <= 12
        or "spelled" not in mention.flags
    ):
        return None
    minutes = 15.0 if mention.amount.value == 0.25 else mention.amount.value
    return hour * 3600.0 - minutes * 60.0, at + 1, True


def _past(tokens: list[Token], at: int) -> tuple[float, int, bool] | None:
    minutes = _MINUTES.get(_word(tokens, at))
    if minutes is None:
        minutes = _number(tokens, at)
        minutes = {0.5: 30.0, 0.25: 15.0}.get(minutes or 0.0, minutes)
    hour = _number(tokens, at + 2)
    if _word(tokens, at + 1) not in ("past", "to", "after") or minutes is None or hour is None:
        return None
    if not (1 <= hour <= 12 and hour == int(hour)) or minutes not in (5, 10, 15, 20, 25, 30):
        return None
    if _word(tokens, at + 1) == "to" and (hour == 1 or "spelled" not in (tokens[at + 2].mention or _NOTHING).flags):
        return None
    return hour * 3600.0 + (minutes if _word(tokens, at + 1) != "to" else -minutes) * 60.0, at + 3, True


_NOTHING = Mention("number", None, 0, 0, "")


def _run_on(tokens: list[Token], at: int) -> tuple[float, int, bool] | None:
    """`seventeen forty`, `zero two thirty`, `five fifteen am`, `nine am`; the first two only where `at` stands before."""
    hour, minutes = _number(tokens, at), _number(tokens, at + 1)
    mention = tokens[at].mention
    if hour is not None and mention is not None and "spelled" in mention.flags and 100 <= hour <= 1259 and hour % 100 < 60 and " " in mention.text:
        return hour // 100 * 3600.0 + hour % 100 * 60.0, at + 1, False
    if hour is None or hour != int(hour) or mention is None or not 0 <= hour <= 24:
        return None
    if hour == 0 and minutes is not None and 0 < minutes < 10 and _number(tokens, at + 2) is not None:
        return minutes * 3600.0 + (_number(tokens, at + 2) or 0.0) * 60.0, at + 3, True
    if minutes is None:
        return (hour * 3600.0, at + 1, False) if hour <= 12 else None
    if "spelled" not in mention.flags or not (10 <= minutes < 60 and minutes == int(minutes)):
        return None
    return hour * 3600.0 + minutes * 60.0, at + 2, _word(tokens, at - 1) in ("at", "by", "till", "until")


# --- beaches, and lengths in two parts ----------------------------------------------------------------------------------------------

_ONE_IN = frozenset(("in", "every", "for", "to", "each"))


def _one_in(tokens: list[Token], at: int) -> tuple[Token, int] | None:
    """`one in twenty`, `1 to 19`, `1 m every 18 m`, `one metre in twenty two`."""
    first, last = tokens[at].mention, tokens[at + 2].mention if at + 2 < len(tokens) else None
    if (
        first is None
        or last is None
        or _word(tokens, at + 1) not in _ONE_IN
        or not isinstance(first.amount, Amount)
        or not isinstance(last.amount, Amount)
    ):
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
    return _token(tokens, at, at + 3, "ratio", Amount("ratio", slope, slope, "", slope, slope)), at + 3


def _and_a_rest(tokens: list[Token], at: int) -> tuple[Token, int] | None:
    """`3 ft 6` with nothing behind, `a metre twenty`, `1 metre 70`."""
    mention, rest = tokens[at].mention, _number(tokens, at + 1)
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
    if unit == "ft" and 0 < rest < 12 and _word(tokens, at + 2) in ("", ",", ".", ";", "?", "\n", ")", "of", "in", "and", "draught", "beam", "up"):
        value += rest / 12.0
    elif unit == "m" and 10 <= rest < 100:
        value += rest / 100.0
    else:
        return None
    return _token(tokens, at, at + 2, "length", with_unit(Amount("number", value, value, "", value, value), unit=unit), mention.flags), at + 2


def _part_of_a_cable(tokens: list[Token], at: int) -> tuple[Token, int] | None:
    """`a third of a cable`."""
    value = _number(tokens, at)
    for place in range(at + 1, at + 4):
        if (
            value is not None
            and _word(tokens, place) in ("cable", "cables")
            and all(_word(tokens, one) in ("of", "a") for one in range(at + 1, place))
        ):
            return _token(tokens, at, place + 1, "length", with_unit(Amount("number", value, value, "", value, value), unit="cable")), place + 1
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


def _a_shackle(tokens: list[Token], at: int) -> tuple[Token, int] | None:
    """`a shackle and a half`, `a shackle out`, `each shackle`: a length of chain, not the thing."""
    if tokens[at].word != "shackle" or at == 0:
        return None
    each = _word(tokens, at - 1) in ("each", "every", "per")
    if not each and not (_word(tokens, at - 1) in ("a", "one") and _word(tokens, at + 1) in ("and", "out", "veered", "on", "of", "in")):
        return None
    rest = tokens[at + 2].mention if at + 2 < len(tokens) and _word(tokens, at + 1) == "and" else None
    value, end = 1.0, at + 1
    if rest is not None and rest.text.lower().startswith(("a half", "half")):
        value, end = 1.5, at + 3
        if rest.text.lower().endswith(" in"):
            tokens.insert(end, Token("in", rest.end - 2, rest.end))
    return _token(tokens, at, end, "length", with_unit(Amount("number", 0.0, 0.0, "", value, value), unit="shackle")), end


def _gale(tokens: list[Token], at: int) -> tuple[Token, int] | None:
    """`gale 8` is force 8."""
    value = _number(tokens, at)
    if value is None or at == 0 or _word(tokens, at - 1) not in ("gale", "storm", "breeze") or not 1 <= value <= 11 or value % 1:
        return None
    low, high = BEAUFORT_KNOTS[int(value)]
    knot = UNIT["kn"].factor
    return _token(tokens, at, at + 1, "speed", Amount("speed", low * knot, high * knot, "kn", low, high, True), frozenset({"beaufort"})), at + 1


def _and_a_half(tokens: list[Token], at: int) -> tuple[Token, int] | None:
    """`a shackle and a half in the water`: no half inch."""
    mention, rest = tokens[at].mention, tokens[at + 2].mention if at + 2 < len(tokens) else None
    if mention is None or rest is None or mention.kind != "length" or _word(tokens, at + 1) != "and" or not isinstance(mention.amount, Amount):
        return None
    if not rest.text.lower().endswith("half in") or mention.amount.unit == "in":
        return None
    value = mention.amount.value + 0.5
    tokens.insert(at + 3, Token("in", rest.end - 2, rest.end))
    return _token(tokens, at, at + 3, "length", with_unit(Amount("number", 0.0, 0.0, "", value, value), unit=mention.amount.unit)), at + 3


_CHAINS = frozenset(("chain", "rode", "line", "rope", "cable", "warp", "nylon"))


def _split(tokens: list[Token], at: int) -> None:
    """Part `22 feet to 130 feet of 3/8 chain`: a depth and a rode, no range."""
    mention = tokens[at].mention
    if (
        mention is None
        or mention.kind != "length"
        or "range" not in mention.flags
        or not isinstance(mention.amount, Amount)
        or _word(tokens, at + 1) != "of"
    ):
        return
    if not any(_word(tokens, place) in _CHAINS for place in (at + 2, at + 3)) or " to " not in mention.text:
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
    value = _number(tokens, at)
    if value is None or _word(tokens, at + 1) not in ("horse", "horses"):
        return None
    return _token(tokens, at, at + 2, "power", with_unit(Amount("number", value, value, "", value, value), unit="hp")), at + 2


def _products(tokens: list[Token]) -> list[Token]:
    """Mark both lengths of `13.4 m × 7.2 m`, the first in the unit of the second where it has none."""
    for at in range(len(tokens) - 2):
        first, last = tokens[at].mention, tokens[at + 2].mention
        if (
            tokens[at + 1].word not in _PRODUCT
            or first is None
            or last is None
            or not isinstance(first.amount, Amount)
            or not isinstance(last.amount, Amount)
        ):
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
