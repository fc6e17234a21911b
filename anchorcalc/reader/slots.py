"""Which quantity stands for which term: from the words beside it, all quantities of a text together."""

from collections.abc import Mapping
from functools import cache
from operator import attrgetter

from anchorcalc.reader.between import ALL_TERMS
from anchorcalc.reader.fits import Fit, fit, is_size
from anchorcalc.reader.last import kept_for_last
from anchorcalc.reader.mention import Mention, Part
from anchorcalc.reader.patterns import table
from anchorcalc.reader.role import Role
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.together import agree, best_path
from anchorcalc.reader.words import FILLERS, PARTING, STOPS
from anchorcalc.units.kinds import RATIO, Amount

REACH, STEPS = 6.0, 9
ARTICLES = frozenset("the a an my our her his their your its this that these some".split())
_PREPOSITIONS = frozenset("in at from for off on over by into onto against".split())
_PAST_A_COMMA = 3.0
_NOUN, _NAME, _FOREIGN, _WRONG = 5.0, 9.0, 2.0, 2.5


class Spoken(Part, frozen=True, gc=False):
    """A phrase of the cue table in a text: its tokens, and what it makes of a quantity before or behind it."""

    start: int
    end: int
    behind: tuple[tuple[str, float], ...]  # terms of a quantity behind the phrase
    before: tuple[tuple[str, float], ...]


# The term that a phrase makes of a quantity, how strongly, how far off the phrase stands, where, and whether the quantity can be that.
Reached = tuple[str, float, float, tuple[int, int], Fit]


class Phrases:
    """The phrases that begin with the same words: what they make of a quantity behind or before them, and how they go on."""

    __slots__ = ("before", "behind", "further", "whole")

    def __init__(self) -> None:
        self.further = _NOT_FURTHER
        self.whole = False
        self.behind: tuple[tuple[str, float], ...] = ()
        self.before: tuple[tuple[str, float], ...] = ()


_NOT_FURTHER: dict[str, Phrases] = {}  # most words are the last of their phrase: this one stays empty


@cache
def _phrases() -> dict[str, Phrases]:
    """Return the phrases word by word.

    A term without a table is known by its nouns; each term also by its own name, which no other phrase outweighs.
    """
    cues = table("cues")
    held: dict[tuple[str, ...], tuple[dict[str, float], dict[str, float]]] = {}
    for name, term in ALL_TERMS.items():
        sides = cues[name] if name in cues else {"beside": {str(_NOUN): term.nouns}}
        if "_" in name:
            _hold(held, name, name.replace("_", " "), "beside", _NAME + (name.startswith("other_")))  # `other rode out` is no rode out
        for side, weights in sides.items():
            for weight, phrases in weights.items():
                for phrase in phrases:
                    _hold(held, name, phrase, side, float(weight))
    top = Phrases()
    for words, (behind, before) in held.items():
        here = top
        for word in words:
            here.further = here.further or {}
            here = here.further.setdefault(word, Phrases())
        here.whole, here.behind, here.before = True, tuple(behind.items()), tuple(before.items())
    return top.further


def _hold(held: dict[tuple[str, ...], tuple[dict[str, float], dict[str, float]]], name: str, phrase: str, side: str, weight: float) -> None:
    words = tuple(word for word in phrase.split() if word not in ARTICLES)
    behind, before = held.setdefault(words, ({}, {}))
    if side in ("before", "beside"):
        behind[name] = max(weight, behind.get(name, 0.0))
    if side in ("after", "beside"):
        before[name] = max(weight, before.get(name, 0.0))


