"""Errors as problem details (RFC 9457): all of one shape, each with its status, and nothing of the inside."""

import json
from typing import Any

import httpx
import pytest
from litestar import Litestar, get

import anchorcalc_api
from anchorcalc.errors import CODES
from anchorcalc_api.front import Front
from anchorcalc_api.options import Options
from anchorcalc_api.problems import EXCEPTION_HANDLERS
from tests.api.server import client_of
from tests.api.test_questions import component

ROUTE = "/v1/rode-to-let-out"
AS_JSON = {"Content-Type": "application/json"}


def problem(found: httpx.Response, status: int) -> list[dict[str, Any]]:
    """Return the errors of a problem, after holding it against the document."""
    assert found.status_code == status, found.text
    assert found.headers["content-type"] == "application/problem+json"
    told = found.json()
    component("Problem").validate(told)
    assert told["status"] == status
    assert all(one["code"] in CODES and len(one["given"]) <= 80 and one["why"] and one["would_do"] for one in told["errors"])
    assert told["type"].startswith("urn:anchorcalc:problem:")
    return list(told["errors"])


def test_all_faults_come_at_once(client: httpx.Client) -> None:
    errors = problem(client.post(ROUTE, json={"depth": "12", "scope": "0.5", "scoop": "7:1", "chain": "4 kg"}), 422)
    assert {(one["input"], one["code"]) for one in errors} == {
        ("depth", "bare_number"),
        ("scope", "out_of_bounds"),
        ("scoop", "unknown_input"),
        ("chain", "wrong_dimension"),
    }
    assert errors == problem(client.get(ROUTE, params={"depth": "12", "scope": "0.5", "scoop": "7:1", "chain": "4 kg"}), 422)


def test_what_was_given_is_cut(client: httpx.Client) -> None:
    errors = problem(client.post(ROUTE, json={"depth": "x" * 500}), 422)
    assert len(errors[0]["given"]) == 80


def test_a_name_given_twice_is_a_fault(client: httpx.Client) -> None:
    for found in (
        client.get(f"{ROUTE}?depth=4+m&depth=5+m"),
        client.post(ROUTE, content=b'{"depth": "4 m", "d\\u0065pth": "5 m"}', headers=AS_JSON),
        client.post(ROUTE, content=b'{"depth" : "4 m", "depth": "5 m", "boat": {"chain": "3 m"}}', headers=AS_JSON),
    ):
        errors = problem(found, 422)
        assert [(one["input"], one["code"]) for one in errors] == [("depth", "given_twice")]
    errors = problem(client.post(ROUTE, content=b'{"depth": "4 m", "boat": {"chain": "3 m", "chain": "4 m"}}', headers=AS_JSON), 422)
    assert [(one["input"], one["code"]) for one in errors] == [("chain", "given_twice")]


def test_names_that_stand_once_in_nested_values_are_no_fault(client: httpx.Client) -> None:
    body = {"depth": {"value": 4, "unit": "m"}, "bow_height": {"value": 1, "unit": "m"}, "boat": {"name": 'a "b": c', "chain": "3 m"}}
    assert client.post(ROUTE, json=body).status_code == 200


@pytest.mark.parametrize("body", [b"", b"{", b'{"depth": "4 m"', b"\xff\xfe", b"nonsense", b'{"depth": NaN}', b"[" * 100_00, b'{"a":' * 2000])
def test_a_body_that_is_no_json_is_unreadable(body: bytes, client: httpx.Client) -> None:
    assert [one["code"] for one in problem(client.post(ROUTE, content=body, headers=AS_JSON), 400)] == ["unreadable_request"]


@pytest.mark.parametrize("body", ["[]", "7", '"depth"', "null", "true"])
def test_a_body_that_is_no_object_is_a_fault(body: str, client: httpx.Client) -> None:
    assert [one["code"] for one in problem(client.post(ROUTE, content=body, headers=AS_JSON), 422)] == ["wrong_kind"]


