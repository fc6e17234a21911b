"""What will not do: each kind of bad input gets its own clear fault, and all faults come at once."""

import math
import pickle
from typing import Any

import numpy as np
import pint
import pytest

import anchorcalc
from anchorcalc.errors import CODES, GIVEN_AT_MOST, AnchorcalcError, Fault, InputError, UnknownQuestion

REGISTRY: Any = pint.UnitRegistry()


def faults(question: str, **inputs: Any) -> tuple[Fault, ...]:
    with pytest.raises(InputError) as caught:
        anchorcalc.answer(question, **inputs)
    return caught.value.faults


def the_fault(question: str, **inputs: Any) -> Fault:
    found = faults(question, **inputs)
    assert len(found) == 1, found
    return found[0]


TIDE: dict[str, Any] = {"low_height": "0.6 m", "low_at": "06:10", "high_height": "3.4 m", "high_at": "12:25", "at": "09:30"}
ROOM = {"distance": "50 m", "boat_length": "9 m", "depth": "5 m"}

# question, inputs, the input at fault, its code, and a part of what would do
BAD: list[tuple[str, dict[str, Any], str, str, str]] = [
    ("rode_to_let_out", {"depth": "4 m", "scoop": "7:1"}, "scoop", "unknown_input", "scope"),
    ("rode_to_let_out", {"depth": "4 m", "bow-hight": "1 m"}, "bow-hight", "unknown_input", "bow_height"),
    ("rode_to_let_out", {"depth": "4 m", "wind": "20 kn"}, "wind", "unknown_input", "depth"),
    ("rode_to_let_out", {}, "depth", "missing", "12 ft"),
    ("rode_to_let_out", {"depth": None}, "depth", "missing", "12 ft"),
    ("rode_to_let_out", {"depth": 4}, "depth", "bare_number", "12 ft"),
    ("rode_to_let_out", {"depth": "4"}, "depth", "bare_number", "12 ft"),
    ("rode_to_let_out", {"depth": np.float64(4.0)}, "depth", "bare_number", "12 ft"),
    ("rode_to_let_out", {"depth": {"value": 4}}, "depth", "bare_number", "12 ft"),
    ("rode_to_let_out", {"depth": 4.0 * REGISTRY.dimensionless}, "depth", "wrong_dimension", "m"),
    ("rode_to_let_out", {"depth": "4 kg"}, "depth", "wrong_dimension", "ft"),
    ("rode_to_let_out", {"depth": "4 kn"}, "depth", "wrong_dimension", "ft"),
    ("rode_to_let_out", {"depth": {"value": 4, "unit": "kg"}}, "depth", "wrong_dimension", "ft"),
    ("rode_to_let_out", {"depth": 4.0 * REGISTRY.kilogram}, "depth", "wrong_dimension", "ft"),
    ("rode_to_let_out", {"depth": 4.0 * REGISTRY.meter**2}, "depth", "wrong_dimension", "ft"),
    ("rode_to_let_out", {"depth": "4 smoots"}, "depth", "unknown_unit", "m"),
    ("rode_to_let_out", {"depth": {"value": 4, "unit": "smoots"}}, "depth", "unknown_unit", "12 ft"),
    ("rode_to_let_out", {"depth": math.nan}, "depth", "not_finite", "12 ft"),
    ("rode_to_let_out", {"depth": {"value": math.inf, "unit": "m"}}, "depth", "not_finite", "12 ft"),
    ("rode_to_let_out", {"depth": {"value": 10**400, "unit": "m"}}, "depth", "not_finite", "12 ft"),
    ("rode_to_let_out", {"depth": math.nan * REGISTRY.meter}, "depth", "not_finite", "12 ft"),
    ("rode_to_let_out", {"depth": "-4 m"}, "depth", "negative", "12 ft"),
    ("rode_to_let_out", {"depth": "0 m"}, "depth", "out_of_bounds", "12 ft"),
    ("rode_to_let_out", {"depth": "9 km"}, "depth", "out_of_bounds", "12 ft"),
    ("rode_to_let_out", {"depth": "4 m", "scope": 1}, "scope", "out_of_bounds", "7:1"),
    ("rode_to_let_out", {"depth": "4 m", "scope": "7 m"}, "scope", "wrong_dimension", "7:1"),
    ("rode_to_let_out", {"depth": "4 m", "scope": True}, "scope", "wrong_kind", "7:1"),
    ("rode_to_let_out", {"depth": True}, "depth", "wrong_kind", "12 ft"),
    ("rode_to_let_out", {"depth": []}, "depth", "wrong_kind", "12 ft"),
    ("rode_to_let_out", {"depth": object}, "depth", "wrong_kind", "12 ft"),
    ("rode_to_let_out", {"depth": b"4 m"}, "depth", "wrong_kind", "12 ft"),
    ("rode_to_let_out", {"depth": np.array([4.0, 5.0])}, "depth", "wrong_kind", "12 ft"),
    ("rode_to_let_out", {"depth": "deep"}, "depth", "unreadable", "12 ft"),
    ("rode_to_let_out", {"depth": ""}, "depth", "unreadable", "12 ft"),
    ("rode_to_let_out", {"depth": {}}, "depth", "unreadable", "unit"),
    ("rode_to_let_out", {"depth": "4 m" + " " * 300}, "depth", "too_long", "12 ft"),
    ("rode_to_let_out", {"depth": {"low": 5, "high": 4, "unit": "m"}}, "depth", "contradiction", "low end first"),
    ("rode_to_let_out", {"depth": "4 m", "mark_interval": "10 m", "marks": "10,20 m"}, "marks", "contradiction", "mark_interval or marks"),
    ("rode_to_let_out", {"depth": "4 m", "marks": "20,10 m"}, "marks", "contradiction", "10,20,40 m"),
    ("rode_to_let_out", {"depth": "4 m", "mark_interval": "10 m", "marks_from": "ankor"}, "marks_from", "unknown_word", "anchor"),
    ("rode_to_let_out", {"depth": "4 m", "units": "imperial"}, "units", "unknown_word", "us or metric"),
    ("scope_now", {"rode_out": "5 m", "depth": "5 m"}, "rode_out", "contradiction", "more rode than depth"),
    ("deepest_anchorage", {}, "rode_aboard", "missing", "m"),
    ("line_angle", {}, "angle", "missing", "deg"),
    ("line_angle", {"angle": "10 deg", "scope": 7}, "scope", "contradiction", "angle or scope"),
    ("swing_clearance", {"rode_out": "30 m", **ROOM, "other_rode_out": "30 m"}, "other_boat_length", "missing", "m"),
    ("true_depth", {"reading": "4 m", "reads_from": "keel"}, "draught", "missing", "m"),
    ("true_depth", {"reading": "4 m", "reads_from": "transducer"}, "transducer_depth", "missing", "in"),
    ("true_depth", {"reading": "4 m", "reads_from": "mast"}, "reads_from", "unknown_word", "surface, transducer, keel"),
    ("two_anchor_load", {"load": "3 kN", "spread": "30..60 deg"}, "spread", "range_not_taken", "one value"),
    ("two_anchor_load", {"boat_length": "9 m", "wind": "F12", "spread": "60 deg"}, "wind", "out_of_bounds", "kn"),
    ("two_anchor_load", {"load": "300 kg", "spread": "60 deg"}, "load", "wrong_dimension", "N"),
    ("two_anchor_load", {"load": "300 lb", "spread": "60 deg"}, "load", "wrong_dimension", "lbf"),
    ("tide_at", {**TIDE, "at": "13:30"}, "at", "outside_tide", "the low and the high water"),
    ("tide_at", {**TIDE, "at": "2026-06-01T09:30"}, "at", "clock_mixed", "ISO 8601 for all"),
    ("tide_at", {**TIDE, "at": "25:10"}, "at", "unreadable", "06:10"),
    ("tide_at", {**TIDE, "at": 9}, "at", "wrong_kind", "09:30"),
    ("tide_at", {**TIDE, "low_height": "4 m"}, "low_height", "contradiction", "below high_height"),
    ("drag_check", {"anchor_at": "99 N, 10 E", "fixes": "14:00 64.1 N 10.2 E", "rode_out": "30 m", "depth": "5 m", "boat_length": "9 m"},
     "anchor_at", "out_of_bounds", "59.314 N"),
    ("drag_check", {"anchor_at": "64.1 N, 10.2 E", "fixes": [], "rode_out": "30 m", "depth": "5 m", "boat_length": "9 m"}, "fixes", "unreadable", ""),
    ("drag_check", {"anchor_at": "64.1 N, 10.2 E", "fixes": [{"at": "14:00"}], "rode_out": "30 m", "depth": "5 m", "boat_length": "9 m"},
     "fixes", "unreadable", ""),
]  # fmt: skip


