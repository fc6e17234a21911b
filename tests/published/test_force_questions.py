"""Published figures of force, put as questions: what a skipper is told against what is printed."""

from typing import Any

import numpy as np
import numpy.testing as npt
import pytest

import anchorcalc
from anchorcalc.physics.constants import KNOT, POUND_FORCE
from anchorcalc.physics.weights import chain_mass_high, chain_mass_low, line_density, line_mass, weight_in_water

SIZES = np.linspace(0.004, 0.04, 400_001)


def results(question: str, **inputs: Any) -> Any:
    """Results of a question."""
    return anchorcalc.answer(question, **inputs).results


def size_text(size: float) -> str:
    """A diameter as it is given."""
    return f"{size * 1000:.9f} mm"


def chain_of(*, weight: float) -> str:
    """Size of the chain whose metre weighs so much in sea water by the lightest table [N]."""
    return size_text(float(np.interp(weight, weight_in_water(mass=chain_mass_low(chain_size=SIZES)), SIZES)))


def line_of(*, weight: float) -> str:
    """Size of the three-strand nylon whose metre weighs so much in sea water [N]."""
    return size_text(float(np.interp(weight, weight_in_water(mass=line_mass(line_size=SIZES), density=line_density()), SIZES)))


# --- wind_load ----------------------------------------------------------------------------------------------------------------------

# ABYC H-40 Table 1: length [ft], 15 and 30 knots [lbf]. Rows of 20, 30, 40, 50 ft: reproduction; the others: memory.
DESIGN = [
    (10, 40, 160), (15, 60, 250), (20, 90, 360), (25, 125, 490), (30, 175, 700), (35, 225, 900),
    (40, 300, 1200), (50, 400, 1600), (60, 500, 2000),
]  # fmt: skip
# A second table (read), sailing boats: length [ft], knots, [lbf]. Its 45-knot column stands for 42.4 knots, but for that row.
SECOND = [(20, 60, 1440), (30, 60, 2800), (40, 60, 4800), (50, 60, 6400), (50, 45, 3600), (30, 15, 175), (40, 30, 1200)]


@pytest.mark.parametrize(("length", "at_15", "at_30"), DESIGN)
def test_standard_load_is_the_printed_row_at_30_knots_and_the_lunch_row_at_15(length: int, at_15: int, at_30: int) -> None:
    load = {wind: results("wind_load", boat_length=f"{length} ft", wind=f"{wind} kn").load_standard for wind in (15, 30)}
    npt.assert_allclose(load[30].si / POUND_FORCE, at_30, rtol=1e-12)
    assert load[30].shown == f"{at_30} lbf"
    npt.assert_allclose(load[15].si / POUND_FORCE, at_15, rtol=0, atol=2.5)  # printed to the next 5 lbf


@pytest.mark.parametrize(("length", "wind", "load"), SECOND)
def test_standard_load_is_that_of_a_second_table(length: int, wind: int, load: int) -> None:
    ours = results("wind_load", boat_length=f"{length} ft", wind=f"{wind} kn", boat_form="sail").load_standard
    npt.assert_allclose(ours.si / POUND_FORCE, load, rtol=1e-12)


def test_32_by_12_ft_motor_boat_loads_her_tackle_with_900_lbf_4_0_kn_408_kgf() -> None:
    # A page that works through the ABYC table (read).
    load = results("wind_load", boat_length="32 ft", beam="12 ft", boat_form="motor", wind="30 kn").load_standard
    npt.assert_allclose(load.si / POUND_FORCE, 900, rtol=1e-12)
    npt.assert_allclose(load.si / 1000, 4.0, rtol=0, atol=0.05)
    npt.assert_allclose(load.si / 9.80665, 408, rtol=0, atol=0.5)


def test_twice_the_wind_pulls_four_times_as_hard() -> None:
    # The square law in words (read).
    single, double = (results("wind_load", boat_length="9.5 m", wind=f"{wind} kn") for wind in (17, 34))
    npt.assert_allclose(double.load_standard.si / single.load_standard.si, 4, rtol=1e-12)
    npt.assert_allclose(double.load_steady.si / single.load_steady.si, 4, rtol=1e-12)


# --- setting_pull -------------------------------------------------------------------------------------------------------------------


