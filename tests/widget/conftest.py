"""A real browser, the API, and a page with the widget on it."""

from collections.abc import Callable, Iterator
from contextlib import ExitStack

import pytest
from playwright.sync_api import Browser, Page, expect, sync_playwright

from anchorcalc_api.widget import integrity
from examples.chandlery.shop import policy
from tests.widget.servers import Api, page

ARGUMENTS = (
    "--headless --no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync"
)
# Reports what a strict policy refused, and gathers the widget's events, from before any script of the page runs.
WATCH = """
window.refused = []; window.events = [];
addEventListener("securitypolicyviolation", (one) => refused.push(one.violatedDirective + " " + one.blockedURI));
for (const name of ["answer", "choose", "unanswered"]) addEventListener(name, (one) => events.push([name, one.detail]));
"""

expect.set_options(timeout=15_000)  # a busy machine must not fail a test
Opened = Callable[..., Page]


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """Debian's Chromium, without a window."""
    with sync_playwright() as driver:
        found = driver.chromium.launch(executable_path="/usr/bin/chromium", args=ARGUMENTS.split())
        yield found
        found.close()


@pytest.fixture(scope="session")
def api() -> Iterator[Api]:
    """The API, for all tests."""
    found = Api()
    found.start()
    yield found
    found.stop()


@pytest.fixture
def opened(browser: Browser, api: Api) -> Iterator[Opened]:
    """Open a page of another origin, under a strict policy, with what is given in its body."""
    with ExitStack() as stack:

        def opening(body: str = "<anchor-counter></anchor-counter>", *, width: int = 1000, scheme: str = "light", server: Api = api) -> Page:
            script = (
                f'<script type="module" src="{server.url}/widget/1/anchor-counter.js" integrity="{integrity("1")}" crossorigin="anonymous"></script>'
            )
            text = f'<!doctype html><html lang="en"><head><meta charset="utf-8"><title>A shop</title>{script}</head>'
            text += f"<body><main><h1>Shop</h1>{body}</main></body></html>"
            address = stack.enter_context(page(text, policy=policy(server.url)))
            context = browser.new_context(viewport={"width": width, "height": 900}, color_scheme="dark" if scheme == "dark" else "light")
            stack.callback(context.close)
            found = context.new_page()
            found.add_init_script(WATCH)
            found.set_default_timeout(15_000)
            found.goto(address)
            found.wait_for_selector("anchor-counter .fields")
            return found

        yield opening
