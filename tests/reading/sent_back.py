"""Corpus lines once more, in the words by which `ask` offers a reading: what is sent back must read as it was offered."""

from collections.abc import Iterator, Mapping
from typing import Any

from anchorcalc.catalogue import question as question_named
from anchorcalc.vocabulary import TERMS

EVERY = 3
_WORDLY = ("fixes", "anchor_at", "marks", "spare_anchor")


def sent_back(lines: list[Mapping[str, Any]]) -> Iterator[dict[str, Any]]:
    """Yield every third line that stands on inputs, put as a choice of `ask`."""
    answered = [line for line in lines if line["expect"].get("inputs") and line["expect"]["status"] in ("answered", "needs")]
    for line in answered[::EVERY]:
        question = question_named(line["expect"]["question"])
        inputs = {name: raw for name, raw in line["expect"]["inputs"].items() if name in question.inputs and name not in _WORDLY}
        said = ", ".join(f"{name.replace('_', ' ')} {raw}" for name in TERMS if (raw := inputs.get(name)) is not None)
        text = f"{question.asks[0][:1].upper()}{question.asks[0][1:]}? {said[:1].upper()}{said[1:]}."
        yield {"id": f"{line['id']}-back", "text": text, "expect": {"status": "answered", "question": question.name, "inputs": inputs}}
