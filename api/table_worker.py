"""A table in a process of its own, so that single questions need not wait for it: `python -m anchorcalc_api.table_worker JSON < TABLE`.

The first line of the output is JSON: nothing, or why the table is refused; the answer follows. Exit code 0 says that it is whole.
"""

import os
import sys
from typing import Any

import msgspec

from anchorcalc.catalogue import question
from anchorcalc.errors import AnchorcalcError, Fault

from .problems import Refused, status_of
from .tables import FORMS, Spool, parts

GENTLE = 5  # how much a table gives way to single questions


class Job(msgspec.Struct, frozen=True, kw_only=True):
    """What is to be done with a table."""

    question: str
    media: str
    rows: int
    boat: dict[str, Any] | None = None
    units: str | None = None
    strict: bool = False


class Begun(msgspec.Struct, frozen=True, omit_defaults=True):
    """The first line: a status and faults where the table is refused."""

    status: int = 200
    faults: tuple[Fault, ...] = ()


def main(text: str) -> int:
    """Answer the table on standard input."""
    os.nice(GENTLE)
    job = msgspec.json.decode(text, type=Job)
    out = sys.stdout.buffer
    spool = Spool(most=0, rows=job.rows, counted=False, file=sys.stdin.buffer)
    form = FORMS[job.media]
    try:
        if form.check is not None:
            form.check(spool)
        answer = parts(question(job.question), spool, form, boat=job.boat, units=job.units, strict=job.strict)
        first = next(answer)
    except Refused as error:
        out.write(msgspec.json.encode(Begun(error.status, error.faults)) + b"\n")
        return 0
    except AnchorcalcError as error:
        out.write(msgspec.json.encode(Begun(status_of(error), error.faults)) + b"\n")
        return 0
    out.write(msgspec.json.encode(Begun()) + b"\n" + first)
    for part in answer:
        out.write(part)
    out.flush()
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
