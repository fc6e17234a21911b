"""A short second question changes what it names of the first."""

import pytest

import anchorcalc


@pytest.mark.parametrize("text", ["and at 5:1?", "and at 5 to 1?", "what about 5:1?", "5:1"])
def test_a_scope_alone_is_put_to_the_question_before_though_it_was_assumed_there(text: str) -> None:
    before = anchorcalc.ask("How much rode in 4 m of water, bow 1 m up?")
    answer = anchorcalc.ask(text, before=before)
    assert isinstance(answer, anchorcalc.Answer)
    assert answer.results.rode_out.si == pytest.approx(25.0)  # 5 × (4 + 1) m
