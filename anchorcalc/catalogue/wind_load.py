"""How hard wind and stream pull on the rode.

The published design load, which strength and size go by, and beside it the steady drag alone. Neither knows of seas.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec

from anchorcalc import cautions, sources
from anchorcalc.declare import Asked, Force, May, Question, Shown, Usual, Values, up, warn
from anchorcalc.derive import EXTRAPOLATED_LOAD
from anchorcalc.physics.boat_shape import frontal_area
from anchorcalc.physics.constants import KILOGRAM_FORCE, POUND_FORCE
from anchorcalc.physics.tables.drag import WIND_DRAG
from anchorcalc.physics.wind import load_standard, load_steady


class WindLoad(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The load to reckon with, and the steady drag."""

    load_standard: Annotated[Force, up("published design load × wind², and the stream: what strength and size go by")]
    load_steady: Annotated[Force, up("steady drag of wind and stream alone")]


def solve(*, boat_length: Asked, wind: Asked, beam: May = None, boat_form: Usual, draught: May = None, current: Usual) -> dict[str, Any]:
    """Design load and drag, the stream in both."""
    boat = {"boat_length": boat_length, "wind": wind, "beam": beam, "boat_form": boat_form, "draught": draught, "current": current}
    return {"load_standard": load_standard(**boat), "load_steady": load_steady(**boat)}


def headline(s: Shown, v: Values) -> str:
    """Say the load to reckon with."""
    return f"Reckon with {s.load_standard} on the rode. The steady drag alone is about {s.load_steady}."


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show both loads and how far each can be trusted."""
    stream = f" and {s.current} of stream" if v["current"] > 0.0 else ""
    yield f"published design load for {s.boat_length} at 30 kn × ({s.wind} / 30 kn)²{stream} = {s.load_standard}"
    yield f"as a weight: {v['load_standard'] / KILOGRAM_FORCE:.0f} kg or {v['load_standard'] / POUND_FORCE:.0f} lb"
    area = float(frontal_area(boat_length=v["boat_length"], beam=v.get("beam"), boat_form=v["boat_form"]))
    coefficient = WIND_DRAG[v["boat_form"]]
    yield f"steady: about {area:.3g} m² across the wind × {coefficient:g} × the wind's pressure{stream} = {s.load_steady}, a half either way"
    yield "the design load allows for gusts, surge and sheering about, so it is several times the steady drag"


QUESTION = Question(
    title="Load of wind and stream",
    solve=solve,
    results=WindLoad,
    headline=headline,
    working=working,
    sources=(
        sources.ABYC_H40,
        sources.BEYOND_DESIGN_TABLE,
        sources.WIND_DRAG,
        sources.FRONTAL_AREA,
        sources.USUAL_BEAM,
        sources.UFC_CURRENT,
    ),
    cautions=(*EXTRAPOLATED_LOAD, warn(cautions.SEAS_AND_SNATCH), warn(cautions.STRONG_POINT_UNKNOWN)),
    asks=(
        "how hard does the wind pull on the boat",
        "load on the rode in this wind",
        "what force is on the anchor in a gale",
        "how many pounds of pull in a squall",
        "strain on the cable in 40 knots",
        "what does she pull on her anchor with",
        "pull on the cleat in a blow",
    ),
    examples=(
        {"boat_length": "30 ft", "wind": "30 kn"},
        {"boat_length": "9.5 m", "wind": "18 m/s", "beam": "3.2 m", "boat_form": "sail", "draught": "1.7 m", "current": "1.5 kn"},
    ),
    moves={
        "load_standard": "+boat_length +wind +beam +draught +current",
        "load_steady": "+boat_length +wind +beam +draught +current",
    },
)
