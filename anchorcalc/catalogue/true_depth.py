"""How deep the water really is, from what the sounder shows.

A sounder measures from the surface, from its transducer or (set so) from the keel; what lies above that must be added.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec
import numpy as np

from anchorcalc import cautions, sources
from anchorcalc.declare import Asked, Length, May, Question, Shown, Values, near, require, warn
from anchorcalc.vocabulary.water import READS_FROM

TRANSDUCER, KEEL = READS_FROM.code("transducer"), READS_FROM.code("keel")


class TrueDepth(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The depth of water from surface to seabed."""

    depth: Annotated[Length, near("surface to seabed under the sounder", worst="greatest")]


def solve(*, reading: Asked, reads_from: Asked, transducer_depth: May = 0.0, draught: May = 0.0) -> dict[str, Any]:
    """Add what lies above the sounder's zero."""
    above = np.where(np.equal(reads_from, TRANSDUCER), transducer_depth, np.where(np.equal(reads_from, KEEL), draught, 0.0))
    return {"depth": reading + above}


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show the sum."""
    if v["reads_from"] == TRANSDUCER:
        yield f"{s.reading} shown + {s.transducer_depth} from the surface to the transducer = {s.depth}"
    elif v["reads_from"] == KEEL:
        yield f"{s.reading} shown + {s.draught} of draught = {s.depth}"
    else:
        yield f"{s.reading} shown from the surface = {s.depth}"


QUESTION = Question(
    title="How deep the water really is",
    solve=solve,
    results=TrueDepth,
    working=working,
    sources=(sources.SOUNDER_OFFSETS,),
    headline=lambda s, v: f"The water is {s.depth} deep.",
    requires=(
        require("transducer_depth", lambda *, reads_from: np.equal(reads_from, TRANSDUCER)),
        require("draught", lambda *, reads_from: np.equal(reads_from, KEEL)),
    ),
    cautions=(warn(cautions.DEPTH_AT_BOAT_NOT_ANCHOR),),
    asks=("how deep is it really", "true depth", "actual depth of water", "what is the real depth", "how much water is there"),
    examples=(
        {"reading": "9.5 ft", "reads_from": "transducer", "transducer_depth": "18 in"},
        {"reading": "2.2 m", "reads_from": "keel", "draught": "1.7 m"},
    ),
    moves={"depth": "+reading +transducer_depth +draught"},
)
