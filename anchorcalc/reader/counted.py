"""Weights that were counted in the corpus: a table a file, and how the weights of the signs of a text are added up."""

import math
import struct
from collections.abc import Iterable, Mapping
from functools import cache
from importlib.resources import files
from typing import NamedTuple

import msgspec

SCALE = 100.0  # weights are written, and summed, in hundredths
_LANE, _NOUGHT = 32, 1 << 31  # bits for each outcome, and what stands for no weight, so that every sum is positive
Sign = str | tuple[str, str]


class Counted(NamedTuple):
    """A table: its outcomes, and by every sign that is known its weights for all of them, in hundredths, side by side in one whole number."""

    outcomes: tuple[str, ...]
    start: int
    by_sign: Mapping[Sign, int]
    lanes: struct.Struct

    def logs(self, signs: Iterable[Sign], *, among: frozenset[str] | None = None) -> dict[str, float]:
        """Return the logarithm of the share that each outcome (of those named) has by the signs of a text."""
        get = self.by_sign.get
        total = sum([weight for sign in signs if (weight := get(sign)) is not None], self.start)
        sums = zip(self.outcomes, self.lanes.unpack(total.to_bytes(self.lanes.size, "little")), strict=True)
        held = [(name, one / SCALE) for name, one in sums if among is None or name in among]
        most = max([one for _, one in held])
        whole = most + math.log(sum([math.exp(one - most) for _, one in held]))
        return {name: one - whole for name, one in held}


@cache
def counted(name: str) -> Counted:
    """Return a table as it stands in the file of that name; a sign of two words is known by both of them, too."""
    held = msgspec.json.decode(files("anchorcalc.reader").joinpath("telling", f"{name}.json").read_bytes(), type=dict[str, dict[str, int]])
    packed: dict[Sign, int] = {}
    for lane, by_sign in enumerate(held.values()):
        for sign, weight in by_sign.items():
            packed[sign] = packed.get(sign, 0) + (weight << _LANE * lane)
    start = packed[""] + sum(_NOUGHT << _LANE * lane for lane in range(len(held)))
    packed |= {(pair[0], pair[1]): weight for sign, weight in packed.items() if isinstance(sign, str) and len(pair := sign.split(" ")) == 2}
    return Counted(tuple(held), start, packed, struct.Struct(f"<{len(held)}I"))


__all__ = ["SCALE", "Counted", "Sign", "counted"]
