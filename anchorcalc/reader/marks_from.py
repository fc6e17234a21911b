"""Where the marks on a rode count from: the anchor, or the end of the chain."""

import re

from anchorcalc.reader.withdrawn import without_withdrawn
from anchorcalc.reader.words import NEGATIONS

_ARTICLES = re.compile(r" (?:the|a|an|my|our|its|your|their)(?= )")
_CHAIN = "(?:<length> (?:of )?)?(?:chain|leader)"
_JOIN = "(?:meets?|joins?|begins?|starts?|stops?|ends?|is over|is spliced|is joined|runs out|leaves off)"
_SAME = (  # what is another name for the anchor, and for the end of the chain
    (
        re.compile(
            r" (?:(?:ring|shackle|shank|eye|head) of (?:anchor|hook|bower)|anchor (?:ring|shackle|shank|itself|end|eye)|(?:hook|bower)(?: itself)?"
            r"|shank|flukes?)(?= )"
        ),
        " anchor",
    ),
    (
        re.compile(
            rf" (?:(?:very |far |top |upper )?end of {_CHAIN}|chain (?:end|join)|(?:splice|join|joint)(?: of {_CHAIN})?|top of chain"
            rf"|where (?:it|they|rope|line|warp|nylon|<length> of chain|chain)(?: \( <length> \))? {_JOIN}"
            r"(?: (?:chain|rope|line|<length> of chain|warp|nylon))?"
            r"|(?:start|beginning|foot) of (?:rope|line|warp|nylon)|last link(?: of chain)?"
            r"|thimble(?: where)?|where (?:rope|line|warp|chain) and (?:<length> (?:of )?)?(?:chain|rope|line|warp) (?:are |is )?"
            r"(?:joined|meet|spliced)|first (?:foot|metre|fathom|bit|inch|yard) of (?:rope|line|warp)"
            r"|shackle (?:joining|between|that joins|where) (?:rope|chain|line|warp)(?: (?:and|to|meets) (?:rope|chain|line|warp))?)(?= )"
        ),
        " chainend",
    ),
)
_COUNTING = (
    r"(?:counts?|counted|counting|begun|reckoned|reckoning|measured|measuring|tallied|zero|nought|begins?|beginning|starts?|starting|numbered|numbering"
    r"|laid off|set off|<number>(?= (?:being|at|is) ))"
)
_TO = r"(?: (?:from|at|on|being|is|right|up|off|with|by|them|it|and|out|again|only))+"
_ANCHOR = re.compile(
    rf" (?:(?:from|off) (?:anchor|shackle)|{_COUNTING}{_TO} anchor|at anchor end|(?:counting|count) chain"
    r"|chain (?:is )?(?:counted|counts|included|and all)(?! out)|anchor (?:being|is|as) (?:<number>|zero|nought|start)"
    r"|(?:they|that|marks|which|numbers|it|these)(?: all)? (?:also )?(?:includes?|counts?|takes? in)(?: (?:all|of|<length>))* chain"
    r"(?: too| as well| in)?)(?= )"
)
_ROPE = "(?:rope|line|warp|nylon)"
_END = re.compile(
    rf" (?:(?:from|at|after|past|beyond|above|off|upon) chainend|{_COUNTING}(?:{_TO})? chainend|(?:after|past|beyond) chain"
    rf"|(?:up|along|on) {_ROPE} from chain|{_COUNTING}{_TO} (?:chain(?= [,.;])|{_ROPE})|(?:from|on) {_ROPE} only|only on {_ROPE}"
    rf"|{_ROPE} (?:only|alone)|only {_ROPE} (?:is |being )?(?:counted|marked)|(?:counts?|counting) (?:only )?{_ROPE}(?: only)?"
    rf"|only counts? {_ROPE}|nothing counted (?:but|except|save) {_ROPE}|none on {_CHAIN}"
    rf"|(?:not counting|excluding|leave out|leaves out|leaving out|without counting) {_CHAIN}|chain left out)(?= )"
)
_CHAIN_OUT = re.compile(
    r" chain(?: (?!rope|line|warp)[^ .;?!]+){0,6} (?:not|isnt|arent|never|un|doesnt|dont)(?: (?:marked|nor|or|being|even))* ?"
    r"(?:counted|marked|included|numbered|count|counting)(?= )"
)
_PUT_RIGHT = re.compile(r" (?:sorry|wait|no|rather|mean|meant|actually)(?: (?:,|-|–|no|sorry|wait|from|at|it|is|i))+ (?P<what>anchor|chainend)(?= )")
_BACK = frozenset("no sorry wait actually rather correction oops scratch meant nope".split())
_OWN_NO = frozenset(("not", "none", "nothing", "without"))
# `every 5 m from the anchor`, not `40 m from the anchor`
_EVERY = re.compile(r" (?:(?:every|each|per)(?: \w+){0,2} <\w+>|<length> (?:, and|,|and) <length>) ?$")
SPEAKS = re.compile(
    r" (?:counted|reckoned|zero|nought|numbered|tallied|(?:count|counts|counting|starts?|starting|begins?|beginning)"
    r"(?: [a-z]+){0,2} (?:from|at|with|on))(?= )"
)


def marks_from(text: str) -> set[str]:
    """Return where the marks of a line of words count from; both where it says both."""
    line = _ARTICLES.sub("", text)
    for pattern, name in _SAME:
        line = pattern.sub(name, line)
    line = without_withdrawn(line, "anchor|chainend|chain|rope|line|warp")
    said = [(one.start(), "anchor") for one in _ANCHOR.finditer(line) if not _denied(line, one) and not _a_distance(line, one)]
    said += [(one.start(), "chain_end") for pattern in (_END, _CHAIN_OUT) for one in pattern.finditer(line) if not _denied(line, one)]
    said += [(one.start(), "anchor" if one["what"] == "anchor" else "chain_end") for one in _PUT_RIGHT.finditer(line)]
    said.sort()
    if len({value for _, value in said}) > 1 and _BACK & set(line[said[0][0] : said[-1][0]].split()):
        return {said[-1][1]}
    return {value for _, value in said}


def _denied(line: str, found: re.Match[str]) -> bool:
    """Say whether a negation stands before what was found, in its part of the sentence."""
    before = line[: found.start()].split()[-4:]
    cut = max((at + 1 for at, word in enumerate(before) if word in (",", ";", ".", "but", "and", "they", ":")), default=0)
    return (bool(NEGATIONS & set(before[cut:])) and not _OWN_NO & set(found[0].split()[:1])) or _asked(line, found)


_ASKED = re.compile(r"(?:^|[.;!?]) (?:do|does|did|are|is)(?: [a-z]+){0,4}$")


def _asked(line: str, found: re.Match[str]) -> bool:
    """Say whether it is only asked, and not said: `do they count from the anchor?`"""
    behind = re.match(r"[^.;!?]*\? (?!yes)", line[found.end() :])
    return behind is not None and _ASKED.search(line[: found.start()]) is not None


def _a_distance(line: str, found: re.Match[str]) -> bool:
    """Say whether it only tells how far off something is: `40 m from the anchor`."""
    before = re.split(r" [.;?!] ", line[: found.start()])[-1]
    lone = found[0] in (" from anchor", " off anchor") and before.rstrip().endswith((">", "far"))
    return lone and " marks" not in f" {before}" and _EVERY.search(before) is None


__all__ = ["SPEAKS", "marks_from"]
