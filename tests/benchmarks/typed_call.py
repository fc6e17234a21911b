"""How long a typed call takes, and the import: as ratios, so that the figures hold on any machine.

`python -m tests.benchmarks.typed_call` prints them. A call with five text inputs is set beside the same sum in plain pint text
quantities, with texts that come again, as they do, and with texts that were never seen. The import is set beside that of numpy and
msgspec. Processor time, the least of several rounds in turn, since a machine is seldom idle.
"""

import os
import subprocess
import sys
import time
from collections.abc import Callable
from typing import Any

import anchorcalc

CALLS, ROUNDS = 300, 9
LEAST_CALL_RATIO, LEAST_NEW_RATIO, MOST_IMPORT_RATIO = 5.0, 5.0, 1.25


def inputs(number: int) -> dict[str, Any]:
    """Five texts that were not given before."""
    part = number * 1e-6
    return {
        "depth": f"{4 + part:.6f} m",
        "bow_height": f"{1 + part:.6f} m",
        "tide_rise": f"{0.5 + part:.6f} m",
        "rode_aboard": f"{60 + part:.6f} m",
        "scope": f"{5 + part:.6f}",
    }


def by_pint(registry: Any, given: dict[str, str]) -> Any:
    """The same sum in plain pint: rode out, total height, enough, and the scope that is possible."""
    depth, bow_height, tide_rise, aboard, scope = (registry.Quantity(text) for text in given.values())
    height = (depth + bow_height + tide_rise).to("meter")
    rode = height * scope
    return rode, height, aboard >= rode, (aboard / height).to("")


def seconds_a_call(calls: dict[str, Callable[[dict[str, Any]], Any]]) -> dict[str, float]:
    """Least processor time of one call of each, over rounds in turn, each with texts of its own."""
    least = dict.fromkeys(calls, float("inf"))
    for turn in range(ROUNDS):
        for name, call in calls.items():
            sets = [inputs(1 + turn * CALLS + number) for number in range(CALLS)]
            before = time.process_time()
            for one in sets:
                call(one)
            least[name] = min(least[name], (time.process_time() - before) / CALLS)
    return least


def seconds_of_programs(programs: dict[str, str]) -> dict[str, float]:
    """Least processor time of a fresh interpreter that runs each program, over rounds in turn, less that of one that runs nothing."""
    least = dict.fromkeys(("", *programs), float("inf"))
    for _ in range(ROUNDS):
        for name, program in {"": "pass", **programs}.items():
            before = os.times()
            subprocess.run([sys.executable, "-c", program], check=True)
            after = os.times()
            spent = after.children_user + after.children_system - before.children_user - before.children_system
            least[name] = min(least[name], spent)
    return {name: least[name] - least[""] for name in programs}


def main() -> int:
    """Print the times and ratios; 1 where one is not what it should be."""
    import pint

    registry = pint.UnitRegistry(cache_folder=None)
    by_pint(registry, inputs(0))
    anchorcalc.rode_to_let_out(**inputs(0))
    known = inputs(0)
    call = seconds_a_call(
        {
            "new": lambda one: anchorcalc.rode_to_let_out(**one),
            "seen": lambda one: anchorcalc.rode_to_let_out(**known),
            "pint": lambda one: by_pint(registry, one),
        }
    )
    start = seconds_of_programs(
        {
            "base": "import numpy, msgspec",
            "bare": "import anchorcalc",
            "answered": "import anchorcalc; anchorcalc.rode_to_let_out(depth='4 m')",
        }
    )
    seen, new, loaded = call["pint"] / call["seen"], call["pint"] / call["new"], start["bare"] / start["base"]
    print(f"pint: {call['pint'] * 1e6:.0f} µs")
    print(f"typed call, texts that come again: {call['seen'] * 1e6:.0f} µs, {seen:.1f} times as fast (at least {LEAST_CALL_RATIO})")
    print(f"typed call, five new texts: {call['new'] * 1e6:.0f} µs, {new:.1f} times as fast (at least {LEAST_NEW_RATIO})")
    print(f"import of numpy and msgspec: {start['base'] * 1e3:.0f} ms")
    print(f"import anchorcalc: {start['bare'] * 1e3:.0f} ms, ratio {loaded:.2f} (at most {MOST_IMPORT_RATIO})")
    print(f"the same with the first answer: {start['answered'] * 1e3:.0f} ms, ratio {start['answered'] / start['base']:.2f}")
    return 0 if seen >= LEAST_CALL_RATIO and new >= LEAST_NEW_RATIO and loaded <= MOST_IMPORT_RATIO else 1


if __name__ == "__main__":
    sys.exit(main())
