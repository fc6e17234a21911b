"""How much rode makes the pull at the anchor just flat, and what the usual scope would give.

The chain is given and the line behind it grows, at the highest water of the stay.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec
import numpy as np

from anchorcalc import cautions, sources
from anchorcalc.declare import Asked, Length, May, Question, Shown, Usual, Values, require, told, up, warn
from anchorcalc.derive import (
    CHAIN_ASSUMED,
    CHAIN_SIZE_IF_ANY,
    EXTRAPOLATED_LOAD,
    LINE_SIZE,
    LINE_WEIGHTLESS,
    LOAD,
    LOAD_DOWN,
    LOAD_UP,
    SIZE_OF_RANGED_BOAT,
    floats,
    weightless_line,
)
from anchorcalc.physics.all_chain import flat_pull_chain
from anchorcalc.physics.catenary import rode_for_flat_pull
from anchorcalc.physics.geometry import rode_at_scope
from anchorcalc.physics.weights import rode_weights

MORE_THAN_BOATS_CARRY = 200.0  # m: an own figure, for the wording alone


class RodeForFlatPull(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The rode for a flat pull, and the rode by rule."""

    rode_out: Annotated[Length | None, up("rode for which the pull at the anchor is just horizontal; absent where no length does it")] = None
    possible: Annotated[bool, told("whether any length does it")]
    rode_by_rule: Annotated[Length, up("rode by the rule: scope × height at the highest water")]
    rode_of_chain: Annotated[Length | None, up("the same with nothing but chain of that size")] = None


def solve(
    *,
    depth: Asked,
    load: Asked,
    bow_height: Usual,
    tide_rise: Usual,
    chain: Usual,
    chain_size: May = None,
    line_size: May = None,
    line_material: Usual,
    scope: Usual,
) -> dict[str, Any]:
    """Closed form: weight gained upward is tension gained."""
    height = depth + bow_height + tide_rise
    chain_weight, line_weight = rode_weights(chain_size=chain_size, line_size=line_size, line_material=line_material)
    rode_out = rode_for_flat_pull(chain=chain, height=height, load=load, chain_weight=chain_weight, line_weight=line_weight)
    possible = np.isfinite(rode_out)
    found = {"rode_out": np.where(possible, rode_out, np.nan), "possible": possible, "rode_by_rule": rode_at_scope(height=height, scope=scope)}
    return found if chain_size is None else found | {"rode_of_chain": flat_pull_chain(height=height, load=load, chain_weight=chain_weight)}


def headline(s: Shown, v: Values) -> str:
    """Say the length, beside the rule's, and what chain alone would do."""
    by_rule = f"Scope {s.scope} gives {s.rode_by_rule}."
    of_chain = f" Of {s.chain_size} chain alone: {s.rode_of_chain}." if "rode_of_chain" in v and v["chain"] < v["rode_of_chain"] else ""
    if not hasattr(s, "rode_out") and not hasattr(s, "line_size"):
        return f"Line of unknown size gives no figure, and no length of chain was said.{of_chain} {by_rule}"
    if not hasattr(s, "rode_out"):
        return f"No length of this line makes the pull flat.{of_chain} {by_rule}"
    if v["rode_out"] > MORE_THAN_BOATS_CARRY:
        said = f"A flat pull would take {s.rode_out} of rode, more than a small boat carries: reckon with some lift at the anchor."
        return f"{said}{of_chain} {by_rule}"
    return f"The pull is flat with {s.rode_out} of rode out.{of_chain} {by_rule}"


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show the height and what hangs."""
    yield f"the roller is {s.depth} of water + {s.tide_rise} of tide + {s.bow_height} of bow height above the seabed"
    of_size = f" of {s.chain_size}" if hasattr(s, "chain_size") else ""
    line = f"line of {s.line_size}" if v.get("line_size", 0.0) > 0.0 else "line, its weight left out,"
    yield f"under {s.load}, with {s.chain} of chain{of_size} at the anchor and {line} behind it"
    if hasattr(s, "rode_out"):
        yield f"√(height² + 2 × height × load / weight), part by part: {s.rode_out}"
    elif not hasattr(s, "line_size"):
        yield "neither the length of the chain nor the size of the line was said, so neither was reckoned with"
    else:
        yield "the chain is too light to turn the pull flat, and line that is no heavier than water cannot"
    yield f"by rule: height × {s.scope.removesuffix(':1')} = {s.rode_by_rule}"


def _chain_is_short(*, chain: Any, chain_size: Any, load: Any, depth: Any, bow_height: Any, tide_rise: Any) -> Any:
    """Say whether there is chain and it does not do alone, so that the size of the line matters."""
    chain_weight, _ = rode_weights(chain_size=chain_size, line_size=None)
    return (chain > 0.0) & (chain < flat_pull_chain(height=depth + bow_height + tide_rise, load=load, chain_weight=chain_weight))


def _sinking_line_behind(*, chain: Any, chain_size: Any, load: Any, depth: Any, bow_height: Any, tide_rise: Any, line_material: Any) -> Any:
    short = _chain_is_short(chain=chain, chain_size=chain_size, load=load, depth=depth, bow_height=bow_height, tide_rise=tide_rise)
    return short & np.logical_not(floats(line_material))


# A longer boat pulls harder, on the stouter sizes that a table gives her.
_MORE, _LESS = LOAD_UP.replace("+boat_length", "^boat_length"), LOAD_DOWN.replace("-boat_length", "^boat_length")
QUESTION = Question(
    title="Rode for a flat pull at the anchor",
    solve=solve,
    results=RodeForFlatPull,
    headline=headline,
    working=working,
    sources=(sources.CATENARY, sources.SCOPE_RULE, sources.CHAIN_MASS, sources.NYLON, sources.ABYC_H40, sources.SMALL_VESSEL_CODE),
    derives=(
        LOAD,
        CHAIN_SIZE_IF_ANY,
        LINE_SIZE,
        weightless_line(needs=("load", "depth"), takes=("chain", "bow_height", "tide_rise", "line_material"), when=_sinking_line_behind),
    ),
    requires=(
        require("chain_size", lambda *, chain: np.greater(chain, 0.0)),
        require("line_size", lambda *, chain: np.equal(chain, 0.0), unless=("chain_size",)),
        require("line_size", lambda *, chain, chain_size, chain_assumed: np.equal(chain, 0.0) & np.logical_not(chain_assumed)),
        require("line_size", _chain_is_short),
    ),
    refuses=(SIZE_OF_RANGED_BOAT,),
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
        "how much rode for a flat pull",
        "rode so that the anchor is not lifted",
        "how much to let out before the shank lies down",
        "length for a horizontal pull at the anchor",
        "rode needed for zero lift on the shank",
        "how much chain keeps the pull level",
    ),
    examples=(
        {"depth": "6 m", "boat_length": "9.5 m", "wind": "20 kn", "chain": "30 m"},
        {
            "depth": "15 ft",
            "bow_height": "4 ft",
            "tide_rise": "3 ft",
            "load": "300 lbf",
            "chain": "40 ft",
            "chain_size": "5/16 in",
            "line_size": "1/2 in",
        },
    ),
    moves={
        "rode_out": f"+depth +bow_height +tide_rise {_MORE} -chain -chain_size ^line_size",
        "possible": f"-depth -bow_height -tide_rise {_LESS} +chain +chain_size ^line_size",
        "rode_by_rule": "+depth +bow_height +tide_rise +scope",
        "rode_of_chain": f"+depth +bow_height +tide_rise {_MORE} -chain_size",
    },
)
