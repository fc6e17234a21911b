"""Any text at all: one of four statuses, or an error of the family; the same text always reads the same; time grows with the length."""

import time
from pathlib import Path

import msgspec
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from anchorcalc import ask
from anchorcalc.doors.ask import LONGEST
from anchorcalc.errors import AnchorcalcError
from tests.reading.score import lines

STATUSES = {"answered", "needs", "unclear", "cannot"}
TEXTS = [line["text"] for path in sorted((Path(__file__).parent / "corpus").glob("*.jsonl")) for line in lines(path)]
PIECES = sorted({piece.strip() for text in TEXTS for piece in text.replace("?", ",").replace(".", ",").split(",") if piece.strip()})


def status_of(text: str) -> str:
    try:
        reply = ask(text)
    except AnchorcalcError:
        return "refused"
    assert reply.status in STATUSES
    msgspec.json.encode(reply)
    return reply.status


@given(st.text(max_size=300))
@settings(max_examples=200, deadline=None)
def test_any_text(text: str) -> None:
    status_of(text)


@given(st.binary(max_size=400))
@settings(max_examples=200, deadline=None)
def test_any_bytes(raw: bytes) -> None:
    status_of(raw.decode("latin-1"))


@given(st.lists(st.sampled_from(PIECES), min_size=1, max_size=8), st.sampled_from([", ", ". ", " ", "? ", "; ", " and ", " no, "]))
@settings(max_examples=300, deadline=None)
def test_pieces_of_the_corpus_anyhow(pieces: list[str], between: str) -> None:
    status_of(between.join(pieces))


@given(st.sampled_from(TEXTS), st.sampled_from(TEXTS))
@settings(max_examples=100, deadline=None)
def test_any_text_after_any_other(first: str, second: str) -> None:
    try:
        before = ask(first)
    except AnchorcalcError:
        return
    try:
        assert ask(second, before=before).status in STATUSES
    except AnchorcalcError:
        return


@pytest.mark.parametrize("text", ["marked at 1wat. For each", "ten high water, 4 m six deep 4:1?"])
def test_texts_that_the_search_found(text: str) -> None:
    status_of(text)


@given(st.sampled_from(TEXTS))
@settings(max_examples=50, deadline=None)
def test_the_same_text_reads_the_same(text: str) -> None:
    assert ask(text) == ask(text)


@given(st.sampled_from(TEXTS))
@settings(max_examples=100, deadline=None)
def test_a_choice_can_be_sent_back(text: str) -> None:
    reply = ask(text)
    for one in getattr(reply, "choices", ()):
        again = ask(one.text)
        assert (again.status, getattr(again, "question", None)) in {("answered", one.question), ("needs", one.question)}, one.text


@pytest.mark.parametrize(
    "piece", ["a ", "1 ", "1 m ", "no, 4 m ", "4 m deep. ", "5:1", "((((", "and and ", "depth is ", "' ", "60°10.123'N ", "12 kn gusting "]
)
def test_time_grows_no_faster_than_the_text(piece: str) -> None:
    text = (piece * LONGEST)[:LONGEST]
    status_of(text[: LONGEST // 4])
    begun = time.process_time()
    status_of(text)
    assert time.process_time() - begun < 2.0
