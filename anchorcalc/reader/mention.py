"""What the reader finds in a text before it knows what anything stands for: a mention of a quantity, a number, a time or a place."""

from typing import Any, Self

from msgspec import Struct, structs

from anchorcalc.units.clock import Clock
from anchorcalc.units.kinds import Amount
from anchorcalc.units.position import Position

NO_FLAGS: frozenset[str] = frozenset()


class Part(Struct, frozen=True, gc=False):
    """A part of a text or what is made of it: quick to make and to look into, as there are many in every text."""

    def _replace(self, **changes: Any) -> Self:
        """Return the same with some changes."""
        return structs.replace(self, **changes)


class Mention(Part, frozen=True, gc=False):
    """One thing said in a text, at `start` to `end` (offsets in the text as it was given).

    kind
        `length`, `mass`, `speed`, `force`, `time`, `angle`, `power`, `area`: `amount` is an Amount of that kind. `number`: a bare number
        (unit ""). `ratio`: `7:1` (7), `1:20` (0.05). `clock`: `amount` is a Clock. `position`: `amount` is a Position.
        What no question takes, so that nothing else takes it either: `temperature`, `volume` (with an Amount), `money`, `percent`, `channel`,
        `date`, `ordinal`, `other` (rpm, volts …); their `amount` is None or a bare number.
    flags
        `range` (said as one: low and high differ), `alternative` (`4 or 5 m`), `beaufort`, `no_upper_end` (F12: `high` is infinite);
        `about`, `at_least`, `at_most`, `under`, `over` (what stands beside the number);
        `another` (a change, not a value), `below_datum` (a height of tide);
        `spelled` (in words), `fraction` (`3/8`), `article` (`a fathom`), `adjective` (`28-foot`, `40 footer`), `product` (`13.4 m x 7.2 m`, both);
        `shared_unit` (the unit stands at a neighbour in the list), `list` (see `group`), `ambiguous_unit` (`ton`, `KN`), `upper_m` (`5 M`);
        of bare numbers: `valued` (`rise three`, no count), `times` (`seven times the depth`, `7x`),
        `compound_word` (`three-strand`), `after_name` (behind a capitalised word:
        `Skarv 31`), `label` (`buoy 7`); of clock times: `twelve_hour` (`5 o'clock`).
    group
        Number of the list that it stands in (`10, 20 and 40 m`), or -1.
    """

    kind: str
    amount: Amount | Clock | Position | None
    start: int
    end: int
    text: str
    flags: frozenset[str] = NO_FLAGS
    group: int = -1


class Read(Part, frozen=True, gc=False):
    """A number found at a place, or a number with its unit: the makings of a mention."""

    value: float
    end: int
    flags: frozenset[str] = NO_FLAGS
