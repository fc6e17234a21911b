"""`anchorcalc fleet`: a table from file to file, in constant memory, whole or not at all."""

import os
import sys
import tempfile
import warnings
from collections.abc import Callable, Iterator, Mapping
from contextlib import closing, contextmanager
from pathlib import Path
from typing import Any, BinaryIO

import pyarrow as pa
from tqdm import tqdm

from anchorcalc.catalogue import question as question_named
from anchorcalc.doors.fleet_csv import CsvSink, CsvSource, Stream
from anchorcalc.doors.fleet_formats import JsonSink, JsonSource, ParquetSink, ParquetSource
from anchorcalc.doors.fleet_stream import Tally, answered
from anchorcalc.errors import FileError, fault

Source = CsvSource | ParquetSource | JsonSource
Sink = CsvSink | ParquetSink | JsonSink
FORMATS = (".csv", ".parquet", ".jsonl")
INTERRUPTED, SOME_PROBLEM = 130, 1


def run_files(*, question: str, source: str, target: str, boat: Mapping[str, Any] | None, units: str | None, strict: bool) -> int:
    """Answer a question for every row of a file; return 0, or 1 where some row had a problem."""
    asked = question_named(question)
    tally = Tally()
    try:
        with warnings.catch_warnings(), _opened(source) as stream, _written(target, source=stream) as file:
            warnings.showwarning = _warned(set())
            warnings.simplefilter("always")
            read = _source(stream, source, target)
            with closing(_sink(file, _format(target) or _format_of(read), read)) as sink, _progress(source, stream) as show:
                for batch, results in answered(asked, read, boat=boat, units=units, strict=strict, to_json=isinstance(sink, JsonSink)):
                    sink.write(batch, results=len(results.named()))
                    tally.add(results)
                    show(results.rows)
    except KeyboardInterrupt:
        print("interrupted: nothing was written", file=sys.stderr)
        return INTERRUPTED
    except BrokenPipeError:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())  # nothing is left to flush to
        return SOME_PROBLEM
    print(tally.summary(), file=sys.stderr)
    return SOME_PROBLEM if tally.refused else 0


def _warned(said: set[str]) -> Callable[..., None]:
    """Return what says a warning once, however many rows deserve it."""

    def warned(message: Any, *_: Any, **__: Any) -> None:
        if str(message) not in said:
            said.add(str(message))
            print(f"warning: {message}", file=sys.stderr)

    return warned


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
def _written(path: str, *, source: BinaryIO) -> Iterator[Any]:
    """Give a file to write to, that takes the place of the old one only when all is well; a pipe gets nothing before that."""
    if path != "-" and _format(path) not in FORMATS:
        raise FileError([fault("table", "unsupported_media_type", path, "has an ending that is not written", " or ".join(FORMATS))])
    whole = Path(os.path.realpath(path))
    if path != "-" and whole.exists() and os.path.samestat(whole.stat(), os.fstat(source.fileno())):
        raise FileError([fault("table", "contradiction", path, "is the file that is read, which would be lost", "another file to write to")])
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


@contextmanager
def _progress(path: str, file: BinaryIO) -> Iterator[Callable[[int], Any]]:
    """Show the progress on a terminal, by bytes of a file, else by rows; nothing elsewhere."""
    if not sys.stderr.isatty():
        yield lambda rows: None
        return
    size = Path(path).stat().st_size if path != "-" and not path.endswith(".parquet") else 0
    with tqdm(total=size or None, unit="B" if size else " rows", unit_scale=True, leave=False) as bar:
        yield (lambda rows: bar.update(file.tell() - bar.n)) if size else bar.update
