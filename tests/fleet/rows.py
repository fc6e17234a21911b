"""Random rows for any question, made from its own declaration: good cells, bad cells, ranges, words, times and gaps."""

import random
from typing import Any

from anchorcalc.answering.taking import Taken, take
from anchorcalc.declare import Input, Question
from anchorcalc.errors import Fault
from anchorcalc.units.kinds import UNITS

NOT_GIVEN = 0.12
BAD = 0.04
RANGED = 0.03


class Made:
    """A table, and for every row the inputs of its single call."""

    def __init__(self, question: Question, *, rows: int, rng: random.Random) -> None:
        self.table: dict[str, list[Any]] = {"boat": [f"boat {row}" for row in range(rows)]}
        self.singles: list[dict[str, Any]] = [{} for _ in range(rows)]
        examples = [rng.choice(question.examples) for _ in range(rows)]
        for name, one in question.inputs.items():
            needed = any(name in example for example in question.examples)
            if name != "units" and rng.random() < (1.0 if needed else 0.8):
                self._column(one, examples, rng)

    def _column(self, one: Input, examples: list[dict[str, Any]], rng: random.Random) -> None:
        wanted = one.term.kind.name
        unit = rng.choice([unit for unit in UNITS if unit.kind == wanted]) if wanted in {unit.kind for unit in UNITS} else None
        style = rng.choice(("heading", "heading", "cells", "mixed")) if unit or wanted in ("ratio", "slope") else "cells"
        cells, name = [], one.name
        for row, example in enumerate(examples):
            cell, single = _cell(one, example, style, unit, rng)
            cells.append(cell)
            if single is not None:
                self.singles[row][name] = single
        self.table[f"{name} [{unit.symbol}]" if unit and style != "cells" else name] = cells


def _cell(one: Input, example: dict[str, Any], style: str, unit: Any, rng: random.Random) -> tuple[Any, Any]:
    """Return a cell, and what its single call is given."""
    given = example.get(one.name)
    if rng.random() < (NOT_GIVEN if given is not None else 0.6):
        return (None, None) if style == "heading" else (rng.choice((None, "", "  ")), None)
    if unit is None and style == "cells":
        text = rng.choice(("nonsense", "12", "-1 m", "3..2 m")) if rng.random() < BAD else _text_of(one, given, rng)
        return text, text
    si = _si_of(one, given, rng)
    number = float(f"{si / (unit.factor if unit else 1.0):.{rng.choice((2, 3, 6, 17))}g}")
    if rng.random() < BAD:
        number = rng.choice((-number, number * 1e4, 0.0))
    symbol = f" {unit.symbol}" if unit else ""
    if style == "heading":
        return number, f"{_number(number)}{symbol}" if unit else number
    bare = style == "mixed" and rng.random() < 0.7
    text = f"{number}" if bare else f"{number}..{number * 1.2:.12g}{symbol}" if rng.random() < RANGED * 3 else f"{number}{symbol}"
    if rng.random() < BAD:
        text = rng.choice((f"{text} ft lb", "deep", "12 parsec", "F6", "F12", "12", f"{text} {text}", "3 to 4", "7:1"))
    return text, _headed(one, text, symbol) if style == "mixed" else text


def _headed(one: Input, text: str, symbol: str) -> str:
    """Return what a text says under a heading with a unit: its own unit, or the heading's where it has none."""
    alone = take(term=one.term, raw=text)
    bare = isinstance(alone, Fault) and (alone.code == "bare_number" or text == "3 to 4")
    return f"{text}{symbol}" if bare else text


def _number(number: float) -> str:
    return f"{number:.0f}" if number.is_integer() else f"{number!r}"


def _si_of(one: Input, given: Any, rng: random.Random) -> float:
    taken = take(term=one.term, raw=given if given is not None else one.term.example)
    assert isinstance(taken, Taken), (one.name, given, taken)
    wild = rng.uniform(0.05, 8.0) if rng.random() < 0.1 else 1.0  # so that inputs contradict each other now and then
    return float(taken.low) * rng.choice((1.0, rng.uniform(0.4, 2.5))) * wild


def _text_of(one: Input, given: Any, rng: random.Random) -> Any:
    if one.term.choices and rng.random() < 0.5:
        return rng.choice(one.term.choices)
    if one.term.kind.name == "flag":
        return rng.choice(("yes", "no"))
    return given if given is not None else one.term.example
