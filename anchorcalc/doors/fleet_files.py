"""`anchorcalc fleet`: a table from file to file, in constant memory, whole or not at all."""

import os
import sys
import tempfile
import warnings
from collections import Counter, deque
from collections.abc import Iterator, Mapping
from concurrent.futures import Future, ThreadPoolExecutor
from contextlib import contextmanager
from pathlib import Path
from typing import Any, BinaryIO

import msgspec
import pyarrow as pa
from tqdm import tqdm

from anchorcalc.catalogue import question as question_named
from anchorcalc.declare import Question
from anchorcalc.doors.fleet import THREADS, plan_of
from anchorcalc.doors.fleet_csv import CsvSink, CsvSource, Stream
from anchorcalc.doors.fleet_formats import JsonSink, JsonSource, ParquetSink, ParquetSource, as_texts
from anchorcalc.doors.fleet_frames import arrow, joined
from anchorcalc.doors.fleet_results import Results
from anchorcalc.doors.fleet_rows import Plan
from anchorcalc.errors import FileError, fault

Source = CsvSource | ParquetSource | JsonSource
Sink = CsvSink | ParquetSink | JsonSink
FORMATS = (".csv", ".parquet", ".jsonl")
INTERRUPTED, SOME_PROBLEM = 130, 1


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


def run_files(*, question: str, source: str, target: str, boat: Mapping[str, Any] | None, units: str | None, strict: bool) -> int:
    """Answer a question for every row of a file; return 0, or 1 where some row had a problem."""
    asked = question_named(question)
    tally = Tally()
    try:
        with warnings.catch_warnings(), _opened(source) as stream, _written(target) as file:
            warnings.showwarning = _warned
            warnings.simplefilter("always")
            read = _source(stream, source, target)
            sink = _sink(file, _format(target) or _format_of(read), read)
            answer_stream(asked, read, sink, tally, boat=boat, units=units, strict=strict, progress=_progress(source, stream))
    except KeyboardInterrupt:
        print("interrupted: nothing was written", file=sys.stderr)
        return INTERRUPTED
    except BrokenPipeError:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())  # nothing is left to flush to
        return SOME_PROBLEM
    print(tally.summary(), file=sys.stderr)
    return SOME_PROBLEM if tally.refused else 0


def _warned(message: Any, *_: Any, **__: Any) -> None:
    print(f"warning: {message}", file=sys.stderr)


# --- rows through -------------------------------------------------------------------------------------------------------------------


def answer_stream(
    question: Question, read: Source, sink: Sink, tally: Tally, *, boat: Any, units: Any, strict: bool = False, progress: Any = None
) -> None:
    """Answer a question for every row of a source and write them to a sink, in order; a few batches are under way at once."""
    plans: dict[tuple[str, ...], Plan] = {}

    def answered(batch: Any) -> tuple[Any, Results]:
        columns = _columns(batch, read)
        if columns not in plans:
            plans[columns] = plan_of(question, columns, boat=boat, units=units, strict=strict, comma=read.comma)
        return _answered(plans[columns], batch, columns, sink, read)

    def finish(one: Future[tuple[Any, Results]]) -> None:
        batch, results = one.result()
        sink.write(batch, results=len(results.columns) + 2)
        tally.add(results)
        if progress is not None:
            progress(results.rows)

    under_way: deque[Future[tuple[Any, Results]]] = deque()
    plans[tuple(read.columns)] = plan_of(question, read.columns, boat=boat, units=units, strict=strict, comma=read.comma)
    with ThreadPoolExecutor(THREADS) as pool:
        for batch in read.batches():
            under_way.append(pool.submit(answered, batch))
            if len(under_way) > THREADS:
                finish(under_way.popleft())
        while under_way:
            finish(under_way.popleft())
    if not tally.rows and not isinstance(sink, JsonSink):
        finish_empty = _answered(plans[tuple(read.columns)], _no_rows(read), tuple(read.columns), sink, read)
        sink.write(finish_empty[0], results=len(finish_empty[1].columns) + 2)
    sink.close()


def _columns(batch: Any, read: Source) -> tuple[str, ...]:
    return tuple(dict.fromkeys(name for row in batch for name in row)) if isinstance(batch, list) else tuple(read.columns)


def _no_rows(read: Source) -> Any:
    return pa.RecordBatch.from_arrays([pa.array([], pa.string()) for _ in read.columns], names=read.columns)


