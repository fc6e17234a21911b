"""How the inner end of the rode is held, and whether the pins of the shackles are seized: what is spoken of, and how it is said to be."""

import re
from collections.abc import Iterator
from itertools import pairwise
from typing import NamedTuple

from anchorcalc.reader.our_words import our_words
from anchorcalc.reader.reading import Reading
from anchorcalc.reader.words import NEGATIONS, STOPS, sentence_end, sentence_start
from anchorcalc.vocabulary import TERMS

_RODE = r"(?:(?:anchor )?(?:chain|rope|line|rode|warp|cable|nylon)|tackle|leader|it all|whole lot|whole thing)"
_NOT_WHERE = r"(?<! from)(?<! at)(?<! past)(?<! after)(?<! beyond)(?<! behind)(?<! until)(?<! till)(?<! near)(?<! towards)(?<! of)"
# What is spoken of. An `end` by itself is the inner one only where it is told how it is held.
_SUBJECTS = {
    "bitter_end": re.compile(
        rf"{_NOT_WHERE} (?:(?:(?:bitter|inner|inboard|inside|tail|locker|inward|standing|ships) ends?|(?:far|other|boat|lower|loose|very) end"
        rf"(?! of (?!{_RODE})))(?: of {_RODE})?|last (?:chain )?(?:link|fathom|bit)(?! of tide)(?: of {_RODE})?|tail of {_RODE}"
        rf"|ends? of (?:<length> (?:of )?)?{_RODE}|(?:chain|rope|line|rode|warp|cable|locker) ends?|chain tail)(?= )"
        r"|(?:(?<= lashed)|(?<= tied)|(?<= shackled)|(?<= bolted)|(?<= welded)|(?<= fixed)|(?<= loose)) end(?= )"
        rf"|{_NOT_WHERE}(?<! both)(?<! either) end(?= (?:(?:is|isnt|just|simply|only|not|lies|lying|hangs|was|were|left|wasnt|made|sits|seems"
        r"|found|being|:) )*"
        r"(?:tied|lashed|lashing|knotted|shackled|bolted|welded|riveted|fixed|free|loose|unsecured|secured|fastened|attached|fast|in locker) )"
    ),
    "shackles": re.compile(
        r"(?<! by)(?<! from)(?<! via)(?<! with)(?<! roller)(?<! windlass)(?<! hinge)(?<! tiller)(?<! rudder)(?<! cotter)(?<! split)"
        r" (?:(?:shackle|screw|clevis) (?:pins?|bolts?)|pins?(?: (?:of|on|in) (?:every |all |each )?shackles?)?"
        r"|bolts? (?:of|in) shackles?|shackles?|moused shackles?)(?= )"
    ),
}
_OTHER = re.compile(r" (?:anchors?|kedge|hook|spare|dinghy|tender|windlass|plough|claw|scoop|grapnel|fisherman|rudder|mast|fender|swivel)(?= )")
_STATES = {
    "bitter_end": (
        ("link", "lashings?|lanyard|cord|twine|small stuff|light line|cod line|rope tail|string|knot|bowline|hitch|hitches|cut|slash|slip|rope yarn"),
        ("tied", "tied|lashed|knotted|hitched|spliced|seized|tie|roped|bent"),
        ("fixed", "shackled|bolted|welded|riveted|fixed|screwed|padlocked|clamped|permanently"),
        ("fixed", "(?:with|by|on|via|through|:) (?:stout |big |<length> )?(?:shackle|bolt|padlock)"),
        ("free", "free(?! it| them| her| with)|loose|unsecured|unattached|unfastened|untied|adrift|to nothing|nothing|undone"),
        ("free", "(?:just|simply|merely) (?:lies|lying|sits|dropped|thrown|there)"),
        ("held", "secured?|fastened|attached|made fast|fast|connected|joined|belayed|held|secure|hooked|fastenings?"),
    ),
    "shackles": (
        ("seized", "seized?|seizing|seizings|moused?|mousing|mousings|wired?|wires|wiring|lockwired?|cable ties?|zip ties?|safety wire"),
        ("seized", "tied|lashed|twine|cord"),
        ("open", "bare|open|loose|unwired|unseized|unmoused|unlocked|unsecured|naked|taped?|undone"),
        ("open", "nothing (?:on|in|through|round|around)|finger tight|hand tight|finger tightened|screwed (?:in|up)"),
        ("seized", "secured?|locked|secure"),
    ),
}
_STATE = {
    term: re.compile(" (?:" + "|".join(f"(?P<{value}_{at}>{words})" for at, (value, words) in enumerate(states)) + ")(?= )")
    for term, states in _STATES.items()
}
_PLAIN_OF_PINS = frozenset("moused seizing seizings mousing unwired unseized unmoused seized wired".split())
_PARTS = frozenset(", ( ) – - and but while whereas".split())
_LACKS = NEGATIONS | frozenset(
    "lost could forgot forgotten forget want wants need needs lack lacks lacking missing havent hasnt hadnt didnt nothing none yet unable "
    "instead nobody should shouldve ought must nowhere hardly".split()
)
_LACKS_BEHIND = re.compile(
    r" (?:(?:is|are|was|of|still|on|:|\?|them|pins?|shackles?|it) )*"
    r"(?:missing|lacking|none|no|nil|absent|to do|to come|wanted|wanting|forgotten|undone|(?:(?:has|have|had) )?(?:all )?(?:rotted|rusted|fell|fallen"
    r"|came off|come off|gone|broken|parted|perished|chafed|snapped|went))(?= )"
)
_TAKEN_BACK = frozenset("no sorry actually correction wait rather oops scratch nope again but now since used was were before instead then".split())
_CARRIES = frozenset("it they them that these those all both none each every <number> ours mine".split())
_ANYTHING = frozenset("anything all whatever".split())


