"""The values that stand in an answer: quantities, words, flags, clock times, positions and lists of them."""

from typing import Any, Literal

import msgspec

from anchorcalc.units.kinds import UNIT

Origin = Literal["asked", "boat", "before", "assumed"]


class Measure(float):
    """A number that remembers the unit it was asked in."""

    unit: str

    def __new__(cls, value: float, unit: str = "") -> "Measure":
        """Make a float with a unit beside it."""
        made = super().__new__(cls, value)
        made.unit = unit
        return made

    def __getnewargs__(self) -> tuple[float, str]:  # type: ignore[override]
        """Pickle and copy with the unit."""
        return float(self), self.unit

    @property
    def value(self) -> float:
        """The plain number."""
        return float(self)


class Quantity(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True, gc=False):  # no cycles: nothing for the collector
    """A quantity of an answer: `value` in `unit`, the same in SI, and as it is shown (rounded to the safe side).

    `low` and `high` (SI) stand beside it where an input was a range: the answer lies between them, and `si` is the safe end.

    Examples
    --------
    >>> from anchorcalc import rode_to_let_out
    >>> rode = rode_to_let_out(depth="12 ft", bow_height="5 ft", tide_rise="3 ft").results.rode_out
    >>> rode.shown, rode.value, rode.si
    ('140 ft', 140.0, 42.672)
    >>> round(rode.to("m"), 2)
    42.67
    """

    value: float
    unit: str
    si: float
    shown: str
    low: float | None = None
    high: float | None = None

    def to(self, unit: str) -> Measure:
        """Return the number in another unit of the same kind, such as `to("m")`.

        Raises
        ------
        InputError
            Where the unit is unknown or of another kind.
        """
        return Measure(self.si / _factor_between(unit=unit, like=self.unit), unit)

    @property
    def quantity(self) -> Any:
        """The same as a pint quantity, in the application registry of pint."""
        from anchorcalc.units.pints import to_pint

        return to_pint(si=self.si, unit=self.unit)

    def __float__(self) -> float:
        """Return the number in the quantity's own unit."""
        return self.value


def _factor_between(*, unit: str, like: str) -> float:
    from anchorcalc.errors import InputError, fault
    from anchorcalc.units.kinds import symbols_of, units_spelled

    if not like:
        if unit:
            raise InputError([fault("unit", "wrong_dimension", unit, "will not do for a plain number", "no unit")])
        return 1.0
    kind = UNIT[like].kind
    for found in units_spelled(text=unit) if isinstance(unit, str) else ():
        if found.kind == kind:
            return found.factor
    raise InputError([fault("unit", "wrong_dimension", unit, f"is no unit of {kind}", ", ".join(symbols_of(kind=kind)))])


class _From(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True, rename={"origin": "from"}):
    origin: Origin


class ReadQuantity(Quantity, frozen=True, kw_only=True, omit_defaults=True, gc=False, rename={"origin": "from"}):
    """A quantity that the answer stands on, and where it came from."""

    origin: Origin


class ReadWord(_From, frozen=True, kw_only=True, omit_defaults=True, gc=False):
    """A word that the answer stands on."""

    value: str
    shown: str


class ReadFlag(_From, frozen=True, kw_only=True, omit_defaults=True):
    """A yes or no that the answer stands on."""

    value: bool
    shown: str


class ClockTime(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=False):
    """A clock time: plain times stay plain, with the days after the time asked about; ISO 8601 stays ISO."""

    value: str
    shown: str
    days: int = 0


class ReadClock(ClockTime, frozen=True, kw_only=True, omit_defaults=False, rename={"origin": "from"}):
    """A clock time that the answer stands on."""

    origin: Origin


class ReadPosition(_From, frozen=True, kw_only=True, omit_defaults=True):
    """A position, decimal degrees, north and east positive."""

    value: str
    shown: str
    latitude: float
    longitude: float


class ReadLengths(_From, frozen=True, kw_only=True, omit_defaults=True):
    """A list of lengths."""

    value: tuple[float, ...]
    unit: str
    si: tuple[float, ...]
    shown: str


class Fix(msgspec.Struct, frozen=True, kw_only=True):
    """Where the boat was, and when."""

    at: str
    position: str


class ReadFixes(_From, frozen=True, kw_only=True, omit_defaults=True):
    """Where the boat has been."""

    value: tuple[Fix, ...]
    shown: str


Read = ReadQuantity | ReadWord | ReadFlag | ReadClock | ReadPosition | ReadLengths | ReadFixes
