"""How much of an anchor rode of chain and line lifts off the seabed: the one equation that has no closed form.

Unknown is the slope of the rode at the joint of chain and line (see ``hanging`` for slope, bend and stretch). From it follow the
slopes at the anchor and at the bow, and what lies or floats; wanted is the slope that brings the rode just up to the roller.
"""

from typing import Any, NamedTuple

import numpy as np

from anchorcalc.physics.hanging import NEXT_TO_NOTHING, length_to_rise, part_rise, taut

# Misfit in height, over the height, at which one step more ends the search; that step squares it, roughly.
CLOSE_ENOUGH = 1e-9
# The worst of 10 million rows far beyond any boat took 18. Not met, were it ever to happen, gives nan and not a guess.
MOST_STEPS = 100
# Least part of the height by which a first guess takes the rode as longer than it, [-].
NARROWEST = 1e-12
# A slope that no rode reaches [-].
NO_BOUND = 1e100


class Rode(NamedTuple):
    """A rode under load: lengths [m], bend of chain and of line [1/m], stretch of the line [-], height of the roller [m]."""

    chain: Any
    chain_bend: Any
    line: Any
    line_bend: Any
    stretch: Any
    height: Any


class Lifted(NamedTuple):
    """Lengths of chain and of line that hang [m], and the slopes at the anchor, the joint and the bow [-]."""

    chain: Any
    line: Any
    anchor: Any
    joint: Any
    bow: Any


class Regime(NamedTuple):
    """Whether some chain lies and some line floats, 1 or 0; bounds of the joint slope [-]; bend of the rise in its square, whole and by stretch."""

    lies: Any
    floats: Any
    least: Any
    most: Any
    curl: Any
    give: Any


def lifted(*, joint: Any, rode: Rode) -> Lifted:
    """What hangs and how steeply, for a slope at the joint: chain not wanted lies, line that would arch over the bow floats level."""
    turn = rode.chain * rode.chain_bend
    some = np.minimum(joint, turn)
    chain = rode.chain * ((some + NEXT_TO_NOTHING) / (turn + NEXT_TO_NOTHING))
    line, bow = rode.line, joint + rode.line * rode.line_bend
    arched = bow < 0.0
    if np.count_nonzero(arched):
        line = np.where(arched, -joint / np.minimum(rode.line_bend, -NEXT_TO_NOTHING), line)[()]
        bow = np.maximum(bow, 0.0)
    return Lifted(chain=chain, line=line, anchor=joint - some, joint=joint, bow=bow)


def whole_rise(*, joint: Any, rode: Rode) -> Any:
    """Height from the seabed to the upper end of the rode, for a slope at the joint, [m]; grows with it."""
    up = lifted(joint=joint, rode=rode)
    chain = part_rise(low=up.anchor, high=joint, length=up.chain)
    return chain + part_rise(low=joint, high=up.bow, length=up.line, stretch=rode.stretch)


def rise_and_rate(*, joint: Any, rode: Rode) -> tuple[Any, Any]:
    """The same height [m], and how fast it grows with the slope at the joint [m]."""
    up = lifted(joint=joint, rode=rode)
    at_joint = _square_and_taut(joint)
    chain_rise, chain_rate = _part(length=up.chain, low=up.anchor, high=joint, at_low=_square_and_taut(up.anchor), at_high=at_joint)
    line_rise, line_rate = _part(length=up.line, low=joint, high=up.bow, at_low=at_joint, at_high=_square_and_taut(up.bow))
    give = up.line * rode.stretch
    chain_rise += line_rise
    chain_rise += 0.5 * give * (joint + up.bow)
    chain_rate += line_rate
    chain_rate += give
    return chain_rise, chain_rate


def _square_and_taut(slope: Any) -> tuple[Any, Any]:
    """Square of a slope and tension over load, [-]."""
    square = slope * slope
    return square, np.sqrt(1.0 + square)


def _part(*, length: Any, low: Any, high: Any, at_low: tuple[Any, Any], at_high: tuple[Any, Any]) -> tuple[Any, Any]:
    """Rise of one part and its rate, [m]; in place, which spares half the memory traffic of a large fleet."""
    (low_square, low_taut), (high_square, high_taut) = at_low, at_high
    share = length / (low_taut + high_taut)
    rise = low + high
    rise *= share
    product = low_taut * high_taut
    both = low * high
    both += product
    product *= both
    both += 1.0
    both += low_square
    both += high_square
    both /= product
    both *= share
    return rise, both


def line_off_bottom(rode: Rode) -> Rode:
    """The same rode without the line that lies on the bottom, behind chain that lies there too."""
    line = length_to_rise(slope=0.0, rise=rode.height, bend=rode.line_bend, stretch=rode.stretch)
    return rode._replace(line=np.minimum(rode.line, line))


