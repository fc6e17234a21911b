"""The fleet in one picture: the scope of every boat at high water across, and the room she has left upwards."""

from typing import Any
from xml.sax.saxutils import escape

import numpy as np

WIDE, HIGH, LEFT, RIGHT, TOP, BOTTOM = 860, 560, 70, 20, 60, 56
SCOPES, ROOM = (2.0, 9.0), (-20.0, 60.0)
INK, PAPER, MOVE, VEER, LIE = "#1b2733", "#ffffff", "#a11d21", "#8a5a00", "#2f6f5e"
LABELLED = 10


def _x(scope: float) -> float:
    return LEFT + (np.clip(scope, *SCOPES) - SCOPES[0]) / (SCOPES[1] - SCOPES[0]) * (WIDE - LEFT - RIGHT)


def _y(room: float) -> float:
    return TOP + (ROOM[1] - np.clip(room, *ROOM)) / (ROOM[1] - ROOM[0]) * (HIGH - TOP - BOTTOM)


def picture(found: dict[str, Any], order: list[int], *, least_scope: float) -> str:
    """Return the picture as SVG; each kind of boat has a shape of its own, and the worst have their names."""
    shown = [row for row in order if found["do"][row] != "look"]
    parts = [*_frame(least_scope), *(_mark(found, row) for row in reversed(shown)), *_names(found, shown[:LABELLED])]
    counts = {do: int(np.sum(found["do"] == do)) for do in ("move", "veer", "lie", "look")}
    title = f"{counts['move']} must move (×), {counts['veer']} must veer (▲), {counts['lie']} lie well (●)"
    title += f"; {counts['look']} to look at are in the list only"
    head = f'<text x="{LEFT}" y="24" font-size="17" font-weight="bold">Tonight in the Ytterholm skerries</text>'
    head += f'<text x="{LEFT}" y="44">{escape(title)}</text>'
    opening = f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDE} {HIGH}" font-family="sans-serif" font-size="13" fill="{INK}" role="img">'
    return (
        "\n".join([opening, f"<title>{escape(title)}</title>", f'<rect width="{WIDE}" height="{HIGH}" fill="{PAPER}"/>', head, *parts, "</svg>"])
        + "\n"
    )


def _frame(least_scope: float) -> list[str]:
    """Return the axes, the ground where she touches, and the scope below which she must veer."""
    right, floor = WIDE - RIGHT, HIGH - BOTTOM
    parts = [
        f'<rect x="{LEFT}" y="{_y(0):.1f}" width="{right - LEFT}" height="{floor - _y(0):.1f}" fill="#f3dcd8"/>',
        f'<rect x="{LEFT}" y="{TOP}" width="{_x(least_scope) - LEFT:.1f}" height="{_y(0) - TOP:.1f}" fill="#f8ecd2"/>',
        f'<text x="{right - 8}" y="{floor - 10}" text-anchor="end">she may touch at low water</text>',
        f'<text x="{LEFT + 8}" y="{TOP + 18}">too little scope at high water</text>',
        f'<path d="M{LEFT} {TOP}V{floor}H{right}" fill="none" stroke="{INK}"/>',
        f'<text x="{(LEFT + right) / 2:.0f}" y="{HIGH - 12}" text-anchor="middle">scope at high water with the rode that is out</text>',
        f'<text transform="translate(18 {(TOP + floor) / 2:.0f}) rotate(-90)" text-anchor="middle">room left beyond the margin, m</text>',
    ]
    parts += [f'<text x="{_x(scope):.1f}" y="{floor + 18}" text-anchor="middle">{scope:.0f}:1</text>' for scope in np.arange(2, 10)]
    return parts + [f'<text x="{LEFT - 8}" y="{_y(room) + 4:.1f}" text-anchor="end">{room:.0f}</text>' for room in np.arange(-20, 61, 20)]


def _mark(found: dict[str, Any], row: int) -> str:
    x, y, do = _x(found["scope"][row]), _y(found["clearance"][row]), found["do"][row]
    if do == "move":
        return f'<path d="M{x - 5:.1f} {y - 5:.1f}l10 10m0 -10l-10 10" stroke="{MOVE}" stroke-width="2.4" fill="none"/>'
    if do == "veer":
        return f'<path d="M{x:.1f} {y - 6:.1f}l6 10h-12z" fill="{VEER}"/>'
    return f'<circle cx="{x:.1f}" cy="{y:.1f}" r="3.6" fill="{LIE}"/>'


def _names(found: dict[str, Any], rows: list[int]) -> list[str]:
    """Return the names of the worst; one that would lie on another is left out."""
    parts: list[str] = []
    placed: list[tuple[float, float]] = []
    for row in rows:
        x, y = _x(found["scope"][row]) + 9.0, _y(found["clearance"][row]) + 4.0
        if all(abs(y - other_y) > 13.0 or abs(x - other_x) > 130.0 for other_x, other_y in placed):
            placed.append((x, y))
            parts.append(f'<text x="{x:.1f}" y="{y:.1f}" font-size="12">{escape(found["boat"][row])}</text>')
    return parts
