"""Where a text speaks of another subject beside a question of ours: what asks of it is left aside, what tells of it is passed over."""

import re
from functools import lru_cache

from anchorcalc.reader.refusals import CLAIM, LAW, PART, REFUSALS, SENTENCE, refused


@lru_cache(maxsize=1)  # asked before a text is read and after, mostly of the same line
def foreign(line: str) -> tuple[int, int]:
    """Return where a part of a line begins and ends that asks what no calculation answers, or (-1, -1)."""
    for sentence in SENTENCE.finditer(line):
        for part in PART.finditer(sentence[0]) if sentence[0].endswith("?") else ():
            if refused(f" {part[0].strip()} ", plain=True):
                return sentence.start() + part.start(), sentence.start() + part.end()
    return -1, -1


def own_parts(line: str) -> list[tuple[int, int]]:
    """Return where the clauses of a line stand that no word of another subject is in, none where all are so or none is."""
    clauses = [(one.start(), one.end()) for one in _CLAUSE.finditer(line)]
    kinds = {(start, end): refused(f" {line[start:end].strip()} ", plain=False) for start, end in clauses}
    own = [clause for clause, found in kinds.items() if not found]
    by_law = any(found and REFUSALS[found[0]].why == LAW and line.count(" ", *clause) < _LONG for clause, found in kinds.items())
    return own if len(own) < len(clauses) and not by_law else []


def at_law(line: str) -> bool:
    """Say whether a text speaks of a claim or of liability: no figures in it, however plain, make that a sum."""
    return _AT_LAW.search(line) is not None


_AT_LAW = re.compile(rf" {CLAIM}(?= )")
_LONG = 4  # `by law, how much must I carry?`: so short, it speaks of what follows
_CLAUSE = re.compile(r"[^.!?;:,()\n–]+[.!?;:,()\n–]?")
