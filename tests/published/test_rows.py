"""Rows of the tables, written out a second time: at its own size a row counts, and a little beyond it the next does.

Lengths, beams and loads: ABYC H-40 Table 1 (rows of 20, 30, 40, 50 ft: reproduction, the others and the beams: memory). Anchors, chain and line
by length: code for small commercial vessels, Annex 7 (read). Rope: Cordage Institute nylon (reproduction). Chain by size: 49 CFR 393.108
(reproduction). Sizes that are sold, and bands of holding: common practice, no source.
"""

import numpy as np
import numpy.testing as npt
import pytest

from anchorcalc.physics.codes import MOTOR, SAIL
from anchorcalc.physics.current import friction_coefficient
from anchorcalc.physics.holding import holding_band, holding_is_extrapolated, least_anchor_mass, share_of_flat_pull
from anchorcalc.physics.next_size import chain_is_outside_table, chain_size_for, line_is_outside_table, line_size_for, shackle_size_for
from anchorcalc.physics.sizing import anchor_mass_by_table, chain_size_by_table, kedge_mass_by_table, line_size_by_table
from anchorcalc.physics.strength import chain_working_load, line_breaking_load, line_working_load, shackle_working_load
from anchorcalc.physics.weights import line_mass
from anchorcalc.physics.wind import load_is_extrapolated, working_load_of_boat

FT, IN, MM, LB, G = 0.3048, 0.0254, 0.001, 0.45359237, 9.80665
LBF = LB * G
MORE = 1.0005  # a little beyond a row

FEET = [10, 15, 20, 25, 30, 35, 40, 50, 60]
BEAMS = {SAIL: [4, 5, 7, 8, 9, 10, 11, 13, 15], MOTOR: [5, 6, 8, 9, 11, 13, 14, 16, 18]}
POUNDS = [160, 250, 360, 490, 700, 900, 1200, 1600, 2000]


def test_boat_a_little_longer_than_a_row_has_the_next_row_s_load() -> None:
    beyond = working_load_of_boat(boat_length=np.array(FEET[:-1]) * FT * MORE) / LBF
    npt.assert_allclose(beyond, POUNDS[1:], rtol=1e-12)
    npt.assert_allclose(working_load_of_boat(boat_length=60 * FT * MORE) / LBF, 2000 * MORE**2, rtol=1e-12)


@pytest.mark.parametrize("form", [SAIL, MOTOR])
def test_boat_a_little_wider_than_a_row_has_the_next_row_s_load(form: int) -> None:
    wide = np.array(BEAMS[form]) * FT * MORE
    npt.assert_allclose(working_load_of_boat(boat_length=2.0, beam=wide, boat_form=form) / LBF, [*POUNDS[1:], 2000 * MORE], rtol=1e-12)
    assert not load_is_extrapolated(boat_length=9.0, beam=BEAMS[form][-1] * FT, boat_form=form)
    assert load_is_extrapolated(boat_length=9.0, beam=BEAMS[form][-1] * FT * MORE, boat_form=form)


def test_least_and_greatest_length_are_still_in_the_table() -> None:
    feet = np.array([10 / MORE, 10, 60, 60 * MORE])
    npt.assert_array_equal(load_is_extrapolated(boat_length=feet * FT), [True, False, False, True])


METRES = np.arange(6, 25)
MAIN = [8, 9, 10, 11, 13, 15, 18, 21, 24, 27, 30, 34, 38, 42, 47, 52, 57, 62, 68]
KEDGE = [4, 4, 5, 5, 6, 7, 9, 10, 12, 13, 15, 17, 19, 21, 23, 26, 28, 31, 34]
CHAIN = [6] + [8] * 6 + [10] * 6 + [12] * 6
LINE = [12] * 6 + [14] * 3  # printed to 14 m; beyond, the weaker of what another version prints


