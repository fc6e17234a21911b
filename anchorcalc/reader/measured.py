"""Numbers with a unit: what adds to them, the other end where it is a range, and what the writing of the unit says."""

import re

from anchorcalc.reader.context import is_preposition
from anchorcalc.reader.forces import named_before
from anchorcalc.reader.joined import compound, partner
from anchorcalc.reader.mention import NO_FLAGS, Read
from anchorcalc.reader.numbers_said import STARTERS
from anchorcalc.reader.scan import Scan
from anchorcalc.reader.unit_words import BY_WORD, si_of, unit_at
from anchorcalc.units.kinds import UNIT, Amount, Unit

_A_PULL = re.compile(r"\b(?:pull|load|force|holding|holds?|strength|break|tension|strain|wll|swl)")
_OF_A = re.compile(r" (?:of )?(?:an?|one)(?= )")
_BY = re.compile(r"\s?[x×*]\s?(?=\d)|\sby\s(?=\d)")
_BY_SIGNS = frozenset("x×*b")
_HYPHENED = ("foot", "metre", "meter", "-m", "-ft", "mil")
_PRODUCT, _UPPER_M, _AMBIGUOUS, _ADJECTIVE = (frozenset({flag}) for flag in ("product", "upper_m", "ambiguous_unit", "adjective"))


def unit_of(*, scan: Scan, first: Read) -> tuple[Unit, int] | None:
    """Return the unit behind a number and where it ends, or None where the word there is no unit in this place."""
    low = scan.low
    found = unit_at(cased=scan.cased, low=low, at=first.end)
    if found is None and "fraction" in first.flags and (of_a := _OF_A.match(low, first.end)):
        found = unit_at(cased=scan.cased, low=low, at=of_a.end())  # "2/3 of a mile"
    if found is None or _is_no_unit(scan=scan, first=first, unit=found[0], end=found[1]):
        return None
    unit, end, spelling = found
    if spelling in ("KN", "Kn") and _A_PULL.search(low, max(0, first.end - 24), end + 20):
        unit = UNIT["kN"]
    return unit, end


def _is_no_unit(*, scan: Scan, first: Read, unit: Unit, end: int) -> bool:
    low, mark = scan.low, scan.low[end - 1]
    if mark == '"':
        return (low[first.end] not in ('"', "'") and low[first.end : end] != ' "') or scan.open_quote(end - 1)
    if mark == "'":
        return low[first.end] != "'" and not low[end : end + 3].strip()[:1].isdigit()
    if unit.symbol == "in" and low[first.end] in " \xa0\n\t":
        return is_preposition(cased=scan.cased, low=low, at=end, value=first.value, fraction="fraction" in first.flags)
    if unit.symbol in ("shackle", "cable") and "fraction" in first.flags and low[end - 1] != "t":
        return _is_size(low=low, first=first, unit=unit)
    if unit.symbol in _ELSEWHERE:
        return _is_another_word(low=low, at=first.end, end=end, unit=unit)
    return unit.symbol == "lb" and low.startswith(" sterling", end)


def _is_size(*, low: str, first: Read, unit: Unit) -> bool:
    """Say whether a fraction is the size of a shackle or a chain (`7/16 shackle`), not a length (`half a shackle`, `½ cable`)."""
    quarters = (first.value * 4) % 1 == 0
    if first.value >= 1 or low.startswith((" a ", " of "), first.end) or (quarters and "spelled" in first.flags):
        return False
    return unit.symbol == "shackle" or not quarters


# Words that are units only where the text around them says so: shots of chain, horses of an engine, knots of speed.
_ELSEWHERE = frozenset(["shackle", "hp", "kn", "s"])
_OF_CHAIN = re.compile(
    r"\b(?:chain|cables?|rode|decks?|anchor\w*|water|veer\w*|out|scope|hawse\w*|let|fathoms?|depth|deep|bitter|windlass|wind|roller|mud)\b"
)
_OF_AN_ENGINE = re.compile(r"\b(?:prop\w*|engine|outboard|motor|astern|diesel|inboard|full|back\w*|rpm|revs|pull|boat)\b")
_MOVES = re.compile(
    r"\b(?:current|stream|tid\w+|drift\w*|set(?:s|ting)?|ebb\w*|flood\w*|half|winds?|breeze|blow\w*|speed|moving|making|going|run(?:s|ning)?"
    r"|carr\w+|down on)\b"
)
_TIED = re.compile(r"\b(?:ties?|tied|tying)\b")
_IN_A_ROPE = re.compile(
    r" (?:in|on|along) (?:the|my|our|a) (?:line|rope|rode|warp|cord|string|lead)\b| every (?:\d|one\b|two\b|five\b|ten\b|fathom|metre|meter)"
)


