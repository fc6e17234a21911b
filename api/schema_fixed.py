"""The parts of the OpenAPI document that are no question: the catalogue and the service."""

from typing import Any

from anchorcalc.doors.python import entry_of
from anchorcalc.version import VERSION

from .schema_ask import ask_path
from .schema_inputs import Schema, ref
from .schema_shared import failures, plain


def fixed_paths() -> Schema:
    """Return the operations that are no question."""
    return {
        "/": _greeting(),
        "/health": _health(),
        "/openapi.json": _openapi(),
        "/v1/ask": ask_path(),
        "/v1/questions": _questions(),
        "/v1/questions/{question}": _question(),
    }


def _json(schema: Schema, **examples: Any) -> Schema:
    return {"application/json": {"schema": schema, "examples": {name: {"value": value} for name, value in examples.items()}}}


def _get(name: str, summary: str, description: str, tag: str, content: Schema, **more: Any) -> Schema:
    found = {"200": {"description": f"{summary}.", "content": content}, **failures("plain", *more.pop("also", ()))}
    return {"get": {"operationId": name, "summary": summary, "description": description, "tags": [tag], "responses": found, **more}}


_TEXT: Schema = {"type": "string"}


def _greeting() -> Schema:
    links = {"questions": "v1/questions", "ask": "v1/ask", "openapi": "openapi.json", "docs": "docs", "health": "health"}
    schema = {
        "type": "object",
        "required": ["name", "version", "links"],
        "properties": {"name": _TEXT, "version": _TEXT, "links": {"type": "object", "additionalProperties": _TEXT}},
    }
    content = _json(schema, greeting={"name": "anchorcalc", "version": VERSION, "links": links}) | {"text/html": {"schema": _TEXT}}
    return _get("greeting", "What is here", "The name and version of the service, with links to what it has.", "service", content)


def _health() -> Schema:
    schema = {"type": "object", "required": ["status", "version"], "properties": {"status": {"const": "ok"}, "version": _TEXT}}
    return _get(
        "health",
        "Whether the service is well",
        "For load balancers and monitors.",
        "service",
        _json(schema, well={"status": "ok", "version": VERSION}),
    )


def _openapi() -> Schema:
    schema = {
        "type": "object",
        "required": ["openapi", "info", "paths"],
        "properties": {"openapi": _TEXT, "info": {"type": "object"}, "paths": {"type": "object"}},
    }
    content = {"application/json": {"schema": schema}}
    made = _get("openapi", "This document", "The OpenAPI document of the interface.", "service", content)
    made["get"]["responses"] = {status: one for status, one in made["get"]["responses"].items() if status != "406"}
    return made


def _questions() -> Schema:
    content = {"application/json": {"schema": ref("Questions")}}
    return _get("questions", "All questions", "The catalogue: every question with its inputs, results and examples.", "catalogue", content)


def _question() -> Schema:
    name = {
        "name": "question",
        "in": "path",
        "required": True,
        "description": "The name of a question, with `_` or `-`.",
        "schema": _TEXT,
        "examples": {"one": {"value": "rode_to_let_out"}, "two": {"value": "swing-radius"}},
    }
    content = _json(ref("QuestionEntry"), one=plain(entry_of("rode_to_let_out")), two=plain(entry_of("swing_radius")))
    return _get(
        "question",
        "One question",
        "A question of the catalogue: its inputs, results and examples.",
        "catalogue",
        content,
        parameters=[name],
        also=(404,),
    )
