"""Times that are no tide and no track are refused, and a fix outside the circle is not passed over."""

from typing import Any

import pytest

import anchorcalc

HEIGHTS = {"low_height": "0.6 m", "high_height": "3.4 m"}
LYING: dict[str, Any] = {"anchor_at": "59.314 N, 18.912 E", "rode_out": "30 m", "depth": "5 m", "boat_length": "9 m"}


def codes_of(question: str, inputs: dict[str, Any]) -> list[tuple[str, str]]:
    with pytest.raises(anchorcalc.AnchorcalcError) as caught:
        anchorcalc.answer(question, **inputs)
    return [(fault.input, fault.code) for fault in caught.value.faults]


@pytest.mark.parametrize(("low_at", "high_at"), [("06:10", "16:10"), ("06:10", "18:00"), ("18:00", "06:10"), ("16:10", "06:10"), ("06:10", "18:10")])
def test_plain_times_ten_hours_apart_or_more_are_no_pair(low_at: str, high_at: str) -> None:
    assert codes_of("tide_at", {"low_at": low_at, "high_at": high_at, "at": "09:00", **HEIGHTS}) == [("low_at", "contradiction")]


def test_waters_days_apart_are_no_pair() -> None:
    times = {"low_at": "2026-06-01T06:10Z", "high_at": "2026-06-03T12:25Z", "at": "2026-06-02T11:30Z"}
    assert codes_of("tide_at", {**times, **HEIGHTS}) == [("low_at", "contradiction")]


def test_fixes_at_plain_and_at_dated_times_do_not_mix() -> None:
    mixed = "14:00 59.3142 N 18.9120 E; 2026-06-01T14:10 59.3143 N 18.9123 E"
    assert codes_of("drag_check", {"fixes": mixed, **LYING}) == [("fixes", "clock_mixed")]


def test_one_fix_far_outside_the_circle_is_said_in_the_headline() -> None:
    answer = anchorcalc.answer("drag_check", fixes="14:00 59.3160 N 18.9120 E", **LYING)  # 0.002 degrees of latitude: 223 m
    assert answer.results.dragging is False
    assert answer.headline.startswith("No sign of dragging, but 1 of 1 fix outside the watch circle of 48 m, the farthest 223 m")
