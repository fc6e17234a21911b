"""The OpenAPI document against tools that are not ours: two validators, a linter, and two generated clients that must compile and work.

`python -m tests.api.contract_checks` needs Node and the development dependencies; it installs the packages of `tests/api/npm`.
"""

import json
import os
import subprocess
import sys
from pathlib import Path
from tempfile import TemporaryDirectory

from openapi_spec_validator import validate

from anchorcalc_api.schema import text
from tests.api.breaking import breaking
from tests.api.server import ROOT, served

NPM = ROOT / "tests/api/npm"
DOCUMENT, RELEASED = ROOT / "openapi/v1.json", ROOT / "openapi/released/v1.json"


def run(*command: str, folder: Path = NPM, **environment: str) -> str:
    """Run a command that must succeed, and return what it said."""
    done = subprocess.run(command, cwd=folder, env=os.environ | environment, capture_output=True, text=True, check=False)
    said = done.stdout + done.stderr
    if done.returncode:
        sys.exit(f"{' '.join(command)} failed:\n{said}")
    return said


def check_document() -> None:
    """Hold the kept document against the declarations, the specification and what was released."""
    if DOCUMENT.read_text(encoding="utf-8") != text():
        sys.exit("openapi/v1.json is out of date: python -m anchorcalc_api.schema openapi/v1.json")
    document = json.loads(text())
    validate(document)
    found = breaking(old=json.loads(RELEASED.read_text(encoding="utf-8")), new=document)
    if found:
        sys.exit("breaks what was released:\n" + "\n".join(found))
    print("the document is current, valid (openapi-spec-validator), and breaks nothing")


def check_with_node() -> None:
    """Validate and lint the document, and make the client; a single warning fails."""
    run("npm", "ci", "--no-audit", "--no-fund")
    print(run("node", "parse.mjs", str(DOCUMENT)).strip())
    linted = run("npx", "redocly", "lint", "--config", "redocly.yaml", "--format", "summary", str(DOCUMENT))
    if "warning" in linted.lower().replace("deprecation warning", ""):
        sys.exit(linted)
    print("the linter has nothing to say")
    run("npx", "openapi-typescript", str(DOCUMENT), "-o", "work/v1.d.ts")
    run("npx", "tsc", "-p", ".")
    print("the generated TypeScript client compiles under strict")


def check_clients() -> None:
    """Run both generated clients against a server."""
    with TemporaryDirectory() as folder, served() as server:
        print(run("node", "work/client.js", server.url).strip())
        generated = Path(folder) / "generated"
        places = ("--path", str(DOCUMENT), "--output-path", str(generated), "--config", str(ROOT / "tests/api/python_client.yaml"))
        said = run("openapi-python-client", "generate", *places, "--meta", "none")
        if "warning" in said.lower():
            sys.exit(said)
        script = str(ROOT / "tests/api/python_client.py")
        run(
            sys.executable,
            "-m",
            "mypy",
            "--strict",
            "--cache-dir",
            f"{folder}/cache",
            "--follow-imports=silent",
            script,
            folder=Path(folder),
            MYPYPATH=folder,
        )
        print(run(sys.executable, script, server.url, folder=Path(folder), PYTHONPATH=folder).strip())


if __name__ == "__main__":
    check_document()
    check_with_node()
    check_clients()
