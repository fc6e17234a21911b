"""The units of plain words: those of the vocabulary and those of everyday English that no question takes."""

import re

from anchorcalc.units.kinds import EXACT, FOOT, POUND, UNITS, Unit

_LITRE, _GALLON, _DAY = 0.001, 0.003785411784, 86400.0
# Kinds that no question takes are read so that nothing else takes their numbers. Factors: SI Brochure and NIST SP 811, from memory.
_GENERAL: tuple[Unit, ...] = (
    Unit(symbol="µm", kind="length", factor=1e-6, spellings=("um", "micron", "microns", "micrometer", "micrometers", "micrometre", "micrometres")),
    Unit(symbol="nanometre", kind="length", factor=1e-9, spellings=("nanometres", "nanometer", "nanometers")),
    Unit(symbol="dm", kind="length", factor=0.1, spellings=("decimeter", "decimeters", "decimetre", "decimetres")),
    Unit(symbol="ly", kind="length", factor=9460730472580800.0, spellings=("light year", "light years", "light-year", "light-years", "lightyears")),
    Unit(symbol="au", kind="length", factor=149597870700.0, spellings=("astronomical unit", "astronomical units")),
    Unit(symbol="furlong", kind="length", factor=660 * FOOT, spellings=("furlongs",)),
    Unit(symbol="league", kind="length", factor=3 * 5280 * FOOT, spellings=("leagues",)),
    Unit(symbol="hand", kind="length", factor=4 * 0.0254, spellings=("hands high",)),
    Unit(symbol="ft", kind="length", factor=FOOT, spellings=("footer", "footers", "feeter")),
    Unit(symbol="lb", kind="mass", factor=POUND, spellings=("pounder", "pounders")),
    Unit(symbol="mg", kind="mass", factor=1e-6, spellings=("milligram", "milligrams", "milligramme", "milligrammes")),
    Unit(symbol="stone", kind="mass", factor=14 * POUND, spellings=("st.",)),
    Unit(symbol="ton", kind="mass", factor=2000 * POUND, spellings=("tons",)),  # the short ton, flagged: it may be another
    Unit(symbol="carat", kind="mass", factor=0.0002, spellings=("carats",)),
    Unit(
        symbol="km/s",
        kind="speed",
        factor=1000.0,
        spellings=("kilometers per second", "kilometres per second", "kilometers a second", "km per second"),
    ),
    Unit(symbol="cm/s", kind="speed", factor=0.01, spellings=("centimeters per second", "centimetres per second", "cm per second")),
    Unit(
        symbol="m/min",
        kind="speed",
        factor=1 / 60,
        spellings=("metres per minute", "meters per minute", "metres a minute", "meters a minute", "m per minute"),
    ),
    Unit(symbol="ft/min", kind="speed", factor=FOOT / 60, spellings=("feet per minute", "feet a minute", "fpm", "ft per minute")),
    Unit(symbol="m/h", kind="speed", factor=1 / 3600, spellings=("metres per hour", "meters per hour", "metres an hour", "meters an hour")),
    Unit(symbol="mi/s", kind="speed", factor=1609.344, spellings=("miles per second", "miles a second")),
    Unit(symbol="MN", kind="force", factor=1e6, spellings=("meganewton", "meganewtons")),
    Unit(symbol="ms", kind="time", factor=0.001, spellings=("millisecond", "milliseconds", "msec")),
    Unit(symbol="day", kind="time", factor=_DAY, spellings=("days",)),
    Unit(symbol="week", kind="time", factor=7 * _DAY, spellings=("weeks", "wk", "wks")),
    Unit(symbol="month", kind="time", factor=30.4375 * _DAY, spellings=("months",)),
    Unit(symbol="year", kind="time", factor=365.25 * _DAY, spellings=("years", "yr", "yrs")),
    Unit(symbol="MW", kind="power", factor=1e6, spellings=("megawatt", "megawatts")),
    Unit(
        symbol="arcmin",
        kind="angle",
        factor=0.0002908882086657216,
        spellings=("arc minute", "arc minutes", "arcminutes", "minutes of arc", "minute of arc"),
    ),
    Unit(symbol="arcsec", kind="angle", factor=4.84813681109536e-06, spellings=("arc second", "arc seconds", "arcseconds", "seconds of arc")),
    Unit(symbol="m²", kind="area", factor=1.0, spellings=("square metre", "square meter", "sq metres", "sq meters", "sqm", "m^2")),
    Unit(symbol="ft²", kind="area", factor=FOOT**2, spellings=("square foot", "sq foot", "sq feet", "sqft", "sq. ft", "ft^2")),
    Unit(
        symbol="km²",
        kind="area",
        factor=1e6,
        spellings=("km2", "sq km", "square km", "square kilometers", "square kilometres", "square kilometer", "square kilometre"),
    ),
    Unit(symbol="mi²", kind="area", factor=1609.344**2, spellings=("mi2", "sq mi", "square miles", "square mile", "sq miles")),
    Unit(symbol="cm²", kind="area", factor=1e-4, spellings=("cm2", "sq cm", "square centimeters", "square centimetres", "square centimetre")),
    Unit(symbol="in²", kind="area", factor=0.0254**2, spellings=("in2", "sq in", "square inches", "square inch")),
    Unit(symbol="yd²", kind="area", factor=(3 * FOOT) ** 2, spellings=("yd2", "sq yd", "square yards", "square yard")),
    Unit(symbol="acre", kind="area", factor=4046.8564224, spellings=("acres",)),
    Unit(symbol="ha", kind="area", factor=1e4, spellings=("hectare", "hectares")),
    Unit(symbol="l", kind="volume", factor=_LITRE, spellings=("litre", "litres", "liter", "liters", "ltr", "ltrs")),
    Unit(symbol="ml", kind="volume", factor=_LITRE / 1000, spellings=("millilitre", "millilitres", "milliliter", "milliliters", "cc")),
    Unit(symbol="gal", kind="volume", factor=_GALLON, spellings=("gallon", "gallons", "gals")),
    Unit(symbol="pint", kind="volume", factor=_GALLON / 8, spellings=("pints",)),
    Unit(symbol="qt", kind="volume", factor=_GALLON / 4, spellings=("quart", "quarts")),
    Unit(symbol="m³", kind="volume", factor=1.0, spellings=("m3", "cubic metres", "cubic meters", "cubic metre", "cubic meter", "cu m")),
    Unit(symbol="ft³", kind="volume", factor=FOOT**3, spellings=("ft3", "cubic feet", "cubic foot", "cu ft")),
    Unit(symbol="in³", kind="volume", factor=0.0254**3, spellings=("in3", "cubic inches", "cubic inch", "cu in")),
    Unit(
        symbol="°C",
        kind="temperature",
        factor=1.0,
        spellings=("degrees c", "degrees celsius", "degree celsius", "deg c", "celsius", "centigrade", "degrees centigrade", "° c"),
    ),
    Unit(
        symbol="°F",
        kind="temperature",
        factor=5 / 9,
        spellings=("degrees f", "degrees fahrenheit", "degree fahrenheit", "deg f", "fahrenheit", "° f"),
    ),
    Unit(symbol="K", kind="temperature", factor=1.0, spellings=("kelvin", "kelvins")),
)
_NEVER = frozenset(["ch", "cv", "hand"])  # another word in most texts
_OTHER = frozenset(
    [
        "rpm",
        "revs",
        "v",
        "volt",
        "volts",
        "amp",
        "amps",
        "ah",
        "wh",
        "kwh",
        "hz",
        "khz",
        "mhz",
        "ghz",
        "hpa",
        "mb",
        "mbar",
        "millibar",
        "millibars",
        "bar",
        "bars",
        "psi",
        "pa",
        "kpa",
        "mpa",
        "kb",
        "gb",
        "tb",
        "px",
        "pt",
        "people",
        "persons",
        "crew",
        "boats",
        "anchors",
    ]
)
_MONEY = frozenset(
    ("dollar", "dollars", "euro", "euros", "usd", "eur", "gbp", "quid", "bucks", "sterling", "cents", "pence", "kroner", "sek", "nok", "dkk")
)
_TEMPERATURE_ZERO = {"°C": 273.15, "°F": 273.15 - 32 * 5 / 9, "K": 0.0}

