"""The headings of a table: which columns are inputs and in what unit, and what the columns of results are called."""

import re
from collections.abc import Mapping, Sequence
from typing import Any

import msgspec

from anchorcalc.answering.gate import SYSTEMS
from anchorcalc.declare import Question
from anchorcalc.doors.fleet_near import near_miss
from anchorcalc.errors import Fault, InputError, TableError, fault
from anchorcalc.units.kinds import LENGTH, UNIT, Kind, Unit, symbols_of, units_spelled
from anchorcalc.units.shown import unit_of
from anchorcalc.vocabulary import TERMS

_HEADING = re.compile(r"\s*(?P<name>[^\[\]]*?)\s*(?:\[\s*(?P<unit>[^\[\]]*?)\s*\]\s*)?\Z")


class Heading(msgspec.Struct, frozen=True, kw_only=True):
    """A column that holds an input: what it is called in the table, and the unit of its plain numbers."""

    column: Any
    unit: Unit | None


class Headings(msgspec.Struct, frozen=True, kw_only=True):
    """What a table's headings say: its inputs by term, and what the columns of the answer are called."""

    inputs: dict[str, Heading]
    system: str
    units: dict[str, Unit | None]  # of each result
    names: dict[str, str]  # of each result's column
    cautions: str
    problem: str
    near_misses: tuple[Fault, ...]


def headings_of(question: Question, columns: Sequence[Any], *, units: Any, boat: Mapping[str, Any]) -> Headings:
    """Return what the headings of a table say.

    Raises
    ------
    TableError
        If two columns are one input, a unit does not fit, or no column is an input of the question.
    """
    found: dict[str, Heading] = {}
    faults: list[Fault] = []
    strangers: list[tuple[Any, str]] = []
    given: list[str] = []
    for column in columns:
        match = _HEADING.match(column) if isinstance(column, str) else None
        name = match["name"] if match else str(column)
        given.append(name)
        if match is None or name not in question.inputs:
            strangers.append((column, name))
            continue
        unit = _unit_said(name, column, match["unit"])
        if isinstance(unit, Fault):
            faults.append(unit)
        elif name in found:
            faults.append(fault(name, "given_twice", column, f"is a second column for it, beside {found[name].column}", "one of the two columns"))
        else:
            found[name] = Heading(column=column, unit=unit)
    near = [one for column, name in strangers for one in near_miss(question, column, name=name, found=found)]
    if not found and not faults:
        faults += [_none_found(question, columns), *near]
    if faults:
        raise TableError(faults)
    return _named(question, found, near, given, units=units, boat=boat)


def _none_found(question: Question, columns: Sequence[Any]) -> Fault:
    names = [f"{name} [{one.term.kind.metric}]" if one.term.kind.has_unit else name for name, one in question.inputs.items()]
    why = f"has no column that is an input of {question.name}"
    said = ", ".join(map(str, columns))
    return fault("table", "missing", said or None, f"are its headings: it {why}" if said else why, f"columns such as {', '.join(names[:4])}")


def _unit_said(name: str, column: str, said: str | None) -> Unit | Fault | None:
    if said is None:
        return None
    kind = TERMS[name].kind
    wanted = "length" if kind.name == "lengths" else kind.name
    spelled = units_spelled(text=said)
    for unit in spelled:
        if unit.kind == wanted:
            return unit
    if not kind.has_unit:
        return fault(name, "wrong_dimension", column, f"has a unit in its heading, and a {kind.name} has none", name)
    would_do = " or ".join(f"{name} [{symbol}]" for symbol in symbols_of(kind=wanted)[:2])
    if spelled:
        return fault(name, "wrong_dimension", column, f"has a unit of {spelled[0].kind} in its heading", would_do)
    return fault(name, "unknown_unit", column, "has a unit in its heading that is not known", would_do)


# --- what comes out -----------------------------------------------------------------------------------------------------------------


def _named(question: Question, found: dict[str, Heading], near: list[Fault], given: list[str], *, units: Any, boat: Mapping[str, Any]) -> Headings:
    said = getattr(units, "value", units)
    if said is not None and said not in SYSTEMS:
        raise InputError([fault("units", "unknown_word", units, "is no system of units", "us or metric")])
    depth = found["depth"].unit if "depth" in found else None
    system = str(said or (depth.system if depth else "") or boat.get("units") or "metric")
    length = depth if depth is not None and said is None else None
    taken = {*given, *question.inputs}
    names: dict[str, str] = {}
    of_results: dict[str, Unit | None] = {}
    for field in question.fields:
        unit = None if field.many else _unit_of_result(field.kind, system, length)
        names[field.name], of_results[field.name] = _free(field.name, taken) + (f" [{unit.symbol}]" if unit else ""), unit
    return Headings(
        inputs=found,
        system=system,
        units=of_results,
        names=names,
        cautions=_free("cautions", taken),
        problem=_free("problem", taken),
        near_misses=tuple(near),
    )


def _free(name: str, taken: set[str]) -> str:
    """Return the name, with `_answer` behind it for as long as a column of that name is there."""
    while name in taken:
        name += "_answer"
    taken.add(name)
    return name


def _unit_of_result(kind: Kind, system: str, length: Unit | None) -> Unit | None:
    if kind == LENGTH and length is not None:
        return UNIT[length.symbol]
    return unit_of(kind=kind, system=system) if kind.has_unit else None
