"""The door of plain words: `ask` reads a text, settles what it leaves open, and answers, asks back, offers a choice or says no."""

import re
from collections.abc import Mapping
from typing import Any

from anchorcalc.answering.answer import answer
from anchorcalc.answering.gate import admit
from anchorcalc.answering.replies import Cannot, LeftAside, Needs, Reply, Unclear
from anchorcalc.answering.taking import Taken, take
from anchorcalc.catalogue import question as question_named
from anchorcalc.declare import Question
from anchorcalc.doors.asking_back import choice, choices_of, doubtful, prompt, read_so_far
from anchorcalc.doors.exchange import Before, exchange
from anchorcalc.doors.followup import answer_in_a_word, doubt_replaced, fill_lone, question_meant
from anchorcalc.doors.python import checked_boat
from anchorcalc.errors import InputError, TextError, fault
from anchorcalc.reader.fill import filled
from anchorcalc.reader.guess import MEASURED
from anchorcalc.reader.intent import Weighed, asks_for, asks_something, beyond_doubt, plainly_asked, second_question, weigh
from anchorcalc.reader.likely import wordless
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.reading import Reading
from anchorcalc.reader.refusals import NOTHING, refusal
from anchorcalc.reader.restate import our_own, restated
from anchorcalc.reader.rivals import bounded, taker
from anchorcalc.reader.sentence import Sentence, Token, read
from anchorcalc.reader.subjects import at_law, foreign, own_parts
from anchorcalc.version import VERSION
from anchorcalc.vocabulary import TERMS

LONGEST = 20_000
PLAIN, LIKELY, AHEAD = 0.75, 0.3, 3.0  # a share that is plain; else it must be likely, and so many times likelier than the next
BY_FIGURES = 1.3  # so many times likelier is enough where only this question has all its figures
PLAINLY_OWN = 0.93  # a share by which what is left asks a question of ours, once words of another subject are taken out
SURE = 7.0  # weight of a pattern that names a question, whatever else the text holds
LIKELY = 0.6  # share of a question that a text without a figure must have, where no such pattern names one
FIGURES = frozenset((*MEASURED, "number", "ratio"))
_HEIGHTS = ("low_height", "high_height")
_KNOTTED = re.compile(r" knots? (?:in|on|at|every|each|along|tied) [^?!]*<length>")  # marks on a rode: `which knot` asks for one of them
_SOUNDER = frozenset(("reads_from", "draught", "transducer_depth"))


