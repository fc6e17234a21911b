"""Pull of an engine on a boat that is held (bollard pull).

T = 62.72·(SHP·D/12)^0.67 lbf, D in inches: propeller-handbook formula as quoted on a question-and-answer page: reproduction; full
ahead, open three-bladed propeller, good to 30 %. BHP × 0.9 × (1.10 to 1.40)/100 tonnes: captain-authored formula sheet: read. 20 to
30 lbf for each shaft horsepower: common practice, no source. Astern a half to two thirds of it: memory; a half is taken.
"""

from anchorcalc.physics.constants import KILOGRAM_FORCE, POUND_FORCE

PULL_OF_PROPELLER = 62.72 * POUND_FORCE  # at 1 hp and 1 ft
PROPELLER_POWER = 0.67
PULL_PER_HORSEPOWER_LOW, PULL_PER_HORSEPOWER_HIGH = 20.0 * POUND_FORCE, 30.0 * POUND_FORCE
MARINERS_LOW, MARINERS_HIGH = (0.9 * part / 100.0 * 1000.0 * KILOGRAM_FORCE for part in (1.10, 1.40))
ASTERN = 0.5
