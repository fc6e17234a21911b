"""Many rows through the gate and through `solve` at once: rows that gave the same inputs go together, as arrays.

The declarations are those of the single call, and so are the functions that read them; what a row is told is what its own single
call would say.
"""

from collections.abc import Iterator, Mapping
from typing import Any

import msgspec
import numpy as np

from anchorcalc.answering.filling import Admitted, as_taken, fill, shortfalls, usual
from anchorcalc.answering.gate import alternatives, at_high_end, contradictions, settled_system, too_ranged
from anchorcalc.answering.taking import Taken, take
from anchorcalc.declare import Question
from anchorcalc.doors.fleet_cells import ABSENT, FAULTY, FORMS, RANGED, Cells, Column, Reader, cell_of
from anchorcalc.doors.fleet_headings import Headings
from anchorcalc.doors.fleet_results import Results
from anchorcalc.doors.fleet_signs import PLAIN_SIGNS, NumberSigns
from anchorcalc.errors import Fault, cut
from anchorcalc.units.clock import Clock
from anchorcalc.units.kinds import CLOCK
from anchorcalc.units.quantity import Origin
from anchorcalc.vocabulary import TERMS

Rows = slice | Column
NO_FAULTS: Mapping[int, Fault] = {}


class Plan:
    """All that is settled before the first row: the question, the headings, the boat under all rows, and a reader for each column."""

    def __init__(self, question: Question, headings: Headings, *, boat: Mapping[str, Any], units: Any, signs: NumberSigns = PLAIN_SIGNS) -> None:
        self.question, self.headings = question, headings
        self.units = units if units is not None else boat.get("units")
        self.readers = {name: Reader(TERMS[name], unit=heading.unit, signs=signs) for name, heading in headings.inputs.items()}
        self.boat = {name: take(term=one.term, raw=boat[name]) for name, one in question.inputs.items() if boat.get(name) is not None}

    def answers(self, columns: Mapping[str, Any], rows: int, faults: Mapping[int, Fault] = NO_FAULTS) -> Results:
        """Return the answers to a batch of rows; `columns` are the inputs by term; rows with a fault of their own go unanswered."""
        cells = {name: self.readers[name].cells(columns[name]) for name in self.question.inputs if name in columns}
        results = Results(self.question, self.headings, rows=rows)
        kept = np.ones(rows, dtype=np.int8)
        for row, fault in faults.items():
            kept[row] = 0
            results.refuse(row, [fault], 1)
        for first, some in groups([one for cell in cells.values() for one in (cell.state, cell.key)] + [kept] * bool(faults), rows):
            if not kept[first]:
                continue
            count = rows if isinstance(some, slice) else some.size
            Group(self, cells, first=first, rows=some, count=count).answer(results)
        return results


def groups(parts: list[int | Column], rows: int) -> Iterator[tuple[int, Rows]]:
    """Yield the rows that gave the same inputs in the same way, each time with the first of them."""
    if rows == 0:
        return
    pattern, patterns = np.zeros(rows, dtype=np.int64), 1
    for part in parts:
        if isinstance(part, int) or bool(np.all(part == part[0])):
            continue
        place = part if part.dtype == np.int8 else np.unique(part, return_inverse=True)[1]
        kinds = int(place.max()) + 1
        if patterns * kinds >= 2**62:
            pattern = np.unique(pattern, return_inverse=True)[1]
            patterns = int(pattern.max()) + 1
        pattern, patterns = pattern * kinds + place, patterns * kinds
    if patterns == 1:
        yield 0, slice(None)
        return
    small = pattern.astype(np.int16) if patterns < 2**15 else pattern  # small numbers sort in linear time
    order = np.argsort(small, kind="stable")
    starts = np.flatnonzero(np.diff(small[order])) + 1
    for some in np.split(order, starts):
        yield int(some[0]), some


