"""What must hold of loads, strengths, holding and weights whatever the boat."""

from typing import Any

import numpy as np
import numpy.testing as npt
import pytest
from hypothesis import given
from hypothesis import strategies as st

from anchorcalc.physics import codes
from anchorcalc.physics.boat_shape import usual_beam
from anchorcalc.physics.constants import FOOT, INCH, KNOT, MILLIMETRE, POUND_FORCE
from anchorcalc.physics.current import current_drag
from anchorcalc.physics.engine import bollard_pull_band, pull_astern
from anchorcalc.physics.hauling import hanging_load, is_work_for_hands, rode_weight_hanging, windlass_pull
from anchorcalc.physics.holding import has_holding_figure, holding_band, holding_is_extrapolated, least_anchor_mass, share_of_flat_pull
from anchorcalc.physics.next_size import chain_size_for, line_size_for, shackle_size_for
from anchorcalc.physics.sizing import anchor_mass_by_table, chain_size_by_table, kedge_mass_by_table, line_size_by_table
from anchorcalc.physics.strength import chain_breaking_load, chain_working_load, line_breaking_load, line_working_load, shackle_working_load
from anchorcalc.physics.tables import anchor, chain, design_load, holding, rope, shackle
from anchorcalc.physics.tables.design_load import LENGTHS, WORKING_LOADS
from anchorcalc.physics.weights import chain_mass_high, chain_mass_low, line_mass, weight_in_air, weight_in_water
from anchorcalc.physics.wind import load_is_extrapolated, load_standard, load_steady, wind_equivalent
from anchorcalc.vocabulary import TERMS

lengths = st.floats(1.0, 60.0)
winds = st.floats(0.1, 80.0)
currents = st.floats(0.0, 8.0)
beam_shares = st.floats(0.15, 0.6)
forms = st.sampled_from(range(3))
kinds = st.sampled_from(range(7))
bottoms = st.sampled_from([codes.SAND, codes.MUD, codes.CLAY, codes.GRAVEL])
grades = st.sampled_from(range(5))
materials = st.sampled_from(range(4))
masses = st.floats(0.5, 1000.0)
angles = st.floats(0.0, np.radians(45.0))
grow = st.floats(1.0, 3.0)
loads = st.floats(1.0, 1e6)

ROUNDING = 1.0 - 1e-12


@pytest.mark.parametrize(
    ("term", "words"),
    [
        ("boat_form", codes.BOAT_FORMS),
        ("anchor_kind", codes.ANCHOR_KINDS),
        ("bottom", codes.BOTTOMS),
        ("chain_grade", codes.CHAIN_GRADES),
        ("line_material", codes.LINE_MATERIALS),
    ],
)
def test_codes_of_the_tables_are_the_words_of_the_vocabulary_in_their_order(term: str, words: tuple[str, ...]) -> None:
    assert TERMS[term].choices == words


@given(length=lengths, wind=winds, current=currents, form=forms, share=beam_shares, longer=grow)
def test_both_loads_grow_with_length_beam_wind_and_stream(length: float, wind: float, current: float, form: int, share: float, longer: float) -> None:
    boat: dict[str, Any] = {"boat_length": length, "wind": wind, "current": current, "beam": share * length, "boat_form": form}
    for load in (load_standard, load_steady):
        least = load(**boat)
        for name in ("boat_length", "wind", "current", "beam"):
            assert load(**boat | {name: boat[name] * longer}) >= least * ROUNDING


@given(length=lengths, wind=winds, form=forms, current=currents)
def test_standard_load_is_never_below_a_row_that_the_boat_exceeds(length: float, wind: float, form: int, current: float) -> None:
    load = load_standard(boat_length=length, wind=wind, boat_form=form, current=current)
    rows = WORKING_LOADS[length > LENGTHS] * (wind / (30 * KNOT)) ** 2
    assert np.all(load >= rows * ROUNDING)


