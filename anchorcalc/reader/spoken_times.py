"""Clock times in words: `half past six`, `ten to nine`, `thirteen hundred hours`, and the bare `1130` of a tide table."""

import re

from anchorcalc.reader.mention import Mention
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.spoken_parts import number_at, token_of, word_at
from anchorcalc.units.clock import Clock
from anchorcalc.units.kinds import Amount

_HALF_DAY = {"am": 0.0, "a": 0.0, "morning": 0.0, "pm": 43200.0, "p": 43200.0, "evening": 43200.0, "afternoon": 43200.0, "night": 43200.0}
_MINUTES = {"half": 30.0, "quarter": 15.0}
_DIGITS = re.compile(r"(?:[01]\d|2[0-3])[0-5]\d\Z|(?:[01]?\d|2[0-3])\.[0-5]\d\Z")


def tide_time(tokens: list[Token], at: int) -> Token:
    """Make a bare `1130` or `10.40` in a text on tides the time that it is."""
    token = tokens[at]
    if token.mention is None or not _DIGITS.match(token.mention.text) or (number_at(tokens, at) is None and "shared_unit" not in token.mention.flags):
        return token
    digits = token.mention.text.replace(".", "")
    if (
        "." in token.mention.text
        and word_at(tokens, at - 1) in ("low", "high", "depth", "bow", "height", "roller", "of", "is", "was", "water", "tide", "lw", "hw", "and")
        and word_at(tokens, at + 1) != "<length>"
    ):
        return token
    seconds = int(digits[:-2]) * 3600.0 + int(digits[-2:]) * 60.0
    return token_of(tokens, at, at + 1, "clock", Clock(seconds, "plain"))


def o_clock(tokens: list[Token], at: int) -> tuple[Token, int] | None:
    """`half past six`, `ten to nine`, `seventeen forty`, `five fifteen am`, `nine am`, `thirteen hundred hours`."""
    mention = tokens[at].mention
    if mention is not None and mention.kind == "time" and isinstance(mention.amount, Amount):
        hours = mention.amount.value
        if mention.amount.unit == "h" and 100 <= hours <= 2359 and hours % 100 < 60:
            return token_of(tokens, at, at + 1, "clock", Clock(hours // 100 * 3600.0 + hours % 100 * 60.0, "plain")), at + 1
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
    elif end == at + 1 and mention is not None and mention.kind == "number" and mention.amount is not None and "range" not in mention.flags:
        return token_of(tokens, at, end, "clock", Clock(seconds % 86400.0, "plain"), frozenset({"twelve_hour"})), end
    return token_of(tokens, at, end, "clock", Clock(seconds % 86400.0, "plain")), end


def half_told(tokens: list[Token], at: int) -> tuple[Token, int] | None:
    """`2 o'clock in the afternoon`: a time by twelve hours with its half of the day behind it."""
    mention, half = tokens[at].mention, _half_of_day(tokens, at + 1)
    if half is None or mention is None or "twelve_hour" not in mention.flags or not isinstance(mention.amount, Clock):
        return None
    return token_of(tokens, at, half[1], "clock", Clock(mention.amount.seconds % 43200.0 + half[0], "plain")), half[1]


def _half_of_day(tokens: list[Token], at: int) -> tuple[float, int] | None:
    word = word_at(tokens, at)
    if word in ("am", "pm"):
        return _HALF_DAY[word], at + 1
    if word == "in" and word_at(tokens, at + 1) == "the" and word_at(tokens, at + 2) in _HALF_DAY:
        return _HALF_DAY[word_at(tokens, at + 2)], at + 3
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
    minutes = _MINUTES.get(word_at(tokens, at))
    if minutes is None:
        minutes = number_at(tokens, at)
        minutes = {0.5: 30.0, 0.25: 15.0}.get(minutes or 0.0, minutes)
    hour = number_at(tokens, at + 2)
    if word_at(tokens, at + 1) not in ("past", "to", "after") or minutes is None or hour is None:
        return None
    if not (1 <= hour <= 12 and hour == int(hour)) or minutes not in (5, 10, 15, 20, 25, 30):
        return None
    if word_at(tokens, at + 1) == "to" and (hour == 1 or "spelled" not in (tokens[at + 2].mention or _NOTHING).flags):
        return None
    return hour * 3600.0 + (minutes if word_at(tokens, at + 1) != "to" else -minutes) * 60.0, at + 3, True


_NOTHING = Mention("number", None, 0, 0, "")


_AT = frozenset("at by till until about around for".split())


def _of_times(tokens: list[Token]) -> bool:
    """Say whether a text tells times of the clock or of the tide besides: then `at eight twenty` is one, too."""
    return any(token.word in ("<clock>", "tide", "tides", "lw", "hw") for token in tokens)


def _run_on(tokens: list[Token], at: int) -> tuple[float, int, bool] | None:
    """`seventeen forty`, `zero two thirty`, `five fifteen am`, `nine am`; the first two only where `at` stands before."""
    hour, minutes = number_at(tokens, at), number_at(tokens, at + 1)
    mention = tokens[at].mention
    if hour is not None and mention is not None and "spelled" in mention.flags and 100 <= hour <= 2359 and hour % 100 < 60 and " " in mention.text:
        return hour // 100 * 3600.0 + hour % 100 * 60.0, at + 1, word_at(tokens, at - 1) in _AT and _of_times(tokens)
    if hour is not None and 1 <= hour <= 12 and hour == int(hour) and word_at(tokens, at + 1) == "oclock":
        return hour * 3600.0, at + 2, True
    if hour is None or hour != int(hour) or mention is None or not 0 <= hour <= 24:
        return None
    if hour == 0 and minutes is not None and 0 < minutes < 10 and number_at(tokens, at + 2) is not None:
        return minutes * 3600.0 + (number_at(tokens, at + 2) or 0.0) * 60.0, at + 3, True
    if minutes is None:
        return (hour * 3600.0, at + 1, _when_we_went(tokens, at) or _of_the_tide(tokens, at)) if hour <= 12 else None
    if "spelled" not in mention.flags or not (10 <= minutes < 60 and minutes == int(minutes)):
        return None
    return hour * 3600.0 + minutes * 60.0, at + 2, word_at(tokens, at - 1) in ("at", "by", "till", "until")


def _when_we_went(tokens: list[Token], at: int) -> bool:
    """Say whether a number tells when we came or went: `we left Kaldfen at five with the wind in the north`."""
    return word_at(tokens, at - 1) == "at" and any(word_at(tokens, place) in _WENT for place in range(max(0, at - 4), at - 1))


_WENT = frozenset("left sailed arrived came departed motored woke rose".split())


def _of_the_tide(tokens: list[Token], at: int) -> bool:
    """Say whether a number tells when the tide is low or high, its height behind it: `low water at 3 (0.5 m)`."""
    behind = word_at(tokens, at + 1)
    height = word_at(tokens, at + 2) == "<length>" and behind in ("(", ",", "with", "–")
    return height and word_at(tokens, at - 1) == "at" and word_at(tokens, at - 2) in _TIDES


_TIDES = frozenset("water tide low high lw hw".split())
