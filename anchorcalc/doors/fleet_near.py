"""Headings that look like an input and are none: which input they come near to, and how its heading is written."""

import re
from collections.abc import Container, Iterator
from difflib import get_close_matches
from functools import cache

from anchorcalc.catalogue import catalogue
from anchorcalc.declare import Question
from anchorcalc.errors import Fault, fault
from anchorcalc.units.kinds import units_spelled
from anchorcalc.vocabulary import TERMS

NEAR_ENOUGH = 0.8  # of the letters of two names alike
_BRACKETED = re.compile(r"[\[({<]([^\[\](){}<>]*)[\])}>]?")
_HUMP = re.compile(r"(?<=[a-z])(?=[A-Z])")  # bowHeight
_NO_WORD = re.compile(r"[^\w]+|_+")


def near_miss(question: Question, column: object, *, name: str, found: Container[str]) -> Iterator[Fault]:
    """Yield a fault for a heading that looks like an input of the question; what another question or an earlier answer has there is none.

    A heading that says more than the input does may be another thing (a charted depth): where the input is among those found, it is.
    """
    if not isinstance(column, str) or name in TERMS or name.removesuffix("_answer") in _of_answers():
        return
    words, unit = _words_and_unit(column)
    misspelt, said_more = _misspelt(question, words), _said_more(question, words, unit)
    near = misspelt or (said_more if said_more not in found else None)
    if near:
        would_do = _heading(near, unit) + ("" if misspelt else ", if it is that,")
        yield fault("table", "unknown_input", column, f"is no input of {question.name}, though it looks like one", would_do)


@cache
def _of_answers() -> frozenset[str]:
    return frozenset(field.name for question in catalogue() for field in question.fields) | {"cautions", "problem", "name"}


def _words_and_unit(column: str) -> tuple[tuple[str, ...], str]:
    """Return the words of a heading in small letters, and the spelling of a unit in brackets or behind them: `Depth (m)`, `depth_m`."""
    bracketed = _BRACKETED.search(column)
    words = tuple(_NO_WORD.sub(" ", _HUMP.sub(" ", _BRACKETED.sub(" ", column))).casefold().split())
    if bracketed is not None:
        return words, bracketed[1].strip()
    if len(words) > 1 and units_spelled(text=words[-1]):
        words, unit = words[:-1], words[-1]
        return (words[:-1] if len(words) > 1 and words[-1] == "in" else words), unit
    return words, ""


def _misspelt(question: Question, words: tuple[str, ...]) -> str | None:
    """Return the input whose name is nearly the heading."""
    plain = "_".join(words)
    close = get_close_matches(plain, [name for name in question.inputs if name[0] == plain[:1]], n=1, cutoff=NEAR_ENOUGH)
    return close[0] if close else None


def _said_more(question: Question, words: tuple[str, ...], unit: str) -> str | None:
    """Return the input all of whose words stand in the heading; one word alone needs a unit that fits."""
    for name in sorted(question.inputs, key=len, reverse=True):
        parts = name.split("_")
        if set(parts) <= set(words) and (len(parts) > 1 or _fits(name, unit)):
            return name
    return None


def _fits(name: str, unit: str) -> bool:
    return any(one.kind == TERMS[name].kind.name for one in units_spelled(text=unit)) if unit else False


def _heading(name: str, unit: str) -> str:
    """Return how the heading of an input is written, with the unit that was said where it fits."""
    kind = TERMS[name].kind
    symbol = unit if _fits(name, unit) else kind.metric
    return f"{name} [{symbol}]" if symbol else name
