"""Figures that a text says not to be, or to be no more: `not 7:1`, `forget the 90 ft`, `the 36 ft in the papers is wrong`, `leaving 30 m`."""

import re

from anchorcalc.reader.corrections import SIGNS
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.sentence import Token, without_figures
from anchorcalc.reader.sought import sought

_DENIES = frozenset(("not", "isnt", "wasnt", "arent", "forget", "ignore", "disregard", "scratch"))
_DENIES_TOO = frozenset((("never", "mind"), ("dont", "mean"), ("not", "mean"), ("didnt", "mean"), ("instead", "of"), ("no", "longer")))
_NEEDS = _DENIES | {"mind", "mean", "instead", "longer", "no"}  # without one of these nothing is denied
_SAID = frozenset("a the at that i said about as of my what told you mentioned gave by earlier".split())


def denied(tokens: list[Token], dropped: list[Mention], *, held: frozenset[str]) -> list[Token]:
    """Leave out quantities that are said not to be: `not 7:1 tonight`, `never mind 8:1`; what is to be forgotten with what it is said to be."""
    if held.isdisjoint(_NEEDS):
        return tokens
    out: set[int] = set()
    for at, token in enumerate(tokens):
        begin = _denial(tokens, at) if token.mention is not None else -1
        if token.mention is None or begin < 0:
            continue
        dropped.append(token.mention)
        out.add(at)
        if tokens[begin].word in _FORGET and (begin == 0 or tokens[begin - 1].word in SIGNS):
            end = next((place for place in range(at, len(tokens)) if tokens[place].word in SIGNS), len(tokens))
            out.update(place for place in range(begin, end) if tokens[place].mention is None)
        elif (but := _but(tokens, at)) > 0:
            out.update(range(begin, but + 1))
    return [token for at, token in enumerate(tokens) if at not in out]


def _but(tokens: list[Token], at: int) -> int:
    """Return where the `but` stands that puts another figure in the place of one that is denied: `isn't 50 m any more but 42 m`."""
    old = tokens[at].mention
    for place in range(at + 1, min(at + 6, len(tokens) - 1)):
        if tokens[place].word == "but":
            new = tokens[place + 1].mention
            return place if old is not None and new is not None and old.kind == new.kind else -1
        if tokens[place].word not in _ANY_MORE:
            return -1
    return -1


_ANY_MORE = frozenset("any more anymore longer now , long".split())
_FORGET = frozenset(("forget", "ignore", "disregard"))


def _denial(tokens: list[Token], at: int) -> int:
    """Return where the words begin that deny a quantity, articles and `that I said` passed over; -1 where none do."""
    place = at - 1
    while place >= 0 and tokens[place].word in _SAID and at - place <= 5:
        place -= 1
    if place < 0:
        return -1
    pair = (tokens[place - 1].word if place else "", tokens[place].word)
    passed = frozenset(token.word for token in tokens[place + 1 : at])
    if tokens[place].word == "no" and place == at - 1 and (place == 0 or pair[0] in SIGNS) and at + 1 < len(tokens) and tokens[at + 1].word == "of":
        return place  # `no 60 m of chain on this boat`
    if pair in _DENIES_TOO or (tokens[place].word == "instead" and "of" in passed):
        return place
    return place if tokens[place].word in _DENIES and not (passed & {"of", "by", "what"}) else -1


_K = r"<[a-z]+>"
_WRONG = re.compile(
    rf" {_K}(?= (?:[a-z]+ ){{0,6}}(?:is|was|are|were) (?:all |quite |simply |plain |just )?"
    r"(?:wrong|out of date|outdated|a misprint|a mistake|an error|not right|incorrect|a typo|obsolete|no longer (?:true|right|so)) )"
)
_ONCE_SAID = re.compile(  # `I said eighty feet but it is actually ninety-five`, `we thought it was 6 m, the lead says 8 m`
    r" (?:i|we) (?:said|wrote|told you|thought|guessed|reckoned|believed|put|first said|had said)(?: [a-z]+){0,4} (?P<old><(?P<kind>[a-z]+)>)"
    r"(?: [a-z]+){0,5} ?[,;:.–-]?(?: but| though| and| however)?(?: [a-z]+){0,3} (?:actuall?y|really|in fact|turns out|turned out|in truth)"
    r"(?: [a-z]+){0,3} <(?:(?P=kind)|number)> "
)
_SAID_BEFORE = re.compile(  # `I said 5:1 before, let's do 7:1`
    r" (?:i|we) (?:said|told you|wrote|asked for|gave you)(?: [a-z]+){0,3} (?P<old><(?P<kind>[a-z]+)>) (?:before|earlier|first|at first|just now)"
    r"(?= [^.?!]*<(?P=kind)>)"
)
_IS_LATER = sought(_SAID_BEFORE, "before earlier first just")
_IS_WRONG = sought(_WRONG, "wrong date outdated misprint mistake error right incorrect typo obsolete longer")
_IS_REALLY = sought(_ONCE_SAID, "actually actualy really fact turns turned truth")
_WRONGLY = _IS_LATER.needs | _IS_WRONG.needs | _IS_REALLY.needs


def said_wrongly(tokens: list[Token], dropped: list[Mention], *, held: frozenset[str]) -> list[Token]:
    """Leave out a figure that the text calls wrong, or that it says was only thought."""
    if held.isdisjoint(_WRONGLY):
        return tokens
    line = f" {' '.join([token.word for token in tokens])} "
    out = {line.count(" ", 0, one.start()) for one in _IS_WRONG.within(line, held)}
    out |= {line.count(" ", 0, one.start("old") - 1) for sought_for in (_IS_REALLY, _IS_LATER) for one in sought_for.within(line, held)}
    return without_figures(tokens, out, dropped) if out else tokens


_LOST = r"(?:ate|lost|cut|chopped|gave|sold|took|snagged|burnt|chafed|sawed|sawn)"
_LEFT = re.compile(
    rf" (?P<old><(?P<kind>[a-z]+)>)(?P<noun>(?: [a-z]+){{0,4}}) ,(?: (?!so )[a-z]+){{0,6}} {_LOST}(?: [a-z]+){{0,3}} <(?P=kind)>[^.;?!<]*?"
    r" (?:leaving|leaves|so (?:i|we|there)(?: have| is| got| only)*|which leaves)(?: (?:me|us|with|just|only|about))* (?P<new><(?P=kind)>)"
)
_IS_LEFT = sought(_LEFT, "ate lost cut chopped gave sold took snagged burnt chafed sawed sawn")


def what_is_left(tokens: list[Token], dropped: list[Mention], *, held: frozenset[str]) -> list[Token]:
    """Return a text with what is left in the place of what was: `40 m of rope, of which a propeller ate 10 m, leaving 30 m`."""
    if not _IS_LEFT.perhaps(held):
        return tokens
    line = f" {' '.join([token.word for token in tokens])} "
    found = _IS_LEFT.regex.search(line)
    if found is None:
        return tokens
    old, new = (line.count(" ", 0, found.start(name)) - 1 for name in ("old", "new"))
    goes_on = old + 1 + found["noun"].count(" ")
    dropped.extend(mention for at in (old, *range(goes_on, new)) if (mention := tokens[at].mention) is not None)
    return [*tokens[:old], tokens[new], *tokens[old + 1 : goes_on], *tokens[new + 1 :]]


__all__ = ["denied", "said_wrongly", "what_is_left"]
