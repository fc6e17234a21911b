"""Of a range the worse end counts for each result, and headline, verdict and working say so together."""

import anchorcalc


def test_a_room_that_is_too_narrow_at_one_end_of_the_tide_will_not_do() -> None:
    answer = anchorcalc.rode_for_room(distance="50 m", boat_length="9 m", depth="4..6 m", tide_fall="0..1 m", tide_rise="0..2 m")
    assert answer.results.fits is False
    assert answer.headline.startswith("Not here")


def test_working_shows_the_ends_at_which_its_sums_come_out() -> None:
    answer = anchorcalc.scope_now(rode_out="40 m", depth="5 m", tide_rise="1..3 m")
    assert answer.working[1] == "40 m of rode / (5 m + 1.2 m + 3 m of tide) = 4.3478:1 at high water"  # 40 / 9.2
    failed = anchorcalc.time_to_let_go(depth="8 m", distance_off="100..150 m", drift="1..2 kn", boat_length="9 m", rode_aboard="50 m")
    assert "/ 2 kn = 0.67798 min" in failed.working[0]  # (100 − √(50² − 9.2²) − 9) m / (2 · 1852/3600 m/s)


def test_a_result_that_is_worst_elsewhere_is_told_beside_the_sum() -> None:
    answer = anchorcalc.rode_for_room(distance="50 m", boat_length="9 m", depth="4..6 m", tide_fall="0..1 m", tide_rise="0..2 m")
    assert answer.working[2].endswith("(4 m of water + 1.2 m of bow height + 2 m of tide) = 5.7242:1")  # 41.215 / 7.2
    assert answer.working[-1] == "scope_there at its own worse ends: 4.5072:1"


def test_a_mark_that_may_lie_beyond_the_rode_is_not_in_the_plan() -> None:
    answer = anchorcalc.mark_plan(rode_aboard="50..60 m", mark_interval="10 m")
    assert [row.rode_out.si for row in answer.results.plan] == [10.0, 20.0, 30.0, 40.0, 50.0]


def test_both_ends_of_a_range_of_scopes_are_written_as_scopes() -> None:
    answer = anchorcalc.rode_to_let_out(depth="4 m", scope="5..7")
    assert answer.read.scope is not None
    assert answer.read.scope.shown == "5:1 to 7:1"
