"""What scope an angle of the line tells, or what angle a scope gives.

A taut straight line: the sine of its angle below the horizontal is one over the scope.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec

from anchorcalc import sources
from anchorcalc.declare import Angle, May, Question, Ratio, Shown, Values, down, up
from anchorcalc.physics.geometry import line_angle, scope_at_angle


class LineAngle(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The one that was not given."""

    scope: Annotated[Ratio | None, down("scope of a taut line at that angle")] = None
    angle: Annotated[Angle | None, up("angle of a taut line at that scope")] = None


def solve(*, angle: May = None, scope: May = None) -> dict[str, Any]:
    """Scope from the angle, or angle from the scope."""
    if angle is not None:
        return {"scope": scope_at_angle(angle=angle)}
    return {"angle": line_angle(scope=scope)}


def headline(s: Shown, v: Values) -> str:
    """Say both, whichever was given."""
    return f"At a scope of {s.scope} a taut line lies {s.angle} below the horizontal."


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show the sine."""
    yield f"1 / sin({s.angle}) = {s.scope}, whichever way round"


QUESTION = Question(
    title="Angle of the line and scope",
    solve=solve,
    results=LineAngle,
    headline=headline,
    working=working,
    sources=(sources.SINE_RULE,),
    one_of=(("angle",), ("scope",)),
    asks=("what angle does the line make", "angle of the rode", "what scope is that angle", "scope from the angle of the line"),
    examples=({"angle": "10 deg"}, {"scope": "5:1"}),
    moves={"scope": "-angle", "angle": "-scope"},
)
