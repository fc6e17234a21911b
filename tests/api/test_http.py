"""HTTP as RFC 9110 and 9111 have it: tags, encodings, methods, forms, and what other origins may do."""

import gzip

import brotli  # type: ignore[import-untyped]
import httpx
import pytest

import anchorcalc_api
from anchorcalc_api.front import Front
from anchorcalc_api.negotiation import HTML, JSON, SVG, encoding, media_type
from tests.api.server import client_of

ROUTE = "/v1/rode-to-let-out"
QUERY = {"depth": "12 ft", "bow_height": "5 ft"}
CIRCLE = {"anchor_at": "59.314 N, 18.912 E", "fixes": "14:00 59.3142 N 18.9120 E", "rode_out": "30 m", "depth": "5 m", "boat_length": "9 m"}


def test_the_same_question_gives_the_same_bytes_and_tag(client: httpx.Client) -> None:
    first, second = client.get(ROUTE, params=QUERY), client.get(ROUTE, params=QUERY)
    assert first.content == second.content
    assert first.headers["etag"] == second.headers["etag"]
    assert first.headers["etag"].startswith('"')
    assert first.headers["vary"] == "Accept, Accept-Encoding"
    assert first.headers["etag"] != client.get(ROUTE, params={**QUERY, "depth": "13 ft"}).headers["etag"]


@pytest.mark.parametrize("said", ["{tag}", "W/{tag}", '"other", {tag}', "*"])
def test_what_the_client_has_is_not_sent_again(said: str, client: httpx.Client) -> None:
    tag = client.get(ROUTE, params=QUERY).headers["etag"]
    again = client.get(ROUTE, params=QUERY, headers={"If-None-Match": said.format(tag=tag)})
    assert (again.status_code, again.content) == (304, b"")
    assert (again.headers["etag"], again.headers["cache-control"]) == (tag, "public, max-age=3600")


def test_a_tag_of_another_question_is_no_match(client: httpx.Client) -> None:
    tag = client.get(ROUTE, params=QUERY).headers["etag"]
    assert client.get(ROUTE, params={**QUERY, "depth": "13 ft"}, headers={"If-None-Match": tag}).status_code == 200


def test_a_tag_is_known_without_having_been_asked_here_before() -> None:
    tag = client_of(anchorcalc_api.create_app()).get(ROUTE, params={"depth": "7.31 m"}).headers["etag"]
    from anchorcalc_api import reply

    reply._remembered.clear()
    fresh = client_of(anchorcalc_api.create_app())
    assert fresh.get(ROUTE, params={"depth": "7.31 m"}, headers={"If-None-Match": tag}).status_code == 304


def test_asking_again_whether_an_answer_is_still_good_costs_no_answer(client: httpx.Client, monkeypatch: pytest.MonkeyPatch) -> None:
    from anchorcalc_api import routes

    tag = client.get(ROUTE, params={"depth": "7.32 m"}).headers["etag"]
    asks = {"params": {"depth": "7.32 m"}, "headers": {"If-None-Match": tag}}
    assert client.get(ROUTE, **asks).status_code == 304
    monkeypatch.setattr(routes, "answered", None)
    assert client.get(ROUTE, **asks).status_code == 304


def test_where_a_position_is_given_only_the_client_keeps_the_answer(client: httpx.Client) -> None:
    assert client.get(ROUTE, params=QUERY).headers["cache-control"] == "public, max-age=3600"
    assert client.get("/v1/drag-check", params=CIRCLE).headers["cache-control"] == "private, max-age=3600"
    said = {"text": "Am I dragging? Anchor at 59.314 N, 18.912 E, now at 59.3142 N 18.9120 E"}
    assert client.get("/v1/ask", params=said).headers["cache-control"] == "private, max-age=3600"
    assert client.get("/v1/ask", params={"text": "How much rode in 12 ft of water?"}).headers["cache-control"] == "public, max-age=3600"


def test_answers_to_a_body_and_errors_are_not_kept(client: httpx.Client) -> None:
    for found in (client.post(ROUTE, json=QUERY), client.get(ROUTE), client.get("/nowhere"), client.put(ROUTE)):
        assert found.headers["cache-control"] == "no-store"
        assert "etag" not in found.headers


