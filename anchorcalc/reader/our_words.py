"""Whose gear words tell of: ours, that of others, or the spare anchor."""

from itertools import groupby

from anchorcalc.reader.for_another import asked_for_another
from anchorcalc.reader.sentence import Sentence, Token
from anchorcalc.reader.words import STOPS, sentence_end, sentence_start

_ARTICLES = frozenset("the a an my our her his their your".split())
OTHERS = frozenset(
    "neighbour neighbours pal pals buddy buddys fellow chap bloke guy their theirs cousin cousins brother brothers sister "
    "friend friends mate mates crewmate shipmate uncle grandad dad father they he owner old yesterday".split()
)
_RETRACTS = frozenset(("no", "sorry", "isnt", "arent", "neither", "nor", "says", "said"))

_NAMED = frozenset("bitter inner inboard end pin pins shackle shackles".split())


def our_words(sentence: Sentence) -> list[Token]:
    """Return the words of a text, articles left out; of a sentence about others only what is left of it."""
    ours, tokens = {token.start for token in sentence.tokens}, sentence.whole
    kept: list[Token] = []
    for_another = asked_for_another([token.word for token in tokens])
    for stops, part in groupby(tokens, key=lambda token: token.word in STOPS):
        told = list(part)
        words = {token.word for token in told}
        if for_another:
            kept += told
            continue
        if not stops and tells_of_others([token.word for token in told], 0):
            kept += [token for token in told if token.word in _NAMED]  # `his inner end is bolted. Ours is tied`
            continue
        kept += told if stops or _RETRACTS & words or not OTHERS & words else [token for token in told if token.start in ours]
    return [token for token in kept if token.word not in _ARTICLES]


_OURS = frozenset("we i iam weare our my ours mine us".split())
_SPARES = frozenset("spare second kedge backup reserve".split())
_MAIN = frozenset("main bower first best primary anchor".split())
_REACH = 6


def tells_of_others(words: list[str], at: int) -> bool:
    """Say whether a word stands in a part of a text that names others, and none of us; what they only say, or what is for them, is ours."""
    if asked_for_another(words):
        return False
    begin, end = sentence_start(words, at), sentence_end(words, at)
    named = [
        place
        for place in range(begin, end)
        if (words[place] in _OTHER_BOATS or words[place : place + 2] in (["other", "boat"], ["next", "door"])) and not _only_speaks(words, place)
    ]
    us = [place for place in range(begin, end) if words[place] in _OURS and place + 1 not in named and words[place - 1 : place] != ["of"]]
    clause = max((place for place in range(begin, at) if words[place] in (",", ";", "but", "while")), default=begin - 1)
    in_clause = any(clause < place < at for place in named) and not any(clause < place < at for place in us)
    theirs = at > begin and words[at - 1] in _OTHER_BOATS and at - 1 in named  # `my neighbour's trawler`
    return (bool(named or _THEIR & set(words[max(begin, at - 2) : at])) and not us) or in_clause or theirs


def lies_beside_us(text: str) -> bool:
    """Say whether a text goes on that what it just named lies beside us."""
    return text.lstrip(" ,").lower().startswith(_BESIDE_US)


def _only_speaks(words: list[str], place: int) -> bool:
    """Say whether another is named as one who says something, or for whom it is asked."""
    return words[place + 1 : place + 2] in _SAYS or bool({"for"} & set(words[max(0, place - 2) : place])) or words[place + 2 : place + 3] in _US


_SAYS = (["says"], ["said"], ["reckons"], ["thinks"], ["told"], ["claims"], ["swears"], ["wants"])
_US = (["me"], ["us"])  # `uncle gave me a chain`
_OTHER_BOATS = OTHERS - frozenset("they their he old owner yesterday father dad".split())
_BESIDE_US = (
    *("next to us", "next to me", "beside us", "ahead of us", "astern of us", "near us", "next door", "alongside us"),
    *("to windward", "to leeward"),
)
_THEIR = frozenset(("their", "his"))


def tells_of_spare(words: list[str], at: int, *, told: bool) -> bool:
    """Say whether a kind or a mass is that of the spare anchor; where ours is `told` before, a comma may part them."""
    behind = words[at + 1 : at + 6]
    of_spare = next((place for place, word in enumerate(behind[:4]) if word in ("spare", "kedge")), -1)
    if of_spare >= 0 and not set(behind[:of_spare]) & {",", "and", *STOPS}:
        return True
    if "as" in behind and set(behind) & _SPARES and not set(behind) & {",", "and", *STOPS}:
        return True
    for back in range(1, min(_REACH, at) + 1):
        word = words[at - back]
        if word in STOPS or word in ("no", "not", "without") or (word in (",", "and") and not told):
            return False
        if word in _SPARES:
            return words[at - back - 1] not in ("no", "not", "without") if at > back else True
        if word in _MAIN and (at == back or words[at - back - 1] not in _SPARES):
            return False
    return False


__all__ = ["OTHERS", "lies_beside_us", "our_words", "tells_of_others", "tells_of_spare"]
