"""The long fuzz of the REST layer: `python -m tests.api.fuzz [CASES]`, 200 cases an operation where no other number is given.

Starts a server of its own and runs every check and phase of the fuzzer against it.
"""

import os
import subprocess
import sys

from tests.api.server import ROOT, served


def fuzzed(*arguments: str) -> subprocess.CompletedProcess[str]:
    """Run the fuzzer against a server of its own, and return what it said."""
    command = ["schemathesis", "--config-file", str(ROOT / "tests/api/schemathesis.toml"), "run", "--checks", "all", *arguments]
    with served() as server:
        environment = os.environ | {"SCHEMATHESIS_HOOKS": "tests.api.formats"}
        command += ["--url", server.url, f"{server.url}/openapi.json"]
        return subprocess.run(command, cwd=ROOT, env=environment, capture_output=True, text=True, check=False)


if __name__ == "__main__":
    done = fuzzed("--max-examples", sys.argv[1] if len(sys.argv) > 1 else "200")
    print(done.stdout + done.stderr)
    sys.exit(done.returncode)
