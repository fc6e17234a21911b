"""Depth from the sounder. Source: definition of sounder offsets in hydrographic practice (common practice): reading + depth of its zero."""

import numpy.testing as npt
import pytest

from anchorcalc.catalogue.true_depth import solve
from anchorcalc.vocabulary.water import READS_FROM


@pytest.mark.parametrize(("reads_from", "reading"), [("surface", 6.0), ("transducer", 5.5), ("keel", 4.5)])
def test_six_metres_of_water_are_six_from_wherever_the_sounder_reads(reads_from: str, reading: float) -> None:
    depth = solve(reading=reading, reads_from=READS_FROM.code(reads_from), transducer_depth=0.5, draught=1.5)["depth"]
    npt.assert_allclose(depth, 6, rtol=1e-12)
