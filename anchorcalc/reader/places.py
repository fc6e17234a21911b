"""Positions in a text: where the anchor lies, and where the boat was at what time."""

import re

from anchorcalc.reader.fits import clock_said
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.reading import Reading
from anchorcalc.reader.sentence import Token
from anchorcalc.units.position import Position

_ANCHOR = frozenset(("anchor", "hook", "dropped", "anchored", "drop", "let", "anchorage", "lies", "bower"))
_DROPPED, _ENDS = frozenset(("anchor", "hook", "dropped", "anchored", "drop")), frozenset(",;.)")
_NEAR = frozenset(":,=–-(@")  # between a time and the position then: `0300: 57.1752, -5.6703`
_FOUR = re.compile(r"(?:[01]\d|2[0-3])[0-5]\d\Z")


def settle_places(reading: Reading) -> None:
    """Put the positions of a text into a reading: one for the anchor, the others with their times as fixes."""
    if "anchor_at" not in reading.question.inputs:
        return
    tokens = reading.sentence.tokens
    at_of = [place for place, token in enumerate(tokens) if token.word == "<position>"]
    fixes: list[dict[str, str]] = []
    used: set[int] = set()
    start = 0
    for number, place in enumerate(at_of):
        end = at_of[number + 1] if number + 1 < len(at_of) else len(tokens)
        named = _named_behind(tokens, place)
        before, behind = tokens[start:place], tokens[place + 1 + named : end]
        _one(reading, tokens[place], (*tokens[place + 1 : place + 1 + named], *before), behind, fixes, used)
        start = place + 1 + named
    if fixes:
        reading.asked["fixes"] = fixes
    else:
        used -= _without_time(reading, at_of)
    reading.aside = [(one, term) for one, term in reading.aside if one.start not in used]
    reading.bare = {term: one for term, one in reading.bare.items() if one.start not in used}


def _one(reading: Reading, token: Token, before: tuple[Token, ...], behind: tuple[Token, ...], fixes: list[dict[str, str]], used: set[int]) -> None:
    """Take one position: with an anchor's word before it, where the anchor lies; with a time, a fix."""
    words = [one.word for one in before]
    anchor = max((at for at, word in enumerate(words) if word in _ANCHOR), default=-1)
    free = [(at, one.mention) for at, one in enumerate(before) if one.mention is not None and one.start not in used]
    times = [(at, mention) for at, mention in free if is_time(mention, near=_stands_near(words, at))]
    assert token.mention is not None
    where = written(token.mention)
    if times and times[-1][0] > anchor:
        _fix(times[-1][1], where, fixes, used)
    elif (close := _right_behind(behind)) is not None and anchor < 0:
        _fix(close, where, fixes, used)
    elif anchor >= 0 or (not times and "anchor_at" not in reading.asked):
        reading.put("anchor_at", where)
    else:
        reading.put("anchor_at", where)
    used.add(token.mention.start)


def _stands_near(words: list[str], at: int) -> bool:
    """Say whether four digits may be the time of a position: right before it, or called one: `it is 0430 and the plotter says …`."""
    return _NEAR.issuperset(words[at + 1 :]) or words[max(0, at - 2) : at] in (["it", "is"], ["time", "is"], ["now", "at"], ["is", "now"])


def _without_time(reading: Reading, at_of: list[int]) -> set[int]:
    """Of two positions without a time, one of them called the anchor's, the other is where the boat is: when is asked, and it is left aside."""
    tokens = reading.sentence.tokens
    where = [token.mention for place in at_of if (token := tokens[place]).mention is not None]
    called = [
        _named_behind(tokens, place) or _ANCHOR & {one.word for one in tokens[first:place]}
        for first, place in zip((0, *(at + 1 + _named_behind(tokens, at) for at in at_of)), at_of, strict=False)
    ]
    if len(where) != 2 or bool(called[0]) == bool(called[1]):
        return set()
    anchor, boat = where if called[0] else reversed(where)
    reading.rivals.pop("anchor_at", None)
    reading.asked["anchor_at"] = written(anchor)
    reading.open_terms["fixes"] = f"At what time was the boat at {boat.text}?"
    return {boat.start}


def _named_behind(tokens: tuple[Token, ...], place: int) -> int:
    """Return 1 where the word right behind a position tells that the anchor lies there: `57.1752, -5.6703 dropped, now …`."""
    behind = tokens[place + 1 : place + 3]
    return int(len(behind) == 2 and behind[0].word in _DROPPED and behind[1].word in _ENDS)


def _right_behind(behind: tuple[Token, ...]) -> Mention | None:
    """Return the time that stands right behind a position: `at 01:00`, `(01:00)`."""
    for token in behind[:2]:
        if token.mention is not None:
            return token.mention if token.mention.kind == "clock" else None
        if token.word not in ("at", "(", ","):
            return None
    return None


def _fix(time: Mention, where: str, fixes: list[dict[str, str]], used: set[int]) -> None:
    fixes.append({"at": clock_said(time), "position": where})
    used.add(time.start)


def is_time(mention: Mention, *, near: bool) -> bool:
    """Say whether a mention is a clock time; four digits right before a position are one."""
    return mention.kind == "clock" or (near and mention.kind == "number" and _FOUR.match(mention.text) is not None)


def written(mention: Mention) -> str:
    """Return a position as the gate takes it."""
    assert isinstance(mention.amount, Position)
    return f"{mention.amount.latitude:.9f}, {mention.amount.longitude:.9f}"