@given(length=lengths, wind=winds, form=forms, share=beam_shares)
def test_standard_load_is_never_below_the_steady_drag(length: float, wind: float, form: int, share: float) -> None:
    boat: dict[str, Any] = {"boat_length": length, "wind": wind, "beam": share * length, "boat_form": form}
    assert load_standard(**boat) >= load_steady(**boat)


@given(length=lengths, wind=winds, form=forms, times=grow)
def test_loads_go_with_the_square_of_the_wind(length: float, wind: float, form: int, times: float) -> None:
    for load in (load_standard, load_steady):
        weak, strong = (load(boat_length=length, wind=speed, boat_form=form) for speed in (wind, wind * times))
        npt.assert_allclose(strong, weak * times**2, rtol=1e-9)


@given(length=lengths, wind=winds, form=forms, share=beam_shares, current=currents)
def test_wind_equivalent_turns_the_standard_load_back_into_the_wind(length: float, wind: float, form: int, share: float, current: float) -> None:
    boat: dict[str, Any] = {"boat_length": length, "beam": share * length, "boat_form": form, "current": current}
    still = load_standard(wind=0.0, **boat)
    load = load_standard(wind=wind, **boat)
    npt.assert_allclose(wind_equivalent(load=load, **boat), wind, rtol=1e-9 * float(load / (load - still)))


def test_load_that_the_stream_alone_makes_stands_for_no_wind() -> None:
    assert wind_equivalent(load=1.0, boat_length=10.0, current=2.0) == 0.0


@given(form=forms)
def test_load_meets_the_table_at_its_far_edge(form: int) -> None:
    edge = 60 * FOOT
    within, beyond = (load_standard(boat_length=edge * part, wind=30 * KNOT, beam=4.0, boat_form=form) for part in (1.0, 1.0 + 1e-6))
    npt.assert_allclose(beyond, within, rtol=1e-5)
    wide = (18 if form == codes.MOTOR else 15) * FOOT
    within, beyond = (load_standard(boat_length=9.0, wind=30 * KNOT, beam=wide * part, boat_form=form) for part in (1.0, 1.0 + 1e-6))
    npt.assert_allclose(beyond, within, rtol=1e-5)
    npt.assert_allclose(within / POUND_FORCE, 2000, rtol=1e-12)


def test_row_is_its_row_in_every_unit() -> None:
    exact = np.array([30 * 0.3048, 9.144, 30 * 12 * 0.0254, np.nextafter(9.144, 10), np.nextafter(9.144, 9)])
    npt.assert_allclose(load_standard(boat_length=exact, wind=30 * 1852 / 3600) / POUND_FORCE, 700, rtol=1e-12)


@given(length=lengths, wind=winds, form=forms)
def test_beam_that_is_nan_counts_as_not_given(length: float, wind: float, form: int) -> None:
    boat: dict[str, Any] = {"boat_length": length, "wind": wind, "boat_form": form}
    for load in (load_standard, load_steady):
        npt.assert_allclose(load(**boat, beam=np.nan, draught=np.nan, current=1.0), load(**boat, current=1.0), rtol=1e-12)


@given(length=lengths, form=forms)
def test_multihull_without_a_beam_is_taken_at_her_usual_beam(length: float, form: int) -> None:
    bare = load_standard(boat_length=length, wind=15.0, boat_form=codes.MULTIHULL)
    npt.assert_allclose(
        bare,
        load_standard(boat_length=length, wind=15.0, boat_form=codes.MULTIHULL, beam=usual_beam(boat_length=length, boat_form=codes.MULTIHULL)),
        rtol=1e-12,
    )
    assert bare >= load_standard(boat_length=length, wind=15.0, boat_form=form) * ROUNDING


@given(length=lengths, current=st.floats(0.01, 8.0), form=forms, times=grow)
def test_stream_drags_a_little_less_than_its_square(length: float, current: float, form: int, times: float) -> None:
    slow, fast = (current_drag(boat_length=length, current=speed, boat_form=form) for speed in (current, current * times))
    assert slow * ROUNDING <= fast <= slow * times**2 * (1 + 1e-12)