def test_350_lbf_on_a_30_ft_boat_stands_for_21_2_knots() -> None:
    # ABYC H-40 Table 1, 30 ft row (reproduction), and the square law (computed).
    found = results("setting_pull", boat_length="30 ft", pull="350 lbf")
    npt.assert_allclose(found.wind_equivalent.si / KNOT, 21.2, rtol=0, atol=0.05)
    assert found.wind_equivalent.shown == "21 kn"


@pytest.mark.parametrize(("power", "diameter", "ahead"), [(20, 14, 518), (30, 16, 743), (50, 18, 1132)])
def test_pull_astern_is_half_of_20_lbf_a_horsepower_where_the_propeller_formula_gives_more(power: int, diameter: int, ahead: int) -> None:
    # 20 to 30 lbf a horsepower: common practice, no source. 62.72·(SHP·D/12)^0.67 lbf: reproduction (figures worked). A half astern: memory.
    found = results("setting_pull", boat_length="30 ft", engine_power=f"{power} hp", propeller_diameter=f"{diameter} in")
    npt.assert_allclose(found.pull.si / POUND_FORCE, 10 * power, rtol=1e-12)
    assert found.pull.si / POUND_FORCE <= ahead / 2


def test_pull_astern_is_half_of_the_propeller_formula_where_that_is_least() -> None:
    # 62.72·(SHP·D/12)^0.67 lbf (reproduction), worked here: 100 hp on 14 in.
    found = results("setting_pull", boat_length="40 ft", engine_power="100 hp", propeller_diameter="14 in")
    npt.assert_allclose(found.pull.si / POUND_FORCE, 62.72 * (100 * 14 / 12) ** 0.67 / 2, rtol=1e-9)


# --- pull_at_anchor and rode_for_flat_pull ------------------------------------------------------------------------------------------

# Two catenary parts, statics (computed, checked by quadrature): chain [m], [N/m]; line [m], [N/m]; depth, bow [m]; load [N];
# chain lying [m], angle [deg], tension at the bow [N], reach [m].
MIXED = [
    (20, 11.94, 30, 0.30, 8, 1, 300, 13.31, 0.00, 312.9, 48.80),
    (10, 11.94, 40, 0.30, 8, 1, 1000, 0.00, 4.06, 1020.3, 49.16),
    (6, 11.94, 29, 0.30, 6, 1, 3000, 0.00, 10.26, 3064.1, 34.29),
    (15, 19.18, 55, 0.45, 9, 1, 2500, 0.00, 2.17, 2532.9, 69.25),
]


@pytest.mark.parametrize(("chain", "chain_weight", "line", "line_weight", "depth", "bow", "load", "lying", "angle", "tension", "reach"), MIXED)
def test_rode_of_chain_and_line_pulls_as_worked(
    chain: int, chain_weight: float, line: int, line_weight: float, depth: int, bow: int, load: int,
    lying: float, angle: float, tension: float, reach: float,
) -> None:  # fmt: skip
    found = results(
        "pull_at_anchor",
        rode_out=f"{chain + line} m", chain=f"{chain} m", depth=f"{depth} m", bow_height=f"{bow} m", load=f"{load} N",
        chain_size=chain_of(weight=chain_weight), line_size=line_of(weight=line_weight),
    )  # fmt: skip
    npt.assert_allclose(found.chain_lying.si, lying, rtol=0, atol=0.02)
    npt.assert_allclose(np.degrees(found.pull_angle.si), angle, rtol=0, atol=0.02)
    npt.assert_allclose(found.bow_tension.si, tension, rtol=0, atol=0.2)
    npt.assert_allclose(found.reach.si, reach, rtol=0, atol=0.02)


# All chain, catenary from a flat start (computed): size [mm] of that kg/m, depth, bow [m], load [N]; rode out [m], tension [N], reach [m].
FLAT = [(1.4, 10, 1.0, 1000, 44.32, 1131.3, 42.47), (1.4, 6, 1.2, 2000, 49.64, 2085.9, 48.95), (2.25, 10, 1.5, 4000, 70.20, 4220.6, 68.94)]


