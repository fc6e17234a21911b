"""Headlines and workings that a tired skipper cannot misread."""

from typing import Any

import pytest

import anchorcalc


def test_a_sum_of_feet_and_metres_can_be_followed() -> None:
    answer = anchorcalc.rode_to_let_out(depth="12 ft", bow_height="1.2 m")
    assert answer.working[0] == "12 ft of water + 1.2 m (3.937 ft) of bow height + 0 ft of tide = 15.937 ft"  # 1.2 / 0.3048 = 3.93701
    assert anchorcalc.rode_to_let_out(depth="2 fathoms", bow_height="4 ft").working[0].startswith("2 fathoms (12 ft) of water + 4 ft of")


def test_less_water_than_was_wanted_under_the_keel_is_said_to_be_too_little() -> None:
    thin = anchorcalc.shallowest_anchorage(draught="1.6 m", tide_fall="1.2 m", depth="3 m")
    assert thin.headline.startswith("Too shallow: 0.2 m under the keel at low water, less than the 0.3 m wanted.")
    enough = anchorcalc.shallowest_anchorage(draught="1.6 m", tide_fall="1.2 m", depth="3.1 m")
    assert enough.headline.startswith("0.3 m under the keel at low water.")


def test_a_clearance_of_nothing_is_not_called_clear_by_0() -> None:
    answer = anchorcalc.swing_clearance(rode_out="35 m", depth="5 m", boat_length="9 m", distance="43.45 m")
    assert answer.headline == "She only just swings clear, with nothing to spare."


@pytest.mark.parametrize(("question", "name", "said", "would_do"), [("wind_load", "wind", "gale", '"30 kn"'), ("line_angle", "scope", "x", '"7:1"')])
def test_a_fault_says_what_would_do_for_that_input(question: str, name: str, said: str, would_do: str) -> None:
    given: dict[str, Any] = {name: said}
    with pytest.raises(anchorcalc.AnchorcalcError) as caught:
        anchorcalc.answer(question, **given)
    assert next(fault for fault in caught.value.faults if fault.input == name).would_do == would_do


def test_an_anchor_that_nobody_could_work_is_not_to_be_carried() -> None:
    answer = anchorcalc.anchor_size(boat_length="12 m", wind="60 kn", anchor_kind="mushroom", bottom="mud")
    assert answer.results.anchor_mass is not None
    assert answer.results.anchor_mass.si > 1000.0
    assert answer.headline.startswith("No mushroom that can be worked aboard will do")
