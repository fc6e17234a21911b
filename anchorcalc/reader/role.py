"""A quantity of a text and the term that it was taken for."""

from typing import NamedTuple

from anchorcalc.reader.fits import Fit
from anchorcalc.reader.mention import Mention


class Role(NamedTuple):
    """A quantity and the term that it was taken for, None where no word says."""

    mention: Mention
    at: int
    term: str | None
    score: float
    fit: Fit = "never"
    cue: tuple[int, int] = (-1, -1)
    alias: str = ""
