"""Terms of wind, stream and what pulls on the rode."""

from anchorcalc.units.kinds import ANGLE, FORCE, SPEED
from anchorcalc.vocabulary.term import Term

WIND = Term(
    name="wind",
    kind=SPEED,
    meaning="the strongest wind to expect at the boat, gusts included",
    prompt="What is the strongest wind to expect, gusts included?",
    example="30 kn",
    least=0.0,
    most=103.0,
    why="no wind of more than 200 kn is anchored in",
    nouns=("wind", "breeze", "gusts", "gusting", "blow", "gale", "gust", "blowing"),
)
CURRENT = Term(
    name="current",
    kind=SPEED,
    meaning="stream that runs past the boat",
    prompt="How fast does the stream run?",
    example="1.5 kn",
    least=0.0,
    most=10.3,
    why="no anchorage has a stream of more than 20 kn",
    usual=0.0,
    assumed="no current",
    nouns=("current", "stream", "tidal stream"),
)
DRIFT = Term(
    name="drift",
    kind=SPEED,
    meaning="speed over ground towards the danger",
    prompt="How fast does the boat drift towards it?",
    example="1 kn",
    above=0.0,
    most=10.3,
    why="a boat without way drifts at less than 20 kn",
    nouns=("drift", "drifting", "setting us", "making"),
)
LOAD = Term(
    name="load",
    kind=FORCE,
    meaning="pull on the rode, where known",
    prompt="How great is the pull on the rode?",
    example="3 kN",
    above=0.0,
    most=1e6,
    why="a small boat's rode never carries 1 MN",
    nouns=("load", "pull on the rode", "strain", "tension", "pull"),
)
PULL = Term(
    name="pull",
    kind=FORCE,
    meaning="measured pull of the engine astern",
    prompt="How hard does the engine pull astern?",
    example="1.5 kN",
    above=0.0,
    most=1e6,
    why="a small boat's engine never pulls 1 MN",
    nouns=("pull", "pulls", "thrust", "bollard pull"),
)
PULL_ANGLE = Term(
    name="pull_angle",
    kind=ANGLE,
    meaning="angle of the rode at the shank, above a level seabed",
    prompt="At what angle does the rode pull at the anchor?",
    example="5 deg",
    least=0.0,
    most=1.5708,
    why="a rode pulls between flat (0) and straight up (90 deg)",
    nouns=("pull angle", "at the shank", "angle at the anchor"),
)
SPREAD = Term(
    name="spread",
    kind=ANGLE,
    meaning="angle between two rodes",
    prompt="What is the angle between the two rodes?",
    example="60 deg",
    least=0.0,
    most=3.14159265358980,
    why="two rodes spread 180 deg at most",
    nouns=("between the rodes", "spread", "angle between", "apart", "between them", "vee"),
)
WIND_OFF = Term(
    name="wind_off",
    kind=ANGLE,
    meaning="wind off the line that halves the angle between two rodes",
    prompt="How far is the wind off the line that halves the angle?",
    example="10 deg",
    least=0.0,
    most=3.14159265358980,
    why="the wind is 180 deg off at most",
    usual=0.0,
    assumed="wind along the line that halves the angle",
    nouns=("wind off", "off the middle", "off the bisector"),
)

TERMS = (WIND, CURRENT, DRIFT, LOAD, PULL, PULL_ANGLE, SPREAD, WIND_OFF)