@pytest.mark.parametrize(("question", "inputs", "name", "code", "would_do"), BAD, ids=[f"{one[2]}-{one[3]}-{place}" for place, one in enumerate(BAD)])
def test_bad_input_gets_its_fault(question: str, inputs: dict[str, Any], name: str, code: str, would_do: str) -> None:
    fault = the_fault(question, **inputs)
    assert (fault.input, fault.code) == (name, code), fault
    assert would_do in fault.would_do
    assert code in CODES
    assert len(fault.given) <= GIVEN_AT_MOST
    assert str(fault).startswith(f"{name}: ") and str(fault).endswith(" would do")


def test_all_faults_come_at_once() -> None:
    found = faults("rode_to_let_out", depth="12", bow_height="-1 m", scoop=7, tide_rise="40 m", units="ells", boat={"bow_hieght": "1 m"})
    assert [(one.input, one.code) for one in found] == [
        ("depth", "bare_number"), ("bow_height", "negative"), ("tide_rise", "out_of_bounds"), ("scoop", "unknown_input"),
        ("bow_hieght", "unknown_input"), ("units", "unknown_word"),
    ]  # fmt: skip


def test_everything_missing_is_said_at_once() -> None:
    assert {one.input for one in faults("tide_at")} == set(TIDE)
    assert {one.code for one in faults("tide_at")} == {"missing"}


