"""Holding of anchors against the published power law, shares of firm sand and shares of the flat pull."""

import numpy as np
import numpy.testing as npt
import pytest

from anchorcalc.physics.codes import ANCHOR_KINDS, CLAY, CORAL, FISHERMAN, GRASS, GRAVEL, MUD, MUSHROOM, PIVOTING_FLUKE, ROCK, SAND
from anchorcalc.physics.constants import GRAVITY, POUND, POUND_FORCE
from anchorcalc.physics.holding import (
    has_holding_figure,
    holding_band,
    holding_by_power_law,
    holding_is_extrapolated,
    least_anchor_mass,
    share_of_flat_pull,
)

# UFC 4-159-03 (2005), eq. (26), H = HR·(W/WR)^b with WR = 10 000 lb: read; HR and b of its Table 5-3: memory.
# mass [lb], holding of the reference anchor over its weight, exponent; holding [lbf]
POWER_LAW = [
    (10000, 7.0, 0.80, 70000),  # stockless in sand
    (10000, 4.6, 0.92, 46000),  # stockless, flukes fixed open, in mud
    (10000, 2.4, 0.92, 24000),  # stockless, flukes free, in mud
    (10000, 12.6, 0.80, 126000),  # lightweight in sand
    (10000, 8.7, 0.92, 87000),  # lightweight in mud
    (3000, 12.6, 0.80, 48091),
    (3000, 8.7, 0.92, 28739),
    (1000, 7.0, 0.80, 11094),
    (100, 12.6, 0.80, 3165),
    (25, 12.6, 0.80, 1044),
]
# The pivoting fluke (lightweight) of these, eq. (26) read, HR, b and the 30 % memory: bottom, mass [lb], holding [lbf].
FLUKE = [(SAND, 3000, 48091), (MUD, 3000, 28739), (SAND, 10000, 126000), (MUD, 10000, 87000), (SAND, 100, 3165)]
KINDS = np.arange(len(ANCHOR_KINDS))


@pytest.mark.parametrize(("mass", "ratio", "exponent", "holding"), POWER_LAW)
def test_power_law_gives_the_worked_figures(mass: int, ratio: float, exponent: float, holding: int) -> None:
    ours = holding_by_power_law(anchor_mass=mass * POUND, reference_ratio=ratio, exponent=exponent)
    npt.assert_allclose(ours / POUND_FORCE, holding, rtol=0, atol=0.5)


def test_reference_mass_is_10_000_lb() -> None:
    # The same source gives it as 4536 kg (read): there the holding is the reference figure, whatever the exponent.
    for exponent in (0.8, 0.92):
        npt.assert_allclose(holding_by_power_law(anchor_mass=4536.0, reference_ratio=1.0, exponent=exponent) / POUND_FORCE, 10000, rtol=0, atol=1)


@pytest.mark.parametrize(("exponent", "ratio"), [(0.8, 1.741), (0.92, 1.892)])
def test_twice_the_mass_holds_less_than_twice_as_much(exponent: float, ratio: float) -> None:
    # UFC 4-159-03 (2005), eq. (26) (read): 2 to the power of the exponent (computed).
    single, double = (holding_by_power_law(anchor_mass=mass, reference_ratio=1.0, exponent=exponent) for mass in (500.0, 1000.0))
    npt.assert_allclose(double / single, ratio, rtol=0, atol=0.0005)


@pytest.mark.parametrize(("bottom", "mass", "holding"), FLUKE)
def test_tested_fluke_holds_the_power_law_less_and_plus_30_per_cent(bottom: int, mass: int, holding: int) -> None:
    band = holding_band(anchor_kind=PIVOTING_FLUKE, anchor_mass=mass * POUND, bottom=bottom)
    npt.assert_allclose(np.array([band.low, band.high]) / POUND_FORCE, [0.7 * holding, 1.3 * holding], rtol=0, atol=0.65)


def test_below_the_tested_masses_the_band_widens_round_the_power_law() -> None:
    # 25 lb lightweight in sand: about 1044 lbf by the power law, "not to be trusted" (memory).
    band = holding_band(anchor_kind=PIVOTING_FLUKE, anchor_mass=25 * POUND, bottom=SAND)
    assert band.low < 0.7 * 1044 * POUND_FORCE
    npt.assert_allclose(band.high / POUND_FORCE, 1.3 * 1044, rtol=0, atol=0.65)


def test_band_of_an_ordinary_anchor_holds_what_stockless_ones_are_said_to() -> None:
    # A trawler-yacht design text (reproduction): stockless anchors, 3 times their weight in mud and 7 in sand.
    for bottom, times in ((MUD, 3), (SAND, 7)):
        band = holding_band(anchor_kind=FISHERMAN, anchor_mass=15.0, bottom=bottom)
        assert band.low < times * 15.0 * GRAVITY < band.high


