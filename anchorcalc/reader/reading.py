"""What a text says for one question: its inputs as the gate takes them, and all that is still open."""

from typing import Any

import msgspec

from anchorcalc.cautions import Caution
from anchorcalc.declare import Question
from anchorcalc.reader.fits import as_given
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.sentence import Sentence
from anchorcalc.reader.slots import Role, roles
from anchorcalc.reader.word_slots import words_said
from anchorcalc.vocabulary import TERMS


class Reading(msgspec.Struct, kw_only=True):
    """The inputs read for a question.

    `bare` are quantities that want a unit, `rivals` the values that fight for one term, `open_terms` what the text mentions and leaves
    open, `aside` the quantities that stand for nothing here, each with its term where it has one.
    """

    question: Question
    asked: dict[str, Any]
    bare: dict[str, Mention] = msgspec.field(default_factory=dict)
    rivals: dict[str, list[Any]] = msgspec.field(default_factory=dict)
    open_terms: dict[str, str] = msgspec.field(default_factory=dict)
    aside: list[tuple[Mention, str | None]] = msgspec.field(default_factory=list)
    notes: list[str] = msgspec.field(default_factory=list)
    cautions: list[Caution] = msgspec.field(default_factory=list)


def reading_of(*, sentence: Sentence, question: Question) -> Reading:
    """Return what a text says for a question."""
    takes = frozenset(question.inputs)
    reading = Reading(question=question, asked={})
    for role in roles(tokens=sentence.tokens, takes=takes):
        _take(reading, role, takes)
    for said in words_said(tokens=sentence.tokens, takes=takes):
        if not said.negated:
            _put(reading, said.term, said.word)
    return reading


def _take(reading: Reading, role: Role, takes: frozenset[str]) -> None:
    if role.term is None or role.term not in takes:
        reading.aside.append((role.mention, role.term))
    elif role.fit == "bare":
        reading.bare[role.term] = role.mention
    else:
        _put(reading, role.term, as_given(term=TERMS[role.term], mention=role.mention))


def _put(reading: Reading, term: str, value: Any) -> None:
    if term in reading.asked and reading.asked[term] != value:
        reading.rivals.setdefault(term, [reading.asked[term]]).append(value)
    else:
        reading.asked[term] = value
