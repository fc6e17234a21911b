"""Numbers in words: `six and a half`, `a hundred and twenty`, `three quarters of a`, `one twenty`."""

import re
from typing import NamedTuple

_COUNTED = (
    "zero",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
    "sixteen",
    "seventeen",
    "eighteen",
    "nineteen",
)
ONES = {word: number for number, word in enumerate(_COUNTED)} | {"nought": 0, "naught": 0}
TENS = {
    "twenty": 20,
    "thirty": 30,
    "forty": 40,
    "fourty": 40,
    "fifty": 50,
    "sixty": 60,
    "seventy": 70,
    "eighty": 80,
    "ninety": 90,
}
SCALES = {"thousand": 1e3, "million": 1e6, "billion": 1e9, "trillion": 1e12}
PARTS = {
    "half": 2,
    "halves": 2,
    "third": 3,
    "thirds": 3,
    "quarter": 4,
    "quarters": 4,
    "fourth": 4,
    "fourths": 4,
    "fifth": 5,
    "fifths": 5,
    "sixth": 6,
    "sixths": 6,
    "eighth": 8,
    "eighths": 8,
    "tenth": 10,
    "tenths": 10,
    "twelfth": 12,
    "twelfths": 12,
    "sixteenth": 16,
    "sixteenths": 16,
    "hundredth": 100,
    "hundredths": 100,
    "thousandth": 1000,
    "thousandths": 1000,
}
_WORD = re.compile(r"(?:[ \xa0]{1,3}|-)?([a-z]+)")


_GOES_ON = frozenset({*ONES, *TENS, *SCALES, *PARTS, "hundred", "dozen", "and", "point"})


class Spelled(NamedTuple):
    """A number in words: its value, where it ends, and whether it was only a rough one (`a couple`)."""

    value: float
    end: int
    rough: bool = False


class _Words:
    """The words of a text from a place on, one looked at after the other."""

    def __init__(self, *, text: str, at: int) -> None:
        self.text, self.end = text, at

    def peek(self, *, skip: int = 0) -> tuple[str, int]:
        """Return the next word (after `skip` others) and where it ends, or an empty word."""
        end, word = self.end, ""
        for _ in range(skip + 1):
            found = _WORD.match(self.text, end)
            if not found:
                return "", end
            word, end = found[1], found.end()
        return word, end

    def take(self, *, count: int = 1) -> None:
        """Go past the next words."""
        _, self.end = self.peek(skip=count - 1)


def spelled(*, text: str, at: int) -> Spelled | None:
    """Return the number in words that begins at a place of a text in small letters, or None.

    `six and a half`, `a hundred and twenty`, `two dozen`, `half a`, `three quarters of a`, `three eighths`, `one twenty`, `a couple of`.
    """
    words = _Words(text=text, at=at)
    first, end = words.peek()
    if first in ONES or first in TENS:
        following = _WORD.match(text, end)
        if following is None or following[1] not in _GOES_ON:
            return Spelled(float(ONES.get(first, 0) + TENS.get(first, 0)), end)
        return _counted(words)
    if first == "point":
        value: float | None = _point(words, 0.0) or None
    else:
        value = _part_first(words) or _article_first(words)
    if value is not None:
        return Spelled(value, words.end)
    rough = _rough(words)
    return Spelled(rough, words.end, True) if rough is not None else _counted(words)


def _counted(words: _Words) -> Spelled | None:
    """Return a number that begins with a counting word: `six and a half`, `three eighths`, `two hundred`."""
    value = _whole(words)
    if value is None:
        return None
    value = _point(words, value)
    share = _share(words, value)
    return Spelled(value + _and_a_part(words) if share is None else share, words.end)


_PARTS_OF = frozenset(["third", "fourth", "fifth", "eighth", "tenth", "twelfth", "sixteenth", "hundredth", "thousandth"])  # "a tenth of a mile"


def _part_first(words: _Words) -> float | None:
    """`half a`, `a quarter of a`, `half`, `three quarters of a` is left to `_share`."""
    first, _ = words.peek()
    skip = 1 if first in ("a", "an", "one") else 0
    part, _ = words.peek(skip=skip)
    if part not in ("half", "quarter") and part not in _PARTS_OF:
        return None
    if not skip and part not in ("half", "quarter"):
        return None
    following, _ = words.peek(skip=skip + 1)
    if part in _PARTS_OF and following != "of":
        return None
    words.take(count=skip + 1)
    _of_a(words)
    if words.peek()[0] == "dozen":
        words.take()
        return 12.0 / PARTS[part]
    return 1.0 / PARTS[part]


