"""The gate: everything that was given goes into SI, or every fault comes out at once."""

from collections.abc import Iterator, Mapping, Sequence
from difflib import get_close_matches
from functools import lru_cache
from typing import Any

import msgspec
import numpy as np

from anchorcalc.answering.plan import plan_of
from anchorcalc.answering.taking import Taken, take, text_of
from anchorcalc.declare import Derivation, Question
from anchorcalc.errors import Fault, InputError, fault
from anchorcalc.physics.arrays import somewhere
from anchorcalc.physics.tide import plain_times_about
from anchorcalc.units.kinds import CLOCK, SIZE, UNIT, WORD
from anchorcalc.units.quantity import Origin
from anchorcalc.units.shown import tidy, unit_of
from anchorcalc.vocabulary import TERMS
from anchorcalc.vocabulary.term import Term

SYSTEMS = ("us", "metric")
RANGES_AT_MOST = 4


class Admitted(msgspec.Struct, kw_only=True):
    """What passed the gate: values in SI (arrays of corners where ranges were given), how each was said, and where it came from."""

    values: dict[str, Any]
    taken: dict[str, Taken]
    origins: dict[str, Origin]
    system: str
    notes: list[str]
    derived: list[Derivation]
    ranges: tuple[str, ...] = ()


def admit(
    question: Question,
    asked: Mapping[str, Any],
    *,
    boat: Mapping[str, Any] | None = None,
    before: Mapping[str, Any] | None = None,
    units: str | None = None,
) -> Admitted:
    """Return the inputs of a question in SI.

    Raises
    ------
    InputError
        With one fault for every input that will not do.
    """
    faults: list[Fault] = []
    admitted = _taken(question, (("asked", asked), ("before", before or {}), ("boat", boat or {})), faults)
    if boat or not question.inputs.keys() >= asked.keys():
        faults.extend(_unknown(question, asked, boat))
    if not plan_of(question).alternatives.isdisjoint(admitted.taken):
        faults.extend(alternatives(question, admitted.taken, admitted.origins))
    said = units if units is not None or not boat else boat.get("units")
    admitted.system = settled_system(admitted.taken, admitted.origins, said, faults)
    _place(question, admitted, faults)
    refused = {one.input for one in faults} if faults else set()
    fill(question, admitted, refused)
    for condition, one in shortfalls(question, admitted, refused):
        if somewhere(condition):
            faults.append(one)
    if not faults and (question.refuses or question.clocks):
        faults.extend(one for _, one in contradictions(question, admitted))
    if faults:
        raise InputError(faults)
    return admitted


def _taken(question: Question, layers: Sequence[tuple[Origin, Mapping[str, Any]]], faults: list[Fault]) -> Admitted:
    """Take each input from the first layer that has it."""
    taken: dict[str, Taken] = {}
    origins: dict[str, Origin] = {}
    layers = [one for one in layers if one[1]]
    for name, term in plan_of(question).terms:
        for origin, layer in layers:
            raw = layer.get(name)
            if raw is not None:
                found = take(term=term, raw=raw)
                if isinstance(found, Taken):
                    taken[name], origins[name] = found, origin
                else:
                    faults.append(found)
                break
    return Admitted(values={}, taken=taken, origins=origins, system="metric", notes=[], derived=[])


# --- names and units ----------------------------------------------------------------------------------------------------------------


def _unknown(question: Question, asked: Mapping[str, Any], boat: Mapping[str, Any] | None) -> Iterator[Fault]:
    for name in asked:
        if name not in question.inputs:
            yield unknown_name(name=name, known=tuple(question.inputs), where=f"of {question.name}", given=asked[name])
    for name in boat or ():
        if name not in TERMS and name != "name":
            yield unknown_name(name=name, known=tuple(TERMS), where="of a boat", given=(boat or {})[name])


