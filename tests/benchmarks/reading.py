"""How long `ask` takes over a question of 20 to 40 words, beside a general parser of quantities from PyPI (quantulum3) over the same texts.

`python -m tests.benchmarks.reading` prints both and their ratio, and what the parts of reading take. quantulum3 only finds the quantities;
`ask` reads, settles and answers. Processor time, the least of several rounds in turn over the same different texts; no reply is kept from one
round to the next. `--alone` leaves quantulum3 out.
"""

import random
import sys
import time
from collections.abc import Callable
from pathlib import Path
from typing import TypeVar

from anchorcalc import ask
from anchorcalc.catalogue import question
from anchorcalc.doors.ask import LONGEST
from anchorcalc.reader.fill import filled
from anchorcalc.reader.intent import weigh
from anchorcalc.reader.restate import our_own, restated
from anchorcalc.reader.sentence import read
from tests.reading.score import lines

CORPUS = Path(__file__).parents[1] / "reading" / "corpus"
TEXTS, ROUNDS = 200, 9
Given = TypeVar("Given")
LONG = "We lie in 6 m with 40 m out, the tide rises 2 m, bow 1.2 m. "


def texts() -> list[str]:
    """Questions of the corpus of 20 to 40 words that go on from no other, in a mixed order that stays the same."""
    found = [line["text"] for path in sorted(CORPUS.glob("*.jsonl")) for line in lines(path) if "before" not in line]
    found = [text for text in found if 20 <= len(text.split()) <= 40]
    random.Random(1).shuffle(found)
    return found[:TEXTS]


def seconds(calls: dict[str, Callable[[Given], object]], given: list[Given]) -> dict[str, float]:
    """Least processor time a text of each call, over rounds in turn."""
    least = dict.fromkeys(calls, float("inf"))
    for _ in range(ROUNDS):
        for name, call in calls.items():
            begun = time.process_time()
            for text in given:
                call(text)
            least[name] = min(least[name], (time.process_time() - begun) / len(given))
    return least


def parts(given: list[str]) -> dict[str, float]:
    """Least processor time a text of each part of reading."""
    tokens = [read(text) for text in given]
    plainer = [restated(one)[0] for one in tokens]
    own = [(our_own(one, others=False)[0], question(weighed[0].question)) for one in plainer if (weighed := weigh(one.tokens))]
    return {
        **seconds({"words and quantities": read}, given),
        **seconds({"what is taken back": restated}, tokens),
        **seconds({"which question": lambda one: weigh(one.tokens)}, plainer),
        **seconds({"its inputs": lambda one: filled(sentence=one[0], question=one[1], system=None, earlier={}, boat={})}, own),
    }


def main(arguments: list[str]) -> None:
    """Print the times."""
    given = texts()
    calls: dict[str, Callable[[str], object]] = {"ask": ask}
    if "--alone" not in arguments:
        from quantulum3 import classifier, parser

        classifier.USE_CLF = False  # its classifier was pickled with an old scikit-learn, and does not load
        calls["quantulum3"] = parser.parse
    took = seconds(calls, given)
    print(f"{len(given)} questions of 20 to 40 words: " + ", ".join(f"{name} {each * 1e6:.0f} µs" for name, each in took.items()))
    if "quantulum3" in took:
        print(f"quantulum3 / ask: {took['quantulum3'] / took['ask']:.1f}")
    print("of it: " + ", ".join(f"{name} {each * 1e6:.0f} µs" for name, each in parts(given).items()) + ", and the rest the answer")
    long = (LONG * LONGEST)[:LONGEST]
    quarter = seconds({"ask": ask}, [long[: LONGEST // 4]])["ask"]
    whole = seconds({"ask": ask}, [long])["ask"]
    print(f"{LONGEST} characters: {whole * 1e3:.0f} ms, {whole / quarter:.1f} times a quarter of them")


if __name__ == "__main__":
    main(sys.argv[1:])
