"""Inputs that other inputs give, declared once for all questions that take them."""

import msgspec

from anchorcalc import cautions
from anchorcalc.declare import Derivation, warn
from anchorcalc.physics.geometry import rode_at_scope
from anchorcalc.physics.wind import load_is_extrapolated, load_standard
from anchorcalc.vocabulary.rode import MARKS_FROM

RODE_ABOARD = Derivation(
    gives="rode_aboard",
    needs=("line",),
    takes=("chain",),
    solve=lambda *, line, chain: chain + line,
    asks_for=("rode_aboard",),
    working=lambda s: f"{s.chain} of chain + {s.line} of line = {s.rode_aboard} of rode aboard",
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
LOAD = Derivation(
    gives="load",
    needs=("boat_length", "wind"),
    takes=("beam", "boat_form", "current"),
    solve=load_standard,
    asks_for=("boat_length", "wind"),
    working=lambda s: f"standard load of {s.boat_length} of boat in {s.wind} of wind: {s.load}",
)
EXTRAPOLATED_LOAD = (
    warn(cautions.EXTRAPOLATED, lambda *, wind, boat_length, boat_form: load_is_extrapolated(boat_length=boat_length, boat_form=boat_form)),
    warn(
        cautions.EXTRAPOLATED,
        lambda *, wind, boat_length, boat_form, beam: load_is_extrapolated(boat_length=boat_length, boat_form=boat_form, beam=beam),
    ),
)
