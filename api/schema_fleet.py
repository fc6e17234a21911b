"""The part of the OpenAPI document that is tables."""

from anchorcalc.catalogue import names

from .schema_inputs import Schema
from .schema_shared import PARAMETERS, failures

_ROW: Schema = {
    "type": "object",
    "description": "Inputs of the question by name; the unit stands in the cell (`depth`) or in the name (`depth [ft]`). Others pass through.",
    "additionalProperties": True,
}
_ASKED = {"boat": "Skarv", "depth [m]": 4.0, "bow_height": "1 m", "tide_rise": "0.5 m"}
_CAUTIONS = "depth_at_boat_not_anchor bow_pitch wait_and_check_set fingers_and_turn local_rules"
_ANSWERED = _ASKED | {"rode_out [m]": 38.5, "total_height [m]": 5.5, "line_out [m]": 38.5, "cautions": _CAUTIONS, "problem": ""}
_CSV_ASKED = "boat,depth [m],bow_height,tide_rise\nSkarv,4.0,1 m,0.5 m\n"
_DESCRIPTION = """Answers a question for every row of a table. The answer comes in the form of the body: CSV, JSON lines, a JSON array of
objects, or an Arrow stream.

Columns are inputs by name; a unit stands in the heading (`depth [ft]`, plain numbers below) or in each cell (`12 ft`). Every row comes back
as it was and in order, with a column for each result (`rode_out [ft]`: in the unit of the depth heading, else metric, or as `units` says; a
result with an input's name gets `_answer`; a list is a list, in CSV and Arrow its JSON text), `cautions` (codes, a space between two) and
`problem`: empty, or what is wrong with that row, which alone goes unanswered.

Type, headings and limits are checked before the answer starts. A row that is at fault goes unanswered alone, with its
`problem`. What makes the rest unreadable (bytes that are no text) breaks the connection off: a whole body is a whole answer."""


def fleet_paths() -> Schema:
    """Return the operation of tables."""
    strict = {
        "name": "strict",
        "in": "query",
        "required": False,
        "description": "Refuse a table with a heading that looks like a misspelt input.",
        "schema": {"type": "boolean"},
        "example": True,
    }
    place = {
        "name": "question",
        "in": "path",
        "required": True,
        "description": "The question, with hyphens.",
        "schema": {"type": "string", "enum": [name.replace("_", "-") for name in names()]},
        "example": "rode-to-let-out",
    }
    operation = {
        "operationId": "fleet",
        "summary": "A question for every row of a table",
        "description": _DESCRIPTION,
        "tags": ["questions"],
        "parameters": [place, PARAMETERS["boat"], PARAMETERS["units"], strict],
        "requestBody": {"required": True, "description": "The table.", "content": _forms(_CSV_ASKED, _ASKED)},
        "responses": {"200": {"description": "The table with the answers.", "content": _forms(None, _ANSWERED)}, **failures("post", 404)},
    }
    return {"/v1/fleet/{question}": {"post": operation}}


def _forms(text: str | None, row: Schema) -> Schema:
    csv: Schema = {"schema": {"type": "string"}} | ({"example": text} if text else {})
    binary = {"schema": {"type": "string", "contentEncoding": "binary", "contentMediaType": "application/vnd.apache.arrow.stream"}}
    return {
        "text/csv": csv,
        "application/x-ndjson": {"schema": {"type": "string", "description": "An object a line."}},
        "application/json": {"schema": {"type": "array", "items": _ROW}, "example": [row]},
        "application/vnd.apache.arrow.stream": binary,
    }
