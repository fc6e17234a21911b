"""Quantities that no word claims: the one place that is left for them, or a question back."""

import math
import re
from collections.abc import Iterable

from anchorcalc.declare import Derivation
from anchorcalc.reader.fits import as_given, fit
from anchorcalc.reader.likely import NO_INPUT
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.plausible import plausible
from anchorcalc.reader.reading import Reading
from anchorcalc.reader.sentence import Token
from anchorcalc.units import kinds
from anchorcalc.units.kinds import Amount
from anchorcalc.vocabulary import TERMS

# Words between which a quantity stands on its own, so that nothing else is meant by it than what is still wanting.
_LEFT = frozenset(
    ", . ; : ? ! \n ( – - and with in for at on about around is of say plus are i it she her there here boat a only just now like then or also "
    "got the".split(" ")
) | {"", "<length>"}
_RIGHT = frozenset(", . ; : ? ! \n ) – - and with in for at on now here there plus or but is to what how will do does she then can".split(" ")) | {
    "",
    "<length>",
}
MEASURED = frozenset(("length", "speed", "mass", "force", "angle", "power"))
_TERM_KINDS = frozenset((kinds.LENGTH, kinds.SIZE, kinds.SPEED, kinds.MASS, kinds.FORCE, kinds.ANGLE, kinds.POWER))


def unclaimed(reading: Reading) -> list[Mention]:
    """Return the measured quantities that were left aside without a term."""
    return [mention for mention, term in reading.aside if term is None and mention.kind in MEASURED]


def open_for(reading: Reading, mention: Mention, *, known: Iterable[str], need: str | None = None) -> list[str]:
    """Return the inputs of the question that a quantity could be and that are still open."""
    held = {*reading.asked, *reading.bare, *reading.open_terms, *known}
    found = []
    for name, one in reading.question.inputs.items():
        if name in held or one.term.kind not in _TERM_KINDS or (need is not None and one.need != need):
            continue
        if (
            fit(term=one.term, mention=mention) == "yes"
            and isinstance(mention.amount, Amount)
            and plausible(name, as_given(term=one.term, mention=mention), reading.asked)
        ):
            found.append(name)
    return _alternatives_closed(reading, found, held)


def _alternatives_closed(reading: Reading, found: list[str], held: set[str]) -> list[str]:
    """Leave out what another group of alternatives has made needless."""
    groups = reading.question.one_of
    closed = {name for group in groups for other in groups if other is not group and all(one in held for one in other) for name in group}
    return [name for name in found if name not in closed]


def stands_alone(tokens: tuple[Token, ...], mention: Mention) -> bool:
    """Say whether a quantity stands between signs or small words, with no noun of its own."""
    at = next((place for place, token in enumerate(tokens) if token.start == mention.start and token.mention is not None), -1)
    if at < 0:
        return False
    left = tokens[at - 1].word if at else ""
    right = tokens[at + 1].word if at + 1 < len(tokens) else ""
    return left in _LEFT and right in _RIGHT


# A quantity of these kinds has one meaning in most questions, whatever stands beside it.
_BY_KIND = (
    ("speed", ("wind", "drift")),
    ("force", ("load", "pull")),
    ("power", ("engine_power",)),
    ("mass", ("anchor_mass", "load", "pull")),
    ("angle", ("spread", "angle", "pull_angle")),
)


def place_by_kind(reading: Reading) -> None:
    """Give the only quantity of its kind the input that its kind stands for."""
    for kind, names in _BY_KIND:
        left = [one for one in unclaimed(reading) if one.kind == kind and one.start not in reading.told | reading.theirs]
        takes = [name for name in names if name in reading.question.inputs]
        if not left or not takes:
            continue
        name = takes[0]
        if name in reading.asked or name in reading.bare or (kind == "mass" and name == "anchor_mass" and len(takes) > 1 and "load" in reading.asked):
            continue
        for mention in left:
            if fit(term=TERMS[name], mention=mention) == "yes" and likely_enough(reading, mention, name):
                reading.put(name, as_given(term=TERMS[name], mention=mention))
                reading.aside = [(one, term) for one, term in reading.aside if one is not mention]


def likely_enough(reading: Reading, mention: Mention, name: str) -> bool:
    """Say whether the weights allow that a quantity stands for a term."""
    shares = reading.shares.get(mention.start)
    return shares is None or name not in shares or shares[name] >= _LEAST_SHARE