def _answered(plan: Plan, batch: Any, columns: tuple[str, ...], sink: Sink, read: Source) -> tuple[Any, Results]:
    """Return a batch with its answers beside it."""
    if isinstance(batch, list):
        values: dict[str, Any] = {name: [row.get(one.column) for row in batch] for name, one in plan.headings.inputs.items()}
        results = plan.answers(values, len(batch))
        if isinstance(sink, JsonSink):
            return _rows_with(batch, results), results
        batch = as_texts(batch, list(read.columns), where=read.where)
    else:
        places = {name: columns.index(one.column) for name, one in plan.headings.inputs.items()}
        results = plan.answers({name: batch.column(place) for name, place in places.items()}, batch.num_rows)
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


# --- files --------------------------------------------------------------------------------------------------------------------------


def _format(path: str) -> str:
    return "" if path == "-" else Path(path).suffix.lower()


def _format_of(read: Source) -> str:
    return ".csv" if isinstance(read, CsvSource) else ".parquet" if isinstance(read, ParquetSource) else ".jsonl"


@contextmanager
def _opened(path: str) -> Iterator[BinaryIO]:
    try:
        file: BinaryIO = sys.stdin.buffer if path == "-" else Path(path).open("rb")  # noqa: SIM115 - closed below
    except OSError as error:
        raise FileError([fault("table", "unreadable", path, f"cannot be read ({error.strerror})", "a .csv, .parquet or .jsonl file")]) from error
    with file:
        yield file


def _source(file: BinaryIO, path: str, other: str) -> Source:
    """Return a file to read, by its ending; a pipe by the other's ending, or by how it begins."""
    kind, where = _format(path), "the input" if path == "-" else path
    stream = Stream(file)
    if not kind:
        head = stream.look(lines=1)
        kind = ".parquet" if head.startswith(b"PAR1") else ".jsonl" if head.lstrip()[:1] == b"{" else ".csv"
    if kind == ".csv":
        return CsvSource(stream, where=where)
    if kind == ".jsonl":
        return JsonSource(stream, where=where)
    if kind == ".parquet":
        return ParquetSource(_spooled(stream) if path == "-" else path, where=where)
    raise FileError([fault("table", "unsupported_media_type", path, "has an ending that is not read", " or ".join(FORMATS))])


def _spooled(stream: Stream) -> Any:
    """Return a pipe as a file that can be read from its end, as Parquet must be."""
    spool = tempfile.TemporaryFile()  # noqa: SIM115 - lives as long as its reader
    while part := stream.read(1 << 20):
        spool.write(part)
    spool.seek(0)
    return spool


def _sink(file: Any, kind: str, read: Source) -> Sink:
    if kind == ".csv":
        return CsvSink(file, read.dialect)
    return ParquetSink(file) if kind == ".parquet" else JsonSink(file)


@contextmanager
def _written(path: str) -> Iterator[Any]:
    """Give a file to write to, that takes the place of the old one only when all is well; a pipe gets nothing before that."""
    if path != "-" and _format(path) not in FORMATS:
        raise FileError([fault("table", "unsupported_media_type", path, "has an ending that is not written", " or ".join(FORMATS))])
    whole = Path(os.path.realpath(path))
    try:
        folder = None if path == "-" else whole.parent
        file = tempfile.NamedTemporaryFile(dir=folder, prefix=f".{whole.name}.", suffix=".part", delete=False)  # noqa: SIM115 - closed below
    except OSError as error:
        raise FileError([fault("table", "unreadable", path, f"cannot be written ({error.strerror})", "a folder that can be written to")]) from error
    try:
        with file:
            with pa.OSFile(file.name, "w") as native:
                yield native
            os.fsync(file.fileno())
        if path == "-":
            _copied(file.name)
        else:
            Path(file.name).chmod(whole.stat().st_mode & 0o777 if whole.exists() else 0o666 & ~_umask())
            os.replace(file.name, whole)  # noqa: PTH105
    finally:
        Path(file.name).unlink(missing_ok=True)


def _copied(name: str) -> None:
    with Path(name).open("rb") as whole:
        while part := whole.read(1 << 20):
            sys.stdout.buffer.write(part)
    sys.stdout.buffer.flush()


def _umask() -> int:
    mask = os.umask(0)
    os.umask(mask)
    return mask


def _progress(path: str, file: BinaryIO) -> Any:
    """Return what shows the progress on a terminal: by bytes of a file, else by rows; nothing elsewhere."""
    if not sys.stderr.isatty():
        return None
    size = Path(path).stat().st_size if path != "-" else 0
    if not size or path.endswith(".parquet"):
        return tqdm(unit=" rows", unit_scale=True, leave=False).update
    bar = tqdm(total=size, unit="B", unit_scale=True, leave=False)
    return lambda rows: bar.update(file.tell() - bar.n)
