"""What an answer is: every way of giving a value, what counts, what was assumed, and a value that can be kept, sent and compared."""

import asyncio
import copy
import pickle
import threading
import warnings
from datetime import datetime, time
from decimal import Decimal
from fractions import Fraction
from typing import Any

import msgspec
import numpy as np
import pint
import pytest

import anchorcalc
from anchorcalc.catalogue import catalogue
from anchorcalc.declare import Question

REGISTRY: Any = pint.UnitRegistry()
SURVEYED: Any = pint.UnitRegistry(["ell = 1.143 * meter", "meter = [length]", "fathom = 2 * meter", "foot = 0.3 * meter"])
QUESTIONS = pytest.mark.parametrize("question", catalogue(), ids=lambda question: question.name)
TIDE: dict[str, Any] = {"low_height": "0.6 m", "low_at": "06:10", "high_height": "3.4 m", "high_at": "12:25", "at": "09:30"}


def rode(**inputs: Any) -> float:
    """Rode to let out in metres, roller at the water and scope 2, so that it is twice the depth."""
    return float(anchorcalc.rode_to_let_out(bow_height="0 m", scope=2, **inputs).results.rode_out.si)


# --- every way of giving a value ----------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("given", "metres"),
    [
        ("12 ft", 3.6576), ("12ft", 3.6576), ("3.6 m", 3.6), ("1 1/2 fathoms", 2.7432), ("5 ft 6 in", 1.6764), ("5'6\"", 1.6764),
        ("4,5 m", 4.5), ("350 cm", 3.5), (12 * REGISTRY.foot, 3.6576), (3.5 * REGISTRY("m"), 3.5),
        (2 * SURVEYED.fathom, 4.0), (3 * SURVEYED.ell, 3.429), (np.float64(4.0) * REGISTRY.meter, 4.0), (Fraction(7, 2) * REGISTRY.meter, 3.5),
        ({"value": 12, "unit": "ft"}, 3.6576), ({"value": 2, "unit": "fathoms"}, 3.6576), ({"value": np.float32(2.5), "unit": "m"}, 2.5),
        ({"low": 3, "high": 4, "unit": "m"}, 4.0), ("3..4 m", 4.0), ("3 to 4 m", 4.0),
    ],
)  # fmt: skip
def test_a_length_may_be_given_in_many_ways(given: Any, metres: float) -> None:
    assert rode(depth=given) == pytest.approx(2 * metres, rel=1e-12)


def test_a_pint_fathom_is_what_its_own_registry_says() -> None:
    ours, usual, own = (rode(depth=one) / 2 for one in ("1 fathom", 1 * REGISTRY.fathom, 1 * SURVEYED.fathom))
    assert [ours, usual, own] == [pytest.approx(1.8288, rel=1e-15), pytest.approx((1 * REGISTRY.fathom).to("m").magnitude, rel=1e-12), 2.0]
    assert "cable" not in REGISTRY  # ours are never added to it
    assert anchorcalc.rode_to_let_out(depth=1 * SURVEYED.fathom).read.depth.unit == "m"  # not the fathom that we mean


def test_a_result_of_an_earlier_answer_goes_in_by_its_si() -> None:
    first = anchorcalc.rode_to_let_out(depth="12 ft", bow_height="5 ft", tide_rise="3 ft")
    now = anchorcalc.scope_now(rode_out=first.results.rode_out, depth=first.read.depth, bow_height=first.read.bow_height, tide_rise="3 ft")
    assert now.results.scope_at_high_water.si == pytest.approx(7.0, rel=1e-15)
    assert now.read.rode_out.unit == "ft"
    assert anchorcalc.when_to_veer(rode_out="35 m", depth="4 m", **{**TIDE, "at": anchorcalc.tide_at(**TIDE).read.at}).status == "answered"


def test_an_earlier_result_is_said_in_few_digits_and_counts_in_full() -> None:
    first = anchorcalc.rode_to_let_out(depth="17.3 ft", bow_height="1.13 m", scope=5)
    now = anchorcalc.scope_now(rode_out=first.results.rode_out, depth="17.3 ft", bow_height="1.13 m")
    assert (now.read.rode_out.shown, now.read.rode_out.si) == ("105.04 ft", first.results.rode_out.si)