@given(grade=grades, size=st.floats(6.4, 40.0).filter(lambda size: not np.isclose(chain.INCH_SIZES, size * MILLIMETRE, rtol=1e-6).any()))
def test_chain_between_rows_is_never_stronger_than_a_thicker_row_nor_than_it_breaks(grade: int, size: float) -> None:
    ours = chain_working_load(chain_size=size * MILLIMETRE, chain_grade=grade)
    thicker = chain_working_load(chain_size=chain.METRIC_SIZES[size * MILLIMETRE <= chain.METRIC_SIZES], chain_grade=grade)
    assert np.all(ours <= thicker)
    assert ours < chain_breaking_load(chain_size=size * MILLIMETRE, chain_grade=grade)


@given(grade=grades, load=loads, inch=st.booleans())
def test_next_chain_size_passes_and_the_one_before_it_does_not(grade: int, load: float, inch: bool) -> None:
    sizes = chain.INCH_SIZES if inch else chain.METRIC_SIZES
    size = chain_size_for(load=load, chain_grade=grade, inch=inch)
    passing = np.asarray(chain_working_load(chain_size=sizes, chain_grade=grade) >= load * (1 - 1e-9))
    assert np.isnan(size) == (not passing.any())
    assert np.isnan(size) or size == sizes[passing][0]


@given(material=materials, load=loads, inch=st.booleans())
def test_next_line_size_passes_and_the_one_before_it_does_not(material: int, load: float, inch: bool) -> None:
    sizes = rope.SIZES if inch else rope.METRIC_SIZES
    size = line_size_for(load=load, line_material=material, inch=inch)
    passing = np.asarray(line_working_load(line_size=sizes, line_material=material) >= load * (1 - 1e-9))
    assert np.isnan(size) == (not passing.any())
    assert np.isnan(size) or size == sizes[passing][0]


@given(load=loads, inch=st.booleans())
def test_next_shackle_size_passes_and_the_one_before_it_does_not(load: float, inch: bool) -> None:
    sizes = shackle.INCH_SIZES if inch else shackle.METRIC_SIZES
    size = shackle_size_for(load=load, inch=inch)
    passing = np.asarray(shackle_working_load(shackle_size=sizes) >= load * (1 - 1e-9))
    assert np.isnan(size) == (not passing.any())
    assert np.isnan(size) or size == sizes[passing][0]


@given(material=materials, size=st.floats(6.35, 40.0), bigger=grow)
def test_thicker_line_is_never_weaker_nor_lighter(material: int, size: float, bigger: float) -> None:
    for of_line in (line_working_load, line_breaking_load, line_mass):
        thin, thick = (of_line(line_size=diameter * MILLIMETRE, line_material=material) for diameter in (size, size * bigger))
        assert thick >= thin * ROUNDING


@given(size=st.floats(0.0, 60.0), bigger=grow)
def test_thicker_chain_is_never_lighter_and_the_two_masses_never_cross(size: float, bigger: float) -> None:
    for mass in (chain_mass_low, chain_mass_high):
        assert mass(chain_size=size * bigger * MILLIMETRE) >= mass(chain_size=size * MILLIMETRE) * ROUNDING
    assert chain_mass_low(chain_size=size * MILLIMETRE) <= chain_mass_high(chain_size=size * MILLIMETRE)


@given(kind=kinds, bottom=bottoms, mass=masses, angle=angles, times=grow)
def test_heavier_anchor_holds_more_and_a_steeper_pull_less(kind: int, bottom: int, mass: float, angle: float, times: float) -> None:
    here: dict[str, Any] = {"anchor_kind": kind, "bottom": bottom}
    band = holding_band(anchor_mass=mass, pull_angle=angle, **here)
    heavier = holding_band(anchor_mass=mass * times, pull_angle=angle, **here)
    steeper = holding_band(anchor_mass=mass, pull_angle=angle * times, **here)
    assert 0.0 < band.low < band.high
    assert np.all(np.array(heavier) >= np.array(band) * ROUNDING)
    assert np.all(np.array(steeper) <= np.array(band) * (1 + 1e-12))


