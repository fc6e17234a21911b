"""What a term is: one name, used unchanged as keyword, JSON key, query parameter, column and flag."""

import msgspec

from anchorcalc.errors import Fault, fault
from anchorcalc.units.kinds import Kind


class Term(msgspec.Struct, frozen=True, kw_only=True, cache_hash=True):
    """All that any door needs to know of a name.

    `least` and `most` are the bounds in SI, both included (`above` excludes its own value); `why` is the reason for them. `usual` is
    the value that counts when none is given, in SI or as a word, and `assumed` is what the answer then says. `choices` are the
    words that will do, each with what people say for it. `nouns` are what sailors call the thing in plain words, most specific first.
    """

    name: str
    kind: Kind
    meaning: str
    prompt: str
    example: str | float | bool
    least: float | None = None
    above: float | None = None
    most: float | None = None
    why: str = ""
    usual: float | str | None = None
    assumed: str = ""
    caution: str = ""
    choices: tuple[str, ...] = ()
    said_as: tuple[tuple[str, tuple[str, ...]], ...] = ()
    nouns: tuple[str, ...] = ()

    def code(self, word: str) -> int:
        """Return the number by which `solve` knows a word."""
        return self.choices.index(word)

    def out_of_bounds(self, *, value: float) -> str:
        """Return why a value in SI lies outside the bounds, or an empty text."""
        if self.above is not None and value <= self.above:
            return f"must be more than {self.above:g}{self._unit}"
        if self.least is not None and value < self.least:
            return f"must be {self.least:g}{self._unit} or more"
        if self.most is not None and value > self.most:
            return f"must be {self.most:g}{self._unit} or less ({self.why})"
        return ""

    @property
    def _unit(self) -> str:
        return f" {self.kind.si}" if self.kind.si else ""

    @property
    def would_do(self) -> str:
        """Return what would do for this term, in words."""
        if self.choices:
            return "one of " + ", ".join(self.choices)
        return f'"{self.example}"' if isinstance(self.example, str) else f"{self.example}".lower()

    def missing(self) -> Fault:
        """Return the fault of a term that must be given and was not."""
        return fault(self.name, "missing", None, f"is missing ({self.meaning})", self.would_do)
