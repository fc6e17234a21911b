"""How `ask` settles what a text leaves open, rule by rule."""

import json
from typing import Any

import msgspec
import pytest

import anchorcalc
from anchorcalc.doors.ask import CAN_ASK, LONGEST
from anchorcalc.errors import TextError
from tests.reading.score import said


def ask(text: Any, **more: Any) -> Any:
    return anchorcalc.ask(text, **more)


def read(reply: Any) -> dict[str, str]:
    return {name: str(getattr(one, "shown", getattr(one, "value", one))) for name, one in said(reply).items()}


def codes(reply: Any) -> set[str]:
    return {one.code for one in reply.cautions}


def test_a_whole_question() -> None:
    reply = ask("How much rode in 4 m of water, bow 1.2 m, at 5:1?")
    assert (reply.status, reply.question) == ("answered", "rode_to_let_out")
    assert read(reply) == {"depth": "4 m", "bow_height": "1.2 m", "scope": "5:1"}


def test_the_same_as_a_typed_call() -> None:
    typed = anchorcalc.rode_to_let_out(depth="4 m", bow_height="1.2 m", scope="5:1")
    assert ask("How much rode in 4 m of water, bow 1.2 m, at 5:1?").results == typed.results


@pytest.mark.parametrize(
    "text",
    [
        "how much rode 4m deep bow 1.2m 5:1",
        "HOW MUCH RODE IN 4 M, BOW 1.2 M, 5:1?",
        "4 m deep, bow 1.2 m, 5:1: how much rode?",
        "4m, bow 1.2m. 5:1. rode?",
    ],
)
def test_any_order_and_case_without_signs(text: str) -> None:
    assert read(ask(text)) == {"depth": "4 m", "bow_height": "1.2 m", "scope": "5:1"}


def test_bare_numbers_take_the_unit_that_the_others_share() -> None:
    reply = ask("How much rode in 12 ft of water, bow 4, at 5:1?")
    assert read(reply)["bow_height"] == "4 ft"
    assert "unit_taken" in codes(reply)


def test_bare_numbers_take_the_boats_units() -> None:
    assert read(ask("How much rode in a depth of 12, bow 4, at 5:1?", boat={"units": "us"}))["depth"] == "12 ft"


def test_bare_numbers_of_no_unit_are_asked_back_with_a_choice_a_unit() -> None:
    reply = ask("How much rode in a depth of 12, bow 4, at 5:1?")
    assert reply.status == "unclear"
    assert {read(one)["depth"] for one in reply.choices} == {"12 m", "12 ft"}


def test_a_trade_fraction_is_inches() -> None:
    assert read(ask("What's the holding of my tackle? Check it: 30 ft boat, 22 lb plough, 100 ft of 5/16 chain."))["chain_size"] == "5/16 in"


def test_two_values_for_one_thing_are_asked_back() -> None:
    reply = ask("The depth is 4 m, the depth is 6 m. How much rode at 5:1, bow 1 m?")
    assert reply.status == "unclear"
    assert len(reply.choices) >= 2


@pytest.mark.parametrize(
    "text",
    [
        "How much rode in 4 m, no, 6 m of water, bow 1 m, 5:1?",
        "Depth 4 m, sorry, 6 m. Bow 1 m. How much rode at 5:1?",
        "Depth 4 m, I mean 6 m, bow 1 m: how much rode at 5:1?",
    ],
)
def test_corrections(text: str) -> None:
    assert read(ask(text))["depth"] == "6 m"


def test_the_sounder_under_the_keel() -> None:
    reply = ask("Sounder shows 3 m under the keel, draught 1.5 m, bow 1 m. How much rode at 5:1?")
    assert read(reply)["depth"] == "4.5 m"
    assert "draught" in reply.working[0]


def test_the_sounder_of_unknown_zero_is_asked_for() -> None:
    reply = ask("The sounder shows 3 m, bow 1 m. How much rode at 5:1?")
    assert reply.status == "needs"
    assert reply.missing == ("reads_from",)


def test_the_tide_to_come_is_asked_for_where_it_is_only_spoken_of() -> None:
    reply = ask("How much rode in 4 m, bow 1 m, 5:1, and the tide is still rising?")
    assert (reply.status, reply.missing) == ("needs", ("tide_rise",))


def test_a_tide_that_is_to_be_left_out_is_none() -> None:
    assert ask("How much rode in 4 m, bow 1 m, 5:1, forget the tide?").status == "answered"


def test_a_distance_from_the_boat_is_none_from_the_anchor() -> None:
    reply = ask("The rocks are 60 m from the boat. 40 m out in 6 m, 11 m boat. Will I swing clear?")
    assert (reply.status, reply.missing) == ("needs", ("distance",))


