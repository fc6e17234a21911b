"""Terms of the anchor and of the bottom it lies in."""

from anchorcalc.units.kinds import FLAG, MASS, WORD
from anchorcalc.vocabulary.term import Term

ANCHOR_KIND = Term(
    name="anchor_kind",
    kind=WORD,
    meaning="kind of anchor",
    prompt="What kind of anchor is it?",
    example="plough",
    choices=("pivoting_fluke", "plough", "scoop", "claw", "fisherman", "grapnel", "mushroom"),
    said_as=(
        (
            "pivoting_fluke",
            ("pivoting fluke", "pivoting-fluke", "fluke anchor", "flukes", "fluke", "lightweight fluke", "hinged fluke", "flat anchor"),
        ),
        ("plough", ("plough", "plow")),
        ("scoop", ("scoop", "spade-shaped", "roll-bar", "roll bar", "rollbar", "concave")),
        ("claw", ("claw",)),
        (
            "fisherman",
            ("fisherman", "fishermans", "fisherman's", "admiralty pattern", "admiralty type", "admiralty anchor", "stocked", "stock anchor"),
        ),
        ("grapnel", ("grapnel", "folding anchor", "folding grapnel")),
        ("mushroom", ("mushroom",)),
    ),
)
ANCHOR_MASS = Term(
    name="anchor_mass",
    kind=MASS,
    meaning="mass of the anchor",
    prompt="How heavy is the anchor?",
    example="15 kg",
    above=0.0,
    most=1000.0,
    why="an anchor worked by hand weighs far less than 1000 kg",
    nouns=("anchor", "hook", "plough", "plow", "claw", "fluke"),
)
BOTTOM = Term(
    name="bottom",
    kind=WORD,
    meaning="what the seabed is",
    prompt="What is the bottom?",
    example="sand",
    choices=("sand", "mud", "clay", "grass", "gravel", "rock", "coral"),
    said_as=(
        ("sand", ("sand", "sandy", "sands")),
        ("mud", ("mud", "muddy", "ooze", "silt")),
        ("clay", ("clay",)),
        ("grass", ("grass", "weed", "weeds", "weedy", "kelp", "eelgrass", "seagrass", "grassy")),
        ("gravel", ("gravel", "gravelly", "shingle", "shingly", "pebbles", "pebbly")),
        ("rock", ("rock", "rocks", "rocky", "boulders")),
        ("coral", ("coral",)),
    ),
    nouns=("bottom", "seabed", "ground", "holding ground"),
)
SPARE_ANCHOR = Term(
    name="spare_anchor",
    kind=FLAG,
    meaning="whether a second anchor is aboard",
    prompt="Is there a second anchor aboard?",
    example=True,
    nouns=("spare anchor", "second anchor", "kedge", "another anchor"),
)

TERMS = (ANCHOR_KIND, ANCHOR_MASS, BOTTOM, SPARE_ANCHOR)
