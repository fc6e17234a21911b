"""Figures that a text makes by a small sum: `half the 60 m`, `all but 10 of our 60 metres`, `50 out, took in 12`, `5 m give or take half a metre`.

What only tells a difference (`mine draws a foot more`) is marked as one, so that it is not taken for the thing itself.
"""

import re
from collections.abc import Callable

from anchorcalc.reader.fits import is_size, with_unit
from anchorcalc.reader.mention import Mention, Part
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.spoken_parts import token_of
from anchorcalc.units.kinds import UNIT, Amount
from anchorcalc.units.shown import tidy

_FIGURE, _OUT = r"(?:<length>|<number>)", r"(?:out|veered|down|of (?:rode|chain|rope|cable|warp|line)(?: out| veered| down)?)"
_THE = r"(?:the|our|my|her|all|those|these|whole|total)"
_SHARE = re.compile(
    rf" (?P<one><number>)(?: of)?(?: {_THE})+ (?P<two><length>)"
    r"(?= (?:(?:of it|rode|rope|cable|warp) )?(?:is |are |has |been |now |lies |already )*(?:out|veered|down|gone|left|over|in the water|run|let) )"
)
_ALL_BUT = re.compile(rf" (?:all|everything) (?:but|except|bar)(?: (?:the|last))* (?P<one>{_FIGURE}) of(?: {_THE})* (?P<two><length>)(?= )")
_ONLY_OF = re.compile(  # `only 40 m of the 60 m is usable`
    rf" (?P<one>{_FIGURE}) of(?: {_THE})+ (?P<two><length>)(?: of [a-z]+)?"
    r" (?:is|are)(?: still| any)? (?:usable|fit|sound|good|left|aboard|any good)(?= )"
)
_AROUND = re.compile(rf" (?P<one>{_FIGURE}) (?:plus or minus|give or take|±|\+ / -) (?P<two>{_FIGURE})(?= )")
_MORE = re.compile(
    rf" (?P<one>{_FIGURE}) {_OUT}(?: [,;])?(?: (?:and|then|plus|but|later|we|i|have|since|let out|let go|put out|veered|paid out|gave her))+"
    rf" (?:(?:another|a further|an extra) (?P<two>{_FIGURE})(?: more)?|(?P<three>{_FIGURE}) more)"
    r"(?! (?:of tide|at high|on the|rise|aboard|on board|below|left|spare|in))(?= )"
)
_LESS = re.compile(
    rf" (?:(?:out|veered) (?P<one>{_FIGURE})(?: {_OUT})?|(?P<first>{_FIGURE}) (?:went|was|gone|ran) out)"
    r"(?: [,;.])?(?: (?:and|then|but|we|i|he|she|they|the skipper|the mate"
    r"|have|has|later|since|just|now|afterwards|again))*"
    rf" (?:took|taken|hauled|heaved|hove|brought|pulled|wound|gathered)(?: (?:back|up|in|by|about|some))+ (?P<two>{_FIGURE})(?= )"
)
_CHANGED = (
    r" (?:shortened|shorten|lengthened|veered|eased|hauled|heaved|hove|(?:paid|let) out|(?:brought|taken|took) (?:in|up))"
    r"(?: (?:up|in|out|back|down|it|her|scope|rode|chain|rope|cable|all|just|now))*"
)
_FROM_TO = re.compile(rf"{_CHANGED} from (?P<one>{_FIGURE}) to (?P<two>{_FIGURE})(?= )")
_TO_FROM = re.compile(rf"{_CHANGED} to (?P<one>{_FIGURE}) from (?P<two>{_FIGURE})(?= )")
_GROWN = re.compile(rf"{_CHANGED} from (?P<one><length>)(?= )")  # `veered from 30 to 50 m`, which else is a range
_HAULED_OF = re.compile(  # `I hauled 10 of the 45 m back in`
    rf" (?:hauled|took|heaved|hove|brought|pulled|wound) (?P<one>{_FIGURE}) of(?: {_THE})* (?P<two><length>) (?:back in|back|in)(?= )"
)
_TWICE = re.compile(  # `6 m (20 ft) deep`, `8 m/26 ft`, `15 kg, or 33 lb`
    r" (?P<one><(?P<kind>length|mass|speed|force)>) (?:\( (?:or |about |that is |i . e . )?(?P<two><(?P=kind)>)(?P<end> \))"
    r"|(?:, )?(?:/|or|that is|which is|=) (?P<three><(?P=kind)>))(?= )"
)
_RESULT = re.compile(  # `I let 30 m go, then hauled ten back in, so twenty metres is what's down`
    rf" (?P<one>{_FIGURE}) [^<?!]{{1,60}} (?P<two>{_FIGURE}) [^<?!.]{{0,40}}?(?:so|leaving|leaves|makes|making|total|all)"
    rf"(?: [a-z]+){{0,4}} (?P<three>{_FIGURE})(?= )"
)
_GEAR = frozenset(
    "ashore hauled lost cut took aboard veered out let gone rode chain warp rope line cable back gave shortened recovered carry".split()
)
_WATER = frozenset("water tide depth deep ebb flood falls fall drops drop rise rises low high hw lw keel draught".split())
_SAME = 0.035  # two units for one thing are rounded
_STEPS = frozenset("more less deeper shallower longer shorter higher lower heavier lighter wider narrower bigger greater".split())
_ALL, _BUT = frozenset(("all", "everything")), frozenset(("but", "except", "bar", "save"))
_ENDS = frozenset((",", ".", ";", "?", "!", ")", "\n", "and", "but", "so", "than", ""))


