"""What no calculation answers: the words that tell of law, weather, whether to go, money, and other subjects."""

import re
from collections.abc import Callable
from functools import cache, lru_cache
from typing import NamedTuple

from anchorcalc.reader.patterns import Called, Cue

CLAIM = "(?:liable|liability|sued?|at fault|in court|claims? against|(?:lose|lost|win|won) (?:his|her|their|my|our|the) claim)"
LAW = "The law of the place decides that, not a sum: ask the harbour master, the coast guard or the chart and its notices."
_WEATHER = "That is for the forecast of the weather service: this library works out what a wind or a tide does to a boat at anchor, not what comes."
_GO = "Whether to go, stay or leave the boat is for the skipper to decide, with the forecast and the crew in mind: no sum can."
_OTHER = "That is another subject: this library answers questions about anchoring a small boat."
_MONEY = "Prices, shops and insurance are for those who sell them: this library only reckons."
_HOW = "How it is done by hand is seamanship to learn from a handbook or a shipmate: this library only reckons."
_PLACE = "Pilot books, the chart and people with local knowledge tell of places: this library knows none."
NOTHING = "There is no question in that which this library could reckon: say what you want to know, with the figures that you have."


class Refusal(NamedTuple):
    """Words by which a kind of question is known, and who decides it."""

    why: str
    phrases: tuple[str, ...]
    mentioned: bool = False  # words of another subject that may stand beside a question of ours


def _any(*phrases: str) -> tuple[str, ...]:
    return phrases


REFUSALS: tuple[Refusal, ...] = (
    Refusal(
        LAW,
        _any(
            "legal",
            "legally",
            "illegal",
            "(?<!tide )(?<!depth )(?<!metres )(?<!feet )(?<!<length> )allowed(?! for| <)",
            "permitted",
            "(?:a|need|get) permit",
            "permission",
            "license",
            "licence",
            "(?<!er in )(?<!er - in - )(?<!son in )(?<!son - in - )law(?! has| gave| let| is (?:out|at|on)| put| veer| reckon| think)",
            "lawful",
            "a fine(?! \\S*(?:night|day|evening|breeze|spot))",
            "is there a fine",
            f"(?:fined|{CLAIM})",
            "the rules",
            "which rules",
            "what rules",
            "regulations?",
            "right of way",
            "who has to move",
            "who pays",
            "harbour master make",
            "lights must",
            "show a ball",
            "black ball",
            "anchor ball",
            "day shape",
            "anchor light",
            "anchor lights",
            "may we lie",
            "insurance pay",
            "forbidden",
            "police",
            "protected area",
            "what lights",
        ),
    ),
    Refusal(
        _WEATHER,
        _any(
            "will it rain",
            "gale warning",
            "front come through",
            "how high will waves be",
            "how high will the waves be",
            "halo round the moon",
            "what (?:is |will )?(?:the )?wind (?:will be|be|going)",
            "what (?:is |will )?(?:the )?weather",
            "wind will be tomorrow",
            "forecast (?:say|for tomorrow|good)",
            "when does the front",
            "hpa and falling",
            "weather (?:tomorrow|tonight|window)",
            "what will the wind be",
            "(?<!hard )(?<!much )will the wind(?! \\S* ?(?:pull|pulls|push|tug|drag|load|strain))",
            "(?:glass|barometer) (?:\\S+ ){0,10}(?:mean|means|expect|coming|storm|gale|blow) \\?",
            "is a storm coming",
            "will it blow",
            "what the wind will be",
            "fog lift",
            "wind will be \\S+ tomorrow",
        ),
    ),
    Refusal(
        _GO,
        _any(
            "(?:do|should|shall|can|may) (?:i|we) sail",
            "(?<!far )(?<!around )(?<!round )(?<!much )(?<!mark )do (?:i|we) go"
            "(?! before| astern| clear| free| past| in| round| around| over| out to)",
            "(?:do|should|shall|must|better) (?:i|we|she)? ?(?:slip|run for|cut and run|clear out|up anchor|make a run|ride it out|sit it out|bolt)",
            "or (?:stop|stay|lie|sit|remain) (?:where|put|here)",
            "should (?:we|i) (?:still )?(?:go|leave|shift|move|turn(?! round)|stay|sail|head|wait it|set off|run)",
            "shall (?:we|i) (?:still )?(?:go|leave|shift|turn back|move|sail)",
            "is it safe to",
            "safe to (?:sleep|leave|go|sail|stay|swim|row)",
            "would you go(?: out)?",
            "better to go",
            "leave the boat alone",
            "can (?:i|we) leave the boat",
            "too windy to",
            "go ashore",
            "worth (?:going|leaving)",
            "sit tight",
            "good idea to",
            "unsafe to leave",
            "would you stay",
            "is it wise",
            "dare (?:we|i) leave",
            "go or stay",
            "stay or go",
            "safe overnight",
            "would you sail",
        ),
    ),
    Refusal(
        _MONEY,
        _any(
            "cost",
            "costs",
            "price",
            "prices",
            "cheap",
            "cheaper",
            "cheapest",
            "(?:am i|are we|is she|is it|is the boat) insured",
            "(?:my|the|our) (?:insurance|insurer) (?:pay|pays|cover|covers|mind|want|say|insist|accept)",
            "where (?:can|do|could) (?:i|we) (?:buy|get|find)",
            "how much is a",
            "how much (?:should|do|would|must|will|did) (?:i|we|you) (?:pay(?! out)|spend)",
            "what (?:will|would|does|do) (?:\\S+ ){1,4}charge",
            "worth (?:the money|buying)",
            "which (?:brand|shop|make)",
            "who makes",
            "who sells",
        ),
    ),
    Refusal(
        _HOW,
        _any(
            "how (?:do|should|to|can) (?:i|we|you)? ?(?:tie|splice|clean|descale|bleed|knot|whip|rig|paint|lash|maintain|service|fix)",
            "which way (?:do|should) (?:i|we) turn",
            "which oil",
            "antifouling",
            "which paint(?! mark| must| do| should| shall| is at| goes| belongs| to stop)(?<! at which paint)",
            "what colour",
            "(?<! at )(?<! on )(?<! by )(?<! to )(?:which|what) (?:knot|bend|hitch)"
            "(?! do (?:i|we) (?:stop|let|cast|cleat|count)| must| should| marks| is at| comes| to stop)",
        ),
    ),
    Refusal(
        _PLACE,
        _any(
            "is the holding in (?! sand| mud| clay)\\S+",
            "is (?:the )?holding (?:any )?(?:good|bad|poor|fair|better|reliable) (?:in|at|off|there|here|around|by)",
            "which island",
            "good place to anchor",
            "prettiest",
            "where exactly is",
            "best anchorage",
            "deepest lake",
            "where is the best",
            "nice anchorage",
        ),
    ),
    Refusal(
        _OTHER,
        _any(
            "poem",
            "onerror",
            "href",
            "src",
            "fishing tackle",
            "which way will",
            "capital of",
            "recipe",
            "boil",
            "mussels",
            "garlic",
            "minutes a side",
            "sail area",
            "how fast",
            "how many litres",
            "litres for",
            "diesel get us",
            "ignore all earlier",
            "radio check",
            "who are you",
            "sprain",
            "translate",
            "word fathom",
            "(?<!i )(?<!we )(?<!may )(?<!can )fish at",
            "what is [a]? ?scope \\?",
            "trim my sails",
            "your \\S+ questions",
            "isnt it boring",
            "radius of the earth",
            "drop table",
            "how long until the tow",
            "tide be with us",
            "weigh in the locker",
            "(?<!the )dock line(?! out)",
            "mark 4 gas",
            "which oil",
            "litres an hour",
            "whales?",
            "how deep (?:can|do|could) (?:\\S+ ){1,2}(?:dive|swim)",
        ),
    ),
    Refusal(
        _OTHER,
        _any(
            "i wish",
            "never again",
            "how many minutes",
            "in <date>",
        ),
        mentioned=True,
    ),
    Refusal(LAW, _any("rules", "a fine", "permit"), mentioned=True),
    Refusal(_MONEY, _any("too much \\?", "pays", "insurance", "insurer", "insured"), mentioned=True),
    Refusal(_HOW, _any("splice", "bowline"), mentioned=True),
)


