"""Figures of places that are not lain in, of plans that came to nothing, of gear that is gone, and of what somebody does not mind."""

import re

from anchorcalc.reader.mention import Mention
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.sought import sought
from anchorcalc.reader.words import STOPS

_K = r"<[a-z_]+>"
_PARTS = frozenset(",():–")
_SUBJECTS = frozenset("i we it she he they iam weare there".split())
_AND_THEN = frozenset("but though although while whereas because".split())
_NOT = r"(?:not|dont|doesnt|didnt|wont|shant|cant|never|isnt|arent|wouldnt|neednt|do not|does not|will not|shall not|cannot)"
_LIE = r"(?:anchor|anchoring|go|going|goes|lie|lying|stop|stopping|stay|staying|venture|venturing|be|be going|drop|dropping|use|using)"
_THERE = r"(?:there|in there|out there|that far|so far|in that|in it|over it|near it|that deep|in either|into it)"

_NO_MATTER = re.compile(
    rf" {_NOT} (?:[a-z]+ )?(?:bother|interest|concern|worry|trouble|worrie)s?(?: (?:me|us|anyone|anybody|him|her))? "
    r"| (?:is |are |of )?(?:nothing to|no concern of|no business of|no worry to|no threat to|of no interest to|no matter to) (?:me|us|ours|mine|do) "
    r"| another (?:story|matter|world|tale)| is (?:their|his|her) (?:business|affair|problem|lookout|own business)| is no guide"
    r"| (?:is )?(?:of )?no (?:use|help|good) (?:here|to us|to me|for us)| (?:doesnt|does not) apply"
)
_NOT_GOING = re.compile(
    rf" (?:we|i|us|iam|weare|and|but|where|which)(?: (?:are|am|will|shall))? {_NOT}(?: (?:want|mean|plan|care|dare|intend) to)? {_LIE} {_THERE} "
    rf"| where (?:we|i|weare|iam) {_NOT} {_LIE} "
    r"| (?:nobody|no one|noone|none of us) (?:ever |here |would )?(?:anchors?|lies?|goes?|stops?|uses?|drops?) "
)
_NOT_IN = re.compile(
    rf" (?:not|no longer|wont be|skipping|avoiding|missing out|leaving out) {_LIE}? ?(?:in|at|into|over|on|off)? ?(?:the|that|this|a|our) {_K}"
)
_FORGET = re.compile(r" (?:forget|disregard|ignore|never mind) (?:what|how|when|where)(?P<what> [^.;?!]*)")
_NOT_THE = re.compile(rf" not (?:the|a|his|her|their) [a-z]+ (?P<what>{_K}(?: [a-z]+)?) [:,;]")
_A_MISS = re.compile(rf" {_K}(?: [a-z]+){{1,3}} (?:a miss|alone) (?=[.,;!?] |$)")
_IF_ONLY = re.compile(
    r" (?:if (?:i|we|she|they) (?:had|let|was|were)|had (?:i|we|she)) (?P<what>[^.;?!]*?)"
    r" (?:would|could|might|wouldve|shed|wed|id|itd|hed|theyd|we|i|it|she) (?:[a-z]+ )?have [^.;?!]*"
)
_PLANS = (
    r"(?:considered|thought (?:of|about)|talked (?:of|about|over)|toyed with|meant to|planned (?:to|on)|planned|wanted to|fancied|was tempted"
    r"|hoped to|looked at|going to|about to|would have|wouldve|intended to|thinking of|thinking about|debated|discussed|dreamt of)"
)
_UNDONE = (
    r"(?:didnt|did not|havent|have not|never did|wont|will not|shant|decided (?:not|against|otherwise)|thought better|changed (?:my|our) minds?"
    r"|dropped (?:that|it|the)|dropped this|left it|gave (?:it|that|up)|binned (?:it|that)|scrapped (?:it|that)|let it be|cancelled"
    r"|rejected|called it off|not now|stayed|found it|nothing came)"
)
_ONLY_MEANT = re.compile(
    rf" (?:was|were) (?:going|about) to(?P<what> [^.;?!]*?{_K}[^.;?!]*?)"
    r"(?: [.;,] (?:then|but|so|instead|in the end|only)(?: (?:i|we|it|the|saw|that))+"
    r"| but(?: [a-z]+){1,3} (?:persuaded|talked|convinced|told|advised|got) (?:me|us)) "
)
_CAME_TO_NOTHING = re.compile(rf" {_PLANS}(?P<what> [^.;?!]*?{_K}[^.;?!]*?),? (?:and|but|then|so|only we|only i)(?: [a-z]+){{0,2}} {_UNDONE} ")
_WHOSE = r"(?:the|our|my|her|that|an|a|this|one|your)"
_GONE = (
    r"(?:sold|scrapped|thrown out|thrown away|chucked out|lent out|given away|stolen|binned|retired|long gone|no more|written off"
    r"|went (?:home|ashore|overboard|missing|to|in|into|with|over))"
)
_STORE = (
    r"(?:in (?:the |my |our )?(?:shed|garage|attic|skip|barn|car|van|cellar|loft|boathouse|workshop|boot)"
    r"|on the (?:quay|jetty|pontoon|pier|quayside))"
)
_AWAY = (
    r"(?:(?:is|are|was|were|stays|lies|sits|lives|hangs)(?: still| now| all)?(?: lying| hanging| sitting| stowed| coiled| drying| rusting)?"
    rf"|(?:lying|hanging|sitting|stowed|coiled|drying|rusting)(?: [a-z]+)?) (?:at home|ashore|{_STORE})"
)
_WAS_GONE = re.compile(
    rf" (?P<what>(?:{_WHOSE} )?(?:[a-z]+ ){{0,2}}{_K}(?: {_K})?(?: [a-z]+){{0,3}})"
    rf" (?:(?:is |are |was |were |has |got |been |all |just )*{_GONE}|{_AWAY}) "
)
_STORED = re.compile(
    rf" (?:,|and|plus|with)(?: a| the| our| another)?(?P<what> {_K}(?:(?: of)?(?: spare)? [a-z]+)?)"
    r" (?:in (?:the |my |our )?(?:shed|garage|attic|barn|car|van|cellar|loft|boathouse|workshop)|at home|ashore) "
)
_NEARLY = re.compile(
    rf" (?:nearly|almost|all but) (?:bought|took|chose|dropped|stopped|anchored|let|ordered|fitted|veered|went)(?P<what> [^.;?!,<]*?{_K}(?: [a-z]+)?)"
)
_DONT_USE = re.compile(
    rf" (?:dont|do not) (?:give|tell|use|reckon|show|count|work)(?: (?!less|more|than|under|over|below|above|until|if)[a-z]+){{0,6}} (?P<what>{_K})"
)
_RULED_OUT = re.compile(
    rf" (?:ruled out|decided against|turned down|passed up|skipped|rejected|gave up on|steered clear of|kept away from)(?P<what> [^.;?!]*?{_K})"
)
_LENT = re.compile(
    rf" (?P<what>{_K}(?: [a-z]+){{0,2}})(?: ,)? (?:that |which )?(?:i|we) (?:have )?"
    r"(?:lent|gave away|sold|scrapped|threw|left (?:at home|ashore|behind))"
)
_LEFT = re.compile(  # `we left the long warp ashore in the shed, all 120 m of it`
    r" left (?:(?:the|our|my|a|that) )(?:(?!and |but )[a-z]+ ){1,4}(?:ashore|at home|behind|in the (?:shed|garage|loft|cellar|car|van))"
    rf"(?: in(?: [a-z]+){{1,2}})? ?,?(?: all)?(?P<what> {_K}) of (?:it|them) "
)
_MOVED = re.compile(  # `we were in 9 m but moved inshore to 4 m`
    rf" (?:were|was|lay|lying|started|began|stopped|anchored)(?: [a-z]+)? (?:in|at|over)(?P<what> {_K})(?: of water| deep| first)?"
    rf"(?: (?:,|but|and|then|since|now))+"
    rf" (?:(?:we|i|have|had|has) )*(?:moved|shifted|gone|went|came|crept|dropped back|fallen back)(?: [a-z]+){{0,3}} (?:to|into|in) (?={_K})"
)
_STAYS = re.compile(
    r" (?:spare|second|third|other|another|kedge)(?: [a-z]+){0,2}(?: ,)?(?P<what>(?: [a-z]+)* <mass>)(?: ,)?"
    r" (?:stays|remains|lives|sleeps|sits|is|lies) "
)
_STAYS_BELOW = re.compile(  # `I have another 20 m but that's staying below`
    rf" (?:another|further|extra|other|spare)(?P<what> {_K})(?: of [a-z]+)?(?: ,)?"
    rf" (?:but|that|which|though)(?: (?:that|which|it|is|be|stays|will|stay))*"
    rf"(?: staying| kept| left| stowed| remains)? (?:below|aboard|stowed|ashore|home|{_STORE}) "
)
_AT_LAST = re.compile(  # `first off the ice-house in 11 m, then by the steps … at last we've 4 m`
    rf" (?:at )?first(?P<what> [^?!]*{_K}[^?!]*?) (?=(?:at last|finally|in the end|at long last|now at last) )"
)
_ITS_SIZE = re.compile(  # `the pier is 20 m long`
    r" (?:pier|wreck|barge|quay|island|islet|jetty|pontoon|reef|bank|channel|ferry|breakwater|creek|bay|cove|hulk|skerry|buoy)"
    rf" (?:is|was|being)(?: (?:about|only|some|just))*(?P<what> {_K}) (?:long|wide|high|across|tall) "
)
_THEY_HAVE = re.compile(rf" (?:do|does|did|have|has) (?:they|he) (?:[^?!.<]+ )?\? (?P<what>{_K}) \. ")  # `how much rode do they have? 75 m.`
_NOT_SAID = re.compile(rf" (?:didnt|did not|never) (?:say|mean|write|tell you)(?P<what> {_K})(?= )")  # `I didn't say 10 mm, I said 8 mm`
_IGNORED = re.compile(
    rf" (?:forget|disregard|ignore|never mind) (?:the |that |his |her |their )?(?P<what>(?:chart|map|plotter|book|table|brochure|label) {_K})(?= )"
)
_WOULD_BE = re.compile(rf" if (?:i|we|she) (?:had|carried|drew|were)(?P<what> [^.;?!]*?{_K}[^.;?!]*?) ,? ?(?:but|though|yet) ")
_IS = r"(?:is|are|weighs|was|has|measures|draws|holds)"
_OTHER_THING = re.compile(
    r" (?:(?:the|our|my|her|a) )?(?:tender|jolly boat|inflatable|spare (?:anchor|one|hook|rode|warp|rope|line|coil)"
    r"|(?:mooring|second|other) (?:one|<number>))"
    rf" (?:{_IS} (?:only |just |about |a |an |at |of )*)(?P<what>{_K}(?: <number>)?)"
    rf"| (?:the|our|my) spare (?:{_IS} )?(?:only |just |about |a )*(?P<mass><mass>)"
)
_OLD = re.compile(
    r" (?:old|previous|former|last) (?!night|week|year|month|time|of)[a-z]+ (?:was|were|had|used|measured|weighed)(?P<what> [^.;?!]*?<[a-z]+>"
    r"(?:(?! ,? ?(?:but|and|now|the new|new|this|the present|mine|ours|today)(?= ))[^.;?!])*)"
)
_ONLY_WITH = re.compile(rf" (?P<what>{_K}) only (?:with|if) ")
_NOT_HERE = r"(?:next|other|last|previous|neighbouring|outer|former|nearby|old|usual|first)"
_SPOT = (
    r"(?:bay|cove|berth|harbour|haven|anchorage|spot|place|inlet|fjord|sound|hole|island|isle|lake|marina|port|stop|creek|arm|basin|bight|loch|pool)"
)
OTHER_PLACE = re.compile(rf" (?:in|at|from|over|off|for|round|around) (?:the |our |my )?{_NOT_HERE} (?:[a-z]+ )?{_SPOT} ")
_WAS = re.compile(r" (?:was|were|had|used|lay|found|been|anchored|shelved|it|had) ")
_THEN = (
    r"(?:last (?:night|week|year|time|month|summer|winter|spring|autumn|season|trip)|yesterday|ago|used to|previously|formerly|at first|originally)"
)
_BRACKETED = re.compile(rf" \((?P<what> [^()]*?(?:{_THEN}|(?:on|in|with|for) the (?:old|last|previous|first) [a-z]+)[^()]*?) \)")
# By which words each is known: without one of them it is not looked for. Over the whole text, and over each part of it.
_IN_ALL = (
    sought(_NOT_IN, "not longer wont skipping avoiding missing leaving"),
    sought(_FORGET, "forget disregard ignore mind"),
    sought(_NOT_THE, "not"),
    sought(_ONLY_MEANT, "going about"),
    sought(_A_MISS, "miss alone"),
    sought(_IF_ONLY, "have"),
    sought(
        _CAME_TO_NOTHING,
        "considered thought talked toyed meant planned wanted fancied tempted hoped looked going about have wouldve intended thinking debated "
        "discussed dreamt",
    ),
    sought(
        _WAS_GONE,
        "sold scrapped thrown chucked lent given stolen binned retired gone more written went home ashore shed garage attic skip barn car van "
        "cellar loft boathouse workshop boot quay jetty pontoon pier quayside",
    ),
    sought(_DONT_USE, "dont do"),
    sought(_NEARLY, "nearly almost but"),
    sought(_RULED_OUT, "ruled decided turned passed skipped rejected gave steered kept"),
    sought(_LENT, "lent gave sold scrapped threw left"),
    sought(_LEFT, "left"),
    sought(_MOVED, "moved shifted gone went came crept back"),
    sought(_STAYS, "spare second third other another kedge"),
    sought(_STAYS_BELOW, "another further extra other spare"),
    sought(_AT_LAST, "last finally end"),
    sought(_ITS_SIZE, "long wide high across tall"),
    sought(_THEY_HAVE, "they he"),
    sought(_STORED, "shed garage attic barn car van cellar loft boathouse workshop home ashore"),
    sought(_NOT_SAID, "say mean write tell"),
    sought(_IGNORED, "forget disregard ignore mind"),
    sought(_WOULD_BE, "if"),
    sought(_OTHER_THING, "tender jolly inflatable spare mooring second other"),
    sought(_OLD, "old previous former last"),
    sought(_ONLY_WITH, "only"),
    sought(_BRACKETED, "("),
)
_IN_ALL_WORDS = frozenset[str]().union(*(one.needs for one in _IN_ALL))
_BY_WORD = {word: [at for at, one in enumerate(_IN_ALL) if word in one.needs] for word in _IN_ALL_WORDS}
_IN_A_PART = (
    sought(
        _NO_MATTER,
        "bother bothers interest interests concern concerns worry worrys trouble troubles worrie worries nothing business threat matter another "
        "affair problem lookout guide use help good apply",
    ),
    sought(_NOT_GOING, "not dont doesnt didnt wont shant cant never isnt arent wouldnt neednt cannot nobody no noone none"),
)
ELSEWHERE = sought(OTHER_PLACE, "next other last previous neighbouring outer former nearby old usual first")
_SPARES = frozenset("spare second other another kedge backup".split())
_WAS_THEN = frozenset(("was", "were"))
_ASKS = frozenset("how what which where when will can does do would should is are ?".split())


