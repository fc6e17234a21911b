"""Low and high water in a text: which height and which time belong to which, and the time asked about."""

import re
from typing import NamedTuple

from anchorcalc.reader.fits import as_given, clock_said
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.reading import Reading
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.words import STOPS
from anchorcalc.units.clock import Clock, clock
from anchorcalc.units.kinds import Amount
from anchorcalc.vocabulary import TERMS

_LOW = frozenset(("low", "lw", "bottom", "bottoms", "bottomed", "lows", "lowest"))
_HIGH = frozenset(("high", "hw", "top", "tops", "topped", "peak", "peaks", "peaked", "highs", "highest"))
_DOWN, _UP = frozenset("down falls drops sinks ebbs dropping sinking ebbing".split()), frozenset("rises climbs rising climbing".split())
_NO_TIDE = frozenset("chock bow roller freeboard deck sided stem".split())  # behind `low` or `high` said of the boat
_NOW = frozenset(("now", "time", "currently", "moment"))
_OTHERWISE = frozenset(("deep", "out", "of", "veered", "here", "depth", "up", "roller", "bow", "boat", "under"))  # behind a length that is no height


class Side(NamedTuple):
    """What belongs to low or to high water."""

    term: str
    at: Token | None
    height: Token | None


def settle_tide_times(reading: Reading) -> set[int]:
    """Put heights and times of low and high water into a reading; return where the quantities stand that were taken."""
    if "low_at" not in reading.question.inputs:
        return _by_the_table(reading)
    tokens = reading.sentence.tokens
    used: set[int] = set()
    sides = _by_words(tokens, used) or []
    sides += _pairs(tokens, used, {one.term for one in sides}, tidal="rode_out" not in reading.question.inputs or _tidal(tokens))
    for side in sides:
        if side.at is not None and side.at.mention is not None:
            reading.put(f"{side.term}_at", clock_said(side.at.mention))
        if side.height is not None and side.height.mention is not None:
            _height(reading, f"{side.term}_height", side.height.mention)
    _asked_about(reading, tokens, used)
    return used


_TABLE = re.compile(
    r" (?:tide|tides|table|tables|gauge|book|almanac|app)(?: [a-z]+){0,3} (?P<high><length>) (?:at|for) (?:high water|hw|high tide)(?: [a-z]+){0,2}"
    r" (?:and|,|;) (?P<now><length>)(?: (?:just|right))? now(?= )"
)


_SET_BESIDE = re.compile(  # `at high water (3.9 m) vs now (1.4 m)`
    r" (?:high water|hw|high tide)(?: [a-z]+)? \( (?P<high><length>) \)(?: ,)? (?:vs|versus|against|and|,|–|to) now \( (?P<now><length>) \)(?= )"
)


def _by_the_table(reading: Reading) -> set[int]:
    """Take the heights of high water and of now that a table tells: `the table says 2.4 m at high water and 0.6 m now`."""
    line = reading.sentence.line
    found = (_TABLE.search(line) or _SET_BESIDE.search(line)) if "now" in reading.sentence.words else None
    if found is None or "tide_rise" not in reading.question.inputs:
        return set()
    used = set()
    for name, part in (("high", "hw_height"), ("now", "height_now")):
        at = found.string.count(" ", 0, found.start(name)) - 1
        mention = reading.sentence.tokens[at].mention
        if mention is not None:
            reading.parts[part] = mention
            used.add(at)
    return used


def _height(reading: Reading, term: str, mention: Mention) -> None:
    if mention.kind == "number":
        reading.bare[term] = mention
    else:
        reading.put(term, as_given(term=TERMS[term], mention=mention))


def _anchors(tokens: tuple[Token, ...]) -> list[tuple[int, str]]:
    found = []
    falling = ""
    for at, token in enumerate(tokens):
        before = tokens[at - 1].word if at else ""
        if token.word in ("falling", "falls", "fall", "drops", "ebbs") and at + 1 < len(tokens) and tokens[at + 1].word == "from":
            falling = "fall"
        elif token.word in ("rises", "rising", "rise") and at + 1 < len(tokens) and tokens[at + 1].word == "from":
            falling = "rise"
        elif falling and token.word in ("from", "to"):
            found.append((at, "high" if (token.word == "from") == (falling == "fall") else "low"))
            falling = "" if token.word == "to" else falling
        elif token.word == "to" and before in _DOWN | _UP:
            found.append((at, "low" if before in _DOWN else "high"))
        elif token.word in ("low", "high") and at + 1 < len(tokens) and tokens[at + 1].word in _NO_TIDE:
            continue
        elif token.word in _LOW and not (
            token.word == "bottom" and before in ("the", "off", "on") and at + 1 < len(tokens) and tokens[at + 1].word not in ("of", "<length>")
        ):
            found.append((at, "low"))
        elif (token.word in _HIGH and before != "how") or (token.word == "flood" and at + 1 < len(tokens) and tokens[at + 1].word == "started"):
            found.append((at, "low" if token.word == "flood" else "high"))
    return found


