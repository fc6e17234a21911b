"""Marks on the rode: a list of them, and where they count from."""

import itertools
import re

from anchorcalc.reader.fits import with_unit
from anchorcalc.reader.marks_from import SPEAKS, marks_from
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.reading import Reading
from anchorcalc.units.kinds import Amount
from anchorcalc.vocabulary import TERMS


def settle_marks(reading: Reading) -> None:
    """Put the marks of a text into a reading: a list where several lengths are marks, and where they count from."""
    takes = reading.question.inputs
    if "marks" not in takes and "mark_interval" not in takes:
        return
    _list(reading)
    _asked_of_marks(reading)
    if "marks_from" not in takes:
        return
    found = marks_from(reading.sentence.line)
    if len(found) == 1:
        reading.put("marks_from", found.pop())
    elif found or (SPEAKS.search(reading.sentence.line) and not {"marks", "mark_interval"}.isdisjoint(reading.asked)):
        reading.open_terms["marks_from"] = TERMS["marks_from"].prompt


_WHICH_MARK = re.compile(
    r" (?:which|what)(?: of (?:my|the|our))?(?: (?:mark|tag|ribbon|flag|band|ring|knot|tie|tab|rag|stripe|leather|colour|paint|tape|whipping|one)s?)+"
    r"(?: (?:is|for|at|gives|means|shows|says|to|get|do|i|we|stop|at|wanted|watch|will|be|has|makes|the))* $"
)
_OF_THE_WATER = frozenset("of deep depth water here sounding high scope".split())
_BY_SCOPE = frozenset(("scope", "bow_height", "tide_rise"))


def _asked_of_marks(reading: Reading) -> None:
    """`Which mark for 110 ft?`: the length that is asked of the marks themselves is what is to go out, unless it is said to be the water."""
    at_depth = reading.sources.get("depth", (-1, 0.0))[0]
    tokens = reading.sentence.tokens
    for at, token in enumerate(tokens):
        behind = tokens[at + 1].word if at + 1 < len(tokens) else ""
        if token.word != "<length>" or token.mention is None or token.mention.group >= 0 or behind in _OF_THE_WATER:
            continue
        free = token.start == at_depth or any(one.start == token.start for one, _ in reading.aside)
        asked = _WHICH_MARK.search(f" {' '.join(one.word for one in tokens[:at])} ")
        if asked and isinstance(reading.asked.get("marks"), list) and reading.sources.get("mark_interval", (-1, 0.0))[0] == token.start:
            del reading.asked["mark_interval"], reading.sources["mark_interval"]
            free = True
        held = {*reading.asked, *reading.bare}
        if asked and _BY_SCOPE & held and "depth" not in held and reading.sources.get("rode_out", (-1, 0.0))[0] == token.start:
            reading.asked["depth"] = reading.asked.pop("rode_out")  # with a scope or a bow height it is the water
            return
        if asked and free and "rode_out" in reading.question.inputs and not {"rode_out", *_BY_SCOPE} & held:
            if token.start == at_depth and "depth" not in reading.rivals:
                reading.asked.pop("depth", None)
            reading.aside = [(one, term) for one, term in reading.aside if one.start != token.start]
            reading.put("rode_out", token.mention.amount)
            return


def _list(reading: Reading) -> None:
    """Make one list of lengths that stand in a list, or that are each said to be a mark."""
    listed = [
        token.mention
        for token in reading.sentence.tokens
        if token.mention is not None and token.mention.group >= 0 and token.mention.kind == "length"
    ]
    members = [*_then_at(reading, listed), *listed] if len(listed) >= 2 else _repeated(reading) or _slashed(reading) or _each_at(reading)
    if len(members) >= 2:
        amounts = [one.amount for one in members if isinstance(one.amount, Amount)]
        starts = {one.start for one in members}
        others = [one for one in reading.rivals.get("chain", []) if one not in amounts]  # `45 m from where the chain ends, 8 m of chain`
        reading.aside = [(one, term) for one, term in reading.aside if one.start not in starts]
        for term in [name for name, (start, _) in reading.sources.items() if start in starts]:
            reading.asked.pop(term, None)
            left = [one for one in reading.rivals.pop(term, []) if one not in amounts]
            if len(left) == 1:  # `10, 20 and 50 m on the rode, I am letting out 38 m`
                reading.asked[term] = left[0]
        reading.asked.pop("marks", None)
        reading.rivals = {term: values for term, values in reading.rivals.items() if term not in ("marks", "mark_interval", "chain", "line")}
        if others and "chain" in reading.question.inputs:
            reading.put("chain", others[0])
        reading.asked["marks"] = amounts
    elif isinstance(reading.asked.get("marks"), Amount):
        reading.put("mark_interval", reading.asked.pop("marks"))


def _then_at(reading: Reading, listed: list[Mention]) -> list[Mention]:
    """The first mark, where the list goes on from it: `marks begin at 20 ft, then at 40, 70 and 110 ft`."""
    tokens = reading.sentence.tokens
    first = next(at for at, token in enumerate(tokens) if token.mention is listed[0])
    if "then" not in [token.word for token in tokens[max(0, first - 2) : first]]:
        return []
    before = next((token.mention for token in reversed(tokens[:first]) if token.mention is not None), None)
    return [before] if before is not None and before.kind == "length" else []


def _each_at(reading: Reading) -> list[Mention]:
    """`Leather at five fathoms, calico at ten, another leather at fifteen`: three or more that rise, each said to be at its place."""
    tokens = reading.sentence.tokens
    said = [token.mention for before, token in itertools.pairwise(tokens) if before.word == "at" and token.mention is not None]
    placed = [one for one in said if one.kind in ("length", "number") and isinstance(one.amount, Amount)]
    values = [one.amount.value for one in placed if isinstance(one.amount, Amount)]
    units = {one.amount.unit for one in placed if isinstance(one.amount, Amount) and one.kind == "length"}
    if len(placed) < 3 or len(units) != 1 or any(first >= then for first, then in itertools.pairwise(values)):
        return []
    unit = units.pop()
    for one in placed:
        reading.bare = {name: bare for name, bare in reading.bare.items() if bare.start != one.start}
    return [one._replace(amount=with_unit(one.amount, unit=unit)) for one in placed if isinstance(one.amount, Amount)]


def _slashed(reading: Reading) -> list[Mention]:
    """`marked 10/20/30/40/50`: numbers between strokes, in the unit of the one other length that the text has."""
    found = _STROKES.search(reading.sentence.text)
    units = {
        token.mention.amount.unit
        for token in reading.sentence.tokens
        if token.word == "<length>" and token.mention is not None and isinstance(token.mention.amount, Amount)
    }
    if found is None or len(units) != 1 or "marks" not in reading.question.inputs:
        return []
    unit = units.pop()
    numbers = [Amount("number", 0.0, 0.0, "", float(one), float(one)) for one in found[0].split("/")]
    for name in ("mark_interval", "marks"):
        reading.bare.pop(name, None)
        reading.asked.pop(name, None)
    inside = [(one, term) for one, term in reading.aside if not found.start() <= one.start < found.end()]
    reading.aside = inside
    return [Mention("length", with_unit(one, unit=unit), found.start(), found.end(), found[0]) for one in numbers]


_STROKES = re.compile(r"(?<![\d/])\d{1,3}(?:/\d{1,3}){2,40}(?![\d/])")


def _repeated(reading: Reading) -> list[Mention]:
    values = reading.rivals.pop("marks", [])
    return [Mention("length", value, 0, 0, "") for value in values if isinstance(value, Amount)]