def unknown_name(*, name: str, known: tuple[str, ...], where: str, given: Any) -> Fault:
    """Return the fault of a name that is not known, with the nearest that is."""
    near = get_close_matches(str(name)[:60].replace("-", "_"), known, n=1)
    why = f"is no input {where}"
    return fault(str(name)[:60], "unknown_input", given, why, near[0] if near else "one of " + ", ".join(known))


def settled_system(taken: dict[str, Taken], origins: dict[str, Origin], units: Any, faults: list[Fault]) -> str:
    """Return the system that an answer is shown in: the one said, else that of the lengths that were given."""
    if units is not None:
        value = getattr(units, "value", units)
        if value in SYSTEMS:
            return str(value)
        faults.append(fault("units", "unknown_word", units, "is no system of units", "us or metric"))
        return "metric"
    best, rank = "metric", 99
    for name, one in taken.items():
        if one.unit:
            unit = UNIT[one.unit]
            order = (0 if unit.kind == "length" and TERMS[name].kind is not SIZE else 5) + (0 if origins[name] == "asked" else 10)
            if unit.system and order < rank:
                best, rank = unit.system, order
                if rank == 0:
                    break
    return best


_RANK = {"asked": 0, "before": 1, "boat": 2, "assumed": 3}


def alternatives(question: Question, taken: dict[str, Taken], origins: dict[str, Origin]) -> Iterator[Fault]:
    """Keep one group of alternatives: what was asked wins over the boat's; two that were said alike contradict."""
    if sum(name in taken for group in question.one_of for name in group) < 2:
        return
    ranks = [min((_RANK[origins[name]] for name in group if name in taken), default=9) for group in question.one_of]
    for group, rank in zip(question.one_of, ranks, strict=True):
        if rank != 9 and rank > min(ranks):
            for name in group:
                taken.pop(name, None)
                origins.pop(name, None)
    alike = [group for group, rank in zip(question.one_of, ranks, strict=True) if rank == min(ranks) != 9]
    if len(alike) > 1:
        name = next(name for name in alike[1] if name in taken)
        yield fault(
            name, "contradiction", taken[name].text, f"was given beside {alike[0][0]}", f"one of the two ({' or '.join(group[0] for group in alike)})"
        )


# --- ranges -------------------------------------------------------------------------------------------------------------------------


def too_ranged(question: Question, admitted: Admitted) -> Iterator[Fault]:
    """Settle which inputs are ranges; yield a fault for each that may not be one."""
    ranges = tuple(name for name, one in admitted.taken.items() if one.is_range)
    for name in ranges:
        if name in plan_of(question).takes_no_range:
            why, would_do = "moves an answer both ways, so neither end is the safe one", f"one value, such as {TERMS[name].would_do},"
            yield fault(name, "range_not_taken", admitted.taken[name].text, why, would_do)
    if len(ranges) > RANGES_AT_MOST:
        why = f"is one range more than the {RANGES_AT_MOST} that can be taken"
        yield fault(ranges[-1], "too_many_ranges", admitted.taken[ranges[-1]].text, why, "one value")
    admitted.ranges = ranges[:RANGES_AT_MOST]


def _place(question: Question, admitted: Admitted, faults: list[Fault]) -> None:
    """Put the values in place: plain where one was given, at all corners where ranges were."""
    values, taken = admitted.values, admitted.taken
    ranged = False
    for name, one in taken.items():
        values[name] = one.low
        ranged = ranged or one.is_range
    for name in question.clocks:
        if name in taken:
            values[name] = taken[name].low.seconds
    if ranged:
        faults.extend(too_ranged(question, admitted))
    for place, name in enumerate(admitted.ranges):
        one = taken[name]
        values[name] = np.where(at_high_end(place=place, ranges=len(admitted.ranges)), one.high, one.low)
        values[f"{name}_ranged"] = True
    if "wind" in taken:
        values["wind_beaufort"] = taken["wind"].beaufort


def at_high_end(*, place: int, ranges: int) -> np.ndarray[Any, np.dtype[np.bool_]]:
    """Return at which corners of so many ranges the one at a place stands at its high end."""
    corners: np.ndarray[Any, np.dtype[np.bool_]] = ((np.arange(2**ranges) >> place) & 1) == 1
    return corners