def spoken(tokens: tuple[Token, ...]) -> list[Spoken]:
    """Return every phrase of the cue table that a text holds; articles are passed over."""
    phrases = _phrases()
    index = [at for at, token in enumerate(tokens) if token.word not in ARTICLES]
    words = [*[tokens[at].word for at in index], ""]  # no phrase goes on with the last
    found: list[Spoken] = []
    for place, word in enumerate(words):
        here, end = phrases.get(word), place
        longest_first: list[Spoken] = []
        while here is not None:
            end += 1
            if here.whole:
                # `6 m here: how much chain` does not call the 6 m chain, nor `depth=8m bow_height=1.1m` a height of 8 m
                asked_for = (place > 0 and words[place - 1] in _ASKED_FOR) or words[end] == "="
                longest_first.insert(0, Spoken(index[place], index[end - 1] + 1, here.behind, () if asked_for else here.before))
            here = here.further.get(words[end])
        found += longest_first
    return found


_ASKED_FOR = frozenset(("much", "what", "which", "no", "without"))


def _word_costs(*, backward: bool) -> dict[str, float]:
    """Return how far each word and sign parts a phrase from a quantity, where that is not the usual."""
    costs = (
        dict.fromkeys(PARTING, 6.0) | dict.fromkeys(STOPS, 99.0) | dict.fromkeys((",", "/"), 3.0 if backward else 7.0) | dict.fromkeys(FILLERS, 0.2)
    )
    return costs | dict.fromkeys(_PREPOSITIONS, 5.0 if backward else 1.5) | dict.fromkeys(ARTICLES, 0.8 if backward else 0.2)


_BACKWARD, _ONWARD, _A_WORD = _word_costs(backward=True), _word_costs(backward=False), 1.2


def _parts(other: Mention, *, mine: Mention) -> float:
    """Return how far another quantity parts a phrase from a quantity."""
    if other.kind in ("ordinal", "date", "channel"):
        return 1.0
    if "clock" in (other.kind, mine.kind) and other.kind != mine.kind:
        return 0.6
    if is_size(other) != is_size(mine):
        return 0.5 if is_size(other) else 1.0
    return 6.0


def _reached(tokens: tuple[Token, ...], at: int, *, starts: dict[int, list[Spoken]], ends: dict[int, list[Spoken]]) -> list[Reached]:
    """Return what the phrases around one quantity make of it, those before it first."""
    mine = tokens[at].mention
    assert mine is not None
    found: list[Reached] = []
    small = is_size(mine)
    for step, costs, beside in ((-1, _BACKWARD, ends), (1, _ONWARD, starts)):
        cost, place = 0.0, at
        for _ in range(STEPS):
            for one in beside.get(place if step < 0 else place + 1, ()):
                cue = (one.start, one.end)
                for said, weight in one.behind if step < 0 else one.before:
                    if weight - cost > _LEAST and ((how := fit(term=ALL_TERMS[said], mention=mine)) != "never" or said in _ELSEWHERE):
                        found.append((said, weight, cost, cue, how))
            place += step
            if not 0 <= place < len(tokens):
                break
            token = tokens[place]
            cost += costs.get(token.word, _A_WORD) if token.mention is None else _parts(token.mention, mine=mine)
            if step < 0 and token.mention is not None and tokens[place + 1].word in (",", "/") and not small:
                cost += _PAST_A_COMMA
            if cost > REACH:
                break
    return found


def candidates(*, tokens: tuple[Token, ...], at: int, reached: list[Reached], takes: frozenset[str]) -> list[Role]:
    """Return what the words around make of one quantity, the strongest first."""
    mention = tokens[at].mention
    assert mention is not None
    best: dict[str, Role] = {}
    if mention.kind == "length" and mention.text.lower().endswith("foot"):
        _keep(best, _beside("boat_length", 5.0, mention, at), "", mention, at, takes)
    if "adjective" in mention.flags and mention.text.lower().rstrip("s").endswith("footer"):
        _keep(best, _beside("boat_length", 8.0, mention, at), "", mention, at, takes)
    for one in reached:
        said, weight, cost, cue, _ = one
        name = _here(said, takes) if said in _ELSEWHERE else said
        if name not in best or weight - cost > best[name].score:
            if name == said:
                _keep(best, one, "", mention, at, takes)
            else:
                _keep(best, (name, weight, cost, cue, fit(term=ALL_TERMS[name], mention=mention)), said, mention, at, takes)
    _by_neighbours(best, tokens=tokens, at=at, takes=takes)
    if not best:
        return []
    own = max([role.score for name, role in best.items() if name in takes and role.fit != "no"], default=0.0)
    found = [role for name, role in best.items() if (name in takes or role.score > own) and (own < _NOUN or role.fit != "no")]
    return sorted(found, key=_SCORE, reverse=True)[:8]


