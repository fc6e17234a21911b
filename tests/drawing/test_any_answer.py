"""Whatever inputs the gate lets through, their answer can be drawn: no division by zero, no endless strip of marks, no file without end."""

import re
from typing import Any
from xml.etree import ElementTree

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import anchorcalc
from anchorcalc.catalogue import question
from anchorcalc.doors.pictures import PICTURES
from anchorcalc.units import kinds
from anchorcalc.vocabulary import TERMS
from anchorcalc.vocabulary.term import Term

UNITS = {"length": "m", "size": "m", "speed": "m/s", "mass": "kg", "force": "N", "time": "s", "angle": "rad", "power": "W"}
NO_NUMBER = re.compile(r'="[^"]*\b(?:nan|inf)\b')


def value_of(term: Term, part: float) -> Any:
    """A value of a term: so far from its least to its most, by the cube, so that small ones come often."""
    if term.choices:
        return term.choices[int(part * (len(term.choices) - 1))]
    if term.kind is kinds.CLOCK:
        return f"{int(part * 23.99):02d}:30"
    if term.kind is kinds.LENGTHS:
        return f"{1.0 + part:g} m; {3.0 + 50.0 * part:g} m; {90.0 + part:g} m"
    least, most = term.least if term.least is not None else term.above or 0.0, term.most if term.most is not None else 100.0
    number = f"{least + (most - least) * part**3:.6g}"
    return f"1:{number}" if term.kind is kinds.SLOPE else f"{number} {UNITS.get(term.kind.name, '')}".strip()


@pytest.mark.parametrize("name", PICTURES)
@settings(max_examples=40, deadline=None, derandomize=True)
@given(data=st.data())
def test_any_answer_can_be_drawn(name: str, data: st.DataObject) -> None:
    asked = question(name)
    inputs = dict(data.draw(st.sampled_from(asked.examples)))
    for one in data.draw(st.lists(st.sampled_from(sorted(asked.inputs)), max_size=3, unique=True)):
        if TERMS[one].kind not in (kinds.FIXES, kinds.POSITION, kinds.FLAG):
            inputs[one] = value_of(TERMS[one], data.draw(st.floats(0.0, 1.0)))
    try:
        answered = anchorcalc.answer(name, **inputs)
    except anchorcalc.InputError:
        return
    text = anchorcalc.draw(answered)
    ElementTree.fromstring(text)
    assert len(text) < 12_000 and not NO_NUMBER.search(text)
