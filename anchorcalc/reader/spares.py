"""Whether a second anchor is aboard: by the words for one, by what is said not to be there, and by how many anchors there are."""

import re

from anchorcalc.reader.our_words import our_words, tells_of_spare
from anchorcalc.reader.reading import Reading
from anchorcalc.reader.sentence import Token
from anchorcalc.units.kinds import Amount
from anchorcalc.vocabulary import TERMS

_ANCHOR = r"(?:anchors?|hooks?|bowers?|picks?|kedges?|plough|claw|fisherman|grapnel|fluke|scoop)"
_SECOND = "(?:spare|second|other|another|backup|back up|reserve|extra|additional|secondary|stern|stand by|standby|emergency)"
_NOT_THERE = (
    "(?:none|no|nil|nope|zero|missing|ashore|lost|stolen|sold|gone|not (?:carried|aboard|on board|fitted|there)|left (?:ashore|behind|at home)"
    "|at home)"
)
_DENIES = "(?:no|without|never|not|isnt|wasnt|havent|hasnt|nor|lack|lacks|lacking|dont|doesnt|wants)"
_NO = re.compile(
    rf" {_DENIES}(?: (?:any|got|have|single|carry|carried|own|had|such thing as|of|<number>)){{0,3}} "
    rf"(?:{_SECOND}(?: {_ANCHOR}| one)|second(?= [.,;])"
    r"|(?:spare|backup|kedge|reserve)(?! [a-z]+(?<! aboard)(?<! at)(?<! and)(?<! if)(?<! on)(?<! in)))(?= )"
    rf"| (?:{_SECOND} {_ANCHOR}|spare|kedge|backup)(?: of)?(?: <mass>)?"
    rf"(?: (?:is|was|:|=|\?|-|–|got|has been|were|,|aboard|carried|on board)){{0,3}} {_NOT_THERE}(?= )"
    rf"| (?:sold|lost|swapped|left)(?: [a-z]+)? (?:{_SECOND} {_ANCHOR}|kedge|spare)(?= )"
    rf"| (?:{_SECOND} {_ANCHOR}|kedge|spare)(?: ,)? (?:we|i) (?:dont|do not|havent|have not|lack|have none)(?= )"
    rf"| (?:{_SECOND} {_ANCHOR}|kedge|spare)(?: (?:is|was|has|been|still|all)){{0,3}} (?:left |lying )?(?:ashore|at home|behind|sold|lost|gone)(?= )"
    r"| (?:only|just|lone|sole|single)(?: (?:that|this|have|got|carry|has|carries|single|one|aboard|bower))* (?:anchor|hook)"
    r"(?! (?:chain|line|rode|rope|light|of other))(?= )"
    r"| (?:have|has|got|carry|carries|is|with|ships|own|owns) one (?:anchor|hook)(?! in reserve)(?= )"
    r"| one (?:anchor|hook) (?:only|in all|in total|and (?:no more|that is (?:it|all)|nothing else)|all told|aboard only)(?= )"
    r"| nothing (?:in reserve|spare|to fall back (?:on|upon)|behind it|else to (?:drop|let go|put down|anchor with))(?= )"
)
_YES = re.compile(
    rf" (?:{_SECOND} (?:<mass> )?{_ANCHOR}|kedges?|(?:two|several|pair of|couple of) (?:[a-z]+ )?(?:anchors|hooks|bowers)"
    r"|spare (?:one )?(?:(?:is|:|-|–|of|,|=) )*(?:aboard|below|stowed|carried|yes|one|two|on board|onboard|<mass>"
    r"|in (?:locker|hold|bilge|lazarette|cockpit|forepeak))"
    r"|(?:as|for|and|one|with|plus|have|carry|got|has) spare(?! [a-z]{2,}(?<! aboard)(?<! too)(?<! as)(?<! in)(?<! below)(?<! stowed)(?<! on))"
    r"|(?:one|another|anchor|hook|<mass>) (?:stowed |kept |held |aboard )?in reserve|another (?:one )?(?:aboard|below|stowed))(?= )"
)
_WISHED = frozenset("would room time should need want must ought buy buying recommend worth whether require requires consider add adding".split())
_BACK = frozenset("sorry wait actually but though although however now correction rather only".split())
_ANCHORS_COUNTED = re.compile(r"(\w+) (?:anchor|hook|bower)s?")
_COUNTS = {0.0: "no", 1.0: "one", 2.0: "two", 3.0: "several", 4.0: "several"}


