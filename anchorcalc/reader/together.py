"""All quantities of a text together: which role each has, so that no phrase serves two and no term has two values without need."""

import itertools

from anchorcalc.reader.fits import is_size
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.role import Role


def best_path(states: list[list[Role]]) -> list[Role]:
    """Return one role a quantity, so that their scores, less what it costs that neighbours clash, are together the greatest."""
    if not states:
        return []
    totals = [one.score for one in states[0]]
    came: list[list[int]] = []
    for before, now in itertools.pairwise(states):
        back, sums = [], []
        apart = _apart(before[0].mention, now[0].mention)
        highest = max(totals)
        ahead = totals.index(highest)
        for role in now:
            if apart or role.term is None:
                back.append(ahead)
                sums.append(highest + role.score)
                continue
            options = [total + role.score - _clash(earlier, role) for total, earlier in zip(totals, before, strict=True)]
            best = max(options)
            back.append(options.index(best))
            sums.append(best)
        came.append(back)
        totals = sums
    place = totals.index(max(totals))
    chosen = [states[-1][place]]
    for back, earlier in zip(reversed(came), reversed(states[:-1]), strict=True):
        place = back[place]
        chosen.append(earlier[place])
    return chosen[::-1]


def agree(chosen: list[Role]) -> bool:
    """Say whether no two neighbours lean on one phrase, or stand for one term with two values."""
    return all(_apart(one.mention, other.mention) or not _clash(one, other) for one, other in itertools.pairwise(chosen))


def _apart(one: Mention, other: Mention) -> bool:
    """Say whether two neighbours may lean on one phrase: items of a list, a time and something else, a size and a length."""
    return 0 <= one.group == other.group or "clock" in (one.kind, other.kind) or is_size(one) != is_size(other)


def _clash(one: Role, other: Role) -> float:
    """Return what it costs that two neighbours lean on one phrase, or stand for one term with two values."""
    if one.term is None or other.term is None:
        return 0.0
    shared = one.cue[0] < other.cue[1] and other.cue[0] < one.cue[1]
    same = one.term == other.term and one.mention.amount != other.mention.amount
    return (max(one.score, other.score) + 1.0 if shared else 0.0) + (1.5 if same else 0.0)
