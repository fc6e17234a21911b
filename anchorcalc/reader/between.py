"""Quantities that are no input themselves but make one with another: depth at high water, height of tide now, depth on the chart."""

from anchorcalc.units.kinds import LENGTH
from anchorcalc.vocabulary import TERMS
from anchorcalc.vocabulary.term import Term


def _between(name: str, meaning: str) -> Term:
    return Term(name=name, kind=LENGTH, meaning=meaning, prompt="", example="1 m")


BETWEEN: dict[str, Term] = {
    one.name: one
    for one in (
        _between("at_high", "depth or height of tide at high water"),
        _between("at_low", "depth or height of tide at low water"),
        _between("height_now", "height of tide now"),
        _between("hw_height", "height of high water"),
        _between("lw_height", "height of low water"),
        _between("charted", "depth on the chart"),
        _between("unwanted", "something else"),
        _between("from_boat", "distance measured from the boat, not from the anchor"),
    )
}
ALL_TERMS: dict[str, Term] = {**TERMS, **BETWEEN}
