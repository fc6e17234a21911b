"""The words a question is written in: inputs by their need, results by their safe side, and the question itself."""

import inspect
import sys
from collections.abc import Callable, Iterable, Iterator, Mapping
from importlib import import_module
from types import NoneType, SimpleNamespace
from typing import Annotated, Any, Literal, get_args, get_origin, get_type_hints

import msgspec

from anchorcalc.physics.arrays import Array
from anchorcalc.rules import (
    COMMON_WARNINGS,
    NOT_ON_THE_BOTTOM,
    Refuse,
    Require,
    Rule,
    Values,
    Warn,
    condition_on,
    refuse,
    refuse_range,
    require,
    warn,
)
from anchorcalc.units import kinds
from anchorcalc.units.kinds import Kind
from anchorcalc.units.quantity import ClockTime, Quantity
from anchorcalc.vocabulary import TERMS
from anchorcalc.vocabulary.term import Term

# What a parameter of `solve` is annotated with: must be given, falls back to the term's usual value, or may be left out.
Asked = Annotated[Any, "asked"]
Usual = Annotated[Any, "usual"]
May = Annotated[Any, "may"]

# What a field of a result class is annotated with.
Length = Annotated[Quantity, kinds.LENGTH]
Size = Annotated[Quantity, kinds.SIZE]
Mass = Annotated[Quantity, kinds.MASS]
Speed = Annotated[Quantity, kinds.SPEED]
Force = Annotated[Quantity, kinds.FORCE]
Time = Annotated[Quantity, kinds.TIME]
Angle = Annotated[Quantity, kinds.ANGLE]
Area = Annotated[Quantity, kinds.AREA]
Ratio = Annotated[Quantity, kinds.RATIO]
Factor = Annotated[Quantity, kinds.FACTOR]
Count = Annotated[Quantity, kinds.COUNT]
Clock = Annotated[ClockTime, kinds.CLOCK]

Shown = SimpleNamespace  # the same as texts: s.depth is "12 ft"


class Side(msgspec.Struct, frozen=True, kw_only=True):
    """What a result means, and which way is the safe way: to round it when shown, and to choose among the ends of a range."""

    meaning: str
    way: Literal["up", "down", "near", "told"]
    worst: Literal["greatest", "least"]
    follows: str = ""


def up(meaning: str, *, follows: str = "") -> Side:
    """More is the safe side: round up, and the greatest of a range counts (or the end that `follows` counts at)."""
    return Side(meaning=meaning, way="up", worst="greatest", follows=follows)


def down(meaning: str, *, follows: str = "") -> Side:
    """Less is the safe side: round down, and the least of a range counts (or the end that `follows` counts at)."""
    return Side(meaning=meaning, way="down", worst="least", follows=follows)


def near(meaning: str, *, worst: Literal["greatest", "least"], follows: str = "") -> Side:
    """Round to the nearest; of a range the end named counts."""
    return Side(meaning=meaning, way="near", worst=worst, follows=follows)


def told(meaning: str, *, worse: Literal["greatest", "least"] = "least", follows: str = "") -> Side:
    """A yes or no, a word or a list; of a range the worse counts (least: no, or the first of the words)."""
    return Side(meaning=meaning, way="told", worst=worse, follows=follows)


class Derivation(msgspec.Struct, frozen=True, kw_only=True):
    """An input that other inputs give. It is filled before `solve` where it was not said itself.

    `needs` must all be there; `takes` fall back to their usual values. `assumed` marks a stand-in, such as a size from a table for
    the boat, and is what the answer says then. `asks_for` are the names to ask for where nothing gives it. `when` is a condition on
    what it needs and takes, without which it gives nothing. `safe` is the side to which a headline rounds it.
    """

    gives: str
    needs: tuple[str, ...]
    takes: tuple[str, ...] = ()
    solve: Callable[..., Any]
    asks_for: tuple[str, ...]
    working: Callable[[Shown], str] | None = None  # a line of the working; where `assumed` is said, that stands instead
    assumed: str = ""
    when: Rule | None = None
    safe: Literal["up", "down"] = "up"


