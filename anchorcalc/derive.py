"""Inputs that other inputs give, declared once for all questions that take them."""

import msgspec

from anchorcalc.declare import Derivation
from anchorcalc.physics.geometry import rode_at_scope
from anchorcalc.vocabulary.rode import MARKS_FROM

RODE_ABOARD = Derivation(
    gives="rode_aboard", needs=("line",), takes=("chain",), solve=lambda *, line, chain: chain + line, asks_for=("rode_aboard",),
    working=lambda s: f"{s.chain} of chain + {s.line} of line = {s.rode_aboard} of rode aboard",
)
RODE_OUT = Derivation(
    gives="rode_out", needs=("depth",), takes=("bow_height", "tide_rise", "scope"), asks_for=("depth",),
    solve=lambda *, depth, bow_height, tide_rise, scope: rode_at_scope(height=depth + bow_height + tide_rise, scope=scope),
    working=lambda s: f"({s.depth} of water + {s.bow_height} of bow height + {s.tide_rise} of tide) × {s.scope} = {s.rode_out} of rode",
)
_MARKS_FROM = Derivation(
    gives="marks_from", needs=("mark_interval",), solve=lambda *, mark_interval: MARKS_FROM.code("anchor"), asks_for=("marks_from",), assumed="where the marks count from",
)
MARKS_FROM_OF_MARKS = (_MARKS_FROM, msgspec.structs.replace(_MARKS_FROM, needs=("marks",), solve=lambda *, marks: MARKS_FROM.code("anchor")))
