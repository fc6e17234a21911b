"""A unit that is said once for all figures: `metres for everything`, `in feet: …`, `…, all ft`, `…, m.`."""

import re

from anchorcalc.units.numbers import plain

_UNIT = r"(?P<unit>met(?:re|er)s?|feet|foot|ft|fathoms?|m)"
_MARK = r"(?:\A|[.,;:!?()\n–/-] ?|\b(?:pls|please|table|list|everything|all|it) )"
_ENDS = r" ?(?=[.,;:!?()\n–/]|\Z)"
_SAID = tuple(
    re.compile(one)
    for one in (
        rf"{_MARK}(?:(?:all |everything )?in |units?:? ?(?:are |is |in )?|work(?:ing)? in |(?:figures|lengths) (?:are )?in )?{_UNIT} ?:(?!\d)",
        rf"\b(?:all|everything|all figures|units?|all of (?:it|them|those)|all lengths|all numbers|figures|lengths|units|numbers)"
        rf"(?: (?:figures|lengths|numbers|measures|of it|of them|here|is|are|being|given))*(?: in|:)?,? {_UNIT}{_ENDS}",
        rf"\b{_UNIT},? (?:for (?:everything|all|the lot|every one)|throughout|all (?:round|through|the way|along)|everywhere|each time"
        r"|of course|that is|i mean|by the way|as always|as ever|obviously|naturally|for the lot)\b",
        rf"\bunits? ?[=:] ?{_UNIT}\b",
        r"\b(?:deep|out|up|high|long|bow|depth|rise) (?P<unit>met(?:re|er)s|feet|fathoms)\b(?! of)",
        rf"[,;(/–] ?(?:all |all in |both |both in |in |units |unit )?{_UNIT}(?: all| both| please| pls| too)?(?: ?\))?{_ENDS}",
    )
)
_METRIC = re.compile(r"(?:\b(?:figures|units|all|everything|lengths),? (?:are )?(?:in )?|[(,;] ?)metric(?= ?[),.;:!?]|\Z)")
_ANY = re.compile(r"\bmetric\b|(?<![\w'])(?<!\d[ -])(?:m(?:et(?:re|er)s?)?|feet|foot|ft|fathoms?)(?!\w)", re.IGNORECASE)
_OF_THE_ANSWER = re.compile(r"\b(?:how (?:much|many|far|long|deep)|answer|result|reply|tell me|give me)\b(?:[^.;:!?]|:(?=\d))*\Z")


def said_for_all(text: str) -> str | None:
    """Return the unit of length that a text says once for all its figures, or None; a unit of the answer that is wanted is none."""
    if not _ANY.search(text):
        return None
    low = plain(text).lower()
    for one in _SAID:
        for found in one.finditer(low):
            before = low[: found.start("unit")].rstrip()
            if before[-1:].isdigit() or _OF_THE_ANSWER.search(low, 0, found.start("unit")):
                continue
            word = found["unit"]
            return "fathom" if word.startswith("fa") else "ft" if word.startswith("f") else "m"
    return "m" if _METRIC.search(low) else None


_IN_FATHOMS = re.compile(r"\bhow many fathoms?\b(?! (?:deep|long|down|up|apart))", re.IGNORECASE)


def asked_in_fathoms(text: str) -> bool:
    """Say whether a text wants its answer in fathoms: its water is told in them, too, whatever the rail's height is told in."""
    return _IN_FATHOMS.search(text) is not None


__all__ = ["asked_in_fathoms", "said_for_all"]
