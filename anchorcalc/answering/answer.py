"""The answer to a question: gate, solve, words. One path for every door."""

from collections.abc import Iterable, Iterator, Mapping
from types import SimpleNamespace
from typing import Any

import numpy as np

from anchorcalc.answering.filling import Admitted
from anchorcalc.answering.gate import admit
from anchorcalc.answering.plan import Warnings, cautions_of, plan_of
from anchorcalc.answering.replies import Answer, LeftAside
from anchorcalc.answering.results import Builder, at_corner, headline_corner
from anchorcalc.answering.taking import Taken, take
from anchorcalc.cautions import RODE_SHORT, Caution
from anchorcalc.declare import Question
from anchorcalc.physics.arrays import at_least, somewhere
from anchorcalc.units import kinds
from anchorcalc.units.clock import clock_text
from anchorcalc.units.kinds import UNIT
from anchorcalc.units.position import position_text
from anchorcalc.units.quantity import Fix, Origin, Read, ReadClock, ReadFixes, ReadFlag, ReadLengths, ReadPosition, ReadQuantity, ReadWord
from anchorcalc.units.shown import rounded_text, tidy, unit_of, working_text
from anchorcalc.version import VERSION
from anchorcalc.vocabulary import TERMS

_OWN = {
    system: frozenset({"", "mm", "in", *(unit.symbol for term in TERMS.values() if (unit := unit_of(kind=term.kind, system=system)))})
    for system in ("us", "metric")
}


def answer(
    question: Question,
    asked: Mapping[str, Any],
    *,
    boat: Mapping[str, Any] | None = None,
    before: Mapping[str, Any] | None = None,
    units: str | None = None,
    notes: tuple[str, ...] = (),
    cautions: tuple[Caution, ...] = (),
    left_aside: tuple[LeftAside, ...] = (),
) -> Answer:
    """Return the answer to a question for given inputs.

    `notes` are lines of working and `cautions` are warnings that a door adds, such as what a text left open; `left_aside` is what it
    gave besides.

    Raises
    ------
    InputError
        With one fault for every input that will not do.
    """
    plan = plan_of(question)
    admitted = admit(question, asked, boat=boat, before=before, units=units)
    given, taken = admitted.values, admitted.taken
    found = question.solve(**{name: given[name] for name in question.direct if name in given})
    builder = _builder(question, admitted)
    results = question.results(**builder.results(question.fields, found))
    everywhere = {**given, **found}
    values, exact = _at_headline(question, builder, everywhere, found) if builder.corners else (everywhere, builder.exact)
    said = {name: _text_at(name, one, values) if one.is_range else one.text for name, one in taken.items()}
    told = {**said, **_rounded(admitted, values)} if admitted.derived else said
    shown = SimpleNamespace(**told, **(_beside(said, builder.shown) if plan.namesakes else builder.shown))
    worked = SimpleNamespace(**_alike(said, admitted, values), **(_beside(said, exact) if plan.namesakes else exact))
    warnings = _warnings(question, admitted.warnings or plan.warnings, everywhere)
    return plan.answer(
        status="answered",
        question=question.name,
        headline=question.headline(shown, {**values, **builder.worst} if builder.worst else values),
        results=results,
        read=plan.read(**_read(question, admitted, values)),
        working=tuple(_working(question, admitted, worked, values, notes, _elsewhere(builder, exact) if builder.corners else ())),
        cautions=(*cautions, *(_not_aboard(question, boat, found) if boat else ()), *warnings),
        sources=question.sources,
        version=VERSION,
        left_aside=left_aside,
    )


def _builder(question: Question, admitted: Admitted) -> Builder:
    corners = 2 ** len(admitted.ranges) if admitted.ranges else 0
    clock_like = next((admitted.taken[name].low for name in question.clocks if name in admitted.taken), None) if question.clocks else None
    return Builder(system=admitted.system, corners=corners, clock_like=clock_like)


def _at_headline(
    question: Question, builder: Builder, everywhere: Mapping[str, Any], found: Mapping[str, Any]
) -> tuple[Mapping[str, Any], dict[str, Any]]:
    """Return the values, and the results as texts, at the corner of the ranges that is worst for the headline's result."""
    corner = headline_corner(question.fields, found, builder.corners)
    there = Builder(system=builder.system, corners=0, clock_like=builder.clock_like)
    there.results(question.fields, at_corner(found, corners=builder.corners, corner=corner))
    return at_corner(everywhere, corners=builder.corners, corner=corner), there.exact


def _beside(said: Mapping[str, str], results: dict[str, str]) -> dict[str, str]:
    """Return the texts of results; one with an input's name is called `<name>_answer`."""
    return {(f"{name}_answer" if name in said else name): text for name, text in results.items()}


def _alike(said: dict[str, str], admitted: Admitted, values: Mapping[str, Any]) -> dict[str, str]:
    """Return the inputs as texts, those in other units than the answer's in both, so that the sums can be followed."""
    own = _OWN[admitted.system]
    for one in admitted.taken.values():
        if one.unit not in own:
            break
    else:
        return said
    texts = dict(said)
    for name, one in admitted.taken.items():
        kind = TERMS[name].kind
        unit = unit_of(kind=kind, system=admitted.system)
        if one.unit and unit is not None and unit.symbol != one.unit and kind not in (kinds.SIZE, kinds.LENGTHS) and values[name] != 0.0:
            texts[name] = f"{said[name]} ({working_text(value=float(values[name]) / unit.factor, unit=unit.symbol, kind=kind)})"
    return texts


