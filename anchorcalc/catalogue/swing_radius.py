"""How large a circle the boat may swing.

A taut line at low water, the stern outermost: the largest circle that the rode allows.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec

from anchorcalc import cautions, sources
from anchorcalc.declare import NOT_ON_THE_BOTTOM, Area, Asked, Length, Question, Shown, Usual, Values, up, warn
from anchorcalc.physics.arrays import at_least
from anchorcalc.physics.geometry import circle_area, height_at_low_water, taut_reach


class SwingRadius(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The circle about the anchor."""

    swing_radius: Annotated[Length, up("anchor to the stern, taut line at low water")]
    bow_radius: Annotated[Length, up("anchor to the bow")]
    area: Annotated[Area, up("area of the circle")]


def solve(*, rode_out: Asked, depth: Asked, boat_length: Asked, bow_height: Usual, tide_fall: Usual) -> dict[str, Any]:
    """Reach of a taut line at low water, and the boat behind it."""
    bow_radius = taut_reach(rode_out=rode_out, height=height_at_low_water(depth=depth, tide_fall=tide_fall, bow_height=bow_height))
    return {"swing_radius": bow_radius + boat_length, "bow_radius": bow_radius, "area": circle_area(radius=bow_radius + boat_length)}


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show the sum."""
    low = max(v["depth"] - v["tide_fall"], 0.0)
    fall = f" − {s.tide_fall} of fall" if v["tide_fall"] > 0.0 else ""
    height = f"({s.depth} of water{fall} + {s.bow_height} of bow height)" if low > 0.0 else f"({s.bow_height} of bow height, dry at low water)"
    yield f"√({s.rode_out}² − {height}²) = {s.bow_radius} from the anchor to the bow"
    yield f"{s.bow_radius} + {s.boat_length} of boat = {s.swing_radius}"


QUESTION = Question(
    title="How large a circle she swings",
    solve=solve,
    results=SwingRadius,
    working=working,
    sources=(sources.TAUT_LINE,),
    headline=lambda s, v: f"She may swing {s.swing_radius} from the anchor, stern outermost.",
    refuses=(NOT_ON_THE_BOTTOM,),
    cautions=(
        warn(cautions.DRIES_AT_LOW_WATER, lambda *, tide_fall, depth: at_least(tide_fall, depth)),
        warn(cautions.STRETCH),
        warn(cautions.DEPTH_AT_BOAT_NOT_ANCHOR),
    ),
    asks=("how far will i swing", "swing radius", "how big is the swinging circle", "how much room do i need to swing"),
    examples=(
        {"rode_out": "35 m", "depth": "5 m", "boat_length": "9 m", "tide_fall": "1.5 m"},
        {"rode_out": "120 ft", "depth": "15 ft", "boat_length": "28 ft"},
    ),
    moves={
        "swing_radius": "+rode_out -depth -bow_height +tide_fall +boat_length",
        "bow_radius": "+rode_out -depth -bow_height +tide_fall",
        "area": "+rode_out -depth -bow_height +tide_fall +boat_length",
    },
)
