"""Anchor, chain and line by length of the boat against a published code."""

import numpy as np
import numpy.testing as npt
import pytest

from anchorcalc.physics.codes import FISHERMAN
from anchorcalc.physics.constants import MILLIMETRE
from anchorcalc.physics.sizing import (
    anchor_mass_by_table,
    boat_is_outside_anchor_table,
    chain_size_by_table,
    kedge_mass_by_table,
    line_size_by_table,
)

# IMO-published Code of Safety for Small Commercial Vessels in the Caribbean, Annex 7 (read): [m]; main anchor, kedge [kg]; chain, nylon [mm].
CODE = [
    (6, 8, 4, 6, 12),
    (7, 9, 4, 8, 12),
    (8, 10, 5, 8, 12),
    (9, 11, 5, 8, 12),
    (10, 13, 6, 8, 12),
    (11, 15, 7, 8, 12),
    (12, 18, 9, 8, 14),
    (13, 21, 10, 10, 14),
    (14, 24, 12, 10, 14),
    (15, 27, 13, 10, None),
    (16, 30, 15, 10, None),
    (17, 34, 17, 10, None),
    (18, 38, 19, 10, None),
    (19, 42, 21, 12, None),
    (20, 47, 23, 12, None),
    (21, 52, 26, 12, None),
    (22, 57, 28, 12, None),
    (23, 62, 31, 12, None),
    (24, 68, 34, 12, None),
]
ROWS = pytest.mark.parametrize(("length", "anchor", "kedge", "chain", "line"), CODE)


@ROWS
def test_row_is_as_printed(length: int, anchor: int, kedge: int, chain: int, line: int | None) -> None:
    npt.assert_allclose(anchor_mass_by_table(boat_length=length), anchor, rtol=1e-12)
    npt.assert_allclose(kedge_mass_by_table(boat_length=length), kedge, rtol=1e-12)
    npt.assert_allclose(chain_size_by_table(boat_length=length) / MILLIMETRE, chain, rtol=1e-12)
    if line is not None:
        npt.assert_allclose(line_size_by_table(boat_length=length) / MILLIMETRE, line, rtol=1e-12)


@ROWS
def test_length_between_two_rows_takes_the_longer(length: int, anchor: int, kedge: int, chain: int, line: int | None) -> None:
    npt.assert_allclose(anchor_mass_by_table(boat_length=length - 0.5), anchor, rtol=1e-12)


def test_line_beyond_14_m_is_the_least_that_the_other_version_prints() -> None:
    # A UK version of the code prints 14, 16 or 19 mm there, not row by row (reproduction): the weaker is taken.
    npt.assert_allclose(line_size_by_table(boat_length=np.arange(15.0, 25.0)) / MILLIMETRE, 14, rtol=1e-12)


def test_ordinary_anchor_is_a_third_heavier() -> None:
    # Special Service Craft rules, part 3 ch. 5 sec. 5, 5.1.2 (rule read): 30 kg of high holding power counts as 39.9 kg (computed).
    npt.assert_allclose(anchor_mass_by_table(boat_length=16.0, anchor_kind=FISHERMAN), 39.9, rtol=0, atol=0.05)


def test_kinds_of_high_holding_power_count_at_their_own_mass() -> None:
    # Which kinds those are (fisherman, grapnel and mushroom are not): common practice, no source.
    ours = anchor_mass_by_table(boat_length=16.0, anchor_kind=np.arange(7)) / 30.0
    npt.assert_allclose(ours, [1, 1, 1, 1, 1.33, 1.33, 1.33], rtol=1e-12)


def test_chain_is_no_thinner_than_canada_asks() -> None:
    # Transport Canada, small-vessel guidance, anchors and cable (read): 9.5 mm of chain to a 45 kg anchor. The 20 m row: 47 kg.
    assert chain_size_by_table(boat_length=20.0) >= 9.5 * MILLIMETRE


def test_mass_beyond_the_table_meets_it_at_the_edge_and_reaches_what_a_ship_carries() -> None:
    # IACS Recommendation No. 10 (Rev. 5, June 2023), Table 1 (read): the least ship in it (equipment number 50 to 70, about 30 m and more)
    # carries a stockless anchor of 180 kg; those count a third heavier, so 135 kg of high holding power. A trend, not a figure.
    npt.assert_allclose(anchor_mass_by_table(boat_length=24.0 * (1 + 1e-9)), 68.0, rtol=1e-8)
    assert 100 < anchor_mass_by_table(boat_length=30.0) < 180


def test_flag_tells_boats_outside_the_code() -> None:
    # A rule of this library: it says where the printed rows end.
    npt.assert_array_equal(boat_is_outside_anchor_table(boat_length=np.array([5.9, 6, 24, 24.1])), [True, False, False, True])
