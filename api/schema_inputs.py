"""What a request may bring, for the OpenAPI document: from the vocabulary, one schema a kind, one parameter a term."""

from typing import Any

from anchorcalc.declare import Input, Question
from anchorcalc.doors.python import meaning, required
from anchorcalc.units.kinds import symbols_of
from anchorcalc.vocabulary import TERMS, anchor, boat, rode
from anchorcalc.vocabulary.term import Term

Schema = dict[str, Any]
# What a boat file can be expected to hold: such a term may always be left to `boat`, so the document does not ask for it.
OF_THE_BOAT = frozenset(term.name for term in (*boat.TERMS, *rode.TERMS, *anchor.TERMS)) - {"rode_out", "angle", "bottom"} | {
    "transducer_depth",
    "reads_from",
    "under_keel",
    "position_error",
}
_UNITLESS = ("ratio", "slope", "count", "factor")
FLAG_WORDS = ["yes", "no", "true", "false", "y", "n", "on", "off", "1", "0"]


def _text(kind: str) -> Schema:
    """Return the schema of a text that is a value of a kind; the kind is its format."""
    longest = 2_000_000 if kind in ("fixes", "lengths") else 200
    return {"type": "string", "format": kind, "minLength": 1, "maxLength": longest}


def ref(name: str) -> Schema:
    """Return a reference to a schema of the components."""
    return {"$ref": f"#/components/schemas/{name}"}


def _object(required_names: tuple[str, ...], **properties: Schema) -> Schema:
    return {"type": "object", "required": list(required_names), "properties": properties}


_NUMBER = {"type": "number"}
_PAIR = {"type": "array", "items": _NUMBER, "minItems": 2, "maxItems": 2}


def _quantity(kind: str) -> Schema:
    """Return the forms of a quantity: text, value and unit, a range, or a result of an earlier answer."""
    unit = {"type": "string", "description": "Such as " + ", ".join(symbols_of(kind=kind)) + "; the usual spellings will do too."}
    return {
        "description": f"A {kind} with its unit: a text, a number and a unit, a range, or a result of an earlier answer (by its `si`).",
        "anyOf": [
            _text(kind),
            _object(("value", "unit"), value=_NUMBER, unit=unit),
            _object(("low", "high", "unit"), low=_NUMBER, high=_NUMBER, unit=unit),
            _object(("si", "unit"), si=_NUMBER, unit=unit),
        ],
    }


def _number(kind: str) -> Schema:
    return {
        "description": f"A {kind}: a number, a text, a range, or a result of an earlier answer.",
        "anyOf": [
            _NUMBER,
            _text(kind),
            _object(("value",), value=_NUMBER),
            _object(("low", "high"), low=_NUMBER, high=_NUMBER),
            _object(("si",), si=_NUMBER),
        ],
    }


def _position() -> Schema:
    return {
        "description": "A position: a text, latitude and longitude in degrees (north and east positive), or a position of an earlier answer.",
        "anyOf": [_text("position"), _PAIR, _object(("value",), value={"anyOf": [_text("position"), _PAIR]})],
    }


def _fixes() -> Schema:
    pair = {"type": "array", "items": {}, "minItems": 2, "maxItems": 2, "description": "A time and a position."}
    several = {"type": "array", "minItems": 1, "maxItems": 20_000, "items": {"anyOf": [ref("FixInput"), pair]}}
    return {
        "description": "Where the boat has been: times with positions, as a text (`AT POSITION; AT POSITION`) or a list.",
        "anyOf": [_text("fixes"), several, _object(("value",), value=several)],
    }


def _fix() -> Schema:
    named = _object(("latitude", "longitude"), latitude=_NUMBER, longitude=_NUMBER)
    return _object(("at", "position"), at=_text("clock"), position={"anyOf": [_text("position"), _PAIR, named]}) | {
        "description": "Where the boat was, and when."
    }


def _lengths() -> Schema:
    several = {"type": "array", "minItems": 1, "items": ref("LengthInput")}
    numbers = {"type": "array", "minItems": 1, "items": _NUMBER}
    return {
        "description": "Lengths in rising order: a text (`10,20,40 m` or `10 m; 20 m`), a list of lengths, or numbers with one unit.",
        "anyOf": [_text("lengths"), several, _object(("value", "unit"), value=numbers, unit={"type": "string"})],
    }