def summed(tokens: list[Token], dropped: list[Mention], *, goes_on: bool) -> list[Token]:
    """Return the tokens of a text with the small sums that it tells made."""
    words = {token.word for token in tokens}
    if not words.isdisjoint(("(", "/", "or", "=", "that", "which")):
        tokens = _said_once(tokens, dropped)
    tokens = _grown(tokens) if "from" in words else tokens
    tokens = _told_result(tokens) if not words.isdisjoint(_TELLS) else tokens
    for one in _SUMS:
        if not words.isdisjoint(one.words):
            tokens = _made(tokens, one)
    return tokens if goes_on or (words.isdisjoint(_STEPS) and words.isdisjoint(_ALL)) else [_marked(tokens, at) for at in range(len(tokens))]


def _said_once(tokens: list[Token], dropped: list[Mention]) -> list[Token]:
    """Return the tokens with a quantity that is told in two units told in the first."""
    out: set[int] = set()
    for found in _TWICE.finditer(_line(tokens)):
        one, two = _place(found, "one"), _place(found, "two" if found["two"] else "three")
        if _alike(tokens[one], tokens[two]):
            out.update(range(one + 1, two + (2 if found["end"] else 1)))
            dropped.extend(token.mention for token in tokens[two : two + 1] if token.mention is not None)
    return [token for at, token in enumerate(tokens) if at not in out] if out else tokens


def _alike(one: Token, other: Token) -> bool:
    """Say whether two quantities in different units are the same, but for rounding."""
    first, second = (token.mention.amount if token.mention is not None else None for token in (one, other))
    if not isinstance(first, Amount) or not isinstance(second, Amount) or first.unit == second.unit or first.low <= 0.0:
        return False
    return abs(second.low / first.low - 1.0) <= _SAME and abs(second.high / first.high - 1.0) <= _SAME


_PARTS = frozenset((",", "but", "and", "then", ";", "–"))
_TELLS = frozenset(("so", "leaving", "leaves", "makes", "making", "total", "all"))


def _told_result(tokens: list[Token]) -> list[Token]:
    """Return the tokens with a sum of rode whose result the text tells: the result stands where the first of its figures was."""
    found = _RESULT.search(_line(tokens))
    if found is None:
        return tokens
    places = [_place(found, name) for name in ("one", "two", "three")]
    between = {token.word for token in tokens[places[0] + 1 : places[2]]}
    amounts = [token.mention.amount if (token := tokens[at]).mention is not None else None for at in places]
    if between.isdisjoint(_GEAR) or not between.isdisjoint(_WATER) or not all(isinstance(one, Amount) for one in amounts):
        return tokens
    first, second, result = (one for one in amounts if isinstance(one, Amount))
    made_of = (first.value - second.value, second.value - first.value, first.value + second.value)
    if not first.unit or not any(abs(result.value - one) < 1e-9 for one in made_of):
        return tokens
    if not {second.unit, result.unit} <= {first.unit, ""}:
        return tokens
    amount = with_unit(Amount("number", 0.0, 0.0, "", result.value, result.value), unit=first.unit)
    made = token_of(tokens, places[2], places[2] + 1, "length", amount, frozenset())
    before, behind = tokens[: places[0]], tokens[places[2] + 1 :]
    if not _GEAR.isdisjoint(token.word for token in behind[:4]):
        return [*before, *(token for token in tokens[places[0] + 1 : places[2]] if token.mention is None), made, *behind]
    said = next(at for at in range(places[0] + 1, places[2]) if tokens[at].word in _PARTS or tokens[at].mention is not None)
    return [*before, made, *tokens[places[0] + 1 : said], *behind]


class _Sum(Part, frozen=True, gc=False):
    """A kind of sum: the words that tell it, how it is said, and what it makes of its two figures (the least and the most, or nothing)."""

    words: tuple[str, ...]
    said: re.Pattern[str]
    makes: Callable[[float, float], tuple[float, float] | None]
    of_share: bool = False  # the first figure is a part of the second: `half the 60 m`
    of_all: bool = False  # the words before the first figure belong to the sum: `all but 10 of our 60 m`
    out: bool = False  # what is made is out


