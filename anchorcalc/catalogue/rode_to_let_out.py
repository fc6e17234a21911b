"""How much rode to let out in this water.

Scope times the height of the roller above the seabed at the highest water of the stay.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec
import numpy as np

from anchorcalc import cautions, sources
from anchorcalc.declare import Asked, Count, Length, May, Question, Ratio, Shown, Usual, Values, down, told, up, warn
from anchorcalc.derive import MARKS_FROM_OF_MARKS, RODE_ABOARD
from anchorcalc.marking import MARKS_GROUPS, mark_results, mark_sentence
from anchorcalc.physics.arrays import at_least, not_below_zero
from anchorcalc.physics.geometry import rode_at_scope, scope_of


class RodeToLetOut(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """How much rode to let out, and whether there is enough."""

    rode_out: Annotated[Length, up("rode to let out, roller to anchor")]
    total_height: Annotated[Length, up("roller above the seabed at the highest water")]
    line_out: Annotated[Length, up("line that goes out behind the chain")]
    enough: Annotated[bool | None, told("whether the rode aboard, less the reserve, reaches")] = None
    scope_possible: Annotated[Ratio | None, down("scope that the rode aboard gives")] = None
    mark: Annotated[Count | None, down("last mark at the roller or beyond", follows="rode_out")] = None
    past: Annotated[Length | None, up("line beyond that mark", follows="rode_out")] = None
    to_next: Annotated[Length | None, down("what is short of the next mark", follows="rode_out")] = None
    stop_at: Annotated[Count | None, up("first mark at or beyond the length", follows="rode_out")] = None
    scope_there: Annotated[Ratio | None, down("scope with the rode out to that mark", follows="rode_out")] = None


def solve(
    *,
    depth: Asked,
    bow_height: Usual,
    tide_rise: Usual,
    scope: Usual,
    chain: Usual,
    rode_aboard: May = None,
    reserve: Usual,
    mark_interval: May = None,
    marks: May = None,
    marks_from: May = None,
) -> dict[str, Any]:
    """Rode at the scope wanted, at high water."""
    total_height = depth + bow_height + tide_rise
    rode_out = rode_at_scope(height=total_height, scope=scope)
    out = {"rode_out": rode_out, "total_height": total_height, "line_out": not_below_zero(rode_out - chain)}
    if rode_aboard is not None:
        usable = not_below_zero(rode_aboard - reserve)
        out |= {"enough": at_least(usable, rode_out), "scope_possible": scope_of(rode_out=usable, height=total_height)}
    if marks_from is not None:
        out |= mark_results(rode_out=rode_out, chain=chain, marks_from=marks_from, mark_interval=mark_interval, marks=marks, height=total_height)
    return out


def headline(s: Shown, v: Values) -> str:
    """Say how much, where to stop, and whether it is there."""
    where = f": stop {mark_sentence(s, v)}" if "mark" in v else ""
    short = f" There is not that much aboard: what there is gives {s.scope_possible}." if v.get("enough") is not None and not v["enough"] else ""
    return f"Let out {s.rode_out} of rode{where}.{short}"


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show the sum."""
    yield f"{s.depth} of water + {s.bow_height} of bow height + {s.tide_rise} of tide = {s.total_height}"
    yield f"{s.total_height} × {s.scope.removesuffix(':1')} = {s.rode_out}"
    if v["chain"] > 0.0:
        yield f"{s.rode_out} − {s.chain} of chain = {s.line_out} of line"
    if "enough" in v:
        yield f"({s.rode_aboard} aboard − {s.reserve} kept) / {s.total_height} = {s.scope_possible}"
    if "mark" in v:
        yield f"that is {s.past} past mark {s.mark}"


QUESTION = Question(
    title="How much rode to let out",
    solve=solve,
    results=RodeToLetOut,
    headline=headline,
    working=working,
    sources=(sources.SCOPE_RULE, sources.SCOPE_WORDS),
    derives=(RODE_ABOARD, *MARKS_FROM_OF_MARKS),
    one_of=MARKS_GROUPS,
    one_of_may=True,
    cautions=(
        warn(cautions.RODE_SHORT, lambda *, enough: np.logical_not(enough)),
        warn(cautions.DEPTH_AT_BOAT_NOT_ANCHOR),
        warn(cautions.BOW_PITCH),
        warn(cautions.WAIT_AND_CHECK_SET),
        warn(cautions.FINGERS_AND_TURN),
        warn(cautions.LOCAL_RULES),
    ),
    asks=("how much rode", "how much chain do i let out", "how much line should i put out", "how much cable to veer", "how much scope to let out"),
    examples=(
        {"depth": "4 m", "bow_height": "1 m", "tide_rise": "0.5 m"},
        {"depth": "12 ft", "bow_height": "5 ft", "tide_rise": "3 ft", "scope": "7:1", "chain": "20 ft", "line": "150 ft"},
    ),
    moves={
        "rode_out": "+depth +bow_height +tide_rise +scope",
        "total_height": "+depth +bow_height +tide_rise",
        "line_out": "+depth +bow_height +tide_rise +scope -chain",
        "enough": "-depth -bow_height -tide_rise -scope +rode_aboard +chain +line -reserve",
        "scope_possible": "-depth -bow_height -tide_rise +rode_aboard +chain +line -reserve",
    },
)
