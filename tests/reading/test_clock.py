"""Clock times: plain and ISO 8601, and back to text in the same form."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from anchorcalc.units.clock import Clock, clock, clock_text
from anchorcalc.units.written import Unread

PLAIN = [
    ("06:10", 22200), ("6:10", 22200), ("0610", 22200), ("6.10 am", 22200), ("6:10 pm", 65400), ("6:10pm", 65400), ("6:10 P.M.", 65400),
    ("6pm", 64800), ("12 am", 0),
    ("12:30 am", 1800), ("12:30 pm", 45000), ("24:00", 0), ("00:00", 0), ("23:59", 86340), ("1420h", 51600), ("14:20 hrs", 51600),
    ("14h20", 51600), ("06:10:30", 22230),
    ("noon", 43200), ("０６:１０", 22200), ("06：10", 22200), ("610 am", 22200),
]  # fmt: skip


@pytest.mark.parametrize(("text", "seconds"), PLAIN, ids=[one[0] for one in PLAIN])
def test_plain_time_counts_from_midnight(text: str, seconds: float) -> None:
    assert clock(text) == Clock(float(seconds), "plain")


@pytest.mark.parametrize(
    ("text", "form", "zone"),
    [("2026-06-01T06:10", "naive", ""), ("2026-06-01 06:10", "naive", ""), ("2026-06-01T06:10Z", "offset", "Z"),
    ("2026-06-01T08:10+02:00", "offset", "+02:00"),
     ("2026-06-01T08:10 02:00", "offset", "+02:00"), ("20260601T0610", "naive", ""), ("2026-05-31T23:10-07:00", "offset", "-07:00")],
)  # fmt: skip
def test_iso_time_is_absolute_and_keeps_its_form(text: str, form: str, zone: str) -> None:
    assert clock(text) == Clock(1780294200.0, form, zone)  # type: ignore[arg-type]  # 1780294200: 2026-06-01T06:10:00Z, by `date -u -d`


@pytest.mark.parametrize("text", ["", "6", "610", "25:00", "06:60", "13:00 pm", "0:10 am", "noonish", "2026-06-01", "2026-13-01T06:10",
"2026-06-01T25:10", "06:10 06:20",
                                  "1776-06-01T06:10", "9999-12-31T23:59", "six", "-06:10", "x" * 500])  # fmt: skip
def test_what_is_no_clock_time_is_refused(text: str) -> None:
    read = clock(text)
    assert isinstance(read, Unread)
    assert read.would_do


@pytest.mark.parametrize(
    ("like", "later", "text", "days"),
    [("06:10", 3600, "07:10", 0), ("23:30", 3600, "00:30", 1), ("23:30", 90000, "00:30", 2), ("00:30", -3600, "23:30", -1), ("06:10", 59, "06:10", 0),
     ("2026-06-01T23:30", 3600, "2026-06-02T00:30", 0), ("2026-06-01T23:30Z", 3600, "2026-06-02T00:30Z", 0),
     ("2026-06-01T23:30+02:00", 3600, "2026-06-02T00:30+02:00", 0),
     ("2026-12-31T23:30-05:30", 3600, "2027-01-01T00:30-05:30", 0)],
)  # fmt: skip
def test_time_is_written_back_in_its_own_form_at_the_earlier_minute(like: str, later: float, text: str, days: int) -> None:
    read = clock(like)
    assert isinstance(read, Clock)
    assert clock_text(seconds=read.seconds + later, like=read) == (text, days)


@settings(max_examples=200, deadline=None)
@given(
    st.integers(0, 1439),
    st.sampled_from(["{h:02d}:{m:02d}", "2026-06-01T{h:02d}:{m:02d}", "2026-06-01T{h:02d}:{m:02d}Z", "2026-06-01T{h:02d}:{m:02d}-03:30"]),
)
def test_time_comes_back_as_it_was_written(minute: int, form: str) -> None:
    text = form.format(h=minute // 60, m=minute % 60)
    read = clock(text)
    assert isinstance(read, Clock)
    assert clock_text(seconds=read.seconds, like=read)[0] == text


@settings(max_examples=300, deadline=None)
@given(st.text(max_size=45) | st.text(alphabet="0123456789:-+TZ. apmh", max_size=25))
def test_any_text_is_a_time_or_is_refused(text: str) -> None:
    assert isinstance(clock(text), Clock | Unread)
