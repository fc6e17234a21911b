"""Count what tells of which question in the corpus: `python -m tests.reading.counting` writes `anchorcalc/reader/telling/counted.json`.

Multinomial logistic regression over the signs of `anchorcalc.reader.telling.telling`; a sign counts that stands in two texts or more.
`--held-out` writes nothing: it says how many texts are told rightly where a fifth of the corpus at a time was kept from the count.
"""

import json
import sys
from collections import Counter
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import msgspec
import numpy as np
from scipy.sparse import csr_matrix
from sklearn.linear_model import LogisticRegression
from sklearn.model_selection import StratifiedKFold, cross_val_predict

from anchorcalc.reader.restate import restated
from anchorcalc.reader.sentence import read
from anchorcalc.reader.telling import NOTHING_ASKED, SCALE, telling
from tests.reading.sent_back import sent_back

CORPUS = Path(__file__).parent / "corpus"
TABLE = Path(__file__).parents[2] / "anchorcalc" / "reader" / "telling" / "counted.json"
TEXTS, LEAST, PARTS = 2, 2, 5


def texts() -> tuple[list[set[str]], list[str]]:
    """Return the signs and the question of every text of the corpus that does not only go on from another."""
    signs, asked = [], []
    for line in lines():
        question = line["expect"].get("question") or (NOTHING_ASKED if line["expect"]["status"] == "cannot" else None)
        if question is not None and question != line.get("before", {}).get("question"):
            signs.append(telling(restated(read(line["text"]))[0].tokens))
            asked.append(question)
    return signs, asked


def matrix(signs: Sequence[set[str]], known: Sequence[str]) -> Any:
    """Return a row a text and a column a sign."""
    column = {sign: at for at, sign in enumerate(known)}
    places = [(row, column[sign]) for row, found in enumerate(signs) for sign in found if sign in column]
    rows, columns = zip(*places, strict=True)
    return csr_matrix((np.ones(len(places)), (rows, columns)), shape=(len(signs), len(known)))


def write(model: LogisticRegression, known: Sequence[str], *, table: Path, least: int) -> None:
    """Write the weights of a model in hundredths, a line an outcome, those left out that are less than the least."""
    rows: dict[str, dict[str, int]] = {}
    for name, start, weights in zip(model.classes_, model.intercept_, model.coef_, strict=True):
        hundredths = {sign: round(weight * SCALE) for sign, weight in zip(known, weights.tolist(), strict=True)}
        rows[str(name)] = {"": round(start * SCALE)} | {sign: weight for sign, weight in hundredths.items() if abs(weight) >= least}
    lines = ",\n".join(f"{json.dumps(name)}: {msgspec.json.encode(row).decode()}" for name, row in rows.items())
    table.write_text(f"{{\n{lines}\n}}\n", encoding="utf-8")


def lines() -> list[dict[str, Any]]:
    """Return the lines of the corpus, and some of them once more in the words of a choice."""
    held = [json.loads(text) for path in sorted(CORPUS.glob("*.jsonl")) for text in path.read_text(encoding="utf-8").splitlines()]
    return [*held, *sent_back(held)]


def main(arguments: list[str]) -> int:
    """Write the table, or say how well it tells what it has not seen."""
    signs, asked = texts()
    counts = Counter(sign for found in signs for sign in found)
    known = sorted(sign for sign, count in counts.items() if count >= TEXTS)
    model = LogisticRegression(C=3.0, max_iter=300)
    if "--held-out" in arguments:
        guessed = cross_val_predict(model, matrix(signs, known), asked, cv=StratifiedKFold(PARTS, shuffle=True, random_state=1))
        print(f"{sum(guessed == np.array(asked))} of {len(asked)} texts told rightly while held out")
        return 0
    model.fit(matrix(signs, known), asked)
    write(model, known, table=TABLE, least=LEAST)
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
