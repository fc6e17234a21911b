"""What a question says itself counts before the boat file, also where it is said by what makes an input."""

from typing import Any

import pytest

import anchorcalc


def test_rope_and_chain_that_were_said_count_before_the_rode_of_the_boat_file() -> None:
    answer = anchorcalc.deepest_anchorage(chain="10 m", line="20 m", boat={"rode_aboard": "60 m"})
    assert answer.results.deepest_depth.si == pytest.approx(30.0 / 7.0 - 1.2)
    assert answer.read.rode_aboard.origin == "asked"
    assert "rode_aboard (60 m, boat) is left aside" in answer.working[0]


def test_a_wind_that_is_asked_about_counts_before_the_load_of_the_boat_file() -> None:
    said = anchorcalc.two_anchor_load(boat_length="9 m", wind="40 kn", spread="60 deg")
    beside = anchorcalc.two_anchor_load(wind="40 kn", spread="60 deg", boat={"load": "1 kN", "boat_length": "9 m"})
    assert beside.results == said.results


def test_a_scope_that_was_said_counts_before_the_flat_pull_of_the_boat_file() -> None:
    said: dict[str, Any] = {"anchor_kind": "plough", "anchor_mass": "15 kg", "bottom": "sand", "scope": "3"}
    beside = anchorcalc.answer("holding", boat={"pull_angle": "0 deg"}, **said)
    assert beside.results == anchorcalc.answer("holding", **said).results


def test_the_rode_of_the_boat_file_counts_where_only_its_chain_was_said() -> None:
    answer = anchorcalc.rode_to_let_out(depth="4 m", chain="10 m", boat={"rode_aboard": "60 m", "line": "30 m"})
    assert answer.read.rode_aboard is not None
    assert answer.read.rode_aboard.si == 60.0


def test_a_headline_says_a_derived_load_and_rode_to_the_safe_side() -> None:
    strength = anchorcalc.chain_and_line(boat_length="9.5 m", wind="30 kn", chain_size="8 mm", line_size="14 mm")
    assert "4.01 kN" in strength.headline  # 4.0034 kN
    drop = anchorcalc.where_to_drop(depth="5.37 m", scope="6.3")  # 6.57 m × 6.3 = 41.391 m
    assert drop.results.rode_out.shown == "41.5 m"
    assert "let out 41.5 m" in drop.headline
