"""What the words and figures of a text tell of the question that it asks, by weights that were counted in the corpus.

`tests/reading/counting.py` fits the weights (multinomial logistic regression) and writes them beside this file; here they are only added up.
"""

import math
from collections.abc import Mapping, Sequence
from functools import cache
from importlib.resources import files
from itertools import pairwise
from typing import NamedTuple

import msgspec
import numpy as np
from numpy.typing import NDArray

from anchorcalc.reader.fits import is_size
from anchorcalc.reader.sentence import Token
from anchorcalc.reader.slots import roles
from anchorcalc.vocabulary import TERMS

NOTHING_ASKED = "cannot"  # the answer beside the questions: nothing here that could be reckoned
SCALE = 100.0  # weights are written, and summed, in hundredths
_SIGNS = frozenset('.,;:!()-–~=/&+×<>"|\n')
_MANY = 4


def telling(tokens: Sequence[Token]) -> set[str]:
    """Return the signs of a text: words, each two in a row, how it begins and ends, the kinds of its figures, the terms they stand for."""
    words = [_word(token) if token.mention is not None else token.word for token in tokens if token.word not in _SIGNS]
    found = {*words, *(f"{one} {other}" for one, other in pairwise(words))}
    found |= {f"^ {' '.join(words[:2])}", f"{' '.join(words[-2:])} $", f"^ {words[0]}", f"{words[-1]} $"} if words else set()
    kinds = [word for word in words if word[0] == "<"]
    found |= {f"{kind} {min(kinds.count(kind), _MANY)}" for kind in kinds}
    found |= {f"= {role.term}" for role in roles(tokens=tuple(tokens), takes=_ALL) if role.term is not None and role.fit != "no"}
    return found if "?" in words else found | {"no ?"}


_ALL = frozenset(TERMS)


def _word(token: Token) -> str:
    return "<size>" if token.mention is not None and is_size(token.mention) else token.word


class Weights(NamedTuple):
    """The table: the questions, what each starts from, the row of every sign by which a text is known, and its weights."""

    questions: tuple[str, ...]
    start: NDArray[np.int32]
    rows: Mapping[str, int]
    weights: NDArray[np.int32]


@cache
def weights() -> Weights:
    """Return the weights as they stand in the file beside this one."""
    held = msgspec.json.decode(files("anchorcalc.reader").joinpath("telling", "counted.json").read_bytes(), type=dict[str, dict[str, int]])
    rows: dict[str, int] = {}
    for by_sign in held.values():
        for sign in by_sign:
            rows.setdefault(sign, len(rows))
    table = np.zeros((len(rows), len(held)), dtype=np.int32)
    for column, by_sign in enumerate(held.values()):
        table[[rows[sign] for sign in by_sign], column] = list(by_sign.values())
    return Weights(tuple(held), table[rows[""]], rows, table)


def told(tokens: Sequence[Token]) -> dict[str, float]:
    """Return the logarithm of the share that each question has in what a text may ask, and `NOTHING_ASKED` among them."""
    held = weights()
    rows = [held.rows[sign] for sign in telling(tokens) if sign in held.rows]
    total = (held.start + held.weights[rows].sum(axis=0)).tolist()
    most = max(total)
    logs = [(one - most) / SCALE for one in total]
    whole = math.log(sum(map(math.exp, logs)))
    return {name: log - whole for name, log in zip(held.questions, logs, strict=True)}
