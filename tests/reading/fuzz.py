"""Search with coverage for a text that `ask` falls over: `python -m tests.reading.fuzz [seconds]` (needs atheris: pip install atheris).

Seeds are texts of the corpus, mutated byte by byte and read as Latin-1. Anything but a reply or an error of the family ends the search.
"""

import sys
import tempfile
from pathlib import Path

import atheris

with atheris.instrument_imports(include=["anchorcalc.reader", "anchorcalc.doors.ask"]):
    import anchorcalc
    import anchorcalc.doors.ask

from anchorcalc.errors import AnchorcalcError
from tests.reading.score import lines

SEEDS = Path(__file__).parent / "corpus"


def one(raw: bytes) -> None:
    """Ask one text."""
    try:
        reply = anchorcalc.ask(raw.decode("latin-1"))
    except AnchorcalcError:
        return
    assert reply.status in ("answered", "needs", "unclear", "cannot")


def main(seconds: str = "60") -> None:
    """Search for so many seconds."""
    with tempfile.TemporaryDirectory() as folder:
        for path in sorted(SEEDS.glob("*.jsonl")):
            for line in list(lines(path))[::10]:
                (Path(folder) / line["id"]).write_bytes(line["text"].encode("latin-1", errors="ignore"))
        atheris.Setup([sys.argv[0], f"-max_total_time={seconds}", "-max_len=600", folder], one)
        atheris.Fuzz()


if __name__ == "__main__":
    main(*sys.argv[1:2])
