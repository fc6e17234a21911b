"""Every example of the README runs."""

import doctest
import re
import shlex
import subprocess
import sys
from pathlib import Path
from urllib.parse import urlsplit

import pytest
from litestar.testing import TestClient

ROOT = Path(__file__).parents[2]
README = (ROOT / "README.md").read_text(encoding="utf-8")
BLOCKS = re.findall(r"```console\n(.*?)```", README, re.S)
LINES = [line.removeprefix("$ ") for block in BLOCKS for line in block.splitlines() if line.startswith("$ ")]
COMMANDS = [line for line in LINES if line.startswith("anchorcalc ") and "serve" not in line and "fleet" not in line]
CALLS = [line for line in LINES if line.startswith("curl ")]


def test_python_of_the_readme_says_what_it_prints(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(ROOT)
    blocks = re.findall(r"```python\n(.*?)```", README, re.S)
    assert len(blocks) >= 3
    examples = doctest.DocTestParser().get_doctest("\n".join(blocks), {}, "README", "README.md", 0)  # one session, read downwards
    runner = doctest.DocTestRunner(verbose=False)
    runner.run(examples)
    assert runner.failures == 0


def test_there_are_examples_of_every_door() -> None:
    assert len(COMMANDS) >= 5
    assert len(CALLS) >= 5


@pytest.mark.parametrize("line", COMMANDS)
def test_command_of_the_readme_answers(line: str, tmp_path: Path) -> None:
    words = shlex.split(line.partition(" > ")[0])[1:]
    done = subprocess.run([sys.executable, "-m", "anchorcalc", *words], cwd=ROOT, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    assert done.stdout.strip()
    if "draw" in words:
        assert done.stdout.startswith("<svg")


@pytest.mark.parametrize("line", CALLS)
def test_request_of_the_readme_answers(line: str) -> None:
    import anchorcalc_api

    words = shlex.split(line)
    headers = dict(words[place + 1].split(": ") for place, word in enumerate(words) if word == "-H")
    body = next((words[place + 1] for place, word in enumerate(words) if word == "-d"), None)
    url = urlsplit(next(word for word in words if word.startswith("http")))
    path = f"{url.path}?{url.query}" if url.query else url.path
    with TestClient(app=anchorcalc_api.create_app()) as client:
        reply = client.post(path, content=body, headers=headers) if body else client.get(path, headers=headers)
    assert reply.status_code in (200, 201), reply.text
    assert reply.content


def test_set_up_ends_by_answering_a_question() -> None:
    text = re.search(r'bin/anchorcalc (".*?")', README)
    assert text is not None
    done = subprocess.run([sys.executable, "-m", "anchorcalc", *shlex.split(text[1])], cwd=ROOT, capture_output=True, text=True, check=False)
    assert done.returncode == 0
    assert done.stdout.startswith("Let out 36 m of rode.")
