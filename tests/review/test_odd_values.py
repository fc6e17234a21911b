"""Whatever is given, what comes back is an answer or a fault."""

from decimal import Decimal
from fractions import Fraction
from typing import Any

import pytest

import anchorcalc


@pytest.mark.parametrize(
    "raw", [Decimal("sNaN"), Fraction(10**400), 10**5000, -(10**5000)], ids=["signalling nan", "fraction", "long", "long and negative"]
)
def test_a_number_beyond_all_floats_is_not_finite(raw: Any) -> None:
    with pytest.raises(anchorcalc.AnchorcalcError) as caught:
        anchorcalc.swing_radius(rode_out="40 m", boat_length="9 m", depth=raw)
    assert [fault.code for fault in caught.value.faults] == ["not_finite"]


@pytest.mark.parametrize("raw", [[10**5000], {"value": 10**5000, "unit": "m"}], ids=["in a list", "in a mapping"])
def test_a_number_too_long_to_be_written_is_named_by_its_type(raw: Any) -> None:
    with pytest.raises(anchorcalc.AnchorcalcError) as caught:
        anchorcalc.swing_radius(rode_out="40 m", boat_length="9 m", depth=raw)
    assert caught.value.faults[0].given == f"a {type(raw).__name__}"


def test_a_list_within_lists_without_end_is_a_fault() -> None:
    nested: Any = []
    for _ in range(100_000):
        nested = [nested]
    with pytest.raises(anchorcalc.AnchorcalcError) as caught:
        anchorcalc.swing_radius(rode_out="40 m", boat_length="9 m", depth=nested)
    assert caught.value.faults[0].code == "wrong_kind"


@pytest.mark.parametrize("given", [5, None, b"4 m"])
def test_what_is_no_text_and_what_is_no_unit_are_faults(given: Any) -> None:
    with pytest.raises(anchorcalc.AnchorcalcError):
        anchorcalc.find_quantities(given)
    with pytest.raises(anchorcalc.AnchorcalcError):
        anchorcalc.rode_to_let_out(depth="4 m").results.rode_out.to(given)