def elsewhere(tokens: list[Token], dropped: list[Mention], *, held: frozenset[str]) -> list[Token]:
    """Leave out the figures that are told of what is not: other places, plans given up, gear that is gone, what nobody minds."""
    words = [token.word for token in tokens]
    line = f" {' '.join(words)} "
    out: set[int] = set()
    for one in [_IN_ALL[at] for at in sorted({at for word in held & _IN_ALL_WORDS for at in _BY_WORD[word]})]:
        for found in one.regex.finditer(line):
            name = next((name for name in one.regex.groupindex if found[name] is not None), 0)
            places = _places(line, *found.span(name))
            told = not _SPARES.isdisjoint(words[max(0, places.start - 2) : places.stop])  # that there is none any more is told of a spare anchor
            out.update(at for at in places if not told or tokens[at].mention is not None or words[at] == "of")
    out.update(_parts_left_out(tokens, words, held))
    return _without(tokens, out, dropped) if out else tokens


def _parts_left_out(tokens: list[Token], words: list[str], held: frozenset[str]) -> set[int]:
    """Return the places of the parts of a text that tell of what nobody minds, and of other places."""
    not_minded = [one.regex for one in _IN_A_PART if one.perhaps(held)]
    elsewhere, then = ELSEWHERE.perhaps(held), not _WAS_THEN.isdisjoint(held)
    out: set[int] = set()
    parts = clauses(words) if not_minded or elsewhere or then else []
    for at, (begin, end) in enumerate(parts):
        said = f" {' '.join(words[begin:end])} "
        if any(regex.search(said) for regex in not_minded):
            out.update(range(*_told_in(words, parts, at)))
        elif (elsewhere and OTHER_PLACE.search(said) and _WAS.search(said)) or (then and _of_a_place(tokens, begin, end)):
            out.update(range(begin, end))
    return out