def maybe_meant(reading: Reading, mention: Mention, held: Iterable[str]) -> bool:
    """Say whether a quantity, whatever else a word calls it, may well be an input that is still open."""
    taken = {*reading.asked, *reading.bare, *reading.open_terms, *held}
    shares = reading.shares.get(mention.start, {})
    return any(log >= _MAYBE and name in reading.question.inputs and name not in taken for name, log in shares.items())


def no_input(reading: Reading, mention: Mention) -> bool:
    """Say whether the weights leave no doubt that a quantity is no input of the question."""
    return reading.shares.get(mention.start, {}).get(NO_INPUT, -math.inf) >= _NO_DOUBT


_NO_DOUBT = math.log(0.95)
_LEAST_SHARE, _MAYBE = math.log(0.13), math.log(0.25)


def place_unclaimed(reading: Reading, *, known: frozenset[str]) -> None:
    """Give a quantity that stands alone the one required input that is left for it."""
    wanted = _wanted(reading, known)
    alone = [one for one in unclaimed(reading) if one.start not in reading.theirs and stands_alone(reading.sentence.tokens, one)]
    for mention in alone:
        options = [name for name in open_for(reading, mention, known=known) if name in wanted and likely_enough(reading, mention, name)]
        options += [one.gives for one in reading.question.derives if _as_well(reading, mention, one, options, known)]
        rivals = [other for other in alone if other is not mention and other.kind == mention.kind and other.amount != mention.amount]
        if len(options) == 1 and not rivals:
            reading.asked[options[0]] = as_given(term=TERMS[options[0]], mention=mention)
            reading.aside = [(one, term) for one, term in reading.aside if one is not mention]


def _as_well(reading: Reading, mention: Mention, derivation: Derivation, options: list[str], known: frozenset[str]) -> bool:
    """Say whether a quantity may as well be what one of its options would only help to give: `which mark for 37 m?`."""
    given = derivation.gives
    asked = reading.question.inputs[given].need == "asked" and given not in reading.asked and given not in known
    return asked and given not in options and not set(options).isdisjoint(derivation.needs) and fit(term=TERMS[given], mention=mention) == "yes"


_BY_WORD_ONLY = frozenset(("low_height", "high_height"))


def _wanted(reading: Reading, known: frozenset[str]) -> set[str]:
    """Return the inputs that must be given and are not."""
    question, held = reading.question, {*reading.asked, *reading.bare, *known}
    derivable = {one.gives for one in question.derives if all(name in held for name in one.needs)}
    wanted = {
        name
        for name, one in question.inputs.items()
        if one.need == "asked" and name not in held and name not in derivable and name not in _BY_WORD_ONLY
    }
    for one in question.derives:
        if one.gives in wanted and one.gives not in one.asks_for:
            wanted |= set(one.needs)
            wanted.discard(one.gives)
    if question.one_of and not question.one_of_may and not any(all(name in held for name in group) for group in question.one_of):
        wanted |= {name for group in question.one_of for name in group if name not in held}
    return wanted


def loose(reading: Reading, *, known: Iterable[str]) -> list[tuple[Mention, list[str]]]:
    """Return the quantities that no word claims and that could still be an input: an answer without them might be a wrong one."""
    found = []
    held = tuple(known)
    for mention, term in reading.aside:
        doubted = (mention.kind in MEASURED and not no_input(reading, mention) and not _mean_wind(reading, mention)) or (
            mention.kind == "number" and not _something_else(reading, mention)
        )
        maybe = mention.start not in reading.told | reading.theirs or (term not in _TIDES and maybe_meant(reading, mention, held))
        if maybe and doubted and not repeated(reading, mention) and not _weighs(reading, mention):
            bare = mention.kind == "number"
            options = _of_number(reading, mention) if bare else open_for(reading, mention, known=held) or _instead(reading, mention)
            if options:
                found.append((mention, options))
    return found


def _weighs(reading: Reading, mention: Mention) -> bool:
    """Say whether a mass tells what something weighs: the load is told as a force besides, and no anchor's mass is asked for."""
    load = reading.asked.get("load")
    return mention.kind == "mass" and isinstance(load, Amount) and load.kind == "force" and "anchor_mass" not in reading.question.inputs


def _mean_wind(reading: Reading, mention: Mention) -> bool:
    """Say whether a speed is that of the wind between the gusts, where those were taken."""
    wind, amount = reading.asked.get("wind"), mention.amount
    slower = mention.kind == "speed" and isinstance(wind, Amount) and isinstance(amount, Amount) and _NO_STREAM < amount.high <= wind.high
    return slower and _BESIDE_GUSTS.search(reading.sentence.text) is not None


