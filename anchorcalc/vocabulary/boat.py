"""Terms of the boat and her engine."""

from anchorcalc.units.kinds import ANGLE, LENGTH, MASS, POWER, WORD
from anchorcalc.vocabulary.term import Term

_BOAT = "this is for boats up to 60 m"

BOW_HEIGHT = Term(
    name="bow_height",
    kind=LENGTH,
    meaning="bow roller or chock above the water",
    prompt="How high is the bow roller above the water?",
    example="5 ft",
    least=0.0,
    most=10.0,
    why="a small boat's bow is less than 10 m above the water",
    usual=1.2,
    assumed="a bow roller 1.2 m above the water",
    nouns=("bow height", "bow roller", "roller", "bow", "chock", "freeboard", "bow rail", "stem", "front deck", "fairlead", "hawse"),
)
BOAT_LENGTH = Term(
    name="boat_length",
    kind=LENGTH,
    meaning="length over all",
    prompt="How long is the boat over all?",
    example="28 ft",
    above=0.0,
    most=60.0,
    why=_BOAT,
    nouns=("loa", "length over all", "length overall", "boat", "long", "footer", "yacht", "sloop", "cruiser", "vessel", "hull", "overall"),
)
BEAM = Term(
    name="beam",
    kind=LENGTH,
    meaning="greatest beam",
    prompt="How wide is the boat?",
    example="9 ft",
    above=0.0,
    most=30.0,
    why=_BOAT,
    nouns=("beam", "wide", "in the beam", "width"),
)
DRAUGHT = Term(
    name="draught",
    kind=LENGTH,
    meaning="draught",
    prompt="How much does the boat draw?",
    example="1.6 m",
    above=0.0,
    most=10.0,
    why="a small boat draws less than 10 m",
    nouns=("draught", "draft", "draws", "draw", "drawing", "keel depth"),
)
BOAT_FORM = Term(
    name="boat_form",
    kind=WORD,
    meaning="form of the boat",
    prompt="Is she a motor boat, a sailing boat or a multihull?",
    example="sail",
    usual="motor",
    assumed="a motor boat (the greater windage)",
    choices=("motor", "sail", "multihull"),
    said_as=(
        (
            "motor",
            (
                "motor vessel",
                "motor craft",
                "motor ship",
                "motor boat",
                "motorboat",
                "motor launch",
                "motor yacht",
                "motor cruiser",
                "powerboat",
                "power boat",
                "trawler",
                "motor",
            ),
        ),
        (
            "sail",
            (
                "sailing vessel",
                "sailing craft",
                "sailing dinghy",
                "sailing boat",
                "sailing one",
                "sailboat",
                "sailing yacht",
                "sail boat",
                "sloop",
                "ketch",
                "yawl",
                "cutter",
                "sail",
            ),
        ),
        ("multihull", ("multihull", "catamaran", "cat", "trimaran", "tri")),
    ),
)
DISPLACEMENT = Term(
    name="displacement",
    kind=MASS,
    meaning="mass of the boat as she lies",
    prompt="How heavy is the boat?",
    example="6 t",
    above=0.0,
    most=1_000_000.0,
    why="this is for boats up to 1000 t",
    nouns=("displacement", "displaces", "weighs"),
)
ENGINE_POWER = Term(
    name="engine_power",
    kind=POWER,
    meaning="shaft power used astern",
    prompt="How much power do you use astern?",
    example="30 hp",
    above=0.0,
    most=2_000_000.0,
    why="a small boat has less than 2000 kW",
    nouns=("engine", "diesel", "outboard", "horsepower", "motor"),
)
PROPELLER_DIAMETER = Term(
    name="propeller_diameter",
    kind=LENGTH,
    meaning="diameter of the propeller",
    prompt="What is the diameter of the propeller?",
    example="16 in",
    least=0.1,
    most=3.0,
    why="a small boat's propeller is 0.1 to 3 m",
    nouns=("propeller", "prop", "screw"),
)
ANTENNA_FROM_BOW = Term(
    name="antenna_from_bow",
    kind=LENGTH,
    meaning="GPS antenna aft of the bow",
    prompt="How far aft of the bow is the GPS antenna?",
    example="8 m",
    least=0.0,
    most=60.0,
    why=_BOAT,
    nouns=("antenna", "aerial", "gps antenna", "gps"),
)
ANGLE_AT_BOW = Term(
    name="angle",
    kind=ANGLE,
    meaning="line below the horizontal at the bow",
    prompt="At what angle does the line leave the bow, below the horizontal?",
    example="10 deg",
    above=0.0,
    most=1.5707,
    why="a line hanging straight down (90 deg) has no scope",
    nouns=("angle", "below the horizontal", "degrees"),
)

TERMS = (
    BOW_HEIGHT,
    BOAT_LENGTH,
    BEAM,
    DRAUGHT,
    BOAT_FORM,
    DISPLACEMENT,
    ENGINE_POWER,
    PROPELLER_DIAMETER,
    ANTENNA_FROM_BOW,
    ANGLE_AT_BOW,
)
