"""No expression that is looked for only where one of its words stands would find anything without them."""

import re
from importlib import import_module
from pathlib import Path
from pkgutil import iter_modules

import pytest

import anchorcalc.reader
from anchorcalc.reader.restate import restated
from anchorcalc.reader.sentence import read
from anchorcalc.reader.sought import Sought, sought
from tests.reading.score import lines

CORPUS = sorted((Path(__file__).parent / "corpus").glob("*.jsonl"))


def sought_by(module: str) -> list[Sought]:
    """All that a module seeks, by itself or in a row."""
    held = vars(import_module(f"anchorcalc.reader.{module}")).values()
    return [
        one for value in held for one in ([value] if isinstance(value, Sought) else value if type(value) is tuple else []) if isinstance(one, Sought)
    ]


SOUGHT = {name: found for _, name, _ in iter_modules(anchorcalc.reader.__path__) if (found := sought_by(name))}


@pytest.fixture(scope="module")
def corpus() -> list[tuple[str, frozenset[str]]]:
    """Every line of the corpus as it is searched, with its words."""
    sentences = [restated(read(line["text"]))[0] for path in CORPUS for line in lines(path)]
    return [(one.line, frozenset(token.word for token in one.tokens)) for one in sentences]


@pytest.mark.parametrize("name", SOUGHT)
def test_nothing_is_found_without_the_words_that_it_needs(name: str, corpus: list[tuple[str, frozenset[str]]]) -> None:
    hidden = [(one.regex.pattern, line) for one in SOUGHT[name] for line, words in corpus if not one.perhaps(words) and one.regex.search(line)]
    assert not hidden, hidden[0]


def test_what_is_sought_is_found_only_beside_its_words() -> None:
    one = sought(re.compile(" no .* more "), "more")
    line = " no chain any more "
    assert [found[0] for found in one.within(line, frozenset(line.split()))] == [line]
    assert list(one.within(line, frozenset(("no", "chain")))) == []
