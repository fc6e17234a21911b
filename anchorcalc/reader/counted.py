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
_LANES = {16: "H", 32: "I"}  # bits for each outcome: few make short numbers, which are quickly fetched and added
Sign = str | tuple[str, ...]  # a word, or several; the file has a space between them
_Places = tuple[tuple[str, ...], Callable[[tuple[int, ...]], tuple[int, ...]]]


class Counted:
    """A table: its outcomes, and by every sign that is known its weights for all of them, in hundredths, side by side in one whole number."""

    def __init__(self, held: Mapping[str, Mapping[str, int]], *, signs_at_once: int) -> None:
        greatest = max(abs(weight) for by_sign in held.values() for weight in by_sign.values())
        bits = 16 if signs_at_once * greatest < 1 << 15 else 32
        packed: dict[str, int] = {}
        for lane, by_sign in enumerate(held.values()):
            for sign, weight in by_sign.items():
                packed[sign] = packed.get(sign, 0) + (weight << bits * lane)
        self.start = packed.pop("") + sum(1 << bits * lane + bits - 1 for lane in range(len(held)))  # so that every sum is positive
        self.by_sign = {_sign(said): weight for said, weight in packed.items()}
        self.outcomes = tuple(held)
        self.lanes = struct.Struct(f"<{len(held)}{_LANES[bits]}")
        self._places: dict[frozenset[str] | None, _Places] = {}  # one for each question, at most with and without a sounder

    def logs(self, signs: Iterable[Sign], *, among: frozenset[str] | None = None) -> dict[str, float]:
        """Return the logarithm of the share that each outcome (of those named) has by the signs of a text."""
        total = sum(filter(None, map(self.by_sign.get, signs)), self.start)
        names, pick = self._places.get(among) or self._places_of(among)
        sums = pick(self.lanes.unpack(total.to_bytes(self.lanes.size, "little")))
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
def counted(name: str, *, signs_at_once: int = 20_000) -> Counted:
    """Return a table as it stands in the file of that name, whose weights are added up for so many signs at most."""
    text = files("anchorcalc.reader").joinpath("telling", f"{name}.json").read_bytes()
    return Counted(msgspec.json.decode(text, type=dict[str, dict[str, int]]), signs_at_once=signs_at_once)


__all__ = ["SCALE", "Counted", "Sign", "counted"]
