"""Anchors, chain and line that a code asks of a small craft, by her length.

IMO-published Code of Safety for Small Commercial Vessels in the Caribbean, Annex 7 (a UK small-vessel code prints the same
table): high-holding-power anchors; entered upward: read. The code means the length of the waterline, a UK version a mean length: to enter
it with the length over all asks for no less. It asks more where the windage is high. No main rope is printed from 15 m on
(the UK version: 14, 16 or 19 mm, not row by row): 14 mm, the weaker, is taken there.

A third more mass for an anchor that is not of high holding power (30 kg: 39.9 kg): Special Service Craft rules, part 3
ch. 5 sec. 5, 5.1.2: rule read. Which kinds those are (fisherman, grapnel, mushroom): common practice, no source.
"""

import numpy as np

from anchorcalc.physics.constants import MILLIMETRE
from anchorcalc.physics.tables import frozen

LENGTHS = frozen(np.arange(6, 25))
ANCHOR_MASSES = frozen([8, 9, 10, 11, 13, 15, 18, 21, 24, 27, 30, 34, 38, 42, 47, 52, 57, 62, 68])
KEDGE_MASSES = frozen([4, 4, 5, 5, 6, 7, 9, 10, 12, 13, 15, 17, 19, 21, 23, 26, 28, 31, 34])
CHAIN_SIZES = frozen([6, *[8] * 6, *[10] * 6, *[12] * 6], times=MILLIMETRE)
LINE_SIZES = frozen([*[12] * 6, *[14] * 13], times=MILLIMETRE)  # printed to 14 m

# By anchor kind: pivoting_fluke, plough, scoop, claw, fisherman, grapnel, mushroom.
MASS_OF_HIGH_HOLDING = frozen([1, 1, 1, 1, 1.33, 1.33, 1.33])
