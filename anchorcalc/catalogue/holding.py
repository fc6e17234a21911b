"""What an anchor may hold in a bottom, and at what wind it may drag.

A wide band from published tests where there are any and common practice where there are none; rock, coral and weed have no figure.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec
import numpy as np

from anchorcalc import cautions, sources
from anchorcalc.declare import Asked, Factor, Force, May, Question, Shown, Speed, Values, down, require, told, warn
from anchorcalc.derive import EXTRAPOLATED_LOAD, LOAD, LOAD_DOWN, PULL_ANGLE, usual_with
from anchorcalc.physics.codes import CORAL, GRASS, MOTOR, ROCK
from anchorcalc.physics.holding import has_holding_figure, holding_band, holding_is_extrapolated, share_of_flat_pull
from anchorcalc.physics.wind import wind_equivalent
from anchorcalc.vocabulary.anchor import ANCHOR_KIND, BOTTOM


class Holding(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The band of holding, and what it means for the boat."""

    holding_low: Annotated[Force | None, down("what it may hold at the least, well set")] = None
    holding_high: Annotated[Force | None, down("what it may hold at the most")] = None
    figure: Annotated[bool, told("whether this bottom has any figure")]
    hold_margin: Annotated[Factor | None, down("least holding over the load; below 1 it may drag")] = None
    drags_at_wind: Annotated[Speed | None, down("wind whose standard load is the least holding")] = None


def solve(
    *,
    anchor_kind: Asked,
    anchor_mass: Asked,
    bottom: Asked,
    pull_angle: Asked,
    load: May = None,
    boat_length: May = None,
    beam: May = None,
    boat_form: May = None,
    current: May = None,
) -> dict[str, Any]:
    """Band of holding at that pull, against load and boat."""
    band = holding_band(anchor_kind=anchor_kind, anchor_mass=anchor_mass, bottom=bottom, pull_angle=pull_angle)
    found = {"holding_low": band.low, "holding_high": band.high, "figure": has_holding_figure(bottom=bottom)}
    if load is not None:
        found["hold_margin"] = np.divide(band.low, np.where(np.greater(load, 0.0), load, np.nan))
    if boat_length is not None:
        form = MOTOR if boat_form is None else boat_form
        stream = 0.0 if current is None else current
        found["drags_at_wind"] = wind_equivalent(load=band.low, boat_length=boat_length, beam=beam, boat_form=form, current=stream)
    return found


def _names(v: Values) -> tuple[str, str]:
    kind = ANCHOR_KIND.choices[int(v["anchor_kind"])].replace("_", " ")
    bottom = BOTTOM.choices[int(v["bottom"])]
    return kind, "weed" if bottom == "grass" else bottom


def headline(s: Shown, v: Values) -> str:
    """Say the band, and a plain verdict."""
    kind, bottom = _names(v)
    if not hasattr(s, "holding_low"):
        return f"There is no figure: nobody can say what a {kind} holds on {bottom}."
    said = f"Well set in {bottom}, this {kind} may hold {s.holding_low} at the least and {s.holding_high} at the most."
    if hasattr(s, "hold_margin"):
        if v["hold_margin"] >= 1.0:
            return f"{said} Even the least is {s.hold_margin} times the load."
        worse = "Even the most is less than the load: reckon with dragging." if v["holding_high"] < v["load"] else "It may drag."
        return f"{said} The least is only {s.hold_margin} of the load. {worse}"
    return f"{said} The least is reached at {s.drags_at_wind} of wind." if hasattr(s, "drags_at_wind") else said


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show what the pull angle leaves, and the load against the band."""
    kind, bottom = _names(v)
    if not hasattr(s, "holding_low"):
        yield f"no test and no trade figure for {bottom} was found: a number would be a guess"
        return
    share = float(share_of_flat_pull(pull_angle=v["pull_angle"]))
    yield f"{s.anchor_mass} {kind} in {bottom}, flat pull × {share:.2f} for a pull at {s.pull_angle}: {s.holding_low} to {s.holding_high}"
    if hasattr(s, "hold_margin"):
        yield f"{s.holding_low} / {s.load} = {s.hold_margin}"
    if hasattr(s, "drags_at_wind"):
        yield f"the standard load of {s.boat_length} of boat reaches {s.holding_low} at {s.drags_at_wind}"


QUESTION = Question(
    title="What the anchor may hold",
    solve=solve,
    results=Holding,
    headline=headline,
    working=working,
    sources=(
        sources.UFC_HOLDING,
        sources.HOLDING_BANDS,
        sources.HOLDING_BY_SCOPE,
        sources.SINE_RULE,
        sources.ABYC_H40,
        sources.HOLDING_LEAVES_OUT,
    ),
    derives=(PULL_ANGLE, usual_with("boat_form", "boat_length"), LOAD),
    requires=(require("boat_length", lambda *, wind: np.greater_equal(wind, 0.0), unless=("load",)),),  # a wind alone pulls on nothing
    cautions=(
        warn(cautions.ROCK, lambda *, bottom: np.equal(bottom, ROCK)),
        warn(cautions.CORAL, lambda *, bottom: np.equal(bottom, CORAL)),
        warn(cautions.WEED, lambda *, bottom: np.equal(bottom, GRASS)),
        warn(cautions.WIDE_BAND, lambda *, figure: figure),
        warn(
            cautions.EXTRAPOLATED,
            lambda *, anchor_kind, anchor_mass, bottom, pull_angle, figure: (
                figure & holding_is_extrapolated(anchor_kind=anchor_kind, anchor_mass=anchor_mass, bottom=bottom, pull_angle=pull_angle)
            ),
        ),
        *EXTRAPOLATED_LOAD,
        warn(cautions.WAIT_AND_CHECK_SET),
        warn(cautions.FOUL_BOTTOM),
        warn(cautions.SEAS_AND_SNATCH),
    ),
    asks=(
        "will my anchor hold",
        "how much does this anchor hold",
        "holding power of my anchor in sand",
        "at what wind does the anchor drag",
        "is my anchor enough for this wind",
        "what will a plough hold in mud",
        "how much pull before it lets go",
    ),
    examples=(
        {"anchor_kind": "plough", "anchor_mass": "16 kg", "bottom": "mud", "boat_length": "9.5 m", "wind": "25 kn"},
        {"anchor_kind": "pivoting_fluke", "anchor_mass": "22 lb", "bottom": "sand", "scope": "5:1", "load": "300 lbf"},
        {"anchor_kind": "grapnel", "anchor_mass": "5 kg", "bottom": "rock"},
    ),
    moves={
        "holding_low": "+anchor_mass -pull_angle +scope",
        "holding_high": "+anchor_mass -pull_angle +scope",
        "figure": "",
        "hold_margin": f"+anchor_mass -pull_angle +scope {LOAD_DOWN}",
        "drags_at_wind": "+anchor_mass -pull_angle +scope -boat_length -beam -current",
    },
)
