"""Tide in a text: heights that make a rise or a fall, and a tide that is mentioned and not given."""

import itertools
import re

from anchorcalc.reader.fits import with_unit
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.reading import Reading
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.sought import sought
from anchorcalc.reader.waters import around, two_waters
from anchorcalc.units.kinds import UNIT, Amount
from anchorcalc.units.shown import tidy
from anchorcalc.vocabulary import TERMS

# A tide that is on its way: the word for it, and within a few small words the word for where it goes.
_SMALL = (
    r"(?: (?:is|still|going|to|has|some|way|yet|a|bit|lot|in|here|now|will|be"
    r"|keeps|on|its|it|the|and|fair|good|long|quite|also|got|just|only|well)){0,8}"
)
_RISES = re.compile(
    rf" (?:tide|tides|flood|water|level|sea){_SMALL} (?:rising|making|makes?|brings?|adds?|lifts?|rises?|comes?|coming in|coming up|coming|flooding"
    rf"|flood|fills?|filling)(?= )"
    r"| (?:(?:big|huge|massive|large) tides?|tides? (?:is |be |will |(?:going to ))*(?:big|huge|massive)|range of tide|tid(?:e|al) range"
    r"|some tide|tide on top(?! of (?:that|it|this|the chart))|rise of tide"
    r"|young flood|rise of the tide|(?:rising|making|incoming|flooding|flood) tide|half flood)(?= )"
    r"| (?:she|it)(?: (?:is|will|still|be|to|has|yet|going|got)){0,4} (?:flood|flooding|floods|making yet)(?= )"
    r"| (?:hw|high water|high tide|top of the tide|top of tide) (?:is |will be |be )?(?:isnt |not |only |still |yet )?"
    r"(?:until|till|(?:due )?at <clock>|for another|hours? (?:off|away)|(?:still )?to come|a (?:long )?way off"
    r"|in <time>|<time> (?:off|away))(?= )"
)
_FALLS = re.compile(
    rf" (?:tide|tides|ebb|water|level|sea){_SMALL} (?:falling|fall|falls|drop|drops|dropping|ebbing|ebbs?|running|go out|goes out|going out"
    rf"|going down|go down|goes down|run|out|sinking)(?= )"
    r"| (?:fall of tide|fall of the tide|ebb to come)(?= )"
)
_BOTH = re.compile(
    r" (?:tides? (?:\S+ ){0,2}?(?:coming and going|in and out|up and down|to and fro|ebbing and flooding|rising and falling)"
    r"|(?:at|it|it is|its|is) (?:neaps|springs)|springs (?:tonight|now|today)|(?:neap|spring) tides?"
    r"|(?:dont|do not|not|no) (?:know|sure|idea)(?: (?:of|about|what|how|the|much))* tides?)(?= )"
)
_TIDELESS = tuple(  # as they stand without `the`
    f" {phrase} "
    for phrase in (
        "no tide", "no tides", "forget tide", "ignore tide", "never mind tide", "without tide", "tideless", "nontidal", "non - tidal", "not tidal",
        "tide standing", "slack all night",
    )
)  # fmt: skip
_OF_NO_TIDE = frozenset("tide tides tideless nontidal tidal slack".split())  # one of these stands in each
_RISE = sought(
    _RISES,
    "rising making make makes bring brings add adds lift lifts rise rises come comes coming flooding flood floods fill fills filling "
    "big huge massive large range some top incoming hw high",
)
_FALL = sought(_FALLS, "falling fall falls drop drops dropping ebbing ebb ebbs running run go goes going out sinking")
_TO_AND_FRO = sought(_BOTH, "tide tides neap neaps spring springs")


