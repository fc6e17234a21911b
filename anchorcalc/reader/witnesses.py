"""Two who tell different figures: the one that the skipper goes by counts, and where none is chosen the figures are rivals."""

import itertools

from anchorcalc.reader.fits import as_given, fit
from anchorcalc.reader.guess import open_for
from anchorcalc.reader.mention import Mention, Part
from anchorcalc.reader.reading import Reading
from anchorcalc.reader.sentence import Token, without_figures
from anchorcalc.reader.words import STOPS
from anchorcalc.units.kinds import Amount
from anchorcalc.vocabulary import TERMS

_INSTRUMENTS = frozenset(
    "plotter handheld lead leadline sounder fishfinder finder echo sonar display repeater tablet phone app laptop instrument instruments stick "
    "pilot almanac guide book books log pole line gauge counter scales scale shank tape brochure certificate papers registration survey "
    "drawing drawings manual pacing marks tally tag label stamp plate logbook receipt invoice chart plan map radar gps meter caliper cell "
    "table tables note notes notice board next second".split()
)
_PEOPLE = frozenset(
    "i we hand uncle manual mate skipper bosun crew wife husband son daughter cook navigator helmsman owner harbourmaster pilot partner brother "
    "sister boy girl deckhand surveyor builder broker law seller yard dealer insurer".split()
)
_WITNESSES = _INSTRUMENTS | _PEOPLE
_SAYS = frozenset(
    "says say said make reads read shows show gives gave has makes reckons thinks finds found got insists claims swears measured told tells "
    "puts calls give put lists bills".split()
)
_SPEAKS = frozenset("says say said read reads reckons thinks swears claims insists measured told".split())  # as no boat does
_SMALL = frozenset(
    "it is was were at there that about around only a the depth as us here down to her him me them rises falls drops they theyre are".split()
)
_NOUNS = frozenset("chain rode depth beam length draught line rope anchor wind bottom".split())  # `the seller has the chain as 8 mm`


class Told(Part, frozen=True, gc=False):
    """A figure with the one who tells it, and where both stand."""

    who: str
    at: int
    value: Mention


def told(tokens: tuple[Token, ...] | list[Token]) -> list[Told]:
    """Return the figures that somebody or some instrument tells: `the plotter has 8 m`, `our skipper says 4:1`."""
    found: list[Told] = []
    for at, token in enumerate(tokens):
        if token.mention is None:
            continue
        who = _by_whom(tokens, at)
        if who:
            found.append(Told(who, at, token.mention))
            continue
        place = at - 1
        while place >= 0 and (tokens[place].word in _SMALL or tokens[place].word == "=" or (tokens[place].word in _NOUNS and place < at - 1)):
            place -= 1
        if place < 0:
            continue
        says = tokens[place].word in _SAYS and place > 0
        if says or found:  # `the lead says 5 m, the sounder 7 m`
            who = _name(tokens, place - 1 if says else place)
            if who in _WITNESSES or (tokens[place].word in _SPEAKS and tokens[place - 1].named):
                found.append(Told(who, at, token.mention))
    return found


_BY = frozenset("by on in from per to".split())
_BETWEEN = frozenset(
    "out deep gone long aboard off away of water wide the my our his her their a an hand own old mate bathroom fish spring harbour".split()
)


def _by_whom(tokens: tuple[Token, ...] | list[Token], at: int) -> str:
    """Return by what a figure is told that stands before it: `14 kg on the shank`, `1:16 by the mate's pacing`, `10 ft, the owner told me`."""
    words = [token.word for token in tokens[at + 1 : at + 9]]
    for near, (word, behind) in enumerate(itertools.pairwise(words)):
        if (
            word in _PEOPLE
            and word != "i"
            and behind in ("told", "says", "said", "tells")
            and words[near + 2 : near + 3] in (["me"], ["us"], [","], ["."])
        ):
            return word if "," in words[:near] and not any(one[0] == "<" for one in words[:near]) else ""
    by = False
    for place in range(at + 1, min(len(tokens), at + 7)):
        word = tokens[place].word
        if by and word in _WITNESSES and not (place + 1 < len(tokens) and tokens[place + 1].word in _INSTRUMENTS):
            return word
        if word in _BY or (word == "according" and not by):
            by = True
        elif word not in _BETWEEN and not (by and tokens[place].mention is None and word.isalpha() and tokens[place - 1].word not in _BY):
            return ""
    return ""


def _name(tokens: tuple[Token, ...] | list[Token], at: int) -> str:
    """Return the witness at a place; a lead line is the lead, an echo sounder the sounder."""
    if tokens[at].word == "and":  # `my wife counted the marks and makes it 36 m`
        begin = max((place for place in range(at) if tokens[place].word in STOPS or tokens[place].word == ","), default=-1)
        return next((token.word for token in tokens[begin + 1 : at] if token.word in _PEOPLE), "and")
    head = at
    while head > 0 and (tokens[head].named or tokens[head].word == "of"):
        head -= 1
    if head < at and tokens[head].word in _PEOPLE:  # `the skipper of Halla Nord`
        return tokens[head].word
    return "lead" if tokens[at].word == "line" and at and tokens[at - 1].word == "lead" else tokens[at].word


_TRUST = frozenset("trust believe prefer".split())


