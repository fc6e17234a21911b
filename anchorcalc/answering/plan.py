"""What stays the same from one call of a question to the next, worked out when it is first asked."""

from functools import cache

from anchorcalc.answering.replies import answer_class, read_class
from anchorcalc.cautions import Caution
from anchorcalc.declare import Question, Warn
from anchorcalc.vocabulary.term import Term


class Plan:
    """The declaration of a question in the order in which a call needs it."""

    def __init__(self, question: Question) -> None:
        inputs = question.inputs.values()
        self.terms: tuple[tuple[str, Term], ...] = tuple((one.name, one.term) for one in inputs)
        self.asked: tuple[str, ...] = tuple(one.name for one in inputs if one.need == "asked")
        self.usual: tuple[tuple[str, Term], ...] = tuple((one.name, one.term) for one in inputs if one.need == "usual" and one.direct)
        self.own = frozenset(question.direct)
        self.alternatives = frozenset(name for group in question.one_of for name in group)
        self.takes_no_range = question.takes_no_range
        groups = () if question.one_of_may else question.one_of
        self.enough = frozenset(self.asked) if not (question.requires or question.pairs or groups) else None  # None: it depends
        self.always: tuple[Caution, ...] = tuple({one.caution.code: one.caution for one in question.cautions if one.condition is None}.values())
        self.at_times: tuple[Warn, ...] = tuple(one for one in question.cautions if one.condition is not None)
        self.answer, self.read = answer_class(question), read_class(question)
        known = {*question.inputs, *(name for one in question.derives for name in (one.gives, *one.takes))}
        self.namesakes = any(field.name in known for field in question.fields)  # a result with an input's name


@cache
def plan_of(question: Question) -> Plan:
    """Return the plan of a question."""
    return Plan(question)
