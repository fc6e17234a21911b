"""A figure that the chosen question has no use for, while another that is likely enough takes it: then which one is meant is asked."""

from anchorcalc.catalogue import question as question_named
from anchorcalc.reader.intent import Weighed
from anchorcalc.reader.reading import Reading

# What is hardly said beside a question that has no use for it; a boat's length or the wind are.
_SAID_FOR_USE = frozenset(
    (
        "mark_interval",
        "load",
        "marks",
        "chain_size",
        "line_size",
        "shackle_size",
        "engine_power",
        "propeller_diameter",
        "spread",
        "slope",
        "drift",
        "distance_off",
        "distance",
        "anchor_mass",
        "pull_angle",
        "other_rode_out",
        "low_height",
        "high_height",
        "under_keel",
        "reading",
    )
)
_ALIKE = {"distance": "distance_off", "distance_off": "distance", "low_height": "tide_fall", "high_height": "tide_rise"}
_LIKELY = 0.03


def taker(reading: Reading, weighed: list[Weighed]) -> str | None:
    """Return the likeliest other question that takes a figure which the chosen one passes over."""
    takes = frozenset(reading.question.inputs)
    passed = {term for _, term in reading.aside if term in _SAID_FOR_USE and term not in takes and _ALIKE.get(term) not in reading.asked}
    if any(mention.kind == "position" for mention, _ in reading.aside):
        passed.add("fixes")
    if not passed:
        return None
    passed |= {_ALIKE[term] for term in passed if term in _ALIKE}
    others = (one.question for one in weighed if one.share >= _LIKELY and one.question != reading.question.name)
    return next((name for name in others if passed & set(question_named(name).inputs)), None)


_ROOM = frozenset(("distance", "distance_off", "margin"))


def bounded(reading: Reading) -> str | None:
    """Return the question of the longest rode, where room is told of beside a rode by rule: by rule alone she could swing onto what is there."""
    if reading.question.name == "rode_to_let_out" and any(term in _ROOM and mention.kind == "length" for mention, term in reading.aside):
        return "rode_for_room"
    return None