_TIDES = frozenset(("tide_fall", "tide_rise"))  # a tide plainly told the other way than the question takes it
_NO_STREAM = 3.0  # metres per second: what is slower may be the stream
_NO_VALUE = frozenset(("label", "after_name", "times", "compound_word", "fraction", "article"))  # names, counts and trade fractions
_CALLED = re.compile(r"(?:[A-Z][\w']+ |\"|\b(?:gone|dropped|eased|gone down|come down|risen) from )\Z")
_COUNTED = re.compile(r" (?!this|plus|minus|less|across|towards|does|unless|thus|always|yours|ours)[a-z]{3,20}s\b| of (?:us|them|you)\b")  # `3 reefs`
_NAMED = re.compile(r" [A-Z]")  # a boat called `Forty Winks`
_MERELY = re.compile(r"\b(?:of|at|by|about|until|till|before|after|past|around|the|these|those|all|both) \Z")  # `a raft of two`, `at seven`
_MORE = re.compile(r" (?:more|to (?:fall|rise|come|go|drop))\b")  # `two more to fall`
_BESIDE_GUSTS = re.compile(r"\bgust|\bsquall|\bpeaks of\b|\bpuffs\b", re.IGNORECASE)
_OF_GUSTS = re.compile(r" gusting\b|(?: with)? gusts (?:of|to)\b")


def _something_else(reading: Reading, mention: Mention) -> bool:
    """Say whether a bare number plainly is no value: a name's, what was, a count, a list's, a time, nought, a mean wind beside gusts, said again."""
    text, amount = reading.sentence.text, mention.amount
    if _NO_VALUE & mention.flags or not isinstance(amount, Amount) or amount.value == 0.0:
        return True
    if "spelled" in mention.flags and (amount.value == 1.0 or _NAMED.match(text, mention.end) or _MERELY.search(text[: mention.start])):
        return True  # `one` is a pronoun more often than a figure
    digits = mention.text.isdigit() and len(mention.text) == 4
    named = _CALLED.search(text, max(0, mention.start - 24), mention.start) is not None or text[mention.end : mention.end + 1] == '"'
    mean = "wind" in reading.asked and _BESIDE_GUSTS.search(text) is not None
    mean = mean or ("wind" not in reading.question.inputs and _OF_GUSTS.match(text, mention.end) is not None)
    again = _MORE.match(text, mention.end) is None and any(isinstance(one, Amount) and one.value == amount.value for one in reading.asked.values())
    item = text[mention.end : mention.end + 1] in (".", ")") and all(one in text for one in (f"1{text[mention.end]} ", f"2{text[mention.end]} "))
    return digits or named or mean or again or item or _COUNTED.match(text, mention.end) is not None


def _instead(reading: Reading, mention: Mention) -> list[str]:
    """Return the inputs that were read and that a quantity could be meant for instead."""
    found = [
        name
        for name in reading.asked
        if name in reading.question.inputs and TERMS[name].kind in _TERM_KINDS and fit(term=TERMS[name], mention=mention) == "yes"
    ]
    others = {name: {other: one for other, one in reading.asked.items() if other != name} for name in found}
    return [name for name in found if plausible(name, as_given(term=TERMS[name], mention=mention), others[name])]


def _of_number(reading: Reading, mention: Mention) -> list[str]:
    """Return what a number without a unit could be: a size that was read otherwise, another value that was, or an input that is open."""
    kinds_taken = _TERM_KINDS | {kinds.RATIO}
    could = [
        name
        for name, one in reading.question.inputs.items()
        if one.term.kind in kinds_taken and fit(term=one.term, mention=mention) in ("yes", "bare")
    ]
    held = reading.asked
    return sorted(
        could, key=lambda name: (name not in held or TERMS[name].kind is not kinds.SIZE, TERMS[name].kind is not kinds.RATIO, name not in held)
    )


def repeated(reading: Reading, mention: Mention) -> bool:
    """Say whether a quantity only says again what was taken; `thirty metres of it` is something else."""
    at = next((place for place, token in enumerate(reading.sentence.tokens) if token.start == mention.start), -1)
    if at >= 0 and at + 1 < len(reading.sentence.tokens) and reading.sentence.tokens[at + 1].word == "of":
        return False
    return any(isinstance(one, Amount) and one == mention.amount for one in reading.asked.values())


__all__ = ["TERMS", "loose", "open_for", "place_by_kind", "place_unclaimed", "stands_alone", "unclaimed"]
