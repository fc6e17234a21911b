"""The OpenAPI document, made from the declarations of the questions."""

import json
import sys
from functools import cache

import msgspec

from anchorcalc.answering.answer import answer
from anchorcalc.answering.replies import camel
from anchorcalc.catalogue import catalogue
from anchorcalc.declare import Question
from anchorcalc.doors.python import has_picture
from anchorcalc.version import VERSION

from .common import path_of
from .schema_fixed import fixed_paths
from .schema_fleet import fleet_paths
from .schema_inputs import Schema, body, input_components, parameters, ref
from .schema_results import result_components
from .schema_shared import HEADERS, PARAMETERS, failures, responses

DESCRIPTION = """What a skipper who anchors a small boat by hand must settle: rode, scope, swing, tide, holding.

Every question can be asked by query (`GET`) and by JSON body (`POST`); both take the same names and give the same answer. A quantity is
written with its unit: `12 ft`, `3.6 m`, `5 ft 6 in`; a range `3..4 m` is answered at its safe end. Nothing is guessed silently: what was
assumed stands in `read`, what an answer cannot know in `cautions`. A plus sign in a query is written `%2B`.

Answers to `GET` carry an `ETag` and keep for an hour. Errors are problem details (RFC 9457). Version 1 only ever adds: programs should
pass over what they do not know."""
# Said in words and by the path `.svg`: as a second form of the same response it would spoil the types of generated clients.
_PICTURE = "\n\nWith `Accept: image/svg+xml` the answer is a picture."
_INFO = {
    "title": "anchorcalc",
    "version": VERSION,
    "summary": "Rode, scope, swing, tide and holding, for boats anchored by hand.",
    "description": DESCRIPTION,
    "license": {"name": "MIT", "identifier": "MIT"},
    "contact": {"name": "The anchorcalc developers"},
}
_TAGS = [
    {"name": "questions", "description": "One question each, by its inputs."},
    {"name": "ask", "description": "Questions in plain words."},
    {"name": "catalogue", "description": "What can be asked."},
    {"name": "service", "description": "The service itself."},
]
_EXAMPLE_NAMES = ("one", "two", "three", "four", "five", "six")


@cache
def document() -> Schema:
    """Return the OpenAPI 3.1 document."""
    paths: Schema = {}
    examples: Schema = {}
    for question in catalogue():
        paths |= _question_paths(question)
        examples |= _worked(question)
    return {
        "openapi": "3.1.1",
        "info": _INFO,
        "servers": [{"url": ".", "description": "Where this document was found."}],
        "security": [],
        "tags": _TAGS,
        "paths": fixed_paths() | fleet_paths() | dict(sorted(paths.items())),
        "components": {
            "schemas": _used(dict(sorted((input_components() | result_components()).items())), paths),
            "parameters": PARAMETERS,
            "headers": HEADERS,
            "responses": responses(),
            "examples": examples,
        },
    }


def _used(schemas: Schema, paths: Schema) -> Schema:
    """Leave out the kinds of input that no question takes."""
    said = json.dumps([paths, schemas, PARAMETERS])
    return {name: schema for name, schema in schemas.items() if not name.endswith("Input") or f'schemas/{name}"' in said}


def example_names(question: Question) -> tuple[str, ...]:
    """Return the names of a question's worked examples."""
    return tuple(f"{question.name}_{_EXAMPLE_NAMES[place]}" for place in range(len(question.examples)))


def _worked(question: Question) -> Schema:
    """Return the worked examples: what is asked, and what the library itself answers."""
    made: Schema = {}
    for name, example in zip(example_names(question), question.examples, strict=True):
        given = answer(question, example)
        made[name] = {"summary": given.headline, "value": msgspec.json.decode(msgspec.json.encode(given))}
        made[f"{name}_asked"] = {"summary": ", ".join(f"{key} {value}" for key, value in example.items())[:120], "value": dict(example)}
    return made


def _question_paths(question: Question) -> Schema:
    names = example_names(question)
    doc = f"{question.doc}\n\nSources: {'; '.join(one.rstrip('.') for one in question.sources)}." if question.sources else question.doc
    shared = {"tags": ["questions"], "summary": question.title}
    picture = has_picture(question.name)
    doc += _PICTURE if picture else ""
    by_query = shared | {
        "operationId": question.name,
        "description": f"{doc}\n\nThe inputs stand in the query.",
        "parameters": parameters(question, names),
        "responses": {"200": _answer(question, names), "304": {"$ref": "#/components/responses/NotModified"}, **failures("get")},
    }
    by_body = shared | {
        "operationId": f"{question.name}_by_body",
        "description": f"{doc}\n\nThe inputs stand in a JSON body.",
        "requestBody": {
            "required": True,
            "description": "The inputs.",
            "content": {"application/json": {"schema": body(question), "examples": {one: _example(f"{one}_asked") for one in names}}},
        },
        "responses": {"200": _answer(question, names, kept=False), **failures("post")},
    }
    made = {path_of(question.name): {"get": by_query, "post": by_body}}
    return made | _picture_path(question, by_query) if picture else made


def _example(name: str) -> Schema:
    return {"$ref": f"#/components/examples/{name}"}


def _answer(question: Question, names: tuple[str, ...], *, kept: bool = True) -> Schema:
    content: Schema = {"application/json": {"schema": ref(f"{camel(question.name)}Answer"), "examples": {one: _example(one) for one in names}}}
    made: Schema = {"description": f"The answer. {question.results.__doc__ or ''}".strip(), "content": content}
    return made | {"headers": {"ETag": {"$ref": "#/components/headers/ETag"}}} if kept else made


def _picture_path(question: Question, by_query: Schema) -> Schema:
    drawn = {"description": "The picture of the answer.", "content": {"image/svg+xml": {"schema": {"type": "string"}}}}
    operation = by_query | {
        "operationId": f"{question.name}_picture",
        "summary": f"{question.title}: the picture",
        "description": f"A picture of the answer to the same question by the same query.\n\n{question.doc}",
        "responses": by_query["responses"] | {"200": drawn | {"headers": {"ETag": {"$ref": "#/components/headers/ETag"}}}},
    }
    return {f"{path_of(question.name)}.svg": {"get": operation}}


def text() -> str:
    """Return the document as it is kept in the file `openapi/v1.json`."""
    return json.dumps(document(), indent=1, ensure_ascii=False) + "\n"


def main(arguments: list[str]) -> int:
    """Write the document to a file: `python -m anchorcalc_api.schema openapi/v1.json`."""
    from pathlib import Path

    Path(arguments[0]).write_text(text(), encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