def test_an_earlier_result_as_json_goes_in_too() -> None:
    first = anchorcalc.rode_to_let_out(depth="12 ft", bow_height="5 ft", tide_rise="3 ft")
    result = msgspec.json.decode(msgspec.json.encode(first))["results"]["rode_out"]
    assert anchorcalc.scope_now(rode_out=result, depth="12 ft", bow_height="5 ft", tide_rise="3 ft").results.scope_at_high_water.value == 7.0


@pytest.mark.parametrize("given", [5, 5.0, "5", "5:1", "5 : 1", np.int64(5), {"value": 5}])
def test_a_scope_may_be_given_in_many_ways(given: Any) -> None:
    assert anchorcalc.rode_to_let_out(depth="4 m", bow_height="1 m", scope=given).results.rode_out.si == 25.0


def test_a_wind_force_counts_at_its_stronger_end_and_is_a_mean() -> None:
    by_force, by_knots = (anchorcalc.wind_load(boat_length="9 m", wind=wind) for wind in ("F6", "27 kn"))
    assert by_force.results.load_standard.si == by_knots.results.load_standard.si
    assert "mean_wind" in {one.code for one in by_force.cautions}
    assert "mean_wind" not in {one.code for one in by_knots.cautions}


def test_times_may_be_texts_or_python_times() -> None:
    plain = anchorcalc.tide_at(**TIDE).results.height.si
    assert anchorcalc.tide_at(**{**TIDE, "at": time(9, 30), "low_at": "0610"}).results.height.si == plain
    dated: dict[str, Any] = {**TIDE, "low_at": "2026-06-01T06:10", "high_at": datetime(2026, 6, 1, 12, 25), "at": "2026-06-01 09:30"}
    assert anchorcalc.tide_at(**dated).results.height.si == pytest.approx(plain, rel=1e-12)


def test_positions_and_fixes_may_be_given_in_many_ways() -> None:
    same: dict[str, Any] = {"rode_out": "30 m", "depth": "5 m", "boat_length": "9 m"}
    farthest = [
        anchorcalc.drag_check(anchor_at=anchor_at, fixes=fixes, **same).results.farthest.si
        for anchor_at in ("64.1 N, 10.2 E", (64.1, 10.2), {"latitude": 64.1, "longitude": 10.2}, "64 06.000 N 10 12.000 E", "64°06.00'N 010°12.00'E")
        for fixes in ("14:00 64.1003 N 10.2 E", [{"at": "14:00", "position": "64.1003, 10.2"}], [("14:00", (64.1003, 10.2))])
    ]
    assert np.ptp(farthest) < 1e-6
    assert farthest[0] == pytest.approx(33.4, abs=0.1)


def test_registries_that_count_in_decimals_or_fractions_will_do() -> None:
    assert rode(depth=pint.UnitRegistry(non_int_type=Decimal).Quantity("3.5 m")) == 7.0
    assert rode(depth=pint.UnitRegistry(non_int_type=Fraction).Quantity("3.5 m")) == 7.0
    assert anchorcalc.rode_to_let_out(depth="4 m", bow_height="1 m", scope=Decimal(5)).results.rode_out.si == 25.0


# --- what counts --------------------------------------------------------------------------------------------------------------------


def test_a_value_given_itself_counts_before_what_would_give_it_and_the_answer_says_so() -> None:
    answer = anchorcalc.deepest_anchorage(rode_aboard="40 m", chain="10 m", line="50 m", scope=5, bow_height="1 m")
    assert answer.results.deepest_depth.si == 7.0
    assert any("rode_aboard was given (40 m)" in line for line in answer.working)
    derived = anchorcalc.deepest_anchorage(chain="10 m", line="50 m", scope=5, bow_height="1 m")
    assert derived.results.deepest_depth.si == 11.0
    assert derived.read.rode_aboard is not None and derived.read.rode_aboard.origin == "asked"


def test_what_was_assumed_is_said() -> None:
    read = anchorcalc.rode_to_let_out(depth="4 m").read
    assert {name: value.origin for name, value in _read(read).items()} == {
        "depth": "asked", "bow_height": "assumed", "tide_rise": "assumed", "scope": "assumed", "chain": "assumed", "reserve": "assumed",
    }  # fmt: skip