# --- what was not given -------------------------------------------------------------------------------------------------------------


TIDE_TIMES = ("low_at", "high_at", "at")


def _settle_tide_times(admitted: Admitted) -> None:
    """Put plain clock times of a tide on the day of the time asked about."""
    clocks = [admitted.taken[name].low for name in TIDE_TIMES if name in admitted.taken]
    if len(clocks) == len(TIDE_TIMES) and all(one.form == "plain" for one in clocks):
        low_at, high_at = plain_times_about(**{name: admitted.values[name] for name in TIDE_TIMES})
        admitted.values |= {"low_at": low_at, "high_at": high_at}


def fill(question: Question, admitted: Admitted, refused: set[str]) -> None:
    """Fill in what others give, then what is usual."""
    if question.clocks:
        _settle_tide_times(admitted)
    for derivation in question.derives:
        _derive(derivation, question, admitted, refused)
    values, origins = admitted.values, admitted.origins
    for name, term in plan_of(question).usual:
        if name not in values and name not in refused:
            _assume(term, admitted)
    for name, flag in question.assumable:
        values[flag] = origins.get(name) == "assumed"


def shortfalls(question: Question, admitted: Admitted, refused: set[str]) -> Iterator[tuple[Any, Fault]]:
    """Yield a fault for each input that must be given and was not, with the condition (of many rows: which) on which it must."""
    values, taken = admitted.values, admitted.taken
    for name in plan_of(question).asked:
        if name not in values and name not in refused:
            yield from ((True, one) for one in _missing(name, question, admitted, refused))
    for rule in question.requires:
        if not any(name in values or name in refused for name in (rule.input, *rule.unless)):
            yield rule.holds(values), TERMS[rule.input].missing()
    for pair in question.pairs:
        if any(name in taken for name in pair):
            yield from ((True, TERMS[name].missing()) for name in pair if name not in taken and name not in refused)
    groups = () if question.one_of_may else question.one_of
    if groups and not any(all(name in values or name in refused for name in group) for group in groups):
        yield from ((True, TERMS[name].missing()) for name in groups[0] if name not in values)


def _missing(name: str, question: Question, admitted: Admitted, refused: set[str]) -> Iterator[Fault]:
    """Ask for the term, or for what would give it."""
    for derivation in question.derives:
        if derivation.gives == name:
            for other in derivation.asks_for:
                if other not in admitted.values and other not in refused:
                    yield TERMS[other].missing()
            return
    yield TERMS[name].missing()


def _assume(term: Term, admitted: Admitted) -> None:
    name, found = term.name, usual(term, admitted.system)
    admitted.values[name], admitted.taken[name], admitted.origins[name] = found.low, found, "assumed"


@lru_cache(maxsize=256)
def usual(term: Term, system: str) -> Taken:
    """Return a term's usual value as taken."""
    if term.kind is WORD and isinstance(term.usual, str):
        return Taken(term.code(term.usual), term.code(term.usual), text=term.usual)
    assert isinstance(term.usual, float), term.name
    unit = unit_of(kind=term.kind, system=system)
    symbol = unit.symbol if unit else ""
    size = float(f"{term.usual / unit.factor:.5g}") * unit.factor if unit else term.usual  # as the working shows its sums
    text = text_of(term=term, low=size, high=size, unit=symbol)
    return Taken(term.usual, term.usual, symbol, text, value=tidy(term.usual / unit.factor if unit else term.usual))


