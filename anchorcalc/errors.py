"""What can be wrong with what was given: one fault an input, one family of errors."""

from collections.abc import Iterable
from typing import Literal, get_args

import msgspec

Code = Literal[
    "unknown_question",
    "unknown_input",
    "missing",
    "bare_number",
    "unknown_unit",
    "wrong_dimension",
    "wrong_kind",
    "unknown_word",
    "not_finite",
    "negative",
    "out_of_bounds",
    "range_not_taken",
    "too_many_ranges",
    "unreadable",
    "contradiction",
    "clock_mixed",
    "outside_tide",
    "given_twice",
    "too_long",
    "too_large",
    "not_found",
    "method_not_allowed",
    "not_acceptable",
    "unsupported_media_type",
    "too_many_requests",
    "unreadable_request",
    "internal",
]
CODES: tuple[str, ...] = get_args(Code)
GIVEN_AT_MOST = 80


class Fault(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """One input at fault: its name, what was given, why that will not do, and what would.

    Examples
    --------
    >>> print(fault("depth", "bare_number", "12", "has no unit", '"12 ft" or "3.6 m"'))
    depth: '12' has no unit; "12 ft" or "3.6 m" would do
    """

    input: str
    code: Code
    given: str
    why: str
    would_do: str
    row: int | None = None

    def __str__(self) -> str:
        """Return `input: 'given' why; what would do`."""
        said = f"{self.given!r} " if self.given else ""
        return f"{self.input}: {said}{self.why}; {self.would_do} would do"


def cut(given: object) -> str:
    """Return the given thing as text, no longer than an error may quote."""
    text = given if isinstance(given, str) else _written(given)
    printable = "".join(sign if sign.isprintable() else " " for sign in text[: GIVEN_AT_MOST + 1])
    return printable if len(printable) <= GIVEN_AT_MOST else printable[: GIVEN_AT_MOST - 1] + "…"


def _written(given: object) -> str:
    if hasattr(given, "__struct_fields__"):  # an answer, its results, what it read: its fields would say nothing here
        return f"a {type(given).__name__}"
    try:
        return str(given) if isinstance(given, int | float) else repr(given)[:400]
    except (ValueError, RecursionError):  # a whole number of more digits than Python writes out, a list in a list in a list …
        return f"a {type(given).__name__}"


def fault(name: str, code: Code, given: object, why: str, would_do: str) -> Fault:
    """Return a fault with what was given cut to a length that may be quoted."""
    return Fault(input=name, code=code, given="" if given is None else cut(given), why=why, would_do=would_do)


class AnchorcalcError(Exception):
    """The family of all errors that this library raises; `faults` names every input at fault.

    Examples
    --------
    >>> from anchorcalc import rode_to_let_out
    >>> try:
    ...     rode_to_let_out(depth="12", scoop="7:1")
    ... except AnchorcalcError as error:
    ...     [fault.code for fault in error.faults]
    ['bare_number', 'unknown_input']
    """

    def __init__(self, faults: Iterable[Fault]) -> None:
        self.faults: tuple[Fault, ...] = tuple(faults)
        super().__init__("\n".join(str(one) for one in self.faults))

    def __reduce__(self) -> tuple[type["AnchorcalcError"], tuple[tuple[Fault, ...]]]:
        """Pickle by the faults, not by the text made of them."""
        return type(self), (self.faults,)


class InputError(AnchorcalcError):
    """One or more inputs of a question will not do.

    Raised by every typed door, with one fault for each input: missing, unknown, without a unit, out of its bounds (which the fault
    gives in the unit that was used), or against another one.

    Examples
    --------
    >>> import anchorcalc
    >>> try:
    ...     anchorcalc.scope_now(rode_out="3 m", depth="9 km")
    ... except anchorcalc.InputError as error:
    ...     [(fault.input, fault.code) for fault in error.faults]
    [('depth', 'out_of_bounds')]
    """


class UnknownQuestion(AnchorcalcError):
    """No question has that name.

    Examples
    --------
    >>> import anchorcalc
    >>> try:
    ...     anchorcalc.answer("scope_new")
    ... except anchorcalc.UnknownQuestion as error:
    ...     error.faults[0].would_do
    'scope_now'
    """


class TextError(AnchorcalcError):
    """A text that cannot be taken at all, such as one that is too long.

    Examples
    --------
    >>> import anchorcalc
    >>> try:
    ...     anchorcalc.ask("how much rode? " * 2000)
    ... except anchorcalc.TextError as error:
    ...     error.faults[0].code
    'too_long'
    """


class FileError(AnchorcalcError):
    """A file (boat, fixes, table) that cannot be read or written.

    Examples
    --------
    >>> import anchorcalc
    >>> try:
    ...     anchorcalc.load_boat("no_such_boat.toml")
    ... except anchorcalc.FileError as error:
    ...     error.faults[0].code
    'unreadable'
    """


class TableError(AnchorcalcError):
    """A table whose headings or shape will not do.

    Examples
    --------
    >>> import anchorcalc
    >>> try:
    ...     anchorcalc.check_table("scope_now", 7)
    ... except anchorcalc.TableError as error:
    ...     error.faults[0].input
    'table'
    """


class PictureError(AnchorcalcError):
    """An answer of which there is no picture.

    Examples
    --------
    >>> import anchorcalc
    >>> try:
    ...     anchorcalc.draw(anchorcalc.tackle_check(boat_length="8 m"))
    ... except anchorcalc.PictureError as error:
    ...     error.faults[0].input
    'answer'
    """


class DecodeError(AnchorcalcError):
    """A JSON text that is not an answer of this library.

    Examples
    --------
    >>> import anchorcalc
    >>> try:
    ...     anchorcalc.load("{}")
    ... except anchorcalc.DecodeError as error:
    ...     error.faults[0].code
    'unreadable'
    """
