"""The answer types of all questions, made when first asked for: `RodeToLetOutAnswer` and its `read`, `RodeToLetOutRead`."""

from typing import Any

from anchorcalc.answering.replies import answer_class, camel, read_class
from anchorcalc.catalogue import names, question


def __getattr__(name: str) -> Any:
    """Find `…Answer` and `…Read` by the question's name."""
    for ending, make in (("Answer", answer_class), ("Read", read_class)):
        if name.endswith(ending):
            for known in names():
                if camel(known) + ending == name:
                    globals()[name] = make(question(known))
                    return globals()[name]
    raise AttributeError(name)
