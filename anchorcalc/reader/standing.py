"""What each quantity of a text stands for: the cue tables and the weights counted in the corpus, taken together."""

import math

from anchorcalc.declare import Question
from anchorcalc.reader.between import ALL_TERMS
from anchorcalc.reader.fits import fit
from anchorcalc.reader.likely import KINDS, NO_INPUT, Cue, likely
from anchorcalc.reader.role import Role
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.slots import cued, roles
from anchorcalc.reader.together import best_path
from anchorcalc.units.kinds import SIZE

_UNLIKELY, _BY_RULE = -5.0, 0.2  # the logarithm of a share that is not looked at; how much a point of the cue tables adds to a logarithm
_FAR_BEHIND = 0.7  # so far behind (in logarithm) a term is not taken, however well it goes with the others: two values for one term are asked back
_TOLD, _NO_DOUBT = 4.0, math.log(0.97)  # a cue that is not passed over, unless the quantity is no input beyond doubt
_LIKELY = math.log(0.45)
_NAMES_ANOTHER, _OPPOSITE = 6.0, {"tide_fall": "tide_rise", "tide_rise": "tide_fall"}  # `the tide falls 2 m` is no rise
_BY_NAME, _PLAINLY = 9.8, 8.0  # a term called by its whole name; what only makes others, plainly called so
_APART = frozenset(("charted", "from_boat"))  # no depth, and no distance, whatever is said around them
_SURE = 7.0  # the score of a role that no cue names


def standing(
    *, tokens: tuple[Token, ...], takes: frozenset[str], question: Question, without: frozenset[int] = frozenset()
) -> tuple[list[Role], dict[int, dict[str, float]]]:
    """Return every quantity of a text with the term it stands for in a question, so that all together are likeliest.

    The other is the logarithm of the share that each term has, by where a quantity starts.
    """
    known = cued(tokens, takes=takes, without=without)
    by_rule = roles(tokens, known=known)
    if not any(token.mention is None and token.word.isalpha() for token in tokens):
        return by_rule, {}  # without a word nothing tells
    wanted = frozenset(name for name, one in question.inputs.items() if one.need == "asked")
    shares = {role.at: _shares(role, known[role.at], tokens=tokens, takes=takes, question=question.name) for role in by_rule if _weighed(role)}
    states = [_options(role, known[role.at], shares.get(role.at), takes=takes) for role in by_rule]
    cues = [known[role.at] for role in by_rule]
    best = [_sure(*each, wanted) for each in zip(by_rule, best_path(states), states, cues, strict=True)]
    found = [_settled(*each, takes) for each in zip(by_rule, best, cues, strict=True)]
    return found, {role.mention.start: shares[role.at] for role in by_rule if role.at in shares}


def cues_of(known: list[Role], takes: frozenset[str]) -> list[Cue]:
    """Return what the cue tables make of a quantity as the weights know it."""
    return [(one.term, one.score, one.fit, one.term in takes) for one in known]


def _weighed(role: Role) -> bool:
    """Say whether the weights know of such a quantity: not of clock times, lists, sizes without a unit, and what is plainly of a wrong dimension."""
    bare_size = role.fit == "bare" and role.term is not None and ALL_TERMS[role.term].kind is SIZE
    between = role.term in _APART and role.score >= _PLAINLY
    wrong = role.fit == "no" and role.term is not None
    return role.mention.kind in KINDS and role.mention.group < 0 and not (wrong or bare_size or between) and role.score < _BY_NAME


def _shares(role: Role, known: list[Role], *, tokens: tuple[Token, ...], takes: frozenset[str], question: str) -> dict[str, float]:
    return likely(tokens, role.at, question=question, cues=cues_of(known, takes), takes=takes)


def _options(role: Role, known: list[Role], logs: dict[str, float] | None, *, takes: frozenset[str]) -> list[Role]:
    """Return what a quantity can be, each scored by the logarithm of its share."""
    mention = role.mention
    if logs is None:
        return [role._replace(score=0.0)]
    by_term = {one.term or "": one for one in known if one.fit != "no" and one.term in takes}
    told = by_term.get(role.term or "")
    sure = told is not None and told.score >= _TOLD and logs[NO_INPUT] < _NO_DOUBT
    found = [] if sure else [Role(mention, role.at, None, logs[NO_INPUT])]
    called = told is not None and told.fit == "bare" and told.score >= _PLAINLY  # a number that a phrase plainly calls something is nothing else
    for term, log in logs.items():
        if term == NO_INPUT or ((called or log < _UNLIKELY) and term not in by_term):
            continue
        cue = by_term.get(term)
        how = cue.fit if cue is not None else fit(term=ALL_TERMS[term], mention=mention)
        if how in ("yes", "bare"):
            base = cue if cue is not None else Role(mention, role.at, term, 0.0, how)
            found.append(Role(mention, role.at, term, log + _BY_RULE * base.score, how, base.cue, base.alias))
    return found or [role._replace(score=0.0)]  # what the weights never met stays what its words make it


def _sure(by_rule: Role, chosen: Role, options: list[Role], known: list[Role], wanted: frozenset[str]) -> Role:
    """Return the role that was chosen, or the likeliest; none where hardly a word says that it is an input which the question can do without."""
    if chosen.term == by_rule.term and by_rule.score >= _TOLD:
        return chosen
    if by_rule.term == "unwanted" and by_rule.score >= _NAMES_ANOTHER and chosen.term in _OPPOSITE:
        return Role(chosen.mention, chosen.at, None, 0.0)  # a range of tide is no rise yet
    likeliest = max(options, key=lambda one: one.score)
    chosen = likeliest if chosen.score < likeliest.score - _FAR_BEHIND else chosen
    told = any(one.term == chosen.term and one.score >= _TOLD for one in known)
    opposite = by_rule.score >= _NAMES_ANOTHER and _OPPOSITE.get(by_rule.term or "") == chosen.term
    if chosen.term is None or chosen.term in wanted or told or (chosen.score >= _LIKELY and not opposite):
        return chosen
    return Role(chosen.mention, chosen.at, None, 0.0)


def _settled(by_rule: Role, chosen: Role, known: list[Role], takes: frozenset[str]) -> Role:
    """Return the role that was chosen, as strongly as the cue tables speak for it; what only another question takes stays so."""
    if chosen.term == by_rule.term or (chosen.term is None and by_rule.term not in takes):
        return by_rule
    if chosen.term is None:
        return chosen._replace(score=0.0)
    return chosen._replace(score=next((one.score for one in known if one.term == chosen.term), _SURE))


__all__ = ["cues_of", "standing"]