def _by_words(tokens: tuple[Token, ...], used: set[int]) -> list[Side]:
    """Give each word for low or high water the first time and the first height behind it, else the height right before it."""
    anchors = _anchors(tokens)
    sides: list[Side] = []
    for number, (at, term) in enumerate(anchors):
        end = anchors[number + 1][0] if number + 1 < len(anchors) else len(tokens)
        when, height = _behind(tokens, at, end, used)
        if when is None and at and tokens[at - 1].word == "<clock>" and at - 1 not in used:
            when = at - 1  # `06:40 low, 0.9 m`
        said_for = _said_for(tokens, at)
        height = said_for if said_for is not None and said_for not in used else height
        if height is None and at >= 2 and tokens[at - 1].word in ("at", "to", "is") and _is_height(tokens, at - 2) and at - 2 not in used:
            height = at - 2
        if when is not None or height is not None:
            used.update(place for place in (when, height) if place is not None)
            sides.append(Side(term, tokens[when] if when is not None else None, tokens[height] if height is not None else None))
    return sides


def _said_for(tokens: tuple[Token, ...], at: int) -> int | None:
    """Return where the height stands that is told for low or high water: `3.4 m for high water at two`."""
    place = at - 2 if tokens[at - 1].word != "the" else at - 3
    return place if place >= 0 and tokens[place + 1].word == "for" and _is_height(tokens, place) else None


def _behind(tokens: tuple[Token, ...], at: int, end: int, used: set[int]) -> tuple[int | None, int | None]:
    when: int | None = None
    height: int | None = None
    for place in range(at + 1, min(end, at + 14)):
        token = tokens[place]
        if token.word in STOPS or token.word in ("now", "my", "when", "how", "what", "which"):
            break
        if place in used:
            continue
        if height is not None and token.word in ("height", "level", "tide"):
            break  # `lw 0.5 m, height of tide 11:00?`
        if token.word == "<clock>":
            if when is not None:
                break
            when = place
        elif height is None and _is_height(tokens, place):
            if place + 2 < end and tokens[place + 1].word == "at" and tokens[place + 2].word in (_LOW | _HIGH):
                break
            height = place
        elif token.mention is not None and token.mention.kind in ("length", "ratio"):
            break
        if when is not None and height is not None:
            break
    return when, height


def _is_height(tokens: tuple[Token, ...], place: int) -> bool:
    mention = tokens[place].mention
    if mention is None or mention.kind not in ("length", "number") or not isinstance(mention.amount, Amount):
        return False
    behind = [token.word for token in tokens[place + 1 : place + 2]]
    return not (behind and behind[0] in _OTHERWISE)


def _pairs(tokens: tuple[Token, ...], used: set[int], known: set[str], *, tidal: bool) -> list[Side]:
    """Take heights and times that stand in pairs without a word: the one side that is wanting, or both by their heights."""
    pairs: list[tuple[Token, Token, tuple[int, int]]] = []
    taken = set(used)
    for at in range(len(tokens) - 1):
        gap = _gap(tokens, at)
        if at + gap >= len(tokens) or at in taken or at + gap in taken:
            continue
        first, last = tokens[at], tokens[at + gap]
        if {first.word, last.word} == {"<clock>", "<length>"} and _is_height(tokens, at if first.word == "<length>" else at + gap):
            clock, height = (first, last) if first.word == "<clock>" else (last, first)
            pairs.append((clock, height, (at, at + gap)))
            taken |= {at, at + gap}
    wanting = [term for term in ("low", "high") if term not in known]
    if len(pairs) != len(wanting) or not pairs or (len(wanting) == 2 and not tidal):
        return []
    pairs.sort(key=lambda one: one[1].mention.amount.low)  # type: ignore[union-attr]
    for one in pairs:
        used.update(one[2])
    return [Side(term, clock, height) for term, (clock, height, _) in zip(wanting, pairs, strict=True)]


_LINKS = frozenset("at , @ of ( by when it turned turns about around".split())


