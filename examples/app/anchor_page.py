"""The anchor page of a small boating app, without a screen: it follows the instruments and says what a skipper must do.

`python examples/app/anchor_page.py` reads night.nmea line by line, as it would come from the instruments, and prints a line whenever
something changes: what the scope is worth, when to veer, and whether she drags. What it says is what the library answers; the app adds no
arithmetic of its own.
"""

import sys
from collections import deque
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Any

import pynmea2

import anchorcalc

HERE = Path(__file__).parent
FIX_EVERY = 5  # minutes; the watch looks at the last two hours


class AnchorPage:
    """What the page knows, and the three lines it shows."""

    def __init__(self, *, boat: dict[str, Any], stay: dict[str, Any]) -> None:
        self.known = {**boat, **stay}  # a boat and a stay are both sets of the same names
        self.fixes: deque[dict[str, str]] = deque(maxlen=24)
        self.depth: anchorcalc.Quantity | None = None
        self.wind = 0.0
        self.now = ""
        self.shown: dict[str, str] = {}

    def hear(self, line: str) -> Iterator[str]:
        """Take one line of the log, and yield what has changed on the page."""
        if line.startswith("#"):
            name, _, value = line[1:].partition("=")
            self.known[name.strip()] = value.strip()
            yield f"{self.now} the skipper: {name.strip()} {value.strip()}"
            return
        said = pynmea2.parse(line)
        if said.sentence_type == "DPT":
            below, offset = {"value": float(said.depth), "unit": "m"}, {"value": float(said.offset), "unit": "m"}
            self.depth = anchorcalc.true_depth(reading=below, reads_from="transducer", transducer_depth=offset).results.depth
        elif said.sentence_type == "MWV":
            self.wind = max(self.wind, float(said.wind_speed))
        elif said.sentence_type == "RMC" and said.status == "A" and said.timestamp.minute % FIX_EVERY == 0:
            self.now = f"{said.datetime:%Y-%m-%dT%H:%M}Z"
            self.fixes.append({"at": self.now, "position": f"{said.latitude:.7f}, {said.longitude:.7f}"})
            yield from self.changes()

    def changes(self) -> Iterator[str]:
        """Yield the lines of the page whose state is no longer what it was."""
        for name, state, text in self.page():
            if self.shown.get(name) != state:
                self.shown[name] = state
                yield f"{self.now} {name}: {text}"

    def page(self) -> Iterator[tuple[str, str, str]]:
        """Yield each line of the page as it stands now: its name, its state and its text."""
        if self.depth is None:
            return
        veer = anchorcalc.when_to_veer(boat=self.known, depth=self.depth, at=self.now, **self._of_stay("rode_out", *TIDE))
        rise = veer.results.tide_rise
        scope = anchorcalc.scope_now(boat=self.known, depth=self.depth, tide_rise=rise, **self._of_stay("rode_out"))
        watch = anchorcalc.drag_check(
            boat=self.known, depth=self.depth, fixes=list(self.fixes), **self._of_stay("rode_out", "anchor_at", "boat_length")
        )
        load = anchorcalc.wind_load(boat=self.known, wind={"value": self.wind, "unit": "kn"}, **self._of_stay("boat_length")).results.load_standard
        yield "scope", scope.results.verdict, scope.headline
        yield "veer", veer.results.veer, veer.headline
        yield "watch", str(watch.results.dragging), watch.headline
        yield "load", f"{load.to('kN') // 2}", f"up to {load.shown} to reckon with in the strongest wind so far"

    def _of_stay(self, *names: str) -> dict[str, Any]:
        return {name: self.known[name] for name in names}


TIDE = ("low_height", "low_at", "high_height", "high_at")


def follow(lines: Iterable[str], *, boat: Path, stay: Path) -> Iterator[str]:
    """Yield what the page says over a log."""
    page = AnchorPage(boat=anchorcalc.load_boat(boat), stay=anchorcalc.load_boat(stay))
    for line in lines:
        yield from page.hear(line.strip())
    yield f"{page.now} end of the log, {len(page.fixes)} fixes watched"


def main() -> int:
    """Read the log to its end."""
    with (HERE / "night.nmea").open(encoding="ascii") as log:
        for said in follow(log, boat=HERE.parent / "skarv.toml", stay=HERE / "stay.toml"):
            print(said)
    return 0


if __name__ == "__main__":
    sys.exit(main())
