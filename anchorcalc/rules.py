"""Conditions on named values: when a caution is said, when an input is refused, when one must be given."""

import inspect
from collections.abc import Callable, Mapping
from typing import Any

import msgspec

from anchorcalc import cautions
from anchorcalc.cautions import Caution
from anchorcalc.errors import Code, Fault, fault

Values = Mapping[str, Any]  # SI numbers (or arrays, word codes, flags) by name


class Rule(msgspec.Struct, frozen=True):
    """A condition on named values, the same for one boat and for an array of them; it speaks only where all its values are there.

    Besides inputs and results a condition may name `<input>_assumed` (the usual value or a stand-in was taken), `<input>_ranged` (there
    only where a range was given) and `wind_beaufort`.
    """

    names: tuple[str, ...]
    condition: Callable[..., Any] | None

    def holds(self, values: Values) -> Any:
        """Return whether the condition holds: a bool, or an array of them."""
        if self.condition is None:
            return True
        found = {}
        for name in self.names:
            if name not in values:
                return False
            found[name] = values[name]
        return self.condition(**found)


class Warn(Rule, frozen=True):
    """A caution, and when it is said."""

    caution: Caution


class Require(Rule, frozen=True):
    """An input that must be given when a condition holds, unless one of some others was."""

    input: str
    unless: tuple[str, ...] = ()


class Refuse(Rule, frozen=True):
    """A contradiction between inputs: when it holds, which input is at fault, and what would do."""

    input: str
    why: str
    would_do: str
    code: Code

    def fault(self, *, given: str) -> Fault:
        """Return the fault for what was given."""
        return fault(self.input, self.code, given, self.why, self.would_do)


def condition_on(condition: Callable[..., Any]) -> Rule:
    """Return a condition on the values named by its parameters."""
    return Rule(names=_names(condition), condition=condition)


def _names(condition: Callable[..., Any] | None) -> tuple[str, ...]:
    return tuple(inspect.signature(condition).parameters) if condition else ()


def warn(caution: Caution, condition: Callable[..., Any] | None = None) -> Warn:
    """Say a caution always, or when a condition on the values named by its parameters holds."""
    return Warn(names=_names(condition), condition=condition, caution=caution)


def refuse(name: str, condition: Callable[..., Any], *, why: str, would_do: str, code: Code = "contradiction") -> Refuse:
    """Refuse an input when a condition on the values named by its parameters holds."""
    return Refuse(names=_names(condition), condition=condition, input=name, why=why, would_do=would_do, code=code)


def refuse_range(name: str, condition: Callable[..., Any], *, why: str) -> Refuse:
    """Refuse a range of an input (one value will do) when a condition on the values named by its parameters holds."""
    ranged = f"{name}_ranged"

    def where_ranged(**values: Any) -> Any:
        return condition(**{one: value for one, value in values.items() if one != ranged})

    names = (ranged, *_names(condition))
    return Refuse(names=names, condition=where_ranged, input=name, why=why, would_do="one value", code="range_not_taken")


def require(name: str, condition: Callable[..., Any], *, unless: tuple[str, ...] = ()) -> Require:
    """Ask for an input when a condition on the values named by its parameters holds, unless one of some others was given."""
    return Require(names=_names(condition), condition=condition, input=name, unless=unless)


NOT_ON_THE_BOTTOM = refuse(
    "rode_out",
    lambda *, rode_out, depth, bow_height: rode_out <= depth + bow_height,
    why="is not longer than the height of the roller above the seabed (depth + bow_height): the anchor is not on the bottom",
    would_do="more rode than depth + bow_height",
)

COMMON_WARNINGS = (
    warn(cautions.NO_TIDE, lambda *, tide_rise_assumed: tide_rise_assumed),
    warn(cautions.NO_TIDE, lambda *, tide_fall_assumed: tide_fall_assumed),
    warn(cautions.MEAN_WIND, lambda *, wind_beaufort: wind_beaufort),
    warn(cautions.MARKS_FROM_ASSUMED, lambda *, marks_from_assumed, chain: marks_from_assumed & (chain > 0.0)),
)
