"""Lying between an anchor out ahead and the beach astern: the bottom in section, to scale."""

from anchorcalc.answering.replies import Answer
from anchorcalc.doors.pictures import glyphs
from anchorcalc.doors.pictures.scale import Scale, length_unit, read, result, said, scale_bar, si
from anchorcalc.doors.pictures.sheet import DEEP, LEFT, RIGHT, ROPE, SAND, SAND_LINE, WATER, Sheet

MOST_HEIGHT, SKY, BELOW = 190.0, 44.0, 56.0
SHORE = 0.12  # of the picture is dry land at high water, or a boat's length where there is no anchor to draw


def bow_and_stern(answer: Answer) -> Sheet:
    """Draw beach, boat, stern line and bow anchor."""
    about = "The beach in section, seaward to the right, to scale. The letters in the picture stand in the key that follows."
    sheet = Sheet(headline=answer.headline, about=about)
    read_, slope = answer.read, answer.read.slope.si
    rise, fall, stern, length = si(read(answer, "tide_rise")), si(read(answer, "tide_fall")), answer.results.stern_distance.si, read_.boat_length.si
    anchor = si(result(answer, "anchor_distance"), otherwise=stern + 2.0 * length)
    land = max(rise * slope, SHORE * anchor)
    scale = _field(sheet, left=-land, right=anchor, above=max(land / slope, si(read(answer, "bow_height")) + 0.15 * length), below=anchor / slope)
    _water_and_bottom(sheet, scale, slope=slope, rise=rise, fall=fall)
    bow = stern + length
    glyphs_flip = Scale(scale.x(bow), scale.y(0.0), scale.per_metre)
    _boat(sheet, glyphs_flip, bow_height=si(read(answer, "bow_height")), length=length)
    sheet.line(
        scale.x(stern), scale.y(0.5 * si(read(answer, "bow_height"))), scale.x(-land * 0.6), scale.y(land * 0.6 / slope), stroke=ROPE, width=1.6
    )
    if result(answer, "anchor_distance") is not None:
        sheet.line(scale.x(bow), scale.y(si(read(answer, "bow_height"))), scale.x(anchor), scale.y(-anchor / slope), stroke=ROPE, width=2.2)
        glyphs.anchor(sheet, scale.x(anchor), scale.y(-anchor / slope), toward=3.1415927)
    scale_bar(sheet, scale, unit=length_unit(answer), y=sheet.bottom - 22.0)
    _letter(sheet, scale, answer, stern=stern, bow=bow, anchor=anchor, slope=slope)
    return sheet


def _field(sheet: Sheet, *, left: float, right: float, above: float, below: float) -> Scale:
    room = RIGHT - LEFT - 22.0
    per_metre = min(room / (right - left), MOST_HEIGHT / (above + below))
    sheet.open(height=SKY + (above + below) * per_metre + BELOW)
    return Scale(LEFT + 6.0 + (room - (right - left) * per_metre) / 2.0 - left * per_metre, sheet.top + SKY + above * per_metre, per_metre)


def _water_and_bottom(sheet: Sheet, scale: Scale, *, slope: float, rise: float, fall: float) -> None:
    """Draw the water up to high water, the levels of the tide, and the falling bottom."""
    ends = [(place, scale.y_origin + (place - scale.x_origin) / slope) for place in (LEFT, RIGHT)]
    sheet.box(LEFT, scale.y(rise), RIGHT, sheet.bottom, fill=WATER)
    for level, dash in ((rise, "8 3"), (0.0, ""), (-fall, "2 3")):
        if level == 0.0 or rise + fall > 0.0:
            sheet.line(LEFT, scale.y(level), RIGHT, scale.y(level), stroke=DEEP, width=1.3, dash=dash)
    (left, left_y), (right, right_y) = ends
    floor = sheet.bottom
    top = [(left, max(left_y, sheet.top)), (right, min(right_y, floor))]
    if left_y < sheet.top:
        top.insert(1, (scale.x_origin + (sheet.top - scale.y_origin) * slope, sheet.top))
    if right_y > floor:
        top.insert(-1, (scale.x_origin + (floor - scale.y_origin) * slope, floor))
    sheet.run([*top, (right, floor), (left, floor)], fill=SAND, closed=True)
    sheet.run(top, stroke=SAND_LINE, width=1.5)


def _boat(sheet: Sheet, at: Scale, *, bow_height: float, length: float) -> None:
    """Draw the boat heading seaward, to the right."""
    mirrored = _Mirrored(at.x_origin, at.y_origin, at.per_metre)
    glyphs.boat_from_side(sheet, mirrored, bow=0.0, water=0.0, bow_height=bow_height, length=length)


class _Mirrored(Scale):
    """A scale whose metres run to the left."""

    def x(self, metres: float) -> float:
        """Return the place across."""
        return self.x_origin - metres * self.per_metre


def _letter(sheet: Sheet, scale: Scale, answer: Answer, *, stern: float, bow: float, anchor: float, slope: float) -> None:
    results, bow_height = answer.results, si(read(answer, "bow_height"))
    sheet.mark(scale.x(0.0), scale.y(0.0), f"water's edge now; the beach falls {said(answer.read.slope)}", toward=(-1, -1))
    sheet.mark(
        scale.x(stern),
        scale.y(-0.5 * stern / slope),
        f"stern: {results.stern_distance.shown} from the edge, {results.water_at_stern.shown} of water there now",
        toward=(0, 1),
    )
    sheet.mark(scale.x(bow), scale.y(bow_height), f"bow: boat of {said(answer.read.boat_length)}", toward=(0, -1))
    if (distance := result(answer, "anchor_distance")) is not None:
        sheet.mark(scale.x((bow + anchor) / 2.0), scale.y((bow_height - anchor / slope) / 2.0), f"bow rode: {results.bow_rode.shown}", toward=(1, -1))
        sheet.mark(scale.x(anchor), scale.y(-anchor / slope), f"bow anchor: {distance.shown} from the edge", toward=(-1, 1))
    else:
        sheet.note("No rode gains on a bottom as steep as this at that scope: no anchor is drawn.")
    if si(read(answer, "tide_rise")) + si(read(answer, "tide_fall")) > 0.0:
        sheet.note(f"Long dashes: high water, {said(answer.read.tide_rise)} up. Dots: low water, {said(answer.read.tide_fall)} down.")
    if results.too_steep and result(answer, "anchor_distance") is not None:
        sheet.note("The rode aboard does not reach.")