def test_code_asks_its_row_at_a_length_and_the_next_a_little_beyond() -> None:
    for ours, printed in ((anchor_mass_by_table, MAIN), (kedge_mass_by_table, KEDGE)):
        npt.assert_allclose(ours(boat_length=METRES), printed, rtol=1e-12)
        npt.assert_allclose(ours(boat_length=METRES[:-1] * MORE), printed[1:], rtol=1e-12)
        npt.assert_allclose(ours(boat_length=24 * MORE), printed[-1] * MORE**2.5, rtol=1e-12)
    for size, millimetres in ((chain_size_by_table, CHAIN), (line_size_by_table, LINE)):
        lengths = METRES[: len(millimetres)]
        npt.assert_allclose(size(boat_length=lengths) / MM, millimetres, rtol=1e-12)
        npt.assert_allclose(size(boat_length=lengths[:-1] * MORE) / MM, millimetres[1:], rtol=1e-12)
    npt.assert_allclose(chain_size_by_table(boat_length=np.array([2.0, 40.0])) / MM, [6, 12], rtol=1e-12)
    npt.assert_allclose(line_size_by_table(boat_length=np.array([2.0, 40.0])) / MM, [12, 14], rtol=1e-12)


# --- sizes that are sold ------------------------------------------------------------------------------------------------------------

INCH_CHAIN, INCH_G30 = [1 / 4, 5 / 16, 3 / 8, 7 / 16, 1 / 2, 5 / 8], [1300, 1900, 2650, 3700, 4500, 6900]
METRIC_CHAIN = [6, 7, 8, 10, 12, 13, 14, 16]  # 11 mm has no figure of its own in grade 30
INCH_ROPE = [1 / 4, 5 / 16, 3 / 8, 7 / 16, 1 / 2, 9 / 16, 5 / 8, 3 / 4, 7 / 8, 9 / 8]
ROPE_WORKING = [124, 192, 278, 410, 525, 720, 935, 1420, 2000, 3320]
ROPE_BREAKING = [1490, 2300, 3340, 4500, 5750, 7200, 9350, 12800, 18000, 29800]
ROPE_MASS = [1.5, 2.5, 3.5, 5.0, 6.5, 8.15, 10.5, 14.5, 20.0, 34.0]  # lb for 100 ft
METRIC_ROPE = [8, 10, 12, 14, 16, 18, 20, 22, 24, 28, 32]
METRIC_SHACKLES = [5, 6, 8, 10, 12, 14, 16, 18, 20, 22, 25, 28, 32, 35, 38, 45, 50]
INCH_SHACKLES = [3 / 16, 1 / 4, 5 / 16, 3 / 8, 7 / 16, 1 / 2, 5 / 8, 3 / 4, 7 / 8, 1, 9 / 8, 5 / 4, 3 / 2, 7 / 4, 2]


@pytest.mark.parametrize(("sizes", "unit", "inch"), [(METRIC_SHACKLES, MM, False), (INCH_SHACKLES, IN, True)])
def test_every_shackle_sold_is_found_by_its_own_load_and_the_next_by_more(sizes: list[float], unit: float, inch: bool) -> None:
    loads = 3 * 2000 * LBF * (np.array(sizes) * unit / IN) ** 2  # the rule of 3·D² tons
    npt.assert_allclose(shackle_working_load(shackle_size=np.array(sizes) * unit), loads, rtol=1e-12)
    npt.assert_allclose(shackle_size_for(load=loads, inch=inch) / unit, sizes, rtol=1e-12)
    npt.assert_allclose(shackle_size_for(load=loads * MORE, inch=inch) / unit, [*sizes[1:], np.nan], rtol=1e-12)


def test_every_inch_chain_sold_is_found_by_its_own_load_and_the_next_by_more() -> None:
    loads = np.array(INCH_G30) * LBF
    npt.assert_allclose(chain_working_load(chain_size=np.array(INCH_CHAIN) * IN), loads, rtol=1e-12)
    npt.assert_allclose(chain_size_for(load=loads, inch=True) / IN, INCH_CHAIN, rtol=1e-12)
    npt.assert_allclose(chain_size_for(load=loads * MORE, inch=True) / IN, [*INCH_CHAIN[1:], np.nan], rtol=1e-12)


