"""Which of several likely questions the figures of a text speak for."""

from functools import cache

from anchorcalc.catalogue import question as question_named
from anchorcalc.declare import Question
from anchorcalc.reader.intent import Weighed
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.slots import roles
from anchorcalc.vocabulary import TERMS

_CLOSE, _TAKEN, _WANTING, _FOREIGN, _MOST = 7.0, 1.0, 1.0, 0.7, 4.0
_ALIKE = {"chain": ("rode_out", "rode_aboard"), "line": ("rode_out", "rode_aboard"), "rode_out": ("rode_aboard",), "rode_aboard": ("rode_out",), "load": ("pull",), "pull": ("load",),
          "distance": ("distance_off",), "distance_off": ("distance",), "scope": ("least_scope",), "least_scope": ("scope",), "reading": ("depth",), "pull_angle": ("angle",), "angle": ("pull_angle", "spread")}
_BESIDE = frozenset(("boat_length", "beam", "draught", "wind"))  # said of a boat whatever is asked


@cache
def _wanted(question: Question) -> tuple[frozenset[str], ...]:
    """Return the groups of inputs of which a question wants one each."""
    groups = [frozenset((name,)) for name, one in question.inputs.items() if one.need == "asked"]
    groups += [frozenset(name for group in question.one_of for name in group)] if question.one_of and not question.one_of_may else []
    given = {one.gives: frozenset((one.gives, *one.needs)) for one in question.derives}
    return tuple(given.get(next(iter(group)), group) if len(group) == 1 else group for group in groups)


def ranked(weighed: list[Weighed], tokens: tuple[Token, ...]) -> list[Weighed]:
    """Return the questions with those that the figures speak for first, where the words leave several close together."""
    close = [one for one in weighed if weighed[0].weight - one.weight <= _CLOSE]
    if len(close) < 2:
        return weighed
    said = {role.term for role in roles(tokens=tokens, takes=frozenset(TERMS)) if role.term is not None and role.fit != "no"}
    said |= {"fixes", "anchor_at"} if any(token.word == "<position>" for token in tokens) else set()
    scored = [one._replace(weight=one.weight + _spoken_for(question_named(one.question), said)) for one in close]
    return sorted(scored, key=lambda one: (-one.weight, one.question)) + weighed[len(close) :]


def _spoken_for(question: Question, said: set[str]) -> float:
    takes = set(question.inputs)
    held = said & takes | {other for name in said for other in _ALIKE.get(name, ()) if other in takes}
    wanting = sum(not group & held for group in _wanted(question))
    foreign = sum(name not in takes and name not in _BESIDE and not takes & set(_ALIKE.get(name, ())) for name in said)
    return min(_TAKEN * len(held & set().union(*_wanted(question), ())), _MOST) - min(_WANTING * wanting, _MOST) - min(_FOREIGN * foreign, _MOST)
