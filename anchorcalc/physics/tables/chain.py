"""Mass and strength of short-link chain.

Mass and breaking load of metric chain: dealers' tables headed ISO 4565 / DIN 766 (short-link calibrated chain, 10 mm of 30 mm
pitch): reproduction. They differ by 5 to 15 % among themselves; both ends are kept. The 3.8 kg/m that one prints for 12 mm is
left out as the 13 mm figure. Of two breaking loads the lesser is taken: 16 not 18 kN (6 mm), 24.4 not 25 (7 mm), 30 not 32
(8 mm), 70 not 71 (12 mm) in grade 3; 20 not 27 (6 mm), 30 not 31 (7 mm), 62 not 63 (10 mm) in grade 4. The 90 kN of 12 mm
grade 4 stands in the second table only.

Working load limits by inch size and grade: 49 CFR 393.108 (two copies agree): reproduction. Cargo-securing law, no marine rule:
about a quarter (G30, G80) or a third (G43, G70) of the breaking load. Grade 80 of 5/16 in is printed below grade 70 there, and so
kept. A quarter of the breaking load as working load of metric chain: the factor of DIN 766, reproduction.

Where both tables print a metric size (7, 8, 10, 13, 16 mm in grade 30) the lesser working load is taken.
"""

import numpy as np

from anchorcalc.physics.constants import INCH, KILOGRAM_FORCE, MILLIMETRE, POUND_FORCE
from anchorcalc.physics.tables import frozen

METRIC_SIZES = frozen([6, 7, 8, 10, 11, 12, 13, 14, 16], times=MILLIMETRE)
_NONE = np.nan

MASS_SIZES = frozen([6, 7, 8, 10, 12, 13, 14, 16], times=MILLIMETRE)
MASSES_LOW = frozen([0.8, 1.1, 1.4, 2.2, 3.1, 3.8, 4.25, 5.7])  # kg/m, least of the tables
MASSES_HIGH = frozen([0.85, 1.15, 1.45, 2.3, 3.25, 3.9, 4.4, 5.8])  # kg/m, greatest of the tables

# Breaking loads, first and second table; grade 4 of 13 and 16 mm, and 11 mm, are not printed.
BREAKING_G30_FIRST = frozen([18, 25, 32, 50, _NONE, 71, 80, 100, 125], times=1000.0)
BREAKING_G30_SECOND = frozen([16, 24.4, 30, 50, _NONE, 70, _NONE, _NONE, _NONE], times=1000.0)
BREAKING_G40_FIRST = frozen([20, 30, 40, 63, _NONE, _NONE, _NONE, 121, _NONE], times=1000.0)
BREAKING_G40_SECOND = frozen([27, 31, 40, 62, _NONE, 90, _NONE, _NONE, _NONE], times=1000.0)

# 49 CFR 393.108: inch size, the metric size printed beside it, and working load limits.
INCH_SIZES = frozen([1 / 4, 5 / 16, 3 / 8, 7 / 16, 1 / 2, 5 / 8], times=INCH)
INCH_SIZES_AS_METRIC = frozen([7, 8, 10, 11, 13, 16], times=MILLIMETRE)
# The limits are printed in pounds and, beside the metric size, in kilograms; the two columns differ by up to 2 %.
INCH_G30 = frozen([1300, 1900, 2650, 3700, 4500, 6900], times=POUND_FORCE)
INCH_G43 = frozen([2600, 3900, 5400, 7200, 9200, 13000], times=POUND_FORCE)
INCH_G70 = frozen([3150, 4700, 6600, 8750, 11300, 15800], times=POUND_FORCE)
INCH_G80 = frozen([3500, 4500, 7100, _NONE, 12000, 18100], times=POUND_FORCE)

AS_METRIC_G30 = frozen([580, 860, 1200, 1680, 2030, 3130], times=KILOGRAM_FORCE)
AS_METRIC_G43 = frozen([1180, 1770, 2450, 3270, 4170, 5910], times=KILOGRAM_FORCE)
AS_METRIC_G70 = frozen([1430, 2130, 2990, 3970, 5130, 7170], times=KILOGRAM_FORCE)
AS_METRIC_G80 = frozen([1570, 2000, 3200, _NONE, 5400, 8200], times=KILOGRAM_FORCE)

BREAKING_OVER_WORKING = frozen([4, 4, 3, 3, 4])  # by grade: G30, G40, G43, G70, G80