def test_metric_chain_of_grade_30_is_found_by_its_own_load_and_the_next_by_more() -> None:
    # A quarter of the lesser breaking load [kN]; of 7, 8, 10, 13 and 16 mm the cargo table's working load [kgf] where that is less.
    loads = np.array([16e3 / 4, 580 * G, 30e3 / 4, 1200 * G, 70e3 / 4, 2030 * G, 100e3 / 4, 3130 * G])
    npt.assert_allclose(chain_working_load(chain_size=np.array(METRIC_CHAIN) * MM), loads, rtol=1e-9)
    npt.assert_allclose(chain_size_for(load=loads[:4]) / MM, METRIC_CHAIN[:4], rtol=1e-12)
    npt.assert_allclose(chain_size_for(load=loads[:3] * MORE) / MM, METRIC_CHAIN[1:4], rtol=1e-12)


def test_every_rope_sold_is_found_by_its_own_load_and_the_next_by_more() -> None:
    sizes, loads = np.array(INCH_ROPE) * IN, np.array(ROPE_WORKING) * LBF
    npt.assert_allclose(line_working_load(line_size=sizes), loads, rtol=1e-12)
    npt.assert_allclose(line_breaking_load(line_size=sizes) / LBF, ROPE_BREAKING, rtol=1e-12)
    npt.assert_allclose(line_mass(line_size=sizes) / LB * 100 * FT, ROPE_MASS, rtol=1e-12)
    npt.assert_allclose(line_size_for(load=loads, inch=True) / IN, INCH_ROPE, rtol=1e-12)
    npt.assert_allclose(line_size_for(load=loads * MORE, inch=True) / IN, [*INCH_ROPE[1:], np.nan], rtol=1e-12)


def test_metric_rope_is_found_among_the_sizes_that_are_sold() -> None:
    # Each carries what the inch row below does: 8 mm that of 5/16 in, 10 of 3/8, 12 of 7/16, 14 of 1/2, 16 of 5/8, 20 of 3/4, 24 of 7/8, 32 of 1 1/8.
    carried = [192, 278, 410, 525, 935, 935, 1420, 1420, 2000, 2000, 3320]
    npt.assert_allclose(line_working_load(line_size=np.array(METRIC_ROPE) * MM) / LBF, carried, rtol=1e-12)
    loads = np.array([1, 193, 279, 411, 526, 936, 1421, 2001, 3321]) * LBF
    npt.assert_allclose(line_size_for(load=loads) / MM, [8, 10, 12, 14, 16, 20, 24, 32, np.nan], rtol=1e-12)


def test_sizes_outside_the_tables_are_known_as_such_from_a_little_beyond_the_end() -> None:
    millimetres, inches = np.array([6 / MORE, 6, 16, 16 * MORE]), np.array([1 / 4 / MORE, 1 / 4, 9 / 8, 9 / 8 * MORE])
    npt.assert_array_equal(chain_is_outside_table(chain_size=millimetres * MM), [True, False, False, True])
    npt.assert_array_equal(line_is_outside_table(line_size=inches * IN), [True, False, False, True])
    npt.assert_array_equal(np.isnan(line_working_load(line_size=inches[:2] * IN)), [True, False])


# --- holding ------------------------------------------------------------------------------------------------------------------------

EDGE = 100 * LB
# Holding over weight of 100 lb under a flat pull: plough, scoop, claw, fisherman, grapnel, mushroom; at the least and at the most.
SAND = ([10, 15, 8, 5, 2, 1], [35, 45, 25, 18, 8, 3])
MUD = ([10 / 3, 5, 8 / 3, 5 / 3, 2 / 3, 1], [70 / 3, 30, 50 / 3, 12, 16 / 3, 4])
CLAY = ([10 / 3, 5, 8 / 3, 5 / 3, 2 / 3, 1 / 3], [52.5, 67.5, 37.5, 27, 12, 4.5])
GRAVEL = ([10 / 3, 5, 8 / 3, 5 / 3, 2 / 3, 1 / 3], [70 / 3, 30, 50 / 3, 12, 16 / 3, 2])
BOTTOMS = {"sand": (0, SAND), "mud": (1, MUD), "clay": (2, CLAY), "gravel": (4, GRAVEL)}


@pytest.mark.parametrize("bottom", BOTTOMS)
def test_band_of_every_kind_is_the_one_of_practice_and_grows_with_the_published_powers(bottom: str) -> None:
    place, (least, most) = BOTTOMS[bottom]
    power = 0.92 if bottom == "mud" else 0.8
    for mass in (EDGE, EDGE / 3, 3 * EDGE):
        band = holding_band(anchor_kind=np.arange(1, 7), anchor_mass=mass, bottom=np.full(6, place))
        grown = (mass / EDGE) ** power
        npt.assert_allclose(band.low / (EDGE * G), np.array(least) * min(grown, mass / EDGE), rtol=1e-12)
        npt.assert_allclose(band.high / (EDGE * G), np.array(most) * grown, rtol=1e-12)


