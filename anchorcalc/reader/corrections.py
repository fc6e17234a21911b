"""Figures that a text takes back for another one, or says not to be: `13 ft, no, 11 ft`, `not 7:1`, `forget the 90 ft`."""

import re

from anchorcalc.reader.fits import with_unit
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.slots import spoken
from anchorcalc.reader.words import STOPS
from anchorcalc.units.kinds import UNIT, Amount

_STRONG = frozenset("sorry correction meant wait oops scratch scrap er nope misspoke apologies".split())
_TAKING_BACK = tuple(  # what takes back the figure before it, longer than a word
    tuple(one.split())
    for one in (
        "i mean", "make that", "make it", "call it", "call that", "hang on", "or rather", "no make", "belay that", "scrub that", "strike that",
        "check that", "cancel that", "disregard that", "i tell a lie", "my mistake", "my error", "as you were", "beg pardon",
        "beg your pardon", "i stand corrected", "on second thought", "on second thoughts", "let me correct", "hold on", "i got that wrong",
        "that is wrong", "that was wrong", "wrong ,", "read that wrong", "misread it", "misread that", "delete that", "rub that out", ". . . say",
    )
)  # fmt: skip
_LONGER = {first: tuple(one for one in _TAKING_BACK if one[0] == first) for first in {one[0] for one in _TAKING_BACK}}
_BEGINS = _STRONG | {"no", "not"} | set(_LONGER)
# Without one of these nothing takes a figure back, or makes it more exact; of what is longer it is the longest word.
_NEEDS = (
    _STRONG
    | {"no", "exact", "precise", "accurate", "actually", "really"}
    | {max(one, key=lambda word: len(word) * (word != "that")) for one in _TAKING_BACK}
)
_REACH, _FAR, _AT_MOST, _NAMES = 7, 12, 4, 4.0  # so many words a new value may stand off; so strong a cue names another figure
_WHO = frozenset("i we he she they mate skipper you".split())
_BETWEEN = frozenset(
    ", - – . ... ! ? ( ) : ; or er eh ah oh um hm hmm well it is i that more like hang hold on wait no sorry we the a of about then to call plain "
    "make mean meant okay misread misheard misspoke belay scrub strike scratch scrap check correction rather only just say dear me let see "
    "actually really exactly tell lie mistake error my pardon beg your was wrong should read be in at there these are "
    "own scribble writing handwriting notes note log".split()
)
SIGNS = frozenset((",", "-", "–", ":", ";", ".", "!", "(", ")", "?"))
_SAYS = r"(?:says|say|said|reads|read|shows|gives|makes|has|forecast|forecasts)"
_TELLS = re.compile(rf" (?:(?:the|my|our) )?[a-z]+(?: [a-z]+)? {_SAYS}(?: (?:that|it|is|about))* ")


def corrected(tokens: list[Token], dropped: list[Mention], *, held: frozenset[str]) -> list[Token]:
    """Return a text, of the words that it held, with each figure that is taken back replaced by the one that takes its place."""
    at = len(tokens) if held.isdisjoint(_NEEDS) else 0
    while at < len(tokens):
        if tokens[at].mention is not None:
            cut, end = _correction(tokens, at)
            if end:
                old, new = tokens[at].mention, tokens[end].mention
                assert old is not None and new is not None
                dropped.append(old)
                tokens = [*tokens[:at], _in_place(old, tokens[end]), *tokens[at + 1 : cut], *tokens[end + 1 :]]
                continue
        at += 1
    return tokens


def _in_place(old: Mention, token: Token) -> Token:
    """Return the new value, in the unit of the old one where it has none."""
    new = token.mention
    assert new is not None
    if (
        new.kind == "number"
        and isinstance(old.amount, Amount)
        and isinstance(new.amount, Amount)
        and old.kind != "number"
        and old.amount.unit in UNIT
    ):
        return token._replace(word=f"<{old.kind}>", mention=new._replace(kind=old.kind, amount=with_unit(new.amount, unit=old.amount.unit)))
    return token


def _correction(tokens: list[Token], at: int) -> tuple[int, int]:
    """Return where the taking back begins, and where the value stands that takes the place of the one at a place; or zeros."""
    old = tokens[at].mention
    assert old is not None
    strong = 0
    for place in range(at + 1, min(len(tokens), at + 2 * _FAR)):
        token = tokens[place]
        if place - (strong or at) >= _FAR:
            return 0, 0
        if token.mention is not None:
            if tokens[place - 1].word == "g":
                return 0, 0  # `5/16, sorry, G30 chain` takes no size back
            if strong and _alike(old, token.mention) and _leads(tokens, at, strong, place):
                return _cut(tokens, at, strong), place
            return (place - 1, place) if not strong and _well(tokens, at, place) else (0, 0)
        if not strong and token.word in _BEGINS and _takes_back(tokens, place):
            strong = place
        elif not strong and token.word in STOPS and place - at > 6:
            return 0, 0
    return 0, 0