Spelled = dict[str, list[tuple[str, Unit]]]


_LENGTHS = {
    "km": ("kilometers", "kilometres", "kilometer", "kilometre", "km"),
    "m": ("meters", "metres", "meter", "metre", "m"),
    "mi": ("miles", "mile"),
    "ft": ("feet", "foot", "ft"),
}
_TIMES = {"h": ("hour", "hr", "h"), "min": ("minute", "min"), "s": ("second", "sec", "s")}
_PER = {
    "km/h": ("km", "h"),
    "m/s": ("m", "s"),
    "mph": ("mi", "h"),
    "ft/s": ("ft", "s"),
    "m/min": ("m", "min"),
    "ft/min": ("ft", "min"),
    "m/h": ("m", "h"),
    "km/s": ("km", "s"),
    "mi/s": ("mi", "s"),
}


_SLIPS = {  # of the finger, in a text; typed input has the right spelling
    "m": ("meeter", "meeters", "metter", "metters", "meteres", "metrs", "metors", "metor", "mtres", "mters", "mter", "meetres", "meetre", "miters"),
    "ft": ("foots", "feets", "feat", "fet", "foor", "feeet", "fott"),
    "fathom": ("fathem", "fathems", "fathum", "fathums", "fathms", "fathm", "fathomes", "phathoms", "fatoms", "fatom", "fadoms"),
    "kn": ("nots", "knotts", "knott", "konts", "kntos", "kotns", "knoths"),
    "kg": ("killos", "killo", "kilogramms", "kilogramm", "killogram", "killograms", "kilogrammes"),
    "lb": ("punds", "pouns", "poudns", "lbss"),
    "in": ("inchs", "inchess", "inche", "innch"),
    "mm": ("milimeter", "milimeters", "milimetre", "milimetres", "millimetter", "millimetters"),
    "cm": ("centimeeter", "centimeeters", "centimetter", "centimetters", "centermeters", "centermetres"),
}


