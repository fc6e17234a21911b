"""Invent the charter fleet of the Ytterholm skerries: `python examples/fleet/invent.py` writes boats.csv again, always the same.

No such boats, bays or skerries exist. The slips are those that sheets kept by many hands have: cells left blank, numbers without a unit,
decimal commas, two units in one column, a range, a slip of the decimal point, rode and depth the wrong way round, a remark where a number
should be.
"""

import csv
import random
from pathlib import Path

HERE = Path(__file__).parent
BAYS = ("Ytterholm", "Gråskjær sound", "Lågøy", "Tennholmen", "Kvalvika", "Storskarv", "Nordre Teistvåg", "Alkesund")
FIRST = ("Skarv", "Teist", "Alke", "Terne", "Lom", "Havelle", "Svartand", "Tjeld", "Rødstilk", "Havhest", "Lunde", "Storjo", "Ringgås", "Sandlo")
LAST = (
    "",
    " II",
    " III",
    " IV",
    " V",
    " av Lågøy",
    " av Ytterholm",
    " av Alkesund",
    " den eldre",
    " den yngre",
    " i nord",
    " i sør",
    " på skjæret",
    " av Kvalvika",
    " til Storskarv",
)
HEADINGS = (
    "boat", "bay", "boat_length", "depth [m]", "bow_height [m]", "rode_out [m]", "rode_aboard [m]", "tide_rise [m]", "tide_fall [m]",
    "distance [m]", "margin [m]", "remarks",
)  # fmt: skip
_RISE, _FALL = (1.4, 1.1, 1.6, 0.9, 1.2, 1.4, 1.0, 1.3), (0.6, 0.9, 0.3, 1.1, 0.8, 0.5, 0.9, 0.7)
TIDE = {bay: (rise, fall) for bay, rise, fall in zip(BAYS, _RISE, _FALL, strict=True)}


def boat(name: str, rng: random.Random) -> dict[str, str]:
    """Return one boat at anchor tonight."""
    bay = rng.choice(BAYS)
    length, depth, bow = rng.uniform(6.5, 14.0), rng.uniform(2.5, 14.0), rng.uniform(0.9, 1.8)
    rise, fall = TIDE[bay]
    rode = (depth + bow) * rng.triangular(3.5, 9.0, 6.5)
    numbers = {
        "depth [m]": depth, "bow_height [m]": bow, "rode_out [m]": rode, "rode_aboard [m]": max(rode, rng.choice((40.0, 60.0, 80.0))),
        "tide_rise [m]": rise, "tide_fall [m]": fall, "distance [m]": rode + length + rng.triangular(-4.0, 60.0, 18.0), "margin [m]": 5.0,
    }  # fmt: skip
    said = f"{length / 0.3048:.0f} ft" if rng.random() < 0.2 else f"{length:.1f} m"
    return {"boat": name, "bay": bay, "boat_length": said, **{heading: f"{number:.1f}" for heading, number in numbers.items()}, "remarks": ""}


def slips(rows: list[dict[str, str]], rng: random.Random) -> None:
    """Put the slips of real sheets in: one each into boats far apart."""
    depth, rode, bow, rise, length = "depth [m]", "rode_out [m]", "bow_height [m]", "tide_rise [m]", "boat_length"
    places = iter(rng.sample(range(len(rows)), 22))
    for heading, cell, remark in (
        (depth, "", "skipper ashore"), (depth, "", ""), (rode, "", "asked twice"), (length, "9", ""), (length, "31", ""), (length, "ten metres", ""),
        (depth, "65 m?", ""), (depth, "750", "sounder in dm?"), (bow, "12", "cm or m?"), (rode, "all of it", ""), (rise, "-1.2", ""),
        (depth, "4..6", "slopes"), (depth, "3.5 to 4", ""), (depth, "21 ft", ""), (rode, "120 ft", ""), (rode, "20 fathoms", "old line"),
        (bow, "", ""), (bow, "4 ft", ""), (length, " 8.2 m ", ""), (rise, "", "no table aboard"),
    ):  # fmt: skip
        row = rows[next(places)]
        row[heading], row["remarks"] = cell, remark
    for place in places:  # rode and depth the wrong way round
        rows[place][depth], rows[place][rode] = rows[place][rode], rows[place][depth]


def main() -> None:
    """Write boats.csv."""
    rng = random.Random(59314)
    names = [first + last for last in LAST for first in FIRST][:200]
    rows = [boat(name, rng) for name in names]
    slips(rows, rng)
    with (HERE / "boats.csv").open("w", encoding="utf-8", newline="") as file:
        writer = csv.DictWriter(file, HEADINGS)
        writer.writeheader()
        writer.writerows(rows)


if __name__ == "__main__":
    main()
