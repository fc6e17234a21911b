"""Boat files: vocabulary terms and values, and a name, as TOML or JSON."""

import tomllib
from pathlib import Path
from typing import Any

import msgspec

from anchorcalc.answering.gate import SYSTEMS, unknown_name
from anchorcalc.answering.taking import take
from anchorcalc.errors import Fault, FileError, InputError, fault
from anchorcalc.vocabulary import TERMS

LARGEST = 1_000_000  # bytes


def load_boat(path: str | Path) -> dict[str, Any]:
    """Return the terms of a boat file, every one of them checked.

    Parameters
    ----------
    path : str or Path
        A file that ends in .toml or .json: terms of the vocabulary with values (`bow_height = "4 ft"`), and `name`; less than 1 MB.

    Returns
    -------
    dict
        Terms and values as they were written, for `boat=` of any question.

    Raises
    ------
    FileError
        If the file cannot be read.
    InputError
        With one fault for every name that is unknown and every value that will not do.

    Examples
    --------
    >>> from tempfile import TemporaryDirectory
    >>> with TemporaryDirectory() as folder:
    ...     file = Path(folder) / "skarv.toml"
    ...     _ = file.write_text('name = "Skarv"\\nbow_height = "1.1 m"')
    ...     load_boat(file)
    {'name': 'Skarv', 'bow_height': '1.1 m'}
    """
    file = Path(path)
    try:
        if file.stat().st_size > LARGEST:
            raise FileError([fault("boat", "too_large", str(path), "is larger than a boat file may be", "a file of less than 1 MB")])
        data = file.read_bytes()
    except OSError as error:
        raise FileError([fault("boat", "unreadable", str(path), f"cannot be read ({error.strerror})", "a .toml or .json file")]) from error
    return read_boat(text=data, json=file.suffix.lower() == ".json", where=str(path))


def read_boat(*, text: bytes, json: bool, where: str) -> dict[str, Any]:
    """Return the terms of a boat written as JSON or TOML, checked."""
    try:
        boat = msgspec.json.decode(text) if json else tomllib.loads(text.decode())
    except (msgspec.MsgspecError, tomllib.TOMLDecodeError, UnicodeDecodeError) as error:
        raise FileError([fault("boat", "unreadable", where, f"is no {'JSON' if json else 'TOML'} ({error})", 'bow_height = "4 ft"')]) from error
    if not isinstance(boat, dict):
        raise FileError([fault("boat", "unreadable", where, "holds no terms and values", 'bow_height = "4 ft"')])
    faults = list(_faults(boat))
    if faults:
        raise InputError(faults)
    return boat


def _faults(boat: dict[str, Any]) -> list[Fault]:
    found: list[Fault] = []
    for name, value in boat.items():
        if name == "name":
            continue
        if name not in TERMS:
            found.append(unknown_name(name=name, known=tuple(TERMS), where="of a boat", given=value))
        elif name == "units":
            if value not in SYSTEMS:
                found.append(fault("units", "unknown_word", value, "is no system of units", "us or metric"))
        else:
            taken = take(term=TERMS[name], raw=value)
            if isinstance(taken, Fault):
                found.append(taken)
    return found
