"""What a text says for one question: its inputs as the gate takes them, and all that is still open."""

from typing import Any

import msgspec

from anchorcalc.cautions import Caution
from anchorcalc.declare import Question
from anchorcalc.reader.between import ALL_TERMS, BETWEEN
from anchorcalc.reader.by_form import either, gusts, products, ratios
from anchorcalc.reader.fits import as_given, clock_said, is_size, with_unit
from anchorcalc.reader.lesser import lesser, of_an_anchor
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.neighbour import Theirs, beside, others_quantities, speaks_of_us
from anchorcalc.reader.role import Role
from anchorcalc.reader.sentence import Sentence, Token
from anchorcalc.reader.standing import standing
from anchorcalc.units.kinds import UNIT, Amount
from anchorcalc.vocabulary import TERMS


class Reading(msgspec.Struct, kw_only=True):
    """The inputs read for a question.

    `bare` are quantities that want a unit, `rivals` the values that fight for one term, `faulty` what was said for a term and cannot be,
    `open_terms` what the text mentions and leaves open, each with a question; `aside` the quantities that stand for nothing here, each
    with its term where it has one, `told` where those stand that are plainly something else, and `theirs` those told of another's boat.
    """

    question: Question
    sentence: Sentence
    asked: dict[str, Any] = msgspec.field(default_factory=dict)
    bare: dict[str, Mention] = msgspec.field(default_factory=dict)
    rivals: dict[str, list[Any]] = msgspec.field(default_factory=dict)
    open_terms: dict[str, str] = msgspec.field(default_factory=dict)
    aside: list[tuple[Mention, str | None]] = msgspec.field(default_factory=list)
    told: set[int] = msgspec.field(default_factory=set)
    sources: dict[str, tuple[int, float]] = msgspec.field(default_factory=dict)
    parts: dict[str, Mention] = msgspec.field(default_factory=dict)
    shares: dict[int, dict[str, float]] = msgspec.field(default_factory=dict)
    theirs: frozenset[int] = frozenset()
    notes: list[str] = msgspec.field(default_factory=list)
    cautions: list[Caution] = msgspec.field(default_factory=list)

    def put(self, term: str, value: Any) -> None:
        """Take a value for a term; another value for it is a rival."""
        if term not in self.asked:
            self.asked[term] = value
        elif not _same(self.asked[term], value):
            rivals = self.rivals.setdefault(term, [self.asked[term]])
            if all(not _same(one, value) for one in rivals):
                rivals.append(value)

    def leave(self, mention: Mention, term: str | None) -> None:
        """Leave a quantity aside."""
        self.aside.append((mention, term))


def _same(one: Any, other: Any) -> bool:
    if isinstance(one, Amount) and isinstance(other, Amount):
        return abs(one.low - other.low) <= 1e-9 * abs(one.low) and abs(one.high - other.high) <= 1e-9 * abs(one.high) and one.kind == other.kind
    return bool(one == other)


_SOUNDER = frozenset(("reading", "transducer_depth", "draught"))


_SOUNDS = (
    " sounder",
    " echo",
    " shows ",
    " reads ",
    " reading ",
    " display",
    " fishfinder ",
    " fish finder ",
    " finder ",
    " transducer ",
    " plotter ",
    " meter ",
    " dial ",
)
_UNDER_KEEL = (
    " from the keel ",
    " keel to bottom ",
    " keel to ground ",
    " keel to mud ",
    " under the keel ",
    " under keel ",
    " beneath the keel ",
    " below the keel ",
)


def taken_by(question: Question, line: str) -> frozenset[str]:
    """Return the terms that a question takes, with those that make one of them."""
    takes = frozenset(question.inputs)
    extra: set[str] = set()
    if "depth" in takes:
        extra |= {"charted", "height_now"}
        if any(word in line for word in (_SOUNDS if "under_keel" in takes else (*_SOUNDS, *_UNDER_KEEL))):
            extra |= _SOUNDER
    if "distance" in takes:
        extra.add("from_boat")
    if takes & {"tide_rise", "tide_fall"}:
        extra |= {"at_high", "at_low", "height_now"} | ({"hw_height", "lw_height"} if "low_height" not in takes else set())
    return takes | extra


