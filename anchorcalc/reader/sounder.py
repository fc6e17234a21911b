"""What the sounder shows inside another question: it becomes the depth where its zero and the offset are known."""

import re

from anchorcalc.reader.our_words import OTHERS, tells_of_others
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.withdrawn import without_withdrawn

_FROM: dict[str, tuple[str, ...]] = {
    "keel": (
        "under keel",
        "below keel",
        "from keel",
        "beneath keel",
        "to keel",
        "under her keel",
        "below my keel",
        "keel offset",
        "keel - zeroed",
        "keel zeroed",
        "keel to bottom",
        "keel to ground",
        "keel to mud",
        "keel to seabed",
        "below her keel",
        "is keel",
        "zero is keel",
        "under my keel",
        "under our keel",
        "at keel",
        "of keel",
        "keel reading",
        "keel depth reads",
        "on keel",
        "bottom of keel",
        "zeroed to keel",
        "beneath our keel",
        "keel referenced",
    ),
    "transducer": (
        "from transducer",
        "transducer - zeroed",
        "zero is transducer",
        "zero transducer",
        "below transducer",
        "under transducer",
        "beneath transducer",
        "at transducer",
        "transducer reads",
        "transducer reading",
        "to transducer",
        "measures from there",
        "of transducer",
        "off transducer",
        "transducer referenced",
        "transducer reference",
        "transducer zero",
        "it own distance",
        "own face",
        "from itself",
        "no offset",
        "without offset",
        "uncorrected",
    ),
    "surface": (
        "from surface",
        "surface - zeroed",
        "surface zeroed",
        "waterline - zeroed",
        "from water surface",
        "zero is surface",
        "zero at surface",
        "zero surface",
        "at surface",
        "from waterline",
        "at waterline",
        "to surface",
        "to waterline",
        "counts from surface",
        "from surface already",
        "below surface",
        "surface to bottom",
        "from top of water",
        "below waterline",
    ),
}
_SENSORS = ("sensor", "sender", "puck", "probe", "ducer", "sounder head", "eye", "eye in hull")
_FROM["transducer"] += tuple(
    phrase.replace("transducer", name)
    for name in _SENSORS
    for phrase in ("from transducer", "below transducer", "under transducer", "beneath transducer", "at transducer")
)
_ARTICLES = frozenset("the a an my our her his their your its".split())
_SMALL = frozenset(("little", "small"))
_ZEROS = {"keel": "keel", "surface": "surface", "waterline": "surface", "transducer": "transducer", "sensor": "transducer"}
_EITHER = re.compile(rf" ({'|'.join(_ZEROS)}) or (?:from |under |below )?({'|'.join(_ZEROS)}) ")
_NOT = frozenset(("not", "isnt", "doesnt"))


_OF_AN_OFFSET = frozenset(("below surface", "below waterline", "at waterline"))
_FROM_ITS = re.compile(r" from it (?:own )?(?=transducer|sensor|sender|puck|probe|ducer|keel|own|eye|there)")
_FROM_THERE = re.compile(r" (measured|counted|counts|measures|reads|reckoned|reading|taken|starts|is|gives) from (?:it|there|that)(?= )")
_CHANGED = re.compile(  # `it counted from the keel, but I changed that: it counts from the transducer now`
    r" [^.;?!]*? (?:had|was|were|used|counted|read|showed)(?: [a-z]+){0,6} (?:from|at|to|under|below) (?:keel|surface|waterline|transducer)"
    r" ,? ?(?:but|until)(?: [a-z]+){0,4} (?:changed|altered|reset|moved|set)(?: (?:it|that))?(?= )"
)
_CLAUSE = re.compile(r" [.,;:?!(] ")
_HULL = frozenset(("keel", "transducer", "draught", *_SENSORS))
_ASKS, _SHOWN = (
    frozenset("how what which pole stick".split()),
    frozenset("sounder reads reading shows says gives display zero zeroed counts measures".split()),
)


def _other_than_zero(before: str) -> bool:
    """Say whether the surface is told of as that from which a keel or a transducer is so deep, or as the end of what is asked for."""
    words = set(_CLAUSE.split(f"{before} ")[-1].split())
    return not _SHOWN & words and bool((_HULL | _ASKS) & words)


_NOUNS = "keel|transducer|surface|waterline|sensor|ducer"


_WHERE_IT_IS = re.compile(rf" from where (transducer|{'|'.join(_SENSORS)}) (?:is|sits|lies|hangs|looks out) ")
_ONLY_ASKED = re.compile(rf"(?<= [.;?!]) (?:does|do|is)(?: [a-z]+){{0,4}} (?:{_NOUNS}) \? (?!yes)")


def _ours(tokens: tuple[Token, ...]) -> list[str]:
    """Return the words that tell of our own sounder, small words left out."""
    words = ["zero" if token.mention is not None and token.mention.text.lower() == "zero" else token.word for token in tokens]
    if OTHERS & set(words):
        words = [word for at, word in enumerate(words) if not tells_of_others(words, at)]
    return [word for word in words if word not in _ARTICLES and word not in _SMALL]


def reads_from(tokens: tuple[Token, ...], *, transducer_given: bool) -> list[str]:
    """Return what the text says that the sounder measures from; more than one where it says more than one."""
    line = f" {' '.join(_ours(tokens))} "
    line = _ONLY_ASKED.sub(" ", _WHERE_IT_IS.sub(r" from \1 ", line))
    line = _FROM_ITS.sub(" from ", line)  # `from its transducer`
    if any(f" {name} " in line for name in ("transducer", *_SENSORS)):
        line = _FROM_THERE.sub(r" \1 from transducer ", line).replace(" from there ", " from transducer ")
    line = without_withdrawn(line, _NOUNS)
    doubt = _EITHER.search(line)
    if doubt is not None:
        return [_ZEROS[doubt[1]], _ZEROS[doubt[2]]]
    line = _CHANGED.sub(" ", line)
    found = []
    for word, phrases in _FROM.items():
        for phrase in phrases:
            at = line.find(f" {phrase} ")
            if at < 0 or _NOT & set(line[:at].split()[-2:]):
                continue
            if word == "surface" and ((phrase in _OF_AN_OFFSET and transducer_given) or _other_than_zero(line[:at])):
                continue
            found.append(word)
            break
    if len(found) > 1 and "surface" in found and transducer_given:
        found.remove("surface")
    return found
