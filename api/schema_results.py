"""What comes back, for the OpenAPI document: components from the very structs that are encoded."""

import re
from typing import Any

import msgspec

from anchorcalc.answering.replies import Cannot, Needs, Unclear, answer_class, camel
from anchorcalc.catalogue import catalogue
from anchorcalc.cautions import CAUTIONS
from anchorcalc.declare import Field, Question
from anchorcalc.doors.python import QuestionEntry
from anchorcalc.vocabulary import TERMS

from .problems import Problem
from .schema_inputs import Schema, ref

_SIDES = {"up": "rounded up when shown", "down": "rounded down when shown", "near": "rounded to the nearest when shown", "told": ""}
_REF = "#/components/schemas/{name}"


def result_components() -> dict[str, Schema]:
    """Return the schemas of all answers, replies and problems."""
    questions = catalogue()
    types: list[Any] = [*(answer_class(one) for one in questions), Needs, Unclear, Cannot, Problem, QuestionEntry]
    made: dict[str, Schema] = msgspec.json.schema_components(types, ref_template=_REF)[1]
    for schema in made.values():
        _tidy(schema)
    for one in questions:
        _say_results(made, one)
        _say_read(made[f"{camel(one.name)}Read"])
    _say_read(made["ReadSoFar"])
    made["Caution"]["properties"]["code"] |= {"description": "A code that never changes; more may come.", "x-codes": sorted(CAUTIONS)}
    return made | _unions(questions)


def _tidy(schema: Schema) -> None:
    """Say a struct as it is encoded: what is absent is absent, never null; no text for programmers of the library."""
    schema["description"] = re.split(r"\n\s*\n\s*Examples\n", schema.get("description", ""))[0].replace("\n    ", "\n").strip()
    for name, one in schema.get("properties", {}).items():
        schema["properties"][name] = _never_null(one)


def _never_null(schema: Schema) -> Schema:
    schema = {key: value for key, value in schema.items() if key != "default"}
    variants = [one for one in schema.get("anyOf", ()) if one != {"type": "null"}]
    if len(variants) == 1:
        return {**variants[0], **{key: value for key, value in schema.items() if key != "anyOf"}}
    return schema | ({"anyOf": variants} if variants else {})


def _say_results(made: dict[str, Schema], question: Question) -> None:
    _say_fields(made, made[question.results.__name__], question.fields)


def _say_fields(made: dict[str, Schema], schema: Schema, fields: tuple[Field, ...]) -> None:
    for field in fields:
        said = "; ".join(part for part in (field.side.meaning, _SIDES[field.side.way]) if part)
        if said:
            schema["properties"][field.name] |= {"description": said[0].upper() + said[1:] + "."}
        if field.row is not None:
            _say_fields(made, made[field.row.__name__], field.fields)


def _say_read(schema: Schema) -> None:
    for name in schema.get("properties", {}):
        schema["properties"][name] |= {"description": f"{TERMS[name].meaning[0].upper()}{TERMS[name].meaning[1:]}."}


def _unions(questions: tuple[Question, ...]) -> dict[str, Schema]:
    answers = {one.name: _REF.format(name=f"{camel(one.name)}Answer") for one in questions}
    return {
        "Answered": {
            "description": "An answer to any of the questions, told apart by `question`.",
            "oneOf": [{"$ref": one} for one in answers.values()],
            "discriminator": {"propertyName": "question", "mapping": answers},
        },
        "AskReply": {
            "description": "What `ask` says: an answer, a question back, a choice of readings, or that no calculation answers: told by by `status`.",
            "oneOf": [ref("Answered"), ref("Needs"), ref("Unclear"), ref("Cannot")],
        },
        "Questions": {"type": "array", "items": ref("QuestionEntry"), "description": "The catalogue."},
    }
