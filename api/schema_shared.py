"""The parts of the OpenAPI document that operations share: parameters, headers, error responses."""

from typing import Any

import msgspec

from anchorcalc.errors import Fault, fault

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
        example = plain(problem(status=status, faults=(_SAID[status],)))
        made[name] = {"description": f"{TITLES[status]}.", "content": {"application/problem+json": {"schema": ref("Problem"), "example": example}}}
    made["TooManyRequests"]["headers"] = {"Retry-After": {"$ref": "#/components/headers/Retry-After"}}
    return made


def plain(value: Any) -> Any:
    """Return a value as JSON has it: lists, not tuples."""
    return msgspec.json.decode(msgspec.json.encode(value))
