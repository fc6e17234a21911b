"""The gate: everything that was given goes into SI, or every fault comes out at once."""

from collections.abc import Iterator, Mapping, Sequence
from difflib import get_close_matches
from typing import Any

import numpy as np

from anchorcalc.answering.filling import RANK, Admitted, fill, shortfalls
from anchorcalc.answering.plan import Plan, plan_of
from anchorcalc.answering.taking import Taken, take
from anchorcalc.declare import Question
from anchorcalc.errors import Fault, InputError, fault
from anchorcalc.physics.arrays import somewhere
from anchorcalc.units.kinds import CLOCK, SIZE, UNIT
from anchorcalc.units.quantity import Origin
from anchorcalc.vocabulary import TERMS

SYSTEMS = ("us", "metric")
RANGES_AT_MOST = 4


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
    plan = plan_of(question)
    faults: list[Fault] = []
    below: list[tuple[Origin, Mapping[str, Any]]] = [("before", before)] if before else []
    if boat:
        below.append(("boat", boat))
    admitted = _taken(plan, asked, below, faults)
    if boat or not question.inputs.keys() >= asked.keys():
        faults.extend(_unknown(question, asked, boat))
    if not plan.alternatives.isdisjoint(admitted.taken):
        faults.extend(alternatives(question, admitted.taken, admitted.origins))
    said = units if units is not None or not boat else boat.get("units")
    admitted.system = settled_system(admitted.taken, admitted.origins, said, faults)
    _place(question, admitted, faults)
    refused = {one.input for one in faults} if faults else set()
    fill(question, admitted, refused)
    if plan.enough is None or not admitted.values.keys() >= plan.enough:
        faults.extend(one for condition, one in shortfalls(question, admitted, refused) if somewhere(condition))
    if not faults and (question.refuses or question.clocks):
        faults.extend(one for _, one in contradictions(question, admitted))
    if faults:
        raise InputError(faults)
    return admitted


def _taken(plan: Plan, asked: Mapping[str, Any], below: Sequence[tuple[Origin, Mapping[str, Any]]], faults: list[Fault]) -> Admitted:
    """Take each input from what was asked, or from the first layer below that has it."""
    taken: dict[str, Taken] = {}
    origins: dict[str, Origin] = {}
    for name, term in plan.terms:
        origin: Origin = "asked"
        raw = asked.get(name)
        if raw is None and below:
            origin, raw = next(((lower, layer[name]) for lower, layer in below if layer.get(name) is not None), (origin, None))
        if raw is not None:
            found = take(term=term, raw=raw)
            if isinstance(found, Taken):
                taken[name], origins[name] = found, origin
            else:
                faults.append(found)
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


def alternatives(question: Question, taken: dict[str, Taken], origins: dict[str, Origin]) -> Iterator[Fault]:
    """Keep one group of alternatives: what was asked wins over the boat's; two that were said alike contradict."""
    if sum(name in taken for group in question.one_of for name in group) < 2:
        return
    ranks = [min((RANK[origins[name]] for name in group if name in taken), default=9) for group in question.one_of]
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
