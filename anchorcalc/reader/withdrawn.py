"""Words that a text takes back for others: what was only thought, and what a `no, wait` puts right; and what it says not to be so."""

import re

_ONLY_THOUGHT = r"(?:thought|believed|assumed|supposed|figured|fancied|i said|i wrote|we said|took it)"
_TURNS = r"(?:but|though|it turns|it turned|turns|turned|in fact|actually|in truth|manual|stamp)"
_NO = r"(?:no|sorry|wait|correction|i mean|nope|oops|rather|scratch that|strike that)"
_SIGN = r"(?:[,.;:?!–-] )?"


def without_withdrawn(line: str, nouns: str) -> str:
    """Return a line of words without one of some nouns (a pattern) that is taken back for another, or said not to be."""
    thought = rf" {_ONLY_THOUGHT}(?: [a-z]+){{0,6}}? (?:{nouns})(?= (?:[a-z]+ ){{0,3}}{_SIGN}(?:and )?{_TURNS} )"
    put_right = rf" (?:from|at|on|to|below|under|by|with)(?: the)? (?:{nouns}) {_SIGN}(?={_NO} [^.?!]*(?:{nouns}))"
    denied = rf" (?:dont|not|doesnt|arent|isnt|never)(?: [a-z]+){{0,2}} (?:from|at|on|with)(?: the)? (?:{nouns})(?= )"
    return re.sub(f"{thought}|{put_right}|{denied}", " ", line)


def only_thought(before: list[str], between: list[str]) -> bool:
    """Say whether a word was only thought to be so where another follows: `I thought it was sand, it turned out to be clay`."""
    return bool(_THOUGHT & set(before)) and bool(_FOUND & set(between))


_THOUGHT = frozenset("thought believed assumed supposed figured fancied".split())
_FOUND = frozenset("but turned turns actually says fact found really it".split())

__all__ = ["only_thought", "without_withdrawn"]
