"""How the pins of the shackles and the inner end of the rode are held: by what is named and the state that is told of it."""

import re

from anchorcalc.reader.reading import Reading

_CLAUSE = re.compile(r"[^.,;:?!()–\n]+[.,;:?!()–\n]?")
_END = re.compile(
    r" (?:(?:bitter|inner|inboard|inside|far|last|tail|locker|boat|free) (?:end|ends|link|fathom)|last (?:chain|rope) link|last link"
    r"|(?:inboard |other |inner )?(?:end|tail) of (?:it all|chain|rope|rode|line|warp|cable)|(?:chain|rope|rode|line|warp) (?:end|ends on|tail)"
    r"|other end|end)(?= )"
)
_PINS = re.compile(r" (?:shackles?|pins?|shackle bolts?|bolts? of shackles?)(?= )")
_OF_PINS = frozenset("seized seize seizing seizings moused mouse mousing wired wire wiring tied ties secured locked closed".split())
_OPEN = frozenset("open bare unwired unseized unmoused unsecured unlocked loose".split())
_TIED = frozenset("tied lashed lashing lanyard knotted knot cord twine string".split())
_FIXED = frozenset("shackled bolted welded riveted shackle fixed".split())
_LOOSE = frozenset("free loose unattached unsecured unfastened untied".split())
_HELD = _TIED | _FIXED | frozenset("secured attached fastened fast held holding holds keeps seized".split())
_NEVER = frozenset(
    "not isnt arent wasnt werent never no without hasnt havent nobody forgot want wants need needs lack lacks neither nor nothing".split()
)
_BARELY = re.compile(
    r" (?:(?:hand|finger) tight|(?:just|simply|merely|only) (?:lies|lying|dropped|stowed|coiled|sits)|dropped in|not on anything)(?= )"
)
_WAS = (" used to ", " was once ", " had been ")
_BACK = (" sorry ", " no ", " correction ")
_GEAR = re.compile(r" (?:<mass>|<length>|anchor|boat|kedge|spare)(?= )")


def settle_held(reading: Reading) -> None:
    """Put into a reading how the pins and the inner end are held."""
    takes = reading.question.inputs
    if "bitter_end" not in takes:
        return
    found, ends = _told(reading.sentence.line)
    for term, word in found.items():
        reading.rivals.pop(term, None)
        reading.asked[term] = word
    if ends and "shackles" not in found and not _PINS.search(re.sub("|".join(map(re.escape, ends)), " ", reading.sentence.line)):
        reading.asked.pop("shackles", None)  # `the last fathom seized to nothing` tells of no shackle


def _told(line: str) -> tuple[dict[str, str], list[str]]:
    """Return the state of pins and of the end, the last that is told, and the clauses that speak of the end."""
    found: dict[str, str] = {}
    ends: list[str] = []
    about, stopped = "", False
    line = _BARELY.sub(" loose", re.sub(r" (?:the|a|an|my|our|its|their)(?= )", "", line))
    for clause in _CLAUSE.findall(line):
        text = f" {clause.strip(' .,;:?!()–')} "
        named = "bitter_end" if _END.search(text) else "shackles" if _PINS.search(text) else ""
        if not named and (_GEAR.search(text) or (stopped and not any(one in text for one in _BACK))):
            about = about if stopped and about and not _GEAR.search(text) and len(text.split()) <= _SHORT else ""
        about, stopped = named or about, clause.rstrip().endswith((".", "?", "!"))
        if named == "bitter_end":
            ends.append(clause.strip())
        state = _of_end(text) if about == "bitter_end" else _of_pins(text) if about == "shackles" else ""
        if state and not any(one in text for one in _WAS):
            found[about] = state
    return found, ends


_SHORT = 5


def _of_pins(text: str) -> str:
    """Return whether pins are seized or open in a clause that speaks of them."""
    words = text.split()
    held = [at for at, word in enumerate(words) if word in _OF_PINS]
    if _OPEN & set(words):
        return "open"
    if not held:
        return ""
    return "open" if _NEVER & set(words[: held[-1] + 1]) and "yes" not in words else "seized"


def _of_end(text: str) -> str:
    """Return how the end is held in a clause that speaks of it."""
    words = text.split()
    if "nothing" in words and _HELD & set(words):
        return "free"
    states = [(word, bool(_NEVER & set(words[max(0, at - 3) : at]))) for at, word in enumerate(words) if word in _HELD | _LOOSE]
    so = {word for word, denied in states if not denied}
    if so & _TIED or so & _FIXED:
        return "tied" if so & _TIED and not so & {"shackled", "shackle"} else "fixed" if not so & _TIED else ""
    return "free" if so & _LOOSE or any(denied and word in _HELD for word, denied in states) else ""


__all__ = ["settle_held"]
