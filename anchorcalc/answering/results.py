"""SI results to the values of an answer: each at its own worst corner, rounded once when shown."""

from collections.abc import Mapping
from math import isinf, isnan
from typing import Any

import numpy as np

from anchorcalc.declare import Field
from anchorcalc.units.clock import clock_text
from anchorcalc.units.kinds import CLOCK, FLAG, LIST, WORD
from anchorcalc.units.quantity import ClockTime, Quantity
from anchorcalc.units.shown import style

_NO_NUMBER = frozenset({CLOCK, FLAG, LIST, WORD})


def _follows(field: Field) -> bool:
    return bool(field.side.follows)


def in_order(fields: tuple[Field, ...]) -> list[Field]:
    """Return the fields, those behind whose corner follows another's."""
    return sorted(fields, key=_follows)


def worst_corner(field: Field, every: Any, places: Mapping[str, Any]) -> Any:
    """Return at which corner (the last axis) a result is worst: where there is none, or at the end that its safe side says."""
    if field.side.follows and field.side.follows in places:
        return places[field.side.follows]
    return np.argmax(every, axis=-1) if field.side.worst == "greatest" else np.argmin(every, axis=-1)  # both find a nan before all else


def headline_corner(fields: tuple[Field, ...], found: Mapping[str, Any], corners: int) -> int:
    """Return the corner that working and `read` follow: the worst for the headline's result; where several are alike, for the next."""
    left = np.arange(corners)
    for field in fields:
        value = found.get(field.name)
        if field.many:
            value = value[0] if value else None
        if value is None or field.side.follows or field.kind is LIST or isinstance(value, str):
            continue
        every = np.broadcast_to(np.asarray(value, dtype=float), (corners,))[left]
        left = left[np.isclose(every, every[worst_corner(field, every, {})], rtol=1e-12, atol=0.0, equal_nan=True)]
    return int(left[0])


def at_corner(value: Any, *, corners: int, corner: int) -> Any:
    """Return a value (or what is inside a list or a row of results) at one corner; what does not vary stays."""
    if isinstance(value, np.ndarray) and value.shape == (corners,):
        return value[corner]
    if isinstance(value, tuple):
        return tuple(at_corner(one, corners=corners, corner=corner) for one in value)
    if isinstance(value, dict):
        return {name: at_corner(one, corners=corners, corner=corner) for name, one in value.items()}
    return value


class Builder:
    """Builds the results of one answer; `exact` and `shown` gather the texts for working and headline, `worst` what counts of a range."""

    def __init__(self, *, system: str, corners: int, clock_like: Any = None) -> None:
        self.system, self.corners, self.clock_like = system, corners, clock_like
        self.places: dict[str, int] = {}
        self.shown: dict[str, Any] = {}
        self.exact: dict[str, Any] = {}
        self.worst: dict[str, Any] = {}

    def results(self, fields: tuple[Field, ...], found: Mapping[str, Any]) -> dict[str, Any]:
        """Return the values of the fields, absent ones left out."""
        made: dict[str, Any] = {}
        plain = not self.corners
        for field in in_order(fields) if self.corners else fields:
            value = found.get(field.name)
            if value is None:
                continue
            if plain and field.kind not in _NO_NUMBER and not field.many:  # mostly
                number = float(value)
                if not isnan(number):
                    how = style(field.kind, self.system, field.side.way)
                    value, shown, exact = how.texts(number)
                    self.shown[field.name], self.exact[field.name] = shown, exact
                    made[field.name] = Quantity(value=value, unit=how.symbol, si=number, shown=shown)
                continue
            if field.many:
                built = self._many(field, value)
                texts = built if field.kind is LIST else tuple(getattr(one, "shown", one) for one in built)
                self.shown[field.name] = self.exact[field.name] = texts
            else:
                built = self._one(field, value)
            if built is not None:
                made[field.name] = built
        return made

    def _many(self, field: Field, values: Any) -> tuple[Any, ...]:
        if field.kind is not LIST:
            return tuple(one for one in (self._one(field, value) for value in values) if one is not None)
        rows = []
        for value in values:
            if np.any(value.get("when", True)) and np.all(value.get("always", True)):
                inside = Builder(system=self.system, corners=self.corners, clock_like=self.clock_like)
                assert field.row is not None
                rows.append(field.row(**inside.results(field.fields, {name: one for name, one in value.items() if name not in ("when", "always")})))
        return tuple(rows)

    def _one(self, field: Field, value: Any) -> Any:
        if isinstance(value, str):
            self.shown[field.name] = self.exact[field.name] = value
            return value
        low = high = None
        if self.corners:
            every = np.broadcast_to(np.asarray(value), (self.corners,))
            value, low, high = self._at_worst(field, every)
            if not field.many:
                self.worst[field.name] = value
        kind = field.kind
        if kind is FLAG:
            return bool(value)
        if kind is WORD:
            word = field.choices[int(value)]
            self.shown[field.name] = self.exact[field.name] = word
            return word
        number = float(value)
        if isnan(number) or (kind is CLOCK and isinf(number)):  # no moment, or none in this tide
            return None
        return self._clock(field, number) if kind is CLOCK else self._quantity(field, number, low, high)

    def _at_worst(self, field: Field, every: Any) -> tuple[Any, float | None, float | None]:
        place = self.places[field.name] = int(worst_corner(field, every, self.places))
        if field.kind in (FLAG, WORD, CLOCK):
            return every[place], None, None
        return every[place], float(np.min(every)), float(np.max(every))

    def _quantity(self, field: Field, si: float, low: float | None, high: float | None) -> Quantity:
        how = style(field.kind, self.system, field.side.way)
        value, shown, exact = how.texts(si)
        self.shown[field.name], self.exact[field.name] = shown, exact
        return Quantity(value=value, unit=how.symbol, si=si, shown=shown, low=low, high=high)

    def _clock(self, field: Field, seconds: float) -> ClockTime:
        text, days = clock_text(seconds=seconds, like=self.clock_like)
        shown = text if not days else f"{text} (day {days:+d})"
        self.shown[field.name] = self.exact[field.name] = shown
        return ClockTime(value=text, shown=shown, days=days)