def test_a_distance_that_does_not_say_from_where_is_taken_from_the_anchor_and_said() -> None:
    assert "from_anchor" in codes(ask("Rocks 70 m away. 40 m out in 6 m, 11 m boat. Do we swing clear?"))


def test_another_day_and_another_boat_are_left_aside() -> None:
    reply = ask("Yesterday we lay in 9 m. Now it's 4 m, bow 1 m. How much rode at 5:1?")
    assert read(reply)["depth"] == "4 m"
    assert "9 m" in {one.text for one in reply.left_aside}


def test_what_an_answer_does_not_use_is_said() -> None:
    reply = ask("How much rode in 4 m, bow 1 m, at 5:1? Water is 14 °C, VHF 72, built 1984.")
    assert reply.status == "answered"
    assert "14 °C" in {one.text for one in reply.left_aside}


@pytest.mark.parametrize(
    "text", ["Hello", "What's the weather tomorrow?", "Am I allowed to anchor here overnight?", "", "?!", "Write me a poem", "The depth is 5 m."]
)
def test_what_is_no_question_of_ours(text: str) -> None:
    reply = ask(text)
    assert reply.status == "cannot"
    assert reply.why
    assert reply.can_ask == CAN_ASK


@pytest.mark.parametrize("text", CAN_ASK)
def test_the_examples_answer(text: str) -> None:
    assert ask(text).status == "answered"


def test_what_is_missing_is_asked_for_in_one_question() -> None:
    reply = ask("How much rode should I let out at 5:1?")
    assert (reply.status, reply.missing[0]) == ("needs", "depth")
    assert reply.prompt.count("?") == 1


def test_a_faulty_value_is_asked_for_again() -> None:
    reply = ask("How much rode in -4 m of water, bow 1 m, at 5:1?")
    assert reply.status in ("needs", "unclear")


def test_of_two_questions_the_second_is_left_aside() -> None:
    reply = ask("How much rode in 4 m, bow 1 m, at 5:1, and what load will my 10 m boat put on it in 30 knots?")
    assert (reply.status, reply.question) == ("answered", "rode_to_let_out")
    assert "what load will my 10 m boat put on it in 30 knots?" in {one.text for one in reply.left_aside}


# --- an exchange before -------------------------------------------------------------------------------------------------------------


def test_a_lone_quantity_fills_what_was_missing() -> None:
    first = ask("How much rode should I let out at 5:1, bow 1 m?")
    assert read(ask("6 m", before=first)) == {"depth": "6 m"}
    assert ask("6 m", before=first).status == "answered"


def test_before_may_be_a_reply_its_json_or_a_question_with_inputs() -> None:
    first = ask("How much rode in 4 m, bow 1 m, at 5:1?")
    replies = [
        ask("and at 7:1?", before=before)
        for before in (
            first,
            json.loads(msgspec.json.encode(first)),
            {"question": "rode_to_let_out", "inputs": {"depth": "4 m", "bow_height": "1 m", "scope": 5}},
        )
    ]
    assert {reply.results.rode_out.shown for reply in replies} == {"35 m"}


def test_one_thing_is_changed() -> None:
    first = ask("How much rode in 4 m, bow 1 m, at 5:1?")
    assert read(ask("make that 6 m", before=first)) == {"depth": "6 m"}


def test_a_new_question_stands_for_itself() -> None:
    first = ask("How much rode in 4 m, bow 1 m, at 5:1?")
    assert ask("What load will a 10 m boat put on the rode in 30 knots?", before=first).question == "wind_load"


# --- what is refused ----------------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("text", [None, 5, b"rode", ["rode"]])
def test_no_text(text: Any) -> None:
    with pytest.raises(TextError) as error:
        ask(text)
    assert error.value.faults[0].code == "wrong_kind"


def test_a_text_that_is_too_long() -> None:
    with pytest.raises(TextError) as error:
        ask("rode " * LONGEST)
    assert error.value.faults[0].code == "too_long"


# --- slips --------------------------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("text", ["How much rode in 4 m of watre, bow 1 m, socpe 5:1, dpeth 4 m?", "hwo much chian in 4 m, roler 1 m, scoep 5:1"])
def test_slips_of_the_finger(text: str) -> None:
    assert read(ask(text))["depth"] == "4 m"


@pytest.mark.parametrize("word", ["buoy", "beach", "reach", "change", "chair", "death", "steep", "wing", "boot", "road"])
def test_words_of_their_own_are_no_slips(word: str) -> None:
    from anchorcalc.reader.typos import mended

    assert mended(word) == word