def _gap(tokens: tuple[Token, ...], at: int) -> int:
    """Return how far off the other one of a pair stands: right behind, or past a few small words (`0.9 m when it turned at 18:36`)."""
    gap = 1
    while tokens[at].mention is not None and gap < 6 and at + gap < len(tokens) and tokens[at + gap].word in _LINKS:
        gap += 1
    return gap


def _tidal(tokens: tuple[Token, ...]) -> bool:
    return any(token.word in ("tide", "tides", "table", "tables") for token in tokens)


def _spoken_hour(reading: Reading, tokens: tuple[Token, ...], used: set[int]) -> None:
    """`at seven`: the hour that lies between low and high water."""
    ends = [clock(str(reading.asked.get(name, ""))) for name in ("low_at", "high_at")]
    if not all(isinstance(one, Clock) for one in ends):
        return
    first, last = sorted(one.seconds for one in ends if isinstance(one, Clock))
    for at, token in enumerate(tokens):
        amount = token.mention.amount if token.mention is not None and token.mention.kind == "number" else None
        if not isinstance(amount, Amount) or at == 0 or tokens[at - 1].word != "at" or not 1.0 <= amount.value <= 12.0 or amount.value % 1:
            continue
        hours = [hour for hour in (amount.value % 12, amount.value % 12 + 12) if first < hour * 3600.0 < last]
        if len(hours) == 1 and last - first < 36000.0:
            reading.put("at", f"{int(hours[0]):02d}:00")
            used.add(at)


# What a day aboard is made of besides the tide; its times are asked about only where a text names no other.
_DAY = frozenset(
    "supper dinner lunch breakfast tea drinks watch watches bed bedtime sleep asleep shower sunset sunrise dark dusk dawn daylight ferry train bus "
    "flight shop shops shopping pub restaurant office harbourmaster forecast fog mist rain front gale radio bridge marina fuel "
    "kids crew guests visitors alarm".split()
)


def _of_the_day(tokens: tuple[Token, ...], at: int) -> bool:
    """Say whether a time is that of supper, of a watch or the like: its word stands between the time and the next sign or time."""
    words = [token.word for token in tokens]
    start, end = at, at + 1
    while start > 0 and words[start - 1] not in STOPS and words[start - 1] not in (",", "<clock>", "<length>"):
        start -= 1
    while end < len(words) and words[end] not in STOPS and words[end] not in (",", "and", "when", "<clock>", "<length>"):
        end += 1
    before, behind = set(words[start:at]), set(words[at + 1 : end])
    return bool(_DAY & (before | behind)) and not _TIDE & (before | behind)


_TIDE = frozenset("tide tides height depth high low hw lw deep now water what how".split())


def _plainly_meant(tokens: tuple[Token, ...], left: list[int], *, asked_for: bool) -> list[int]:
    """Return the times that the question itself names (`what is it at 09:00?`), or those told with a depth (`5 m deep at 14:00`)."""
    found = []
    for at in left:
        start, end = at, at + 1
        ends = STOPS if asked_for else STOPS | {",", "<clock>"}
        while start > 0 and tokens[start - 1].word not in ends:
            start -= 1
        while end < len(tokens) and tokens[end].word not in ends:
            end += 1
        words = [token.word for token in tokens[start:at]]
        named = {"what", "how"} & set(words) and words[-1:] == ["at"]
        if named if asked_for else "<length>" in [token.word for token in tokens[start:end]]:
            found.append(at)
    return found


def _asked_about(reading: Reading, tokens: tuple[Token, ...], used: set[int]) -> None:
    """The time asked about is the one left over; of several, the one that is said to be now."""
    left = [at for at, token in enumerate(tokens) if token.word == "<clock>" and at not in used]
    meant = [at for at in left if not _of_the_day(tokens, at)]
    if meant and len(meant) < len(left):
        used.update(set(left) - set(meant))
        left = meant
    plain = _plainly_meant(tokens, left, asked_for="rode_out" not in reading.question.inputs) if len(left) > 1 else []
    if len(plain) == 1:
        used.update(left)
        left = plain
    now = [at for at in left if any(token.word in _NOW for token in tokens[max(0, at - 2) : at + 2])]
    for at in now if len(now) == 1 else left:
        mention = tokens[at].mention
        if mention is not None:
            reading.put("at", clock_said(mention))
            used.add(at)
    if "at" not in reading.asked:
        same = [at for at, token in enumerate(tokens) if token.word == "<clock>" and any(one.word in _NOW for one in tokens[max(0, at - 3) : at])]
        if len(same) == 1 and (mention := tokens[same[0]].mention) is not None:
            reading.put("at", clock_said(mention))
    if "at" not in reading.asked:
        _spoken_hour(reading, tokens, used)
