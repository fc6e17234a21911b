"""How the rode pulls at the anchor: at what angle, how much chain still lies, and where the bow is.

Chain and line as two hanging lines in series under a steady load, at the highest water of the stay.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec
import numpy as np

from anchorcalc import cautions, sources
from anchorcalc.declare import Angle, Asked, Force, Length, May, Question, Refuse, Shown, Usual, Values, down, refuse, refuse_range, require, up, warn
from anchorcalc.derive import (
    CHAIN_ASSUMED,
    CHAIN_SIZE_IF_ANY,
    EXTRAPOLATED_LOAD,
    LINE_WEIGHTLESS,
    LOAD,
    LOAD_UP,
    SIZE_OF_RANGED_BOAT,
    floats,
    size_by_table,
    weightless_line,
)
from anchorcalc.physics.catenary import rode_shape
from anchorcalc.physics.holding import share_of_flat_pull
from anchorcalc.physics.weights import rode_weights


class PullAtAnchor(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The rode under load."""

    pull_angle: Annotated[Angle, up("angle of the rode at the shank, above a level seabed")]
    chain_lying: Annotated[Length, down("chain that lies on the seabed")]
    bow_tension: Annotated[Force, up("pull of the rode at the roller")]
    reach: Annotated[Length, up("from the bow to the anchor, along the water")]


def solve(
    *,
    rode_out: Asked,
    depth: Asked,
    load: Asked,
    bow_height: Usual,
    tide_rise: Usual,
    chain: Usual,
    chain_size: May = None,
    line_size: May = None,
    line_material: Usual,
) -> dict[str, Any]:
    """Hang the rode between roller and anchor."""
    chain_weight, line_weight = rode_weights(chain_size=chain_size, line_size=line_size, line_material=line_material)
    shape = rode_shape(
        rode_out=rode_out,
        chain=chain,
        height=depth + bow_height + tide_rise,
        load=load,
        chain_weight=chain_weight,
        line_weight=line_weight,
    )
    return {"pull_angle": shape.pull_angle, "chain_lying": shape.chain_lying, "bow_tension": shape.bow_tension, "reach": shape.reach}


def headline(s: Shown, v: Values) -> str:
    """Say whether the pull is flat, and what that does to the holding."""
    if v["pull_angle"] == 0.0:
        lying = f" and {s.chain_lying} of chain lies on the bottom" if v["chain_lying"] > 0.0 else ""
        return f"The pull at the anchor is flat{lying}."
    share = float(share_of_flat_pull(pull_angle=v["pull_angle"]))
    kept = f"about {int(100.0 * share)} %" if share < 1.0 else "all"
    return f"The rode lifts at the anchor: it pulls at {s.pull_angle}, where an anchor keeps {kept} of its holding."


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show the load, the height and the shape."""
    yield f"the roller is {s.depth} of water + {s.tide_rise} of tide + {s.bow_height} of bow height above the seabed"
    made_of = f"{s.chain} of {s.chain_size} chain" if hasattr(s, "chain_size") and v["chain"] > 0.0 else "no chain"
    yield f"{s.rode_out} of rode with {made_of} under {s.load}: {s.chain_lying} of chain lies, {s.pull_angle} at the shank"
    yield f"{s.bow_tension} at the roller, {s.reach} from bow to anchor (without the stretch of the line)"


def _no_range_afloat(name: str) -> Refuse:
    """Refuse a range of chain, or of what makes the load, on line that floats: it lifts the chain, less so under more load."""
    why = "is a range on line that floats, which may pull flatter as that grows"
    return refuse_range(name, lambda *, line_material: floats(line_material), why=why)


_EITHER = LOAD_UP.replace("+", "^")  # more load, but a heavier chain from the table for a longer boat; and see above
QUESTION = Question(
    title="Pull at the anchor",
    solve=solve,
    results=PullAtAnchor,
    headline=headline,
    working=working,
    sources=(sources.CATENARY, sources.CHAIN_MASS, sources.NYLON, sources.ABYC_H40, sources.HOLDING_BY_SCOPE, sources.SMALL_VESSEL_CODE),
    derives=(
        LOAD,
        CHAIN_SIZE_IF_ANY,
        size_by_table("line_size", needs=("rode_out",), takes=("chain",), when=lambda *, rode_out, chain: rode_out > chain),
        weightless_line(
            needs=("rode_out",),
            takes=("chain", "line_material"),
            when=lambda *, rode_out, chain, line_material: (rode_out > chain) & np.logical_not(floats(line_material)),
        ),
    ),
    requires=(
        require("chain_size", lambda *, chain: np.greater(chain, 0.0)),
        require("line_size", lambda *, rode_out, chain: (rode_out > chain) & np.equal(chain, 0.0)),
        require("line_size", lambda *, rode_out, chain, line_material: (rode_out > chain) & floats(line_material)),
    ),
    refuses=(
        refuse(
            "rode_out",
            lambda *, rode_out, depth, tide_rise, bow_height: rode_out <= depth + tide_rise + bow_height,
            why="is not longer than the height of the roller above the seabed (depth + tide_rise + bow_height): the anchor is not on the bottom",
            would_do="more rode than depth + tide_rise + bow_height",
        ),
        SIZE_OF_RANGED_BOAT,
        *(_no_range_afloat(name) for name in ("load", "boat_length", "wind", "beam", "current", "chain")),
    ),
    cautions=(
        CHAIN_ASSUMED,
        LINE_WEIGHTLESS,
        *EXTRAPOLATED_LOAD,
        warn(cautions.SEAS_AND_SNATCH),
        warn(cautions.BOW_PITCH),
        warn(cautions.STRETCH, lambda *, rode_out, chain: rode_out > chain),
        warn(cautions.DEPTH_AT_BOAT_NOT_ANCHOR),
    ),
    asks=(
        "does the chain lift at the anchor",
        "is the pull at the anchor still flat",
        "angle of the rode at the shank",
        "how much chain is still on the bottom",
        "how far ahead is the anchor under load",
        "will it lift the anchor",
        "tension at the bow",
    ),
    examples=(
        {"rode_out": "40 m", "depth": "6 m", "boat_length": "9.5 m", "wind": "25 kn", "chain": "15 m"},
        {
            "rode_out": "120 ft",
            "depth": "15 ft",
            "bow_height": "4 ft",
            "tide_rise": "3 ft",
            "load": "500 lbf",
            "chain": "120 ft",
            "chain_size": "3/8 in",
        },
    ),
    moves={
        "pull_angle": f"-rode_out +depth +bow_height +tide_rise {_EITHER} -chain -chain_size ^line_size",
        "chain_lying": f"+rode_out -depth -bow_height -tide_rise {_EITHER} +chain +chain_size ^line_size",
        "bow_tension": f"-rode_out +depth +bow_height +tide_rise {_EITHER} ^chain +chain_size ^line_size",
        # Under line that floats a heavier chain can lengthen the reach, too, by fractions of a millimetre.
        "reach": f"+rode_out -depth -bow_height -tide_rise {_EITHER} ^chain ^chain_size ^line_size",
    },
)