@pytest.mark.parametrize(
    ("accepted", "how"), [("gzip", "gzip"), ("br", "br"), ("gzip, deflate, br, zstd", "br"), ("br;q=0, gzip", "gzip"), ("*", "br")]
)
def test_each_encoding_has_its_own_tag(accepted: str, how: str, app: Front) -> None:
    plain = client_of(app).get(ROUTE, params=QUERY)
    with client_of(app).stream("GET", ROUTE, params=QUERY, headers={"Accept-Encoding": accepted}) as packed:
        raw = b"".join(packed.iter_raw())
    assert packed.headers["content-encoding"] == how
    assert packed.headers["etag"] == f'{plain.headers["etag"][:-1]}-{how}"'
    assert int(packed.headers["content-length"]) == len(raw) < len(plain.content)
    assert {"gzip": gzip.decompress, "br": brotli.decompress}[how](raw) == plain.content
    again = client_of(app).get(ROUTE, params=QUERY, headers={"Accept-Encoding": accepted, "If-None-Match": packed.headers["etag"]})
    assert (again.status_code, again.headers["etag"]) == (304, packed.headers["etag"])


@pytest.mark.parametrize("accepted", ["", "identity", "br;q=0, gzip;q=0", "identity, gzip;q=0.5", "zstd", "gzip;q=nonsense"])
def test_no_encoding_that_is_not_wanted(accepted: str, client: httpx.Client) -> None:
    assert "content-encoding" not in client.get(ROUTE, params=QUERY, headers={"Accept-Encoding": accepted}).headers
    assert encoding(accepted.encode()) == ""


@pytest.mark.parametrize(
    "path", [f"{ROUTE}?depth=4%20m", "/", "/health", "/openapi.json", "/docs", "/v1/questions", "/v1/questions/swing_radius", "/v1/ask?text=hello"]
)
def test_head_says_what_get_says_but_the_body(path: str, client: httpx.Client) -> None:
    got, head = client.get(path), client.head(path)
    assert (head.status_code, head.content) == (200, b"")
    ours = {"x-request-id"}
    assert {name: value for name, value in head.headers.items() if name not in ours} == {
        name: value for name, value in got.headers.items() if name not in ours
    }


@pytest.mark.parametrize(
    ("path", "methods"),
    [
        (ROUTE, "GET, HEAD, POST, OPTIONS"),
        ("/v1/ask", "GET, HEAD, POST, OPTIONS"),
        ("/v1/questions", "GET, HEAD, OPTIONS"),
        ("/health", "GET, HEAD, OPTIONS"),
    ],
)
def test_options_names_every_method(path: str, methods: str, client: httpx.Client) -> None:
    found = client.options(path)
    assert (found.status_code, found.content, found.headers["allow"]) == (204, b"", methods)


# --- forms of an answer ---


@pytest.mark.parametrize(
    ("accept", "form"),
    [
        ("", JSON),
        ("*/*", JSON),
        (SVG, SVG),
        ("image/*", SVG),
        (f"{SVG}, {JSON}", JSON),
        (f"{SVG}, {JSON};q=0.9", SVG),
        (f"{SVG};q=0.5, */*;q=0.5", JSON),
        (f"{JSON};q=0.1, image/*;q=0.2", SVG),
        (f"{JSON};q=0, */*", SVG),
        (f"{SVG};q=0.3, {JSON};q=0.300", JSON),
        ("text/html, */*;q=0.1", JSON),
        ("text/html", None),
        (f"{SVG};q=0", None),
        ("*/*;q=0", None),
        (f"{JSON};q=2", JSON),
        (f"{JSON};q=x", None),
        ("IMAGE/SVG+XML", SVG),
        (f"{JSON};charset=utf-8;q=0.2, {SVG};q=0.1", JSON),
    ],
)
def test_the_form_wanted_most_is_given(accept: str, form: str | None) -> None:
    assert media_type(accept=accept.encode(), offered=(JSON, SVG)) == form


