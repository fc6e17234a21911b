"""Kinds of quantity and the units of each: spellings, SI factors, and how finely a value is shown.

A unit is declared here once. Sources of the factors: exact by definition (international foot, pound and nautical mile;
BIPM SI Brochure; NIST SP 811, Appendix B, from memory where no copy was read); `anchorcalc.sources.UNITS`.
"""

import math
from functools import cache

import msgspec

FOOT = 0.3048
POUND = 0.45359237
GRAVITY = 9.80665  # standard gravity [m/s2], exact by definition
NAUTICAL_MILE = 1852.0


class Kind(msgspec.Struct, frozen=True, cache_hash=True):
    """A kind of input or result: its dimension and the unit it is shown in, metric and US."""

    name: str
    si: str = ""
    metric: str = ""
    us: str = ""

    @property
    def has_unit(self) -> bool:
        """Whether a value of this kind is written with a unit."""
        return bool(self.si)


LENGTH = Kind("length", "m", "m", "ft")
SIZE = Kind("length", "m", "mm", "in")  # diameters: a length in a smaller unit
MASS = Kind("mass", "kg", "kg", "lb")
SPEED = Kind("speed", "m/s", "kn", "kn")
FORCE = Kind("force", "N", "kN", "lbf")
TIME = Kind("time", "s", "min", "min")
ANGLE = Kind("angle", "rad", "deg", "deg")
POWER = Kind("power", "W", "kW", "hp")
AREA = Kind("area", "m²", "m²", "ft²")
RATIO = Kind("ratio")  # 7 or "7:1", said and shown as 7:1
SLOPE = Kind("slope")  # "1:20", one down for so many out
FACTOR = Kind("factor")  # a plain number, such as a margin of strength
COUNT = Kind("count")
WORD = Kind("word")
FLAG = Kind("flag")
CLOCK = Kind("clock")
POSITION = Kind("position")
LENGTHS = Kind("lengths", "m", "m", "ft")  # a list of lengths
FIXES = Kind("fixes")
LIST = Kind("list")  # rows of a table in an answer


class Unit(msgspec.Struct, frozen=True, kw_only=True, cache_hash=True):
    """A unit: its symbol, kind, size in SI, spellings, the system it speaks for, and the steps it is shown in."""

    symbol: str
    kind: str
    factor: float
    spellings: tuple[str, ...] = ()
    system: str = ""  # "us", "metric" or "" (nautical and others: says nothing of how answers should be shown)
    steps: tuple[tuple[float, float], ...] = ((100.0, 0.1), (math.inf, 1.0))  # (below this, shown in steps of)


class Amount(msgspec.Struct, frozen=True, gc=False):
    """A quantity as it was written: from `low` to `high` in SI (equal where no range was said), and its unit.

    `value` is the number as written (of the low end, where there are two); `beaufort` says that it was a wind force, a mean wind.
    """

    kind: str
    low: float
    high: float
    unit: str
    value: float
    value_high: float
    beaufort: bool = False

    @property
    def is_range(self) -> bool:
        """Whether two different ends were said."""
        return self.low != self.high


_FINE = ((20.0, 0.1), (100.0, 0.5), (math.inf, 1.0))
_FEET = ((10.0, 0.1), (30.0, 0.5), (math.inf, 1.0))
_THIRDS = ((10.0, 0.01), (100.0, 0.1), (1000.0, 1.0), (math.inf, 10.0))