def _spellings(unit: Unit) -> tuple[str, ...]:
    """Return all spellings of a unit in small letters; of a speed also `miles/hour`, `mile an hour` and the like."""
    plain = (*(one.lower() for one in (unit.symbol, *unit.spellings)), *_SLIPS.get(unit.symbol, ()))
    if unit.symbol not in _PER:
        return plain
    length, time = _PER[unit.symbol]
    return plain + tuple(f"{one}{per}{other}" for one in _LENGTHS[length] for other in _TIMES[time] for per in ("/", " per ", " a ", " an "))


def _by_first_word() -> Spelled:
    """Return the units by the first word of each spelling, the longest spelling first."""
    found: Spelled = {}
    for unit in (*UNITS, *_GENERAL):
        for folded in _spellings(unit):
            first = _FIRST.match(folded)
            if first and folded not in _NEVER:
                held = found.setdefault(first[0], [])
                if all(one[0] != folded for one in held):
                    held.append((folded, unit))
    for held in found.values():
        held.sort(key=lambda one: -len(one[0]))
    return found


_FIRST = re.compile(r"[a-zµ]+(?:/[a-z]+)?(?:[²³]|[23](?!\d))?|°[cf](?![a-z])|°|'|\"|#")
_AT = re.compile(r"(?:[ \xa0\t\n]{1,2}|-)?([a-zµ]+(?:/[a-z]+)?(?:[²³]|[23](?!\d))?|°[cf](?![a-z])|°|''|'(?!s\b)|\"|#(?!\d))")
_CASED = {"n": "N", "w": "W", "ps": "PS", "k": "K", "mn": "MN"}
BY_WORD = _by_first_word()
INCH = EXACT["in"][0]
FOOT_UNIT = EXACT["ft"][0]


def unit_at(*, cased: str, low: str, at: int) -> tuple[Unit, int, str] | None:
    """Return the unit that stands at a place behind a number, where it ends, and its spelling; None where there is none."""
    found = _AT.match(low, at)
    if not found:
        return None
    word, begin = found[1], found.start(1)
    if word == "''":
        return INCH, found.end(), word
    held = BY_WORD.get(word)
    if held is None and _ANOTHER_FACT.search(word):  # `6m/bow 1.2`, not `50 N/m`
        held = BY_WORD.get(word := word[: word.index("/")])
    if held is None:
        return None
    for spelling, unit in held:
        end = begin + len(spelling)
        if (len(spelling) == len(word) or low.startswith(spelling, begin)) and not _goes_on(low=low, end=end, spelling=spelling):
            if spelling in _CASED and cased[begin:end] != _CASED[spelling]:
                continue
            written = cased[begin:end]
            return EXACT["kN"][0] if written == "kN" else unit, end, written
    return None


def _goes_on(*, low: str, end: int, spelling: str) -> bool:
    """Say whether the word goes on behind a spelling: `mm` is no `m`, `m/s²` no speed; but `5ft6in` is 5 ft."""
    following = low[end : end + 1]
    if not following or not spelling[-1].isalpha():
        return False
    if following == " " and spelling.endswith(("hour", "minute")) and low.startswith(" ago", end):
        return True  # `to 25 m an hour ago`
    return following in "^²³" or (following.isalnum() and not (following.isdigit() and spelling in _BEFORE_A_DIGIT))


_BEFORE_A_DIGIT = frozenset(["ft", "lb", "lbs", "h", "hr", "m", "kg", "st"])


_ANOTHER_FACT = re.compile(r"/[a-z]{3,}\Z")


def other_at(*, low: str, at: int) -> tuple[str, int] | None:
    """Return `percent`, `money` or `other` and where it ends, where a word of that sort stands behind a number."""
    found = _OTHER_AT.match(low, at)
    if not found:
        return None
    word = found[1]
    if word in ("%", "percent", "per"):
        return "percent", found.end()
    if word in ("€", "$", "£") or word in _MONEY:
        return "money", found.end()
    return ("other", found.end()) if word in _OTHER else None


_OTHER_AT = re.compile(r"[ \xa0-]?(%|percent|per(?= cent)|[€$£]|[a-z]{1,9})(?![a-z])")


def si_of(*, value: float, unit: Unit) -> float:
    """Return a value in SI; a temperature in kelvin."""
    return value * unit.factor + _TEMPERATURE_ZERO[unit.symbol] if unit.kind == "temperature" else value * unit.factor
