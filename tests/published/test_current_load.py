"""Drag of a stream against the formulas of UFC 4-159-03, Design: Moorings (3 October 2005); figures worked from them."""

import numpy as np
import numpy.testing as npt
import pytest

from anchorcalc.physics.current import current_drag, current_form_drag, friction_coefficient, wetted_surface


@pytest.mark.parametrize(("beam", "draught", "current", "force"), [(3.5, 1.0, 1.0, 179.4), (3.0, 0.8, 1.029, 130.2)])
def test_form_drag_is_eq_16(beam: float, draught: float, current: float, force: float) -> None:
    # Eq. (16), coefficient 0.1 and sea water of 1025 kg/m³ (read, computed).
    npt.assert_allclose(current_form_drag(beam=beam, draught=draught, current=current, water_density=1025.0), force, rtol=0, atol=0.05)


@pytest.mark.parametrize(
    ("reynolds", "coefficient", "half_digit"), [(1e6, 0.0046875, 5e-8), (1e7, 0.003, 5e-8), (1e8, 0.00208333, 5e-9), (1e9, 0.00153061, 5e-9)]
)
def test_friction_is_eq_19(reynolds: float, coefficient: float, half_digit: float) -> None:
    # Eq. (19), the ITTC 1957 line (read, computed).
    npt.assert_allclose(friction_coefficient(reynolds=reynolds), coefficient, rtol=0, atol=half_digit)


def test_wetted_surface_is_eq_18() -> None:
    # Eq. (18), 50 kN displaced in sea water of 10.05 kN/m³ (read, computed).
    npt.assert_allclose(wetted_surface(waterline=9.0, draught=0.9, displaced_volume=50 / 10.05), 19.30, rtol=0, atol=0.005)


def test_whole_drag_is_more_than_form_drag_alone() -> None:
    # Friction and screw, eqs (17) to (22), come on top of eq. (16).
    current = np.array([0.25, 0.5, 1.0, 2.5])
    whole = current_drag(boat_length=9.0, beam=3.0, draught=0.8, current=current)
    assert np.all(whole > current_form_drag(beam=3.0, draught=0.8, current=current))
