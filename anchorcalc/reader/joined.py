"""Quantities of two parts: `5 ft 6 in`, `four fathoms and a half`, `4 to 5 m`, `7 to 1`."""

import re

from anchorcalc.reader.mention import Read
from anchorcalc.reader.numbers_said import number_at
from anchorcalc.reader.unit_words import FOOT_UNIT, INCH, unit_at
from anchorcalc.units.kinds import UNIT, Unit
from anchorcalc.units.number_words import and_a_part

_RATIO_GOES_ON = frozenset("tif:")
_JOINT_GOES_ON = frozenset("tuoa-–.…0123456789/")
_RATIO = re.compile(
    r"\s?:\s?(\d{1,4}(?:\.\d{1,4})?)(?!\d|:\d)"
    r"|(?: |-)(?:to|in)(?: |-)(?:1|one)(?![\w]|[.,]\d| ?(?:m|ft|feet|foot|met(?:re|er)s?|fathoms?)\b)"
    r"|(?: |-)for(?: |-)one(?= ?(?:[.,;:?!)\n]|\Z))"
    r"|(?: |-)(?:to|in)(?: |-)(?=\d|[a-z])(?P<slope>)"
)


def ratio_at(*, low: str, at: int, first: Read) -> Read | None:
    """Return the ratio that a number begins (`7:1`, `7 to 1`, `five-to-one`, `1 in 20`, `one to twelve`), or None."""
    sign = low[first.end : first.end + 1]
    if sign not in (" ", "-", ":", "\xa0") or (sign != ":" and low[first.end + 1 : first.end + 2] not in _RATIO_GOES_ON):
        return None
    found = _RATIO.match(low, first.end)
    if not found or not first.value or (sign == ":" and not low[at].isdigit()):  # "this one: 50 m"
        return None
    if found[1] is not None:
        under = float(found[1])
        return Read(first.value / under, found.end()) if under and 1.0 in (first.value, under) else None
    if found["slope"] is None:
        return Read(first.value, found.end()) if first.value > 1.0 and "in" not in found[0] else None
    return _slope(low=low, joint=found[0], at=found.start(), first=first)


_BEFORE_ANOTHER = re.compile(r"[ -](?:to|in)[ -](?=[\da-z])")


def _slope(*, low: str, joint: str, at: int, first: Read) -> Read | None:
    """Return the slope of `1 in 20` or `one to twelve`, where no unit makes it something else."""
    found = _BEFORE_ANOTHER.match(low, at)
    under = number_at(low=low, at=found.end()) if found and first.value == 1.0 else None
    if under is None or under.value < (2 if "in" in joint else 5) or unit_at(cased=low, low=low, at=under.end) is not None:
        return None
    return Read(1.0 / under.value, under.end)


_RATIOS_BEGIN, _RATIOS_GO_ON = frozenset(" :-–."), frozenset("toa:-–.")
_RATIOS = re.compile(
    r"(?:\s?:\s?1)?(?:\s?(?:-|–|\.\.\.?)\s?|\s(?P<word>to|or|and)\s)(?P<high>\d{1,3}(?:\.\d{1,3})?)"
    r"(?:\s?:\s?1(?![\d:])| to 1(?!\d|[.,]\d| ?(?:m|ft|feet|foot)\b))"
)


def ratios_at(*, low: str, at: int, first: Read) -> tuple[float, int, frozenset[str]] | None:
    """Return the other end of a range of ratios (`5:1 to 7:1`, `5-7:1`), where it ends and its flags, or None."""
    sign = low[first.end : first.end + 1]
    if sign not in _RATIOS_BEGIN or (sign == " " and low[first.end + 1 : first.end + 2] not in _RATIOS_GO_ON):
        return None
    found = _RATIOS.match(low, first.end)
    if not found or not 1.0 < first.value < float(found["high"]):
        return None
    if found["word"] == "and" and not _BETWEEN.search(low, max(0, at - 18), at):
        return None
    return float(found["high"]), found.end(), _ALTERNATIVE if found["word"] == "or" else _RANGE


