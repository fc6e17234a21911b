"""Quantities as they are mostly written, digits and a unit in its own case, read at one go."""

import sys
from functools import lru_cache

from anchorcalc.answering.taken import Taken, bounded
from anchorcalc.errors import Fault
from anchorcalc.units.kinds import RATIO, SIZE, spelled_plainly
from anchorcalc.units.shown import plain_text, with_unit
from anchorcalc.units.written import PLAINLY
from anchorcalc.vocabulary.term import Term


class Plainly:
    """What reading a term's quantities takes, worked out once: its bounds, and each spelling's factor, symbol and what is shown behind."""

    __slots__ = ("above", "least", "most", "named", "term", "units")

    def __init__(self, term: Term) -> None:
        kind, widest = term.kind, sys.float_info.max
        self.term, self.named = term, kind is SIZE  # a size is shown by its name, not its number
        self.above = -widest if term.above is None else term.above
        self.least = -widest if term.least is None else term.least
        self.most = widest if term.most is None else term.most
        self.units: dict[str, tuple[float, str, str]] = {
            spelling: (unit.factor, unit.symbol, with_unit(number="{}", unit=unit.symbol).removeprefix("{}"))
            for spelling, unit in spelled_plainly(kind.name).items()
        }
        if kind is RATIO:
            self.units[""] = (1.0, "", plain_text(number="", kind=kind))

    def read(self, text: str) -> Taken | Fault | None:
        """Return a text as taken (or its fault), or None where it is written in another way."""
        found = PLAINLY.match(text)
        known = self.units.get(found[2]) if found else None
        if found is None or known is None:
            return None
        factor, symbol, behind = known
        si = float(found[1]) * factor
        number = f"{si / factor:.12g}"
        if self.named or number == "1" or "e" in number or not (self.above < si and self.least <= si <= self.most):
            return bounded(term=self.term, low=si, high=si, unit=symbol, given=text)
        return Taken(si, si, symbol, number + behind, False, False, float(number))


@lru_cache(maxsize=256)
def plainly(term: Term) -> Plainly:
    """Return what reads a term's quantities."""
    return Plainly(term)
