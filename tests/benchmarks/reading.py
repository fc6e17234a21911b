"""How long `ask` takes over a question of some thirty words, beside a general parser of quantities from PyPI (quantulum3) over the same texts.

`python -m tests.benchmarks.reading` prints both and their ratio. quantulum3 only finds the quantities; `ask` reads, settles and answers.
Processor time, the least of several rounds in turn, each over the same texts of the corpus.
"""

import time
from collections.abc import Callable
from pathlib import Path

from anchorcalc import ask
from anchorcalc.doors.ask import LONGEST
from tests.reading.score import lines

CORPUS = Path(__file__).parents[1] / "reading" / "corpus"
TEXTS, ROUNDS = 60, 5
LONG = "We lie in 6 m with 40 m out, the tide rises 2 m, bow 1.2 m. "


def texts() -> list[str]:
    """Questions of the corpus of 25 to 35 words."""
    found = [line["text"] for path in sorted(CORPUS.glob("*.jsonl")) for line in lines(path)]
    return [text for text in found if 25 <= len(text.split()) <= 35][:TEXTS]


def seconds(calls: dict[str, Callable[[str], object]], given: list[str]) -> dict[str, float]:
    """Least processor time a text of each call, over rounds in turn."""
    least = dict.fromkeys(calls, float("inf"))
    for _ in range(ROUNDS):
        for name, call in calls.items():
            begun = time.process_time()
            for text in given:
                call(text)
            least[name] = min(least[name], (time.process_time() - begun) / len(given))
    return least


def main() -> None:
    """Print the times."""
    from quantulum3 import classifier, parser

    classifier.USE_CLF = False  # its classifier was pickled with an old scikit-learn, and does not load

    given = texts()
    took = seconds({"ask": ask, "quantulum3": parser.parse}, given)
    print(f"{len(given)} questions of 25 to 35 words: ask {took['ask'] * 1e6:.0f} µs, quantulum3 {took['quantulum3'] * 1e6:.0f} µs")
    print(f"quantulum3 / ask: {took['quantulum3'] / took['ask']:.1f}")
    long = (LONG * LONGEST)[:LONGEST]
    quarter = seconds({"ask": ask}, [long[: LONGEST // 4]])["ask"]
    whole = seconds({"ask": ask}, [long])["ask"]
    print(f"{LONGEST} characters: {whole * 1e3:.0f} ms, {whole / quarter:.1f} times a quarter of them")


if __name__ == "__main__":
    main()
