"""The Python door: one function a question, `answer`, `questions` and `load`."""

import inspect
from collections.abc import Callable, Mapping
from functools import cache
from typing import Any

import msgspec

from anchorcalc.answering.answer import answer as answer_question
from anchorcalc.answering.replies import Answer, Cannot, Needs, Reply, Unclear, answer_class
from anchorcalc.catalogue import catalogue, question
from anchorcalc.declare import Question
from anchorcalc.doors.pictures import PICTURES
from anchorcalc.errors import DecodeError, InputError, fault

_BESIDE = ("boat", "units")
_A_BOAT = '{"bow_height": "4 ft"}, or what anchorcalc.load_boat reads from a file,'


def answer(name: str, *, boat: Mapping[str, Any] | None = None, units: str | None = None, **inputs: Any) -> Answer:
    """Return the answer to a question given by name.

    Parameters
    ----------
    name : str
        A question, such as `rode_to_let_out`; `questions()` lists them.
    boat : mapping, optional
        Terms and values that lie under the inputs; those that the question does not take are passed over.
    units : {"us", "metric"}, optional
        How the answer is shown; else as the question was put.
    **inputs
        Terms of the vocabulary: `"12 ft"`, a range `"3..4 m"`, a pint quantity, `{"value": 12, "unit": "ft"}`, a result of an earlier
        answer. The bounds of each stand in the documentation of the question's own function.

    Returns
    -------
    Answer
        The question's own `…Answer`: its results as quantities (`value` in `unit`, `si` in SI units, `shown` rounded to the safe side),
        what was read and assumed, the working, cautions, and the sources of the sums.

    Raises
    ------
    UnknownQuestion
        If there is no such question.
    InputError
        With one fault for every input that will not do.

    Examples
    --------
    >>> from anchorcalc import answer
    >>> answer("rode_to_let_out", depth="4 m", bow_height="1 m", tide_rise="0.5 m").headline
    'Let out 38.5 m of rode.'
    """
    return answer_question(question(name), inputs, boat=checked_boat(boat), units=units)


def checked_boat(boat: Any) -> Mapping[str, Any] | None:
    """Return a boat's terms, or refuse what is no mapping."""
    if boat is not None and not isinstance(boat, Mapping):
        raise InputError([fault("boat", "wrong_kind", boat, "is no set of terms and values", _A_BOAT)])
    return boat


@cache
def function_of(name: str) -> Callable[..., Answer]:
    """Return the function of a question, with its real signature and docstring."""
    asked = question(name)

    def ask_typed(*, boat: Mapping[str, Any] | None = None, units: str | None = None, **inputs: Any) -> Answer:
        return answer_question(asked, inputs, boat=checked_boat(boat), units=units)

    ask_typed.__name__ = ask_typed.__qualname__ = name
    ask_typed.__module__ = "anchorcalc"
    ask_typed.__doc__ = docstring(asked)
    ask_typed.__signature__ = signature(asked)  # type: ignore[attr-defined]
    return ask_typed


def signature(asked: Question) -> inspect.Signature:
    """Return the signature of a question's function: every input a keyword."""
    parts = [
        inspect.Parameter(name, inspect.Parameter.KEYWORD_ONLY, default=inspect.Parameter.empty if required(asked, name) else None)
        for name in asked.inputs
    ]
    parts += [inspect.Parameter(name, inspect.Parameter.KEYWORD_ONLY, default=None) for name in _BESIDE]
    return inspect.Signature(parts, return_annotation=answer_class(asked))


def required(asked: Question, name: str) -> bool:
    """Say whether nothing but the input itself will do."""
    return asked.inputs[name].need == "asked" and all(derivation.gives != name for derivation in asked.derives)


def docstring(asked: Question) -> str:
    """Return the documentation of a question: meaning, inputs with bounds, results, errors, sources and an example."""
    lines = [asked.doc, "", "Parameters", "----------"]
    for name, one in asked.inputs.items():
        lines += [f"{name} : {one.term.kind.name}{'' if required(asked, name) else ', optional'}", f"    {meaning(asked, name)}"]
    lines += [
        "boat : mapping, optional",
        "    Terms and values that lie under the inputs.",
        "units : {'us', 'metric'}, optional",
        "    How the answer is shown.",
        "",
        "Returns",
        "-------",
        f"{answer_class(asked).__name__}",
    ]
    lines += [f"    {field.name}{f' [{field.kind.si}]' if field.kind.si else ''}: {field.side.meaning}" for field in asked.fields]
    lines += ["", "Raises", "------", "InputError", "    With one fault for every input that will not do.", "", "Notes", "-----"]
    lines += [f"Source: {source}" for source in asked.sources]
    given = ", ".join(f"{name}={value!r}" for name, value in asked.examples[0].items())
    example = answer_question(asked, asked.examples[0])
    lines += ["", "Examples", "--------", f">>> from anchorcalc import {asked.name}", f">>> {asked.name}({given}).headline", repr(example.headline)]
    return "\n".join(lines)


