"""What was not given: what other inputs give, what is usual, and what must be asked for."""

from collections.abc import Iterator, Mapping
from functools import lru_cache
from typing import Any, NamedTuple

import msgspec
import numpy as np

from anchorcalc.answering.plan import Warnings, plan_of, warnings_beside
from anchorcalc.answering.taking import Taken, text_of
from anchorcalc.declare import Derivation, Question
from anchorcalc.errors import Fault
from anchorcalc.physics.arrays import somewhere
from anchorcalc.physics.tide import plain_times_about
from anchorcalc.units.kinds import WORD
from anchorcalc.units.quantity import Origin
from anchorcalc.units.shown import tidy, unit_of
from anchorcalc.vocabulary import TERMS
from anchorcalc.vocabulary.term import Term

RANK = {"asked": 0, "before": 1, "boat": 2, "assumed": 3}  # what counts before what


class Admitted(msgspec.Struct, kw_only=True):
    """What passed the gate: values in SI (arrays of corners where ranges were given), how each was said, and where it came from."""

    values: dict[str, Any]
    taken: dict[str, Taken]
    origins: dict[str, Origin]
    system: str
    notes: list[str]
    derived: list[Derivation]
    ranges: tuple[str, ...] = ()
    warnings: Warnings | None = None


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
    beside = None if refused else _beside(question, tuple(admitted.values), admitted.system)
    if beside is not None:
        admitted.values.update(beside.values)
        admitted.taken.update(beside.taken)
        admitted.origins.update(beside.origins)
        admitted.warnings = beside.warnings
        return
    for derivation in question.derives:
        _derive(derivation, question, admitted, refused)
    values, origins = admitted.values, admitted.origins
    for name, term in plan_of(question).usual:
        if name not in values and name not in refused:
            _assume(term, admitted)
    for name, flag in question.assumable:
        values[flag] = origins.get(name) == "assumed"


class Beside(NamedTuple):
    """What is usual beside the inputs that were given, whether each stands on what was assumed, and the cautions that this settles."""

    values: dict[str, Any]
    taken: dict[str, Taken]
    origins: dict[str, Origin]
    warnings: Warnings


@lru_cache(maxsize=512)
def _beside(question: Question, names: tuple[str, ...], system: str) -> Beside | None:
    """Return what is usual beside inputs of these names, the same whatever they say; None where they may give others."""
    if any(set(one.needs) <= set(names) for one in question.derives):
        return None
    taken = {name: usual(term, system) for name, term in plan_of(question).usual if name not in names}
    values = {name: one.low for name, one in taken.items()} | {flag: name in taken for name, flag in question.assumable}
    results = {field.name for field in question.fields}
    settled = {name: value for name, value in values.items() if name not in results}  # a result may have an input's name
    warnings = warnings_beside(question, settled, known=results.union(names, values))
    return Beside(values, taken, dict.fromkeys(taken, "assumed"), warnings)


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
    sooner = [name for name in makers if RANK[origins[name]] < RANK[origins[gives]]]
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
    low, high = (float(np.min(value)), float(np.max(value))) if isinstance(value, np.ndarray) else (float(value), float(value))
    unit = unit_of(kind=term.kind, system=system)
    symbol = unit.symbol if unit else ""
    said = [float(f"{end / unit.factor:.5g}") * unit.factor if unit else end for end in (low, high)]  # shown as a step of the working is
    text = text_of(term=term, low=said[0], high=said[1], unit=symbol)
    return Taken(low, high, symbol, text, is_range=low != high, value=None if low != high else tidy(low / unit.factor if unit else low))
