"""Quantities that are no input themselves but make one with another: depth at high water, height of tide now, depth on the chart."""

from anchorcalc.units.kinds import LENGTH
from anchorcalc.vocabulary import TERMS
from anchorcalc.vocabulary.term import Term


def _between(name: str, meaning: str) -> Term:
    return Term(name=name, kind=LENGTH, meaning=meaning, prompt="", example="1 m")


BETWEEN: dict[str, Term] = {
    one.name: one for one in (
        _between("at_high", "depth or height of tide at high water"), _between("at_low", "depth or height of tide at low water"),
        _between("height_now", "height of tide now"), _between("charted", "depth on the chart"), _between("unwanted", "something else"),
    )
}
ALL_TERMS: dict[str, Term] = {**TERMS, **BETWEEN}

BETWEEN_CUES: dict[str, str] = {
    "at_high": "<at high water 8|<at high tide 8|<at hw 8|<by high water 7|<at top of tide 8|>high water it will be 8|>high water it 6|>at high water 6|<high water 4|>high water 4|>at top of tide it will be 8|<high 3|<at high 7|>high tide 4|<by high tide 6|>will be 4|<at top 6|>high water makes it 7|<by top of tide 7",
    "at_low": "<at low water 8|<at low tide 8|<at lw 8|<by low water 7|<at low 8|>low water it will be 8|>at low water 6|>low water 4|>low tide 4|<at bottom of tide 8|<by low tide 6|>low water leaves 8",
    "height_now": "<height of tide 8|>height of tide 8|>tide height 8|>height of tide is 9|>height of tide now 9|>tide height is 9|>tide table says 7|>tide table 7|>tides up 4|>height now 8|<of tide now 7|<of tide height 8|>with tide 4|<tide now 7|<height now 8|>and now 2|<on gauge 8|>tide gauge 8|>tide gauge reads 9|>tide now 7|>height tide 8",
    "charted": "=charted 8|>charted depth 10|>chart says 8|>chart shows 8|>chart 5|<on chart 9|<charted depth 10|>sounding on chart 10|>chart gives 8|>chart has 8|<by chart 6|>chart datum 7|<at datum 8|<below datum 9|>drying 3|<charted 9|<at chart datum 9|>charted at 9",
    "unwanted": "<of clearance over 1|>mast 8|<mast 8|>air draught 9|<air draught 9|>bears 8|<waves 8|>waves 7|<swell 8|>swell 7|<sea 4|>visibility 8|<of fetch 8|>platform 6|<tall 6|<cable landing 5|>gain 6|>heading 8|>from 240 1|>slot 8|>berth 8|<fender 8|<fenders 8|>made 3|>tank 8|<wide channel 8|<dinghy painter 8|<nights 8|<since 4|<of engine hours 8|<crew 8|<on paper 2|<of string 8|<ladder 7|<mast height 9|<of fog 7|<hauled in 5|>hauled in 9|<waterline 7|<on deck but 8|<lwl 8|>lwl 8|<on waterline 9",
}
