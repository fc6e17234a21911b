"""Mass and strength of three-strand nylon, and what knots, wet and age leave of it.

Sizes, mass, least breaking and working load: Cordage Institute three-strand nylon figures as reproduced by a rope dealer:
reproduction. Other tables print up to 12 % more (5/8 in: 10 400 lbf), being averages; for 1/2 in 5546 to 7500 lbf circulate:
the figures of this one table are kept. A row for 1 in was not found; 1 1/8 in is printed "29,80", read as 29 800.

A knot leaves half (± 15 points): general rope-strength page citing tests: read. Wet nylon loses 5 to 25 %: M. Constantino, The
Knot Handbook, p. 15: read. Lines 10 to 12 years old broke at 25 to 51 %: sailing consumer magazine, break tests of seven weathered
nylon lines: read. Stretch of 15 to 20 % at a fifth of the breaking load: rope handbooks, memory.

Other materials have no table here. Braided nylon is taken as three-strand (it is stronger). Polyester 0.85 and polypropylene 0.6
of nylon's strength: memory of rope tables, on the safe side. Densities 1140, 1380, 910 kg/m³: general tables, memory.
"""

from anchorcalc.physics.constants import FOOT, INCH, MILLIMETRE, POUND, POUND_FORCE
from anchorcalc.physics.tables import frozen

SIZES = frozen([1 / 4, 5 / 16, 3 / 8, 7 / 16, 1 / 2, 9 / 16, 5 / 8, 3 / 4, 7 / 8, 9 / 8], times=INCH)
MASSES = frozen([1.5, 2.5, 3.5, 5.0, 6.5, 8.15, 10.5, 14.5, 20.0, 34.0], times=POUND / (100 * FOOT))  # kg/m
BREAKING_LOADS = frozen([1490, 2300, 3340, 4500, 5750, 7200, 9350, 12800, 18000, 29800], times=POUND_FORCE)
WORKING_LOADS = frozen([124, 192, 278, 410, 525, 720, 935, 1420, 2000, 3320], times=POUND_FORCE)

# Sizes that metric rope is sold in: common practice, no source.
METRIC_SIZES = frozen([8, 10, 12, 14, 16, 18, 20, 22, 24, 28, 32], times=MILLIMETRE)

# By material: nylon_3_strand, nylon_braid, polyester, polypropylene.
STRENGTH_OF_NYLON = frozen([1.0, 1.0, 0.85, 0.6])
DENSITIES = frozen([1140, 1140, 1380, 910])  # kg/m³

LEFT_BY_KNOT = 0.5
LEFT_WHEN_WET = 0.75
LEFT_BY_AGE = 0.25
STRETCH_AT_A_FIFTH = 0.20