class _Seen(NamedTuple):
    """Something spoken of, or how something is, at a place among the words."""

    term: str
    value: str
    at: int
    end: int


class _Said(NamedTuple):
    """How something is said to be, in which part of the text."""

    value: str
    at: int
    part: int


def settle_fastenings(reading: Reading) -> None:
    """Put into a reading how the inner end is held and how the pins are; ask where it is spoken of and not told."""
    terms = [term for term in _SUBJECTS if term in reading.question.inputs]
    if not terms:
        return
    words = [token.word for token in our_words(reading.sentence)]
    said, spoken = _read(words)
    said["bitter_end"] = said["bitter_end"] or _made_fast_inside(words)
    for term in terms:
        values = _end_held(said[term], words) if term == "bitter_end" else _pins(said[term], words)
        for value in values:
            reading.put(term, value)
        if not values and term not in reading.asked and (spoken[term] or any(one.value == "held" for one in said[term])):
            reading.open_terms[term] = TERMS[term].prompt


def _matches(pattern: re.Pattern[str], line: str) -> Iterator[tuple[str, int, int]]:
    """Yield what a pattern finds in a line of words: by which of its groups, and from which word to which."""
    at = 0
    while (found := pattern.search(line, at)) is not None:
        at = found.end()
        yield found.lastgroup or "", line.count(" ", 0, found.start()), line.count(" ", 0, found.end())


def _read(words: list[str]) -> tuple[dict[str, list[_Said]], dict[str, bool]]:
    """Return all that is said of each term, and whether it is spoken of so that it should be told."""
    line = f" {' '.join(words)} "
    subjects = sorted((_Seen(term, "", at, end) for term, one in _SUBJECTS.items() for _, at, end in _matches(one, line)), key=lambda one: one.at)
    others = [at for _, at, _ in _matches(_OTHER, line)]
    said: dict[str, list[_Said]] = {term: [] for term in _SUBJECTS}
    for term, pattern in _STATE.items():
        for group, at, end in _matches(pattern, line):
            state = _Seen(term, group.partition("_")[0], at, end)
            if any(one.at <= at < one.end for one in subjects if one.term == term) and state.value != "free":
                continue
            if _belongs(state, words, subjects, others):
                said[term].append(_Said(_value(state, words, line), at, _part(words, at)))
    spoken = {
        "bitter_end": any(_PLAIN_ENDS & set(words[one.at : one.end]) and _told_of(words, one) for one in subjects if one.term == "bitter_end"),
        "shackles": any(_told_of(words, one) for one in subjects if one.term == "shackles" and set(words[one.at : one.end]) & {"pin", "pins"}),
    }
    return said, spoken


