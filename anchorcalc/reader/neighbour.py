"""Whose boat a text speaks of: the neighbour's rode and length, where the question is about two boats."""

from anchorcalc.reader.sentence import Token

_OTHERS = frozenset("he his theirs their they them him neighbour neighbours hers fellow chap bloke".split())
_BESIDE = frozenset("from of to beside behind near astern ahead upwind downwind".split())
_OURS = frozenset("we our ours mine my i us me".split())
_SHIPS = frozenset("sloop yacht ketch yawl boat trawler cat catamaran cruiser cutter schooner ship".split())
_THERE = frozenset(("astern", "ahead", "beyond", "behind", "beside", "alongside", "next", "anchored", "upwind", "downwind"))
_THAT = frozenset(("that", "other", "next", "another", "moored"))


_HAS = frozenset("has lies is".split())


def _is_theirs(tokens: tuple[Token, ...], at: int) -> bool:
    """Say whether a ship that has something is another's: `the danish yawl has 50 m out`."""
    return all(token.word not in ("my", "our", "this") for token in tokens[max(0, at - 3) : at]) and any(
        token.word in _OURS for token in tokens[at + 1 :]
    )


_THEY = frozenset(("them", "they", "their"))


def others_quantities(tokens: tuple[Token, ...]) -> frozenset[int]:
    """Return where the quantities stand that are told of another boat."""
    found: set[int] = set()
    other, known = False, False
    for at, token in enumerate(tokens):
        word = token.word
        before = tokens[at - 1].word if at else ""
        behind = tokens[at + 1].word if at + 1 < len(tokens) else ""
        if (word in _OTHERS and (known or word not in _THEY)) or (
            word in _SHIPS and (before in _THAT or behind in _THERE or (behind in _HAS and word not in ("boat", "ship") and _is_theirs(tokens, at)))
        ):
            other = known = True
        elif word in ("she", "her") and known and not other:
            other = True
        elif (word in _OURS and before not in _BESIDE and behind != "apart") or (word in (".", "?", ";") and behind not in ("she", "her")):
            other = False
        if other and token.mention is not None:
            found.add(token.start)
        if (word, behind) in _BY_HIM and known:
            found.update(one.start for one in _sentence_before(tokens, at) if one.mention is not None)
    return frozenset(found)


_BY_HIM = frozenset((("by", "his"), ("he", "says"), ("he", "reckons"), ("he", "tells"), ("or", "so")))


def _sentence_before(tokens: tuple[Token, ...], at: int) -> tuple[Token, ...]:
    """Return what was said in the same sentence: `25 fathoms out by his own telling`; nothing where it speaks of us."""
    begin = max((place + 1 for place in range(at) if tokens[place].word in (".", "?", ";", "!")), default=0)
    said = tokens[begin:at]
    return () if any(token.word in _OURS for token in said) else said
