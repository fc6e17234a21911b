"""The engine has failed: when to let go the anchor at the latest, and with how much rode."""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec
import numpy as np

from anchorcalc import cautions, sources
from anchorcalc.declare import Asked, Length, Question, Ratio, Shown, Time, Usual, Values, down, refuse, refuse_range, told, up, warn
from anchorcalc.derive import RODE_ABOARD
from anchorcalc.physics.arrays import at_least
from anchorcalc.physics.geometry import scope_of, taut_reach

AT_ONCE = 30.0  # s; with less than this left nobody should count


class TimeToLetGo(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """When, and how much."""

    rode_to_use: Annotated[Length, up("rode to let out")]
    room_needed: Annotated[Length, up("from the anchor to the stern with that rode out")]
    time_left: Annotated[Time, down("until the last moment to let go; negative where it has passed")]
    let_go_now: Annotated[bool, told("whether that moment is here", worse="greatest")]
    scope_got: Annotated[Ratio, down("scope that the rode gives")]


def solve(
    *,
    depth: Asked,
    distance_off: Asked,
    drift: Asked,
    boat_length: Asked,
    rode_aboard: Asked,
    bow_height: Usual,
    reserve: Usual,
    scope: Usual,
) -> dict[str, Any]:
    """Take what rode and boat need from the way to the danger, and divide by the drift."""
    height = depth + bow_height
    rode_to_use = np.minimum(rode_aboard - reserve, scope * height)
    room_needed = taut_reach(rode_out=rode_to_use, height=height) + boat_length
    time_left = (distance_off - room_needed) / drift
    return {
        "rode_to_use": rode_to_use,
        "room_needed": room_needed,
        "time_left": time_left,
        "let_go_now": time_left <= 0.0,
        "scope_got": scope_of(rode_out=rode_to_use, height=height),
    }


def headline(s: Shown, v: Values) -> str:
    """Say it in one breath."""
    if v["let_go_now"] or v["time_left"] < AT_ONCE:
        return f"LET GO NOW: {s.rode_to_use} of rode."
    return f"Let go within {s.time_left}: {s.rode_to_use} of rode."


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show one line."""
    yield f"({s.distance_off} off − {s.room_needed} that rode and boat need) / {s.drift} = {s.time_left}; scope {s.scope_got}"


def _straddles(*, depth: Any, bow_height: Any, rode_aboard: Any, reserve: Any, scope: Any) -> Any:
    """Say whether over a range the rode is enough at one end and not at the other: the worst then lies between."""
    wanted, usable = scope * (depth + bow_height), rode_aboard - reserve
    return np.any(wanted < usable, axis=-1, keepdims=True) & np.any(wanted > usable, axis=-1, keepdims=True)


_BETWEEN = "is worst somewhere between its ends, where the rode just gives the scope"

QUESTION = Question(
    title="When to let go at the latest",
    solve=solve,
    results=TimeToLetGo,
    headline=headline,
    working=working,
    sources=(sources.TIME_TO_DRIFT, sources.TAUT_LINE),
    derives=(RODE_ABOARD,),
    refuses=(
        refuse(
            "rode_aboard",
            lambda *, rode_aboard, reserve, depth, bow_height: rode_aboard - reserve <= depth + bow_height,
            why="less the reserve does not reach the bottom here",
            would_do="shallower water, or more rode,",
        ),
        *(refuse_range(name, _straddles, why=_BETWEEN) for name in ("depth", "bow_height")),
    ),
    cautions=(
        warn(cautions.LEE_SHORE),
        warn(cautions.BITTER_END, lambda *, rode_to_use, rode_aboard: at_least(rode_to_use, rode_aboard)),  # all of it runs out
        warn(cautions.NEVER_BY_THE_STERN),
        warn(cautions.FINGERS_AND_TURN),
        warn(cautions.WAIT_AND_CHECK_SET),
    ),
    asks=(
        "engine failed when do i let go",
        "drifting onto the rocks",
        "how long have i got before i must anchor",
        "when must i drop the anchor",
        "engine died",
    ),
    examples=(
        {"depth": "8 m", "distance_off": "150 m", "drift": "1 kn", "boat_length": "9 m", "rode_aboard": "50 m"},
        {"depth": "20 ft", "distance_off": "200 ft", "drift": "2 kn", "boat_length": "28 ft", "chain": "20 ft", "line": "180 ft"},
    ),
    moves={
        "rode_to_use": "+depth +bow_height +scope +rode_aboard -reserve",
        "room_needed": "^depth ^bow_height +scope +rode_aboard -reserve +boat_length",
        "time_left": "+distance_off ^drift -boat_length ^depth ^bow_height -scope -rode_aboard +reserve",
        "let_go_now": "-distance_off +boat_length ^depth ^bow_height +scope +rode_aboard -reserve",
        "scope_got": "+rode_aboard -reserve +scope -depth -bow_height",
    },
)
