"""What others hold a figure to be, against what the skipper goes by: `granddad would have said 3:1, but the least for me is 4.5:1`."""

import re

from anchorcalc.reader.mention import Mention
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.words import STOPS
from anchorcalc.units.kinds import Amount

_GO_BY = (
    r"(?:use|want|prefer|stay at|stay with|stick to|stick with|keep to|go with|go by|take|like|hold to|am for|swear by|work with|work to|insist on"
    r"|say|make it|settle for|stand by|do)"
)
_SMALL = r"(?: (?:my|our|a|an|the|only|just|on|at|with|to|own|about))*"
_MINE = re.compile(
    rf" (?:i|we|iam|weare)(?: (?:will|would|shall|still|always|do|myself|ourselves|now))* {_GO_BY}{_SMALL} (?P<first><[a-z]+>)"
    r"| (?P<second><[a-z]+>) (?:is|are|will be)"
    r" (?:my|our|mine|ours|what (?:i|we)|(?:enough|good|plenty|fine|right) for (?:me|us)|the least for (?:me|us))"
    r"| (?:least|enough|rule|right) for (?:me|us) is (?P<third><[a-z]+>)"
    r"| (?:my|our) (?:own )?(?:rule|number|figure|habit|choice|preference|minimum|least)(?: is| being)? (?P<fourth><[a-z]+>)"
)
_HOLDS = frozenset(
    "says said swears claims insists reckons told taught used uses did opinion advises advised recommends recommended preaches preached quotes "
    "instructor book manual rule pilot harbourmaster grandad father uncle neighbour fellow fella they he she".split()
)
_DISAGREE = re.compile(
    r" (?:i|we) (?:(?:do not|dont|cannot|cant) (?:agree|believe|hold with|think so)|disagree|doubt (?:it|that)|think (?:that )?otherwise)"
    r"| (?:that|which) is (?:nonsense|rubbish|bunk|far too much|too much|too little|overdone)"
)
_KINDS = frozenset(("<ratio>", "<angle>", "<speed>"))
_WISHED = re.compile(
    rf" (?:want|wants|prefer|settle for|insist on|rather (?:have|use|go for|lie to|take|see)){_SMALL} (?P<first><ratio>)"
    r"| (?P<second><ratio>) (?:(?:will|must|has to|would)(?: have to)? (?:do|suffice|serve)|it (?:is|will be|must be)|wanted|please)(?= )"
)
_GIVES_WAY = frozenset("no not too out now lying lie have plenty enough normally usually short long instead than against".split())


def others_opinions(tokens: tuple[Token, ...]) -> frozenset[int]:
    """Return where the figures stand that others go by where the text says what the skipper goes by, or that it does not agree with."""
    words = [token.word for token in tokens]
    if _KINDS.isdisjoint(words):
        return frozenset()
    wished = _not_wished(words, tokens) if words.count("<ratio>") > 1 else frozenset()
    return wished if _HOLDS.isdisjoint(words) else wished | _held_by_others(words, tokens)


def _not_wished(words: list[str], tokens: tuple[Token, ...]) -> frozenset[int]:
    """Return where a scope stands that gives way to the one which the skipper wants: `no room for 7:1, so 4:1 will have to do`."""
    line = f" {' '.join(words)} "
    wished = {line.count(" ", 0, one.start(str(one.lastgroup))) - 1 for one in _WISHED.finditer(line)}
    others = [at for at, word in enumerate(words) if word == "<ratio>" and at not in wished]
    if len(wished) != 1 or len({tokens[at].mention for at in wished}) != 1:
        return frozenset()
    return frozenset(tokens[at].start for at in others if _GIVES_WAY & {*_said_before(words, at), *_said_behind(words, at)})


def _held_by_others(words: list[str], tokens: tuple[Token, ...]) -> frozenset[int]:
    line = f" {' '.join(words)} "
    mine = {line.count(" ", 0, one.start(str(one.lastgroup))) - 1 for one in _MINE.finditer(line)}
    kinds = {words[at] for at in mine} & _KINDS
    found: set[int] = set()
    for at, token in enumerate(tokens):
        if token.word in kinds and at not in mine and _HOLDS & set(_said_before(words, at)):
            found.add(token.start)
    for one in _DISAGREE.finditer(line):
        at = line.count(" ", 0, one.start() + 1) - 1
        begin = _sentence_before(words, at)
        found.update(token.start for token in tokens[begin:at] if token.word in _KINDS and _HOLDS & set(words[begin:at]))
    return frozenset(found)


