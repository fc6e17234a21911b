"""Rows through a question, batch by batch, in order and in constant memory; a few batches are under way at once."""

from collections import Counter, deque
from collections.abc import Iterator, Mapping
from concurrent.futures import Future, ThreadPoolExecutor
from typing import Any

import msgspec
import pyarrow as pa

from anchorcalc.declare import Question
from anchorcalc.doors.fleet import THREADS, plan_of
from anchorcalc.doors.fleet_csv import CsvSource
from anchorcalc.doors.fleet_formats import ArrowSource, JsonArraySource, JsonSource, ParquetSource, as_texts
from anchorcalc.doors.fleet_frames import arrow, joined
from anchorcalc.doors.fleet_results import Results
from anchorcalc.doors.fleet_rows import Plan
from anchorcalc.doors.fleet_uneven import Mended
from anchorcalc.errors import Fault, TableError, fault

Source = CsvSource | ParquetSource | JsonSource | JsonArraySource | ArrowSource


class Tally:
    """How many rows there were, and what was wrong with some."""

    def __init__(self) -> None:
        self.rows = self.refused = 0
        self.kinds: Counter[str] = Counter()

    def add(self, results: Results) -> None:
        """Count the rows of a batch."""
        self.rows += results.rows
        self.refused += results.refused
        self.kinds += results.kinds

    def summary(self) -> str:
        """Return it in a line."""
        said = f"{self.rows} row{'s' if self.rows != 1 else ''}: {self.rows - self.refused} answered, {self.refused} with a problem"
        kinds = ", ".join(f"{code} {count}" for code, count in self.kinds.most_common())
        return f"{said} ({kinds})" if kinds else said


def answered(
    question: Question, read: Source, *, boat: Any, units: Any, strict: bool, to_json: bool, threads: int = THREADS
) -> Iterator[tuple[Any, Results]]:
    """Yield the rows of a source with their answers: objects where they go into JSON, else record batches.

    The headings are checked before the first batch. A source without rows gives one batch without rows.
    """
    plans = {tuple(read.columns): plan_of(question, read.columns, boat=boat, units=units, strict=strict, signs=read.signs)}
    if to_json:
        _distinct(read)

    def one(batch: Any) -> tuple[Any, Results]:
        batch, faults = batch if isinstance(batch, Mended) else (batch, {})
        columns = _columns(batch, read)
        if columns not in plans:  # objects of a JSON file need not have the same names
            plans[columns] = plan_of(question, columns, boat=boat, units=units, strict=strict, signs=read.signs)
        return _answered(plans[columns], batch, columns, read, to_json, faults)

    under_way: deque[Future[tuple[Any, Results]]] = deque()
    some = False
    with ThreadPoolExecutor(threads) as pool:
        for batch in read.batches():
            some = True
            under_way.append(pool.submit(one, batch))
            if len(under_way) > threads:
                yield under_way.popleft().result()
        while under_way:
            yield under_way.popleft().result()
    if not some:
        yield one([] if to_json else pa.RecordBatch.from_arrays([pa.array([], pa.string()) for _ in read.columns], names=list(read.columns)))


def _columns(batch: Any, read: Source) -> tuple[str, ...]:
    """Return the names in a batch: those of the first rows, and what other names its own rows have."""
    return tuple(dict.fromkeys([*read.columns, *(name for row in batch for name in row)])) if isinstance(batch, list) else tuple(read.columns)


def _distinct(read: Source) -> None:
    """Refuse columns of one name, which an object cannot hold."""
    twice = next((name for name, count in Counter(read.columns).items() if count > 1), None)
    if twice is not None:
        why = "is the name of two columns, which JSON cannot hold"
        raise TableError([fault("table", "given_twice", twice or "a blank heading", why, "another name for one of them")])


def _answered(plan: Plan, batch: Any, columns: tuple[str, ...], read: Source, to_json: bool, faults: Mapping[int, Fault]) -> tuple[Any, Results]:
    """Return a batch with its answers beside it; rows with a fault of their own go unanswered."""
    if isinstance(batch, list):
        values: dict[str, Any] = {name: [row.get(one.column) for row in batch] for name, one in plan.headings.inputs.items()}
        results = plan.answers(values, len(batch))
        if to_json:
            return _rows_with(batch, results), results
        batch = as_texts(batch, list(read.columns), where=read.where)
    else:
        places = {name: columns.index(one.column) for name, one in plan.headings.inputs.items()}
        results = plan.answers({name: batch.column(place) for name, place in places.items()}, batch.num_rows, faults)
        if to_json:
            return _rows_with(batch.to_pylist(), results), results
    added = {name: arrow(parts).chunk(0) for name, parts in joined([results]).items()}
    fields = [*batch.schema, *(pa.field(name, column.type) for name, column in added.items())]
    return pa.RecordBatch.from_arrays([*batch.columns, *added.values()], schema=pa.schema(fields, batch.schema.metadata)), results


def _rows_with(rows: list[dict[str, Any]], results: Results) -> list[dict[str, Any]]:
    """Return objects with the answers in them; what is not there is left out, and a list is a list."""
    added = {name: arrow(parts).to_pylist() for name, parts in joined([results]).items()}
    lists = {results.headings.names[field.name] for field in results.question.fields if field.many}
    for name, column in added.items():
        for row, value in zip(rows, column, strict=True):
            if value is not None:
                row[name] = msgspec.Raw(value.encode()) if name in lists else value
    return rows