def settle_tide(reading: Reading) -> None:
    """Put what a text says of the tide into a reading."""
    takes = reading.question.inputs
    if "tide_rise" not in takes and "tide_fall" not in takes:
        return
    two_waters(reading)
    _chart_and_tide(reading)
    _down_to(reading)
    _heights(reading)
    _ebb_is_no_rise(reading)
    _at_the_top(reading)
    line, words = reading.sentence.line, reading.sentence.words
    if _tideless(reading):
        for term in ("tide_rise", "tide_fall"):
            if term in takes and term not in reading.asked and term not in reading.bare:
                reading.asked[term] = Amount("length", 0.0, 0.0, "m", 0.0, 0.0)
        return
    for term, told in (("tide_rise", _RISE), ("tide_fall", _FALL)):
        if term not in takes or term in reading.asked or term in reading.bare:
            continue
        if told.search(line, words) or _TO_AND_FRO.search(line, words):
            reading.open_terms[term] = TERMS[term].prompt


def _tideless(reading: Reading) -> bool:
    bare_line = reading.sentence.line.replace(" the ", " ")
    return not _OF_NO_TIDE.isdisjoint(reading.sentence.words) and any(phrase in bare_line for phrase in _TIDELESS)


_DOWN = frozenset(("down", "drops", "drop", "falls", "fall", "ebbs", "ebb", "sinks", "sink"))


def _down_to(reading: Reading) -> None:
    """`It drops to 3 m` tells what is left at low water, not the fall."""
    tokens = reading.sentence.tokens
    start = reading.sources.get("tide_fall", (-1, 0.0))[0]
    if start < 0 or _DOWN.isdisjoint(reading.sentence.words):
        return
    for at, token in enumerate(tokens):
        told = at >= 2 and tokens[at - 1].word == "to" and tokens[at - 2].word in _DOWN
        if told and token.start == start and token.word == "<length>" and token.mention is not None and "tide_fall" not in reading.rivals:
            reading.asked.pop("tide_fall", None)
            reading.parts.setdefault("at_low", token.mention)


_CHART = frozenset(("chart", "charted"))
_OF_THE_CHART = _CHART | {"dries", "drying"}
_TIDE = frozenset(("tide", "tides", "tidal", "gauge"))
_STANDS = frozenset("height gauge stands standing".split())
_AT_ONCE = frozenset("now moment minute present currently presently".split())
_CHANGES = frozenset(
    "rise rises rising range come comes coming another still more yet will make makes making add adds flood flooding brings bring lift lifts "
    "fall falls falling drop drops ebb ebbs ebbing go goes going until till by low high hw lw".split()
)


def _chart_and_tide(reading: Reading) -> None:
    """A depth on the chart and a height of tide that stands now are told of one place: together they make the depth."""
    tokens = reading.sentence.tokens
    if _OF_THE_CHART.isdisjoint(reading.sentence.words):
        return
    lengths = [at for at, token in enumerate(tokens) if token.word == "<length>" and token.mention is not None]
    said = {at: around(tokens, at) for at in lengths}
    charted = [at for at in lengths if _on_chart(*said[at])]
    tides = [at for at in lengths if at not in charted and _stands_now(*said[at])]
    if len(charted) == 1 and not tides:
        _charted_alone(reading, tokens[charted[0]])
    if len(charted) != 1 or len(tides) != 1 or "depth" not in reading.question.inputs:
        return
    chart, tide = tokens[charted[0]].mention, tokens[tides[0]].mention
    assert chart is not None and tide is not None
    both = (chart.start, tide.start)
    if any(one not in (chart.amount, tide.amount) for one in reading.rivals.get("depth", ())):
        return
    reading.rivals.pop("depth", None)
    if "depth" in reading.asked and reading.sources.get("depth", (-1, 0.0))[0] not in both:
        return
    for term in [name for name, (start, _) in reading.sources.items() if start in both and name not in reading.rivals]:
        reading.asked.pop(term, None)
    reading.parts = {name: one for name, one in reading.parts.items() if one.start not in both}
    reading.aside = [(one, term) for one, term in reading.aside if one.start not in both]
    reading.parts |= {"charted": chart, "height_now": tide}


def _charted_alone(reading: Reading, token: Token) -> None:
    """What the chart has is no depth while the tide on it is not known; where there is no tide it is."""
    at_depth = reading.sources.get("depth", (-1, 0.0))[0] == token.start and "depth" not in reading.rivals
    if at_depth and token.mention is not None and not _tideless(reading):
        reading.asked.pop("depth", None)
        reading.parts.setdefault("charted", token.mention)


