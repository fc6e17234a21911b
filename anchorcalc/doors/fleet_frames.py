"""The kinds of table that `check_table` takes and gives back, through one layer: a dict of arrays, and what narwhals knows."""

from collections.abc import Iterable, Mapping, Set
from typing import Any

import narwhals.stable.v1 as nw
import numpy as np
import pyarrow as pa

from anchorcalc.doors.fleet_cells import Column
from anchorcalc.doors.fleet_results import Part, Results
from anchorcalc.errors import TableError, fault

_KINDS = "a dict of arrays, or a pandas, polars or pyarrow table"


class Table:
    """A table of any kind: its columns by name, as arrow arrays where they can be, else as lists."""

    def __init__(self, table: Any) -> None:
        self.native = table
        if isinstance(table, Mapping):
            self.columns = list(table)
            self.rows = _length(table)
            return
        try:
            self.frame = nw.from_native(table, eager_only=True)
            self.columns = list(self.frame.columns)
        except TypeError as error:
            would_do = "what its collect() returns" if hasattr(table, "collect") else _KINDS
            raise TableError([fault("table", "wrong_kind", type(table).__name__, "is no table that is read here", would_do)]) from error
        except nw.exceptions.DuplicateError as error:
            raise TableError([fault("table", "given_twice", str(error), "has two columns of one name", "another name for one of them")]) from error
        self.rows = len(self.frame)

    def column(self, name: Any) -> Any:
        """Return one column as it is where it holds floats in numpy, else as an arrow array, or as a list where it holds things of many kinds."""
        column = self.native[name] if isinstance(self.native, Mapping) else self.frame.get_column(name)
        floats = _floats(column.to_native() if not isinstance(self.native, Mapping) and self.frame.implementation.is_pandas() else column)
        if floats is not None:
            return floats
        if not isinstance(self.native, Mapping) and self.frame.implementation.is_polars() and column.dtype == nw.Object:
            return column.to_list()  # in arrow they would be addresses in memory
        try:
            return _joined(pa.array(_unmasked(column), from_pandas=True) if isinstance(self.native, Mapping) else column.to_arrow())
        except (pa.ArrowInvalid, pa.ArrowTypeError, pa.ArrowNotImplementedError, TypeError):
            return list(column) if isinstance(self.native, Mapping) else column.to_list()

    def beside(self, parts: list[Results]) -> Any:
        """Return the table, untouched, with the columns of results beside it."""
        named = joined(parts)
        if isinstance(self.native, Mapping):
            return {**self.native, **{name: _plain(column) for name, column in named.items()}}
        implementation = self.frame.implementation
        texts = pa.string_view() if implementation.is_polars() else pa.large_string() if implementation.is_pandas_like() else pa.string()
        added = pa.table({name: arrow(column, texts=texts) for name, column in named.items()})
        if implementation.is_pandas_like():
            return self._beside_pandas(added)
        columns = nw.from_native(nw.from_arrow(added, native_namespace=nw.get_native_namespace(self.frame)), eager_only=True)
        return nw.to_native(self.frame.with_columns(*(columns.get_column(name) for name in columns.columns)))

    def _beside_pandas(self, added: Any) -> Any:
        """Return a pandas table with columns beside it, its index kept; a yes or no that may be absent needs the nullable type."""
        import pandas as pd

        made = added.to_pandas(types_mapper={pa.bool_(): pd.BooleanDtype()}.get)
        columns = nw.from_native(made, eager_only=True)
        return nw.to_native(self.frame.with_columns(*(columns.get_column(name) for name in columns.columns)))


def _floats(column: Any) -> Column | None:
    """Return the floats of a numpy array or of a pandas column as an array that cannot be written to; None of anything else.

    Of what only looks like an array, such as a quantity with its unit, the numbers alone would not do.
    """
    if type(column).__module__.startswith("pandas.") and isinstance(column.dtype, np.dtype):
        column = column.to_numpy()
    if type(column) is not np.ndarray or column.dtype != np.float64 or column.ndim != 1:
        return None
    floats = column.view()
    floats.flags.writeable = False
    return floats


def _length(table: Mapping[Any, Any]) -> int:
    for name, column in table.items():
        if isinstance(column, str | bytes | Mapping | Set):
            raise TableError([fault("table", "wrong_kind", column, f"stands under {name}, and is no array", _KINDS)])
    try:
        lengths = {len(column) for column in table.values()}
    except TypeError as error:
        raise TableError([fault("table", "wrong_kind", repr(table), "has a column that is no array", _KINDS)]) from error
    if len(lengths) > 1:
        raise TableError([fault("table", "contradiction", sorted(lengths), "has columns of different lengths", "columns of one length")])
    return lengths.pop() if lengths else 0


def _unmasked(column: Any) -> Any:
    """Return a column as arrow takes it: a masked array with its mask."""
    if isinstance(column, np.ma.MaskedArray):
        return pa.array(column.data, mask=np.ma.getmaskarray(column), from_pandas=True)
    if isinstance(column, np.ndarray) and column.ndim != 1:
        raise TableError([fault("table", "wrong_kind", f"{column.shape}", "has a column of more than one dimension", _KINDS)])
    if isinstance(column, Iterable) and not isinstance(column, np.ndarray | pa.Array | pa.ChunkedArray):
        return list(column)
    return column


def _joined(column: Any) -> Any:
    return column.combine_chunks() if isinstance(column, pa.ChunkedArray) else column


# --- columns of results -------------------------------------------------------------------------------------------------------------


def joined(parts: list[Results]) -> dict[str, list[Part]]:
    """Return the columns of several batches, each as its parts."""
    every = [part.named() for part in parts]
    return {name: [one[name] for one in every] for name in every[0]}


def arrow(parts: list[Part], *, texts: Any = None) -> Any:
    """Return a column of results as arrow: numbers, yes or no, texts; null where there is none."""
    return pa.chunked_array([part.arrow(texts or pa.string()) for part in parts])


def _plain(parts: list[Part]) -> Column:
    """Return a column of results as a numpy array: nan or None where there is none."""
    made = parts[0].plain()
    if len(parts) == 1:
        return made
    whole = np.empty(sum(part.rows for part in parts), dtype=made.dtype)
    start = 0
    for part in parts:
        whole[start : start + part.rows] = part.plain()
        start += part.rows
    return whole
