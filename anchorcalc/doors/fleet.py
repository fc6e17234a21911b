"""Tables: one question for every row, with the answers beside it."""

import os
import warnings
from collections.abc import Mapping
from concurrent.futures import ThreadPoolExecutor
from typing import Any

from anchorcalc.answering.gate import unknown_name
from anchorcalc.catalogue import question as question_named
from anchorcalc.declare import Question
from anchorcalc.doors.python import checked_boat
from anchorcalc.errors import InputError, TableError
from anchorcalc.vocabulary import TERMS

try:
    from anchorcalc.doors.fleet_frames import Table
    from anchorcalc.doors.fleet_headings import Headings, headings_of
    from anchorcalc.doors.fleet_results import Results
    from anchorcalc.doors.fleet_rows import Plan
    from anchorcalc.doors.fleet_signs import PLAIN_SIGNS, NumberSigns
except ModuleNotFoundError as error:
    raise ModuleNotFoundError(f"tables need {error.name}; pip install 'anchorcalc[fleet]' would do", name=error.name) from error

BATCH = 65_536  # rows; a column of them stays in the cache of a core
THREADS = min(os.cpu_count() or 1, 8)


def check_table(question: str, table: Any, *, boat: Mapping[str, Any] | None = None, units: str | None = None) -> Any:
    """Answer a question for every row of a table.

    Parameters
    ----------
    question : str
        A question, such as `rode_to_let_out`; `questions()` lists them.
    table : dict of arrays, pandas, polars or pyarrow table, or Dask dataframe
        Columns that are inputs by name. A unit stands in the heading (`depth [ft]`, plain numbers below) or in each cell (`"12 ft"`).
        Other columns pass through; one that looks like a misspelt input is warned of.
    boat : mapping, optional
        Terms and values that lie under every row.
    units : {"us", "metric"}, optional
        How the results are given; else in the unit of the depth heading, else metric.

    Returns
    -------
    the same kind of table
        The columns given, untouched and in order, then one column a result (`rode_out [ft]`; a result with an input's name is called
        `<name>_answer`; a list is JSON text), `cautions` (codes, a space between two) and `problem`: empty, or what is wrong with
        that row, which alone goes unanswered. A Dask dataframe stays lazy.

    Raises
    ------
    UnknownQuestion
        If there is no such question.
    TableError
        If the headings or the shape of the table will not do.
    InputError
        If `units` or a name of the boat is unknown.

    Examples
    --------
    >>> from anchorcalc import check_table
    >>> fleet = check_table("rode_to_let_out", {"depth [ft]": [12.0, 900.0], "bow_height [ft]": [5.0, 5.0]}, units="us")
    >>> fleet["rode_out [ft]"].round(6).tolist()
    [119.0, nan]
    >>> fleet["problem"][1]
    'depth: \\'900 ft\\' must be 200 m or less (no small boat anchors by hand in more than 200 m); "12 ft" would do'
    """
    asked = question_named(question)
    if type(table).__module__.split(".")[0].startswith("dask"):
        from anchorcalc.doors.fleet_dask import check_lazily

        return check_lazily(asked.name, table, boat=boat, units=units)
    return checked(asked, table, boat=boat, units=units, threads=THREADS)


def checked(asked: Question, table: Any, *, boat: Any, units: Any, threads: int) -> Any:
    """Return a table of any kind but Dask's with its answers."""
    whole = Table(table)
    plan = plan_of(asked, whole.columns, boat=boat, units=units)
    return whole.beside(answers_of(plan, whole, threads=threads))


def plan_of(question: Question, columns: Any, *, boat: Any, units: Any, strict: bool = False, signs: NumberSigns = PLAIN_SIGNS) -> Plan:
    """Return what is settled before the first row; near misses of an input are warned of, or refused where `strict`."""
    boat = checked_boat(boat) or {}
    unknown = [unknown_name(name=name, known=tuple(TERMS), where="of a boat", given=boat[name]) for name in boat if name not in (*TERMS, "name")]
    if unknown:
        raise InputError(unknown)
    headings: Headings = headings_of(question, columns, units=units, boat=boat)
    if strict and headings.near_misses:
        raise TableError(headings.near_misses)
    for one in headings.near_misses:
        warnings.warn(f"{one}; as it is, the column is passed through unread", stacklevel=4)
    return Plan(question, headings, boat=boat, units=units, signs=signs)


def answers_of(plan: Plan, table: Table, *, threads: int) -> list[Results]:
    """Return the answers to all rows of a table, batch by batch, by so many threads where there is more than one batch."""
    columns = {name: table.column(heading.column) for name, heading in plan.headings.inputs.items()}
    starts = range(0, max(table.rows, 1), BATCH)

    def batch(start: int) -> Results:
        rows = min(BATCH, table.rows - start)
        return plan.answers({name: column[start : start + rows] for name, column in columns.items()}, rows)

    if len(starts) == 1 or threads == 1:
        return [batch(start) for start in starts]
    with ThreadPoolExecutor(threads) as pool:
        return list(pool.map(batch, starts))
