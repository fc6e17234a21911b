"""Mass and strength of chain against printed tables and rules."""

import numpy as np
import numpy.testing as npt
import pytest

from anchorcalc.physics.codes import G30, G40, G43, G70, G80
from anchorcalc.physics.constants import INCH, KILOGRAM_FORCE, MILLIMETRE, POUND_FORCE
from anchorcalc.physics.next_size import chain_is_outside_table, chain_size_for
from anchorcalc.physics.strength import chain_breaking_load, chain_working_load
from anchorcalc.physics.tables import chain
from anchorcalc.physics.weights import chain_mass_high, chain_mass_low, weight_in_water

# Tables headed ISO 4565 / DIN 766 (short-link calibrated chain), dealers not named: reproduction. size [mm]; kg/m in the first
# table and in others. The 3.8 kg/m that one prints for 12 mm is most likely its 13 mm figure, and left out.
MASSES = [
    (6, 0.8, (0.85, 0.8)),
    (7, 1.15, (1.1, 1.1)),
    (8, 1.4, (1.45, 1.4)),
    (10, 2.25, (2.3, 2.2)),
    (12, 3.25, (3.1,)),
    (13, 3.9, (3.8,)),
    (14, 4.25, (4.4,)),
    (16, 5.8, (5.7,)),
]
# The same tables: size [mm]; proof load, breaking load of grades 3 and 4 in the first table; the same in a second one. [kN]
BREAKING = [
    (6, 10, 18, 20, 16, 27),
    (7, 16, 25, 30, 24.4, 31),
    (8, 20, 32, 40, 30, 40),
    (10, 32, 50, 63, 50, 62),
    (12, 35, 71, None, 70, 90),
    (13, 50, 80, None, None, None),
    (14, 63, 100, 121, None, None),
    (16, 80, 125, None, None, None),
]
# 49 CFR 393.108, working load limits for chain (two reproductions agree): [in]; [lbf] of G30, G43, G70, G80.
LIMITS = [
    (1 / 4, 1300, 2600, 3150, 3500),
    (5 / 16, 1900, 3900, 4700, 4500),
    (3 / 8, 2650, 5400, 6600, 7100),
    (7 / 16, 3700, 7200, 8750, None),
    (1 / 2, 4500, 9200, 11300, 12000),
    (5 / 8, 6900, 13000, 15800, 18100),
]
# The same rows by the metric size beside the inches (reproduction): [mm]; [kgf].
LIMITS_METRIC = [
    (7, 580, 1180, 1430, 1570),
    (8, 860, 1770, 2130, 2000),
    (10, 1200, 2450, 2990, 3200),
    (11, 1680, 3270, 3970, None),
    (13, 2030, 4170, 5130, 5400),
    (16, 3130, 5910, 7170, 8200),
]


@pytest.mark.parametrize(("size", "first", "others"), MASSES)
def test_masses_are_the_least_and_the_greatest_of_the_tables(size: float, first: float, others: tuple[float, ...]) -> None:
    npt.assert_allclose(chain_mass_low(chain_size=size * MILLIMETRE), min(first, *others), rtol=1e-12)
    npt.assert_allclose(chain_mass_high(chain_size=size * MILLIMETRE), max(first, *others), rtol=1e-12)


@pytest.mark.parametrize("size", [row[0] for row in MASSES])
def test_masses_meet_the_rule_of_the_square(size: float) -> None:
    # 0.0218 to 0.0225·d² kg/m, d in mm: common practice, no source.
    assert chain_mass_low(chain_size=size * MILLIMETRE) <= 0.0225 * size**2
    assert chain_mass_high(chain_size=size * MILLIMETRE) >= 0.0218 * size**2


def test_masses_hold_between_them_a_link_of_steel() -> None:
    # Geometry of an oval link (computed): 8 mm wire, pitch 24 mm, 28.8 mm wide outside, 7850 kg/m³: 87.7 mm of wire a pitch.
    wire, pitch, width = 8.0, 24.0, 28.8
    bend, straight = width - wire, pitch - (width - 2 * wire)  # centre line of the two half circles, and of each side between them
    centre_line = np.pi * bend + 2 * straight
    npt.assert_allclose(centre_line, 87.7, rtol=0, atol=0.05)
    mass = np.pi / 4 * wire**2 * centre_line * 7850e-9 / (pitch * MILLIMETRE)
    npt.assert_allclose(mass, 1.44, rtol=0, atol=0.005)
    assert chain_mass_low(chain_size=0.008) <= mass <= chain_mass_high(chain_size=0.008)


