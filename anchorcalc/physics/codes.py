"""Words as small numbers: a table is indexed by the place of a word in its tuple, so that a million rows need no loop."""

from typing import Any

import numpy as np

Codes = int | np.ndarray[Any, np.dtype[np.integer[Any]]]

BOAT_FORMS = ("motor", "sail", "multihull")
MOTOR, SAIL, MULTIHULL = range(3)

ANCHOR_KINDS = ("pivoting_fluke", "plough", "scoop", "claw", "fisherman", "grapnel", "mushroom")
PIVOTING_FLUKE, PLOUGH, SCOOP, CLAW, FISHERMAN, GRAPNEL, MUSHROOM = range(7)

BOTTOMS = ("sand", "mud", "clay", "grass", "gravel", "rock", "coral")
SAND, MUD, CLAY, GRASS, GRAVEL, ROCK, CORAL = range(7)

CHAIN_GRADES = ("G30", "G40", "G43", "G70", "G80")
G30, G40, G43, G70, G80 = range(5)

LINE_MATERIALS = ("nylon_3_strand", "nylon_braid", "polyester", "polypropylene")
NYLON_3_STRAND, NYLON_BRAID, POLYESTER, POLYPROPYLENE = range(4)
