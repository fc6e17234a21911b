"""A headline about marks names no mark that is not there."""

from typing import Any

import anchorcalc


def test_while_only_chain_is_out_no_mark_is_named() -> None:
    answer = anchorcalc.mark_to_stop_at(mark_interval="10 m", rode_out="6 m", chain="10 m", marks_from="chain_end")
    assert answer.headline == "Stop with 6 m of chain out, before the marks begin."


def test_a_mark_beyond_the_rode_aboard_is_none_to_stop_at() -> None:
    short = anchorcalc.rode_to_let_out(depth="5 m", mark_interval="10 m", rode_aboard="45 m")  # 6.2 m × 7 = 43.4 m
    assert short.headline == "Let out 43.5 m of rode: stop 3.4 m past mark 4 (mark 5 is beyond the rode aboard)."
    long = anchorcalc.rode_to_let_out(depth="5 m", mark_interval="10 m", rode_aboard="50 m")
    assert long.headline == "Let out 43.5 m of rode: stop at mark 5, or 3.4 m past mark 4."


def test_the_inner_end_is_warned_of_where_all_the_rode_runs_out() -> None:
    said: dict[str, Any] = {"depth": "8 m", "distance_off": "150 m", "drift": "1 kn", "boat_length": "9 m"}
    codes = [{one.code for one in anchorcalc.answer("time_to_let_go", rode_aboard=rode, **said).cautions} for rode in ("50 m", "100 m")]
    assert ["bitter_end" in one for one in codes] == [True, False]  # 7 × 9.2 m = 64.4 m
