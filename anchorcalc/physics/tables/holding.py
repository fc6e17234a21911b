"""Holding of anchors by kind and bottom, and what of it is left when the pull is not flat.

Power law H = HR·(W/WR)^b, WR = 10 000 lb: UFC 4-159-03 (2005), eq. (26): read; HR and b of its Table 5-3: memory. Tests of
large anchors: hundreds to tens of thousands of pounds; the figures are good to 30 % (memory), and below 100 lb nothing was tested.

Shares of firm sand for other bottoms: a third to two thirds in soft ones (mud, sticky clay, loose sand, gravel), stiff clay half as
much again: passagemaking magazine, "Anchor math and management", part 2: read.

No table that is free of makers was found for plough, scoop, claw, fisherman, grapnel and mushroom: their bands (holding over
weight, 100 lb anchor, firm sand, and mud for the mushroom) are common practice, no source, and wide. Rock, coral and grass have no figure.

Share of the flat pull by scope: D. Casey, magazine article on scope, table reproduced in a public community wiki: reproduction;
a popular rule, good to 10 points, no test result. Past scope 2 (30 degrees) the fall from scope 3 to 2 goes on: own estimate.
"""

import numpy as np

from anchorcalc.physics.constants import POUND
from anchorcalc.physics.tables import frozen

REFERENCE_MASS = 10_000.0 * POUND
SPREAD = 0.3  # of a figure of the power law, either way
EDGE_MASS = 100.0 * POUND  # the lightest anchor that the power law is trusted for
TESTED_MOST = 40_000.0 * POUND

# Holding of the reference anchor over its weight, and the exponent (sand 0.8, mud 0.92). Lightweight is the pivoting fluke.
LIGHTWEIGHT_SAND, LIGHTWEIGHT_MUD = 12.6, 8.7
EXPONENT_SAND, EXPONENT_MUD = 0.8, 0.92

SOFT_LOW, SOFT_HIGH = 1.0 / 3.0, 2.0 / 3.0
STIFF_CLAY = 1.5

_FLUKE_SAND = LIGHTWEIGHT_SAND * (EDGE_MASS / REFERENCE_MASS) ** (EXPONENT_SAND - 1.0)
_FLUKE_MUD = LIGHTWEIGHT_MUD * (EDGE_MASS / REFERENCE_MASS) ** (EXPONENT_MUD - 1.0)

# Holding over weight of a 100 lb anchor, flat pull: pivoting_fluke, plough, scoop, claw, fisherman, grapnel, mushroom.
SAND_LOW = frozen([_FLUKE_SAND * (1 - SPREAD), 10, 15, 8, 5, 2, 1])
SAND_HIGH = frozen([_FLUKE_SAND * (1 + SPREAD), 35, 45, 25, 18, 8, 3])
MUD_LOW = frozen([_FLUKE_MUD * (1 - SPREAD), *(SAND_LOW[1:-1] * SOFT_LOW), 1])
MUD_HIGH = frozen([_FLUKE_MUD * (1 + SPREAD), *(SAND_HIGH[1:-1] * SOFT_HIGH), 4])
_NONE = np.full(7, np.nan)

# By anchor kind and bottom: sand, mud, clay (soft to stiff), grass, gravel, rock, coral.
RATIO_LOW = frozen(np.stack([SAND_LOW, MUD_LOW, SAND_LOW * SOFT_LOW, _NONE, SAND_LOW * SOFT_LOW, _NONE, _NONE], axis=1))
RATIO_HIGH = frozen(np.stack([SAND_HIGH, MUD_HIGH, SAND_HIGH * STIFF_CLAY, _NONE, SAND_HIGH * SOFT_HIGH, _NONE, _NONE], axis=1))
EXPONENTS = frozen([EXPONENT_SAND, EXPONENT_MUD, *[EXPONENT_SAND] * 5])

SCOPES = frozen([10, 7, 6, 5, 4, 3, 2])
SHARES = frozen([1.0, 0.91, 0.85, 0.77, 0.67, 0.53, 0.35])
_ANGLES = np.arcsin(1.0 / SCOPES)
_NO_SHARE_LEFT = _ANGLES[-1] + SHARES[-1] * (_ANGLES[-1] - _ANGLES[-2]) / (SHARES[-2] - SHARES[-1])  # 50 degrees
SHARE_ANGLES = frozen([0.0, *_ANGLES, _NO_SHARE_LEFT])
SHARES_AT_ANGLES = frozen([1.0, *SHARES, 0.0])
