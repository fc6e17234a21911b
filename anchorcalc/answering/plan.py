"""What stays the same from one call of a question to the next, worked out when it is first asked."""

from collections.abc import Iterable, Mapping
from functools import cache
from typing import Any, NamedTuple

from anchorcalc.answering.replies import answer_class, read_class
from anchorcalc.cautions import Caution
from anchorcalc.declare import Question, Warn
from anchorcalc.physics.arrays import somewhere
from anchorcalc.vocabulary.term import Term


class Warnings(NamedTuple):
    """The cautions of a question as far as they are settled: the rules that hold, what they say, and the rules that are left."""

    holding: tuple[Warn, ...]
    always: tuple[Caution, ...]
    left: tuple[Warn, ...]


def warnings_beside(question: Question, values: Mapping[str, Any], *, known: set[str] | None = None) -> Warnings:
    """Return the cautions of a question beside values that stand; only rules on `known` names are left, where that is all there can be."""
    ready = [one for one in question.cautions if values.keys() >= set(one.names)]
    holding = tuple(one for one in ready if one.condition is None or somewhere(one.holds(values)))
    left = tuple(one for one in question.cautions if one not in ready and (known is None or known.issuperset(one.names)))
    return Warnings(holding, cautions_of(holding), left)


def cautions_of(rules: Iterable[Warn]) -> tuple[Caution, ...]:
    """Return what rules say, each caution once."""
    return tuple({one.caution.code: one.caution for one in rules}.values())


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
        self.warnings = warnings_beside(question, {})
        self.answer, self.read = answer_class(question), read_class(question)
        known = {*question.inputs, *(name for one in question.derives for name in (one.gives, *one.takes))}
        self.namesakes = any(field.name in known for field in question.fields)  # a result with an input's name


@cache
def plan_of(question: Question) -> Plan:
    """Return the plan of a question."""
    return Plan(question)
