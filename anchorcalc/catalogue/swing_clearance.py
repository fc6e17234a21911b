"""Whether the boat swings clear of a danger or of a neighbour at anchor.

Against a fixed thing the whole circle counts; against a boat at anchor, both circles, the boats swung towards each other.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec
import numpy as np

from anchorcalc import cautions, sources
from anchorcalc.declare import NOT_ON_THE_BOTTOM, Asked, Length, May, Question, Shown, Usual, Values, down, refuse, told, up, warn
from anchorcalc.physics.arrays import at_least
from anchorcalc.physics.geometry import height_at_low_water, taut_reach


class SwingClearance(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """What is left between the circle and the thing to stay clear of."""

    clearance: Annotated[Length, down("what is left beyond the margin; negative where she may touch")]
    swing_radius: Annotated[Length, up("anchor to the stern, taut line at low water")]
    clear: Annotated[bool, told("whether she swings clear")]
    other_swing_radius: Annotated[Length | None, up("the neighbour's circle")] = None
    clearance_same_wind: Annotated[Length | None, down("what is left while both boats lie the same way")] = None


def solve(
    *,
    rode_out: Asked,
    depth: Asked,
    boat_length: Asked,
    distance: Asked,
    bow_height: Usual,
    tide_fall: Usual,
    margin: Usual,
    other_rode_out: May = None,
    other_boat_length: May = None,
) -> dict[str, Any]:
    """Take the circles and the margin from the distance."""
    height = height_at_low_water(depth=depth, tide_fall=tide_fall, bow_height=bow_height)
    bow_radius = taut_reach(rode_out=rode_out, height=height)
    swing_radius = bow_radius + boat_length
    out: dict[str, Any] = {"swing_radius": swing_radius}
    room = distance - margin
    if other_rode_out is not None and other_boat_length is not None:
        other_bow_radius = taut_reach(rode_out=other_rode_out, height=height)
        other_swing_radius = other_bow_radius + other_boat_length
        out |= {
            "other_swing_radius": other_swing_radius,
            "clearance_same_wind": room - np.maximum(swing_radius - other_bow_radius, other_swing_radius - bow_radius),
        }
        room = room - other_swing_radius
    clearance = room - swing_radius
    return {**out, "clearance": clearance, "clear": at_least(room, swing_radius)}


def headline(s: Shown, v: Values) -> str:
    """Say clear or not, and by how much."""
    beyond = f" beyond the margin of {s.margin}" if v["margin"] > 0.0 else ""
    if v["clear"] and s.clearance.startswith("0 "):
        return f"She only just swings clear, with nothing to spare{beyond}."
    if v["clear"]:
        return f"She swings clear by {s.clearance}{beyond}."
    lacking = s.clearance.removeprefix("-")
    same = ""
    if "clearance_same_wind" in v:
        same = (
            f" While both boats lie the same way there is {s.clearance_same_wind}."
            if v["clearance_same_wind"] >= 0.0
            else " Nor do they clear lying the same way."
        )
    return f"She does not swing clear: {lacking} is lacking{beyond.replace('beyond', 'with')}.{same}"


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show the sum."""
    yield f"her circle: √({s.rode_out}² − height at low water²) + {s.boat_length} of boat = {s.swing_radius}"
    if "other_swing_radius" in v:
        yield f"the neighbour's circle, in the same depth: √({s.other_rode_out}² − height²) + {s.other_boat_length} = {s.other_swing_radius}"
        yield f"{s.distance} − {s.margin} of margin − {s.swing_radius} − {s.other_swing_radius} = {s.clearance}"
        yield f"both lying the same way: {s.clearance_same_wind}"
    else:
        yield f"{s.distance} − {s.margin} of margin − {s.swing_radius} = {s.clearance}"


QUESTION = Question(
    title="Whether she swings clear",
    solve=solve,
    results=SwingClearance,
    headline=headline,
    working=working,
    sources=(sources.TAUT_LINE,),
    pairs=(("other_rode_out", "other_boat_length"),),
    refuses=(
        NOT_ON_THE_BOTTOM,
        refuse(
            "other_rode_out",
            lambda *, other_rode_out, depth, bow_height: other_rode_out <= depth + bow_height,
            why="is not longer than the height of the roller above the seabed",
            would_do="more rode than depth + bow_height",
        ),
    ),
    cautions=(
        warn(cautions.DRIES_AT_LOW_WATER, lambda *, tide_fall, depth: at_least(tide_fall, depth)),
        warn(cautions.STRETCH),
        warn(cautions.DEPTH_AT_BOAT_NOT_ANCHOR),
        warn(cautions.LOCAL_RULES),
    ),
    asks=("will i swing clear", "do i clear the rocks", "will we hit the neighbour", "am i too close", "is there enough swinging room"),
    examples=(
        {"rode_out": "35 m", "depth": "5 m", "boat_length": "9 m", "distance": "60 m", "margin": "10 m"},
        {"rode_out": "40 m", "depth": "6 m", "boat_length": "10 m", "distance": "90 m", "other_rode_out": "30 m", "other_boat_length": "8 m"},
    ),
    moves={
        "clearance": "+distance -margin -rode_out +depth +bow_height -tide_fall -boat_length -other_rode_out -other_boat_length",
        "swing_radius": "+rode_out -depth -bow_height +tide_fall +boat_length",
        "clear": "+distance -margin -rode_out +depth +bow_height -tide_fall -boat_length -other_rode_out -other_boat_length",
        "other_swing_radius": "+other_rode_out -depth -bow_height +tide_fall +other_boat_length",
        "clearance_same_wind": "+distance -margin ^rode_out ^other_rode_out ^depth ^bow_height ^tide_fall -boat_length -other_boat_length",
    },
)
