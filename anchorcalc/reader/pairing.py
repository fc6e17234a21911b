"""Times of low and high water that no word gives: each belongs to the height beside it, and the one that is left is the time asked about."""

import itertools

from anchorcalc.reader.fits import clock_said
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.reading import Reading

_SIDES = ("low", "high")
_FAR = 45  # characters between a height and its time


def pair_times(reading: Reading) -> None:
    """Give low and high water the times beside their heights, and the question the one time that is left, where words left that open."""
    if "low_at" not in reading.question.inputs or not _open(reading):
        return
    clocks = [token.mention for token in reading.sentence.tokens if token.mention is not None and token.mention.kind == "clock"]
    heights = {side: _height_of(reading, side) for side in _SIDES}
    if len(clocks) != len(_SIDES) + 1 or None in heights.values():
        return
    best = min(itertools.permutations(clocks, 2), key=lambda pair: sum(_gap(one, heights[side]) for one, side in zip(pair, _SIDES, strict=True)))
    if any(_gap(one, heights[side]) > _FAR for one, side in zip(best, _SIDES, strict=True)):
        return
    left = next(one for one in clocks if one not in best)
    for term, one in zip(("low_at", "high_at", "at"), (*best, left), strict=True):
        reading.asked[term] = clock_said(one)
        reading.rivals.pop(term, None)
    reading.aside = [(one, term) for one, term in reading.aside if one not in clocks]


def _open(reading: Reading) -> bool:
    """Say whether a time is wanting, or told in two ways."""
    return any(term not in reading.asked or term in reading.rivals for term in ("low_at", "high_at", "at"))


def _height_of(reading: Reading, side: str) -> Mention | None:
    """Return the mention that a height was read from."""
    value = reading.asked.get(f"{side}_height")
    found = [token.mention for token in reading.sentence.tokens if token.mention is not None and token.mention.amount == value]
    return found[0] if value is not None and len(found) == 1 else None


def _gap(one: Mention, height: Mention | None) -> int:
    assert height is not None
    return max(one.start - height.end, height.start - one.end, 0)
