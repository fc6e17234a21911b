"""Count which words tell of which question, in the corpus: `python -m tests.reading.telling` writes `anchorcalc/reader/telling/counted.toml`.

A word (or two in a row) is kept for a question where it stands at least three times as often as elsewhere and at least three times in all.
Its weight is the logarithm of how much more often, in tenths and by steps of five.
"""

import json
import math
from collections import Counter, defaultdict
from collections.abc import Iterator
from pathlib import Path

from anchorcalc.reader.intent import telling_words
from anchorcalc.reader.restate import restated
from anchorcalc.reader.sentence import read

CORPUS = Path(__file__).parent / "corpus"
TABLE = Path(__file__).parents[2] / "anchorcalc" / "reader" / "telling" / "counted.toml"
TIMES, SHARE, LEAST, SCALE = 3, 0.5, 1.2, 0.4


def lines() -> Iterator[tuple[str, str]]:
    """Yield the line of words and the question of every text that asks one."""
    for path in sorted(CORPUS.glob("*.jsonl")):
        for text in path.read_text(encoding="utf-8").splitlines():
            line = json.loads(text)
            question = line["expect"].get("question")
            if question and "before" not in line:
                yield restated(read(line["text"]))[0].line, question


def counted() -> dict[str, dict[int, list[str]]]:
    """Return the words by question and weight."""
    asked: Counter[str] = Counter()
    held: dict[str, Counter[str]] = defaultdict(Counter)
    everywhere: Counter[str] = Counter()
    for line, question in lines():
        asked[question] += 1
        for word in set(telling_words(line)):
            held[question][word] += 1
            everywhere[word] += 1
    total = sum(asked.values())
    found: dict[str, dict[int, list[str]]] = {}
    for question in sorted(asked):
        by_weight: dict[int, list[str]] = defaultdict(list)
        for word, count in held[question].items():
            here = (count + SHARE) / (asked[question] + 2 * SHARE)
            there = (everywhere[word] - count + SHARE) / (total - asked[question] + 2 * SHARE)
            if everywhere[word] >= TIMES and math.log(here / there) > LEAST:
                by_weight[5 * round(math.log(here / there) * SCALE * 2)].append(word)
        found[question] = {weight: sorted(by_weight[weight]) for weight in sorted(by_weight, reverse=True)}
    return found


def written(found: dict[str, dict[int, list[str]]]) -> str:
    """Return the table as a file."""
    text = "# Words that tell of a question, counted in the corpus (tests/reading/telling.py writes this file): weight in tenths, then the words.\n"
    for question, by_weight in found.items():
        text += f"\n[{question}]\n"
        for weight, words in by_weight.items():
            text += f'{weight} = "{" | ".join(words)}"\n'
    return text


if __name__ == "__main__":
    TABLE.write_text(written(counted()), encoding="utf-8")
