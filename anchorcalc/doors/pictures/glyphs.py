"""Small things that pictures share: the boat from the side and from above, the anchor, the wind, a rock, the seabed."""

from math import atan2, cos, pi, sin

from anchorcalc.doors.pictures.scale import Scale
from anchorcalc.doors.pictures.sheet import CHAIN, DANGER, INK, LEFT, PAPER, RIGHT, ROPE, SAND, SAND_LINE, Point, Sheet

HULL = "#3a4f66"


def seabed(sheet: Sheet, *, y: float) -> None:
    """Draw a level bottom down to the edge of the field."""
    sheet.box(LEFT, y, RIGHT, sheet.bottom, fill=SAND)
    sheet.line(LEFT, y, RIGHT, y, stroke=SAND_LINE, width=1.5)


def boat_from_side(sheet: Sheet, scale: Scale, *, bow: float, water: float, bow_height: float, length: float) -> None:
    """Draw a hull with its roller at `bow`, heading left."""
    freeboard, draught = max(bow_height, 0.03 * length), 0.055 * length
    shape = (
        (0.0, freeboard),
        (0.06, 0.35 * freeboard),
        (0.16, -0.7 * draught),
        (0.5, -draught),
        (0.95, -0.6 * draught),
        (1.0, 0.1 * freeboard),
        (1.0, 0.75 * freeboard),
        (0.5, 0.78 * freeboard),
    )
    house = ((0.34, 0.78 * freeboard), (0.41, 0.78 * freeboard + 0.13 * length), (0.66, 0.78 * freeboard + 0.13 * length), (0.7, 0.77 * freeboard))
    for part, fill in ((house, PAPER), (shape, HULL)):
        sheet.run(((scale.x(bow + x * length), scale.y(water + y)) for x, y in part), stroke=INK, fill=fill, closed=True)


def boat_from_above(sheet: Sheet, scale: Scale, *, bow: Point, length: float, heading: float, beam: float = 0.0, dash: str = "") -> None:
    """Draw a hull from above: the bow at a place in metres, heading so many radians from the x-axis."""
    half = (beam or 0.34 * length) / 2.0
    shape = ((0.0, 0.0), (-0.14, 0.62), (-0.34, 0.95), (-0.55, 1.0), (-1.0, 0.78), (-1.0, -0.78), (-0.55, -1.0), (-0.34, -0.95), (-0.14, -0.62))
    ahead, aside = cos(heading), sin(heading)
    points = [(scale.x(bow[0] + length * x * ahead - half * y * aside), scale.y(bow[1] + length * x * aside + half * y * ahead)) for x, y in shape]
    sheet.run(points, stroke=INK, fill=PAPER if dash else HULL, closed=True, dash=dash)


def anchor(sheet: Sheet, x: float, y: float, *, toward: float = 0.0) -> None:
    """Draw an anchor (not to scale) whose ring lies at a place, its crown away from the direction `toward` [rad]."""
    ahead, aside = cos(toward), -sin(toward)

    def at(along: float, across: float) -> Point:
        return x + along * ahead - across * aside, y + along * aside + across * ahead

    sheet.run((at(0, 0), at(-11, 0)), stroke=INK, width=2.0)
    sheet.run((at(-2, -4), at(-2, 4)), stroke=INK, width=1.5)
    sheet.run((at(-6, -6.5), at(-9.5, -4.5), at(-11, 0), at(-9.5, 4.5), at(-6, 6.5)), stroke=INK, width=2.0)
    sheet.circle(x, y, 2.0, fill=PAPER, stroke=INK, width=1.2)


def rode(sheet: Sheet, points: list[Point], *, joint: int) -> None:
    """Draw a rode through points on the sheet: chain up to the joint as links, line from there."""
    if joint > 0:
        sheet.run(points[: joint + 1], stroke=CHAIN, width=3.2, dash="3.5 1.5")
    if joint < len(points) - 1:
        sheet.run(points[joint:], stroke=ROPE, width=2.2)


def wind(sheet: Sheet, x: float, y: float, *, way: int = 1) -> None:
    """Draw the wind as an arrow with the word."""
    sheet.arrow(x, y, x + way * 46.0, y, stroke=INK, width=1.6)
    sheet.text(x + way * 23.0, y - 5.0, "wind", anchor="middle")


def rock(sheet: Sheet, x: float, y: float) -> None:
    """Draw the sign that charts have for a dangerous rock: a cross with dots in a dotted ring."""
    sheet.circle(x, y, 8.0, fill=PAPER, stroke=DANGER, width=1.2, dash="1.6 1.8")
    for to_x, to_y in ((6.0, 0.0), (0.0, 6.0)):
        sheet.line(x - to_x, y - to_y, x + to_x, y + to_y, stroke=DANGER, width=1.8)
    for dot_x, dot_y in ((3.0, 3.0), (3.0, -3.0), (-3.0, 3.0), (-3.0, -3.0)):
        sheet.circle(x + dot_x, y + dot_y, 1.0, fill=DANGER)


def lead_line(sheet: Sheet, x: float, *, surface: float, bottom: float) -> None:
    """Draw a lead line from the surface to the bottom, with its rags and its lead."""
    sheet.line(x, surface, x, bottom, stroke=ROPE, width=1.3)
    for at in range(1, 4):
        y = surface + at * (bottom - surface) / 4.0
        if bottom - surface > 24.0:
            sheet.path(f"M{x:.1f} {y:.1f}l5 -2v5Z", fill=ROPE)
    sheet.path(f"M{x - 2.0:.1f} {bottom - 7.0:.1f}h4l1 7h-6Z", fill=INK)


def angle_arc(sheet: Sheet, x: float, y: float, *, to_x: float, to_y: float, radius: float) -> Point:
    """Draw the arc from level to the direction of a point; return its middle."""
    angle = atan2(y - to_y, to_x - x)
    sheet.path(
        f"M{x + radius:.1f} {y:.1f}A{radius:.1f} {radius:.1f} 0 {int(angle > pi)} 0 {x + radius * cos(angle):.1f} {y - radius * sin(angle):.1f}",
        stroke=INK,
        width=1.2,
    )
    return x + radius * cos(angle / 2.0), y - radius * sin(angle / 2.0)