@pytest.mark.parametrize(("mass", "depth", "bow", "load", "rode_out", "tension", "reach"), FLAT)
def test_all_chain_pulls_just_flat_as_worked(mass: float, depth: int, bow: float, load: int, rode_out: float, tension: float, reach: float) -> None:
    weight = float(weight_in_water(mass=mass))
    water = {"depth": f"{depth} m", "bow_height": f"{bow} m", "load": f"{load} N", "chain": "200 m", "chain_size": chain_of(weight=weight)}
    found = results("rode_for_flat_pull", **water)
    npt.assert_allclose([found.rode_out.si, found.rode_of_chain.si], rode_out, rtol=0, atol=0.01)
    there = results("pull_at_anchor", rode_out=found.rode_out, **water)
    npt.assert_allclose(there.bow_tension.si, tension, rtol=0, atol=0.1)
    npt.assert_allclose(there.reach.si, reach, rtol=0, atol=0.01)
    assert there.pull_angle.si < 1e-6 and there.chain_lying.si < 1e-6


# --- holding and anchor_size --------------------------------------------------------------------------------------------------------


def test_100_lb_fluke_in_sand_holds_3165_lbf_less_and_plus_30_per_cent() -> None:
    # UFC 4-159-03 (2005), eq. (26): read; Table 5-3 and the 30 %: memory.
    found = results("holding", anchor_kind="pivoting_fluke", anchor_mass="100 lb", bottom="sand", pull_angle="0 deg")
    npt.assert_allclose([found.holding_low.si / POUND_FORCE, found.holding_high.si / POUND_FORCE], [0.7 * 3165, 1.3 * 3165], rtol=0, atol=0.65)


# Holding by scope: magazine article of D. Casey, reproduced; good to 10 points.
@pytest.mark.parametrize(("scope", "share"), [(10, 1.0), (7, 0.91), (6, 0.85), (5, 0.77), (4, 0.67), (3, 0.53), (2, 0.35)])
def test_less_scope_leaves_the_printed_share_of_the_holding(scope: int, share: float) -> None:
    anchor = {"anchor_kind": "plough", "anchor_mass": "16 kg", "bottom": "sand"}
    at_scope, flat = results("holding", **anchor, scope=scope), results("holding", **anchor, pull_angle="0 deg")
    npt.assert_allclose(at_scope.holding_low.si / flat.holding_low.si, share, rtol=1e-9)
    npt.assert_allclose(at_scope.holding_high.si / flat.holding_high.si, share, rtol=1e-9)


def test_soft_ground_holds_a_third_to_two_thirds_and_stiff_clay_half_as_much_again() -> None:
    # Passagemaking magazine, "Anchor math and management", part 2 (read).
    sand, mud, clay = (
        results("holding", anchor_kind="scoop", anchor_mass="20 kg", bottom=bottom, pull_angle="0 deg") for bottom in ("sand", "mud", "clay")
    )
    npt.assert_allclose(clay.holding_high.si / sand.holding_high.si, 1.5, rtol=1e-9)
    npt.assert_allclose(clay.holding_low.si / sand.holding_low.si, 0.33, rtol=0, atol=0.005)
    low, high = (getattr(mud, end).si / getattr(sand, end).si for end in ("holding_low", "holding_high"))
    assert 0.2 < low < high < 0.67  # mud also widens with the other power of the mass


# IMO-published Code of Safety for Small Commercial Vessels in the Caribbean, Annex 7 (read): length [m], main anchor [kg], chain, line [mm].
CODE = [(6, 8, 6, 12), (8, 10, 8, 12), (10, 13, 8, 12), (12, 18, 8, 14), (14, 24, 10, 14)]


@pytest.mark.parametrize(("length", "anchor", "chain", "line"), CODE)
def test_table_asks_the_printed_row(length: int, anchor: int, chain: int, line: int) -> None:
    found = results("anchor_size", boat_length=f"{length} m", wind="10 kn", anchor_kind="scoop", bottom="sand")
    npt.assert_allclose(found.mass_by_table.si, anchor, rtol=1e-12)
    check = results("tackle_check", boat_length=f"{length} m")
    npt.assert_allclose(
        [check.anchor_mass_asked.si, check.chain_size_asked.si * 1000, check.line_size_asked.si * 1000], [anchor, chain, line], rtol=1e-12
    )


def test_ordinary_anchor_of_39_9_kg_stands_for_30_kg_of_high_holding_power() -> None:
    # Special Service Craft rules, part 3 ch. 5 sec. 5, 5.1.2 (rule read; figure worked).
    found = results("anchor_size", boat_length="16 m", wind="10 kn", anchor_kind="fisherman", bottom="sand")
    npt.assert_allclose(found.mass_by_table.si, 39.9, rtol=0, atol=0.05)


