"""Every screen in every light: nothing axe finds, nothing cut off at 360 px, every target large enough for a thumb."""

import json
import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from handset import Phone
from maker import Maker
from playwright.sync_api import Page, expect
from test_main_job import walk_main_job

ROOT = Path(__file__).resolve().parents[2]
WEB = ROOT / "web"
EXAMPLES = ROOT / "core/plumpline/schema/examples"
LIGHTS = ["light", "dark", "sun"]
ANSWER_MS = 60_000
# One field of each kind of entry.
ROWS = (
    ("measure", "Kind"),
    ("measure", "Width"),
    ("cover", "Closing"),
    ("cover", "Front pattern"),
    ("cover", "Seam allowance"),
    ("cloth", "Price"),
    ("cloth", "Sold by"),
    ("measure", "How many"),
    ("measure", "Cushion name"),
)
STATIONS = ("measure", "cover", "cloth", "cut", "make", "price")
SMALL_TARGETS = """() => [...document.querySelectorAll('button, a, [role=slider], input:not([hidden]), textarea')]
  .filter((one) => one.checkVisibility() && (!document.querySelector('dialog[open]') || one.closest('dialog')))
  .map((one) => (one.type === 'radio' ? one.closest('label') : one))
  .map((one) => [one.getBoundingClientRect(), one.outerHTML.slice(0, 90)])
  .filter(([box]) => Math.min(box.width, box.height) < 47.99)
  .map(([box, name]) => `${box.width} × ${box.height}: ${name}`)"""
CUT_OFF = """() => [...document.querySelectorAll('.screen *:not(svg *):not(.visually-hidden):not(.job-name)')]
  .filter((one) => one.checkVisibility() && !one.querySelector('.measure-tape')
    && one.scrollWidth > one.clientWidth + 1 && one.clientWidth > 0
    && !['inline', 'contents'].includes(getComputedStyle(one).display)
    && !one.matches('.stations, .choice-strip, .tape, .tape *'))
  .map((one) => one.outerHTML.slice(0, 100))"""
VIOLATIONS = """async () => (await axe.run(document)).violations
  .map((one) => [one.id, one.nodes.map((node) => node.html).slice(0, 3)])"""
SMALL_INPUTS = """() => [...document.querySelectorAll('input, textarea, select')]
  .filter((one) => parseFloat(getComputedStyle(one).fontSize) < 16).map((one) => one.outerHTML.slice(0, 90))"""


def bring_in(page: Page, example: str) -> str:
    """Puts an example into the store; gives its name."""
    file = EXAMPLES / f"{example}.json"
    name: str = json.loads(file.read_text("utf-8"))["name"]
    page.locator("input[type=file]").set_input_files(file)
    expect(page.get_by_text(f"{name} is here.")).to_be_visible(timeout=ANSWER_MS)
    return name


def screens(maker: Maker, name: str) -> Iterator[str]:
    """Walks every screen; stops at each, so that the caller can look."""
    yield "home"
    maker.press("home.settings")
    yield "settings"
    maker.press("job.back")
    maker.press("home.more", job=name)
    yield "what can be done with a job"
    maker.press("job.close")
    maker.open_job(name)
    for station in STATIONS:
        maker.go_to(station)
        if station == "cut":
            expect(maker.find("cut.why")).to_be_visible(timeout=ANSWER_MS)
        yield station
    maker.go_to("cut")
    maker.press("cut.why")
    yield "the working"
    maker.press("job.close")
    maker.press("cut.shopping")
    yield "the shopping list"
    maker.press("job.close")
    for station, row in ROWS:
        maker.go_to(station)
        maker.touch(maker.row(row).first)
        yield row
        maker.press("job.back" if row in ("Width", "How many") else "job.done")
        expect(maker.page.get_by_role("dialog")).to_have_count(0)