def test_inch_chain_weighs_what_the_metric_size_beside_it_does() -> None:
    # 49 CFR 393.108 prints 1/4 in (7 mm), 5/16 (8), 3/8 (10), 1/2 (13), 5/8 (16): reproduction; masses as above.
    inches = np.array([1 / 4, 5 / 16, 3 / 8, 1 / 2, 5 / 8])
    npt.assert_allclose(chain_mass_high(chain_size=inches * INCH), [1.15, 1.45, 2.3, 3.9, 5.8], rtol=1e-12)


def test_steel_keeps_0_87_of_its_weight_in_sea_water() -> None:
    # Archimedes; 7850 and 1025 kg/m³; the offshore rule of thumb: common practice.
    npt.assert_allclose(weight_in_water(mass=1.0, density=7850.0, water_density=1025.0) / KILOGRAM_FORCE, 0.87, rtol=0, atol=0.005)


def test_8_mm_chain_weighs_11_94_newtons_a_metre_in_sea_water() -> None:
    # Archimedes (computed), 1.40 kg/m.
    npt.assert_allclose(weight_in_water(mass=1.40), 11.94, rtol=0, atol=0.005)


@pytest.mark.parametrize(("size", *"abcd"), LIMITS)
def test_inch_chain_has_the_limits_of_the_regulation(size: float, a: int, b: int, c: int, d: int | None) -> None:
    for grade, printed in ((G30, a), (G43, b), (G70, c), (G80, d)):
        if printed is not None:
            npt.assert_allclose(chain_working_load(chain_size=size * INCH, chain_grade=grade) / POUND_FORCE, printed, rtol=1e-12)


def test_limit_that_is_not_printed_is_that_of_the_size_before_it() -> None:
    # A rule of this library, on the safe side; no published figure.
    npt.assert_allclose(chain_working_load(chain_size=7 / 16 * INCH, chain_grade=G80) / POUND_FORCE, 7100, rtol=1e-12)


@pytest.mark.parametrize(("size", *"abcd"), LIMITS_METRIC)
def test_metric_chain_has_the_limits_printed_beside_the_inches(size: float, a: int, b: int, c: int, d: int | None) -> None:
    for grade, printed in ((G43, b), (G70, c), (G80, d)):
        if printed is not None:
            npt.assert_allclose(chain_working_load(chain_size=size * MILLIMETRE, chain_grade=grade) / KILOGRAM_FORCE, printed, rtol=1e-12)
    assert chain_working_load(chain_size=size * MILLIMETRE, chain_grade=G30) <= a * KILOGRAM_FORCE * (1 + 1e-12)  # the lesser of two tables


@pytest.mark.parametrize(("size", "proof", "first_3", "first_4", "second_3", "second_4"), BREAKING)
def test_breaking_load_is_the_least_printed_or_less(
    size: float, proof: float, first_3: float, first_4: float | None, second_3: float | None, second_4: float | None
) -> None:
    for grade, printed in ((G30, (first_3, second_3)), (G40, (first_4, second_4))):
        known = [load for load in printed if load is not None]
        ours = float(chain_breaking_load(chain_size=size * MILLIMETRE, chain_grade=grade)) / 1000
        if known:
            assert 0.85 * max(known[:1]) <= ours <= min(known) * (1 + 1e-12)  # 5 to 15 % between reproductions


@pytest.mark.parametrize(("size", "proof", "first_3", "first_4", "second_3", "second_4"), BREAKING)
def test_working_load_is_below_the_proof_load(
    size: float, proof: float, first_3: float, first_4: float | None, second_3: float | None, second_4: float | None
) -> None:
    assert chain_working_load(chain_size=size * MILLIMETRE, chain_grade=G30) < proof * 1000


def test_grade_is_a_tenth_of_the_stress_at_breaking() -> None:
    # Definition of chain grades (EN 818, ISO 1834 family), from memory: 8 mm grade 40 breaks near 40.2 kN; printed 40 kN.
    by_definition = 2 * np.pi / 4 * 8**2 * 400 / 1000
    npt.assert_allclose(by_definition, 40.2, rtol=0, atol=0.05)
    npt.assert_allclose(chain_breaking_load(chain_size=0.008, chain_grade=G40) / 1000, by_definition, rtol=0, atol=0.5)


