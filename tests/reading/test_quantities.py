"""Quantities in running text: cases as data in quantities.jsonl, and any text at all."""

import math
import time
from pathlib import Path
from typing import Any

import msgspec
import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from anchorcalc.reader.quantities import DIMENSIONS, find_quantities, mentions
from anchorcalc.units.clock import Clock, clock_text
from anchorcalc.units.kinds import Amount
from anchorcalc.units.numbers import plain
from anchorcalc.units.position import Position, position_text

CASES = [msgspec.json.decode(line) for line in (Path(__file__).parent / "quantities.jsonl").read_text(encoding="utf-8").splitlines()]


def said(*, low: float, high: float, unit: str) -> str:
    """A quantity as the cases write it: `12 ft` or `3..4 m`."""
    number = f"{low:.10g}" if low == high else f"{low:.10g}..{high:.10g}"
    return f"{number} {unit}".strip()


def found_in(text: str) -> list[str]:
    written = []
    for mention in mentions(text):
        if isinstance(mention.amount, Amount) and mention.kind in DIMENSIONS and math.isfinite(mention.amount.high):
            written.append(said(low=mention.amount.value, high=mention.amount.value_high, unit=mention.amount.unit))
    return written


def also_in(text: str) -> list[str]:
    """The mentions that are no quantities, each with its kind."""
    written = []
    for mention in mentions(text):
        amount = mention.amount
        if isinstance(amount, Clock):
            written.append(f"clock {clock_text(seconds=amount.seconds, like=amount)[0]}")
        elif isinstance(amount, Position):
            written.append(f"position {position_text(amount)}")
        elif mention.kind == "date":
            written.append(f"date {mention.text}")
        elif amount is None or not math.isfinite(amount.high):
            written.append(mention.kind)
        elif mention.kind not in DIMENSIONS:
            written.append(f"{mention.kind} {said(low=amount.value, high=amount.value_high, unit='')}")
    return written


@pytest.mark.parametrize("case", CASES, ids=[case["text"][:40] for case in CASES])
def test_text_gives_these_quantities_and_no_others(case: dict[str, Any]) -> None:
    assert found_in(case["text"]) == case["found"]
    if "also" in case:
        assert also_in(case["text"]) == case["also"]
    if "spans" in case:
        assert [case["text"][one.start : one.end] for one in find_quantities(case["text"])] == case["spans"]


def test_there_are_enough_cases_and_a_fifth_yield_nothing() -> None:
    assert len(CASES) >= 250
    assert sum(not case["found"] for case in CASES) >= len(CASES) / 5


@pytest.mark.parametrize(
    ("text", "flag"),
    [
        ("about 4 m", "about"), ("4ish m", "about"), ("just under 4 m", "under"), ("at least 4 m", "at_least"), ("up to 12m", "at_most"),
        ("4 or 5 m", "alternative"),
        ("4 to 5 m", "range"), ("another 2.6 m", "another"), ("2.5 m more", "another"), ("a fathom", "article"), ("six feet", "spelled"),
        ("28-foot boat", "adjective"),
        ("40 footer", "adjective"), ("5 tons", "ambiguous_unit"), ("3/8 in", "fraction"), ("5 M", "upper_m"), ("F6", "beaufort"),
        ("13 m x 7 m", "product"),
        ("a couple of metres", "about"), ("buoy 7", "label"), ("we saw the yacht Skarv 31", "after_name"), ("seven times", "times"),
        ("three-strand", "compound_word"),
        ("5 o'clock", "twelve_hour"), ("10, 20 and 40 m", "shared_unit"),
    ],
)  # fmt: skip
def test_words_beside_a_number_are_flagged(text: str, flag: str) -> None:
    assert flag in mentions(text)[0].flags


def test_items_of_one_list_stand_in_one_group() -> None:
    groups = [mention.group for mention in mentions("marks at 10, 20 and 40 m, boat 9 m; 1, 2 and 3 ft")]
    assert groups == [0, 0, 0, -1, 1, 1, 1]


def test_quantity_carries_si_and_both_ends() -> None:
    only = find_quantities("between 3 and 4 fathoms")[0]
    assert (only.value, only.unit, only.dimension) == (3.0, "fathom", "length")
    assert only.si == only.low == pytest.approx(3 * 1.8288, abs=1e-12)
    assert only.high == pytest.approx(4 * 1.8288, abs=1e-12)


def test_plain_writing_keeps_every_offset_and_leaves_plain_signs_alone() -> None:
    assert plain("５–６ ｍ, a metre") == "5–6 m, a metre"
    every_sign = "".join(map(chr, range(0x30000)))
    assert len(plain(every_sign)) == len(every_sign)
    ascii_signs = every_sign[:128]
    assert plain(ascii_signs + "é") == ascii_signs + "é"


ANY = st.text(max_size=80)
PIECES = st.lists(
    st.sampled_from(
        ["12", "3.6", "4,5", "1,200", "½", "3/8", "m", " m", "ft", "in", "'", '"', "°", "one", "hundred", "and", "a", "half", "of", "to", "-",
        "–", "..", ":", "1", "F6",
         "force", "N", "E", "knots", "million", "dozen", "pm", "06:10", "2026-06-01", "or", "x", "%", "$", "７", "ｍ", "\n", " ", " ", ",", ";",
         "ß", "İ", "1e400", "٣",
         "eighths", "foot", "noon", "kN", "ton", "ish", "𝟗", "59.314 N", "18.9 E"]
    ),
    max_size=16,
).map("".join)  # fmt: skip


@settings(max_examples=400, deadline=None)
@given(ANY | PIECES)
@example("1" * 5000)
@example("1 to 59 N 18 E")
@example("couple bft couple inchkN")
@example("59 foot 1e312 ٣")
def test_any_text_is_read_without_failing_in_order_and_without_overlap(text: str) -> None:
    found = mentions(text)
    at = 0
    for mention in found:
        assert at <= mention.start < mention.end <= len(text)
        assert mention.text == text[mention.start : mention.end]
        at = mention.end
    assert mentions(text) == found


@pytest.mark.parametrize(
    "piece",
    ["1, ", "1 to ", "one and a half ", "1 ft ", "1'", '1" ', "1:", "1 1/2 ", "a ", "59 N 18 E ", "1 x ", ",000", "half a ", "F6 ", "how deep "],
)
def test_time_grows_with_length_only(piece: str) -> None:
    def seconds(count: int) -> float:
        text = piece * count
        began = time.process_time()  # of this process alone, however busy the machine is
        mentions(text)
        return time.process_time() - began

    short = min(seconds(500) for _ in range(5))
    assert min(seconds(4000) for _ in range(4)) < 8 * short * 5 + 0.02  # eight times the text, five times the margin; a square would be 64
