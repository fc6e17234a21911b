"""Every question over HTTP: by query as by body, as documented, and as the library answers."""

from typing import Any

import httpx
import msgspec
import pytest
from jsonschema import Draft202012Validator
from referencing import Registry
from referencing.jsonschema import DRAFT202012

import anchorcalc
from anchorcalc.catalogue import catalogue
from anchorcalc.declare import Question
from anchorcalc_api.common import path_of
from anchorcalc_api.schema import document, example_names
from anchorcalc_api.schema_ask import ASKED

QUESTIONS = pytest.mark.parametrize("question", catalogue(), ids=lambda one: one.name)


def validator(schema: dict[str, Any]) -> Draft202012Validator:
    """Return a validator of a schema that may refer to components of the document."""
    registry: Registry[Any] = Registry().with_resource("urn:document", DRAFT202012.create_resource(document()))
    located = msgspec.json.decode(msgspec.json.encode(schema).replace(b'"#/', b'"urn:document#/'))
    return Draft202012Validator(located, registry=registry)


def component(name: str) -> Draft202012Validator:
    """Return a validator of a component."""
    return validator({"$ref": f"#/components/schemas/{name}"})


def in_query(example: dict[str, Any]) -> dict[str, str]:
    """Return inputs as they stand in a query."""
    return {name: str(value).lower() if isinstance(value, bool) else str(value) for name, value in example.items()}


@QUESTIONS
def test_query_and_body_give_what_the_library_gives(question: Question, client: httpx.Client) -> None:
    for example in question.examples:
        wanted = msgspec.json.encode(anchorcalc.answer(question.name, **example))
        by_query = client.get(path_of(question.name), params=in_query(example))
        by_body = client.post(path_of(question.name), json=example)
        assert (by_query.status_code, by_query.content) == (200, wanted)
        assert (by_body.status_code, by_body.content) == (200, wanted)
        assert by_query.headers["content-type"] == by_body.headers["content-type"] == "application/json"


@QUESTIONS
def test_there_are_two_worked_examples_valid_and_as_answered(question: Question, client: httpx.Client) -> None:
    names, shown = example_names(question), document()["components"]["examples"]
    operations = document()["paths"][path_of(question.name)]
    body = validator(operations["post"]["requestBody"]["content"]["application/json"]["schema"])
    answer = validator(operations["get"]["responses"]["200"]["content"]["application/json"]["schema"])
    assert len(names) >= 2
    for name in names:
        asked, answered = shown[f"{name}_asked"]["value"], shown[name]["value"]
        body.validate(asked)
        answer.validate(answered)
        assert client.post(path_of(question.name), json=asked).json() == answered
        query = {one["name"]: one["examples"][name]["value"] for one in operations["get"]["parameters"] if name in one.get("examples", {})}
        assert client.get(path_of(question.name), params=in_query(query)).json() == answered


@QUESTIONS
def test_parameters_say_unit_bounds_and_what_counts_without_them(question: Question) -> None:
    for one in document()["paths"][path_of(question.name)]["get"]["parameters"]:
        if "name" in one:
            term = question.inputs[one["name"]].term
            assert one["description"]
            assert one["schema"].get("x-si-unit", "") == term.kind.si
            assert one["schema"].get("x-maximum") == term.most
            assert ("default" in one["schema"]) == (question.inputs[one["name"]].need == "usual" and term.usual is not None)


@QUESTIONS
def test_what_counts_without_an_input_is_what_the_document_says(question: Question, client: httpx.Client) -> None:
    example = question.examples[0]
    said = {
        one["name"]: one["schema"]["default"]
        for one in document()["paths"][path_of(question.name)]["get"]["parameters"]
        if "default" in one.get("schema", {})
    }
    plain = client.post(path_of(question.name), json=example).json()
    for name, default in said.items():
        if plain["read"].get(name, {}).get("from") == "assumed":
            given = client.post(path_of(question.name), json={**example, name: default}).json()
            assert given["results"] == plain["results"], name


@QUESTIONS
def test_answers_are_loaded_back(question: Question, client: httpx.Client) -> None:
    for example in question.examples:
        assert anchorcalc.load(client.post(path_of(question.name), json=example).content) == anchorcalc.answer(question.name, **example)


@QUESTIONS
def test_the_catalogue_has_it(question: Question, client: httpx.Client) -> None:
    entry = client.get(f"/v1/questions/{question.name}").json()
    component("QuestionEntry").validate(entry)
    assert entry == client.get(f"/v1/questions/{question.name.replace('_', '-')}").json()
    assert entry in client.get("/v1/questions").json()


