"""Clock times, dates and positions in running text."""

import re

from anchorcalc.reader.mention import NO_FLAGS, Mention
from anchorcalc.units.clock import Clock, clock
from anchorcalc.units.position import Position, position

_MONTH = r"(?:jan|feb|mar|apr|may|jun|jul|aug|sep|sept|oct|nov|dec)(?:uary|ruary|ch|il|e|y|ust|tember|ober|ember)?"
_ISO = re.compile(r"(?:\d{4}-\d\d-\d\d)[t ]\d\d:\d\d(?::\d\d(?:\.\d{1,6})?)?(?:z|[+-]\d\d(?::?\d\d)?)?(?![a-z0-9])")
_CLOCK = re.compile(
    r"(?:\d{1,2}[:.h]\d\d(?::\d\d)?[ \xa0]?(?:[ap]\.?m\b\.?|h(?:rs?|ours)?\b)|\d{1,2}:\d\d(?::\d\d)?|\d{1,2}h\d\d|\d{1,2}[ ]o'clock"
    r"|\d{1,4}[ \xa0]?(?:[ap]\.m\.|[ap]m\b)|\d{4}[ \xa0]?(?:hrs|hours|h|utc|gmt|z|lt)\b)(?![0-9])"
)
_MAYBE = re.compile(
    r"\d{1,2}[:/h]\d|\d{3,4}(?!\d|[,.]\d)|\d{1,2}\.\d\d[ \xa0.]?[aph.\d]|\d{1,4}[ \xa0]?(?:[ap]\.?m|h|o'c|utc|gmt|z|lt)"
    r"|\d{4}-\d|\d{1,2}(?:st|nd|rd|th)?[ -](?:of )?(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)"
)
_MONTH_ENDS = frozenset(
    ("jan", "ary", "feb", "mar", "rch", "apr", "ril", "may", "jun", "une", "jul", "uly", "aug", "ust", "sep", "ept", "ber", "oct", "nov", "dec")
) | frozenset(("an.", "eb.", "ar.", "pr.", "ug.", "ep.", "ct.", "ov.", "ec."))
_A_SLOPE = re.compile(r"\b(?:beach|slope|slopes|sloping|shelves|shelving|shore|strand|gradient|foreshore)\b")
_FOUR = re.compile(r"(?:[01]\d|2[0-3])[0-5]\d(?![\d.,:]?\d)")
_CLOCK_BEFORE = re.compile(
    r"(?:\b(?:at|by|until|till|til|from|since|around|about|lw|hw|low|high|before|after|tide|water|slack|time|now|and|to|eta|etd|lws|hws)[ :=(]{1,3}"
    r"|–|@ ?)\Z"
)
_DATE = re.compile(
    rf"(?:\d{{4}}-\d\d-\d\d|\d{{1,2}}[/.]\d{{1,2}}[/.]\d{{2,4}}|\d{{1,2}}\.\d\d\.(?= [a-z])|\d{{1,2}}(?:st|nd|rd"
    rf"|th)?[ -](?:of )?{_MONTH}\b(?:[ ,]{{1,2}}\d{{4}})?)(?![\d/])"
)
_MONTH_BEFORE = re.compile(rf"\b{_MONTH}\.? \Z")
_DAY = re.compile(r"\d{1,4}(?:st|nd|rd|th)?(?![\d.])")
_YEAR_BEFORE = re.compile(r"\b(?:in|since|of|from|before|after|until|by|built|year|summer|winter|season|a|the) \Z")
_YEAR = re.compile(r"(?:19|20)\d\d(?![\d.,:]?\d)(?!-)")
_TWELVE = frozenset({"twelve_hour"})

_D = r"\d{1,3}(?!\d)(?:[.,]\d{1,9})?[°\s-]{0,3}(?:\d{1,2}(?:[.,]\d{1,9})?['\s-]{0,3})?(?:\d{1,2}(?:[.,]\d{1,9})?[\"'\s]{0,3})?"
_PLACE = re.compile(
    rf"(?<![\w./:])(?<!\d-)(?:{_D}[NS](?:orth|outh)?[,;/\s]{{0,3}}{_D}[EW](?:est|ast)?(?![A-Za-z])|[NS][\s]?{_D}[,;/\s]{{0,3}}[EW]\s?{_D}"
    r"|-?\d{1,2}\.\d{3,9}\s?,\s?-?\d{1,3}\.\d{3,9}(?!\w|\.\d)|-?\d{1,2}\.\d{4,9}\s-?\d{1,3}\.\d{4,9}(?!\w|\.\d))"
)
_PLACE_HINT = re.compile(r"\d[°'\"\s]{0,3}[NS](?![a-z])|[NS]\s?\d|\.\d{3}")


