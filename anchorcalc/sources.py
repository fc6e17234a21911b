"""Every source that an answer cites: one constant each, with how it was come by in brackets."""

SCOPE_RULE = "Scope is rode out over depth + bow height + tide: US Sailing basic keelboat text, electronic 5th ed., p. 84 [read]."
SCOPE_WORDS = "Least scopes of 3 (calm), 5 (working) and 7 (heavy weather): commercial-master course notes, anchoring unit [read]; common practice."
TAUT_LINE = "Swinging radius of a taut line, √(rode² − height²) + length over all: printed on two seamanship pages [read]."
SINE_RULE = "Angle of a taut line, sin(angle) = 1/scope: trigonometry [computed]."
SOUNDER_OFFSETS = "Depth = reading + depth of transducer or keel: common practice, no source."
KEEL_AT_LOW_WATER = "Water under the keel = depth − fall of tide − draught: definition; 0.3 m to spare is common practice, no source."
MARKS_ON_RODE = "Counting marks at the roller: common practice, no source."
UNITS = "Exact units: international foot and pound (85 FR 62698) and nautical mile [read]; fathom of 6 international feet; shackle of chain 27.432 m."

ABYC_H40 = (
    "ABYC H-40 (7/03), Table 1, design loads by length and beam, 30-knot column × wind² "
    "[20, 30, 40, 50 ft: reproduction; other rows and beams: memory]; 10 to 60 ft, one hull; seas and snatch loads left out."
)
BEYOND_DESIGN_TABLE = "Beyond ABYC H-40 Table 1: last row × length² or × beam; multihulls by the beams of sailing boats [own estimate]."
WIND_DRAG = (
    "Steady drag ½·1.225·wind²·area·coefficient: coefficient bow to wind 0.7 ± 15 % (sail): A. Grée, book on anchoring [reproduction]; 0.9 (motor, "
    "multihull) [own estimate]; yawing, gusts and seas left out."
)
FRONTAL_AREA = "Frontal area 0.25 (sail, multihull) or 0.30 (motor) of length × beam, a third either way [own estimate]."
USUAL_BEAM = "Usual beam length^(2/3) + 1 ft, in feet [common practice, memory]; of a multihull 0.55 of the length [own estimate]."
UFC_CURRENT = "Drag of a stream: UFC 4-159-03, Design: Moorings (2005), eqs (16) to (19) [read]; locked screw and fullness of hull [own estimate]."
CHAIN_MASS = "Mass of short-link chain: tables headed ISO 4565 / DIN 766, which differ by 5 to 15 % [reproduction]."
ISO_CHAIN = "Strength of metric chain: a quarter of the least breaking load in tables headed ISO 4565 / DIN 766 [reproduction]."
CFR_CHAIN = "Strength of inch chain: 49 CFR 393.108, working load limits for cargo, no marine rule [reproduction]."
NYLON = "Strength and mass of three-strand nylon: Cordage Institute figures; other tables print up to 12 % more [reproduction]."
OTHER_ROPE = "Other rope: braided nylon as three-strand, polyester 0.85 and polypropylene 0.6 of it [memory, on the safe side]."
ROPE_FACTORS = (
    "What knots (half), wet (three quarters) and 10 years (a quarter) leave of nylon: rope-strength page, M. Constantino, The Knot Handbook, p. 15, "
    "and break tests of a sailing consumer magazine [read]."
)
ROPE_STRETCH = "Stretch of worked three-strand nylon, 15 to 20 % at a fifth of its breaking load: rope handbooks [memory]."
STRENGTH_LEAVES_OUT = (
    "Strength of sound gear only, metric chain 6 to 16 mm, inch chain 1/4 to 5/8, rope 1/4 to 1 1/8 in: wear, rust, chafe, swivels, cleat and snatch "
    "left out; of a size between two rows the weaker counts."
)
SHACKLE_RULE = "Shackle of unknown steel: 3·D² short tons, D in inches, old Navy rule on a formula page [read]; of two figures the lesser."
FORGED_SHACKLE = "Forged shackle stamped to US Federal Specification RR-C-271D, as quoted in a utility's material standard [reproduction]."
SMALL_VESSEL_CODE = (
    "Anchor, chain and line by length: IMO-published Code of Safety for Small Commercial Vessels in the Caribbean, Annex 7 [read]; 6 to 24 m "
    "(line to 14 m); windage and bottom left out."
)
HIGH_HOLDING_CREDIT = "A third more mass for ordinary anchors: Special Service Craft rules, part 3 ch. 5, 5.1.2 [read]; which kinds: common practice."
UFC_HOLDING = "Holding of a pivoting fluke: UFC 4-159-03 (2005), eq. (26) [read], Table 5-3 [memory], ± 30 %; tested from 100 lb upwards."
HOLDING_BANDS = (
    "Holding of other kinds, and under 100 lb: bands of common practice, no source; shares of firm sand for mud, clay, gravel: passagemaking "
    "magazine, Anchor math and management, part 2 [read]."
)
HOLDING_BY_SCOPE = "Share of the flat pull by scope: D. Casey, magazine article on scope, ± 10 points [reproduction]."
CATENARY = (
    "Rode as two hanging lines in series, chain and line: formula of MIT course 2.019, Design of Ocean Systems, lecture 13 [read]; level bottom, "
    "steady load; stretch, stream on the rode, seas and snatch left out."
)
TACKLE_PRACTICE = (
    "Chain of a boat's length at the least, pins seized, the bitter end lashed, a second anchor, scope 3 as the least of all: common practice, "
    "no source."
)
HOLDING_LEAVES_OUT = (
    "Holding is that of one anchor, well set, steady pull, even bottom: setting, foul or layered ground, veering of the wind, seas and snatch "
    "left out."
)
WINDLASS = "Windlass: IACS UR A3 (Rev. 1, 2019), 3.1.2 and 3.1.3, a rule for ships [read; continuous pull 37.5·d² N: memory]."
WEIGHING_LEAVES_OUT = (
    "Weighing: rode straight up and down, steady wind; the pull that breaks a set anchor out, mud on it, friction beyond the 70 %, seas and "
    "snatch left out."
)
MANUAL_HANDLING = "By hand up to 23 kg: load constant of the revised NIOSH lifting equation [memory]."
ARCHIMEDES = "Weight in water: Archimedes; steel 7850, sea water 1025 kg/m³, general tables [computed]."
BOLLARD_PULL = (
    "Bollard pull, the least of: 20 lbf a horsepower [common practice], BHP × 0.9 × 1.10/100 t from a captain's formula sheet [read], "
    "62.72·(SHP·D/12)^0.67 lbf [reproduction]; a half of it astern [memory]."
)
SETTING_LEAVES_OUT = (
    "Setting pull: open three-bladed propeller, boat held, still water; good to 30 %. Slip, part throttle, folding blades and wind while setting "
    "left out."
)
HALF_COSINE_TIDE = (
    "Height between low and high water as half a cosine: Australian Hydrographic Service method, good for rises and falls of 5 to 7 hours [read]."
)
RULE_OF_TWELFTHS = "Rule of twelfths (1, 2, 3, 3, 2, 1): common practice, as printed in a yachting almanac glossary [read]."
LAMI = "Two rodes share a load by the triangle of forces (Lami's theorem): statics; multiples as in published sling tables [read]."
ONE_ANCHOR_AT_A_TIME = "Above 170 degrees of spread she lies to one anchor at a time: common practice, no source."
BEACH_SLOPE = "Even slope of the beach: trigonometry; nothing published."
WATCH_CIRCLE = (
    "Watch circle: taut-line circle, antenna and twice the 95 % error of a fix; rule and rates of error measured on simulated nights of this library."
)
WGS84 = "Local metres on the WGS 84 ellipsoid (a = 6 378 137 m, 1/f = 298.257223563), checked against a general geodesy library to 1 mm [computed]."
TIME_TO_DRIFT = "Time = distance over speed, less the room that the rode and the boat take: kinematics; common practice, no source."
CATENARY = "Chain and line as two catenaries in series, length² = height² + 2·height·load/weight: MIT course 2.019, lecture 13 [read]."
