"""What a text takes back, what it tells of other days and other boats: out of the way before anything is read from it."""

import re
from functools import cache

from anchorcalc.reader.corrections import corrected
from anchorcalc.reader.denials import denied, said_wrongly, what_is_left
from anchorcalc.reader.elsewhere import elsewhere
from anchorcalc.reader.for_another import asked_for_another, without_ours
from anchorcalc.reader.given_up import as_it_was, given_up, gone
from anchorcalc.reader.lesser import UNKNOWN_BY, unknown
from anchorcalc.reader.mention import Mention
from anchorcalc.reader.neighbour import speaks_of_us
from anchorcalc.reader.no_figures import idle
from anchorcalc.reader.opinions import ratios_in_short, slopes_alike
from anchorcalc.reader.sentence import Sentence, Token, without_figures
from anchorcalc.reader.shorthand import jotted
from anchorcalc.reader.spoken import joined
from anchorcalc.reader.sums import summed
from anchorcalc.reader.witnesses import believed
from anchorcalc.reader.words import BESIDE, NOW, OTHERS, OURS, PAST, STOPS, sentence_start


def restated(sentence: Sentence, *, goes_on: bool = False) -> tuple[Sentence, list[Mention]]:
    """Return a text with spoken forms made one and corrections made; and the quantities that were taken back.

    Where it goes on from an earlier exchange, a difference (`10 m more`) is a change of what was said there.
    """
    dropped: list[Mention] = []
    tokens = joined(jotted(summed(idle(sentence), dropped, goes_on=goes_on)))
    held = frozenset([token.word for token in tokens])
    tokens = slopes_alike(ratios_in_short(tokens, held=held), held=held)
    tokens = said_wrongly(what_is_left(tokens, dropped, held=held), dropped, held=held)
    tokens = denied(corrected(tokens, dropped, held=held), dropped, held=held)
    return Sentence(sentence.text, tuple(tokens), whole=sentence.whole), dropped


def our_own(sentence: Sentence, *, others: bool) -> tuple[Sentence, list[Mention]]:
    """Return a text without what it tells of other days, and of other boats unless those count; and the quantities so dropped."""
    dropped: list[Mention] = []
    held = sentence.words  # what these leave out is told by words; none adds any
    whole = list(sentence.tokens)
    tokens = _not_minded(whole, dropped) if "never" in held else whole
    tokens = given_up(tokens, dropped, held=held)
    tokens = gone(tokens, dropped) if "now" in held else tokens
    tokens = elsewhere(tokens, dropped, held=held)
    tokens = unknown(tokens, dropped, text=sentence.text, others=others) if UNKNOWN_BY.perhaps(held) else tokens
    tokens = believed(tokens, dropped, held=held)
    tokens = as_it_was(tokens, dropped) if "now" in held else tokens
    if asked_for_another([token.word for token in tokens]):
        tokens = without_ours(tokens, dropped)
    elif ("<date>" in held or not held.isdisjoint(_openers())) and not _of_that(tokens):
        taken: list[Mention] = []
        kept = _own(tokens, taken, others=others)
        if any(token.mention is not None for token in kept) or speaks_of_us(tuple(tokens)):  # else it is all about another, whom the question is for
            dropped.extend(taken)
            tokens = kept
    return (sentence if tokens is whole else Sentence(sentence.text, tuple(tokens), whole=sentence.whole)), dropped


def _of_that(tokens: list[Token]) -> bool:
    """Say whether a text asks what comes of the one scope that it tells of, whoever swears by it: `dad says 3:1. What is that in 6 m?`."""
    words = [token.word for token in tokens]
    return words.count("<ratio>") == 1 and _WHAT_IS_THAT.search(f" {' '.join(words)} ") is not None


_WHAT_IS_THAT = re.compile(
    r" (?:what(?: is| does| would| will)? (?:that|it)|how (?:much|long|many)(?: [a-z]+)? (?:is|does|would|makes?) (?:that|it))(?= )"
)


