"""The swing from above, to scale: the circle, the boat in it, the neighbour or the rock, the margin, and what overlaps."""

from math import pi, sqrt

from anchorcalc.answering.replies import Answer
from anchorcalc.doors.pictures import glyphs
from anchorcalc.doors.pictures.scale import Scale, length_unit, read, result, said, scale_bar, si
from anchorcalc.doors.pictures.sheet import BLUSH, CALM, DANGER, DEEP, INK, LEFT, PAPER, RIGHT, ROPE, WATER, Sheet, num

MOST_HEIGHT, BELOW = 250.0, 30.0
ABOUT = "The swing from above, to scale. The letters in the picture stand in the key that follows."


def opened(sheet: Sheet, *, left: float, right: float, radius: float, unit: str, least: float = 70.0) -> Scale:
    """Open water from `left` to `right` of the anchor and `radius` up and down, [m], with its scale."""
    room = RIGHT - LEFT - 36.0
    per_metre = min(room / (right - left), MOST_HEIGHT / (2.0 * radius))
    high = max(2.0 * radius * per_metre + 24.0, least)
    sheet.open(height=high + BELOW, ground=WATER)
    middle = LEFT + 18.0 + (room - (right - left) * per_metre) / 2.0
    scale = Scale(middle - left * per_metre, sheet.top + high / 2.0, per_metre)
    sheet.box(LEFT, sheet.bottom - BELOW + 2.0, RIGHT, sheet.bottom, fill=PAPER)
    scale_bar(sheet, scale, unit=unit, y=sheet.bottom - 23.0)
    return scale


def own_circle(sheet: Sheet, scale: Scale, *, bow: float, stern: float, fill: str = "") -> None:
    """Draw the circles of bow and stern round the anchor, the boat lying to the right."""
    x, y = scale.x(0.0), scale.y(0.0)
    sheet.circle(x, y, stern * scale.per_metre, stroke=DEEP, width=2.0, fill=fill)
    sheet.circle(x, y, bow * scale.per_metre, stroke=DEEP, width=1.0, dash="2 3")
    sheet.line(x, y, scale.x(bow), y, stroke=ROPE, width=2.0)
    glyphs.boat_from_above(sheet, scale, bow=(bow, 0.0), length=stern - bow, heading=pi)
    glyphs.anchor(sheet, x, y)


def overlap(sheet: Sheet, scale: Scale, *, own: float, at: float, other: float) -> None:
    """Hatch what two circles have in common: round the anchor, and round another point to the right."""
    low, high = max(-own, at - other), min(own, at + other)
    if low >= high or own <= 0.0 or other <= 0.0:
        return
    step = max((high - low) / 24.0, 3.5 / scale.per_metre)
    halves = [
        (x, sqrt(max(min(own**2 - x**2, other**2 - (x - at) ** 2), 0.0)))
        for x in (low + step * one for one in range(1, int((high - low) / step) + 1))
    ]
    outline = [(low, 0.0), *halves, (high, 0.0), *((x, -half) for x, half in reversed(halves))]
    sheet.run(((scale.x(x), scale.y(y)) for x, y in outline), fill=BLUSH, closed=True)
    hatch = "".join(f"M{num(scale.x(x))} {num(scale.y(half))}V{num(scale.y(-half))}" for x, half in halves)
    sheet.path(hatch, stroke=DANGER, width=0.9)


def swing_radius(answer: Answer) -> Sheet:
    """Draw the circle that she may swing in."""
    sheet = Sheet(headline=answer.headline, about=ABOUT)
    bow, stern = answer.results.bow_radius.si, answer.results.swing_radius.si
    scale = opened(sheet, left=-stern, right=stern, radius=stern, unit=length_unit(answer))
    own_circle(sheet, scale, bow=bow, stern=stern, fill=CALM)
    sheet.mark(
        scale.x(-0.8 * stern), scale.y(0.6 * stern), f"circle of the stern: {answer.results.swing_radius.shown} from the anchor", toward=(-1, -1)
    )
    sheet.mark(scale.x(0.0), scale.y(-bow), f"circle of the bow: {answer.results.bow_radius.shown}")
    sheet.mark(scale.x(0.5 * bow), scale.y(0.0), f"rode out: {said(answer.read.rode_out)}", toward=(-1, -1))
    sheet.mark(scale.x((bow + stern) / 2.0), scale.y(0.0), f"boat: {said(answer.read.boat_length)}", toward=(0, 1))
    sheet.note(f"Area within: {answer.results.area.shown}. At the lowest water, when the circle is largest; line stretches beyond it.")
    return sheet