def places(cased: str) -> list[tuple[int, int, Position]]:
    """Return the positions in a text, in order."""
    found: list[tuple[int, int, Position]] = []
    if not _PLACE_HINT.search(cased):
        return found
    for match in _PLACE.finditer(cased):
        text = match[0].rstrip()
        where = position(text)
        if isinstance(where, Position):
            found.append((match.start(), match.start() + len(text), where))
    return found


def named_hour(*, text: str, low: str, at: int) -> Mention | None:
    """Return `noon`, `midday` or `midnight` where it stands at a place, or None."""
    found = _NAMED.match(low, at)
    when = clock(found[0]) if found else None
    return Mention("clock", when, at, found.end(), text[at : found.end()]) if found and isinstance(when, Clock) else None


_NAMED = re.compile("noon|midday|midnight")


def time_at(*, text: str, low: str, at: int) -> Mention | None:
    """Return the clock time or date that begins at a digit, or None."""
    if not _MAYBE.match(low, at) and low[max(0, at - 4) : max(0, at - 1)] not in _MONTH_ENDS:
        return None
    found = _ISO.match(low, at)
    if found:
        return _clock(text, at, found.end(), low)
    found = _CLOCK.match(low, at)
    if found and _is_slope(low=low, at=at, end=found.end()):
        return None
    if found:
        return _clock(text, at, found.end(), low)
    found = _DATE.match(low, at)
    if found:
        return Mention("date", None, at, found.end(), text[at : found.end()])
    return _bare(text=text, low=low, at=at)


def _is_slope(*, low: str, at: int, end: int) -> bool:
    """Say whether `1:20` is a slope: it is, but for `at 1:20` where no beach was spoken of."""
    if not low.startswith("1:", at) or not low[end - 1].isdigit():
        return False
    return bool(_A_SLOPE.search(low, max(0, at - 30), at)) or not _CLOCK_BEFORE.search(low, max(0, at - 12), at)


def _bare(*, text: str, low: str, at: int) -> Mention | None:
    """Four digits that their neighbours make a time (`HW 1225`) or a year (`in 2026`)."""
    before = low[max(0, at - 12) : at]
    day = _DAY_OF_MONTH.match(low, at)
    if day and _ON.search(before):
        return Mention("date", None, at, day.end(), text[at : day.end()])
    found = _FOUR.match(low, at)
    if found and not _unit_follows(low, found.end()) and (_CLOCK_BEFORE.search(before) and (low[at] == "0" or not _YEAR.match(low, at))):
        return _clock(text, at, found.end(), low)
    if _MONTH_BEFORE.search(before):
        day = _DAY.match(low, at)
        if day and not _unit_follows(low, day.end()):
            return Mention("date", None, at, day.end(), text[at : day.end()])
    found = _YEAR.match(low, at)
    if found and _YEAR_BEFORE.search(before) and not _unit_follows(low, found.end()):
        return Mention("date", None, at, found.end(), text[at : found.end()])
    return None


_DAY_OF_MONTH = re.compile(
    r"(?:0?[1-9]|[12]\d|3[01])/(?:0?[1-9]|[12]\d|3[01])(?![\d/\"])(?! ?(?:of|in|inch|shackle|chain|cable|line|rope|mile|nm|m|ft)\b)"
)
_ON = re.compile(r"\b(?:on|today|tonight|yesterday|tomorrow|since|dated),? (?:the )?\Z")
_UNIT = re.compile(r" ?(?:m|metres?|meters?|ft|feet|foot|kg|lbs?|kn|knots|rpm|mm|cm|n|lbf|w|hp|'|\")(?![a-z])")


def _unit_follows(low: str, at: int) -> bool:
    return _UNIT.match(low, at) is not None


def _clock(text: str, at: int, end: int, low: str) -> Mention | None:
    said = low[at:end]
    hour = said.split(" ", 1)[0].split("o", 1)[0] if said.endswith("o'clock") else ""
    bare = said.removesuffix("utc").removesuffix("gmt").removesuffix("lt").rstrip() if said[-1] in "ct" else said
    bare = bare.removesuffix("z").rstrip() if bare[:4].isdigit() and len(bare) < 8 else bare
    found = clock(f"{hour}:00" if hour else f"0{bare}" if bare[:3].isdigit() and not bare[3:4].isdigit() else bare)
    if not isinstance(found, Clock):
        return None
    return Mention("clock", found, at, end, text[at:end], _TWELVE if hour else NO_FLAGS)
