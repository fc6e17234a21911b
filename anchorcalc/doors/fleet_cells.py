"""The cells of one input's column, in bulk: SI numbers, codes of words and seconds of clocks, and what kind of cell each row has."""

import math
import re
from collections.abc import Callable
from typing import Any

import msgspec
import numpy as np
import pyarrow as pa
import pyarrow.compute as pc

from anchorcalc.answering.taking import Taken, bounded, take
from anchorcalc.doors.fleet_signs import PLAIN_SIGNS, NumberSigns
from anchorcalc.errors import Code, Fault, cut, fault
from anchorcalc.units.clock import Form
from anchorcalc.units.kinds import CLOCK, FIXES, FLAG, LENGTHS, POSITION, RATIO, SLOPE, WORD, Unit
from anchorcalc.vocabulary.term import Term

Column = np.ndarray[Any, np.dtype[Any]]
ABSENT, GIVEN, FAULTY, RANGED = range(4)
FORMS: tuple[Form, ...] = ("plain", "naive", "offset")
_LISTS = (LENGTHS, POSITION, FIXES)
_UNKNOWN = object()
_REMEMBERED = 50_000  # texts of a column
_PLAIN_NUMBER = r"^[+-]?(\d+|\d+\.\d+|\.\d+)$"
_BARE_RANGE = re.compile(r"\s*[\d.,]+\s*(?:to|or|and)\s*[\d.,]+\s*\Z", re.I)  # alone it might be a ratio


class Cells(msgspec.Struct, kw_only=True):
    """The cells of one input in a batch of rows.

    `state` says of each row (or of all) whether nothing, a value, a faulty cell or a range stands there. `low` are the values: numbers
    in SI, codes, flags, seconds; `high` the other ends where there are ranges. `key` tells apart what cannot stand in one array: the
    form of clock times, the place of a list in `lists`. `said` reads one cell again, as the single call would; where all faulty cells have
    the same `fault`, that stands for it.
    """

    state: int | Column
    low: Column
    said: Callable[[int], Taken | Fault]
    high: Column | None = None
    key: int | Column = 0
    lists: list[Any] = []
    beaufort: bool | Column = False
    fault: Fault | None = None


def cell_of(column: int | Column, row: int) -> int:
    """Return what stands in a row, where one thing may stand for all rows."""
    return column if isinstance(column, int) else int(column[row])