def swing_clearance(answer: Answer) -> Sheet:
    """Draw the circle and what it must stay clear of."""
    sheet = Sheet(headline=answer.headline, about=ABOUT)
    distance, stern, length = answer.read.distance.si, answer.results.swing_radius.si, answer.read.boat_length.si
    other = _other_radius(answer)
    margin = si(read(answer, "margin"))
    scale = opened(
        sheet, left=-max(stern, other - distance), right=max(stern, distance + other), radius=max(stern, other) + margin, unit=length_unit(answer)
    )
    sheet.circle(scale.x(0.0), scale.y(0.0), stern * scale.per_metre, fill=CALM)
    overlap(sheet, scale, own=stern + margin, at=distance, other=other)
    own_circle(sheet, scale, bow=stern - length, stern=stern)
    _thing(sheet, scale, answer, at=distance, radius=other)
    if margin > 0.0:
        sheet.circle(scale.x(0.0), scale.y(0.0), (stern + margin) * scale.per_metre, stroke=DANGER, width=1.2, dash="6 3 1.5 3")
    _letter_clearance(sheet, scale, answer, other=other, margin=margin)
    return sheet


def _other_radius(answer: Answer) -> float:
    """Return the neighbour's swing radius, which the clearance gives; 0 for a fixed thing."""
    if read(answer, "other_rode_out") is None:
        return 0.0
    results = answer.results
    return max(float(answer.read.distance.si - si(read(answer, "margin")) - results.clearance.si - results.swing_radius.si), 0.0)


def _thing(sheet: Sheet, scale: Scale, answer: Answer, *, at: float, radius: float) -> None:
    if radius > 0.0:
        length = min(si(read(answer, "other_boat_length")), radius)
        sheet.circle(scale.x(at), scale.y(0.0), radius * scale.per_metre, stroke=INK, width=2.0, dash="7 3")
        sheet.line(scale.x(at), scale.y(0.0), scale.x(at - radius + length), scale.y(0.0), stroke=ROPE, width=2.0)
        glyphs.boat_from_above(sheet, scale, bow=(at - radius + length, 0.0), length=length, heading=0.0, dash="3 1.5")
        glyphs.anchor(sheet, scale.x(at), scale.y(0.0), toward=pi)
    else:
        glyphs.rock(sheet, scale.x(at), scale.y(0.0))


def _letter_clearance(sheet: Sheet, scale: Scale, answer: Answer, *, other: float, margin: float) -> None:
    results, stern, distance = answer.results, answer.results.swing_radius.si, answer.read.distance.si
    sheet.mark(
        scale.x(-0.7 * stern), scale.y(0.714 * stern), f"own circle: {results.swing_radius.shown} from the anchor to the stern", toward=(-1, -1)
    )
    if other > 0.0:
        sheet.mark(scale.x(distance + 0.7 * other), scale.y(0.714 * other), "the neighbour's circle, broken line", toward=(1, -1))
    else:
        sheet.mark(scale.x(distance), scale.y(0.0), f"to stay clear of: {said(answer.read.distance)} from the anchor", toward=(0, -1))
    if margin > 0.0:
        sheet.mark(scale.x(0.0), scale.y(-stern - margin), f"margin: {said(answer.read.margin)}", toward=(-1, 1))
    clear = "clear by" if results.clear else "short of clear by"
    sheet.note(
        f"Swung towards each other: {clear} {results.clearance.shown.removeprefix('-')}."
        if other > 0.0
        else f"{clear.capitalize()} {results.clearance.shown.removeprefix('-')}."
    )
    if (same := result(answer, "clearance_same_wind")) is not None:
        sheet.note(f"Both lying to one wind: clearance {same.shown}.")
    if not results.clear:
        hatched = f"Hatched is the water that both may lie in{', the margin counted in' if margin > 0.0 else ''}."
        sheet.note(hatched if other > 0.0 else "The thing lies inside the circle and its margin.")


