"""How shallow the water may be for the boat not to touch at low water."""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec

from anchorcalc import cautions, sources
from anchorcalc.declare import Asked, Length, May, Question, Shown, Usual, Values, down, told, up, warn
from anchorcalc.physics.arrays import at_least


class ShallowestAnchorage(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The least depth now, and what this depth leaves at low water."""

    shallowest_depth: Annotated[Length, up("least depth now")]
    under_keel_at_low_water: Annotated[Length | None, down("water under the keel at low water; negative aground")] = None
    aground: Annotated[bool | None, told("whether she touches at low water", worse="greatest")] = None


def solve(*, draught: Asked, under_keel: Usual, tide_fall: Usual, depth: May = None) -> dict[str, Any]:
    """Add draught, water wanted under the keel, and the fall."""
    out: dict[str, Any] = {"shallowest_depth": draught + under_keel + tide_fall}
    if depth is not None:
        left = depth - tide_fall - draught
        out |= {"under_keel_at_low_water": left, "aground": at_least(draught + tide_fall, depth)}
    return out


def headline(s: Shown, v: Values) -> str:
    """Say the least depth, and what this one leaves."""
    if "aground" not in v:
        return f"Anchor in no less than {s.shallowest_depth} of water now."
    if v["aground"]:
        return f"She will touch at low water. Anchor in no less than {s.shallowest_depth} of water now."
    if not at_least(v["depth"], v["shallowest_depth"]):
        left = f"{s.under_keel_at_low_water} under the keel at low water, less than the {s.under_keel} wanted"
        return f"Too shallow: {left}. Anchor in no less than {s.shallowest_depth} of water now."
    return f"{s.under_keel_at_low_water} under the keel at low water. Anchor in no less than {s.shallowest_depth} of water now."


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show the sum."""
    yield f"{s.draught} of draught + {s.under_keel} under the keel + {s.tide_fall} of fall = {s.shallowest_depth}"
    if "aground" in v:
        yield f"{s.depth} of water − {s.tide_fall} of fall − {s.draught} of draught = {s.under_keel_at_low_water}"


QUESTION = Question(
    title="How shallow the water may be",
    solve=solve,
    results=ShallowestAnchorage,
    headline=headline,
    working=working,
    sources=(sources.KEEL_AT_LOW_WATER,),
    cautions=(
        warn(cautions.DRIES_AT_LOW_WATER, lambda *, tide_fall, depth: at_least(tide_fall, depth)),
        warn(cautions.DEPTH_AT_BOAT_NOT_ANCHOR),
        warn(cautions.WASH_ON_BEACH),
        warn(cautions.LOCAL_RULES),
    ),
    asks=("how shallow can i anchor", "shallowest water", "will i touch at low water", "will we go aground", "least depth for my draught"),
    examples=({"draught": "1.6 m", "tide_fall": "1.2 m"}, {"draught": "5 ft", "under_keel": "2 ft", "tide_fall": "4 ft", "depth": "12 ft"}),
    moves={
        "shallowest_depth": "+draught +under_keel +tide_fall",
        "under_keel_at_low_water": "+depth -tide_fall -draught",
        "aground": "-depth +tide_fall +draught",
    },
)
