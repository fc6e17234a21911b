"""Whose boat a text speaks of: which quantities are told of another's, the neighbour's, a friend's, the ketch astern."""

from functools import lru_cache

from anchorcalc.reader.sentence import Token

_HE = frozenset("he his him hes theirs".split())
_THEY = frozenset(("them", "they", "their"))
_PEOPLE = frozenset(  # who has a boat of his own, unless he only says something of ours
    "neighbour neighbours friend friends cousin buddy pal guests brother uncle grandad granddad fellow chap bloke guy fella lad lady couple "
    "tug ferry warship".split()
)
_SHIPS = frozenset(
    "sloop yacht ketch yawl boat trawler cat catamaran cruiser cutter schooner ship hull motorboat smack launch dinghy crew lot vessel barge".split()
)
_OURS = frozenset("we our ours mine my i us me weare iam".split())
_BESIDE = frozenset("from of to beside behind near astern ahead upwind downwind by off past around ask asks asked".split())  # `next to us`
_THERE = frozenset(
    "astern ahead beyond behind beside alongside next anchored upwind downwind opposite near there close over inshore abeam upstream".split()
)
_THAT = frozenset(("that", "other", "next", "another", "moored", "neighbouring", "second"))
_HAS = frozenset("has lies is".split())
_SAYS = frozenset(
    "says said reckons makes thinks reads swears guesses claims tells told counted measured estimates guessed thought insists maintains "
    "lent gave sold made tied painted marked wants wonders asks and".split()
)
_WITH = frozenset(("for", "and", "with"))
_ENDS = frozenset((".", "?", ";", "!", "\n"))
_BY_HIM = frozenset((("by", "his"), ("he", "says"), ("he", "reckons"), ("he", "tells"), ("or", "so")))


@lru_cache(maxsize=1)  # what a quantity is and whose it is are asked of the same words
def others_quantities(tokens: tuple[Token, ...]) -> frozenset[int]:
    """Return where the quantities stand that are told of another boat."""
    words = [token.word for token in tokens]
    if not _KNOWN & set(words):
        return frozenset()
    found: set[int] = set()
    other, known = False, False
    for at, token in enumerate(tokens):
        word = words[at]
        before = words[at - 1] if at else ""
        behind = words[at + 1] if at + 1 < len(words) else ""
        if _names_another(words, at) or (word in _THEY and known):
            if word in _SHIPS:
                found.update(one.start for one in _right_before(tokens, at))
            other = known = True
        elif word in ("she", "her") and known and not other:
            other = True
        elif (word in _OURS and before not in _BESIDE and behind != "apart") or (word in _ENDS and behind not in ("she", "her")):
            other = False
        if other and token.mention is not None:
            found.add(token.start)
        if (word, behind) in _BY_HIM and known:
            found.update(one.start for one in _sentence_before(tokens, at) if one.mention is not None)
    return frozenset(found)


_KNOWN = _HE | _PEOPLE | _SHIPS


def _names_another(words: list[str], at: int) -> bool:
    """Say whether a word tells of another who has a boat: `he`, `my cousin has`, `the ketch astern`."""
    word, before = words[at], words[at - 1] if at else ""
    behind = words[at + 1] if at + 1 < len(words) else ""
    if word in _HE:
        return True
    if word in _PEOPLE:
        said = before if before not in ("my", "our", "a", "the") else words[at - 2] if at > 1 else ""
        return behind not in _SAYS and said not in _WITH
    if word not in _SHIPS:
        return False
    if before in _THAT or (behind in _THERE and before not in ("my", "our", "this")):
        return True
    return behind in _HAS and word not in ("boat", "ship", "hull", "vessel", "crew", "lot") and _is_theirs(words, at)


def _is_theirs(words: list[str], at: int) -> bool:
    """Say whether a ship that has something is another's: `the danish yawl has 50 m out`."""
    return all(word not in ("my", "our", "this") for word in words[max(0, at - 3) : at]) and any(word in _OURS for word in words[at + 1 :])


def _right_before(tokens: tuple[Token, ...], at: int) -> tuple[Token, ...]:
    """Return the quantities that stand before a ship as what she is: `that 18 m schooner over there`."""
    return tuple(token for token in tokens[max(0, at - 3) : at] if token.mention is not None and tokens[at - 1].word not in _ENDS | {","})


def _sentence_before(tokens: tuple[Token, ...], at: int) -> tuple[Token, ...]:
    """Return what was said in the same sentence: `25 fathoms out by his own telling`; nothing where it speaks of us."""
    begin = max((place + 1 for place in range(at) if tokens[place].word in _ENDS), default=0)
    said = tokens[begin:at]
    return () if any(token.word in _OURS for token in said) else said