def test_five_ranges_are_one_too_many() -> None:
    inputs: dict[str, Any] = {"depth": "4..5 m", "bow_height": "1..1.2 m", "tide_rise": "0..1 m", "scope": "5..7"}
    anchorcalc.answer("rode_to_let_out", **inputs)
    assert [one.code for one in faults("rode_to_let_out", **inputs, reserve="1..2 m", rode_aboard="60 m")] == ["too_many_ranges"]


def test_unknown_question_names_the_nearest() -> None:
    with pytest.raises(UnknownQuestion) as caught:
        anchorcalc.answer("rode_to_let_owt")
    assert caught.value.faults[0].would_do == "rode_to_let_out"
    with pytest.raises(UnknownQuestion):
        anchorcalc.answer("weather")


def test_a_boat_that_is_no_mapping_is_refused() -> None:
    assert the_fault("rode_to_let_out", depth="4 m", boat=["bow_height"]).input == "boat"


def test_a_bad_value_of_the_boat_counts_only_where_the_question_takes_it() -> None:
    boat = {"bow_height": "1 m", "draught": "deep"}
    assert anchorcalc.answer("rode_to_let_out", depth="4 m", boat=boat).results.rode_out.si == 35.0
    assert the_fault("shallowest_anchorage", boat=boat).input == "draught"


def test_no_bare_value_error_leaves_the_library() -> None:
    for given in (object(), {1, 2}, lambda: 0, 3 + 4j, "9**9**9 m", "__import__('os')", "m" * 100, "\x00 m", {"value": "x", "unit": "m"}):
        with pytest.raises(AnchorcalcError):
            anchorcalc.answer("rode_to_let_out", depth=given)
        with pytest.raises(AnchorcalcError):
            anchorcalc.answer("scope_now", rode_out="30 m", depth="4 m", bow_height=given)


def test_text_is_never_evaluated() -> None:
    for given in ("2*3 m", "9**9 m", "sqrt(4) m", "1e3 ft", "0x10 m"):
        code = the_fault("rode_to_let_out", depth=given).code if given != "1e3 ft" else "out_of_bounds"
        assert code in ("unreadable", "unknown_unit", "out_of_bounds"), given


def test_errors_are_pickled_whole() -> None:
    with pytest.raises(InputError) as caught:
        anchorcalc.answer("rode_to_let_out", depth="12", scoop=1)
    again = pickle.loads(pickle.dumps(caught.value))
    assert type(again) is InputError
    assert (again.faults, str(again)) == (caught.value.faults, str(caught.value))


def test_a_fault_quotes_no_more_than_80_characters_and_nothing_unprintable() -> None:
    fault = the_fault("rode_to_let_out", depth="\x1b[31m" + "9" * 150)
    assert len(fault.given) == GIVEN_AT_MOST
    assert fault.given.isprintable()


def test_path_given_as_a_boat_is_told_what_reads_files() -> None:
    boat: Any = "boat.toml"
    with pytest.raises(anchorcalc.InputError, match=r"anchorcalc\.load_boat"):
        anchorcalc.scope_now(rode_out="30 m", depth="4 m", boat=boat)
    with pytest.raises(anchorcalc.InputError, match=r"anchorcalc\.load_boat"):
        anchorcalc.ask("what is my scope", boat=boat)


def test_answer_given_where_a_value_belongs_is_named_and_not_spelt_out() -> None:
    earlier = anchorcalc.scope_now(rode_out="30 m", depth="4 m")
    for inputs in ({"rode_out": earlier}, {"rode_out": "30 m", "before": earlier}, {"rode_out": earlier.results}):
        with pytest.raises(anchorcalc.InputError) as caught:
            anchorcalc.answer("swing_radius", depth="4 m", boat_length="9 m", **inputs)
        assert [fault.given for fault in caught.value.faults] in (["a ScopeNowAnswer"], ["a ScopeNow"])
