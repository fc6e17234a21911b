"""Regular expressions that are looked for only in a text that holds one of the words they cannot do without: most hold none."""

import re
from collections.abc import Iterable, Set

from anchorcalc.reader.mention import Part


class Sought(Part, frozen=True, gc=False):
    """A regular expression and words, one of which stands in whatever it finds."""

    regex: re.Pattern[str]
    needs: frozenset[str]

    def perhaps(self, words: Set[str]) -> bool:
        """Say whether a text of these words may hold what is sought."""
        return not self.needs.isdisjoint(words)

    def within(self, line: str, words: Set[str]) -> Iterable[re.Match[str]]:
        """Return all that is found in a line of these words."""
        return () if self.needs.isdisjoint(words) else self.regex.finditer(line)

    def search(self, line: str, words: Set[str]) -> re.Match[str] | None:
        """Return the first that is found in a line of these words."""
        return None if self.needs.isdisjoint(words) else self.regex.search(line)


def sought(regex: re.Pattern[str], needs: str) -> Sought:
    """Return a regular expression with the words, one of which it cannot do without."""
    return Sought(regex, frozenset(needs.split()))


__all__ = ["Sought", "sought"]
