"""Marks on the rode: a list of them, and where they count from."""

from anchorcalc.reader.mention import Mention
from anchorcalc.reader.reading import Reading
from anchorcalc.units.kinds import Amount

_FROM = {
    "anchor": (" from anchor ", " from shackle ", " reckoned from anchor ", " counted from anchor ", " starts from anchor ", " from anchor itself ", " includes <length> of chain ", " counting chain ", " chain counted ", " chain included "),
    "chain_end": (
        " from chain end ", " from end of chain ", " line only ", " from where chain ends ", " from where rope begins ", " from splice ", " on rope only ", " where chain stops ", " where chain ends ", " start after chain ",
        " starts after chain ", " on warp only ", " none on chain ", " not counting chain ", " where rope begins ", " rope only ", " warp only ", " begin after chain ", " begin at end of chain ", " at chain end ", " on line only ", " from chain join ",
        " start where chain ends ", " start at splice ", " where line starts ", " where rope starts ", " from start of rope ", " from where line starts ", " count line only ", " count only line ", " only count rope ", " excluding chain ", " rope alone ",
    ),
}
_ARTICLES = (" the ", " a ", " an ", " my ", " our ", " its ")


def settle_marks(reading: Reading) -> None:
    """Put the marks of a text into a reading: a list where several lengths are marks, and where they count from."""
    takes = reading.question.inputs
    if "marks" not in takes and "mark_interval" not in takes:
        return
    _list(reading)
    if "marks_from" not in takes or not any(word in reading.sentence.line for word in _ABOUT_MARKS):
        return
    line = reading.sentence.line
    for article in _ARTICLES:
        line = line.replace(article, " ")
    found = {word for word, phrases in _FROM.items() if any(_plain(line, phrase) for phrase in phrases)}
    if len(found) == 1:
        reading.put("marks_from", found.pop())


_ABOUT_MARKS = (" mark", " tag", " knot", " ribbon", " paint", " ring", " leather", " strip", " counted", " band", " flag", " tie")


def _plain(line: str, phrase: str) -> bool:
    """Say whether a phrase stands in a line and is not denied."""
    at = line.find(phrase)
    return at >= 0 and not line[:at].endswith((" not", " isnt", " arent")) and (phrase != " from anchor " or not line[:at].rstrip().endswith((">", "far")) or " marks" in line[:at])


def _list(reading: Reading) -> None:
    """Make one list of lengths that stand in a list, or that are each said to be a mark."""
    listed = [token.mention for token in reading.sentence.tokens if token.mention is not None and token.mention.group >= 0 and token.mention.kind == "length"]
    members = listed if len(listed) >= 2 else _repeated(reading)
    if len(members) >= 2:
        amounts = [one.amount for one in members if isinstance(one.amount, Amount)]
        starts = {one.start for one in members}
        reading.aside = [(one, term) for one, term in reading.aside if one.start not in starts]
        for term in [name for name, (start, _) in reading.sources.items() if start in starts]:
            reading.asked.pop(term, None)
            reading.rivals.pop(term, None)
        reading.asked.pop("marks", None)
        reading.rivals = {term: values for term, values in reading.rivals.items() if term not in ("marks", "mark_interval", "chain", "line")}
        reading.asked["marks"] = amounts
    elif isinstance(reading.asked.get("marks"), Amount):
        reading.put("mark_interval", reading.asked.pop("marks"))


def _repeated(reading: Reading) -> list[Mention]:
    values = reading.rivals.pop("marks", [])
    return [Mention("length", value, 0, 0, "") for value in values if isinstance(value, Amount)]
