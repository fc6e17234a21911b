"""Parquet and JSON lines, in and out, batch by batch."""

from collections.abc import Iterator
from typing import Any

import msgspec
import pyarrow as pa
from pyarrow import parquet

from anchorcalc.doors.fleet_csv import Stream
from anchorcalc.doors.fleet_dialect import UTF_8_MARK
from anchorcalc.doors.fleet_signs import PLAIN_SIGNS
from anchorcalc.errors import FileError, fault

PARQUET_ROWS = 131_072
JSON_ROWS = 16_384
FIRST_LINES = 100  # whose names are the columns
LINE_AT_MOST = 1 << 20  # bytes of one line of JSON
_AN_OBJECT_A_LINE = '{"depth": "12 ft"}, an object a line'


class ParquetSource:
    """A Parquet file, read row group by row group."""

    signs = PLAIN_SIGNS
    dialect = None

    def __init__(self, file: Any, *, where: str) -> None:
        self.where = where
        try:
            self._file = parquet.ParquetFile(file)
        except (pa.ArrowInvalid, OSError) as error:
            raise FileError([fault("table", "unreadable", where, f"is no Parquet file ({error})", "a .parquet file")]) from error
        self.columns = self._file.schema_arrow.names
        self.rows = self._file.metadata.num_rows

    def batches(self) -> Iterator[Any]:
        """Yield the rows as record batches; of an empty file one without rows."""
        try:
            yield from self._file.iter_batches(batch_size=PARQUET_ROWS)
        except (pa.ArrowInvalid, OSError) as error:
            raise FileError([fault("table", "unreadable", self.where, f"cannot be read on ({error})", "a whole .parquet file")]) from error
        if not self.rows:
            yield pa.RecordBatch.from_pylist([], schema=self._file.schema_arrow)


class ParquetSink:
    """A Parquet file, written batch by batch."""

    def __init__(self, file: Any) -> None:
        self.file = file
        self._writer: Any = None

    def write(self, batch: Any, *, results: int) -> None:
        """Write a record batch."""
        if self._writer is None:
            self._writer = parquet.ParquetWriter(self.file, batch.schema)
        self._writer.write_batch(batch)

    def close(self) -> None:
        """Write the footer."""
        if self._writer is not None:
            self._writer.close()


class ArrowSource:
    """An Arrow stream, read batch by batch."""

    signs = PLAIN_SIGNS
    dialect = None

    def __init__(self, file: Any, *, where: str) -> None:
        self.where = where
        try:
            self._reader = pa.ipc.open_stream(file)
        except (pa.ArrowInvalid, OSError) as error:
            raise FileError([fault("table", "unreadable", where, f"is no Arrow stream ({error})", "an Arrow IPC stream")]) from error
        self.columns = self._reader.schema.names

    def batches(self) -> Iterator[Any]:
        """Yield the rows as record batches; of an empty stream one without rows."""
        some = False
        try:
            for batch in self._reader:
                some = True
                for start in range(0, batch.num_rows, PARQUET_ROWS):
                    yield batch.slice(start, PARQUET_ROWS)
        except (pa.ArrowInvalid, OSError) as error:
            raise FileError([fault("table", "unreadable", self.where, f"cannot be read on ({error})", "a whole Arrow stream")]) from error
        if not some:
            yield pa.RecordBatch.from_pylist([], schema=self._reader.schema)


class ArrowSink:
    """An Arrow stream, written batch by batch."""

    def __init__(self, file: Any) -> None:
        self.file = file
        self._writer: Any = None

    def write(self, batch: Any, *, results: int) -> None:
        """Write a record batch."""
        if self._writer is None:
            self._writer = pa.ipc.new_stream(self.file, batch.schema)
        self._writer.write_batch(batch)

    def close(self) -> None:
        """Write the end of the stream."""
        if self._writer is not None:
            self._writer.close()


