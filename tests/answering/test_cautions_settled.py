"""Cautions that hang on what was not given are settled beforehand: they must be those that the question's own rules come to."""

from collections.abc import Iterator
from typing import Any

import pytest

from anchorcalc.answering.answer import answer
from anchorcalc.answering.gate import admit
from anchorcalc.catalogue import catalogue
from anchorcalc.declare import Question
from anchorcalc.errors import InputError
from anchorcalc.physics.arrays import somewhere


def with_less_and_less(question: Question) -> Iterator[dict[str, Any]]:
    """Yield the examples of a question, whole and with each input left out."""
    for example in question.examples:
        yield example
        yield from ({other: value for other, value in example.items() if other != name} for name in example)


@pytest.mark.parametrize("question", catalogue(), ids=lambda question: question.name)
def test_an_answer_says_the_cautions_whose_conditions_hold(question: Question) -> None:
    answered = 0
    for given in with_less_and_less(question):
        try:
            admitted = admit(question, given)
        except InputError:
            continue
        values = admitted.values
        everywhere = values | question.solve(**{name: values[name] for name in question.direct if name in values})
        expected = dict.fromkeys(rule.caution for rule in question.cautions if somewhere(rule.holds(everywhere)))
        assert answer(question, given).cautions == tuple(expected)
        answered += 1
    assert answered >= len(question.examples)
