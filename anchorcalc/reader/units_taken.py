"""The unit of a number that has none: the one that the text's other quantities share, the boat's, or none."""

from collections.abc import Iterable, Mapping
from typing import Any

from anchorcalc.reader.fits import is_size
from anchorcalc.reader.mention import Mention
from anchorcalc.units import kinds
from anchorcalc.units.kinds import UNIT, Amount
from anchorcalc.vocabulary.term import Term

CHOICES: dict[str, tuple[str, str]] = {
    "length": ("m", "ft"),
    "size": ("mm", "in"),
    "mass": ("kg", "lb"),
    "speed": ("kn", "m/s"),
    "force": ("kgf", "lbf"),
    "power": ("kW", "hp"),
    "angle": ("deg", "rad"),
}
_OF_SYSTEM = {"us": "ft", "metric": "m"}


_SMALL = frozenset(("cm", "mm", "in", "inch", "inches"))  # `70 cm down` says nothing of the unit of a depth


def kind_of(term: Term) -> str:
    """Return what kind of unit a term wants: `size` is another than `length`."""
    return "size" if term.kind is kinds.SIZE else "length" if term.kind is kinds.LENGTHS else term.kind.name


def shared_unit(
    *, term: Term, mentions: Iterable[Mention], system: str | None, earlier: Iterable[str] = (), for_all: str | None = None
) -> str | None:
    """Return the unit to take for a bare number of a term, or None; the one that is said once for all lengths comes first."""
    kind = kind_of(term)
    if kind == "size":
        return None
    if kind == "length" and for_all is not None:
        return for_all
    shared = {one.amount.unit for one in mentions if one.kind == kind and isinstance(one.amount, Amount) and not is_size(one)}
    found = shared - _SMALL or set(earlier) - _SMALL
    if shared and not found:
        return "m" if "cm" in shared and shared <= {"cm", "mm"} else None
    if len(found) == 1:
        return found.pop()
    if not found and kind == "length" and system in _OF_SYSTEM:
        return _OF_SYSTEM[system]
    return None


# What is told of one thing is told in one unit, whatever else the text measures: `8 fathoms of chain and thirty of hemp`.
_AKIN = {
    "reserve": ("rode_aboard", "line", "chain"),
    "line": ("chain",),
    "chain": ("line",),
    "at_high": ("depth",),
    "at_low": ("depth",),
    "tide_rise": ("depth",),
    "tide_fall": ("depth",),
    "rode_out": ("rode_aboard",),
    "rode_aboard": ("rode_out",),
}
_BY_FEET = frozenset(("tide_rise", "tide_fall"))
_A_PART = ("of which ", "of that ", "of them ", "of it ")


def akin_unit(name: str, *, told: Mapping[str, Any], mentions: Iterable[Mention], before: str) -> str | None:
    """Return the unit in which the whole was told that a bare number is a part of, or what goes with it.

    Fathoms of water rise by feet, and where the text measures in metres and in feet the tide may be either.
    """
    out = told.get("rode_out")
    if name == "depth" and isinstance(out, Amount) and out.unit == "fathom":
        return out.unit  # `33 fathom out, five of water`
    units = {told[other].unit for other in _AKIN.get(name, ()) if isinstance(told.get(other), Amount)} - _SMALL
    if len(units) != 1:
        return None
    unit = str(units.pop())
    if name in _BY_FEET and not before.lower().endswith(_A_PART):
        said = {one.amount.unit for one in mentions if one.kind == "length" and isinstance(one.amount, Amount) and not is_size(one)}
        if unit == "fathom" or ("m" in said and not said.isdisjoint(("ft", "fathom", "yd"))):
            return None
    return unit if unit in UNIT else None