@given(kind=kinds, bottom=bottoms, load=loads, angle=angles)
def test_least_anchor_mass_holds_the_load_and_no_more(kind: int, bottom: int, load: float, angle: float) -> None:
    here: dict[str, Any] = {"anchor_kind": kind, "bottom": bottom, "pull_angle": angle}
    mass = least_anchor_mass(load=load, **here)
    npt.assert_allclose(holding_band(anchor_mass=mass, **here).low, load, rtol=1e-9)


@given(kind=kinds, bottom=bottoms)
def test_holding_has_no_step_at_the_edge_of_what_was_tested(kind: int, bottom: int) -> None:
    below, above = (holding_band(anchor_kind=kind, anchor_mass=holding.EDGE_MASS * part, bottom=bottom) for part in (1 - 1e-9, 1 + 1e-9))
    npt.assert_allclose(np.array(below), np.array(above), rtol=1e-8)


@given(angle=st.floats(0.0, np.pi / 2), further=st.floats(0.0, 1e-6))
def test_share_of_the_flat_pull_has_no_steps(angle: float, further: float) -> None:
    drop = share_of_flat_pull(pull_angle=angle) - share_of_flat_pull(pull_angle=angle + further)
    assert 0.0 <= drop <= 3.0 * further + 1e-15


@given(length=lengths, longer=grow, kind=kinds)
def test_longer_boat_is_never_asked_for_less(length: float, longer: float, kind: int) -> None:
    for of_boat in (anchor_mass_by_table, kedge_mass_by_table, chain_size_by_table, line_size_by_table):
        assert of_boat(boat_length=length * longer) >= of_boat(boat_length=length) * ROUNDING
    assert anchor_mass_by_table(boat_length=length, anchor_kind=kind) >= anchor_mass_by_table(boat_length=length)


@given(depth=st.floats(0.5, 100.0), height=st.floats(0.0, 5.0), reach=st.floats(0.0, 200.0), mass=masses, size=st.floats(6.0, 16.0), more=grow)
def test_hanging_load_grows_with_depth_chain_and_anchor(depth: float, height: float, reach: float, mass: float, size: float, more: float) -> None:
    chain_mass = chain_mass_high(chain_size=size * MILLIMETRE)
    rode: dict[str, Any] = {"depth": depth, "bow_height": height, "chain": reach, "chain_mass": chain_mass, "line_mass": 0.1}
    least = rode_weight_hanging(**rode)
    for name in ("bow_height", "chain", "chain_mass", "line_mass"):
        assert rode_weight_hanging(**rode | {name: rode[name] * more}) >= least * ROUNDING
    all_chain: dict[str, Any] = rode | {"chain": np.inf}  # where line follows, chain that comes under water as the depth grows loses weight
    assert rode_weight_hanging(**all_chain | {"depth": depth * more}) >= rode_weight_hanging(**all_chain) * ROUNDING
    assert least <= (depth + height) * weight_in_air(mass=np.maximum(chain_mass, 0.1)) * (1 + 1e-12)
    assert hanging_load(rode_weight=least, anchor_mass=mass) > least


@given(hanging=loads, hauling=loads, size=st.floats(0.0, 0.016))
def test_windlass_pulls_more_than_either_load(hanging: float, hauling: float, size: float) -> None:
    assert windlass_pull(hanging_load=hanging, hauling_load=hauling, chain_size=size) > 2 * max(hanging, hauling)


@given(mass=masses, density=st.floats(1100.0, 9000.0), water=st.floats(998.0, 1030.0))
def test_water_never_adds_weight(mass: float, density: float, water: float) -> None:
    assert 0.0 < weight_in_water(mass=mass, density=density, water_density=water) < weight_in_air(mass=mass)