def believed(tokens: list[Token], dropped: list[Mention], *, held: frozenset[str]) -> list[Token]:
    """Leave out what the others tell where the skipper says whom he goes by: `the book says 7:1, the mate 4:1, and we go by the mate`."""
    witnesses = told(tokens) if len(held & _WITNESSES) > 1 else []
    pairs = [(one, other) for one, other in itertools.combinations(witnesses, 2) if one.value.kind == other.value.kind and one.who != other.who]
    if not pairs:
        return tokens
    out: set[int] = set()
    for one, other in pairs:
        chosen = _chosen(tokens, {one.who, other.who}, after=max(one.at, other.at))
        if chosen is not None:
            out.add(other.at if chosen == one.who else one.at)
    return without_figures(tokens, out, dropped)


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
    """Two figures for one thing, each told by another witness or instrument, and none chosen: which one holds is asked."""
    tokens = reading.sentence.tokens
    for at, (first, joint, second) in enumerate(zip(tokens, tokens[1:], tokens[2:], strict=False) if "or" in reading.sentence.words else ()):
        if joint.word == "or" and first.mention is not None and second.mention is not None and first.word == second.word:
            _doubted(reading, first.mention, Told("", at + 2, second.mention))  # `35 m or 50 m of chain`
    some = len(reading.sentence.words & _WITNESSES) > 1 or any(token.named for token in tokens)
    heard = told(tokens) if some else []
    if len({one.who for one in heard}) < 2:
        return
    if "depth" in reading.question.inputs and "reads_from" not in reading.question.inputs:
        _of_depth(reading, heard)
    for one, other in itertools.combinations(heard, 2):
        if one.who != other.who and one.value.kind == other.value.kind and one.value.amount != other.value.amount and _together(reading, one, other):
            _doubted(reading, one.value, other)


def _together(reading: Reading, one: Told, other: Told) -> bool:
    """Say whether two figures stand in one sentence, or in two that follow."""
    words = [token.word for token in reading.sentence.tokens[one.at + 1 : other.at]]
    return len(words) <= _FAR and sum(word in STOPS for word in words) < 2 and not any(word[0] == "<" for word in words)


_FAR = 18
_SOUND = frozenset("lead leadline sounder fishfinder finder echo sonar".split())
_MEASURES = {**dict.fromkeys(_SOUND, ("depth", "reading")), "counter": ("rode_out", "chain"), "scales": ("anchor_mass",), "scale": ("anchor_mass",)}


def _doubted(reading: Reading, one: Mention, later: Told) -> None:
    """Put two figures as rivals for the term of the first, where nothing names the second or both stand for nothing yet."""
    by_start = {start: term for term, (start, _) in reading.sources.items()}
    first, second = by_start.get(one.start), by_start.get(later.value.start)
    if (first is not None and first == second) or (second is not None and _named(reading.sentence.tokens, later.at)):
        return
    open_terms = open_for(reading, one, known=(), need="asked") if first is None and second is None else []
    term = first or second or (open_terms[0] if len(open_terms) == 1 else None)
    if term is None or term not in _MEASURES.get(later.who, (term,)):
        return
    if any(fit(term=TERMS[term], mention=mention) != "yes" for mention in (one, later.value)):
        return
    tokens = reading.sentence.tokens
    if term == "depth" and not all(_of_the_water(tokens, at) for at, token in enumerate(tokens) if token.mention in (one, later.value)):
        return
    if first is not None and second is not None:
        reading.asked.pop(second, None)
    starts = {one.start, later.value.start}
    reading.parts = {name: part for name, part in reading.parts.items() if part.start not in starts}
    reading.aside = [(mention, name) for mention, name in reading.aside if mention.start not in starts]
    for mention in (one, later.value):
        reading.put(term, as_given(term=TERMS[term], mention=mention))


def _named(tokens: tuple[Token, ...], at: int) -> bool:
    """Say whether a word beside a figure, other than who tells it, says what it is."""
    place = at - 1
    while place > 0 and tokens[place].word in _SMALL:
        place -= 1
    before = tokens[place].word
    behind = tokens[at + 1].word if at + 1 < len(tokens) else "."
    told_only = before in _SAYS or before in _WITNESSES or not before.isalpha() or before in ("and", "but", "while")
    return not (told_only and (not behind.isalpha() or behind in _BY or behind in ("and", "but", "so")))


def _of_depth(reading: Reading, witnesses: list[Told]) -> None:
    """Put what two tell of the water as rivals for the depth."""
    heard = [one for one in witnesses if one.value.kind == "length" and _of_the_water(reading.sentence.tokens, one.at)]
    if len({one.who for one in heard}) < 2:
        return
    starts = {one.value.start for one in heard}
    for term in [name for name, (start, _) in reading.sources.items() if start in starts and name not in reading.rivals]:
        reading.asked.pop(term, None)
    reading.parts = {name: one for name, one in reading.parts.items() if one.start not in starts}
    reading.aside = [(one, term) for one, term in reading.aside if one.start not in starts]
    for one in heard:
        assert isinstance(one.value.amount, Amount)
        reading.put("depth", one.value.amount)


_NO_WATER = frozenset("top out rode chain rope warp aboard roller bow another more rise fall tide off away long".split())


def _of_the_water(tokens: tuple[Token, ...], at: int) -> bool:
    """Say whether nothing beside a figure makes it a length of something else."""
    end = at + 1
    while end < len(tokens) and tokens[end].word not in STOPS and tokens[end].word not in (",", "and", "but", "while", "<length>", "so"):
        end += 1
    words = {token.word for token in tokens[at + 1 : end]} | {token.word for token in tokens[max(0, at - 5) : at]}
    return not (_NO_WATER - {"off"} if "lead" in words else _NO_WATER) & words  # `12 m off the lead`
