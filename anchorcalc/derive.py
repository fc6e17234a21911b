"""Inputs that other inputs give, declared once for all questions that take them."""

from collections.abc import Callable
from typing import Any

import msgspec
import numpy as np

from anchorcalc import cautions
from anchorcalc.declare import Derivation, condition_on, refuse, warn
from anchorcalc.physics.engine import pull_astern
from anchorcalc.physics.geometry import line_angle, rode_at_scope
from anchorcalc.physics.sizing import chain_size_by_table, line_size_by_table
from anchorcalc.physics.wind import load_is_extrapolated, load_standard
from anchorcalc.vocabulary import TERMS
from anchorcalc.vocabulary.rode import LINE_MATERIAL, MARKS_FROM

RODE_ABOARD = Derivation(
    gives="rode_aboard",
    needs=("line",),
    takes=("chain",),
    solve=lambda *, line, chain: chain + line,
    asks_for=("rode_aboard",),
    working=lambda s: f"{s.chain} of chain + {s.line} of line = {s.rode_aboard} of rode aboard",
    safe="down",
)
RODE_OUT = Derivation(
    gives="rode_out",
    needs=("depth",),
    takes=("bow_height", "tide_rise", "scope"),
    asks_for=("depth",),
    solve=lambda *, depth, bow_height, tide_rise, scope: rode_at_scope(height=depth + bow_height + tide_rise, scope=scope),
    working=lambda s: f"({s.depth} of water + {s.bow_height} of bow height + {s.tide_rise} of tide) × {s.scope} = {s.rode_out} of rode",
)
_MARKS_FROM = Derivation(
    gives="marks_from",
    needs=("mark_interval",),
    solve=lambda *, mark_interval: MARKS_FROM.code("anchor"),
    asks_for=("marks_from",),
    assumed="where the marks count from",
)
MARKS_FROM_OF_MARKS = (_MARKS_FROM, msgspec.structs.replace(_MARKS_FROM, needs=("marks",), solve=lambda *, marks: MARKS_FROM.code("anchor")))
ANTENNA_FROM_BOW = Derivation(
    gives="antenna_from_bow",
    needs=("boat_length",),
    solve=lambda *, boat_length: boat_length,
    asks_for=("antenna_from_bow",),
    assumed="GPS antenna taken to be at the stern, as far from the bow as it can be",
)

# --- loads --------------------------------------------------------------------------------------------------------------------------

LOAD = Derivation(
    gives="load",
    needs=("boat_length", "wind"),
    takes=("beam", "boat_form", "current"),
    solve=load_standard,
    asks_for=("boat_length", "wind"),
    working=lambda s: f"standard load of {s.boat_length} of boat in {s.wind} of wind: {s.load}",
)
LOAD_UP = "+load +boat_length +wind +beam +current"
LOAD_DOWN = LOAD_UP.replace("+", "-")
EXTRAPOLATED_LOAD = (
    warn(cautions.EXTRAPOLATED, lambda *, wind, boat_length, boat_form: load_is_extrapolated(boat_length=boat_length, boat_form=boat_form)),
    warn(
        cautions.EXTRAPOLATED,
        lambda *, wind, boat_length, boat_form, beam: load_is_extrapolated(boat_length=boat_length, boat_form=boat_form, beam=beam),
    ),
)
PULL_ANGLE = Derivation(
    gives="pull_angle",
    needs=(),
    takes=("scope",),
    solve=lambda *, scope: line_angle(scope=scope),
    asks_for=("scope",),
    working=lambda s: f"a taut line at scope {s.scope} pulls at {s.pull_angle} above the seabed",
)
PULL = Derivation(
    gives="pull",
    needs=("engine_power",),
    takes=("propeller_diameter",),
    solve=pull_astern,
    asks_for=("engine_power",),
    working=lambda s: f"half of the least published bollard pull of {s.engine_power}: {s.pull} astern",
    safe="down",
)


def usual_with(name: str, *needs: str) -> Derivation:
    """Return a derivation that takes a term's usual value only where it matters: where some others are given."""
    term = TERMS[name]
    usual = term.code(term.usual) if isinstance(term.usual, str) else term.usual
    return Derivation(gives=name, needs=needs, solve=lambda **_: usual, asks_for=(name,), assumed=f"{term.meaning}, not said")


# --- sizes from a table for the boat ------------------------------------------------------------------------------------------------


def size_by_table(name: str, *, needs: tuple[str, ...] = (), takes: tuple[str, ...] = (), when: Callable[..., Any] | None = None) -> Derivation:
    """Return a derivation of a size from the table by length of the boat, where a condition on some other inputs holds."""
    table = {"chain_size": chain_size_by_table, "line_size": line_size_by_table}[name]

    def solve(*, boat_length: Any, **others: Any) -> Any:
        return table(boat_length=boat_length)

    return Derivation(
        gives=name,
        needs=("boat_length", *needs),
        takes=takes,
        solve=solve,
        asks_for=(name,),
        assumed=f"{TERMS[name].meaning} by a table for the boat",
        when=condition_on(when) if when is not None else None,
    )


# Where a size of chain was said and no length, that chain is none or all the way, whichever is worse: the question says which.
CHAIN_ASSUMED = warn(cautions.CHAIN_ASSUMED, lambda *, chain_assumed, chain_size: chain_assumed)
CHAIN_SIZE = size_by_table("chain_size")
LINE_SIZE = size_by_table("line_size")
CHAIN_SIZE_IF_ANY = size_by_table("chain_size", takes=("chain",), when=lambda *, chain: chain > 0.0)


def weightless_line(*, needs: tuple[str, ...], takes: tuple[str, ...], when: Callable[..., Any]) -> Derivation:
    """Return a derivation of line without weight, where chain of a known size is told of and the size of the line is not: the worse to pull by."""
    return Derivation(
        gives="line_size",
        needs=("chain_size", *needs),
        takes=takes,
        solve=lambda **_: 0.0,
        asks_for=("line_size",),
        assumed="line without weight, its size not said",
        when=condition_on(when),
    )


def floats(line_material: Any) -> Any:
    """Say whether line is lighter than water."""
    return np.equal(line_material, _FLOATING)


_FLOATING = LINE_MATERIAL.code("polypropylene")
LINE_WEIGHTLESS = warn(cautions.LINE_WEIGHTLESS, lambda *, line_size: np.equal(line_size, 0.0))
# A longer boat pulls harder on a heavier chain: where the table's sizes stand in, a range of lengths has no end that is worse for all.
SIZE_OF_RANGED_BOAT = refuse(
    "boat_length",
    lambda *, boat_length_ranged, chain_size_assumed, line_size_assumed: chain_size_assumed | line_size_assumed,
    why="is a range, and the sizes that stand in from the table change within it",
    would_do="one length, or chain_size and line_size with it,",
    code="range_not_taken",
)
