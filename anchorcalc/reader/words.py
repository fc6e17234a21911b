"""Words of plain speech that are one word to the reader, and those that say nothing."""

# Spoken and sloppy forms to the form that the tables use. Apostrophes and a possessive `'s` are gone before this table is asked.
SAME = {
    "whats": "what", "wot": "what", "wots": "what", "whatll": "what", "hows": "how", "wheres": "where", "whens": "when", "wen": "when", "whos": "who",
    "theres": "there", "thats": "that", "its": "it", "itll": "it", "im": "iam", "ive": "i", "ill": "i", "id": "i", "ld": "would", "weve": "we", "youre": "you",
    "shes": "she", "shell": "she", "theyre": "they", "u": "you", "ur": "your", "pls": "please", "plz": "please", "ok": "okay", "evry": "every", "giv": "give",
    "enuff": "enough", "enuf": "enough", "gonna": "will", "wanna": "want", "gotta": "must", "lettin": "letting", "gettin": "getting", "w": "with", "r": "are", "wat": "what", "wats": "what", "mil": "mm", "bwo": "bow", "hieght": "height", "hight": "height", "heigth": "height",
    "draft": "draught", "drafts": "draught", "plow": "plough", "plows": "plough", "neighbor": "neighbour", "neighbors": "neighbours", "meters": "metres",
    "meter": "metre", "foots": "feet", "roap": "rope", "road": "rode", "rhode": "rode", "ancor": "anchor", "anker": "anchor", "grey": "grey",
    "boats": "boat", "anchors": "anchors", "chains": "chain", "waters": "water", "bows": "bow", "ropes": "ropes", "winds": "wind", "tides": "tide",
    "hw": "hw", "lw": "lw", "loa": "loa", "w/o": "without", "thru": "through", "tonite": "tonight", "centre": "centre", "center": "centre",
    "rollers": "roller", "lenght": "length", "lengh": "length", "dept": "depth", "dephth": "depth", "deapth": "depth", "marx": "marks",
    "isnt": "isnt", "em": "them", "cos": "because", "gps": "gps", "bft": "bft", "alright": "right", "yacht": "yacht", "yachts": "yacht",
    "hooks": "hook", "sounders": "sounder", "readout": "reading", "radiuses": "radius", "clearence": "clearance", "swinging": "swinging",
}

# What may stand between a quantity and the word that says what it is, without parting them.
FILLERS = frozenset(
    "of is are was be at a an the my our her his their your this that it about around roughly approx approximately some just only like maybe say nearly almost "
    "over under to been being reads read says shows measures measured stands currently now about probably perhaps exactly good or so she we i there got have has "
    "which where what total whole well circa ca another further extra also still yet will comes : = ( ) ~ - – today tonight here me us".split()
)
# What parts two facts within a sentence.
PARTING = frozenset("and with plus then but while so because if when as although though".split())
STOPS = frozenset(".?!;\n")

NEGATIONS = frozenset("no not isnt arent wasnt dont doesnt never without nor neither wont cant aint".split())

# Words that take back the figure before them.
TAKES_BACK = (
    "no", "sorry", "i mean", "make that", "make it", "correction", "no wait", "wait", "ah no", "oops", "scratch that", "i meant", "no hang on", "er call that",
    "call it", "call that", "rather", "er", "or rather", "no sorry", "my mistake", "strike that", "not", "no make that", "no it is", "no plain", "actually", "hang on",
)

# What was, and what is another's: figures there are not the skipper's own of now.
PAST = (
    "last night", "yesterday", "last week", "last time", "last summer", "last year", "last month", "last weekend", "last season", "the other day", "used to", "once lay", "earlier today we",
    "previously", "the last boat", "the old rode", "the old boat", "the old anchor", "the old one", "our old", "my old", "we sold", "on the last", "last trip", "this morning we lay",
    "the previous", "back then", "years ago", "in spring we", "had been", "two days ago", "the day before", "earlier it was", "before lunch", "the boat before", "old marks were",
)
NOW = (
    "tonight", "today", "now", "this time", "this one", "currently", "at the moment", "at present", "the new one", "this evening", "gear now", "these days", "this boat",
)
OTHERS = (
    "my mate", "mate boat", "my brother", "my cousin", "cousin", "the neighbours trust", "neighbours trust", "the charter boat had",
    "charter boat", "the blue ketch", "the schooner", "schooner ahead", "the big boat next", "boat next to us", "boat next door", "the ferry company", "neighbour draws", "neighbour carries",
    "neighbour has", "next to us", "the boat ahead", "the boat astern", "the yacht next", "ahead of us has", "neighbour says his", "other boat has", "the guy next", "my dad", "his boat",
    "the other crew", "my buddy", "neighbour reckons", "neighbour says", "neighbour lies", "neighbour lay", "neighbour sits", "neighbour has", "neighbour boat", "neighbour carries",
    "at the outer port", "at the standard port", "cousin rope", "ferry company moors", "trawler beyond", "friend has", "brother has", "dad has", "neighbour chain", "sister ship",
)
OURS = ("we", "our", "ours", "mine", "my", "i", "iam", "weare", "us", "me", "this boat")
