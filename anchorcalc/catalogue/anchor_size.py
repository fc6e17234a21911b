"""How heavy an anchor to carry for this boat, wind and bottom.

The greater of two: the least mass whose holding, at the low end of its band, meets the standard load; and a published table's row for her length.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec
import numpy as np

from anchorcalc import cautions, sources
from anchorcalc.declare import Asked, Mass, Question, Shown, Usual, Values, told, up, warn
from anchorcalc.derive import EXTRAPOLATED_LOAD, LOAD, LOAD_DOWN, LOAD_UP
from anchorcalc.physics.codes import CORAL, GRASS, ROCK
from anchorcalc.physics.geometry import line_angle
from anchorcalc.physics.holding import has_holding_figure, holding_is_extrapolated, least_anchor_mass
from anchorcalc.physics.sizing import anchor_mass_by_table, boat_is_outside_anchor_table
from anchorcalc.vocabulary.anchor import ANCHOR_KIND, ANCHOR_MASS, BOTTOM


class AnchorSize(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The mass to carry, and the two masses that it is the greater of."""

    anchor_mass: Annotated[Mass | None, up("mass to carry at the least; absent where the bottom has no figure or no mass does it")] = None
    mass_by_holding: Annotated[Mass | None, up("least mass whose least holding at that scope meets the load")] = None
    mass_by_table: Annotated[Mass, up("mass that a published table asks for the length")]
    figure: Annotated[bool, told("whether this bottom has any figure")]
    possible: Annotated[bool, told("whether any mass holds at that scope")]


def solve(*, boat_length: Asked, load: Asked, anchor_kind: Asked, bottom: Asked, scope: Usual) -> dict[str, Any]:
    """Turn the band of holding round, and look up the table."""
    mass_by_holding = least_anchor_mass(load=load, anchor_kind=anchor_kind, bottom=bottom, pull_angle=line_angle(scope=scope))
    mass_by_holding = np.where(np.isfinite(mass_by_holding), mass_by_holding, np.nan)
    mass_by_table = anchor_mass_by_table(boat_length=boat_length, anchor_kind=anchor_kind)
    return {
        "anchor_mass": np.maximum(mass_by_holding, mass_by_table),
        "mass_by_holding": mass_by_holding,
        "mass_by_table": mass_by_table,
        "figure": has_holding_figure(bottom=bottom),
        "possible": np.isfinite(mass_by_holding),
    }


def headline(s: Shown, v: Values) -> str:
    """Say the mass, and what each of the two asks."""
    kind, bottom = ANCHOR_KIND.choices[int(v["anchor_kind"])].replace("_", " "), BOTTOM.choices[int(v["bottom"])]
    table = f"a published table for her length alone asks {s.mass_by_table}"
    if not v["figure"]:
        return f"There is no figure for holding on {'weed' if bottom == 'grass' else bottom}, so none for the anchor; {table}."
    if not hasattr(s, "anchor_mass"):
        return f"No {kind} holds at scope {s.scope}: the pull is too steep. Let out more rode; {table}."
    if v["anchor_mass"] > ANCHOR_MASS.most:
        return f"No {kind} that can be worked aboard will do: holding in {bottom} at {s.scope} asks {s.mass_by_holding}. Take another kind."
    return f"Carry a {kind} of {s.anchor_mass} or more: holding in {bottom} at {s.scope} asks {s.mass_by_holding}, and {table}."


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show the two masses."""
    if hasattr(s, "mass_by_holding"):
        yield f"least mass that holds {s.load} at scope {s.scope}, by the low end of the band: {s.mass_by_holding}"
    yield f"row of the table for {s.boat_length}: {s.mass_by_table}"
    if hasattr(s, "anchor_mass"):
        yield f"the greater counts: {s.anchor_mass}"


QUESTION = Question(
    title="Mass of the anchor to carry",
    solve=solve,
    results=AnchorSize,
    headline=headline,
    working=working,
    sources=(
        sources.UFC_HOLDING,
        sources.HOLDING_BANDS,
        sources.HOLDING_BY_SCOPE,
        sources.SMALL_VESSEL_CODE,
        sources.HIGH_HOLDING_CREDIT,
        sources.ABYC_H40,
        sources.HOLDING_LEAVES_OUT,
    ),
    derives=(LOAD,),
    cautions=(
        warn(cautions.ROCK, lambda *, bottom: np.equal(bottom, ROCK)),
        warn(cautions.CORAL, lambda *, bottom: np.equal(bottom, CORAL)),
        warn(cautions.WEED, lambda *, bottom: np.equal(bottom, GRASS)),
        warn(cautions.WIDE_BAND, lambda *, figure: figure),
        warn(
            cautions.EXTRAPOLATED,
            lambda *, anchor_kind, anchor_mass, bottom, scope, possible: (
                possible
                & holding_is_extrapolated(anchor_kind=anchor_kind, anchor_mass=anchor_mass, bottom=bottom, pull_angle=line_angle(scope=scope))
            ),
        ),
        warn(cautions.EXTRAPOLATED, lambda *, boat_length: boat_is_outside_anchor_table(boat_length=boat_length)),
        *EXTRAPOLATED_LOAD,
        warn(cautions.WAIT_AND_CHECK_SET),
        warn(cautions.FOUL_BOTTOM),
        warn(cautions.SEAS_AND_SNATCH),
    ),
    asks=(
        "what size anchor do i need",
        "how heavy an anchor for my boat",
        "which anchor weight should i buy",
        "what weight of plough for this wind",
        "how many kilos of anchor",
        "new anchor for my boat what size",
    ),
    examples=(
        {"boat_length": "8 m", "wind": "25 kn", "anchor_kind": "scoop", "bottom": "sand"},
        {"boat_length": "30 ft", "wind": "30 kn", "anchor_kind": "pivoting_fluke", "bottom": "mud", "boat_form": "sail", "scope": "5:1"},
    ),
    moves={
        "anchor_mass": f"{LOAD_UP} -scope",
        "mass_by_holding": f"{LOAD_UP} -scope",
        "mass_by_table": "+boat_length",
        "figure": "",
        "possible": f"{LOAD_DOWN} +scope",
    },
)