UNITS: tuple[Unit, ...] = (
    Unit(symbol="m", kind="length", factor=1.0, system="metric", steps=_FINE, spellings=("meter", "meters", "metre", "metres", "mtr", "mtrs", "mts")),
    Unit(symbol="cm", kind="length", factor=0.01, system="metric", spellings=("centimeter", "centimeters", "centimetre", "centimetres", "cms")),
    Unit(
        symbol="mm",
        kind="length",
        factor=0.001,
        system="metric",
        spellings=("millimeter", "millimeters", "millimetre", "millimetres", "mms", "mil", "mils", "mill"),
    ),
    Unit(
        symbol="km",
        kind="length",
        factor=1000.0,
        system="metric",
        steps=_THIRDS,
        spellings=("kilometer", "kilometers", "kilometre", "kilometres", "kms"),
    ),
    Unit(symbol="ft", kind="length", factor=FOOT, system="us", steps=_FEET, spellings=("foot", "feet", "foots", "feets", "fts", "'", "′")),
    Unit(symbol="in", kind="length", factor=0.0254, system="us", spellings=("inch", "inches", "inchs", "ins", '"', "″")),
    Unit(symbol="yd", kind="length", factor=3 * FOOT, system="us", spellings=("yard", "yards", "yds")),
    Unit(symbol="fathom", kind="length", factor=6 * FOOT, system="us", spellings=("fathoms", "fm", "fms", "fath", "ftm", "fthm")),
    Unit(symbol="cable", kind="length", factor=185.2, spellings=("cables", "cbl")),
    Unit(symbol="shackle", kind="length", factor=27.432, spellings=("shackles", "shot", "shots")),
    Unit(
        symbol="nmi", kind="length", factor=NAUTICAL_MILE, steps=_THIRDS, spellings=("nm", "nautical mile", "nautical miles", "sea mile", "sea miles")
    ),
    Unit(symbol="mi", kind="length", factor=1609.344, system="us", steps=_THIRDS, spellings=("mile", "miles", "statute mile", "statute miles")),
    Unit(
        symbol="kg",
        kind="mass",
        factor=1.0,
        system="metric",
        steps=((10.0, 0.1), (math.inf, 1.0)),
        spellings=("kilogram", "kilograms", "kilogramme", "kilogrammes", "kilo", "kilos", "kgs"),
    ),
    Unit(symbol="g", kind="mass", factor=0.001, system="metric", spellings=("gram", "grams", "gramme", "grammes", "gm", "gms")),
    Unit(symbol="t", kind="mass", factor=1000.0, system="metric", steps=_THIRDS, spellings=("tonne", "tonnes", "metric ton", "metric tons")),
    Unit(symbol="lb", kind="mass", factor=POUND, system="us", steps=((10.0, 0.1), (math.inf, 1.0)), spellings=("lbs", "pound", "pounds", "lbm", "#")),
    Unit(symbol="oz", kind="mass", factor=POUND / 16, system="us", spellings=("ounce", "ounces")),
    Unit(symbol="short_ton", kind="mass", factor=2000 * POUND, system="us", spellings=("short ton", "short tons")),
    Unit(symbol="long_ton", kind="mass", factor=2240 * POUND, spellings=("long ton", "long tons")),
    Unit(
        symbol="kn", kind="speed", factor=NAUTICAL_MILE / 3600, steps=((10.0, 0.1), (math.inf, 1.0)), spellings=("kt", "kts", "knot", "knots", "kns")
    ),
    Unit(
        symbol="m/s",
        kind="speed",
        factor=1.0,
        system="metric",
        spellings=(
            "mps",
            "meters per second",
            "metres per second",
            "meter per second",
            "metre per second",
            "meters a second",
            "metres a second",
            "m per s",
            "m/sec",
        ),
    ),
    Unit(
        symbol="km/h",
        kind="speed",
        factor=1 / 3.6,
        system="metric",
        spellings=(
            "kmh",
            "kph",
            "kmph",
            "km/hr",
            "km per hour",
            "kilometers per hour",
            "kilometres per hour",
            "kilometers an hour",
            "kilometres an hour",
        ),
    ),
    Unit(symbol="mph", kind="speed", factor=0.44704, system="us", spellings=("miles per hour", "miles an hour", "mi/h")),
    Unit(symbol="ft/s", kind="speed", factor=FOOT, system="us", spellings=("fps", "feet per second", "ft/sec", "feet a second")),
    Unit(symbol="N", kind="force", factor=1.0, system="metric", steps=((100.0, 1.0), (math.inf, 10.0)), spellings=("newton", "newtons")),
    Unit(symbol="daN", kind="force", factor=10.0, system="metric", steps=_THIRDS, spellings=("decanewton", "decanewtons")),
    Unit(symbol="kN", kind="force", factor=1000.0, system="metric", steps=_THIRDS, spellings=("kilonewton", "kilonewtons")),
    Unit(
        symbol="kgf",
        kind="force",
        factor=GRAVITY,
        system="metric",
        steps=((10.0, 0.1), (math.inf, 1.0)),
        spellings=("kilogram force", "kilograms force", "kilogram-force", "kilograms-force", "kp"),
    ),
    Unit(
        symbol="lbf",
        kind="force",
        factor=POUND * GRAVITY,
        system="us",
        steps=((100.0, 1.0), (1000.0, 5.0), (math.inf, 10.0)),
        spellings=("pound force", "pounds force", "pound-force", "pounds-force"),
    ),
    Unit(symbol="kip", kind="force", factor=1000 * POUND * GRAVITY, system="us", steps=_THIRDS, spellings=("kips",)),
    Unit(symbol="tf", kind="force", factor=1000 * GRAVITY, system="metric", steps=_THIRDS, spellings=("tonne force", "tonnes force")),
    Unit(symbol="s", kind="time", factor=1.0, spellings=("sec", "secs", "second", "seconds")),
    Unit(symbol="min", kind="time", factor=60.0, steps=((10.0, 0.5), (math.inf, 1.0)), spellings=("mins", "minute", "minutes")),
    Unit(symbol="h", kind="time", factor=3600.0, spellings=("hr", "hrs", "hour", "hours")),
    Unit(symbol="deg", kind="angle", factor=math.pi / 180, steps=((30.0, 0.1), (math.inf, 1.0)), spellings=("°", "degree", "degrees", "degs", "º")),
    Unit(symbol="rad", kind="angle", factor=1.0, steps=((math.inf, 0.01),), spellings=("radian", "radians")),
    Unit(symbol="W", kind="power", factor=1.0, system="metric", spellings=("watt", "watts")),
    Unit(symbol="kW", kind="power", factor=1000.0, system="metric", steps=_THIRDS, spellings=("kilowatt", "kilowatts", "kws")),
    Unit(
        symbol="hp",
        kind="power",
        factor=550 * FOOT * POUND * GRAVITY,
        system="us",
        spellings=("bhp", "shp", "horsepower", "horse power", "horse-power", "horse", "horses"),
    ),
    Unit(
        symbol="PS", kind="power", factor=75 * GRAVITY, system="metric", spellings=("metric_horsepower", "metric horsepower", "ch", "cv", "metric hp")
    ),
    Unit(
        symbol="m²",
        kind="area",
        factor=1.0,
        system="metric",
        steps=((100.0, 1.0), (math.inf, 10.0)),
        spellings=("m2", "sq m", "square metres", "square meters"),
    ),
    Unit(symbol="ft²", kind="area", factor=FOOT**2, system="us", steps=((math.inf, 10.0),), spellings=("ft2", "sq ft", "square feet")),
)
UNIT: dict[str, Unit] = {unit.symbol: unit for unit in UNITS}


