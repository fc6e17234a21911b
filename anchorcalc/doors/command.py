"""The command: `anchorcalc "question in plain words"`, `anchorcalc QUESTION --depth "12 ft"`, and what goes with it."""

import shutil
import sys
from collections.abc import Callable
from difflib import get_close_matches
from pathlib import Path
from typing import Any

import click
import msgspec

from anchorcalc.answering.answer import answer as answer_question
from anchorcalc.answering.replies import Answer, Reply
from anchorcalc.catalogue import names, question
from anchorcalc.doors.boats import load_boat
from anchorcalc.doors.printing import page_text, reply_text
from anchorcalc.doors.python import entry_of, meaning, questions, required
from anchorcalc.errors import AnchorcalcError, FileError, InputError, fault
from anchorcalc.units.kinds import FIXES, LENGTHS
from anchorcalc.version import VERSION

MISUSE, NOT_ANSWERED = 2, 1
_SHARED = {"--json": 0, "--boat": 1, "--units": 1}
_JSON = click.option("--json", "as_json", is_flag=True, help="Print the reply as JSON, for programs.")
_BOAT = click.option("--boat", "boat_file", metavar="FILE", help="Boat file (TOML or JSON) that lies under the question.")
_UNITS = click.option("--units", metavar="SYSTEM", help="us or metric: how the answer is shown.")


def shared(command: Callable[..., Any]) -> Callable[..., Any]:
    """Give a command the options that every way of asking has."""
    return _JSON(_BOAT(_UNITS(command)))


class Door(click.Group):
    """Commands, questions by name, and everything else as plain words."""

    def list_commands(self, ctx: click.Context) -> list[str]:
        """List the fixed commands; `anchorcalc questions` lists the questions."""
        return sorted(self.commands)

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:
        """Find a fixed command, a question, or the command for plain words."""
        if cmd_name in self.commands:
            return self.commands[cmd_name]
        name = cmd_name.replace("-", "_")
        return question_command(name, act=_print_answer) if name in names() else None

    def resolve_command(self, ctx: click.Context, args: list[str]) -> tuple[str | None, click.Command | None, list[str]]:
        """Take what is no command as plain words, unless it is a question's name misspelt."""
        if self.get_command(ctx, args[0]) is not None:
            return super().resolve_command(ctx, args)
        if _is_meant_as_name(args):
            question(args[0])  # which is refused, with the nearest name
        return "ask", self.commands["ask"], args


def _is_meant_as_name(args: list[str]) -> bool:
    """Say whether the first word is no plain word but meant as the name of a question."""
    word = args[0].replace("-", "_")
    alone = len(args) == 1 or args[1].startswith("--")
    return " " not in word and ("_" in args[0] or (alone and bool(get_close_matches(word, names(), n=1, cutoff=0.8))))


@click.group(cls=Door, context_settings={"help_option_names": ["-h", "--help"]})
@click.version_option(VERSION, prog_name="anchorcalc")
def door() -> None:
    """Ask what a skipper at anchor must settle: in plain words, or a question by name.

    \b
    anchorcalc "how much rode for 4 m of water, bow 1.5 m up, at 6:1?"
    anchorcalc rode_to_let_out --depth "4 m" --bow-height "1.5 m" --scope 6:1
    anchorcalc questions
    """


@door.command()
@click.argument("text", nargs=-1, required=True)
@shared
def ask(text: tuple[str, ...], as_json: bool, boat_file: str | None, units: str | None) -> None:
    """Ask in plain words."""
    from anchorcalc.doors.ask import ask as ask_in_words

    reply = ask_in_words(" ".join(text), boat=load_boat(boat_file) if boat_file else None, units=units)
    _print(reply, as_json)
    sys.exit(0 if isinstance(reply, Answer) else NOT_ANSWERED)


def question_command(name: str, *, act: Callable[..., None]) -> click.Command:
    """Return the command of one question: a flag for each input."""
    asked = question(name)
    options = [
        click.Option(
            [f"--{one.replace('_', '-')}", f"in_{one}"],
            metavar=asked.inputs[one].term.kind.name.upper(),
            help=meaning(asked, one),
            required=False,
            multiple=True,  # so that one given twice can be refused
        )
        for one in asked.inputs
    ]
    must = [f"--{one.replace('_', '-')}" for one in asked.inputs if required(asked, one)]

    def run(as_json: bool, boat_file: str | None, units: str | None, **flags: tuple[str, ...]) -> None:
        given = {key.removeprefix("in_"): values for key, values in flags.items() if values}
        twice = [
            fault(one, "given_twice", " and ".join(said), "was given more than once", "one value") for one, said in given.items() if len(said) > 1
        ]
        if twice:
            raise InputError(twice)
        inputs = {one: _value(one, said[0]) for one, said in given.items()}
        act(answer_question(asked, inputs, boat=load_boat(boat_file) if boat_file else None, units=units), as_json)

    made = click.command(name, help=asked.doc + (f"\n\nMust be given: {', '.join(must)}." if must else ""), short_help=asked.title)(shared(run))
    made.params = [*options, *made.params]
    return made


