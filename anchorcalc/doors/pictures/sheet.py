"""A sheet of chart paper to draw on: SVG text by plain code, with a key of lettered diamonds as charts have for their streams.

Everything is written as presentation attributes (no style element or attribute, no script, no reference to anything outside), so a
strict content policy lets it through. The paper is part of the picture, so it reads alike on a light and a dark page. What is drawn is
hidden from screen readers (unless it is `spoken`, such as a table); they read the headline, the key and the notes, in that order.
"""

import re
from collections.abc import Iterable
from html import escape

WIDTH, MARGIN = 340.0, 14.0
LEFT, RIGHT = MARGIN, WIDTH - MARGIN
INK, PAPER = "#16222e", "#fbf7ec"
WATER, DEEP, SAND, SAND_LINE = "#d3e5ee", "#1d5a7d", "#ecdcb0", "#6b5314"
ROPE, CHAIN, DANGER, BLUSH, CALM = "#7a3a06", "#16222e", "#8f1450", "#f3cfdc", "#e4eff5"
TEXT_SIZE, HEAD_SIZE, LEAST_SIZE = 13.0, 14.5, 12.0
_WIDE, _WIDE_BOLD = 0.53, 0.58  # width of a letter over its size, generous: wrapping must not run over the edge in a wide face
_NUMBER, _JOINED = re.compile(r"(?<=\d) (?=[a-zA-Z])"), "\u00a0"
_BADGE, _APART = 9.5, 20.0
_AROUND = ((0, -1), (1, -1), (-1, -1), (1, 0), (-1, 0), (0, 1), (1, 1), (-1, 1))

Point = tuple[float, float]


def num(value: float) -> str:
    """Return a coordinate to a tenth, as short as it can be written."""
    text = f"{value:.1f}".removesuffix(".0")
    return "0" if text == "-0" else text


def wrapped(text: str, *, size: float, width: float, bold: bool = False) -> list[str]:
    """Return a text as lines that fit a width; a number stays with its unit, and a word longer than a line is cut."""
    most = max(int(width / (size * (_WIDE_BOLD if bold else _WIDE))), 1)
    lines: list[str] = []
    for word in _NUMBER.sub(_JOINED, text).split(" "):
        rest = word
        if lines and len(lines[-1]) + 1 + len(rest) <= most:
            lines[-1] += " " + rest
            continue
        while len(rest) > most:
            lines.append(rest[:most])
            rest = rest[most:]
        lines.append(rest)
    return [line.replace(_JOINED, " ") for line in lines]


def _attributes(*, fill: str, stroke: str, width: float, dash: str) -> str:
    made = f' fill="{fill}"' if fill else ' fill="none"'
    if stroke:
        made += f' stroke="{stroke}" stroke-width="{num(width)}"'
    return made + (f' stroke-dasharray="{dash}"' if dash else "")