def _on_chart(before: list[str], behind: list[str]) -> bool:
    """Say whether a length is a depth on the chart, or a drying height; what a plotter shows or who sits at the chart table is no chart."""
    if _dries(before, behind):
        return True
    said = [word for word, follows in itertools.pairwise([*before, ""]) if word in _CHART and follows not in ("plotter", "table")]
    return (bool(said) and not _TIDE & set(before)) or behind[:1] == ["charted"] or "on the chart" in " ".join(behind[:5])


_DRIES = re.compile(r"\b(?:dries|drying)(?: (?:height|heights|sounding|of|at|by|is|about|out|to|the|a))*$")


def _dries(before: list[str], behind: list[str]) -> bool:
    """Say whether a length is a height above the chart's datum that dries: `it dries 0.6 m`, `a drying height of 2 ft`."""
    return _DRIES.search(" ".join(before)) is not None or (behind[:1] == ["drying"] and behind[1:2] in ([], ["height"], ["here"], ["on"]))


def _is_drying(reading: Reading, mention: Mention) -> bool:
    tokens = reading.sentence.tokens
    at = next((at for at, token in enumerate(tokens) if token.start == mention.start), -1)
    return at >= 0 and _dries(*around(tokens, at))


def _stands_now(before: list[str], behind: list[str]) -> bool:
    """Say whether a length is a height of tide now, not a rise or a fall."""
    words = {*before, *behind}
    tidal = bool(_TIDE & set(before)) or behind[:2] in (["of", "tide"], ["tide", "height"]) or behind[:1] == ["tide"]
    line = " ".join(behind)
    on_top = "on top of" in line or "above datum" in line or "over datum" in line or "above chart" in line or "over chart" in line
    return tidal and not _CHANGES & words and (bool((_STANDS | _AT_ONCE) & words) or on_top)


def _ebb_is_no_rise(reading: Reading) -> None:
    """`An ebb of 3 m to come` is yet to come, but no rise."""
    start = reading.sources.get("tide_rise", (-1, 0.0))[0]
    tokens = reading.sentence.tokens
    if start < 0:
        return
    at = next((at for at, token in enumerate(tokens) if token.start == start), 0)
    mention = tokens[at].mention
    if mention is None or at < 2 or "tide_rise" in reading.rivals or "tide_rise" not in reading.asked:
        return
    falls = ("ebb", "fall", "drop")
    if (tokens[at - 1].word == "of" and tokens[at - 2].word in falls) or (at + 1 < len(tokens) and tokens[at + 1].word in falls):
        value = reading.asked.pop("tide_rise")
        if "tide_fall" in reading.question.inputs:
            reading.put("tide_fall", value)
        else:
            reading.leave(mention, "tide_fall")


_TOP_NOW = re.compile(
    r" (?:(?:high water|hw|high tide|(?:the )?top of (?:the )?(?:tide|flood|springs?)|full flood)(?: slack)?"
    r" (?:right |just |is )?now(?! <| at | in )|now ,? ?(?:at )?(?:high water|hw|high tide)(?= [,;.])"
    r"|(?:it|it is|weare|we are|now|just|right) (?:is )?(?:now |just |right )?(?:at )?(?:the )?"
    r"(?:high water(?: slack)?|hw|high tide|top of (?:the )?(?:tide|flood|high water))(?! <| at | in | is | was | will | depth| height| of)"
    r"|(?:high water|hw|high tide) (?:is |has )?(?:just |only just )(?:gone|past|passed|been)"
    r"|tide (?:is |has )?(?:just )?(?:at (?:the |it )?top|at (?:the )?full|full))(?= )"
)


def _at_the_top(reading: Reading) -> None:
    """At high water the depth is the most there will be: what the ebb will take is no part of a rode."""
    falls = [one.start for one, term in reading.aside if term == "tide_fall" and "another" not in one.flags]
    if falls and "tide_fall" not in reading.question.inputs and "tide_rise" not in reading.asked and _TOP_NOW.search(reading.sentence.line):
        reading.told.update(falls)


