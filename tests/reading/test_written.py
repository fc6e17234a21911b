"""Whole texts that are one quantity, as typed calls give them."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from anchorcalc.errors import CODES
from anchorcalc.units.kinds import UNITS, Amount
from anchorcalc.units.written import Unread, amount, lengths

KNOT = 1852 / 3600
ONE = [
    ("12 ft", "length", 12 * 0.3048), ("12ft", "length", 12 * 0.3048), ("3.6 m", "length", 3.6), ("1 1/2 fathoms", "length", 1.5 * 1.8288),
    ("½ cable", "length", 92.6),
    ("1½ m", "length", 1.5), ("5 ft 6 in", "length", 66 * 0.0254), ("5'6\"", "length", 66 * 0.0254), ("5′ 6″", "length", 66 * 0.0254),
    ("5 ft 6", "length", 66 * 0.0254),
    ("5'", "length", 5 * 0.3048), ("4,5 m", "length", 4.5), ("1,200 ft", "length", 1200 * 0.3048), ("1.200 m", "length", 1.2),
    ("1 200 m", "length", 1200.0),
    ("1,200.5 ft", "length", 1200.5 * 0.3048), ("1.200,5 m", "length", 1200.5), ("1e3 m", "length", 1000.0), ("1e-3 m", "length", 0.001),
    ("-3 m", "length", -3.0),
    ("−3 m", "length", -3.0), ("+3 m", "length", 3.0), ("１２ ft", "length", 12 * 0.3048), ("12\u202fft", "length", 12 * 0.3048),
    ("12\xa0ft", "length", 12 * 0.3048),
    ("3/8 in", "length", 0.375 * 0.0254), ("1-1/2 in", "length", 1.5 * 0.0254), ("12 FT", "length", 12 * 0.3048), ("12 ft.", "length", 12 * 0.3048),
    ("2 nautical miles", "length", 3704.0), ("2 fathoms 3 ft", "length", 15 * 0.3048), (" 12  ft ", "length", 12 * 0.3048),
    ("30 kn", "speed", 30 * KNOT),
    ("30 kN", "force", 30e3), ("12 m/s", "speed", 12.0), ("20 km/h", "speed", 20 / 3.6), ("10 deg", "angle", math.radians(10)),
    ("10°", "angle", math.radians(10)),
    ("5 deg 30 min", "angle", math.radians(5.5)), ("5°30'", "angle", math.radians(5.5)), ("1 h 30 min", "time", 5400.0),
    ("15 kg", "mass", 15.0), ("5 t", "mass", 5000.0),
    ("33 lbs", "mass", 33 * 0.45359237), ("40 hp", "power", 40 * 745.69987158227022), ("7", "number", 7.0), ("-0.5", "number", -0.5),
    ("½", "number", 0.5),
    ("six feet", "length", 6 * 0.3048), ("half a cable", "length", 92.6), ("two and a half fathoms", "length", 2.5 * 1.8288),
    ("1 in 20", "ratio", 0.05), ("7:1", "ratio", 7.0), ("7 to 1", "ratio", 7.0), ("1:20", "ratio", 0.05), ("5 : 1", "ratio", 5.0),
    ("5：1", "ratio", 5.0),
]  # fmt: skip


@pytest.mark.parametrize(("text", "kind", "si"), ONE, ids=[one[0] for one in ONE])
def test_text_is_one_quantity(text: str, kind: str, si: float) -> None:
    read = amount(text)
    assert isinstance(read, Amount)
    assert (read.kind, read.is_range) == (kind, False)
    assert read.low == pytest.approx(si, rel=1e-12)


RANGES = [
    ("3..4 m", "length", 3.0, 4.0), ("3 m..4 m", "length", 3.0, 4.0), ("3-4 m", "length", 3.0, 4.0), ("3 – 4 m", "length", 3.0, 4.0),
    ("3 to 4 m", "length", 3.0, 4.0),
    ("3…4 m", "length", 3.0, 4.0), ("-5..-3 m", "length", -5.0, -3.0), ("2 1/2..3 m", "length", 2.5, 3.0), ("10 ft..4 m", "length", 3.048, 4.0),
    ("5..6", "number", 5.0, 6.0),
    ("3:1..5:1", "ratio", 3.0, 5.0), ("3..5:1", "ratio", 3.0, 5.0), ("20..25 kn", "speed", 20 * KNOT, 25 * KNOT),
]  # fmt: skip


@pytest.mark.parametrize(("text", "kind", "low", "high"), RANGES, ids=[one[0] for one in RANGES])
def test_text_is_a_range(text: str, kind: str, low: float, high: float) -> None:
    read = amount(text)
    assert isinstance(read, Amount)
    assert read.kind == kind
    assert (read.low, read.high) == pytest.approx((low, high), rel=1e-12)


@pytest.mark.parametrize("text", ["F6", "f6", "force 6", "Force 6", "Bft 6", "Beaufort 6", "6 Bft", "F 6"])
def test_wind_force_is_the_range_of_the_scale(text: str) -> None:
    read = amount(text)
    assert isinstance(read, Amount)
    assert (read.kind, read.unit, read.value, read.value_high, read.beaufort) == ("speed", "kn", 22, 27, True)


REFUSED = [
    ("nan", "not_finite"), ("NaN m", "not_finite"), ("inf", "not_finite"), ("-inf ft", "not_finite"), ("infinity", "not_finite"),
    ("∞ m", "not_finite"), ("1e999 m", "not_finite"),
    ("F12", "out_of_bounds"), ("F13", "out_of_bounds"), ("F5-12", "out_of_bounds"), ("12 blub", "unknown_unit"), ("12 fathms", "unknown_unit"),
    ("8 tons", "unknown_unit"),
    ("8 ton", "unknown_unit"), ("30 KN", "unknown_unit"), ("10 mm chain", "unreadable"), ("3 m deep", "unreadable"), ("3 m 4 m", "unreadable"),
    ("4..3 m", "unreadable"),
    ("F7-5", "unreadable"), ("", "unreadable"), ("   ", "unreadable"), ("deep", "unreadable"), ("9**9", "unreadable"), ("1/0 m", "unreadable"),
    ("1_000 m", "unreadable"),
    ("3..4 kg m", "unreadable"), ("3 m..4 kg", "unreadable"), ("5 to 3 to 4 m", "unreadable"), ("1:2:3", "unreadable"), ("7:3", "unreadable"),
    ("7 in 1", "unreadable"), ("a couple of metres", "unreadable"), ("six of the best", "unknown_unit"),
    ("0:1", "unreadable"),
    ("12 " + "m" * 200, "unreadable"), ("__import__('os')", "unreadable"), ("10,20,40 m", "unreadable"), ("0x10 m", "unreadable"),
    ("ft", "unreadable"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "code"), REFUSED, ids=[one[0][:20] for one in REFUSED])
def test_text_is_refused_with_what_would_do(text: str, code: str) -> None:
    read = amount(text)
    assert isinstance(read, Unread)
    assert read.would_do
    assert (read.code, read.code in CODES) == (code, True)


def test_unknown_unit_names_the_nearest() -> None:
    read = amount("12 fathms")
    assert isinstance(read, Unread)
    assert "fathom" in read.would_do


def test_wanted_kind_decides_where_letter_case_does_not() -> None:
    assert getattr(amount("30 KN", kind="speed"), "unit", None) == "kn"
    assert getattr(amount("30 KN", kind="force"), "unit", None) == "kN"
    assert getattr(amount("30 kN", kind="speed"), "unit", None) == "kN"  # written as kilonewtons, whatever is wanted


def test_number_as_written_stands_beside_si() -> None:
    assert amount("1,200 ft") == Amount("length", 1200 * 0.3048, 1200 * 0.3048, "ft", 1200.0, 1200.0)


@pytest.mark.parametrize("unit", UNITS, ids=[unit.symbol for unit in UNITS])
def test_every_spelling_of_a_unit_reads_back_as_that_unit(unit: object) -> None:
    for spelling in (unit.symbol, *unit.spellings):  # type: ignore[attr-defined]
        read = amount(f"3 {spelling}", kind=unit.kind)  # type: ignore[attr-defined]
        assert isinstance(read, Amount), spelling
        assert read.unit == unit.symbol  # type: ignore[attr-defined]


LISTS = [
    ("10,20,40 m", [10.0, 20.0, 40.0]), ("10 m; 20 m", [10.0, 20.0]), ("10, 20 and 40 m", [10.0, 20.0, 40.0]), ("10 m, 20 m", [10.0, 20.0]),
    ("10,20 m", [10.0, 20.0]),
    ("4,5 m; 9 m", [4.5, 9.0]), ("10 m", [10.0]), ("10 m and 20 m", [10.0, 20.0]), ("100,200,300 m", [100.0, 200.0, 300.0]),
    ("10;20;40 m", [10.0, 20.0, 40.0]),
    ("2 m, 10 ft", [2.0, 3.048]),
]  # fmt: skip


@pytest.mark.parametrize(("text", "si"), LISTS, ids=[one[0] for one in LISTS])
def test_list_shares_the_unit_behind(text: str, si: list[float]) -> None:
    read = lengths(text)
    assert not isinstance(read, Unread)
    assert [one.low for one in read] == pytest.approx(si, rel=1e-12)


@pytest.mark.parametrize("text", ["", ";", "1,200 ft", "10, blub m", "10..20 m, 30 m", "nan, 3 m", "10 m x 20 m"])
def test_list_is_refused(text: str) -> None:
    read = lengths(text)
    assert isinstance(read, Unread)
    assert read.code in CODES


def test_list_without_a_unit_is_bare_numbers() -> None:
    read = lengths("10,20,40")
    assert [getattr(one, "kind", None) for one in read] == ["number"] * 3


@settings(max_examples=400, deadline=None)
@given(st.text(max_size=60) | st.text(alphabet="0123456789 .,/-+:;'\"°½mftinkKN⅛e–…", max_size=20))
def test_any_text_is_an_amount_or_is_refused(text: str) -> None:
    for read in (amount(text), amount(text, kind="speed")):
        assert isinstance(read, Amount | Unread)
        if isinstance(read, Amount):
            assert math.isfinite(read.low)
            assert math.isfinite(read.high)
            assert read.low <= read.high
    assert isinstance(lengths(text), tuple)
