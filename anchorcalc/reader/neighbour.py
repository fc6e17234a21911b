"""Whose boat a text speaks of: the neighbour's rode and length, where the question is about two boats."""

from anchorcalc.reader.sentence import Token

_OTHERS = frozenset("he his theirs their they them him neighbour neighbours hers".split())
_BESIDE = frozenset("from of to beside behind near astern ahead upwind downwind".split())
_OURS = frozenset("we our ours mine my i us me".split())
_SHIPS = frozenset("sloop yacht ketch boat trawler cat catamaran cruiser cutter schooner ship".split())
_THERE = frozenset(("astern", "ahead", "beyond", "behind", "beside", "alongside", "next", "anchored", "upwind", "downwind"))
_THAT = frozenset(("that", "other", "next", "another", "moored"))


_THEY = frozenset(("them", "they", "their"))


def others_quantities(tokens: tuple[Token, ...]) -> frozenset[int]:
    """Return where the quantities stand that are told of another boat."""
    found: set[int] = set()
    other, known = False, False
    for at, token in enumerate(tokens):
        word = token.word
        before = tokens[at - 1].word if at else ""
        behind = tokens[at + 1].word if at + 1 < len(tokens) else ""
        if (word in _OTHERS and (known or word not in _THEY)) or (word in _SHIPS and (before in _THAT or behind in _THERE)):
            other = known = True
        elif word in ("she", "her") and known and not other:
            other = True
        elif (word in _OURS and before not in _BESIDE) or (word in (".", "?", ";") and behind not in ("she", "her")):
            other = False
        if other and token.mention is not None:
            found.add(token.start)
    return frozenset(found)
