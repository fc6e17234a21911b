"""What is wrong with the ground tackle, worst first, and what was not checked because nobody said it.

Each part against the boat, the wind and the deepest water, by published tables where there are any and common practice where there are none.
"""

from collections.abc import Iterator
from typing import Annotated, Any

import msgspec
import numpy as np

from anchorcalc import cautions, sources
from anchorcalc.declare import Asked, Derivation, Force, Length, Mass, May, Question, Shown, Size, Usual, Values, near, told, up, warn
from anchorcalc.derive import EXTRAPOLATED_LOAD, usual_with
from anchorcalc.findings import FINDINGS, Finding, Level
from anchorcalc.physics.codes import CORAL, GRASS, ROCK
from anchorcalc.physics.holding import has_holding_figure
from anchorcalc.physics.next_size import chain_is_outside_table, line_is_outside_table
from anchorcalc.physics.sizing import boat_is_outside_anchor_table
from anchorcalc.tackle import asked_of_tackle, found_in_tackle

TERMS_CHECKED = (
    "depth",
    "anchor_kind",
    "anchor_mass",
    "bottom",
    "wind",
    "chain",
    "chain_size",
    "rode_aboard",
    "line_size",
    "shackle_size",
    "bitter_end",
    "shackles",
    "spare_anchor",
)


