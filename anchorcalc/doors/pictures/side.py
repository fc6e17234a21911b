"""The rode from the side, to scale: water and its tide, the bow, chain and line, marks, and the shape that was reckoned with."""

from math import atan2, cos, hypot, sin, sqrt
from typing import NamedTuple

from anchorcalc.answering.replies import Answer
from anchorcalc.doors.pictures import glyphs
from anchorcalc.doors.pictures.scale import Scale, length_unit, read, result, said, scale_bar, si
from anchorcalc.doors.pictures.sheet import DANGER, DEEP, INK, LEFT, PAPER, RIGHT, WATER, Point, Sheet, num

MOST_HEIGHT, SKY, BELOW = 215.0, 34.0, 50.0
NO_LENGTH = 7.0  # [m] length of the boat that is drawn where none was given


class Scene(NamedTuple):
    """What the side view is made of, [m]."""

    depth: float
    tide: float
    bow_height: float
    rode_out: float
    chain: float
    boat_length: float
    bends: tuple[Point, ...] = ()  # along the rode from anchor to roller, where a shape was computed; the first half is chain

    @property
    def height(self) -> float:
        """Return the height of the roller above the seabed at the water that is drawn."""
        return self.depth + self.tide + self.bow_height

    @property
    def reach(self) -> float:
        """Return how far the bow lies from the anchor; where the rode does not reach the bottom it hangs straight down."""
        return self.bends[-1][0] if self.bends else sqrt(max(self.rode_out**2 - self.height**2, 0.0))


def scene_of(answer: Answer, *, rode_out: float, depth: float, at_high_water: bool, bends: tuple[Point, ...] = ()) -> Scene:
    """Return the scene of an answer."""
    return Scene(
        depth=depth,
        tide=si(read(answer, "tide_rise")) if at_high_water else 0.0,
        bow_height=si(read(answer, "bow_height")),
        rode_out=rode_out,
        chain=min(si(read(answer, "chain")), rode_out),
        boat_length=si(read(answer, "boat_length"), otherwise=NO_LENGTH),
        bends=bends,
    )


def fitted(sheet: Sheet, *, wide: float, high: float, left: float = 16.0) -> Scale:
    """Open a field and return the one scale at which so many metres fit it both ways."""
    room = RIGHT - LEFT - left - 8.0
    per_metre = min(room / wide, MOST_HEIGHT / high)
    sheet.open(height=SKY + max(high * per_metre, 12.0) + BELOW)
    return Scale(LEFT + left + (room - wide * per_metre) / 2.0, sheet.bottom - BELOW, per_metre)


def view(sheet: Sheet, scene: Scene, *, unit: str) -> Scale:
    """Draw water, bottom, boat, rode and scale."""
    house = 0.13 * scene.boat_length
    scale = fitted(sheet, wide=scene.reach + scene.boat_length, high=scene.height + house)
    surface = scene.depth + scene.tide
    sheet.box(LEFT, scale.y(surface), RIGHT, scale.y(0.0), fill=WATER)
    glyphs.seabed(sheet, y=scale.y(0.0))
    sheet.line(LEFT, scale.y(surface), RIGHT, scale.y(surface), stroke=DEEP, width=1.4)
    if scene.tide > 0.0:
        sheet.line(LEFT, scale.y(scene.depth), RIGHT, scale.y(scene.depth), stroke=DEEP, width=1.2, dash="5 3")
    if scene.boat_length > 0.0:
        glyphs.boat_from_side(sheet, scale, bow=scene.reach, water=surface, bow_height=scene.bow_height, length=scene.boat_length)
    glyphs.lead_line(sheet, scale.x(scene.reach + 0.85 * scene.boat_length), surface=scale.y(scene.depth), bottom=scale.y(0.0))
    points, joint = run_of(scene)
    glyphs.rode(sheet, [(scale.x(x), scale.y(y)) for x, y in points], joint=joint)
    glyphs.anchor(sheet, scale.x(0.0), scale.y(0.0))
    scale_bar(sheet, scale, unit=unit, y=sheet.bottom - 22.0)
    return scale


def run_of(scene: Scene) -> tuple[list[Point], int]:
    """Return the rode from anchor to roller in metres, and which point is the joint of chain and line."""
    if scene.bends:
        half = len(scene.bends) // 2
        return list(scene.bends), len(scene.bends) - 1 if scene.chain >= scene.rode_out else half if scene.chain > 0.0 else 0
    ends = (0.0, 0.0), (scene.reach, scene.height)
    if 0.0 < scene.chain < scene.rode_out:
        return [ends[0], at_length(scene, scene.chain), ends[1]], 1
    return list(ends), 1 if scene.chain > 0.0 else 0