def _heights(reading: Reading) -> None:
    """Make rise, fall or depth of heights that are plainly said; what is less at high water than the depth now is a height of tide."""
    parts, takes = reading.parts, reading.question.inputs
    now = parts.pop("height_now", None)
    now_used = _charted_depth(reading, parts.pop("charted", None), now)
    for name, part in (("at_high", "hw_height"), ("at_low", "lw_height")):
        height = parts.pop(part, None)
        depth = reading.asked.get("depth")
        less = name == "at_high" and height is not None and isinstance(depth, Amount) and height.amount.low < depth.low  # type: ignore[union-attr]
        if height is not None and now is not None and (not now_used or less) and name not in parts:
            parts[name] = height
        elif height is not None:
            _alone(reading, height, "tide_rise" if name == "at_high" else "tide_fall")
    base = now.amount if now is not None and not now_used else reading.asked.get("depth")
    for name, term, sign in (("at_high", "tide_rise", 1.0), ("at_low", "tide_fall", -1.0)):
        there = parts.pop(name, None)
        if there is None:
            continue
        if term in takes and term not in reading.asked and isinstance(base, Amount):
            by_height = now is not None and (not now_used or (sign > 0 and there.amount.low < base.low))  # type: ignore[union-attr]
            start = now if now is not None and by_height else Mention("length", base, 0, 0, _text(base))
            change = sign * (there.amount.low - start.amount.low)  # type: ignore[union-attr]
            if change >= 0.0:
                _put(reading, term, there, start, -1.0, "at high water − now" if sign > 0 else "now − at low water", sign=sign)
                now_used = True
                continue
        reading.leave(there, None)
        if term not in takes and ("tide_rise" in reading.asked or _TOP_NOW.search(reading.sentence.line)):
            reading.told.add(there.start)  # what is left at low water is no matter
    if now is not None and not now_used:
        reading.leave(now, None)
        if "tide_rise" in reading.asked and "tide_rise" not in reading.rivals:
            reading.told.add(now.start)  # how much is up already matters no more
        if "depth" in reading.asked and any(said in reading.sentence.line for said in ("> above low water ", "> above lw ")):
            reading.open_terms["depth"] = TERMS["depth"].prompt  # `5 m at low water, it is 1.5 m above that`


def _charted_depth(reading: Reading, charted: Mention | None, now: Mention | None) -> bool:
    """Make the depth of what the chart has and the tide on it, a drying height taken off; say whether the height of tide served for that."""
    if charted is None:
        return False
    wanted, dries = "depth" in reading.question.inputs and "depth" not in reading.asked, _is_drying(reading, charted)
    if wanted and now is not None and dries:
        _put(reading, "depth", now, charted, -1.0, "height of tide − drying height")
    elif wanted and now is not None:
        _put(reading, "depth", charted, now, 1.0, "charted depth + height of tide")
    elif wanted and not dries and _tideless(reading):
        reading.put("depth", charted.amount)
    else:
        reading.leave(charted, "depth")
    return wanted and now is not None


def _alone(reading: Reading, height: Mention, term: str) -> None:
    """A height of high or low water alone is neither a rise nor a fall: that is asked for."""
    reading.leave(height, "high_height" if term == "tide_rise" else "low_height")
    reading.told.add(height.start)
    if term in reading.question.inputs and term not in reading.asked and term not in reading.bare:
        reading.open_terms[term] = TERMS[term].prompt


def _put(reading: Reading, term: str, first: Mention, second: Mention, factor: float, what: str, sign: float = 1.0) -> None:
    one, other = first.amount, second.amount
    assert isinstance(one, Amount) and isinstance(other, Amount)
    if not {one.unit, other.unit} <= UNIT.keys():
        reading.leave(first, None)  # a height without a unit says nothing
        return
    low, high = sign * (one.low + factor * other.low), sign * (one.high + factor * other.high)
    unit = one.unit
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
