"""The marks along a rode: the one to stop at, and the plan of what water each serves."""

from typing import Any

from anchorcalc.answering.replies import Answer
from anchorcalc.doors.pictures import glyphs
from anchorcalc.doors.pictures.scale import Scale, read, result, said, si
from anchorcalc.doors.pictures.sheet import CHAIN, DANGER, DEEP, INK, LEFT, PAPER, RIGHT, ROPE, WATER, Sheet, num

ROW, MOST_ROWS, ACROSS, LAST = 22.0, 18, 240.0, 4


def mark_to_stop_at(answer: Answer) -> Sheet:
    """Draw the last marks of the rode at the roller."""
    about = "The rode led past the roller: its marks, and how far it runs out. The letters in the picture stand in the key that follows."
    sheet = Sheet(headline=answer.headline, about=about)
    sheet.open(height=120.0)
    places, out = mark_places(answer), answer.results.rode_out.si
    reached = [place for number, place in places if number <= round(answer.results.mark.si)]
    beyond = places[len(reached)][1] if len(reached) < len(places) else out * 1.1
    start = reached[0] if len(reached) == LAST else 0.0
    across = Scale(LEFT + 28.0 - start * (per_metre := ACROSS / (beyond - start)), sheet.top + 62.0, per_metre)
    _rope(sheet, y=across.y(0.0), joint=across.x(min(si(read(answer, "chain")), out)), left=LEFT if start > 0.0 else across.x(0.0))
    if start == 0.0:
        glyphs.anchor(sheet, across.x(0.0), across.y(0.0))
    stop = round(si(result(answer, "stop_at")))
    for number, place in places:
        _tab(sheet, across.x(place), across.y(0.0), number, stop=number == stop)
    _letter_marks(sheet, across, answer, behind=reached[-1] if reached else start, beyond=beyond)
    return sheet


def _letter_marks(sheet: Sheet, across: Scale, answer: Answer, *, behind: float, beyond: float) -> None:
    """Letter the roller, what is out past the last mark, and what is short of the next."""
    results, out = answer.results, answer.results.rode_out.si
    y, at = across.y(0.0), across.x(out)
    sheet.line(at, sheet.top, at, sheet.bottom, stroke=DANGER, width=1.6, dash="6 3 1.5 3")
    sheet.mark(at, sheet.bottom - 30.0, f"rode out, at the roller: {results.rode_out.shown}", toward=(-1, 0))
    past = f"past mark {results.mark.shown}" if results.mark.si > 0.0 else "no mark reached yet; out"
    sheet.mark((across.x(behind) + at) / 2.0, y, f"{past}: {results.past.shown}", toward=(0, -1))
    if (to_next := result(answer, "to_next")) is not None and to_next.si > 0.0:
        sheet.mark((at + across.x(beyond)) / 2.0, y, f"short of the next mark: {to_next.shown}", toward=(0, -1))
    for note in _notes(answer):
        sheet.note(note)


def _notes(answer: Answer) -> list[str]:
    stop, scope = result(answer, "stop_at"), result(answer, "scope_there")
    counted = f"Marks count from {'the end of the chain' if answer.read.marks_from.value == 'chain_end' else 'the anchor'}."
    if stop is None:
        return ["There is no mark at or beyond that length.", counted]
    return [f"Stop at mark {stop.shown}{f': scope {scope.shown} there' if scope is not None else ''}.", counted]


def mark_places(answer: Answer) -> list[tuple[int, float]]:
    """Return the last marks at the roller and the first beyond it: the number of each, and how far from the anchor it lies, [m]."""
    start = si(read(answer, "chain")) if answer.read.marks_from.value == "chain_end" else 0.0
    count = round(answer.results.mark.si)
    numbers = range(max(count - LAST + 1, 1), count + 2)
    if (marks := read(answer, "marks")) is not None:
        return [(number, start + marks.si[number - 1]) for number in numbers if number <= len(marks.si)]
    return [(number, start + number * answer.read.mark_interval.si) for number in numbers]


def _rope(sheet: Sheet, *, y: float, joint: float, left: float) -> None:
    """Draw the rode across: chain up to the joint, line beyond."""
    joint = min(max(joint, left), RIGHT)
    sheet.line(joint, y, RIGHT, y, stroke=ROPE, width=3.0)
    if joint > left:
        sheet.line(left, y, joint, y, stroke=CHAIN, width=4.0, dash="4 1.5")


def _tab(sheet: Sheet, x: float, y: float, number: int, *, stop: bool) -> None:
    """Draw a rag on the rode with its number; that of the mark to stop at is filled."""
    ink, paper = (PAPER, DANGER) if stop else (INK, PAPER)
    wide = 10.0 + 3.5 * len(str(number))
    sheet.box(x - wide / 2.0, y - 2.0, x + wide / 2.0, y + 18.0, fill=paper, stroke=DANGER if stop else INK, width=1.2)
    sheet.text(x, y + 13.0, str(number), anchor="middle", fill=ink, bold=stop)


# --- the plan -----------------------------------------------------------------------------------------------------------------------


def mark_plan(answer: Answer) -> Sheet:
    """Draw the rode hung up by its anchor as a lead line: a row for each mark, a bar for the water that it serves."""
    about = "A row for each mark of the rode, from the anchor up: its number, the rode out there, and the deepest water at high water that it serves."
    sheet = Sheet(headline=answer.headline, about=about, spoken=True)
    plan = answer.results.plan
    every = -(-len(plan) // MOST_ROWS) or 1
    rows = [row for at, row in enumerate(plan) if (len(plan) - 1 - at) % every == 0]
    sheet.open(height=ROW * (len(rows) + 1) + 12.0)
    heads = sheet.top + 16.0
    for x, head, anchor in ((LEFT + 8.0, "mark", "start"), (LEFT + 108.0, "rode out", "end"), (LEFT + 122.0, "deepest at high water", "start")):
        sheet.text(x, heads, head, anchor=anchor, bold=True)
    most = max((row.deepest_depth.si for row in rows), default=0.0)
    sheet.line(LEFT + 24.0, heads + 8.0, LEFT + 24.0, sheet.bottom, stroke=ROPE, width=2.2)
    for at, row in enumerate(rows):
        _row(sheet, row, y=heads + ROW * (at + 1), part=row.deepest_depth.si / most if most > 0.0 else 0.0)
    if every > 1:
        sheet.note(f"Every {_ordinal(every)} mark is drawn.")
    sheet.note(f"At a scope of {said(answer.read.scope)}, bow height {said(answer.read.bow_height)}.")
    return sheet


def _ordinal(number: int) -> str:
    return {2: "second", 3: "third"}.get(number, f"{number}th")


def _row(sheet: Sheet, row: Any, *, y: float, part: float) -> None:
    wide = 10.0 + 3.5 * len(row.mark.shown)
    sheet.box(LEFT + 24.0 - wide / 2.0, y - 9.0, LEFT + 24.0 + wide / 2.0, y + 7.0, fill=PAPER, stroke=INK, width=1.2)
    sheet.text(LEFT + 24.0, y + 3.5, row.mark.shown, anchor="middle")
    sheet.text(LEFT + 108.0, y + 3.5, row.rode_out.shown, anchor="end")
    bar = part * (RIGHT - LEFT - 122.0 - 58.0)
    sheet.path(f"M{num(LEFT + 122.0)} {num(y - 6.0)}h{num(bar)}v12h{num(-bar)}Z", fill=WATER, stroke=DEEP)
    sheet.text(LEFT + 127.0 + bar, y + 3.5, row.deepest_depth.shown)
