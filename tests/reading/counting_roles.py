"""Count what quantities stand for in the corpus: `python -m tests.reading.counting_roles` writes `anchorcalc/reader/telling/roles.json`.

Multinomial logistic regression over the signs of `anchorcalc.reader.likely.signs`; a sign counts that stands beside two quantities or more.
What a quantity stands for is told by the values that a line expects; where none has its value it is no input. `--held-out` writes nothing:
it says how many quantities are told rightly where a fifth of the lines at a time was kept from the count.
"""

import sys
from collections import Counter
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any, NamedTuple

import numpy as np
from sklearn.linear_model import LogisticRegression
from sklearn.model_selection import GroupKFold, cross_val_predict

from anchorcalc.answering.taking import Taken, take
from anchorcalc.catalogue import question as question_named
from anchorcalc.reader.between import BETWEEN
from anchorcalc.reader.fits import as_given, fit, with_unit
from anchorcalc.reader.likely import KINDS, NO_INPUT, signs
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.reading import taken_by
from anchorcalc.reader.restate import our_own, restated
from anchorcalc.reader.sentence import read
from anchorcalc.reader.slots import cued, roles
from anchorcalc.reader.standing import cues_of
from anchorcalc.reader.units_taken import CHOICES, kind_of
from anchorcalc.units.kinds import UNIT, Amount
from anchorcalc.vocabulary import TERMS
from tests.reading.counting import lines, matrix, write
from tests.reading.score import near, score

TABLE = Path(__file__).parents[2] / "anchorcalc" / "reader" / "telling" / "roles.json"
TIMES, LEAST, PARTS = 2, 6, 5
# What other values make: where such an input is expected and no quantity has its value, the others may be what made it.
MADE = frozenset(("depth", "tide_rise", "tide_fall", "rode_aboard", "rode_out", "marks", "transducer_depth", "reading", "draught"))


class Counted(NamedTuple):
    """A quantity of the corpus: its signs, what it stands for, and the line it stands in."""

    signs: set[str]
    term: str
    line: str


def quantities() -> Iterator[Counted]:
    """Yield the quantities of the corpus for which a line tells what they are."""
    for line in lines():
        if line["expect"].get("question"):
            yield from of_line(line)


def of_line(line: Mapping[str, Any]) -> Iterator[Counted]:
    """Yield the quantities of one line."""
    question = question_named(line["expect"]["question"])
    inputs = line["expect"].get("inputs", {})
    right = score(line).outcome == "right"
    sentence, _ = restated(read(line["text"]))
    sentence, _ = our_own(sentence, others="other_rode_out" in question.inputs)
    takes = taken_by(question, sentence.line)
    cues = cued(sentence.tokens, takes=takes)
    by_rule = {role.at: role.term for role in roles(sentence.tokens, known=cues)}
    told: list[tuple[int, list[str]]] = []
    for at, token in enumerate(sentence.tokens):
        if token.mention is not None and token.mention.kind in KINDS and isinstance(token.mention.amount, Amount):
            told.append((at, [name for name, raw in inputs.items() if stands_for(token.mention, name, raw)]))
    found = {name for _, names in told for name in names}
    unsure = not right and bool(MADE & set(inputs) - found)
    by_rule |= dict.fromkeys(_shown([(at, sentence.tokens[at].mention) for at, _ in told], by_rule, inputs.get("depth", "")), "reading")
    for at, names in told:
        term = _term(names, by_rule[at], frozenset(takes), right=right, unsure=unsure, inputs=frozenset(question.inputs))
        if term is not None:
            spelled = signs(sentence.tokens, at, question=question.name, cues=cues_of(cues[at], takes))
            yield Counted({one if isinstance(one, str) else " ".join(one) for one in spelled}, term, line["id"])


def _shown(told: list[tuple[int, Mention | None]], by_rule: Mapping[int, str | None], depth: str) -> list[int]:
    """Return where the reading of a sounder stands: with what the text tells of its zero it makes the depth that is expected."""
    zeros = [one.amount for at, one in told if one is not None and by_rule[at] in ("draught", "transducer_depth")]
    if len(zeros) != 1 or not isinstance(zeros[0], Amount) or not depth:
        return []
    shown = []
    for at, one in told:
        if one is not None and isinstance(one.amount, Amount) and one.amount.unit:
            zero = zeros[0] if zeros[0].unit else with_unit(zeros[0], unit=one.amount.unit)
            low, high = (end / UNIT[one.amount.unit].factor for end in (one.amount.low + zero.low, one.amount.high + zero.high))
            made = one._replace(amount=with_unit(Amount("number", 0.0, 0.0, "", low, high), unit=one.amount.unit))
            shown += [at] if one.kind == "length" and stands_for(made, "depth", depth) else []
    return shown


def _term(names: list[str], by_rule: str | None, takes: frozenset[str], *, right: bool, unsure: bool, inputs: frozenset[str]) -> str | None:
    """Return what a quantity stands for, None where the line does not tell."""
    if len(names) == 1:
        return names[0]
    if names:
        return by_rule if by_rule in names else None
    if right:
        return by_rule if by_rule in BETWEEN or (by_rule in takes and by_rule not in inputs) else NO_INPUT
    return None if unsure else NO_INPUT


def stands_for(mention: Mention, name: str, raw: Any) -> bool:
    """Say whether a quantity has the value that is expected for an input, in some unit where it has none."""
    term, taken = TERMS[name], take(term=TERMS[name], raw=raw)
    if not isinstance(taken, Taken) or not isinstance(taken.low, float) or not isinstance(mention.amount, Amount):
        return False
    if name == "slope":
        return mention.kind in ("ratio", "number") and mention.amount.value > 0.0 and near(1.0 / mention.amount.value, taken.low)
    how = fit(term=term, mention=mention)
    if how == "bare" and term.kind.has_unit:
        made = [with_unit(mention.amount, unit=unit) for unit in CHOICES.get(kind_of(term), ())]
    else:
        made = [as_given(term=term, mention=mention)] if how in ("yes", "bare") else []
    return any(near(one.low, taken.low) and near(one.high, taken.high) for one in made)


def main(arguments: list[str]) -> int:
    """Write the table, or say how well it tells what it has not seen."""
    found = list(quantities())
    counts = Counter(sign for one in found for sign in one.signs)
    known = sorted(sign for sign, count in counts.items() if count >= TIMES)
    rows, terms = matrix([one.signs for one in found], known), [one.term for one in found]
    model = LogisticRegression(C=0.7, max_iter=200)
    if "--held-out" in arguments:
        guessed = cross_val_predict(model, rows, terms, groups=[one.line for one in found], cv=GroupKFold(PARTS))
        print(f"{sum(guessed == np.array(terms))} of {len(terms)} quantities told rightly while held out")
        return 0
    model.fit(rows, terms)
    write(model, known, table=TABLE, least=LEAST)
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
