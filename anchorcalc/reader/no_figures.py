"""Figures that are nothing here: courses, pressures, ages, prices, temperatures, the mast, and whom or what one counts.

Each row tells by which words such a figure is known, of what kind it is and between which values, and what stands before or behind it. What is
found stays in the text as something else (`other`), so that it is neither taken for an input nor asked about.
"""

import re

from anchorcalc.reader.mention import Part
from anchorcalc.reader.sentence import Sentence, Token
from anchorcalc.units.kinds import Amount
from anchorcalc.units.numbers import plain


class Row(Part, frozen=True, gc=False):
    """A kind of figure that is nothing: words one of which the text must have, the kinds it comes as, its bounds, and what is beside it."""

    words: frozenset[str]
    kinds: frozenset[str]
    low: float
    high: float
    before: re.Pattern[str] | None
    behind: re.Pattern[str] | None


def _row(words: str, kinds: str, *, before: str = "", behind: str = "", low: float = -1e9, high: float = 1e9) -> Row:
    left = re.compile(rf"(?:{before})\Z") if before else None
    return Row(frozenset(words.split()), frozenset(kinds.split()), low, high, left, re.compile(behind) if behind else None)


# Small words between a name and its figure; whatever else stands there may begin another fact.
_GAP = (
    r"(?:'s)?(?: (?:is|was|are|at|about|around|only|over|nearly|just|now|of|to|the|a|an|for|it|that|me|us|him|her|them|my|one|says|said|reads|shows"
    r"|stands|down|up|fell|dropped|on|showing|reading|temperature|temp|sum|total|being|say|still|below|some|channel))*[:=]? "
)
_NO_LENGTH = r"(?! (?:out|deep|aboard|long|down|veered|of (?:chain|rope|rode|line)))"
_CLAUSE = r"(?:[.,;:?!(–\n-] ?|\band |\bwith |\bit'?s )(?:the |a |an )?"
_PERSON = (
    r"(?:he|man|woman|husband|wife|dad|father|grand ?dad|grand ?father|grandpa|mother|mum|son|daughter|boy|girl|kid|uncle|aunt|mate|skipper|lad|"
    r"bloke|crew|nephew|niece|grandson|granddaughter|brother|sister|partner|friend)"
)
_OLD = (
    "he hes iam who man woman husband wife dad father granddad grandad grandpa grandfather mother mum son daughter boy girl kid uncle aunt "
    "aged age turned old back knees arms lad bloke nephew niece skipper mate crew "
    "grandson granddaughter brother sister partner friend"
)
_ENDS = r"(?= ?(?:[.,;:!?)\n]|\Z| and | but | so | years| yrs| now\b| this | next | still | can | with | aboard| on board))"
_COUNTED = (
    r"cans?|bottles?|beers?|crates?|tins?|men|man|woman|women|guests?|kids?|children|adults?|souls?|passengers?|dogs?|pairs? of hands|lads?|blokes?|"
    r"girls?|boys?|bunks?|berths?|cabins?|cylinders?|people|persons?|folks?|teenagers?|grandchildren|cod|fish|herrings?|mackerels?"
)

