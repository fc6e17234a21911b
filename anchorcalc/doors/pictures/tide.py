"""The tide curve between low and high water: now, the rule of twelfths, and by when more rode must go out."""

from math import cos, pi
from typing import NamedTuple

from anchorcalc.answering.replies import Answer
from anchorcalc.doors.pictures.scale import length_unit, result, said
from anchorcalc.doors.pictures.sheet import DANGER, DEEP, INK, LEFT, PAPER, RIGHT, WATER, Sheet
from anchorcalc.physics.tide import plain_times_about
from anchorcalc.units.clock import Clock, clock
from anchorcalc.units.kinds import UNIT
from anchorcalc.units.shown import number_text, with_unit

SIDE, HEAD, FOOT, FIELD = 46.0, 22.0, 34.0, 150.0
TWELFTHS = (0, 1, 3, 6, 9, 11, 12)
ABOUT = "The height of tide from one turn of the tide to the next. The letters in the picture stand in the key that follows."


class Curve(NamedTuple):
    """Where the curve lies: the tide's two turns, first and last, and the sheet's frame."""

    first: float
    last: float
    rising: bool
    low: float
    high: float
    top: float
    foot: float

    def x(self, moment: float) -> float:
        """Return the place across of a moment, [s]."""
        return LEFT + SIDE + (RIGHT - LEFT - 2.0 * SIDE) * (moment - self.first) / max(self.last - self.first, 1.0)

    def y(self, height: float) -> float:
        """Return the place down of a height of tide, [m]."""
        return self.foot - (self.foot - self.top) * (height - self.low) / max(self.high - self.low, 1e-9)

    def height(self, part: float) -> float:
        """Return the height when so much of the time from the first turn has passed."""
        risen = (1.0 - cos(pi * part)) / 2.0
        return self.low + (self.high - self.low) * (risen if self.rising else 1.0 - risen)


def _seconds(text: str) -> Clock:
    found = clock(text)
    assert isinstance(found, Clock), text
    return found


def _curve(sheet: Sheet, answer: Answer) -> tuple[Curve, float]:
    """Return the curve and the moment asked about."""
    low_at, high_at, at = (_seconds(getattr(answer.read, name).value) for name in ("low_at", "high_at", "at"))
    low, high = low_at.seconds, high_at.seconds
    if at.form == "plain":
        low, high = (float(one) for one in plain_times_about(low_at=low, high_at=high, at=at.seconds))
    sheet.open(height=HEAD + FIELD + FOOT)
    turns = {"low": answer.read.low_height.si, "high": answer.read.high_height.si}
    return Curve(
        first=min(low, high), last=max(low, high), rising=low < high, top=sheet.top + HEAD, foot=sheet.bottom - FOOT - 14.0, **turns
    ), at.seconds


def _draw(sheet: Sheet, curve: Curve, answer: Answer) -> None:
    """Draw water under the curve, the six parts of the time, and the two turns."""
    parts = [(curve.x(curve.first + part * (curve.last - curve.first)), curve.y(curve.height(part))) for part in (one / 36.0 for one in range(37))]
    under = sheet.bottom - FOOT
    sheet.run([(parts[0][0], under), *parts, (parts[-1][0], under)], fill=WATER, closed=True)
    sheet.run(parts, stroke=DEEP, width=2.4)
    for sixth in range(6):
        left, right = parts[6 * sixth][0], parts[6 * sixth + 6][0]
        sheet.box(left, under, right, under + 4.0, fill=PAPER if sixth % 2 else INK, stroke=INK, width=0.8)
    for sixth, twelfths in enumerate(TWELFTHS):
        height = curve.low + (curve.high - curve.low) * (twelfths if curve.rising else 12 - twelfths) / 12.0
        sheet.circle(parts[6 * sixth][0], curve.y(height), 2.8, fill=PAPER, stroke=INK, width=1.2)
    times = (answer.read.low_at.shown, answer.read.high_at.shown)
    for x, name, time in zip(
        (parts[0][0], parts[-1][0]), ("low", "high") if curve.rising else ("high", "low"), times if curve.rising else times[::-1], strict=True
    ):
        sheet.text(x, under + 17.0, time[-5:] if "T" not in time else time.partition("T")[2][:5], anchor="middle")
        sheet.text(x, under + 30.0, name, anchor="middle")


