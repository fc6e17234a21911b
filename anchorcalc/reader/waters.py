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


def _side(tokens: tuple[Token, ...], at: int) -> str:
    """Return whether a depth is told for high or for low water, nothing where it is for neither."""
    before, behind = around(tokens, at)
    line = f" {' '.join(word for word in (*before, '|', *behind) if word not in ('the', 'it', 'its'))} "
    return "at_high" if any(one in line for one in _HIGH) else "at_low" if any(one in line for one in _LOW) else ""
