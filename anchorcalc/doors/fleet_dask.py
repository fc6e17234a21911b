"""Tables that are larger than a machine: a Dask dataframe stays lazy, and each partition is answered where it lies."""

import warnings
from collections.abc import Mapping
from typing import Any

from anchorcalc.catalogue import question as question_named
from anchorcalc.doors.fleet import checked


def check_lazily(question: str, table: Any, *, boat: Mapping[str, Any] | None, units: str | None) -> Any:
    """Return a Dask dataframe of the answers; headings are checked now, rows when it is computed."""
    meta = checked(question_named(question), table._meta, boat=boat, units=units, threads=1)
    return table.map_partitions(_partition, question=question, boat=dict(boat) if boat is not None else None, units=units, meta=meta)


def _partition(part: Any, *, question: str, boat: Mapping[str, Any] | None, units: str | None) -> Any:
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # what the headings deserve was said when the table was given
        return checked(question_named(question), part, boat=boat, units=units, threads=1)  # the cluster shares out the cores