# --- chain_and_line -----------------------------------------------------------------------------------------------------------------

# 49 CFR 393.108, working load limits for chain (two reproductions agree): [in]; [lbf] of G30, G43, G70.
LIMITS = [
    ("1/4 in", 1300, 2600, 3150), ("5/16 in", 1900, 3900, 4700), ("3/8 in", 2650, 5400, 6600), ("7/16 in", 3700, 7200, 8750),
    ("1/2 in", 4500, 9200, 11300), ("5/8 in", 6900, 13000, 15800),
]  # fmt: skip
# Cordage Institute three-strand nylon, as reproduced by a rope dealer: [in]; working load [lbf].
NYLON = [("3/8 in", 278), ("7/16 in", 410), ("1/2 in", 525), ("9/16 in", 720), ("5/8 in", 935), ("3/4 in", 1420), ("7/8 in", 2000)]


def part(found: Any, name: str) -> Any:
    """One part of an answer."""
    return next(one for one in found.parts if one.part == name)


@pytest.mark.parametrize(("size", "g30", "g43", "g70"), LIMITS)
def test_chain_carries_its_printed_working_load(size: str, g30: int, g43: int, g70: int) -> None:
    for grade, limit in zip(("G30", "G43", "G70"), (g30, g43, g70), strict=True):
        found = results("chain_and_line", load="1000 lbf", chain_size=size, chain_grade=grade)
        npt.assert_allclose(part(found, "chain").working_load.si / POUND_FORCE, limit, rtol=1e-9)
        npt.assert_allclose(part(found, "chain").strength_ratio.si, limit / 1000, rtol=1e-9)
        assert found.passes is (limit >= 1000)


@pytest.mark.parametrize(("size", "limit"), NYLON)
def test_line_carries_its_printed_working_load(size: str, limit: int) -> None:
    found = results("chain_and_line", load="1000 lbf", line_size=size)
    npt.assert_allclose(part(found, "line").working_load.si / POUND_FORCE, limit, rtol=1e-9)
    assert found.passes is (limit >= 1000)


def test_5_8_in_shackle_of_unknown_steel_carries_2344_lbf() -> None:
    # 3·D² short tons: seamanship-formula page, old Navy rule (read).
    found = results("chain_and_line", load="2000 lbf", shackle_size="5/8 in")
    npt.assert_allclose(part(found, "shackle").working_load.si / POUND_FORCE, 2344, rtol=0, atol=0.5)


def test_8_mm_chain_of_grade_30_carries_a_quarter_of_its_least_breaking_load() -> None:
    # Tables headed ISO 4565 / DIN 766: 30 kN, the lesser of two (reproduction).
    found = results("chain_and_line", load="1 kN", chain_size="8 mm")
    npt.assert_allclose(part(found, "chain").working_load.si, 30_000 / 4, rtol=1e-12)


# --- weigh_anchor -------------------------------------------------------------------------------------------------------------------


def test_15_kg_anchor_and_10_m_of_chain_hang_with_247_3_n() -> None:
    # Archimedes (computed): 1.40 kg/m, 7850 and 1025 kg/m³.
    size = size_text(float(np.interp(1.40, chain_mass_high(chain_size=SIZES), SIZES)))
    found = results("weigh_anchor", depth="10 m", bow_height="0 m", anchor_mass="15 kg", chain="30 m", chain_size=size)
    npt.assert_allclose(found.hanging_load.si, 247.3, rtol=0, atol=0.05)


def test_windlass_for_22_mm_chain_pulls_one_and_a_half_times_18_15_kn() -> None:
    # IACS UR A3 (Rev. 1, June 2019), 3.1.3 (read); 37.5·d² N: memory.
    found = results("weigh_anchor", depth="10 m", anchor_mass="60 kg", chain="50 m", chain_size="22 mm")
    npt.assert_allclose(found.windlass_pull.si / 1000, 1.5 * 18.15, rtol=0, atol=0.0075)


def test_by_hand_ends_at_23_kg() -> None:
    # Load constant of the revised NIOSH lifting equation (1991): memory. Steel keeps 0.8694 of its weight in sea water (computed).
    kept = 1 - 1025 / 7850
    light, heavy = (results("weigh_anchor", depth="10 m", bow_height="0 m", anchor_mass=f"{mass / kept} kg") for mass in (22.9, 23.1))
    assert (light.by_hand, heavy.by_hand) == (True, False)
