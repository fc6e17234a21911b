"""A quantity of a text and the term that it was taken for."""

from anchorcalc.reader.fits import Fit
from anchorcalc.reader.mention import Mention, Part


class Role(Part, frozen=True, gc=False):
    """A quantity and the term that it was taken for, None where no word says."""

    mention: Mention
    at: int
    term: str | None
    score: float
    fit: Fit = "never"
    cue: tuple[int, int] = (-1, -1)
    alias: str = ""
