"""What was found in the last text is kept, known by the very tokens: to hash those of a long text again and again takes longer than to read it."""

from collections.abc import Callable
from functools import wraps
from typing import TypeVar

from anchorcalc.reader.sentence import Token

Found = TypeVar("Found")


def kept_for_last(find: Callable[[tuple[Token, ...]], Found]) -> Callable[[tuple[Token, ...]], Found]:
    """Return a function of tokens that finds once what it is asked of the same tokens in turn."""
    last: list[tuple[tuple[Token, ...], Found]] = []

    @wraps(find)
    def found(tokens: tuple[Token, ...]) -> Found:
        held = last[0] if last else None
        if held is None or held[0] is not tokens:
            held = (tokens, find(tokens))
            last[:] = [held]  # at once, so that another thread sees the old pair or the new one
        return held[1]

    return found


__all__ = ["kept_for_last"]
