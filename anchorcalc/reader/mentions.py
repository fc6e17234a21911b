"""Every quantity, number, time and place of a text, in order and without overlap: the scan."""

import re

from anchorcalc.reader.bare import take_bare
from anchorcalc.reader.forces import take_lettered, take_named
from anchorcalc.reader.joined import ratio_at, ratios_at
from anchorcalc.reader.measured import add_measured, take_measured, take_plainly, unit_of
from anchorcalc.reader.mention import Mention, Read
from anchorcalc.reader.numbers_said import number_at
from anchorcalc.reader.scan import Scan, plain_amount
from anchorcalc.reader.times import named_hour, places, time_at
from anchorcalc.reader.unit_words import unit_at

_WORDS = (  # one to nineteen, the tens, hundred and so on, by first letter: the search tries them at every word of a text
    "zero|n(?:ought|aught|ine(?:teen|ty)?|oon)|one|t(?:wo|h(?:ree|irteen|irty|ousand)|en|welve|wenty)|f(?:our(?:teen)?|ive|ifteen|ou?rty|ifty)"
    "|s(?:ix(?:teen|ty)?|even(?:teen|ty)?)|e(?:ight(?:een|y)?|leven)|h(?:undred|alf)|mi(?:llion|dday|dnight)|quarter|couple|dozen"
    "|point(?= (?:one|two|three|four|five|six|seven|eight|nine|zero|nought)(?![a-z]))"
)
_A_UNIT = (
    "(?:other)? (?=(?:f(?:oo|ee)t|met(?:re|er)|fathom|yard|inch|kilomet(?:re|er)|mile|nautical mile|light year"
    "|cable (?:off|from|away|of|and a (?:half|quarter))|cable's"
    "|knot(?! (?:each|every|at|in|tied|per|for|on))|kilo|kilogram|pound of|ounce|tonne|hour)(?![a-z]))"
)
_A_HUNDRED = (
    " (?=(?:hundred|thousand|million|billion|dozen|half|quarter|couple|(?:third|fourth|fifth|eighth|tenth|twelfth|sixteenth|hundredth|thousandth) of)"
    "(?![a-z]))"
)
_FORCE = r"(?:f|bft?)\.?[ -]?\d\d?(?![a-z0-9]|[.,]\d)"
_NAMES = "bow out rode depth boat wind tide scope chain draught beam loa rise fall"  # `bow1m`
_RUN_ON = r"(?=\d)(?:" + "|".join(rf"(?<=\b{name})" for name in _NAMES.split()) + r")\d"
_START = re.compile(rf"(?<![a-z0-9_])(?:\.?\d|{_FORCE}|(?:{_WORDS})(?![a-z])|an?(?:{_A_HUNDRED}|{_A_UNIT}))|[¼½¾⅐-⅞]|(?<=[0-9'\" ]x)\d|{_RUN_ON}")
_ORDINAL_BEGINS = frozenset("snrt")
_ORDINAL = re.compile(r"(?:st|nd|rd|th)(?![a-z])")
_ARTICLE = frozenset({"article"})
_ANOTHER = frozenset({"article", "another"})
_ONE_OR_TWO = frozenset({"article", "about", "range"})


def mentions(text: str) -> tuple[Mention, ...]:
    """Return all that a text mentions, in order and without overlap; any text, in time that grows with its length."""
    scan = Scan(text)
    waiting = places(scan.cased)[::-1]
    low, at, find = scan.low, 0, _START.search
    while True:
        start = find(low, at)
        if waiting and (start is None or waiting[-1][0] <= start.start()):
            begin, end, where = waiting.pop()
            if begin >= at:
                at = end
                scan.found.append(Mention("position", where, begin, at, text[begin:at]))
        elif start is None:
            return tuple(scan.found)
        else:
            at = _take(scan=scan, at=start.start())


def _take(*, scan: Scan, at: int) -> int:
    """Take what begins at a place, and return where to look on."""
    low, sign = scan.low, scan.low[at]
    time = None
    if sign.isdigit():
        time = time_at(text=scan.text, low=low, at=at)
    elif sign in "nm":
        time = named_hour(text=scan.text, low=low, at=at)
    elif sign in "fb" and (force := take_lettered(scan=scan, at=at)) is not None:
        return force
    if time is not None:
        scan.found.append(time)
        return time.end
    if sign.isdigit() and (plainly := take_plainly(scan=scan, at=at)) is not None:
        return plainly
    first = number_at(low=low, at=at)
    if first is not None:
        return _number(scan=scan, at=at, first=first)
    return _one_unit(scan=scan, at=at) if sign == "a" else at + 1


def _one_unit(*, scan: Scan, at: int) -> int:
    """Take `a fathom`, one of a unit, or `a fathom or two`."""
    begin = scan.low.index(" ", at) + 1
    flags = _ANOTHER if begin - at > len("an ") else _ARTICLE
    found = unit_at(cased=scan.cased, low=scan.low, at=begin)
    if found is None:
        return begin
    unit, end, _ = found
    if scan.low.startswith(" or two", end):
        return add_measured(scan=scan, at=at, end=end + len(" or two"), unit=unit, ends=(1.0, 2.0), flags=_ONE_OR_TWO)
    return take_measured(scan=scan, at=at, first=Read(1.0, end, flags), unit=unit, end=end)


def _number(*, scan: Scan, at: int, first: Read) -> int:
    """Take a number and what it belongs to: a ratio, a force of the wind, an ordinal, a unit, a list, or nothing."""
    low = scan.low
    ratios = ratios_at(low=low, at=at, first=first)
    if ratios is not None:
        top, end, joined = ratios
        return scan.add(kind="ratio", amount=plain_amount(kind="ratio", low=first.value, high=top), at=at, end=end, flags=first.flags | joined)
    ratio = ratio_at(low=low, at=at, first=first)
    if ratio is not None:
        return scan.add(kind="ratio", amount=plain_amount(kind="ratio", low=ratio.value), at=at, end=ratio.end, flags=first.flags)
    force = take_named(scan=scan, at=at, first=first)
    if force is not None:
        return force
    if low[first.end : first.end + 1] in _ORDINAL_BEGINS and (ordinal := _ORDINAL.match(low, first.end)):
        return scan.add(kind="ordinal", amount=None, at=at, end=ordinal.end())
    found = unit_of(scan=scan, first=first)
    if found is None:
        return take_bare(scan=scan, at=at, first=first)
    return take_measured(scan=scan, at=at, first=first, unit=found[0], end=found[1])
