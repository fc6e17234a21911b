"""Whether and when more rode must go out as the tide rises.

The last moment at which the rode out still gives the least scope, by half a cosine between low and high water.
"""

from collections.abc import Iterator
from typing import Annotated, Any, Literal

import msgspec
import numpy as np

from anchorcalc import cautions, sources
from anchorcalc.declare import NOT_ON_THE_BOTTOM, Asked, Clock, Length, Question, Shown, Usual, Values, down, told, up, warn
from anchorcalc.physics.arrays import at_least
from anchorcalc.physics.geometry import rode_at_scope
from anchorcalc.physics.tide import elapsed_part, moment_at_height, tide_height
from anchorcalc.tides import TIDE_REFUSALS, TIDE_WARNINGS

NEVER, LATER, NOW = range(3)


class WhenToVeer(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """Now, later or never, and by when."""

    veer: Annotated[Literal["never", "later", "now"], told("when more rode must go out", worse="greatest")]
    veer_by: Annotated[Clock | None, down("the last moment at which the rode out serves")] = None
    rode_at_high_water: Annotated[Length, up("rode that the least scope asks at high water")]
    tide_rise: Annotated[Length, up("from the present height up to high water")]


def solve(
    *,
    rode_out: Asked,
    depth: Asked,
    bow_height: Usual,
    least_scope: Usual,
    low_height: Asked,
    low_at: Asked,
    high_height: Asked,
    high_at: Asked,
    at: Asked,
) -> dict[str, Any]:
    """Find the height of tide at which the rode just serves, and the moment of it."""
    height_now = tide_height(low=low_height, high=high_height, elapsed=elapsed_part(low_at=low_at, high_at=high_at, at=at))
    tide_rise = np.maximum(high_height - height_now, 0.0)
    spare = rode_out / least_scope - depth - bow_height
    rising = np.less(low_at, high_at)
    serves_now, serves_high = at_least(spare + depth, depth), at_least(spare + depth, depth + tide_rise)
    veer = np.where(serves_now, np.where(serves_high | ~rising, NEVER, LATER), NOW)
    moment = moment_at_height(
        low=low_height, high=high_height, low_at=low_at, high_at=high_at, height=np.minimum(height_now + np.maximum(spare, 0.0), high_height)
    )
    return {
        "veer": veer,
        "veer_by": np.select([np.equal(veer, LATER), np.equal(veer, NOW)], [moment, np.nan], np.inf),  # of a range the earliest counts
        "tide_rise": tide_rise,
        "rode_at_high_water": rode_at_scope(height=depth + bow_height + tide_rise, scope=least_scope),
    }


def headline(s: Shown, v: Values) -> str:
    """Say when, and to how much."""
    if s.veer == "now":
        return f"Veer now: {s.rode_out} is already less than {s.least_scope}. At high water it takes {s.rode_at_high_water}."
    if s.veer == "later":
        return f"Veer to {s.rode_at_high_water} by {s.veer_by}."
    if v["low_at"] < v["high_at"]:
        return f"No need to veer: {s.rode_out} serves at high water, which asks {s.rode_at_high_water}."
    return f"No need to veer on this falling tide. The next high water, if as high, asks {s.rode_at_high_water}."


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show what height the rode serves."""
    yield f"{s.rode_out} / {s.least_scope.removesuffix(':1')} − {s.depth} of water − {s.bow_height} of bow height is the rise that the rode serves"
    yield f"the tide rises {s.tide_rise} from {s.at} to high water"
    yield f"({s.depth} + {s.bow_height} + {s.tide_rise}) × {s.least_scope.removesuffix(':1')} = {s.rode_at_high_water} at high water"


QUESTION = Question(
    title="When to veer more rode",
    solve=solve,
    results=WhenToVeer,
    headline=headline,
    working=working,
    refuses=(NOT_ON_THE_BOTTOM, *TIDE_REFUSALS),
    cautions=(*TIDE_WARNINGS, warn(cautions.DEPTH_AT_BOAT_NOT_ANCHOR), warn(cautions.FINGERS_AND_TURN)),
    sources=(sources.HALF_COSINE_TIDE, sources.SCOPE_RULE),
    asks=(
        "when do i need to let out more",
        "when must i veer",
        "by when do i have to veer more rode",
        "how long is my scope good for",
        "when will the scope be too little",
    ),
    examples=(
        {
            "rode_out": "35 m",
            "depth": "4 m",
            "bow_height": "1 m",
            "low_height": "0.6 m",
            "low_at": "06:10",
            "high_height": "4.4 m",
            "high_at": "12:25",
            "at": "07:00",
        },
        {
            "rode_out": "100 ft",
            "depth": "12 ft",
            "bow_height": "4 ft",
            "low_height": "1 ft",
            "low_at": "18:00",
            "high_height": "9 ft",
            "high_at": "00:10",
            "at": "19:30",
        },
    ),
    moves={
        "veer": "-rode_out +depth +bow_height +least_scope -low_height +high_height",
        "veer_by": "+rode_out -depth -bow_height -least_scope ~low_height ~high_height",
        "tide_rise": "-low_height +high_height",
        "rode_at_high_water": "+depth +bow_height +least_scope -low_height +high_height",
    },
)