def take_quantities(reading: Reading, *, without: set[int]) -> None:
    """Put what the quantities of a text say into a reading, those left out that were taken before."""
    sentence, question = reading.sentence, reading.question
    takes, parts = frozenset(question.inputs), taken_by(question, sentence.line)
    stands, reading.shares = standing(tokens=sentence.tokens, takes=parts, question=question, without=frozenset(without))
    found = gusts(stands, sentence)
    found = products(_no_aliases(found))
    found = ratios(found, takes)
    _parts_of_rode(reading, found, takes)
    theirs = others_quantities(sentence.tokens)
    if "other_rode_out" in takes:
        found = _of_neighbour(found, theirs.likely)
    elif theirs.likely:
        found, reading.theirs = _our_own(found, theirs, sentence.tokens)
    if "or" in sentence.words:
        found = either(found, sentence.tokens)
    if "<mass>" in sentence.words and "anchor_mass" not in takes:
        reading.told |= of_an_anchor(sentence.tokens)
    for role in _plain(reading, found, lesser(sentence.tokens, sentence.text), parts):
        _take(reading, role, takes, parts)


def _plain(reading: Reading, found: list[Role], less: frozenset[int], parts: frozenset[str]) -> list[Role]:
    """Of two values for one term, one of them told of another time or place or of other gear, the plain one counts."""
    if any(role.mention.kind == "force" for role in found):  # then a mass is an anchor's: `one 12 kg the other 15 kg, 5 kN`
        less |= {role.mention.start for role in found if role.term == "load" and role.mention.kind == "mass"}
    plain = {role.term for role in found if role.term is not None and role.mention.start not in less}
    giving_way = {role.mention.start for role in found if role.mention.start in less and (role.term in plain or role.term not in parts)}
    reading.told |= giving_way
    return [role._replace(term=None, score=0.0) if role.mention.start in giving_way else role for role in found]


def _of_neighbour(found: list[Role], theirs: frozenset[int]) -> list[Role]:
    """Where the question takes what is the neighbour's, his rode and his boat are not ours."""
    return [role._replace(term=_THEIRS.get(role.term or "", role.term)) if role.mention.start in theirs else role for role in found]


def _our_own(found: list[Role], theirs: Theirs, tokens: tuple[Token, ...]) -> tuple[list[Role], frozenset[int]]:
    """What is told of another's boat is no input where the question is about ours: none that ours has, and none at all if it surely is theirs."""
    ours = {role.term for role in found if role.term is not None and role.mention.start not in theirs.likely}
    both = {role.mention.start for role in found if role.mention.start in theirs.likely and role.term in ours - _OF_THE_PLACE}
    surely = theirs.surely | (theirs.likely & beside(tokens, both)) if speaks_of_us(tokens) else frozenset()
    out = {
        role.mention.start
        for role in found
        if role.mention.kind != "ratio" and role.term not in _OF_THE_PLACE
        if role.mention.start in surely or (role.mention.start in theirs.likely and role.term in ours)
    }
    return [role._replace(term=None, score=0.0) if role.mention.start in out else role for role in found], frozenset(out)


_OF_THE_PLACE = frozenset(("distance", "distance_off"))


_NAMED_LENGTH = 5.5  # "I'm 70" is no length of a boat
_THEIRS = {"rode_out": "other_rode_out", "boat_length": "other_boat_length", "chain": "other_rode_out"}
# What a text says of a boat besides, whatever it asks; other terms that a question does not take need plainer words.
_COMMON = frozenset(
    (
        "boat_length",
        "beam",
        "draught",
        "wind",
        "current",
        "engine_power",
        "anchor_mass",
        "displacement",
        "propeller_diameter",
        "unwanted",
        "chain_size",
        "line_size",
        "depth",
    )
)
_COMMON_LEAST, _FOREIGN_LEAST = 2.0, 4.5


def _take(reading: Reading, role: Role, takes: frozenset[str], parts: frozenset[str]) -> None:
    term, mention = role.term, role.mention
    if term is None or term not in parts:
        reading.leave(mention, "distance" if term == "from_boat" else None if term in BETWEEN else term)
        if term is not None and role.score >= (_COMMON_LEAST if term in _COMMON else _FOREIGN_LEAST):
            reading.told.add(mention.start)
    elif term not in takes:
        if term in reading.parts or role.fit not in ("yes", "bare"):
            reading.leave(mention, term)
        else:
            reading.parts[term] = mention
    elif "alternative" in mention.flags and "about" not in mention.flags and isinstance(mention.amount, Amount):
        amount = mention.amount
        for end, value in ((amount.low, amount.value), (amount.high, amount.value_high)):
            one = mention._replace(amount=Amount(amount.kind, end, end, amount.unit, value, value))
            reading.put(term, as_given(term=TERMS[term], mention=one))
    elif role.fit == "bare":
        _take_bare(reading, role, term)
    elif role.fit == "no" and term in reading.asked:
        reading.leave(mention, None)
    elif ALL_TERMS[term].kind.name == "clock":
        reading.put(term, clock_said(mention))
    else:
        _lengths_of(reading, term, takes)
        known = reading.bare.pop(term, None)
        if (
            known is not None
            and isinstance(known.amount, Amount)
            and isinstance(mention.amount, Amount)
            and known.amount.value != mention.amount.value
        ):
            reading.leave(known, None)
            reading.told.add(known.start)
        reading.sources.setdefault(term, (mention.start, role.score))
        reading.put(term, as_given(term=TERMS[term], mention=mention))


