"""The short way of reading a quantity gives what the whole grammar gives."""

import msgspec
import pytest

from anchorcalc.answering.taking import take
from anchorcalc.errors import Fault
from anchorcalc.units.kinds import RATIO, spelled_plainly
from anchorcalc.vocabulary import TERMS

NUMBERS = ("0", "1", "1.0", "0.30", "2.5", "7", "+12", "-3", "0012.50", "0.00001", "123456789.125", "1234567890123.4", "3.14159265358979")
BY_UNIT = [name for name, term in TERMS.items() if term.kind.has_unit and spelled_plainly(term.kind.name)]


@pytest.mark.parametrize("name", BY_UNIT)
def test_a_quantity_written_plainly_is_taken_as_the_whole_grammar_takes_it(name: str) -> None:
    term = TERMS[name]
    for spelling in spelled_plainly(term.kind.name):
        for number in NUMBERS:
            plainly, at_length = (take(term=term, raw=f"{number}{gap}{spelling}") for gap in (" ", "  "))  # two spaces: no longer plain
            if isinstance(at_length, Fault):
                at_length = msgspec.structs.replace(at_length, given=at_length.given.replace("  ", " ", 1))
            assert plainly == at_length


@pytest.mark.parametrize("name", [name for name, term in TERMS.items() if term.kind is RATIO])
def test_a_ratio_written_as_a_number_is_the_ratio_to_one(name: str) -> None:
    term = TERMS[name]
    for number in ("2", "5.5", "7", "7.0", "11.25"):
        assert take(term=term, raw=number) == take(term=term, raw=f"{number}:1")
