"""Figures that count for less than plain ones of here and now: told of earlier, of elsewhere, of other gear, of what is usual.

Where two fight for one term the plain one counts; where the text says that nobody knows, such a figure is not taken for it.
"""

import itertools
import re

from anchorcalc.reader.elsewhere import ELSEWHERE, clauses
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.neighbour import others_quantities
from anchorcalc.reader.opinions import others_opinions
from anchorcalc.reader.sentence import Token, without_figures
from anchorcalc.reader.sought import sought
from anchorcalc.reader.words import STOPS

_DAY = r"(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday)"
_EARLIER = (
    r"(?:ago|earlier|yesterday|yest|previously|formerly|once|originally|midday|at noon|before (?:lunch|supper|breakfast)"
    r"|at (?:breakfast|lunch|dinner|dawn|sunrise|supper|tea)|this (?:morning|afternoon)"
    r"|last (?:night|week|year|time|month|summer|winter|spring|autumn|season|trip|berth|owner|skipper)"
    rf"|(?:for|on|since|until) {_DAY}|in (?:the )?(?:spring|winter|autumn)|old|previous|former|back then|in those days)"
)
_USUAL = r"(?:normally|usually|as a rule|mostly|generally|ordinarily|as usual|on average)"
_SELLERS = (
    r"(?:shop|dealer|seller|chandler|chandlery|catalogue|store|yard|makers?) (?:only |just |also )?"
    r"(?:sells|stocks|offers|quotes|wants|lists|keeps|model)"
)
_GEAR = r"(?:one|anchor|plough|claw|scoop|fisherman|grapnel|fluke|boat|hook|rode|chain|warp|line|rope|coil|set|kedge|cable|bower)"
_ADVICE = (
    r"(?:(?:told (?:me|us)|advised|advises|recommended|recommends|taught (?:me|us)) (?:to|never|not|always)"
    r"|would have (?:said|used|let)|swears by|swear by|swore by)"
)
_NOT_OURS = rf"(?:kedge|dinghy|tender|(?:spare|other|second|third|mooring|another) {_GEAR})"
_LULL = r"(?:a lull|a surge|just now was|ahead (?:she|it|shed|itd)|flat out|full ahead|s figure)"
_OFF = (
    r"(?:(?:over|across|round|around|beyond) the (?:sound|bay|fjord|water|way|point|headland|corner|channel)|on the other side"
    r"|(?:farther|further) (?:in|out|up|down|along|north|south|east|west)|up the coast|down the coast|out at sea"
    r"|outer (?:isles|islands|skerries|banks)|in the offing)"
)
_MARKED = re.compile(rf" (?:{_EARLIER}|{_USUAL}|{_SELLERS}|{_NOT_OURS}|{_OFF}|{_LULL}|{_ADVICE}) ")
_WAS = re.compile(
    r"(?<! or)(?<! or it)(?<! else it)"
    r" (?:was|were|had|dragged|drew|lay|blew|used|held|bought|gave|lost|cut|carried|stowed|sailed|cleared|fell|rose|came)"
    r" (?:(?!and|but|reads|shows|says|is)[a-z]+ ){0,4}<"
)
_WE_WERE = re.compile(r" (?:we|i|it|there|she|that|which|low|high|water|tide|lw|hw) (?:was|were|had|lay|held) ")
_TAKEN_SO = re.compile(  # `peaked at 750 kgf last winter, so take that`
    r" (?:take|use|reckon with|reckon on|work with|count with|count on|go by|assume|plan on|plan for) (?:that|it|this|those|the same) "
)
_TODAY = re.compile(r" (?:now|tonight|today|here) ")
_JUST_NOW = re.compile(r" (?:just now|at the moment|at present|right now|so far|lull|by day) ")
_TO_COME = re.compile(
    r" (?:will be|will|expected|expect|expecting|forecast|forecasts|coming|to come|tonight|gusts|gusting|later|overnight|by night|worst) "
)
_ONLY_PART = re.compile(
    r" (?P<what><(?P<kind>[a-z]+)>)(?: [a-z]+){0,3} ?,? (?:yet|but|though|of which) only <(?P=kind)>"
    r" (?:of it|of that|of those|gets|is used|is in use|in use|usable)"
)
# By which words each is known: without one of them it is not looked for.
_MARKS = (
    sought(
        _MARKED,
        "ago earlier yesterday yest previously formerly once originally midday noon before breakfast lunch dinner dawn sunrise supper tea morning "
        "afternoon last monday tuesday wednesday thursday friday saturday sunday spring winter autumn old previous former then days normally "
        "usually rule mostly generally ordinarily usual average sells stocks offers quotes wants lists keeps model kedge spare other second third "
        "mooring another over across round around beyond side farther further coast sea outer offing lull surge just ahead flat figure told "
        "advised advises recommended recommends taught have dinghy tender swears swear swore",
    ),
    sought(_WAS, "was were had dragged drew lay blew used held bought gave lost cut carried stowed sailed cleared fell rose came"),
    ELSEWHERE,
)
_BUT_THAT = re.compile(  # `a draught of 2.3 m, but that is for the deep keel`
    r" (?P<what><[a-z]+>)(?: [a-z]+){0,3}(?: [,;–-])? (?:but|though|although) (?:that|this|it|those)(?: is| was| are| were)?"
    r" (?:only )?(?:for|on|from|of|with|at|when|before|without|in) "
)
_SO_FAR = re.compile(r" (?:made|risen|rose|flooded|fallen|fell|dropped|ebbed|up|down)(?: [a-z]+)? (?P<what><length>) (?:since|already|so far)(?= )")
_BY_SO_FAR = sought(_SO_FAR, "since already far")
_BY_THAT = sought(_BUT_THAT, "but though although")
_BY_ONLY = sought(_ONLY_PART, "only")
_BY_NOW = sought(_JUST_NOW, "now moment present far lull day")


