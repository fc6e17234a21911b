"""The columns of an answer: each result at its own worst corner, in the unit of its heading; cautions; and what is wrong with a row."""

from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from typing import Any

import msgspec
import numpy as np
import pyarrow as pa

from anchorcalc.answering.results import Builder, in_order, worst_corner
from anchorcalc.declare import Field, Question
from anchorcalc.doors.fleet_cells import Column
from anchorcalc.doors.fleet_headings import Headings
from anchorcalc.errors import Fault
from anchorcalc.units.clock import Clock, clock_text
from anchorcalc.units.kinds import CLOCK, FLAG, WORD

BETWEEN_CAUTIONS = " "
BETWEEN_FAULTS = " | "
_NONE = -1


class Coded:
    """A column of texts, few of them distinct: the place of each row's text (or of all rows'); `empty` stands for a row without."""

    def __init__(self, rows: int, *, texts: Sequence[str] = (), empty: str | None = None) -> None:
        self.texts: list[str | None] = [empty, *texts]
        self.rows, self.codes = rows, 0  # type: tuple[int, int | Column]
        self._places: dict[str, int] = {text: place for place, text in enumerate(texts, start=1)}

    def place(self, text: str) -> int:
        """Return the place of a text, a new one where it is new."""
        if text not in self._places:
            self._places[text] = len(self.texts)
            self.texts.append(text)
        return self._places[text]

    def put(self, rows: Any, codes: int | Column) -> None:
        """Put the places of texts in rows."""
        if isinstance(rows, slice):
            self.codes = codes
            return
        if isinstance(self.codes, int):
            self.codes = np.full(self.rows, self.codes, dtype=np.int32)
        self.codes[rows] = codes

    def arrow(self, kind: Any) -> Any:
        """Return the column as arrow texts of a kind; views share the bytes of equal texts."""
        texts = pa.array(self.texts, kind)
        if isinstance(self.codes, int) and kind != pa.string_view():
            return pa.repeat(texts[self.codes], self.rows)
        codes = np.full(self.rows, self.codes, dtype=np.int32) if isinstance(self.codes, int) else self.codes
        if kind != pa.string_view() or texts.null_count:
            return texts.take(pa.array(codes)) if kind != pa.string_view() else self.arrow(pa.large_string())
        _, views, *data = texts.buffers()
        of_rows = np.frombuffer(views, dtype="V16")[: len(texts)][codes]
        return pa.Array.from_buffers(kind, self.rows, [None, pa.py_buffer(of_rows), *data])

    def plain(self) -> Column:
        """Return the column as an array of objects."""
        if isinstance(self.codes, int):
            return filled(self.rows, self.texts[self.codes])
        return np.array(self.texts, dtype=object)[self.codes]


def filled(rows: int, thing: Any) -> Column:
    """Return an array of one object over and over."""
    column = np.empty(rows, dtype=object)
    column.fill(thing)
    return column


class Values:
    """A column of numbers or of yes and no; nothing is kept of it before the first row has one."""

    def __init__(self, rows: int, *, flags: bool) -> None:
        self.rows, self.flags = rows, flags
        self.values: Column | None = None

    def put(self, rows: Any, values: Any) -> None:
        """Put values in rows."""
        if isinstance(rows, slice) and np.shape(values) == (self.rows,):
            self.values = np.asarray(values).astype(np.int8 if self.flags else np.float64, copy=False)
            return
        if self.values is None:
            self.values = np.full(self.rows, _NONE, dtype=np.int8) if self.flags else np.full(self.rows, np.nan)
        self.values[rows] = values

    def arrow(self, _: Any) -> Any:
        """Return the column as arrow numbers, or yes and no; null where there is none."""
        if self.values is None:
            return pa.nulls(self.rows, pa.bool_() if self.flags else pa.float64())
        absent = self.values < 0 if self.flags else np.isnan(self.values)
        mask = absent if absent.any() else None
        return pa.array(self.values == 1 if self.flags else self.values, mask=mask)

    def plain(self) -> Column:
        """Return the column as a numpy array: nan or None where there is none."""
        if self.values is None:
            return filled(self.rows, None) if self.flags else np.full(self.rows, np.nan)
        return np.array([False, True, None], dtype=object)[self.values] if self.flags else self.values