def test_a_question_without_a_picture_has_none(client: httpx.Client) -> None:
    entry = next(one for one in client.get("/v1/questions").json() if not one["picture"])
    path = f"/v1/{entry['name'].replace('_', '-')}"
    refused = client.get(path, params=entry["examples"][0], headers={"Accept": SVG})
    assert (refused.status_code, refused.json()["errors"][0]["code"]) == (406, "not_acceptable")
    assert client.get(path, params=entry["examples"][0], headers={"Accept": f"{SVG}, {JSON};q=0.1"}).headers["content-type"] == JSON
    assert client.get(f"{path}.svg", params=entry["examples"][0]).status_code == 404


def test_every_question_with_a_picture_draws_it(client: httpx.Client) -> None:
    for entry in client.get("/v1/questions").json():
        if entry["picture"]:
            path = f"/v1/{entry['name'].replace('_', '-')}"
            for example in entry["examples"]:
                drawn = client.post(path, json=example, headers={"Accept": SVG})
                assert (drawn.status_code, drawn.headers["content-type"]) == (200, SVG)
                assert drawn.text.lstrip().startswith("<svg")
                by_path = client.get(f"{path}.svg", params=example)
                assert by_path.content == client.get(path, params=example, headers={"Accept": SVG}).content == drawn.content
                assert by_path.headers["etag"] != client.get(path, params=example).headers["etag"]


def test_the_greeting_is_a_page_to_a_browser(client: httpx.Client) -> None:
    assert client.get("/").json()["links"]["questions"] == "v1/questions"
    page = client.get("/", headers={"Accept": "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8"})
    assert page.headers["content-type"].startswith(HTML)
    assert 'href="v1/questions"' in page.text


# --- other origins, and what a browser is told ---


def test_any_origin_may_read_answers_without_credentials(client: httpx.Client) -> None:
    for found in (
        client.get(ROUTE, params=QUERY, headers={"Origin": "https://harbour.test"}),
        client.get("/nowhere", headers={"Origin": "https://harbour.test"}),
    ):
        assert found.headers["access-control-allow-origin"] == "*"
        assert "ETag" in found.headers["access-control-expose-headers"]
        assert "access-control-allow-credentials" not in found.headers


def test_a_preflight_is_answered_before_any_route(client: httpx.Client) -> None:
    asked = {"Origin": "https://harbour.test", "Access-Control-Request-Method": "POST", "Access-Control-Request-Headers": "content-type"}
    found = client.options(ROUTE, headers=asked)
    assert found.status_code == 204
    assert "POST" in found.headers["access-control-allow-methods"]
    assert "Content-Type" in found.headers["access-control-allow-headers"]


def test_origins_can_be_chosen_or_shut_out() -> None:
    chosen = client_of(anchorcalc_api.create_app(cors_origins=("https://harbour.test",)))
    known = chosen.get(ROUTE, params=QUERY, headers={"Origin": "https://harbour.test"})
    assert known.headers["access-control-allow-origin"] == "https://harbour.test"
    assert "Origin" in known.headers["vary"]
    assert "access-control-allow-origin" not in chosen.get(ROUTE, params=QUERY, headers={"Origin": "https://other.test"}).headers
    shut = client_of(anchorcalc_api.create_app(cors_origins=()))
    assert "access-control-allow-origin" not in shut.get(ROUTE, params=QUERY, headers={"Origin": "https://harbour.test"}).headers


@pytest.mark.parametrize("path", [f"{ROUTE}?depth=4%20m", ROUTE, "/", "/docs", "/openapi.json", "/nowhere"])
def test_every_response_carries_the_security_headers(path: str, client: httpx.Client) -> None:
    headers = client.get(path).headers
    assert headers["x-content-type-options"] == "nosniff"
    assert headers["cross-origin-resource-policy"] == "cross-origin"
    assert headers["referrer-policy"] == "no-referrer"
    assert headers["content-security-policy"].startswith("default-src 'none'")
    assert "unsafe" not in headers["content-security-policy"]


def test_a_request_id_is_given_back_or_made(client: httpx.Client) -> None:
    assert client.get("/health", headers={"X-Request-ID": "watch-7.a"}).headers["x-request-id"] == "watch-7.a"
    assert client.get("/health", headers={"X-Request-ID": "no good\t"}).headers["x-request-id"] != "no good"
    assert client.get("/health").headers["x-request-id"] != client.get("/health").headers["x-request-id"]
