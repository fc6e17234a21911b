"""What stands beside a quantity: `about`, `at least`, `ish`, and whether `in` is an inch."""

import re

from anchorcalc.reader.mention import NO_FLAGS

_BEFORE = {
    "about": "about", "around": "about", "roughly": "about", "approximately": "about", "approx": "about", "approx.": "about", "circa": "about", "ca": "about",
    "say": "about", "maybe": "about", "perhaps": "about", "probably": "about", "somewhere around": "about", "some": "about", "~": "about",
    "nearly": "under", "almost": "under", "under": "under", "just under": "under", "below": "under", "less than": "at_most", "barely": "under",
    "over": "over", "just over": "over", "above": "over", "more than": "at_least", "a good": "over", "good": "over", "well over": "over",
    "at least": "at_least", "no less than": "at_least", "minimum": "at_least", "at most": "at_most", "up to": "at_most", "no more than": "at_most",
    "maximum": "at_most", "max": "at_most", "another": "another", "extra": "another", "further": "another", "additional": "another",
}
_FLAG = {word: frozenset({flag}) for word, flag in _BEFORE.items()}
_AFTER = re.compile(r"(?:-?ish\b| or so\b| odd\b|-odd\b)|( or more\b| plus\b|\+)|( or less\b| max\b| tops\b)|( more\b| extra\b)")
_AFTERS = (frozenset({"about"}), frozenset({"at_least"}), frozenset({"at_most"}), frozenset({"another"}))


def around(*, low: str, start: int, end: int) -> frozenset[str]:
    """Return the flags that the words just before and behind a span give it."""
    words = low[max(0, start - 20) : start].split()
    flags = NO_FLAGS
    if words:
        flags = _FLAG.get(" ".join(words[-2:]), NO_FLAGS) or _FLAG.get(words[-1], NO_FLAGS)
        if not flags and words[-1][-1] == "~":
            flags = _FLAG["~"]
    after = _AFTER.match(low, end) if low[end : end + 1] in " -+i" else None
    return flags | _AFTERS[after.lastindex or 0] if after else flags


_NOT_INCHES = re.compile(
    r"\s{1,3}(?:-?\d|[¼½¾]|(?:an?|the|my|our|your|his|her|its|their|this|that|these|those|all|total|front|mud|sand|sandy|muddy|clay|rocks?|rocky|gravel|weed|grass|"
    r"winds?|gusts|waves|calm|place|case|hand|it|which|shallow|deep water|about|around|some|only|just|under \d|heavy|strong|gales?|soft|hard|good|bad|north|south|east|west|one|two|"
    r"three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty|water|here|there|january|february|march|april|june|july|august|september|october|november|december|"
    r"depths?|feet|met(?:er|re)s?|fathoms|between|at|each|every|what|conditions|fresh|light|from|with|winter|summer|total)\b)"
)
_INCHES = re.compile(r"\s{1,3}(?:chain|line|rope|nylon|shackles?|links?|thick|wide|long|diameter|dia|of|x|deep(?! water)|below|above|under(?! \d)|g\d\d|polyester|cable)\b")


def is_preposition(*, low: str, at: int, value: float, fraction: bool) -> bool:
    """Say whether the `in` behind a number and a space is no inch, from what follows it at `at`."""
    if _INCHES.match(low, at):
        return False
    if fraction and value < 4 and not re.match(r"\s{1,2}\d", low[at : at + 3]):
        return False
    return _NOT_INCHES.match(low, at) is not None