def test_a_boat_lies_under_the_question(client: httpx.Client) -> None:
    boat = {"name": "Gullbris", "bow_height": "1.5 m", "scope": "5:1"}
    by_body = client.post("/v1/rode-to-let-out", json={"depth": "4.5 m", "boat": boat, "units": "metric"})
    by_query = client.get("/v1/rode-to-let-out", params={"depth": "4.5 m", "boat": msgspec.json.encode(boat).decode(), "units": "metric"})
    assert by_body.json()["read"]["bow_height"]["from"] == "boat"
    assert by_body.json()["results"]["rode_out"]["si"] == pytest.approx(30.0)
    assert by_query.content == by_body.content


def test_lists_and_fixes_stand_in_a_query(client: httpx.Client) -> None:
    marks = client.get("/v1/mark-to-stop-at", params={"rode_out": "25 m", "marks": "10 m; 20 m; 40 m"})
    assert marks.content == client.post("/v1/mark-to-stop-at", json={"rode_out": "25 m", "marks": ["10 m", "20 m", "40 m"]}).content
    circle = {"anchor_at": "59.314 N, 18.912 E", "rode_out": "30 m", "depth": "5 m", "boat_length": "9 m"}
    said = "2026-06-01T14:00+02:00 59.3142 N 18.9120 E; 2026-06-01T14:10+02:00 59.3143 N 18.9123 E"
    listed = [{"at": one[:22], "position": one[23:]} for one in said.split("; ")]
    by_query = client.get("/v1/drag-check", params={**circle, "fixes": said})
    assert by_query.status_code == 200
    assert (
        by_query.json()["read"]["fixes"]["value"] == client.post("/v1/drag-check", json={**circle, "fixes": listed}).json()["read"]["fixes"]["value"]
    )


def test_a_space_in_a_time_is_the_plus_that_it_was(client: httpx.Client) -> None:
    tide = "low_height=0.6%20m&high_height=3.4%20m&low_at=2026-06-01T10:00+02:00&high_at=2026-06-01T16:10+02:00&at=2026-06-01T14:20+02:00"
    answered = client.get(f"/v1/tide-at?{tide}")
    assert answered.status_code == 200
    assert answered.content == client.get(f"/v1/tide-at?{tide.replace('+', '%2B')}").content
    assert answered.json()["read"]["at"]["value"] == "2026-06-01T14:20+02:00"


def test_what_the_document_shows_of_the_catalogue_is_what_it_holds(client: httpx.Client) -> None:
    operation = document()["paths"]["/v1/questions/{question}"]["get"]
    shown = operation["responses"]["200"]["content"]["application/json"]["examples"]
    for name, one in operation["parameters"][0]["examples"].items():
        assert client.get(f"/v1/questions/{one['value']}").json() == shown[name]["value"]


@pytest.mark.parametrize("name", ASKED)
def test_ask_by_query_is_ask_by_body_and_what_the_document_shows(name: str, client: httpx.Client) -> None:
    asked = ASKED[name]
    query = {key: value if isinstance(value, str) else msgspec.json.encode(value).decode() for key, value in asked.items()}
    by_query, by_body = client.get("/v1/ask", params=query), client.post("/v1/ask", json=asked)
    assert by_query.json()["status"] == "answered"
    assert by_query.content == by_body.content == msgspec.json.encode(anchorcalc.ask(**asked))
    component("AskReply").validate(by_body.json())
    for method in ("get", "post") if len(asked) == 1 else ("post",):
        shown = document()["paths"]["/v1/ask"][method]["responses"]["200"]["content"]["application/json"]["examples"]
        assert by_body.json() == shown[name]["value"]
        assert len(shown) >= 2


@pytest.mark.parametrize(
    ("text", "status"),
    [
        ("How much rode in 12 ft of water with the bow 5 ft up?", "answered"),
        ("How much rode do I need?", "needs"),
        ("Is it legal to anchor here?", "cannot"),
        ("How much rode in 12 of water?", "unclear"),
    ],
)
def test_every_status_of_ask_is_200(text: str, status: str, client: httpx.Client) -> None:
    reply = client.get("/v1/ask", params={"text": text})
    assert (reply.status_code, reply.json()["status"]) == (200, status)
    component("AskReply").validate(reply.json())
    assert anchorcalc.load(reply.content) == anchorcalc.ask(text)


def test_an_earlier_reply_lies_under_the_next_text(client: httpx.Client) -> None:
    first = client.post("/v1/ask", json={"text": "How much rode in 6 m of water with a bow height of 1 m?"}).json()
    then = client.post("/v1/ask", json={"text": "and at 5:1?", "before": first}).json()
    assert then["results"]["rode_out"]["si"] == pytest.approx(35.0)
    assert then["read"]["depth"]["from"] == "before"
