"""What must be hauled to get the anchor up, and whether hands can do it.

The load as the anchor leaves the bottom, the pull that brings the boat up to it, and the windlass to look for. Breaking out asks more.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec
import numpy as np

from anchorcalc import cautions, sources
from anchorcalc.declare import Asked, Derivation, Force, May, Question, Shown, Usual, Values, refuse, require, told, up, warn
from anchorcalc.derive import CHAIN_ASSUMED, CHAIN_SIZE_IF_ANY, EXTRAPOLATED_LOAD, size_by_table, usual_with
from anchorcalc.physics.codes import MOTOR
from anchorcalc.physics.constants import GRAVITY, POUND
from anchorcalc.physics.hauling import hanging_load, hauling_load, is_work_for_hands, rode_weight_hanging, windlass_pull
from anchorcalc.physics.next_size import chain_is_outside_table
from anchorcalc.physics.weights import chain_mass_high, line_mass
from anchorcalc.physics.wind import load_steady


class WeighAnchor(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The loads while weighing."""

    hanging_load: Annotated[Force, up("load as the anchor leaves the bottom: chain and anchor in water, what is above it in air")]
    hauling_load: Annotated[Force | None, up("pull that brings the boat up to her anchor; absent without boat and wind")] = None
    windlass_pull: Annotated[Force, up("pull to look for in a windlass")]
    by_hand: Annotated[bool, told("whether a person should haul that by hand")]


def solve(
    *,
    depth: Asked,
    anchor_mass: Asked,
    chain: Usual,
    chain_size: May = None,
    bow_height: Usual,
    line_size: May = None,
    boat_length: May = None,
    wind: May = None,
    current: May = None,
    beam: May = None,
    boat_form: May = None,
) -> dict[str, Any]:
    """Weigh what hangs, and add the drag where the boat and the wind are known."""
    size = 0.0 if chain_size is None else chain_size
    rode_weight = rode_weight_hanging(
        depth=depth,
        bow_height=bow_height,
        chain=chain,
        chain_mass=chain_mass_high(chain_size=size),
        line_mass=0.0 if line_size is None else line_mass(line_size=line_size),
    )
    hanging = hanging_load(rode_weight=rode_weight, anchor_mass=anchor_mass)
    found = {"hanging_load": hanging}
    greatest = hanging
    if boat_length is not None and wind is not None:
        form, stream = MOTOR if boat_form is None else boat_form, 0.0 if current is None else current
        drag = load_steady(boat_length=boat_length, wind=wind, beam=beam, boat_form=form, current=stream)
        found["hauling_load"] = hauling_load(load_steady=drag, rode_weight=rode_weight)
        greatest = np.maximum(hanging, found["hauling_load"])
    pull = windlass_pull(hanging_load=greatest, chain_size=np.where(np.greater(chain, 0.0), size, 0.0), depth=depth)
    return found | {"windlass_pull": pull, "by_hand": is_work_for_hands(load=greatest)}


