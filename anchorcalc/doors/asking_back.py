"""What `ask` says back where a text leaves something open: one plain question, or a choice of readings."""

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from anchorcalc.answering.answer import read_of
from anchorcalc.answering.replies import Choice, ReadSoFar
from anchorcalc.answering.taking import Taken, take
from anchorcalc.errors import Fault
from anchorcalc.reader.fits import as_given, with_unit
from anchorcalc.reader.guess import loose
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.plausible import plausible
from anchorcalc.reader.reading import Reading
from anchorcalc.reader.units_taken import CHOICES, kind_of
from anchorcalc.units.kinds import Amount
from anchorcalc.vocabulary import TERMS


def prompt(faults: Sequence[Fault], open_terms: Mapping[str, str]) -> str:
    """Return one plain question that gets what is missing first; where something was wrong, what was."""
    wrong = next((one for one in faults if one.code != "missing"), None)
    if wrong is not None:
        given = f"“{wrong.given}” " if wrong.given else ""
        return f"{given}{wrong.why}. {TERMS[wrong.input].prompt if wrong.input in TERMS else ''}".strip()
    if faults:
        return TERMS[faults[0].input].prompt
    return next(iter(open_terms.values()))


def choices_of(reading: Reading) -> list[Choice]:
    """Return the readings that a text leaves open: a choice a value, or a choice a unit."""
    if reading.rivals:
        term, values = next(iter(reading.rivals.items()))
        return [
            choice(reading, {term: value})
            for value in values
            if not (isinstance(value, Amount) and value.kind == "number" and TERMS[term].kind.has_unit)
        ] or list(_in_units(reading))
    return list(_in_units(reading))


def _in_units(reading: Reading) -> Iterator[Choice]:
    kinds = sorted({kind_of(TERMS[term]) for term in reading.bare})
    for unit in CHOICES[kinds[0]] if kinds else ():
        values = {
            term: with_unit(mention.amount, unit=unit)
            for term, mention in reading.bare.items()
            if kind_of(TERMS[term]) == kinds[0] and isinstance(mention.amount, Amount)
        }
        yield choice(reading, values)


def doubtful(reading: Reading, *, boat: Mapping[str, Any] | None) -> Iterator[Choice]:
    """Yield the readings of a quantity that no word claims: as what it could be, or as nothing."""
    for mention, options in loose(reading, known=boat or ()):
        told = {name: {other: one for other, one in reading.asked.items() if other != name} for name in options}
        values = [(name, value) for name in options for value in _values(name, mention) if plausible(name, value, told[name])]
        if values:
            yield from (choice(reading, {name: value}) for name, value in values[:_CHOICES_AT_MOST])
            yield choice(reading, {})
            return


def _values(name: str, mention: Mention) -> list[Amount]:
    """Return what a quantity is as an input: a number without a unit is one in each unit that its bounds allow."""
    term = TERMS[name]
    if mention.kind != "number" or not term.kind.has_unit or not isinstance(mention.amount, Amount):
        return [as_given(term=term, mention=mention)]
    made = (with_unit(mention.amount, unit=unit) for unit in CHOICES[kind_of(term)])
    return [one for one in made if not term.out_of_bounds(value=one.low)]


_CHOICES_AT_MOST = 4


def choice(reading: Reading, values: Mapping[str, Any]) -> Choice:
    """Return one reading, with a plain sentence that says it."""
    read = read_so_far({**reading.asked, **values}, ())
    said = ", ".join(f"{name.replace('_', ' ')} {getattr(read, name).shown}" for name in read.__struct_fields__ if getattr(read, name) is not None)
    return Choice(question=reading.question.name, text=f"{_begun(reading.question.asks[0])}?{' ' + _begun(said) + '.' if said else ''}", read=read)


def _begun(text: str) -> str:
    """Return a text with a capital at its beginning; units keep their letters."""
    return text[:1].upper() + text[1:]


def read_so_far(asked: Mapping[str, Any], missing: tuple[str, ...]) -> Any:
    """Return what was read, without what is asked back."""
    found: dict[str, Any] = {}
    for name, raw in asked.items():
        taken = take(term=TERMS[name], raw=raw)
        if isinstance(taken, Taken) and name not in missing:
            found[name] = read_of(name=name, taken=taken, origin="asked")
    return ReadSoFar(**found)
