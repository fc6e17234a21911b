"""The door of plain words: `ask` reads a text, settles what it leaves open, and answers, asks back, offers a choice or says no."""

from collections.abc import Mapping
from typing import Any

from anchorcalc.answering.answer import answer, read_of
from anchorcalc.answering.replies import Cannot, Choice, LeftAside, Needs, ReadSoFar, Reply, Unclear
from anchorcalc.answering.taking import Taken, take
from anchorcalc.catalogue import question as question_named
from anchorcalc.errors import InputError, TextError, fault
from anchorcalc.reader.fill import filled
from anchorcalc.reader.fits import with_unit
from anchorcalc.reader.intent import asks_something, weigh
from anchorcalc.reader.reading import Reading
from anchorcalc.reader.refusals import NOTHING, refusal
from anchorcalc.reader.restate import restated
from anchorcalc.reader.sentence import read
from anchorcalc.reader.units_taken import CHOICES, kind_of
from anchorcalc.version import VERSION
from anchorcalc.vocabulary import TERMS

LONGEST = 20_000


def ask(text: str, boat: Mapping[str, Any] | None = None, before: Any = None, units: str | None = None) -> Reply:
    """Answer a question put in plain words."""
    if not isinstance(text, str):
        raise TextError([fault("text", "wrong_kind", text, "is no text", "a question in plain words")])
    if len(text) > LONGEST:
        raise TextError([fault("text", "too_long", text, f"has more than {LONGEST} characters", "a question in a few sentences")])
    sentence, dropped = restated(read(text))
    line = sentence.line
    why = refusal(line)
    weighed = weigh(line)
    if why is not None or not weighed or not asks_something(line):
        return Cannot(status="cannot", why=why or NOTHING, can_ask=("How much rode should I let out in 4 m of water?",), version=VERSION)
    known = known_of(boat)
    system = units or (known["units"].text if "units" in known else None)
    reading = filled(sentence=sentence, question=question_named(weighed[0].question), system=system, earlier={}, boat=known)
    reading.aside.extend((mention, None) for mention in dropped)
    return settled(reading, boat=boat, before=None, units=units)


def known_of(values: Mapping[str, Any] | None) -> dict[str, Taken]:
    """Return values of a boat file or an earlier exchange as taken, those that will not do left out."""
    found = {}
    for name, raw in (values or {}).items():
        taken = take(term=TERMS[name], raw=raw) if name in TERMS else None
        if isinstance(taken, Taken):
            found[name] = taken
    return found


def settled(reading: Reading, *, boat: Mapping[str, Any] | None, before: Mapping[str, Any] | None, units: str | None) -> Reply:
    """Return the reply to a reading."""
    aside = tuple(LeftAside(text=mention.text, term=term) for mention, term in sorted(reading.aside, key=lambda one: one[0].start))
    choices = tuple(choices_of(reading))
    if choices:
        return Unclear(status="unclear", choices=choices, version=VERSION, left_aside=aside)
    try:
        found = answer(
            reading.question, reading.asked, boat=boat, before=before, units=units, left_aside=aside, notes=tuple(reading.notes), cautions=tuple(reading.cautions))
        if not reading.open_terms:
            return found
        missing = tuple(reading.open_terms)
    except InputError as error:
        names = [one.input for one in error.faults if not (one.code == "missing" and one.input == "depth" and set(reading.open_terms) & {"reads_from", "draught", "transducer_depth"})]
        missing = tuple(dict.fromkeys([*names, *reading.open_terms]))
    return Needs(status="needs", question=reading.question.name, missing=missing, prompt=TERMS[missing[0]].prompt,
                 read=read_so_far(reading.asked, missing), version=VERSION, left_aside=aside)


def choices_of(reading: Reading) -> list[Choice]:
    """Return the readings that a text leaves open: a choice a unit, or a choice a value."""
    if reading.rivals:
        term, values = next(iter(reading.rivals.items()))
        return [choice(reading, {term: value}) for value in values]
    if not reading.bare:
        return []
    kinds = {kind_of(TERMS[term]) for term in reading.bare}
    kind = sorted(kinds)[0]
    return [choice(reading, {term: with_unit(mention.amount, unit=unit) for term, mention in reading.bare.items() if kind_of(TERMS[term]) == kind}) for unit in CHOICES[kind]]


def choice(reading: Reading, values: Mapping[str, Any]) -> Choice:
    """Return one reading, with a plain sentence that says it."""
    asked = {**reading.asked, **values}
    read = read_so_far(asked, ())
    said = ", ".join(f"{name.replace('_', ' ')} {getattr(read, name).shown}" for name in read.__struct_fields__ if getattr(read, name) is not None)
    return Choice(question=reading.question.name, text=f"{reading.question.asks[0].capitalize()}? {said.capitalize()}.", read=read)


def read_so_far(asked: Mapping[str, Any], missing: tuple[str, ...]) -> Any:
    """Return what was read, without what is asked back."""
    found = {}
    for name, raw in asked.items():
        taken = take(term=TERMS[name], raw=raw)
        if isinstance(taken, Taken) and name not in missing:
            found[name] = read_of(name=name, taken=taken, origin="asked")
    return ReadSoFar(**found)