def _made(tokens: list[Token], kind: _Sum) -> list[Token]:
    """Return the tokens with the first sum of a kind made: what stands between its figures is part of it."""
    found = kind.said.search(_line(tokens))
    if found is None:
        return tokens
    one, two = _place(found, "one" if found["one"] else "first"), _place(found, str(found.lastgroup))
    first, last = tokens[one].mention, tokens[two].mention
    if first is None or last is None or not isinstance(first.amount, Amount) or not isinstance(last.amount, Amount) or is_size(last):
        return tokens
    values = kind.makes(first.amount.value if kind.of_share else _in(first.amount, last.amount), last.amount.value)
    if values is None or first.amount.value != first.amount.value_high or last.amount.value != last.amount.value_high:
        return tokens
    unit = last.amount.unit or first.amount.unit
    amount = with_unit(Amount("number", 0.0, 0.0, "", *values), unit=unit) if unit in UNIT else Amount("number", *values, "", *values)
    flags = last.flags if kind.of_share else first.flags | ({"range"} if values[0] != values[1] else set())
    made = token_of(tokens, one, two + 1, "length" if unit in UNIT else "number", amount, frozenset(flags) - {"fraction", "spelled"})
    out = [made._replace(word="out", mention=None)] if kind.out else []
    return [*tokens[: found.string.count(" ", 0, found.start() + 1) - 1 if kind.of_all else one], made, *out, *tokens[two + 1 :]]


def _grown(tokens: list[Token]) -> list[Token]:
    """Return the tokens with a rode that grew from one length to another told as the longer, which now is out."""
    found = _GROWN.search(_line(tokens))
    at = _place(found, "one") if found is not None else 0
    mention = tokens[at].mention
    if mention is None or not isinstance(mention.amount, Amount) or "range" not in mention.flags:
        return tokens
    amount = with_unit(Amount("number", 0.0, 0.0, "", mention.amount.value_high, mention.amount.value_high), unit=mention.amount.unit)
    made = token_of(tokens, at, at + 1, "length", amount, mention.flags - {"range"})
    return [*tokens[:at], made, made._replace(word="out", mention=None), *tokens[at + 1 :]]


def _line(tokens: list[Token]) -> str:
    return f" {' '.join([token.word for token in tokens])} "


def _place(found: re.Match[str], name: str) -> int:
    """Return which token a group of a match begins with."""
    return found.string.count(" ", 0, found.start(name)) - 1


def _in(one: Amount, other: Amount) -> float:
    """Return the value of an amount in the unit of another, where that has one."""
    if one.unit in UNIT and other.unit in UNIT and one.unit != other.unit:
        return tidy(one.low / UNIT[other.unit].factor)
    return one.value


def _share_of(share: float, whole: float) -> tuple[float, float] | None:
    return (tidy(share * whole),) * 2 if 0.0 < share < 1.0 else None


def _what_is_left(less: float, whole: float) -> tuple[float, float] | None:
    return (tidy(whole - less),) * 2 if 0.0 < less < whole else None


def _together(one: float, two: float) -> tuple[float, float] | None:
    return (tidy(one + two),) * 2


def _around(value: float, by: float) -> tuple[float, float] | None:
    return (tidy(value - by), tidy(value + by)) if 0.0 < by < value else None


_SUMS = (
    _Sum(("from",), _FROM_TO, lambda _, now: (now, now), out=True),
    _Sum(("from",), _TO_FROM, lambda now, _: (now, now), out=True),
    _Sum(("all", "everything"), _ALL_BUT, _what_is_left, of_all=True),
    _Sum(("<number>",), _SHARE, _share_of, of_share=True),
    _Sum(("usable", "fit", "sound", "good", "left", "aboard"), _ONLY_OF, lambda part, whole: (part, part) if part < whole else None),
    _Sum(("hauled", "took", "heaved", "hove", "brought", "pulled", "wound"), _HAULED_OF, _what_is_left, out=True),
    _Sum(("minus", "give", "±", "+"), _AROUND, _around),
    _Sum(("another", "further", "extra", "more"), _MORE, _together, out=True),
    _Sum(
        ("took", "taken", "hauled", "heaved", "hove", "brought", "pulled", "wound", "gathered"),
        _LESS,
        lambda whole, less: _what_is_left(less, whole),
        out=True,
    ),
)


def _marked(tokens: list[Token], at: int) -> Token:
    """Mark a quantity behind which only `more`, `deeper` or the like stands as a difference."""
    token, behind = tokens[at], [one.word for one in tokens[at + 1 : at + 3]]
    mention = token.mention
    if mention is None or not (_is_step(behind) or _left_of_all(tokens, at)):
        return token
    return token._replace(mention=mention._replace(flags=mention.flags | {"difference"}))


def _is_step(behind: list[str]) -> bool:
    return bool(behind) and behind[0] in _STEPS and (behind[1] if len(behind) > 1 else "") in _ENDS


def _left_of_all(tokens: list[Token], at: int) -> bool:
    """Say whether a quantity is what is left of all: `all out but 20 ft`."""
    before = [token.word for token in tokens[max(0, at - 5) : at]]
    while before and before[-1] in ("the", "last", "about"):
        before.pop()
    return bool(before) and before[-1] in _BUT and not _ALL.isdisjoint(before)


__all__ = ["summed"]
