"""Compare what `ask` reads with what a corpus line expects: `python -m tests.reading.score FILE...`.

A line holds a text, perhaps a boat and an earlier exchange, and what it must be read as; `also_ok` are readings that are as right, and
`never` is one that must not come out. Inputs compare by value. A line counts as silently wrong where an answer came out that stands on
another question or on other inputs than it should, or that matches `never`.
"""

import json
import sys
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any, Literal, NamedTuple

import anchorcalc
from anchorcalc.answering.taking import Taken, take
from anchorcalc.catalogue import names, question
from anchorcalc.vocabulary import TERMS

Outcome = Literal["right", "wrong", "silently wrong"]
RELATIVE, DEGREES = 1e-6, 1.5e-6


class Scored(NamedTuple):
    """How one line came out, and what was read."""

    outcome: Outcome
    line: Mapping[str, Any]
    got: str


def lines(path: str | Path) -> Iterator[dict[str, Any]]:
    """Yield the lines of a corpus file whose questions are all in the catalogue."""
    for text in Path(path).read_text(encoding="utf-8").splitlines():
        if text.strip():
            line = json.loads(text)
            asked = {line["expect"].get("question"), line.get("before", {}).get("question")} - {None}
            if asked <= set(names()):
                yield line


def score(line: Mapping[str, Any]) -> Scored:
    """Ask one line and compare."""
    reply = anchorcalc.ask(line["text"], boat=line.get("boat"), before=line.get("before"))
    accepted = [line["expect"], *line.get("also_ok", ())]
    got = describe(reply)
    hit_never = "never" in line and is_never(reply, line["never"])
    if not hit_never and any(matches(reply, one) for one in accepted):
        return Scored("right", line, got)
    return Scored("silently wrong" if hit_never or reply.status == "answered" else "wrong", line, got)


def said(reply: Any, origins: tuple[str, ...] = ("asked",)) -> dict[str, Any]:
    """Return what a reply read from the text itself."""
    read = getattr(reply, "read", None)
    found = {name: getattr(read, name) for name in getattr(read, "__struct_fields__", ()) if getattr(read, name) is not None}
    return {name: one for name, one in found.items() if one.origin in origins}


def matches(reply: Any, expected: Mapping[str, Any]) -> bool:
    """Say whether a reply is what is expected."""
    if reply.status != expected["status"]:
        return False
    if reply.status in ("unclear", "cannot"):
        return True
    if reply.question != expected["question"] or set(getattr(reply, "missing", ())) != set(expected.get("missing", ())):
        return False
    read, inputs = said(reply), expected.get("inputs", {})
    extra = set(read) - set(inputs)
    return all(name in read and same(name, read[name], value) for name, value in inputs.items()) and extra <= derived(reply)


def derived(reply: Any) -> set[str]:
    """Return the inputs that an answer made of others: all those are there, and the value is what they make."""
    everything = said(reply, ("asked", "before", "boat", "assumed"))
    found = set()
    for one in question(reply.question).derives:
        if one.gives in everything and all(name in everything for name in one.needs):
            values = {name: everything[name] for name in (*one.needs, *one.takes) if name in everything}
            if len(values) < len(one.needs) + len(one.takes) or any(not hasattr(value, "si") or value.low is not None for value in values.values()):
                found.add(one.gives)
                continue
            made = one.solve(**{name: value.si for name, value in values.items()})
            if made is not None and hasattr(everything[one.gives], "si") and near(float(made), everything[one.gives].si):
                found.add(one.gives)
    return found


def is_never(reply: Any, never: Mapping[str, Any]) -> bool:
    """Say whether a reply is the one that must not come out."""
    if reply.status != never.get("status", reply.status) or getattr(reply, "question", None) != never.get(
        "question", getattr(reply, "question", None)
    ):
        return False
    read = said(reply, ("asked", "before", "boat", "assumed"))
    return all(name in read and same(name, read[name], value) for name, value in never.get("inputs", {}).items())


def same(name: str, read: Any, expected: Any) -> bool:
    """Say whether a value read is the value expected."""
    if TERMS[name].kind.name == "flag":
        return bool(read.value) == (expected in ("yes", True))
    wanted = take(term=TERMS[name], raw=expected)
    if not isinstance(wanted, Taken):
        return False
    kind = TERMS[name].kind.name
    if kind == "word":
        return bool(read.value == wanted.text)
    if kind in ("clock", "position", "fixes"):
        return same_place_or_time(kind, take(term=TERMS[name], raw=read), wanted)
    if kind == "lengths":
        return len(read.si) == len(wanted.low) and all(near(a, b) for a, b in zip(read.si, wanted.low, strict=True))
    ends = (read.low, read.high) if getattr(read, "low", None) is not None else (read.si, read.si)
    return near(ends[0], wanted.low) and near(ends[1], wanted.high)


def same_place_or_time(kind: str, read: Any, wanted: Taken) -> bool:
    """Compare clock times, positions and fixes."""
    if not isinstance(read, Taken):
        return False
    if kind == "clock":
        return bool(read.low.seconds == wanted.low.seconds and read.low.form == wanted.low.form)
    if kind == "position":
        return there(read.low, wanted.low)
    return len(read.low) == len(wanted.low) and all(
        a[0].seconds == b[0].seconds and there(a[1], b[1]) for a, b in zip(read.low, wanted.low, strict=True)
    )


def there(one: Any, other: Any) -> bool:
    """Say whether two positions are the same to the last digit written."""
    return bool(abs(one.latitude - other.latitude) <= DEGREES and abs(one.longitude - other.longitude) <= DEGREES)


def near(one: float, other: float) -> bool:
    """Say whether two numbers are the same to a millionth."""
    return abs(one - other) <= RELATIVE * max(abs(one), abs(other), 1e-9)


def describe(reply: Any) -> str:
    """Return a reply in one line."""
    read = " ".join(f"{name}={one.shown}" for name, one in said(reply).items())
    missing = ",".join(getattr(reply, "missing", ()))
    choices = " / ".join(one.text for one in getattr(reply, "choices", ()))
    aside = " ASIDE " + "; ".join(f"{one.text}={one.term}" for one in reply.left_aside) if reply.left_aside else ""
    return (
        f"{reply.status} {getattr(reply, 'question', '')} {read} {'MISSING ' + missing if missing else ''}{choices}{getattr(reply, 'why', '')}{aside}"
    )


def main(paths: list[str]) -> int:
    """Print the misses and the counts of every file."""
    brief = "-q" in paths
    total = {"right": 0, "wrong": 0, "silently wrong": 0}
    for path in [one for one in paths if one != "-q"]:
        scored = [score(line) for line in lines(path)]
        counts = {outcome: sum(one.outcome == outcome for one in scored) for outcome in total}
        for one in scored:
            if one.outcome != "right" and not brief:
                print(
                    f"{one.outcome.upper():15} {one.line['id']}: {one.line['text']}\n      want "
                    f"{json.dumps(one.line['expect'], ensure_ascii=False)}\n      got  {one.got}"
                )
        print(f"{Path(path).name}: {len(scored)} lines, " + ", ".join(f"{number} {outcome}" for outcome, number in counts.items()))
        total = {outcome: total[outcome] + counts[outcome] for outcome in total}
    print(f"all: {sum(total.values())} lines, " + ", ".join(f"{number} {outcome}" for outcome, number in total.items()))
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
