"""The widget in a real browser, on a page of another origin whose policy lets in nothing inline."""

import re
from pathlib import Path
from typing import Any

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page, Route, expect

from tests.widget.conftest import Opened
from tests.widget.servers import Api

HEADLINE = ".headline >> nth=0"
TARGET = 44.0  # CSS px, WCAG 2.2 success criterion 2.5.5


def events(page: Page, name: str) -> list[dict[str, Any]]:
    found: list[list[Any]] = page.evaluate("events")
    return [detail for kind, detail in found if kind == name]


def error_of(page: Page, name: str) -> str:
    """The error that a screen reader reads with a field: it must be among what describes it."""
    described = page.locator(f"#{name}").get_attribute("aria-describedby") or ""
    assert f"{name}-error" in described.split()
    return page.locator(f"#{name}-error").inner_text()


# --- typing ---------------------------------------------------------------------------------------------------------------------


def test_typing_a_depth_gives_the_answer_with_picture_working_and_cautions(opened: Opened) -> None:
    page = opened()
    page.fill("#depth", "12 ft")
    page.fill("#bow_height", "5 ft")
    page.fill("#tide_rise", "3 ft")
    page.check("input[value=us]")
    expect(page.locator(HEADLINE)).to_have_text("Let out 140 ft of rode.")
    expect(page.locator(".picture svg title")).to_have_text("Let out 140 ft of rode.")
    expect(page.locator(".cautions")).to_be_visible()
    assert "add the height of the waves" in page.locator(".cautions").inner_text()
    page.click("summary")
    expect(page.locator("details")).to_contain_text("20 ft × 7 = 140 ft")
    detail = events(page, "answer")[-1]
    assert detail["question"] == "rode_to_let_out" and detail["answer"]["results"]["rode_out"]["si"] == 42.672
    assert detail["inputs"] == {"depth": "12 ft", "bow_height": "5 ft", "tide_rise": "3 ft"}


def test_what_was_assumed_is_said(opened: Opened) -> None:
    page = opened()
    page.fill("#depth", "4")
    expect(page.locator(".assumed")).to_contain_text("bow height 1.2 m; tide rise 0 m; scope 7:1")


def test_the_first_answer_comes_within_a_tenth_of_a_second(opened: Opened) -> None:
    page = opened()
    page.fill("#depth", "3")
    page.wait_for_selector(".picture svg")
    measure = """([text]) => new Promise((done) => {
        const root = document.querySelector("anchor-counter").shadowRoot, entry = root.querySelector("#depth"), began = performance.now();
        const seen = new MutationObserver(() => { seen.disconnect(); done(performance.now() - began); });
        seen.observe(root.querySelector(".headline"), { childList: true });
        entry.value = text; entry.dispatchEvent(new Event("input"));
    })"""
    times = [page.evaluate(measure, [f"{4 + number / 10}"]) for number in range(9)]
    assert min(times) < 100.0, times  # ms; measured 51, of which 40 wait for the next key; the least, for other work slows the machine


def test_a_plain_number_takes_the_unit_of_the_switch_and_never_changes_its_meaning(opened: Opened) -> None:
    page = opened()
    page.fill("#depth", "4")
    expect(page.locator(HEADLINE)).to_have_text("Let out 36.5 m of rode.")
    page.check("input[value=us]")
    expect(page.locator("#depth")).to_have_value("4 m")
    expect(page.locator(HEADLINE)).to_have_text("Let out 120 ft of rode.")
    page.fill("#depth", "12")
    assert "counts as ft" in page.locator("#depth-hint").inner_text()
    expect(page.locator(HEADLINE)).to_have_text(re.compile("Let out 112 ft"))
    assert events(page, "answer")[-1]["inputs"]["depth"] == "12 ft"


