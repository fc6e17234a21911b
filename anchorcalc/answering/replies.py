"""What comes back: an answer, a question back, a choice, or a plain no. All are values: immutable, comparable, hashable, picklable."""

from functools import cache
from typing import TYPE_CHECKING, Any, Literal, cast

import msgspec

from anchorcalc.cautions import Caution
from anchorcalc.declare import Question
from anchorcalc.units import kinds
from anchorcalc.units.quantity import Read, ReadClock, ReadFixes, ReadFlag, ReadLengths, ReadPosition, ReadQuantity, ReadWord

_READ_TYPES: dict[str, type[msgspec.Struct]] = {
    kinds.WORD.name: ReadWord,
    kinds.FLAG.name: ReadFlag,
    kinds.CLOCK.name: ReadClock,
    kinds.POSITION.name: ReadPosition,
    kinds.LENGTHS.name: ReadLengths,
    kinds.FIXES.name: ReadFixes,
}


class LeftAside(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """Something that a text gave and the answer did not use; `term` is what it was taken to be, where that was clear."""

    text: str
    term: str | None = None


class Answer(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """An answer: headline, results, what was read, the working, cautions and sources. Each question has its own `…Answer`.

    Examples
    --------
    >>> import anchorcalc
    >>> found = anchorcalc.scope_now(rode_out="36 m", depth="5 m", bow_height="1 m")
    >>> found.headline, found.results.scope.si, found.read.tide_rise.origin, [caution.code for caution in found.cautions][0]
    ('Scope 6:1 now: fair.', 6.0, 'assumed', 'no_tide')
    """

    status: Literal["answered"]
    question: str
    headline: str
    results: Any
    read: Any
    working: tuple[str, ...]
    cautions: tuple[Caution, ...]
    sources: tuple[str, ...]
    version: str
    left_aside: tuple[LeftAside, ...] = ()


class Needs(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """Something is missing: its names, one plain question that gets them, and what was read so far.

    Examples
    --------
    >>> import anchorcalc
    >>> reply = anchorcalc.ask("what is my scope with 30 m out?")
    >>> reply.status, reply.missing, reply.read.rode_out.si
    ('needs', ('depth',), 30.0)
    """

    status: Literal["needs"]
    question: str
    missing: tuple[str, ...]
    prompt: str
    read: "ReadSoFar"
    version: str
    left_aside: tuple[LeftAside, ...] = ()


class Choice(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """One reading of an unclear text, and a plain sentence that says it and can be sent back."""

    question: str
    text: str
    read: "ReadSoFar"


class Unclear(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """The text can be read in more than one way: two or more choices.

    Examples
    --------
    >>> import anchorcalc
    >>> reply = anchorcalc.ask("how much rode in 12 of water?")
    >>> reply.status, len(reply.choices) > 1
    ('unclear', True)
    """

    status: Literal["unclear"]
    choices: tuple[Choice, ...]
    version: str
    left_aside: tuple[LeftAside, ...] = ()


class Cannot(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """No calculation answers this: why, who decides where that is known, and what can be asked.

    Examples
    --------
    >>> import anchorcalc
    >>> reply = anchorcalc.ask("May I anchor here by law?")
    >>> reply.status, len(reply.can_ask) > 0
    ('cannot', True)
    """

    status: Literal["cannot"]
    why: str
    can_ask: tuple[str, ...]
    version: str
    left_aside: tuple[LeftAside, ...] = ()


def _read_fields() -> list[tuple[str, Any, Any]]:
    from anchorcalc.vocabulary import TERMS

    return [(name, read_type(name=name) | None, None) for name in TERMS if name != "units"]


def read_type(*, name: str) -> type[msgspec.Struct]:
    """Return the type that a term's value has in `read`."""
    from anchorcalc.vocabulary import TERMS

    return _READ_TYPES.get(TERMS[name].kind.name, ReadQuantity)


if TYPE_CHECKING:
    from anchorcalc.answering.answers import ReadSoFar
else:
    ReadSoFar = msgspec.defstruct(
        "ReadSoFar",
        _read_fields(),
        frozen=True,
        kw_only=True,
        omit_defaults=True,
        module=__name__,
        namespace={"__doc__": "What was read so far, by term."},
    )


def camel(name: str) -> str:
    """Return a question's name as a class name."""
    return "".join(part.capitalize() for part in name.split("_"))


@cache
def read_class(question: Question) -> type[msgspec.Struct]:
    """Return the struct of what a question reads."""
    fields = [
        (one.name, read_type(name=one.name), msgspec.NODEFAULT)
        if one.need == "asked" and one.name not in _alternatives(question)
        else (one.name, read_type(name=one.name) | None, None)
        for one in question.inputs.values()
    ]
    return msgspec.defstruct(
        f"{camel(question.name)}Read",
        fields,
        frozen=True,
        kw_only=True,
        omit_defaults=True,
        module="anchorcalc.answering.answers",
        namespace={"__doc__": f"What {question.name} stands on."},
    )


def _alternatives(question: Question) -> frozenset[str]:
    return frozenset(name for group in question.one_of for name in group)


@cache
def answer_class(question: Question) -> type[Answer]:
    """Return the struct of a question's answer."""
    constant = Literal[question.name]  # type: ignore[name-defined]
    made = msgspec.defstruct(
        f"{camel(question.name)}Answer",
        [("question", constant), ("results", question.results), ("read", read_class(question))],
        bases=(Answer,),
        frozen=True,
        kw_only=True,
        omit_defaults=True,
        module="anchorcalc.answering.answers",
        namespace={"__doc__": f"{question.title}: an answer."},
    )
    return cast(type[Answer], made)


Reply = Answer | Needs | Unclear | Cannot
__all__ = ["Answer", "Cannot", "Choice", "LeftAside", "Needs", "Read", "ReadSoFar", "Reply", "Unclear", "answer_class", "camel", "read_class"]
