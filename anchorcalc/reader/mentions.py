"""Every quantity, number, time and place of a text, in order and without overlap: the scan."""

import re

from anchorcalc.reader.context import around, is_preposition
from anchorcalc.reader.joined import compound, partner, ratio_at, ratios_at
from anchorcalc.reader.lists import shared
from anchorcalc.reader.mention import NO_FLAGS, Mention, Read
from anchorcalc.reader.numbers_said import number_at
from anchorcalc.reader.times import places, time_at
from anchorcalc.reader.unit_words import other_at, si_of, unit_at
from anchorcalc.units.kinds import BEAUFORT_KNOTS, UNIT, Amount, Unit
from anchorcalc.units.numbers import plain

_WORDS = (
    "zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen"
    "|twenty|thirty|fou?rty|fifty|sixty|seventy|eighty|ninety|hundred|thousand|million|half|quarter|couple|dozen"
    "|point(?= (?:one|two|three|four|five|six|seven|eight|nine|zero)(?![a-z]))"
)
_ARTICLE = r"an? (?=(?:f(?:oo|ee)t|met(?:re|er)|fathom|yard|inch|kilomet(?:re|er)|mile|nautical mile|knot|kilo|cable (?:off|from|away|of)|cable's|light year|pound of|hour|kilogram|ounce|tonne)\b)"
_A_HUNDRED = "an? (?=(?:hundred|thousand|million|billion|dozen|half|quarter|third of|couple|eighth of|tenth of)(?![a-z]))"
_START = re.compile(rf"(?<![a-z0-9_])(?:\.?\d|[¼½¾⅐-⅞]|(?:f|bft)\.?[ -]?\d\d?(?![a-z0-9]|[.,]\d)|(?:{_WORDS})(?![a-z])|{_A_HUNDRED}|{_ARTICLE}|(?:noon|midday|midnight)\b)|[¼½¾⅐-⅞]|(?<=[0-9'\" ]x)\d")
_FORCE = re.compile(r"(?:f|bft)\.?[ -]?(\d\d?)(?:\s?(?:-|–|to|or|/|\.\.)\s?(?:f|bft)?[ ]?(\d\d?)(?![a-z0-9]|[.,:]\d))?")
_FORCE_BEFORE = re.compile(r"(?:\bforce|\bbeaufort|\bbft)[ :-]{0,2}\Z")
_FORCES = ("force ", "beaufort ", "bft ", "force", "beaufort", "bft", "force:", "force-", "beaufort:", "force: ", "force  ")
_FORCE_AFTER = re.compile(r"[ \xa0]?(?:bft|beaufort|on the beaufort)(?![a-z])")
_ORDINAL = re.compile(r"(?:st|nd|rd|th)(?![a-z])")
_KNOT = UNIT["kn"].factor


class _Scan:
    """The state of one pass through a text."""

    def __init__(self, text: str) -> None:
        self.text, self.cased = text, plain(text)
        self.low = self.cased.lower() if text.isascii() else self.cased.translate(_LOWER)
        self.found: list[Mention] = []
        self.by = -1  # where the second side of a product begins
        self.groups, self.tried = 0, 0  # lists found; how far a list was looked for in vain
        self.quoted = '"' in self.low
        self.quotes, self.counted = 0, 0  # quotation marks so far that were no inches

    def open_quote(self, at: int) -> bool:
        """Say whether a quotation mark at a place closes one that was opened before."""
        self.quotes += self.low.count('"', self.counted, at)
        self.counted = at
        return self.quotes % 2 == 1

    def inches_taken(self, start: int, end: int) -> None:
        """Pass over the marks of inches that were taken."""
        if self.counted < start:
            self.open_quote(start)
        self.counted = max(self.counted, end)


_LOWER = {code: code + 32 for code in range(65, 91)} | {0xC5: "å", 0xC4: "ä", 0xD6: "ö"}


def mentions(text: str) -> tuple[Mention, ...]:
    """Return all that a text mentions, in order and without overlap; any text, in time that grows with its length."""
    scan = _Scan(text)
    waiting = places(scan.cased)[::-1]
    low, at, find = scan.low, 0, _START.search
    while True:
        start = find(low, at)
        if waiting and (start is None or waiting[-1][0] <= start.start()):
            begin, end, where = waiting.pop()
            if begin < at:
                continue
            at = end
            scan.found.append(Mention("position", where, begin, at, text[begin:at]))
            continue
        if start is None:
            return tuple(scan.found)
        at = _take(scan=scan, at=start.start())


