"""Draws the pictures of the README: `python examples/pictures/draw.py` writes them anew beside this file."""

import tomllib
from pathlib import Path

import anchorcalc

HERE = Path(__file__).parent


def pictures() -> dict[Path, str]:
    """Return every picture by its file, as it is drawn now."""
    listed = tomllib.loads((HERE / "pictures.toml").read_text(encoding="utf-8"))
    return {HERE / f"{name}.svg": anchorcalc.draw(anchorcalc.answer(one["question"], **one["inputs"])) + "\n" for name, one in listed.items()}


if __name__ == "__main__":
    for file, text in pictures().items():
        file.write_text(text, encoding="utf-8")
        print(file.name)
