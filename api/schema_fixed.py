"""The parts of the OpenAPI document that are no question: `ask`, the catalogue, the service, problems."""

from typing import Any

import msgspec

from anchorcalc.doors.python import entry_of
from anchorcalc.errors import Fault, fault
from anchorcalc.version import VERSION

from .problems import TITLES, problem
from .schema_inputs import Schema, ref

_NAMES: dict[int, str] = {
    400: "Unreadable",
    404: "NotFound",
    406: "NotAcceptable",
    408: "Timeout",
    413: "TooLarge",
    414: "AddressTooLong",
    415: "UnsupportedMediaType",
    422: "Inputs",
    429: "TooManyRequests",
    431: "HeadersTooLarge",
    500: "Internal",
}
_SAID: dict[int, Fault] = {
    400: fault("body", "unreadable_request", None, "is no JSON (JSON is malformed: expected ',' or '}' (byte 18))", '{"depth": "12 ft"}'),
    404: fault("question", "unknown_question", "rode-to-let-ot", "is no question of this server", "rode-to-let-out"),
    406: fault("Accept", "not_acceptable", "text/html", "asks for no form that this answer has", "application/json"),
    408: fault("body", "unreadable_request", None, "did not arrive within 20 s", "a faster body"),
    413: fault("body", "too_large", None, "is larger than 65536 bytes", "65536 bytes or less"),
    414: fault("query", "too_large", None, "is longer than 8192 bytes", "8192 bytes or less, or a POST"),
    415: fault("Content-Type", "unsupported_media_type", "text/plain", "is not read here", "application/json"),
    422: fault("depth", "bare_number", "12", "has no unit", '"12 ft"'),
    429: fault("client", "too_many_requests", None, "asked more than 600 times a minute", "to wait 3 s"),
    431: fault("headers", "too_large", None, "are larger than 16384 bytes", "16384 bytes or less"),
    500: fault("request", "internal", None, "met a failure of the server", "the same request later, or a report of it"),
}
_OF_METHOD = {"get": (400, 406, 414, 422, 429, 431, 500), "post": (400, 406, 408, 413, 415, 422, 429, 431, 500), "plain": (406, 429, 431, 500)}

PARAMETERS: Schema = {
    "boat": {
        "name": "boat",
        "in": "query",
        "required": False,
        "description": 'Terms and values of the boat, as JSON, such as `{"bow_height": "4 ft"}`: they lie under what the query says itself.',
        "schema": {"type": "string", "contentMediaType": "application/json", "contentSchema": ref("Boat")},
    },
    "units": {
        "name": "units",
        "in": "query",
        "required": False,
        "description": "How the answer is shown; else as the question was put.",
        "schema": {"type": "string", "enum": ["us", "metric"]},
    },
}
HEADERS: Schema = {
    "ETag": {
        "description": "The strong tag of these bytes, for `If-None-Match`.",
        "schema": {"type": "string"},
        "example": '"2f0c7a61d1a3b0c45d9e8f77"',
    },
    "Retry-After": {"description": "Seconds to wait.", "schema": {"type": "integer", "minimum": 1}, "example": 3},
}


def failures(method: str, *more: int) -> Schema:
    """Return the error responses of an operation."""
    return {str(status): {"$ref": f"#/components/responses/{_NAMES[status]}"} for status in sorted((*_OF_METHOD[method], *more))}


def responses() -> Schema:
    """Return every response that operations share."""
    made: Schema = {"NotModified": {"description": "The client has these bytes already.", "headers": {"ETag": {"$ref": "#/components/headers/ETag"}}}}
    for status, name in _NAMES.items():
        example = _plain(problem(status=status, faults=(_SAID[status],)))
        made[name] = {"description": f"{TITLES[status]}.", "content": {"application/problem+json": {"schema": ref("Problem"), "example": example}}}
    made["TooManyRequests"]["headers"] = {"Retry-After": {"$ref": "#/components/headers/Retry-After"}}
    return made


def fixed_paths() -> Schema:
    """Return the operations that are no question."""
    return {
        "/": _greeting(),
        "/health": _health(),
        "/openapi.json": _openapi(),
        "/v1/ask": _ask(),
        "/v1/questions": _questions(),
        "/v1/questions/{question}": _question(),
    }


def _plain(value: Any) -> Any:
    return msgspec.json.decode(msgspec.json.encode(value))


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
    content = _json(ref("QuestionEntry"), one=_plain(entry_of("rode_to_let_out")), two=_plain(entry_of("swing_radius")))
    return _get(
        "question",
        "One question",
        "A question of the catalogue: its inputs, results and examples.",
        "catalogue",
        content,
        parameters=[name],
        also=(404,),
    )


ASKED: dict[str, Schema] = {
    "how_much": {"text": "How much rode in 12 ft of water with the bow 5 ft above it and 3 ft of tide to come?"},
    "how_wide": {"text": "How wide do we swing on 40 m of rode in 6 m?", "boat": {"boat_length": "9 m", "bow_height": "1.2 m"}},
}


def _ask() -> Schema:
    limits = {"type": "string"}
    before = {
        "type": "object",
        "description": "An earlier reply, or its question and inputs: what was asked then lies under the new text.",
        "additionalProperties": True,
    }
    said = "The question in plain words."
    text = {
        "name": "text",
        "in": "query",
        "required": True,
        "description": said,
        "schema": limits,
        "examples": {name: {"value": one["text"]} for name, one in ASKED.items()},
    }
    held = {
        "name": "before",
        "in": "query",
        "required": False,
        "description": f"{before['description']} As JSON.",
        "schema": {"type": "string", "contentMediaType": "application/json", "contentSchema": before},
    }
    boat: Schema = {"$ref": "#/components/parameters/boat"}
    units: Schema = {"$ref": "#/components/parameters/units"}
    schema = {
        "type": "object",
        "additionalProperties": False,
        "required": ["text"],
        "description": "A question in plain words.",
        "properties": {"text": limits | {"description": said}, "boat": ref("Boat"), "before": before, "units": ref("Units")},
    }
    doc = (
        "Reads a question in plain words and answers it, asks back for what is missing, offers the readings of what is unclear, or says that "
        "no calculation answers it: all four are 200."
    )
    shared = {"tags": ["ask"], "summary": "A question in plain words"}
    good = {"description": "The reply.", "content": {"application/json": {"schema": ref("AskReply")}}}
    tagged = good | {"headers": {"ETag": {"$ref": "#/components/headers/ETag"}}}
    return {
        "get": shared
        | {
            "operationId": "ask",
            "description": f"{doc} The query may be 8 kB long in all.",
            "parameters": [text, boat, held, units],
            "responses": {"200": tagged, "304": {"$ref": "#/components/responses/NotModified"}, **failures("get")},
        },
        "post": shared
        | {
            "operationId": "ask_by_body",
            "description": doc,
            "responses": {"200": good, **failures("post")},
            "requestBody": {
                "required": True,
                "description": "The text, and what lies under it.",
                "content": {"application/json": {"schema": schema, "examples": {name: {"value": one} for name, one in ASKED.items()}}},
            },
        },
    }
