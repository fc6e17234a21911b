"""Which quantity can stand for which term, by its kind and size."""

from typing import Literal

from anchorcalc.reader.mention import Mention
from anchorcalc.units import kinds
from anchorcalc.units.clock import Clock
from anchorcalc.units.kinds import UNIT, Amount
from anchorcalc.units.shown import tidy
from anchorcalc.vocabulary.term import Term

Fit = Literal["yes", "bare", "no", "never"]

_UNIT_KIND = {
    kinds.LENGTH: "length",
    kinds.SIZE: "length",
    kinds.MASS: "mass",
    kinds.SPEED: "speed",
    kinds.FORCE: "force",
    kinds.ANGLE: "angle",
    kinds.POWER: "power",
    kinds.LENGTHS: "length",
}
_MEASURED = frozenset(("length", "mass", "speed", "force", "angle", "power"))
# Units of everyday English that the vocabulary has not, in those that it has.
_PLAIN = {"length": "m", "mass": "kg", "speed": "m/s", "force": "N", "power": "W", "angle": "deg", "time": "s"}
_FORCE_OF_MASS = {"kg": "kgf", "lb": "lbf", "t": "tf"}
# A bare trade fraction is a size in inches, never a length.
_SHORT = frozenset(
    (
        "depth",
        "rode_out",
        "rode_aboard",
        "chain",
        "line",
        "boat_length",
        "distance",
        "distance_off",
        "mark_interval",
        "marks",
        "beam",
        "other_rode_out",
        "other_boat_length",
    )
)


def is_size(mention: Mention) -> bool:
    """Say whether a quantity is as small as a diameter, and written like one."""
    if mention.kind != "length":
        return mention.kind == "number" and is_trade_fraction(mention)
    amount = mention.amount
    return isinstance(amount, Amount) and amount.unit in ("mm", "in", "cm") and 0.0 < abs(amount.high) < 0.065


def is_trade_fraction(mention: Mention) -> bool:
    """Say whether a bare number is a fraction of an inch as the trade writes it (`3/8`, `seven-sixteenths`)."""
    amount = mention.amount
    if mention.kind != "number" or not isinstance(amount, Amount) or amount.low != amount.high:
        return False
    sixteenths = amount.value * 32.0
    return (
        ("fraction" in mention.flags or "spelled" in mention.flags)
        and 0.0 < amount.value < 2.0
        and amount.value % 1 != 0
        and abs(sixteenths - round(sixteenths)) < 1e-9
    )


def fit(*, term: Term, mention: Mention) -> Fit:
    """Say whether a quantity can stand for a term: yes, bare (a unit is wanting), no (a wrong dimension), or never."""
    amount, wanted = mention.amount, _UNIT_KIND.get(term.kind)
    if wanted == mention.kind and not mention.flags:
        return _sized(term, mention)  # most by far
    if term.kind is kinds.CLOCK:
        return "yes" if mention.kind == "clock" else "never"
    if not isinstance(amount, Amount) or ("difference" in mention.flags and term.name not in _DIFFERENCES):
        return "never"
    if term.kind is kinds.RATIO:
        return "yes" if (mention.kind == "ratio" and amount.value > 0.0) or mention.kind == "number" else "never"
    if term.kind is kinds.SLOPE:
        return (
            "yes"
            if (mention.kind == "ratio" and amount.value < 1.0)
            or ("fraction" in mention.flags and mention.kind == "number" and 0.0 < amount.value < 0.5)
            else "never"
        )
    if wanted is None:
        return "never"
    if mention.kind == "number":
        return _bare(term, mention)
    if mention.kind == wanted:
        return "never" if "article" in mention.flags and term.name in _NEVER_ONE else _sized(term, mention)
    if wanted == "force" and mention.kind == "mass":
        return "yes"
    return "no" if mention.kind in _MEASURED else "never"


_DIFFERENCES = frozenset(("tide_rise", "tide_fall", "reserve", "margin", "under_keel", "at_high", "at_low", "transducer_depth", "antenna_from_bow"))
_NEVER_ONE = frozenset(("boat_length", "beam", "wind", "rode_out", "rode_aboard", "other_boat_length"))  # `a foot` is no boat, `a knot` no wind
_VALUES = frozenset(("another", "valued"))  # flags of a number that is no count
_A_PART = frozenset(("spelled", "fraction"))
_COUNTS = frozenset(("one", "two", "three", "zero", "a couple"))  # more often a count than a value


def _bare(term: Term, mention: Mention) -> Fit:
    if (
        "times" in mention.flags
        or "label" in mention.flags
        or "after_name" in mention.flags
        or (mention.text.lower() in _COUNTS and mention.flags.isdisjoint(_VALUES))
    ):
        return "never"
    if mention.flags >= _A_PART and term.kind is kinds.LENGTH:
        return "never"  # `two thirds of it is chain`
    if is_trade_fraction(mention):
        return "yes" if term.kind is kinds.SIZE else "bare" if term.name not in _SHORT and "fraction" not in mention.flags else "never"
    return "bare"


def _sized(term: Term, mention: Mention) -> Fit:
    small = is_size(mention)
    if term.kind is kinds.SIZE:
        amount = mention.amount
        assert isinstance(amount, Amount)
        return "yes" if small or (amount.unit in ("mm", "in") and amount.high < 0.11) or amount.high < 0.0 else "never"
    return "never" if small and term.name in _SHORT else "yes"


_ABOVE_DATUM = frozenset(("low_height", "high_height"))


def as_given(*, term: Term, mention: Mention) -> Amount:
    """Return a quantity as the gate takes it for a term: a pull in kg or lb as a force, a trade fraction in inches."""
    amount = mention.amount
    assert isinstance(amount, Amount)
    if amount.unit and amount.unit not in UNIT and amount.kind in _PLAIN:
        size = UNIT[_PLAIN[amount.kind]]
        amount = Amount(amount.kind, amount.low, amount.high, size.symbol, tidy(amount.low / size.factor), tidy(amount.high / size.factor))
    if "below_datum" in mention.flags and term.name in _ABOVE_DATUM:
        return Amount(amount.kind, -amount.high, -amount.low, amount.unit, -amount.value_high, -amount.value)
    if term.kind is kinds.FORCE and amount.unit in _FORCE_OF_MASS:
        return with_unit(amount, unit=_FORCE_OF_MASS[amount.unit])
    if term.kind is kinds.FORCE and amount.kind == "mass":
        kilograms = UNIT["kgf"]
        return Amount("force", amount.low * kilograms.factor, amount.high * kilograms.factor, "kgf", amount.low, amount.high)
    if term.kind is kinds.SIZE and is_trade_fraction(mention):
        return with_unit(amount, unit="in")
    return amount


def with_unit(amount: Amount, *, unit: str) -> Amount:
    """Return a number or a quantity with its numbers in another unit."""
    size = UNIT[unit]
    return Amount(size.kind, amount.value * size.factor, amount.value_high * size.factor, unit, amount.value, amount.value_high)


def clock_said(mention: Mention) -> str:
    """Return a clock time as the gate takes it."""
    if isinstance(mention.amount, Clock):
        if mention.amount.form != "plain":
            return mention.text
        minutes = round(mention.amount.seconds / 60.0)
        return f"{minutes // 60 % 24:02d}:{minutes % 60:02d}"
    return f"{mention.text[:2]}:{mention.text[2:]}"