def test_a_body_of_very_many_names_is_refused_at_once(client: httpx.Client) -> None:
    errors = problem(client.post(ROUTE, json={f"k{number}": 1 for number in range(3000)}), 422)
    assert [(one["input"], one["code"]) for one in errors] == [("body", "too_large")]


def test_a_query_beside_a_body_is_not_passed_over(client: httpx.Client) -> None:
    for path in (f"{ROUTE}?scope=5", "/v1/ask?units=us"):
        assert [(one["input"], one["code"]) for one in problem(client.post(path, json={"depth": "4 m"}), 422)] == [("query", "contradiction")]


def test_null_is_no_value(client: httpx.Client) -> None:
    assert [(one["input"], one["code"]) for one in problem(client.post(ROUTE, json={"depth": "4 m", "chain": None}), 422)] == [
        ("chain", "wrong_kind")
    ]


@pytest.mark.parametrize("query", ["depth=%ff%fe", "&".join(f"a{n}=1" for n in range(300)), "depth=4+m&boat={"])
def test_a_query_that_cannot_be_read_is_unreadable(query: str, client: httpx.Client) -> None:
    found = client.get(httpx.URL("http://anchorage.test").copy_with(raw_path=f"{ROUTE}?{query}".encode()))
    assert [one["code"] for one in problem(found, 400)] == ["unreadable_request"]


def test_a_boat_that_is_no_object_is_a_fault(client: httpx.Client) -> None:
    assert problem(client.get(ROUTE, params={"depth": "4 m", "boat": "[]"}), 422)[0]["input"] == "boat"
    assert problem(client.post(ROUTE, json={"depth": "4 m", "boat": 3}), 422)[0]["input"] == "boat"


@pytest.mark.parametrize(
    "kind", ["text/plain", "application/x-www-form-urlencoded", "multipart/form-data; boundary=x", "application/json; charset=latin-1", ""]
)
def test_only_json_bodies_are_read(kind: str, client: httpx.Client) -> None:
    found = client.post(ROUTE, content=b'{"depth": "4 m"}', headers={"Content-Type": kind} if kind else {})
    assert problem(found, 415)[0]["code"] == "unsupported_media_type"
    assert found.headers["accept"] == "application/json"


def test_a_packed_body_is_not_read(client: httpx.Client) -> None:
    problem(client.post(ROUTE, content=b"{}", headers={**AS_JSON, "Content-Encoding": "gzip"}), 415)


@pytest.mark.parametrize(
    "path",
    ["/nowhere", "/v1", "/v1/nowhere", "/v1/questions/nowhere", "/v1/rode_to_let_out", "/docs/../../etc/passwd", "/docs/nothing.js", "/v2/ask"],
)
def test_what_is_not_there_is_404(path: str, client: httpx.Client) -> None:
    problem(client.get(path), 404)
    assert client.head(path).status_code == 404


def test_the_nearest_question_is_named(client: httpx.Client) -> None:
    assert problem(client.get("/v1/rode-to-let-ot"), 404)[0]["would_do"] == "rode-to-let-out"


@pytest.mark.parametrize("method", ["PUT", "DELETE", "PATCH", "TRACE", "BREW"])
def test_another_method_is_405_with_those_allowed(method: str, client: httpx.Client) -> None:
    found = client.request(method, ROUTE)
    assert problem(found, 405)[0]["code"] == "method_not_allowed"
    assert set(found.headers["allow"].split(", ")) == {"GET", "HEAD", "OPTIONS", "POST"}
    assert set(client.request(method, "/v1/questions").headers["allow"].split(", ")) == {"GET", "HEAD", "OPTIONS"}


def test_a_form_that_is_not_there_is_406(client: httpx.Client) -> None:
    for found in (
        client.get(ROUTE, params={"depth": "4 m"}, headers={"Accept": "text/csv"}),
        client.get("/v1/ask?text=x", headers={"Accept": "text/csv"}),
    ):
        assert problem(found, 406)[0]["code"] == "not_acceptable"


