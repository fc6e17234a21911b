"""Questions of force reckoned apart from the code: by hand from the formulas, in plain arithmetic, with the published rows written out again.

Rows: ABYC H-40 Table 1 (reproduction, some memory), the code for small commercial vessels, Annex 7 (read), tables headed ISO 4565 / DIN 766 and
49 CFR 393.108, Cordage Institute nylon (reproductions), D. Casey's shares by scope (reproduction), UFC 4-159-03 for the stream (read).
What is an own estimate of this library (areas, usual beam, bands of other kinds) is written as its sources say it.
"""

from collections.abc import Sequence
from math import asin, asinh, atan, degrees, hypot, log10, pi, radians, sin, sqrt
from typing import Any

import pytest

import anchorcalc

FT, IN, KN, LBF, LB, G = 0.3048, 0.0254, 1852 / 3600, 4.4482216152605, 0.45359237, 9.80665
IN_WATER = 1 - 1025 / 7850  # steel in the sea
Case = tuple[str, dict[str, Any], dict[str, Any]]


def stream(*, length: float, beam: float, draught: float, speed: float) -> float:
    """Drag of a stream: form, friction on the wetted hull, and a locked screw."""
    pressure = 0.5 * 1025 * speed**2
    hull = 1.7 * draught * length + 0.4 * length * beam
    friction = 0.075 / (log10(speed * length / 1.19e-6) - 2) ** 2
    return pressure * (0.1 * beam * draught + hull * friction + 0.5 * pi / 4 * (0.04 * length) ** 2)


def usual_beam(length: float) -> float:
    """Beam of a boat with one hull: length^(2/3) + 1, in feet."""
    return (float((length / FT) ** (2 / 3)) + 1) * FT


def steady(*, length: float, beam: float, wind: float, share: float = 0.3, coefficient: float = 0.9) -> float:
    """Drag of the wind alone."""
    return 0.5 * 1.225 * wind**2 * share * length * beam * coefficient