def _is_another_word(*, low: str, at: int, end: int, unit: Unit) -> bool:
    """Say whether `shots`, `horses`, `knots` or `second` behind a number is no unit here."""
    word, around = low[at:end].strip(" -"), low[max(0, at - 60) : end + 60]
    if unit.symbol == "s":
        return (end == at + 1 and low[at - 1] == "0") or low.startswith(("-hand", " hand"), end)  # "the 90s"; "second-hand"
    if word.startswith("shot"):
        return _OF_CHAIN.search(around) is None
    if word.startswith("horse") and len(word) < len("horsepower"):
        return _OF_AN_ENGINE.search(around) is None
    if word == "knot" and not low[at - 1].isdigit():
        return _MOVES.search(around) is None  # `a knot that can be undone`
    return word == "knots" and (_TIED.search(low, max(0, at - 20), at) is not None or _IN_A_ROPE.match(low, end) is not None)


# Units as most are written: small letters, nothing special about them; and the words behind them that may make more of it.
_UNITS_PLAINLY = {
    word: next(unit for spelling, unit in BY_WORD[word] if spelling == word)
    for word in ("m", "metres", "meters", "metre", "mm", "cm", "ft", "feet", "fathoms", "kn", "knots", "kg")
}
_LONGER = {spelling.split(" ")[1] for word in _UNITS_PLAINLY for spelling, _ in BY_WORD[word] if " " in spelling}
_MAY_GO_ON = STARTERS | _LONGER | {"to", "up", "through", "thru", "or", "and", "until", "till"}
_PLAINLY = re.compile(
    rf"((?:0|[1-9]\d{{0,3}})(?:\.\d{{1,2}})?) ?({'|'.join(sorted(_UNITS_PLAINLY, key=len, reverse=True))})"
    r"(?:,? ([a-z]+)|[.;:?!)](?=[ \n]|\Z)|\Z)"
)


def take_plainly(*, scan: Scan, at: int) -> int | None:
    """Take a number with its unit where both are as plain as most, and return where it ends; None where more must be looked at."""
    found = _PLAINLY.match(scan.low, at)
    if found is None or found[3] in _MAY_GO_ON or not scan.cased.startswith(found[2], found.start(2)) or named_before(low=scan.low, at=at):
        return None
    unit, end, value = _UNITS_PLAINLY[found[2]], found.end(2), float(found[1])
    if unit.symbol in _ELSEWHERE and _is_another_word(low=scan.low, at=found.end(1), end=end, unit=unit):
        return None
    at, value = scan.signed(at=at, value=value)
    return add_measured(scan=scan, at=at, end=end, unit=unit, ends=(value, value), flags=NO_FLAGS)


def take_measured(*, scan: Scan, at: int, first: Read, unit: Unit, end: int) -> int:
    """Take a number with its unit, what adds to it, and the other end where it is a range; return where it ends."""
    value, end = compound(cased=scan.cased, low=scan.low, value=first.value, unit=unit, end=end)
    at, value = scan.signed(at=at, value=value)
    other = partner(cased=scan.cased, low=scan.low, at=at, end=end, unit=unit, value=value)
    if other is None:
        return add_measured(scan=scan, at=at, end=end, unit=unit, ends=(value, value), flags=first.flags)
    top, end, joined = other
    return add_measured(scan=scan, at=at, end=end, unit=unit, ends=(value, top), flags=first.flags | joined)


def add_measured(*, scan: Scan, at: int, end: int, unit: Unit, ends: tuple[float, float], flags: frozenset[str]) -> int:
    """Add a quantity from one end to the other, in either order, and return where it ends in the text."""
    bottom, top = ends if ends[0] <= ends[1] else ends[::-1]
    if scan.quoted:
        scan.inches_taken(at=at, end=end)
    flags = flags | _written(text=scan.text[at:end], unit=unit)
    if at == scan.by:
        flags = flags | _PRODUCT
    if scan.low[end : end + 2].strip()[:1] in _BY_SIGNS and (by := _BY.match(scan.low, end)):
        scan.by = by.end()
        flags = flags | _PRODUCT
    si = si_of(value=bottom, unit=unit)
    amount = Amount(unit.kind, si, si if bottom == top else si_of(value=top, unit=unit), unit.symbol, bottom, top)
    return scan.add(kind=unit.kind, amount=amount, at=at, end=end, flags=flags)


def _written(*, text: str, unit: Unit) -> frozenset[str]:
    """Return what the writing of a unit says beside its size."""
    if unit.symbol == "ton" or (unit.symbol in ("kn", "kN") and text.endswith(("KN", "Kn"))):
        return _AMBIGUOUS
    if unit.symbol == "m" and text.endswith("M"):
        return _UPPER_M
    return _ADJECTIVE if text.endswith(("footer", "footers")) or ("-" in text and text.endswith(_HYPHENED)) else NO_FLAGS