def test_each_counter_answers(opened: Opened) -> None:
    page = opened()
    page.check("input[value=deep]")
    page.fill("#rode_aboard", "60 m")
    expect(page.locator(HEADLINE)).to_contain_text("Anchor in 7.3 m")
    page.check("input[value=buy]")
    page.fill("#depth", "12")
    page.fill("#scope", "5:1")
    expect(page.locator(HEADLINE)).to_have_text("Carry 66 m of rode, chain and line.")
    page.check("input[value=tackle]")
    page.fill("#boat_length", "8")
    page.fill("#wind", "25")
    expect(page.locator(HEADLINE)).to_contain_text("the 12 mm line is the weakest part")
    assert page.locator(".headline").nth(1).inner_text() == ""
    page.select_option("#anchor_kind", "scoop")
    page.select_option("#bottom", "sand")
    expect(page.locator(".headline").nth(1)).to_contain_text("Carry a scoop of")
    expect(page.locator(".picture svg")).to_have_count(2)


def test_what_was_typed_is_kept_from_one_counter_to_the_next(opened: Opened) -> None:
    page = opened()
    page.fill("#depth", "4")
    page.check("input[value=buy]")
    expect(page.locator("#depth")).to_have_value("4")
    expect(page.locator("label[for=depth]")).to_have_text("Deepest water you mean to anchor in")


# --- what is missing or wrong -------------------------------------------------------------------------------------------------------


def test_a_missing_input_is_asked_for_and_focused_and_nothing_is_sent(opened: Opened) -> None:
    page = opened()
    asked: list[str] = []
    page.on("request", lambda request: asked.append(request.url))
    page.check("input[value=tackle]")
    page.fill("#wind", "25 kn")
    expect(page.locator(".state")).to_contain_text("Still needed: Length of the boat")
    page.press("#wind", "Enter")
    assert error_of(page, "boat_length") == "This is needed."
    assert page.evaluate("document.activeElement.shadowRoot.activeElement.id") == "boat_length"
    assert page.locator("#boat_length").get_attribute("aria-invalid") == "true"
    assert asked == []


@pytest.mark.parametrize(
    ("given", "why"), [("4 kg", "is a mass"), ("4 parsec", "has no unit"), ("9 km", "must be 200 m or less"), ("<b>4</b>", "cannot be read")]
)
def test_a_wrong_input_is_told_at_its_field_and_the_old_answer_goes(opened: Opened, given: str, why: str) -> None:
    page = opened()
    page.fill("#depth", "4")
    expect(page.locator(HEADLINE)).to_have_text("Let out 36.5 m of rode.")
    page.fill("#depth", given)
    expect(page.locator("#depth-error")).to_contain_text("would do")
    assert why in error_of(page, "depth") and given in error_of(page, "depth")
    assert page.locator("#depth").get_attribute("aria-invalid") == "true"
    assert page.locator(HEADLINE).inner_text() == "" and page.locator(".cautions").count() == 0
    assert events(page, "unanswered")[-1]["why"]["errors"][0]["input"] == "depth"
    page.fill("#depth", "5 m")
    expect(page.locator(HEADLINE)).to_have_text("Let out 43.5 m of rode.")
    assert error_of(page, "depth") == "" and page.locator("#depth").get_attribute("aria-invalid") == "false"


# --- the server -------------------------------------------------------------------------------------------------------------------


def test_a_server_that_stops_and_comes_back(opened: Opened) -> None:
    own = Api()
    own.start()
    try:
        page = opened(server=own)
        page.fill("#depth", "4")
        expect(page.locator(HEADLINE)).to_have_text("Let out 36.5 m of rode.")
        own.stop()
        page.fill("#depth", "6")
        expect(page.locator(".state")).to_contain_text("cannot be reached")
        expect(page.locator("#depth")).to_have_value("6")
        assert page.locator(HEADLINE).inner_text() == ""
        own.start()
        page.click("button.again")
        expect(page.locator(HEADLINE)).to_have_text("Let out 50.5 m of rode.")
        expect(page.locator("button.again")).to_be_hidden()
        assert page.locator(".state").inner_text() == ""
    finally:
        own.stop()


def test_a_slow_server_is_told_and_the_last_thing_typed_wins(opened: Opened) -> None:
    page = opened()
    held: list[Route] = []

    def hold(route: Route) -> None:
        held.append(route)

    page.route(re.compile("rode-to-let-out[?].*depth=4"), hold)
    page.fill("#depth", "4")
    expect(page.locator(".state")).to_contain_text("slow to answer")
    page.fill("#depth", "6")
    expect(page.locator(HEADLINE)).to_have_text("Let out 50.5 m of rode.")
    for route in held:
        route.continue_()
    page.wait_for_timeout(200)
    assert page.locator(HEADLINE).inner_text() == "Let out 50.5 m of rode."


