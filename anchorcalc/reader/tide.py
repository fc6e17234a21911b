"""Tide in a text: heights that make a rise or a fall, and a tide that is mentioned and not given."""

import re

from anchorcalc.reader.fits import with_unit
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.reading import Reading
from anchorcalc.units.kinds import Amount
from anchorcalc.vocabulary import TERMS

# A tide that is on its way: the word for it, and within a few small words the word for where it goes.
_SMALL = (
    r"(?: (?:is|still|going|to|has|some|way|yet|a|bit|lot|in|here|now|will|be"
    r"|keeps|on|its|it|the|and|fair|good|long|quite|also|got|just|only|well)){0,6}"
)
_RISES = re.compile(
    rf" (?:tide|tides|flood|water|level|sea){_SMALL} (?:rising|making|make|makes|rise|rises|come|comes|coming in|coming up|coming|flooding"
    rf"|flood|fills?|filling)(?= )"
    r"| (?:(?:big|huge|massive|large) tides?|tides? (?:is |be |will |(?:going to ))*(?:big|huge|massive)|range of tide|tid(?:e|al) range"
    r"|some tide|tide on top|rise of tide"
    r"|young flood|rise of the tide|(?:rising|making|incoming|flooding|flood) tide|half flood)(?= )"
    r"| (?:she|it)(?: (?:is|will|still|be|to|has|yet|going|got)){0,4} (?:flood|flooding|floods|making yet)(?= )"
    r"| (?:hw|high water|high tide|top of the tide|top of tide) (?:is |will be |be )?(?:isnt |not |only |still |yet )?"
    r"(?:until|till|(?:due )?at <clock>|for another|hours? (?:off|away)|(?:still )?to come|a (?:long )?way off"
    r"|in <duration>|<duration> (?:off|away))(?= )"
)
_FALLS = re.compile(
    rf" (?:tide|tides|ebb|water|level|sea){_SMALL} (?:falling|fall|falls|drop|drops|dropping|ebbing|ebbs?|running|go out|goes out|going out"
    rf"|going down|go down|goes down|run|out|sinking)(?= )"
    r"| (?:fall of tide|fall of the tide|ebb to come)(?= )"
)
_BOTH = re.compile(
    r" (?:tides? (?:\S+ ){0,2}?(?:coming and going|in and out|up and down|to and fro|ebbing and flooding|rising and falling)"
    r"|(?:at|it is|its) (?:neaps|springs)|(?:neap|spring) tides?)(?= )"
)
_NONE = (
    " no tide ",
    " forget the tide ",
    " forget tide ",
    " ignore the tide ",
    " ignore tide ",
    " tideless ",
    " nontidal ",
    " non - tidal ",
    " tide standing ",
    " no tides ",
    " without tide ",
    " slack all night ",
    " not tidal ",
    " no tide here ",
    " never mind the tide ",
)
_NONE_BARE = tuple(phrase.replace(" the ", " ") for phrase in _NONE)


def settle_tide(reading: Reading) -> None:
    """Put what a text says of the tide into a reading."""
    takes = reading.question.inputs
    if "tide_rise" not in takes and "tide_fall" not in takes:
        return
    _down_to(reading)
    _heights(reading)
    line = reading.sentence.line
    bare_line = line.replace(" the ", " ")
    if any(phrase in bare_line for phrase in _NONE_BARE):
        for term in ("tide_rise", "tide_fall"):
            if term in takes and term not in reading.asked and term not in reading.bare:
                reading.asked[term] = Amount("length", 0.0, 0.0, "m", 0.0, 0.0)
        return
    for term, told in (("tide_rise", _RISES), ("tide_fall", _FALLS)):
        if term in takes and term not in reading.asked and term not in reading.bare and (told.search(line) or _BOTH.search(line)):
            reading.open_terms[term] = TERMS[term].prompt


_DOWN = frozenset(("down", "drops", "drop", "falls", "fall", "ebbs", "ebb", "sinks", "sink"))


def _down_to(reading: Reading) -> None:
    """`It drops to 3 m` tells what is left at low water, not the fall."""
    tokens = reading.sentence.tokens
    start = reading.sources.get("tide_fall", (-1, 0.0))[0]
    for at, token in enumerate(tokens):
        told = at >= 2 and tokens[at - 1].word == "to" and tokens[at - 2].word in _DOWN
        if told and token.start == start and token.word == "<length>" and token.mention is not None and "tide_fall" not in reading.rivals:
            reading.asked.pop("tide_fall", None)
            reading.parts.setdefault("at_low", token.mention)


def _heights(reading: Reading) -> None:
    """Make rise, fall or depth of heights that are plainly said."""
    parts, takes = reading.parts, reading.question.inputs
    now = parts.pop("height_now", None)
    charted = parts.pop("charted", None)
    if charted is not None and now is not None and "depth" in takes and "depth" not in reading.asked:
        _put(reading, "depth", charted, now, 1.0, "charted depth + height of tide")
        now_used = True
    else:
        now_used = False
        if charted is not None:
            reading.leave(charted, None)
    for name, part in (("at_high", "hw_height"), ("at_low", "lw_height")):
        height = parts.pop(part, None)
        if height is not None and now is not None and not now_used and name not in parts:
            parts[name] = height
        elif height is not None:
            _alone(reading, height, "tide_rise" if name == "at_high" else "tide_fall")
    base = now.amount if now is not None and not now_used else reading.asked.get("depth")
    for name, term, sign in (("at_high", "tide_rise", 1.0), ("at_low", "tide_fall", -1.0)):
        there = parts.pop(name, None)
        if there is None:
            continue
        if term in takes and term not in reading.asked and isinstance(base, Amount):
            start = now if now is not None and not now_used else Mention("length", base, 0, 0, _text(base))
            change = sign * (there.amount.low - base.low)  # type: ignore[union-attr]
            if change >= 0.0:
                _put(reading, term, there, start, -1.0, "at high water − now" if sign > 0 else "now − at low water", sign=sign)
                now_used = True
                continue
        reading.leave(there, None)
    if now is not None and not now_used:
        reading.leave(now, None)


def _alone(reading: Reading, height: Mention, term: str) -> None:
    """A height of high or low water alone is neither a rise nor a fall: that is asked for."""
    reading.leave(height, "high_height" if term == "tide_rise" else "low_height")
    reading.told.add(height.start)
    if term in reading.question.inputs and term not in reading.asked and term not in reading.bare:
        reading.open_terms[term] = TERMS[term].prompt


def _put(reading: Reading, term: str, first: Mention, second: Mention, factor: float, what: str, sign: float = 1.0) -> None:
    one, other = first.amount, second.amount
    assert isinstance(one, Amount) and isinstance(other, Amount)
    low, high = sign * (one.low + factor * other.low), sign * (one.high + factor * other.high)
    unit = one.unit
    from anchorcalc.units.kinds import UNIT
    from anchorcalc.units.shown import tidy

    size = UNIT[unit].factor
    made = with_unit(Amount("number", 0.0, 0.0, "", tidy(min(low, high) / size), tidy(max(low, high) / size)), unit=unit)
    reading.put(term, made)
    reading.notes.append(f"{what}: {_sum(_text(one), _text(other), factor, sign)} = {_text(made)}")


def _sum(first: str, second: str, factor: float, sign: float) -> str:
    if factor > 0:
        return f"{first} + {second}"
    return f"{first} − {second}" if sign > 0 else f"{second} − {first}"


def _text(amount: Amount) -> str:
    return f"{amount.value:.12g} {amount.unit}"