def _derive(derivation: Derivation, question: Question, admitted: Admitted, refused: set[str]) -> None:
    """Fill one input that others give; where it was said itself, what was said counts and the answer says so."""
    gives, origins = derivation.gives, admitted.origins
    if refused and refused.intersection((gives, *derivation.needs, *derivation.takes)):
        refused.add(gives)
        return
    values = admitted.values
    for name in derivation.needs:
        if name not in values:
            return
    if gives in admitted.values:
        _drop_what_lies_under(derivation, question, admitted)
    if gives in admitted.values:
        makers = (*derivation.needs, *derivation.takes)
        if not derivation.assumed and any(origins.get(name) == origins[gives] for name in makers if name not in plan_of(question).own):
            names = " and ".join(name for name in makers if name in origins)
            admitted.notes.append(f"{gives} was given ({admitted.taken[gives].text}), so it counts and is not made of {names}")
        _assume_taken(derivation, admitted, only=plan_of(question).own)
        return
    _assume_taken(derivation, admitted)
    used = {name: admitted.values[name] for name in (*derivation.needs, *derivation.takes) if name in admitted.values}
    if derivation.when is not None and not somewhere(derivation.when.holds(used)):
        return
    value = derivation.solve(**used)
    admitted.values[gives] = value
    admitted.origins[gives] = "assumed" if derivation.assumed else _origin(origins, used)
    admitted.taken[gives] = as_taken(TERMS[gives], value, admitted.system)
    admitted.derived.append(derivation)


def _drop_what_lies_under(derivation: Derivation, question: Question, admitted: Admitted) -> None:
    """Drop the boat's (or the earlier) value where what makes it was said since: a wind that is asked about counts before a load aboard."""
    gives, origins = derivation.gives, admitted.origins
    makers = (name for name in (*derivation.needs, *derivation.takes) if name in origins and name not in plan_of(question).own)
    sooner = [name for name in makers if _RANK[origins[name]] < _RANK[origins[gives]]]
    if derivation.assumed or not sooner:
        return
    admitted.notes.append(f"{gives} ({admitted.taken[gives].text}, {origins[gives]}) is left aside: what was asked of {' and '.join(sooner)} counts")
    del admitted.values[gives], admitted.taken[gives], origins[gives]
    admitted.values.pop(f"{gives}_ranged", None)


def _assume_taken(derivation: Derivation, admitted: Admitted, *, only: frozenset[str] | None = None) -> None:
    for name in derivation.takes:
        if name not in admitted.values and TERMS[name].usual is not None and (only is None or name in only):
            _assume(TERMS[name], admitted)


def _origin(origins: Mapping[str, Origin], used: Mapping[str, Any]) -> Origin:
    told: tuple[Origin, ...] = ("asked", "before", "boat")
    for origin in told:
        if any(origins.get(name) == origin for name in used):
            return origin
    return "assumed"


def as_taken(term: Term, value: Any, system: str) -> Taken:
    """Return a value in SI (of a range: its corners) as taken."""
    if term.kind is WORD:
        return Taken(value, value, text=term.choices[value])
    low, high = float(np.min(value)), float(np.max(value))
    unit = unit_of(kind=term.kind, system=system)
    symbol = unit.symbol if unit else ""
    said = [float(f"{end / unit.factor:.5g}") * unit.factor if unit else end for end in (low, high)]  # shown as a step of the working is
    text = text_of(term=term, low=said[0], high=said[1], unit=symbol)
    return Taken(low, high, symbol, text, is_range=low != high, value=None if low != high else tidy(low / unit.factor if unit else low))


# --- what contradicts ---------------------------------------------------------------------------------------------------------------


def contradictions(question: Question, admitted: Admitted) -> Iterator[tuple[Any, Fault]]:
    """Yield a fault for each pair of inputs that cannot both be so, with the condition (of many rows: which)."""
    forms = {name: one.low.form for name, one in admitted.taken.items() if TERMS[name].kind is CLOCK}
    if len(set(forms.values())) > 1:
        last = list(forms)[-1]
        why, would_do = "is written in another form than the other times", "plain times or ISO 8601 for all"
        yield True, fault(last, "clock_mixed", admitted.taken[last].text, why, would_do)
        return
    for rule in question.refuses:
        condition = rule.holds(admitted.values)
        if somewhere(condition):
            yield condition, rule.fault(given=admitted.taken[rule.input].text if rule.input in admitted.taken else "")