def rode_for_room(answer: Answer) -> Sheet:
    """Draw the longest rode that keeps her clear."""
    sheet = Sheet(headline=answer.headline, about=ABOUT)
    distance, length, margin = answer.read.distance.si, answer.read.boat_length.si, si(read(answer, "margin"))
    stern = max(distance - margin, 0.0)
    bow = max(stern - length, 0.0)
    radius = max(stern, min(length, distance))
    scale = opened(sheet, left=-radius, right=max(distance, length), radius=radius, unit=length_unit(answer))
    if stern > length:
        own_circle(sheet, scale, bow=bow, stern=stern, fill=CALM)
        sheet.mark(scale.x(0.4 * bow), scale.y(0.0), f"longest rode: {answer.results.longest_rode.shown}", toward=(0, 1))
        sheet.mark(scale.x(-0.7 * stern), scale.y(0.714 * stern), "circle of the stern with that rode", toward=(-1, -1))
    else:
        sheet.circle(scale.x(0.0), scale.y(0.0), radius * scale.per_metre, fill=BLUSH, stroke=DANGER, dash="6 3 1.5 3")
        glyphs.boat_from_above(sheet, scale, bow=(0.0, 0.0), length=length, heading=pi)
        sheet.note("The boat herself is longer than the room: no rode will do.")
    glyphs.rock(sheet, scale.x(distance), scale.y(0.0))
    sheet.mark(scale.x(stern if stern > length else 0.5 * length), scale.y(0.0), f"boat: {said(answer.read.boat_length)}", toward=(-1, 1))
    sheet.mark(scale.x(distance), scale.y(0.0), f"to stay clear of: {said(answer.read.distance)} from the anchor", toward=(0, -1))
    there = f"Scope there: {answer.results.scope_there.shown}, wanted {said(answer.read.scope)}." if stern > length else ""
    sheet.note(f"Margin kept: {said(answer.read.margin)}. {there}")
    return sheet


def time_to_let_go(answer: Answer) -> Sheet:
    """Draw the way to the danger: what can still be drifted, and what the rode and the boat will take."""
    sheet = Sheet(headline=answer.headline, about="The drift towards the danger, from above and to scale. The letters stand in the key that follows.")
    distance, room, length = answer.read.distance_off.si, answer.results.room_needed.si, answer.read.boat_length.si
    scale = opened(sheet, left=-length, right=max(distance, room), radius=0.5 * length, unit=length_unit(answer), least=96.0)
    left = max(distance - room, 0.0)
    y = scale.y(0.0)
    sheet.box(scale.x(left), y - 14.0, scale.x(left + room), y + 14.0, fill=BLUSH, stroke=DANGER, width=1.2, dash="6 3 1.5 3")
    if left > 0.0:
        sheet.arrow(scale.x(0.0), y, scale.x(left), y, stroke=INK, width=2.4)
    glyphs.boat_from_above(sheet, scale, bow=(-length, 0.0), length=length, heading=pi)
    sheet.line(scale.x(left), y, scale.x(left + max(room - length, 0.0)), y, stroke=ROPE, width=2.0)
    glyphs.anchor(sheet, scale.x(left), y)
    glyphs.rock(sheet, scale.x(distance), y)
    if left > 0.0:
        sheet.mark(scale.x(0.5 * left), y, f"can still drift, at {said(answer.read.drift)}: {answer.results.time_left.shown}")
    needed = f"room needed, rode and boat: {answer.results.room_needed.shown}"
    sheet.mark(scale.x(left + 0.6 * room), y + 14.0, needed, toward=(0, 1))
    sheet.mark(scale.x(distance), y, f"danger: {said(answer.read.distance_off)} off", toward=(0, -1))
    sheet.note(f"Rode to use: {answer.results.rode_to_use.shown}, scope {answer.results.scope_got.shown}.")
    if answer.results.let_go_now:
        sheet.note("The room needed reaches to the danger or beyond it: let go now.")
    return sheet