def test_too_many_questions_are_told(opened: Opened) -> None:
    page = opened()
    page.route(
        re.compile("rode-to-let-out"), lambda route: route.fulfill(status=429, json={"status": 429}, headers={"Access-Control-Allow-Origin": "*"})
    )
    page.fill("#depth", "4")
    expect(page.locator(".state")).to_contain_text("Too many questions")
    expect(page.locator("button.again")).to_be_visible()


# --- in one's own words -------------------------------------------------------------------------------------------------------------


def test_a_question_in_plain_words_shows_how_it_was_read(opened: Opened) -> None:
    page = opened()
    page.fill("#words", "How much rode in 4 m of water, bow 1 m up, at 6:1?")
    page.press("#words", "Enter")
    expect(page.locator(".ask .headline")).to_have_text("Let out 30 m of rode.")
    expect(page.locator(".ask .read")).to_contain_text("depth 4 m; bow height 1 m; scope 6:1")
    expect(page.locator(".ask .assumed")).to_contain_text("tide rise 0 m")
    expect(page.locator(".ask .picture svg")).to_be_visible()


def test_what_is_missing_is_asked_back_and_the_answer_is_taken_up(opened: Opened) -> None:
    page = opened()
    page.fill("#words", "how much rode?")
    page.press("#words", "Enter")
    expect(page.locator("label[for=words]")).to_have_text("How deep is the water where the anchor lies?")
    page.fill("#words", "4 m")
    page.press("#words", "Enter")
    expect(page.locator(".ask .headline")).to_have_text("Let out 36.5 m of rode.")


def test_what_no_sum_answers_is_told_with_what_can_be_asked(opened: Opened) -> None:
    page = opened()
    page.fill("#words", "will it rain tomorrow <img src=x onerror=alert(1)>")
    page.click(".ask button[type=submit]")
    expect(page.locator(".ask button.quiet").first).to_be_visible()
    assert page.locator("#words-said").inner_text() != ""
    page.locator(".ask button.quiet").first.click()
    expect(page.locator(".ask .headline")).not_to_be_empty()


# --- hands, eyes, ears --------------------------------------------------------------------------------------------------------------


def test_everything_can_be_done_by_keyboard(opened: Opened) -> None:
    page = opened('<anchor-counter action="Put in basket"></anchor-counter>')
    page.keyboard.press("Tab")
    page.keyboard.press("ArrowRight")
    page.keyboard.press("ArrowRight")
    expect(page.locator("input[value=buy]")).to_be_checked()
    page.keyboard.press("Tab")
    page.keyboard.press("ArrowRight")
    expect(page.locator("input[value=us]")).to_be_checked()
    page.keyboard.press("Tab")
    page.keyboard.type("30")
    expect(page.locator(HEADLINE)).to_contain_text("Carry 238 ft")
    for _ in range(5):
        page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    expect(page.locator("details")).to_have_attribute("open", "")
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    assert events(page, "choose")[0]["question"] == "rode_to_carry"
    page.keyboard.press("Tab")
    page.keyboard.type("How much rode in 4 m of water?")
    page.keyboard.press("Enter")
    expect(page.locator(".ask .headline")).to_contain_text("Let out 120 ft")


@pytest.mark.parametrize("width", [320, 1280])
def test_it_fits_a_narrow_and_a_wide_screen(opened: Opened, width: int, tmp_path: Path) -> None:
    page = opened('<anchor-counter action="Put in basket"></anchor-counter>', width=width)
    page.fill("#depth", "4")
    page.fill("#words", "anchor in 4 m or 5 m")
    page.press("#words", "Enter")
    page.wait_for_selector(".picture svg")
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    for control in page.locator("button:visible, input[type=text], select, .choices label, summary").all():
        box = control.bounding_box()
        assert box is not None and box["height"] >= TARGET - 0.5
    assert page.locator(".picture svg text").first.evaluate("(one) => one.getBoundingClientRect().height") >= 9.0
    shot = tmp_path / f"{width}.png"
    page.screenshot(path=shot, full_page=True)
    assert shot.stat().st_size > 20_000


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_an_accessibility_checker_finds_nothing(opened: Opened, scheme: str) -> None:
    page = opened('<anchor-counter action="Put in basket"></anchor-counter>', scheme=scheme)
    assert violations(page) == []
    page.fill("#depth", "4")
    page.wait_for_selector(".picture svg")
    page.click("summary")
    assert violations(page) == []
    page.fill("#depth", "4 kg")
    expect(page.locator("#depth-error")).not_to_be_empty()
    page.fill("#words", "is it legal to anchor here?")
    page.press("#words", "Enter")
    expect(page.locator(".ask button.quiet").first).to_be_visible()
    assert violations(page) == []


