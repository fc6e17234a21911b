"""A row of a table is told exactly what its own single call would be told, for every question there is."""

import json
import random
import zlib
from typing import Any

import msgspec
import numpy as np
import pytest

from anchorcalc import InputError, check_table
from anchorcalc.answering.answer import answer
from anchorcalc.catalogue import names, question
from anchorcalc.declare import Field
from anchorcalc.doors.fleet_headings import headings_of
from anchorcalc.physics.catenary import rode_shape
from anchorcalc.units.kinds import Unit
from tests.fleet.rows import Made

ROWS = 1000
LAST_PLACES = 4.0  # units in the last place by which a sum may differ


@pytest.mark.parametrize("units", [None, "us"])
@pytest.mark.parametrize("name", names())
def test_every_row_is_answered_as_its_single_call(name: str, units: str | None) -> None:
    asked = question(name)
    made = Made(asked, rows=ROWS if units is None else 200, rng=random.Random(zlib.crc32(f"{name} {units}".encode())))
    headings = headings_of(asked, list(made.table), units=units, boat={})
    got = check_table(name, made.table, units=units)
    answered = 0
    for row, single in enumerate(made.singles):
        try:
            wanted = answer(asked, single, units=units)
        except InputError as error:
            assert got[headings.problem][row] == " | ".join(str(one) for one in error.faults), (row, single)
            assert got[headings.cautions][row] == ""
            assert all(_is_absent(got[column][row]) for column in headings.names.values())
            continue
        answered += 1
        assert got[headings.problem][row] == "", (row, single)
        assert got[headings.cautions][row].split() == [one.code for one in wanted.cautions], (row, single)
        in_lists = answer(asked, single, units=headings.system).results if any(field.many for field in asked.fields) else None
        for field in asked.fields:
            found = getattr(in_lists if field.many else wanted.results, field.name)
            _assert_alike(field, got[headings.names[field.name]][row], found, headings.units[field.name], (row, single))
    assert answered > len(made.singles) / 20, "too few good rows to show anything"


def _assert_alike(field: Field, got: Any, wanted: Any, unit: Unit | None, where: Any) -> None:
    if wanted is None:
        assert _is_absent(got), (field.name, got, where)
    elif field.many:
        _assert_json_alike(json.loads(got), json.loads(msgspec.json.encode(wanted)), where)
    elif isinstance(wanted, bool | str):
        assert got == wanted, (field.name, where)
    elif field.kind.name == "clock":
        assert got == wanted.shown, (field.name, where)
    else:
        alone = wanted.si / (unit.factor if unit else 1.0)
        assert abs(got - alone) <= LAST_PLACES * np.spacing(abs(alone)), (field.name, got, alone, where)


def _assert_json_alike(got: Any, wanted: Any, where: Any) -> None:
    if isinstance(wanted, list):
        assert len(got) == len(wanted), where
        for one, other in zip(got, wanted, strict=True):
            _assert_json_alike(one, other, where)
    elif isinstance(wanted, dict):
        assert got.keys() == wanted.keys(), where
        for name, other in wanted.items():
            _assert_json_alike(got[name], other, where)
    elif isinstance(wanted, float):
        np.testing.assert_array_max_ulp(np.float64(got), np.float64(wanted), maxulp=4)
    else:
        assert got == wanted, where


def _is_absent(value: Any) -> bool:
    return value is None or (isinstance(value, float) and bool(np.isnan(value)))


def test_the_shape_of_a_rode_is_the_same_to_the_last_bit_whatever_rows_stand_beside_it() -> None:
    rng = np.random.default_rng(5)
    rows = 20_000
    height = rng.uniform(2.0, 30.0, rows)
    given = {
        "rode_out": height * (1.0 + 10.0 ** rng.uniform(-4.0, 1.0, rows)),
        "chain": rng.choice([0.0, 5.0, 30.0, np.inf], rows),
        "height": height,
        "load": 10.0 ** rng.uniform(-1.0, 5.0, rows),
        "chain_weight": rng.uniform(5.0, 40.0, rows),
        "line_weight": rng.choice([-0.1, 0.0, 0.3], rows),
    }
    together = rode_shape(**given)
    for row in range(0, rows, 10):
        alone = rode_shape(**{name: float(column[row]) for name, column in given.items()})
        assert [float(one) for one in alone] == [float(column[row]) for column in together], row
