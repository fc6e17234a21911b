"""What stands beside a quantity: `about`, `at least`, `ish`, and whether `in` is an inch."""

import re

from anchorcalc.reader.mention import NO_FLAGS

_SAID_BEFORE = {
    "about": ("about", "around", "roughly", "approximately", "approx", "approx.", "circa", "ca", "say", "maybe", "perhaps", "probably", "some", "~"),
    "under": ("nearly", "almost", "under", "just under", "below", "barely"),
    "over": ("over", "just over", "above", "a good", "good", "well over"),
    "at_least": ("at least", "more than", "no less than", "minimum"),
    "at_most": ("at most", "less than", "up to", "no more than", "maximum", "max"),
    "another": ("another", "extra", "further", "additional"),
}
_FLAG = {word: frozenset({flag}) for flag, words in _SAID_BEFORE.items() for word in words}
_LAST_WORDS = frozenset(word.rsplit(" ", 1)[-1] for word in _FLAG)
_AFTER_BEGINS, _AFTER_GOES_ON = frozenset(" -+i"), frozenset(["", *"oimpteslxbu +.,;:)"])
_AFTER = re.compile(
    r"(?:-?ish\b| or so\b| odd\b|-odd\b)|( or more\b| plus\b|\+)|( or less\b| max\b| tops\b)|( more\b| extra\b)|( (?:below|under) (?:chart )?datum\b)"
)
_AFTERS = (frozenset({"about"}), frozenset({"at_least"}), frozenset({"at_most"}), frozenset({"another"}), frozenset({"below_datum"}))


def around(*, low: str, start: int, end: int) -> frozenset[str]:
    """Return the flags that the words just before and behind a span give it."""
    flags = NO_FLAGS
    words = low[max(0, start - 20) : start].split()
    if words and (words[-1] in _LAST_WORDS or words[-1][-1] == "~"):
        flags = _FLAG.get(" ".join(words[-2:]), NO_FLAGS) or _FLAG.get(words[-1], NO_FLAGS) or (_FLAG["~"] if words[-1][-1] == "~" else NO_FLAGS)
    after = _AFTER.match(low, end) if low[end : end + 1] in _AFTER_BEGINS and low[end + 1 : end + 2] in _AFTER_GOES_ON else None
    return flags | _AFTERS[after.lastindex or 0] if after else flags


_NOT_INCHES = re.compile(
    r"\s{1,3}(?:-?\d|[¼½¾]|(?:an?|the|my|our|your|his|her|its|their|this|that|these|those|it|which|what|each|every|all|total|some|only|just"
    r"|about|around|between|at|from|with|under \d|front|place|case|hand|here|there|one|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen"
    r"|twenty|mud|muddy|sand|sandy|clay|rocks?|rocky|gravel|weed|grass|soft|hard|good|bad|shallow|deep water|water|depths?|feet|met(?:er|re)s?"
    r"|fathoms|winds?|gusts|waves|calm|heavy|strong|fresh|light|gales?|conditions|north|south|east|west|winter|summer|january|february|march|april"
    r"|june|july|august|september|october|november|december|question|stock|number|fact|town|harbou?r|port|sight|tow|use|service|reserve|bed|need|store"
    r"|progress)\b)"
)
_A_NAME = re.compile(r" [A-Z][a-z]{2}")  # "in Hollow Haven"
_INCHES = re.compile(
    r"\s{1,3}(?:chain|line|rope|nylon|polyester|cable|g\d\d|shackles?|links?|thick|wide|long|diameter|dia|of|x|deep(?! water)|below|above"
    r"|under(?! \d))\b"
)


def is_preposition(*, cased: str, low: str, at: int, value: float, fraction: bool) -> bool:
    """Say whether the `in` behind a number and a space is no inch, from what follows it at `at`."""
    if _INCHES.match(low, at):
        return False
    if fraction and value < 4 and not re.match(r"\s{1,2}\d", low[at : at + 3]):
        return False
    return _NOT_INCHES.match(low, at) is not None or _A_NAME.match(cased, at) is not None
