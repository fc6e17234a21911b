"""At which mark on the rode to stop.

Marks count from the anchor, or from the end of the chain. The first mark at or beyond the length wanted is the one to stop at.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec

from anchorcalc import cautions, sources
from anchorcalc.declare import NOT_ON_THE_BOTTOM, Asked, Count, Length, May, Question, Ratio, Shown, Usual, Values, down, up, warn
from anchorcalc.derive import RODE_OUT
from anchorcalc.marking import CHAIN_END, MARKS_GROUPS, mark_results, mark_sentence
from anchorcalc.physics.arrays import not_below_zero


class MarkToStopAt(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The mark to stop at, and what lies past the one before."""

    mark: Annotated[Count, down("number of the last mark at the roller or beyond, 0 for none yet", follows="rode_out")]
    past: Annotated[Length, up("line beyond that mark", follows="rode_out")]
    to_next: Annotated[Length | None, down("what is short of the next mark", follows="rode_out")] = None
    stop_at: Annotated[Count | None, up("first mark at or beyond the length", follows="rode_out")] = None
    scope_there: Annotated[Ratio | None, down("scope at high water with the rode out to that mark", follows="rode_out")] = None
    rode_out: Annotated[Length, up("rode to let out, roller to anchor")]
    line_out: Annotated[Length, up("line that goes out behind the chain")]


def solve(
    *,
    mark_interval: May = None,
    marks: May = None,
    rode_out: Asked,
    chain: Usual,
    marks_from: Usual,
    depth: May = None,
    bow_height: May = None,
    tide_rise: May = None,
) -> dict[str, Any]:
    """Count the marks in the length that goes out."""
    height = None if depth is None or bow_height is None or tide_rise is None else depth + bow_height + tide_rise
    found = mark_results(rode_out=rode_out, chain=chain, marks_from=marks_from, mark_interval=mark_interval, marks=marks, height=height)
    return {**found, "rode_out": rode_out, "line_out": not_below_zero(rode_out - chain)}


def headline(s: Shown, v: Values) -> str:
    """Say both: the mark, and the length past the one before."""
    there = f" There the scope is {s.scope_there}." if hasattr(s, "scope_there") else ""
    return f"Stop {mark_sentence(s, v)}.{there}"


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show what was counted."""
    if v["marks_from"] == CHAIN_END:
        yield f"{s.rode_out} of rode − {s.chain} of chain = {s.line_out} of line, which the marks count"
    else:
        yield f"{s.rode_out} of rode, all of which the marks count"
    yield f"marks {'every ' + s.mark_interval if 'mark_interval' in v else 'at ' + s.marks}: {s.past} past mark {s.mark}"


QUESTION = Question(
    title="At which mark to stop",
    solve=solve,
    results=MarkToStopAt,
    headline=headline,
    working=working,
    sources=(sources.MARKS_ON_RODE, sources.SCOPE_RULE),
    derives=(RODE_OUT,),
    one_of=MARKS_GROUPS,
    refuses=(NOT_ON_THE_BOTTOM,),
    cautions=(warn(cautions.FINGERS_AND_TURN),),
    asks=("at which mark do i stop", "which mark", "what mark on the line", "which knot do i stop at", "how many marks"),
    examples=(
        {"mark_interval": "10 m", "rode_out": "36 m"},
        {"mark_interval": "10 ft", "depth": "7 ft", "bow_height": "3 ft", "marks_from": "chain_end", "chain": "6 ft"},
    ),
    moves={"rode_out": "+rode_out +depth +bow_height +tide_rise +scope", "line_out": "+rode_out +depth +bow_height +tide_rise +scope -chain"},
)