def test_8_mm_chain_breaks_no_later_than_by_the_seamans_rule() -> None:
    # 30·d²/600 tonnes, seamanship rule on a forum thread and a seamanship page (reproduction): 3.2 t.
    npt.assert_allclose(30 * 8**2 / 600, 3.2, rtol=1e-12)
    assert chain_breaking_load(chain_size=0.008, chain_grade=G30) <= 3200 * KILOGRAM_FORCE


@pytest.mark.parametrize("grade", [G30, G40, G43, G70, G80])
def test_size_between_two_rows_is_the_weaker(grade: int) -> None:
    # A rule of this library, on the safe side; no published figure.
    for between, metric, inch in ((9.0, 8.0, 5 / 16), (10.5, 10.0, 3 / 8), (12.3, 12.0, 7 / 16), (15.0, 14.0, 1 / 2), (22.0, 16.0, 5 / 8)):
        below = (chain_working_load(chain_size=size, chain_grade=grade) for size in (metric * MILLIMETRE, inch * INCH))
        npt.assert_array_equal(chain_working_load(chain_size=between * MILLIMETRE, chain_grade=grade), min(below))


def test_chain_thinner_than_the_tables_has_no_figure() -> None:
    assert np.all(np.isnan(chain_working_load(chain_size=0.0055, chain_grade=np.arange(5))))
    assert np.all(np.isnan(chain_working_load(chain_size=0.006, chain_grade=np.array([G43, G70, G80]))))


def test_flag_tells_chain_outside_the_tables() -> None:
    # A rule of this library: it says where the printed rows end.
    npt.assert_array_equal(chain_is_outside_table(chain_size=np.array([0.0059, 0.006, 0.016, 0.0161])), [True, False, False, True])


def test_next_size_is_the_row_whose_printed_limit_meets_the_load() -> None:
    # 49 CFR 393.108 (reproduction): G43, 5/16 in carries 3900 lbf and 3/8 in 5400; 8 mm 1770 kgf and 10 mm 2450.
    npt.assert_allclose(chain_size_for(load=np.array([3900, 3901]) * POUND_FORCE, chain_grade=G43, inch=True) / INCH, [5 / 16, 3 / 8], rtol=1e-12)
    npt.assert_allclose(chain_size_for(load=np.array([1770, 1771]) * KILOGRAM_FORCE, chain_grade=G43) / MILLIMETRE, [8, 10], rtol=1e-12)
    assert np.isnan(chain_size_for(load=6901 * POUND_FORCE, chain_grade=G30, inch=True))


def test_both_tables_of_breaking_loads_are_kept_as_printed() -> None:
    # The same tables (reproduction), grades 3 and 4 of the first and of the second: [kN]. Of two the lesser counts.
    known = [row for row in BREAKING if row[0] * MILLIMETRE in chain.METRIC_SIZES]
    columns = ((2, chain.BREAKING_G30_FIRST), (3, chain.BREAKING_G40_FIRST), (4, chain.BREAKING_G30_SECOND), (5, chain.BREAKING_G40_SECOND))
    for column, ours in columns:
        kept = ours[np.searchsorted(chain.METRIC_SIZES, [row[0] * MILLIMETRE - 1e-9 for row in known])] / 1000.0
        npt.assert_allclose(kept, [np.nan if row[column] is None else row[column] for row in known], rtol=1e-12)


def test_limits_beside_the_metric_sizes_are_kept_as_printed() -> None:
    # 49 CFR 393.108, kilograms beside the metric size (reproduction). Of two columns the lesser counts.
    for column, ours in ((1, chain.AS_METRIC_G30), (2, chain.AS_METRIC_G43), (3, chain.AS_METRIC_G70), (4, chain.AS_METRIC_G80)):
        printed = [np.nan if row[column] is None else row[column] for row in LIMITS_METRIC]
        npt.assert_allclose(ours / KILOGRAM_FORCE, printed, rtol=1e-12)


def test_working_load_is_a_quarter_or_a_third_of_the_breaking_load() -> None:
    # 49 CFR 393.108 against breaking loads: a quarter (G30, G80) or a third (G43, G70); G40 by DIN 766 (reproduction).
    npt.assert_allclose(chain.BREAKING_OVER_WORKING, [4, 4, 3, 3, 4], rtol=1e-12)
