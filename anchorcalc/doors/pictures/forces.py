"""Forces as arrows: two rodes that share the load of the wind."""

from math import cos, radians, sin

from anchorcalc.answering.replies import Answer
from anchorcalc.doors.pictures import glyphs
from anchorcalc.doors.pictures.scale import Scale, said
from anchorcalc.doors.pictures.sheet import DANGER, DEEP, INK, LEFT, RIGHT, ROPE, WATER, Point, Sheet

ROOM, BOAT, LONGEST = 118.0, 46.0, 96.0
ONE_AT_A_TIME = radians(170.0)


def two_anchor_load(answer: Answer) -> Sheet:
    """Draw boat, rodes and forces from above, the wind from the top."""
    about = "Two anchors from above, the wind from the top of the picture; arrows are forces, to scale. The letters stand in the key that follows."
    sheet = Sheet(headline=answer.headline, about=about)
    angles = sides(answer)
    above = max(cos(one) for one in angles) * ROOM
    below = max(-min(cos(one) for one in angles) * ROOM, 70.0)
    sheet.open(height=40.0 + max(above, 30.0) + below + 20.0, ground=WATER)
    bow = (LEFT + RIGHT) / 2.0, sheet.top + 40.0 + max(above, 30.0)
    glyphs.boat_from_above(sheet, Scale(bow[0], bow[1], 1.0), bow=(0.0, 0.0), length=BOAT, heading=radians(90.0))
    for angle in angles:
        to = _at(bow, angle=angle, length=ROOM)
        sheet.line(*bow, *to, stroke=ROPE, width=1.6)
        glyphs.anchor(sheet, *to, toward=radians(90.0) + angle + radians(180.0))
    _forces(sheet, answer, bow=bow, angles=angles)
    sheet.arrow(LEFT + 18.0, sheet.top + 8.0, LEFT + 18.0, sheet.top + 40.0, stroke=INK, width=1.6)
    sheet.text(LEFT + 27.0, sheet.top + 22.0, "wind")
    return sheet


def sides(answer: Answer) -> tuple[float, float]:
    """Return the angles of the two rodes off the wind, [rad], left positive, the harder pulled one first: it lies nearer the wind."""
    half, off = answer.read.spread.si / 2.0, answer.read.wind_off.si
    first, second = sorted((half - off, -half - off), key=abs)
    return first, second


def _at(bow: Point, *, angle: float, length: float) -> Point:
    return bow[0] - length * sin(angle), bow[1] - length * cos(angle)


def _forces(sheet: Sheet, answer: Answer, *, bow: Point, angles: tuple[float, float]) -> None:
    """Draw the load astern and what each rode carries of it."""
    loads = [one.si for one in answer.results.load_each]
    load = answer.read.load
    per_newton = min(LONGEST / max(*loads, 1e-9), 56.0 / max(load.si, 1e-9))
    lone = answer.read.spread.si > ONE_AT_A_TIME * (1.0 + 1e-9)
    for angle, carried, name in zip(angles, loads, ("harder", "other"), strict=True):
        tip = _at(bow, angle=angle, length=carried * per_newton)
        sheet.arrow(*bow, *tip, stroke=DANGER, width=3.0, dash="5 2" if lone else "")
        shown = answer.results.load_each[0 if name == "harder" else 1].shown
        way = (-1 if tip[0] < bow[0] else 1, 0)
        told = f"{'one' if name == 'harder' else 'the other'} rode: {shown}" + (", when she lies to it" if lone else "")
        sheet.mark((bow[0] + tip[0]) / 2.0, (bow[1] + tip[1]) / 2.0, told + (", slack" if carried <= 0.0 else ""), toward=way)
    foot = bow[1] + load.si * per_newton
    sheet.arrow(bow[0], bow[1], bow[0], foot, stroke=DEEP, width=3.0)
    sheet.mark(bow[0], foot, f"load of the boat: {said(load)}", toward=(1, 0))
    sheet.note(f"Rodes {said(answer.read.spread)} apart, wind {said(answer.read.wind_off)} off the line that halves them.")