def clauses(words: list[str]) -> list[tuple[int, int]]:
    """Return where the parts of a text begin and end: at its signs, and at words that set one part against another."""
    found, begin = [], 0
    for at, word in enumerate(words):
        new = word in _AND_THEN or (word == "and" and words[at + 1 : at + 2] and words[at + 1] in _SUBJECTS)
        if new or word in STOPS or word in _PARTS:
            found.append((begin, at))
            begin = at if new else at + 1
    return [one for one in (*found, (begin, len(words))) if one[0] < one[1]]


def _told_in(words: list[str], parts: list[tuple[int, int]], at: int) -> tuple[int, int]:
    """Return the part of a text that has the figures which a part speaks of: that one, or the one before it in the same sentence."""
    begin, end = parts[at]
    if any(word[0] == "<" for word in words[begin:end]):
        return begin, end
    if end < len(words) and words[end] == "(" and at + 1 < len(parts):
        return parts[at + 1]
    return (begin, end) if at == 0 or words[parts[at - 1][1]] in STOPS else parts[at - 1]


def _of_a_place(tokens: list[Token], begin: int, end: int) -> bool:
    """Say whether a part of a text tells of another place by its name, or of another day's: `Holmsand's was 1:18`, `yesterday's hole was 11 m`."""
    words = [token.word for token in tokens[begin:end]]
    if words[0] in ("last", "yesterday", "yesterdays") and "was" in words[:5]:
        return True
    name = begin + 1 if words[0] in ("at", "in", "off") and len(words) > 1 else begin
    if tokens[name].mention is not None or words[name - begin] in _PRONOUNS or tokens[name].end - tokens[name].start <= len(tokens[name].word) + 1:
        return False  # a name that has something bears an apostrophe, which its token does not
    return any(word in ("was", "were") for word in (words[1:2] if name == begin else words[2:6]))


_PRONOUNS = frozenset("it that there what he she this these those here where who how".split())


def _places(line: str, start: int, end: int) -> range:
    """Return the tokens of a stretch of a line."""
    end -= line[end - 1] == " "
    return range(line.count(" ", 0, start + 1) - 1, line.count(" ", 0, end))


def _without(tokens: list[Token], out: set[int], dropped: list[Mention]) -> list[Token]:
    """Leave out the figures at some places, and the words there that would speak for others."""
    dropped.extend(mention for at in sorted(out) if (mention := tokens[at].mention) is not None)
    return [token for at, token in enumerate(tokens) if at not in out or (token.mention is None and token.word in _ASKS)]


__all__ = ["ELSEWHERE", "clauses", "elsewhere"]
