"""The boat end on over the bottom: what a sounder measures from, and the water under the keel."""

from typing import NamedTuple

from anchorcalc.answering.replies import Answer
from anchorcalc.doors.pictures import glyphs
from anchorcalc.doors.pictures.glyphs import HULL
from anchorcalc.doors.pictures.scale import Scale, read, result, said, si
from anchorcalc.doors.pictures.sheet import DANGER, DEEP, INK, LEFT, PAPER, RIGHT, WATER, Sheet

FIELD, SKY, BELOW = 170.0, 40.0, 24.0
ABOUT = "The boat end on over the bottom; depths to scale. The letters in the picture stand in the key that follows."
MIDDLE = (LEFT + RIGHT) / 2.0 - 30.0


class Part(NamedTuple):
    """A measured stretch of depth, from and to so far below the surface, [m]."""

    start: float
    end: float
    text: str


def _field(sheet: Sheet, *, depth: float, surface_above: float = 0.0) -> Scale:
    """Open water of a depth; `surface_above` is what the tide still has over the surface that depths count from."""
    sheet.open(height=SKY + FIELD + BELOW)
    scale = Scale(MIDDLE, sheet.top + SKY, FIELD / max(depth, 1e-6))
    sheet.box(LEFT, scale.y(surface_above), RIGHT, scale.y(-depth), fill=WATER)
    glyphs.seabed(sheet, y=scale.y(-depth))
    return scale


def _end_on(sheet: Sheet, *, surface: float, keel: float) -> None:
    """Draw a hull from astern: its keel at a place on the sheet."""
    deep = max(keel - surface, 2.0)
    body = min(0.55 * deep, 26.0)
    side = ((34.0, surface - 20.0), (30.0, surface + 0.35 * body), (5.0, surface + body), (3.0, keel))
    house = ((18.0, surface - 20.0), (13.0, surface - 33.0))
    for half, fill in ((side, HULL), (house, PAPER)):
        right, left = [(MIDDLE + x, y) for x, y in half], [(MIDDLE - x, y) for x, y in reversed(half)]
        sheet.run([*right, *left], stroke=INK, fill=fill, closed=True)


def _stretches(sheet: Sheet, scale: Scale, parts: list[Part], *, x: float, step: float) -> None:
    """Draw stretches of depth as arrows side by side, and letter them."""
    for at, part in enumerate(parts):
        across = x + step * at
        sheet.arrow(across, scale.y(-part.start), across, scale.y(-part.end), stroke=DANGER, width=1.6, both=True)
        sheet.mark(across, scale.y(-(part.start + part.end) / 2.0), part.text, toward=(1, 0))


def true_depth(answer: Answer) -> Sheet:
    """Draw what the sounder shows and what lies above it."""
    sheet = Sheet(headline=answer.headline, about=ABOUT)
    depth, zero = answer.results.depth.si, answer.read.reads_from.value
    above = answer.results.depth.si - answer.read.reading.si
    scale = _field(sheet, depth=depth)
    sheet.line(LEFT, scale.y(0.0), RIGHT, scale.y(0.0), stroke=DEEP, width=1.4)
    keel = si(read(answer, "draught"), otherwise=max(1.3 * above, 0.12 * depth))
    _end_on(sheet, surface=scale.y(0.0), keel=min(scale.y(-keel), scale.y(-0.97 * depth)))
    shown = Part(above, depth, f"the sounder shows: {said(answer.read.reading)}, from the {zero}")
    offset = {"transducer": "transducer_depth", "keel": "draught"}.get(zero)
    parts = [shown, Part(0.0, depth, f"surface to bottom: {answer.results.depth.shown}")]
    if offset is not None:
        parts.insert(0, Part(0.0, above, f"surface to {zero}: {said(read(answer, offset))}"))
        sheet.circle(MIDDLE, scale.y(-above), 4.0, fill=PAPER, stroke=INK)
    _stretches(sheet, scale, parts, x=MIDDLE + 56.0, step=44.0)
    return sheet


def shallowest_anchorage(answer: Answer) -> Sheet:
    """Draw the keel at low water, and the fall of tide above it."""
    sheet = Sheet(headline=answer.headline, about=ABOUT)
    draught, wanted, fall = answer.read.draught.si, si(read(answer, "under_keel")), si(read(answer, "tide_fall"))
    given = read(answer, "depth")
    depth = si(given, otherwise=answer.results.shallowest_depth.si)
    low = depth - fall
    scale = _field(sheet, depth=max(depth, fall + draught if given is None else depth))
    sheet.line(LEFT, scale.y(0.0), RIGHT, scale.y(0.0), stroke=DEEP, width=1.4, dash="8 3" if fall > 0.0 else "")
    if fall > 0.0:
        sheet.line(LEFT, min(scale.y(-fall), scale.y(-depth)), RIGHT, min(scale.y(-fall), scale.y(-depth)), stroke=DEEP, width=1.4)
    keel = min(fall + draught, depth)
    _end_on(sheet, surface=scale.y(draught - keel), keel=scale.y(-keel))
    parts = [Part(keel - draught, keel, f"draught: {said(answer.read.draught)}")]
    if fall > 0.0:
        parts.insert(0, Part(0.0, min(fall, depth), f"tide still to fall: {said(answer.read.tide_fall)}; broken line: the water now"))
    if given is None:
        parts += [Part(keel, depth, f"under the keel at low water: {said(answer.read.under_keel)}")] if wanted > 0.0 else []
        parts.append(Part(0.0, depth, f"least depth to anchor in, now: {answer.results.shallowest_depth.shown}"))
    else:
        parts.append(Part(0.0, depth, f"depth now: {said(given)}; at least {answer.results.shallowest_depth.shown} is wanted"))
        left = result(answer, "under_keel_at_low_water")
        sheet.note("She takes the ground at low water." if low < draught else f"Under the keel at low water: {left.shown}.")
    _stretches(sheet, scale, parts, x=MIDDLE + 48.0, step=38.0)
    return sheet
