"""Whose boat a text speaks of: which quantities are told of another's, the neighbour's, a friend's, the ketch astern."""

from anchorcalc.reader.for_another import asked_for_another
from anchorcalc.reader.last import kept_for_last
from anchorcalc.reader.mention import Part
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.words import BESIDE, STOPS, sentence_start


class Theirs(Part, frozen=True, gc=False):
    """Where the quantities stand that are told of another's boat; `likely` those that are, too, unless nothing else is told of ours."""

    surely: frozenset[int]
    likely: frozenset[int]


_NOTHING = Theirs(frozenset(), frozenset())
_NOT_OURSELVES = frozenset("apart pontoon quay jetty pier trot".split())  # `the 40 footer on our pontoon`, `our anchors are 90 m apart`
_ASKED = frozenset("ask asked asking tell told".split())
_MATES = frozenset("mate crewmate shipmate workmate".split())
_HE = frozenset("he his him hes theirs hers".split())
_THEY = frozenset(("them", "they", "their"))
_PEOPLE = frozenset("neighbour neighbours friend friends cousin buddy pal fellow chap bloke guy guys fella couple dane swede finn".split())
_KIN = frozenset("brother sister uncle grandad granddad grandfather guests lad lady visitor visitors".split())
_ABOARD = frozenset("husband wife skipper mate crew bosun son daughter dad father captain owner partner navigator helmsman kids boy girl man".split())
_SHIPS = frozenset(
    "sloop yacht ketch yawl boat trawler cat catamaran cruiser cutter schooner ship hull motorboat smack launch dinghy crew lot vessel barge "
    "tug ferry seiner lugger folkboat multihull coaster lifeboat casualty dayboat gaffer warship freighter rib footer skiff dory punt".split()
)
_ANY_SHIP = frozenset("boat ship hull vessel crew lot yacht footer".split())
_OURS = frozenset("we our ours mine my i us me weare iam".split())
_THERE = frozenset("astern ahead beyond beside alongside next anchored upwind downwind opposite there abeam upstream".split())
_BY_US = frozenset(("behind", "near", "close", "over", "inshore"))
_US = frozenset("us me by there of ours".split())
_NEVER_MIND = (["never", "mind"], ["not", "counting"], ["leave", "out"], ["not", "about"])  # `never mind the dinghy, that is only 10 ft`
_THAT = frozenset(("that", "other", "next", "another", "moored", "neighbouring"))
_OWN = frozenset(("my", "our", "this"))
_DOES = frozenset(
    "has lies lay had carries carried draws drew uses used dropped anchored needs put takes took found went sits swings swung holds keeps hangs "
    "hung marks let veered streamed dried cleared is was managed rides".split()
)
_SAYS = frozenset(
    "says said reckons makes thinks reads swears guesses claims tells told counted measured estimates guessed thought insists maintains "
    "lent gave sold made tied painted marked wants wonders asks and sounds say".split()
)
_TALKS = frozenset("speaks talks warns expects".split())
_NEXT_TO = frozenset("beside alongside near past".split())
_THINKS = frozenset("think guess reckon believe hear know see saw suppose understand can could".split())  # `I think she is 12 m`
_WITH = frozenset(("for", "and", "with"))
_BY_HIM = frozenset((("by", "his"), ("he", "says"), ("he", "reckons"), ("he", "tells"), ("or", "so")))
_INSTRUMENTS = frozenset("echo sounder finder fishfinder plotter".split())
_KNOWN = _HE | _PEOPLE | _KIN | _SHIPS
_MAY_NAME = _KNOWN | _ABOARD | _MATES | {"mates", "crewmates", "whose", "other"} | {f"{word}s" for word in _PEOPLE | _KIN}  # `my buddys pontoon`
_NOT, _MAYBE, _SURELY = 0, 1, 2


