"""Lying between an anchor out ahead and the beach astern: where to drop, how much rode, how near the stern may come.

The beach falls evenly, one down for so many out; distances run seaward from the water's edge now.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec
import numpy as np

from anchorcalc import cautions, sources
from anchorcalc.declare import Asked, Length, May, Question, Shown, Usual, Values, down, told, up, warn
from anchorcalc.derive import RODE_ABOARD
from anchorcalc.physics.beach import anchor_height, beach_anchor_distance
from anchorcalc.physics.beach import stern_distance as floating_distance
from anchorcalc.physics.geometry import rode_at_scope


class BowAndStern(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """Where anchor and stern lie, and the rode between."""

    stern_distance: Annotated[Length, up("from the water's edge now to the stern")]
    anchor_distance: Annotated[Length | None, up("from the water's edge now to the bow anchor")] = None
    bow_rode: Annotated[Length | None, up("rode to the bow anchor, at its scope at high water")] = None
    water_at_stern: Annotated[Length, down("depth at the stern now")]
    too_steep: Annotated[bool, told("whether the beach is too steep for that scope, or the rode too short for it", worse="greatest")]


def solve(
    *,
    slope: Asked,
    boat_length: Asked,
    draught: Asked,
    bow_height: Usual,
    tide_rise: Usual,
    tide_fall: Usual,
    scope: Usual,
    under_keel: Usual,
    rode_aboard: May = None,
) -> dict[str, Any]:
    """Place the stern where she floats at low water, and the anchor where the rode has its scope at high water."""
    stern = floating_distance(slope=slope, draught=draught, under_keel=under_keel, tide_fall=tide_fall)
    above_edge = tide_rise + bow_height
    anchor_distance = beach_anchor_distance(slope=slope, stern=stern, boat_length=boat_length, scope=scope, above_edge=above_edge)
    bow_rode = rode_at_scope(height=anchor_height(slope=slope, anchor_distance=anchor_distance, above_edge=above_edge), scope=scope)
    too_steep = np.isnan(anchor_distance)
    if rode_aboard is not None:
        too_steep = too_steep | np.greater(bow_rode, rode_aboard * (1.0 + 1e-12))
    return {
        "stern_distance": stern,
        "anchor_distance": anchor_distance,
        "bow_rode": bow_rode,
        "water_at_stern": stern / slope,
        "too_steep": too_steep,
    }


def headline(s: Shown, v: Values) -> str:
    """Say where to drop, or that the beach is too steep."""
    if not hasattr(s, "bow_rode"):
        return f"Too steep for {s.scope}: the bottom falls away faster than the rode gains on it."
    if v["too_steep"]:
        return f"The rode aboard is too short: this beach asks {s.bow_rode} to an anchor {s.anchor_distance} out."
    return f"Drop the bow anchor {s.anchor_distance} from the water's edge, let out {s.bow_rode}, and hold the stern {s.stern_distance} off."


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show the sums and the order of work."""
    run = s.slope.removeprefix("1:")
    yield f"{run} × ({s.draught} of draught + {s.under_keel} under the keel + {s.tide_fall} of fall) = {s.stern_distance} to the stern"
    if hasattr(s, "bow_rode"):
        yield f"anchor {s.anchor_distance} out: {s.bow_rode} of rode is {s.scope} there at high water"
        yield "1. Head in slowly; drop the bow anchor where the distance is right, and pay out under way, never past the propeller."
        yield f"2. Stop with the stern {s.stern_distance} from the edge ({s.water_at_stern} of water there now), snub, and pull to see it bite."
        yield "3. Take the stern line ashore or drop the stern anchor towards the beach; keep the stern line one that can be slipped."
    else:
        yield f"√(scope² − 1) must be less than {s.slope.removeprefix('1:')} for the rode to gain on the bottom"


QUESTION = Question(
    title="Bow anchor out, stern to the beach",
    solve=solve,
    results=BowAndStern,
    headline=headline,
    working=working,
    sources=(sources.BEACH_SLOPE, sources.SCOPE_RULE, sources.KEEL_AT_LOW_WATER),
    derives=(RODE_ABOARD,),
    cautions=(
        warn(cautions.WASH_ON_BEACH),
        warn(cautions.BEAM_ON),
        warn(cautions.NEVER_BY_THE_STERN),
        warn(cautions.KEEP_RODE_OFF_PROP),
        warn(cautions.WAIT_AND_CHECK_SET),
        warn(cautions.LOCAL_RULES),
    ),
    asks=(
        "bow and stern to the beach",
        "stern to the beach",
        "how far out do i drop the bow anchor off the beach",
        "anchor off the beach with the stern in",
    ),
    examples=(
        {"slope": "1:10", "boat_length": "8 m", "draught": "0.6 m", "scope": "5:1", "bow_height": "1 m", "tide_rise": "0.5 m"},
        {"slope": "1:20", "boat_length": "24 ft", "draught": "2 ft", "tide_fall": "2 ft", "rode_aboard": "250 ft"},
    ),
    moves={
        "stern_distance": "+slope +draught +under_keel +tide_fall",
        "anchor_distance": "~slope +draught +under_keel +tide_fall +boat_length +scope +tide_rise +bow_height",
        "bow_rode": "~slope +draught +under_keel +tide_fall +boat_length +scope +tide_rise +bow_height",
        "water_at_stern": "+draught +under_keel +tide_fall",
        "too_steep": "~slope +draught +under_keel +tide_fall +boat_length +scope +tide_rise +bow_height -rode_aboard -chain -line",
    },
)
