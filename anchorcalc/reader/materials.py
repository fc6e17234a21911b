"""What the rope is made of and how it is laid: nylon in three strands or braided, polyester, polypropylene."""

import re

from anchorcalc.reader.reading import Reading
from anchorcalc.reader.words import NEGATIONS
from anchorcalc.vocabulary import TERMS

_ROPE = "(?:nylon|rope|line|warp|rode|polyester|polypropylene|stuff|cordage)"
_SAID = re.compile(
    r"(?: (?P<nylon>nylon|polyamide)| (?P<polyester>polyester)(?! (?:hull|boat|sails?|dinghy|resin|deck))"
    r"| (?P<polypropylene>polypropylene|polyprop|polypro|poly prop)| (?P<other>hemp|manila|sisal|coir|cotton|hmpe|aramid|polyethylene)"
    rf"|(?P<laid> (?:three|3|<number>) (?:- )?strands?| hawser(?: -)? laid| cable(?: -)? laid| (?:laid|twisted)(?= (?:[a-z]+ )?{_ROPE} )"
    r"|(?:(?<= nylon)|(?<= rope)|(?<= rope is)|(?<= line is)|(?<= rope :)) (?:laid|twisted))"
    r"| (?P<braid>braid|braided|plait|plaited|octoplait|multiplait|braided nylon))(?= )"
)
_BACK = frozenset("no sorry actually wait rather correction isnt not now".split())


def settle_material(reading: Reading) -> None:
    """Put into a reading what the rope is made of; ask where it is some other stuff, or braided and no more is said."""
    if "line_material" not in reading.question.inputs:
        return
    line = reading.sentence.line
    said = [(one.lastgroup or "", one.start()) for one in _SAID.finditer(line) if not _denied(line, one.start())]
    if not said:
        return
    of, lays = [kind for kind, _ in said if kind not in ("laid", "braid")], [kind for kind, _ in said if kind in ("laid", "braid")]
    if _BACK & set(line[said[0][1] : said[-1][1]].split()):
        of, lays = of[-1:], lays[-1:]
    values = {one for one in of if one.startswith("poly")}
    if "other" in of or (not of and "braid" in lays):
        reading.open_terms["line_material"] = TERMS["line_material"].prompt
        return
    if not values or "nylon" in of:
        values |= {"nylon_3_strand" if lay == "laid" else "nylon_braid" for lay in lays}
    for value in sorted(values):
        reading.put("line_material", value)


def _denied(line: str, at: int) -> bool:
    """Say whether one of the three words before a place denies what follows."""
    before = line[:at].split()[-3:]
    cut = max((place + 1 for place, word in enumerate(before) if word in (",", ";", ".", "but", "and")), default=0)
    return bool(NEGATIONS & set(before[cut:])) or before[-2:] == ["instead", "of"]


__all__ = ["settle_material"]