def _takes_back(tokens: list[Token], place: int) -> bool:
    """Say whether words that take back the figure before them begin at a place."""
    words = [token.word for token in tokens[place : place + 4]]
    if words[0] in _STRONG or (words[0] in ("no", "not") and _is_no(tokens, place)):
        return True
    found = _longer(words) > 0
    meant = words[:3] in (["i", "mean", "to"], ["hold", "on", "to"])  # `I mean to have 33 m out`
    return found and not meant and not (words[:2] == ["make", "it"] and tokens[place - 1].word in _WHO)


def _longer(words: list[str]) -> int:
    """Return how many words long the taking back is that some words begin with, where it is more than one."""
    return max((len(one) for one in _LONGER.get(words[0], ()) if tuple(words[: len(one)]) == one), default=0)


def _leads(tokens: list[Token], at: int, strong: int, place: int) -> bool:
    """Say whether what stands between the taking back and a value leads to it: small words, who says it, or why, set off by a sign."""
    near = {one.word for one in tokens[max(0, at - 4) : strong]}
    begin = strong + _longer([token.word for token in tokens[strong : strong + 4]])
    while begin < place and (tokens[begin].word in _BETWEEN or tokens[begin].word in _STRONG or tokens[begin].word in near):
        begin += 1
    if begin == place:
        return place - strong <= _REACH
    if _TELLS.fullmatch(f" {' '.join(token.word for token in tokens[begin:place])} "):
        return True
    rest = tokens[begin:place]
    set_off = begin - strong >= 2 or rest[-1].word == ":"
    plain = len(rest) <= _AT_MOST and not any(token.word in STOPS for token in rest) and not _names(rest)
    if set_off and plain and tokens[place].word == tokens[at].word:
        return True
    return _explained(tokens, strong, place)


def _names(tokens: list[Token]) -> bool:
    """Say whether some words call a figure behind them something."""
    found = [one for one in spoken(tuple(tokens)) if one.end - one.start > 1 or tokens[one.start].word not in _PREPOSITIONS]
    return any(weight > _NAMES for one in found for _, weight in one.behind)


_PREPOSITIONS = frozenset(("in", "at", "on", "to", "from", "with", "by"))


def _explained(tokens: list[Token], strong: int, place: int) -> bool:
    """Say whether signs set off why the figure is taken back: `no, that was a surge, 190 kg`; a word for another figure there makes it none."""
    why = tokens[strong:place]
    behind = tokens[place + 1].word if place + 1 < len(tokens) else "."
    words = [token.word for token in why]
    was = any(words[at : at + 2] in (["that", "was"], ["it", "was"], ["this", "was"]) for at in range(len(words)))
    named = not was and _names(why)
    return words[-1] in SIGNS and any(word in SIGNS for word in words[:-1]) and not named and (behind in SIGNS or behind == "now")


def _well(tokens: list[Token], at: int, place: int) -> bool:
    """Say whether a value only makes the one before it more exact: `1.8 kN, well, 2.1 kN to be exact`."""
    old, new = tokens[at].mention, tokens[place].mention
    assert old is not None and new is not None
    behind = [token.word for token in tokens[place + 1 : place + 4]]
    exact = behind[:3] in (["to", "be", "exact"], ["to", "be", "precise"], ["to", "be", "accurate"]) or behind[:1] in (["actually"], ["really"])
    between = {token.word for token in tokens[at + 1 : place]}
    return exact and old.kind == new.kind and place - at <= 4 and between <= {",", "well", "or", "-", "–", "(", "it", "is", "."}


def _cut(tokens: list[Token], at: int, strong: int) -> int:
    """Return where a taking back begins: at the signs and small words before it."""
    while strong - 1 > at and tokens[strong - 1].word in _BETWEEN:
        strong -= 1
    return strong


def _is_no(tokens: list[Token], place: int) -> bool:
    """Say whether a `no` takes back: signs around it, or a value right behind it."""
    behind = tokens[place + 1] if place + 1 < len(tokens) else None
    if behind is None or tokens[place].word == "not":
        return False
    before = tokens[place - 1].word
    return behind.mention is not None or (behind.word in _BEHIND_NO and before in _BEFORE_NO)


_BEHIND_NO = frozenset(", . ! : ; make wait hang hold sorry call it i - – belay scrub strike that".split())
_BEFORE_NO = frozenset(", . - – ? er ah ( m ; hm hmm oh um ! :".split())


def _alike(old: Mention, new: Mention) -> bool:
    return (
        old.kind == new.kind
        or "number" in (old.kind, new.kind)
        or ({old.kind, new.kind} <= {"mass", "force", "power", "length"} and old.kind in ("power", "force", "mass"))
    )


__all__ = ["SIGNS", "corrected"]
