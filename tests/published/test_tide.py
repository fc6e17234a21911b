"""Height of tide against printed tables, formulas and worked examples; heights stay in the unit of their source."""

import numpy as np
import numpy.testing as npt
import pytest

from anchorcalc.physics.tide import elapsed_part, moment_at_height, part_of_tide_at_height, tide_height, tide_height_by_twelfths


def seconds(clock: str) -> float:
    """Seconds after midnight of a clock time."""
    hours, minutes = clock.split(":")
    return 3600.0 * int(hours) + 60.0 * int(minutes)


# NOAA Tide Tables, Table 3, row of 6 h and 10 ft: row recalled, and worked again from the curve that the table is built on.
MINUTES_FROM_TURN = np.arange(12, 181, 12)
TABLE_3_ROW = np.array([0.0, 0.1, 0.2, 0.4, 0.7, 1.0, 1.3, 1.7, 2.1, 2.5, 3.0, 3.5, 4.0, 4.5, 5.0])  # ft


def test_half_cosine_gives_the_recalled_row_of_the_correction_table() -> None:
    npt.assert_allclose(tide_height(low=0.0, high=10.0, elapsed=MINUTES_FROM_TURN / 360), TABLE_3_ROW, rtol=0, atol=0.05)


@pytest.mark.parametrize(
    ("duration", "from_turn", "tide_range", "correction"),  # min, min, ft, ft
    [
        (300, 100, 4, 1.0),
        (420, 84, 6, 0.6),
        (500, 133, 8, 1.3),
        (380, 152, 5, 1.7),
        (460, 153, 15, 3.7),
        (400, 67, 20, 1.4),
        (540, 162, 12, 2.5),
        (360, 180, 3, 1.5),
        (640, 299, 18, 8.1),
        (360, 180, 24, 12.0),  # half the range, twice the correction. US Navy aerographer manual, Table 6-6-1 (rule read)
        (720, 240, 10, 2.5),  # half the duration, half the time from the turn. The same; its "double the correction" is a slip
        (490, 214, 9, 3.6),  # Canadian tide tables 5 and 5A, column 8 of 8 h 10 min (reproduction)
    ],
)
def test_half_cosine_gives_the_correction_of_the_tables(duration: float, from_turn: float, tide_range: float, correction: float) -> None:
    # NOAA Tide Tables, Table 3 (computed from its curve), where no other source stands
    npt.assert_allclose(tide_height(low=0.0, high=tide_range, elapsed=from_turn / duration), correction, rtol=0, atol=0.05)


MONTAGUE = "Canadian tide tables, Montague Harbour, 1 October 2003 (reproduction; to 0.1 ft, since table entries are the nearest)"
RAINSFORD = "US Power Squadrons Advanced Piloting notes, Rainsford Island, 19 April 2004 (read; moved to the middle of the fall)"
NAVY = "US Navy aerographer manual, Table 6-6-1 instructions (rule read, figures worked)"
AUSTRALIA = "Australian Hydrographic Service, heights between high and low waters (formula read, figures worked)"
SCHOOL = "school mathematics exercise (turns or function read, figure worked)"


@pytest.mark.parametrize(
    ("low", "low_at", "high", "high_at", "at", "height", "tolerance", "source"),
    [
        (2.2, "03:27", 11.4, "11:41", "07:00", 5.8, 0.1, MONTAGUE),
        (0.475, "17:12", 9.5, "11:11", "14:11", 5.0, 0.05, RAINSFORD),
        (1.0, "12:00", 9.0, "06:00", "07:00", 8.5, 0.05, NAVY),
        (0.0, "06:00", 4.0, "12:00", "08:00", 1.0, 0.005, AUSTRALIA),
        (1.0, "06:00", 3.0, "12:00", "10:30", 2.71, 0.005, SCHOOL),
        (1.0, "16:00", 5.0, "12:00", "13:00", 4.41, 0.005, SCHOOL),
    ],
)
def test_height_at_a_time_is_that_of_the_worked_example(
    *, low: float, low_at: str, high: float, high_at: str, at: str, height: float, tolerance: float, source: str
) -> None:
    elapsed = elapsed_part(low_at=seconds(low_at), high_at=seconds(high_at), at=seconds(at))
    npt.assert_allclose(tide_height(low=low, high=high, elapsed=elapsed), height, rtol=0, atol=tolerance, err_msg=source)


