"""Where to drop the anchor for the bow to come to lie on a spot.

As far upwind of the spot as a taut line of that length reaches.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec

from anchorcalc import cautions, sources
from anchorcalc.declare import NOT_ON_THE_BOTTOM, Asked, Length, May, Question, Shown, Usual, Values, up, warn
from anchorcalc.derive import RODE_OUT
from anchorcalc.physics.geometry import taut_reach


class WhereToDrop(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """How far upwind."""

    ahead_of_spot: Annotated[Length, up("how far upwind of where the bow is to lie")]
    stern_lies_at: Annotated[Length | None, up("from the anchor to the stern")] = None
    rode_out: Annotated[Length, up("rode to let out, roller to anchor")]


def solve(*, rode_out: Asked, depth: Asked, bow_height: Usual, boat_length: May = None) -> dict[str, Any]:
    """Reach of the taut line now."""
    ahead_of_spot = taut_reach(rode_out=rode_out, height=depth + bow_height)
    out = {"ahead_of_spot": ahead_of_spot, "rode_out": rode_out}
    return out if boat_length is None else {**out, "stern_lies_at": ahead_of_spot + boat_length}


def headline(s: Shown, v: Values) -> str:
    """Say how far ahead, and with how much rode."""
    stern = f"; the stern will lie {s.stern_lies_at} from it" if "stern_lies_at" in v else ""
    return f"Drop the anchor {s.ahead_of_spot} upwind of where the bow is to lie, and let out {s.rode_out_answer}{stern}."


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show the sum."""
    yield f"√({s.rode_out}² − ({s.depth} of water + {s.bow_height} of bow height)²) = {s.ahead_of_spot}"
    if "stern_lies_at" in v:
        yield f"{s.ahead_of_spot} + {s.boat_length} of boat = {s.stern_lies_at}"
    yield "an anchor drags in some way before it sets, line stretches, and she sheers about: leave room for all three"


QUESTION = Question(
    title="Where to drop the anchor",
    solve=solve,
    results=WhereToDrop,
    headline=headline,
    working=working,
    sources=(sources.TAUT_LINE, sources.SCOPE_RULE),
    derives=(RODE_OUT,),
    refuses=(NOT_ON_THE_BOTTOM,),
    cautions=(warn(cautions.WAIT_AND_CHECK_SET), warn(cautions.STRETCH), warn(cautions.DEPTH_AT_BOAT_NOT_ANCHOR), warn(cautions.LOCAL_RULES)),
    asks=("where do i drop the anchor", "how far upwind do i drop", "how far ahead should i let go", "where should the anchor go down"),
    examples=(
        {"depth": "5 m", "rode_out": "30 m", "boat_length": "9 m"},
        {"depth": "12 ft", "bow_height": "4 ft", "tide_rise": "2 ft", "scope": "5:1"},
    ),
    moves={
        "ahead_of_spot": "+rode_out ^depth ^bow_height +tide_rise +scope",
        "stern_lies_at": "+rode_out ^depth ^bow_height +tide_rise +scope +boat_length",
        "rode_out": "+rode_out +depth +bow_height +tide_rise +scope",
    },
)