Part = Coded | Values


class Results:
    """The columns of an answer for a batch of rows, filled group by group."""

    def __init__(self, question: Question, headings: Headings, *, rows: int) -> None:
        self.question, self.headings, self.rows = question, headings, rows
        self.columns: dict[str, Part] = {field.name: _empty(field, rows) for field in question.fields}
        self.cautions, self.problems = Coded(rows, empty=""), Coded(rows, empty="")
        self.kinds: Counter[str] = Counter()
        self.refused = 0

    # --- problems -------------------------------------------------------------------------------------------------------------------

    def refuse(self, rows: Any, faults: Sequence[Fault], count: int) -> None:
        """Say what is wrong with rows."""
        self.problems.put(rows, self.problems.place(BETWEEN_FAULTS.join(str(one) for one in faults)))
        self.kinds.update(dict.fromkeys({one.code for one in faults}, count))
        self.refused += count

    # --- answers --------------------------------------------------------------------------------------------------------------------

    def put(self, rows: Any, found: Mapping[str, Any], values: Mapping[str, Any], *, count: int, corners: int, like: Any) -> None:
        """Put the results of some rows in place; `like` is the clock time (or gives a row's) after which times are written."""
        places: dict[str, Any] = {}
        for field in in_order(self.question.fields):
            value = found.get(field.name)
            if value is None:
                continue
            if field.many:
                self._lists(field, rows, found, count=count, corners=corners, like=like)
            else:
                self._one(field, rows, _at_worst(field, value, places, corners=corners), count=count, like=like)
        self._warn(rows, values, count=count, corners=corners)

    def _one(self, field: Field, rows: Any, value: Any, *, count: int, like: Any) -> None:
        column = self.columns[field.name]
        if not isinstance(column, Coded):
            unit = self.headings.units[field.name]
            column.put(rows, value if field.kind is FLAG else tidied(value / unit.factor if unit is not None else np.asarray(value, dtype=float)))
        elif field.kind is CLOCK:
            column.put(rows, _clock_codes(column, np.broadcast_to(value, (count,)), rows, like))
        elif isinstance(value, str):
            column.put(rows, column.place(value))
        else:
            column.put(rows, np.broadcast_to(np.asarray(value).astype(np.int32) + 1, (count,)))

    def _lists(self, field: Field, rows: Any, found: Mapping[str, Any], *, count: int, corners: int, like: Any) -> None:
        """Put lists in place as JSON texts, as the single answers hold them."""
        column = self.columns[field.name]
        assert isinstance(column, Coded)
        places = range(count) if isinstance(rows, slice) else rows.tolist()
        codes = np.empty(count, dtype=np.int32)
        for place, row in enumerate(places):
            builder = Builder(system=self.headings.system, corners=corners, clock_like=like(row) if callable(like) else like)
            made = builder.results((field,), {field.name: _of_row(found[field.name], place, count)})
            codes[place] = column.place(msgspec.json.encode(made[field.name]).decode()) if field.name in made else 0
        column.put(rows, codes)

    # --- cautions -------------------------------------------------------------------------------------------------------------------

    def _warn(self, rows: Any, values: Mapping[str, Any], *, count: int, corners: int) -> None:
        """Put the codes of the cautions in place, those of one row in the order of its single answer."""
        always, some = 0, []
        for place, rule in enumerate(self.question.cautions):
            where: Any = np.asarray(rule.holds(values))
            if where.ndim and corners:
                where = where.any(axis=-1)
            if where.ndim:
                some.append((1 << place, where))
            elif where:
                always |= 1 << place
        if not some:
            self.cautions.put(rows, self._codes(always))
            return
        pattern = np.zeros(count, dtype=np.int64)
        for place, (_, where) in enumerate(some):
            pattern += where.astype(np.int64) << place
        codes = np.zeros(1 << len(some), dtype=np.int32)
        for one in np.flatnonzero(np.bincount(pattern)).tolist():
            codes[one] = self._codes(always | sum(bit for place, (bit, _) in enumerate(some) if one >> place & 1))
        self.cautions.put(rows, codes[pattern])

    def _codes(self, bits: int) -> int:
        codes = dict.fromkeys(rule.caution.code for place, rule in enumerate(self.question.cautions) if bits >> place & 1)
        return self.cautions.place(BETWEEN_CAUTIONS.join(codes)) if codes else 0

    def named(self) -> dict[str, Part]:
        """Return all columns by the headings they go out under."""
        names = self.headings.names
        return {names[name]: column for name, column in self.columns.items()} | {
            self.headings.cautions: self.cautions,
            self.headings.problem: self.problems,
        }