class Field(msgspec.Struct, frozen=True, kw_only=True):
    """One result of a question, as the machinery needs it."""

    name: str
    kind: Kind
    side: Side
    optional: bool = False
    many: bool = False
    choices: tuple[str, ...] = ()
    row: type[msgspec.Struct] | None = None
    fields: tuple["Field", ...] = ()


class Input(msgspec.Struct, frozen=True, kw_only=True):
    """One input of a question: its term and how much it is needed."""

    name: str
    term: Term
    need: Literal["asked", "usual", "may"]
    direct: bool = True  # a parameter of solve; otherwise it only feeds a derivation


_KIND_OF_TYPE = {bool: kinds.FLAG, str: kinds.WORD, int: kinds.COUNT}


def _field(*, name: str, hint: Any, optional: bool) -> Field:
    side = next((mark for mark in getattr(hint, "__metadata__", ()) if isinstance(mark, Side)), None)
    kind = next((mark for mark in getattr(hint, "__metadata__", ()) if isinstance(mark, Kind)), None)
    bare = get_args(hint)[0] if get_origin(hint) is Annotated else hint
    many = False
    choices: tuple[str, ...] = ()
    row: type[msgspec.Struct] | None = None
    fields: tuple[Field, ...] = ()
    for part in get_args(bare) if NoneType in get_args(bare) else ():
        if part is not NoneType:
            inner = _field(name=name, hint=part, optional=True)
            return msgspec.structs.replace(inner, side=side or inner.side, kind=kind or inner.kind)
    if get_origin(bare) is tuple:
        inner = _field(name=name, hint=get_args(bare)[0], optional=optional)
        many, kind, row, fields, choices = True, inner.kind, inner.row, inner.fields, inner.choices
    elif get_origin(bare) is Literal:
        kind, choices = kinds.WORD, get_args(bare)
    elif isinstance(bare, type) and issubclass(bare, msgspec.Struct) and bare not in (Quantity, ClockTime):
        kind, row, fields = kinds.LIST, bare, fields_of(bare)
    if kind is None:
        kind = _KIND_OF_TYPE[bare]
    return Field(name=name, kind=kind, side=side or told(""), optional=optional, many=many, choices=choices, row=row, fields=fields)


def fields_of(results: type[msgspec.Struct]) -> tuple[Field, ...]:
    """Return the fields of a result class, with kind and safe side of each."""
    hints = get_type_hints(results, include_extras=True)
    return tuple(_field(name=one.name, hint=hints[one.name], optional=not one.required) for one in msgspec.structs.fields(results))


