"""What must hold for every question: every caution is said at times, and no other is."""

from functools import partial

from hypothesis import Phase, find, given, settings
from hypothesis import strategies as st

from anchorcalc.declare import Question
from anchorcalc.physics.arrays import somewhere
from tests.properties.generated import QUESTIONS, Inputs, admitted, as_given, raw_inputs, tried


@st.composite
def mean_winds(draw: st.DrawFn, *, question: Question) -> Inputs:
    """Inputs of a question, the wind by its force where there is one."""
    raw = as_given(question, draw(raw_inputs(question=question)))
    if "wind" in raw:
        raw["wind"] = f"F{draw(st.integers(1, 11))}"
    return raw


def cautions_said(question: Question, given_: Inputs) -> set[str] | None:
    """The codes of the cautions that an answer would say, or None where there is no answer."""
    passed = admitted(question, given_)
    if passed is None:
        return None
    found = question.solve(**{name: passed.values[name] for name in question.direct if name in passed.values})
    return {rule.caution.code for rule in question.cautions if somewhere(rule.holds({**passed.values, **found}))}


def says(question: Question, code: str, wanted: bool, given_: Inputs) -> bool:
    """Whether there is an answer, and it says the caution as wanted."""
    said = cautions_said(question, given_)
    return said is not None and (code in said) is wanted


@QUESTIONS
def test_every_caution_with_a_condition_is_said_and_not_said(question: Question) -> None:
    always = {rule.caution.code for rule in question.cautions if rule.condition is None}
    sets = st.one_of(raw_inputs(question=question).map(lambda raw: as_given(question, raw)), mean_winds(question=question))
    quick = settings(tried(1500), phases=(Phase.generate,))
    for code in sorted({rule.caution.code for rule in question.cautions} - always):
        find(sets, partial(says, question, code, True), settings=quick)  # fails where there is none
        find(sets, partial(says, question, code, False), settings=quick)


@QUESTIONS
@tried(15)
@given(data=st.data())
def test_cautions_without_a_condition_are_always_said(question: Question, data: st.DataObject) -> None:
    said = cautions_said(question, as_given(question, data.draw(raw_inputs(question=question))))
    assert said is None or {rule.caution.code for rule in question.cautions if rule.condition is None} <= said
