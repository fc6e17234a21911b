"""CSV in and out: any sane dialect, every cell kept as the text that it is."""

import csv
import io
from collections.abc import Iterator
from typing import IO, Any

import msgspec
import pyarrow as pa
import pyarrow.compute as pc
import pyarrow.csv as arrow_csv

from anchorcalc.doors.fleet_dialect import FIRST_ROWS, UTF_8_MARK, Dialect, sniffed
from anchorcalc.doors.fleet_uneven import Uneven
from anchorcalc.errors import FileError, fault

BLOCK = 1 << 20  # bytes read at once
HEAD_AT_MOST = 1 << 20  # bytes of a head
TAIL = 64  # bytes that tell how a file ends


class Stream:
    """A binary stream whose head has been looked at and is still read."""

    def __init__(self, rest: IO[bytes]) -> None:
        self.rest, self.head, self.tail, self.more, self.closed = rest, b"", b"", True, False

    def look(self, *, lines: int) -> bytes:
        """Return the head: so many whole lines, or all there is."""
        while self.head.count(b"\n") < lines and len(self.head) < HEAD_AT_MOST:
            more = self.rest.read(1 << 16)
            if not more:
                self.more = False
                break
            self.head += more
        return self.head

    def pass_over(self, part: bytes, *, behind: bytes = b"") -> None:
        """Take a part off the head, if it begins with it, or has it right behind what else it begins with."""
        if self.head.startswith(behind + part):
            self.head = behind + self.head[len(behind + part) :]

    def read(self, size: int = -1) -> bytes:
        """Return the next bytes."""
        if self.head:
            part, self.head = (self.head, b"") if size < 0 else (self.head[:size], self.head[size:])
        else:
            part = self.rest.read(size)
        self.tail = (self.tail + part)[-TAIL:] if len(part) < TAIL else part[-TAIL:]
        return part

    def readable(self) -> bool:
        """Say that it can be read."""
        return True

    def close(self) -> None:
        """Close it."""
        self.closed = True
        self.rest.close()


class CsvSource:
    """A CSV file, read block by block by one thread, which alone knows the numbers of uneven rows; taking cells apart is the least of the work."""

    def __init__(self, stream: Stream, *, where: str) -> None:
        self.where = where
        self.dialect, self.columns = sniffed(stream.look(lines=FIRST_ROWS), where=where)
        self.signs = self.dialect.signs
        stream.pass_over(self.dialect.said.encode(), behind=self.dialect.mark)
        self._stream = stream

    def batches(self) -> Iterator[Any]:
        """Yield the rows as record batches of texts; one with uneven rows in it comes with their faults."""
        uneven = Uneven(self.columns, delimiter=self.dialect.delimiter)
        last = None
        try:
            for batch in self._reader(uneven):
                last = batch
                yield uneven.mended(batch)
        except (pa.ArrowInvalid, UnicodeDecodeError, csv.Error) as error:
            if "Empty CSV file" not in str(error):
                raise self._unreadable(str(error)) from error
        rest = uneven.rest()
        if rest is not None:
            yield rest
        if last is not None and self._is_open(last):
            raise FileError(
                [fault("table", "unreadable", self.where, "ends within a quotation that begins in its last row", "a closing quotation mark")]
            )

    def _reader(self, uneven: Uneven) -> Any:
        return arrow_csv.open_csv(
            pa.PythonFile(self._stream, mode="r"),
            read_options=arrow_csv.ReadOptions(block_size=BLOCK, encoding=self.dialect.encoding, use_threads=False),
            parse_options=arrow_csv.ParseOptions(delimiter=self.dialect.delimiter, newlines_in_values=True, invalid_row_handler=uneven.take),
            convert_options=arrow_csv.ConvertOptions(column_types=dict.fromkeys(self.columns, pa.string()), strings_can_be_null=False),
        )

    def _unreadable(self, why: str) -> FileError:
        if "straddling" in why:
            said, would_do = "has a row of more than 1 MB, or a quotation that is never closed", "shorter rows, or a closing quotation mark"
            return FileError([fault("table", "too_long", self.where, said, would_do)])
        return FileError([fault("table", "unreadable", self.where, f"cannot be read on ({' '.join(why.split())})", "a CSV file in UTF-8")])

    def _is_open(self, last: Any) -> bool:
        """Say whether the file ends within quotes: its last cell goes over a line, and no quotation mark ends it."""
        cell = last.column(last.num_columns - 1)[last.num_rows - 1].as_py() if last.num_rows else ""
        return ("\n" in cell or "\r" in cell) and not self._stream.tail.rstrip(b"\r\n\0").endswith(b'"')


class CsvSink:
    """A CSV file, written batch by batch in the dialect of another, where there is one."""

    def __init__(self, file: Any, dialect: Dialect | None) -> None:
        self.file, self.dialect = file, dialect or Dialect(delimiter=",", end="\n", encoding="utf-8", mark=b"")
        self._writer: Any = None

    def write(self, batch: Any, *, results: int) -> None:
        """Write a record batch; the last `results` columns are the answer's."""
        batch = _as_cells(batch)
        if self.dialect.signs.decimal_comma:
            batch = _with_decimal_commas(batch, results)
        if self._writer is None:
            self._writer = self._begun(batch.schema)
        self._writer.write(batch)

    def _begun(self, schema: Any) -> Any:
        line = io.StringIO()
        csv.writer(line, delimiter=self.dialect.delimiter, lineterminator=self.dialect.end).writerow(schema.names)
        mark = UTF_8_MARK if self.dialect.mark else b""
        self.file.write(mark + (self.dialect.said + line.getvalue()).encode())
        options = arrow_csv.WriteOptions(include_header=False, delimiter=self.dialect.delimiter, eol=self.dialect.end)
        return arrow_csv.CSVWriter(self.file, schema, write_options=options)

    def close(self) -> None:
        """Write what is left."""
        if self._writer is not None:
            self._writer.close()


def _as_cells(batch: Any) -> Any:
    """Return a record batch as cells can hold it: lists and the like as JSON, categories as what they stand for."""
    kinds = (pa.types.is_nested, pa.types.is_dictionary, pa.types.is_string_view)
    if not any(is_kind(one.type) for one in batch.schema for is_kind in kinds):
        return batch
    return pa.RecordBatch.from_arrays([_as_cell_texts(column) for column in batch.columns], names=batch.schema.names)


def _as_cell_texts(column: Any) -> Any:
    if pa.types.is_dictionary(column.type):
        return column.dictionary_decode()
    if pa.types.is_string_view(column.type):
        return column.cast(pa.large_string())
    if not pa.types.is_nested(column.type):
        return column
    encoder = msgspec.json.Encoder(enc_hook=str)
    return pa.array([None if one is None else encoder.encode(one).decode() for one in column.to_pylist()], pa.string())


def _with_decimal_commas(batch: Any, results: int) -> Any:
    first = batch.num_columns - results
    columns = [
        pc.replace_substring(column.cast(pa.string()), ".", ",") if place >= first and pa.types.is_floating(column.type) else column
        for place, column in enumerate(batch.columns)
    ]
    return pa.RecordBatch.from_arrays(columns, names=batch.schema.names)