class Sheet:
    """A picture in the making: open it, draw on it, mark things with letters, then take `svg()`."""

    def __init__(self, *, headline: str, about: str, spoken: bool = False) -> None:
        self._headline, self._about, self._spoken = headline, about, spoken
        self._head = wrapped(headline, size=HEAD_SIZE, width=RIGHT - LEFT, bold=True)
        self._drawn: list[str] = []
        self._over: list[str] = []
        self._keys: list[tuple[str, str]] = []
        self._notes: list[str] = []
        self._badges: list[Point] = []
        self.foot = 0.0  # a strip at the bottom of the field that letters keep out of
        self.top = MARGIN + len(self._head) * (HEAD_SIZE + 4.0) + 4.0
        self.bottom = self.top

    def open(self, *, height: float, ground: str = PAPER) -> None:
        """Lay out the field to draw in."""
        self.bottom = self.top + height
        self.box(LEFT, self.top, RIGHT, self.bottom, fill=ground)

    # --- shapes ---

    def box(self, x: float, y: float, to_x: float, to_y: float, *, fill: str = "", stroke: str = "", width: float = 1.0, dash: str = "") -> None:
        """Draw a rectangle between two corners."""
        size = f'width="{num(max(to_x - x, 0.0))}" height="{num(max(to_y - y, 0.0))}"'
        self._drawn.append(f'<rect x="{num(x)}" y="{num(y)}" {size}{_attributes(fill=fill, stroke=stroke, width=width, dash=dash)}/>')

    def line(self, x: float, y: float, to_x: float, to_y: float, *, stroke: str = INK, width: float = 1.0, dash: str = "") -> None:
        """Draw a straight line."""
        self.path(f"M{num(x)} {num(y)}L{num(to_x)} {num(to_y)}", stroke=stroke, width=width, dash=dash)

    def run(self, points: Iterable[Point], *, stroke: str = INK, width: float = 1.0, dash: str = "", fill: str = "", closed: bool = False) -> None:
        """Draw a line through points, or the area within it."""
        self.path("M" + "L".join(f"{num(x)} {num(y)}" for x, y in points) + ("Z" if closed else ""), stroke=stroke, width=width, dash=dash, fill=fill)

    def path(self, path: str, *, stroke: str = "", width: float = 1.0, dash: str = "", fill: str = "") -> None:
        """Draw a path."""
        self._drawn.append(f'<path d="{path}"{_attributes(fill=fill, stroke=stroke, width=width, dash=dash)}/>')

    def circle(self, x: float, y: float, radius: float, *, fill: str = "", stroke: str = "", width: float = 1.0, dash: str = "") -> None:
        """Draw a circle."""
        how = _attributes(fill=fill, stroke=stroke, width=width, dash=dash)
        self._drawn.append(f'<circle cx="{num(x)}" cy="{num(y)}" r="{num(radius)}"{how}/>')

    def arrow(
        self, x: float, y: float, to_x: float, to_y: float, *, stroke: str = INK, width: float = 2.0, both: bool = False, dash: str = ""
    ) -> None:
        """Draw an arrow; one too short for its head is a line."""
        length = ((to_x - x) ** 2 + (to_y - y) ** 2) ** 0.5
        self.line(x, y, to_x, to_y, stroke=stroke, width=width, dash=dash)
        if length < 6.0:
            return
        along_x, along_y, head = (to_x - x) / length, (to_y - y) / length, min(3.0 + 2.0 * width, length / 2.0)
        for tip_x, tip_y, way in ((to_x, to_y, -head), (x, y, head))[: 2 if both else 1]:
            back_x, back_y, side = tip_x + way * along_x, tip_y + way * along_y, 0.45 * head
            sides = ((tip_x, tip_y), (back_x - side * along_y, back_y + side * along_x), (back_x + side * along_y, back_y - side * along_x))
            self.run(sides, stroke="", fill=stroke, closed=True)

    def text(self, x: float, y: float, text: str, *, anchor: str = "start", fill: str = INK, bold: bool = False, paper: bool = False) -> None:
        """Write a word in the picture, on a slip of paper where lines may run behind it."""
        size = LEAST_SIZE
        if paper:
            wide = 0.62 * size * len(text) + 2.0
            self._over.append(f'<path d="M{num(x - 1.0)} {num(y - size)}h{num(wide)}v{num(size + 3.0)}h{num(-wide)}Z" fill="{PAPER}"/>')
        how = ("" if anchor == "start" else f' text-anchor="{anchor}"') + (' font-weight="700"' if bold else "")
        self._over.append(f'<text x="{num(x)}" y="{num(y)}" font-size="{num(size)}" fill="{fill}"{how}>{escape(text)}</text>')

    # --- the key ---

    def mark(self, x: float, y: float, text: str, *, toward: Point = (0, -1)) -> None:
        """Letter a thing in the picture, and say in the key what it is."""
        letter = chr(ord("A") + len(self._badges))
        at_x, at_y = self._free_place(x, y, toward)
        self._badges.append((at_x, at_y))
        self._keys.append((letter, text))
        self._over.append(f'<path d="M{num(x)} {num(y)}L{num(at_x)} {num(at_y)}" stroke="{INK}" stroke-width="0.8"/>')
        self._over.append(f'<circle cx="{num(x)}" cy="{num(y)}" r="1.6" fill="{INK}"/>{_diamond(at_x, at_y, letter)}')

    def note(self, text: str) -> None:
        """Add a line below the key."""
        self._notes.append(text)

    def _free_place(self, x: float, y: float, toward: Point) -> Point:
        """Return where a badge has room, near what it marks."""
        ways = sorted(_AROUND, key=lambda way: -(way[0] * toward[0] + way[1] * toward[1]) / (way[0] ** 2 + way[1] ** 2) ** 0.5)
        for off in (17.0, 25.0, 34.0, 44.0, 56.0, 70.0, 90.0):
            for way in ways:
                at = (x + off * way[0], y + off * way[1])
                if self._within(at) and all((at[0] - one[0]) ** 2 + (at[1] - one[1]) ** 2 >= _APART**2 for one in self._badges):
                    return at
        return min(max(x, LEFT + _BADGE), RIGHT - _BADGE), min(max(y, self.top + _BADGE), self.bottom - _BADGE)

    def _within(self, at: Point) -> bool:
        return LEFT + _BADGE <= at[0] <= RIGHT - _BADGE and self.top + _BADGE <= at[1] <= self.bottom - self.foot - _BADGE

    # --- the whole ---

    def _written(self) -> tuple[list[str], float]:
        """Return headline and key as SVG, and how far down they reach."""
        texts = []
        for row, line in enumerate(self._head):
            at = MARGIN + HEAD_SIZE + row * (HEAD_SIZE + 4.0) - 2.0
            texts.append(f'<text x="{num(LEFT)}" y="{num(at)}" font-size="{num(HEAD_SIZE)}" font-weight="700">{escape(line)}</text>')
        down = self.bottom + 8.0
        for letter, text in (*self._keys, *(("", note) for note in self._notes)):
            indent = 24.0 if letter else 0.0
            if letter:
                texts.append(f'<g aria-hidden="true">{_diamond(LEFT + _BADGE, down + 8.0, letter)}</g>')
            for line in wrapped(text, size=TEXT_SIZE, width=RIGHT - LEFT - indent):
                texts.append(f'<text x="{num(LEFT + indent)}" y="{num(down + 12.5)}">{escape(line)}</text>')
                down += TEXT_SIZE + 4.0
            down += 4.5
        return texts, down

    def svg(self) -> str:
        """Return the picture as SVG text."""
        texts, down = self._written()
        height = down + MARGIN - 6.0
        head, hidden = len(self._head), ' aria-hidden="true"'
        return (
            f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {num(WIDTH)} {num(height)}" width="{num(2 * WIDTH)}" height="{num(2 * height)}" '
            f'role="graphics-document" font-family="system-ui, sans-serif" font-size="{num(TEXT_SIZE)}" fill="{INK}">'
            f"<title>{escape(self._headline)}</title><desc>{escape(self._about)}</desc>"
            f'<rect width="{num(WIDTH)}" height="{num(height)}" fill="{PAPER}"/>{"".join(texts[:head])}'
            f"<g{'' if self._spoken else hidden}>{''.join(self._drawn)}"
            f'<rect x="{num(LEFT)}" y="{num(self.top)}" width="{num(RIGHT - LEFT)}" height="{num(self.bottom - self.top)}" fill="none" '
            f'stroke="{INK}"/>{"".join(self._over)}</g>{"".join(texts[head:])}</svg>'
        )


def _diamond(x: float, y: float, letter: str) -> str:
    """Return a lettered diamond, as the stream diamonds of a chart."""
    shape = f"M{num(x)} {num(y - _BADGE)}l{num(_BADGE)} {num(_BADGE)}l{num(-_BADGE)} {num(_BADGE)}l{num(-_BADGE)} {num(-_BADGE)}Z"
    return (
        f'<path d="{shape}" fill="{PAPER}" stroke="{DANGER}" stroke-width="1.3"/>'
        f'<text x="{num(x)}" y="{num(y + 4.2)}" text-anchor="middle" font-size="{num(LEAST_SIZE)}" font-weight="700" fill="{DANGER}">{letter}</text>'
    )
