"""How deep the water may be for the rode aboard.

The depth now at which the usable rode still gives the scope wanted at high water.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec
import numpy as np

from anchorcalc import cautions, sources
from anchorcalc.declare import Asked, Length, Question, Shown, Usual, Values, down, told, warn
from anchorcalc.derive import RODE_ABOARD
from anchorcalc.physics.geometry import deepest_depth as depth_at_scope


class DeepestAnchorage(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The deepest water that the rode serves."""

    deepest_depth: Annotated[Length, down("deepest water now; 0 where the rode serves none")]
    possible: Annotated[bool, told("whether the rode serves any depth")]
    deepest_at_high_water: Annotated[Length, down("the same at high water")]


def solve(*, rode_aboard: Asked, bow_height: Usual, tide_rise: Usual, scope: Usual, reserve: Usual) -> dict[str, Any]:
    """Divide the usable rode by the scope, and take bow and tide off."""
    depth = depth_at_scope(rode=rode_aboard - reserve, scope=scope, bow_height=bow_height, tide_rise=tide_rise)
    possible = depth > 0.0
    return {
        "deepest_depth": np.maximum(depth, 0.0),
        "possible": possible,
        "deepest_at_high_water": np.where(possible, depth + tide_rise, 0.0),
    }


def headline(s: Shown, v: Values) -> str:
    """Say how deep, or that no depth will do."""
    if not v["possible"]:
        return f"No water at all: the rode aboard does not give {s.scope} here."
    return f"Anchor in {s.deepest_depth} of water at the most ({s.deepest_at_high_water} at high water)."


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show the sum."""
    yield f"({s.rode_aboard} of rode − {s.reserve} kept aboard) / {s.scope.removesuffix(':1')} − {s.bow_height} of bow height − {s.tide_rise} of tide"
    yield f"= {s.deepest_depth} of water now" if v["possible"] else "is nothing or less"


QUESTION = Question(
    title="How deep the water may be",
    solve=solve,
    results=DeepestAnchorage,
    headline=headline,
    working=working,
    sources=(sources.SCOPE_RULE, sources.SCOPE_WORDS),
    derives=(RODE_ABOARD,),
    cautions=(warn(cautions.DEPTH_AT_BOAT_NOT_ANCHOR), warn(cautions.BOW_PITCH), warn(cautions.LOCAL_RULES)),
    asks=("how deep can i anchor", "what depth is too deep for us", "deepest water", "deepest spot i can anchor in", "maximum depth for my rode"),
    examples=(
        {"rode_aboard": "105 ft", "bow_height": "2 ft", "tide_rise": "3 ft"},
        {"chain": "10 m", "line": "50 m", "scope": "5:1", "reserve": "2 m"},
    ),
    moves={
        "deepest_depth": "+rode_aboard +chain +line -bow_height -tide_rise -scope -reserve",
        "possible": "+rode_aboard +chain +line -bow_height -tide_rise -scope -reserve",
        "deepest_at_high_water": "+rode_aboard +chain +line -bow_height -tide_rise -scope -reserve",
    },
)
