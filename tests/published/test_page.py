"""The validation page has every figure that the library stands on."""

import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).parents[2]


def test_no_figure_of_the_tables_could_change_without_a_published_test_failing() -> None:
    done = subprocess.run([sys.executable, "-m", "tests.published.figures"], capture_output=True, text=True, cwd=ROOT, timeout=600, check=False)
    assert (done.stdout.strip(), done.returncode) == ("", 0), done.stderr


def test_every_value_on_the_page_has_a_source_and_says_how_it_was_come_by() -> None:
    rows = [line.split(" | ") for line in (ROOT / "tests/published/README.md").read_text(encoding="utf-8").splitlines() if line.startswith("| ")]
    values = [row for row in rows if row[0] not in ("| what is checked", "| ---")]
    assert len(values) > 800
    assert [row for row in values if len(row) < 6 or not row[4].strip() or not row[5].strip(" |")] == []
