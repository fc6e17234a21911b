"""What the words and figures of a text tell of the question that it asks, by weights that were counted in the corpus.

`tests/reading/counting.py` fits the weights (multinomial logistic regression) and writes them beside this file; here they are only added up.
"""

import math
import struct
from collections import Counter
from collections.abc import Mapping, Sequence
from functools import cache
from importlib.resources import files
from itertools import pairwise
from typing import NamedTuple

import msgspec

from anchorcalc.reader.fits import is_size
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.slots import roles
from anchorcalc.vocabulary import TERMS

NOTHING_ASKED = "cannot"  # the answer beside the questions: nothing here that could be reckoned
SCALE = 100.0  # weights are written, and summed, in hundredths
_SIGNS = frozenset('.,;:!()-–~=/&+×<>"|\n')
_MANY = 4
Sign = str | tuple[str, str]


def telling(tokens: Sequence[Token]) -> set[str]:
    """Return the signs of a text: words, each two in a row, how it begins and ends, the kinds of its figures, the terms they stand for."""
    return {sign if isinstance(sign, str) else " ".join(sign) for sign in _signs(tokens)}


def _signs(tokens: Sequence[Token]) -> set[Sign]:
    words = [_word(token) if token.mention is not None else token.word for token in tokens if token.word not in _SIGNS]
    found: set[Sign] = {*words, *pairwise(words)}
    found |= {f"^ {' '.join(words[:2])}", f"{' '.join(words[-2:])} $", f"^ {words[0]}", f"{words[-1]} $"} if words else set()
    kinds = Counter([word for word in words if word[0] == "<"])
    found |= {f"{kind} {min(count, _MANY)}" for kind, count in kinds.items()}
    found |= {f"= {role.term}" for role in roles(tokens=tuple(tokens), takes=_ALL) if role.term is not None and role.fit != "no"}
    return found if "?" in words else found | {"no ?"}


_ALL = frozenset(TERMS)


def _word(token: Token) -> str:
    return "<size>" if token.mention is not None and is_size(token.mention) else token.word


class Weights(NamedTuple):
    """The table: the questions, and by every sign that is known its weights for all of them, in hundredths, side by side in one whole number."""

    questions: tuple[str, ...]
    start: int
    by_sign: Mapping[Sign, int]
    lanes: struct.Struct


@cache
def weights() -> Weights:
    """Return the weights as they stand in the file beside this one."""
    held = msgspec.json.decode(files("anchorcalc.reader").joinpath("telling", "counted.json").read_bytes(), type=dict[str, dict[str, int]])
    packed: dict[Sign, int] = {}
    for lane, by_sign in enumerate(held.values()):
        for sign, weight in by_sign.items():
            packed[sign] = packed.get(sign, 0) + (weight << _LANE * lane)
    start = packed[""] + sum(_NOUGHT << _LANE * lane for lane in range(len(held)))
    packed |= {(pair[0], pair[1]): weight for sign, weight in packed.items() if isinstance(sign, str) and len(pair := sign.split(" ")) == 2}
    return Weights(tuple(held), start, packed, struct.Struct(f"<{len(held)}I"))


_LANE, _NOUGHT = 32, 1 << 31  # bits for each question, and what stands for no weight, so that every sum is positive


def told(tokens: Sequence[Token]) -> dict[str, float]:
    """Return the logarithm of the share that each question has in what a text may ask, and `NOTHING_ASKED` among them."""
    questions, start, by_sign, lanes = weights()
    get = by_sign.get
    total = sum([weight for sign in _signs(tokens) if (weight := get(sign)) is not None], start)
    sums = lanes.unpack(total.to_bytes(lanes.size, "little"))
    most = max(sums)
    logs = [(one - most) / SCALE for one in sums]
    whole = math.log(sum(map(math.exp, logs)))
    return {name: log - whole for name, log in zip(questions, logs, strict=True)}