def settle_spare(reading: Reading) -> None:
    """Put into a reading whether a second anchor is aboard; ask where a text says both."""
    if "anchor_mass" in reading.question.inputs:
        _mass_of_spare(reading)
    if "spare_anchor" not in reading.question.inputs:
        return
    words = [_counted(token) for token in our_words(reading.sentence)]
    line = f" {' '.join(words)} "
    told = sorted((one.start(), one.end(), pattern is _YES) for pattern in (_NO, _YES) for one in pattern.finditer(line))
    nays = [(start, end) for start, end, there in told if not there]
    told = [
        (start, end, there)
        for start, end, there in told
        if not there or (not any(first <= start < last for first, last in nays) and not _WISHED & set(line[:start].split()[-5:]))
    ]
    if not told:
        return
    answers = {there for _, _, there in told}
    (_, before, _), (after, _, last) = told[0], told[-1]
    if len(answers) == 1 or _BACK & set(line[before:after].split()) or not last:
        reading.asked["spare_anchor"] = last
    else:
        reading.open_terms["spare_anchor"] = TERMS["spare_anchor"].prompt


def _mass_of_spare(reading: Reading) -> None:
    """Of two masses the one of the spare anchor is none of ours."""
    tokens, masses = reading.sentence.tokens, reading.rivals.get("anchor_mass", ())
    words = [token.word for token in tokens]
    amounts = [(at, token.mention.amount) for at, token in enumerate(tokens) if token.mention is not None and token.word == "<mass>"]
    spares = [amount for at, amount in amounts if tells_of_spare(words, at, told=any(place < at for place, _ in amounts))]
    left = [one for one in masses if one not in spares]
    lone = amounts[0] if len(amounts) == 1 and not masses else None
    if lone is not None and reading.asked.get("anchor_mass") == lone[1] and tells_of_spare(words, lone[0], told=False):
        del reading.asked["anchor_mass"]  # `a kedge of 8 kg`: the bower's is not told
        reading.open_terms["anchor_mass"] = TERMS["anchor_mass"].prompt
    elif not masses and reading.asked.get("anchor_mass") in spares:
        _take_the_other(reading)
    if len(left) == 1:
        del reading.rivals["anchor_mass"]
        reading.asked["anchor_mass"] = left[0]


def _take_the_other(reading: Reading) -> None:
    """`The 35 kg anchor is the spare; the one on the bottom is 22 kg`: the mass that was left aside is ours."""
    spare = reading.asked["anchor_mass"]
    others = [mention for mention, term in reading.aside if term is None and mention.kind == "mass" and mention.amount != spare]
    if len(others) != 1:
        return
    reading.asked["anchor_mass"] = others[0].amount
    reading.aside = [(one, term) for one, term in reading.aside if one is not others[0]]
    for token in reading.sentence.tokens:
        if token.mention is not None and token.mention.amount == spare:
            reading.leave(token.mention, None)
            reading.told.add(token.mention.start)


def _counted(token: Token) -> str:
    """Return a word, a small number in letters."""
    if token.word == "<other>" and token.mention is not None and (found := _ANCHORS_COUNTED.fullmatch(token.mention.text.lower())):
        return "one anchor" if found[1] in ("one", "1", "a single") else "two anchors"
    amount = token.mention.amount if token.mention is not None and token.word == "<number>" else None
    return _COUNTS.get(amount.value, token.word) if isinstance(amount, Amount) else token.word


__all__ = ["settle_spare"]
