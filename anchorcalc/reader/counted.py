"""Weights that were counted in the corpus: a table a file, and how the weights of the signs of a text are added up."""

import math
import struct
from collections.abc import Callable, Iterable, Mapping
from functools import cache
from importlib.resources import files
from operator import itemgetter
from sys import intern

import msgspec

SCALE = 100.0  # weights are written, and summed, in hundredths
_BITS = 16  # for each outcome: so few make short numbers, which are quickly fetched and added
Sign = str | tuple[str, ...]  # a word, or several; the file has a space between them
_Places = tuple[tuple[str, ...], Callable[[tuple[int, ...]], tuple[int, ...]]]


class Counted:
    """A table: its outcomes, and by every sign that is known its weights for all of them, in hundredths, side by side in one whole number."""

    def __init__(self, held: Mapping[str, Mapping[str, int]]) -> None:
        packed: dict[str, int] = {}
        for lane, by_sign in enumerate(held.values()):
            for sign, weight in by_sign.items():
                packed[sign] = packed.get(sign, 0) + (weight << _BITS * lane)
        same: dict[int, int] = {}  # many signs have the same weights
        self.nought = sum(1 << _BITS * lane + _BITS - 1 for lane in range(len(held)))  # so that every sum is positive
        self.start = self.nought + packed.pop("")
        self.by_sign = {_sign(said): same.setdefault(weight, weight) for said, weight in packed.items()}
        self.at_once = ((1 << _BITS - 1) - 1) // max(abs(weight) for by_sign in held.values() for weight in by_sign.values()) - 1
        self.outcomes = tuple(held)
        self.lanes = struct.Struct(f"<{len(held)}H")
        self._places: dict[frozenset[str] | None, _Places] = {}  # one for each question, at most with and without a sounder

    def _sums(self, signs: Iterable[Sign]) -> tuple[int, ...]:
        """Return the sum of the weights of signs for each outcome, but for a number that is the same for all; more than fit at once in parts."""
        weights, start, most = list(filter(None, map(self.by_sign.get, signs))), self.start, self.at_once
        parts = []
        for at in range(0, len(weights) or 1, most):
            parts.append(self.lanes.unpack(sum(weights[at : at + most], start).to_bytes(self.lanes.size, "little")))
            start = self.nought
        return parts[0] if len(parts) == 1 else tuple(map(sum, zip(*parts, strict=True)))

    def logs(self, signs: Iterable[Sign], *, among: frozenset[str] | None = None) -> dict[str, float]:
        """Return the logarithm of the share that each outcome (of those named) has by the signs of a text."""
        names, pick = self._places.get(among) or self._places_of(among)
        sums = pick(self._sums(signs))
        most = max(sums)
        whole = most / SCALE + math.log(sum([math.exp((one - most) / SCALE) for one in sums]))
        return dict(zip(names, [one / SCALE - whole for one in sums], strict=True))

    def _places_of(self, among: frozenset[str] | None) -> _Places:
        """Return the outcomes (those of them that are named) and what picks their sums, and keep it for the next text."""
        places = {name: place for place, name in enumerate(self.outcomes) if among is None or name in among}
        self._places[among] = found = (tuple(places), itemgetter(*places.values()))
        return found


def _sign(said: str) -> Sign:
    """Return a sign as it stands in the file; its words are the very objects that texts have, so that one look tells them alike."""
    words = tuple(map(intern, said.split(" ")))
    return words if len(words) > 1 else words[0]


@cache
def counted(name: str) -> Counted:
    """Return a table as it stands in the file of that name."""
    text = files("anchorcalc.reader").joinpath("telling", f"{name}.json").read_bytes()
    return Counted(msgspec.json.decode(text, type=dict[str, dict[str, int]]))


__all__ = ["SCALE", "Counted", "Sign", "counted"]
