"""From the roles of a text to the inputs of a question: words, the sounder, the tide, places, and units that are wanting."""

import re
from collections.abc import Mapping
from typing import Any

from anchorcalc import cautions
from anchorcalc.declare import Question
from anchorcalc.reader.between import ALL_TERMS
from anchorcalc.reader.fastenings import settle_fastenings
from anchorcalc.reader.fits import as_given, fit, with_unit
from anchorcalc.reader.gear import settle_gear
from anchorcalc.reader.guess import place_by_kind, place_unclaimed
from anchorcalc.reader.marks import settle_marks
from anchorcalc.reader.marks_from import marks_from
from anchorcalc.reader.materials import settle_grade, settle_material
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.neighbour import others_quantities
from anchorcalc.reader.pairing import pair_times
from anchorcalc.reader.places import settle_places
from anchorcalc.reader.reading import Reading, take_quantities
from anchorcalc.reader.sentence import Sentence
from anchorcalc.reader.sounded import settle_sounder
from anchorcalc.reader.tide import settle_tide
from anchorcalc.reader.tide_times import settle_tide_times
from anchorcalc.reader.unit_for_all import asked_in_fathoms, said_for_all
from anchorcalc.reader.units_taken import akin_unit, shared_unit
from anchorcalc.reader.witnesses import disputed
from anchorcalc.reader.word_slots import corrected, ours, words_said
from anchorcalc.units.kinds import Amount
from anchorcalc.vocabulary import TERMS


def filled(*, sentence: Sentence, question: Question, system: str | None, earlier: Mapping[str, Any], boat: Mapping[str, Any]) -> Reading:
    """Return what a text says for a question, settled as far as it can be."""
    reading = Reading(question=question, sentence=sentence)
    take_quantities(reading, without=settle_tide_times(reading))
    pair_times(reading)
    _whole_rode(reading)
    _all_chain_out(reading)
    _part_out(reading)
    _from_boat(reading)
    _neighbour(reading)
    settle_marks(reading)
    _words(reading)
    settle_material(reading)
    settle_grade(reading)
    settle_fastenings(reading)
    settle_gear(reading)
    _units(reading, system=system, earlier=earlier)
    settle_sounder(reading, boat=boat, earlier=earlier)
    disputed(reading)
    settle_tide(reading)
    settle_places(reading)
    _unknown(reading)
    place_by_kind(reading)
    place_unclaimed(reading, known=frozenset((*earlier, *boat)))
    for name, mention in reading.parts.items():
        reading.leave(mention, name if name in TERMS else None)
    return reading


_UNKNOWN = ("nan", "unknown", "tbd", "dunno")


def _unknown(reading: Reading) -> None:
    """What is named and said to be unknown is asked for, not assumed."""
    line = reading.sentence.line
    if not any(f" {word} " in line for word in _UNKNOWN):
        return
    for name, one in reading.question.inputs.items():
        nouns = (name.replace("_", " "), *one.term.nouns)
        if name not in reading.asked and any(
            f" {noun} {small}{word} " in line for noun in nouns for small in ("", "is ", "= ", ": ") for word in _UNKNOWN
        ):
            reading.open_terms[name] = one.term.prompt


def _words(reading: Reading) -> None:
    takes = frozenset(reading.question.inputs)
    tokens = reading.sentence.tokens
    found = words_said(tokens=tokens, takes=takes)
    own = ours(found, tokens, reading.sentence.text)
    for said in corrected(own, tokens):
        if not said.negated:
            reading.put(said.term, said.word)
    for said in found:
        if said not in own and said.term == "anchor_kind" and "anchor_mass" not in reading.rivals:
            _of_another(reading, said.at)


def _of_another(reading: Reading, at: int) -> None:
    """The mass that stands right beside the kind of another anchor is none of ours: `their grapnel of 8 kg`."""
    for token in reading.sentence.tokens[max(0, at - 1) : at + 3]:
        if token.mention is not None and token.word == "<mass>" and reading.sources.get("anchor_mass", (-1, 0.0))[0] == token.start:
            del reading.asked["anchor_mass"]
            reading.leave(token.mention, None)
            reading.told.add(token.start)