LOADS: list[Case] = [
    # 9.5 m is 31.2 ft: the row of 35 ft
    ("wind_load", {"boat_length": "9.5 m", "wind": "20 kn"},
     {"load_standard": 900 * LBF * 4 / 9, "load_steady": steady(length=9.5, beam=usual_beam(9.5), wind=20 * KN)}),
    # 3.5 m is 11.5 ft: of a sailing boat beyond the row of 40 ft, of a motor boat within that of 35
    ("wind_load", {"boat_length": "9.5 m", "wind": "F6", "beam": "3.5 m", "boat_form": "sail"},
     {"load_standard": 1600 * LBF * (27 / 30) ** 2, "load_steady": steady(length=9.5, beam=3.5, wind=27 * KN, share=0.25, coefficient=0.7)}),
    ("wind_load", {"boat_length": "9.5 m", "wind": "30 kn", "beam": "3.5 m"}, {"load_standard": 900 * LBF}),
    ("wind_load", {"boat_length": "70 ft", "wind": "15..30 kn"}, {"load_standard": 2000 * LBF * (70 / 60) ** 2}),
    ("wind_load", {"boat_length": "2.5 m", "wind": "30 kn"}, {"load_standard": 160 * LBF}),
    ("wind_load", {"boat_length": "12 m", "wind": "30 kn", "boat_form": "multihull"},
     {"load_standard": 2000 * LBF * 0.55 * 12 / (15 * FT), "load_steady": steady(length=12, beam=6.6, wind=30 * KN, share=0.25)}),
    ("wind_load", {"boat_length": "10 m", "wind": "10 m/s", "beam": "3.2 m", "draught": "1.5 m", "current": "2 kn"},
     {"load_standard": 900 * LBF * (10 / (30 * KN)) ** 2 + stream(length=10, beam=3.2, draught=1.5, speed=2 * KN),
      "load_steady": steady(length=10, beam=3.2, wind=10) + stream(length=10, beam=3.2, draught=1.5, speed=2 * KN)}),
    # nothing but the stream: usual beam, a tenth of the length for draught; of a sailing boat 0.18
    ("wind_load", {"boat_length": "8 m", "wind": "0 kn", "current": "1 m/s"},
     {"load_standard": stream(length=8, beam=usual_beam(8), draught=0.8, speed=1),
     "load_steady": stream(length=8, beam=usual_beam(8), draught=0.8, speed=1)}),
    ("wind_load", {"boat_length": "8 m", "wind": "0 kn", "current": "1 m/s", "boat_form": "sail"},
     {"load_steady": stream(length=8, beam=usual_beam(8), draught=1.44, speed=1)}),
    ("setting_pull", {"boat_length": "30 ft", "engine_power": "30 hp"}, {"pull": 300 * LBF, "wind_equivalent": 30 * KN * sqrt(300 / 700)}),
    ("setting_pull", {"boat_length": "38 ft", "engine_power": "20..40 kW", "boat_form": "sail"},
     {"pull": 10 * 20e3 / 745.69987158227022 * LBF, "wind_equivalent": 30 * KN * sqrt(10 * 20e3 / 745.69987158227022 / 1200)}),
    ("setting_pull", {"boat_length": "30 ft", "pull": "1 kN", "engine_power": "30 hp"}, {"pull": 1000.0}),
    # a small screw gives less than 20 lbf a horsepower: 62.72·(60·10/12)^0.67, halved
    ("setting_pull", {"boat_length": "30 ft", "engine_power": "60 hp", "propeller_diameter": "10 in"}, {"pull": 62.72 * 50**0.67 / 2 * LBF}),
    # the triangle of forces: sin(half ± off) / sin(whole)
    ("two_anchor_load", {"load": "3 kN", "spread": "60 deg"}, {"load_each": (3000 / sqrt(3), 3000 / sqrt(3)), "slack": False}),
    ("two_anchor_load", {"boat_length": "30 ft", "wind": "30 kn", "spread": "90 deg", "wind_off": "20 deg"},
     {"load_each": (700 * LBF * sin(radians(65)), 700 * LBF * sin(radians(25))), "slack": False}),
    ("two_anchor_load", {"load": "3 kN", "spread": "60 deg", "wind_off": "30 deg"}, {"load_each": (3000.0, 0.0), "slack": True}),
    ("two_anchor_load", {"load": "3 kN", "spread": "60 deg", "wind_off": "100 deg"}, {"load_each": (3000.0, 0.0), "slack": True}),
    ("two_anchor_load", {"load": "1..3 kN", "spread": "170 deg"}, {"load_each": (1500 / sin(radians(5)),) * 2, "slack": False}),
    ("two_anchor_load", {"load": "3 kN", "spread": "170.1 deg", "wind_off": "20 deg"}, {"load_each": (3000.0, 3000.0), "slack": False}),
    ("two_anchor_load", {"load": "3 kN", "spread": "0 deg"}, {"load_each": (1500.0, 1500.0), "slack": False}),
]  # fmt: skip

# --- rodes --------------------------------------------------------------------------------------------------------------------------

CHAIN_8 = 1.4 * G * IN_WATER  # N/m; the lightest table, which lifts first
NYLON_HALF_INCH = 6.5 * LB / (100 * FT) * G * (1 - 1025 / 1140)


def hung(*, load: float, height: float, parts: Sequence[tuple[float, float]]) -> dict[str, float]:
    """A rode that hangs clear of the bottom, its parts (length, weight of a metre) from the anchor up: halving finds the pull up at the anchor."""

    def up(pull: float) -> tuple[float, float, float]:
        rise = reach = 0.0
        for length, weight in parts:
            above = pull + weight * length
            rise += (hypot(load, above) - hypot(load, pull)) / weight
            reach += load / weight * (asinh(above / load) - asinh(pull / load))
            pull = above
        return rise, reach, pull

    low, high = 0.0, 100 * load
    for _ in range(200):
        middle = (low + high) / 2
        low, high = (middle, high) if up(middle)[0] < height else (low, middle)
    _, reach, at_bow = up(low)
    return {"pull_angle": atan(low / load), "bow_tension": hypot(load, at_bow), "reach": reach, "chain_lying": 0.0}


def flat(*, load: float, height: float, weight: float) -> float:
    """Chain that just pulls flat."""
    return sqrt(height**2 + 2 * height * load / weight)


def flat_with_line(*, load: float, height: float, chain: float, weight: float, line_weight: float) -> float:
    """Rode that just pulls flat, line above the chain: what it weighs on the way up is what it pulls harder."""
    of_chain = (hypot(load, weight * chain) - load) / weight
    at_bow = load + weight * of_chain + line_weight * (height - of_chain)
    return chain + (sqrt(at_bow**2 - load**2) - weight * chain) / line_weight