def _levels(sheet: Sheet, curve: Curve, *, unit: str) -> None:
    """Write the heights of low and high water on the side where the water is low."""
    for height in (curve.high, curve.low) if curve.high > curve.low else (curve.high,):
        y = curve.y(height)
        sheet.line(LEFT, y, RIGHT, y, stroke=DEEP, width=0.8, dash="2 3")
        text = with_unit(number=number_text(round(height / UNIT[unit].factor, 1)), unit=unit)
        sheet.text(LEFT + 3.0 if curve.rising else RIGHT - 3.0, y - 4.0, text, anchor="start" if curve.rising else "end")


def tide_at(answer: Answer) -> Sheet:
    """Draw the curve and the height now."""
    sheet = Sheet(headline=answer.headline, about=ABOUT)
    curve, at = _curve(sheet, answer)
    _draw(sheet, curve, answer)
    _levels(sheet, curve, unit=length_unit(answer))
    height = curve.y(answer.results.height.si)
    sheet.line(curve.x(at), sheet.bottom - FOOT, curve.x(at), sheet.top, stroke=DANGER, width=1.3, dash="4 2")
    sheet.circle(curve.x(at), height, 3.6, fill=DANGER)
    side = 1 if curve.x(at) < (LEFT + RIGHT) / 2.0 else -1
    sheet.mark(curve.x(at), height, f"at {said(answer.read.at)}: {answer.results.height.shown}", toward=(side, 0))
    sheet.mark(curve.x(at), sheet.top + 4.0, f"still to rise to high water: {answer.results.tide_rise.shown}", toward=(side, 0))
    sheet.mark(curve.x(at), sheet.bottom - FOOT - 3.0, f"to fall to low water: {answer.results.tide_fall.shown}", toward=(side, 0))
    sheet.note(f"Rings: the rule of twelfths, hour by hour; by it {answer.results.by_twelfths.shown} now.")
    sheet.note(
        f"Low {said(answer.read.low_height)} at {said(answer.read.low_at)}, high {said(answer.read.high_height)} at {said(answer.read.high_at)}."
    )
    return sheet


def when_to_veer(answer: Answer) -> Sheet:
    """Draw the curve with now and the moment by which more rode must be out."""
    sheet = Sheet(headline=answer.headline, about=ABOUT)
    curve, at = _curve(sheet, answer)
    _draw(sheet, curve, answer)
    _levels(sheet, curve, unit=length_unit(answer))
    part = (at - curve.first) / max(curve.last - curve.first, 1.0)
    x, y = curve.x(at), curve.y(curve.height(part))
    sheet.line(x, sheet.bottom - FOOT, x, sheet.top, stroke=INK, width=1.3, dash="4 2")
    sheet.mark(x, y, f"now, {said(answer.read.at)}", toward=(-1, -1) if part > 0.5 else (1, -1))
    _veer_by(sheet, curve, answer, now=at)
    more = f"rode at high water for {said(answer.read.least_scope)}: {answer.results.rode_at_high_water.shown}"
    sheet.mark(curve.x(curve.last if curve.rising else curve.first), curve.y(curve.high), more, toward=(-1, -1) if curve.rising else (1, -1))
    sheet.note(f"Rode out now: {said(answer.read.rode_out)} in {said(answer.read.depth)} of water.")
    return sheet


def _veer_by(sheet: Sheet, curve: Curve, answer: Answer, *, now: float) -> None:
    """Draw the moment to veer by, and shade what comes after it, up to high water."""
    by = result(answer, "veer_by")
    if by is None:
        return
    found = _seconds(by.value)
    moment = found.seconds + 86400.0 * by.days if found.form == "plain" else found.seconds
    moment = min(max(moment, now), curve.last)
    x = curve.x(moment)
    y = curve.y(curve.height((moment - curve.first) / max(curve.last - curve.first, 1.0)))
    lines = int(max(curve.x(curve.last) - x, 0.0) / 5.0)
    for one in range(1, lines + 1):
        part = (moment - curve.first + (curve.last - moment) * one / (lines + 1.0)) / max(curve.last - curve.first, 1.0)
        across = curve.x(curve.first + part * (curve.last - curve.first))
        sheet.line(across, y, across, curve.y(curve.height(part)), stroke=DANGER, width=0.9)
    sheet.line(LEFT, y, RIGHT, y, stroke=DANGER, width=1.0, dash="6 3 1.5 3")
    sheet.line(x, sheet.bottom - FOOT, x, sheet.top, stroke=DANGER, width=1.6)
    sheet.mark(x, sheet.bottom - FOOT - 10.0, f"veer by {by.shown}", toward=(1, 0) if x < RIGHT - 60.0 else (-1, 0))
    sheet.mark(curve.x(curve.first) - 14.0, y, "height of tide that the rode out serves; hatched: more than it serves", toward=(0, -1))
