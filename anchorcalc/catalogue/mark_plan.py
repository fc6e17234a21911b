"""The table to tape inside the locker lid: each mark, the rode out there, and the deepest water at high water that it serves."""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec
import numpy as np

from anchorcalc import cautions, sources
from anchorcalc.declare import Asked, Count, Length, May, Question, Shown, Usual, Values, down, refuse, told, warn
from anchorcalc.derive import RODE_ABOARD
from anchorcalc.marking import CHAIN_END, MARKS_GROUPS

MOST_MARKS = 200


class MarkPlanRow(msgspec.Struct, frozen=True, kw_only=True):
    """One mark."""

    mark: Annotated[Count, down("number of the mark")]
    rode_out: Annotated[Length, down("rode out with that mark at the roller")]
    deepest_depth: Annotated[Length, down("deepest water at high water that this serves")]


class MarkPlan(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The plan, mark by mark."""

    plan: Annotated[tuple[MarkPlanRow, ...], told("every mark that can be used")]


def solve(
    *,
    rode_aboard: Asked,
    mark_interval: May = None,
    marks: May = None,
    marks_from: Usual,
    bow_height: Usual,
    scope: Usual,
    chain: Usual,
    reserve: Usual,
) -> dict[str, Any]:
    """Turn each mark's length into depth at high water."""
    first = np.where(np.equal(marks_from, CHAIN_END), chain, 0.0)
    usable = rode_aboard - reserve
    if marks is None:
        number = int(min(np.max((usable - first) / mark_interval) * (1.0 + 1e-9), MOST_MARKS)) if np.max(usable - first) > 0.0 else 0
        lengths = [first + count * mark_interval for count in range(1, number + 1)]
    else:
        lengths = [first + length for length in marks]
    return {
        "plan": tuple(
            {
                "mark": count,
                "rode_out": length,
                "deepest_depth": np.maximum(length / scope - bow_height, 0.0),
                "always": length <= usable * (1.0 + 1e-9),
            }
            for count, length in enumerate(lengths, start=1)
        )
    }


def headline(s: Shown, v: Values) -> str:
    """Say what the last mark serves."""
    if not s.plan:
        return "No mark comes before the end of the rode that can go out."
    last = s.plan[-1]
    return (
        f"{len(s.plan)} marks; the last, mark {last.mark.shown} at {last.rode_out.shown}, serves {last.deepest_depth.shown} of water at high water."
    )


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show the table."""
    yield f"water at high water = rode out / {s.scope.removesuffix(':1')} − {s.bow_height} of bow height"
    for row in s.plan:
        yield f"mark {row.mark.shown}: {row.rode_out.shown} out, for {row.deepest_depth.shown} of water at high water"


QUESTION = Question(
    title="Plan of the marks",
    solve=solve,
    results=MarkPlan,
    headline=headline,
    working=working,
    sources=(sources.SCOPE_RULE, sources.MARKS_ON_RODE),
    derives=(RODE_ABOARD,),
    one_of=MARKS_GROUPS,
    refuses=(
        refuse(
            "mark_interval",
            lambda *, mark_interval, rode_aboard: rode_aboard / mark_interval > MOST_MARKS,
            why=f"makes more than {MOST_MARKS} marks",
            would_do="marks farther apart",
        ),
    ),
    cautions=(warn(cautions.BOW_PITCH), warn(cautions.FINGERS_AND_TURN)),
    asks=("mark plan", "table of marks", "what depth is each mark good for", "make me a table of my marks", "list of marks and depths"),
    examples=(
        {"rode_aboard": "60 m", "mark_interval": "10 m", "scope": "5:1"},
        {"chain": "20 ft", "line": "150 ft", "marks": "30, 60, 100 ft", "marks_from": "chain_end"},
    ),
    moves={"plan": "+mark_interval +chain -scope -bow_height"},
)
