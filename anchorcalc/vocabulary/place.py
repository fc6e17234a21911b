"""Terms of place: what to stay clear of, the neighbour, positions and fixes."""

from anchorcalc.units.kinds import FIXES, LENGTH, POSITION, WORD
from anchorcalc.vocabulary.term import Term

_NEAR = "what is more than 10 km off is no matter of swinging"

DISTANCE = Term(
    name="distance",
    kind=LENGTH,
    meaning="from the anchor to the thing to stay clear of",
    prompt="How far is it from the anchor to what you must stay clear of?",
    example="60 m",
    above=0.0,
    most=10_000.0,
    why=_NEAR,
    nouns=("from the anchor", "away", "off", "distance", "from"),
)
MARGIN = Term(
    name="margin",
    kind=LENGTH,
    meaning="clearance wanted beyond touching",
    prompt="How much clearance do you want beyond touching?",
    example="10 m",
    least=0.0,
    most=10_000.0,
    why=_NEAR,
    usual=0.0,
    assumed="no margin beyond touching",
    nouns=("margin", "in hand", "to spare", "clearance", "safety"),
)
OTHER_RODE_OUT = Term(
    name="other_rode_out",
    kind=LENGTH,
    meaning="the neighbour's rode out",
    prompt="How much rode has the neighbour out?",
    example="30 m",
    above=0.0,
    most=1000.0,
    why="no small boat carries more than 1000 m of rode",
    nouns=("his rode", "their rode", "neighbour's rode", "neighbor's rode"),
)
OTHER_BOAT_LENGTH = Term(
    name="other_boat_length",
    kind=LENGTH,
    meaning="the neighbour's length over all",
    prompt="How long is the neighbour's boat?",
    example="9 m",
    above=0.0,
    most=400.0,
    why="the longest ships are about 400 m",
    nouns=("his boat", "their boat", "neighbour's boat", "neighbor's boat", "other boat"),
)
DISTANCE_OFF = Term(
    name="distance_off",
    kind=LENGTH,
    meaning="from the boat to the danger that she drifts to",
    prompt="How far is it from the boat to the danger?",
    example="150 m",
    least=0.0,
    most=100_000.0,
    why="a danger more than 100 km off leaves time to think",
    nouns=("rocks", "lee shore", "shore", "to leeward", "off"),
)
ANCHOR_AT = Term(
    name="anchor_at",
    kind=POSITION,
    meaning="where the anchor lies",
    prompt="At what position does the anchor lie?",
    example="59.314 N, 18.912 E",
    nouns=("anchor", "anchor at", "dropped at", "hook at"),
)
FIXES_OF_BOAT = Term(
    name="fixes",
    kind=FIXES,
    meaning="where the boat has been: times with positions",
    prompt="Where has the boat been, and when?",
    example="14:00 59.3140 N 18.9120 E; 14:10 59.3141 N 18.9123 E",
    nouns=("fix", "fixes", "position", "now at"),
)
POSITION_ERROR = Term(
    name="position_error",
    kind=LENGTH,
    meaning="error of a fix, 95 %",
    prompt="How great is the error of a fix (95 %)?",
    example="5 m",
    least=0.0,
    most=1000.0,
    why="a fix that may be 1 km off tells nothing of dragging",
    usual=5.0,
    assumed="fixes good to 5 m (95 %)",
    nouns=("error", "accuracy", "gps error", "fixes good to"),
)
UNITS = Term(
    name="units",
    kind=WORD,
    meaning="how the answer is shown",
    prompt="Shall the answer be in metric or US units?",
    example="metric",
    choices=("us", "metric"),
    said_as=(("us", ("us units", "imperial", "in feet")), ("metric", ("metric", "in metres", "in meters"))),
)

TERMS = (
    DISTANCE,
    MARGIN,
    OTHER_RODE_OUT,
    OTHER_BOAT_LENGTH,
    DISTANCE_OFF,
    ANCHOR_AT,
    FIXES_OF_BOAT,
    POSITION_ERROR,
    UNITS,
)
