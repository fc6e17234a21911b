"""Two who tell different figures: the one that the skipper goes by counts, and where none is chosen the figures are rivals."""

import itertools
from typing import NamedTuple

from anchorcalc.reader.mention import Mention
from anchorcalc.reader.reading import Reading
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.words import STOPS
from anchorcalc.units.kinds import Amount

_INSTRUMENTS = frozenset(
    "plotter handheld lead leadline sounder fishfinder finder echo sonar display repeater tablet phone app laptop instrument instruments table "
    "pilot almanac guide book log stick pole line gauge".split()
)
_PEOPLE = frozenset(
    "i we hand uncle manual mate skipper bosun crew wife husband son daughter cook navigator helmsman owner harbourmaster pilot partner".split()
)
_SAYS = frozenset(
    "says say said make reads read shows show gives gave has makes reckons thinks finds found got insists claims swears measured told tells "
    "puts calls".split()
)
_SMALL = frozenset("it is at there that about around only a the depth as us here down to".split())


class Told(NamedTuple):
    """A figure with the one who tells it, and where both stand."""

    who: str
    at: int
    value: Mention


def told(tokens: tuple[Token, ...] | list[Token]) -> list[Told]:
    """Return the figures that somebody or some instrument tells: `the plotter has 8 m`, `our skipper says 4:1`."""
    found: list[Told] = []
    for at, token in enumerate(tokens):
        place = at - 1
        while place >= 0 and (tokens[place].word in _SMALL or tokens[place].word == "="):
            place -= 1
        if token.mention is None or place < 0:
            continue
        says = tokens[place].word in _SAYS and place > 0
        if says or found:  # `the lead says 5 m, the sounder 7 m`
            who = _name(tokens, place - 1 if says else place)
            if who in _INSTRUMENTS | _PEOPLE:
                found.append(Told(who, at, token.mention))
    return found


def _name(tokens: tuple[Token, ...] | list[Token], at: int) -> str:
    """Return the witness at a place; a lead line is the lead, an echo sounder the sounder."""
    return "lead" if tokens[at].word == "line" and at and tokens[at - 1].word == "lead" else tokens[at].word


_TRUST = frozenset("trust believe prefer".split())


def believed(tokens: list[Token], dropped: list[Mention]) -> list[Token]:
    """Leave out what the others tell where the skipper says whom he goes by: `the book says 7:1, the mate 4:1, and we go by the mate`."""
    witnesses = told(tokens)
    pairs = [(one, other) for one, other in itertools.combinations(witnesses, 2) if one.value.kind == other.value.kind and one.who != other.who]
    if not pairs:
        return tokens
    out: set[int] = set()
    for one, other in pairs:
        chosen = _chosen(tokens, {one.who, other.who}, after=max(one.at, other.at))
        if chosen is not None:
            out.add(other.at if chosen == one.who else one.at)
    dropped.extend(mention for at in sorted(out) if (mention := tokens[at].mention) is not None)
    return [token for at, token in enumerate(tokens) if at not in out]


def _chosen(tokens: list[Token], names: set[str], *, after: int) -> str | None:
    """Return whom the text goes by: `it is the skipper we go by`, `we trust the lead`, `the plotter is right`; None in doubt."""
    words = [token.word for token in tokens[after + 1 :]]
    found: set[str] = set()
    for at, word in enumerate(words):
        if word not in names:
            continue
        before = [one for one in words[max(0, at - 4) : at] if one not in ("the", "our", "my", "that")]
        behind = words[at + 1 : at + 5]
        if _NOT & {*before, *behind}:
            return None
        goes_by = bool(before) and (before[-1] in _TRUST or (before[-2:-1] in (["go"], ["going"]) and before[-1] in ("by", "with")))
        if goes_by or _goes(behind):
            found.add(word)
    return found.pop() if len(found) == 1 else None


def _goes(behind: list[str]) -> bool:
    line = f" {' '.join(one for one in behind if one not in ('that', 'who', 'whom'))} "
    return any(line.startswith(f" {one} ") for one in _GO_BY)


_NOT = frozenset("not dont never wrong isnt rather than or".split())
_GO_BY = (
    "we go by", "i go by", "we trust", "i trust", "we believe", "i believe", "is right", "has it right", "decides", "has last word",
    "has the last word", "we go with", "i go with", "we use", "i use", "counts", "wins",
)  # fmt: skip


def disputed(reading: Reading) -> None:
    """Two figures for the water, each told by another witness or instrument, and none chosen: which one holds is asked."""
    if "depth" not in reading.question.inputs:
        return
    tokens = reading.sentence.tokens
    heard = [one for one in told(tokens) if one.value.kind == "length" and _of_the_water(tokens, one.at)]
    if len({one.who for one in heard}) < 2 or "reads_from" in reading.question.inputs:
        return
    starts = {one.value.start for one in heard}
    for term in [name for name, (start, _) in reading.sources.items() if start in starts and name not in reading.rivals]:
        reading.asked.pop(term, None)
    reading.parts = {name: one for name, one in reading.parts.items() if one.start not in starts}
    reading.aside = [(one, term) for one, term in reading.aside if one.start not in starts]
    for one in heard:
        assert isinstance(one.value.amount, Amount)
        reading.put("depth", one.value.amount)


_NO_WATER = frozenset("out rode chain rope warp aboard roller bow another more rise fall tide off away long".split())


def _of_the_water(tokens: tuple[Token, ...], at: int) -> bool:
    """Say whether nothing beside a figure makes it a length of something else."""
    end = at + 1
    while end < len(tokens) and tokens[end].word not in STOPS and tokens[end].word not in (",", "and", "but", "while", "<length>", "so"):
        end += 1
    words = {token.word for token in tokens[at + 1 : end]} | {token.word for token in tokens[max(0, at - 5) : at]}
    return not _NO_WATER & words
