"""Metres to the sheet and back: one scale both ways, round steps, and the units that the answer is shown in."""

from math import ceil
from typing import Any, NamedTuple

from anchorcalc.answering.replies import Answer
from anchorcalc.doors.pictures.sheet import INK, LEFT, PAPER, RIGHT, Sheet, num
from anchorcalc.units.kinds import UNIT
from anchorcalc.units.shown import number_text, with_unit

_US = ("ft", "in", "yd", "fathom")


class Scale(NamedTuple):
    """Where the origin lies on the sheet, and how many units of it a metre takes; y grows upward in metres."""

    x_origin: float
    y_origin: float
    per_metre: float

    def x(self, metres: float) -> float:
        """Return the place across."""
        return self.x_origin + metres * self.per_metre

    def y(self, metres: float) -> float:
        """Return the place down the sheet of a height."""
        return self.y_origin - metres * self.per_metre


def said(value: Any) -> str:
    """Return a value that the answer stands on as text, with a word where it was assumed."""
    return f"{value.shown} (assumed)" if getattr(value, "origin", "") == "assumed" else str(value.shown)


def si(value: Any, *, otherwise: float = 0.0) -> float:
    """Return a quantity in SI; absent, the value that stands for that."""
    return otherwise if value is None else float(value.si)


def read(answer: Answer, name: str) -> Any:
    """Return what was read for a name, None where nothing was."""
    return getattr(answer.read, name, None)


def result(answer: Answer, name: str) -> Any:
    """Return a result by name, None where it is absent."""
    return getattr(answer.results, name, None)


def length_unit(answer: Answer) -> str:
    """Return `ft` or `m`, whichever the answer speaks in."""
    for group in (answer.results, answer.read):
        for name in group.__struct_fields__:
            unit = getattr(getattr(group, name), "unit", "")
            if unit and UNIT[unit].kind == "length":
                return "ft" if unit in _US else "m"
    return "m"


def round_step(*, most: float) -> float:
    """Return the largest of 1, 2, 5, 10, 20, 50 … that is not more than `most`."""
    step = 1e-3
    while True:
        for times in (2.0, 5.0, 10.0):
            if step * times > most:
                return step * (times / 2.0 if times != 5.0 else 2.0)
        step *= 10.0


def scale_bar(sheet: Sheet, scale: Scale, *, unit: str, y: float) -> None:
    """Draw the border of a chart as a scale: black and white by round lengths from the origin."""
    factor = UNIT[unit].factor
    step = round_step(most=max((RIGHT - LEFT) / scale.per_metre / factor / 5.0, 2e-3))
    wide = step * factor * scale.per_metre
    sheet.foot = sheet.bottom - y + 2.0
    from_left = max(scale.x_origin, LEFT)
    count = int((RIGHT - from_left) / wide + 1e-9)
    sheet.box(from_left, y, from_left + count * wide, y + 4.0, fill=PAPER, stroke=INK, width=0.8)
    dark = "".join(f"M{num(from_left + at * wide)} {num(y)}h{num(wide)}v4h{num(-wide)}Z" for at in range(0, count, 2))
    sheet.path(dark, fill=INK)
    last = with_unit(number=number_text(count * step), unit=unit)
    every = max(1, ceil((len(last) * 7.0 + 6.0) / wide))
    last_x = min(from_left + count * wide + 3.5 * len(last), RIGHT - 2.0)
    sheet.text(last_x, y + 16.0, last, anchor="end")
    for at in range(count % every, count, every):
        x, text = from_left + at * wide, number_text(at * step)
        if x + 3.5 * len(text) < last_x - 7.0 * len(last) - 4.0:
            sheet.text(x, y + 16.0, text, anchor="middle" if x > LEFT + 8.0 else "start")
