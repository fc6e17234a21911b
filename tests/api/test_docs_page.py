"""The documentation page in a real browser: nothing from elsewhere, a strict policy that refuses nothing, and trying a question out."""

from collections.abc import Iterator

import pytest
from playwright.sync_api import Page, Route, expect, sync_playwright

from tests.api.server import Server

ARGUMENTS = (
    "--headless --no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync"
)
WATCH = 'window.refused = []; addEventListener("securitypolicyviolation", (one) => refused.push(one.violatedDirective + " " + one.blockedURI));'


@pytest.fixture
def page(server: Server) -> Iterator[Page]:
    """The documentation, with every other host out of reach."""
    with sync_playwright() as driver:
        browser = driver.chromium.launch(executable_path="/usr/bin/chromium", args=ARGUMENTS.split())
        context = browser.new_context(viewport={"width": 1200, "height": 1600})

        def only_ours(route: Route) -> None:
            elsewhere.append(route.request.url)
            route.abort()

        elsewhere: list[str] = []
        context.route(lambda url: not url.startswith((server.url, "data:", "blob:")), only_ours)
        found = context.new_page()
        found.add_init_script(WATCH)
        found.set_default_timeout(20_000)
        found.goto(f"{server.url}/docs")
        yield found
        assert elsewhere == []
        assert found.evaluate("window.refused") == []
        browser.close()


def test_a_question_can_be_tried_out_without_the_internet(page: Page) -> None:
    block = page.locator("#operations-questions-rode_to_let_out")
    block.locator(".opblock-summary-control").click()
    block.get_by_placeholder("depth").fill("12 ft")
    block.get_by_placeholder("bow_height").fill("5 ft")
    block.get_by_placeholder("tide_rise").fill("3 ft")
    block.get_by_role("button", name="Execute").click()
    expect(block.locator(".live-responses-table tbody .response-col_status").first).to_contain_text("200")
    expect(block.locator(".live-responses-table")).to_contain_text("Let out 140 ft of rode.")


def test_every_operation_is_listed(page: Page) -> None:
    expect(page.locator("#operations-ask-ask_by_body")).to_be_visible()
    expect(page.locator("#operations-questions-tackle_check")).to_be_visible()
    expect(page.get_by_text("Failed to load API definition")).to_have_count(0)