def test_what_the_boat_gives_lies_under_what_was_asked() -> None:
    boat: dict[str, Any] = {"name": "Skarv", "bow_height": "5 ft", "scope": 5, "boat_length": "28 ft", "units": "us"}
    answer = anchorcalc.rode_to_let_out(depth="4 m", scope=7, boat=boat)
    assert {name: value.origin for name, value in _read(answer.read).items() if value.origin != "assumed"} == {
        "depth": "asked", "bow_height": "boat", "scope": "asked",
    }  # fmt: skip
    assert answer.results.rode_out.unit == "ft"
    assert anchorcalc.rode_to_let_out(depth="4 m", boat=boat, units="metric").results.rode_out.unit == "m"


def test_one_of_two_alternatives_that_was_asked_wins_over_the_boat() -> None:
    answer = anchorcalc.mark_to_stop_at(rode_out="36 m", marks="10,20,40 m", boat={"mark_interval": "5 m"})
    assert (answer.results.mark.si, answer.read.mark_interval) == (2, None)


def test_an_answer_is_shown_in_the_units_of_the_question() -> None:
    assert anchorcalc.rode_to_let_out(depth="12 ft").results.rode_out.unit == "ft"
    assert anchorcalc.rode_to_let_out(depth="12 m").results.rode_out.unit == "m"
    assert anchorcalc.rode_to_let_out(depth="12 m", units="us").results.rode_out.unit == "ft"
    metres, feet = (anchorcalc.rode_to_let_out(depth="12 m", units=units).results.rode_out.si for units in ("metric", "us"))
    assert metres == feet


def test_an_assumed_value_is_said_in_the_units_of_the_question() -> None:
    for depth, shown in (("12 ft", "3.937 ft"), ("4 m", "1.2 m")):
        bow_height = anchorcalc.rode_to_let_out(depth=depth).read.bow_height
        assert bow_height is not None and bow_height.shown == shown


# --- ranges -------------------------------------------------------------------------------------------------------------------------


def test_of_a_range_the_safe_end_is_the_answer_and_the_other_is_beside_it() -> None:
    answer = anchorcalc.rode_to_let_out(depth="3..4 m", bow_height="1 m", scope=5, rode_aboard="30 m")
    out, possible = answer.results.rode_out, answer.results.scope_possible
    assert (out.si, out.low, out.high) == (25.0, 20.0, 25.0)
    assert possible is not None and (possible.si, possible.low, possible.high) == (6.0, 6.0, 7.5)
    assert (answer.read.depth.si, answer.read.depth.low, answer.read.depth.high) == (4.0, 3.0, 4.0)


def test_each_result_stands_at_its_own_worst_corner() -> None:
    results = anchorcalc.swing_clearance(rode_out="30..40 m", depth="5 m", bow_height="1 m", boat_length="9 m", distance="45..60 m").results
    worst = anchorcalc.swing_clearance(rode_out="40 m", depth="5 m", bow_height="1 m", boat_length="9 m", distance="45 m").results
    assert (results.clearance.si, results.swing_radius.si, results.clear) == (worst.clearance.si, worst.swing_radius.si, False)


def test_of_ranges_the_verdict_is_the_worst() -> None:
    assert anchorcalc.scope_now(rode_out="30..50 m", depth="5..9 m", bow_height="1 m").results.verdict == "short"
    assert anchorcalc.scope_now(rode_out="50 m", depth="5 m", bow_height="1 m").results.verdict == "ample"


def test_marks_follow_the_greatest_rode_out() -> None:
    results: Any = anchorcalc.rode_to_let_out(depth="3..4 m", bow_height="1 m", scope=5, mark_interval="10 m").results
    assert (results.mark.si, results.past.si, results.stop_at.si) == (2, 5.0, 3)


def test_veering_over_a_range_says_the_earliest_need() -> None:
    same: dict[str, Any] = {**TIDE, "depth": "4 m", "bow_height": "1 m", "at": "06:10"}
    some = anchorcalc.when_to_veer(rode_out="30..60 m", **same).results
    assert (some.veer, some.veer_by) == ("later", anchorcalc.when_to_veer(rode_out="30 m", **same).results.veer_by)
    now = anchorcalc.when_to_veer(rode_out="20..60 m", **same).results
    assert (now.veer, now.veer_by) == ("now", None)


# --- an answer is a value -----------------------------------------------------------------------------------------------------------


def _read(read: Any) -> dict[str, Any]:
    return {field.name: getattr(read, field.name) for field in msgspec.structs.fields(read) if getattr(read, field.name) is not None}


