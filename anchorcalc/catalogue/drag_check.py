"""Whether the boat is dragging, by where she has been.

The watch circle is that of a taut line at low water, the antenna aft of the bow, and twice the error of a fix: what lies beyond it
is dragging and not swinging. Two of the last five fixes outside, or a steady way outwards, are called dragging; one fix is not.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec
import numpy as np

from anchorcalc import cautions, sources
from anchorcalc.declare import NOT_ON_THE_BOTTOM, Angle, Asked, Count, Length, Question, Shown, Speed, Usual, Values, down, near, told, up, warn
from anchorcalc.derive import ANTENNA_FROM_BOW
from anchorcalc.physics.arrays import at_least
from anchorcalc.physics.geometry import height_at_low_water, taut_reach
from anchorcalc.physics.track import drag_check

HALF_DAY, DAY = 43200.0, 86400.0


class DragCheck(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """What the fixes say. False means no sign of dragging, never more."""

    dragging: Annotated[bool, told("whether the fixes show dragging; false is no sign of it, no more", worse="greatest")]
    watch_radius: Annotated[Length, down("from the anchor, beyond which fixes show dragging")]
    farthest: Annotated[Length, up("farthest fix from the anchor")]
    outside: Annotated[Count, up("how many fixes lie outside the watch circle")]
    drift_speed: Annotated[Speed | None, up("how fast the last fixes move")] = None
    drift_bearing: Annotated[Angle | None, near("true bearing along which they move", worst="greatest")] = None


def moments(fixes: Any) -> Any:
    """Return the times of fixes in seconds; plain clock times that fall back by more than half a day have passed midnight."""
    times = np.array([when.seconds for when, _ in fixes])
    if fixes[0][0].form == "plain":
        times = times + DAY * np.concatenate([[0.0], np.cumsum(np.diff(times) < -HALF_DAY)])
    return times


def solve(
    *,
    anchor_at: Asked,
    fixes: Asked,
    rode_out: Asked,
    depth: Asked,
    boat_length: Asked,
    bow_height: Usual,
    tide_fall: Usual,
    antenna_from_bow: Asked,
    position_error: Usual,
) -> dict[str, Any]:
    """Judge the track of one boat; ranges of the circle's inputs are judged each by each."""
    bow_radius = taut_reach(rode_out=rode_out, height=height_at_low_water(depth=depth, tide_fall=tide_fall, bow_height=bow_height))
    places = np.radians([place for _, place in fixes])
    at = moments(fixes)
    corners = np.broadcast_arrays(bow_radius, antenna_from_bow, position_error)
    checks = [
        drag_check(
            at=at,
            latitude=places[:, 0],
            longitude=places[:, 1],
            anchor_latitude=np.radians(anchor_at.latitude),
            anchor_longitude=np.radians(anchor_at.longitude),
            bow_radius=float(bow),
            antenna_from_bow=float(antenna),
            position_error=float(error),
        )
        for bow, antenna, error in zip(*(corner.ravel() for corner in corners), strict=True)
    ]
    names = ("dragging", "watch_radius", "farthest", "outside", "drift_speed", "drift_bearing", "strays", "duplicates")
    found = {name: np.array([getattr(check, name) for check in checks]) for name in names}
    found["out_of_order"] = np.full(len(checks), bool(np.any(np.diff(at) < 0.0)))
    return {name: column.reshape(corners[0].shape)[()] for name, column in found.items()}


def headline(s: Shown, v: Values) -> str:
    """Say dragging, or no sign of it."""
    if v["dragging"]:
        return f"She is dragging: {s.outside} of {s.fixes} outside {s.watch_radius}, the farthest {s.farthest} from the anchor."
    if v["outside"] > 0:
        beyond = f"{s.outside} of {s.fixes} outside the watch circle of {s.watch_radius}, the farthest {s.farthest} from the anchor"
        return f"No sign of dragging, but {beyond}: take another fix now."
    return f"No sign of dragging: farthest fix {s.farthest} from the anchor, watch circle {s.watch_radius}."


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show the circle and what the fixes did."""
    yield f"bow's circle √({s.rode_out}² − height at low water²) + {s.antenna_from_bow} to the antenna + 2 × {s.position_error} = {s.watch_radius}"
    yield f"{s.outside} of {s.fixes} outside; dragging is two of the last five outside, or a steady way outwards"
    if hasattr(s, "drift_speed") and hasattr(s, "drift_bearing"):
        yield f"the last fixes move {s.drift_speed} towards {s.drift_bearing} (swinging included)"
    if v["strays"]:
        yield f"{int(v['strays'])} fixes lie where she could not have gone in the time: counted as outside, but no proof"
    if v["duplicates"]:
        yield f"{int(v['duplicates'])} fixes were given twice and counted once"
    if v["out_of_order"]:
        yield "the fixes were not in order of time and were put so"


QUESTION = Question(
    title="Whether she is dragging",
    solve=solve,
    results=DragCheck,
    headline=headline,
    working=working,
    sources=(sources.WATCH_CIRCLE, sources.WGS84, sources.TAUT_LINE),
    derives=(ANTENNA_FROM_BOW,),
    refuses=(NOT_ON_THE_BOTTOM,),
    cautions=(
        warn(cautions.INSIDE_CIRCLE_BLIND),
        warn(cautions.STRETCH),
        warn(cautions.WAIT_AND_CHECK_SET),
        warn(cautions.DRIES_AT_LOW_WATER, lambda *, tide_fall, depth: at_least(tide_fall, depth)),
    ),
    asks=("am i dragging", "is she dragging", "has the anchor moved", "are we dragging", "is the anchor holding by these positions"),
    examples=(
        {
            "anchor_at": "59.314 N, 18.912 E",
            "fixes": "14:00 59.3142 N 18.9120 E; 14:10 59.3143 N 18.9123 E",
            "rode_out": "30 m",
            "depth": "5 m",
            "boat_length": "9 m",
        },
        {
            "anchor_at": "59 18.84 N 18 54.72 E",
            "fixes": "02:00 59 18.88 N 18 54.72 E; 02:05 59 18.90 N 18 54.72 E; 02:10 59 18.92 N 18 54.72 E",
            "rode_out": "100 ft",
            "depth": "15 ft",
            "boat_length": "30 ft",
        },
    ),
    moves={
        "dragging": "-rode_out +depth +bow_height -tide_fall -boat_length -antenna_from_bow -position_error",
        "watch_radius": "+rode_out -depth -bow_height +tide_fall +boat_length +antenna_from_bow +position_error",
        "farthest": "",
        "outside": "-rode_out +depth +bow_height -tide_fall -boat_length -antenna_from_bow -position_error",
        "drift_speed": "",
        "drift_bearing": "",
    },
)