def lesser(tokens: tuple[Token, ...], text: str) -> frozenset[int]:
    """Return where the quantities of a text stand that count for less than others."""
    words = [token.word for token in tokens]
    held = frozenset(words)
    marks, named = [one.regex for one in _MARKS if one.perhaps(held)], not _AT.isdisjoint(held) and _beside_a_name(tokens, text)
    parts = clauses(words) if marks or named or _BY_NOW.perhaps(held) else []
    found: set[int] = set()
    for begin, end in parts:
        said = f" {' '.join(words[begin:end])} "
        if "<" not in said or not (any(mark.search(said) for mark in marks) or (named and _at_a_name(tokens[begin:end], text))):
            continue
        if not _TODAY.search(said) and not _TAKEN_SO.search(f" {' '.join(words[begin : end + 8])} "):
            found.update(token.start for token in tokens[begin:end] if token.mention is not None)
    line = f" {' '.join(words)} "
    for rule in (_BY_ONLY, _BY_THAT, _BY_SO_FAR):
        found.update(tokens[line.count(" ", 0, one.start("what")) - 1].start for one in rule.within(line, held))
    moment = set() if _PASSING.isdisjoint(held) else _for_the_moment(tokens, words, parts)
    return frozenset(found | moment) | others_opinions(tokens)


_AT = frozenset(("at", "off", "in", "outside"))
_OURS = frozenset("we i iam weare our my ours mine us here".split())


def _at_a_name(tokens: tuple[Token, ...], text: str) -> bool:
    """Say whether a part of a text tells of a place by its name, and not that we lie there: `at Kaldnes the gauge showed 28 m/s`."""
    return _beside_a_name(tokens, text) and not any(token.word in _OURS for token in tokens)


def _beside_a_name(tokens: tuple[Token, ...], text: str) -> bool:
    """Say whether a word for being at a place stands before a word with a capital letter."""
    return any(one.word in _AT and text[other.start].isupper() and other.mention is None for one, other in itertools.pairwise(tokens))


def _for_the_moment(tokens: tuple[Token, ...], words: list[str], parts: list[tuple[int, int]]) -> set[int]:
    """Return the winds and pulls of the moment where the text tells of what is to come: `15 kn at the moment, 25 kn tonight`."""
    said = [f" {' '.join(words[begin:end])} " for begin, end in parts]
    if not any(_TO_COME.search(one) and "<" in one for one in said):
        return set()
    now = [part for part, one in zip(parts, said, strict=True) if _JUST_NOW.search(one) and not _TO_COME.search(one)]
    return {token.start for begin, end in now for token in tokens[begin:end] if token.word in _PASSING}


_PASSING = frozenset(("<speed>", "<force>"))