ALL_CHAIN = {"chain": "60 m", "chain_size": "8 mm", "rode_out": "60 m", "depth": "5 m", "bow_height": "1 m"}
MIXED = {"rode_out": "40 m", "chain": "10 m", "chain_size": "8 mm", "line_size": "1/2 in", "depth": "6 m", "bow_height": "1 m"}
RODES: list[Case] = [
    ("pull_at_anchor", {**ALL_CHAIN, "load": "500 N", "tide_rise": "1 m"},
     {"pull_angle": 0.0, "chain_lying": 60 - flat(load=500, height=7, weight=CHAIN_8), "bow_tension": 500 + CHAIN_8 * 7,
      "reach": 60 - flat(load=500, height=7, weight=CHAIN_8) + 500 / CHAIN_8 * asinh(flat(load=500, height=7, weight=CHAIN_8) * CHAIN_8 / 500)}),
    ("pull_at_anchor", {**ALL_CHAIN, "load": "6 kN"}, hung(load=6000, height=6, parts=[(60, CHAIN_8)])),
    # chain longer than what is out: all of it is chain
    ("pull_at_anchor", {**ALL_CHAIN, "rode_out": "25 m", "load": "2 kN"}, hung(load=2000, height=6, parts=[(25, CHAIN_8)])),
    ("pull_at_anchor", {**MIXED, "load": "2 kN"}, hung(load=2000, height=7, parts=[(10, CHAIN_8), (30, NYLON_HALF_INCH)])),
    ("pull_at_anchor", {**MIXED, "load": "1..3 kN", "tide_rise": "0..2 m"},
     {name: hung(load=3000, height=9, parts=[(10, CHAIN_8), (30, NYLON_HALF_INCH)])[name] for name in ("pull_angle", "bow_tension")}),
    # neither chain nor its size: line alone
    ("pull_at_anchor", {"rode_out": "40 m", "line_size": "1/2 in", "depth": "6 m", "bow_height": "1 m", "load": "2 kN"},
     hung(load=2000, height=7, parts=[(40, NYLON_HALF_INCH)])),
    ("rode_for_flat_pull", {"depth": "6 m", "bow_height": "1 m", "load": "1 kN", "chain": "80 m", "chain_size": "8 mm", "tide_rise": "2 m"},
     {"rode_out": flat(load=1000, height=9, weight=CHAIN_8), "rode_of_chain": flat(load=1000, height=9, weight=CHAIN_8), "rode_by_rule": 63.0,
      "possible": True}),
    ("rode_for_flat_pull", {"depth": "6 m", "bow_height": "1 m", "load": "1 kN", "chain": "20 m", "chain_size": "8 mm", "line_size": "1/2 in",
     "scope": 5},
     {"rode_out": flat_with_line(load=1000, height=7, chain=20, weight=CHAIN_8, line_weight=NYLON_HALF_INCH), "rode_by_rule": 35.0,
     "possible": True}),
    ("rode_for_flat_pull", {"depth": "6 m", "bow_height": "1 m", "load": "500..1500 N", "chain": "10 m", "chain_size": "8 mm", "line_size": "1/2 in"},
     {"rode_out": flat_with_line(load=1500, height=7, chain=10, weight=CHAIN_8, line_weight=NYLON_HALF_INCH)}),
    ("rode_for_flat_pull", {"depth": "6 m", "load": "2 kN", "chain": "2 m", "chain_size": "8 mm", "line_size": "12 mm",
     "line_material": "polypropylene"},
     {"rode_out": None, "possible": False}),
    # 1.45 kg/m, the heaviest table: what must be hauled; 9 m of it in water and 1.2 m in air
    ("weigh_anchor", {"depth": "9 m", "anchor_mass": "16 kg", "chain": "40 m", "chain_size": "8 mm"},
     {"hanging_load": (16 + 9 * 1.45) * G * IN_WATER + 1.2 * 1.45 * G, "by_hand": False,
      "windlass_pull": 1.5 / 0.7 * max((16 + 9 * 1.45) * G * IN_WATER + 1.2 * 1.45 * G, 0.7 * 37.5 * 64)}),
    # the chain ends under water: line above it, wet and dry; and the boat to be brought up in 20 kn
    ("weigh_anchor", {"depth": "9 m", "anchor_mass": "10 kg", "chain": "4 m", "chain_size": "8 mm", "line_size": "1/2 in", "boat_length": "9.5 m",
                      "wind": "20 kn", "bow_height": "1 m"},
     {"hanging_load": (10 + 4 * 1.45) * G * IN_WATER + 5 * NYLON_HALF_INCH + 6.5 * LB / (100 * FT) * G,
      "hauling_load": steady(length=9.5, beam=usual_beam(9.5), wind=20 * KN)
      + 4 * 1.45 * G * IN_WATER + 5 * NYLON_HALF_INCH + 6.5 * LB / (100 * FT) * G,
      "by_hand": False}),
    # the chain ends between water and roller; the rule by the chain is the greater there
    ("weigh_anchor", {"depth": "3 m", "anchor_mass": "5 kg", "chain": "3.5 m", "chain_size": "8 mm", "bow_height": "1 m"},
     {"hanging_load": (5 + 3 * 1.45) * G * IN_WATER + 0.5 * 1.45 * G, "windlass_pull": 1.5 * 37.5 * 64, "by_hand": True}),
    ("weigh_anchor", {"depth": "20 ft", "anchor_mass": "22 lb", "boat_length": "20 ft", "wind": "0 kn", "bow_height": "0 m", "current": "1 m/s",
                      "line_size": "1/2 in"},
     {"hanging_load": 22 * LB * G * IN_WATER + 20 * FT * NYLON_HALF_INCH,
      "hauling_load": 20 * FT * NYLON_HALF_INCH + stream(length=20 * FT, beam=usual_beam(20 * FT), draught=2 * FT, speed=1)}),
]  # fmt: skip