def test_stiff_clay_holds_half_as_much_again_as_sand() -> None:
    # Passagemaking magazine, "Anchor math and management", part 2 (read), ± 30 %: the high end of clay.
    clay, sand = (holding_band(anchor_kind=KINDS, anchor_mass=15.0, bottom=bottom).high for bottom in (CLAY, SAND))
    npt.assert_allclose(clay / sand, 1.5, rtol=1e-12)


@pytest.mark.parametrize("bottom", [MUD, GRAVEL])
def test_soft_bottoms_hold_a_third_to_two_thirds_of_sand(bottom: int) -> None:
    # The same article (read): mud, sticky clay, loose sand, gravel. Not for the fluke in mud (power law) and the mushroom (made for mud).
    kinds = np.array([kind for kind in KINDS if kind not in (PIVOTING_FLUKE, MUSHROOM)])
    soft, sand = (holding_band(anchor_kind=kinds, anchor_mass=100 * POUND, bottom=place) for place in (bottom, SAND))
    npt.assert_allclose(soft.low / sand.low, 1 / 3, rtol=1e-12)
    npt.assert_allclose(soft.high / sand.high, 2 / 3, rtol=1e-12)


def test_fluke_in_mud_keeps_the_upper_share_of_the_article_by_the_power_law() -> None:
    # Both sources side by side at 10 000 lb (article read, Table 5-3 from memory): 0.69 by the
    # power law, two thirds by the article (printed in thirds).
    mud, sand = (holding_band(anchor_kind=PIVOTING_FLUKE, anchor_mass=10000 * POUND, bottom=bottom).low for bottom in (MUD, SAND))
    npt.assert_allclose(mud / sand, 0.69, rtol=0, atol=0.005)


# D. Casey, magazine article on scope, table reproduced in a public community wiki (reproduction); ± 10 points.
@pytest.mark.parametrize(("scope", "share"), [(10, 1.0), (7, 0.91), (6, 0.85), (5, 0.77), (4, 0.67), (3, 0.53), (2, 0.35)])
def test_share_of_the_flat_pull_is_as_printed(scope: int, share: float) -> None:
    npt.assert_allclose(share_of_flat_pull(pull_angle=np.arcsin(1 / scope)), share, rtol=1e-12)
    flat, steep = (holding_band(anchor_kind=1, anchor_mass=15.0, bottom=SAND, pull_angle=angle) for angle in (0.0, np.arcsin(1 / scope)))
    npt.assert_allclose(steep.low / flat.low, share, rtol=1e-12)
    npt.assert_allclose(steep.high / flat.high, share, rtol=1e-12)


def test_straight_up_nothing_holds() -> None:
    assert share_of_flat_pull(pull_angle=np.pi / 2) == 0.0
    assert least_anchor_mass(load=1000.0, anchor_kind=1, bottom=SAND, pull_angle=np.pi / 2) == np.inf


def test_rock_coral_and_grass_have_no_figure() -> None:
    for bottom in (ROCK, CORAL, GRASS):
        assert not has_holding_figure(bottom=bottom)
        assert np.all(np.isnan(np.array(holding_band(anchor_kind=KINDS, anchor_mass=15.0, bottom=bottom))))
        assert np.all(np.isnan(least_anchor_mass(load=1000.0, anchor_kind=KINDS, bottom=bottom)))
    for bottom in (SAND, MUD, CLAY, GRAVEL):
        assert has_holding_figure(bottom=bottom)
        assert np.all(np.isfinite(np.array(holding_band(anchor_kind=KINDS, anchor_mass=15.0, bottom=bottom))))


def test_flag_tells_what_was_never_tested() -> None:
    # A rule of this library: it says where the tested masses end.
    pounds = np.array([99, 100, 40000, 40001])
    npt.assert_array_equal(holding_is_extrapolated(anchor_kind=PIVOTING_FLUKE, anchor_mass=pounds * POUND, bottom=MUD), [True, False, False, True])
    assert np.all(holding_is_extrapolated(anchor_kind=KINDS[1:], anchor_mass=100.0, bottom=SAND))
    assert holding_is_extrapolated(anchor_kind=PIVOTING_FLUKE, anchor_mass=100.0, bottom=GRAVEL)
    assert holding_is_extrapolated(anchor_kind=PIVOTING_FLUKE, anchor_mass=100.0, bottom=SAND, pull_angle=np.radians(31))
