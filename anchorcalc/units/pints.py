"""The door to pint: the only module that knows it. pint is loaded when a pint quantity comes or goes."""

import sys
from typing import Any

from anchorcalc.units.kinds import UNIT

# What pint calls our units. Its fathom is on the survey foot, its shot is a drink and it has no cable or shackle: those go out in metres.
_NAMES = {
    "m": "meter",
    "cm": "centimeter",
    "mm": "millimeter",
    "km": "kilometer",
    "ft": "foot",
    "in": "inch",
    "yd": "yard",
    "nmi": "nautical_mile",
    "mi": "mile",
    "kg": "kilogram",
    "g": "gram",
    "t": "metric_ton",
    "lb": "pound",
    "oz": "ounce",
    "kn": "knot",
    "m/s": "meter / second",
    "km/h": "kilometer / hour",
    "mph": "mile / hour",
    "N": "newton",
    "daN": "decanewton",
    "kN": "kilonewton",
    "kgf": "kilogram_force",
    "lbf": "pound_force",
    "s": "second",
    "min": "minute",
    "h": "hour",
    "deg": "degree",
    "rad": "radian",
    "W": "watt",
    "kW": "kilowatt",
    "hp": "horsepower",
    "m²": "meter ** 2",
    "ft²": "foot ** 2",
}
_SI = {
    "length": "meter",
    "mass": "kilogram",
    "speed": "meter / second",
    "force": "newton",
    "time": "second",
    "angle": "radian",
    "power": "watt",
    "area": "meter ** 2",
}
_factors: dict[tuple[int, str, str], float] = {}


def is_pint(value: object) -> bool:
    """Say whether a value is a pint quantity, of any registry, without loading pint."""
    return "pint" in sys.modules and hasattr(value, "_REGISTRY") and hasattr(value, "magnitude")


def from_pint(*, value: Any, kind: str) -> float | None:
    """Return a pint quantity in SI by its own registry, or None where its dimension is another.

    The factor is kept for each registry and unit (units with an offset, such as degrees Celsius, are none of ours).
    """
    key = (id(value._REGISTRY), str(value.units), kind)
    factor = _factors.get(key)
    if factor is None:
        import pint

        try:
            one = value._REGISTRY.non_int_type(1)  # 1.0, or what a registry of decimals or fractions counts in
            factor = float(value._REGISTRY.Quantity(one, value.units).m_as(_SI.get(kind, "")))
        except (pint.errors.DimensionalityError, pint.errors.UndefinedUnitError):
            return None
        _factors[key] = factor
    return float(value.magnitude) * factor


def to_pint(*, si: float, unit: str) -> Any:
    """Return a quantity of pint's application registry."""
    import pint

    registry: Any = pint.application_registry
    if not unit:
        return registry.Quantity(si, "")
    known = UNIT[unit]
    if unit in _NAMES:
        return registry.Quantity(si, _SI[known.kind]).to(_NAMES[unit])
    return registry.Quantity(si, _SI[known.kind])
