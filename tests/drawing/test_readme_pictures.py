"""The pictures that the README shows are those that the library draws."""

import pytest

from examples.pictures.draw import HERE, pictures

DRAWN = pictures()


@pytest.mark.parametrize("name", [file.name for file in DRAWN])
def test_a_picture_is_what_is_drawn_now(name: str) -> None:
    assert (HERE / name).read_text(encoding="utf-8") == DRAWN[HERE / name], "python examples/pictures/draw.py draws it anew"


def test_no_picture_is_left_over() -> None:
    assert {file.name for file in HERE.glob("*.svg")} == {file.name for file in DRAWN}