@kept_for_last  # what a quantity is and whose it is are asked of the same words
def others_quantities(tokens: tuple[Token, ...]) -> Theirs:
    """Return where the quantities stand that are told of another boat."""
    words = [token.word for token in tokens]
    two_lie_apart = "apart" in words and ("anchors" in words or "<other>" in words)  # `our two anchors lie 95 m apart; she has 35 m out`
    if not two_lie_apart and not _MAY_NAME & set(words) and not any(token.named or _a_footer(token) for token in tokens):
        return _NOTHING
    if asked_for_another(words):
        return _NOTHING
    found: dict[int, int] = {}
    other, known, one_of_us = _NOT, _SURELY if two_lie_apart else _NOT, False
    for at, token in enumerate(tokens):
        word = words[at]
        behind = words[at + 1] if at + 1 < len(words) else ""
        one_of_us = word in _ABOARD or (one_of_us and word not in _PEOPLE)
        named = _NOT
        if (token.named or word in _MAY_NAME) and not (word in _HE and one_of_us):
            named = _names_another(words, at) or _by_name(tokens, words, at)
        elif _a_footer(token):
            named = _by_size(words, at)
        if named or (word in _THEY and known):
            other = known = max(named, known)
            if word in _SHIPS:
                found.update((one.start, other) for one in _right_before(tokens, at))
        elif word in ("she", "her") and known and not other:
            other = known
        elif _comes_back(words, at) or (word in STOPS and behind not in ("she", "her")):
            other = _NOT
            known = _NOT if word in ("i", "we") and behind not in _THINKS else known
        if other and token.mention is not None:
            found[token.start] = other
        if known and (word, behind) in _BY_HIM:
            found.update((one.start, known) for one in _sentence_before(tokens, at) if one.mention is not None)
    return Theirs(frozenset(at for at, how in found.items() if how == _SURELY), frozenset(found))


def _comes_back(words: list[str], at: int) -> bool:
    """Say whether a word leads back to us; `next to us` does not, nor `our anchors are 90 m apart`."""
    before, behind = words[at - 1] if at else "", words[at + 1] if at + 1 < len(words) else ""
    return (words[at] in _OURS and before not in BESIDE and behind not in _NOT_OURSELVES) or (words[at] == "this" and behind in _SHIPS)


def _names_another(words: list[str], at: int) -> int:
    """Return how surely a word tells of another who has a boat: `he`, `my cousin has`, `the ketch astern`."""
    word, before = words[at], words[at - 1] if at else ""
    behind = words[at + 1] if at + 1 < len(words) else ""
    if word in _ABOARD and words[at + 1 : at + 3] in (["next", "door"], ["beside", "us"], ["alongside", "us"], ["next", "to"]):
        return _SURELY
    if word in ("he", "him") and before in _ASKED:
        return _NOT
    if word == "other" and before == "the" and behind in ("lies", "rides", "swings", "draws"):
        return _SURELY
    if word == "whose" and behind in _SHIPS:
        return _SURELY
    if word.removesuffix("s") in _MATES and behind in _SHIPS and before not in ("of", "with"):
        return _SURELY
    if word in _HE:
        return _NOT if word in ("he", "him") and (behind in _SAYS or _INSTRUMENTS & set(words)) else _SURELY
    if word in _PEOPLE or word in _KIN:
        said = before if before not in ("my", "our", "a", "the") else words[at - 2] if at > 1 else ""
        return _NOT if behind in _SAYS or said in _WITH else _SURELY if word in _PEOPLE else _MAYBE
    if word[-1:] == "s" and word[:-1] in _PEOPLE | _KIN and (behind in _SHIPS or (words[at + 2 : at + 3] and words[at + 2] in _DOES)):
        return _SURELY  # `my buddys pontoon draws 9 inches`
    if word not in _SHIPS:
        return _NOT
    if words[max(0, at - 3) : at - 1] in _NEVER_MIND:
        return _SURELY
    near_us = behind in _BY_US and at + 2 < len(words) and words[at + 2] in _US
    if before in _THAT or ((behind in _THERE or near_us) and before not in _OWN) or _beside_one(words, at):
        return _NOT if behind in _TALKS else _SURELY
    return _MAYBE if behind in _DOES and word not in _ANY_SHIP and _is_theirs(words, at) else _NOT