def violations(page: Page) -> list[str]:
    found = Axe().run(page).response["violations"]
    return [f"{one['id']}: {node['target']} {node['failureSummary']}" for one in found for node in one["nodes"]]


def test_two_on_one_page_do_not_disturb_each_other(opened: Opened) -> None:
    page = opened('<anchor-counter id="one"></anchor-counter><anchor-counter id="two" units="us" counters="buy deep"></anchor-counter>')
    page.locator("#one #depth").fill("4")
    page.locator("#two #depth").fill("40")
    expect(page.locator("#one .headline").first).to_have_text("Let out 36.5 m of rode.")
    expect(page.locator("#two .headline").first).to_contain_text("Carry 308 ft")
    assert page.locator("#two .which input").count() == 2
    page.locator("#two input[value=deep]").check()
    expect(page.locator("#one input[value=out]")).to_be_checked()
    assert violations(page) == []


# --- the page it stands on ----------------------------------------------------------------------------------------------------------


def test_a_strict_policy_refuses_nothing_of_it(opened: Opened) -> None:
    page = opened()
    said: list[str] = []
    page.on("console", lambda message: said.append(message.text))
    page.fill("#depth", "4")
    page.wait_for_selector(".picture svg")
    assert page.evaluate("refused") == [] and said == []
    assert page.locator(".choices").first.evaluate("(one) => getComputedStyle(one).display") == "flex"


def test_the_page_gives_it_words_and_looks(opened: Opened) -> None:
    words = """<script type="application/json">{"title": "Ankern", "depth": "Wassertiefe <b>", "answer.rode_to_let_out": "Stecke {rode_out} Trosse.",
        "caution.bow_pitch": "Der Bug steigt.", "caution.no_tide": ""}</script>"""
    page = opened(f"<anchor-counter>{words}</anchor-counter>")
    expect(page.locator("anchor-counter h2")).to_have_text("Ankern")
    expect(page.locator("label[for=depth]")).to_have_text("Wassertiefe <b>")
    page.fill("#depth", "4")
    expect(page.locator(HEADLINE)).to_have_text("Stecke 36.5 m Trosse.")
    expect(page.locator(".cautions")).to_contain_text("Der Bug steigt.")
    expect(page.locator(".cautions")).to_contain_text("No tide was given")  # reworded, never removed
    page.evaluate("document.querySelector('anchor-counter').words = {title: 'Ancrer'}")
    expect(page.locator("anchor-counter h2")).to_have_text("Ancrer")
    expect(page.locator("#depth")).to_have_value("4")
    page.evaluate("document.querySelector('anchor-counter').style.setProperty('--counter-accent', 'rgb(1, 2, 3)')")
    assert page.locator(".ask button[type=submit]").evaluate("(one) => getComputedStyle(one).backgroundColor") == "rgb(1, 2, 3)"


def test_words_that_are_no_json_leave_the_usual_ones(opened: Opened) -> None:
    page = opened('<anchor-counter><script type="application/json">{oops</script></anchor-counter>')
    expect(page.locator("anchor-counter h2")).to_have_text("Anchoring: ask at the counter")


def test_attributes_may_change_while_it_is_open(opened: Opened) -> None:
    page = opened()
    page.fill("#depth", "4")
    page.evaluate("document.querySelector('anchor-counter').setAttribute('units', 'us')")
    expect(page.locator("#depth")).to_have_value("4 m")
    expect(page.locator("input[value=us]")).to_be_checked()
    expect(page.locator(HEADLINE)).to_have_text("Let out 120 ft of rode.")
