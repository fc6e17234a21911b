"""Which question a text asks: the patterns that it holds, and what its words and figures tell, weighed together."""

import math
import re
from collections.abc import Sequence
from functools import cache

from anchorcalc.catalogue import catalogue
from anchorcalc.reader.mention import Part
from anchorcalc.reader.patterns import Called, Cue, cue, table
from anchorcalc.reader.sentence import Token, spelled
from anchorcalc.reader.telling import NOTHING_ASKED, told

_FURTHER, _OWN = 0.2, 4.0  # a question's own phrase weighs more by every word


class Named(Part, frozen=True, gc=False):
    """What the patterns say of a question: their weight together, the heaviest of them, and where it stands in the line."""

    weight: float
    strongest: float
    first: int


class Weighed(Part, frozen=True, gc=False):
    """A question with its share in what a text may ask, and the weight of the heaviest pattern that names it."""

    question: str
    share: float
    strongest: float


@cache
def cues() -> dict[str, tuple[tuple[Cue, ...], tuple[Cue, ...]]]:
    """Return the patterns of every question, and its hints: the tables', and the phrases of the question itself."""
    asked = table("asked")
    found = {}
    for one in catalogue():
        held = asked.get(one.name, {})
        asks = [cue(said, weight=float(weight)) for weight, patterns in held.items() if weight != "hints" for said in patterns]
        asks += [cue(" ".join(spelled(word) for word in phrase.lower().split()), weight=_OWN + len(phrase.split())) for phrase in one.asks]
        hints = [cue(said, weight=float(weight)) for weight, patterns in held.get("hints", {}).items() for said in patterns]
        found[one.name] = (tuple(asks), tuple(hints))
    return found


_ASKS = r"(?:what|how|which|when|where|will|would|can|could|is|does|do)"
_SECOND = re.compile(
    rf" (?:[,;?.] )?(?:and|also|and also|also ,) {_ASKS} (?!<\w+> (?:long|deep|over all|overall|loa|wide|boat) )(?![?.!] )"
    rf"| (?:[,;?.] )?(?:(?:and|then|next|second|secondly|second question|after that|also|plus|besides) (?:[,:;-] )?){{2,}}{_ASKS} "
    rf"| [?.;] (?:then|next|second|secondly|second question|after that|plus|besides)(?: [:,-])? {_ASKS} "
)
_ASK_ENDS = re.compile(r" [?.!\n] ")
_DECIDES, _NOTHING_LEFT = 10.0, 0.3
_OWN_ASK, _PATTERNS_MOST, _PER_SHARE, _LEAST_SHARE = 8.0, 16.0, 5.0, 0.01


def weigh(tokens: Sequence[Token]) -> list[Weighed]:
    """Return the questions that a text may ask, the likeliest first, none where it likelier asks nothing; of two questions the first one counts."""
    line = _line(tokens)
    named = _named(line)
    second = _SECOND.search(line)
    if second is not None and any(one.first < second.start() and one.strongest >= _OWN_ASK for one in named.values()):
        ends = _ASK_ENDS.search(line, second.end())
        tokens = [*tokens[: line.count(" ", 0, second.start())], *(tokens[line.count(" ", 0, ends.start()) :] if ends is not None else ())]
        named = _named(_line(tokens))
    weights = {name: min(one.weight, _PATTERNS_MOST) / _PER_SHARE for name, one in named.items()}
    heard = told(tokens)
    heard |= {name: max(heard.values()) for name in named if name not in heard}  # a question newer than the figures: its own phrases name it
    shares = {name: math.exp(log_share + weights.get(name, 0.0)) for name, log_share in heard.items()}
    if any(one.strongest >= _DECIDES for one in named.values()):
        shares[NOTHING_ASKED] *= _NOTHING_LEFT
    whole, nothing = sum(shares.values()), shares.pop(NOTHING_ASKED)
    likely = {name: share / whole for name, share in shares.items() if share > nothing and share / whole >= _LEAST_SHARE}
    found = [Weighed(name, share, named[name].strongest if name in named else 0.0) for name, share in likely.items()]
    return sorted(found, key=lambda one: (-one.share, one.question))