def test_ask_takes_four_names(client: httpx.Client) -> None:
    assert {(one["input"], one["code"]) for one in problem(client.get("/v1/ask?depth=4+m"), 422)} == {("depth", "unknown_input"), ("text", "missing")}
    assert problem(client.post("/v1/ask", json={"text": 7}), 422)[0]["code"] == "wrong_kind"
    assert problem(client.post("/v1/ask", json={"text": "How much rode?", "before": "x"}), 422)[0]["input"] == "before"
    assert problem(client.post("/v1/ask", json={"text": "How much rode?", "units": "furlongs"}), 422)[0]["input"] == "units"
    assert problem(client.post("/v1/ask", json={"text": "rode " * 5000}), 422)[0]["code"] == "too_long"


def test_a_failure_of_ours_tells_nothing_of_the_inside(caplog: pytest.LogCaptureFixture) -> None:
    @get("/fails", sync_to_thread=False)
    def fails() -> None:
        raise RuntimeError("secret of the engine room")

    app = Front(Litestar([fails], exception_handlers=EXCEPTION_HANDLERS, openapi_config=None, logging_config=None), Options())
    found = client_of(app).get("/fails")
    assert [one["code"] for one in problem(found, 500)] == ["internal"]
    assert "secret" not in found.text
    assert "Traceback" not in found.text
    assert "secret of the engine room" in caplog.text


# --- limits ---


def test_a_query_has_a_limit(client: httpx.Client) -> None:
    assert problem(client.get(ROUTE, params={"depth": "4" * 9000}), 414)[0]["code"] == "too_large"
    assert client.get("/v1/ask", params={"text": "x" * 7000}).status_code in (200, 422)
    problem(client.get("/" + "x" * 2000), 414)


def test_two_hosts_are_refused(client: httpx.Client) -> None:
    found = client.get("/health", headers=[("Host", "a.test"), ("Host", "b.test")])
    assert [(one["input"], one["code"]) for one in problem(found, 400)] == [("Host", "unreadable_request")]


def test_headers_have_a_limit(client: httpx.Client) -> None:
    assert problem(client.get("/health", headers={"X-Long": "x" * 20_000}), 431)[0]["code"] == "too_large"


def test_a_body_has_a_limit_whether_its_length_is_said_or_not(client: httpx.Client) -> None:
    long = json.dumps({"depth": "4 m", "chain": "x" * 70_000}).encode()
    assert problem(client.post(ROUTE, content=long, headers=AS_JSON), 413)[0]["code"] == "too_large"
    assert client.post(ROUTE, content=json.dumps({"depth": "4 m", "chain": " " * 60_000 + "3 m"}).encode(), headers=AS_JSON).status_code == 422


def test_many_fixes_fit_in_a_body(client: httpx.Client) -> None:
    fixes = [{"at": f"{n // 60:02d}:{n % 60:02d}", "position": "59.3142 N, 18.9120 E"} for n in range(1400)]
    circle = {"anchor_at": "59.314 N, 18.912 E", "rode_out": "30 m", "depth": "5 m", "boat_length": "9 m", "fixes": fixes}
    assert client.post("/v1/drag-check", json=circle).status_code == 200


def test_one_client_may_ask_only_so_often_where_that_is_set() -> None:
    slow = client_of(anchorcalc_api.create_app(rate_per_minute=3))
    assert [slow.get("/health").status_code for _ in range(3)] == [200, 200, 200]
    refused = slow.get("/health")
    assert problem(refused, 429)[0]["code"] == "too_many_requests"
    assert 1 <= int(refused.headers["retry-after"]) <= 20
    assert all(client_of(anchorcalc_api.create_app()).get("/health").is_success for _ in range(5))
