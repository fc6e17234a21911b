"""What length of rode to carry for the deepest water intended."""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec

from anchorcalc import cautions, sources
from anchorcalc.declare import Asked, Length, Question, Shown, Usual, Values, up, warn
from anchorcalc.physics.geometry import rode_at_scope


class RodeToCarry(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The rode to have aboard."""

    rode_aboard: Annotated[Length, up("rode to have aboard, chain and line")]
    total_height: Annotated[Length, up("roller above the seabed at the highest water")]


def solve(*, depth: Asked, bow_height: Usual, tide_rise: Usual, scope: Usual, reserve: Usual) -> dict[str, Any]:
    """Rode at the scope wanted, at high water, and the reserve."""
    total_height = depth + bow_height + tide_rise
    return {"rode_aboard": rode_at_scope(height=total_height, scope=scope) + reserve, "total_height": total_height}


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show the sum."""
    yield f"{s.depth} of water + {s.bow_height} of bow height + {s.tide_rise} of tide = {s.total_height}"
    yield f"{s.total_height} × {s.scope.removesuffix(':1')} + {s.reserve} kept aboard = {s.rode_aboard}"


QUESTION = Question(
    title="What length of rode to carry",
    solve=solve,
    results=RodeToCarry,
    working=working,
    sources=(sources.SCOPE_RULE, sources.SCOPE_WORDS),
    headline=lambda s, v: f"Carry {s.rode_aboard} of rode, chain and line.",
    cautions=(warn(cautions.BOW_PITCH), warn(cautions.BITTER_END)),
    asks=("what length of rode to carry", "how much rode should i buy", "how long should my anchor line be", "how much rope do i need for my boat"),
    examples=(
        {"depth": "12 m", "bow_height": "1.2 m", "scope": "5:1", "reserve": "3 m"},
        {"depth": "15 ft", "bow_height": "3 ft", "tide_rise": "8 ft"},
    ),
    moves={"rode_aboard": "+depth +bow_height +tide_rise +scope +reserve", "total_height": "+depth +bow_height +tide_rise"},
)
