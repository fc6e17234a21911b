"""How a CSV file is written, told from its first lines."""

import csv
import io
import re
from collections.abc import Iterator
from itertools import islice

import msgspec

from anchorcalc.doors.fleet_signs import NumberSigns
from anchorcalc.errors import FileError, fault

UTF_8_MARK = b"\xef\xbb\xbf"
FIRST_ROWS = 100  # which tell how numbers are written
_UTF_16_MARKS = (b"\xff\xfe", b"\xfe\xff")
_DELIMITERS = (",", ";", "\t", "|")
_SAID = re.compile(r"sep=([,;\t|])\r?\n", re.I)  # a first line that some spreadsheets write and heed
_DECIMAL_COMMA = re.compile(r"\s*[+-]?\d+,(?:\d{1,2}|\d{4,})\s*[^\d,]*")


class Dialect(msgspec.Struct, frozen=True, kw_only=True):
    """How a file is written: what stands between cells and behind lines, its encoding, and whether a mark of that comes first.

    `said` is a line before the headings that says what stands between cells; `signs` are those of numbers.
    """

    delimiter: str
    end: str
    encoding: str
    mark: bytes
    said: str = ""
    signs: NumberSigns = NumberSigns()


def sniffed(head: bytes, *, where: str) -> tuple[Dialect, list[str]]:
    """Return how a file is written, and its headings.

    Raises
    ------
    FileError
        If there is no heading line, or it is in no encoding that is read.
    """
    mark = next((one for one in (UTF_8_MARK, *_UTF_16_MARKS) if head.startswith(one)), b"")
    encoding = "utf-16" if mark in _UTF_16_MARKS else "utf-8"
    text = _decoded(head, encoding, where).removeprefix("\ufeff")
    said = _SAID.match(text) if encoding == "utf-8" else None
    text = text[said.end() if said else 0 :].lstrip("\r\n")
    if not text.strip():
        raise _unreadable(where, "is empty", "a CSV file with a line of headings")
    line = _first_line(text)
    if "\0" in line:
        raise _unreadable(where, "is no text: there are zero bytes in its first line", "a CSV file in UTF-8")
    delimiter = said[1] if said else max(_DELIMITERS, key=lambda one: _outside(line, one))
    rows = list(islice(_rows(text, delimiter), FIRST_ROWS))
    if not rows:
        raise _unreadable(where, "has a first line that cannot be taken apart", "a CSV file with a line of headings")
    end = "\r\n" if line.endswith("\r\n") else "\n"
    signs = _signs(rows[1:], delimiter)
    return Dialect(delimiter=delimiter, end=end, encoding=encoding, mark=mark, said=said[0] if said else "", signs=signs), rows[0]


def _unreadable(where: str, why: str, would_do: str) -> FileError:
    return FileError([fault("table", "unreadable", where, why, would_do)])


def _decoded(head: bytes, encoding: str, where: str) -> str:
    """Return the whole lines of the head as text."""
    try:
        if encoding == "utf-16":
            return head[: len(head) // 2 * 2].decode(encoding)
        return head.rpartition(b"\n")[0].decode() or head.decode()
    except UnicodeDecodeError as error:
        raise _unreadable(where, f"is not in UTF-8 ({error.reason})", "a CSV file in UTF-8") from error


def _first_line(text: str) -> str:
    """Return the first line; an end of line between quotes does not end it."""
    line = ""
    for part in io.StringIO(text, newline=""):
        line += part
        if line.count('"') % 2 == 0:
            break
    return line


def _rows(text: str, delimiter: str) -> Iterator[list[str]]:
    """Yield the first rows, up to one with a cell that is too long to be taken apart here."""
    try:
        yield from csv.reader(io.StringIO(text, newline=""), delimiter=delimiter)
    except csv.Error:
        return


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


def _signs(rows: list[list[str]], delimiter: str) -> NumberSigns:
    """Return how numbers are written: a comma is decimal where semicolons stand between cells.

    Elsewhere `1,200` is 1200, as everywhere in this library. But where the file has a decimal comma in other cells (`4,5`), the sign that may
    stand between thousands tells nothing.
    """
    semicolons = delimiter == ";"
    if not any(_DECIMAL_COMMA.fullmatch(cell) for row in rows for cell in row):
        return NumberSigns(decimal_comma=semicolons)
    return NumberSigns(decimal_comma=semicolons, unclear="." if semicolons else ",")