ROWS: tuple[Row, ...] = (
    _row(  # where she heads, where the wind comes from
        "hdg heading course cog bearing bears steer steering steered head compass wind",
        "number",
        before=r"\b(?:hdg|heading|course|cog|bearing|bears|steer|steering|steered|ship'?s head|compass|wind (?:is |comes )?(?:out of|from))\b"
        + r"(?: (?:of|at|on|is|was|about|due|by compass))*[:=]? ?",
        low=100.0,
        high=360.0,
    ),
    _row(
        "hdg heading steering steered cog head heads bears bearing",
        "number",
        before=r"\b(?:hdg|heading|steering|steered|cog|bears|bearing|(?:we|i|she|ship'?s) heads?)[:=]?"
        r"(?: (?:oh|o|zero|one|two|three|four|five|six|seven|eight|nine)){0,2} ",
        high=360.0,
    ),
    _row(
        "hdg heading course cog bearing bears steering head wind",
        "angle",
        before=r"\b(?:hdg|heading|course|cog|bearing|bears|steering|head|wind)(?: (?:is|of|at|from|out of|comes from|[nsew]{1,3}))*[:=]? ",
        behind=r"(?! (?:off|round|from the|to the|apart|on the|away))",
        low=1.7,
        high=6.3,
    ),
    _row("glass barometer baro pressure", "number", before=rf"\b(?:glass|barometer|baro|pressure)\b{_GAP}", low=850.0, high=1100.0),
    _row(
        _OLD,
        "number",
        before=r"\b(?:who is|who'?s|aged?|turned|turning|turns|at age|(?:wo)?man of|lad of|boy of|girl of)(?: just| only)? ",
        behind=_ENDS,
        high=110,
    ),
    _row(_OLD, "number", before=r"\b(?:he is|he'?s|i'?m|i am|his age is)(?: just| only| already)? ", behind=_ENDS, low=45.0, high=110.0),
    _row(_OLD, "number", before=rf"\b{_PERSON}(?: is|'s) (?:just |only |now |already )?", behind=_ENDS, low=1.0, high=110.0),
    _row(_OLD, "number", before=rf"\b(?:my|our|the|her|his) (?:[a-z]+ )?{_PERSON} ?[,(] ?", behind=r" ?[,):]", low=1.0, high=110.0),
    _row("iam am", "number", before=r"\b(?:i'?m|i am) [a-z]+ ?[,(] ?", behind=r" ?[,).]", low=14.0, high=110.0),
    _row(
        "counted", "number", before=r"\bcounted (?:only |about |just )?", behind=r" (?:over|past|gone|out|marks?|tags?|go|went|run|at)\b", high=100.0
    ),
    _row("turned", "number", before=r"\bturned (?:just )?", behind=r" (?:in|last|this|on)\b", low=14.0, high=110.0),
    _row("since", "number", before=r"\bsince ['’]?", behind=r"(?! ?(?:m|ft|feet|met|am|pm|[:.]\d))", low=30.0, high=99.0),
    _row("me", "number", before=r"\bme, ", behind=r",", low=30.0, high=110.0),
    _row("crew", "number", before=r"\bcrew (?:are |is |aged )?(?:\d\d?(?:,| and|, and) )*", behind=_ENDS, low=1.0, high=99.0),
    _row(f"{_OLD} i", "number", before=r"\bat ", behind=r" i (?:can|am|still)\b", low=45.0, high=110.0),
    _row(_OLD, "number", before=r"\b(?:was|were|am|not|old|back|knees|arms)\b[^.;!?]{0,20}\bat ", behind=r" ?[.,;!?]| years", low=45.0, high=110.0),
    _row(  # what a man weighs
        "weigh weighs weighing",
        "mass number",
        before=r"(?:\bi (?:only |just )?weigh|\b(?:he|who|man|person|crew|wife|husband|son|daughter|mate)\b"
        r"(?:(?!\b(?:anchor|hook|plough|plow|claw|scoop|fluke|boat|kedge|bower|that|which|it|she|chain|says|reckons|thinks)\b)[^.;!?]){0,30}"
        r"\bweigh(?:s|ing)?)(?: only| just| about| all of| around)? "
        r"(?:\d+(?: ?(?:kg|lbs?|kilos?))?,? (?:and )?)*",
    ),
    _row(
        "man woman bloke lad chap fellow person guy deckhand skipper teenager boy girl crew",
        "mass",
        behind=r"[ -](?:man|woman|bloke|lad|chap|fellow|person|guy|deckhand|skipper|teenager|boy|girl)\b",
    ),
    _row(  # whom and what one counts
        "can cans bottle bottles beer beers crate crates tin tins men man woman women guest guests kid kids children adult adults soul souls "
        "passenger passengers dog dogs pair lad lads bloke blokes girl girls boy boys bunk bunks berth berths cabin cabins cylinder cylinders "
        "people person persons folk folks teenager teenagers grandchildren cod fish herring herrings mackerel mackerels",
        "number",
        behind=rf"[ -](?:(?:strong|young|old|small|big|grown|fit|hungry|more|other|good) )?(?:{_COUNTED})\b",
        low=0.0,
        high=200.0,
    ),
    _row("dog dogs kid kids guest guests children", "number", before=r"\b(?:dogs?|kids?|guests?|children) ", high=20.0),
    _row("crew party family team class", "number", before=r"\b(?:crew|party|family|team|class) of ", high=60.0),
    _row("aboard board", "number", before=r"\b(?:hp|kw|ps|horses?|we'?re|we are|with|just|only), ?", behind=r" (?:aboard|on board)\b", high=8.0),
    _row("of", "number", behind=r" of us\b", high=60.0),
    _row(  # when one eats
        "dinner supper lunch breakfast tea cream flight bus meeting guests party bed bedtime ferry train school pub shop",
        "number",
        before=r"\b(?:dinner|supper|lunch|breakfast|tea|ice cream|flight|bus|meeting|guests|party|bed|bedtime|ferry|train|school|pub|shop)"
        r"(?: is| was|'s| leaves| shuts| opens)? at ",
        high=24.0,
    ),
    _row("we weare", "number", before=r"\b(?:we are|we'?re) ", behind=r" (?:aboard|on board|up)\b|\Z|\.", high=8.0),
    _row(  # what it costs
        "cost costs costing paid pay budget price priced quotes quote quoted charges charge insured sells sold fee deposit bill buy bought premium",
        "number",
        before=r"\b(?:cost(?:s|ing)?|paid|pay(?! (?:out|away|her))|budget|priced?|quote[sd]?|charge[sd]?|insured(?: for| at)?"
        r"|bought(?: [a-z]+){0,9} for"
        rf"|sells? (?:it |them |one )?(?:for|at)|fee|deposit|bill|premium)\b{_GAP}",
        behind=_NO_LENGTH,
        low=15.0,
    ),
    _row(
        "cost costs paid charged charges price",
        "mass",
        before=r"\b(?:costs?|paid|charge[sd]?|price (?:is|was|of))(?: (?:us|me|him|her|you|about|only|over|nearly|just|all of))* ",
    ),
    _row("sale shop sales offer discount", "number", behind=r" (?:in the sales?|at the shop|in the shop|on offer)\b", low=15.0),
    _row(
        "beer food water supper dinner room provisions grub diesel stores",
        "number",
        before=r"\b(?:beer|food|supper|dinner|room|provisions|grub|stores) for ",
        high=20.0,
    ),
    _row("price", "number", before=r"\bprice (?:of|for) [^.;!?\d]{0,24} (?:is|was) ", low=5.0),
    _row("sold listed", "number", before=r"\b(?:sold|listed) as an? "),
    _row("rev revs tacho tachometer rpm counter", "number", before=rf"\b(?:rev counter|tacho(?:meter)?|revs|rpm|revving)\b{_GAP}", low=500.0),
    _row(  # how warm it is
        "water air sea oil cabin outside temperature temp coolant engine frost warm cold shade degrees",
        "angle",
        before=_CLAUSE + rf"(?:water|air|sea|oil|cabin|outside|temperature|temp|coolant|engine)\b{_GAP}",
        behind=r"(?! (?:off|round|from|to|apart|between|of|up|above))",
        high=2.0,
    ),
    _row(
        "water air sea cabin outside frost warm cold shade zero sun",
        "angle",
        behind=r" (?:in the (?:water|air|cabin|shade|sun)|outside|below zero|(?:water|air|sea) temp|of frost|warm|cold|c\b)",
        high=2.0,
    ),
    _row("c", "number", behind=r" ?c(?![\w'/-])", low=-40.0, high=120.0),
    _row("water air sea", "number", before=_CLAUSE + r"(?:water|air|sea) ", behind=r" ?f(?![\w'/-])", high=120.0),
    _row("coolant oil", "number", before=rf"\b(?:coolant|oil)\b{_GAP}", low=20.0, high=140.0),
    _row("freezing frost cold degrees minus", "number", before=r"\b(?:freezing|frost|cold)\b[^.;!?\d]{0,18}", low=-60.0, high=-1.0),
    _row("f", "number", behind=r" ?f (?:water|air|sea|outside)\b", high=120.0),
    _row("temperature temp", "number", before=rf"\b(?:temperature|temp)\b{_GAP}", low=-40.0, high=120.0),
    _row(
        "built since launched year dated model bought new",
        "number",
        before=r"\b(?:built|since|launched|year|dated|model|bought|new)(?: in)? ",
        low=1900.0,
        high=2099.0,
    ),
    _row("hours", "number", before=r"\b(?:hours (?:on|of) (?:the |her )?engine|engine hours)(?: is| are|:)? "),
    _row("on", "number", before=r"\b(?:say|said|heard|called|calling|announced|told us|told me|listen|listening) on ", low=6.0, high=88.0),
    _row("came coming come course in on", "number", before=r"\b(?:came|come|coming|ran|run|left|go|went) (?:in |out )?on ", low=80.0, high=360.0),
    _row("bound", "number", before=r"\bbound (?:on )?", high=360.0),
    _row("x", "number", before=r"\bx to ", low=1.0, high=1.0),
    _row(
        "shop dealer chandler marina yard broker seller",
        "number",
        before=r"\b(?:shop|dealer|chandler|marina|yard|broker|seller) (?:wants?|asks?|offers?|says?) ",
    ),
    _row("tin metre year foot", "number", behind=r" an? (?:tin|pot|year)\b| (?:an?|per) (?:met(?:re|er)|foot) for\b"),
    _row("lot apiece", "number", behind=r" (?:the lot|apiece)\b", low=300.0),
    _row("vhf channel", "number", before=rf"\b(?:vhf|channel)\b{_GAP}", behind=_NO_LENGTH, low=1.0, high=99.0),
    _row(  # what stands above the deck
        "mast masthead masts air rig bridge",
        "length number",
        before=r"\b(?:masts?|masthead|air draught|air draft|bridge(?: clearance)?(?= (?:is|of))|clearance (?:under|below) (?:the )?bridge)\b(?:'s)?"
        r"(?: (?:is|height|of|stands|goes|reaches|rises|tops|up|out|to|at|about|being|height is))*[:=]? ?",
        behind=r"(?! (?:from|off|away|ahead|astern|to|upwind|downwind|behind|back|aft|abaft|of)\b)",
    ),
    _row("mast masts air rig", "length number", behind=r"[ -](?:(?:tall|high|of|wooden|alloy) )?(?:masts?|air draught|air draft|rig)\b"),
    _row(  # how high the land and what stands on it are
        "tall high up",
        "length number",
        before=r"\b(?:rig|spars?|hills?|cliffs?|crag|mountains?|tower|lighthouse|church|beacon|headland|island|skerry|trees?|pylon|crane)\b(?:'s)?"
        r"(?: (?:is|are|was|stands|rises|of|behind|above|over|there|here|ahead|astern|on|the|point|about|some|nearly|us|to))*[:=]? ?",
        behind=r" ?(?:tall|high|up|in height)\b",
    ),
    _row("headroom", "length number", behind=r" (?:of )?headroom\b"),
    _row("headroom", "length number", before=r"\bheadroom (?:is |of )?"),
    _row("swl wll mbl breaking breaks", "mass force", behind=r" (?:swl|wll|mbl|breaking|mbs)\b"),
    _row("swl wll mbl breaking breaks", "mass force", before=r"\b(?:swl|wll|mbl|breaking (?:load|strength)|breaks)(?: (?:is|of|at))*[:=]? "),
    _row("engine outboard diesel", "mass", behind=r" (?:engine|outboard|diesel)\b"),
    _row("m metre ft foot", "number mass", behind=r"(?: ?(?:kgs?|lbs?|g|kilos?))?(?:/| per | a | to the )(?:m|met(?:re|er)|ft|foot)\b"),
    _row("sail sails", "number area", before=r"\bsail area(?: is| of)?[:=]? "),
    _row(  # what a windlass, a heater or a lamp takes, and what the shop calls its models
        "winch windlass model heater solar panel panels inverter lamp fridge",
        "power",
        behind=r"(?:,? \d+ ?kg)? (?:electric )?(?:winch|windlass|model|heater|solar|panels?|inverter|lamp|fridge|one)\b",
        high=3000.0,
    ),
    _row(
        "tied tie ties undo undone untie slip cut",
        "speed",
        before=r"\b(?:with|by|in|has|tied|ties|using|just|only|holds|under|of) ",
        behind=r" (?:that|you|which|one|i|we|to|at|in|every|each|round)\b",
    ),
    _row("winch windlass model", "mass", behind=r" (?:winch|windlass|model)\b"),
    _row(  # how fast she goes under way
        "motor motors motoring cruise cruises cruising troll trolling steam steaming hull top flat speed",
        "speed",
        before=r"\b(?:(?:motor|cruis|troll|steam)(?:s|e|es|ing|ed)? (?:along )?at|hull speed|top speed|cruising speed|trolling speed|boat speed"
        r"|flat out,? (?:she|we|it) (?:makes|does|goes))\b(?: (?:is|of|about|around|a))*[:=]? ?",
    ),
)
_REACH = 64
_WORDS = frozenset[str]().union(*(row.words for row in ROWS))
_BY_WORD = {word: [at for at, row in enumerate(ROWS) if word in row.words] for word in _WORDS}


def idle(sentence: Sentence) -> list[Token]:
    """Return the tokens of a text with figures that are nothing here made something else."""
    tokens, text = list(sentence.tokens), sentence.text
    rows = [ROWS[at] for at in {at for word in sentence.words & _WORDS for at in _BY_WORD[word]}]
    if not rows:
        return tokens
    low = plain(text).lower() if text.isascii() else plain(text).casefold()
    if len(low) != len(text):
        return tokens
    return [
        _aside(token) if token.mention is not None and any(token.mention.kind in row.kinds and _is(row, token, low) for row in rows) else token
        for token in tokens
    ]


def _aside(token: Token) -> Token:
    assert token.mention is not None
    return token._replace(word="<other>", mention=token.mention._replace(kind="other", amount=None))


def _is(row: Row, token: Token, low: str) -> bool:
    """Say whether a figure is what a row tells of."""
    mention = token.mention
    if mention is None or not isinstance(mention.amount, Amount) or not row.low <= mention.amount.low <= row.high:
        return False
    before = ". " * (mention.start <= _REACH) + low[max(0, mention.start - _REACH) : mention.start]
    return (row.before is None or row.before.search(before) is not None) and (row.behind is None or row.behind.match(low, mention.end) is not None)


__all__ = ["idle"]