class TackleCheckFinding(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """Something to put right."""

    code: Annotated[str, told("what was found, a code that never changes")]
    level: Annotated[Level, told("stop: before anchoring at all; mend: before it blows; note: to know")]
    text: Annotated[str, told("what is wrong")]
    do: Annotated[str, told("what to do")]


class TackleCheck(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """What was found, what was not checked, and what was asked of each part."""

    findings: Annotated[tuple[TackleCheckFinding, ...], told("what is wrong, worst first")]
    not_checked: Annotated[tuple[str, ...], told("terms that nobody gave")]
    load_standard: Annotated[Force | None, up("published design load × wind² that strength was checked against")] = None
    anchor_mass_asked: Annotated[Mass, up("mass of anchor that a published table asks for the length")]
    chain_asked: Annotated[Length, up("chain asked: as long as the boat")]
    chain_size_asked: Annotated[Size, near("size of chain that a published table asks", worst="greatest")]
    line_size_asked: Annotated[Size, near("size of line that a published table asks", worst="greatest")]
    rode_asked: Annotated[Length | None, up("rode that the scope wanted asks in the deepest water intended")] = None


def solve(
    *,
    boat_length: Asked,
    depth: May = None,
    bow_height: May = None,
    scope: Usual,
    anchor_kind: May = None,
    anchor_mass: May = None,
    bottom: May = None,
    wind: May = None,
    beam: May = None,
    boat_form: May = None,
    current: May = None,
    chain: May = None,
    chain_size: May = None,
    chain_grade: May = None,
    line: May = None,
    line_size: May = None,
    line_material: May = None,
    rode_aboard: May = None,
    shackle_size: May = None,
    bitter_end: May = None,
    shackles: May = None,
    spare_anchor: May = None,
) -> dict[str, Any]:
    """Hold each part that is known against what is asked of it."""
    given = {name: value for name, value in locals().items() if value is not None}
    asked = asked_of_tackle(given)
    found = found_in_tackle(given, asked)
    rows = [_row(finding, found[finding]) for finding in FINDINGS if finding in found]
    missing = [name for name in TERMS_CHECKED if name not in given]
    return {"findings": tuple(rows), "not_checked": tuple(missing), **asked}


def _row(finding: Finding, when: Any) -> dict[str, Any]:
    return {"code": finding.code, "level": finding.level, "text": finding.text, "do": finding.do, "when": when}


_TO_DO = {"stop": "to put right before you anchor", "mend": "to put right before it blows", "note": "to know"}


def headline(s: Shown, v: Values) -> str:
    """Say how many things are wrong, and the worst."""
    unsaid = f" {len(s.not_checked)} things were not said and not checked." if s.not_checked else ""
    if not s.findings:
        return f"Nothing wrong was found in what was said.{unsaid}"
    worst = s.findings[0]
    counts = [(level, sum(one.level == level for one in s.findings)) for level in _TO_DO]
    said = ", ".join(f"{count} {_TO_DO[level]}" for level, count in counts if count)
    return f"{said}. First: {worst.text} {worst.do}{unsaid}"


def working(s: Shown, v: Values) -> Iterator[str]:
    """Show what is asked of each part beside what there is."""
    yield f"a boat of {s.boat_length} is asked by the table: anchor {s.anchor_mass_asked}, chain {s.chain_size_asked}, line {s.line_size_asked}"
    if hasattr(s, "load_standard"):
        yield f"{s.wind} of wind: standard load {s.load_standard}"
    if hasattr(s, "rode_asked"):
        yield f"{s.depth} of water + {s.bow_height} of bow height at {s.scope}: {s.rode_asked} of rode"
    names = ("anchor_mass", "chain", "chain_size", "line", "line_size", "rode_aboard", "shackle_size")
    there = [f"{name} {getattr(s, name)}" for name in names if hasattr(s, name)]
    if there:
        yield "there is: " + ", ".join(there)


QUESTION = Question(
    title="Check of the ground tackle",
    solve=solve,
    results=TackleCheck,
    headline=headline,
    working=working,
    sources=(
        sources.SMALL_VESSEL_CODE,
        sources.HIGH_HOLDING_CREDIT,
        sources.TACKLE_PRACTICE,
        sources.SCOPE_RULE,
        sources.ABYC_H40,
        sources.UFC_HOLDING,
        sources.HOLDING_BANDS,
        sources.HOLDING_BY_SCOPE,
        sources.ISO_CHAIN,
        sources.CFR_CHAIN,
        sources.NYLON,
        sources.ROPE_FACTORS,
        sources.SHACKLE_RULE,
        sources.STRENGTH_LEAVES_OUT,
    ),
    derives=(
        Derivation(
            gives="rode_aboard",
            needs=("chain", "line"),
            solve=lambda *, chain, line: chain + line,
            asks_for=("rode_aboard",),
            working=lambda s: f"{s.chain} of chain + {s.line} of line = {s.rode_aboard} of rode aboard",
        ),
        usual_with("bow_height", "depth"),
        usual_with("boat_form", "boat_length", "wind"),
        usual_with("current", "boat_length", "wind"),
        usual_with("chain_grade", "chain_size"),
        usual_with("line_material", "line_size"),
    ),
    cautions=(
        warn(cautions.BITTER_END),
        warn(cautions.SOUND_GEAR),
        warn(cautions.ROCK, lambda *, bottom: np.equal(bottom, ROCK)),
        warn(cautions.CORAL, lambda *, bottom: np.equal(bottom, CORAL)),
        warn(cautions.WEED, lambda *, bottom: np.equal(bottom, GRASS)),
        warn(cautions.WIDE_BAND, lambda *, anchor_kind, anchor_mass, bottom, wind: has_holding_figure(bottom=bottom)),
        warn(cautions.STRONG_POINT_UNKNOWN),
        warn(cautions.SEAS_AND_SNATCH),
        warn(cautions.FOUL_BOTTOM),
        warn(cautions.EXTRAPOLATED, lambda *, boat_length: boat_is_outside_anchor_table(boat_length=boat_length)),
        warn(cautions.EXTRAPOLATED, lambda *, chain_size: chain_is_outside_table(chain_size=chain_size)),
        warn(cautions.EXTRAPOLATED, lambda *, line_size: line_is_outside_table(line_size=line_size)),
        *EXTRAPOLATED_LOAD,
    ),
    asks=(
        "check my ground tackle",
        "is my anchor gear all right",
        "what is wrong with my anchor gear",
        "survey my tackle",
        "is my tackle in order",
        "look over my anchor and chain",
    ),
    examples=(
        {
            "boat_length": "9.5 m",
            "anchor_kind": "plough",
            "anchor_mass": "16 kg",
            "bottom": "mud",
            "wind": "25 kn",
            "chain": "20 m",
            "chain_size": "8 mm",
            "line": "40 m",
            "line_size": "14 mm",
            "depth": "10 m",
            "shackle_size": "10 mm",
            "bitter_end": "tied",
            "shackles": "seized",
            "spare_anchor": True,
        },
        {"boat_length": "20 ft", "anchor_kind": "grapnel", "anchor_mass": "9 lb", "line": "60 ft", "line_size": "5/16 in", "bitter_end": "free"},
    ),
    moves={
        "findings": "+boat_length +wind +beam +current +depth +bow_height ^scope -anchor_mass ^chain ~chain_size -line -line_size -rode_aboard"
        " -shackle_size",
        "not_checked": "",
        "load_standard": "+boat_length +wind +beam +current",
        "anchor_mass_asked": "+boat_length",
        "chain_asked": "+boat_length",
        "chain_size_asked": "+boat_length",
        "line_size_asked": "+boat_length",
        "rode_asked": "+depth +bow_height +scope",
    },
)
