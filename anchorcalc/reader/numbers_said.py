"""A number at a place of a text, in digits or in words, with what is said behind it: `and a half`, `million`, `ish`."""

import re

from anchorcalc.reader.mention import NO_FLAGS, Read
from anchorcalc.units.number_words import ONES, PARTS, SCALES, TENS, and_a_part, spelled
from anchorcalc.units.numbers import NUMERAL, VULGAR, numeral

_WORD = re.compile(r"[a-z]+")
STARTERS = frozenset({*ONES, *TENS, *SCALES, "a", "an", "half", "quarter", "couple", "dozen", "hundred", "point"})
_TIMES_TEN = re.compile(r"[ \xa0]?[x×*][ \xa0]?10(?:\^([+-]?\d{1,2})|([⁻⁺]?[⁰¹²³⁴-⁹]{1,2}))(?!\d)")
_THREES = re.compile(r"[1-9]\d{0,2}(?:(?:\xa0\d{3})+| 000(?: 000)*)(?![\d/]|[.,]\d)")
_RAISED = str.maketrans("⁻⁺⁰¹²³⁴⁵⁶⁷⁸⁹", "-+0123456789")
MOST = 1e18  # more than that is no quantity that anybody says
_NUMERAL = re.compile(NUMERAL)
_SCALE = re.compile(
    r"[ \xa0-]?(hundred thousand|hundred million|hundred|thousand|million|billion|trillion|dozen"
    r"|k(?=[ \xa0]?(?:lbs?|kg|ft|n|lbf|pounds|feet|miles|km)(?![a-z])))(?![a-z])"
)
_ROUND = {"hundred": 100.0, "k": 1000.0, "dozen": 12.0, "hundred thousand": 1e5, "hundred million": 1e8, **SCALES}
_ISH = re.compile(r"-?ish(?![a-z])")
_SHARE = re.compile(r"[ -](halves|thirds|quarters|fifths|eighths|tenths|twelfths|sixteenths|hundredths|thousandths)(?: of an?(?= ))?(?![a-z])")
_PART = re.compile(r" and (?:a |one |half|quarter|three)")
_POINT = re.compile(r"[ \xa0]point[ \xa0](\d{1,9})(?![\d/]|[.,]\d)")  # `5 point 2`
_DECIMAL = frozenset(("point", "nought", "zero"))  # `nought point five`
SPELLED = frozenset({"spelled"})
_SPELLED_PART = frozenset({"spelled", "fraction"})
_FRACTION = frozenset({"fraction"})
_ROUGH = frozenset({"spelled", "about"})


def _power(*, low: str, found: re.Match[str], value: float) -> Read | None:
    """Return a number with a power of ten behind it, or in groups of three with spaces between; None where it has neither."""
    threes = _THREES.match(low, found.start())
    if threes:
        return Read(float(threes[0].replace(" ", "").replace("\xa0", "")), threes.end())
    times = _TIMES_TEN.match(low, found.end())
    return Read(value * 10.0 ** float((times[1] or times[2]).translate(_RAISED)), times.end()) if times else None


_FRACTION_OF = re.compile(r"(?:\d+(?:[ \xa0]|-|[ \xa0]and[ \xa0]))?(\d+)/(\d+)\Z")
_BEFORE_STROKE = re.compile(r"\d+")


def _is_date(low: str, at: int, end: int) -> bool:
    """Say whether two numbers with a stroke between are a day: `5/11 at 21:30`, `on 3/9`."""
    return _DATED.search(low, max(0, at - 8), at) is not None and not _GOES_ON.match(low, end)


_GOES_ON = re.compile(r"[.,]\d")
_DATED = re.compile(r"(?:^|[.!?\n] |\bon |\btoday,? |\bsince )\Z")  # `5/11 at 21:30`
_TRADE = frozenset((2, 3, 4, 8, 16, 32, 64))


def _is_fraction(text: str) -> bool:
    """Say whether a stroke makes a fraction, as the trade writes it or one part of a whole; `bow 4 / 90 out` and `4/90` are two numbers."""
    found = _FRACTION_OF.match(text)
    return found is not None and (found[1] == "1" or (int(found[2]) in _TRADE and int(found[1]) < int(found[2])))


def number_at(*, low: str, at: int) -> Read | None:
    """Return the number that begins at a place, or None."""
    if low[at : at + 1].isalpha():
        return _in_words(low=low, at=at)
    found = _NUMERAL.match(low, at)
    if found and "/" in found[0] and not _is_fraction(found[0]) and not _is_date(low, at, found.end()):
        found = _BEFORE_STROKE.match(low, at, found.end())
    if not found:
        return None
    value, end = numeral(found[0]), found.end()
    if value is None or value > MOST:
        return None
    following = low[end : end + 1]
    if following in "x× \xa0*" and (more := _power(low=low, found=found, value=value)) is not None:
        return more
    flags = _FRACTION if "/" in found[0] or low[end - 1] in VULGAR else NO_FLAGS
    if "/" in found[0] and low.startswith("th of ", end):
        end += len("th")  # "1/8th of an inch"
    if following in "-i" and (ish := _ISH.match(low, end)):
        return Read(value, ish.end(), flags | {"about"})
    if following in " -\xa0hmtbdk":
        scale = _SCALE.match(low, end)
        if scale:
            return Read(value * _ROUND[scale[1]], scale.end(), flags)
        if share := _SHARE.match(low, end):
            return Read(value / PARTS[share[1]], share.end(), flags | _FRACTION)
        if point := _POINT.match(low, end):
            return Read(float(f"{found[0]}.{point[1]}"), point.end()) if found[0].isdigit() else Read(value, end, flags)
        if _PART.match(low, end):
            part, end = and_a_part(text=low, at=end)
            return Read(value + part, end, flags)
    return Read(value, end, flags)


def _in_words(*, low: str, at: int) -> Read | None:
    word = _WORD.match(low, at)
    if word is None or word[0] not in STARTERS:
        return None
    words = spelled(text=low, at=at)
    if words is None or low[words.end : words.end + 1].isalnum():
        return None
    return Read(words.value, words.end, _ROUGH if words.rough else SPELLED if words.value >= 1 or word[0] in _DECIMAL else _SPELLED_PART)
