"""Strength of shackles.

Safe load 3·D² short tons, D in inches: seamanship-formula page, old Navy rule: read. Forged carbon anchor shackles, breaking load
at least, and a fifth of it as working load: US Federal Specification RR-C-271D as quoted in a city utility's material standard
6966.1: reproduction. At 5/8 in the rule gives 2344 lbf, the specification 6500: the two conflict, and since nobody can
see of what steel a shackle is, the rule counts; the specification's figure is there to be shown beside it.
"""

from anchorcalc.physics.constants import INCH, MILLIMETRE, POUND_FORCE, SHORT_TON_FORCE
from anchorcalc.physics.tables import frozen

RULE = 3.0 * SHORT_TON_FORCE / INCH**2  # N/m²

FORGED_SIZES = frozen([1 / 2, 5 / 8, 3 / 4], times=INCH)
FORGED_BREAKING = frozen([20000, 32500, 47500], times=POUND_FORCE)
FORGED_BREAKING_OVER_WORKING = 5.0

# Sizes that shackles are sold in: common practice, no source.
METRIC_SIZES = frozen([5, 6, 8, 10, 12, 14, 16, 18, 20, 22, 25, 28, 32, 35, 38, 45, 50], times=MILLIMETRE)
INCH_SIZES = frozen([3 / 16, 1 / 4, 5 / 16, 3 / 8, 7 / 16, 1 / 2, 5 / 8, 3 / 4, 7 / 8, 1, 9 / 8, 5 / 4, 3 / 2, 7 / 4, 2], times=INCH)
