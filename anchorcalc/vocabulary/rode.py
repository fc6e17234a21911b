"""Terms of the rode: chain, line, marks and scope."""

from anchorcalc.units.kinds import LENGTH, LENGTHS, RATIO, SIZE, WORD
from anchorcalc.vocabulary.term import Term

_LONG = "no small boat carries more than 1000 m of rode"

SCOPE = Term(
    name="scope",
    kind=RATIO,
    meaning="rode out over total height (depth + tide_rise + bow_height)",
    prompt="At what scope?",
    example="7:1",
    above=1.0,
    most=30.0,
    why="a scope of more than 30 is not practised",
    usual=7.0,
    assumed="scope 7:1",
    nouns=("scope", "ratio", "times the depth"),
)
LEAST_SCOPE = Term(
    name="least_scope",
    kind=RATIO,
    meaning="the scope below which more rode must go out",
    prompt="What is the least scope you will lie to?",
    example="5:1",
    above=1.0,
    most=30.0,
    why="a scope of more than 30 is not practised",
    usual=5.0,
    assumed="a least scope of 5:1",
    nouns=("least scope", "minimum scope", "never less than", "no less than", "scope drops below"),
)
RODE_OUT = Term(
    name="rode_out",
    kind=LENGTH,
    meaning="chain and line outboard, roller to anchor",
    prompt="How much rode is out?",
    example="40 m",
    above=0.0,
    most=1000.0,
    why=_LONG,
    nouns=("rode out", "chain out", "cable out", "line out", "out", "veered", "let out", "cable veered"),
)
RODE_ABOARD = Term(
    name="rode_aboard",
    kind=LENGTH,
    meaning="all the rode there is, chain and line",
    prompt="How much rode do you have in all, chain and line?",
    example="60 m",
    above=0.0,
    most=1000.0,
    why=_LONG,
    nouns=("rode aboard", "total rode", "rode in all", "of rode", "rode", "anchor line", "in the locker", "all told"),
)
CHAIN = Term(
    name="chain",
    kind=LENGTH,
    meaning="length of chain",
    prompt="How much chain?",
    example="10 m",
    least=0.0,
    most=1000.0,
    why=_LONG,
    usual=0.0,
    assumed="no chain",
    nouns=("chain", "length of chain", "anchor chain"),
)
LINE = Term(
    name="line",
    kind=LENGTH,
    meaning="length of rope behind the chain",
    prompt="How much rope behind the chain?",
    example="40 m",
    least=0.0,
    most=1000.0,
    why=_LONG,
    nouns=("line", "rope", "warp", "nylon", "anchorplait"),
)
RESERVE = Term(
    name="reserve",
    kind=LENGTH,
    meaning="rode that stays aboard: turns on the cleat, tail",
    prompt="How much rode stays aboard?",
    example="2 m",
    least=0.0,
    most=1000.0,
    why=_LONG,
    usual=0.0,
    assumed="nothing kept aboard",
    nouns=("reserve", "tail", "kept aboard", "stays aboard", "left over", "spare", "for the cleat", "inboard"),
)
CHAIN_SIZE = Term(
    name="chain_size",
    kind=SIZE,
    meaning="diameter of chain link wire",
    prompt="What size is the chain?",
    example="8 mm",
    least=0.003,
    most=0.03,
    why="chain handled on a small boat is 3 to 30 mm",
    nouns=("chain", "chain size"),
)
LINE_SIZE = Term(
    name="line_size",
    kind=SIZE,
    meaning="diameter of rope",
    prompt="What size is the rope?",
    example="14 mm",
    least=0.004,
    most=0.06,
    why="rope handled on a small boat is 4 to 60 mm",
    nouns=("line", "rope", "warp", "nylon"),
)
CHAIN_GRADE = Term(
    name="chain_grade",
    kind=WORD,
    meaning="grade of the chain",
    prompt="What grade is the chain?",
    example="G30",
    usual="G30",
    assumed="chain of grade 30",
    choices=("G30", "G40", "G43", "G70", "G80"),
    said_as=(
        ("G30", ("g30", "g 30", "grade 30", "grade thirty", "proof coil", "grade 3", "g3")),
        ("G40", ("g40", "g 40", "grade 40", "grade forty", "grade 4", "g4")),
        ("G43", ("g43", "g 43", "grade 43", "grade forty three", "grade forty-three", "high test", "high-test")),
        ("G70", ("g70", "g 70", "grade 70", "grade seventy")),
        ("G80", ("g80", "g 80", "grade 80")),
    ),
)
LINE_MATERIAL = Term(
    name="line_material",
    kind=WORD,
    meaning="material and lay of the rope",
    prompt="What is the rope made of?",
    example="nylon_3_strand",
    usual="nylon_3_strand",
    assumed="three-strand nylon",
    choices=("nylon_3_strand", "nylon_braid", "polyester", "polypropylene"),
    said_as=(
        (
            "nylon_3_strand",
            (
                "three-strand nylon",
                "3-strand nylon",
                "three strand nylon",
                "3 strand nylon",
                "laid nylon",
                "three-strand",
                "3-strand",
                "three strand",
                "3 strand",
                "nylon three strand",
                "nylon 3 strand",
            ),
        ),
        (
            "nylon_braid",
            (
                "braided nylon",
                "nylon braid",
                "plaited nylon",
                "nylon plait",
                "octoplait nylon",
                "double braid nylon",
                "8 plait nylon",
                "eight plait nylon",
            ),
        ),
        ("polyester", ("polyester",)),
        ("polypropylene", ("polypropylene", "polyprop", "poly prop")),
    ),
)
MARK_INTERVAL = Term(
    name="mark_interval",
    kind=LENGTH,
    meaning="distance between marks on the rode",
    prompt="How far apart are the marks on the rode?",
    example="10 m",
    above=0.0,
    most=100.0,
    why="marks more than 100 m apart are no marks",
    nouns=("marks", "mark", "marked", "knots", "tags", "markers", "every", "apart"),
)
MARKS = Term(
    name="marks",
    kind=LENGTHS,
    meaning="irregular marks",
    prompt="At what lengths are the marks?",
    example="10,20,40 m",
    above=0.0,
    most=1000.0,
    why=_LONG,
    nouns=("marks at", "marked at", "paint at", "tags at"),
)
MARKS_FROM = Term(
    name="marks_from",
    kind=WORD,
    meaning="where the marks count from",
    prompt="Do the marks count from the anchor or from the end of the chain?",
    example="anchor",
    usual="anchor",
    assumed="marks that count from the anchor",
    choices=("anchor", "chain_end"),
    said_as=(
        ("anchor", ("from the anchor", "from the shackle")),
        (
            "chain_end",
            ("from the chain end", "from the end of the chain", "line only", "from where the chain ends", "from the splice", "on the rope only"),
        ),
    ),
)
SHACKLE_SIZE = Term(
    name="shackle_size",
    kind=SIZE,
    meaning="diameter of the shackle's bow",
    prompt="What size is the shackle?",
    example="10 mm",
    least=0.003,
    most=0.05,
    why="shackles on a small boat are 3 to 50 mm",
    nouns=("shackle", "shackle size"),
)
SHACKLES = Term(
    name="shackles",
    kind=WORD,
    meaning="pins of the shackles: wired or tied, or left open",
    prompt="Are the shackle pins seized?",
    example="seized",
    choices=("seized", "open"),
    said_as=(
        (
            "seized",
            (
                *("seized", "moused", "wired", "shackles tied", "pins tied"),
                *("wire the shackles", "wire the pins", "mouse the shackles", "seize the shackles"),
            ),
        ),
        (
            "open",
            (
                *("not seized", "unseized", "arent seized", "not moused", "unmoused", "arent moused", "not wired", "unwired", "arent wired"),
                *("not secured", "unsecured", "not locked", "open pins", "open pin", "pins open", "pins are open"),
                *("shackles open", "shackles are open"),
                *("no mousing", "pins finger tight", "pins just finger tight", "bare pin", "bare pins", "loose pins"),
                *("pins loose", "pin loose", "pins of the shackles open", "pins of the shackles are open"),
                *("just hand tight", "pins are bare"),
            ),
        ),
    ),
)
BITTER_END = Term(
    name="bitter_end",
    kind=WORD,
    meaning="how the inner end of the rode is held",
    prompt="How is the inner end of the rode held?",
    example="tied",
    choices=("tied", "fixed", "free"),
    said_as=(
        (
            "tied",
            (
                *("bitter end tied", "bitter end is tied", "inner end tied", "inner end is tied", "end tied", "end is tied"),
                *("lashed", "lashing", "tied off", "tied with"),
            ),
        ),
        (
            "fixed",
            (
                *("shackled hard", "bitter end shackled", "bitter end is shackled", "bitter end fixed", "bitter end is fixed"),
                *("fixed with a shackle", "inner end shackled", "end of the chain shackled", "end of rope shackled"),
                *("end of the rope shackled", "end of chain shackled", "inner end fixed", "end bolted", "end shackled"),
                *("end is shackled", "end welded", "welded", "bolted"),
            ),
        ),
        (
            "free",
            (
                *("bitter end free", "bitter end is free", "bitter end loose", "bitter end is loose", "end free", "end is free", "end is loose"),
                *("end loose", "end lies loose", "end just lies", "end simply lies", "end not secured", "end isnt secured", "end unsecured"),
                *("not made fast", "isnt made fast", "loose in the locker", "not attached", "isnt attached", "not tied", "isnt tied", "not fastened"),
            ),
        ),
    ),
)

TERMS = (
    SCOPE,
    LEAST_SCOPE,
    RODE_OUT,
    RODE_ABOARD,
    CHAIN,
    LINE,
    RESERVE,
    CHAIN_SIZE,
    LINE_SIZE,
    CHAIN_GRADE,
    LINE_MATERIAL,
    MARK_INTERVAL,
    MARKS,
    MARKS_FROM,
    SHACKLE_SIZE,
    SHACKLES,
    BITTER_END,
)
