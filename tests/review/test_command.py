"""The command refuses what it would else have to guess."""

import pytest

from anchorcalc.doors.command import main


def test_a_flag_given_twice_is_refused(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as ended:
        main(["rode-to-let-out", "--depth", "4 m", "--depth", "5 m"])
    assert ended.value.code == 2
    assert "depth: '4 m and 5 m' was given more than once" in capsys.readouterr().err


def test_sums_of_the_working_come_out_with_what_was_assumed(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as ended:
        main(["rode-to-let-out", "--depth", "12 ft"])
    assert ended.value.code == 0
    assert "12 ft of water + 3.937 ft of bow height + 0 ft of tide = 15.937 ft" in capsys.readouterr().out  # 1.2 m is 3.93701 ft
