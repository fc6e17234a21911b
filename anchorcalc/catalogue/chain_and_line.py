"""Whether chain, line and shackle carry the load, which of them is the weakest, and what to change to.

Working loads from published tables against the standard load; a size between two rows counts as the weaker. Never a size down.
"""

from collections.abc import Iterator
from typing import Annotated, Any, Literal

import msgspec
import numpy as np

from anchorcalc import cautions, sources
from anchorcalc.declare import Asked, Factor, Force, May, Question, Shown, Size, Usual, Values, down, near, require, told, warn
from anchorcalc.derive import CHAIN_SIZE, EXTRAPOLATED_LOAD, LINE_SIZE, LOAD, LOAD_DOWN, SIZE_OF_RANGED_BOAT
from anchorcalc.physics.arrays import at_least
from anchorcalc.physics.next_size import (
    chain_is_outside_table,
    chain_size_for,
    line_is_outside_table,
    line_size_for,
    no_size_down,
    shackle_size_for,
)
from anchorcalc.physics.strength import chain_working_load, line_working_load, shackle_working_load
from anchorcalc.physics.tables import chain, rope, shackle

PARTS = ("chain", "line", "shackle")
Part = Literal["chain", "line", "shackle"]


class ChainAndLinePart(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """One part of the rode: what it carries, and how that compares with the load."""

    part: Annotated[Part, told("which part")]
    size: Annotated[Size, near("diameter", worst="least")]
    working_load: Annotated[Force | None, down("what it carries; absent where the tables have no figure")] = None
    strength_ratio: Annotated[Factor | None, down("working load over load; below 1 it does not pass")] = None


class ChainAndLineSize(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """What to change a part to that does not pass."""

    part: Annotated[Part, told("which part")]
    size_metric: Annotated[Size | None, near("smallest metric size that passes", worst="greatest")] = None
    size_inch: Annotated[Size | None, near("smallest inch size that passes", worst="greatest")] = None
    possible: Annotated[bool, told("whether any size in the tables passes")]


class ChainAndLine(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The weakest part, every part, and what would pass."""

    weakest: Annotated[Part, told("the weakest part", follows="strength_ratio")]
    strength_ratio: Annotated[Factor | None, down("working load of the weakest over the load")] = None
    passes: Annotated[bool, told("whether every part carries the load")]
    parts: Annotated[tuple[ChainAndLinePart, ...], told("every part that is known")]
    next_sizes: Annotated[tuple[ChainAndLineSize, ...], told("sizes that pass, for each part that does not")]


def solve(
    *,
    load: Asked,
    chain_size: May = None,
    chain_grade: Usual,
    line_size: May = None,
    line_material: Usual,
    shackle_size: May = None,
) -> dict[str, Any]:
    """Compare each part's working load with the load."""
    sizes = {"chain": chain_size, "line": line_size, "shackle": shackle_size}
    sizes = {part: size for part, size in sizes.items() if size is not None}
    carried = {part: _working_load(part, size, chain_grade, line_material) for part, size in sizes.items()}
    passing = {part: at_least(one, load) for part, one in carried.items()}
    over = np.where(np.greater(load, 0.0), load, np.nan)
    strengths = np.stack(np.broadcast_arrays(*carried.values(), load)[:-1])
    weakest = np.argmin(np.nan_to_num(strengths), axis=0)  # a part without a figure counts as the weakest
    return {
        "weakest": np.array([PARTS.index(part) for part in sizes])[weakest],
        "strength_ratio": np.min(strengths, axis=0) / over,
        "passes": np.all(np.stack(np.broadcast_arrays(*passing.values())), axis=0),
        "parts": tuple(
            {"part": part, "size": size, "working_load": carried[part], "strength_ratio": carried[part] / over} for part, size in sizes.items()
        ),
        "next_sizes": tuple(
            _next_size(part, size, passing[part], load, chain_grade, line_material) for part, size in sizes.items() if not np.all(passing[part])
        ),
    }


def _working_load(part: str, size: Any, chain_grade: Any, line_material: Any) -> Any:
    if part == "chain":
        return chain_working_load(chain_size=size, chain_grade=chain_grade)
    if part == "line":
        return line_working_load(line_size=size, line_material=line_material)
    return shackle_working_load(shackle_size=size)


def _next_size(part: str, size: Any, passes: Any, load: Any, chain_grade: Any, line_material: Any) -> dict[str, Any]:
    """Return the smallest sizes that pass, the present one where it passes itself."""
    sold = {"chain": (chain.METRIC_SIZES, chain.INCH_SIZES), "line": (rope.METRIC_SIZES, rope.SIZES)}
    found = {}
    for name, inch, sizes in zip(
        ("size_metric", "size_inch"), (False, True), sold.get(part, (shackle.METRIC_SIZES, shackle.INCH_SIZES)), strict=True
    ):
        if part == "chain":
            smallest = chain_size_for(load=load, chain_grade=chain_grade, inch=inch)
        elif part == "line":
            smallest = line_size_for(load=load, line_material=line_material, inch=inch)
        else:
            smallest = shackle_size_for(load=load, inch=inch)
        found[name] = np.where(passes, size, no_size_down(size=smallest, present=size, sizes=sizes))
    possible = np.isfinite(found["size_metric"]) | np.isfinite(found["size_inch"])
    return {"part": part, **found, "possible": possible, "when": np.logical_not(passes)}


def _sold(row: Any, *, inch: bool) -> str:
    """Return what to change a part to in words, in the sizes that the answer is shown in."""
    first, second = (row.size_inch, row.size_metric) if inch else (row.size_metric, row.size_inch)
    best = first or second
    return f"{row.part} of {best.shown}" if best else f"no {row.part} in the tables"


def headline(s: Shown, v: Values) -> str:
    """Say whether it holds, what goes first, and what would do."""
    worst = next(part for part in s.parts if part.part == s.weakest)
    what = f"{worst.size.shown} {s.weakest}"
    if v["passes"]:
        ratio = f": its working load is {s.strength_ratio} times the load" if hasattr(s, "strength_ratio") else ""
        return f"Strong enough for {s.load}. The {what} is the weakest part{ratio}."
    would_do = ", ".join(_sold(row, inch=worst.size.unit == "in") for row in s.next_sizes)
    if worst.working_load is None:
        return f"Not proved strong enough for {s.load}: the tables have no figure for the {what}. What would do: {would_do}."
    return f"Not strong enough for {s.load}: the {what} is the weakest part, {s.strength_ratio} times the load. What would do: {would_do}."


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show each part against the load."""
    for part in s.parts:
        if part.working_load is None:
            yield f"{part.size.shown} {part.part}: thinner than the tables begin, so it counts as not strong enough"
        else:
            ratio = f", {part.strength_ratio.shown} times the load" if part.strength_ratio else ""
            yield f"{part.size.shown} {part.part}: working load {part.working_load.shown}{ratio}"
    if hasattr(s, "shackle_size"):
        yield "a forged shackle stamped with its working load carries up to three times the rule's figure: go by the stamp where there is one"


_WEAKENS = LOAD_DOWN.replace("-boat_length", "^boat_length")  # a longer boat pulls harder, on the stouter sizes that a table gives her
QUESTION = Question(
    title="Strength of chain and line",
    solve=solve,
    results=ChainAndLine,
    headline=headline,
    working=working,
    sources=(
        sources.ISO_CHAIN,
        sources.CFR_CHAIN,
        sources.NYLON,
        sources.OTHER_ROPE,
        sources.ROPE_FACTORS,
        sources.SHACKLE_RULE,
        sources.FORGED_SHACKLE,
        sources.ABYC_H40,
        sources.SMALL_VESSEL_CODE,
        sources.STRENGTH_LEAVES_OUT,
    ),
    derives=(LOAD, CHAIN_SIZE, LINE_SIZE),
    requires=(require("chain_size", lambda *, load: np.greater_equal(load, 0.0), unless=("line_size", "shackle_size")),),
    refuses=(SIZE_OF_RANGED_BOAT,),
    cautions=(
        warn(cautions.EXTRAPOLATED, lambda *, chain_size: chain_is_outside_table(chain_size=chain_size)),
        warn(cautions.EXTRAPOLATED, lambda *, line_size: line_is_outside_table(line_size=line_size)),
        *EXTRAPOLATED_LOAD,
        warn(cautions.SOUND_GEAR),
        warn(cautions.SEAS_AND_SNATCH),
        warn(cautions.STRONG_POINT_UNKNOWN),
    ),
    asks=(
        "is my chain strong enough",
        "what breaks first",
        "what size chain do i need",
        "which is the weakest part of the rode",
        "how thick a rope for the anchor",
        "is the shackle the weak point",
        "will the line snap in this wind",
    ),
    examples=(
        {"boat_length": "9.5 m", "wind": "30 kn", "chain_size": "8 mm", "line_size": "14 mm", "shackle_size": "10 mm"},
        {"load": "1500 lbf", "chain_size": "3/8 in", "chain_grade": "G43", "line_size": "3/4 in"},
        {"boat_length": "28 ft", "wind": "25 kn"},
    ),
    moves={
        "weakest": "",
        "strength_ratio": f"{_WEAKENS} ~chain_size +line_size +shackle_size",
        "passes": f"{_WEAKENS} ~chain_size +line_size +shackle_size",
        "parts": f"{_WEAKENS} ~chain_size +line_size +shackle_size",
        "next_sizes": "^load ^boat_length ^wind ^beam ^current ~chain_size ^line_size ^shackle_size",
    },
)
