"""Numbers without a unit: ranges and lists that have one further on, numbers of something else, and just numbers."""

import re

from anchorcalc.reader.joined import compound, partner
from anchorcalc.reader.lists import shared
from anchorcalc.reader.measured import add_measured, unit_of
from anchorcalc.reader.mention import Read
from anchorcalc.reader.scan import Scan, plain_amount
from anchorcalc.reader.unit_words import other_at

_TIMES = re.compile(r" ?x(?![\w])|[ -]times(?![a-z])")
_LABELS = re.compile(
    r"\b(?:buoy|pier|berth|no|no\.|number|mark|marker|page|flat|version|chart|channel|ch|ch\.|vhf|model|stage|day|route|slip|slot|pontoon|dock|mooring|light)"
    r"[ #]{1,2}\Z"
)
_NAME = re.compile(r"(?<![.!?:]\s)(?<![A-Za-z])[A-Z][a-zà-ÿ]{2,20} \Z")


def take_bare(*, scan: Scan, at: int, first: Read) -> int:
    """Take a number behind which no unit stands, and return where it ends."""
    if (end := _elsewhere(low=scan.low, at=at, end=first.end)) is not None:
        return scan.add(kind="other", amount=None, at=at, end=end)
    if price := _PRICE.match(scan.low, first.end):
        return scan.add(kind="money", amount=plain_amount(kind="number", low=first.value), at=at, end=price.end())
    other = other_at(low=scan.low, at=first.end)
    if other is not None or (at and scan.low[at - 1] in "$£€"):
        kind, end = other if other is not None else ("money", first.end)
        return scan.add(kind=kind, amount=plain_amount(kind="number", low=first.value), at=at, end=end)
    ranged = _range(scan=scan, at=at, first=first)
    if ranged is not None:
        return ranged
    if at >= scan.tried:
        listed, scan.tried = shared(text=scan.text, cased=scan.cased, low=scan.low, at=at, first=first, group=scan.groups)
        if listed:
            scan.groups += 1
            scan.found.extend(listed)
            return listed[-1].end
    return _alone(scan=scan, at=at, first=first)


_PRICE = re.compile(
    r" (?:an?|per|the|each) (?:lit(?:re|er)|gallon|kilo|night|day|week|can|box|bag)\b"
    r"|(?<=\.\d\d) (?:an?|per|the) (?:foot|ft|met(?:re|er)|m|fathom|yard|pound|lb|kg)\b"
)
_PHONE = re.compile(r"(?<!\d)\+?\d{2,5}(?:[ -]\d{2,5}){2,6}(?![\d.,:/]?\d| ?(?:m|ft|feet|foot|met(?:re|er)s?|fathoms?|kn|knots)\b)")
_RINGS = re.compile(r"\b(?:ring|phone|telephone|tel|mobile|call|calls|text|reach|number|mmsi)\b[^.!?;]{0,24}\Z")
_COURSE = re.compile(r"\b(?:course|heading|steering|steered|mmsi)\b[^\d.,;!?]{0,28}\Z")


def _elsewhere(*, low: str, at: int, end: int) -> int | None:
    """Return where a telephone number ends, or a course by compass."""
    phone = _PHONE.match(low, at)
    if phone and _RINGS.search(low, max(0, at - 40), at):
        return phone.end()
    return end if end - at == 3 and low[at:end].isdigit() and _COURSE.search(low, max(0, at - 44), at) else None


def _range(*, scan: Scan, at: int, first: Read) -> int | None:
    """Take a range that a bare number begins: `4 to 5 m`, `4 or 5`; None where it begins none."""
    ranged = partner(cased=scan.cased, low=scan.low, at=at, end=first.end, unit=None, value=first.value)
    if ranged is None:
        return None
    top, end, joined = ranged
    flags = first.flags | joined
    found = unit_of(scan=scan, first=Read(top, end))
    if found is None:
        amount = plain_amount(kind="number", low=min(first.value, top), high=max(first.value, top))
        return scan.add(kind="number", amount=amount, at=at, end=end, flags=flags)
    high, end = compound(cased=scan.cased, low=scan.low, value=top, unit=found[0], end=found[1])
    return add_measured(scan=scan, at=at, end=end, unit=found[0], ends=(first.value, high), flags=flags)


def _alone(*, scan: Scan, at: int, first: Read) -> int:
    """Take a number by itself, with what its neighbours say of it."""
    low, end = scan.low, first.end
    begin, value = scan.signed(at=at, value=first.value)
    flags, kind = first.flags, "number"
    label = _LABELS.search(low, max(0, at - 12), at)
    if label:
        kind = "channel" if label[0].startswith(("vhf", "ch")) and not label[0].startswith("chart") else kind
        flags = flags | {"label"}
    elif (name := _NAME.search(scan.cased, max(0, at - 24), at)) and name.start() > 1:
        flags = flags | {"after_name"}
    times = _TIMES.match(low, end)
    if times:
        end, flags = times.end(), flags | {"times"}
    elif low[end : end + 1] == "-" and low[end + 1 : end + 2].isalpha():
        flags = flags | {"compound_word"}
    return scan.add(kind=kind, amount=plain_amount(kind="number", low=value), at=begin, end=end, flags=flags)
