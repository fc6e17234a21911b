"""Who asks for another's boat: `my sister wants to know how much rope to put out; ours is in 30 ft, never mind us`."""

import re

from anchorcalc.reader.mention import Mention
from anchorcalc.reader.sentence import Token, without_figures
from anchorcalc.reader.words import STOPS

_US = r"(?:we|our|ours|mine|my|i|us|me|weare|iam)"
_NONE_OF_US = rf"(?=(?: (?!{_US} )[^ ]+){{6}})"  # `wants to know if our 30 m will do` is about ours
_FOR_THEM = re.compile(
    rf" (?:(?:he|she|they|(?!i |we |to |would |id )[a-z]+) (?:wants?|wanted|likes?|needs?) to know{_NONE_OF_US}"
    rf"|(?:he|she|they) (?:asks?|asked|wonders?)(?: (?:me|us))? (?:how|what|which|whether|if|where|when){_NONE_OF_US}"
    r"|(?:asks?|asked|wants?) (?:me|us) to (?:check|work out|reckon|find out|tell) (?:his|her|their|them|him|how)"
    r"|(?:scope|ratio|load|rode|length|size) (?:are|is|have|has|do|does|should|can) (?:they|he)"
    r"|(?:work out|reckon|find|figure out) (?:the )?[a-z]+ (?:that )?(?:his|their)"
    r"|never mind (?:us|me|ours))(?= )"
)
_ASKS = frozenset("wants wanted likes needs ask asks asked wonders they he never work reckon find figure".split())
_WE = frozenset("we our ours mine my i weare iam".split())
_THEY = frozenset("he she they his her their him them theirs".split())
_PEOPLE = frozenset("neighbour friend friends cousin buddy pal mate sister brother uncle dad father son daughter guests".split())


def asked_for_another(words: list[str]) -> bool:
    """Say whether a text asks for another's boat, not for ours."""
    return not _ASKS.isdisjoint(words) and _FOR_THEM.search(f" {' '.join(words)} ") is not None


def without_ours(tokens: list[Token], dropped: list[Mention]) -> list[Token]:
    """Leave out the figures that are told of us, where something is told of the other besides."""
    out, of_us = set(), False
    for at, token in enumerate(tokens):
        behind = tokens[at + 1].word if at + 1 < len(tokens) else ""
        if token.word in _WE and behind not in _PEOPLE:
            of_us = True
        elif token.word in STOPS or token.word in _THEY:
            of_us = False
        elif of_us and token.mention is not None:
            out.add(at)
    told = sum(token.mention is not None for token in tokens)
    return without_figures(tokens, out, dropped) if len(out) < told else tokens


__all__ = ["asked_for_another", "without_ours"]