# --- anchors and strength -----------------------------------------------------------------------------------------------------------

EDGE = 100 * LB  # the lightest anchor that was tested; below it the least goes with the mass, the most with its power
AT_7 = 0.91
ANCHORS: list[Case] = [
    ("holding", {"anchor_kind": "plough", "anchor_mass": "16 kg", "bottom": "mud", "boat_length": "9.5 m", "wind": "25 kn"},
     {"holding_low": 10 / 3 * 16 * G * AT_7, "holding_high": 70 / 3 * EDGE * (16 / EDGE) ** 0.92 * G * AT_7,
      "hold_margin": 10 / 3 * 16 * G * AT_7 / (900 * LBF * 25**2 / 900), "drags_at_wind": 30 * KN * sqrt(10 / 3 * 16 * G * AT_7 / (900 * LBF))}),
    ("holding", {"anchor_kind": "claw", "anchor_mass": "200 lb", "bottom": "sand", "scope": 5, "load": "2 kN"},
     {"holding_low": 8 * EDGE * 2**0.8 * G * 0.77, "holding_high": 25 * EDGE * 2**0.8 * G * 0.77,
      "hold_margin": 8 * EDGE * 2**0.8 * G * 0.77 / 2000, "drags_at_wind": None}),
    # 40 degrees: between 0.35 at 30 and nothing where the fall from scope 3 to 2 ends
    ("holding", {"anchor_kind": "scoop", "anchor_mass": "10 kg", "bottom": "clay", "pull_angle": "40 deg"},
     {"holding_low": 5 * 10 * G * 0.35 * (1 - 10 / (0.35 * (30 - degrees(asin(1 / 3))) / 0.18))}),
    ("holding", {"anchor_kind": "mushroom", "anchor_mass": "10 kg", "bottom": "gravel", "pull_angle": "60 deg"},
     {"holding_low": 0.0, "holding_high": 0.0}),
    ("holding", {"anchor_kind": "grapnel", "anchor_mass": "5 kg", "bottom": "coral", "load": "1 kN"},
     {"holding_low": None, "hold_margin": None, "figure": False}),
    # the stream takes its part of what the anchor holds
    ("holding", {"anchor_kind": "claw", "anchor_mass": "20 kg", "bottom": "sand", "pull_angle": "0 deg", "boat_length": "30 ft",
     "current": "1 m/s", "wind": "10 kn"},
     {"drags_at_wind": 30 * KN * sqrt((8 * 20 * G - stream(length=30 * FT, beam=usual_beam(30 * FT), draught=3 * FT, speed=1)) / (700 * LBF))}),
    ("anchor_size", {"boat_length": "8 m", "wind": "25 kn", "anchor_kind": "scoop", "bottom": "sand"},
     {"mass_by_table": 10.0, "mass_by_holding": 700 * LBF * (25 / 30) ** 2 / (15 * G * AT_7),
     "anchor_mass": 700 * LBF * (25 / 30) ** 2 / (15 * G * AT_7)}),
    ("anchor_size", {"boat_length": "16.1 m", "load": "500 N", "anchor_kind": "grapnel", "bottom": "sand", "scope": 4},
     {"mass_by_table": 34 * 1.33, "mass_by_holding": 500 / (2 * G * 0.67), "anchor_mass": 34 * 1.33}),
    ("anchor_size", {"boat_length": "30 m", "load": "40 kN", "anchor_kind": "plough", "bottom": "sand", "scope": 10},
     {"mass_by_table": 68 * (30 / 24) ** 2.5, "mass_by_holding": EDGE * (40e3 / (10 * EDGE * G)) ** (1 / 0.8), "possible": True}),
    ("anchor_size", {"boat_length": "8 m", "load": "2 kN", "anchor_kind": "plough", "bottom": "sand", "scope": 1.2},
     {"anchor_mass": None, "mass_by_holding": None, "mass_by_table": 10.0, "possible": False, "figure": True}),
    ("chain_and_line", {"load": "2 kN", "chain_size": "10 mm", "chain_grade": "G40", "line_size": "5/8 in", "line_material": "polyester",
     "shackle_size": "1/2 in"},
     {"weakest": "line", "strength_ratio": 935 * 0.85 * LBF / 2000, "passes": True}),
    ("chain_and_line", {"load": "8 kN", "chain_size": "8 mm"}, {"weakest": "chain", "strength_ratio": 7500 / 8000, "passes": False}),
    ("chain_and_line", {"load": "1500 lbf", "chain_size": "5/16 in", "shackle_size": "3/8 in"},
     {"weakest": "shackle", "strength_ratio": 3 * 2000 * 0.375**2 / 1500, "passes": False}),
    # just strong enough, and a range of loads that is not
    ("chain_and_line", {"load": "1900 lbf", "chain_size": "5/16 in"}, {"strength_ratio": 1.0, "passes": True}),
    ("chain_and_line", {"load": "1000..2000 lbf", "chain_size": "5/16 in"}, {"strength_ratio": 0.95, "passes": False}),
    ("tackle_check", {"boat_length": "9.5 m", "wind": "25 kn", "depth": "10 m", "scope": 5},
     {"load_standard": 900 * LBF * (25 / 30) ** 2, "anchor_mass_asked": 13.0, "chain_asked": 9.5, "chain_size_asked": 0.008, "line_size_asked": 0.012,
      "rode_asked": 56.0}),
    ("tackle_check", {"boat_length": "18.1 m", "anchor_kind": "fisherman"},
     {"anchor_mass_asked": 42 * 1.33, "chain_size_asked": 0.012, "line_size_asked": 0.014, "load_standard": None, "rode_asked": None}),
    ("tackle_check", {"boat_length": "40 ft", "beam": "14.5 ft", "wind": "30 kn", "current": "1 m/s"},
     {"load_standard": 1600 * LBF + stream(length=40 * FT, beam=14.5 * FT, draught=4 * FT, speed=1)}),
]  # fmt: skip


@pytest.mark.parametrize(("question", "inputs", "sums"), [*LOADS, *RODES, *ANCHORS], ids=lambda one: one if isinstance(one, str) else "")
def test_answer_is_what_the_formula_gives_in_plain_arithmetic(question: str, inputs: dict[str, Any], sums: dict[str, Any]) -> None:
    found = anchorcalc.answer(question, **inputs).results
    for name, wanted in sums.items():
        ours = getattr(found, name)
        if isinstance(ours, anchorcalc.Quantity):
            assert ours.si == pytest.approx(wanted, rel=1e-7, abs=1e-7), name
        elif isinstance(ours, tuple):
            assert [one.si for one in ours] == pytest.approx(wanted, rel=1e-9, abs=1e-9), name
        else:
            assert ours == wanted, name