_ROPE = (" rope", " line", " warp", " nylon", " hemp")
_ALL_CHAIN = (" all chain ", " no warp ", " no rope ", " no line ", " all - chain ", " no nylon ")


def _whole_rode(reading: Reading) -> None:
    """Take a length of rope, or of chain, for the whole rode where the text knows of nothing else."""
    inputs, line = reading.question.inputs, reading.sentence.line
    if "rode_aboard" not in inputs or "rode_aboard" in reading.asked or "line" not in inputs or inputs["line"].direct:
        return
    ropes = any(word in line for word in _ROPE)
    for name, other in (("line", " chain "), ("chain", None)):
        if name not in reading.asked:
            continue
        if name == "chain" and (_IN_IT.search(line) or ("marks_from" in inputs and marks_from(line) == {"chain_end"})):
            return  # there is rope that it is part of, or on which the marks are
        if name not in reading.rivals and (other not in line if other else not ropes or any(one in line for one in _ALL_CHAIN)):
            if not {"line", "chain"} - {name} & set(reading.asked):
                reading.asked["rode_aboard"] = reading.asked.pop(name)
                if name in reading.sources:
                    reading.sources["rode_aboard"] = reading.sources.pop(name)
            return


_IN_IT = re.compile(r" of chain (?:in|on|before|ahead of) (?:it|that|them) ")


def _all_chain_out(reading: Reading) -> None:
    """Where only chain is spoken of, what is out is chain, and the chain that is said is what is out."""
    inputs, asked, line = reading.question.inputs, reading.asked, reading.sentence.line
    if (
        not {"rode_out", "chain", "chain_size"} <= set(inputs)
        or (any(word in line for word in _ROPE) and not any(one in line for one in _ALL_CHAIN))
        or "chain" in reading.bare
        or "chain_size" not in asked
    ):
        return
    if "rode_out" in asked and "chain" not in asked and "rode_out" not in reading.rivals:
        asked["chain"] = asked["rode_out"]
    elif "chain" in asked and "rode_out" not in asked and "chain" not in reading.rivals:
        asked["rode_out"] = asked["chain"]


_PART_OUT = re.compile(
    r" (?:half|quarter|third|two thirds|most|some|part|<number>)(?: (?:of|the|our|my|her|all))+ (?:chain|rode|rope|warp|cable|line|lot|it)"
    r"(?: (?:is|has|been|are))* (?:out|veered|overboard) "
)


def _part_out(reading: Reading) -> None:
    """Where only a part of the rode is told to be out, no length of the whole is what is out: that is asked for."""
    line = reading.sentence.line
    if "rode_out" not in reading.question.inputs or not _PART_OUT.search(line):
        return
    if "rode_out" in reading.asked and not _OUT_IS_TOLD.search(line):
        del reading.asked["rode_out"]
        reading.open_terms["rode_out"] = TERMS["rode_out"].prompt
        start = reading.sources.get("rode_out", (-1, 0.0))[0]
        for token in reading.sentence.tokens:
            if token.start == start and token.mention is not None:
                reading.leave(token.mention, None)


_OUT_IS_TOLD = re.compile(r" <length>(?: of [a-z]+)? (?:out|veered|overboard) ")


def _from_boat(reading: Reading) -> None:
    """A distance from the boat is no distance from the anchor: it is asked for. One that does not say is taken, with a caution."""
    mention = reading.parts.pop("from_boat", None)
    if mention is not None:
        reading.leave(mention, None)
        reading.told.add(mention.start)
        if "distance" not in reading.asked:
            reading.open_terms["distance"] = TERMS["distance"].prompt
    elif "distance" in reading.asked and not any(
        word in reading.sentence.line for word in (" anchor ", " hook ", " anchors ", " mine ", " ours ", " let go ", " drop ")
    ):
        reading.cautions.append(cautions.FROM_ANCHOR)