def input_components() -> dict[str, Schema]:
    """Return the schemas of all kinds of input."""
    kinds = sorted({term.kind.name for term in TERMS.values() if term.kind.has_unit and term.kind.name != "lengths"})
    made = {f"{kind.capitalize()}Input": _quantity(kind) for kind in kinds}
    made |= {f"{kind.capitalize()}Input": _number(kind) for kind in _UNITLESS if any(term.kind.name == kind for term in TERMS.values())}
    clock = {"description": "A clock time: `06:10`, or ISO 8601.", "anyOf": [_text("clock"), _object(("value",), value=_text("clock"))]}
    flag_text = {"type": "string", "enum": FLAG_WORDS}
    flag: Schema = {"type": "boolean"}
    made |= {
        "ClockInput": clock,
        "PositionInput": _position(),
        "FixesInput": _fixes(),
        "FixInput": _fix(),
        "LengthsInput": _lengths(),
        "FlagInput": {"description": "Yes or no.", "anyOf": [flag, flag_text, _object(("value",), value={"anyOf": [flag, flag_text]})]},
        "Units": {"type": "string", "enum": ["us", "metric"], "description": "How the answer is shown; else as the question was put."},
        "Boat": _boat(),
    }
    return made


def _boat() -> Schema:
    values = {name: {"description": f"{term.meaning}, in any form that it takes as an input"} for name, term in TERMS.items()}
    return {
        "type": "object",
        "additionalProperties": False,
        "properties": {"name": {"description": "name of the boat"}, **values},
        "description": "Terms and values of the boat that lie under what the question says itself; those it does not take are passed over.",
        "examples": [{"name": "Gullbris", "boat_length": "8.4 m", "bow_height": "1.1 m", "chain": "12 m", "line": "50 m"}],
    }


def must_be_given(question: Question, one: Input) -> bool:
    """Say whether the document asks for an input: it must be given, and no boat can be expected to hold it."""
    return required(question, one.name) and one.name not in OF_THE_BOAT


def described(question: Question, one: Input) -> str:
    """Return what an input means, its bounds, and what counts without it."""
    said = meaning(question, one.name)
    said = said[0].upper() + said[1:]
    said += f" For example `{one.term.example}`." if not any(one.name in example for example in question.examples) else ""
    return f"{said} Must be given, here or by `boat`." if required(question, one.name) and one.name in OF_THE_BOAT else said


def facts(term: Term) -> Schema:
    """Return what a program may want to know of a term: unit and bounds, in SI, and why."""
    found = {
        "x-kind": term.kind.name,
        "x-si-unit": term.kind.si,
        "x-more-than": term.above,
        "x-minimum": term.least,
        "x-maximum": term.most,
        "x-why": term.why,
    }
    return {name: value for name, value in found.items() if value not in (None, "")}


def default_of(one: Input) -> str | float | None:
    """Return what counts where an input is not given, in the form in which it may be given."""
    usual, kind = one.term.usual, one.term.kind
    if one.need != "usual" or usual is None:
        return None
    if isinstance(usual, str):
        return usual
    return f"{usual:g}:1" if kind.name == "ratio" else f"{usual:g} {kind.si}" if kind.has_unit else usual


def _in_query(one: Input) -> Schema:
    kind = one.term.kind.name
    if kind == "word":
        return {"type": "string", "enum": list(one.term.choices)}
    if kind == "flag":
        return {"type": "boolean"}
    made = _text(kind)
    return made | {"maxLength": min(made["maxLength"], 5000)}


def parameters(question: Question, names: tuple[str, ...]) -> list[Schema]:
    """Return the query parameters of a question; `names` are those of its worked examples."""
    made = []
    for one in question.inputs.values():
        schema = _in_query(one) | facts(one.term)
        usual = default_of(one)
        if usual is not None:
            schema["default"] = usual
        examples = {name: {"value": example[one.name]} for name, example in zip(names, question.examples, strict=True) if one.name in example}
        entry = {"name": one.name, "in": "query", "required": must_be_given(question, one), "description": described(question, one), "schema": schema}
        made.append(entry | ({"examples": examples} if examples else {}))  # none where none was worked: a page would fill it in
    return [*made, {"$ref": "#/components/parameters/boat"}, {"$ref": "#/components/parameters/units"}]


def _in_body(one: Input) -> Schema:
    if one.term.kind.name == "word":
        words = {"type": "string", "enum": list(one.term.choices)}
        return {"anyOf": [words, _object(("value",), value=words)]}
    return ref(f"{one.term.kind.name.capitalize()}Input")


def body(question: Question) -> Schema:
    """Return the schema of a question's body. The usual value is `x-default`: a `default` would make some generated clients ask for it."""
    properties: Schema = {}
    for one in question.inputs.values():
        usual = default_of(one)
        properties[one.name] = _in_body(one) | {"description": described(question, one), "examples": [one.term.example]} | facts(one.term)
        if usual is not None:
            properties[one.name]["x-default"] = usual
    needed = [one.name for one in question.inputs.values() if must_be_given(question, one)]
    made: Schema = {"type": "object", "additionalProperties": False, "description": f"{question.title}: the inputs.", "properties": properties}
    made["properties"] |= {"boat": ref("Boat"), "units": ref("Units")}
    return made | {"required": needed} if needed else made
