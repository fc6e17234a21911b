"""List the corpus lines that do not read right: `python -m tests.reading.list_misses` writes misses.txt, to be looked at before it is committed."""

from tests.reading.score import lines, score
from tests.reading.test_corpus import FILES, MISSES

HEAD = "# Lines of the corpus that do not read as expected yet (tests/reading/list_misses.py): id, outcome. Silently wrong ones come first.\n"


def main() -> None:
    """Write the list."""
    missed = [(one.outcome, one.line["id"]) for path in FILES for one in map(score, lines(path)) if one.outcome != "right"]
    MISSES.write_text(HEAD + "".join(f"{name} {outcome}\n" for outcome, name in sorted(missed)), encoding="utf-8")


if __name__ == "__main__":
    main()