def _value(name: str, given: str) -> str:
    """Return a flag's value; a list may be read from a file (`@file`)."""
    from anchorcalc.vocabulary import TERMS

    if not given.startswith("@") or TERMS[name].kind not in (FIXES, LENGTHS):
        return given
    try:
        lines = Path(given[1:]).read_text(encoding="utf-8").splitlines()
    except (OSError, UnicodeDecodeError) as error:
        raise FileError([fault(name, "unreadable", given, f"cannot be read ({error})", "@FILE with one item a line")]) from error
    return "; ".join(line.strip() for line in lines if line.strip())


def _print(reply: Reply, as_json: bool) -> None:
    if as_json:
        click.echo(msgspec.json.format(msgspec.json.encode(reply), indent=2).decode())
    else:
        click.echo(reply_text(reply, width=shutil.get_terminal_size().columns))


def _print_answer(reply: Answer, as_json: bool) -> None:
    _print(reply, as_json)


@door.command(name="questions")
@click.argument("name", required=False)
@click.option("--json", "as_json", is_flag=True, help="Print the catalogue as JSON.")
def list_questions(name: str | None, as_json: bool) -> None:
    """List what can be asked, or show the page of one question."""
    if name is None:
        entries = questions()
        lines = [f"{entry.name:<22}{entry.title}" for entry in entries]
        click.echo(msgspec.json.format(msgspec.json.encode(entries)).decode() if as_json else "\n".join(lines))
        return
    entry = entry_of(question(name).name)
    width = min(shutil.get_terminal_size().columns, 100)
    click.echo(msgspec.json.format(msgspec.json.encode(entry)).decode() if as_json else page_text(entry, width=width))


class Drawn(Door):
    """Questions by name or plain words, answered as a picture."""

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:
        """Find the question to draw, or the command for plain words."""
        name = cmd_name.replace("-", "_")
        return question_command(name, act=_print_picture) if name in names() else self.commands.get(cmd_name)


def _print_picture(reply: Reply, as_json: bool = False) -> None:
    from anchorcalc.doors.drawing import draw as draw_answer

    if not isinstance(reply, Answer):
        click.echo(reply_text(reply, width=shutil.get_terminal_size().columns), err=True)
        sys.exit(NOT_ANSWERED)
    click.echo(draw_answer(reply))


@door.group(cls=Drawn)
def draw() -> None:
    """Draw the answer as SVG: `anchorcalc draw QUESTION --depth "4 m" … > picture.svg`, or in plain words."""


@draw.command(name="ask", hidden=True)
@click.argument("text", nargs=-1, required=True)
@shared
def draw_words(text: tuple[str, ...], as_json: bool, boat_file: str | None, units: str | None) -> None:
    """Draw the answer to a question in plain words."""
    from anchorcalc.doors.ask import ask as ask_in_words

    _print_picture(ask_in_words(" ".join(text), boat=load_boat(boat_file) if boat_file else None, units=units))


@door.command()
@click.argument("name", metavar="QUESTION")
@click.argument("source", metavar="IN")
@click.argument("target", metavar="OUT")
@_BOAT
@_UNITS
@click.option("--strict", is_flag=True, help="Refuse columns that look like a misspelt term.")
def fleet(name: str, source: str, target: str, boat_file: str | None, units: str | None, strict: bool) -> None:
    """Answer a question for every row of a table: .csv, .parquet or .jsonl, `-` for a pipe.

    Columns are inputs by name, with the unit in the heading (depth [m], plain numbers below) or in each cell (12 ft); other columns pass
    through. Behind them come a column for each result, `cautions`, and `problem`: empty, or what is wrong with that row.
    """
    try:
        from anchorcalc.doors.fleet_files import run_files
    except ModuleNotFoundError as error:
        raise click.ClickException(f"tables need {error.name}, which is not installed; pip install 'anchorcalc[fleet]' would do") from error
    sys.exit(run_files(question=name, source=source, target=target, boat=load_boat(boat_file) if boat_file else None, units=units, strict=strict))


@door.command()
@click.option("--host", default="127.0.0.1", show_default=True)
@click.option("--port", default=8000, show_default=True, type=click.IntRange(1, 65535))
@click.option("--workers", default=1, show_default=True, type=click.IntRange(1, 64))
def serve(host: str, port: int, workers: int) -> None:
    """Serve the questions over HTTP."""
    try:
        from importlib import import_module

        run = import_module("anchorcalc_api.serving").serve
    except ModuleNotFoundError as error:
        raise click.ClickException(f"the server is not installed ({error.name} is missing); pip install 'anchorcalc[api]' would do") from error
    run(host=host, port=port, workers=workers)


def _rotated(args: list[str]) -> list[str]:
    """Put shared options that come before the question behind it."""
    moved: list[str] = []
    rest = list(args)
    while rest and rest[0].split("=")[0] in _SHARED:
        count = 1 if "=" in rest[0] else 1 + _SHARED[rest[0]]
        moved, rest = moved + rest[:count], rest[count:]
    return rest + moved if rest else args


def main(args: list[str] | None = None) -> None:
    """Run the command; exit 0 answered, 1 needs, unclear or cannot, 2 misuse."""
    given = list(sys.argv[1:] if args is None else args)
    try:
        door.main(args=_rotated(given), prog_name="anchorcalc", standalone_mode=True)
    except AnchorcalcError as error:
        if "--json" in given:
            click.echo(msgspec.json.format(msgspec.json.encode({"errors": error.faults})).decode(), err=True)
        else:
            click.echo("\n".join(str(one) for one in error.faults), err=True)
        sys.exit(MISUSE)