def headline(s: Shown, v: Values) -> str:
    """Say what hangs, and who can haul it."""
    boat = f", and {s.hauling_load} brings the boat up to it" if hasattr(s, "hauling_load") else ""
    who = "One person can haul that by hand" if v["by_hand"] else "That is more than a person should haul by hand"
    return f"{s.hanging_load} hangs from the roller as the anchor leaves the bottom{boat}. {who}. Breaking it out is more: let the boat do that."


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show what hangs, the drag and the windlass."""
    if v["chain"] > 0.0:
        yield f"{s.anchor_mass} of anchor and {s.chain} of {s.chain_size} chain: {s.depth} below the surface, {s.bow_height} above it"
    else:
        yield f"{s.anchor_mass} of anchor in {s.depth} of water; no chain was reckoned"
    if v["chain"] < v["depth"] + v["bow_height"] and not hasattr(s, "line_size"):
        yield "the size of the line was not given: its weight, a few newtons in water, was left out"
    yield f"steel keeps 0.87 of its weight in sea water: {s.hanging_load}, as a weight {_as_weight(v['hanging_load'])}"
    if hasattr(s, "hauling_load"):
        yield f"steady drag of {s.boat_length} of boat in {s.wind} of wind and the rode that hangs: {s.hauling_load} to bring her up to it"
    else:
        yield "without the boat and the wind the pull that brings her up to the anchor was not reckoned"
    yield f"windlass: 1.5 × the greatest load / 0.7 for the roller, or the rule by the chain where that is more: {s.windlass_pull}"
    yield f"a person: up to 23 kg or 51 lb ({23.0 * GRAVITY:.0f} N)"


def _as_weight(load: float) -> str:
    return f"{load / GRAVITY:.0f} kg or {load / GRAVITY / POUND:.0f} lb"


def _ends_between(*, depth: Any, bow_height: Any, chain: Any) -> Any:
    """Say whether the end of the chain lies near the surface in some of the range, where more depth is first more load, then less."""
    return (np.min(depth, axis=-1, keepdims=True) < chain) & (chain < np.max(depth, axis=-1, keepdims=True) + bow_height)


CHAIN_ALL_THE_WAY = Derivation(
    gives="chain",
    needs=("chain_size", "depth"),
    takes=("bow_height",),
    solve=lambda *, chain_size, depth, bow_height: depth + bow_height,
    asks_for=("chain",),
    assumed="length of that chain, not said: taken as chain all the way, the heavier",
)
QUESTION = Question(
    title="Weighing anchor",
    solve=solve,
    results=WeighAnchor,
    headline=headline,
    working=working,
    sources=(
        sources.ARCHIMEDES,
        sources.CHAIN_MASS,
        sources.WINDLASS,
        sources.MANUAL_HANDLING,
        sources.WIND_DRAG,
        sources.FRONTAL_AREA,
        sources.WEIGHING_LEAVES_OUT,
    ),
    derives=(
        CHAIN_ALL_THE_WAY,
        CHAIN_SIZE_IF_ANY,
        size_by_table(
            "line_size",
            needs=("depth",),
            takes=("chain", "bow_height"),
            when=lambda *, depth, chain, bow_height: chain < depth + bow_height,
        ),
        usual_with("boat_form", "boat_length", "wind"),
        usual_with("current", "boat_length", "wind"),
    ),
    requires=(
        require("chain_size", lambda *, chain: np.greater(chain, 0.0)),
        require("boat_length", lambda *, wind: np.greater_equal(wind, 0.0)),
    ),
    refuses=(
        refuse(
            "depth",
            lambda *, depth_ranged, depth, bow_height, chain, chain_assumed: (
                np.logical_not(chain_assumed) & _ends_between(depth=depth, bow_height=bow_height, chain=chain)
            ),
            why="is a range in which the end of the chain passes the surface, where more depth is not always more load",
            would_do="one value",
            code="range_not_taken",
        ),
    ),
    cautions=(
        CHAIN_ASSUMED,
        warn(cautions.BREAK_OUT),
        warn(cautions.BACK_OF_A_PERSON),
        warn(cautions.FINGERS_AND_TURN),
        warn(cautions.STRONG_POINT_UNKNOWN),
        warn(cautions.KEEP_RODE_OFF_PROP),
        warn(cautions.SEAS_AND_SNATCH),
        warn(
            cautions.EXTRAPOLATED,
            lambda *, chain, chain_size: np.greater(chain, 0.0) & chain_is_outside_table(chain_size=chain_size),
        ),
        *EXTRAPOLATED_LOAD,
    ),
    asks=(
        "can i get the anchor up by hand",
        "how heavy is the anchor to pull up",
        "what windlass do i need",
        "load when the anchor leaves the bottom",
        "weight of chain and anchor hanging straight down",
        "pull to haul the boat up to her anchor",
        "is the anchor too heavy for a person",
    ),
    examples=(
        {"depth": "9 m", "anchor_mass": "16 kg", "chain": "40 m", "chain_size": "8 mm", "boat_length": "9.5 m", "wind": "12 kn"},
        {"depth": "20 ft", "anchor_mass": "22 lb", "chain": "12 ft", "chain_size": "1/4 in", "bow_height": "3 ft", "line_size": "1/2 in"},
    ),
    moves={
        "hanging_load": "^depth +anchor_mass ~chain +chain_size +bow_height +line_size +boat_length",
        "hauling_load": "^depth ~chain +chain_size +bow_height +line_size +boat_length +wind +current +beam",
        "windlass_pull": "^depth +anchor_mass ~chain +chain_size +bow_height +line_size +boat_length +wind +current +beam",
        "by_hand": "^depth -anchor_mass ~chain -chain_size -bow_height -line_size -boat_length -wind -current -beam",
    },
)