def _table(*, fold: bool) -> dict[str, tuple[Unit, ...]]:
    found: dict[str, list[Unit]] = {}
    for unit in UNITS:
        for spelling in (unit.symbol, *unit.spellings):
            key = spelling.casefold() if fold else spelling
            if unit not in found.setdefault(key, []):
                found[key].append(unit)
    return {key: tuple(units) for key, units in found.items()}


EXACT = _table(fold=False)
FOLDED = _table(fold=True)


def units_spelled(*, text: str) -> tuple[Unit, ...]:
    """Return the units that a spelling can mean: by its own case where that decides, else in any case.

    More than one where only case tells them apart (`KN`: knots or kilonewtons); the kind that is wanted then decides.
    """
    return EXACT.get(text) or FOLDED.get(text.casefold().rstrip(".")) or ()


@cache
def spelled_plainly(kind: str) -> dict[str, Unit]:
    """Return the units of a kind by the spellings that, in their own case, mean nothing else."""
    return {spelling: found[0] for spelling, found in EXACT.items() if len(found) == 1 and found[0].kind == kind}


@cache
def symbols_of(*, kind: str) -> tuple[str, ...]:
    """Return the symbols of a kind's units, for error texts."""
    return tuple(unit.symbol for unit in UNITS if unit.kind == kind)


# WMO Beaufort ranges in whole knots; a speed between two ranges goes to the nearer force. F12 has no upper end.
BEAUFORT_KNOTS: tuple[tuple[float, float], ...] = (
    (0, 1),
    (1, 3),
    (4, 6),
    (7, 10),
    (11, 16),
    (17, 21),
    (22, 27),
    (28, 33),
    (34, 40),
    (41, 47),
    (48, 55),
    (56, 63),
    (64, math.inf),
)