def test_band_of_the_tested_fluke_is_30_per_cent_about_the_power_law() -> None:
    # UFC 4-159-03 (2005), eq. (26): read; 12.6 and 8.7, 0.8 and 0.92: memory.
    for bottom, ratio, power in ((0, 12.6, 0.8), (1, 8.7, 0.92)):
        band = holding_band(anchor_kind=0, anchor_mass=3000 * LB, bottom=bottom)
        npt.assert_allclose(np.array(band), np.array([0.7, 1.3]) * ratio * 10_000 * LBF * 0.3**power, rtol=1e-12)
    for bottom, share in ((2, (1 / 3, 1.5)), (4, (1 / 3, 2 / 3))):
        sand, other = (holding_band(anchor_kind=0, anchor_mass=EDGE, bottom=place) for place in (0, bottom))
        npt.assert_allclose(np.array(other) / np.array(sand), np.array(share), rtol=1e-12)


def test_share_of_flat_pull_falls_straight_between_the_printed_scopes_and_on_to_nothing_at_50_degrees() -> None:
    # D. Casey, magazine article (reproduction); past scope 2 an own estimate.
    angles = np.degrees(np.arcsin(1 / np.array([10, 7, 6, 5, 4, 3, 2])))
    shares = np.array([1.0, 0.91, 0.85, 0.77, 0.67, 0.53, 0.35])
    npt.assert_allclose(share_of_flat_pull(pull_angle=np.radians(angles)), shares, rtol=1e-12)
    npt.assert_allclose(share_of_flat_pull(pull_angle=np.radians((angles[1:] + angles[:-1]) / 2)), (shares[1:] + shares[:-1]) / 2, rtol=1e-12)
    end = 30 + 0.35 * (30 - angles[-2]) / 0.18
    npt.assert_allclose(share_of_flat_pull(pull_angle=np.radians([0, 3, (30 + end) / 2, end, 80])), [1, 1, 0.175, 0, 0], atol=1e-12)


def test_what_was_tested_is_a_fluke_of_100_to_40_000_lb_in_sand_or_mud_at_30_degrees_or_less() -> None:
    masses = np.array([99.9, 100, 40_000, 40_001]) * LB
    npt.assert_array_equal(holding_is_extrapolated(anchor_kind=0, anchor_mass=masses, bottom=0), [True, False, False, True])
    angles = np.array([30.0, 30.1])
    npt.assert_array_equal(holding_is_extrapolated(anchor_kind=0, anchor_mass=EDGE, bottom=1, pull_angle=np.arcsin(np.sin(np.radians(angles)))),
                           [False, True])  # fmt: skip
    npt.assert_array_equal(holding_is_extrapolated(anchor_kind=np.array([0, 1, 0, 0]), anchor_mass=EDGE, bottom=np.array([0, 0, 2, 4])),
                           [False, True, True, True])  # fmt: skip


def test_no_load_asks_for_no_anchor_however_steep_the_pull_and_a_load_there_for_one_that_is_not() -> None:
    npt.assert_array_equal(least_anchor_mass(load=np.array([0.0, 1.0, 0.5]), anchor_kind=1, bottom=0, pull_angle=1.2), [0, np.inf, np.inf])
    npt.assert_array_equal(least_anchor_mass(load=np.array([0.0, 1.0]), anchor_kind=1, bottom=5), [np.nan, np.nan])


def test_friction_below_a_hundred_thousand_is_that_at_a_hundred_thousand() -> None:
    # UFC 4-159-03, eq. (19) (read): 0.075 / (5 − 2)²; the bound is this library's own.
    npt.assert_allclose(friction_coefficient(reynolds=np.array([1.0, 1e4, 1e5])), 0.075 / 9, rtol=1e-12)
    npt.assert_allclose(friction_coefficient(reynolds=1e6), 0.075 / 16, rtol=1e-12)
