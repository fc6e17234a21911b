"""A text that goes on from an exchange before: which question it means, and what a lone quantity fills."""

import math
import re
from collections.abc import Mapping
from typing import Any

from anchorcalc.answering.gate import admit
from anchorcalc.answering.taking import Taken
from anchorcalc.catalogue import question as question_named
from anchorcalc.declare import Question
from anchorcalc.doors.exchange import Before
from anchorcalc.errors import InputError
from anchorcalc.reader.fits import as_given, fit, is_size
from anchorcalc.reader.intent import Weighed, weigh
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.reading import Reading
from anchorcalc.reader.sentence import Sentence
from anchorcalc.reader.subjects import foreign
from anchorcalc.reader.words import STOPS
from anchorcalc.units import kinds
from anchorcalc.units.kinds import Amount
from anchorcalc.vocabulary import TERMS

_OPENERS = re.compile(
    r"^ (?:(?:and|so|then|or|but|okay|oh|right|hm|now|well|,|no) )*(?:(?:what about|what if|how about|make that|make it|same with|same but"
    r"|same boat but|say|instead|what of|if|suppose|with|for|at|in|once) )?"
)
_ASKS = re.compile(r"(?<= )(?:how|what|which|when|where|will|is|are|do|does|can|should|would|am|has)(?= )")
_STRONG, _BY_NAME, _PLAINLY = 7.0, 10.0, 0.95


def question_meant(sentence: Sentence, before: Before | None) -> tuple[Question | None, list[Weighed]]:
    """Return the question that a line of words asks, where an exchange before may have named it."""
    line = sentence.line
    start, end = foreign(line)
    own = (*sentence.tokens[: line.count(" ", 0, start)], *sentence.tokens[line.count(" ", 0, end) :]) if start >= 0 else sentence.tokens
    weighed = weigh(own)
    if before is None:
        return (question_named(weighed[0].question) if weighed else None), weighed
    rest = _OPENERS.sub(" ", line, count=1)
    named = bool(weighed) and weighed[0].strongest >= _BY_NAME and weighed[0].share >= _PLAINLY
    if named or (weighed and weighed[0].strongest >= _STRONG and (_ASKS.search(rest) or rest == line)):
        return question_named(weighed[0].question), weighed
    return question_named(before.question), weighed


_ONLY_A_LENGTH = re.compile(r"(?:with|for|make that|make it|say|about|at|and|if|then|now|but|what|how|same|so|oh|okay|,|<length>| )*[ ?.!]*")
_MORE = re.compile(r" (?:another|extra|further) <length> | <length> (?:more|less|extra|further|longer|shorter|deeper) ")
_NEAR = 2.5


def doubt_replaced(reading: Reading, *, known: Mapping[str, Taken]) -> None:
    """Ask for what a lone length would replace, where it is a change (`10 m more`), or no word says which and its size tells of another."""
    line = reading.sentence.line
    for name, value in list(reading.asked.items()):
        held = known.get(name)
        if held is None or not isinstance(value, Amount) or TERMS[name].kind is not kinds.LENGTH or name in reading.open_terms:
            continue
        lone = _ONLY_A_LENGTH.fullmatch(line) is not None and len(reading.asked) == 1
        if _MORE.search(line) or (lone and _tells_of_another(reading, name, value, known)):
            del reading.asked[name]
            reading.open_terms[name] = TERMS[name].prompt


def _tells_of_another(reading: Reading, name: str, value: Amount, known: Mapping[str, Taken]) -> bool:
    """Say whether a length is not near what it would replace, or nearer to another length that was given."""
    off = {
        one: abs(math.log(value.low / held.low))
        for one, held in known.items()
        if one in reading.question.inputs and TERMS[one].kind is kinds.LENGTH and isinstance(held.low, float) and held.low > 0.0 < value.low
    }
    return len(off) > 1 and (off.get(name, 0.0) > min(off.values()) or off[name] > math.log(_NEAR))


def fill_lone(reading: Reading, *, before: Before, known: Mapping[str, Any], boat: Mapping[str, Any] | None) -> dict[str, Amount]:
    """Let a lone quantity fill the first input that is missing, else replace the one earlier input that it can mean.

    Where it can mean one of several, return what each would be.
    """
    weak = _weakly_meant(reading, before=before)
    if weak is None and _CORRECTS.search(reading.sentence.line):
        _take_back_unnamed(reading)
    loose = [mention for mention, term in reading.aside if term is None and mention.kind in _LOOSE]
    if len(loose) != 1 or reading.asked or reading.bare:
        return {}
    mention = loose[0]
    name = _first_missing(reading.question, mention, before=before, boat=boat) or _only_earlier(reading, mention, known) or weak
    if name is None:
        return {one: as_given(term=TERMS[one], mention=mention) for one in _fitting(reading.question, mention, known, how=("yes",))}
    reading.aside = [(one, term) for one, term in reading.aside if one is not mention]
    if fit(term=TERMS[name], mention=mention) == "bare":
        reading.bare[name] = mention
    else:
        reading.asked[name] = mention.text if TERMS[name].kind is kinds.CLOCK else as_given(term=TERMS[name], mention=mention)
    return {}