@given(power=st.floats(500.0, 1e6), diameter=st.floats(0.15, 2.0), more=grow)
def test_more_power_and_a_larger_propeller_never_pull_less(power: float, diameter: float, more: float) -> None:
    pull = pull_astern(engine_power=power, propeller_diameter=diameter)
    assert pull_astern(engine_power=power * more, propeller_diameter=diameter) >= pull * ROUNDING
    assert pull_astern(engine_power=power, propeller_diameter=diameter * more) >= pull * ROUNDING
    assert pull <= pull_astern(engine_power=power) <= bollard_pull_band(engine_power=power).high / 2


@pytest.mark.parametrize(
    "table", [anchor.ANCHOR_MASSES, chain.INCH_G30, design_load.WORKING_LOADS, holding.RATIO_LOW, rope.SIZES, shackle.INCH_SIZES]
)
def test_tables_cannot_be_written_to(table: np.ndarray[Any, Any]) -> None:
    with pytest.raises(ValueError, match="read-only"):
        table[0] = 1.0


def test_a_number_in_is_a_number_out_and_a_fleet_is_its_boats_one_by_one() -> None:
    rng = np.random.default_rng(7)
    length, wind, mass, angle = rng.uniform(2, 30, 50), rng.uniform(1, 40, 50), rng.uniform(1, 100, 50), rng.uniform(0, 1, 50)
    form, kind, bottom = rng.integers(0, 3, 50), rng.integers(0, 7, 50), rng.integers(0, 7, 50)
    grade, size, load = rng.integers(0, 5, 50), rng.uniform(5, 18, 50) * MILLIMETRE, rng.uniform(100, 2e4, 50)
    cases: list[tuple[Any, dict[str, Any]]] = [
        (load_standard, {"boat_length": length, "wind": wind, "boat_form": form, "beam": length / 3, "current": wind / 30}),
        (load_steady, {"boat_length": length, "wind": wind, "boat_form": form}),
        (wind_equivalent, {"load": load, "boat_length": length, "boat_form": form}),
        (load_is_extrapolated, {"boat_length": length, "boat_form": form}),
        (least_anchor_mass, {"load": load, "anchor_kind": kind, "bottom": bottom, "pull_angle": angle}),
        (has_holding_figure, {"bottom": bottom}),
        (holding_is_extrapolated, {"anchor_kind": kind, "anchor_mass": mass, "bottom": bottom, "pull_angle": angle}),
        (chain_working_load, {"chain_size": size, "chain_grade": grade}),
        (line_working_load, {"line_size": size, "line_material": form}),
        (chain_size_for, {"load": load, "chain_grade": grade, "inch": form == 1}),
        (line_size_for, {"load": load, "line_material": form, "inch": form == 1}),
        (shackle_size_for, {"load": load, "inch": form == 1}),
        (anchor_mass_by_table, {"boat_length": length, "anchor_kind": kind}),
        (pull_astern, {"engine_power": load * 10, "propeller_diameter": size * 40}),
        (is_work_for_hands, {"load": load}),
        (chain_mass_high, {"chain_size": size}),
    ]
    for solve, columns in cases:
        fleet = solve(**columns)
        for row in range(50):
            single = solve(**{name: column[row].item() for name, column in columns.items()})
            assert np.isscalar(single)
            npt.assert_allclose(np.asarray(single), fleet[row], rtol=1e-15, err_msg=solve.__name__)


def test_inch_and_metric_rows_of_nearly_one_size_stay_two() -> None:
    five_sixteenths, eight = (chain_working_load(chain_size=size) for size in (5 / 16 * INCH, 8 * MILLIMETRE))
    npt.assert_allclose(five_sixteenths / POUND_FORCE, 1900, rtol=1e-12)
    npt.assert_allclose(eight / 1000, 7.5, rtol=1e-12)