_SCORE = attrgetter("score")


def _by_neighbours(best: dict[str, Role], *, tokens: tuple[Token, ...], at: int, takes: frozenset[str]) -> None:
    """What a quantity is by the quantities beside it: `30 m in 4 m`, `40 fathoms of 5/16`, `5 m at 15:00`."""
    mention = tokens[at].mention
    assert mention is not None
    before, behind = tokens[at - 1].word if at >= 2 else "", tokens[at + 1].word if at + 1 < len(tokens) else ""
    if before not in _BEFORE and behind not in _BEHIND:
        return
    words = [token.word for token in tokens[at + 1 : at + 4]]
    if before == "of" and is_size(mention) and tokens[at - 2].word == "<length>" and (not words or words[0] not in _ROPES):
        _keep(best, _beside("chain_size", 5.0, mention, at), "", mention, at, takes)
    if mention.kind == "length" and before == "transducer" and words[:1] in (["down"], ["deep"]):
        _keep(best, _beside("transducer_depth", _NAME, mention, at), "", mention, at, takes)
    if mention.kind == "length" and tokens[at - 1].word == "keel" and at and words[:1] == ["deep"]:
        _keep(best, _beside("draught", _NAME, mention, at), "", mention, at, takes)
    if not _TIDE.isdisjoint({before, *(token.word for token in tokens[max(0, at - 5) : at - 1])}) and words[:1] in (["up"], ["down"]):
        told = "height_now" if words[1:2] in (["now"], ["already"], ["so"]) else _BY_TIDE[words[0]]
        _keep(best, _beside(told, 8.0, mention, at), "", mention, at, takes)
    if before == "is" and tokens[at - 2].word == "<number>":
        _keep(best, _beside("boat_length", 4.0, mention, at), "", mention, at, takes)
    if mention.kind != "length" or len(words) < 2 or words[0] not in _BETWEEN_TWO or (other := tokens[at + 2].mention) is None:
        return
    found, weight = "", 0.0
    if words[0] in ("in", "over") and other.kind == "length" and not is_size(other) and "rode_out" in takes:
        found, weight = "rode_out", 5.0
    elif words[0] == "of" and is_size(other) and not is_size(mention) and (len(words) < 3 or words[2] not in _ROPES):
        found, weight = "chain", 5.0
    elif words[0] == "at" and other.kind == "clock":
        found, weight = "depth", 5.5
    if found:
        _keep(best, _beside(_here(found, takes), weight, mention, at), "", mention, at, takes)


_TIDE = frozenset(("tide", "tides"))
_BY_TIDE = {"up": "tide_rise", "down": "tide_fall"}  # `tide 1 m up, 2 m down`
_BETWEEN_TWO = frozenset(("in", "over", "of", "at"))
_BEFORE, _BEHIND = frozenset(("of", "is")), _BETWEEN_TWO | {"deep", *_BY_TIDE}  # without one of these beside it nothing is told so
_ROPES = frozenset(("rope", "line", "nylon", "warp", "three", "polyester", "twist", "braid", "plait", "chain", "links"))


def _here(name: str, takes: frozenset[str]) -> str:
    """Return the term that a word for chain or rope means in a question that takes only the rode as a whole."""
    if name in _ROPE and name not in takes:
        return next((one for one in ("rode_out", "rode_aboard") if one in takes), name)
    if name == "pull_angle" and name not in takes and "angle" in takes:
        return "angle"
    return "distance_off" if name == "distance" and name not in takes and "distance_off" in takes else name


