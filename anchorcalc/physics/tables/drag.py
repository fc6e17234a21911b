"""Drag of wind and stream on a boat that lies bow on: coefficients, and the area that they work on.

Wind, sailing boat 0.7 (0.6 to 0.8): A. Grée, book on anchoring (Italian edition), as quoted in a sailing forum: reproduction,
with 15 % either way. Wind, motor boat and multihull 0.9 (0.7 to 1.05): own estimate, between that figure and a cube's 1.05
(Hoerner, memory). Frontal area as a part of length × beam (0.25 sail and multihull, 0.3 motor; a third either way): own estimate.

Stream: UFC 4-159-03, Design: Moorings (3 October 2005), eqs (16) to (19): form drag coefficient 0.1 on beam × draught, skin
friction 0.075/(log10 R − 2)² on 1.7·T·L + V/T: read. Ship formulas; for a small boat a half either way (own estimate).
The locked screw on top: coefficient 1 as in eqs (20) to (22), memory; its blades, own estimate.

Usual beam (length^(2/3) + 1 ft, in feet) of a boat with one hull: common practice, memory; of a multihull (0.55 of the length),
usual draughts, and the part of length × beam × draught that the hull fills: own estimates.
"""

from anchorcalc.physics.tables import frozen

# By boat form: motor, sail, multihull.
WIND_DRAG = frozen([0.9, 0.7, 0.9])
FRONTAL_AREA_SHARE = frozen([0.30, 0.25, 0.25])
USUAL_DRAUGHT_SHARE = frozen([0.10, 0.18, 0.10])
MULTIHULL_BEAM_SHARE = 0.55

CURRENT_FORM_DRAG = 0.1
HULL_FULLNESS = 0.4
SCREW_DRAG = 1.0
SCREW_DIAMETER_SHARE = 0.04  # of the length: 0.4 m under 10 m
SCREW_BLADE_SHARE = 0.5  # of the disc
