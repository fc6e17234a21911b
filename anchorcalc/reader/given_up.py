"""Figures of a plan that was given up, and of the hour of anchoring where the text tells how it is now."""

import re

from anchorcalc.reader.mention import Mention
from anchorcalc.reader.sentence import Token, without_figures
from anchorcalc.reader.sought import sought
from anchorcalc.reader.words import STOPS, sentence_end, sentence_start

_WE = r"(?:weare|we are|iam|i am|we|i|they|us|but|and)(?: (?:have|has|now|since|just|then|all))*"
_THAT = r"(?:that|it|this|the idea|that idea|that plan|the plan|them|those)"
_LEFT = r"(?:dropped|scrapped|binned|abandoned|shelved|ditched|ruled out|decided against|thought better of|gave up|given up|given up on)"
_GIVEN_UP = re.compile(
    rf" (?:{_WE} (?:given|gave|giving) (?:{_THAT} up|up on {_THAT})"
    rf"|{_WE} {_LEFT} {_THAT}"
    rf"|{_WE} ruled {_THAT} out"
    rf"|{_WE} chang(?:ed|e) (?:our|my) minds?"
    r"|(?:that|it|that plan|the plan|that idea) (?:is |was )?(?:off|no good|no go)(?: now)?)(?= [,.;:!?–—-] | so | and now | now )"
)
_SCRAPPED = re.compile(r" (?:scrap|bin|cancel|ignore|forget|disregard|strike) that(?= )")
_PLANNED = frozenset("thought planned plan meant wanted considered fancied hoped intended going eyed looked looking were was would".split())


_SUPPOSED = re.compile(  # `if the depth were 12 m I would need 70 m; but it is 8 m`
    r" if (?:[a-z]+ ){1,4}(?:were|was|had|had been) (?:(?!but |actually |in fact |as it is |then )[^.?! ]+ ){1,16}?"
    r"(?:[.;,] )?(?=(?:but|actually|in fact|as it is|in reality|really) (?:it|there|we|i|they|that|now|tonight|today|really|actually) )"
)
_IF = sought(_SUPPOSED, "if")
_PLAN = sought(_GIVEN_UP, "given gave giving dropped scrapped binned abandoned shelved ditched ruled decided thought changed change off no")
_SAID = sought(_SCRAPPED, "scrap bin cancel ignore forget disregard strike")
_NEEDS = _IF.needs | _PLAN.needs | _SAID.needs


def given_up(tokens: list[Token], dropped: list[Mention], *, held: frozenset[str]) -> list[Token]:
    """Leave out the figures of a plan that the same sentence, or the one right behind it, gives up; and what is scrapped in so many words."""
    if held.isdisjoint(_NEEDS):
        return tokens
    words = [token.word for token in tokens]
    line = f" {' '.join(words)} "
    out: set[int] = set()
    for found in _PLAN.within(line, held):
        end = line.count(" ", 0, found.start())
        start = sentence_start(words, end)
        start = start if start < end - 1 else sentence_start(words, max(0, start - 1))
        out.update(range(start, end) if _PLANNED & set(words[start:end]) else ())
    for found in _SAID.within(line, held):
        end = line.count(" ", 0, found.start())
        start = end - 1 if end and words[end - 1] in (",", "-", "–", ".", ";", ":") else end
        while start > 0 and words[start - 1] not in STOPS and words[start - 1] not in (",", ":"):
            start -= 1
        out.update(range(start, end))
    for found in _IF.within(line, held):
        out.update(range(line.count(" ", 0, found.start() + 1) - 1, line.count(" ", 0, found.end()) - 1))
    return without_figures(tokens, out, dropped) if out else tokens


_ANCHORED = frozenset("dropped anchored arrived let came started settled stopped lay".split())
_HERE = frozenset("here deep water depth under sounder reads shows there".split())


def as_it_was(tokens: list[Token], dropped: list[Mention]) -> list[Token]:
    """Leave out the depth in which she anchored, where a later sentence tells what there is now: `we dropped in 26 ft … 31 ft here now`."""
    words = [token.word for token in tokens]
    if "now" not in words or not _ANCHORED & set(words):
        return tokens
    out: set[int] = set()
    for at, token in enumerate(tokens):
        start = sentence_start(words, at)
        if token.word != "<length>" or words[at - 1] != "in" or not _ANCHORED & set(words[start:at]) or "now" in words[start:at]:
            continue
        if _depth_now(words, sentence_end(words, at)):
            out.add(at)
    return without_figures(tokens, out, dropped)


def _depth_now(words: list[str], begin: int) -> bool:
    """Say whether a later sentence has one length that is the depth now."""
    while begin < len(words):
        end = sentence_end(words, begin + 1)
        said = words[begin:end]
        if "now" in said and said.count("<length>") == 1 and _HERE & set(said) and not _NO_DEPTH & set(said):
            return True
        begin = end
    return False


_NO_DEPTH = frozenset("out veered rode chain rope warp roller bow another more rise fall".split())


_KINDS = frozenset("plough claw scoop fluke fisherman grapnel anchor hook bower kedge mushroom".split())
_GONE = frozenset("gone went lost had sold swapped scrapped broke bent replaced".split())


def gone(tokens: list[Token], dropped: list[Mention]) -> list[Token]:
    """Leave out the mass of an anchor that is no more, where another one hangs there now: `we had a 12 kg claw, now it is a 14 kg plough`."""
    words = [token.word for token in tokens]
    masses = [at for at, word in enumerate(words) if word == "<mass>" and _KINDS & set(words[at + 1 : at + 4])]
    if len(masses) != 2 or "now" not in words:
        return tokens
    old, new = masses
    end = sentence_end(words, new)
    told_gone = _GONE & set(words[sentence_start(words, old) : old]) or _GONE & set(words[old:new])
    return without_figures(tokens, {old}, dropped) if told_gone and "now" in words[old:end] else tokens