def at_length(scene: Scene, along: float) -> Point:
    """Return where a point of the taut rode lies, so far from the anchor."""
    part = along / scene.rode_out if scene.rode_out > 0.0 else 0.0
    return part * scene.reach, part * scene.height


def letters(sheet: Sheet, scale: Scale, scene: Scene, answer: Answer, *, rode: str, depth: str) -> None:
    """Letter rode, depth, tide and bow height."""
    middle = scene.bends[len(scene.bends) * 3 // 4] if scene.bends else at_length(scene, 0.45 * scene.rode_out)
    sheet.mark(scale.x(middle[0]), scale.y(middle[1]), rode)
    chain = read(answer, "chain")
    if chain is not None and scene.chain > 0.0:
        place = scene.bends[len(scene.bends) // 4] if scene.bends else at_length(scene, 0.5 * scene.chain)
        sheet.mark(
            scale.x(place[0]),
            scale.y(place[1]),
            "all of it chain" if scene.chain >= scene.rode_out else f"chain, drawn as links: {said(chain)}",
            toward=(0, 1),
        )
    lead = scale.x(scene.reach + 0.85 * scene.boat_length)
    sheet.mark(lead, scale.y(0.5 * scene.depth), depth, toward=(1, 0))
    tide = read(answer, "tide_rise")
    if tide is not None and scene.tide > 0.0:
        sheet.mark(LEFT + 34.0, scale.y(scene.depth + 0.5 * scene.tide), f"tide still to rise: {said(tide)}; the broken line is the water now")
    if (bow := read(answer, "bow_height")) is not None:
        sheet.mark(scale.x(scene.reach), scale.y(scene.height), f"bow height: {said(bow)}")


def _plain(answer: Answer) -> Sheet:
    return Sheet(
        headline=answer.headline, about="The rode from the side, to scale, drawn taut. The letters in the picture stand in the key that follows."
    )


def rode_to_let_out(answer: Answer) -> Sheet:
    """Draw the rode to let out, with its marks."""
    sheet = _plain(answer)
    scene = scene_of(answer, rode_out=answer.results.rode_out.si, depth=answer.read.depth.si, at_high_water=True)
    scale = view(sheet, scene, unit=length_unit(answer))
    _rail_marks(sheet, scale, scene, answer)
    letters(sheet, scale, scene, answer, rode=f"rode out: {answer.results.rode_out.shown}", depth=f"depth now: {said(answer.read.depth)}")
    sheet.note(f"Roller above the seabed at high water: {answer.results.total_height.shown}; scope {said(answer.read.scope)}.")
    if result(answer, "enough") is False:
        sheet.note(f"There is not so much aboard: {said(answer.read.rode_aboard)}.")
    return sheet


def _rail_marks(sheet: Sheet, scale: Scale, scene: Scene, answer: Answer) -> None:
    """Tick the rode at its marks, where there are any and they can be told apart."""
    interval, marks, counts_from = read(answer, "mark_interval"), read(answer, "marks"), read(answer, "marks_from")
    start = scene.chain if counts_from is not None and counts_from.value == "chain_end" else 0.0
    if interval is not None:
        places = [start + one * interval.si for one in range(1, int(min((scene.rode_out - start) / interval.si + 1e-9, 200.0)) + 1)]
    else:
        places = [start + one for one in marks.si if start + one <= scene.rode_out * (1.0 + 1e-12)] if marks is not None else []
    if places and scale.per_metre * scene.rode_out / len(places) >= 5.0:
        for place in places:
            x, y = at_length(scene, place)
            sheet.box(scale.x(x) - 2.0, scale.y(y) - 4.5, scale.x(x) + 2.0, scale.y(y) + 4.5, fill=PAPER, stroke=INK)
        sheet.note(
            f"Tabs on the rode are its marks; mark {answer.results.stop_at.shown} is the one to stop at."
            if result(answer, "stop_at")
            else "Tabs on the rode are its marks."
        )


def scope_now(answer: Answer) -> Sheet:
    """Draw the rode that is out, at high water."""
    sheet = _plain(answer)
    scene = scene_of(answer, rode_out=answer.read.rode_out.si, depth=answer.read.depth.si, at_high_water=True)
    scale = view(sheet, scene, unit=length_unit(answer))
    letters(sheet, scale, scene, answer, rode=f"rode out: {said(answer.read.rode_out)}", depth=f"depth now: {said(answer.read.depth)}")
    sheet.note(f"Scope now {answer.results.scope.shown}, at high water {answer.results.scope_at_high_water.shown}.")
    return sheet


def deepest_anchorage(answer: Answer) -> Sheet:
    """Draw all the usable rode in the deepest water that it serves."""
    sheet = _plain(answer)
    usable = answer.read.rode_aboard.si - si(read(answer, "reserve"))
    scene = scene_of(answer, rode_out=usable, depth=answer.results.deepest_depth.si, at_high_water=True)
    scale = view(sheet, scene, unit=length_unit(answer))
    deepest = f"deepest water now: {answer.results.deepest_depth.shown}"
    letters(sheet, scale, scene, answer, rode=f"rode out: {said(answer.read.rode_aboard)} less what is kept", depth=deepest)
    sheet.note(f"Kept aboard: {said(answer.read.reserve)}; scope {said(answer.read.scope)} at high water.")
    return sheet


def rode_to_carry(answer: Answer) -> Sheet:
    """Draw the rode in the deepest water intended."""
    sheet = _plain(answer)
    rode_out = answer.results.rode_aboard.si - si(read(answer, "reserve"))
    scene = scene_of(answer, rode_out=rode_out, depth=answer.read.depth.si, at_high_water=True)
    scale = view(sheet, scene, unit=length_unit(answer))
    deepest = f"deepest water intended: {said(answer.read.depth)}"
    letters(sheet, scale, scene, answer, rode=f"rode to carry: {answer.results.rode_aboard.shown}", depth=deepest)
    sheet.note(f"Of that kept aboard: {said(answer.read.reserve)}; scope {said(answer.read.scope)} at high water.")
    return sheet


def where_to_drop(answer: Answer) -> Sheet:
    """Draw how far upwind of the bow the anchor goes down."""
    sheet = _plain(answer)
    scene = scene_of(answer, rode_out=answer.results.rode_out.si, depth=answer.read.depth.si, at_high_water=False)
    scale = view(sheet, scene, unit=length_unit(answer))
    glyphs.wind(sheet, LEFT + 8.0, sheet.top + 22.0)
    below = scale.y(0.0) + 12.0
    sheet.arrow(scale.x(0.0), below, scale.x(scene.reach), below, stroke=DANGER, width=1.4, both=True)
    letters(sheet, scale, scene, answer, rode=f"rode out: {answer.results.rode_out.shown}", depth=f"depth now: {said(answer.read.depth)}")
    sheet.mark(scale.x(0.5 * scene.reach), below, f"anchor ahead of where the bow is to lie: {answer.results.ahead_of_spot.shown}", toward=(-1, -1))
    if (stern := result(answer, "stern_lies_at")) is not None:
        sheet.mark(scale.x(scene.reach + scene.boat_length), scale.y(scene.depth), f"stern, from the anchor: {stern.shown}")
    return sheet


def line_angle(answer: Answer) -> Sheet:
    """Draw the triangle of a taut line, and its angle."""
    sheet = Sheet(headline=answer.headline, about="A taut line from the bow down to the anchor, and its angle, to scale.")
    scope = (result(answer, "scope") or read(answer, "scope")).si
    reach = sqrt(max(scope**2 - 1.0, 0.0))
    per_metre = min((RIGHT - LEFT - 40.0) / max(reach, 0.5), 200.0)
    sheet.open(height=per_metre + 70.0)
    scale = Scale(LEFT + 24.0, sheet.bottom - 26.0, per_metre)
    sheet.box(LEFT, sheet.top + 44.0, RIGHT, sheet.bottom, fill=WATER)
    glyphs.seabed(sheet, y=scale.y(0.0))
    bow_x, bow_y = scale.x(reach), scale.y(1.0)
    sheet.line(scale.x(0.0), bow_y, bow_x, bow_y, dash="4 3")
    sheet.line(bow_x, bow_y, bow_x, scale.y(0.0), stroke=DEEP, dash="4 3")
    glyphs.rode(sheet, [(scale.x(0.0), scale.y(0.0)), (bow_x, bow_y)], joint=0)
    glyphs.anchor(sheet, scale.x(0.0), scale.y(0.0))
    sheet.circle(bow_x, bow_y, 3.5, fill=INK)
    radius = min(0.45 * hypot(bow_x - scale.x(0.0), per_metre), 60.0)
    angle = atan2(1.0, reach)
    low = bow_x - radius * cos(angle), bow_y + radius * sin(angle)
    sheet.path(f"M{num(bow_x - radius)} {num(bow_y)}A{num(radius)} {num(radius)} 0 0 0 {num(low[0])} {num(low[1])}", stroke=INK, width=1.4)
    middle = bow_x - radius * cos(angle / 2.0), bow_y + radius * sin(angle / 2.0)
    sheet.mark(*middle, f"line below the horizontal: {(result(answer, 'angle') or answer.read.angle).shown}", toward=(-1, 1))
    sheet.mark(scale.x(0.3 * reach), scale.y(0.3), f"line out over the height: {(result(answer, 'scope') or answer.read.scope).shown}")
    sheet.mark(bow_x, scale.y(0.4), "height of the roller above the seabed", toward=(1, 0))
    return sheet