def _empty(field: Field, rows: int) -> Part:
    if field.many or field.kind is CLOCK or field.kind is WORD:
        return Coded(rows, texts=field.choices if not field.many else ())
    return Values(rows, flags=field.kind is FLAG)


def tidied(values: Column) -> Column:
    """Return numbers with the noise of their last two bits taken off, where a number of nine decimals lies that near: 140, not 140.00000000000003."""
    near: Column = np.multiply(values, 1e9)
    near = np.divide(np.rint(near, out=near), 1e9, out=near) if near.ndim else np.rint(near) / 1e9
    off = np.abs(near - values)
    return np.where(off > 4.5e-16 * np.abs(values), values, near)


def _at_worst(field: Field, value: Any, places: dict[str, Any], *, corners: int) -> Any:
    """Return a result at its worst corner, row by row; without ranges there is only one."""
    if not corners or isinstance(value, str):
        return value
    every = np.asarray(value)
    every = np.broadcast_to(every, (every.shape[0] if every.ndim == 2 else 1, corners))
    place = worst_corner(field, every, places)
    place = np.broadcast_to(place, np.broadcast_shapes(np.shape(place), every.shape[:1]))
    places[field.name] = place
    every = np.broadcast_to(every, (place.shape[0], corners))
    return np.take_along_axis(every, place[:, np.newaxis], axis=1)[:, 0]


def _of_row(value: Any, place: int, count: int) -> Any:
    """Return one row's part of a result that is a list."""
    if isinstance(value, dict):
        return {name: _of_row(one, place, count) for name, one in value.items()}
    if isinstance(value, tuple | list):
        return tuple(_of_row(one, place, count) for one in value)
    if isinstance(value, np.ndarray) and value.ndim:
        return value[place if value.shape[0] == count else 0]
    return value


def _clock_codes(column: Coded, seconds: Column, rows: Any, like: Clock | Callable[[int], Clock]) -> Column:
    codes = np.zeros(seconds.size, dtype=np.int32)
    there = np.flatnonzero(np.isfinite(seconds))
    if callable(like):
        places = np.arange(seconds.size)[there] if isinstance(rows, slice) else rows[there]
        codes[there] = [column.place(_shown(float(seconds[one]), like(int(row)))) for one, row in zip(there, places, strict=True)]
        return codes
    minutes, back = np.unique(np.floor(np.round(seconds[there], 6) / 60.0), return_inverse=True)
    codes[there] = np.array([column.place(_shown(minute * 60.0, like)) for minute in minutes.tolist()], dtype=np.int32)[back]
    return codes


def _shown(seconds: float, like: Clock) -> str:
    text, days = clock_text(seconds=seconds, like=like)
    return text if not days else f"{text} (day {days:+d})"