def test_water_reaches_6_m_at_14_07() -> None:  # KFUPM physics problem sheet (problem read, answer worked), to the minute
    moment = moment_at_height(low=3.0, high=15.0, low_at=seconds("12:00"), high_at=seconds("18:20"), height=6.0)
    npt.assert_allclose(moment, seconds("14:07"), rtol=0, atol=60.0)


def test_at_a_third_of_the_time_a_quarter_of_the_range_has_come() -> None:  # Australian Hydrographic Service, formula
    npt.assert_allclose(part_of_tide_at_height(low=0.0, high=4.0, height=1.0), 1 / 3, rtol=0, atol=1e-12)


HOUR = np.arange(7)
TWELFTHS = np.array([0, 1, 3, 6, 9, 11, 12])  # rule of twelfths, yachting-magazine almanac glossary (read)


def test_rule_of_twelfths_moves_1_2_3_3_2_1_twelfths() -> None:
    npt.assert_allclose(tide_height_by_twelfths(low=0.0, high=12.0, elapsed=HOUR / 6), TWELFTHS, rtol=0, atol=1e-12)


def test_half_cosine_keeps_the_rule_of_twelfths() -> None:  # printed in whole twelfths
    npt.assert_allclose(tide_height(low=0.0, high=12.0, elapsed=HOUR / 6), TWELFTHS, rtol=0, atol=0.5)


def test_rule_of_twelfths_is_never_more_than_0_0164_of_the_range_off_at_the_hours() -> None:  # computed from the two rules
    apart = tide_height(low=0.0, high=1.0, elapsed=HOUR / 6) - tide_height_by_twelfths(low=0.0, high=1.0, elapsed=HOUR / 6)
    assert 0.0163 < np.max(np.abs(apart)) <= 0.0164


@pytest.mark.parametrize(
    ("high", "low", "tide_range", "twelfth"),
    [
        (4.0, 0.5, 3.5, 0.29),  # nautical-training page, Portsmouth (read); its own 0.33 is a slip: 3.5/12 = 0.2917
        (3.73, 0.69, 3.04, 0.25),  # angling page after a coxswain course (read)
    ],
)
def test_first_hour_brings_a_twelfth_of_the_range(high: float, low: float, tide_range: float, twelfth: float) -> None:
    npt.assert_allclose(high - low, tide_range, rtol=0, atol=0.005)
    npt.assert_allclose(tide_height_by_twelfths(low=low, high=high, elapsed=1 / 6) - low, twelfth, rtol=0, atol=0.005)


def test_8_m_stand_at_15_00_by_both_rules() -> None:  # encyclopaedia entry on the rule of twelfths (read): low 2 m at noon, high 14 m
    elapsed = elapsed_part(low_at=seconds("12:00"), high_at=seconds("18:00"), at=seconds("15:00"))
    npt.assert_allclose(tide_height_by_twelfths(low=2.0, high=14.0, elapsed=elapsed), 8.0, rtol=1e-12)
    npt.assert_allclose(tide_height(low=2.0, high=14.0, elapsed=elapsed), 8.0, rtol=1e-12)


def test_eighteen_feet_at_half_tide_of_ten_feet_is_13_at_low_and_23_at_high_water() -> None:  # cruising magazine, November 2018 (read)
    height = tide_height(low=0.0, high=10.0, elapsed=0.5)
    npt.assert_allclose(np.array([18.0 - height, 18.0 + (10.0 - height)]), [13.0, 23.0], rtol=1e-12)
