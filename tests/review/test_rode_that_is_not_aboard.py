"""A boat file's rode is heeded also by questions that do not ask for it."""

import pytest

import anchorcalc

BOAT = {"chain": "10 m", "line": "50 m", "bow_height": "1.1 m", "scope": "5:1"}


@pytest.mark.parametrize(("depth", "short"), [("14 m", True), ("9 m", False)])
def test_a_mark_beyond_the_rode_aboard_is_warned_of(depth: str, short: bool) -> None:
    answer = anchorcalc.mark_to_stop_at(mark_interval="5 m", depth=depth, boat=BOAT)
    assert ("rode_short" in {caution.code for caution in answer.cautions}) == short


def test_without_a_boat_nothing_is_said_of_the_rode_aboard() -> None:
    answer = anchorcalc.mark_to_stop_at(mark_interval="5 m", depth="14 m")
    assert "rode_short" not in {caution.code for caution in answer.cautions}
