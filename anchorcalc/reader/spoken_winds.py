"""Numbers that are forces of the Beaufort scale by what stands before them: `gale 8`, `F6, later 8`."""

from anchorcalc.reader.sentence import Token
from anchorcalc.reader.spoken_parts import number_at, token_of, word_at
from anchorcalc.units.kinds import BEAUFORT_KNOTS, UNIT, Amount

_NAMES = frozenset(("gale", "storm", "breeze"))
_TURNS = frozenset(
    ", now at first rising increasing building freshening becoming going then later perhaps maybe occasionally gusting up to or by".split()
)
_REACH = 5


def force_of_wind(tokens: list[Token], at: int) -> tuple[Token, int] | None:
    """Return the wind that a number stands for, and where it ends."""
    value = number_at(tokens, at)
    if value is None or at == 0 or not 1 <= value <= 11 or value % 1 or not (word_at(tokens, at - 1) in _NAMES or _follows_a_force(tokens, at)):
        return None
    low, high = BEAUFORT_KNOTS[int(value)]
    knot = UNIT["kn"].factor
    return token_of(tokens, at, at + 1, "speed", Amount("speed", low * knot, high * knot, "kn", low, high, True), frozenset({"beaufort"})), at + 1


def _follows_a_force(tokens: list[Token], at: int) -> bool:
    """Say whether only words for how a wind goes on stand between a force and a number: `F6 rising 8`."""
    for place in range(at - 1, max(-1, at - _REACH), -1):
        mention = tokens[place].mention
        if mention is not None:
            return "beaufort" in mention.flags and place < at - 1 and not {","}.issuperset(token.word for token in tokens[place + 1 : at])
        if tokens[place].word not in _TURNS:
            return False
    return False


__all__ = ["force_of_wind"]
