"""Every caution: a code that never changes, a text that may."""

import msgspec


class Caution(msgspec.Struct, frozen=True):
    """Something that an answer cannot know and the skipper must: a fixed code and its text."""

    code: str
    text: str


NO_TIDE = Caution(
    "no_tide", "No tide was given, so none was reckoned. Where there is any, take the rise and the fall for the whole stay from the tide tables."
)
DRIES_AT_LOW_WATER = Caution("dries_at_low_water", "By these figures the place dries at low water: the boat will lie on the ground.")
DOUBLE_TIDES = Caution(
    "double_tides",
    "A half cosine fits two plain tides a day. It is poor where the tide stands, doubles, comes once a day or is held up by a river; "
    "and a predicted height is not a measured one: pressure, wind and rain move it.",
)
CLOCK_ZONE = Caution(
    "clock_zone", "All times were taken to be in one time zone. Check that the tide table and your clock agree, summer time included."
)
DEPTH_AT_BOAT_NOT_ANCHOR = Caution(
    "depth_at_boat_not_anchor", "The depth that counts is where the anchor lies, not under the sounder: on a sloping bottom they differ."
)
BOW_PITCH = Caution("bow_pitch", "In waves the bow rises and falls: add the height of the waves to the bow height, and more rode in a chop.")
MEAN_WIND = Caution(
    "mean_wind", "A forecast or a Beaufort force is a mean wind. Gusts are commonly a third to a half stronger, and pull by the square."
)
MARKS_FROM_ASSUMED = Caution(
    "marks_from_assumed",
    "Marks were taken to count from the anchor, chain included. If yours count the line only, say so: the mark to stop at is another.",
)
UNIT_TAKEN = Caution("unit_taken", "A number without a unit was given the unit of the other lengths. Check that this is what was meant.")
FROM_ANCHOR = Caution("from_anchor", "The distance was taken as measured from the anchor. Measured from the boat it is something else.")
STRETCH = Caution("stretch", "Line stretches under load and the circle grows with it: leave room for that.")
INSIDE_CIRCLE_BLIND = Caution("inside_circle_blind", "Dragging within the circle cannot be seen this way: keep a transit or a bearing as well.")
WAIT_AND_CHECK_SET = Caution(
    "wait_and_check_set", "Lie back on it, pull, and watch two things ashore in line until they stay in line. No sum says that the anchor has set."
)
WEED = Caution(
    "weed", "In weed an anchor may lie on the leaves and not in the ground, and seagrass meadows are often protected. Look for a bare patch."
)
CORAL = Caution("coral", "Do not anchor on coral: it breaks, it fouls the anchor, and it is protected almost everywhere. Find sand or a mooring.")
ROCK = Caution("rock", "On rock an anchor holds by chance or not at all, and may not come up again. Rig a tripping line and do not rely on it.")
NEVER_BY_THE_STERN = Caution(
    "never_by_the_stern", "Lie by the bow. A small boat held by the stern alone may be swamped: keep the stern line one that can be slipped."
)
BEAM_ON = Caution("beam_on", "If the wind comes on the beam, the load is about three times that of lying head to wind: let one end go in good time.")
SIZE_EACH_FOR_ALL = Caution("size_each_for_all", "Each anchor and rode should be strong enough alone: in a shift the whole load comes on one.")
LEE_SHORE = Caution(
    "lee_shore", "With danger close to leeward let go early. Call for help as well, and be ready to leave or to beach on your own terms."
)
WASH_ON_BEACH = Caution("wash_on_beach", "Wash and swell run up a beach: a stern close to the sand may strike in what was flat water an hour before.")
FINGERS_AND_TURN = Caution(
    "fingers_and_turn", "Snub the rode with a turn round the cleat or bitt, never round a hand; keep fingers and feet clear of the bight."
)

KEEP_RODE_OFF_PROP = Caution("keep_rode_off_prop", "Keep line clear of the propeller: neutral while there is slack line in the water.")
STRONG_POINT_UNKNOWN = Caution("strong_point_unknown", "The cleat, bitt or windlass and what it is bolted to were not reckoned: they may go first.")
BITTER_END = Caution(
    "bitter_end",
    "The inner end should be lashed with a line that reaches the deck: made fast, yet quickly cast off or cut. Neither loose nor shackled hard.",
)
DRAG_OF_ENGINE_UNLIKELY_FULL = Caution(
    "drag_of_engine_unlikely_full", "Few engines give their full pull astern when setting: at part throttle the test is smaller than this figure."
)
EXTRAPOLATED = Caution(
    "extrapolated", "This lies outside the range of the published figures: it was reckoned onwards on the safe side. Treat it as rough."
)
LOCAL_RULES = Caution("local_rules", "This is arithmetic, not permission: the chart, local rules and those licensed to advise there come first.")
CHAIN_ASSUMED = Caution(
    "chain_assumed",
    "A size of chain was given and no length, so the worse was taken: no chain where its weight would flatten the pull, chain all the way where it "
    "must be lifted. Say how long it is for a better answer.",
)
LINE_WEIGHTLESS = Caution(
    "line_weightless",
    "The size of the line was not said, so it was reckoned without weight, the worse for a flat pull. Say its size for a better answer.",
)
SEAS_AND_SNATCH = Caution(
    "seas_and_snatch",
    "Seas, snatch loads and violent sheering are not in these sums: in a swell a rode that jerks taut pulls several times harder.",
)
FOUL_BOTTOM = Caution(
    "foul_bottom",
    "A foul or layered bottom is not in these figures: over old chain, cables, stones or a thin skin of sand an anchor may hold nothing.",
)
WIDE_BAND = Caution(
    "wide_band", "What an anchor holds cannot be known beforehand. These figures are a wide band for one well set: test it astern and keep watch."
)
SOUND_GEAR = Caution(
    "sound_gear", "Strengths are those of sound gear: rust, wear, chafe, sun, a knot or a bent shackle take much of them away. Look at every part."
)
BREAK_OUT = Caution(
    "break_out",
    "Breaking the anchor out is the greatest pull of all and no sum gives it: motor up to it, snub the rode short on the cleat, and let the boat "
    "break it out.",
)
BACK_OF_A_PERSON = Caution(
    "back_of_a_person",
    "Hauling by hand, let the boat do the work: motor or wait for a lull, take in what comes slack, take a turn at once, and rest between pulls.",
)
RODE_SHORT = Caution("rode_short", "The rode aboard does not reach: find shallower water, or lie to less scope knowingly and keep watch.")

CAUTIONS: dict[str, Caution] = {value.code: value for value in list(globals().values()) if isinstance(value, Caution)}
