"""Which figures of the tables no published test would miss: each is changed in turn, and a test must fail.

`python -m tests.published.figures` prints their names. A process of its own: it runs the tables and what is computed from them anew.
"""

import ast
import importlib
import inspect
import itertools
import pkgutil
import sys
from collections.abc import Callable, Iterator
from functools import partial
from pathlib import Path
from types import ModuleType
from typing import Any

import numpy as np

from anchorcalc.physics import tables

FORCES = ("anchor_size", "chain", "current_load", "design_load", "force_questions", "holding", "rope", "setting_pull", "shackle", "weigh_anchor",
          "wind_pressure")  # fmt: skip
SHIFTS = (1.03, 1 / 1.03)  # what a figure is multiplied by: more than half the last digit of any that is printed

# Figures that no published test can miss since nothing is published: why, and how many of the array they are (None: all of it).
OWN, SOLD, BAND = "own estimate, said so", "common practice: sizes that are sold", "common practice: a wide band without a source"
UNPUBLISHED: dict[str, tuple[str, int | None]] = {
    "drag.FRONTAL_AREA_SHARE": (OWN, None),
    "drag.HULL_FULLNESS": (OWN, None),
    "drag.MULTIHULL_BEAM_SHARE": (OWN, None),
    "drag.SCREW_BLADE_SHARE": (OWN, None),
    "drag.SCREW_DIAMETER_SHARE": (OWN, None),
    "drag.SCREW_DRAG": ("memory; no figure is worked from it in print", None),
    "drag.WIND_DRAG": (OWN, 2),  # motor boat and multihull
    "holding.EXPONENTS": ("the power law of sand, taken for other bottoms", 4),
    "holding.SAND_LOW": (BAND, 6),
    "holding.SAND_HIGH": (BAND, 6),
    "holding.MUD_LOW": (BAND, 1),  # the mushroom
    "holding.MUD_HIGH": (BAND, 1),
    "holding.RATIO_LOW": (BAND, 10),
    "holding.RATIO_HIGH": (BAND, 3),
    "holding.SHARES_AT_ANGLES": (OWN, 1),  # where nothing is left, past scope 2
    "holding.SHARE_ANGLES": (OWN, 2),
    "holding._NO_SHARE_LEFT": (OWN, 1),
    "rope.METRIC_SIZES": (SOLD, None),
    "shackle.METRIC_SIZES": (SOLD, None),
    "shackle.INCH_SIZES": (SOLD, None),
}
Case = Callable[[], None]


def cases_of(file: str) -> Iterator[Case]:
    """Every test of a file with each set of its parameters, as plain calls."""
    module = importlib.import_module(f"tests.published.test_{file}")
    for name, test in inspect.getmembers(module, inspect.isfunction):
        if name.startswith("test_") and test.__module__ == module.__name__:
            for values in itertools.product(*(_sets(mark) for mark in getattr(test, "pytestmark", []) if mark.name == "parametrize")):
                yield partial(test, **{key: value for one in values for key, value in one.items()})


def _sets(mark: Any) -> list[dict[str, Any]]:
    names = [name.strip() for name in mark.args[0].split(",")] if isinstance(mark.args[0], str) else list(mark.args[0])
    return [dict(zip(names, values if len(names) > 1 else (values,), strict=True)) for values in mark.args[1]]


def is_missed(cases: list[Case]) -> bool:
    """Whether some test fails; that one is tried first the next time."""
    for place, case in enumerate(cases):
        try:
            case()
        except (AssertionError, IndexError, ValueError):
            cases.insert(0, cases.pop(place))
            return True
    return False


def figures(module: ModuleType) -> Iterator[tuple[str, tuple[int, ...] | None]]:
    """Every figure of a table module: its name, and its place where it stands in an array."""
    constants = vars(importlib.import_module("anchorcalc.physics.constants"))
    for name, value in vars(module).items():
        if isinstance(value, np.ndarray):
            yield from ((name, tuple(int(one) for one in place)) for place in np.argwhere(np.isfinite(value)))
        elif isinstance(value, float) and np.isfinite(value) and name not in constants:
            yield name, None


def scaled(value: Any, place: tuple[int, ...] | None, by: float) -> Any:
    """A figure, or one figure of an array, multiplied."""
    if place is None:
        return value * by
    array = value.copy()
    array[place] *= by
    return array


def run_anew(module: ModuleType, name: str = "", place: tuple[int, ...] | None = None, by: float = 1.0) -> None:
    """Run a table module again, a figure of it changed as soon as it is there, and what is computed from it."""
    tree = ast.parse(Path(str(module.__file__)).read_text(encoding="utf-8"))
    for number, node in enumerate(tree.body):
        if isinstance(node, ast.Assign) and name in {part.id for target in node.targets for part in ast.walk(target) if isinstance(part, ast.Name)}:
            tree.body.insert(number + 1, ast.parse(f"{name} = __scaled__({name})").body[0])
            break
    module.__dict__["__scaled__"] = lambda value: scaled(value, place, by)
    exec(compile(ast.fix_missing_locations(tree), str(module.__file__), "exec"), module.__dict__)
    for user in users_of(module):
        importlib.reload(user)
    for test in [one for key, one in sys.modules.items() if key.startswith("tests.published.test_")]:
        for known in vars(test).keys() & vars(module).keys():
            if isinstance(getattr(module, known), np.ndarray | float):
                setattr(test, known, getattr(module, known))


def users_of(module: ModuleType) -> list[ModuleType]:
    """The modules of the physics that take figures from a table module, or from one that does."""
    short = module.__name__.rpartition(".")[2]
    physics = [one for key, one in sys.modules.items() if key.startswith("anchorcalc.physics.") and ".tables" not in key]
    return [one for one in physics if f"tables.{short} import" in inspect.getsource(one) or f"{short}," in _tables_named(one) + ","]


def _tables_named(module: ModuleType) -> str:
    lines = [line.partition("tables import ")[2] for line in inspect.getsource(module).splitlines() if "physics.tables import " in line]
    return ",".join(lines).replace(" ", "")


def unseen() -> Iterator[str]:
    """Names of the figures that could change without a published test failing, but for those of which nothing is published."""
    cases = [case for file in FORCES for case in cases_of(file)]
    assert not is_missed(list(cases)), "the published tests fail as they stand"
    found: dict[str, list[str]] = {}
    for short in [one.name for one in pkgutil.iter_modules(tables.__path__)]:
        module = importlib.import_module(f"{tables.__name__}.{short}")
        for name, place in list(figures(module)):
            whole = f"{short}.{name}"
            skipped = whole in UNPUBLISHED and UNPUBLISHED[whole][1] is None
            if not skipped and not any(_is_seen(cases, module, name, place, by) for by in SHIFTS):
                found.setdefault(whole, []).append(f"{whole}{list(place) if place is not None else ''}")
        run_anew(module)
    for whole, names in found.items():
        if len(names) != UNPUBLISHED.get(whole, ("", 0))[1]:
            yield from names
    yield from (f"{whole} is excused, and need not be" for whole, (_, count) in UNPUBLISHED.items() if count is not None and whole not in found)


def _is_seen(cases: list[Case], module: ModuleType, name: str, place: tuple[int, ...] | None, by: float) -> bool:
    run_anew(module, name, place, by)
    return is_missed(cases)


if __name__ == "__main__":
    print("\n".join(unseen()))
