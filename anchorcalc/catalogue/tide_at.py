"""How high the tide stands at a time between low and high water.

Half a cosine between the two, with the rule of twelfths beside it; and how much it has still to rise and to fall.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec
import numpy as np

from anchorcalc import sources
from anchorcalc.declare import Asked, Length, Question, Shown, Values, near, told, up
from anchorcalc.physics.tide import elapsed_part, tide_height, tide_height_by_twelfths
from anchorcalc.tides import TIDE_REFUSALS, TIDE_WARNINGS


class TideAt(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The tide at that time."""

    height: Annotated[Length, near("height of tide above datum", worst="least")]
    tide_rise: Annotated[Length, up("from that height up to high water")]
    tide_fall: Annotated[Length, up("from that height down to low water")]
    rising: Annotated[bool, told("whether the tide rises between the two")]
    by_twelfths: Annotated[Length, near("height by the rule of twelfths", worst="least")]


def solve(*, low_height: Asked, low_at: Asked, high_height: Asked, high_at: Asked, at: Asked) -> dict[str, Any]:
    """Lay half a cosine between low and high water."""
    elapsed = elapsed_part(low_at=low_at, high_at=high_at, at=at)
    height = tide_height(low=low_height, high=high_height, elapsed=elapsed)
    return {
        "height": height,
        "tide_rise": np.maximum(high_height - height, 0.0),
        "tide_fall": np.maximum(height - low_height, 0.0),
        "rising": np.less(low_at, high_at),
        "by_twelfths": tide_height_by_twelfths(low=low_height, high=high_height, elapsed=elapsed),
    }


def headline(s: Shown, v: Values) -> str:
    """Say the height and what is still to come."""
    if v["rising"]:
        return f"At {s.at} the tide stands at {s.height}, rising: {s.tide_rise} still to come."
    return f"At {s.at} the tide stands at {s.height}, falling: {s.tide_fall} still to go."


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show part of the time, curve and twelfths."""
    elapsed = float(elapsed_part(low_at=v["low_at"], high_at=v["high_at"], at=v["at"]))
    part = elapsed if v["rising"] else 1.0 - elapsed
    yield f"{s.at} is {part:.0%} of the way from {'low' if v['rising'] else 'high'} to {'high' if v['rising'] else 'low'} water"
    yield f"half cosine between {s.low_height} at {s.low_at} and {s.high_height} at {s.high_at}: {s.height}"
    yield f"rule of twelfths: {s.by_twelfths}"


QUESTION = Question(
    title="Height of tide at a time",
    solve=solve,
    results=TideAt,
    headline=headline,
    working=working,
    refuses=TIDE_REFUSALS,
    cautions=TIDE_WARNINGS,
    sources=(sources.HALF_COSINE_TIDE, sources.RULE_OF_TWELFTHS),
    asks=(
        "how high is the tide at",
        "what is the tide at",
        "height of tide at",
        "how much tide is there at",
        "how much will the tide still rise after",
    ),
    examples=(
        {"low_height": "0.6 m", "low_at": "06:10", "high_height": "3.4 m", "high_at": "12:25", "at": "09:30"},
        {
            "low_height": "1 ft",
            "low_at": "2026-06-01T23:40+01:00",
            "high_height": "9 ft",
            "high_at": "2026-06-01T17:30+01:00",
            "at": "2026-06-01T20:00+01:00",
        },
    ),
    moves={
        "height": "+low_height +high_height",
        "tide_rise": "-low_height +high_height",
        "tide_fall": "-low_height +high_height",
        "by_twelfths": "+low_height +high_height",
        "rising": "",
    },
)
