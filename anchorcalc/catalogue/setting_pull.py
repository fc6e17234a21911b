"""How hard the engine can pull to set the anchor, and what wind that tests it for.

Half of the least published bollard pull, or the pull that was measured; and the wind whose standard load is that pull.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec

from anchorcalc import cautions, sources
from anchorcalc.declare import Asked, Force, May, Question, Shown, Speed, Usual, Values, down, warn
from anchorcalc.derive import PULL
from anchorcalc.physics.constants import KNOT
from anchorcalc.physics.wind import load_is_extrapolated, load_standard, wind_equivalent


class SettingPull(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The pull astern, and the wind that it stands for."""

    pull: Annotated[Force, down("pull astern")]
    wind_equivalent: Annotated[Speed, down("wind whose standard load is that pull")]


def solve(*, boat_length: Asked, pull: Asked, beam: May = None, boat_form: Usual) -> dict[str, Any]:
    """The wind that the pull stands for."""
    return {"pull": pull, "wind_equivalent": wind_equivalent(load=pull, boat_length=boat_length, beam=beam, boat_form=boat_form)}


def headline(s: Shown, v: Values) -> str:
    """Say the pull, what it tests, and what it does not."""
    return f"{s.pull_answer} astern tests the anchor for {s.wind_equivalent} of wind, gusts included, and for no more."


_GALES = ((30.0, "30 kn"), (40.0, "40 kn"))


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show the wind, and how far the engine falls short in a blow."""
    yield f"the standard load of {s.boat_length} of boat equals {s.pull_answer} at 30 kn × √(pull / load at 30 kn) = {s.wind_equivalent}"
    boat = {"boat_length": v["boat_length"], "beam": v.get("beam"), "boat_form": v["boat_form"]}
    for knots, name in _GALES:
        part = float(v["pull"] / load_standard(wind=knots * KNOT, **boat))
        if part < 1.0:
            yield f"at {name} that load is {1.0 / part:.1f} times this pull: the engine cannot test the anchor for such a forecast"


_EXTRAPOLATED = tuple(
    warn(cautions.EXTRAPOLATED, condition)
    for condition in (
        lambda *, boat_length, boat_form: load_is_extrapolated(boat_length=boat_length, boat_form=boat_form),
        lambda *, boat_length, boat_form, beam: load_is_extrapolated(boat_length=boat_length, boat_form=boat_form, beam=beam),
    )
)
QUESTION = Question(
    title="Pull of the engine when setting",
    solve=solve,
    results=SettingPull,
    headline=headline,
    working=working,
    sources=(sources.BOLLARD_PULL, sources.ABYC_H40, sources.BEYOND_DESIGN_TABLE, sources.SETTING_LEAVES_OUT),
    derives=(PULL,),
    cautions=(
        warn(cautions.DRAG_OF_ENGINE_UNLIKELY_FULL, lambda *, engine_power: engine_power > 0.0),
        *_EXTRAPOLATED,
        warn(cautions.WAIT_AND_CHECK_SET),
        warn(cautions.KEEP_RODE_OFF_PROP),
        warn(cautions.SEAS_AND_SNATCH),
    ),
    asks=(
        "how hard does my engine pull astern",
        "what wind have i tested the anchor for",
        "setting the anchor with the engine in reverse",
        "what wind does full astern equal",
        "is my engine strong enough to set the anchor",
        "bollard pull in reverse",
    ),
    examples=(
        {"boat_length": "30 ft", "engine_power": "30 hp", "propeller_diameter": "16 in"},
        {"boat_length": "9.5 m", "pull": "1.6 kN"},
    ),
    moves={
        "pull": "+pull +engine_power +propeller_diameter",
        "wind_equivalent": "+pull +engine_power +propeller_diameter -boat_length -beam",
    },
)