_SMALLER = {
    "ft": ("in",),
    "yd": ("ft", "in"),
    "fathom": ("ft",),
    "m": ("cm", "dm"),
    "km": ("m",),
    "mi": ("ft", "yd"),
    "nmi": ("cable",),
    "lb": ("oz",),
    "stone": ("lb",),
    "kg": ("g",),
    "h": ("min",),
    "min": ("s",),
    "deg": ("arcmin",),
    "day": ("h",),
}
_AND = frozenset({("ft", "in"), ("h", "min"), ("min", "s"), ("m", "cm"), ("lb", "oz"), ("kg", "g"), ("yd", "in"), ("yd", "ft")})
_NEXT = re.compile(r"(\s{0,2})(,\s?|and\s|-)?(?=\d|[¼½¾⅛⅜⅝⅞]|[a-z])")
_ARC = re.compile(
    r"\s?(\d{1,2}(?:\.\d{1,6})?)\s?(?:'|min(?:utes?)?\b|arc ?min(?:utes?)?\b)(?:\s?(\d{1,2}(?:\.\d{1,6})?)\s?(?:\"|''|sec(?:onds?)?\b))?"
)


def compound(*, cased: str, low: str, value: float, unit: Unit, end: int) -> tuple[float, int]:
    """Return the value with what adds to it in a smaller unit, in the first unit, and where it ends."""
    if unit.symbol == "deg":
        return _minutes_of_arc(low=low, value=value, end=end)
    part, after = and_a_part(text=low, at=end) if low.startswith(" and ", end) else (0.0, end)
    if part and ((other := unit_at(cased=cased, low=low, at=after)) is None or other[2] == "in"):  # "a knot and a half in seven fathoms"
        return value + part, after
    smaller = _SMALLER.get(unit.symbol)
    found = _NEXT.match(low, end) if smaller else None
    if smaller is None or found is None:
        return value, end
    if one := _AND_ONE.match(low, end):  # "two fathoms and a foot"
        second = unit_at(cased=cased, low=low, at=one.end())
        return (value + second[0].factor / unit.factor, second[1]) if second and second[0].symbol in smaller else (value, end)
    more = number_at(low=low, at=found.end())
    if more is None:
        return value, end
    return _added(cased=cased, low=low, value=value, unit=unit, end=end, found=found, more=more)


_AND_ONE = re.compile(r" and an? (?=[a-z])")
_MINUTES = re.compile(r" (?:and )?([a-z -]{3,20}?) minutes?(?![a-z])")


def _minutes_of_arc(*, low: str, value: float, end: int) -> tuple[float, int]:
    """Return degrees with the minutes and seconds behind them."""
    arc = _ARC.match(low, end)
    if arc:
        return value + float(arc[1]) / 60 + float(arc[2] or 0) / 3600, arc.end()
    part, after = and_a_part(text=low, at=end) if low.startswith(" and ", end) else (0.0, end)
    said = _MINUTES.match(low, end)
    minutes = number_at(low=low, at=said.start(1)) if said else None
    if said and minutes and minutes.end == said.end(1) and minutes.value < 60:
        return value + minutes.value / 60, said.end()
    return value + part, after


def _added(*, cased: str, low: str, value: float, unit: Unit, end: int, found: re.Match[str], more: Read) -> tuple[float, int]:
    second = unit_at(cased=cased, low=low, at=more.end)
    joint = (found[2] or "").strip()
    if second is None:
        part = 0.0 if joint not in ("", "-") else _bare_part(low=low, unit=unit, end=end, at=found.end(), more=more)
        return (value + part, more.end) if part else (value, end)
    small = second[0]
    if small.symbol not in _SMALLER[unit.symbol] or more.value * small.factor >= unit.factor * (1 - 1e-9) or value != int(value):
        return value, end
    if (joint and joint != "-" and (unit.symbol, small.symbol) not in _AND) or (unit.symbol == "ft" and more.value < 1):
        return value, end
    if joint == "," and (unit.symbol == "m" or more.value != int(more.value) or low.startswith(" the ", second[1])):
        return value, end  # `38 feet, eleven in the beam`
    return value + more.value * small.factor / unit.factor, second[1]


