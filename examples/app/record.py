"""Makes the log that the example reads: six hours at anchor with the tide, a rising wind, and a drag at the end.

`python examples/app/record.py` writes night.nmea. The sentences are those of NMEA 0183: depth (DPT), wind (MWV), position (RMC). A line
that begins with # is what the skipper did.
"""

import math
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path
from random import Random

START = datetime(2026, 6, 14, 0, 30, tzinfo=UTC)
LATITUDE, LONGITUDE = 64.355, 11.07  # of the anchor, degrees
NORTH, EAST = 1 / 111_445, 1 / 48_330  # degrees a metre there
DEPTH_AT_LOW, LOW_AT, RANGE, RISE = 4.4, datetime(2026, 6, 14, 0, 20, tzinfo=UTC), 2.9, timedelta(hours=6, minutes=15)
TRANSDUCER = 0.5
VEERED_AT, DRAGS_FROM = START + timedelta(hours=2), START + timedelta(hours=5)


def sentence(body: str) -> str:
    """Return a sentence with its checksum."""
    total = 0
    for sign in body:
        total ^= ord(sign)
    return f"${body}*{total:02X}"


def degrees(value: float, *, wide: int) -> str:
    """Return degrees and minutes as NMEA 0183 writes them."""
    whole, part = divmod(abs(value), 1)
    return f"{int(whole):0{wide}d}{part * 60:07.4f}"


def log() -> Iterator[str]:
    """Yield the log, a minute at a time."""
    random = Random(14)
    for minute in range(361):
        now = START + timedelta(minutes=minute)
        if now == VEERED_AT:
            yield "# rode_out = 45 m"
        depth = DEPTH_AT_LOW + RANGE * (1 - math.cos(math.pi * min((now - LOW_AT) / RISE, 1.0))) / 2
        wind = 14 + minute / 18 + random.uniform(-1.5, 1.5)
        yield sentence(f"SDDPT,{depth - TRANSDUCER:.1f},{TRANSDUCER}")
        yield sentence(f"WIMWV,{(5 * math.sin(minute / 3)) % 360:05.1f},R,{wind:.1f},N,A")
        heading = math.radians(205 + 18 * math.sin(minute / 4))  # where she lies from the anchor, sheering about
        off = (28 if now < VEERED_AT else 41) + 8 + random.gauss(0, 1) + max(0, (now - DRAGS_FROM) / timedelta(minutes=1)) * 0.9
        latitude, longitude = LATITUDE + off * math.cos(heading) * NORTH, LONGITUDE + off * math.sin(heading) * EAST
        place = f"{degrees(latitude, wide=2)},N,{degrees(longitude, wide=3)},E"
        yield sentence(f"GPRMC,{now:%H%M%S},A,{place},0.2,205.0,{now:%d%m%y},,,A")


if __name__ == "__main__":
    Path(__file__).with_name("night.nmea").write_text("\n".join(log()) + "\n", encoding="ascii")