def _take(*, scan: _Scan, at: int) -> int:
    """Take what begins at a place, and return where to look on."""
    low, sign = scan.low, scan.low[at]
    if sign in "0123456789":
        time = time_at(text=scan.text, low=low, at=at)
        if time is not None:
            scan.found.append(time)
            return time.end
    elif sign in "fb" and _FORCE.match(low, at):
        return _force(scan=scan, at=at)
    elif sign in "nm" and (time := _named_hour(scan=scan, at=at)) is not None:
        scan.found.append(time)
        return time.end
    first = number_at(low=low, at=at)
    if first is None:
        return _article(scan=scan, at=at)
    return _number(scan=scan, at=at, first=first)


def _named_hour(*, scan: _Scan, at: int) -> Mention | None:
    from anchorcalc.units.clock import Clock, clock

    for word in ("noon", "midday", "midnight"):
        if scan.low.startswith(word, at):
            found = clock(word)
            return Mention("clock", found, at, at + len(word), scan.text[at : at + len(word)]) if isinstance(found, Clock) else None
    return None


def _article(*, scan: _Scan, at: int) -> int:
    """`a fathom`: one of a unit."""
    low = scan.low
    begin = at + (2 if low.startswith("a ", at) else 3)
    if not low.startswith(("a ", "an "), at):
        return _past_word(low=low, at=at)
    unit = unit_at(cased=scan.cased, low=low, at=begin)
    if unit is None:
        return begin
    read = Read(1.0, unit[1], frozenset({"article"}))
    if low.startswith(" or two", unit[1]):
        return _add(scan=scan, at=at, end=unit[1] + 7, unit=unit[0], low_value=1.0, high_value=2.0, flags=_ONE_OR_TWO)
    return _measure(scan=scan, at=at, first=read, unit=unit[0], end=unit[1])


def _past_word(*, low: str, at: int) -> int:
    end = at + 1
    while end < len(low) and low[end].isalnum() and low[at].isalpha():
        end += 1
    return end


def _force(*, scan: _Scan, at: int) -> int:
    found = _FORCE.match(scan.low, at)
    assert found is not None
    return _beaufort(scan=scan, at=at, low=int(found[1]), high=int(found[2] or found[1]), end=found.end())


def _beaufort(*, scan: _Scan, at: int, low: int, high: int, end: int) -> int:
    if low > high or high >= len(BEAUFORT_KNOTS):
        scan.found.append(Mention("other", None, at, end, scan.text[at:end]))
        return end
    slow, fast = BEAUFORT_KNOTS[low][0], BEAUFORT_KNOTS[high][1]
    flags = {"beaufort"} | ({"no_upper_end"} if high == 12 else set()) | ({"range"} if high > low else set())
    amount = Amount("speed", slow * _KNOT, fast * _KNOT, "kn", slow, fast, True)
    scan.found.append(Mention("speed", amount, at, end, scan.text[at:end], frozenset(flags) | around(low=scan.low, start=at, end=end)))
    return end


def _number(*, scan: _Scan, at: int, first: Read) -> int:
    """Take a number and what it belongs to: a ratio, a force of the wind, a unit, a list, or nothing."""
    low = scan.low
    ratios = ratios_at(low=low, at=at, first=first)
    if ratios is not None:
        top, end, joined = ratios
        amount = Amount("ratio", first.value, top, "", first.value, top)
        scan.found.append(Mention("ratio", amount, at, end, scan.text[at:end], first.flags | joined | around(low=low, start=at, end=end)))
        return end
    ratio = ratio_at(low=low, first=first)
    if ratio is not None:
        flags = first.flags | around(low=low, start=at, end=ratio.end)
        scan.found.append(Mention("ratio", _plain_amount("ratio", ratio.value), at, ratio.end, scan.text[at : ratio.end], flags))
        return ratio.end
    before = _FORCE_BEFORE.search(low, max(scan.found[-1].end if scan.found else 0, at - 12), at) if low.endswith(_FORCES, 0, at) else None
    after = _FORCE_AFTER.match(low, first.end) if low[first.end + 1 : first.end + 2] in "beo" else None
    if (before or after) and first.value == int(min(first.value, 99)):
        return _named_force(scan=scan, at=at, begin=before.start() if before else at, first=first, end=after.end() if after else first.end)
    if low[first.end : first.end + 1].isalpha():
        ordinal = _ORDINAL.match(low, first.end)
        if ordinal:
            scan.found.append(Mention("ordinal", None, at, ordinal.end(), scan.text[at : ordinal.end()]))
            return ordinal.end()
    found = unit_at(cased=scan.cased, low=low, at=first.end)
    if found is not None and found[0].symbol == "kn" and scan.cased[found[1] - 2 : found[1]] in ("KN", "Kn") and _A_PULL.search(low, max(0, at - 24), found[1] + 20):
        found = (UNIT["kN"], found[1], found[2])
    if found is None and "fraction" in first.flags and (of_a := _OF_A.match(low, first.end)):
        found = unit_at(cased=scan.cased, low=low, at=of_a.end())
    if found is not None and not _no_unit(scan=scan, first=first, unit=found[0], end=found[1]):
        return _measure(scan=scan, at=at, first=first, unit=found[0], end=found[1])
    return _bare(scan=scan, at=at, first=first)