_METRE = re.compile(r"met(?:re|er)s?\Z")
_FOOT = re.compile(r"(?:foot|feet|ft|')\Z")


def _bare_part(*, low: str, unit: Unit, end: int, at: int, more: Read) -> float:
    """Return what a bare number behind a unit adds: inches to feet (`5'6`, `six foot two`), centimetres to metres (`1m80`, `a metre twenty`)."""
    digits = low[at].isdigit()
    if more.value != int(more.value) or ratio_at(low=low, at=at, first=more) or (digits and _NOT_ALONE.match(low, more.end)):
        return 0.0
    if unit.symbol == "ft" and 0 < more.value < 12 and (at - end < 3) and _FOOT.search(low, end - 4, end):
        return more.value * INCH.factor / FOOT_UNIT.factor
    whole = 10 <= more.value < 100 and (more.end - at == 2 if digits else more.value % 5 == 0)
    if unit.symbol == "m" and whole and ((at == end and digits) or (at > end and _METRE.search(low, max(0, end - 6), end))):
        return more.value / 100.0
    return 0.0


_NOT_ALONE = re.compile(
    r"[.,]\d|[:/%°'\"½¼¾]|[ -]?(?:m|ft|in|mm|cm|kg|lbs?|kn|kts?|s|h|t|g|km|nm|x|am|pm)\b|\s?(?:to|-|x|×)\s?\d"
    r"|[ -]?(?:feet|foot|met|fath|mil|inch|knots|lbs|kilo|cable|pound)"
)
_JOINT = re.compile(
    r"(?:\s?(?P<dots>\.\.\.?|…|–|-)\s?|\s(?P<words>to|up to|through|thru|or|and|or maybe|or perhaps|to maybe|until|till)\s|-?(?P<hung> to | or |/))"
    r"(?=\d|\.\d|[¼½¾⅛⅜⅝⅞]|[a-z])"
)
_BETWEEN = re.compile(r"\b(?:between|betwixt|from between|anywhere between) \Z")
_RANGE = frozenset({"range"})
_ALTERNATIVE = frozenset({"alternative"})
_TAKES_OTHER = re.compile(r" of (?:rode|chain|line|rope|cable|warp)\b")


def partner(*, cased: str, low: str, at: int, end: int, unit: Unit | None, value: float) -> tuple[float, int, frozenset[str]] | None:
    """Return the other end of a range that a quantity begins, in the same unit, where it ends and its flags; or None.

    Without a unit the other end has none yet either, and the caller looks for the one behind it.
    """
    sign = low[end : end + 1]
    if sign not in (" ", "-", "–", ".", "…", "/", "\xa0"):
        return None
    if sign == " " and low[end + 1 : end + 2] not in _JOINT_GOES_ON:
        return None
    joint = _JOINT.match(low, end)
    if joint is None:
        return None
    words = joint["words"]
    if words == "and" and not _BETWEEN.search(low, max(0, at - 18), at):
        return None
    other = number_at(low=low, at=joint.end())
    if other is None:
        return None
    either = joint["hung"] == "/" or (words is not None and words.startswith("or"))
    if other.value == value or (other.value < value and not either):
        return None
    flags = _ALTERNATIVE if either else _RANGE
    if unit is None:
        if joint["hung"] == "/" and ((behind := unit_at(cased=cased, low=low, at=other.end)) is None or behind[0].kind != "speed"):
            return None  # `bow 4/9 m deep`, but `20/25 kn`
        return None if low[other.end : other.end + 1] == ":" else (other.value, other.end, flags)
    return _same_unit(cased=cased, low=low, unit=unit, other=other, flags=flags)


def _same_unit(*, cased: str, low: str, unit: Unit, other: Read, flags: frozenset[str]) -> tuple[float, int, frozenset[str]] | None:
    found = unit_at(cased=cased, low=low, at=other.end)
    if found is None or found[0].kind != unit.kind or (found[0].symbol != unit.symbol and UNIT.get(found[0].symbol) is None):
        return None
    if found[0].symbol != unit.symbol or _TAKES_OTHER.match(low, found[1]):
        return None
    top, end = compound(cased=cased, low=low, value=other.value, unit=unit, end=found[1])
    return top, end, flags