def answer_in_a_word(reading: Reading, *, known: Mapping[str, Taken]) -> None:
    """Take a lone word at the beginning of a reply for the first open input that has such a choice: `the keel` says what the sounder reads from."""
    words = [token.word for token in reading.sentence.tokens]
    first = next((at for at, word in enumerate(words) if word in STOPS or word == ","), len(words))
    said = " ".join(word for word in words[:first] if word not in _SMALL)
    for name in reading.question.inputs:
        choice = _CHOICES.get(name, {}).get(said)
        if choice is not None and name not in reading.asked and name not in known:
            reading.open_terms.pop(name, None)
            reading.asked[name] = choice
            return


_SMALL = frozenset("a an the it is its that would be from at by to of on in i think she my our we have and , yes well".split())
_CHOICES: dict[str, dict[str, str]] = {
    "reads_from": {"keel": "keel", "surface": "surface", "waterline": "surface", "water surface": "surface", "transducer": "transducer"},
    "marks_from": {"anchor": "anchor", "chain end": "chain_end", "end chain": "chain_end"},
    "boat_form": {"motor": "motor", "motor boat": "motor", "sail": "sail"},
    "bitter_end": {"tied": "tied", "made fast": "tied", "fixed": "fixed", "free": "free", "loose": "free"},
    "shackles": {"seized": "seized", "open": "open", "not seized": "open"},
}


def _weakly_meant(reading: Reading, *, before: Before) -> str | None:
    """Take back (and return) what only a small word says of a lone quantity, where the exchange before knows no such input: `and for 60 m?`."""
    if len(reading.asked) != 1 or reading.bare or len(reading.sources) != 1:
        return None
    ((name, (start, score)),) = reading.sources.items()
    mention = next((token.mention for token in reading.sentence.tokens if token.start == start), None)
    if (
        mention is not None
        and "another" not in mention.flags
        and name in reading.asked
        and name not in before.inputs
        and name not in before.missing
        and score <= _WEAK
    ):
        del reading.asked[name]
        reading.leave(mention, None)
        return name
    return None


def _take_back_unnamed(reading: Reading) -> None:
    """Take back the one quantity of a correction that no word names: `make that 8 ft` may mean any of the earlier ones."""
    if len(reading.asked) != 1 or reading.bare or len(reading.sources) != 1:
        return
    ((name, (start, score)),) = reading.sources.items()
    mention = next((token.mention for token in reading.sentence.tokens if token.start == start), None)
    named = score >= _NAMED or any(f" {noun} " in reading.sentence.line for noun in TERMS[name].nouns)
    if mention is not None and name in reading.asked and not named:
        del reading.asked[name]
        reading.leave(mention, None)


_WEAK, _NAMED = 3.5, 8.0
_LOOSE = frozenset(("length", "speed", "mass", "force", "angle", "power", "ratio", "clock", "number"))


def _first_missing(question: Question, mention: Mention, *, before: Before, boat: Mapping[str, Any] | None) -> str | None:
    missing = list(before.missing)
    try:
        admit(question, {}, boat=boat, before=before.inputs)
        return None
    except InputError as error:
        missing += [one.input for one in error.faults if one.code == "missing"]
    if missing:
        missing += [name for group in question.one_of for name in group if name not in before.inputs]
    for name in dict.fromkeys(missing):
        if name in question.inputs and fit(term=TERMS[name], mention=mention) == "yes":
            return name
    return None


def _only_earlier(reading: Reading, mention: Mention, known: Mapping[str, Taken]) -> str | None:
    fitting = _fitting(reading.question, mention, known, how=("yes", "bare"))
    if len(fitting) > 1 and not _CORRECTS.search(reading.sentence.line):
        fitting = [name for name in fitting if reading.question.inputs[name].need == "asked"]
    return fitting[0] if len(fitting) == 1 else None


def _fitting(question: Question, mention: Mention, known: Mapping[str, Taken], *, how: tuple[str, ...]) -> list[str]:
    """Return the earlier inputs that a quantity could take the place of."""
    fitting = [
        name for name in known if name in question.inputs and TERMS[name].kind is not kinds.CLOCK and fit(term=TERMS[name], mention=mention) in how
    ]
    near = [name for name in fitting if _is_near(mention, known[name])]
    return [name for name in near or fitting if TERMS[name].kind is kinds.SIZE] if is_size(mention) else near or fitting


def _is_near(mention: Mention, held: Taken) -> bool:
    """Say whether a quantity is so near an earlier one that it may take its place: 6 m for 4 m of water, not for 1 m of bow."""
    value = mention.amount.low if isinstance(mention.amount, Amount) and mention.amount.unit else 0.0
    return value <= 0.0 or not isinstance(held.low, float) or held.low <= 0.0 or max(value / held.low, held.low / value) <= _AS_NEAR


_AS_NEAR = 3.0
_CORRECTS = re.compile(  # what is corrected, of several, is asked
    r" (?:make|call) (?:that|it) |^ (?:no|nope|sorry|oops|wait|actually|correction)(?: [,.!–-])* (?=<(?!number))"
)
