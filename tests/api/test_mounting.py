"""The application inside another service: under a path of Starlette's, and of Litestar's."""

import httpx
import pytest
from litestar import Litestar, asgi
from litestar.types import Receive, Scope, Send
from starlette.applications import Starlette
from starlette.routing import Mount

import anchorcalc
import anchorcalc_api
from tests.api.server import client_of


def in_starlette() -> httpx.Client:
    """Mount it in Starlette."""
    return client_of(Starlette(routes=[Mount("/anchor", app=anchorcalc_api.create_app())]))


def in_litestar() -> httpx.Client:
    """Mount it in another Litestar."""
    inner = anchorcalc_api.create_app()

    @asgi("/anchor", is_mount=True, copy_scope=True)
    async def mounted(scope: Scope, receive: Receive, send: Send) -> None:
        await inner(scope, receive, send)

    return client_of(Litestar([mounted], openapi_config=None))


@pytest.mark.parametrize("outer", [in_starlette, in_litestar])
def test_it_answers_under_a_path(outer: type[httpx.Client]) -> None:
    client = outer()
    answered = client.get("/anchor/v1/rode-to-let-out", params={"depth": "4 m", "bow_height": "1 m"})
    assert answered.json()["results"]["rode_out"]["si"] == 35.0
    assert client.post("/anchor/v1/rode-to-let-out", json={"depth": "4 m", "bow_height": "1 m"}).content == answered.content
    assert client.get("/anchor/health").json()["status"] == "ok"
    assert client.get("/anchor/v1/questions/swing-radius").status_code == 200
    assert client.get("/anchor/docs/docs.js").status_code == 200
    assert client.get("/anchor/v1/nowhere").headers["content-type"] == "application/problem+json"
    assert client.get("/v1/rode-to-let-out", params={"depth": "4 m"}).status_code == 404


def test_the_document_and_the_page_are_relative() -> None:
    client = in_starlette()
    assert client.get("/anchor/openapi.json").json()["servers"][0]["url"] == "."
    assert 'src="docs/swagger-ui-bundle.js"' in client.get("/anchor/docs").text


def test_importing_the_package_starts_nothing() -> None:
    assert callable(anchorcalc_api.create_app)
    assert anchorcalc_api.app is anchorcalc_api.app
    with pytest.raises(AttributeError):
        _ = anchorcalc_api.nothing


def refused(**options: object) -> list[tuple[str, str, str]]:
    with pytest.raises(anchorcalc.AnchorcalcError) as caught:
        anchorcalc_api.create_app(**options)
    return [(one.input, one.code, one.would_do) for one in caught.value.faults]


def test_an_option_that_does_not_exist_is_refused_with_the_nearest() -> None:
    assert refused(dox=False) == [("dox", "unknown_input", "docs")]
    (only,) = refused(nonsense=True)
    assert only[:2] == ("nonsense", "unknown_input")
    assert "rate_per_minute" in only[2]


def test_all_options_that_will_not_do_are_named_at_once() -> None:
    assert refused(acces_log=True, docs="no", most_body=None) == [
        ("acces_log", "unknown_input", "access_log"),
        ("docs", "wrong_kind", "true"),
        ("most_body", "wrong_kind", "65536"),
    ]


def test_an_environment_that_will_not_do_is_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    from anchorcalc_api.options import options_from_environment

    monkeypatch.setenv("ANCHORCALC_MOST_BODY", "plenty")
    with pytest.raises(anchorcalc.InputError, match="most_body: 'plenty' will not do"):
        options_from_environment()


def test_options_come_from_the_environment(monkeypatch: pytest.MonkeyPatch) -> None:
    from anchorcalc_api.options import options_from_environment

    monkeypatch.setenv("ANCHORCALC_RATE_PER_MINUTE", "600")
    monkeypatch.setenv("ANCHORCALC_METRICS", "true")
    monkeypatch.setenv("ANCHORCALC_CORS_ORIGINS", "https://a.test, https://b.test")
    found = options_from_environment()
    assert (found.rate_per_minute, found.metrics, found.cors_origins) == (600, True, ("https://a.test", "https://b.test"))