class Reader:
    """Reads the column of one input: `unit` is the heading's; `signs` say how numbers are written."""

    def __init__(self, term: Term, *, unit: Unit | None, signs: NumberSigns = PLAIN_SIGNS) -> None:
        self.term, self.unit = term, unit
        self.signs = PLAIN_SIGNS if term.kind in (*_LISTS, WORD, FLAG, CLOCK) else signs
        self.plain_numbers = (unit is not None and term.kind is not LENGTHS) or term.kind in (RATIO, SLOPE)
        self._remembered: dict[Any, Taken | Fault | None] = {}

    def cells(self, values: Any) -> Cells:
        """Return the cells of floats in numpy, of an arrow array or of a list of anything."""
        if isinstance(values, np.ndarray):
            if self.plain_numbers:
                return self._floats(values)
            values = pa.array(values, from_pandas=True)
        if not isinstance(values, pa.Array):
            return self._objects(values)
        if pa.types.is_dictionary(values.type):
            values = values.dictionary_decode()
        if pa.types.is_floating(values.type) or pa.types.is_integer(values.type) or pa.types.is_decimal(values.type):
            if self.plain_numbers:
                return self._numbers(values)
            if self.unit is None and self.term.kind.has_unit:
                return self._without_unit(values)
        if self.term.kind is CLOCK and pa.types.is_timestamp(values.type):
            return self._moments(values.cast(pa.timestamp("us", values.type.tz), safe=False))
        if pa.types.is_string(values.type) or pa.types.is_large_string(values.type) or pa.types.is_string_view(values.type):
            return self._texts(values.cast(pa.large_string()))
        if pa.types.is_null(values.type):
            return Cells(state=ABSENT, low=np.zeros(len(values)), said=self._unsaid)
        if isinstance(values.type, pa.BaseExtensionType):  # what stands behind it may look like a number, as a month does
            return self._all_faulty(values, "wrong_kind", f"has things of a kind that is not read here ({values.type})", self.term.would_do)
        if pa.types.is_nested(values.type):
            return self._objects(values.to_pylist())
        coded = values.dictionary_encode()
        found = [self.thing(value) for value in coded.dictionary.to_pylist()]
        index = coded.indices.fill_null(-1).to_numpy(zero_copy_only=False)
        return self._looked_up(found, index, lambda row: _said(self.thing(values[row].as_py())))

    def _unsaid(self, row: int) -> Taken | Fault:
        raise AssertionError(f"nothing stands in row {row} for {self.term.name}")

    # --- numbers under a heading with a unit ----------------------------------------------------------------------------------------

    def _numbers(self, values: Any) -> Cells:
        whole = pa.types.is_integer(values.type)

        def said(row: int) -> Taken | Fault:
            number = values[row].as_py()
            return self.number(number if whole else float(number))

        missing = values.is_null().to_numpy(zero_copy_only=False) if values.null_count else None
        return self._bulk(values.cast(pa.float64(), safe=False).to_numpy(zero_copy_only=False), missing, said)

    def _floats(self, numbers: Column) -> Cells:
        """Return floats as cells; nan is nothing given."""
        cells = self._bulk(numbers, None, lambda row: self.number(float(numbers[row])))
        if not isinstance(cells.state, int):
            cells.state[np.isnan(numbers)] = ABSENT
        return cells

    def _bulk(self, numbers: Column, missing: Column | None, said: Callable[[int], Taken | Fault]) -> Cells:
        """Return plain numbers as cells, checked against the bounds all at once."""
        low = numbers * self.unit.factor if self.unit is not None and self.unit.factor != 1.0 else numbers
        if self.term.kind is SLOPE:
            low = np.where((low > 0.0) & (low < 1.0), 1.0 / np.where(low == 0.0, 1.0, low), low)
        if missing is None and low.size and self._all_within(float(low.min()), float(low.max())):
            return Cells(state=GIVEN, low=low, said=said)
        state = np.where(self._within(low), GIVEN, FAULTY).astype(np.int8)
        if missing is not None:
            state[missing] = ABSENT
        return Cells(state=state, low=low, said=said)

    def _all_within(self, least: float, most: float) -> bool:
        return bool(np.all(self._within(np.array([least, most]))))

    def _within(self, low: Column) -> Column:
        term = self.term
        within: Column = np.isfinite(low)
        if term.above is not None:
            within &= low > term.above
        if term.least is not None:
            within &= low >= term.least
        if term.most is not None:
            within &= low <= term.most
        return within

    def number(self, number: float) -> Taken | Fault:
        """Return one plain number as taken, or its fault."""
        if self.unit is None:
            return take(term=self.term, raw=number)
        text = f"{number:.0f}" if isinstance(number, float) and number.is_integer() and abs(number) < 1e15 else f"{number!r}"
        if isinstance(number, float) and not math.isfinite(number):
            return take(term=self.term, raw=f"{text} {self.unit.symbol}")
        si = number * self.unit.factor
        return bounded(term=self.term, low=si, high=si, unit=self.unit.symbol, given=f"{text} {self.unit.symbol}")

    def _without_unit(self, values: Any) -> Cells:
        """Return numbers that have no unit anywhere as cells."""
        would_do = f'the heading "{self.term.name} [{self.term.kind.metric}]", or {self.term.would_do} in each cell,'
        return self._all_faulty(values, "bare_number", "has numbers without a unit", would_do)

    def _all_faulty(self, values: Any, code: Code, why: str, would_do: str) -> Cells:
        """Return cells of which each is as bad as the other: one fault for all."""
        state = np.where(values.is_null().to_numpy(zero_copy_only=False), ABSENT, FAULTY).astype(np.int8)
        one = fault(self.term.name, code, None, why, would_do)
        return Cells(state=state, low=np.zeros(len(values)), said=lambda _: one, fault=one)

    # --- texts ----------------------------------------------------------------------------------------------------------------------

    def _texts(self, values: Any) -> Cells:
        """Return texts as cells: plain numbers in bulk, each other distinct text once."""

        def said(row: int) -> Taken | Fault:
            found = self.text(values[row].as_py())
            assert found is not None
            return found

        if self.plain_numbers:
            bare = self.signs.all_pointed(values)
            if not pc.any(pc.ends_with(bare, ".")).as_py():
                try:
                    numbers = bare.cast(pa.float64())
                except pa.ArrowInvalid:
                    return self._mixed(values, bare, said)
                missing = numbers.is_null().to_numpy(zero_copy_only=False) if numbers.null_count else None
                return self._bulk(numbers.to_numpy(zero_copy_only=False), missing, said)
        coded = values.dictionary_encode()
        found = [self.text(text) for text in coded.dictionary.to_pylist()]
        return self._looked_up(found, coded.indices.fill_null(-1).to_numpy(zero_copy_only=False), said)

    def _mixed(self, values: Any, bare: Any, said: Callable[[int], Taken | Fault]) -> Cells:
        """Return a column that holds plain numbers and other texts: each by its own way, then together."""
        plain = pc.fill_null(pc.match_substring_regex(bare, _PLAIN_NUMBER), False)
        numbers = pc.if_else(plain, bare, None).cast(pa.float64())
        of_numbers = self._bulk(numbers.to_numpy(zero_copy_only=False), numbers.is_null().to_numpy(zero_copy_only=False), said)
        coded = pc.if_else(plain, None, values).dictionary_encode()
        found = [self.text(text) for text in coded.dictionary.to_pylist()]
        of_texts = self._looked_up(found, coded.indices.fill_null(-1).to_numpy(zero_copy_only=False), said)
        is_plain = plain.to_numpy(zero_copy_only=False)
        high = None if of_texts.high is None else np.where(is_plain, of_numbers.low, of_texts.high)
        return Cells(
            state=np.where(is_plain, of_numbers.state, of_texts.state),
            low=np.where(is_plain, of_numbers.low, of_texts.low),
            high=high,
            said=said,
            beaufort=of_texts.beaufort if isinstance(of_texts.beaufort, bool) else of_texts.beaufort & ~is_plain,
        )

    def text(self, text: str) -> Taken | Fault | None:
        """Return one text as taken, or its fault; None for a blank one. A number without a unit takes the heading's."""
        known = self._remembered.get(text, _UNKNOWN)
        if known is not _UNKNOWN:
            return known  # type: ignore[return-value]
        found = self._text(text) if text.strip() else None
        if len(self._remembered) >= _REMEMBERED:
            self._remembered.clear()
        self._remembered[text] = found
        return found

    def _text(self, text: str) -> Taken | Fault:
        unclear = self.signs.fault(self.term.name, text)
        if unclear is not None:
            return unclear
        said = self.signs.pointed(text)
        found = take(term=self.term, raw=said)
        if isinstance(found, Fault) and self.unit is not None and (found.code == "bare_number" or _BARE_RANGE.match(said)):
            found = take(term=self.term, raw=f"{said} {self.unit.symbol}")
        return msgspec.structs.replace(found, given=cut(text)) if said != text and isinstance(found, Fault) else found

    # --- anything -------------------------------------------------------------------------------------------------------------------

    def _objects(self, values: list[Any]) -> Cells:
        places: dict[Any, int] = {}
        found: list[Taken | Fault | None] = []
        index = np.empty(len(values), dtype=np.int64)
        for row, value in enumerate(values):
            key = (type(value), value if isinstance(value, str | int | float) else repr(value))
            if key not in places:
                places[key] = len(found)
                found.append(self.thing(value))
            index[row] = places[key]
        return self._looked_up(found, index, lambda row: _said(self.thing(values[row])))

    def thing(self, value: Any) -> Taken | Fault | None:
        """Return any value as taken, or its fault; None where nothing stands there."""
        if value is None or (not isinstance(value, list | dict | tuple) and _is_no_value(value)):
            return None
        if isinstance(value, str):
            return self.text(value)
        if self.plain_numbers and isinstance(value, int | float | np.number) and not isinstance(value, bool):
            return self.number(value if isinstance(value, int) else float(value))
        if self.unit is not None and isinstance(value, list | tuple):
            return take(term=self.term, raw={"value": list(value), "unit": self.unit.symbol})
        if isinstance(value, dict):
            value = {key: one for key, one in value.items() if one is not None}
        return take(term=self.term, raw=value)

    def _moments(self, values: Any) -> Cells:
        """Return dates with times as cells: seconds from 1970."""

        def said(row: int) -> Taken | Fault:
            return take(term=self.term, raw=values[row].as_py())

        low = values.cast(pa.int64()).fill_null(0).to_numpy(zero_copy_only=False) / 1e6
        early, late = -2208988800.0, 7289654400.0  # the beginnings of 1900 and of 2201
        state = np.where((low >= early) & (low < late), GIVEN, FAULTY).astype(np.int8)
        for row in np.flatnonzero(state == FAULTY).tolist():  # near the ends the zone decides
            state[row] = GIVEN if isinstance(said(row), Taken) else FAULTY
        if values.null_count:
            state[values.is_null().to_numpy(zero_copy_only=False)] = ABSENT
        return Cells(state=state, low=low, said=said, key=FORMS.index("offset" if values.type.tz else "naive"))

    def _looked_up(self, found: list[Taken | Fault | None], index: Column, said: Callable[[int], Taken | Fault]) -> Cells:
        """Return cells of which each is one of the things found; -1 is none."""
        found = [*found, None]
        kind = self.term.kind
        state = np.array([_state(one) for one in found], dtype=np.int8)[index]
        takens = [one if isinstance(one, Taken) else None for one in found]
        if kind in _LISTS:
            return Cells(
                state=state, low=index, key=np.where(state == GIVEN, index, -1), lists=[one.low if one else None for one in takens], said=said
            )
        if kind is CLOCK:
            seconds = np.array([one.low.seconds if one else 0.0 for one in takens])[index]
            forms = np.array([FORMS.index(one.low.form) if one else 0 for one in takens])[index]
            return Cells(state=state, low=seconds, key=forms, said=said)
        dtype: Any = np.int64 if kind is WORD else np.bool_ if kind is FLAG else np.float64
        low, high = (np.array([getattr(one, end) if one else 0 for one in takens], dtype=dtype)[index] for end in ("low", "high"))
        beaufort = np.array([bool(one and one.beaufort) for one in takens])[index] if self.term.name == "wind" else False
        return Cells(state=state, low=low, high=high if np.any(state == RANGED) else None, said=said, beaufort=beaufort)


def _state(one: Taken | Fault | None) -> int:
    return ABSENT if one is None else FAULTY if isinstance(one, Fault) else RANGED if one.is_range else GIVEN


def _said(one: Taken | Fault | None) -> Taken | Fault:
    assert one is not None
    return one


def _is_no_value(value: Any) -> bool:
    """Say whether a value is none: nan, NaT, NA."""
    if isinstance(value, float):
        return math.isnan(value)
    return type(value).__name__ in ("NAType", "NaTType", "MaskedConstant") or (isinstance(value, np.floating) and bool(np.isnan(value)))
