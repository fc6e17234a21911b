"""What boat, wind and water ask of the ground tackle, and where what there is falls short of it.

Every check speaks only where what it needs was given; a condition is a bool, or an array of them for many boats.
"""

from collections.abc import Mapping
from typing import Any

import numpy as np

from anchorcalc import findings
from anchorcalc.findings import Finding
from anchorcalc.physics.arrays import at_least
from anchorcalc.physics.codes import MOTOR, PIVOTING_FLUKE
from anchorcalc.physics.geometry import line_angle, rode_at_scope
from anchorcalc.physics.holding import has_holding_figure, holding_band
from anchorcalc.physics.sizing import anchor_mass_by_table, chain_size_by_table, line_size_by_table
from anchorcalc.physics.strength import (
    chain_breaking_load,
    chain_working_load,
    line_breaking_left,
    line_breaking_load,
    line_working_load,
    shackle_working_load,
)
from anchorcalc.physics.wind import load_standard
from anchorcalc.vocabulary.rode import BITTER_END, SHACKLES

LEAST_SCOPE_OF_ALL = 3.0  # common practice, no source
Given = Mapping[str, Any]
Found = dict[Finding, Any]


def asked_of_tackle(given: Given) -> dict[str, Any]:
    """Return what boat, wind and water ask of the tackle."""
    boat_length = given["boat_length"]
    asked = {
        "anchor_mass_asked": anchor_mass_by_table(boat_length=boat_length, anchor_kind=given.get("anchor_kind", PIVOTING_FLUKE)),
        "chain_asked": boat_length,
        "chain_size_asked": chain_size_by_table(boat_length=boat_length),
        "line_size_asked": line_size_by_table(boat_length=boat_length),
    }
    if "wind" in given:
        boat = {name: given[name] for name in ("boat_length", "wind", "beam", "current") if name in given}
        asked["load_standard"] = load_standard(**boat, boat_form=given.get("boat_form", MOTOR))
    if "depth" in given and "bow_height" in given:
        asked["rode_asked"] = rode_at_scope(height=given["depth"] + given["bow_height"], scope=given["scope"])
    return asked


def found_in_tackle(given: Given, asked: Given) -> Found:
    """Return the condition of every finding that could be checked."""
    found: Found = {}
    for check in (_ends, _anchor, _rode, _chain, _line, _shackle):
        found |= check(given, asked)
    return found


def _less(value: Any, least: Any) -> Any:
    return np.logical_not(at_least(value, least))


def _ends(given: Given, asked: Given) -> Found:
    """Check the inner end, the pins and the second anchor."""
    found: Found = {}
    if "bitter_end" in given:
        found[findings.BITTER_END_FREE] = np.equal(given["bitter_end"], BITTER_END.code("free"))
        found[findings.BITTER_END_FIXED] = np.equal(given["bitter_end"], BITTER_END.code("fixed"))
    if "shackles" in given:
        found[findings.SHACKLES_OPEN] = np.equal(given["shackles"], SHACKLES.code("open"))
    if "spare_anchor" in given:
        found[findings.NO_SECOND_ANCHOR] = np.logical_not(given["spare_anchor"])
    return found


def _anchor(given: Given, asked: Given) -> Found:
    """Check the anchor's mass against the table, and its holding against the wind."""
    found: Found = {}
    if "bottom" in given:
        found[findings.BOTTOM_WITHOUT_FIGURE] = np.logical_not(has_holding_figure(bottom=given["bottom"]))
    if "anchor_mass" not in given:
        return found
    by_table = asked["anchor_mass_asked"]
    far = _less(given["anchor_mass"], by_table / 2.0)
    found |= {findings.ANCHOR_FAR_TOO_LIGHT: far, findings.ANCHOR_LIGHT: np.logical_not(far) & _less(given["anchor_mass"], by_table)}
    if {"anchor_kind", "bottom", "wind"} <= set(given):
        pull_angle = line_angle(scope=given["scope"])
        band = holding_band(anchor_kind=given["anchor_kind"], anchor_mass=given["anchor_mass"], bottom=given["bottom"], pull_angle=pull_angle)
        surely = np.less(band.high, asked["load_standard"])  # without a figure neither speaks
        found |= {findings.ANCHOR_WILL_DRAG: surely, findings.ANCHOR_MAY_DRAG: np.less(band.low, asked["load_standard"]) & np.logical_not(surely)}
    return found


def _rode(given: Given, asked: Given) -> Found:
    """Check the length of the rode for the deepest water, and how much of it is chain."""
    found: Found = {}
    if "rode_asked" in asked and "rode_aboard" in given:
        far = _less(given["rode_aboard"], rode_at_scope(height=given["depth"] + given["bow_height"], scope=LEAST_SCOPE_OF_ALL))
        found |= {findings.RODE_FAR_TOO_SHORT: far, findings.RODE_SHORT: np.logical_not(far) & _less(given["rode_aboard"], asked["rode_asked"])}
    if "chain" in given:
        none = np.equal(given["chain"], 0.0)
        found |= {findings.NO_CHAIN: none, findings.CHAIN_SHORT: np.logical_not(none) & _less(given["chain"], asked["chain_asked"])}
    return found


def _chain(given: Given, asked: Given) -> Found:
    """Check the size of the chain against the table, and its strength against the wind."""
    if "chain_size" not in given:
        return {}
    there = np.greater(given.get("chain", np.inf), 0.0)
    size = {"chain_size": given["chain_size"], "chain_grade": given["chain_grade"]}
    working_load = chain_working_load(**size)
    found: Found = {
        findings.CHAIN_THIN: there & _less(given["chain_size"], asked["chain_size_asked"]),
        findings.CHAIN_WITHOUT_FIGURE: there & np.isnan(working_load),
    }
    if "load_standard" in asked:
        parts = there & np.less(chain_breaking_load(**size), asked["load_standard"])
        weak = there & np.less(working_load, asked["load_standard"])
        found |= {findings.CHAIN_MAY_PART: parts, findings.CHAIN_WEAK: weak & np.logical_not(parts)}
    return found


def _line(given: Given, asked: Given) -> Found:
    """Check the size of the line against the table, and its strength against the wind."""
    if "line_size" not in given:
        return {}
    there = np.greater(given.get("line", np.inf), 0.0)
    size = {"line_size": given["line_size"], "line_material": given["line_material"]}
    working_load = line_working_load(**size)
    found: Found = {
        findings.LINE_THIN: there & _less(given["line_size"], asked["line_size_asked"]),
        findings.LINE_WITHOUT_FIGURE: there & np.isnan(working_load),
    }
    if "load_standard" in asked:
        left = line_breaking_left(breaking_load=line_breaking_load(**size), knotted=True, wet=True)
        parts = there & np.less(left, asked["load_standard"])
        weak = there & np.less(working_load, asked["load_standard"])
        found |= {findings.LINE_MAY_PART: parts, findings.LINE_WEAK: weak & np.logical_not(parts)}
    return found


def _shackle(given: Given, asked: Given) -> Found:
    """Check the shackle against the chain and against the wind."""
    if "shackle_size" not in given:
        return {}
    safe_load = shackle_working_load(shackle_size=given["shackle_size"])
    found: Found = {}
    if "chain_size" in given:
        of_chain = chain_working_load(chain_size=given["chain_size"], chain_grade=given["chain_grade"])
        found[findings.SHACKLE_WEAKER_THAN_CHAIN] = np.greater(given.get("chain", np.inf), 0.0) & np.less(safe_load, of_chain)
    if "load_standard" in asked:
        found[findings.SHACKLE_WEAK] = np.less(safe_load, asked["load_standard"])
    return found
