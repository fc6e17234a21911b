"""Marks on the rode, shared by the questions that count them."""

from typing import Any

import numpy as np

from anchorcalc.declare import Shown, Values
from anchorcalc.physics.arrays import Array
from anchorcalc.physics.marks import listed_marks_reached, marks_reached
from anchorcalc.vocabulary.rode import MARKS_FROM

CHAIN_END = MARKS_FROM.code("chain_end")
MARKS_GROUPS = (("mark_interval",), ("marks",))


def mark_results(
    *,
    rode_out: Array,
    chain: Array,
    marks_from: Array,
    mark_interval: Array | None,
    marks: Any,
    height: Array | None,
) -> dict[str, Any]:
    """Return where a length of rode stands among its marks, and the scope at the mark to stop at."""
    before_marks = np.where(np.equal(marks_from, CHAIN_END), chain, 0.0)
    length = rode_out - before_marks
    if marks is not None:
        place = listed_marks_reached(length=length, marks=np.asarray(marks, dtype=float))
    elif mark_interval is not None:
        place = marks_reached(length=length, mark_interval=mark_interval)
    else:
        return {}
    out = {
        "mark": place.mark,
        "past": place.past,
        "to_next": place.to_next + np.maximum(-length, 0.0),  # chain that is still to go out before the marks begin
        "stop_at": np.where(np.isnan(place.stop_length), np.nan, place.stop_at),
    }
    if height is not None:
        out["scope_there"] = (place.stop_length + before_marks) / height
    return out


def mark_sentence(s: Shown, v: Values) -> str:
    """Return the mark to stop at in words: at the next, or so much past the last."""
    if v["marks_from"] == CHAIN_END and v["rode_out"] <= v["chain"]:
        return f"with {s.rode_out} of chain out, before the marks begin"
    past = f"{s.past} past mark {s.mark}" if v["mark"] > 0 else f"{s.past} from where the marks begin"
    if v["past"] == 0 and v["mark"] > 0:
        return f"at mark {s.mark}"
    if not hasattr(s, "stop_at"):
        return f"{past}, the last one"
    if "rode_aboard" in v and v["rode_out"] + v["to_next"] > (v["rode_aboard"] - v["reserve"]) * (1.0 + 1e-9):
        return f"{past} (mark {s.stop_at} is beyond the rode aboard)"
    return f"at mark {s.stop_at}, or {past}"