@pytest.mark.parametrize("light", LIGHTS)
def test_axe_finds_nothing_on_any_screen(handset: Phone, maker: Maker, axe: str, light: str) -> None:
    maker.page.emulate_media(color_scheme="dark" if light == "dark" else "light", reduced_motion="reduce")
    name = bring_in(maker.page, "job-window-bench")
    if light == "sun":
        maker.page.evaluate("async () => (await import('./store/settings.js')).set('light', 'sun')")
    for screen in screens(maker, name):
        maker.page.evaluate(axe)
        found = maker.page.evaluate(VIOLATIONS)
        assert found == [], f"{screen} in {light}"
    handset.forgive("Applying inline style")  # axe's own, which the policy refuses


@pytest.mark.parametrize("width", [320, 360, 390, 1280])
def test_nothing_scrolls_sideways_and_every_target_is_48_px(handset: Phone, maker: Maker, width: int) -> None:
    maker.page.emulate_media(reduced_motion="reduce")
    name = bring_in(maker.page, "job-flawed-bolt")
    handset.page.set_viewport_size({"width": width, "height": 740})
    for screen in screens(maker, name):
        assert maker.page.evaluate("() => document.documentElement.scrollWidth") <= width, screen
        assert maker.page.evaluate(SMALL_TARGETS) == [], f"{screen} at {width} px"
        assert maker.page.evaluate(CUT_OFF) == [], f"{screen} at {width} px"
        assert maker.page.evaluate(SMALL_INPUTS) == [], f"{screen} at {width} px"


def test_the_tape_and_all_its_keys_stand_above_the_bar_on_a_phone(maker: Maker) -> None:
    maker.start_job()
    bar = maker.page.locator(".action-bar").bounding_box()
    last_key = maker.page.get_by_role("button", name="one sixteenth more").bounding_box()
    assert bar
    assert last_key
    assert last_key["y"] + last_key["height"] <= bar["y"]


def test_with_the_keyboard_up_on_a_small_phone_done_can_be_reached(handset: Phone, maker: Maker) -> None:
    """Fault B37."""
    maker.start_job()
    maker.press("job.back")
    maker.touch(maker.row("Cushion name"))
    handset.page.set_viewport_size({"width": 320, "height": 300})
    maker.find("job.done").scroll_into_view_if_needed()
    maker.press("job.done")
    expect(maker.page.get_by_role("dialog")).to_have_count(0)


def test_sunlight_is_one_touch_at_the_cut_and_black_on_white(maker: Maker) -> None:
    """Fault B38."""
    maker.start_job()
    maker.go_to("cut")
    maker.press("cut.sun")
    colours = maker.page.evaluate(
        """() => [document.documentElement, document.querySelector('.screen')]
          .map((one) => [getComputedStyle(one).color, getComputedStyle(one).backgroundColor])"""
    )
    assert colours == [["rgb(0, 0, 0)", "rgb(255, 255, 255)"]] * 2


def test_the_american_table_says_only_what_the_first_one_has(phone: Page) -> None:
    unknown = phone.evaluate(
        """async () => {
          const words = await import('./words/words.js');
          const american = Object.keys(words.languages['en-US'].words);
          return american.filter((key) => !words.has(key));
        }"""
    )
    assert unknown == []


def test_every_word_a_screen_asks_for_is_in_the_first_table(phone: Page) -> None:
    """Words that are put together from parts (`core.${code}`) are met by the tests that show them."""
    files = [file for folder in ("home", "stations", "store") for file in (WEB / folder).rglob("*.js")]
    sources = "\n".join(file.read_text("utf-8") for file in files)
    asked = sorted(set(re.findall(r"""\bsay\('([\w.:/*=-]+)'""", sources)))
    assert len(asked) > 80
    missing = phone.evaluate(
        """async (keys) => {
          const { has } = await import('./words/words.js');
          return keys.filter((key) => !has(key));
        }""",
        asked,
    )
    assert missing == []


def test_the_keys_stay_under_the_thumb_when_a_problem_is_told(maker: Maker) -> None:
    """An opening longer than its edge: the text that says so must not move the key for the next figure."""
    walk_main_job(maker)
    maker.go_to("cover")
    maker.touch(maker.row("Opening"))
    maker.tape("25 in")
    key = maker.page.get_by_role("button", name="4", exact=True)
    before = key.bounding_box()
    expect(maker.page.get_by_role("dialog").locator(".field-problem")).to_be_visible(timeout=ANSWER_MS)
    assert key.bounding_box() == before
