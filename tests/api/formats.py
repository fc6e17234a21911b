"""Texts of each kind, for fuzzing: mostly such as people write, so that fuzzing reaches the questions and not only the gate."""

from collections.abc import Sequence

import schemathesis
from hypothesis import strategies as st

UNITS: dict[str, Sequence[str]] = {
    "length": ("m", "ft", "fathoms", "cm"),
    "mass": ("kg", "lb", "t"),
    "speed": ("kn", "m/s", "mph"),
    "force": ("N", "kN", "lbf", "kgf"),
    "angle": ("deg", "rad"),
    "power": ("kW", "hp"),
    "time": ("s", "min"),
}
_SIZES = st.decimals(min_value="0.1", max_value="120", places=2).map(str)
_CLOCKS = st.tuples(st.integers(0, 23), st.integers(0, 59)).map(lambda at: f"{at[0]:02d}:{at[1]:02d}")
_POSITIONS = st.tuples(st.decimals(min_value="59.3", max_value="59.32", places=4), st.decimals(min_value="18.9", max_value="18.92", places=4)).map(
    lambda at: f"{at[0]} N, {at[1]} E"
)


def _quantities(units: Sequence[str]) -> st.SearchStrategy[str]:
    one = st.tuples(_SIZES, st.sampled_from(units)).map(lambda said: f"{said[0]} {said[1]}")
    span = st.tuples(
        st.decimals(min_value="1", max_value="9", places=1), st.decimals(min_value="9", max_value="30", places=1), st.sampled_from(units)
    )
    return st.one_of(one, span.map(lambda said: f"{said[0]}..{said[1]} {said[2]}"), st.text(min_size=1, max_size=30))


def register() -> None:
    """Tell the fuzzer how texts of each format look."""
    for kind, units in UNITS.items():
        schemathesis.openapi.format(kind, _quantities(units))
    schemathesis.openapi.format(
        "ratio", st.one_of(st.integers(2, 15).map(lambda to: f"{to}:1"), st.decimals(min_value="1.5", max_value="12", places=1).map(str))
    )
    schemathesis.openapi.format("slope", st.integers(2, 60).map(lambda out: f"1:{out}"))
    schemathesis.openapi.format("clock", _CLOCKS)
    schemathesis.openapi.format("position", _POSITIONS)
    fixes = st.lists(st.tuples(_CLOCKS, _POSITIONS).map(" ".join), min_size=1, max_size=6).map("; ".join)
    schemathesis.openapi.format("fixes", fixes)
    lengths = st.lists(st.integers(1, 99), min_size=1, max_size=5, unique=True).map(sorted)
    schemathesis.openapi.format("lengths", lengths.map(lambda marks: ",".join(str(one) for one in marks) + " m"))


register()
