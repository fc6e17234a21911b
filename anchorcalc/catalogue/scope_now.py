"""What scope the boat lies to, now and at high water."""

from collections.abc import Iterator
from typing import Annotated, Any, Literal

import msgspec
import numpy as np

from anchorcalc import cautions, sources
from anchorcalc.declare import NOT_ON_THE_BOTTOM, Asked, Question, Ratio, Shown, Usual, Values, down, told, warn
from anchorcalc.physics.arrays import at_least
from anchorcalc.physics.geometry import scope_of

VERDICTS = ("ample", "fair", "short", "too_short")
LEAST_OF_VERDICT = (7.0, 5.0, 3.0)
SAID = {"ample": "ample", "fair": "fair", "short": "short", "too_short": "too short"}


class ScopeNow(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The scope, and what it is worth."""

    scope: Annotated[Ratio, down("scope at the present water")]
    scope_at_high_water: Annotated[Ratio, down("scope at the highest water of the stay")]
    verdict: Annotated[Literal["ample", "fair", "short", "too_short"], told("what the scope at high water is worth", worse="greatest")]


def solve(*, rode_out: Asked, depth: Asked, bow_height: Usual, tide_rise: Usual) -> dict[str, Any]:
    """Divide the rode out by the height, now and at high water."""
    height = depth + bow_height
    at_high_water = scope_of(rode_out=rode_out, height=height + tide_rise)
    verdict = sum(np.where(at_least(at_high_water, least), 0, 1) for least in LEAST_OF_VERDICT)
    return {"scope": scope_of(rode_out=rode_out, height=height), "scope_at_high_water": at_high_water, "verdict": verdict}


def headline(s: Shown, v: Values) -> str:
    """Say the scope at high water and its verdict."""
    now = f" ({s.scope} now)" if v["tide_rise"] > 0.0 else ""
    when = "at high water" if v["tide_rise"] > 0.0 else "now"
    return f"Scope {s.scope_at_high_water} {when}{now}: {SAID[s.verdict]}."


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show the sum."""
    yield f"{s.rode_out} of rode / ({s.depth} of water + {s.bow_height} of bow height) = {s.scope} now"
    if v["tide_rise"] > 0.0:
        yield f"{s.rode_out} of rode / ({s.depth} + {s.bow_height} + {s.tide_rise} of tide) = {s.scope_at_high_water} at high water"
    yield "ample from 7:1, fair from 5:1, short from 3:1, below that too short (common practice)"


QUESTION = Question(
    title="What scope she lies to",
    solve=solve,
    results=ScopeNow,
    headline=headline,
    working=working,
    sources=(sources.SCOPE_RULE, sources.SCOPE_WORDS),
    refuses=(NOT_ON_THE_BOTTOM,),
    cautions=(warn(cautions.DEPTH_AT_BOAT_NOT_ANCHOR), warn(cautions.BOW_PITCH)),
    asks=("what is my scope", "what scope do i have", "what scope am i lying to", "is my scope enough", "is this enough rode out"),
    examples=({"rode_out": "105 ft", "depth": "15 ft", "bow_height": "3 ft", "tide_rise": "8 ft"}, {"rode_out": "40 m", "depth": "6 m"}),
    moves={
        "scope": "+rode_out -depth -bow_height",
        "scope_at_high_water": "+rode_out -depth -bow_height -tide_rise",
        "verdict": "-rode_out +depth +bow_height +tide_rise",
    },
)