class Group:
    """Rows that gave the same inputs in the same way."""

    def __init__(self, plan: Plan, cells: Mapping[str, Cells], *, first: int, rows: Rows, count: int) -> None:
        self.plan, self.question, self.cells, self.rows, self.count = plan, plan.question, cells, rows, count
        self.faulty: dict[str, Fault | None] = {}  # None: each row its own
        self.admitted = Admitted(values={}, taken={}, origins={}, system=plan.headings.system, notes=[], derived=[])
        for name in self.question.inputs:
            self._take(name, first)

    def _take(self, name: str, first: int) -> None:
        """Note what stands in all these rows for one input: a mark of it, since the values differ from row to row."""
        taken, origins = self.admitted.taken, self.admitted.origins
        state = cell_of(self.cells[name].state, first) if name in self.cells else ABSENT
        below = self.plan.boat.get(name)
        if state == ABSENT and below is not None:
            if isinstance(below, Fault):
                self.faulty[name] = below
            else:
                taken[name], origins[name] = below, "boat"
        elif state == FAULTY:
            self.faulty[name] = self.cells[name].fault
        elif state != ABSENT:
            low: Any = 0.0
            if TERMS[name].kind is CLOCK:
                low = Clock(0.0, FORMS[cell_of(self.cells[name].key, first)])  # stands for all of its form
            elif self.cells[name].lists:
                low = self.cells[name].lists[int(self.cells[name].low[first])]
            taken[name], origins[name] = Taken(low, low, text=_mark(name), is_range=state == RANGED), "asked"

    def answer(self, results: "Results") -> None:
        """Put the answers of these rows, or their problems, among the results."""
        constant = [*alternatives(self.question, self.admitted.taken, self.admitted.origins), *too_ranged(self.question, self.admitted)]
        self._place()
        refused = {*self.faulty, *(one.input for one in constant)}
        fill(self.question, self.admitted, refused)
        parts = self._parts()
        if parts:
            for part in parts:
                part.answer(results)
            return
        faults: list[tuple[Any, Fault]] = [(True, one) for one in constant]
        for condition, one in shortfalls(self.question, self.admitted, refused):
            where = self._rows_where(condition)
            if where is True or (where is not False and where.any()):
                faults.append((where, one))
        if self.faulty or any(where is True for where, _ in faults):
            self._refuse(faults, np.ones(self.count, dtype=bool), results)
            return
        refused_rows = np.zeros(self.count, dtype=bool)
        for where, _ in faults:
            refused_rows |= where
        contradicted = [(self._rows_where(condition), one) for condition, one in contradictions(self.question, self.admitted)]
        faults += [(~refused_rows & where, one) for where, one in contradicted]
        for where, _ in faults:
            refused_rows |= where
        if faults:
            self._refuse(faults, refused_rows, results)
        if not refused_rows.all():
            self._solve(refused_rows, results)

    def _parts(self) -> list["Group"]:
        """Return the rows in two groups where a derivation's condition holds for some of them only."""
        for derivation in self.admitted.derived:
            where = True if derivation.when is None else self._rows_where(derivation.when.holds(self.admitted.values))
            if not isinstance(where, bool) and not where.all():
                halves = [np.flatnonzero(half) if isinstance(self.rows, slice) else self.rows[half] for half in (where, ~where)]
                return [Group(self.plan, self.cells, first=int(half[0]), rows=half, count=half.size) for half in halves]
        return []

    # --- values ---------------------------------------------------------------------------------------------------------------------

    def _place(self) -> None:
        """Put the values in place: a column of the rows, and where ranges were given all corners across."""
        admitted, ranges = self.admitted, self.admitted.ranges
        for name, one in admitted.taken.items():
            admitted.values[name] = self._value(name, one)
        for place, name in enumerate(ranges):
            at_high = at_high_end(place=place, ranges=len(ranges))
            if admitted.origins[name] == "boat":
                admitted.values[name] = np.where(at_high, admitted.taken[name].high, admitted.taken[name].low)[np.newaxis, :]
            else:
                high = self.cells[name].high
                assert high is not None
                admitted.values[name] = np.where(at_high, high[self.rows][:, np.newaxis], admitted.values[name])
            admitted.values[f"{name}_ranged"] = True
        if "wind" in admitted.taken:
            asked = admitted.origins["wind"] == "asked"
            beaufort = self.cells["wind"].beaufort if asked else admitted.taken["wind"].beaufort
            admitted.values["wind_beaufort"] = beaufort if isinstance(beaufort, bool) else self._across(beaufort[self.rows])

    def _value(self, name: str, one: Taken) -> Any:
        if self.admitted.origins[name] == "boat" or self.cells[name].lists:
            return one.low.seconds if TERMS[name].kind is CLOCK else one.low
        return self._across(self.cells[name].low[self.rows])

    def _across(self, column: Column) -> Column:
        return column[:, np.newaxis] if self.admitted.ranges else column

    def _rows_where(self, condition: Any) -> Any:
        """Return in which rows a condition holds (at any corner); a plain answer where it is the same for all."""
        where: Any = np.asarray(condition)
        if where.ndim == 0:
            return bool(where)
        where = where.any(axis=-1) if self.admitted.ranges else where
        return np.broadcast_to(where, (self.count,))

    # --- problems -------------------------------------------------------------------------------------------------------------------

    def _refuse(self, faults: list[tuple[Any, Fault]], refused: Column, results: "Results") -> None:
        """Say of each refused row what is wrong with it."""
        if all(one is not None for one in self.faulty.values()) and all(where is True and not _marked(one) for where, one in faults):
            every = [*(one for one in self.faulty.values() if one is not None), *(one for _, one in faults)]
            results.refuse(self.rows, every, self.count)
            return
        for one in np.flatnonzero(refused).tolist():
            row = one if isinstance(self.rows, slice) else int(self.rows[one])
            found = [known or self._fault(name, row) for name, known in self.faulty.items()]
            found += [self._told(fault, row, one) for where, fault in faults if where is True or where[one]]
            results.refuse(row, found, 1)

    def _fault(self, name: str, row: int) -> Fault:
        found = self.cells[name].said(row)
        assert isinstance(found, Fault), (name, found)
        return found

    def _told(self, fault: Fault, row: int, place: int) -> Fault:
        """Return a fault with what was given in that row."""
        stands_in = bool(fault.given) and (fault.input in self._derived() or self.admitted.origins.get(fault.input) == "assumed")
        return msgspec.structs.replace(fault, given=cut(self._text(fault.input, row, place))) if _marked(fault) or stands_in else fault

    def _derived(self) -> set[str]:
        return {one.gives for one in self.admitted.derived}

    def _text(self, name: str, row: int, place: int) -> str:
        """Return what one row gave for an input, or what stands in for it, as its single call would show it."""
        origins: dict[str, Origin] = {
            one: origin for one, origin in self.admitted.origins.items() if origin != "assumed" and one not in self._derived()
        }
        if origins.get(name) == "asked":
            return self._taken(name, row).text
        if name in origins:
            return self.admitted.taken[name].text
        taken = {
            one: self._taken(one, row) if origins[one] == "asked" else self.admitted.taken[one] for one in self.question.inputs if one in origins
        }
        system = settled_system(taken, origins, self.plan.units, [])
        if name not in self._derived():
            return usual(TERMS[name], system).text
        value = np.asarray(self.admitted.values[name])
        return as_taken(TERMS[name], value[min(place, value.shape[0] - 1)] if value.ndim else value[()], system).text

    def _taken(self, name: str, row: int) -> Taken:
        found = self.cells[name].said(row)
        assert isinstance(found, Taken), (name, found)
        return found

    # --- answers --------------------------------------------------------------------------------------------------------------------

    def _solve(self, refused: Column, results: "Results") -> None:
        """Solve for the rows that nothing is wrong with."""
        rows, count, values = self.rows, self.count, self.admitted.values
        if refused.any():
            kept = ~refused
            values = {name: value[kept] if _of_rows(value, count) else value for name, value in values.items()}
            rows, count = np.flatnonzero(kept) if isinstance(rows, slice) else rows[kept], int(kept.sum())
        found = self.question.solve(**{name: values[name] for name in self.question.direct if name in values})
        clock = next((name for name in self.admitted.taken if TERMS[name].kind is CLOCK), None)
        results.put(
            rows,
            found,
            {**values, **found},
            count=count,
            corners=2 ** len(self.admitted.ranges) if self.admitted.ranges else 0,
            like=self._like(clock) if clock else None,
        )

    def _like(self, name: str) -> Any:
        """Return the clock time after which a row's results are written: one for all, or a function of the row."""
        if self.admitted.origins[name] != "asked":
            return self.admitted.taken[name].low
        low = self.admitted.taken[name].low
        return low if low.form != "offset" else lambda row: self.cells[name].said(row).low  # type: ignore[union-attr]


def _of_rows(value: Any, count: int) -> bool:
    return isinstance(value, np.ndarray) and value.ndim > 0 and value.shape[0] == count


def _mark(name: str) -> str:
    return f"⟨{name}⟩"


def _marked(fault: Fault) -> str:
    return fault.input if fault.given == _mark(fault.input) else ""
