"""What a text says of the gear without a figure: no chain, a spare anchor, a dead flat pull."""

import math
import re

from anchorcalc.reader.reading import Reading
from anchorcalc.reader.spares import settle_spare
from anchorcalc.units.kinds import Amount

_NO_CHAIN = re.compile(r" (?:no chain|without (?:any |a )?(?:bit of )?chain|chainless|not a link of chain|chain : none|chain none)(?= )")
_FLAT = re.compile(
    r" (?:dead flat|pull flat|flat pull|horizontal pull|straight horizontal|pull is flat|level pull|pull dead level|pull horizontal)(?= )"
)
_NO_LINE = re.compile(r" (?:no rope|no line|no warp|no nylon|without (?:any )?rope)(?= )")
_RIGHT_ANGLE = re.compile(r" right angles?(?= )")
_DRY = re.compile(r" (?:no current|no stream|no tidal stream|slack water)(?= )")


def settle_gear(reading: Reading) -> None:
    """Put what is plainly said to be there, or not, into a reading."""
    takes, line, asked = reading.question.inputs, reading.sentence.line, reading.asked
    settle_spare(reading)
    if "chain" in takes and "chain" not in asked and "chain" not in reading.bare and _NO_CHAIN.search(line):
        asked["chain"] = Amount("length", 0.0, 0.0, "m", 0.0, 0.0)
        if "chain_size" in asked and "line_size" in takes and "line_size" not in asked and "chain_size" not in reading.rivals:
            asked["line_size"] = asked.pop("chain_size")  # `no chain fitted, 22 mm hawser`
    if (
        "line" in takes
        and takes["line"].direct
        and "chain" in asked
        and not {"line", "rode_aboard"} & {*asked, *reading.bare}
        and _NO_LINE.search(line)
    ):
        asked["line"] = Amount("length", 0.0, 0.0, "m", 0.0, 0.0)
    if "pull_angle" in takes and "pull_angle" not in asked and _FLAT.search(line):
        asked["pull_angle"] = Amount("angle", 0.0, 0.0, "deg", 0.0, 0.0)
    if "spread" in takes and "spread" not in asked and _RIGHT_ANGLE.search(line):
        asked["spread"] = Amount("angle", math.pi / 2.0, math.pi / 2.0, "deg", 90.0, 90.0)
    if "current" in takes and "current" not in asked and _DRY.search(line):
        asked["current"] = Amount("speed", 0.0, 0.0, "kn", 0.0, 0.0)


__all__ = ["settle_gear"]
