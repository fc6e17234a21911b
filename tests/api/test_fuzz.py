"""The application against its own document: data that fits and data that does not, every check of the fuzzer, a few cases an operation.

`python -m tests.api.fuzz` does the same with 200 cases an operation, and the fuzzer's other phases.
"""

from tests.api.fuzz import fuzzed


def test_every_operation_keeps_to_the_document() -> None:
    done = fuzzed("--phases", "examples,fuzzing", "--max-examples", "6", "--seed", "7")
    assert done.returncode == 0, done.stdout[-6000:] + done.stderr[-2000:]
