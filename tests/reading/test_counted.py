"""Weights side by side in one number are added up as they would be one by one."""

import math

import pytest

from anchorcalc.reader.counted import SCALE, Counted

HELD = {"rode": {"": -7, "much rode": 480, "rode": -482}, "load": {"": 31, "much rode": -480, "rode": 482, "knots": 11}, "none": {"": 0, "knots": -3}}


def one_by_one(signs: list[str]) -> dict[str, float]:
    """Return the logarithms of the shares by their definition."""
    sums = {name: (weights[""] + sum(weights.get(sign, 0) for sign in signs)) / SCALE for name, weights in HELD.items()}
    most = max(sums.values())
    whole = most + math.log(sum(math.exp(one - most) for one in sums.values()))
    return {name: one - whole for name, one in sums.items()}


@pytest.mark.parametrize("times", [0, 1, 66, 67, 68, 5_000])
@pytest.mark.parametrize("said", ["much rode", "rode", "knots"])
def test_however_many_signs_there_are_none_runs_over_into_another_outcome(times: int, said: str) -> None:
    sign = tuple(said.split(" ")) if " " in said else said
    assert Counted(HELD).logs([sign] * times) == pytest.approx(one_by_one([said] * times), rel=1e-12, abs=1e-12)
