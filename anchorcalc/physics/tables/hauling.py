"""What a windlass should pull, and what a person should.

Windlass: IACS UR A3 (Rev. 1, June 2019): hawse-pipe efficiency 70 % (3.1.2), 0.27·d² N for each metre of depth beyond 82.5 m
(3.1.2), 1.5 times the continuous pull for two minutes to break the anchor out (3.1.3): read. Continuous pull 37.5·d² N of grade 1
chain, d in mm (42.5 and 47.5 for grades 2 and 3): memory. A rule for ships; a set anchor of a small boat can ask more to break out.

By hand: 23 kg, the load constant of the revised NIOSH lifting equation (1991), a load that most adults may lift at best posture:
memory. Deck, wet rope and repeated pulls are worse than that; other guides give 25 kg for a man and 16 kg for a woman (memory).
"""

from anchorcalc.physics.constants import GRAVITY, MILLIMETRE
from anchorcalc.physics.tables import frozen

HAWSE_EFFICIENCY = 0.70
SHORT_OVER_CONTINUOUS = 1.5
DUTY_BY_SHIP_GRADE = frozen([37.5, 42.5, 47.5], times=1.0 / MILLIMETRE**2)  # N/m²
DEEP_PULL = 0.27 / MILLIMETRE**2  # N/m² a metre
DEEP_FROM = 82.5  # m

BY_HAND = 23.0 * GRAVITY  # N