class JsonSource:
    """JSON lines: an object a line, terms and values."""

    signs = PLAIN_SIGNS
    dialect = None

    def __init__(self, stream: Stream, *, where: str) -> None:
        self.where, self._stream = where, stream
        stream.look(lines=FIRST_LINES)
        stream.pass_over(UTF_8_MARK)
        head = stream.head
        lines = head.split(b"\n") if head.count(b"\n") < FIRST_LINES and not stream.more else head.split(b"\n")[:-1]
        if not lines:
            raise self._line_too_long()
        if not head.strip():
            raise FileError([fault("table", "unreadable", where, "is empty", _AN_OBJECT_A_LINE)])
        self.columns = list(dict.fromkeys(name for rows in self.batches_of(lines, JSON_ROWS) for row in rows for name in row))

    def batches(self) -> Iterator[list[dict[str, Any]]]:
        """Yield the rows as objects."""
        yield from self.batches_of(self._lines(), JSON_ROWS)

    def batches_of(self, lines: Any, most: int) -> Iterator[list[dict[str, Any]]]:
        """Yield objects read from lines, so many at once."""
        decoder = msgspec.json.Decoder(dict[str, Any])
        rows: list[dict[str, Any]] = []
        for number, line in enumerate(lines, start=1):
            if not line.strip():
                continue
            try:
                rows.append(decoder.decode(line))
            except (msgspec.MsgspecError, UnicodeError, RecursionError) as error:
                why = f"has a line that is no JSON object (line {number}: {error})"
                raise FileError([fault("table", "unreadable", self.where, why, _AN_OBJECT_A_LINE)]) from error
            if len(rows) >= most:
                yield rows
                rows = []
        if rows:
            yield rows

    def _lines(self) -> Iterator[bytes]:
        rest = b""
        while part := self._stream.read(1 << 20):
            *lines, rest = (rest + part).split(b"\n")
            yield from lines
            if len(rest) > LINE_AT_MOST:
                raise self._line_too_long()
        yield rest

    def _line_too_long(self) -> FileError:
        return FileError([fault("table", "too_long", self.where, "has a line of more than 1 MB", _AN_OBJECT_A_LINE)])


class JsonSink:
    """JSON lines, written batch by batch."""

    def __init__(self, file: Any) -> None:
        self.file = file

    def write(self, batch: list[dict[str, Any]], *, results: int) -> None:
        """Write rows."""
        self.file.write(msgspec.json.Encoder(enc_hook=str).encode_lines(batch))

    def close(self) -> None:
        """Nothing is left to write."""


class JsonArraySource:
    """A JSON array of objects, which is read whole."""

    signs = PLAIN_SIGNS
    dialect = None

    def __init__(self, text: bytes, *, where: str) -> None:
        self.where = where
        try:
            self.rows = msgspec.json.decode(text, type=list[dict[str, Any]])
        except (msgspec.MsgspecError, UnicodeError, RecursionError) as error:
            raise FileError([fault("table", "unreadable", where, f"is no JSON array of objects ({error})", '[{"depth": "12 ft"}]')]) from error
        self.columns = list(dict.fromkeys(name for row in self.rows for name in row))

    def batches(self) -> Iterator[list[dict[str, Any]]]:
        """Yield the rows as objects."""
        for start in range(0, len(self.rows), JSON_ROWS):
            yield self.rows[start : start + JSON_ROWS]


class JsonArraySink:
    """A JSON array of objects, written batch by batch."""

    def __init__(self, file: Any) -> None:
        self.file, self._before = file, b"["

    def write(self, batch: list[dict[str, Any]], *, results: int) -> None:
        """Write rows."""
        if batch:
            self.file.write(self._before + msgspec.json.Encoder(enc_hook=str).encode(batch)[1:-1])
            self._before = b","

    def close(self) -> None:
        """Close the array."""
        self.file.write(b"[]" if self._before == b"[" else b"]")


def as_texts(rows: list[dict[str, Any]], columns: list[str], *, where: str) -> Any:
    """Return objects as a record batch of texts, for a file that has columns."""
    for row in rows:
        for name in row:
            if name not in columns:
                why = f"has a name that the first line has not ({name[:60]})"
                raise FileError([fault("table", "unreadable", where, why, "all names in the first line, or a .jsonl file to write to")])
    arrays = [pa.array([_text(row.get(name)) for row in rows], pa.string()) for name in columns]
    return pa.RecordBatch.from_arrays(arrays, names=columns)


def _text(value: Any) -> str | None:
    return value if value is None or isinstance(value, str) else msgspec.json.encode(value).decode()