_ROPE = frozenset(("chain", "line"))
_ELSEWHERE = _ROPE | {"pull_angle", "distance"}  # what means another term where a question does not take it


def _beside(name: str, weight: float, mention: Mention, at: int) -> Reached:
    """Return what a quantity is by no phrase but what stands right beside it."""
    return name, weight, 0.0, (at, at), fit(term=ALL_TERMS[name], mention=mention)


def _keep(best: dict[str, Role], one: Reached, alias: str, mention: Mention, at: int, takes: frozenset[str]) -> None:
    """Keep what a phrase makes of a quantity, where nothing speaks more strongly for the same term."""
    name, weight, cost, cue, how = one
    score = weight - cost - (0.0 if name in takes else _FOREIGN)
    if how not in _RIGHT:
        if how == "never" or name not in takes or cost > _TIGHT or weight < _PLAIN or any(own in takes for own in _OWN_KIND.get(mention.kind, ())):
            return
        score -= _WRONG
    if score <= (_LEAST if name in takes else _LEAST_FOREIGN) or (name in best and score <= best[name].score):
        return
    if weight >= _PLAIN or ALL_TERMS[name].kind is not RATIO or _a_ratio(mention):
        best[name] = Role(mention, at, name, score, how, cue, alias)


_RIGHT = frozenset(("yes", "bare"))


def _a_ratio(mention: Mention) -> bool:
    """Say whether a number or a ratio can be a scope that is not plainly called one."""
    assert isinstance(mention.amount, Amount)
    return 2.0 <= mention.amount.value <= _MOST_SCOPE if mention.kind == "number" else mention.amount.value >= 1.0


# A wrong dimension counts only right beside its word, and never where the question takes a term of the quantity's own kind.
_TIGHT, _PLAIN, _LEAST, _LEAST_FOREIGN, _MOST_SCOPE = 1.0, 6.0, 1.0, 2.5, 15.0
_OWN_KIND = {
    "speed": ("wind", "current", "drift"),
    "power": ("engine_power",),
    "angle": ("spread", "angle", "pull_angle"),
    "force": ("load", "pull"),
    "mass": ("anchor_mass", "load", "pull"),
}


def cued(tokens: tuple[Token, ...], *, takes: frozenset[str], without: frozenset[int] = frozenset()) -> dict[int, list[Role]]:
    """Return what the cue tables make of every quantity, by its place, the strongest first; the tokens `without` are taken already."""
    return {at: candidates(tokens=tokens, at=at, reached=reached, takes=takes) for at, _, reached in _around(tokens) if at not in without}


def roles(tokens: tuple[Token, ...], *, known: Mapping[int, list[Role]]) -> list[Role]:
    """Return every quantity with the term it stands for by the cue tables, so that all together fit best and no phrase serves two."""
    nothing = {at: Role(mention, at, None, 0.0) for at in known if (mention := tokens[at].mention) is not None}
    states = [[*options, nothing[at]] for at, options in known.items()]
    strongest = [options[0] for options in states]
    return strongest if agree(strongest) else best_path(states)


@kept_for_last  # which question it is and what fills it go by the same words
def _around(tokens: tuple[Token, ...]) -> list[tuple[int, Mention, list[Reached]]]:
    """Return every quantity of a text, where it stands, and what the phrases around make of it."""
    starts: dict[int, list[Spoken]] = {}
    ends: dict[int, list[Spoken]] = {}
    for one in spoken(tokens):
        starts.setdefault(one.start, []).append(one)
        ends.setdefault(one.end, []).append(one)
    return [(at, token.mention, _reached(tokens, at, starts=starts, ends=ends)) for at, token in enumerate(tokens) if token.mention is not None]
