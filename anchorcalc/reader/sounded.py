"""From what a sounder shows to the depth: what it measures from, and how deep that lies."""

import re
from collections.abc import Mapping
from typing import Any

from anchorcalc.reader.fits import with_unit
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.reading import Reading
from anchorcalc.reader.sounder import reads_from
from anchorcalc.reader.words import sentence_start
from anchorcalc.units.kinds import UNIT, Amount
from anchorcalc.units.shown import tidy
from anchorcalc.vocabulary import TERMS


def settle_sounder(reading: Reading, *, boat: Mapping[str, Any], earlier: Mapping[str, Any]) -> None:
    """Take what the sounder measures from, and make its reading the depth where the question wants one."""
    takes = reading.question.inputs
    if "reads_from" not in takes and "reading" not in reading.parts and not _depth_is_shown(reading):
        return
    given = "transducer_depth" in reading.asked or "transducer_depth" in reading.parts
    said = reads_from(reading.sentence.tokens, transducer_given=given)
    if "reads_from" in takes:
        for word in said:
            reading.put("reads_from", word)
        if said == ["keel"] and "draught" not in reading.asked and "transducer_depth" in reading.asked and not _told_of_sensor(reading):
            reading.put("draught", reading.asked.pop("transducer_depth"))  # `counts from the keel, 1.85 m down`
        return
    if said == ["surface"]:
        reading.told.update(one.start for name in _OFFSET.values() if (one := reading.parts.get(name)) is not None)  # how deep she is no matter
    if "reading" not in reading.parts and _OFFSET.keys() & set(said) and (mention := _depth_is_shown(reading)) is not None:
        reading.parts["reading"] = mention
        del reading.asked["depth"], reading.sources["depth"]
    shown = reading.parts.pop("reading", None)
    if shown is None or "depth" not in takes:
        return
    if "depth" in reading.asked:
        reading.leave(shown, "reading")
        return
    _depth_of(reading, shown, said, {**boat, **earlier})


def _told_of_sensor(reading: Reading) -> bool:
    return not {"transducer", "sensor", "sender", "puck", "probe", "ducer", "eye"}.isdisjoint(reading.sentence.words)


_SAYS = frozenset("gives shows says reads blinks showing reading".split())
_SHOWS = frozenset("instrument sounder finder fishfinder echo display depthsounder sonar".split())


def _depth_is_shown(reading: Reading) -> Mention | None:
    """Return what was taken for the depth where its sentence says that a sounder shows it: `sounder, zeroed at the keel, gives 2.9 m`."""
    if not isinstance(reading.asked.get("depth"), Amount) or "depth" in reading.rivals or "depth" not in reading.sources:
        return None
    tokens, start = reading.sentence.tokens, reading.sources["depth"][0]
    at = next((at for at, token in enumerate(tokens) if token.start == start), 0)
    if _UNDER.match(f" {' '.join([token.word for token in tokens[at + 1 : at + 4]])} "):
        return tokens[at].mention
    first = sentence_start([token.word for token in tokens], at)
    lone = all(token.mention is None for token in tokens[first:at]) or tokens[at - 1].word in _SAYS
    return tokens[at].mention if lone and _SHOWS & {token.word for token in tokens[first:at]} else None


_UNDER = re.compile(r" (?:under|beneath|below) (?:(?:the|my|our|her) )?keel ")
_OFFSET = {"keel": "draught", "transducer": "transducer_depth"}


def _depth_of(reading: Reading, shown: Mention, said: list[str], known: Mapping[str, Any]) -> None:
    zero = said[0] if len(said) == 1 else getattr(known.get("reads_from"), "text", None) if not said else None
    assert isinstance(shown.amount, Amount)
    if zero == "surface":
        reading.put("depth", shown.amount)
        return
    if zero not in _OFFSET:
        reading.open_terms["reads_from"] = TERMS["reads_from"].prompt
        reading.leave(shown, "reading")
        return
    name = _OFFSET[str(zero)]
    offset = _offset(reading, name, known)
    if offset is None:
        reading.open_terms[name] = TERMS[name].prompt
        reading.leave(shown, "reading")
        return
    unit = shown.amount.unit
    low, high = ((end + other) / UNIT[unit].factor for end, other in zip((shown.amount.low, shown.amount.high), offset, strict=True))
    depth = with_unit(Amount("number", 0.0, 0.0, "", tidy(low), tidy(high)), unit=unit)
    reading.put("depth", depth)
    reading.notes.append(f"{shown.text} on the sounder, from the {zero}, + {name.replace('_', ' ')} = {depth.value:.12g} {unit} of water")


def _offset(reading: Reading, name: str, known: Mapping[str, Any]) -> tuple[float, float] | None:
    mention = reading.parts.pop(name, None)
    if mention is not None and isinstance(mention.amount, Amount):
        return mention.amount.low, mention.amount.high
    held = reading.asked.get(name, known.get(name))
    return (held.low, held.high) if held is not None and not isinstance(held, str) else None


__all__ = ["settle_sounder"]
