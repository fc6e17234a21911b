"""How two anchors share the load.

The triangle of forces: the wider the two rodes spread, the more each carries. Above 170 degrees she lies to one at a time.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec
import numpy as np

from anchorcalc import cautions, sources
from anchorcalc.declare import Asked, Force, Question, Shown, Usual, Values, told, up, warn
from anchorcalc.derive import EXTRAPOLATED_LOAD, LOAD
from anchorcalc.physics.statics import ONE_AT_A_TIME, two_anchor_loads


class TwoAnchorLoad(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The load on each rode."""

    load_each: Annotated[tuple[Force, ...], up("load on each rode, the greater first")]
    slack: Annotated[bool, told("whether one rode carries nothing", worse="greatest")]


def solve(*, load: Asked, spread: Asked, wind_off: Usual) -> dict[str, Any]:
    """Share the load by statics."""
    shared = two_anchor_loads(load=load, spread=spread, wind_off=wind_off)
    return {"load_each": (shared.greater, shared.less), "slack": shared.slack}


def headline(s: Shown, v: Values) -> str:
    """Say what each carries."""
    greater, less = s.load_each
    if v["slack"]:
        return f"One rode carries it all, {greater}; the other is slack."
    if v["spread"] > ONE_AT_A_TIME * (1.0 + 1e-9):
        return f"So far apart she lies to one anchor at a time: {greater} on either."
    return f"{greater} on each rode." if greater == less else f"{greater} on one rode, {less} on the other."


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show the multiple of the load."""
    yield f"{s.load} between two rodes {s.spread} apart, wind {s.wind_off} off the middle"
    if v["load"] > 0.0:
        greater = float(np.max(v["load_each"][0]))
        yield f"the harder rode carries {greater / v['load']:.3g} times the load"


QUESTION = Question(
    title="Load on each of two anchors",
    solve=solve,
    results=TwoAnchorLoad,
    headline=headline,
    working=working,
    sources=(sources.LAMI, sources.ONE_ANCHOR_AT_A_TIME, sources.ABYC_H40),
    derives=(LOAD,),
    cautions=(
        warn(cautions.SIZE_EACH_FOR_ALL),
        warn(cautions.BEAM_ON),
        warn(cautions.STRONG_POINT_UNKNOWN),
        warn(cautions.SEAS_AND_SNATCH),
        *EXTRAPOLATED_LOAD,
    ),
    asks=("load on each of two anchors", "two anchors how much on each", "how do two anchors share the load", "pull on each rode with two anchors"),
    examples=({"load": "3 kN", "spread": "60 deg"}, {"boat_length": "30 ft", "wind": "30 kn", "spread": "90 deg", "wind_off": "20 deg"}),
    moves={"load_each": "+load +boat_length +wind +beam +current ~spread ~wind_off", "slack": "~spread ~wind_off"},
)
