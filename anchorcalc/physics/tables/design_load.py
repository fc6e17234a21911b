"""Design loads for ground tackle by length and beam of the boat.

Source: ABYC H-40 (7/03), Table 1, design loads for sizing ground tackle. Entered upward, with length or beam, whichever gives
the greater row; the source does not interpolate. Rows of 20, 30, 40 and 50 ft, columns of 15 and 30 knots: reproduction
(re-read on a cruising-guide copy). The other rows, the beams and the storm column: memory.

Conflicts. The storm column (42 knots) is twice the working column in every row, which by the square law is the load at
42.4 knots; at 42 knots the square law gives 1.96 times the working load, 2 % less than printed. One copy shifts the storm
column by a row (500 lbf at 20 ft, 720 lbf at 25 ft): the greater figures are kept here. At 50 ft one copy prints 3600 lbf (at
45 knots), as the square law from 30 knots has it. All loads of this library go by the 30-knot column and the square of the wind.
"""

from anchorcalc.physics.constants import FOOT, KNOT, POUND_FORCE
from anchorcalc.physics.tables import frozen

LENGTHS = frozen([10, 15, 20, 25, 30, 35, 40, 50, 60], times=FOOT)
BEAMS_SAIL = frozen([4, 5, 7, 8, 9, 10, 11, 13, 15], times=FOOT)
BEAMS_MOTOR = frozen([5, 6, 8, 9, 11, 13, 14, 16, 18], times=FOOT)

WORKING_WIND = 30.0 * KNOT
WORKING_LOADS = frozen([160, 250, 360, 490, 700, 900, 1200, 1600, 2000], times=POUND_FORCE)
