"""What a check of the tackle may find: a code that never changes, how bad it is, what is wrong and what to do; worst first."""

from typing import Literal

import msgspec

Level = Literal["stop", "mend", "note"]


class Finding(msgspec.Struct, frozen=True):
    """Something to put right: `stop` before anchoring at all, `mend` before it blows, `note` to know."""

    code: str
    level: Level
    text: str
    do: str


BITTER_END_FREE = Finding(
    "bitter_end_free",
    "stop",
    "The inner end of the rode is not made fast: all of it can run out and be lost.",
    "Lash it to a strong point with line that reaches the deck, so that it holds and yet can be cut.",
)
BITTER_END_FIXED = Finding(
    "bitter_end_fixed",
    "stop",
    "The inner end of the rode is shackled hard: under load nobody can let it go.",
    "Put a lashing between it and the boat, long enough to reach the deck and be cut there.",
)
ANCHOR_WILL_DRAG = Finding(
    "anchor_will_drag",
    "stop",
    "Even at the most that such an anchor may hold in this bottom, it holds less than this wind asks.",
    "Carry a heavier anchor or another kind, let out more rode, or do not lie there in that wind.",
)
ANCHOR_FAR_TOO_LIGHT = Finding(
    "anchor_far_too_light",
    "stop",
    "The anchor weighs less than half of what a published table asks for a boat of this length.",
    "Carry an anchor of the mass that the table asks before you rely on it.",
)
CHAIN_MAY_PART = Finding(
    "chain_may_part",
    "stop",
    "The chain's breaking load, new, is less than the load of this wind.",
    "Change it for a size that carries the load.",
)
LINE_MAY_PART = Finding(
    "line_may_part",
    "stop",
    "Knotted and wet, the line may break at less than the load of this wind.",
    "Change it for a size that carries the load, and splice it rather than knot it.",
)
RODE_FAR_TOO_SHORT = Finding(
    "rode_far_too_short",
    "stop",
    "In the deepest water intended the rode gives a scope of less than 3 to 1.",
    "Bend on more rode or anchor in shallower water.",
)
SHACKLES_OPEN = Finding(
    "shackles_open",
    "mend",
    "The pins of the shackles are not seized: they work loose and the anchor is gone.",
    "Wire or tie every pin.",
)
SHACKLE_WEAKER_THAN_CHAIN = Finding(
    "shackle_weaker_than_chain",
    "mend",
    "By the rule for shackles of unknown steel, the shackle is weaker than the chain.",
    "Fit a larger one, or one stamped with a working load no less than the chain's.",
)
SHACKLE_WEAK = Finding(
    "shackle_weak",
    "mend",
    "By the rule for shackles of unknown steel, the shackle's safe load is less than the load of this wind.",
    "Fit a larger one, or one stamped with a working load that meets the load.",
)
CHAIN_WEAK = Finding(
    "chain_weak",
    "mend",
    "The chain's working load is less than the load of this wind.",
    "Change it for a size or a grade that carries the load.",
)
LINE_WEAK = Finding(
    "line_weak",
    "mend",
    "The line's working load is less than the load of this wind.",
    "Change it for a size that carries the load.",
)
ANCHOR_LIGHT = Finding(
    "anchor_light",
    "mend",
    "The anchor is lighter than a published table asks for a boat of this length.",
    "Carry one of the mass that the table asks, or more.",
)
ANCHOR_MAY_DRAG = Finding(
    "anchor_may_drag",
    "mend",
    "At the least that such an anchor may hold in this bottom, it holds less than this wind asks.",
    "Carry a heavier one for that wind; until then set it well, let out more rode and keep watch.",
)
RODE_SHORT = Finding(
    "rode_short",
    "mend",
    "The rode is too short for the scope wanted in the deepest water intended.",
    "Bend on more rode or anchor in shallower water.",
)
NO_CHAIN = Finding(
    "no_chain",
    "mend",
    "There is no chain: the line chafes through on the bottom and the anchor is pulled upward.",
    "Shackle in chain as long as the boat or longer.",
)
CHAIN_SHORT = Finding(
    "chain_short",
    "mend",
    "There is less chain than the boat is long.",
    "Shackle in chain as long as the boat or longer.",
)
CHAIN_THIN = Finding(
    "chain_thin",
    "mend",
    "The chain is thinner than a published table asks for a boat of this length.",
    "Change it for the size that the table asks: the thin one lifts sooner and wears through sooner.",
)
LINE_THIN = Finding(
    "line_thin",
    "mend",
    "The line is thinner than a published table asks: it chafes through sooner, and hands cannot hold it.",
    "Change it for the size that the table asks.",
)
CHAIN_WITHOUT_FIGURE = Finding(
    "chain_without_figure",
    "mend",
    "The chain is thinner than the tables of strength begin: what it carries is not known.",
    "Change it for a size that the tables hold.",
)
LINE_WITHOUT_FIGURE = Finding(
    "line_without_figure",
    "mend",
    "The line is thinner than the table of strength begins: what it carries is not known.",
    "Change it for a size that the table holds.",
)
BOTTOM_WITHOUT_FIGURE = Finding(
    "bottom_without_figure",
    "note",
    "On this bottom nobody can say what an anchor holds.",
    "Look for sand or mud, and rig a tripping line.",
)
NO_SECOND_ANCHOR = Finding(
    "no_second_anchor",
    "note",
    "There is no second anchor: when the first is fouled, lost or drags, there is nothing left.",
    "Carry a second one with its own rode, ready to let go.",
)

FINDINGS: tuple[Finding, ...] = tuple(value for value in list(globals().values()) if isinstance(value, Finding))
