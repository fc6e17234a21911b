"""Where the boat has been about her anchor, north up and to scale, with the watch circle."""

from math import cos, radians

import numpy as np

from anchorcalc.answering.replies import Answer
from anchorcalc.doors.pictures import glyphs
from anchorcalc.doors.pictures.plan import opened
from anchorcalc.doors.pictures.scale import Scale, length_unit, result, said
from anchorcalc.doors.pictures.sheet import CALM, DANGER, DEEP, INK, RIGHT, Point, Sheet, num

METRES_A_RADIAN = 6371008.8  # mean radius of the earth; only the picture stands on it
MOST_FIXES = 200  # more cannot be told apart, and make the file large
FINEST = 1.5


def drag_check(answer: Answer) -> Sheet:
    """Draw the fixes about the anchor."""
    about = "Where the boat has been about her anchor, from above, north up, to scale. The letters in the picture stand in the key that follows."
    sheet = Sheet(headline=answer.headline, about=about)
    places = _places(answer)
    radius = answer.results.watch_radius.si
    west, east = min(-radius, float(places[:, 0].min())), max(radius, float(places[:, 0].max()))
    half = max(radius, float(np.abs(places[:, 1]).max()))
    scale = opened(sheet, left=west, right=east, radius=half, unit=length_unit(answer))
    sheet.circle(scale.x(0.0), scale.y(0.0), radius * scale.per_metre, fill=CALM, stroke=DEEP, width=2.0)
    glyphs.anchor(sheet, scale.x(0.0), scale.y(0.0), toward=1.5707963)
    _track(sheet, scale, places, radius)
    _north(sheet)
    _letter(sheet, scale, answer, places, radius)
    return sheet


def _places(answer: Answer) -> np.ndarray:
    """Return the fixes as metres east and north of the anchor, in order of time as they were given."""
    joined = " ".join(fix.position for fix in answer.read.fixes.value).replace(",", "").replace(" N", "").replace(" E", "")
    degrees = np.fromstring(joined, sep=" ").reshape(-1, 2)
    anchor = answer.read.anchor_at
    east = np.mod(degrees[:, 1] - anchor.longitude + 180.0, 360.0) - 180.0
    north = degrees[:, 0] - anchor.latitude
    metres: np.ndarray = METRES_A_RADIAN * np.radians(np.column_stack([east * cos(radians(anchor.latitude)), north]))
    return metres


def _track(sheet: Sheet, scale: Scale, places: np.ndarray, radius: float) -> None:
    """Draw the way from fix to fix: rings for those within the circle, crosses for those without."""
    points, outside = thinned(scale, places, radius)
    sheet.run(points, stroke=INK, width=0.8)
    rings, crosses = [], []
    for (x, y), out in zip(points, outside, strict=True):
        if out:
            crosses.append(f"M{num(x - 3.0)} {num(y - 3.0)}l6 6m0-6l-6 6")
        elif len(points) <= 60:
            rings.append(f"M{num(x - 2.0)} {num(y)}a2 2 0 1 0 4 0a2 2 0 1 0-4 0")
    if rings:
        sheet.path("".join(rings), fill=INK)
    if crosses:
        sheet.path("".join(crosses), stroke=DANGER, width=1.7)


def thinned(scale: Scale, places: np.ndarray, radius: float) -> tuple[list[Point], list[bool]]:
    """Return the fixes on the sheet without those that the eye cannot tell from others, and which lie outside the circle."""
    outside = np.hypot(places[:, 0], places[:, 1]) > radius
    x, y = scale.x_origin + places[:, 0] * scale.per_metre, scale.y_origin - places[:, 1] * scale.per_metre
    grid = FINEST
    while True:
        cells = (np.round(x / grid) * 65536.0 + np.round(y / grid)) * 2.0 + outside
        _, first = np.unique(cells, return_index=True)
        keep = np.unique(np.append(first, len(places) - 1))
        if len(keep) <= MOST_FIXES:
            break
        grid *= 1.5
    return [(float(x[one]), float(y[one])) for one in keep], [bool(outside[one]) for one in keep]


def _north(sheet: Sheet) -> None:
    x, y = RIGHT - 14.0, sheet.top + 14.0
    sheet.arrow(x, y + 22.0, x, y, stroke=INK, width=1.4)
    sheet.text(x, y + 36.0, "N", anchor="middle", bold=True)


def _letter(sheet: Sheet, scale: Scale, answer: Answer, places: np.ndarray, radius: float) -> None:
    results = answer.results
    sheet.mark(scale.x(-0.7 * radius), scale.y(0.714 * radius), f"watch circle: {results.watch_radius.shown} from the anchor", toward=(-1, -1))
    sheet.mark(scale.x(0.0), scale.y(0.0), "anchor", toward=(0, 1))
    far = places[int(np.argmax(np.hypot(places[:, 0], places[:, 1])))]
    sheet.mark(scale.x(float(far[0])), scale.y(float(far[1])), f"farthest fix: {results.farthest.shown} from the anchor", toward=(1, 1))
    last = places[-1]
    if (last != far).any():
        sheet.mark(scale.x(float(last[0])), scale.y(float(last[1])), f"last fix given, {answer.read.fixes.value[-1].at}", toward=(1, -1))
    sheet.note(f"{said(answer.read.fixes)}, {results.outside.shown} of them outside (crosses).")
    if (speed := result(answer, "drift_speed")) is not None and (bearing := result(answer, "drift_bearing")) is not None:
        sheet.note(f"The last fixes move {speed.shown} towards {bearing.shown} true, swinging included.")
    if len(places) > MOST_FIXES:
        sheet.note("Fixes that lie on one another are drawn once.")