def ask(text: str, boat: Mapping[str, Any] | None = None, before: Any = None, units: str | None = None) -> Reply:
    """Answer a question put in plain words.

    Parameters
    ----------
    text : str
        The question, with its figures and their units; at most 20 000 characters.
    boat : mapping, optional
        What a boat file holds (`load_boat` reads one); what the text says comes first.
    before : Answer, Needs, Unclear, Cannot, str, bytes or mapping, optional
        An earlier reply, its JSON, or its question and inputs: a lone `and at 7:1?` goes on from it. What was assumed does not carry over.
    units : {"us", "metric"}, optional
        For what is shown, and for bare numbers that nothing else gives a unit.

    Returns
    -------
    Reply
        By its `status`: `answered`, `needs` (asks back for what is missing), `unclear` (readings to choose from) or `cannot`. An answer
        shows in `read` how each figure was taken, in SI units too: look there before relying on it.

    Raises
    ------
    TextError
        What was given is no text, or has more than 20 000 characters.
    InputError
        If `boat`, `before` or `units` will not do. What the text says is never raised but asked back.

    Examples
    --------
    >>> ask("How much rode in 4 m of water, bow 1.2 m, at 5:1?").headline
    'Let out 26 m of rode.'
    >>> ask("How much rode at 5:1, bow 1.2 m?").missing
    ('depth',)

    """
    if not isinstance(text, str):
        raise TextError([fault("text", "wrong_kind", text, "is no text", "a question in plain words")])
    if len(text) > LONGEST:
        raise TextError([fault("text", "too_long", text, f"has more than {LONGEST} characters", "a question in a few sentences")])
    boat, earlier = checked_boat(boat), exchange(before)
    whole = read(text)
    sentence, dropped = restated(whole, goes_on=earlier is not None)
    line = sentence.line
    question, weighed = question_meant(sentence, earlier)
    why = refused(line, weighed)
    if why is not None and (own := weigh(own_tokens(sentence))) and own[0].share >= PLAINLY_OWN:
        why, question, weighed = None, question_named(own[0].question), own
    if why is not None or question is None or (earlier is None and not asks_something(whole.line, weighed)):
        return cannot(why or NOTHING)
    sentence, others = our_own(sentence, others="other_rode_out" in question.inputs)
    if earlier is None and not _likely_asked(sentence, weighed):
        return cannot(NOTHING)
    known_boat, known_before = known_of(boat), known_of(earlier.inputs if earlier else None)
    system = units or getattr(known_boat.get("units"), "text", None)
    reading = filled(sentence=sentence, question=question, system=system, earlier=known_before, boat=known_boat)
    room = bounded(reading) if earlier is None else None
    name = room or (rival_of(reading, weighed) if earlier is None else taker(reading, weighed))
    other = filled(sentence=sentence, question=question_named(name), system=system, earlier={}, boat=known_boat) if name is not None else None
    if other is not None and (room is not None or not likelier(weighed, reading, other, boat)):
        return Unclear(status="unclear", choices=(choice(reading, {}), choice(other, {})), version=VERSION)
    if earlier is not None:
        answer_in_a_word(reading, known=known_before)
        several = fill_lone(reading, before=earlier, known=known_before, boat=boat)
        if len(several) > 1:
            choices = tuple(choice(reading, {name: value}) for name, value in several.items())
            return Unclear(status="unclear", choices=choices, version=VERSION)
        doubt_replaced(reading, known=known_before)
        if not weighed and not (reading.asked or reading.bare or reading.rivals or reading.open_terms):
            return cannot(NOTHING)
    if "rode_out" in reading.asked and _in_cables(reading.asked["rode_out"]):
        reading.open_terms["rode_out"] = TERMS["rode_out"].prompt
        del reading.asked["rode_out"]
    reading.aside.extend((mention, None) for mention in (*dropped, *others, *other_question(whole, weighed)))
    reading.told.update(mention.start for mention in (*dropped, *others))
    return settled(reading, boat=boat, before=earlier, units=units)


def _likely_asked(sentence: Sentence, weighed: list[Weighed]) -> bool:
    """Say whether a question is likely enough asked: a text without a figure must name it plainly, or hardly ask another."""
    figures = any(token.mention and token.mention.kind in FIGURES for token in sentence.tokens)
    if wordless(sentence.tokens):
        return False
    return figures or weighed[0].strongest >= SURE or weighed[0].share >= LIKELY


def refused(line: str, weighed: list[Weighed]) -> str | None:
    """Return who decides what a text asks, where no calculation does and no question of ours is asked for certain."""
    if beyond_doubt(weighed) and not at_law(line):
        return None
    line = line.replace(" knot ", " mark ") if _KNOTTED.search(line) else line
    return refusal(line, plain=plainly_asked(weighed), ours=lambda part: asks_for(part, weighed[0].question))


def own_tokens(sentence: Sentence) -> tuple[Token, ...]:
    """Return the tokens of the clauses that speak of no other subject: `my chain cost a fortune, so what do I let out at 5:1?`."""
    line, tokens = sentence.line, sentence.tokens
    spans = [(line.count(" ", 0, start), line.count(" ", 0, end)) for start, end in own_parts(line)]
    return tuple(token for start, end in spans for token in tokens[start:end])


def other_question(sentence: Sentence, weighed: list[Weighed]) -> list[Mention]:
    """Return a second question of a text, ours or of another subject, which is left aside."""
    if not weighed:
        return []
    line, tokens = sentence.line, sentence.tokens
    at, ends = second_question(line, weighed), len(line) - 1
    first = line.count(" ", 0, at) - 2
    if at < 0:
        at, ends = foreign(line)
        first = line.count(" ", 0, at)
    if at < 0:
        return []
    start, end = tokens[first].start, tokens[line.count(" ", 0, ends) - 1].end
    return [Mention("question", None, start, end, sentence.text[start:end])]


