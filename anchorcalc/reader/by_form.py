"""What some quantities are by their form and their like: length by beam, ratios, a mean wind and its gusts."""

import itertools

from anchorcalc.reader.fits import with_unit
from anchorcalc.reader.role import Role
from anchorcalc.reader.sentence import Sentence, Token
from anchorcalc.units.kinds import Amount

_BY_FORM = 9.0


def products(found: list[Role]) -> list[Role]:
    """Length × beam of the boat, where neither is a size."""
    for at, (first, last) in enumerate(itertools.pairwise(found)):
        if "product" in first.mention.flags and "product" in last.mention.flags and last.mention.start - first.mention.end <= 4:
            small = first.term in ("chain", "line") or (isinstance(last.mention.amount, Amount) and last.mention.amount.high < 0.1)
            if not small:
                found[at] = first._replace(term="boat_length", fit="yes", score=_BY_FORM)
                found[at + 1] = last._replace(term="beam", fit="yes", score=_BY_FORM)
    return found


def ratios(found: list[Role], takes: frozenset[str]) -> list[Role]:
    """A ratio that no word claims is the scope, or the slope of the beach where it falls out less than one to one."""
    for at, role in enumerate(found):
        amount = role.mention.amount
        times = "times" in role.mention.flags
        if (role.mention.kind == "ratio" or times) and role.term is None and isinstance(amount, Amount):
            term = "slope" if "slope" in takes and amount.value < 1.0 else "least_scope" if "least_scope" in takes else "scope"
            found[at] = role._replace(term=term, fit="yes")
        elif role.term == "scope" and isinstance(amount, Amount) and amount.value < 1.0 and _no_slope(found, takes):
            found[at] = role._replace(term="slope")  # `stern-to on the shingle, 1 in 10`
        elif role.term in ("scope", "least_scope") and ("scope" if role.term == "least_scope" else "least_scope") in takes and role.term not in takes:
            found[at] = role._replace(term="least_scope" if role.term == "scope" else "scope")
    return found


def _no_slope(found: list[Role], takes: frozenset[str]) -> bool:
    return "slope" in takes and all(one.term != "slope" for one in found)


_GUST = frozenset(("gust", "gusts", "gusting", "gusty", "squalls", "squall", "peaks", "puffs"))
_MEAN = frozenset(("mean", "average", "steady", "from"))


def gusts(found: list[Role], sentence: Sentence) -> list[Role]:
    """Of a mean wind and its gusts only the gusts count."""
    winds = [
        at
        for at, role in enumerate(found)
        if role.term == "wind" or (role.term is None and role.mention.kind in ("speed", "number") and _beside(sentence, role.at, _GUST | _MEAN))
    ]
    gusty = [at for at in winds if _beside(sentence, found[at].at, _GUST)]
    if not gusty or len(winds) < 2:
        return found
    units = {found[at].mention.amount.unit for at in winds if found[at].mention.kind == "speed"}  # type: ignore[union-attr]
    for at in winds:
        role = found[at]
        if at not in gusty:
            found[at] = role._replace(term=None)
        elif role.mention.kind == "number" and len(units) == 1 and isinstance(role.mention.amount, Amount):
            found[at] = role._replace(
                term="wind", fit="yes", mention=role.mention._replace(kind="speed", amount=with_unit(role.mention.amount, unit=units.pop()))
            )
        else:
            found[at] = role._replace(term="wind")
    return found


def _beside(sentence: Sentence, at: int, words: frozenset[str]) -> bool:
    tokens = sentence.tokens
    before = [token.word for token in tokens[max(0, at - 3) : at]]
    for place, word in enumerate(reversed(before)):
        if word in words:
            return True
        if word.startswith("<") or (word in (",", ".", ";") and place == 0):
            break
    behind = at + 1
    while behind < min(len(tokens), at + 3) and tokens[behind].word in _IN_THE:
        behind += 1
    return behind < len(tokens) and tokens[behind].word in words and (behind + 1 >= len(tokens) or tokens[behind + 1].mention is None)


_IN_THE = frozenset(("in", "the"))  # `40 in the gusts`


__all__ = ["gusts", "products", "ratios"]


def either(found: list[Role], tokens: tuple[Token, ...]) -> list[Role]:
    """`40 m, or else it was 25 m`: the second is another value for what the first is."""
    for at in range(1, len(found)):
        one, other = found[at - 1], found[at]
        between = [token.word for token in tokens[one.at + 1 : other.at]]
        alike = one.mention.kind == other.mention.kind and one.term is not None and other.term is None
        if alike and "or" in between and _OR.issuperset(between):
            found[at] = other._replace(term=one.term, score=one.score, fit=one.fit)
    return found


_OR = frozenset(", or else it was is maybe perhaps possibly that".split())
