"""Replies as a terminal shows them: headline first, then what was not used, working, what was assumed, cautions and sources."""

import textwrap
from collections.abc import Iterator
from typing import Any

import msgspec

from anchorcalc.answering.replies import Answer, Cannot, LeftAside, Needs, Reply
from anchorcalc.doors.python import QuestionEntry

WIDEST = 100


def reply_text(reply: Reply, *, width: int) -> str:
    """Return a reply as text for a terminal of a width."""
    return "\n".join(_lines(reply, min(width, WIDEST)))


def _lines(reply: Reply, width: int) -> Iterator[str]:
    if isinstance(reply, Answer):
        yield from _answer(reply, width)
    elif isinstance(reply, Needs):
        yield from _wrapped(reply.prompt, width, "")
        read = _read(reply.read, origins=("asked", "before"))
        if read:
            yield from ("", *_wrapped(f"Read so far ({reply.question}): {read}", width, ""))
    elif isinstance(reply, Cannot):
        yield from (*_wrapped(reply.why, width, ""), "", "You can ask:", *_listed(reply.can_ask, width))
    else:
        yield from ("That can be read in more than one way. Did you mean:", *_listed([choice.text for choice in reply.choices], width))
    if not isinstance(reply, Answer):
        yield from _aside(reply.left_aside, width)


def _answer(reply: Answer, width: int) -> Iterator[str]:
    yield from _wrapped(reply.headline, width, "")
    yield from _aside(reply.left_aside, width)  # what the answer does not allow for stands beside it
    yield ""
    for line in reply.working:
        yield from _wrapped(line, width, "  ")
    asked = _read(reply.read, origins=("asked", "before"))
    yield from ("", *_wrapped(f"Read as {reply.question}: {asked or 'nothing of its own'}", width, ""))
    assumed = _read(reply.read, origins=("assumed",))
    boat = _read(reply.read, origins=("boat",))
    if assumed:
        yield from ("", *_wrapped(f"Assumed: {assumed}", width, ""))
    if boat:
        yield from ("", *_wrapped(f"From the boat file: {boat}", width, ""))
    if reply.cautions:
        yield from ("", "Mind:", *_listed([caution.text for caution in reply.cautions], width))
    yield from ("", "Sources:", *_listed(reply.sources, width))


def _read(read: Any, *, origins: tuple[str, ...]) -> str:
    found = ((field.name, getattr(read, field.name)) for field in msgspec.structs.fields(type(read)))
    return ", ".join(f"{name} {value.shown}" for name, value in found if value is not None and value.origin in origins)


def _aside(aside: tuple[LeftAside, ...], width: int) -> Iterator[str]:
    if aside:
        said = ", ".join(f"“{one.text}”{f' ({one.term})' if one.term else ''}" for one in aside)
        yield from ("", *_wrapped(f"Not used: {said}", width, ""))


def _listed(items: Any, width: int) -> Iterator[str]:
    for item in items:
        yield from textwrap.wrap(item, width, initial_indent="  - ", subsequent_indent="    ") or ["  -"]


def _wrapped(text: str, width: int, indent: str) -> list[str]:
    return textwrap.wrap(text, width, initial_indent=indent, subsequent_indent=indent + "  ") or [""]


def page_text(entry: QuestionEntry, *, width: int) -> str:
    """Return the page of one question: what it asks for, what it gives, how to ask it."""
    lines = [entry.title, "", *textwrap.wrap(entry.doc.replace("\n", " "), width), "", "Inputs (* must be given):"]
    for one in entry.inputs:
        lines += textwrap.wrap(
            f"--{one.name.replace('_', '-')}{'*' if one.required else ''}  {one.meaning} Such as {one.example}.",
            width,
            initial_indent="  ",
            subsequent_indent="      ",
        )
    lines += ["", "Results:"]
    for result in entry.results:
        lines += textwrap.wrap(f"{result.name}: {result.meaning}", width, initial_indent="  ", subsequent_indent="      ")
    lines += ["", "Ask it like:", *_listed(entry.asks, width), "", "Examples:"]
    for example in entry.examples:
        flags = " ".join(f'--{name.replace("_", "-")} "{value}"' for name, value in example.items())
        lines += textwrap.wrap(f"anchorcalc {entry.name} {flags}", width, initial_indent="  ", subsequent_indent="      ", break_long_words=False)
    return "\n".join([*lines, "", "Sources:", *_listed(entry.sources, width)])
