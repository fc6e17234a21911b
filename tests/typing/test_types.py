"""User code with types is accepted by mypy and pyright, and what is wrong in it is found."""

import subprocess
import sys
from pathlib import Path

import pytest

FOLDER = Path(__file__).parent
WRONG = """
import anchorcalc
anchorcalc.rode_to_let_out(depth=4)
anchorcalc.rode_to_let_out(bow_height="1 m")
anchorcalc.rode_to_let_out(depth="4 m", scoop=7)
anchorcalc.rode_to_let_out(depth="4 m").results.rode_owt
anchorcalc.scope_now(rode_out="40 m", depth="4 m").read.tide_fall
answer: anchorcalc.ScopeNowAnswer = anchorcalc.rode_to_let_out(depth="4 m")
def so_far(reply: anchorcalc.Needs) -> object: return reply.read.dept
"""
CHECKERS = pytest.mark.parametrize("checker", [("mypy", "--strict", "--follow-imports=silent"), ("pyright",)], ids=["mypy", "pyright"])


@CHECKERS
def test_user_code_is_accepted_and_each_mistake_is_found(checker: tuple[str, ...], tmp_path: Path) -> None:
    wrong = tmp_path / "wrong.py"
    wrong.write_text(WRONG)
    command = [sys.executable, "-m", *checker, str(FOLDER / "user_code.py"), str(wrong)]
    done = subprocess.run(command, capture_output=True, text=True, cwd=FOLDER.parents[1], timeout=300, check=False)
    found = [line for line in done.stdout.splitlines() if "error" in line and ".py:" in line]
    assert found != []
    assert [line for line in found if "wrong.py:" not in line] == []
    for number in range(3, 10):
        assert any(f"wrong.py:{number}:" in line for line in found), f"line {number} was let pass:\n{done.stdout}"
