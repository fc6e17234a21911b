"""Two depths of one place, the one now and the one at high or low water: the tide between them."""

from anchorcalc.reader.reading import Reading
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.words import STOPS
from anchorcalc.units.kinds import Amount

_PARTS = frozenset((",", "and", "but", "with", "plus", "–", "-"))


def around(tokens: tuple[Token, ...], at: int) -> tuple[list[str], list[str]]:
    """Return the words before a quantity and behind it, as far as they speak of it: to a stop or to another length."""
    start, end = at, at + 1
    while start > 0 and tokens[start - 1].word not in STOPS and tokens[start - 1].word != "<length>":
        start -= 1
    while end < len(tokens) and tokens[end].word not in STOPS and tokens[end].word not in (",", "<length>", "and", "so", "bow", "roller"):
        end += 1
    if start > 0 and tokens[start - 1].word == "<length>":  # what follows the other length speaks of that, up to a sign or an `and`
        start = next((place for place in range(start, at) if tokens[place].word in _PARTS), start)
    return [token.word for token in tokens[start:at]], [token.word for token in tokens[at + 1 : end]]


_HIGH = (
    " high water ",
    " hw ",
    " high tide ",
    " top of tide ",
    " top of flood ",
    " tide in ",
    " tide is in ",
    " tide is up ",
    " full tide ",
    " springs up ",
)
_LOW = (" low water ", " lw ", " low tide ", " bottom of tide ", " tide out ", " tide is out ", " bottom of ebb ")


def two_waters(reading: Reading) -> None:
    """Of two depths, one told for high or low water, the other is the depth: `8 m at high water, 6 m at the moment`."""
    _no_rise(reading)
    rivals = reading.rivals.get("depth", ())
    if len(rivals) != 2 or "tide_rise" in reading.asked or "tide_fall" in reading.asked:
        return
    tokens = reading.sentence.tokens
    places = {at: one.mention for at, one in enumerate(tokens) if one.mention is not None and one.mention.amount in rivals}
    sides = {at: _side(tokens, at) for at in places}
    then = [at for at, side in sides.items() if side]
    now = [at for at, side in sides.items() if not side]
    if len(then) != 1 or len(now) != 1:
        return
    there, here = places[then[0]].amount, places[now[0]].amount
    assert isinstance(there, Amount) and isinstance(here, Amount)
    if (there.low >= here.high) != (sides[then[0]] == "at_high"):
        return
    del reading.rivals["depth"]
    reading.asked["depth"] = here
    reading.sources["depth"] = (places[now[0]].start, _PLAIN)
    reading.parts[sides[then[0]]] = places[then[0]]


_PLAIN = 8.0
_CHANGES = frozenset(
    "more another rise rises rising range still to come comes coming further extra higher add adds plus on makes make lift lifts tides by".split()
)
_NOW = frozenset("now moment present minute currently presently".split())


def _no_rise(reading: Reading) -> None:
    """What is told for high water, with no word for a change, is the depth then: `now 4 m, at the top of the flood 6.2 m`."""
    tokens, rise = reading.sentence.tokens, reading.asked.get("tide_rise")
    start = reading.sources.get("tide_rise", (-1, 0.0))[0]
    at = next((at for at, token in enumerate(tokens) if token.start == start), -1)
    if at < 0 or not isinstance(rise, Amount) or "tide_rise" in reading.rivals or _side(tokens, at) != "at_high":
        return
    before, behind = around(tokens, at)
    words, mention, depth = {*before, *behind[:5]}, tokens[at].mention, _depth_now(reading)
    tide = "tide" in words and "top" not in words
    if mention is not None and isinstance(depth, Amount) and depth.high < rise.low and not tide and not _CHANGES & words:
        del reading.asked["tide_rise"]
        reading.parts["at_high"] = mention


def _depth_now(reading: Reading) -> object:
    """Return the depth, the one length told for now where no word called it so."""
    if "depth" in reading.asked or "depth" in reading.bare:
        return reading.asked.get("depth")
    places = {token.start: at for at, token in enumerate(reading.sentence.tokens)}
    lone = [one for one, term in reading.aside if one.kind == "length" and term in (None, "depth") and one.start in places]
    now = [one for one in lone if _NOW & {word for words in around(reading.sentence.tokens, places[one.start]) for word in words}]
    if len(now) != 1 or not isinstance(now[0].amount, Amount):
        return None
    reading.put("depth", now[0].amount)
    reading.sources["depth"] = (now[0].start, _PLAIN)
    reading.aside = [(one, term) for one, term in reading.aside if one is not now[0]]
    return now[0].amount


def _side(tokens: tuple[Token, ...], at: int) -> str:
    """Return whether a depth is told for high or for low water, nothing where it is for neither."""
    before, behind = around(tokens, at)
    line = f" {' '.join(word for word in (*before, '|', *behind) if word not in ('the', 'it', 'its'))} "
    return "at_high" if any(one in line for one in _HIGH) else "at_low" if any(one in line for one in _LOW) else ""