def _line(tokens: Sequence[Token]) -> str:
    return f" {' '.join([token.word for token in tokens])} "


def second_question(line: str, weighed: list[Weighed]) -> int:
    """Return where a second question begins in a line that was read for its first, or -1."""
    second = _SECOND.search(line)
    if second is None or not weighed:
        return -1
    others = (one for name, one in _named(line).items() if name != weighed[0].question)
    return second.end() if any(one.first >= second.start() and one.strongest >= _OWN_ASK for one in others) else -1


def _named(line: str) -> dict[str, Named]:
    """Return the questions that a pattern of the tables names."""
    patterns, called = _indexed()
    asks: dict[str, list[tuple[float, int]]] = {}
    hints: dict[str, float] = {}
    for number, at in called.by(line):
        name, hint, one = patterns[number]
        if hint:
            hints[name] = hints.get(name, 0.0) + one.weight
        else:
            asks.setdefault(name, []).append((one.weight, -at))
    return {name: _weight(found, hints.get(name, 0.0)) for name, found in asks.items()}


def _weight(found: list[tuple[float, int]], hints: float) -> Named:
    strongest, first = max(found)
    further = sum(weight for weight, _ in found) - strongest
    return Named(strongest + _FURTHER * min(further, 15.0) + hints, strongest, -first)


@cache
def _indexed() -> tuple[tuple[tuple[str, bool, Cue], ...], Called]:
    """Return the patterns of all questions (and whether each is a hint), and which of them a line calls up."""
    patterns = tuple((name, hint, one) for name, sides in cues().items() for hint, side in zip((False, True), sides, strict=True) for one in side)
    return patterns, Called([one for _, _, one in patterns])


def asks_for(part: str, question: str) -> bool:
    """Say whether a part of a line asks one question by a strong pattern."""
    named = _named(part).get(question)
    return named is not None and named.strongest >= _OWN_ASK


def plainly_asked(weighed: list[Weighed]) -> bool:
    """Say whether words and patterns leave no doubt that a question is asked."""
    return bool(weighed) and weighed[0].share >= _NO_DOUBT and weighed[0].strongest >= _OWN_ASK


def beyond_doubt(weighed: list[Weighed]) -> bool:
    """Say whether a question is asked for certain, whatever words of another subject stand in the text: none such was held out and told wrongly."""
    return bool(weighed) and weighed[0].share >= _CERTAIN


_NO_DOUBT, _CERTAIN = 0.9, 0.993


def asks_something(line: str, weighed: list[Weighed]) -> bool:
    """Say whether there is a question in a line of words, a request, or the bare name of what is wanted."""
    if _REQUEST.search(line) or _BEGINS.search(line) or _FRAGMENT.search(line):
        return True
    return bool(weighed) and (weighed[0].share >= _SURELY or (weighed[0].strongest >= _NAMED and not _STATES.search(line)))


_NAMED, _SURELY = 10.0, 0.85
_REQUEST = re.compile(
    r" (?:\?|look over|go over|go through|is that|is this|are we|for me|draw me|specify|is it|give my|working out|what|which|when|"
    r"where|how|tell|give me|show|list|calculate|compute|work out|check|please|estimate|recommend|survey|inspect|rate|vet|convert|"
    r"wanted|needed|need|i want the|want to know|like to know|wonder|wondering|id know|i would know|anything wrong|someone|help|explain|"
    r"find|figure out)(?= )"
)
_BEGINS = re.compile(
    r"(?:^ |[.,;:!\n] |<\w+> |so |and )(?:is|are|am|do|does|can|could|will|would|should|shall|must|may|might|has|have i|have we|"
    r"did)(?= \S)"
)
_FRAGMENT = re.compile(
    r"(?:[,;:.] |^ )(?:rode|(?:anchor )?(?:rope|chain|warp|line|rode) length for|scope|"
    r"swing|load|mark plan|drag check|tackle check|longest|max|deepest|shallowest|true depth|real depth|"
    r"depth per mark|hold)(?= )"
    r"|<ratio> (?:rode|chain|rope|warp|line)(?= $)"
)
_STATES = re.compile(r" (?:i|we|is|are|have|has|was|were|lies|she|they|draws|my|our)(?= )")