def _not_minded(tokens: list[Token], dropped: list[Mention]) -> list[Token]:
    """Leave out the figures of a sentence that ends `never mind that`, or is followed by it."""
    words = [token.word for token in tokens]
    out: set[int] = set()
    for at in range(1, len(words) - 1):
        if words[at : at + 2] != ["never", "mind"] or (at + 2 < len(words) and words[at + 2] not in ("that", "it", "this", ".", ",", ";")):
            continue
        end = at - 1 if words[at - 1] in STOPS else at
        out.update(range(sentence_start(words, end), end))
    return without_figures(tokens, out, dropped)


# --- other days, other boats --------------------------------------------------------------------------------------------------------


@cache
def _openings() -> dict[str, list[tuple[tuple[str, ...], str]]]:
    found: dict[str, list[tuple[tuple[str, ...], str]]] = {}
    for said, what in ((PAST, "past"), (OTHERS, "other")):
        for phrase in said:
            words = tuple(word for word in phrase.split() if word != "the")
            found.setdefault(words[0], []).append((words, what))
    return found


@cache
def _closings(what: str) -> tuple[tuple[str, ...], ...]:
    return tuple(tuple(one.split()) for one in (NOW if what == "past" else (*OURS, *NOW)))


def _own(tokens: list[Token], dropped: list[Mention], *, others: bool) -> list[Token]:
    """Leave out what is told of another day or another boat, up to where the text comes back to now and us."""
    kept: list[Token] = []
    state, since = "", 0
    buffer: list[Token] = []
    words = [token.word for token in tokens]
    openers = _openers()
    if "<date>" not in words and not any(_opening(words, at)[0] for at, word in enumerate(words) if word in openers):
        return tokens
    for at, token in enumerate(tokens):
        if state and at > since and (token.word in STOPS or token.word == ")" or _closes(words, at, state)):
            if state == "other" and token.word in _MINE:
                _elliptic(tokens, at, buffer, kept)
            elif state == "other" and at + 1 < len(tokens) and tokens[at + 1].word in _MINE:
                kept.append(token)
                _elliptic(tokens, at + 1, buffer, kept)
            state = ""
        if state == "past" and token.word == "," and words[at + 2 : at + 3] and words[at + 2] in ("today", "tonight", "now"):
            state = ""  # `not 8:1 like yesterday, 5:1 today`
        if not state and token.word == "<date>" and any(word in ("now", "today", "tonight") for word in words[at:]):
            state, since, buffer = "past", at, []
        if not state and token.word in openers:
            state, since = _opening(words, at)
            state = "" if state == "other" and others else state
            if state == "past" and any(word in ("was", "had", "were") for word in words[max(0, at - 4) : at]):
                _just_told(kept, dropped)
            buffer = []
        if state and token.mention is not None:
            dropped.append(token.mention)
        if state:
            buffer.append(token)
        else:
            kept.append(token)
    return kept


@cache
def _openers() -> frozenset[str]:
    """Return the words that may begin what is told of another day or another boat."""
    return _SHIPS | {"neighbour", "neighbours", *_openings()}


def _just_told(kept: list[Token], dropped: list[Mention]) -> None:
    """`it was 14 ft last week`: the figure right before belongs to that day."""
    for place in range(len(kept) - 1, max(-1, len(kept) - 4), -1):
        mention = kept[place].mention
        if mention is not None:
            dropped.append(mention)
            del kept[place]
            return


def _closes(words: list[str], at: int, state: str) -> bool:
    """Say whether a word leads back to now, or to us; `next to us` does not."""
    if state == "past" and _COMES_BACK.match(f"{' '.join(words[at : at + 7])} "):
        return True
    return _at(words, at, _closings(state)) and not (words[at] in ("us", "me") and words[at - 1] in BESIDE)


