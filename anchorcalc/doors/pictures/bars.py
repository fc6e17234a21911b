"""Loads, strengths and masses as bars from one zero, so that what is stronger than what can be seen; and the wind that a pull stands for."""

from typing import Any, NamedTuple

from anchorcalc.answering.replies import Answer
from anchorcalc.doors.pictures.scale import read, result, said, si
from anchorcalc.doors.pictures.sheet import BLUSH, DANGER, DEEP, INK, LEFT, PAPER, RIGHT, WATER, Sheet, num

ROW, START, ROOM = 46.0, LEFT + 8.0, 224.0
ABOUT = "Bars from one zero, to scale, each with its name and value."


class Bar(NamedTuple):
    """A bar: what it is, how long, its value as text, and a second end where it is a band. A weak one is hatched."""

    name: str
    value: float
    shown: str
    to: float = 0.0
    weak: bool = False


def bars(sheet: Sheet, rows: list[Bar], *, line: tuple[float, str] | None = None) -> None:
    """Draw bars below one another, and a line across them that they are measured against."""
    sheet.open(height=ROW * len(rows) + (26.0 if line else 10.0))
    most = max([*(max(row.value, row.to) for row in rows), line[0] if line else 0.0, 1e-12])
    for at, row in enumerate(rows):
        _bar(sheet, row, y=sheet.top + ROW * at + 20.0, per_unit=ROOM / most)
    sheet.line(START, sheet.top + 6.0, START, sheet.bottom - (20.0 if line else 6.0), stroke=INK, width=1.4)
    if line:
        x = START + line[0] * ROOM / most
        for at in range(len(rows)):
            sheet.line(x, sheet.top + ROW * at + 20.0, x, sheet.top + ROW * at + 42.0, stroke=DANGER, width=2.0)
        right = x > (LEFT + RIGHT) / 2.0
        sheet.text(x, sheet.bottom - 6.0, line[1], anchor="end" if right else "start", fill=DANGER, bold=True)


def _bar(sheet: Sheet, row: Bar, *, y: float, per_unit: float) -> None:
    sheet.text(START + 4.0, y - 3.0, row.name)
    end, to = START + row.value * per_unit, START + max(row.value, row.to) * per_unit
    sheet.box(START, y + 2.0, end, y + 18.0, fill=BLUSH if row.weak else WATER, stroke=DANGER if row.weak else DEEP, width=1.2)
    if row.weak:
        count = int((end - START) / 6.0)
        sheet.path("".join(f"M{num(START + 6.0 * one)} {num(y + 18.0)}l6-16" for one in range(count)), stroke=DANGER, width=0.9)
    if to > end:
        sheet.box(end, y + 2.0, to, y + 18.0, fill=PAPER, stroke=DEEP, width=1.2, dash="4 2")
    sheet.text(to + 5.0, y + 14.5, row.shown, bold=True, paper=True)


def _sheet(answer: Answer) -> Sheet:
    return Sheet(headline=answer.headline, about=ABOUT, spoken=True)


def _of(name: str, value: Any, *, weak: bool = False) -> Bar:
    return Bar(name=name, value=value.si, shown=value.shown, weak=weak)


def wind_load(answer: Answer) -> Sheet:
    """Draw the design load beside the steady drag."""
    sheet = _sheet(answer)
    results = answer.results
    bars(sheet, [_of("load to reckon with, snatching included", results.load_standard), _of("steady drag alone", results.load_steady)])
    sheet.note(f"Boat of {said(answer.read.boat_length)}, wind {said(answer.read.wind)}, stream {said(answer.read.current)}.")
    return sheet


def holding(answer: Answer) -> Sheet:
    """Draw the band of holding against the load."""
    sheet = _sheet(answer)
    low, high, load = result(answer, "holding_low"), result(answer, "holding_high"), read(answer, "load")
    name = f"{answer.read.anchor_kind.shown.replace('_', ' ')}, {said(answer.read.anchor_mass)}, in {answer.read.bottom.shown}"
    if low is None:
        bars(sheet, [_of("load of the boat", load)] if load is not None else [Bar(name=name, value=0.0, shown="no figure")])
        sheet.note(f"For {answer.read.bottom.shown} there is no figure: nothing to set against the load.")
        return sheet
    short = load is not None and low.si < load.si
    rows = [Bar(name=name + ": at the least", value=low.si, shown=low.shown, weak=short), _of("the same at the most", high)]
    bars(sheet, rows, line=(load.si, f"load {load.shown}") if load is not None else None)
    if short:
        sheet.note("Hatched: the least that it may hold is less than the load.")
    if (wind := result(answer, "drags_at_wind")) is not None:
        sheet.note(f"The least holding is the load of {wind.shown} of wind.")
    sheet.note(f"Well set, pulled at {said(answer.read.pull_angle)}.")
    return sheet