def _beside_one(words: list[str], at: int) -> bool:
    """Say whether a ship is one that we lie beside: `beside an old ketch`."""
    said = words[max(0, at - 4) : at]
    article = next((place for place in range(len(said) - 1, -1, -1) if said[place] in ("a", "an")), 0)
    return article > 0 and said[article - 1] in _NEXT_TO


def _by_name(tokens: tuple[Token, ...], words: list[str], at: int) -> int:
    """Return how surely a boat's name is another's: `Fulmar has 50 m out, we 35 m`, `the Solveig, 14 m, lies to 60 m`."""
    if not tokens[at].named or not _is_theirs(words, at):
        return _NOT
    behind = words[at + 1 : at + 5]
    if behind[:1] == [","] and len(behind) > 2 and behind[2] == ",":
        behind = behind[3:]
    if at and words[at - 1] not in STOPS and (behind[:1] == ["over"] or _THERE & set(behind[:1])):
        return _SURELY
    return _MAYBE if behind and behind[0] in _DOES | _THERE | {"they", "got"} else _NOT


def _a_footer(token: Token) -> bool:
    return token.mention is not None and "adjective" in token.mention.flags and token.mention.text.lower().rstrip("s").endswith("footer")


def _by_size(words: list[str], at: int) -> int:
    """Return how surely a boat is another's that is told of by her size: `a 38-footer came in`, `the 40 footer on our pontoon`."""
    before, behind, after = words[at - 1] if at else "", words[at + 1 : at + 2], words[at + 2 : at + 3]
    does = behind and (behind[0] in _DOES | _THERE or behind[0] == "came")
    lies = behind in (["on"], ["at"], ["in"]) and after in (["our"], ["the"])
    return _MAYBE if before in _THAT | {"a", "an", "the"} and (does or lies) and _is_theirs(words, at) else _NOT


def _is_theirs(words: list[str], at: int) -> bool:
    """Say whether a ship that does something is another's: `the danish yawl has 50 m out`, where the text speaks of us besides."""
    return not _OWN & set(words[max(0, at - 3) : at]) and words[max(0, at - 2) : at] != ["of", "the"] and bool(_OURS & set(words))


def _right_before(tokens: tuple[Token, ...], at: int) -> tuple[Token, ...]:
    """Return the quantity that stands before a ship as what she is: `that 18 m schooner over there`."""
    near = tokens[max(0, at - 2) : at]
    return tuple(token for token in near if token.mention is not None) if near and near[-1].word not in STOPS | {",", "the", "a"} else ()


def speaks_of_us(tokens: tuple[Token, ...]) -> bool:
    """Say whether a text speaks of us, too, other than as those whose neighbour or friend it is."""
    words = [token.word for token in tokens]
    kin = _PEOPLE | _KIN | {"dad", "father", "son", "daughter"}
    return any(_comes_back(words, at) and not kin & set(words[at + 1 : at + 3]) for at, word in enumerate(words) if word in _OURS)


def beside(tokens: tuple[Token, ...], starts: set[int]) -> set[int]:
    """Return where the quantities stand that are told in the same sentence as some others."""
    found: set[int] = set()
    told: set[int] = set()
    for token in tokens:
        if token.word in STOPS:
            told = set()
        elif token.mention is not None:
            told.add(token.start)
            if told & starts:
                found |= told
    return found


def _sentence_before(tokens: tuple[Token, ...], at: int) -> tuple[Token, ...]:
    """Return what was said in the same sentence: `25 fathoms out by his own telling`; nothing where it speaks of us."""
    said = tokens[sentence_start([token.word for token in tokens], at) : at]
    return () if any(token.word in _OURS for token in said) else said