def _elsewhere(builder: Builder, exact: Mapping[str, str]) -> Iterator[str]:
    """Say which results are worst at other ends of the ranges than those that the working shows."""
    for name in builder.worst:
        if name in builder.exact and builder.exact[name] != exact.get(name):
            yield f"{name} at its own worse ends: {builder.exact[name]}"


def _text_at(name: str, one: Taken, values: Mapping[str, Any]) -> str:
    """Return a range as text: the end that counts."""
    return working_text(value=values[name] / (UNIT[one.unit].factor if one.unit else 1.0), unit=one.unit, kind=TERMS[name].kind)


def _rounded(admitted: Admitted, values: Mapping[str, Any]) -> dict[str, str]:
    """Return the inputs that others gave as a headline says them: to the safe side, to what a skipper can act on."""
    texts = {}
    for one in admitted.derived:
        unit = UNIT.get(admitted.taken[one.gives].unit)
        if unit is not None and not one.assumed:
            value = tidy(float(values[one.gives]) / unit.factor)
            texts[one.gives] = rounded_text(value=value, unit=unit, kind=TERMS[one.gives].kind, way=one.safe)
    return texts


def _working(
    question: Question, admitted: Admitted, shown: SimpleNamespace, values: Mapping[str, Any], notes: tuple[str, ...], elsewhere: Iterable[str]
) -> list[str]:
    lines = [*notes, *admitted.notes]
    for derivation in admitted.derived:
        if derivation.assumed:
            lines.append(f"{derivation.assumed}: {getattr(shown, derivation.gives)}")
        elif derivation.working is not None:
            lines.append(derivation.working(shown))
    lines.extend(question.working(shown, values))
    for name in admitted.ranges:
        lines.append(f"{name} was given as {admitted.taken[name].text}: the end that is worse for each result counts")
    lines.extend(elsewhere)
    return lines


def _warnings(question: Question, warnings: Warnings, values: Mapping[str, Any]) -> tuple[Caution, ...]:
    holding = [rule for rule in warnings.left if somewhere(rule.holds(values))]
    if not holding:
        return warnings.always
    return cautions_of(rule for rule in question.cautions if rule in warnings.holding or rule in holding)


def _not_aboard(question: Question, boat: Mapping[str, Any], found: Mapping[str, Any]) -> Iterator[Caution]:
    """Warn where a question that does not ask what rode there is comes to more than the boat file holds."""
    if "rode_out" not in found or "rode_aboard" in question.inputs:
        return
    held = {name: take(term=TERMS[name], raw=boat[name]) for name in ("rode_aboard", "chain", "line") if boat.get(name) is not None}
    lengths = {name: one.low for name, one in held.items() if isinstance(one, Taken)}
    parts = lengths.get("chain", 0.0) + lengths["line"] if "line" in lengths else None
    aboard = lengths.get("rode_aboard", parts)
    if aboard is not None and somewhere(~np.asarray(at_least(aboard, found["rode_out"]))):
        yield RODE_SHORT


# --- what was read ------------------------------------------------------------------------------------------------------------------


def _read(question: Question, admitted: Admitted, values: Mapping[str, Any]) -> dict[str, Read]:
    """Return what was read of the question's own inputs; of a range, the end that counts."""
    inputs, origins = question.inputs, admitted.origins
    read: dict[str, Read] = {}
    for name, one in admitted.taken.items():
        if name not in inputs:
            continue
        if one.value is not None:  # mostly
            read[name] = ReadQuantity(value=one.value, unit=one.unit, si=one.low, shown=one.text, origin=origins[name])
        else:
            read[name] = read_of(name=name, taken=one, origin=origins[name], value=values.get(name) if one.is_range else None)
    return read


def read_of(*, name: str, taken: Taken, origin: Origin, value: Any = None) -> Read:
    """Return a taken value as it stands in `read`; `value` is the end of a range that counts."""
    if taken.value is not None:
        return ReadQuantity(value=taken.value, unit=taken.unit, si=taken.low, shown=taken.text, origin=origin)
    kind = TERMS[name].kind
    if kind.name == kinds.WORD.name:
        return ReadWord(value=taken.text, shown=taken.text, origin=origin)
    if kind is kinds.FLAG:
        return ReadFlag(value=taken.low, shown=taken.text, origin=origin)
    if kind is kinds.CLOCK:
        return ReadClock(value=taken.text, shown=taken.text, days=0, origin=origin)
    if kind is kinds.POSITION:
        return ReadPosition(value=taken.text, shown=taken.text, latitude=taken.low.latitude, longitude=taken.low.longitude, origin=origin)
    if kind is kinds.FIXES:
        fixes = tuple(Fix(at=clock_text(seconds=when.seconds, like=when)[0], position=position_text(place)) for when, place in taken.low)
        return ReadFixes(value=fixes, shown=taken.text, origin=origin)
    factor = UNIT[taken.unit].factor if taken.unit else 1.0
    if kind is kinds.LENGTHS:
        return ReadLengths(value=tuple(tidy(one / factor) for one in taken.low), unit=taken.unit, si=taken.low, shown=taken.text, origin=origin)
    si = float(taken.low if not taken.is_range or value is None else value)
    ends = {"low": taken.low, "high": taken.high} if taken.is_range else {}
    return ReadQuantity(value=tidy(si / factor), unit=taken.unit, si=si, shown=taken.text, origin=origin, **ends)