def regime(rode: Rode) -> Regime:
    """Where the joint slope lies: the rise grows with it, so the rise at the slope where a part just lies flat tells."""
    chain_turn, level = rode.chain * rode.chain_bend, np.maximum(-rode.line * rode.line_bend, 0.0)
    lies = 1.0 * (whole_rise(joint=chain_turn, rode=rode) >= rode.height)
    floats = level * 0.0
    if np.count_nonzero(level):
        floats = 1.0 * ((level > 0.0) & (whole_rise(joint=level, rode=rode) >= rode.height))
    line_curl = 2.0 * floats / np.maximum(-rode.line_bend, NEXT_TO_NOTHING)
    return Regime(
        lies=lies,
        floats=floats,
        least=np.maximum((1.0 - lies) * chain_turn, (1.0 - floats) * level),
        most=np.minimum(chain_turn + (1.0 - lies) * NO_BOUND, level + (1.0 - floats) * NO_BOUND),
        curl=2.0 * lies / np.maximum(rode.chain_bend, NEXT_TO_NOTHING) + line_curl,
        give=line_curl * rode.stretch,
    )


def taut_tension(*, whole: Any, height: Any) -> Any:
    """Tension over load [-] of a straight rode; of one a whisker too short as of one a whisker longer than the height."""
    return whole / np.sqrt(np.maximum(whole - height, NARROWEST * height) * (whole + height))


def first_guess(*, rode: Rode, case: Regime) -> Any:
    """Slope at the joint [-], as if parts that hang at both ends had the tension of a taut rode all along.

    Exact for a rode of no weight, and for parts flat at one end, which rise by (taut(slope) - 1) / bend but for their stretch.
    """
    tension = taut_tension(whole=rode.chain + rode.line, height=rode.height)
    tension = taut_tension(whole=rode.chain + rode.line * (1.0 + rode.stretch * tension), height=rode.height)
    chain_rate = (1.0 - case.lies) * rode.chain / tension
    line_rate = (1.0 - case.floats) * rode.line * (1.0 / tension + rode.stretch)
    turned = chain_rate * rode.chain * rode.chain_bend - line_rate * rode.line * rode.line_bend
    rise, rate, flat = np.maximum(rode.height + turned / 2.0, 0.0), chain_rate + line_rate, case.curl / 2.0
    square = rise * (rise + case.curl)
    return square / ((rise + flat) * rate + flat * np.sqrt(rate * rate + square) + NEXT_TO_NOTHING)


def stepped(*, slope: Any, rode: Rode, case: Regime) -> tuple[Any, Any]:
    """A slope at the joint nearer to the answer [-], and how far the rise fell short of the roller before [m]; see ``joint_slope``."""
    rise, rate = rise_and_rate(joint=slope, rode=rode)
    short = rode.height - rise
    curl = case.curl / taut(slope) + case.give
    root = np.sqrt(np.maximum(rate * rate + short * curl, 0.0))
    return np.maximum(slope + 2.0 * short / (rate + root), case.least), short


def joint_slope(rode: Rode) -> Any:
    """Slope at the joint [-] that brings the rode just to the roller; line on the bottom taken off before; nan for a height of nan.

    Notes
    -----
    The answer is bracketed by ``least`` and ``most`` of its regime, and below by 0 (no rise, or the line lies: taken off
    before) and above by the greater of ``chain_turn`` and ``-line_turn``, plus the slope of the taut rode: there no part is
    flatter than the taut rode, so the rise is at least the height. In between the rise grows steadily: one answer.

    A part that hangs at both ends rises by the mean of slope / taut(slope) along it, which is concave in the slope; a part flat
    at one end (the chain, where some lies; the line, where some floats) by (taut(slope) - 1) / bend, concave in the *square* of the
    slope; what stretch adds is straight in the one or in the other. So a tangent in the slope to the first kind and a
    tangent in its square to the second never lie below them, and the place where these tangents reach the roller never
    lies beyond the answer: from the second step on each step climbs towards it from below, without fail, and doubles the
    good digits. It is Newton's method with its safeguard built in.
    """
    case = regime(rode)
    slope = np.minimum(np.maximum(first_guess(rode=rode, case=case), case.least), case.most)
    return _settled(slope=slope, rode=rode, case=case, steps=MOST_STEPS)


def _settled(*, slope: Any, rode: Rode, case: Regime, steps: int) -> Any:
    """The joint slope from a first guess [-]; once most rows are there, the others go on alone.

    A row that is there takes no step more: what it comes to does not depend on the rows beside it, to the last bit.
    """
    going: Any = True
    for step in range(steps):
        nearer, short = stepped(slope=slope, rode=rode, case=case)
        slope = np.where(going, nearer, slope)
        going = going & (np.abs(short) > CLOSE_ENOUGH * rode.height)
        left = np.count_nonzero(going)
        if left == 0:
            return slope
        if 2 * left < going.size:
            slope[going] = _settled(slope=slope[going], rode=_rows(rode, going), case=_rows(case, going), steps=steps - step - 1)
            return slope
    return np.where(going, np.nan, slope)


def _rows(fields: Any, chosen: Any) -> Any:
    """The chosen rows of every field that has rows."""
    return type(fields)(*(field if np.ndim(field) == 0 else np.broadcast_to(field, chosen.shape)[chosen] for field in fields))
