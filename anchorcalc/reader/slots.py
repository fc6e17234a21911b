"""Which quantity stands for which term: from the words beside it, all quantities of a text together."""

import itertools
from functools import cache
from typing import NamedTuple

from anchorcalc.reader.between import ALL_TERMS
from anchorcalc.reader.fits import Fit, fit, is_size
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.patterns import table
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.words import FILLERS, PARTING, STOPS
from anchorcalc.units.kinds import RATIO

REACH, STEPS = 6.0, 9
ARTICLES = frozenset("the a an my our her his their your its this that these some".split())
_PREPOSITIONS = frozenset("in at from for off on over by into onto against".split())
_PAST_A_COMMA = 3.0
_NOUN, _NAME, _FOREIGN, _WRONG = 5.0, 9.0, 2.0, 2.5


class Spoken(NamedTuple):
    """A phrase of the cue table in a text: its tokens, and what it makes of a quantity before or behind it."""

    start: int
    end: int
    behind: tuple[tuple[str, float], ...]  # terms of a quantity behind the phrase
    before: tuple[tuple[str, float], ...]


class Role(NamedTuple):
    """A quantity and the term that it was taken for, None where no word says."""

    mention: Mention
    at: int
    term: str | None
    score: float
    fit: Fit = "never"
    cue: tuple[int, int] = (-1, -1)
    alias: str = ""


Said = tuple[tuple[tuple[str, float], ...], tuple[tuple[str, float], ...]]
Phrases = dict[str, tuple[tuple[int, ...], dict[tuple[str, ...], Said]]]


@cache
def _phrases() -> Phrases:
    """Return the phrases by their first word: how many words they have, and by their words the terms of what follows and of what stands before.

    A term without a table is known by its nouns; each term also by its own name, which no other phrase outweighs.
    """
    cues = table("cues")
    held: dict[tuple[str, ...], tuple[dict[str, float], dict[str, float]]] = {}
    for name, term in ALL_TERMS.items():
        sides = cues[name] if name in cues else {"beside": {str(_NOUN): term.nouns}}
        if "_" in name:
            _hold(held, name, name.replace("_", " "), "beside", _NAME)
        for side, weights in sides.items():
            for weight, phrases in weights.items():
                for phrase in phrases:
                    _hold(held, name, phrase, side, float(weight))
    first: dict[str, dict[tuple[str, ...], Said]] = {}
    for words, (behind, before) in held.items():
        first.setdefault(words[0], {})[words] = (tuple(behind.items()), tuple(before.items()))
    return {word: (tuple(sorted({len(words) for words in said}, reverse=True)), said) for word, said in first.items()}


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
    words = tuple(tokens[at].word for at in index)
    found: list[Spoken] = []
    for place, word in enumerate(words):
        if word not in phrases:
            continue
        lengths, said = phrases[word]
        asked_for = place > 0 and words[place - 1] in _ASKED_FOR  # `6 m here: how much chain` does not call the 6 m chain
        for length in lengths:
            one = said.get(words[place : place + length])
            if one is not None and place + length <= len(words):
                found.append(Spoken(index[place], index[place + length - 1] + 1, one[0], () if asked_for else one[1]))
    return found


_ASKED_FOR = frozenset(("much", "what", "which"))


def _cost(token: Token, *, mine: Mention, backward: bool) -> float:
    """Return how far a token parts a phrase from a quantity."""
    word = token.word
    if token.mention is not None:
        if token.mention.kind in ("ordinal", "date", "channel"):
            return 1.0
        if "clock" in (token.mention.kind, mine.kind) and token.mention.kind != mine.kind:
            return 0.6
        if is_size(token.mention) != is_size(mine):
            return 0.5 if is_size(token.mention) else 1.0
        return 6.0
    if word in ARTICLES:
        return 0.8 if backward else 0.2
    if word in _PREPOSITIONS:
        return 5.0 if backward else 1.5
    if word in FILLERS:
        return 0.2
    if word == ",":
        return 3.0 if backward else 7.0
    if word in STOPS:
        return 99.0
    if word in PARTING:
        return 6.0
    return 1.2


