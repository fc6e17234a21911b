"""Slips of the finger in the words that matter: one letter too many, missing, wrong or out of its place, or drawn out (`deeep`).

Only a word that means nothing as it stands is mended, only into one of these words, and only where a single one lies that near; the first letter
stays but where two letters have changed places. Words of four letters are mended where two letters have changed places, never otherwise.
"""

import re
from collections.abc import Iterator
from functools import cache

from anchorcalc.reader.patterns import table
from anchorcalc.reader.words import FILLERS, NEGATIONS, OURS, PARTING
from anchorcalc.vocabulary import TERMS

_WORDS = """
anchor anchors anchored anchoring anchorage depth deep chain rode rope warp scope bow roller height high length long boat yacht draught beam
metres metre feet foot knots wind gusts tide rising falling water load pull force holding swing swinging circle radius clearance clear rocks
distance current stern beach slope marks mark shackle shackles swivel windlass displacement tonnes engine power horsepower drift sounder
transducer keel surface weight plough sailing sailboat motor catamaran dragging dragged range should what which minutes nylon between another
neighbour
""".split()
# Words of their own that lie one slip from one of those above.
_OWN = frozenset(
    """
chair charm chains chairs change changes death deaths depths dept scoop scope slope slopes scopes steep beech reach breach teach bench peach bean
beams seam team wing wine wand winds kind title tile tied tides tidy ride road role rove rose code node ripe tope hope cope ropes wrap wraps harp
carp ward warm heights height eight weight weights freight lengths lengthy strength beat boot boast coat goat bolt boats draughts fought metro
metric foots food fort knows knot knits guests gust rifling raising filling failing feeling calling wader waiter later waters wafer cater loads
loaf lord goad road pulls pill poll full force forces forced farce holdings folding swings sing sting swinging singing winging circles radios
radium clears cleat cleats clean lock locks socks rooks rocky instance currents currant torrent sternly steer stein stars start mask masks makes
maker make market barks parks dark park motors motto sailings surfaces shackled swivels towers power powers tower grift draft shift drifts drill
pounder rounder sounders sounded keels kneel feel heel steel marked maker strange orange grange ranges rang changed changing that whit wheat witch
watch minute between dragged bragging dragging dragon wants want wat anchorages should shoulder shield plug though tough trough rough dough longs
along lone loan bong gong load nylons feat feed fees feels deer seep keep gusty swung ploughs shouldn deeper dip dear weep dead desk boat's bows
bowl row how low now boy box bored bored beads breams cream stream dream
""".split()
)
_LETTERS = 5  # words shorter than this are mended only where two letters have changed places


@cache
def _near() -> dict[str, tuple[str, ...]]:
    """Return the words by what is left of them without one letter, and whole."""
    found: dict[str, list[str]] = {}
    for word in dict.fromkeys(_WORDS):
        for left in _less_one(word):
            found.setdefault(left, []).append(word)
    return {left: tuple(words) for left, words in found.items()}


def _less_one(word: str) -> Iterator[str]:
    yield word
    yield from {word[:at] + word[at + 1 :] for at in range(len(word))}


@cache
def known_words() -> frozenset[str]:
    """Return the words that mean something as they stand: those of the tables and of the terms."""
    said = [str(table("cues")), str(table("asked")), str(table("asked", "words.toml"))]
    said += [text for term in TERMS.values() for text in (*term.nouns, *(str(said) for said in term.said_as))]
    return frozenset(_WORDS) | _OWN | FILLERS | NEGATIONS | PARTING | frozenset(OURS) | frozenset(re.findall("[a-z]+", " ".join(said).lower()))


def mended(word: str) -> str:
    """Return a word as it was meant, where it lies one slip from a single word that matters; itself otherwise."""
    if len(word) < 3 or word in known_words():
        return word
    if _DRAWN_OUT.search(word):
        return next((short for short in (_DRAWN_OUT.sub(r"\1\1", word), _DRAWN_OUT.sub(r"\1", word)) if short in known_words()), word)
    if len(word) > 14:
        return word
    near = {other for left in _less_one(word) for other in _near().get(left, ()) if _one_slip(word, other)}
    return near.pop() if len(near) == 1 else word


_DRAWN_OUT = re.compile(r"([a-z])\1{2,}")  # `deeep`, `sooo much`


def _one_slip(word: str, meant: str) -> bool:
    """Say whether one slip makes a word of the other."""
    if len(word) == len(meant):
        off = [at for at in range(len(word)) if word[at] != meant[at]]
        if len(off) == 2 and off[1] == off[0] + 1 and word[off[0]] == meant[off[1]] and word[off[1]] == meant[off[0]]:
            return True
    if min(len(word), len(meant)) < _LETTERS or word[0] != meant[0]:
        return False
    if len(word) == len(meant):
        return sum(one != other for one, other in zip(word, meant, strict=True)) == 1
    longer, shorter = (word, meant) if len(word) > len(meant) else (meant, word)
    return len(longer) - len(shorter) == 1 and any(longer[:at] + longer[at + 1 :] == shorter for at in range(len(longer)))
