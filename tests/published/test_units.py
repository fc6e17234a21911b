"""Units against their published definitions, and against pint's where the two mean the same."""

import numpy.testing as npt
import pint
import pytest

from anchorcalc.errors import InputError
from anchorcalc.units.kinds import UNIT, UNITS, Amount
from anchorcalc.units.quantity import Quantity
from anchorcalc.units.written import Unread, amount

SP811 = "NIST Special Publication 811 (2008), Appendix B (memory)"
# what is written, how much it is in SI, half the last printed digit (0: exact), source (status)
DEFINITIONS = [
    ("1 ft", 0.3048, 0, "Federal Register 85 FR 62698 (5 October 2020) (read)"),
    ("1 in", 0.0254, 0, "general reference page on units, exact value (read)"),
    ("1 yd", 0.9144, 0, SP811),
    ("1 fathom", 1.8288, 0, "encyclopaedia entry on the fathom, international definition (read)"),
    ("1 nautical mile", 1852.0, 0, "international agreement, general reference pages (read)"),
    ("1 cable", 185.2, 0, "encyclopaedia entry on the cable length (read)"),
    ("1 shot", 27.432, 0, "US Navy Basic Military Requirements, ground tackle: 15 fathoms (read)"),
    ("1 shackle", 27.432, 0, "the same: 15 fathoms (read)"),
    ("1 mile", 1609.344, 0, "general reference page on units, exact value (read)"),
    ("1 knot", 0.5144444444, 5e-11, SP811),
    ("1 mph", 0.44704, 0, SP811),
    ("1 km/h", 0.2777777778, 5e-11, SP811),
    ("1 lb", 0.45359237, 0, SP811),
    ("1 lbf", 4.4482216152605, 0, SP811),
    ("1 kip", 4448.2216152605, 0, SP811),
    ("1 kgf", 9.80665, 0, SP811),
    ("1 short_ton", 907.18474, 0, SP811),
    ("1 long_ton", 1016.0469088, 0, SP811),
    ("1 hp", 745.69987158227, 5e-12, SP811),
    ("1 metric_horsepower", 735.49875, 0, SP811),
]  # fmt: skip


@pytest.mark.parametrize(("text", "si", "half_digit", "source"), DEFINITIONS, ids=[one[0] for one in DEFINITIONS])
def test_unit_is_its_published_definition(text: str, si: float, half_digit: float, source: str) -> None:
    read = amount(text)
    assert isinstance(read, Amount), source
    npt.assert_allclose(read.low, si, rtol=1e-15, atol=half_digit, err_msg=source)


def test_shot_is_fifteen_fathoms_and_ninety_feet() -> None:  # US Navy Basic Military Requirements (read)
    npt.assert_allclose(UNIT["shackle"].factor / UNIT["fathom"].factor, 15, rtol=1e-15)
    npt.assert_allclose(UNIT["shackle"].factor / UNIT["ft"].factor, 90, rtol=1e-15)


def test_kilonewton_in_kilogram_force() -> None:  # D. Gerr, Boat Mechanical Systems Handbook (2009), ch. 24 (read): 101.97
    npt.assert_allclose(Quantity(value=1.0, unit="kN", si=1000.0, shown="1 kN").to("kgf"), 101.97, rtol=0, atol=0.005)


def test_kilowatt_in_horsepower() -> None:  # master mariner formula sheet (read): 1.34102
    npt.assert_allclose(Quantity(value=1.0, unit="kW", si=1000.0, shown="1 kW").to("hp"), 1.34102, rtol=0, atol=0.000005)


@pytest.mark.parametrize("force", range(12))
def test_wind_force_is_read_as_its_range_of_knots(force: int) -> None:
    # WMO Beaufort scale, two independent weather pages (reproduction); below 1 kn is printed as "less than 1 knot"
    printed = [(0, 1), (1, 3), (4, 6), (7, 10), (11, 16), (17, 21), (22, 27), (28, 33), (34, 40), (41, 47), (48, 55), (56, 63)]
    read = amount(f"F{force}")
    assert isinstance(read, Amount)
    npt.assert_array_equal((read.value, read.value_high), printed[force])


def test_force_twelve_has_no_upper_end_to_go_by() -> None:  # the pages print 64 knots and over
    assert isinstance(amount("F12"), Unread)


# What pint calls our units. Three of ours it knows by another size, as another thing or not at all: fathom, cable and shackle.
IN_PINT = {
    "fathom": "pint's is six US survey feet, 1.828804 m",
    "shackle": "pint's shot is a measure of drink, and it has no shackle",
    "cable": "pint's cables_length is the old US one, on the survey foot",
    "nmi": "pint calls nm a nanometre; its nautical_mile is the same as ours",
    "t": "pint's t is the metric ton as ours is, its ton the short one",
}
IN_PINT = {
    "nmi": "nautical_mile", "t": "metric_ton", "kn": "knot", "m/s": "meter/second", "km/h": "kilometer/hour", "mph": "mile/hour",
    "ft/s": "foot/second", "deg": "degree",
    "m²": "meter**2", "ft²": "foot**2", "PS": "metric_horsepower", "short_ton": "short_ton", "long_ton": "long_ton",
    "tf": "metric_ton*standard_gravity", "hp": "horsepower",
    "lbf": "pound_force", "kgf": "kilogram_force", "kip": "kip", "in": "inch", "lb": "pound", "oz": "ounce", "h": "hour", "min": "minute",
    "rad": "radian",
}  # fmt: skip
SI = {
    "length": "meter",
    "mass": "kilogram",
    "speed": "meter/second",
    "force": "newton",
    "time": "second",
    "angle": "radian",
    "power": "watt",
    "area": "meter**2",
}
REGISTRY = pint.UnitRegistry()


@pytest.mark.parametrize("unit", [one for one in UNITS if one.symbol not in ("fathom", "shackle", "cable")], ids=lambda unit: unit.symbol)
def test_factor_is_that_of_pint(unit: object) -> None:
    symbol, kind, factor = unit.symbol, unit.kind, unit.factor  # type: ignore[attr-defined]
    theirs = REGISTRY.Quantity(1.0, IN_PINT.get(symbol, symbol)).to(SI[kind]).magnitude
    npt.assert_allclose(factor, theirs, rtol=1e-14)  # pint 0.25.3, registry as installed (computed)


def test_pint_differs_where_it_is_said_to() -> None:
    # pint 0.25.3 and 0.26.2, registry as installed (read): the fathom of the first is on the survey foot, that of the second as ours
    fathom = REGISTRY.Quantity(1.0, "fathom").to("meter").magnitude
    assert fathom in (pytest.approx(1.828803657607315, abs=5e-16), pytest.approx(1.8288, abs=5e-16))
    assert REGISTRY.Quantity(1.0, "shot").check("[volume]")
    cable = REGISTRY.Quantity(1.0, "cables_length").to("meter").magnitude
    assert cable in (pytest.approx(219.4564, abs=5e-5), pytest.approx(219.456, abs=5e-10))  # 120 fathoms of either foot: ours is 185.2 m
    assert REGISTRY.Quantity(1.0, "nm").to("meter").magnitude == pytest.approx(1e-9)
    for unknown in ("cable", "shackle"):
        with pytest.raises(pint.UndefinedUnitError):
            REGISTRY.Quantity(1.0, unknown)


def test_unit_of_another_kind_is_refused() -> None:
    with pytest.raises(InputError):
        Quantity(value=1.0, unit="m", si=1.0, shown="1 m").to("kg")