def _of_a(words: _Words) -> None:
    first, _ = words.peek()
    second, _ = words.peek(skip=1)
    if first == "of" and second in ("a", "an", "one"):
        words.take(count=2)
    elif first in ("a", "an"):
        words.take()


def _article_first(words: _Words) -> float | None:
    """`a hundred`, `a dozen`: the article is one."""
    first, _ = words.peek()
    if first not in ("a", "an"):
        return None
    second, _ = words.peek(skip=1)
    if second in ("hundred", "thousand", "million", "billion"):
        words.take()
        value = _scaled(words, 1.0)
        return value + _and_a_part(words)
    if second == "dozen":
        words.take(count=2)
        return 12.0
    return None


def _rough(words: _Words) -> float | None:
    """`a couple of`, `couple of`, `a pair of`: about two."""
    first, _ = words.peek()
    skip = 1 if first == "a" else 0
    word, _ = words.peek(skip=skip)
    if word != "couple":
        return None
    words.take(count=skip + 1)
    if words.peek()[0] == "of":
        words.take()
    return 2.0


def _below_hundred(words: _Words) -> float | None:
    word, _ = words.peek()
    if word in TENS:
        words.take()
        one = ONES.get(words.peek()[0], 0)
        if 0 < one < 10:
            words.take()
            return float(TENS[word] + one)
        return float(TENS[word])
    if word in ONES:
        words.take()
        return float(ONES[word])
    return None


def _whole(words: _Words) -> float | None:
    if words.peek()[0] in ("hundred", "thousand", "million", "dozen"):
        value: float | None = 1.0
    else:
        value = _below_hundred(words)
    if value is None:
        return None
    if words.peek()[0] == "dozen":
        words.take()
        return 12.0 * value
    if 1 <= value < 10 and words.peek()[0] in TENS:  # "one twenty", as people say it
        rest = _below_hundred(words)
        return 100.0 * value + (rest or 0.0)
    return _scaled(words, value)


def _scaled(words: _Words, value: float) -> float:
    """Return the value with its hundreds, thousands and millions, as far as they are said."""
    total = 0.0
    for _ in range(8):
        word, _ = words.peek()
        if word == "hundred":
            words.take()
            value *= 100.0
            value += _after_scale(words)
        elif word in SCALES:
            words.take()
            total += value * SCALES[word]
            value = _after_scale(words)
        else:
            break
    return total + value


def _after_scale(words: _Words) -> float:
    """`hundred and twenty`: what follows, with or without `and`."""
    first, _ = words.peek()
    if first == "and":
        second, _ = words.peek(skip=1)
        if second in TENS or second in ONES:
            words.take()
            return _below_hundred(words) or 0.0
        return 0.0
    return _below_hundred(words) or 0.0


def _point(words: _Words, value: float) -> float:
    """`six point five`: the digits behind the point."""
    if words.peek()[0] != "point":
        return value
    digits = ""
    for skip in range(1, 7):
        digit = ONES.get(words.peek(skip=skip)[0], 10)
        if digit > 9:
            break
        digits += str(digit)
    if not digits:
        return value
    words.take(count=1 + len(digits))
    return float(f"{value:.0f}.{digits}")


def _share(words: _Words, value: float) -> float | None:
    """`three quarters of a`, `three eighths`: a share, where the plural of a part follows."""
    part, _ = words.peek()
    plural = part.endswith("s") or part in ("quarter", "eighth", "sixteenth")  # "three quarter inch"
    if part not in PARTS or value != int(value) or value < 1 or not (plural or value == 1):
        return None
    words.take()
    _of_a(words)
    return value / PARTS[part]


def _and_a_part(words: _Words) -> float:
    """`and a half`, `and three quarters`, `and a bit` is nothing that can be counted."""
    first, _ = words.peek()
    second, _ = words.peek(skip=1)
    third, _ = words.peek(skip=2)
    if first == "and" and second in ("a", "one") and third in PARTS:
        words.take(count=3)
        return 1.0 / PARTS[third]
    if first == "and" and second in ("half", "quarter"):
        words.take(count=2)
        return 1.0 / PARTS[second]
    if first == "and" and second in ONES and third in PARTS and (third.endswith("s") or ONES[second] > 1):
        words.take(count=3)
        return ONES[second] / PARTS[third]
    return 0.0


def and_a_part(*, text: str, at: int) -> tuple[float, int]:
    """Return the part said behind a number or its unit (`6 and a half`, `four fathoms and a half`), and where it ends."""
    words = _Words(text=text, at=at)
    return _and_a_part(words), words.end
