"""A table in a request: spooled to a bounded temporary file, checked, and answered part by part."""

import io
import tempfile
import warnings
from collections.abc import Callable, Generator
from typing import IO, Any, NamedTuple

import pyarrow as pa

from anchorcalc.declare import Question
from anchorcalc.doors.fleet_csv import CsvSink, CsvSource, Stream
from anchorcalc.doors.fleet_formats import ArrowSink, ArrowSource, JsonArraySink, JsonArraySource, JsonSink, JsonSource
from anchorcalc.doors.fleet_stream import Tally, answered
from anchorcalc.errors import FileError, fault

from .problems import Refused

CSV, JSON_LINES, JSON_ARRAY, ARROW = "text/csv", "application/x-ndjson", "application/json", "application/vnd.apache.arrow.stream"
ALSO_CALLED = {"application/jsonl": JSON_LINES, "application/x-jsonlines": JSON_LINES, "application/jsonlines": JSON_LINES}
IN_MEMORY = 1 << 20  # bytes of a table that stay in memory


class Spool:
    """A body as it arrives: in memory while small, then in a temporary file, never larger than allowed."""

    def __init__(self, *, most: int, rows: int, counted: bool, file: IO[bytes] | None = None) -> None:
        self.file = file or tempfile.SpooledTemporaryFile(max_size=IN_MEMORY)  # noqa: SIM115 - closed when the answer is through
        self.most, self.rows, self.counted = most, rows, counted
        self.size = self.lines = 0
        self.one_line = True

    def add(self, part: bytes) -> None:
        """Take a part of the body."""
        self.size += len(part)
        self.one_line &= b"\n" not in part and b"\r" not in part
        if self.size > self.most:
            raise Refused(413, fault("body", "too_large", None, f"is larger than {self.most} bytes", f"{self.most} bytes or less"))
        if self.counted:
            self.lines += part.count(b"\n")
            if self.lines > self.rows + 1:
                raise too_many_rows(self.rows)
        self.file.write(part)

    def close(self) -> None:
        """Give the file up."""
        self.file.close()


def row_limit_of_arrow(spool: Spool) -> None:
    """Refuse an Arrow stream with too many rows, before any is answered."""
    spool.file.seek(0)
    try:
        rows = 0
        for batch in pa.ipc.open_stream(spool.file):
            rows += batch.num_rows
            if rows > spool.rows:
                raise too_many_rows(spool.rows)
    except (pa.ArrowInvalid, OSError) as error:
        one = fault("body", "unreadable_request", None, f"is no Arrow stream ({error})", "a whole Arrow IPC stream")
        raise Refused(400, one) from error


class Form(NamedTuple):
    """A form that a table comes in, and its answer goes out in."""

    media: str
    source: Callable[[IO[bytes]], Any]
    sink: Callable[[Any, Any], Any]
    lines: bool  # a row is at least a line
    check: Callable[[Spool], None] | None = None


FORMS = {
    CSV: Form(CSV, lambda file: CsvSource(Stream(file), where="body"), lambda file, read: CsvSink(file, read.dialect), True),
    JSON_LINES: Form(JSON_LINES, lambda file: JsonSource(Stream(file), where="body"), lambda file, _: JsonSink(file), True),
    JSON_ARRAY: Form(JSON_ARRAY, lambda file: JsonArraySource(file.read(), where="body"), lambda file, _: JsonArraySink(file), False),
    ARROW: Form(ARROW, lambda file: ArrowSource(file, where="body"), lambda file, _: ArrowSink(file), False, row_limit_of_arrow),
}


def too_many_rows(most: int) -> Refused:
    """Return the refusal of a table with too many rows."""
    return Refused(413, fault("body", "too_large", None, f"has more than {most} rows", f"{most} rows or fewer"))


class Buffer(io.BytesIO):
    """What a sink has written since it was last taken."""

    def take(self) -> bytes:
        """Return it, and begin anew."""
        part = self.getvalue()
        self.seek(0)
        self.truncate()
        return part


def parts(question: Question, spool: Spool, form: Form, *, boat: Any, units: Any, strict: bool) -> Generator[bytes, None, None]:
    """Yield the answer to a table in parts; what is wrong with its form or headings is raised before the first.

    One thread does it, so that the other cores are free.
    """
    spool.file.seek(0)
    buffer, tally = Buffer(), Tally()
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # a near miss is refused where the client says strict
        try:
            read = form.source(spool.file)
            if isinstance(read, JsonArraySource) and len(read.rows) > spool.rows:
                raise too_many_rows(spool.rows)
            sink = form.sink(buffer, read)
            to_json = isinstance(sink, JsonSink | JsonArraySink)
            for batch, results in answered(question, read, boat=boat, units=units, strict=strict, to_json=to_json, threads=1):
                tally.add(results)
                if tally.rows > spool.rows:
                    raise too_many_rows(spool.rows)
                sink.write(batch, results=len(results.named()))
                yield buffer.take()
            sink.close()
        except FileError as error:
            raise Refused(400, error.faults[0]) from error
    yield buffer.take()
