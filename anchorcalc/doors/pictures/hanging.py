"""The rode under load from the side, to scale: the shape that was computed, what lies on the bottom, and the angle at the shank."""

import numpy as np

from anchorcalc.answering.replies import Answer
from anchorcalc.doors.pictures import glyphs
from anchorcalc.doors.pictures.scale import Scale, length_unit, read, result, said, si
from anchorcalc.doors.pictures.sheet import INK, Point, Sheet, num
from anchorcalc.doors.pictures.side import Scene, scene_of, view
from anchorcalc.physics.catenary import rode_points
from anchorcalc.physics.weights import rode_weights
from anchorcalc.vocabulary.rode import LINE_MATERIAL

ABOUT = "The rode from the side under that load, to scale, in the shape that was reckoned with. The letters stand in the key that follows."
POINTS = 16  # on the chain, and as many on the line


def bends_of(answer: Answer, *, rode_out: float) -> tuple[Point, ...]:
    """Return the shape of the rode from anchor to roller, [m], from what the answer stands on."""
    sizes = {name: one.si if (one := read(answer, name)) is not None else None for name in ("chain_size", "line_size")}
    chain_weight, line_weight = rode_weights(line_material=LINE_MATERIAL.code(answer.read.line_material.value), **sizes)
    run = rode_points(
        rode_out=rode_out,
        chain=si(read(answer, "chain")),
        height=sum(si(read(answer, name)) for name in ("depth", "tide_rise", "bow_height")),
        load=answer.read.load.si,
        chain_weight=chain_weight,
        line_weight=line_weight,
        points=POINTS,
    )
    return tuple((float(x), float(y)) for x, y in np.column_stack([run.x, run.y]))


def _drawn(sheet: Sheet, answer: Answer, *, rode_out: float) -> tuple[Scale, Scene]:
    scene = scene_of(answer, rode_out=rode_out, depth=answer.read.depth.si, at_high_water=True, bends=bends_of(answer, rode_out=rode_out))
    return view(sheet, scene, unit=length_unit(answer)), scene


def _lettered(sheet: Sheet, scale: Scale, scene: Scene, answer: Answer, *, rode: str) -> None:
    """Letter rode, chain, depth and bow height."""
    high = scene.bends[-POINTS // 2]
    sheet.mark(scale.x(high[0]), scale.y(high[1]), rode, toward=(-1, -1))
    if scene.chain > 0.0:
        low = scene.bends[POINTS // 2]
        told = "all of it chain" if scene.chain >= scene.rode_out else f"chain, drawn as links: {said(answer.read.chain)}"
        sheet.mark(scale.x(low[0]), scale.y(low[1]), told, toward=(0, 1))
    lead = scale.x(scene.reach + 0.85 * scene.boat_length)
    sheet.mark(lead, scale.y(0.5 * scene.depth), f"depth now: {said(answer.read.depth)}", toward=(1, 0))
    sheet.mark(scale.x(scene.reach), scale.y(scene.height), f"bow height: {said(answer.read.bow_height)}")


def pull_at_anchor(answer: Answer) -> Sheet:
    """Draw the rode in the shape that the load gives it."""
    sheet = Sheet(headline=answer.headline, about=ABOUT)
    scale, scene = _drawn(sheet, answer, rode_out=answer.read.rode_out.si)
    results = answer.results
    glyphs.wind(sheet, 22.0, sheet.top + 22.0)
    if results.pull_angle.si > 0.0:
        ahead = next((one for one in scene.bends[1:] if one[0] > 0.0), scene.bends[-1])
        middle = glyphs.angle_arc(sheet, scale.x(0.0), scale.y(0.0), to_x=scale.x(ahead[0]), to_y=scale.y(ahead[1]), radius=30.0)
        sheet.mark(*middle, f"angle at the shank: {results.pull_angle.shown}", toward=(-1, -1))
    else:
        lying = results.chain_lying
        sheet.mark(scale.x(0.5 * lying.si), scale.y(0.0), f"chain on the bottom: {lying.shown}; the pull is flat", toward=(0, 1))
    _lettered(sheet, scale, scene, answer, rode=f"rode out: {said(answer.read.rode_out)}")
    sheet.note(f"Load {said(answer.read.load)}, at the roller {results.bow_tension.shown}; the bow lies {results.reach.shown} from the anchor.")
    _note_tide(sheet, answer)
    return sheet


def rode_for_flat_pull(answer: Answer) -> Sheet:
    """Draw the rode that pulls flat; where none does, the rode by rule."""
    sheet = Sheet(headline=answer.headline, about=ABOUT)
    flat = result(answer, "rode_out")
    drawn = flat if flat is not None else answer.results.rode_by_rule
    scale, scene = _drawn(sheet, answer, rode_out=drawn.si)
    x, y = scale.x(0.0), scale.y(0.0)
    if flat is not None:
        sheet.path(f"M{num(x)} {num(y)}h26", stroke=INK, width=3.0)
        sheet.mark(x + 20.0, y, "level at the anchor", toward=(0, 1))
    rode = f"rode for a flat pull: {flat.shown}" if flat is not None else f"rode by the rule: {drawn.shown}"
    _lettered(sheet, scale, scene, answer, rode=rode)
    if flat is None:
        sheet.note("No length of this rode pulls flat; drawn is the rode by the rule, which lifts at the anchor.")
    else:
        sheet.note(f"By the rule, {said(answer.read.scope)}: {answer.results.rode_by_rule.shown}. Load: {said(answer.read.load)}.")
    _note_tide(sheet, answer)
    return sheet


def _note_tide(sheet: Sheet, answer: Answer) -> None:
    if si(read(answer, "tide_rise")) > 0.0:
        sheet.note(f"At high water, {said(answer.read.tide_rise)} above the broken line, which is the water now.")