class Question:
    """A question: what it asks for, what it gives, how it is solved, worded, warned of and sourced. One file of the catalogue each.

    Parameters
    ----------
    title : str
        The question in a few words.
    solve : callable
        Pure SI numpy; its parameters are the inputs. Returns the results by name. Words are the index in the term's choices, here and there.
    results : type
        Struct of the results; the first is the headline's.
    headline, working : callable
        Texts made of shown values `s` and SI values `v`.
    cautions, refuses : tuple
        Rules on the values.
    sources : tuple of str
        What the sums stand on.
    asks : tuple of str
        Phrases by which people ask it.
    examples : tuple of dict
        Two or more complete sets of inputs.
    moves : dict
        Each result's inputs with the way it moves when they grow: `"+depth -scope"`; `~spread` moves both ways, and then takes no
        range; `^depth` may move either way, but always has its worst at an end.
    derives : tuple of Derivation
        Inputs that others can give.
    one_of : tuple of tuple of str
        Alternatives, only one of which may be given; unless `one_of_may`, one must be, and the first is asked for.
    pairs : tuple of tuple of str
        Inputs that go together: with one, all.
    requires : tuple of Require
        Inputs that must be given when a condition holds.
    """

    def __init__(
        self,
        *,
        title: str,
        solve: Callable[..., dict[str, Any]],
        results: type[msgspec.Struct],
        headline: Callable[[Shown, Values], str],
        working: Callable[[Shown, Values], Iterable[str]],
        sources: tuple[str, ...],
        asks: tuple[str, ...],
        examples: tuple[dict[str, Any], ...],
        cautions: tuple[Warn, ...] = (),
        refuses: tuple[Refuse, ...] = (),
        moves: Mapping[str, str] | None = None,
        derives: tuple[Derivation, ...] = (),
        one_of: tuple[tuple[str, ...], ...] = (),
        one_of_may: bool = False,
        pairs: tuple[tuple[str, ...], ...] = (),
        requires: tuple[Require, ...] = (),
    ) -> None:
        self.name = solve.__module__.rpartition(".")[2]
        self.doc = (sys.modules[solve.__module__].__doc__ or title).strip()
        self.title, self.solve, self.results, self.headline, self.working = title, solve, results, headline, working
        self.sources, self.asks, self.examples, self.moves = sources, asks, examples, dict(moves or {})
        self.derives, self.one_of, self.one_of_may, self.refuses = derives, one_of, one_of_may, refuses
        self.pairs, self.requires = pairs, requires
        self.inputs = {one.name: one for one in self._inputs()}
        stood_in = {derivation.gives for derivation in derives if derivation.assumed}
        self.clocks = tuple(name for name, one in self.inputs.items() if one.term.kind is kinds.CLOCK)
        self.direct = tuple(name for name, one in self.inputs.items() if one.direct)
        self.fields = fields_of(results)
        named = set(self.inputs) | {field.name for field in self.fields} | {f"{name}_assumed" for name in self.inputs}
        named |= {"wind_beaufort"} if "wind" in self.inputs else set()
        self.cautions = tuple(rule for rule in (*COMMON_WARNINGS, *cautions) if set(rule.names) <= named)
        asked_of = {name for rule in (*self.cautions, *refuses, *requires) for name in rule.names}
        assumable = {name for name, one in self.inputs.items() if one.term.usual is not None} | stood_in
        self.assumable = tuple((name, f"{name}_assumed") for name in self.inputs if name in assumable and f"{name}_assumed" in asked_of)

    def _inputs(self) -> Iterator[Input]:
        needs = {name: get_args(part.annotation)[1] for name, part in inspect.signature(self.solve).parameters.items()}
        given_by = {derivation.gives: derivation for derivation in self.derives}
        done: set[str] = set()
        for name, need in needs.items():
            if name not in done:
                done.add(name)
                yield Input(name=name, term=TERMS[name], need=need)
            for extra in (*given_by[name].needs, *given_by[name].takes) if name in given_by else ():
                if extra not in needs and extra not in done:
                    done.add(extra)
                    usual = extra in given_by[name].takes and TERMS[extra].usual is not None
                    yield Input(name=extra, term=TERMS[extra], need="usual" if usual else "may", direct=False)

    @property
    def takes_no_range(self) -> frozenset[str]:
        """The inputs with which some result moves both ways."""
        return frozenset(move[1:] for moves in self.moves.values() for move in moves.split() if move.startswith("~"))

    def __repr__(self) -> str:
        """Return the question's name."""
        return f"Question({self.name})"

    def __reduce__(self) -> tuple[Any, tuple[str]]:
        """Pickle by name."""
        return _declared, (self.solve.__module__,)


def _declared(module: str) -> Question:
    """Return the question that a file declares."""
    found: Question = import_module(module).QUESTION
    return found


__all__ = [
    "Angle",
    "Area",
    "Array",
    "Asked",
    "Clock",
    "Count",
    "Derivation",
    "Factor",
    "Field",
    "Force",
    "Input",
    "Length",
    "Mass",
    "May",
    "NOT_ON_THE_BOTTOM",
    "Question",
    "Ratio",
    "Refuse",
    "Require",
    "Shown",
    "Side",
    "Size",
    "Speed",
    "Time",
    "Usual",
    "Values",
    "Warn",
    "condition_on",
    "down",
    "fields_of",
    "near",
    "refuse",
    "refuse_range",
    "require",
    "told",
    "up",
    "warn",
]