def _take_bare(reading: Reading, role: Role, term: str) -> None:
    """Take a number without a unit, unless the same thing is told more plainly."""
    mention, asked, known = role.mention, reading.asked.get(term), reading.bare.get(term)
    plainer = isinstance(asked, Amount) and role.score < reading.sources.get(term, (0, 9.0))[1] - 1.0
    if plainer or (term == "boat_length" and role.score < _NAMED_LENGTH):
        reading.leave(mention, None)
    elif isinstance(asked, Amount) and isinstance(mention.amount, Amount) and asked.value != mention.amount.value:
        reading.rivals.setdefault(term, [asked]).append(mention.amount)
    else:
        if known is not None and known.amount != mention.amount:
            reading.rivals.setdefault(term, [known.amount]).append(mention.amount)
        reading.bare[term] = mention


def _lengths_of(reading: Reading, term: str, takes: frozenset[str]) -> None:
    """A bare number that was taken for a size, where the size is told besides, is a length: `30 chain 8 mm`."""
    length = {"chain_size": "chain", "line_size": "line"}.get(term)
    if length in takes and term in reading.bare and length not in reading.asked and length not in reading.bare:
        reading.bare[length] = reading.bare[term]


def _parts_of_rode(reading: Reading, found: list[Role], takes: frozenset[str]) -> None:
    """Where only chain and rope are said, what is out is both together: `30 m of chain and 20 m of rope out`."""
    whole = next((name for name in ("rode_out", "rode_aboard") if name in takes), None)
    _made_parts(found, reading.sentence, whole)
    parts = {said: at for at, role in enumerate(found) for said in ("chain", "line") if said in (role.alias or role.term,) and role.fit == "yes"}
    if whole is None or len(parts) != 2 or "line" in takes or any(role.term == whole and not role.alias for role in found):
        return
    chain, line = (found[parts[name]].mention.amount for name in ("chain", "line"))
    if (
        not isinstance(chain, Amount)
        or not isinstance(line, Amount)
        or chain.unit != line.unit
        or chain.unit not in UNIT
        or chain.low != chain.high
        or line.low != line.high
    ):
        return
    value = chain.value + line.value
    reading.asked[whole] = with_unit(Amount("number", 0.0, 0.0, "", value, value), unit=chain.unit)
    reading.notes.append(f"{chain.value:.12g} {chain.unit} of chain + {line.value:.12g} {line.unit} of line = {value:.12g} {chain.unit} of rode")
    for name, at in parts.items():
        found[at] = found[at]._replace(term=name if name in takes else None, alias="")
        reading.told.add(found[at].mention.start)


_ROPES = frozenset(("rope", "line", "warp", "nylon", "polyester"))


def _made_parts(found: list[Role], sentence: Sentence, whole: str | None) -> None:
    """Of `30 m of chain and 20 m rope out` neither is the whole that is out."""
    behind = {at: _noun_behind(sentence, role.at) for at, role in enumerate(found) if role.fit == "yes" and _of_rode(role, sentence, whole)}
    chains, ropes = [at for at, word in behind.items() if word == "chain"], [at for at, word in behind.items() if word in _ROPES]
    if len(chains) == len(ropes) == 1:
        found[chains[0]] = found[chains[0]]._replace(term="chain")
        found[ropes[0]] = found[ropes[0]]._replace(term="line")


def _of_rode(role: Role, sentence: Sentence, whole: str | None) -> bool:
    """Say whether a quantity is a rode or a part of one, by its words or by the noun right behind it: `5 m chain over the bow`."""
    of_chain = role.mention.kind == "length" and not is_size(role.mention) and sentence.tokens[role.at + 1 : role.at + 2]
    return role.term in (whole, "chain", "line") or any(token.word == "chain" for token in of_chain or ())


def _noun_behind(sentence: Sentence, at: int) -> str:
    """Return the word behind a quantity, `of` and a size passed over."""
    rest = [token.word for token in sentence.tokens[at + 1 : at + 4] if token.word != "of" and not token.word.startswith("<")]
    return rest[0] if rest else ""


def _no_aliases(found: list[Role]) -> list[Role]:
    """Where the rode as a whole is said, lengths of chain or rope are only parts of it."""
    whole = {role.term for role in found if role.term is not None and not role.alias}
    return [role._replace(term="chain") if role.alias and role.term in whole and role.term in ("rode_out", "rode_aboard") else role for role in found]


__all__ = ["Reading", "take_quantities", "taken_by"]