def _said_before(words: list[str], at: int) -> list[str]:
    """Return the words before a figure, up to another figure or the end of the sentence before."""
    begin = at
    while begin > 0 and words[begin - 1] not in STOPS and words[begin - 1][0] != "<" and at - begin < 8:
        begin -= 1
    return words[begin:at]


def _said_behind(words: list[str], at: int) -> list[str]:
    """Return the words behind a figure, up to another figure, a comma or the end of the sentence."""
    end = at + 1
    while end < len(words) and words[end] not in STOPS | {",", "so", "but"} and words[end][0] != "<" and end - at < 8:
        end += 1
    return words[at + 1 : end]


def _sentence_before(words: list[str], at: int) -> int:
    """Return where the sentence begins that is at a place, or the one before it where that one has just begun."""
    stops = [place for place in range(at) if words[place] in STOPS]
    if stops and at - stops[-1] <= 2:
        stops.pop()
    return stops[-1] + 1 if stops else 0


_SHORT = re.compile(rf" (?:i|we)(?: (?:will|would|shall|still|always))* (?:{_GO_BY}){_SMALL} (?P<number><number>) (?=[.,;?!)])")


def ratios_in_short(tokens: list[Token], *, held: frozenset[str]) -> list[Token]:
    """Return a text with a number made a ratio where the skipper sets it against another's ratio: `he says six to one, but I stay at seven`."""
    if "for" in held and "<number>" in held and not held.isdisjoint(_MATERIALS):
        tokens = [_for_a_material(tokens, at) for at in range(len(tokens))]
    if not held >= _BOTH:
        return tokens
    line = f" {' '.join([token.word for token in tokens])} "
    tokens = list(tokens)
    for one in _SHORT.finditer(line):
        at = line.count(" ", 0, one.start("number")) - 1
        mention = tokens[at].mention
        if mention is not None and isinstance(mention.amount, Amount) and 2.0 <= mention.amount.value <= _MOST_SCOPE:
            tokens[at] = tokens[at]._replace(word="<ratio>", mention=_ratio(mention, mention.amount.value))
    return tokens


def _for_a_material(tokens: list[Token], at: int) -> Token:
    """Make a ratio of the second of two: `four times the depth for chain, 6 for rope`."""
    token, mention = tokens[at], tokens[at].mention
    words = [one.word for one in tokens[at + 1 : at + 3]]
    if token.word != "<number>" or mention is None or words[:1] != ["for"] or not _MATERIALS.issuperset(words[1:]):
        return token
    first = any(one.word == "<ratio>" or (one.mention is not None and "times" in one.mention.flags) for one in tokens[:at])
    if not first or not isinstance(mention.amount, Amount) or not 2.0 <= mention.amount.value <= _MOST_SCOPE:
        return token
    return token._replace(word="<ratio>", mention=_ratio(mention, mention.amount.value))


_MATERIALS = frozenset("rope line nylon warp chain".split())
_MOST_SCOPE = 12.0
_BOTH = frozenset(("<ratio>", "<number>"))


def slopes_alike(tokens: list[Token], *, held: frozenset[str]) -> list[Token]:
    """Return a text with `1:16` made a ratio where another one to so many stands beside it: it would be a time of day."""
    if "<clock>" not in held or not any(
        token.word == "<ratio>" and token.mention is not None and token.mention.text.startswith("1:") for token in tokens
    ):
        return tokens
    return [
        token._replace(word="<ratio>", mention=_ratio(token.mention, 1.0 / int(token.mention.text[2:])))
        if token.word == "<clock>" and token.mention is not None and _ONE_TO.fullmatch(token.mention.text)
        else token
        for token in tokens
    ]


_ONE_TO = re.compile(r"1:(?:0[2-9]|[1-5]\d)")


def _ratio(mention: Mention, value: float) -> Mention:
    return mention._replace(kind="ratio", amount=Amount("ratio", value, value, "", value, value))


__all__ = ["others_opinions", "ratios_in_short", "slopes_alike"]