def candidates(
    *, tokens: tuple[Token, ...], at: int, starts: dict[int, list[Spoken]], ends: dict[int, list[Spoken]], takes: frozenset[str]
) -> list[Role]:
    """Return what the words around make of one quantity, the strongest first."""
    mention = tokens[at].mention
    assert mention is not None
    best: dict[str, Role] = {}
    if mention.kind == "length" and mention.text.lower().endswith("foot"):
        _keep(best, name="boat_length", alias="", weight=5.0, cost=0.0, mention=mention, at=at, cue=(at, at), takes=takes)
    if "adjective" in mention.flags and mention.text.lower().rstrip("s").endswith("footer"):
        _keep(best, name="boat_length", alias="", weight=8.0, cost=0.0, mention=mention, at=at, cue=(at, at), takes=takes)
    for backward in (True, False):
        cost, place = 0.0, at
        for _ in range(STEPS):
            beside = ends.get(place, ()) if backward else starts.get(place + 1, ())
            for one in beside:
                for said, weight in one.behind if backward else one.before:
                    name = _here(said, takes)
                    _keep(
                        best,
                        name=name,
                        alias=said if name != said else "",
                        weight=weight,
                        cost=cost,
                        mention=mention,
                        at=at,
                        cue=(one.start, one.end),
                        takes=takes,
                    )
            place = place - 1 if backward else place + 1
            if not 0 <= place < len(tokens):
                break
            cost += _cost(tokens[place], mine=mention, backward=backward)
            if backward and tokens[place].mention is not None and tokens[place + 1].word == "," and not is_size(mention):
                cost += _PAST_A_COMMA
            if cost > REACH:
                break
    _by_neighbours(best, tokens=tokens, at=at, takes=takes)
    right = max((role.score for role in best.values() if role.term in takes and role.fit != "no"), default=0.0)
    if right >= _NOUN:
        best = {name: role for name, role in best.items() if role.fit != "no"}
    own = max((role.score for name, role in best.items() if name in takes and role.fit != "no"), default=0.0)
    return sorted((role for name, role in best.items() if name in takes or role.score > own), key=lambda role: -role.score)[:8]


def _by_neighbours(best: dict[str, Role], *, tokens: tuple[Token, ...], at: int, takes: frozenset[str]) -> None:
    """What a quantity is by the quantities beside it: `30 m in 4 m`, `40 fathoms of 5/16`, `5 m at 15:00`."""
    mention = tokens[at].mention
    assert mention is not None
    words = [token.word for token in tokens[at + 1 : at + 4]]
    other = tokens[at + 2].mention if at + 2 < len(tokens) else None
    if is_size(mention) and at >= 2 and tokens[at - 1].word == "of" and tokens[at - 2].word == "<length>" and (not words or words[0] not in _ROPES):
        _keep(best, name="chain_size", alias="", weight=5.0, cost=0.0, mention=mention, at=at, cue=(at, at), takes=takes)
    if at >= 2 and tokens[at - 1].word == "is" and tokens[at - 2].word == "<number>":
        _keep(best, name="boat_length", alias="", weight=4.0, cost=0.0, mention=mention, at=at, cue=(at, at), takes=takes)
    if mention.kind != "length" or other is None or len(words) < 2:
        return
    found, weight = "", 0.0
    if words[0] in ("in", "over") and other.kind == "length" and not is_size(other) and "rode_out" in takes:
        found, weight = "rode_out", 5.0
    elif words[0] == "of" and is_size(other) and not is_size(mention) and (len(words) < 3 or words[2] not in _ROPES):
        found, weight = "chain", 5.0
    elif words[0] == "at" and other.kind == "clock":
        found, weight = "depth", 5.5
    if found:
        _keep(best, name=_here(found, takes), alias="", weight=weight, cost=0.0, mention=mention, at=at, cue=(at, at), takes=takes)


_ROPES = frozenset(("rope", "line", "nylon", "warp", "three", "polyester", "twist", "braid", "plait", "chain", "links"))


def _here(name: str, takes: frozenset[str]) -> str:
    """Return the term that a word for chain or rope means in a question that takes only the rode as a whole."""
    if name in _ROPE and name not in takes:
        return next((one for one in ("rode_out", "rode_aboard") if one in takes), name)
    if name == "pull_angle" and name not in takes and "angle" in takes:
        return "angle"
    return "distance_off" if name == "distance" and name not in takes and "distance_off" in takes else name