_A_PULL = re.compile(r"\b(?:pull|load|force|holding|holds?|strength|break|tension|strain|wll|swl)")
_OF_A = re.compile(r" (?:of )?(?:an?|one)(?= )")


def _no_unit(*, scan: _Scan, first: Read, unit: Unit, end: int) -> bool:
    """Say whether the word behind a number is not the unit that it looks like."""
    low, mark = scan.low, scan.low[end - 1]
    if mark == '"':
        return low[first.end : first.end + 1] != '"' and not low[first.end : end] == ' "' or scan.open_quote(end - 1)
    if mark == "'":
        return low[first.end] != "'" and not low[end : end + 3].strip()[:1].isdigit()
    if unit.symbol == "in" and low[first.end] in " \xa0\n\t":
        return is_preposition(low=low, at=end, value=first.value, fraction="fraction" in first.flags)
    if unit.symbol == "s" and low[end - 1] == "s" and end == first.end + 1:
        return first.value >= 10 and first.value % 10 == 0
    return False


def _named_force(*, scan: _Scan, at: int, begin: int, first: Read, end: int) -> int:
    found = _SECOND_FORCE.match(scan.low, end)
    high = number_at(low=scan.low, at=found.end()) if found else None
    if high is not None and first.value < high.value <= 12 and high.value == int(high.value):
        return _beaufort(scan=scan, at=begin, low=int(first.value), high=int(high.value), end=high.end)
    return _beaufort(scan=scan, at=begin, low=int(first.value), high=int(first.value), end=end)


_SECOND_FORCE = re.compile(r"\s?(?:-|–|to|or|/|\.\.)\s?(?:force )?(?=\d{1,2}(?![\d.:])|[a-z])")


def _plain_amount(kind: str, value: float) -> Amount:
    return Amount(kind, value, value, "", value, value)


def _measure(*, scan: _Scan, at: int, first: Read, unit: Unit, end: int) -> int:
    """Take a number with its unit, what adds to it, and the other end where it is a range."""
    value, end = compound(cased=scan.cased, low=scan.low, value=first.value, unit=unit, end=end)
    at, value = _signed(low=scan.low, at=at, value=value)
    other = partner(cased=scan.cased, low=scan.low, at=at, end=end, unit=unit, value=value)
    top, flags = value, first.flags
    if other is not None:
        top, end, joined = other
        flags = flags | joined
    return _add(scan=scan, at=at, end=end, unit=unit, low_value=min(value, top), high_value=max(value, top), flags=flags)


def _add(*, scan: _Scan, at: int, end: int, unit: Unit, low_value: float, high_value: float, flags: frozenset[str]) -> int:
    amount = Amount(unit.kind, si_of(value=low_value, unit=unit), si_of(value=high_value, unit=unit), unit.symbol, low_value, high_value)
    if scan.quoted:
        scan.inches_taken(at, end)
    text = scan.text[at:end]
    flags = flags | around(low=scan.low, start=at, end=end) | _of_unit(text=text, unit=unit)
    if at == scan.by:
        flags = flags | _PRODUCT
    if scan.low[end : end + 2].strip()[:1] in _TIMES_SIGNS and (by := _BY.match(scan.low, end)):
        scan.by = by.end()
        flags = flags | _PRODUCT
    scan.found.append(Mention(unit.kind, amount, at, end, text, flags))
    return end