# `so there's 65 m left`, `but I only have 45 m aboard`
_COMES_BACK = re.compile(
    r"(?:so|but|which leaves|leaving|leaves|though)(?: (?:there|i|we|it|that|here|iam|weare|only|still|just|got|have|has|leaves|is|are|us|me))* <"
)
_MINE = frozenset(("mine", "ours"))


def _elliptic(tokens: list[Token], at: int, buffer: list[Token], kept: list[Token]) -> None:
    """`his draws 0.8 m, mine 1.6 m`: what was said of the other's figure holds for ours."""
    place = at + 2 if at + 1 < len(tokens) and tokens[at + 1].word == "has" else at + 1
    if place < len(tokens) and tokens[place].mention is not None:
        last = max((spot for spot, token in enumerate(buffer) if token.mention is not None), default=len(buffer))
        kept.extend(token for token in buffer[max(0, last - 3) : last] if token.mention is None)


def _at(words: list[str], at: int, phrases: tuple[tuple[str, ...], ...]) -> bool:
    return any(tuple(words[at : at + len(phrase)]) == phrase for phrase in phrases)


_KIN = frozenset("dad brother cousin mate buddy friend".split())


def _one_of_us(words: list[str], at: int, end: int) -> bool:
    """Say whether one who is told of is aboard, did something to our gear, or is the one that we ask for: `me and my dad`, `for my dad`."""
    before = words[at - 1] if at else ""
    before = words[at - 2] if before in ("my", "our") and at > 1 else before
    behind = words[end] if end < len(words) else ""
    return words[end - 1] in _KIN and (before in ("for", "and", "with") or behind in _MADE or behind == "and")


_OPINIONS = frozenset(
    "says said reckons makes thinks reads swears guesses claims tells logged counted measured recorded estimates guessed thought insists "
    "maintains".split()
)


_SHIPS = frozenset("ketch yawl sloop schooner cutter trawler motorboat cruiser catamaran yacht".split())
_SAYS = frozenset("shouts shouted calls called hollers hollered put let veered anchored".split())
_THEIRS = frozenset("has lies carries draws put let is swings with".split())
_LOOKS = frozenset("big blue red white black green german danish dutch swedish norwegian french finnish grey little".split())
_MADE = frozenset("tied painted marked sewed put whipped gave bought made rigged fitted taped asks wants wonders".split())


_MEASURED = frozenset("measured taped weighed marked painted remarked surveyed".split())
_OWNERS = frozenset("owner owners skipper crew man captain".split())  # `the previous owner` is another, up to where we are told of


def _opening(words: list[str], at: int) -> tuple[str, int]:
    behind = words[at + 1] if at + 1 < len(words) else ""
    if words[at] in _SHIPS and at and words[at - 1] in _LOOKS and (behind in _THEIRS or "not" in words[max(0, at - 3) : at]):
        return "other", at
    if words[at] in ("neighbour", "neighbours") and behind in _SAYS:
        return "other", at
    for phrase, what in _openings().get(words[at], ()):
        place, end = 0, at
        while end < len(words) and place < len(phrase):
            if words[end] == phrase[place]:
                place += 1
            elif words[end] != "the":
                break
            end += 1
        if place < len(phrase):
            continue
        end += words[end : end + 1] in (["always"], ["still"], ["just"], ["only"], ["once"], ["often"], ["used"])
        end += 4 if words[end : end + 4] == ["-", "in", "-", "law"] else 0
        if words[end - 1] == "last" and words[end : end + 1] == ["of"]:
            continue  # `we came in on the last of the flood`
        if what == "other" and (_one_of_us(words, at, end) or words[end : end + 1] == ["it"]):  # `his brother has it they are 5 m apart`
            continue
        if not (end < len(words) and words[end] in _OPINIONS):
            if what == "past" and _MEASURED & set(words[max(0, at - 6) : at]):
                continue  # `I taped the bow last summer: 1.4 m` holds still
            return ("other" if what == "past" and words[end : end + 1] and words[end] in _OWNERS else what), end - 1
    return "", 0
