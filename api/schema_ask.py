"""`ask` in the OpenAPI document."""

from functools import cache

from anchorcalc.doors.ask import ask

from .schema_inputs import Schema, ref
from .schema_shared import failures, plain

ASKED: dict[str, Schema] = {
    "how_much": {"text": "How much rode in 12 ft of water with a bow height of 5 ft and 3 ft of tide to come?"},
    "how_wide": {"text": "How wide do we swing on 40 m of rode in 6 m with a 9 m boat?"},
    "under_a_boat": {"text": "How much rode in 12 ft of water?", "boat": {"name": "Gullbris", "bow_height": "5 ft"}, "units": "us"},
}
_BEFORE: Schema = {
    "type": "object",
    "description": "An earlier reply, or its question and inputs: what was asked then lies under the new text.",
    "additionalProperties": True,
}
_TEXT: Schema = {"type": "string"}
_SAID = "The question in plain words."
_DOC = (
    "Reads a question in plain words and answers it, asks back for what is missing, offers the readings of what is unclear, or says that "
    "no calculation answers it: all four are 200."
)
_SHARED: Schema = {"tags": ["ask"], "summary": "A question in plain words"}


def ask_path() -> Schema:
    """Return the operations of `ask`."""
    by_query = _SHARED | {
        "operationId": "ask",
        "description": f"{_DOC} The query may be 8 kB long in all.",
        "parameters": _parameters(),
        "responses": {"200": _reply(kept=True), "304": {"$ref": "#/components/responses/NotModified"}, **failures("get")},
    }
    by_body = _SHARED | {
        "operationId": "ask_by_body",
        "description": _DOC,
        "responses": {"200": _reply(kept=False), **failures("post")},
        "requestBody": {
            "required": True,
            "description": "The text, and what lies under it.",
            "content": {"application/json": {"schema": _body(), "examples": {name: {"value": one} for name, one in ASKED.items()}}},
        },
    }
    return {"get": by_query, "post": by_body}


def _parameters() -> list[Schema]:
    """Return the query: the worked examples of the text are those that need nothing beside it."""
    alone = {name: {"value": one["text"]} for name, one in ASKED.items() if len(one) == 1}
    before = {"type": "string", "contentMediaType": "application/json", "contentSchema": _BEFORE}
    return [
        {"name": "text", "in": "query", "required": True, "description": _SAID, "schema": _TEXT, "examples": alone},
        {"$ref": "#/components/parameters/boat"},
        {"name": "before", "in": "query", "required": False, "description": f"{_BEFORE['description']} As JSON.", "schema": before},
        {"$ref": "#/components/parameters/units"},
    ]


def _body() -> Schema:
    return {
        "type": "object",
        "additionalProperties": False,
        "required": ["text"],
        "description": "A question in plain words.",
        "properties": {"text": _TEXT | {"description": _SAID}, "boat": ref("Boat"), "before": _BEFORE, "units": ref("Units")},
    }


@cache
def _replies() -> Schema:
    """Return what the library itself says to the worked examples."""
    return {name: {"value": plain(ask(**one))} for name, one in ASKED.items()}


def _reply(*, kept: bool) -> Schema:
    worked = {name: one for name, one in _replies().items() if not kept or len(ASKED[name]) == 1}
    made: Schema = {"description": "The reply.", "content": {"application/json": {"schema": ref("AskReply"), "examples": worked}}}
    return made | {"headers": {"ETag": {"$ref": "#/components/headers/ETag"}}} if kept else made