def rival_of(reading: Reading, weighed: list[Weighed]) -> str | None:
    """Return another question that may as well be meant."""
    if len(weighed) > 1 and weighed[0].share < PLAIN and weighed[0].share < max(LIKELY, AHEAD * weighed[1].share):
        return weighed[1].question
    return taker(reading, weighed)


def likelier(weighed: list[Weighed], reading: Reading, other: Reading, boat: Mapping[str, Any] | None) -> bool:
    """Say whether a reading is likelier than another by its share, and the only one that has all its figures."""
    next_share = weighed[1].share if len(weighed) > 1 else 0.0
    ahead = bool(weighed) and weighed[0].share > BY_FIGURES * next_share
    return ahead and whole_for(reading, boat) and not whole_for(other, boat)


def whole_for(reading: Reading, boat: Mapping[str, Any] | None) -> bool:
    """Say whether a text and the boat give all that the question must have."""
    try:
        admit(reading.question, reading.asked, boat=boat)
    except InputError:
        return False
    return not reading.open_terms and not reading.rivals and not reading.bare


def _in_cables(amount: Any) -> bool:
    """Say whether a rode is told in whole cables: tenths of a mile, or cables of unknown length."""
    return getattr(amount, "unit", "") == "cable" and amount.value >= 1.0 and amount.value == int(amount.value)


def cannot(why: str) -> Cannot:
    """Return a plain no, with what can be asked."""
    return Cannot(status="cannot", why=why, can_ask=CAN_ASK, version=VERSION)


CAN_ASK = (
    "How much rode should I let out in 4 m of water, bow 1.2 m, at 5:1?",
    "Will I swing clear of rocks 70 m from the anchor with 40 m out in 6 m, 11 m boat?",
    "What load will a 10 m boat put on the rode in 30 knots?",
)


def without_stand_ins(question: Question, missing: tuple[str, ...]) -> tuple[str, ...]:
    """Leave out what the boat will give once she is known, such as the size of the chain from a table."""
    later = {name for one in question.derives if one.assumed and set(one.needs) & set(missing) for name in (one.gives, *one.asks_for)}
    return tuple(name for name in missing if name not in later or any(name in one.needs for one in question.derives)) or missing


def known_of(values: Mapping[str, Any] | None) -> dict[str, Taken]:
    """Return values of a boat file or an earlier exchange as taken, those that will not do left out."""
    found = {}
    for name, raw in (values or {}).items():
        taken = take(term=TERMS[name], raw=raw) if name in TERMS else None
        if isinstance(taken, Taken):
            found[name] = taken
    return found


def settled(reading: Reading, *, boat: Mapping[str, Any] | None, before: Before | None, units: str | None) -> Reply:
    """Return the reply to a reading."""
    aside = tuple(LeftAside(text=mention.text, term=term) for mention, term in sorted(reading.aside, key=lambda one: one[0].start))
    choices = tuple(choices_of(reading))
    if choices:
        return Unclear(status="unclear", choices=choices, version=VERSION, left_aside=aside)
    try:
        found = answer(
            reading.question,
            reading.asked,
            boat=boat,
            before=before.inputs if before else None,
            units=units,
            left_aside=aside,
            notes=tuple(reading.notes),
            cautions=tuple(reading.cautions),
        )
        if not reading.open_terms:
            doubts = tuple(doubtful(reading, boat=boat))
            return Unclear(status="unclear", choices=doubts, version=VERSION, left_aside=aside) if doubts else found
        faults = []
    except InputError as error:
        faults = [
            one
            for one in error.faults
            if one.input not in reading.open_terms and not (one.code == "missing" and one.input == "depth" and _SOUNDER & set(reading.open_terms))
        ]
    if any(one.code == "contradiction" and one.input in _HEIGHTS for one in faults):
        reading.open_terms.update({name: TERMS[name].prompt for name in _HEIGHTS})
    missing = without_stand_ins(reading.question, tuple(dict.fromkeys([*(one.input for one in faults), *reading.open_terms])))
    return Needs(
        status="needs",
        question=reading.question.name,
        missing=missing,
        prompt=prompt(faults, reading.open_terms),
        read=read_so_far(reading.asked, missing),
        version=VERSION,
        left_aside=aside,
    )
