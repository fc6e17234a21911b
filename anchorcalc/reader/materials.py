"""What the rope is made of and how it is laid, and the grade of a chain where only its number is told."""

import re

from anchorcalc.reader.reading import Reading
from anchorcalc.reader.words import NEGATIONS
from anchorcalc.units.kinds import Amount
from anchorcalc.vocabulary import TERMS

_ROPE = "(?:nylon|rope|line|warp|rode|polyester|polypropylene|stuff|cordage)"
_SAID = re.compile(
    r"(?: (?P<nylon>nylon|polyamide)| (?P<polyester>polyester)(?! (?:hull|boat|sails?|dinghy|resin|deck))"
    r"| (?P<polypropylene>polypropylene|polyprop|polypro|poly prop)| (?P<other>hemp|manila|sisal|coir|cotton|hmpe|aramid|polyethylene)"
    rf"|(?P<laid> (?:three|3|<number>) (?:- )?strands?| hawser(?: -)? laid| cable(?: -)? laid| (?:laid|twisted)(?= (?:[a-z]+ )?{_ROPE} )"
    r"|(?:(?<= nylon)|(?<= rope)|(?<= rope is)|(?<= line is)|(?<= rope :)) (?:laid|twisted))"
    r"| (?P<braid>braid|braided|plait|plaited|octoplait|multiplait|anchorplait|square line))(?= )"
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


_GRADES = frozenset(TERMS["chain_grade"].choices)
_STAMPED = re.compile(
    r" (?:grade|quality|class|stamped|(?:stamp|stamping|marking|link|links|invoice|tag|label)(?: (?:on|of) (?:(?:the|every|each) )?"
    r"(?:links?|chain|drum|tin))?"
    r" (?:says|say|reads|is|are stamped|is stamped|shows))(?: (?:with|grade|:|=|is|a|the|number|of))* (?=<number> )"
)


def settle_grade(reading: Reading) -> None:
    """Take a number for the grade of the chain where it is said to be stamped on it, or to be its quality."""
    if "chain_grade" not in reading.question.inputs:
        return
    tokens, line = reading.sentence.tokens, reading.sentence.line
    for found in _STAMPED.finditer(line):
        token = tokens[line.count(" ", 0, found.end()) - 1]
        amount = token.mention.amount if token.mention is not None else None
        grade = f"G{amount.value:.12g}" if isinstance(amount, Amount) and amount.low == amount.high else ""
        if token.mention is None or grade not in _GRADES or _denied(line, found.start()):
            continue
        if "chain_grade" in reading.asked and "but" in line[: found.start()].split():
            reading.asked.pop("chain_grade")
        reading.bare = {term: one for term, one in reading.bare.items() if one.start != token.start}
        reading.told.add(token.start)
        reading.aside = [(one, term) for one, term in reading.aside if one.start != token.start]
        reading.put("chain_grade", grade)


def _denied(line: str, at: int) -> bool:
    """Say whether one of the three words before a place denies what follows."""
    before = line[:at].split()[-3:]
    cut = max((place + 1 for place, word in enumerate(before) if word in (",", ";", ".", "but", "and")), default=0)
    return bool(NEGATIONS & set(before[cut:])) or before[-2:] == ["instead", "of"]


__all__ = ["settle_grade", "settle_material"]
