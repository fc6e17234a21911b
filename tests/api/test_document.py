"""The OpenAPI document: as kept, valid, complete in every operation, and only ever growing."""

import json
from collections.abc import Callable
from copy import deepcopy
from typing import Any

import httpx
import pytest
from openapi_spec_validator import OpenAPIV31SpecValidator

from anchorcalc.cautions import CAUTIONS
from anchorcalc.errors import CODES
from anchorcalc_api.schema import document, text
from tests.api.breaking import breaking
from tests.api.server import ROOT

OPERATIONS = [(path, method, one) for path, methods in document()["paths"].items() for method, one in methods.items()]
EACH = pytest.mark.parametrize(("path", "method", "operation"), OPERATIONS, ids=[f"{method} {path}" for path, method, _ in OPERATIONS])


def test_the_file_is_the_document() -> None:
    """`python -m anchorcalc_api.schema openapi/v1.json` writes it."""
    assert (ROOT / "openapi/v1.json").read_text(encoding="utf-8") == text()


def test_the_server_serves_it(client: httpx.Client) -> None:
    assert client.get("/openapi.json").json() == document()


def test_it_is_valid() -> None:
    assert list(OpenAPIV31SpecValidator(document()).iter_errors()) == []


@EACH
def test_every_operation_says_what_it_is_and_how_it_fails(path: str, method: str, operation: dict[str, Any]) -> None:
    assert operation["summary"]
    assert len(operation["description"]) > 30 or path in ("/health",)
    failures = [status for status in operation["responses"] if status.startswith(("4", "5"))]
    assert "500" in failures
    for status in failures:
        response = document()["components"]["responses"][operation["responses"][status]["$ref"].rpartition("/")[2]]
        assert list(response["content"]) == ["application/problem+json"]
        assert response["content"]["application/problem+json"]["example"]["status"] == int(status)


@EACH
def test_every_answer_has_a_type(path: str, method: str, operation: dict[str, Any]) -> None:
    schema = operation["responses"]["200"]["content"].get("application/json", {}).get("schema", {"type": "string"})
    assert "$ref" in schema or schema.get("type")


def test_an_answer_never_holds_null() -> None:
    schemas = document()["components"]["schemas"]
    assert '"null"' not in json.dumps({name: one for name, one in schemas.items() if not name.endswith("Input")})


def test_codes_are_a_closed_list() -> None:
    assert sorted(document()["components"]["schemas"]["Fault"]["properties"]["code"]["enum"]) == sorted(CODES)
    assert document()["components"]["schemas"]["Caution"]["properties"]["code"]["x-codes"] == sorted(CAUTIONS)


def test_nothing_that_was_released_is_broken() -> None:
    released = json.loads((ROOT / "openapi/released/v1.json").read_text(encoding="utf-8"))
    assert breaking(old=released, new=document()) == []


# --- the check itself: each of these breaks, each of those does not ---

ROUTE = "/v1/rode-to-let-out"


def _query(changed: dict[str, Any], name: str) -> dict[str, Any]:
    found: dict[str, Any] = next(one for one in changed["paths"][ROUTE]["get"]["parameters"] if one.get("name") == name)
    return found


def _body(changed: dict[str, Any]) -> dict[str, Any]:
    found: dict[str, Any] = changed["paths"][ROUTE]["post"]["requestBody"]["content"]["application/json"]["schema"]
    return found


def _schemas(changed: dict[str, Any]) -> dict[str, Any]:
    found: dict[str, Any] = changed["components"]["schemas"]
    return found


