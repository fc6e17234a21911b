"""What a figure that no word claims may be guessed to be: between what small boats have, and in keeping with what is told besides."""

import math
from collections.abc import Mapping
from typing import Any

from anchorcalc.units.kinds import Amount
from anchorcalc.vocabulary import TERMS

# The ends between which a guess is worth a question, in SI: wider than most boats and berths, narrower than what a term may be when a word tells.
_USUAL: dict[str, tuple[float, float]] = {
    "depth": (0.3, 60.0),
    "bow_height": (0.1, 5.0),
    "draught": (0.1, 5.0),
    "under_keel": (0.05, 4.0),
    "transducer_depth": (0.05, 3.0),
    "tide_rise": (0.05, 14.0),
    "tide_fall": (0.05, 14.0),
    "boat_length": (2.5, 40.0),
    "other_boat_length": (2.5, 60.0),
    "beam": (1.0, 10.0),
    "rode_out": (3.0, 200.0),
    "other_rode_out": (3.0, 200.0),
    "rode_aboard": (6.0, 300.0),
    "chain": (0.5, 200.0),
    "line": (2.0, 300.0),
    "reserve": (0.3, 25.0),
    "mark_interval": (0.5, 30.0),
    "margin": (0.5, 100.0),
    "distance": (5.0, 2000.0),
    "distance_off": (10.0, 20_000.0),
    "wind": (1.5, 45.0),
    "current": (0.05, 4.0),
    "drift": (0.05, 4.0),
    "anchor_mass": (1.0, 150.0),
    "load": (50.0, 40_000.0),
    "pull": (50.0, 40_000.0),
    "scope": (1.5, 15.0),
    "least_scope": (1.5, 15.0),
    "chain_size": (0.004, 0.026),
    "line_size": (0.005, 0.05),
    "shackle_size": (0.004, 0.032),
    "engine_power": (1000.0, 500_000.0),
    "propeller_diameter": (0.12, 1.5),
}
# One that is a part of the other, or is less by what it is.
_LESS = (
    ("chain", "rode_aboard"),
    ("line", "rode_aboard"),
    ("reserve", "rode_aboard"),
    ("rode_out", "rode_aboard"),
    ("depth", "rode_out"),
    ("depth", "rode_aboard"),
    ("chain", "rode_out"),
    ("bow_height", "rode_out"),
    ("tide_rise", "rode_out"),
    ("beam", "boat_length"),
    ("draught", "boat_length"),
    ("bow_height", "boat_length"),
    ("mark_interval", "rode_aboard"),
    ("mark_interval", "rode_out"),
    ("margin", "distance"),
)
_SLACK = 1.0001  # so much more is still the same


def plausible(name: str, amount: Amount, told: Mapping[str, Any]) -> bool:
    """Say whether a figure that no word claims may be a term, as far as one can tell by its size and by what else is told."""
    low, high = _USUAL.get(name, (-math.inf, math.inf))
    return not TERMS[name].out_of_bounds(value=amount.low) and low <= amount.low <= high and _in_keeping(name, amount, told)


def _in_keeping(name: str, amount: Amount, told: Mapping[str, Any]) -> bool:
    for part, whole in _LESS:
        other = told.get(whole if part == name else part) if name in (part, whole) else None
        if isinstance(other, Amount) and other.kind == amount.kind:
            less, more = (amount, other) if part == name else (other, amount)
            if less.low > more.high * _SLACK:
                return False
    return True


__all__ = ["plausible"]
