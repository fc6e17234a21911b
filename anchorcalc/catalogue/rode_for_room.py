"""How much rode there is room for, and whether its scope will do.

The longest rode whose taut line at low water keeps the stern clear, and the scope which that gives at high water.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec
import numpy as np

from anchorcalc import cautions, sources
from anchorcalc.declare import Asked, Length, Question, Ratio, Shown, Usual, Values, down, refuse_range, told, warn
from anchorcalc.physics.arrays import at_least
from anchorcalc.physics.geometry import height_at_low_water, rode_at_reach, scope_of


class RodeForRoom(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The longest rode, and its scope."""

    longest_rode: Annotated[Length, down("longest rode that keeps her clear; 0 where there is no room")]
    scope_there: Annotated[Ratio, down("scope of that rode at high water")]
    fits: Annotated[bool, told("whether that reaches the scope wanted")]


def _turns(
    *,
    depth: Any,
    bow_height: Any,
    tide_rise: Any,
    tide_fall: Any,
    distance: Any,
    margin: Any,
    boat_length: Any,
) -> Any:
    """Say whether deeper water would raise the scope: in a very narrow place with much tide."""
    room = distance - margin - boat_length
    return (room > 0.0) & (height_at_low_water(depth=depth, tide_fall=tide_fall, bow_height=bow_height) * (tide_rise + tide_fall) > room * room)


def solve(
    *,
    distance: Asked,
    boat_length: Asked,
    depth: Asked,
    bow_height: Usual,
    tide_rise: Usual,
    tide_fall: Usual,
    margin: Usual,
    scope: Usual,
) -> dict[str, Any]:
    """Turn the taut-line circle round: from room to rode."""
    room = distance - margin - boat_length
    height = height_at_low_water(depth=depth, tide_fall=tide_fall, bow_height=bow_height)
    longest_rode = np.where(room > 0.0, rode_at_reach(reach=np.maximum(room, 0.0), height=height), 0.0)
    scope_there = scope_of(rode_out=longest_rode, height=depth + bow_height + tide_rise)
    return {"longest_rode": longest_rode, "scope_there": scope_there, "fits": at_least(scope_there, scope)}


def headline(s: Shown, v: Values) -> str:
    """Say the rode and a plain verdict."""
    if v["longest_rode"] == 0.0:
        return "No room here: the boat alone is longer than the room there is."
    if v["fits"]:
        return f"Let out {s.longest_rode} at the most: scope {s.scope_there}, which will do."
    return f"Not here: {s.longest_rode} is the most there is room for, and that is only {s.scope_there}, not {s.scope}."


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show the sum."""
    yield f"{s.distance} − {s.margin} of margin − {s.boat_length} of boat is the room for the bow"
    yield f"√(room² + (height at low water)²) = {s.longest_rode} of rode at the most"
    yield f"{s.longest_rode} / ({s.depth} of water + {s.bow_height} of bow height + {s.tide_rise} of tide) = {s.scope_there}"


_NARROW = "raises the scope at one end and lowers it at the other in a place this narrow"

QUESTION = Question(
    title="How much rode there is room for",
    solve=solve,
    results=RodeForRoom,
    headline=headline,
    working=working,
    sources=(sources.TAUT_LINE, sources.SCOPE_RULE),
    refuses=tuple(refuse_range(name, _turns, why=_NARROW) for name in ("depth", "bow_height")),
    cautions=(
        warn(cautions.DRIES_AT_LOW_WATER, lambda *, tide_fall, depth: at_least(tide_fall, depth)),
        warn(cautions.STRETCH),
        warn(cautions.DEPTH_AT_BOAT_NOT_ANCHOR),
        warn(cautions.LOCAL_RULES),
    ),
    asks=("how much rode is there room for", "most i can veer", "longest rode before i hit", "what scope fits in here", "is there room for 5:1"),
    examples=(
        {"distance": "50 m", "boat_length": "9 m", "depth": "5 m", "scope": "5:1"},
        {"distance": "120 ft", "boat_length": "28 ft", "depth": "9 ft", "bow_height": "4 ft", "tide_rise": "3 ft", "margin": "20 ft"},
    ),
    moves={
        "longest_rode": "+distance -margin -boat_length +depth +bow_height -tide_fall",
        "scope_there": "+distance -margin -boat_length ^depth ^bow_height -tide_rise -tide_fall",
        "fits": "+distance -margin -boat_length ^depth ^bow_height -tide_rise -tide_fall -scope",
    },
)