@QUESTIONS
def test_every_example_is_a_value_that_can_be_kept_sent_and_compared(question: Question) -> None:
    for example in question.examples:
        answer, same = (anchorcalc.answer(question.name, **example) for _ in range(2))
        assert answer == same and hash(answer) == hash(same) and answer is not same
        text = msgspec.json.encode(answer)
        assert anchorcalc.load(text) == answer and anchorcalc.load(text.decode()) == answer
        assert type(anchorcalc.load(text)) is type(answer)
        for again in (pickle.loads(pickle.dumps(answer)), copy.copy(answer), copy.deepcopy(answer)):
            assert again == answer and hash(again) == hash(answer)
        with pytest.raises(AttributeError):
            answer.headline = ""  # type: ignore[misc]
        with pytest.raises(AttributeError):
            answer.results.x = 1
        assert len({answer, same, anchorcalc.load(text)}) == 1


@QUESTIONS
def test_the_json_of_an_answer_has_the_promised_shape(question: Question) -> None:
    for example in question.examples:
        body = msgspec.json.decode(msgspec.json.encode(anchorcalc.answer(question.name, **example)))
        assert {"status", "question", "headline", "results", "read", "working", "cautions", "sources", "version"} <= set(body)
        assert (body["status"], body["question"]) == ("answered", question.name)
        assert body["headline"] and body["working"] and body["sources"]
        assert all(one["from"] in ("asked", "boat", "before", "assumed") for one in body["read"].values())
        assert None not in _leaves(body), "there is none is a word or a false, never a null"
        assert "units" not in body["read"]


def _leaves(body: Any) -> list[Any]:
    if isinstance(body, dict):
        return [leaf for value in body.values() for leaf in _leaves(value)]
    return [leaf for value in body for leaf in _leaves(value)] if isinstance(body, list) else [body]


def test_what_is_no_reply_cannot_be_loaded() -> None:
    for text in (
        "",
        "{}",
        "[]",
        "nonsense",
        '{"status": "answered"}',
        '{"status": "answered", "question": "weather"}',
        '{"status": "lost"}',
        b"\xff",
    ):
        with pytest.raises(anchorcalc.AnchorcalcError):
            anchorcalc.load(text)


def test_a_quantity_goes_to_other_units_and_to_pint() -> None:
    out = anchorcalc.rode_to_let_out(depth="12 ft", bow_height="5 ft", tide_rise="3 ft").results.rode_out
    assert (out.value, out.unit, out.si, out.shown, float(out)) == (140.0, "ft", 42.672, "140 ft", 140.0)
    assert out.to("m") == pytest.approx(42.672) and out.to("fathoms") == pytest.approx(140 / 6)
    assert out.quantity.to("meter").magnitude == pytest.approx(42.672)
    with pytest.raises(anchorcalc.InputError):
        out.to("kg")


# --- many at once -------------------------------------------------------------------------------------------------------------------


def test_eight_threads_of_many_calls_each_find_what_one_finds() -> None:
    cases: list[dict[str, Any]] = [
        {"depth": f"{1 + place / 10} m", "bow_height": "1.2 m", "scope": 3 + place % 5, "units": ("us", "metric")[place % 2]} for place in range(250)
    ]
    alone = [anchorcalc.rode_to_let_out(**case) for case in cases]
    wrong: list[dict[str, Any]] = []

    def ask() -> None:
        for _ in range(50):
            wrong.extend(case for case, known in zip(cases, alone, strict=True) if anchorcalc.rode_to_let_out(**case) != known)

    threads = [threading.Thread(target=ask) for _ in range(8)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert wrong == []


def test_answers_may_be_asked_for_in_an_event_loop() -> None:
    async def ask(depth: int) -> str:
        await asyncio.sleep(0)
        return anchorcalc.rode_to_let_out(depth=f"{depth} m", bow_height="1 m").headline

    async def all_of_them() -> list[str]:
        return await asyncio.gather(*(ask(depth) for depth in range(1, 100)))

    assert asyncio.run(all_of_them()) == [anchorcalc.rode_to_let_out(depth=f"{depth} m", bow_height="1 m").headline for depth in range(1, 100)]


@QUESTIONS
def test_answering_warns_of_nothing_in_the_terminal(question: Question) -> None:
    with warnings.catch_warnings(), np.errstate(all="raise", under="ignore"):
        warnings.simplefilter("error")
        for example in question.examples:
            anchorcalc.answer(question.name, **example)
