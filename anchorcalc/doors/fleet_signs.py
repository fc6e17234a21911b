"""How the numbers of a file are written: decimal commas, and signs that may stand between thousands."""

import re
from typing import Any, Literal

import msgspec
import pyarrow.compute as pc

from anchorcalc.errors import Fault, fault

_DECIMAL_COMMA = re.compile(r"(?<=\d),(?=\d)")
_GROUPED = {sign: re.compile(rf"(?:^|[^\d.,])\d{{1,3}}(?:[{sign}]\d{{3}})+(?:[^\d.,]|$)") for sign in ",."}
_NAMES, _OTHER = {",": "comma", ".": "point"}, {",": ".", ".": ","}


class NumberSigns(msgspec.Struct, frozen=True, kw_only=True):
    """How a file writes numbers: with a decimal comma or not, and which sign may be either where three digits follow (1,200: 1.2 or 1200)."""

    decimal_comma: bool = False
    unclear: Literal["", ",", "."] = ""

    def pointed(self, text: str) -> str:
        """Return a text with a point for a decimal comma."""
        return _DECIMAL_COMMA.sub(".", text) if self.decimal_comma else text

    def all_pointed(self, values: Any) -> Any:
        """Return many texts as plain numbers, those that are numbers; one that may be two numbers is none."""
        bare = pc.replace_substring(values, ",", ".") if self.decimal_comma else values
        bare = pc.if_else(pc.equal(bare, ""), None, bare)
        return pc.if_else(pc.match_substring_regex(values, _GROUPED[self.unclear].pattern), "unclear", bare) if self.unclear else bare

    def fault(self, name: str, text: str) -> Fault | None:
        """Return what is wrong with a text for an input, if its sign may be either."""
        if not self.unclear or not _GROUPED[self.unclear].search(text):
            return None
        would_do = f'"{text.replace(self.unclear, "")}" or "{text.replace(self.unclear, _OTHER[self.unclear])}"'
        return fault(name, "unreadable", text, f"has a {_NAMES[self.unclear]} that may be decimal or stand between thousands", would_do)


PLAIN_SIGNS = NumberSigns()
