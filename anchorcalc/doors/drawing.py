"""An answer as a picture: SVG text."""

from importlib import import_module

from anchorcalc.answering.replies import Answer
from anchorcalc.doors.pictures import PICTURES
from anchorcalc.errors import PictureError, fault


def draw(answer: Answer) -> str:
    """Return a picture of an answer as SVG text.

    Everything in it comes from what the answer read and found, so an answer that was loaded from JSON draws the same bytes.

    Parameters
    ----------
    answer : Answer
        An answer to one of the questions that have a picture; `questions()` says which.

    Returns
    -------
    str
        One `svg` element, to be written to a file or set into a page. It has its own paper, refers to nothing outside, and has no
        script and no style element or attribute.

    Raises
    ------
    PictureError
        If there is no picture of this.

    Examples
    --------
    >>> from anchorcalc import draw, rode_to_let_out
    >>> draw(rode_to_let_out(depth="12 ft", bow_height="5 ft", tide_rise="3 ft"))[:39]
    '<svg xmlns="http://www.w3.org/2000/svg"'
    """
    name = answer.question if isinstance(answer, Answer) else ""
    if name not in PICTURES:
        given = name or type(answer).__name__
        raise PictureError([fault("answer", "not_acceptable", given, "has no picture", f"an answer to one of {', '.join(sorted(PICTURES))}")])
    module = import_module(f"anchorcalc.doors.pictures.{PICTURES[name]}")
    picture: str = getattr(module, name)(answer).svg()
    return picture