_ROPE = frozenset(("chain", "line"))


def _keep(
    best: dict[str, Role],
    *,
    name: str,
    alias: str,
    weight: float,
    cost: float,
    mention: Mention,
    at: int,
    cue: tuple[int, int],
    takes: frozenset[str],
) -> None:
    most = weight - cost  # the score is this or less: what cannot win needs no further look
    if most <= _LEAST or (name in best and most <= best[name].score):
        return
    how = fit(term=ALL_TERMS[name], mention=mention)
    if how == "never" or (
        how == "no" and (name not in takes or cost > _TIGHT or weight < _PLAIN or any(name in takes for name in _OWN_KIND.get(mention.kind, ())))
    ):
        return
    score = weight - cost - (_WRONG if how == "no" else 0.0) - (0.0 if name in takes else _FOREIGN)
    if mention.kind == "number" and weight < _PLAIN and ALL_TERMS[name].kind is RATIO and not 2.0 <= mention.amount.value <= _MOST_SCOPE:  # type: ignore[union-attr]
        return
    if mention.kind == "ratio" and weight < _PLAIN and ALL_TERMS[name].kind is RATIO and mention.amount.value < 1.0:  # type: ignore[union-attr]
        return
    if score > (_LEAST if name in takes else _LEAST_FOREIGN) and (name not in best or score > best[name].score):
        best[name] = Role(mention, at, name, score, how, cue, alias)


# A wrong dimension counts only right beside its word, and never where the question takes a term of the quantity's own kind.
_TIGHT, _PLAIN, _LEAST, _LEAST_FOREIGN, _MOST_SCOPE = 1.0, 6.0, 1.0, 2.5, 15.0
_OWN_KIND = {"speed": ("wind", "current", "drift"), "power": ("engine_power",), "angle": ("spread", "angle", "pull_angle"), "force": ("load", "pull")}


def roles(*, tokens: tuple[Token, ...], takes: frozenset[str], without: frozenset[int] = frozenset()) -> list[Role]:
    """Return every quantity of a text with the term it stands for, so that all together fit best and no phrase serves two.

    The tokens `without` are taken already.
    """
    starts: dict[int, list[Spoken]] = {}
    ends: dict[int, list[Spoken]] = {}
    for one in spoken(tokens):
        starts.setdefault(one.start, []).append(one)
        ends.setdefault(one.end, []).append(one)
    states = [
        [*candidates(tokens=tokens, at=at, starts=starts, ends=ends, takes=takes), Role(token.mention, at, None, 0.0)]
        for at, token in enumerate(tokens)
        if token.mention is not None and at not in without
    ]
    return _best_path(states)


def _best_path(states: list[list[Role]]) -> list[Role]:
    if not states:
        return []
    totals = [one.score for one in states[0]]
    came: list[list[int]] = []
    for before, now in itertools.pairwise(states):
        back, sums = [], []
        for role in now:
            options = [total + role.score - _clash(earlier, role) for total, earlier in zip(totals, before, strict=True)]
            place = max(range(len(options)), key=options.__getitem__)
            back.append(place)
            sums.append(options[place])
        came.append(back)
        totals = sums
    place = max(range(len(totals)), key=totals.__getitem__)
    chosen = [states[-1][place]]
    for back, earlier in zip(reversed(came), reversed(states[:-1]), strict=True):
        place = back[place]
        chosen.append(earlier[place])
    return chosen[::-1]


def _clash(one: Role, other: Role) -> float:
    """Return what it costs that two neighbours lean on one phrase, or stand for one term with two values."""
    if one.term is None or other.term is None:
        return 0.0
    if 0 <= one.mention.group == other.mention.group:
        return 0.0
    if "clock" in (one.mention.kind, other.mention.kind) or is_size(one.mention) != is_size(other.mention):
        return 0.0
    shared = one.cue[0] < other.cue[1] and other.cue[0] < one.cue[1]
    same = one.term == other.term and one.mention.amount != other.mention.amount
    return (max(one.score, other.score) + 1.0 if shared else 0.0) + (1.5 if same else 0.0)
