"""The door of plain words: `ask` reads a text, settles what it leaves open, and answers, asks back, offers a choice or says no."""

from collections.abc import Mapping
from typing import Any

from anchorcalc.answering.answer import answer, read_of
from anchorcalc.answering.replies import Cannot, Choice, LeftAside, Needs, ReadSoFar, Reply, Unclear
from anchorcalc.answering.taking import Taken, take
from anchorcalc.catalogue import question as question_named
from anchorcalc.declare import Question
from anchorcalc.errors import InputError, TextError, fault
from anchorcalc.reader.intent import weigh
from anchorcalc.reader.reading import Reading, reading_of
from anchorcalc.reader.sentence import read
from anchorcalc.version import VERSION
from anchorcalc.vocabulary import TERMS

LONGEST = 20_000


def ask(text: str, boat: Mapping[str, Any] | None = None, before: Any = None, units: str | None = None) -> Reply:
    """Answer a question put in plain words."""
    if not isinstance(text, str):
        raise TextError([fault("text", "wrong_kind", text, "is no text", "a question in plain words")])
    if len(text) > LONGEST:
        raise TextError([fault("text", "too_long", text, f"has more than {LONGEST} characters", "a question in a few sentences")])
    sentence = read(text)
    weighed = weigh(sentence.line)
    if not weighed:
        return Cannot(status="cannot", why="That is no question this library can answer.", can_ask=(), version=VERSION)
    reading = reading_of(sentence=sentence, question=question_named(weighed[0].question))
    return settled(reading, boat=boat, before=None, units=units)


def settled(reading: Reading, *, boat: Mapping[str, Any] | None, before: Mapping[str, Any] | None, units: str | None) -> Reply:
    """Return the reply to a reading."""
    aside = tuple(LeftAside(text=mention.text, term=term) for mention, term in reading.aside)
    if reading.rivals or reading.bare:
        return Unclear(status="unclear", choices=(), version=VERSION, left_aside=aside)
    try:
        return answer(reading.question, reading.asked, boat=boat, before=before, units=units, left_aside=aside)
    except InputError as error:
        missing = tuple(dict.fromkeys(one.input for one in error.faults))
        return Needs(status="needs", question=reading.question.name, missing=missing, prompt=TERMS[missing[0]].prompt,
                     read=read_so_far(reading.asked, missing), version=VERSION, left_aside=aside)


def read_so_far(asked: Mapping[str, Any], missing: tuple[str, ...]) -> Any:
    """Return what was read, without what is asked back."""
    found = {}
    for name, raw in asked.items():
        taken = take(term=TERMS[name], raw=raw)
        if isinstance(taken, Taken) and name not in missing:
            found[name] = read_of(name=name, taken=taken, origin="asked")
    return ReadSoFar(**found)


__all__ = ["Choice", "Question", "ask"]
