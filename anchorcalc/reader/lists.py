"""Lists whose items share the last one's unit: `10, 20 and 40 m`, `10,20,40 m`."""

import re

from anchorcalc.reader.mention import Mention, Read
from anchorcalc.reader.numbers_said import number_at
from anchorcalc.reader.unit_words import si_of, unit_at
from anchorcalc.units.kinds import Amount, Unit

_MARK = re.compile(r"\s?,\s?(?:and |& |or )?|\s(?:and|&)\s|\s?;\s?")
_BY = re.compile(r"\s?[x×*]\s?(?=\d)|[\s-]by[\s-]")
_TIGHT = re.compile(r"\d{1,4}(?:,\d{1,4}){2,}(?![\d,])")
_SPACED = re.compile(r"(?:\d+(?:\.\d+)? ){2,40}\d+(?:\.\d+)?(?![\d/.:])")  # `marks at 5 10 15 20 m`
_DECIMAL = re.compile(r"\d+(?:\.\d+)?")
_OF_MARKS = re.compile(r"\b(?:mark|tag|knot|ribbon|leather|rag|band|stripe|label|tie)s?\b[^.;:?!]*\Z")
_DIGITS = re.compile(r"\d+")
_GROUPS = re.compile(r"\d{1,3}(?:,\d{3})+\Z")
_NO_UNIT_OF_ITS_OWN = re.compile(r"\b(?:scope|scope of|ratio of|multiple of|scope is|factor of|mark|marks) \Z")
_LIST, _SHARED, _PRODUCT = frozenset({"list"}), frozenset({"shared_unit"}), frozenset({"product"})
MOST = 500


def shared(*, text: str, cased: str, low: str, at: int, first: Read, group: int) -> tuple[list[Mention], int]:
    """Return the items of a list that begins with a bare number and ends with one that has a unit, and how far was looked.

    No item where it is none; no list can begin before the place that was looked to then.
    """
    items, flags = [(at, first.end, first.value)], _LIST
    tight = _TIGHT.match(low, at)
    if tight and not _GROUPS.match(tight[0]):
        items = [(found.start(), found.end(), float(found[0])) for found in _DIGITS.finditer(low, at, tight.end())]
        unit = unit_at(cased=cased, low=low, at=tight.end())
    elif _OF_MARKS.search(low, max(0, at - 40), at) and (spaced := _SPACED.match(low, at)):
        items = [(found.start(), found.end(), float(found[0])) for found in _DECIMAL.finditer(low, at, spaced.end())]
        unit = unit_at(cased=cased, low=low, at=spaced.end())
    elif _BY.match(low, first.end):
        unit = _follow(cased=cased, low=low, items=items, mark_of=_BY)
        flags = _PRODUCT
    else:
        unit = _follow(cased=cased, low=low, items=items, mark_of=_MARK)
    looked = items[-1][1]
    if unit is None or len(items) < 2 or (len(items) == 2 and _NO_UNIT_OF_ITS_OWN.search(low, max(0, at - 14), at)):
        return [], looked
    return _mentions(text=text, items=items, unit=unit[0], last_end=unit[1], group=group, flags=flags), looked


def _follow(*, cased: str, low: str, items: list[tuple[int, int, float]], mark_of: re.Pattern[str]) -> tuple[Unit, int, str] | None:
    """Add the further items to the first one; return the unit of the last, or None where it has none."""
    for _ in range(MOST):
        mark = mark_of.match(low, items[-1][1])
        if not mark:
            return None
        number = number_at(low=low, at=mark.end())
        if number is None:
            return None
        items.append((mark.end(), number.end, number.value))
        unit = unit_at(cased=cased, low=low, at=number.end)
        if unit is not None:
            return unit if len(items) > 2 or not {",", ";"} & set(mark[0]) or "and" in mark[0] else None
    return None


def _mentions(*, text: str, items: list[tuple[int, int, float]], unit: Unit, last_end: int, group: int, flags: frozenset[str]) -> list[Mention]:
    found: list[Mention] = []
    for begin, number_end, value in items:
        last = begin == items[-1][0]
        end = last_end if last else number_end
        si = si_of(value=value, unit=unit)
        amount = Amount(unit.kind, si, si, unit.symbol, value, value)
        found.append(Mention(unit.kind, amount, begin, end, text[begin:end], flags if last else flags | _SHARED, group))
    return found
