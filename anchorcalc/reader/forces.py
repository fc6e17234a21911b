"""Winds said as a force of the Beaufort scale: `F6`, `force 5 to 6`, `6 Bft`."""

import re

from anchorcalc.reader.mention import Read
from anchorcalc.reader.numbers_said import number_at
from anchorcalc.reader.scan import Scan
from anchorcalc.units.kinds import BEAUFORT_KNOTS, UNIT, Amount

_LETTER = re.compile(r"(?:f|bft?)\.?[ -]?(\d\d?)(?:\s?(?:-|–|to|or|/|\.\.)\s?(?:f|bft)?[ ]?(\d\d?)(?![a-z0-9]|[.,:]\d))?")
_BEFORE = re.compile(r"(?:\bforce|\bbeaufort|\bbft?)[ :-]{0,2}\Z")
_BEFORES = ("force ", "beaufort ", "bft ", "bf ", "force", "beaufort", "bft", "bf", "force:", "force-", "beaufort:", "force: ", "force  ")
_AFTER = re.compile(r"[ \xa0]?(?:bft?|beaufort|on the beaufort)(?![a-z])")
_SECOND = re.compile(r"\s?(?:-|–|to|or|/|\.\.)\s?(?:force )?(?=\d{1,2}(?![\d.:])|[a-z])")
_KNOT = UNIT["kn"].factor


def take_lettered(*, scan: Scan, at: int) -> int | None:
    """Take a force such as `F6` or `Bft 5-6`, and return where it ends; None where there is none."""
    found = _LETTER.match(scan.low, at)
    return _add(scan=scan, at=at, low=int(found[1]), high=int(found[2] or found[1]), end=found.end()) if found else None


def named_before(*, low: str, at: int) -> bool:
    """Say whether the word for a force of the wind may stand right before a number."""
    return low.endswith(_BEFORES, 0, at)


def take_named(*, scan: Scan, at: int, first: Read) -> int | None:
    """Take a force such as `force six` or `6 Bft` at its number, and return where it ends; None where there is none."""
    low = scan.low
    before = _BEFORE.search(low, max(scan.last_end, at - 12), at) if named_before(low=low, at=at) else None
    after = _AFTER.match(low, first.end) if low[first.end + 1 : first.end + 2] in "beo" else None
    if not (before or after) or first.value > 99 or first.value != int(first.value):
        return None
    begin, end = before.start() if before else at, after.end() if after else first.end
    second = _SECOND.match(low, end)
    high = number_at(low=low, at=second.end()) if second else None
    if high is not None and first.value < high.value < len(BEAUFORT_KNOTS) and high.value == int(high.value):
        return _add(scan=scan, at=begin, low=int(first.value), high=int(high.value), end=high.end)
    return _add(scan=scan, at=begin, low=int(first.value), high=int(first.value), end=end)


def _add(*, scan: Scan, at: int, low: int, high: int, end: int) -> int:
    if low > high or high >= len(BEAUFORT_KNOTS):
        return scan.add(kind="other", amount=None, at=at, end=end)
    slow, fast = BEAUFORT_KNOTS[low][0], BEAUFORT_KNOTS[high][1]
    flags = {"beaufort"} | ({"no_upper_end"} if high == len(BEAUFORT_KNOTS) - 1 else set()) | ({"range"} if high > low else set())
    return scan.add(kind="speed", amount=Amount("speed", slow * _KNOT, fast * _KNOT, "kn", slow, fast, True), at=at, end=end, flags=frozenset(flags))
