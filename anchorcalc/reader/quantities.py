"""Every quantity of a text: the first layer of the reader of plain words.

`mentions(text)` gives all that the reader of roles needs, in order and without overlap (see `Mention`): quantities with a unit, bare
numbers, ratios, wind forces, clock times, positions, and what no question takes. `find_quantities(text)` is the public door: quantities
with a dimension only.
"""

import math

import msgspec

from anchorcalc.errors import TextError, fault
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.mentions import mentions
from anchorcalc.units.kinds import Amount

__all__ = ["FoundQuantity", "Mention", "find_quantities", "mentions"]

DIMENSIONS = frozenset({"length", "mass", "speed", "force", "time", "angle", "power", "area", "volume", "temperature"})


class FoundQuantity(msgspec.Struct, frozen=True, kw_only=True):
    """A quantity found in a text: the number as written and its unit, the same in SI, and where it stands.

    `value` and `si` are the low end where a range was said; `low` and `high` (SI) are equal where none was. `start` and `end` are
    offsets in the text. A plain `ton` is read as the short ton of 2000 lb, a month and a year as the mean ones.
    """

    value: float
    unit: str
    dimension: str
    si: float
    low: float
    high: float
    start: int
    end: int


def find_quantities(text: str) -> tuple[FoundQuantity, ...]:
    """Return every quantity of a text that has a dimension: lengths, masses, speeds, forces, times, angles, powers and others.

    Parameters
    ----------
    text : str
        Any text.

    Returns
    -------
    tuple of FoundQuantity
        In order, without overlap. Bare numbers, ratios, clock times and positions are none. A wind of force 12 has no upper end and
        is left out.

    Raises
    ------
    TextError
        Where it is no text.

    Examples
    --------
    >>> [(found.value, found.unit, found.start) for found in find_quantities("Twelve feet of water, 30 m of chain, scope 7.")]
    [(12.0, 'ft', 0), (30.0, 'm', 22)]
    """
    if not isinstance(text, str):
        raise TextError([fault("text", "wrong_kind", text, "is no text", "any text")])
    return tuple(
        FoundQuantity(
            value=float(said.value),
            unit=said.unit,
            dimension=said.kind,
            si=said.low,
            low=said.low,
            high=said.high,
            start=mention.start,
            end=mention.end,
        )
        for mention in mentions(text)
        if isinstance(said := mention.amount, Amount) and mention.kind in DIMENSIONS and math.isfinite(said.low) and math.isfinite(said.high)
    )