# The rode itself, said to be held at a place where only its inner end can be: `chain shackled hard to the bulkhead`.
_INSIDE = re.compile(
    rf" {_RODE}(?: (?!anchor|hook|kedge|spare|pins?|shackles?)[^ .;?!]+){{0,5}}? (?P<state>(?:tied|lashed|knotted|shackled|bolted|welded|fixed"
    r"|made fast|fastened|secured|attached|loose|free|unsecured)(?: off| hard| fast| up| down)?(?: [a-z]+){0,5}? "
    r"(?:inboard|inside|below|bulkhead|locker|strongpoint|strong point|keelson|samson post|mast|ring|ringbolt|ring bolt|eyebolt|eye bolt|u bolt"
    r"|padeye|pad eye|frame|stringer|hull|boat|strong eye))(?= )"
)


_INBOARD = re.compile(
    rf" (?:inboard|in locker|down below) (?:, )?{_RODE}(?: (?:is|just|only|was|has been)){{0,2}} (?P<state>held|tied|lashed|shackled|bolted"
    r"|secured|fastened|loose|free)(?= )"
)


def _made_fast_inside(words: list[str]) -> list[_Said]:
    """Return how the rode is said to be held inside the boat."""
    line = f" {' '.join(words)} "
    found = _INSIDE.search(line) or _INBOARD.search(line)
    if found is None:
        return []
    at, end = line.count(" ", 0, found.start("state")) - 1, line.count(" ", 0, found.end("state"))
    states = [_Seen("bitter_end", group.partition("_")[0], first, last) for group, first, last in _matches(_STATE["bitter_end"], line)]
    return [_Said(_value(one, words, line), one.at, at) for one in states if at <= one.at < end + 6 and _part(words, one.at) == _part(words, at)]


_PLAIN_ENDS = frozenset(("bitter", "inner", "inboard", "rope", "rode", "chain", "line", "warp"))
_ONLY_NAMED = frozenset("to from at till until by about on should how whether".split())


def _told_of(words: list[str], one: _Seen) -> bool:
    """Say whether something is spoken of as a thing that is somehow, and is no mere place: not `from the anchor to the bitter end`."""
    return not _ONLY_NAMED & set(words[max(0, one.at - 1) : one.at]) and not {"should", "how", "whether"} & set(words[max(0, one.at - 4) : one.at])


def _part(words: list[str], at: int) -> int:
    """Return the place where the part of a sentence begins that a word stands in."""
    return next((place + 1 for place in range(at - 1, -1, -1) if words[place] in STOPS or words[place] in _PARTS), 0)


def _belongs(state: _Seen, words: list[str], subjects: list[_Seen], others: list[int]) -> bool:
    """Say whether a word of state is said of what its term is about: the nearest thing spoken of in its part, else the last one before."""
    begin = _part(words, state.at)
    end = next((place for place in range(state.end, len(words)) if words[place] in STOPS or words[place] in _PARTS), len(words))
    here = [one for one in subjects if begin <= one.at < end]
    behind = next((one for one in here if state.end <= one.at <= state.end + 1), None)
    before = [one for one in here if one.at < state.at]
    other = any(begin <= at < state.at for at in others)
    if behind is not None and (state.at == begin or not before):
        return behind.term == state.term
    if before:
        return before[-1].term == state.term
    if here and not other:
        return here[0].term == state.term
    return not other and _carried(state, words, subjects, begin)


def _carried(state: _Seen, words: list[str], subjects: list[_Seen], begin: int) -> bool:
    """Say whether a part without a thing spoken of goes on about the last one: in the same sentence, or by a pronoun, or as a short answer."""
    last = next((one for one in reversed(subjects) if one.at < begin), None)
    plain = state.term == "shackles" and words[state.at] in _PLAIN_OF_PINS
    if last is None:
        return plain
    between = words[last.end : state.at]
    if not STOPS & set(between):
        return last.term == state.term or (plain and last.term != "bitter_end")
    start = sentence_start(words, state.at)
    short = words[start - 1] == "?" and state.at - start <= 3
    return last.term == state.term and (short or bool(_CARRIES & set(words[start : state.at]))) and sum(one in STOPS for one in between) <= 2


