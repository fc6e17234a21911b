"""What a user with a type checker writes; mypy --strict and pyright must accept every line, and know every type."""

from datetime import datetime
from typing import Literal, assert_type

import pint

import anchorcalc
from anchorcalc import Answer, Cannot, Needs, Quantity, RodeToLetOutAnswer, RodeToLetOutRead, ScopeNowAnswer, Unclear
from anchorcalc.units.quantity import ReadQuantity, ReadWord


def rode_in_metres(depth: str) -> float:
    """A typed call, its results and what was read."""
    answer = anchorcalc.rode_to_let_out(depth=depth, bow_height={"value": 4, "unit": "ft"}, scope=5, rode_aboard="60 m")
    assert_type(answer, RodeToLetOutAnswer)
    assert_type(answer.question, Literal["rode_to_let_out"])
    assert_type(answer.read, RodeToLetOutRead)
    assert_type(answer.read.depth, ReadQuantity)
    assert_type(answer.read.tide_rise, ReadQuantity | None)
    assert_type(answer.results.rode_out, Quantity)
    assert_type(answer.results.enough, bool | None)
    assert_type(answer.cautions[0].code, str)
    return answer.results.rode_out.to("m") + answer.results.rode_out.si


def scope_of(rode: Quantity) -> str:
    """An earlier result, a pint quantity and a boat go in as they are."""
    metre = pint.UnitRegistry().meter
    answer = anchorcalc.scope_now(rode_out=rode, depth=5 * metre, boat={"bow_height": "1.1 m"}, units="metric")
    assert_type(answer, ScopeNowAnswer)
    return answer.results.verdict


def tide(at: datetime) -> str:
    """Clock times may be texts or datetimes."""
    answer = anchorcalc.when_to_veer(
        rode_out="35 m", depth="4 m", low_height="0.6 m", low_at="2026-06-01T06:10", high_height="4.4 m", high_at="2026-06-01T12:25", at=at
    )
    return answer.results.veer_by.value if answer.results.veer_by is not None else answer.results.veer


def dragging(track: list[tuple[str, str]]) -> bool:
    """A list of fixes."""
    answer = anchorcalc.drag_check(anchor_at=(64.1, 10.2), fixes=track, rode_out="30 m", depth="5 m", boat_length="9 m")
    return answer.results.dragging


def in_words(text: str) -> str:
    """Replies are told apart by their status or their class."""
    reply = anchorcalc.ask(text)
    if isinstance(reply, Answer):
        return reply.headline
    if isinstance(reply, Needs):
        assert_type(reply.read.depth, ReadQuantity | None)
        assert_type(reply.read.bottom, ReadWord | None)
        return reply.prompt
    if isinstance(reply, Unclear):
        return reply.choices[0].text
    assert_type(reply, Cannot)
    return reply.why


def by_name() -> list[str]:
    """The general door, and errors with their faults."""
    try:
        return [anchorcalc.answer("rode_to_let_out", depth="4 m").headline]
    except anchorcalc.InputError as error:
        return [fault.code for fault in error.faults]


def listed() -> list[str]:
    """The catalogue."""
    return [entry.title for entry in anchorcalc.questions() if entry.picture]
