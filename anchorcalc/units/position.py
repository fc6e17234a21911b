"""Positions: decimal degrees (`59.314 N, 18.912 E`; `-33.86, 151.2`) or degrees, minutes and seconds (`59°18.84'N 018°54.72'E`)."""

import re
from typing import NamedTuple

from anchorcalc.units.clock import Clock, clock
from anchorcalc.units.numbers import plain
from anchorcalc.units.written import Unread


class Position(NamedTuple):
    """A position in decimal degrees, north and east positive."""

    latitude: float
    longitude: float


class FixSaid(NamedTuple):
    """One fix of a list: when, and where."""

    at: Clock
    position: Position
    at_text: str
    position_text: str


_WOULD_DO = '"59.314 N, 18.912 E" or "59°18.84\'N 018°54.72\'E"'
_UNREADABLE = Unread("unreadable", "is no position", _WOULD_DO)
_OUTSIDE = Unread("out_of_bounds", "lies outside 90 degrees of latitude or 180 of longitude", _WOULD_DO)
_MINUTES = Unread("out_of_bounds", "has 60 minutes or seconds, or more", _WOULD_DO)
_NAMES = re.compile(r"\b(north|south|east|west)(?:ern)?\b|\b(?:latitude|lat|longitude|long|lon)\b\.?:?", re.I)
_COMMA_IN_NUMBER = re.compile(r"(?<=\d),(?=\d)")
_HALVES = (
    re.compile(r"\s*([^NSEW]*[NSEW])\s*[,;/]?\s*([^NSEW]+[NSEW])\s*\Z", re.I),  # letters behind
    re.compile(r"\s*([NSEW][^NSEW]+?)\s*[,;/]?\s*([NSEW][^NSEW]+)\Z", re.I),  # letters before
    re.compile(r"\s*([+-]?[^,;/NSEW]+?)\s*[,;/]\s*([^,;/NSEW]+)\Z", re.I),
    re.compile(r"\s*([+-]?\d{1,3}\.\d+)\s+([+-]?\d{1,3}\.\d+)\s*\Z"),
)
_COORDINATE = re.compile(
    r"(?P<before>[NSEW])?\s*(?P<sign>[+-])?\s*(?:(?P<decimal>\d{1,3}\.\d*)\s*(?:°|deg(?:rees?)?)?"
    r"|(?P<whole>\d{1,3})\s*(?:°|deg(?:rees?)?|d|-)?\s*(?:(?P<minutes>\d{1,2}\.\d+)\s*(?:'|min(?:utes?)?|m)?"
    r"|(?P<minute>\d{1,2})\s*(?:'|min(?:utes?)?|m|-)?\s*(?:(?P<seconds>\d{1,2}(?:\.\d*)?)\s*(?:\"|''|sec(?:onds?)?|s)?)?)?)"
    r"\s*(?P<after>[NSEW])?\Z",
    re.I,
)


def position(text: str) -> Position | Unread:
    """Return the position that a text is, latitude first (letters may say otherwise), or why it is none."""
    said = plain(text).strip()
    if len(said) > 120:
        return _UNREADABLE
    said = _NAMES.sub(lambda found: (found[1] or "")[:1].upper(), said).strip().removeprefix("(").removesuffix(")")
    if said.count(",") > 1 or (said.count(",") == 1 and not re.search(r",\s", said) and re.search(r"[NSEW].*,|,.*[NSEW].*[NSEW]", said, re.I)):
        said = _COMMA_IN_NUMBER.sub(".", said)
    for halves in _HALVES:
        found = halves.match(said)
        if found:
            return _joined(_COORDINATE.match(found[1].strip()), _COORDINATE.match(found[2].strip()))
    return _UNREADABLE


def _joined(first: re.Match[str] | None, second: re.Match[str] | None) -> Position | Unread:
    if first is None or second is None:
        return _UNREADABLE
    letters = [((one["before"] or "") + (one["after"] or "")).upper() for one in (first, second)]
    values = [_degrees(first), _degrees(second)]
    if letters[0] in ("E", "W") and letters[1] in ("N", "S"):
        letters.reverse()
        values.reverse()
    if letters != ["", ""] and (letters[0] not in ("N", "S") or letters[1] not in ("E", "W") or first["sign"] or second["sign"]):
        return _UNREADABLE
    latitude, longitude = values
    if latitude is None or longitude is None:
        return _MINUTES
    latitude, longitude = -latitude if letters[0] == "S" else latitude, -longitude if letters[1] == "W" else longitude
    if abs(latitude) > 90.0 or abs(longitude) > 180.0:
        return _OUTSIDE
    return Position(latitude + 0.0, longitude + 0.0)


def _degrees(found: re.Match[str]) -> float | None:
    """Return a coordinate in degrees, or None where its minutes or seconds reach 60."""
    if found["decimal"]:
        size = float(found["decimal"])
    else:
        minutes, seconds = float(found["minutes"] or found["minute"] or 0.0), float(found["seconds"] or 0.0)
        if minutes >= 60.0 or seconds >= 60.0:
            return None
        size = float(found["whole"]) + minutes / 60.0 + seconds / 3600.0
    return -size if found["sign"] == "-" else size


def position_text(position: Position) -> str:
    """Return a position in decimal degrees, to about a tenth of a metre.

    Examples
    --------
    >>> position_text(Position(59.314, 18.912))
    '59.314000 N, 18.912000 E'
    """
    north, east = position
    return f"{abs(north):.6f} {'S' if north < 0 else 'N'}, {abs(east):.6f} {'W' if east < 0 else 'E'}"


_AT_THEN_POSITION = re.compile(
    r"\s*(\d{4}-\d\d-\d\d[T ]\d\d:?\d\d(?::?\d\d(?:\.\d+)?)?(?:Z|\s?[+-]\d\d:?\d\d|[ ]\d\d:\d\d(?=\s))?"
    r"|\d{1,2}[:.]\d\d(?::\d\d)?(?:\s?[ap]\.?m\.?)?|\d{4}h?)(?:,|\s)\s*(.+)\Z",
    re.I | re.S,
)
_FIXES_WOULD_DO = '"06:10 59.314 N, 18.912 E; 06:20 59.315 N, 18.913 E"'


def fixes(text: str) -> tuple[FixSaid, ...] | Unread:
    """Return the fixes of a text `AT POSITION; AT POSITION`, or why it is none."""
    found: list[FixSaid] = []
    for part in re.split(r"[;\n]", plain(text)):
        if not part.strip():
            continue
        split = _AT_THEN_POSITION.match(part)
        if not split:
            return Unread("unreadable", f"has a fix without a time and a position ({part.strip()[:30]!r})", _FIXES_WOULD_DO)
        at, where = clock(split[1]), position(split[2])
        if isinstance(at, Unread):
            return at
        if isinstance(where, Unread):
            return where
        found.append(FixSaid(at, where, split[1].strip(), split[2].strip()))
    return tuple(found) if found else Unread("unreadable", "has no fix in it", _FIXES_WOULD_DO)