_BY = re.compile(r"\s?[x×*]\s?(?=\d)|\sby\s(?=\d)")
_TIMES_SIGNS = frozenset("x×*b")
_PRODUCT = frozenset({"product"})
_ONE_OR_TWO = frozenset({"article", "about", "range"})
_UPPER_M = frozenset({"upper_m"})
_AMBIGUOUS = frozenset({"ambiguous_unit"})
_ADJECTIVE = frozenset({"adjective"})


def _of_unit(*, text: str, unit: Unit) -> frozenset[str]:
    if unit.symbol == "ton" or (unit.symbol in ("kn", "kN") and text.endswith(("KN", "Kn"))):
        return _AMBIGUOUS
    if unit.symbol == "m" and text.endswith("M"):
        return _UPPER_M
    return _ADJECTIVE if text.endswith(("footer", "footers")) or ("-" in text and text.endswith(("foot", "metre", "meter", "-m", "-ft", "mil"))) else NO_FLAGS


def _signed(*, low: str, at: int, value: float) -> tuple[int, float]:
    """Return the place and value with a minus sign before it, where that is no hyphen."""
    if low.endswith(("minus ", "negative "), 0, at):
        return at - (6 if low.endswith("minus ", 0, at) else 9), -value
    if at and low[at - 1] == "-" and (at == 1 or low[at - 2] in " (=:\n\t,\xa0"):
        return at - 1, -value
    return at, value


def _bare(*, scan: _Scan, at: int, first: Read) -> int:
    """Take a number without a unit: a range or a list that has one further on, something else's number, or just a number."""
    low = scan.low
    other = other_at(low=low, at=first.end)
    if other is not None or (at and low[at - 1] in "$£€"):
        kind, end = other if other is not None else ("money", first.end)
        scan.found.append(Mention(kind, _plain_amount("number", first.value), at, end, scan.text[at:end]))
        return end
    ranged = partner(cased=scan.cased, low=low, at=at, end=first.end, unit=None, value=first.value)
    if ranged is not None:
        top, end, flags = ranged
        found = unit_at(cased=scan.cased, low=low, at=end)
        if found is not None and not _no_unit(scan=scan, first=Read(top, end), unit=found[0], end=found[1]):
            high, end = compound(cased=scan.cased, low=low, value=top, unit=found[0], end=found[1])
            return _add(scan=scan, at=at, end=end, unit=found[0], low_value=min(first.value, high), high_value=max(first.value, high), flags=flags | first.flags)
        amount = Amount("number", min(first.value, top), max(first.value, top), "", min(first.value, top), max(first.value, top))
        scan.found.append(Mention("number", amount, at, end, scan.text[at:end], flags | first.flags | around(low=low, start=at, end=end)))
        return end
    listed: list[Mention] = []
    if at >= scan.tried:
        listed, scan.tried = shared(text=scan.text, cased=scan.cased, low=low, at=at, first=first, group=scan.groups)
    if listed:
        scan.groups += 1
        scan.found.extend(listed)
        return listed[-1].end
    return _alone(scan=scan, at=at, first=first)


_TIMES = re.compile(r" ?x(?![\w])|[ -]times(?![a-z])")
_LABELS = re.compile(r"\b(?:buoy|pier|berth|no|no\.|number|mark|marker|page|flat|version|chart|channel|ch|ch\.|vhf|model|stage|day|route|slip|pontoon|dock|mooring|light)[ #]{1,2}\Z")
_NAME = re.compile(r"(?<![.!?:]\s)(?<![A-Za-z])[A-Z][a-zà-ÿ]{2,20} \Z")


def _alone(*, scan: _Scan, at: int, first: Read) -> int:
    begin, value = _signed(low=scan.low, at=at, value=first.value)
    flags, kind = first.flags | around(low=scan.low, start=at, end=first.end), "number"
    label = _LABELS.search(scan.low, max(0, at - 12), at)
    if label:
        kind = "channel" if label[0].startswith(("vhf", "ch")) and not label[0].startswith("chart") else kind
        flags = flags | {"label"}
    elif (name := _NAME.search(scan.cased, max(0, at - 24), at)) and name.start() > 1:
        flags = flags | {"after_name"}
    times = _TIMES.match(scan.low, first.end)
    if times:
        flags = flags | {"times"}
    elif scan.low[first.end : first.end + 1] == "-" and scan.low[first.end + 1 : first.end + 2].isalpha():
        flags = flags | {"compound_word"}
    end = times.end() if times else first.end
    scan.found.append(Mention(kind, _plain_amount("number", value), begin, end, scan.text[begin:end], flags))
    return end
