"""The vocabulary: every term of every question, declared once."""

from anchorcalc.vocabulary import anchor, boat, place, rode, water, weather
from anchorcalc.vocabulary.term import Term

TERMS: dict[str, Term] = {term.name: term for module in (water, rode, boat, weather, anchor, place) for term in module.TERMS}


def term(name: str) -> Term:
    """Return the term of that name."""
    return TERMS[name]
