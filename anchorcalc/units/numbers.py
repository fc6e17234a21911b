"""Numbers in every writing: `12`, `3.6`, `4,5`, `1,200`, `1 1/2`, `½`, `1e3` (in words: `number_words.py`).

One grammar serves the typed calls (`written.py`) and the reader of plain words. `plain` turns a text into plain signs without
changing its length, so that every offset in it is an offset in the text itself.
"""

import re
import unicodedata

_SPACES = "\xa0\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000"
_SAME = {
    **dict.fromkeys(map(ord, _SPACES), "\xa0"),
    **dict.fromkeys(map(ord, "−﹣－‐‑"), "-"),
    **dict.fromkeys(map(ord, "‒—―"), "–"),
    **dict.fromkeys(map(ord, "′’‘ʹ´＇"), "'"),
    **dict.fromkeys(map(ord, "″”“ʺ＂"), '"'),
    **dict.fromkeys(map(ord, "º˚"), "°"),
    **dict.fromkeys(map(ord, "⁄∕"), "/"),
    ord("∶"): ":",
    ord("："): ":",
    ord("，"): ",",
    ord("．"): ".",
    ord("μ"): "µ",
    ord("Ω"): "Ω",
}


class _Plain(dict[int, str]):
    """What each sign is in plain writing; looked up once a sign."""

    def __missing__(self, code: int) -> str:
        sign = chr(code)
        digit = unicodedata.decimal(sign, -1)
        found = str(digit) if digit >= 0 else sign
        if found == sign and 0xFF21 <= code <= 0xFF5A:
            found = unicodedata.normalize("NFKC", sign)
        if code < 0x3000:
            self[code] = found
        return found


_PLAIN = _Plain(_SAME)


def plain(text: str) -> str:
    """Return the text in plain digits, dashes, primes and spaces, sign for sign (its length stays)."""
    return text if text.isascii() else text.translate(_PLAIN)


VULGAR = {sign: unicodedata.numeric(sign) for sign in "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞"}
_V = "¼½¾⅐-⅞"
_S = "[ \xa0]"
# A number without its sign. Every run of digits is taken whole (possessive), so that the time stays linear.
NUMERAL = (
    rf"(?:\d++[ \xa0-]?[{_V}]|[{_V}]"
    rf"|\d++(?:{_S}|-|{_S}and{_S})\d++/\d++(?![/\d])"
    rf"|\d++{_S}?/{_S}?\d++(?![/\d])"
    r"|(?:[1-9]\d{0,2}(?:,\d{3})++(?![\d,])(?:\.\d++)?|[1-9]\d{0,2}(?:\.\d{3})++,\d++|\d++[.,]\d++|\d++|\.\d++)(?:[eE][+-]?\d{1,4}(?!\d))?)"
)
_THOUSANDS = re.compile(r"[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?\Z")
_MIXED = re.compile(rf"(?:(\d+)(?:{_S}|-|{_S}and{_S}))?(\d+){_S}?/{_S}?(\d+)\Z")


def numeral(text: str) -> float | None:
    """Return the value of one number as `NUMERAL` finds it, or None where it has none (`1/0`)."""
    try:
        return float(text) if "_" not in text else None
    except ValueError:
        pass
    if text[-1:] in VULGAR:
        whole = text[:-1].rstrip(" \xa0-")
        return (float(whole) if whole else 0.0) + VULGAR[text[-1]]
    if "/" in text:
        return _fraction(text)
    if _THOUSANDS.match(text):
        return float(text.replace(",", ""))
    if "," in text and text.count(",") == 1:
        whole, part = text.split(",")
        try:
            return float(whole.replace(".", "") + "." + part)
        except ValueError:
            return None
    return None


def _fraction(text: str) -> float | None:
    found = _MIXED.match(text)
    if not found or float(found[3]) == 0.0:
        return None
    return (float(found[1]) if found[1] else 0.0) + float(found[2]) / float(found[3])