BREAKS: dict[str, Callable[[dict[str, Any]], Any]] = {
    "a path is gone": lambda it: it["paths"].pop(ROUTE),
    "a method is gone": lambda it: it["paths"][ROUTE].pop("post"),
    "an operation is renamed": lambda it: it["paths"][ROUTE]["get"].update(operationId="other"),
    "a parameter is gone": lambda it: it["paths"][ROUTE]["get"]["parameters"].pop(1),
    "a parameter must be given": lambda it: _query(it, "scope").update(required=True),
    "a parameter counts for something else": lambda it: _query(it, "scope")["schema"].update(default="5:1"),
    "a bound is tighter": lambda it: _query(it, "depth")["schema"].update({"x-maximum": 100.0}),
    "a word is not taken": lambda it: _query(it, "marks_from")["schema"]["enum"].pop(),
    "a new parameter must be given": lambda it: it["paths"][ROUTE]["get"]["parameters"].append({"name": "moon", "required": True, "schema": {}}),
    "a value must be given": lambda it: _body(it)["required"].append("scope"),
    "a value is gone": lambda it: _body(it)["properties"].pop("chain"),
    "a form of a value is gone": lambda it: _schemas(it)["LengthInput"]["anyOf"].pop(2),
    "a status is gone": lambda it: it["paths"][ROUTE]["get"]["responses"].pop("304"),
    "a result is gone": lambda it: _schemas(it)["RodeToLetOut"]["properties"].pop("enough"),
    "a result is not always there": lambda it: _schemas(it)["RodeToLetOut"]["required"].remove("rode_out"),
    "a result is of another kind": lambda it: _schemas(it)["RodeToLetOut"]["properties"].update(enough={"type": "string"}),
    "a field of a quantity is gone": lambda it: _schemas(it)["Quantity"]["properties"].pop("si"),
    "a field is of another type": lambda it: _schemas(it)["Quantity"]["properties"]["si"].update(type="string"),
    "a code is gone": lambda it: _schemas(it)["Fault"]["properties"]["code"]["enum"].pop(0),
    "a caution is gone": lambda it: _schemas(it)["Caution"]["properties"]["code"]["x-codes"].pop(0),
    "a kind of reply is gone": lambda it: _schemas(it)["AskReply"]["oneOf"].pop(),
    "a component is gone": lambda it: _schemas(it).pop("ScopeNow"),
    "a header is gone": lambda it: it["paths"][ROUTE]["get"]["responses"]["200"].pop("headers"),
    "a form of the answer is gone": lambda it: it["components"]["responses"]["Inputs"]["content"].clear(),
}
GROWS: dict[str, Callable[[dict[str, Any]], Any]] = {
    "nothing": lambda it: None,
    "a path": lambda it: it["paths"].update({"/v1/moon": it["paths"]["/health"]}),
    "an optional parameter": lambda it: it["paths"][ROUTE]["get"]["parameters"].append({"name": "moon", "schema": {"type": "string"}}),
    "an optional value": lambda it: _body(it)["properties"].update(moon={"type": "string"}),
    "a result": lambda it: _schemas(it)["RodeToLetOut"]["properties"].update(moon={"type": "string"}),
    "a result that is always there now": lambda it: _schemas(it)["RodeToLetOut"]["required"].append("enough"),
    "a code": lambda it: _schemas(it)["Fault"]["properties"]["code"]["enum"].append("moon"),
    "a word": lambda it: _query(it, "marks_from")["schema"]["enum"].append("moon"),
    "a wider bound": lambda it: _query(it, "depth")["schema"].update({"x-maximum": 300.0}),
    "another text": lambda it: _query(it, "depth").update(description="how deep"),
    "a value that need not be given": lambda it: _body(it).update(required=[]),
    "a form of a value": lambda it: _schemas(it)["LengthInput"]["anyOf"].append({"type": "array", "items": {"type": "number"}}),
}


@pytest.mark.parametrize("change", BREAKS.values(), ids=BREAKS)
def test_a_change_that_breaks_is_found(change: Callable[[dict[str, Any]], Any]) -> None:
    changed = deepcopy(document())
    change(changed)
    assert breaking(old=document(), new=changed)


@pytest.mark.parametrize("change", GROWS.values(), ids=GROWS)
def test_a_change_that_only_adds_is_none(change: Callable[[dict[str, Any]], Any]) -> None:
    changed = deepcopy(document())
    change(changed)
    assert breaking(old=document(), new=changed) == []