def setting_pull(answer: Answer) -> Sheet:
    """Draw the load of the wind growing with its square, and how far the pull astern tests it."""
    about = "The load of the wind grows with the square of its speed; the pull astern tests it up to one wind. The letters stand in the key."
    sheet = Sheet(headline=answer.headline, about=about)
    sheet.open(height=170.0)
    pull, wind = answer.results.pull, answer.results.wind_equivalent
    foot, tall, wide = sheet.bottom - 26.0, 120.0, (RIGHT - LEFT - 40.0) / 1.7
    curve = [(START + 10.0 + wide * part, foot - tall / 2.89 * part**2) for part in (one / 10.0 for one in range(18))]
    sheet.run([(START + 10.0, foot), *curve[:11], (curve[10][0], foot)], fill=WATER, closed=True)
    hatch = "".join(f"M{num(x)} {num(foot)}V{num(y)}" for x, y in curve[11:])
    sheet.path(hatch, stroke=DANGER, width=0.9)
    sheet.run(curve, stroke=DEEP, width=2.2)
    sheet.line(START + 10.0, foot, RIGHT - 8.0, foot, stroke=INK, width=1.4)
    sheet.line(START + 10.0, foot, START + 10.0, sheet.top + 8.0, stroke=INK, width=1.4)
    sheet.line(START + 10.0, curve[10][1], *curve[10], stroke=DANGER, width=1.2, dash="4 2")
    sheet.line(curve[10][0], foot, *curve[10], stroke=DANGER, width=1.2, dash="4 2")
    sheet.text(RIGHT - 8.0, foot + 16.0, "wind", anchor="end")
    sheet.text(START + 16.0, sheet.top + 18.0, "load")
    sheet.mark(START + 10.0 + 0.4 * wide, curve[10][1], f"pull astern: {pull.shown}")
    sheet.mark(curve[10][0], foot - 4.0, f"wind that it stands for: {wind.shown}", toward=(-1, -1))
    sheet.mark(curve[15][0], (foot + curve[15][1]) / 2.0, "hatched: stronger winds, not tested by it", toward=(1, 0))
    return sheet


def weigh_anchor(answer: Answer) -> Sheet:
    """Draw the loads while weighing."""
    sheet = _sheet(answer)
    results = answer.results
    rows = [_of("hanging as the anchor leaves the bottom", results.hanging_load)]
    if (hauling := result(answer, "hauling_load")) is not None:
        rows.append(_of("hauling the boat up to her anchor", hauling))
    bars(sheet, [*rows, _of("windlass to look for, its pull", results.windlass_pull)])
    sheet.note("Light enough for one person's hands." if results.by_hand else "More than a person should haul by hand.")
    sheet.note("Breaking the anchor out is more than any of these.")
    return sheet


def anchor_size(answer: Answer) -> Sheet:
    """Draw the two masses that the answer is the greater of."""
    sheet = _sheet(answer)
    by_holding, by_table = result(answer, "mass_by_holding"), answer.results.mass_by_table
    rows = [_of("a published table asks, for her length alone", by_table)]
    if by_holding is not None:
        rows.insert(0, _of(f"holding in {answer.read.bottom.shown} asks, at {said(answer.read.scope)}", by_holding))
    bars(sheet, rows)
    if (mass := result(answer, "anchor_mass")) is not None:
        sheet.note(f"The greater counts: {mass.shown}, for a load of {said(answer.read.load)}.")
    else:
        sheet.note("No mass can be given for that bottom and scope: the table alone is not enough.")
    return sheet


def chain_and_line(answer: Answer) -> Sheet:
    """Draw what every part carries against the load."""
    sheet = _sheet(answer)
    load = answer.read.load
    rows = []
    for one in answer.results.parts:
        carries = one.working_load
        weak = carries is None or carries.si < load.si
        shown = f"{carries.shown}" if carries is not None else "no figure"
        weakest = ", the weakest part" if one.part == answer.results.weakest else ""
        rows.append(Bar(name=f"{one.part} of {one.size.shown}{weakest}", value=si(carries), shown=shown, weak=weak))
    bars(sheet, rows, line=(load.si, f"load {load.shown}"))
    if any(row.weak for row in rows):
        sheet.note("Hatched: carries less than the load.")
    sheet.note("Bars are working loads.")
    return sheet