def refusal(line: str, *, plain: bool, ours: Callable[[str], bool] = lambda part: False) -> str | None:
    """Return who decides what a text asks, where no calculation does; beside a plain question of ours, other subjects may be told or asked of."""
    found = refused(" ".join(_asking(line)) if plain else line, plain=plain)
    if not found or (plain and any(ours(part) and not refused(part, plain=True) for part in _asking(line))):
        return None
    return REFUSALS[found[0]].why


@lru_cache(maxsize=1)  # looked for before a text is read and after it, mostly in the same line
def refused(line: str, *, plain: bool) -> list[int]:
    """Return the kinds of question refused of which a line has the words; beside a plain question of ours, not those that may stand there."""
    whose, called = _indexed()
    return [one for one in sorted({whose[number] for number, _ in called.by(line)}) if not (plain and REFUSALS[one].mentioned)]


def _asking(line: str) -> list[str]:
    """Return the parts of a line that ask, all where none does: `price is <money> a foot . what length must i buy , and what will it cost ?`."""
    parts = [f" {part.strip()} " for sentence in SENTENCE.findall(line) if sentence.endswith("?") for part in PART.findall(sentence)]
    return parts or [f" {part.strip()} " for part in PART.findall(line)]


PART = re.compile(r".+?(?:[.!?;\n]+|(?= (?:, )?(?:and|also|or) (?:what|whats|how|which|when|where|will|is|are|do|does|can|should|shall) )|$)")
SENTENCE = re.compile(r"[^.!?;\n]+[.!?;\n]?")


@cache
def _indexed() -> tuple[tuple[int, ...], Called]:
    """Return which refusal each phrase belongs to, and which phrases a line calls up."""
    phrases = [(number, phrase) for number, one in enumerate(REFUSALS) for phrase in one.phrases]
    return tuple(number for number, _ in phrases), Called([_cue(phrase) for _, phrase in phrases])


_WORDS = re.compile(r"[a-z0-9]+(?: [a-z0-9]+)*")
_LOOKS_AROUND = re.compile(r"\(\?<?[!=](?:[^()]|\([^()]*\))*\)")
_PLAIN = r"(?:(?P<word>[a-z0-9]+)(?P<maybe>\?)?|\(\?:(?P<choice>[a-z0-9]+(?:\|[a-z0-9]+)*)\))"
_ENDS = (re.compile(rf"{_PLAIN}(?= |$)"), re.compile(rf"(?:^|.* ){_PLAIN}$"))


def _cue(phrase: str) -> Cue:
    """Return a phrase ready for use: one of plain words as it stands, of another the plain words that it begins and ends with."""
    wordings = (tuple(phrase.split(" ")),) if _WORDS.fullmatch(phrase) else ()
    bare = _LOOKS_AROUND.sub("", phrase)
    ends = [found for end in _ENDS if (found := end.match(bare)) is not None]
    needs = [one["choice"].split("|") if one["choice"] else [one["word"], one["word"][: -1 if one["maybe"] else None]] for one in ends]
    return Cue(0.0, wordings, tuple(dict.fromkeys(map(frozenset, needs))), f" {phrase}(?= )")
