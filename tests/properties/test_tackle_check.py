"""The check of the tackle: what is amiss is found, the worst is said first, and what nobody said is named."""

from typing import Any, get_args

import pytest

import anchorcalc
from anchorcalc import cautions, findings
from anchorcalc.findings import FINDINGS, Level


def results(name: str, **inputs: Any) -> Any:
    """Results of a question."""
    return anchorcalc.answer(name, **inputs).results


# --- tackle_check -------------------------------------------------------------------------------------------------------------------

SOUND: dict[str, Any] = {
    "boat_length": "9.5 m", "wind": "15 kn", "anchor_kind": "scoop", "anchor_mass": "40 kg", "bottom": "sand", "chain": "30 m", "chain_size": "10 mm",
    "line": "70 m", "line_size": "16 mm", "depth": "8 m", "shackle_size": "18 mm", "bitter_end": "tied", "shackles": "seized", "spare_anchor": True,
}  # fmt: skip
AMISS: dict[str, dict[str, Any]] = {
    "bitter_end_free": {"bitter_end": "free"},
    "bitter_end_fixed": {"bitter_end": "fixed"},
    "anchor_will_drag": {"wind": "60 kn", "anchor_mass": "15 kg", "anchor_kind": "mushroom"},
    "anchor_far_too_light": {"anchor_mass": "6 kg"},
    "chain_may_part": {"wind": "80 kn", "chain_size": "6 mm"},
    "line_may_part": {"wind": "80 kn"},
    "rode_far_too_short": {"depth": "40 m"},
    "shackles_open": {"shackles": "open"},
    "shackle_weaker_than_chain": {"shackle_size": "10 mm"},
    "shackle_weak": {"shackle_size": "6 mm", "wind": "30 kn"},
    "chain_weak": {"wind": "45 kn", "chain_size": "8 mm"},
    "line_weak": {"wind": "35 kn"},
    "anchor_light": {"anchor_mass": "12 kg"},
    "anchor_may_drag": {"anchor_kind": "claw", "anchor_mass": "15 kg", "wind": "30 kn"},
    "rode_short": {"depth": "18 m"},
    "no_chain": {"chain": "0 m", "line": "100 m"},
    "chain_short": {"chain": "6 m", "line": "100 m"},
    "chain_thin": {"chain_size": "7 mm"},
    "line_thin": {"line_size": "10 mm"},
    "chain_without_figure": {"chain_size": "5 mm"},
    "line_without_figure": {"line_size": "6 mm"},
    "bottom_without_figure": {"bottom": "rock"},
    "no_second_anchor": {"spare_anchor": False},
}  # fmt: skip


def test_sound_tackle_has_no_findings_and_nothing_unchecked() -> None:
    found = anchorcalc.tackle_check(**SOUND)
    assert found.results.findings == () and found.results.not_checked == ()
    assert found.headline == "Nothing wrong was found in what was said."


def test_every_finding_has_a_case_here() -> None:
    assert set(AMISS) == {finding.code for finding in FINDINGS}


@pytest.mark.parametrize("code", AMISS)
def test_what_is_amiss_is_found(code: str) -> None:
    assert code in {finding.code for finding in results("tackle_check", **{**SOUND, **AMISS[code]}).findings}


def test_inner_end_is_a_stop_loose_and_shackled_hard() -> None:
    for end in ("free", "fixed"):
        (finding,) = results("tackle_check", **{**SOUND, "bitter_end": end}).findings
        assert finding.level == "stop"


def test_findings_stand_worst_first() -> None:
    order = get_args(Level)
    assert [order.index(finding.level) for finding in FINDINGS] == sorted(order.index(finding.level) for finding in FINDINGS)
    everything: dict[str, Any] = {**SOUND, "bitter_end": "free", "shackles": "open", "spare_anchor": False, "anchor_mass": "12 kg"}
    levels = [finding.level for finding in results("tackle_check", **everything).findings]
    assert levels == ["stop", "mend", "mend", "note"]


def test_what_nobody_said_is_not_checked_and_named() -> None:
    found = results("tackle_check", boat_length="9.5 m", anchor_mass="16 kg", bitter_end="tied")
    assert found.findings == ()
    assert set(found.not_checked) == {
        "depth", "anchor_kind", "bottom", "wind", "chain", "chain_size", "rode_aboard", "line_size", "shackle_size", "shackles", "spare_anchor",
    }  # fmt: skip


def test_codes_of_findings_are_no_codes_of_cautions_but_for_the_short_rode() -> None:
    assert {finding.code for finding in FINDINGS} & set(cautions.CAUTIONS) == {findings.RODE_SHORT.code}


@pytest.mark.parametrize(("rode", "code"), [("27.5 m", "rode_far_too_short"), ("27.7 m", "rode_short"), ("64.3 m", "rode_short"), ("64.5 m", None)])
def test_rode_is_far_too_short_under_scope_3_and_short_under_the_scope_wanted(rode: str, code: str | None) -> None:
    # (8 + 1.2) m × 3 = 27.6 m and × 7 = 64.4 m.
    found = results("tackle_check", boat_length="9.5 m", depth="8 m", rode_aboard=rode).findings
    assert [one.code for one in found] == ([code] if code else [])
