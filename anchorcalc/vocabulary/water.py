"""Terms of the water: depth, tide, sounder, beach."""

from anchorcalc.units.kinds import CLOCK, LENGTH, SLOPE, WORD
from anchorcalc.vocabulary.term import Term

DEPTH = Term(
    name="depth",
    kind=LENGTH,
    meaning="surface to seabed where the anchor lies, now",
    prompt="How deep is the water where the anchor lies?",
    example="12 ft",
    above=0.0,
    most=200.0,
    why="no small boat anchors by hand in more than 200 m",
    nouns=("depth of water", "water depth", "depth", "water", "deep", "deep water", "soundings", "sounding", "bottom at", "by the lead"),
)
TIDE_RISE = Term(
    name="tide_rise",
    kind=LENGTH,
    meaning="rise still to come to the highest water of the stay",
    prompt="How much will the water still rise while you stay?",
    example="0.5 m",
    least=0.0,
    most=17.0,
    why="no tide on earth rises more than about 17 m",
    usual=0.0,
    assumed="no rise of the tide",
    caution="no_tide",
    nouns=("rise of tide", "tide rise", "rise", "tide to come", "tide still to come", "flood", "still to make", "to come up"),
)
TIDE_FALL = Term(
    name="tide_fall",
    kind=LENGTH,
    meaning="fall still to come to the lowest water of the stay",
    prompt="How much will the water still fall while you stay?",
    example="0.5 m",
    least=0.0,
    most=17.0,
    why="no tide on earth falls more than about 17 m",
    usual=0.0,
    assumed="no fall of the tide",
    caution="no_tide",
    nouns=("fall of tide", "tide fall", "fall", "drop", "ebb", "to fall", "to drop"),
)
LOW_HEIGHT = Term(
    name="low_height",
    kind=LENGTH,
    meaning="height of low water above datum",
    prompt="What is the height of low water?",
    example="0.6 m",
    least=-5.0,
    most=20.0,
    why="heights of tide lie between -5 and 20 m of datum",
    nouns=("low water", "low tide", "lw"),
)
HIGH_HEIGHT = Term(
    name="high_height",
    kind=LENGTH,
    meaning="height of high water above datum",
    prompt="What is the height of high water?",
    example="3.4 m",
    least=-5.0,
    most=20.0,
    why="heights of tide lie between -5 and 20 m of datum",
    nouns=("high water", "high tide", "hw"),
)
LOW_AT = Term(
    name="low_at",
    kind=CLOCK,
    meaning="time of low water",
    prompt="At what time is low water?",
    example="06:10",
    nouns=("low water", "low tide", "lw"),
)
HIGH_AT = Term(
    name="high_at",
    kind=CLOCK,
    meaning="time of high water",
    prompt="At what time is high water?",
    example="12:25",
    nouns=("high water", "high tide", "hw"),
)
AT = Term(name="at", kind=CLOCK, meaning="the time asked about", prompt="For what time?", example="09:30", nouns=("at", "now"))
SLOPE_OF_BEACH = Term(
    name="slope",
    kind=SLOPE,
    meaning="rise of the beach: one down for so many out",
    prompt="How steep is the beach (one down for how many out)?",
    example="1:20",
    least=1.0,
    most=1000.0,
    why="a beach is neither steeper than 1:1 nor flatter than 1:1000",
    nouns=("slope", "gradient", "beach slope", "shelves", "beach"),
)
UNDER_KEEL = Term(
    name="under_keel",
    kind=LENGTH,
    meaning="water wanted under the keel at low water",
    prompt="How much water do you want under the keel?",
    example="0.5 m",
    least=0.0,
    most=20.0,
    why="more than 20 m under the keel is not a clearance",
    usual=0.3,
    assumed="0.3 m of water under the keel",
    nouns=("under the keel", "under keel", "clearance", "under her"),
)
READING = Term(
    name="reading",
    kind=LENGTH,
    meaning="what the sounder shows",
    prompt="What does the sounder show?",
    example="9.5 ft",
    least=0.0,
    most=200.0,
    why="no small boat anchors by hand in more than 200 m",
    nouns=("sounder", "echo sounder", "depth sounder", "fish finder", "fishfinder", "sounder reads", "reading", "shows"),
)
READS_FROM = Term(
    name="reads_from",
    kind=WORD,
    meaning="what the sounder measures from",
    prompt="Does the sounder measure from the surface, the transducer or the keel?",
    example="transducer",
    choices=("surface", "transducer", "keel"),
    said_as=(("surface", ("surface", "waterline")), ("transducer", ("transducer",)), ("keel", ("keel",))),
)
TRANSDUCER_DEPTH = Term(
    name="transducer_depth",
    kind=LENGTH,
    meaning="transducer below the surface",
    prompt="How far below the surface is the transducer?",
    example="18 in",
    least=0.0,
    most=10.0,
    why="a small boat draws less than 10 m",
    nouns=("transducer", "transducer depth"),
)

TERMS = (
    DEPTH,
    TIDE_RISE,
    TIDE_FALL,
    LOW_HEIGHT,
    LOW_AT,
    HIGH_HEIGHT,
    HIGH_AT,
    AT,
    SLOPE_OF_BEACH,
    UNDER_KEEL,
    READING,
    READS_FROM,
    TRANSDUCER_DEPTH,
)
