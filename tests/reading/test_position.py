"""Positions in every writing, and fixes."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from anchorcalc.units.position import Position, fixes, position, position_text
from anchorcalc.units.written import Unread

HERE = ["59.314 N, 18.912 E", "59.314, 18.912", "59.314,18.912", "59.314 18.912", "59.314N 18.912E", "59 18.84 N 18 54.72 E",
    "59°18.84'N 018°54.72'E", "59° 18.84′ N, 018° 54.72′ E",
        "N59°18.84' E018°54.72'", "N 59 18.84, E 18 54.72", "59°18'50.4\"N 18°54'43.2\"E", "59° 18′ 50.4″ N, 18° 54′ 43.2″ E",
        "59-18.84N 018-54.72E", "59,314 N, 18,912 E",
        "59°18,84'N 018°54,72'E", "18.912 E, 59.314 N", "59.314 north, 18.912 east", "lat 59.314 lon 18.912", "(59.314, 18.912)",
        "59.314; 18.912", "59.314°, 18.912°"]  # fmt: skip


@pytest.mark.parametrize("text", HERE)
def test_every_writing_gives_the_same_place(text: str) -> None:
    read = position(text)
    assert isinstance(read, Position)
    assert read == pytest.approx((59.314, 18.912), abs=1e-9)


@pytest.mark.parametrize(
    ("text", "place"),
    [("-33.86, 151.2", (-33.86, 151.2)), ("33.86 S, 151.2 W", (-33.86, -151.2)), ("0 N, 0 E", (0, 0)), ("90 N, 180 E", (90, 180)),
    ("0°30'S 0°30'W", (-0.5, -0.5)),
     ("10°30.250' N 150°15.500' W", (10.5041666667, -150.2583333333))],
)  # fmt: skip
def test_south_and_west_are_negative(text: str, place: tuple[float, float]) -> None:
    assert position(text) == pytest.approx(place, abs=1e-9)


@pytest.mark.parametrize(
    ("text", "code"),
    [("91 N, 3 E", "out_of_bounds"), ("59 N, 181 E", "out_of_bounds"), ("59 61 N 18 4 E", "out_of_bounds"), ("-91, 0", "out_of_bounds"),
    ("", "unreadable"), ("hello", "unreadable"),
     ("59.3", "unreadable"), ("59.3 N", "unreadable"), ("59 N, 18 N", "unreadable"), ("-59 N, 18 E", "unreadable"), ("1,2,3", "unreadable"),
     ("x" * 500, "unreadable"),
     ("nan, 3", "unreadable"), ("59 18.84 18 54.72", "unreadable")],
)  # fmt: skip
def test_what_is_no_position_is_refused(text: str, code: str) -> None:
    read = position(text)
    assert isinstance(read, Unread)
    assert read.code == code


@settings(max_examples=300, deadline=None)
@given(st.floats(-90, 90), st.floats(-180, 180))
def test_position_comes_back_from_its_text(latitude: float, longitude: float) -> None:
    read = position(position_text(Position(latitude, longitude)))
    assert read == pytest.approx((latitude, longitude), abs=5.01e-7)  # six decimals are written


def test_fixes_are_times_and_places() -> None:
    read = fixes("06:10 59.314 N, 18.912 E; 0620 59°18.90'N 018°54.72'E;")
    assert not isinstance(read, Unread)
    assert [(one.at.seconds, one.at_text) for one in read] == [(22200.0, "06:10"), (22800.0, "0620")]
    assert read[1].position == pytest.approx((59.315, 18.912), abs=1e-9)


def test_plus_lost_in_a_query_is_put_back() -> None:
    read = fixes("2026-06-01T14:20 02:00 59.314 N, 18.912 E")
    assert not isinstance(read, Unread)
    assert (read[0].at.zone, read[0].position) == ("+02:00", (59.314, 18.912))


@pytest.mark.parametrize("text", ["", ";", "59.314 N, 18.912 E", "06:10", "06:10 nowhere", "25:10 59.3 N, 18.9 E", "06:10 91 N, 18.9 E"])
def test_what_are_no_fixes_is_refused(text: str) -> None:
    assert isinstance(fixes(text), Unread)


@settings(max_examples=300, deadline=None)
@given(st.text(max_size=60) | st.text(alphabet="0123456789 .,;-NSEW°'\"", max_size=40))
def test_any_text_is_a_position_within_bounds_or_is_refused(text: str) -> None:
    read = position(text)
    assert isinstance(read, Position | Unread)
    if isinstance(read, Position):
        assert abs(read.latitude) <= 90
        assert abs(read.longitude) <= 180
    assert isinstance(fixes(text), tuple)