def meaning(asked: Question, name: str) -> str:
    """Return what an input means, its bounds, and what counts when it is not given."""
    term = asked.inputs[name].term
    parts = [term.meaning]
    unit = f" {term.kind.si}" if term.kind.si else ""
    if term.above is not None:
        parts.append(f"more than {term.above:g}{unit}")
    if term.least is not None:
        parts.append(f"at least {term.least:g}{unit}")
    if term.most is not None:
        parts.append(f"at most {term.most:g}{unit} ({term.why})")
    if term.choices:
        parts.append("one of " + ", ".join(term.choices))
    if asked.inputs[name].need == "usual":
        parts.append(f"where not given: {term.assumed}")
    return "; ".join(parts) + "."


# --- the catalogue as data ----------------------------------------------------------------------------------------------------------


class InputEntry(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """An input in the catalogue."""

    name: str
    kind: str
    meaning: str
    required: bool
    example: str | float | bool
    choices: tuple[str, ...] = ()
    usual: str = ""


class ResultEntry(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """A result in the catalogue: what it means, its kind, and the safe side it is rounded to."""

    name: str
    kind: str
    meaning: str
    safe_side: str
    always: bool


class QuestionEntry(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=False):
    """A question in the catalogue."""

    name: str
    title: str
    doc: str
    inputs: tuple[InputEntry, ...]
    results: tuple[ResultEntry, ...]
    examples: tuple[dict[str, Any], ...]
    asks: tuple[str, ...]
    sources: tuple[str, ...]
    picture: bool

    def __hash__(self) -> int:
        """Hash by name: a question is declared once."""
        return hash(self.name)


@cache
def entry_of(name: str) -> QuestionEntry:
    """Return one question as the catalogue shows it."""
    asked = question(name)
    return QuestionEntry(
        name=asked.name,
        title=asked.title,
        doc=asked.doc,
        examples=asked.examples,
        asks=asked.asks,
        sources=asked.sources,
        picture=has_picture(asked.name),
        inputs=tuple(
            InputEntry(
                name=one.name,
                kind=one.term.kind.name,
                meaning=meaning(asked, one.name),
                required=required(asked, one.name),
                example=one.term.example,
                choices=one.term.choices,
                usual=one.term.assumed if one.need == "usual" else "",
            )
            for one in asked.inputs.values()
        ),
        results=tuple(
            ResultEntry(
                name=field.name,
                kind="list" if field.many else field.kind.name,
                meaning=field.side.meaning,
                safe_side=field.side.way,
                always=not field.optional,
            )
            for field in asked.fields
        ),
    )


def has_picture(name: str) -> bool:
    """Say whether there is a picture of a question's answers."""
    return name in PICTURES


def questions() -> tuple[QuestionEntry, ...]:
    """Return the catalogue: every question with its inputs, results and examples.

    Returns
    -------
    tuple of QuestionEntry
        By name: title, doc, inputs (kind, meaning with bounds in SI units, whether required), results (kind, meaning, and the safe side
        that they are rounded to when shown), two or more examples, sources, and whether there is a picture.

    Examples
    --------
    >>> from anchorcalc import questions
    >>> [entry.title for entry in questions() if entry.name == "rode_to_let_out"]
    ['How much rode to let out']
    """
    return tuple(entry_of(one.name) for one in catalogue())


# --- back from JSON -----------------------------------------------------------------------------------------------------------------


class _Head(msgspec.Struct):
    status: str
    question: str = ""


_OTHERS: dict[str, type[Reply]] = {"needs": Needs, "unclear": Unclear, "cannot": Cannot}


def load(text: str | bytes) -> Reply:
    """Return the answer (or other reply) that a JSON text holds.

    Parameters
    ----------
    text : str or bytes
        JSON of a reply, as `msgspec.json.encode`, the command's `--json` or the HTTP server writes it.

    Returns
    -------
    Answer, Needs, Unclear or Cannot
        A value equal to the one that was written, its numbers to the last bit.

    Raises
    ------
    DecodeError
        If it is no reply of this library.

    Examples
    --------
    >>> import msgspec, anchorcalc
    >>> given = anchorcalc.scope_now(rode_out="40 m", depth="6 m")
    >>> anchorcalc.load(msgspec.json.encode(given)) == given
    True
    """
    try:
        head = msgspec.json.decode(text, type=_Head)
        kind = answer_class(question(head.question)) if head.status == "answered" else _OTHERS[head.status]
        return msgspec.json.decode(text, type=kind)
    except (msgspec.MsgspecError, UnicodeError, KeyError, TypeError, AttributeError) as error:
        raise DecodeError(
            [
                fault(
                    "text",
                    "unreadable",
                    text if isinstance(text, str) else repr(text),
                    f"is no reply of this library ({error})",
                    "the JSON of an answer",
                )
            ]
        ) from error
