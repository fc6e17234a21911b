"""Questions at their extremes, for their pictures: shallow and deep, no chain and all chain, no room, a night of fixes."""

import math
from collections.abc import Iterator
from datetime import datetime, timedelta
from typing import Any

from anchorcalc import answer
from anchorcalc.answering.replies import Answer
from anchorcalc.catalogue import question
from anchorcalc.doors.pictures import PICTURES


def night(*, count: int, drift: float) -> list[dict[str, str]]:
    """Fixes of a night spent swinging to and fro, the circle growing by `drift` metres."""
    began, fixes = datetime(2026, 6, 1, 22), []
    for number in range(count):
        part = number / count
        bearing, off = 0.7 * math.sin(40.0 * part), (32.0 + 4.0 * math.sin(977.0 * part) + drift * part) / 111195.0
        at = (began + timedelta(seconds=30000.0 * part)).isoformat(timespec="minutes")
        place = f"{59.314 + off * math.cos(bearing):.6f} N, {18.912 + off * math.sin(bearing) / math.cos(1.0352):.6f} E"
        fixes.append({"at": at, "position": place})
    return fixes


_BOAT = {"boat_length": "9.5 m", "wind": "25 kn"}
_TIDE = {"low_height": "0.6 m", "low_at": "06:10", "high_height": "4.4 m"}
_WATCH = {"anchor_at": "59.314 N, 18.912 E", "rode_out": "30 m", "depth": "5 m", "boat_length": "9 m"}
_SWING = {"rode_out": "35 m", "depth": "5 m", "boat_length": "9 m"}
EXTREMES: dict[str, tuple[dict[str, Any], ...]] = {
    "rode_to_let_out": (
        {"depth": "1 m", "mark_interval": "1 m"},
        {"depth": "60 m", "scope": "3:1", "bow_height": "2 m", "tide_rise": "4 m", "chain": "400 m"},
        {"depth": "4 m", "tide_rise": "3 m", "chain": "10 m", "rode_aboard": "30 m", "mark_interval": "5 m", "marks_from": "chain_end"},
        {"depth": "0.3 m", "scope": "30:1"},
        {"depth": "8 m", "scope": "1.01:1"},
        {"depth": "3..4 m", "tide_rise": "1..2 m"},
    ),
    "scope_now": ({"rode_out": "5.3 m", "depth": "4 m", "tide_rise": "5 m"}, {"rode_out": "1000 m", "depth": "60 m"}),
    "deepest_anchorage": ({"rode_aboard": "8 m", "bow_height": "2 m"}, {"chain": "0 m", "line": "0 m"}, {"rode_aboard": "500 m", "scope": "3:1"}),
    "where_to_drop": ({"depth": "60 m", "rode_out": "62 m", "boat_length": "9 m"},),
    "line_angle": ({"scope": "1.2:1"}, {"angle": "2 deg"}, {"angle": "80 deg"}),
    "swing_radius": (
        {"rode_out": "5.3 m", "depth": "4 m", "boat_length": "12 m"},
        {"rode_out": "400 m", "depth": "60 m", "boat_length": "4 m"},
    ),
    "swing_clearance": (
        {**_SWING, "distance": "60 m", "other_rode_out": "50 m", "other_boat_length": "14 m", "margin": "5 m"},
        {**_SWING, "distance": "20 m"},
        {**_SWING, "distance": "20 m", "other_rode_out": "90 m", "other_boat_length": "20 m"},
        {**_SWING, "distance": "3000 m"},
    ),
    "rode_for_room": (
        {"distance": "8 m", "boat_length": "9 m", "depth": "5 m"},
        {"distance": "900 m", "boat_length": "6 m", "depth": "60 m", "margin": "50 m"},
        {"distance": "20 m", "boat_length": "9 m", "depth": "5 m", "margin": "30 m"},
    ),
    "time_to_let_go": (
        {"depth": "8 m", "distance_off": "30 m", "drift": "1 kn", "boat_length": "9 m", "rode_aboard": "80 m"},
        {"depth": "8 m", "distance_off": "3000 m", "drift": "3 kn", "boat_length": "9 m", "rode_aboard": "80 m"},
    ),
    "tide_at": (
        {"low_height": "0.6 m", "low_at": "18:10", "high_height": "3.4 m", "high_at": "12:25", "at": "12:30"},
        {
            "low_height": "-0.4 m",
            "low_at": "2026-06-01T22:10",
            "high_height": "9.4 m",
            "high_at": "2026-06-02T04:25",
            "at": "2026-06-02T04:20",
        },
        {"low_height": "0.5 m", "low_at": "00:10", "high_height": "0.5 m", "high_at": "06:10", "at": "03:10"},
    ),
    "when_to_veer": (
        {**_TIDE, "rode_out": "20 m", "depth": "4 m", "high_at": "12:25", "at": "07:00"},
        {**_TIDE, "rode_out": "90 m", "depth": "4 m", "high_at": "00:25", "at": "05:00"},
    ),
    "drag_check": (
        {**_WATCH, "fixes": night(count=480, drift=0.0)},
        {**_WATCH, "fixes": night(count=2880, drift=120.0)},
        {**_WATCH, "fixes": night(count=1, drift=0.0)},
        {**_WATCH, "fixes": night(count=40, drift=600.0)},
    ),
    "mark_to_stop_at": (
        {"mark_interval": "10 m", "rode_out": "4 m"},
        {"mark_interval": "1 mm", "rode_out": "900 m"},
        {"marks": "10,20,40 m", "rode_out": "55 m", "chain": "12 m"},
        {"mark_interval": "2 m", "rode_out": "151 m", "chain": "8 m", "marks_from": "chain_end"},
    ),
    "mark_plan": (
        {"rode_aboard": "300 m", "mark_interval": "5 m"},
        {"chain": "10 m", "line": "50 m", "marks": "10,20,40 m", "marks_from": "chain_end"},
    ),
    "bow_and_stern": (
        {"slope": "1:3", "boat_length": "8 m", "draught": "0.6 m", "scope": "5:1"},
        {"slope": "1:40", "boat_length": "8 m", "draught": "0.6 m", "scope": "5:1", "tide_rise": "4 m", "tide_fall": "1 m"},
        {"slope": "1:7", "boat_length": "8 m", "draught": "0.6 m", "scope": "5:1", "rode_aboard": "40 m"},
    ),
    "two_anchor_load": (
        {"load": "3 kN", "spread": "175 deg"},
        {"load": "3 kN", "spread": "40 deg", "wind_off": "60 deg"},
        {"load": "3 kN", "spread": "0 deg"},
    ),
    "true_depth": ({"reading": "60 m", "reads_from": "transducer", "transducer_depth": "0.4 m"}, {"reading": "5 m", "reads_from": "surface"}),
    "shallowest_anchorage": (
        {"draught": "1.6 m", "depth": "2 m", "tide_fall": "5 m"},
        {"draught": "0.4 m", "tide_fall": "10 m"},
        {"draught": "1.6 m", "depth": "20 m", "tide_fall": "0 m"},
    ),
    "pull_at_anchor": (
        {**_BOAT, "rode_out": "60 m", "depth": "6 m", "chain": "60 m"},
        {"load": "20 kN", "rode_out": "10 m", "depth": "8 m", "line_size": "12 mm"},
        {**_BOAT, "rode_out": "200 m", "depth": "60 m", "chain": "50 m", "tide_rise": "5 m"},
    ),
    "rode_for_flat_pull": ({**_BOAT, "depth": "6 m", "line_material": "polypropylene", "chain": "2 m"}, {**_BOAT, "depth": "1 m", "chain": "200 m"}),
    "holding": (
        {"anchor_kind": "plough", "anchor_mass": "16 kg", "bottom": "rock"},
        {"anchor_kind": "plough", "anchor_mass": "16 kg", "bottom": "rock", **_BOAT},
    ),
    "anchor_size": ({**_BOAT, "anchor_kind": "plough", "bottom": "coral"},),
}


def pictured() -> Iterator[Answer]:
    """Every question that has a picture, in its examples and at its extremes."""
    for name in PICTURES:
        for inputs in (*question(name).examples, *EXTREMES.get(name, ())):
            yield answer(name, **inputs)
