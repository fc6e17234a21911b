"""CSV in and out: any sane dialect, every cell kept as the text that it is."""

import csv
import io
from collections.abc import Iterator
from typing import IO, Any

import msgspec
import pyarrow as pa
import pyarrow.compute as pc
import pyarrow.csv as arrow_csv

from anchorcalc.doors.fleet_uneven import Uneven
from anchorcalc.errors import FileError, fault

BLOCK = 1 << 20  # bytes read at once
HEAD_AT_MOST = 1 << 20  # bytes of a heading line
_DELIMITERS = (",", ";", "\t", "|")
_UTF_8_MARK = b"\xef\xbb\xbf"
_UTF_16_MARKS = (b"\xff\xfe", b"\xfe\xff")


class Dialect(msgspec.Struct, frozen=True, kw_only=True):
    """How a file is written: what stands between cells and behind lines, its encoding, and whether a mark of that comes first."""

    delimiter: str
    end: str
    encoding: str
    mark: bytes

    @property
    def comma(self) -> bool:
        """Whether a comma between two digits is a decimal comma: where something else stands between the cells."""
        return self.delimiter != ","


class Stream:
    """A binary stream whose head has been looked at and is still read."""

    def __init__(self, rest: IO[bytes]) -> None:
        self.rest, self.head, self.more, self.closed = rest, b"", True, False

    def look(self, *, lines: int) -> bytes:
        """Return the head: so many whole lines, or all there is."""
        while self.head.count(b"\n") < lines and len(self.head) < HEAD_AT_MOST:
            more = self.rest.read(1 << 16)
            if not more:
                self.more = False
                break
            self.head += more
        return self.head

    def read(self, size: int = -1) -> bytes:
        """Return the next bytes."""
        if self.head:
            part, self.head = (self.head, b"") if size < 0 else (self.head[:size], self.head[size:])
        else:
            part = self.rest.read(size)
        return part

    def readable(self) -> bool:
        """Say that it can be read."""
        return True

    def close(self) -> None:
        """Close it."""
        self.closed = True
        self.rest.close()


def sniffed(head: bytes, *, where: str) -> tuple[Dialect, list[str]]:
    """Return how a file is written, and its headings.

    Raises
    ------
    FileError
        If there is no heading line, or it is in no encoding that is read.
    """
    mark = next((one for one in (_UTF_8_MARK, *_UTF_16_MARKS) if head.startswith(one)), b"")
    encoding = "utf-16" if mark in _UTF_16_MARKS else "utf-8"
    try:
        text = head[: len(head) // 2 * 2].decode(encoding) if encoding == "utf-16" else head.rpartition(b"\n")[0].decode() or head.decode()
    except UnicodeDecodeError as error:
        raise FileError([fault("table", "unreadable", where, f"is not in UTF-8 ({error.reason})", "a CSV file in UTF-8")]) from error
    text = text.removeprefix("\ufeff").lstrip("\r\n")
    if not text.strip():
        raise FileError([fault("table", "unreadable", where, "is empty", "a CSV file with a line of headings")])
    line = _first_line(text)
    delimiter = max(_DELIMITERS, key=lambda one: _outside(line, one))
    headings = next(csv.reader(io.StringIO(line, newline=""), delimiter=delimiter))
    return Dialect(delimiter=delimiter, end="\r\n" if line.endswith("\r\n") else "\n", encoding=encoding, mark=mark), headings


def _first_line(text: str) -> str:
    """Return the first line; an end of line between quotes does not end it."""
    line = ""
    for part in text.splitlines(keepends=True):
        line += part
        if line.count('"') % 2 == 0:
            break
    return line


def _outside(line: str, sign: str) -> int:
    """Return how often a sign stands outside quotes and brackets."""
    count, quoted, depth = 0, False, 0
    for one in line:
        if one == '"':
            quoted = not quoted
        elif not quoted:
            depth += (one in "[(") - (one in "])")
            count += one == sign and depth == 0
    return count


class CsvSource:
    """A CSV file, read block by block by one thread, which alone knows the numbers of uneven rows; taking cells apart is the least of the work."""

    def __init__(self, stream: Stream, *, where: str) -> None:
        self.where = where
        self.dialect, self.columns = sniffed(stream.look(lines=2), where=where)
        self.comma = self.dialect.comma
        self._stream = stream

    def batches(self) -> Iterator[Any]:
        """Yield the rows as record batches of texts; one with uneven rows in it comes with their faults."""
        uneven = Uneven(self.columns, delimiter=self.dialect.delimiter)
        try:
            reader = arrow_csv.open_csv(
                pa.PythonFile(self._stream, mode="r"),
                read_options=arrow_csv.ReadOptions(block_size=BLOCK, encoding=self.dialect.encoding, use_threads=False),
                parse_options=arrow_csv.ParseOptions(delimiter=self.dialect.delimiter, newlines_in_values=True, invalid_row_handler=uneven.take),
                convert_options=arrow_csv.ConvertOptions(column_types=dict.fromkeys(self.columns, pa.string()), strings_can_be_null=False),
            )
            for batch in reader:
                yield uneven.mended(batch)
            rest = uneven.rest()
            if rest is not None:
                yield rest
        except (pa.ArrowInvalid, UnicodeDecodeError, csv.Error) as error:
            if "Empty CSV file" in str(error):
                return
            raise FileError([fault("table", "unreadable", self.where, f"cannot be read on ({error})", "a CSV file in UTF-8")]) from error


class CsvSink:
    """A CSV file, written batch by batch in the dialect of another, where there is one."""

    def __init__(self, file: Any, dialect: Dialect | None) -> None:
        self.file, self.dialect = file, dialect or Dialect(delimiter=",", end="\n", encoding="utf-8", mark=b"")
        self._writer: Any = None

    def write(self, batch: Any, *, results: int) -> None:
        """Write a record batch; the last `results` columns are the answer's."""
        if self.dialect.delimiter == ";":
            batch = _with_decimal_commas(batch, results)
        if self._writer is None:
            self._writer = self._begun(batch.schema)
        self._writer.write(batch)

    def _begun(self, schema: Any) -> Any:
        line = io.StringIO()
        csv.writer(line, delimiter=self.dialect.delimiter, lineterminator=self.dialect.end).writerow(schema.names)
        mark = _UTF_8_MARK if self.dialect.mark else b""
        self.file.write(mark + line.getvalue().encode())
        options = arrow_csv.WriteOptions(include_header=False, delimiter=self.dialect.delimiter, eol=self.dialect.end)
        return arrow_csv.CSVWriter(self.file, schema, write_options=options)

    def close(self) -> None:
        """Write what is left."""
        if self._writer is not None:
            self._writer.close()


def _with_decimal_commas(batch: Any, results: int) -> Any:
    first = batch.num_columns - results
    columns = [
        pc.replace_substring(column.cast(pa.string()), ".", ",") if place >= first and pa.types.is_floating(column.type) else column
        for place, column in enumerate(batch.columns)
    ]
    return pa.RecordBatch.from_arrays(columns, names=batch.schema.names)