_BOTH = (
    " both boat ",
    " both our boat ",
    " both of our boat ",
    " both yachts ",
    " both of us are ",
    " weare both ",
    " we are both ",
    " both of them are ",
)
_HAS = frozenset("has got put veered".split())


def _neighbour(reading: Reading) -> None:
    """Take one length said of both boats for both; and what the neighbour is said to have for the rode that he has out."""
    inputs, asked, tokens = reading.question.inputs, reading.asked, reading.sentence.tokens
    if "other_rode_out" not in inputs:
        return
    if "boat_length" in asked and "other_boat_length" not in asked and any(one in reading.sentence.line for one in _BOTH):
        asked["other_boat_length"] = asked["boat_length"]
    theirs = others_quantities(tokens).likely if "other_rode_out" not in asked else frozenset()
    before = {token.start: tokens[at - 1].word for at, token in enumerate(tokens) if at and token.start in theirs}
    has = [one for one, term in reading.aside if term is None and one.kind == "length" and before.get(one.start) in _HAS]
    if len(has) == 1 and fit(term=TERMS["other_rode_out"], mention=has[0]) == "yes":
        reading.put("other_rode_out", as_given(term=TERMS["other_rode_out"], mention=has[0]))
        reading.aside = [(one, term) for one, term in reading.aside if one is not has[0]]


_BY_FATHOMS = frozenset(("depth", "rode_out", "rode_aboard"))


def _units(reading: Reading, *, system: str | None, earlier: Mapping[str, Any]) -> None:
    """Give bare numbers the unit that the others share."""
    everything = [token.mention for token in reading.sentence.tokens if token.mention is not None]
    for_all = said_for_all(reading.sentence.text) if reading.bare or reading.parts else None
    _units_of_parts(reading, everything, system, for_all)
    for term, mention in list(reading.bare.items()):
        if (
            term in reading.asked
            and isinstance(mention.amount, Amount)
            and isinstance(reading.asked[term], Amount)
            and reading.asked[term].value == mention.amount.value
        ):
            del reading.bare[term]
            continue
        unit = shared_unit(term=TERMS[term], mentions=everything, system=system, earlier=_units_of(term, earlier), for_all=for_all)
        before = reading.sentence.text[max(0, mention.start - 12) : mention.start]
        unit = "fathom" if term in _BY_FATHOMS and asked_in_fathoms(reading.sentence.text) else unit
        unit = unit or akin_unit(term, told=reading.asked, mentions=everything, before=before)
        if unit is None or term in reading.rivals:
            continue
        del reading.bare[term]
        assert isinstance(mention.amount, Amount)
        reading.put(term, with_unit(mention.amount, unit=unit))
        if cautions.UNIT_TAKEN not in reading.cautions:
            reading.cautions.append(cautions.UNIT_TAKEN)


def _units_of_parts(reading: Reading, everything: list[Mention], system: str | None, for_all: str | None) -> None:
    """The same for depths and heights that only make an input; without a unit they say nothing."""
    for name, mention in list(reading.parts.items()):
        if mention.kind == "number" and isinstance(mention.amount, Amount):
            unit = shared_unit(term=ALL_TERMS[name], mentions=everything, system=system, for_all=for_all)
            unit = unit or akin_unit(name, told=reading.asked, mentions=everything, before="")
            if unit is None:
                reading.leave(reading.parts.pop(name), None)
                continue
            reading.parts[name] = mention._replace(kind="length", amount=with_unit(mention.amount, unit=unit))
            if cautions.UNIT_TAKEN not in reading.cautions:
                reading.cautions.append(cautions.UNIT_TAKEN)


def _units_of(term: str, earlier: Mapping[str, Any]) -> list[str]:
    """Return the unit that a term had in an earlier exchange."""
    unit = getattr(earlier.get(term), "unit", None)
    return [unit] if unit else []
