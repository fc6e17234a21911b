"""Which boats of a charter fleet must move or veer tonight, worst first: `python examples/fleet/tonight.py`.

Reads boats.csv, asks three questions of every row, and writes the list (tonight.md) and the picture (tonight.svg):

1. scope_now: is the scope at high water at least 5:1? If not, more rode must go out.
2. rode_to_let_out at that least scope: how much, and is there as much aboard?
3. swing_clearance at low water, with the rode that is out or the rode that must be: does she swing clear?

A boat that cannot be judged is not well: somebody must go and look.
"""

import csv
import sys
from pathlib import Path
from typing import Any

import numpy as np
from picture import picture

from anchorcalc import check_table

HERE = Path(__file__).parent
LEAST_SCOPE = 5.0
ORDER = ("move", "look", "veer", "lie")
MEANING = {
    "move": "touches where she lies, or would with the rode she needs, or has not that rode aboard",
    "look": "cannot be judged by what the sheet says: go and look",
    "veer": "needs more rode at high water, and has room for it",
    "lie": "has scope and room",
}


def read(path: Path) -> dict[str, Any]:
    """Return the columns of a CSV file."""
    with path.open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    return {heading: [row[heading] for row in rows] for heading in rows[0]}


def judged(fleet: dict[str, Any]) -> dict[str, Any]:
    """Return the fleet with what must be done, by how much, and why a boat could not be judged."""
    now = check_table("scope_now", fleet)
    wanted = check_table("rode_to_let_out", {**fleet, "scope": np.full(len(fleet["boat"]), LEAST_SCOPE)})
    needs_more = now["scope_at_high_water"] < LEAST_SCOPE
    rode = np.where(needs_more, wanted["rode_out_answer [m]"], np.nan)
    after = [f"{more}" if short else said for said, more, short in zip(fleet["rode_out [m]"], rode, needs_more, strict=True)]
    swing = check_table("swing_clearance", {**fleet, "rode_out [m]": after})
    no_tide = ["no tide was given" if "no_tide" in codes.split() else "" for codes in now["cautions"]]
    problem = [next(filter(None, one), "") for one in zip(now["problem"], wanted["problem"], swing["problem"], no_tide, strict=True)]
    short_aboard = np.array([enough is False or enough is None for enough in wanted["enough"]])
    must_move = (swing["clearance [m]"] < 0.0) | (needs_more & short_aboard)
    do = np.where([bool(one) for one in problem], "look", np.where(must_move, "move", np.where(needs_more, "veer", "lie")))
    return {
        "boat": fleet["boat"], "bay": fleet["bay"], "do": do, "scope": now["scope_at_high_water"], "rode": rode,
        "clearance": swing["clearance [m]"], "problem": problem,
    }  # fmt: skip


def worst_first(found: dict[str, Any]) -> list[int]:
    """Return the rows, worst first: by what must be done, then by the room that is left, or the scope there is."""

    def badness(row: int) -> tuple[int, float]:
        by = found["scope"] if found["do"][row] == "veer" else found["clearance"]
        return ORDER.index(found["do"][row]), float(np.nan_to_num(by[row], nan=-np.inf))

    return sorted(range(len(found["boat"])), key=badness)


def report(found: dict[str, Any], order: list[int]) -> str:
    """Return the list as Markdown: every boat that is not to lie as she is."""
    count = {do: int(np.sum(found["do"] == do)) for do in ORDER}
    lines = ["# Tonight in the Ytterholm skerries", "", *(f"- **{do}** ({count[do]}): {MEANING[do]}." for do in ORDER), ""]
    lines += ["| boat | bay | do | clearance | scope at high water | rode | why |", "| --- | --- | --- | ---: | ---: | ---: | --- |"]
    for row in order:
        if found["do"][row] != "lie":
            rode = found["rode"][row]
            to = f"to {np.ceil(rode * 2) / 2:.1f} m" if np.isfinite(rode) else ""
            numbers = (_number(found["clearance"][row], " m"), _number(found["scope"][row], ":1"), to)
            why = found["problem"][row].replace("|", "/")
            lines.append(f"| {found['boat'][row]} | {found['bay'][row]} | {found['do'][row]} | {' | '.join(numbers)} | {why} |")
    return "\n".join(lines) + "\n"


def _number(value: float, unit: str) -> str:
    """Return a number a tenth to the safe side, down; blank where there is none."""
    return f"{np.floor(value * 10 + 1e-9) / 10:.1f}{unit}" if np.isfinite(value) else ""


def main(folder: Path = HERE) -> None:
    """Write the list and the picture into a folder, and print how many of each there are."""
    found = judged(read(HERE / "boats.csv"))
    order = worst_first(found)
    (folder / "tonight.md").write_text(report(found, order), encoding="utf-8")
    (folder / "tonight.svg").write_text(picture(found, order, least_scope=LEAST_SCOPE), encoding="utf-8")
    print(", ".join(f"{do} {int(np.sum(found['do'] == do))}" for do in ORDER))


if __name__ == "__main__":
    main(Path(sys.argv[1]) if len(sys.argv) > 1 else HERE)