def _value(state: _Seen, words: list[str], line: str) -> str:
    """Return a state, with `un` before it where it is denied or wanting."""
    back = words[max(0, state.at - 6) : state.at]
    cut = max((at + 1 for at, word in enumerate(back) if word in STOPS or word in _PARTS or word == ":"), default=0)
    wanted = next((at for at, word in enumerate(back[cut:]) if word in _ADVISES), -1)
    if wanted >= 0 and _NAMES & set(back[cut:][wanted:]):
        return f"should be {state.value}"  # `the book wants the pins wired` tells of no pin of ours
    denied = bool(_LACKS & set(back[cut:])) or _only_meant(words, state)
    behind = _LACKS_BEHIND.match(line, _offset(words, state.end))
    if denied or (behind is not None and state.value not in ("free", "open")):
        return f"un{state.value}"
    past = _ONCE & set(back[cut:]) or ("before" in back[cut:] and {"was", "were"} & set(back[cut:]))
    return f"once {state.value}" if past else state.value


def _only_meant(words: list[str], state: _Seen) -> bool:
    """Say whether something is only meant to be done: `I have still to seize the pins`, not `I remembered to wire them`."""
    before = words[max(0, state.at - 4) : state.at]
    rest = words[state.end : sentence_end(words, state.end)]
    done = any(rest[at : at + 2] in (["i", "did"], ["we", "did"], ["i", "have"]) for at in range(len(rest)))
    return words[state.at] in _TO_DO and before[-1:] == ["to"] and not done and not _DID & set(before)


_TO_DO = frozenset("seize mouse wire tie lash lock secure".split())
_ADVISES = frozenset("wants want should must ought".split())
_NAMES = frozenset("end ends pin pins shackle shackles link".split())
_DID = frozenset("remembered remember managed sure careful always take took care".split())
_ONCE = frozenset("used formerly previously once had".split())


def _offset(words: list[str], at: int) -> int:
    """Return where in the line of words the space before a word stands."""
    return sum(len(word) + 1 for word in words[:at])


def _last(said: list[_Said], words: list[str]) -> list[str]:
    """Return the values said; only the last where what stands between takes the one before it back."""
    values: list[tuple[str, int]] = []
    for one in said:
        if values and values[-1][0] != one.value and _TAKEN_BACK & set(words[max(0, values[-1][1] - 3) : one.at]):
            values = [(value, at) for value, at in values if value == one.value]
        values.append((one.value, one.at))
    return list(dict.fromkeys(value for value, _ in values))


def _pins(said: list[_Said], words: list[str]) -> list[str]:
    """Return how the pins are: seized, or open, which they are too where seizing is denied or wanting."""
    if _left_open(said, words):
        return []
    found = [one._replace(value="open" if one.value == "unseized" else one.value) for one in said if one.value != "unopen"]
    return _last(found, words)


def _end_held(said: list[_Said], words: list[str]) -> list[str]:
    """Return how the inner end is held: in each part by a link of rope where there is one, else by what is said first."""
    found: list[_Said] = []
    if _left_open(said, words):
        return []
    for part in dict.fromkeys(one.part for one in said):
        here = [one for one in said if one.part == part]
        plain = [one for one in here if one.value in ("tied", "fixed", "free", "link")]
        links = [one for one in plain if one.value == "link"]
        free = [one for one in plain if one.value == "free"]
        if free and "nothing" in words[free[0].at : free[0].at + 2]:
            found.append(free[0])
        elif links:
            found.append(links[0]._replace(value="tied"))
        elif plain:
            found.append(plain[0])
    return _last(found, words) or _only_denied(said, words)


def _left_open(said: list[_Said], words: list[str]) -> bool:
    """Say whether a text only says that it is one or the other: `either lashed or shackled`."""
    pairs = pairwise(said)
    return any(one.part == other.part and one.value != other.value and "or" in words[one.at + 1 : other.at] for one, other in pairs)


def _only_denied(said: list[_Said], words: list[str]) -> list[str]:
    """Return that the end is free where all that is said is that it is not tied, or not held in two ways; not shackled may mean tied."""
    denied = {one.value for one in said if one.value.startswith("un")}
    to_nothing = any(_ANYTHING & set(words[one.at : one.at + 5]) for one in said)
    free = denied & {"untied", "unheld"} or (len(denied) > 1) or (denied and to_nothing)
    return ["free"] if free and "unfree" not in denied else []


__all__ = ["settle_fastenings"]
