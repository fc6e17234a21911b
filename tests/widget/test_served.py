"""How the widget is served: small, under its version, with its hash, for pages of any origin."""

import gzip

import httpx
import pytest
from playwright.sync_api import Browser, expect

from anchorcalc_api.pages import asset
from anchorcalc_api.widget import VERSIONS, integrity
from examples.chandlery import shop
from tests.widget.servers import Api, running

# What each version was when it was released: pages name these hashes, so a version never changes.
RELEASED: dict[str, str] = {"1": shop.INTEGRITY}


def test_a_version_is_what_pages_name_it_by() -> None:
    assert {version: integrity(version) for version in VERSIONS} == RELEASED


def test_it_is_small() -> None:
    assert len(gzip.compress(asset("anchor-counter.js"))) < 15_000


def test_it_loads_nothing_and_makes_no_markup_from_text() -> None:
    source = asset("anchor-counter.js").decode()
    for word in (
        "innerHTML",
        "outerHTML",
        "insertAdjacentHTML",
        "document.write",
        "eval(",
        "new Function",
        "parseFromString",
        "import(",
        "\nimport ",
    ):
        assert word not in source


@pytest.mark.parametrize("encoding", ["br", "gzip", "identity"])
def test_it_comes_in_any_encoding_and_may_be_kept_for_good(api: Api, encoding: str) -> None:
    found = httpx.get(f"{api.url}/widget/1/anchor-counter.js", headers={"Accept-Encoding": encoding, "Origin": "https://shop.example"})
    assert found.headers["content-type"].startswith("text/javascript")
    assert found.headers["cache-control"] == "public, max-age=31536000, immutable"
    assert found.headers["access-control-allow-origin"] == "*"
    assert found.headers["cross-origin-resource-policy"] == "cross-origin"
    assert "ETag" in found.headers["access-control-expose-headers"] and found.headers["etag"]
    assert found.content == asset("anchor-counter.js")


def test_the_server_says_what_tag_brings_it_in(api: Api) -> None:
    said = httpx.get(f"{api.url}/widget").json()
    assert said["integrity"] == integrity(said["version"])
    assert said["integrity"] in said["html"] and said["script"] in said["html"]
    assert httpx.get(f"{api.url}/{said['script']}").is_success


def test_an_unknown_version_is_not_found(api: Api) -> None:
    found = httpx.get(f"{api.url}/widget/0/anchor-counter.js")
    assert found.status_code == 404 and found.json()["errors"][0]["given"] == "0"


def test_the_example_shop_puts_the_length_in_the_basket(browser: Browser, api: Api) -> None:
    context = browser.new_context()
    try:
        with running(shop.page_server(api=api.url, port=0)) as address:
            page = context.new_page()
            faults: list[str] = []
            page.on("pageerror", lambda error: faults.append(str(error)))
            page.on("console", lambda message: faults.append(message.text))
            page.goto(address)
            page.check("input[value=buy]")
            page.fill("#depth", "12")
            page.fill("#scope", "5:1")
            page.get_by_role("button", name="Put in the basket").click()
            expect(page.locator("#basket li")).to_have_text("Rode, 66 m")
            assert faults == []
    finally:
        context.close()
