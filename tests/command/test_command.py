"""The command as it is typed: what it prints, in what order, and how it ends."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

import anchorcalc

BOAT = """
name = "Skarv"
boat_length = "28 ft"
bow_height = "4 ft"
chain = "20 ft"
line = "180 ft"
"""
RODE = ("rode_to_let_out", "--depth", "12 ft", "--bow-height", "5 ft", "--tide-rise", "3 ft", "--scope", "7:1")


def run(*words: str, folder: Path | None = None) -> subprocess.CompletedProcess[str]:
    environment = {**os.environ, "COLUMNS": "90", "PYTHONPATH": str(Path(__file__).parents[2])}
    command = [sys.executable, "-m", "anchorcalc", *words]
    return subprocess.run(command, capture_output=True, text=True, env=environment, cwd=folder, timeout=60, check=False, stdin=subprocess.DEVNULL)


@pytest.fixture
def boat(tmp_path: Path) -> Path:
    file = tmp_path / "skarv.toml"
    file.write_text(BOAT)
    return file


def test_a_person_reads_the_headline_first_then_the_working_what_was_assumed_the_cautions_and_the_sources() -> None:
    done = run(*RODE)
    assert (done.returncode, done.stderr) == (0, "")
    assert done.stdout.splitlines()[0] == "Let out 140 ft of rode."
    places = [done.stdout.index(part) for part in ("Let out 140 ft", "20 ft × 7 = 140 ft", "Assumed: ", "Mind:", "Sources:")]
    assert places == sorted(places)
    assert max(map(len, done.stdout.splitlines())) <= 90


def test_a_program_reads_json_that_is_an_answer() -> None:
    done = run(*RODE, "--json")
    answer = anchorcalc.load(done.stdout)
    assert isinstance(answer, anchorcalc.Answer)
    assert answer == anchorcalc.rode_to_let_out(depth="12 ft", bow_height="5 ft", tide_rise="3 ft", scope="7:1")


def test_a_question_may_be_written_with_hyphens() -> None:
    assert run("rode-to-let-out", *RODE[1:]).stdout == run(*RODE).stdout


def test_plain_words_are_a_question_too() -> None:
    done = run("how much rode for 4 m of water, bow 1.5 m up, 0.5 m of tide to come, at 6:1?")
    assert done.returncode == 0
    assert done.stdout.startswith("Let out 36 m of rode.")


def test_what_is_no_question_ends_with_1() -> None:
    done = run("is it legal to anchor here?")
    assert done.returncode == 1
    assert "You can ask:" in done.stdout


def test_what_lacks_something_asks_back_and_ends_with_1() -> None:
    done = run("how much rode do I need?", "--json")
    assert done.returncode == 1
    reply = json.loads(done.stdout)
    assert (reply["status"], reply["missing"]) == ("needs", ["depth"])


def test_a_boat_file_lies_under_the_question(boat: Path) -> None:
    done = run("rode_to_let_out", "--depth", "12 ft", "--boat", str(boat))
    assert done.returncode == 0
    assert "From the boat file: " in done.stdout and "bow_height 4 ft" in done.stdout
    words = run("how much rode for 12 ft of water?", "--boat", str(boat), "--json")
    assert json.loads(words.stdout)["read"]["bow_height"]["from"] == "boat"


def test_shared_options_may_come_before_the_question(boat: Path) -> None:
    after, before = run(*RODE[:3], "--boat", str(boat), "--json"), run("--json", "--boat", str(boat), *RODE[:3])
    assert after.returncode == before.returncode == 0
    assert after.stdout == before.stdout


def test_units_say_how_the_answer_is_shown() -> None:
    assert run(*RODE, "--units", "metric").stdout.startswith("Let out 43 m of rode.")
    done = run(*RODE, "--units", "imperial")
    assert (done.returncode, done.stdout) == (2, "")
    assert done.stderr.startswith("units: 'imperial'")


def test_every_fault_is_told_on_a_line_of_its_own_and_ends_with_2() -> None:
    done = run("rode_to_let_out", "--depth", "12", "--scope", "0.5")
    assert (done.returncode, done.stdout) == (2, "")
    assert [line.split(":")[0] for line in done.stderr.splitlines()] == ["depth", "scope"]
    faults = json.loads(run("rode_to_let_out", "--depth", "12", "--scope", "0.5", "--json").stderr)["errors"]
    assert [(one["input"], one["code"]) for one in faults] == [("depth", "bare_number"), ("scope", "out_of_bounds")]


def test_a_misspelt_flag_is_misuse_and_the_nearest_is_named() -> None:
    done = run("rode_to_let_out", "--dept", "12 ft")
    assert (done.returncode, done.stdout) == (2, "")
    assert "--depth" in done.stderr


def test_fixes_may_be_read_from_a_file(tmp_path: Path) -> None:
    track = tmp_path / "track.txt"
    track.write_text("14:00 64.1002 N 10.2000 E\n14:10 64.1003 N 10.2001 E\n\n14:20 64.1002 N 10.1999 E\n")
    same = ("drag_check", "--anchor-at", "64.1 N, 10.2 E", "--rode-out", "30 m", "--depth", "5 m", "--boat-length", "9 m")
    done = run(*same, "--fixes", f"@{track}")
    assert done.returncode == 0 and done.stdout.startswith("No sign of dragging")
    assert "of 3 fixes" in done.stdout
    lost = run(*same, "--fixes", f"@{tmp_path / 'nowhere.txt'}")
    assert (lost.returncode, lost.stderr.split(":")[0]) == (2, "fixes")


def test_a_value_that_is_no_list_is_never_read_from_a_file(tmp_path: Path) -> None:
    (tmp_path / "depth.txt").write_text("4 m")
    done = run("rode_to_let_out", "--depth", f"@{tmp_path / 'depth.txt'}")
    assert (done.returncode, done.stderr.split(":")[0]) == (2, "depth")


def test_a_boat_file_that_will_not_do_is_misuse(tmp_path: Path) -> None:
    wrong = tmp_path / "wrong.toml"
    wrong.write_text('bow_hight = "4 ft"\nbeam = "wide"\n')
    done = run(*RODE[:3], "--boat", str(wrong))
    assert done.returncode == 2
    assert [line.split(":")[0] for line in done.stderr.splitlines()] == ["bow_hight", "beam"]
    for text in ("= 4", "\x00", "[[["):
        wrong.write_text(text)
        done = run(*RODE[:3], "--boat", str(wrong))
        assert (done.returncode, done.stderr.split(":")[0]) == (2, "boat"), done.stderr
    assert run(*RODE[:3], "--boat", str(tmp_path / "none.toml")).returncode == 2


def test_the_questions_are_listed_and_each_has_its_page() -> None:
    listed = run("questions")
    assert listed.returncode == 0
    assert [line.split()[0] for line in listed.stdout.splitlines()] == [entry.name for entry in anchorcalc.questions()]
    page = run("questions", "scope-now").stdout
    assert page.startswith("What scope she lies to") and "--rode-out*" in page and "Examples:" in page
    entries = json.loads(run("questions", "--json").stdout)
    assert len(entries) == len(anchorcalc.questions())
    assert run("questions", "scope-new").returncode == 2


def test_examples_on_a_page_can_be_typed_as_they_stand() -> None:
    import shlex

    for entry in anchorcalc.questions()[:4]:
        flags = [word for name, value in entry.examples[0].items() for word in (f"--{name.replace('_', '-')}", str(value))]
        assert run(entry.name, *shlex.split(shlex.join(flags))).returncode == 0


def test_help_tells_of_every_input_and_of_what_must_be_given() -> None:
    text = run("rode_to_let_out", "--help").stdout
    assert "--bow-height" in text and "Must be given: --depth." in " ".join(text.split())
    assert run("--help").returncode == 0
    assert run("--version").stdout.strip().endswith(anchorcalc.__version__)


def test_nothing_at_all_is_misuse() -> None:
    assert run().returncode == 2


@pytest.mark.parametrize("typed", [("rode_to_let",), ("rode-to-let", "--depth", "4 m"), ("holdin",), ("draw", "scope_no", "--depth", "4 m")])
def test_misspelt_question_is_told_the_nearest_name_and_not_taken_for_plain_words(typed: tuple[str, ...]) -> None:
    done = run(*typed)
    assert done.returncode == 2 and done.stdout == ""
    assert "is no question of this library" in done.stderr
    assert any(name in done.stderr for name in ("rode_to_let_out", "holding", "scope_now"))


def test_words_that_look_like_a_question_are_still_plain_words() -> None:
    assert run("swing", "radius", "with 30 m out in 5 m, 9 m boat").stdout.startswith("She may swing")
