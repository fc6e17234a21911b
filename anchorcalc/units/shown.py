"""SI to text: rounded once, to the safe side, to what a skipper can act on."""

import math
from collections.abc import Callable
from functools import cache
from typing import Literal

from anchorcalc.units.kinds import COUNT, FACTOR, RATIO, SIZE, SLOPE, UNIT, Kind, Unit

Way = Literal["up", "down", "near", "told"]

_PLURAL = {"fathom": "fathoms", "cable": "cables", "shackle": "shackles"}
_JOINED = {"deg": "°"}
_PLAIN_STEPS = {"ratio": 0.1, "factor": 0.01, "count": 1.0, "slope": 1.0}


def tidy(value: float) -> float:
    """Return the value to 12 significant digits: 140.0, not 139.99999999999997."""
    return float(f"{value:.12g}")


def number_text(value: float) -> str:
    """Return a number as it would be written by hand, all its digits kept (12 at most)."""
    text = f"{value:.12g}"
    return text if "e" not in text else _without_exponent(value, text)


def _without_exponent(value: float, text: str) -> str:
    return f"{value:.0f}" if abs(value) < 1e15 and value == round(value) else text


@cache
def unit_of(*, kind: Kind, system: str) -> Unit | None:
    """Return the unit that a kind of result is shown in, or None for a plain number."""
    symbol = kind.us if system == "us" else kind.metric
    return UNIT[symbol] if symbol else None


def with_unit(*, number: str, unit: str) -> str:
    """Return a number with its unit, as people write it."""
    if not unit:
        return number
    if unit in _JOINED:
        return f"{number}{_JOINED[unit]}"
    return f"{number} {unit if number == '1' else _PLURAL.get(unit, unit)}"


def _step(*, value: float, steps: tuple[tuple[float, float], ...]) -> float:
    size = abs(value)
    for below, step in steps:
        if size < below:
            return step
    return steps[-1][1]


# Steps to whole steps, to each side; what lies within the twelfth digit of a whole step is that step.
_WHOLE: dict[Way, Callable[[float], int]] = {
    "up": lambda steps: math.ceil(steps - 5e-12 * abs(steps)),
    "down": lambda steps: math.floor(steps + 5e-12 * abs(steps)),
    "near": lambda steps: math.floor(steps + 0.5 + 5e-12 * abs(steps)),
    "told": lambda steps: math.floor(steps + 0.5 + 5e-12 * abs(steps)),
}


def rounded(*, value: float, step: float, way: Way) -> float:
    """Return a value in whole steps, to the side that `way` says, counted from 12 significant digits."""
    return _WHOLE[way](value / step) * step


def rounded_text(*, value: float, unit: Unit | None, kind: Kind, way: Way) -> str:
    """Return a result as it is shown: rounded to the safe side, with its unit."""
    if not math.isfinite(value):
        return "unlimited" if value > 0 else "none"
    if unit is not None and kind is SIZE:  # a size is a name, not a measure: 5/16 in, 8 mm
        other = _trade_size(value=value / 25.4, unit="in") if unit.symbol == "mm" and abs(value - round(value)) > 5e-4 else ""
        return other or _trade_size(value=value, unit=unit.symbol) or with_unit(number=f"{value:.3g}", unit=unit.symbol)
    if unit is not None:
        return with_unit(number=number_text(rounded(value=value, step=_step(value=value, steps=unit.steps), way=way)), unit=unit.symbol)
    return plain_text(number=number_text(rounded(value=value, step=_PLAIN_STEPS[kind.name], way=way)), kind=kind)


def _trade_size(*, value: float, unit: str) -> str:
    """Return a diameter in inches as the trade names it: in sixteenths 5/16 in, in whole millimetres 8 mm; an empty text where it is neither."""
    sixteenths, millimetres = round(value * 16.0), round(value * 25.4)
    if unit != "in":
        return ""
    if abs(sixteenths - value * 16.0) < 1e-9 * sixteenths:
        whole, part = divmod(sixteenths, 16)
        below = 16 // math.gcd(part, 16)
        return " ".join(filter(None, (f"{whole}" if whole else "", f"{part * below // 16}/{below}" if part else "", "in")))
    return f"{millimetres} mm" if abs(millimetres - value * 25.4) < 5e-4 else ""


class Style:
    """How the results of a kind are shown, in one system and to one side: worked out once, then the same for every answer."""

    def __init__(self, *, kind: Kind, system: str, way: Way) -> None:
        self.kind, self.way, self.whole, self.unit = kind, way, _WHOLE[way], unit_of(kind=kind, system=system)
        self.symbol, self.factor = (self.unit.symbol, self.unit.factor) if self.unit else ("", 1.0)
        self.named = kind is SIZE
        self.steps = self.unit.steps if self.unit else ((math.inf, _PLAIN_STEPS[kind.name]),)
        pattern = with_unit(number="{}", unit=self.symbol) if self.unit else plain_text(number="{}", kind=kind)
        self.before, self.behind = pattern.split("{}")

    def texts(self, si: float) -> tuple[float, str, str]:
        """Return a result in its unit, as it is shown (rounded to the safe side), and as a step of the working is."""
        written = f"{si / self.factor:.12g}"
        value = float(written)
        size = abs(value)
        if self.named or not size < math.inf:
            shown = rounded_text(value=value, unit=self.unit, kind=self.kind, way=self.way)
            return value, shown, working_text(value=value, unit=self.symbol, kind=self.kind)
        for below, step in self.steps:  # the last is below all
            if size < below:
                stepped = self.whole(value / step) * step
                break
        number = f"{stepped:.12g}"
        if "e" in number:
            number = number_text(stepped)
        worked = "0" if size <= 1e-9 else written if len(written) <= 5 else f"{value:.5g}"
        if "e" in worked:
            worked = number_text(float(worked))
        return value, f"{self.before}{number}{self.behind}", f"{self.before}{worked}{self.behind}"


@cache
def style(kind: Kind, system: str, way: Way) -> Style:
    """Return how the results of a kind are shown."""
    return Style(kind=kind, system=system, way=way)


def plain_text(*, number: str, kind: Kind) -> str:
    """Return a number of a kind without a unit as people write it: 7:1, 1:20, 3."""
    if kind is RATIO:
        return f"{number}:1"
    if kind is SLOPE:
        return f"1:{number}"
    assert kind in (COUNT, FACTOR), kind
    return number


def exact_text(*, value: float, unit: str, kind: Kind) -> str:
    """Return a value with all its digits, as an input is shown."""
    return exact(value=value, unit=unit, kind=kind)[1]


def exact(*, value: float, unit: str, kind: Kind) -> tuple[float, str]:
    """Return a value to 12 significant digits, and as an input is shown."""
    number = f"{value:.12g}"
    tidied = float(number)
    if kind is SIZE and (named := _trade_size(value=value, unit=unit)):
        return tidied, named
    if "e" in number:
        number = _without_exponent(value, number)
    return tidied, with_unit(number=number, unit=unit) if unit else plain_text(number=number, kind=kind)


def working_text(*, value: float, unit: str, kind: Kind) -> str:
    """Return a value to five significant digits, as a step of the working is shown."""
    if not math.isfinite(value):
        return "no limit"
    number = f"{value:.5g}" if abs(value) > 1e-9 else "0"
    if kind is SIZE or "e" in number:
        return exact_text(value=float(number), unit=unit, kind=kind)
    return with_unit(number=number, unit=unit) if unit else plain_text(number=number, kind=kind)