_ANCHORS = frozenset("one anchor hook plough claw scoop fisherman kedge bower <number>".split())


_OF_AN_ANCHOR = frozenset(("starboard", "port", "kedge", "bower"))


def of_an_anchor(tokens: tuple[Token, ...]) -> frozenset[int]:
    """Return the masses that are an anchor's by the word right beside them: no pull of anything."""
    behind = {one.start for one, other in itertools.pairwise(tokens) if one.word == "<mass>" and other.word in _ANCHORS}
    return frozenset(behind | {other.start for one, other in itertools.pairwise(tokens) if other.word == "<mass>" and one.word in _OF_AN_ANCHOR})


_NOBODY = r"(?:nobody|no one|noone|none of us|no man|no soul)"
_LEARNT = (
    r"(?:counted|measured|weighed|learned|learnt|known|knew|sounded|checked|noted|looked|found|asked|taped|timed|written|count"
    r"|measure|weigh|note|check|sound|look|ask)"
)
_UNKNOWN = re.compile(
    r" (?:i|we|she|he|they)(?: (?:really|simply|just|honestly|still))? (?:dont|do not|cant|cannot|couldnt|could not)"
    r" (?:yet |really |quite )?(?:know|tell|say|see|recall|remember|judge|read|make out|guess)"
    rf"| (?:i|we)(?: have)? (?:never|not yet|havent|have not|didnt|did not)(?: yet| even| once| ever)? {_LEARNT}"
    rf"| {_NOBODY}(?: has| have| ever| aboard| here| can)* (?:{_LEARNT}|knows|remembers|told|say|tell|remember)"
    r"| (?:i|we) (?:must|have to|need to|still have to|ought to|shall)(?: first| still)? (?:measure|count|weigh|check|look|sound)"
    r"| yet to (?:look|measure|count|weigh|sound|find|be|learn|ask|see)"
    r"| (?:i|we)(?: have| am)? (?:forgot|forget|forgotten|lost count|no idea|no clue|not a clue|wouldnt know|not sure)"
    r"| (?:stamped off|worn off|rubbed off|painted over|illegible|unreadable|torn out|(?:anyone|anybody|anyones|anybodys) guess|a mystery|unknown"
    r"|still to be (?:measured|seen|found))(?= )"
)
UNKNOWN_BY = sought(
    _UNKNOWN,
    "dont not cant cannot couldnt never havent didnt must have need ought shall nobody no noone none yet forgot forget forgotten lost wouldnt "
    "stamped worn rubbed painted illegible unreadable torn guess mystery unknown still",
)


def unknown(tokens: list[Token], dropped: list[Mention], *, text: str, others: bool) -> list[Token]:
    """Leave out the figures of another time, place, boat or gear beside what is said to be unknown: they do not stand for it."""
    words = [token.word for token in tokens]
    line = f" {' '.join(words)} "
    near: set[int] = set()
    for found in UNKNOWN_BY.within(line, frozenset(words)):
        near.update(_sentences_around(words, line.count(" ", 0, found.start() + 1) - 1))
    if not near:
        return tokens
    said = tuple(tokens)
    aside = lesser(said, text) - _ours_then(said) | (frozenset() if others else others_quantities(said).likely)
    out = {at for at in near if tokens[at].mention is not None and tokens[at].start in aside}
    return without_figures(tokens, out, dropped)


def _sentences_around(words: list[str], at: int) -> range:
    """Return the sentence at a place, with the one before it and the two behind."""
    stops = [place for place, word in enumerate(words) if word in STOPS]
    before = [place for place in stops if place < at]
    behind = [place for place in stops if place >= at]
    return range(before[-2] + 1 if len(before) > 1 else 0, behind[2] if len(behind) > 2 else len(words))


def _ours_then(tokens: tuple[Token, ...]) -> frozenset[int]:
    """Return the quantities told of our own a while ago, which may well hold still: `we had 40 m out`."""
    words = [token.word for token in tokens]
    found: set[int] = set()
    for begin, end in clauses(words):
        said = f" {' '.join(words[begin:end])} "
        if _WE_WERE.search(said) and not _MARKED.search(said):
            found.update(token.start for token in tokens[begin:end])
    return frozenset(found)


__all__ = ["UNKNOWN_BY", "lesser", "of_an_anchor", "unknown"]
