"""Rows of a CSV file that have fewer or more cells than there are headings: back in their places, each dealt with alone."""

import csv
import io
from collections import deque
from typing import Any, NamedTuple

import numpy as np
import pyarrow as pa

from anchorcalc.errors import Fault, fault

HEADINGS = 1  # rows before the first
MOST_ASIDE = 500_000  # uneven rows one after the other, without an even one


class Mended(NamedTuple):
    """A record batch, and the faults of those of its rows that have cells without a heading."""

    batch: Any
    faults: dict[int, Fault]


class Uneven:
    """Takes the uneven rows that a reader passes over, and puts them back where they stood: cells that are not there are missing."""

    def __init__(self, columns: list[str], *, delimiter: str) -> None:
        self.columns, self.delimiter = columns, delimiter
        self._aside: deque[Any] = deque()
        self._next = HEADINGS + 1  # the number of the next row

    def take(self, row: Any) -> str:
        """Take a row, and tell the reader to go on; or to stop, where memory would fill up with rows of which none fits the headings."""
        self._aside.append(row)
        return "skip" if len(self._aside) <= MOST_ASIDE else "error"

    def mended(self, batch: Any) -> Any:
        """Return a record batch with the uneven rows that stood in it or right behind it."""
        count, places, rows = batch.num_rows, [], []
        while self._aside and self._aside[0].number <= self._next + count:
            row = self._aside.popleft()
            places.append(row.number - self._next)
            rows.append(self._cells(row))
            count += 1
        self._next += count
        if not rows:
            return batch
        faults = {place: self._fault(cells) for place, cells in zip(places, rows, strict=True) if len(cells) > len(self.columns)}
        return Mended(_put_back(batch, places, rows), faults)

    def rest(self) -> Any:
        """Return the uneven rows of a file that has no others, or None."""
        none = pa.RecordBatch.from_arrays([pa.array([], pa.string()) for _ in self.columns], names=self.columns)
        return self.mended(none) if self._aside else None

    def _cells(self, row: Any) -> list[str]:
        return next(csv.reader(io.StringIO(row.text, newline=""), delimiter=self.delimiter))

    def _fault(self, cells: list[str]) -> Fault:
        headings = len(self.columns)
        beyond, plural = self.delimiter.join(cells[headings:]), "s" if headings != 1 else ""
        stands = "stands" if any(cells[headings:]) else "has an empty cell"
        why = f"{stands} beyond the last heading ({len(cells)} cells, {headings} heading{plural})"
        return fault("table", "unreadable", beyond if any(cells[headings:]) else None, why, f"{headings} cell{plural} or fewer")


def _put_back(batch: Any, places: list[int], rows: list[list[str]]) -> Any:
    """Return a record batch with rows put in, each at its place among all."""
    columns = [pa.array([cells[place] if place < len(cells) else None for cells in rows], pa.string()) for place in range(batch.num_columns)]
    both = pa.Table.from_batches([batch, pa.RecordBatch.from_arrays(columns, schema=batch.schema)])
    put_in = np.zeros(both.num_rows, dtype=bool)
    put_in[places] = True
    order = np.empty(both.num_rows, dtype=np.int64)
    order[~put_in] = np.arange(batch.num_rows)
    order[put_in] = np.arange(batch.num_rows, both.num_rows)
    return both.take(pa.array(order)).combine_chunks().to_batches()[0]
