"""The state of one pass through a text, and how a mention is added to what was found."""

from anchorcalc.reader.context import around
from anchorcalc.reader.mention import NO_FLAGS, Mention
from anchorcalc.units.kinds import Amount
from anchorcalc.units.numbers import plain

_SMALL = {code: code + 32 for code in range(65, 91)}


class Scan:
    """One pass through a text: the text, the same in plain signs and in small letters (sign for sign), and what was found so far."""

    def __init__(self, text: str) -> None:
        self.text, self.cased = text, plain(text)
        self.low = self.cased.lower() if text.isascii() else self.cased.translate(_SMALL)
        self.found: list[Mention] = []
        self.by = -1  # where the second side of a product begins
        self.groups, self.tried = 0, 0  # lists found; how far a list was looked for in vain
        self.quoted = '"' in self.low
        self.quotes, self.counted = 0, 0  # quotation marks so far that were no inches

    @property
    def last_end(self) -> int:
        """Where the last mention ends."""
        return self.found[-1].end if self.found else 0

    def add(self, *, kind: str, amount: Amount | None, at: int, end: int, flags: frozenset[str] = NO_FLAGS) -> int:
        """Add a mention with the flags that its neighbours give it, and return where it ends."""
        self.found.append(Mention(kind, amount, at, end, self.text[at:end], flags | around(low=self.low, start=at, end=end)))
        return end

    def open_quote(self, at: int) -> bool:
        """Say whether a quotation mark at a place closes one that was opened before."""
        self.quotes += self.low.count('"', self.counted, at)
        self.counted = at
        return self.quotes % 2 == 1

    def inches_taken(self, *, at: int, end: int) -> None:
        """Pass over the marks of inches that were taken."""
        if self.counted < at:
            self.open_quote(at)
        self.counted = max(self.counted, end)

    def signed(self, *, at: int, value: float) -> tuple[int, float]:
        """Return the place and value with a minus sign before it, where that is no hyphen."""
        low = self.low
        if at and low[at - 1] == "-" and (at == 1 or low[at - 2] in " (=:\n\t,\xa0"):
            return at - 1, -value
        if low.endswith(("minus ", "negative "), 0, at) and not low.endswith("plus or minus ", 0, at):
            return at - (6 if low.endswith("minus ", 0, at) else 9), -value
        return at, value


def plain_amount(*, kind: str, low: float, high: float | None = None) -> Amount:
    """Return an amount without a unit, of one number or from one to another."""
    top = low if high is None else high
    return Amount(kind, low, top, "", low, top)
