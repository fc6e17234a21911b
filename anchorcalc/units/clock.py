"""Clock times: plain ones (`06:10`, `0610`, `6:10 pm`) and ISO 8601 (`2026-06-01T06:10`, with `Z` or an offset or without)."""

import math
import re
from datetime import UTC, datetime, timedelta
from typing import Literal, NamedTuple

from anchorcalc.units.numbers import plain
from anchorcalc.units.written import Unread

Form = Literal["plain", "naive", "offset"]
DAY = 86400.0
_NAIVE_EPOCH = datetime(1970, 1, 1)
_EPOCH = datetime(1970, 1, 1, tzinfo=UTC)
_YEARS = (1900, 2200)


class Clock(NamedTuple):
    """A clock time.

    `seconds` counts from midnight for a plain time, from 1970 for ISO 8601 (in UTC where there is an offset, as it stands where there
    is none). Times of two forms cannot be compared: `form` tells them apart. `zone` is the offset as it was written (`Z`, `+02:00`).
    """

    seconds: float
    form: Form
    zone: str = ""


_UNREADABLE = Unread("unreadable", "is no clock time", '"06:10" or "2026-06-01T06:10"')
_DATE_ONLY = Unread("unreadable", "is a date without a time", '"2026-06-01T06:10"')
_FAR = Unread("out_of_bounds", "lies outside the years 1900 to 2200", '"2026-06-01T06:10"')
_PLAIN = re.compile(r"(\d{1,2})(?:[:.h](\d\d)(?::(\d\d))?|(\d\d))?[ \xa0]?(?:(a|p)\.?m\.?|(?:h|hrs?|hours))?\Z", re.I)
_WORDS = {"noon": 43200.0, "midday": 43200.0, "midnight": 0.0}
_DATE = re.compile(r"\d{4}-\d\d-\d\d|\d{8}(?!\d)")
_LOST_PLUS = re.compile(r"(?<=[T ])(\d\d:\d\d(?::\d\d(?:\.\d+)?)?) (\d\d:?\d\d)\Z")
_ZONE = re.compile(r"(?<=\d)(Z|[+-]\d\d(?::?\d\d)?)\Z")


def clock(text: str) -> Clock | Unread:
    """Return the clock time that a text is, or why it is none."""
    said = plain(text).strip()
    if len(said) > 40:
        return _UNREADABLE
    if _DATE.match(said):
        return _iso(said.upper())
    if said.lower() in _WORDS:
        return Clock(_WORDS[said.lower()], "plain")
    found = _PLAIN.match(said)
    return _of_day(found) if found else _UNREADABLE


def _of_day(found: re.Match[str]) -> Clock | Unread:
    hour_text, minute, second, run_on, half = found.groups()
    if minute is None and run_on is None and half is None:
        return _UNREADABLE
    if run_on is not None and len(hour_text) == 1 and half is None and found[0][-1].isdigit():
        return _UNREADABLE  # three digits alone are a number
    hour = int(hour_text)
    minutes, seconds = int(minute or run_on or 0), int(second or 0)
    if half is not None:
        if not 1 <= hour <= 12:
            return _UNREADABLE
        hour = hour % 12 + (12 if half in "pP" else 0)
    if hour > 24 or minutes > 59 or seconds > 59 or (hour == 24 and (minutes or seconds)):
        return _UNREADABLE
    return Clock(hour % 24 * 3600.0 + minutes * 60.0 + seconds, "plain")


def _iso(said: str) -> Clock | Unread:
    if len(said) <= 10:
        return _DATE_ONLY
    said = _LOST_PLUS.sub(r"\1+\2", said)  # a plus sign in a query comes as a space
    try:
        when = datetime.fromisoformat(said)
    except ValueError:
        return _UNREADABLE
    if not _YEARS[0] <= when.year <= _YEARS[1]:
        return _FAR
    if when.tzinfo is None:
        return Clock((when - _NAIVE_EPOCH).total_seconds(), "naive")
    zone = _ZONE.search(said)
    return Clock((when - _EPOCH).total_seconds(), "offset", zone[1] if zone else "Z")


def clock_text(*, seconds: float, like: Clock) -> tuple[str, int]:
    """Return a time as text in the form of another, and the days it lies after that one's day (0 for ISO, which says its date).

    The time is cut to the whole minute, the earlier one.

    Examples
    --------
    >>> clock_text(seconds=25 * 3600 + 90, like=Clock(36000.0, "plain"))
    ('01:01', 1)
    """
    minute = math.floor(round(seconds, 6) / 60.0)
    if like.form == "plain":
        days, rest = divmod(minute, 1440)
        return f"{rest // 60:02d}:{rest % 60:02d}", days
    if like.form == "naive":
        return _written(_NAIVE_EPOCH, minute=minute), 0
    ahead = datetime.fromisoformat(f"2026-06-01T00:00{like.zone}").utcoffset() or timedelta(0)
    local = _written(_NAIVE_EPOCH, minute=minute + math.floor(ahead.total_seconds() / 60.0))
    return local + like.zone, 0


def _written(epoch: datetime, *, minute: int) -> str:
    return (epoch + timedelta(minutes=minute)).isoformat(timespec="minutes")
