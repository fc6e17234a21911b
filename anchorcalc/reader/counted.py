"""Weights that were counted in the corpus: a table a file, and how the weights of the signs of a text are added up."""

import math
import struct
from collections.abc import Iterable, Mapping
from functools import cache
from importlib.resources import files
from sys import intern

import msgspec

SCALE = 100.0  # weights are written, and summed, in hundredths
_LANE, _NOUGHT = 32, 1 << 31  # bits for each outcome, and what stands for no weight, so that every sum is positive
Sign = str | tuple[str, ...]  # a word, or several; the file has a space between them


class Counted:
    """A table: its outcomes, and by every sign that is known its weights for all of them, in hundredths, side by side in one whole number."""

    def __init__(self, held: Mapping[str, Mapping[str, int]]) -> None:
        packed: dict[str, int] = {}
        for lane, by_sign in enumerate(held.values()):
            for sign, weight in by_sign.items():
                packed[sign] = packed.get(sign, 0) + (weight << _LANE * lane)
        self.start = packed[""] + sum(_NOUGHT << _LANE * lane for lane in range(len(held)))
        self.by_sign = {_sign(said): weight for said, weight in packed.items()}
        self.outcomes = tuple(held)
        self.lanes = struct.Struct(f"<{len(held)}I")
        self._places: dict[frozenset[str] | None, dict[str, int]] = {}  # one for each question, at most with and without a sounder

    def logs(self, signs: Iterable[Sign], *, among: frozenset[str] | None = None) -> dict[str, float]:
        """Return the logarithm of the share that each outcome (of those named) has by the signs of a text."""
        get = self.by_sign.get
        total = sum([weight for sign in signs if (weight := get(sign)) is not None], self.start)
        sums = self.lanes.unpack(total.to_bytes(self.lanes.size, "little"))
        places = self._places.get(among) or self._places_of(among)
        held = [sums[place] / SCALE for place in places.values()]
        most = max(held)
        whole = most + math.log(sum([math.exp(one - most) for one in held]))
        return {name: one - whole for name, one in zip(places, held, strict=True)}

    def _places_of(self, among: frozenset[str] | None) -> dict[str, int]:
        """Return where the outcomes stand (those of them that are named), and keep it for the next text."""
        places = {name: place for place, name in enumerate(self.outcomes) if among is None or name in among}
        self._places[among] = places
        return places


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
