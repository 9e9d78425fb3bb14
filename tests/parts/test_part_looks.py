"""Type, colour, size and reach of every part, in every light and at every width it must serve."""

import re
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

Gallery = Callable[[str], Page]

PAGES = ["measure", "empty", "centimetres", "second", "problem", "answer", "form", "pads"]
PAGES += ["plan", "plan&plan=narrow", "sheet&open", "drawings", "kinds", "kinds&edge=piped&closing=zip"]
LIGHTS = ["light", "dark", "sun"]
TEXT_TOKENS = ["--ink", "--ink-2", "--accent", "--warn"]
GROUND_TOKENS = ["--paper", "--card", "--soft", "--tape", "--warn-ground", "--accent-ground", "--cloth", "--cloth-2"]
FONT_LIMIT_BYTES = 90_000

# Elements a finger must hit, with the smaller side of each; a radio counts with the label around it.
SMALL_TARGETS = """() => [...document.querySelectorAll('button, a, [role=slider], [role=spinbutton], input, textarea')]
  .filter((one) => one.checkVisibility() && (!document.querySelector('dialog[open]') || one.closest('dialog')))
  .map((one) => (one.type === 'radio' ? one.closest('label') : one))
  .map((one) => [one.getBoundingClientRect(), one.outerHTML.slice(0, 90)])
  .filter(([box]) => Math.min(box.width, box.height) < 48 - 0.01)
  .map(([box, name]) => `${box.width} × ${box.height}: ${name}`)"""


def luminance(colour: str) -> float:
    """Relative luminance as WCAG 2.2 defines it."""
    channels = [int(colour[place : place + 2], 16) / 255 for place in (1, 3, 5)]
    red, green, blue = (c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    """Contrast ratio as WCAG 2.2 defines it."""
    darker, lighter = sorted((luminance(one), luminance(other)))
    return (lighter + 0.05) / (darker + 0.05)


def tokens(page: Page, names: list[str]) -> dict[str, str]:
    values: dict[str, str] = page.evaluate(
        """(names) => {
          const style = getComputedStyle(document.documentElement);
          return Object.fromEntries(names.map((name) => [name, style.getPropertyValue(name).trim()]));
        }""",
        names,
    )
    return values


@pytest.mark.parametrize("light", LIGHTS)
def test_text_stands_out_seven_to_one_on_every_ground(gallery: Gallery, light: str) -> None:
    """Fault B38; 7:1 is WCAG 2.2 success criterion 1.4.6."""
    page = gallery(f"measure&light={light}")
    colours = tokens(page, [*TEXT_TOKENS, *GROUND_TOKENS, "--on-accent", "--accent-fill", "--on-ink", "--edge"])
    for text in TEXT_TOKENS:
        for ground in GROUND_TOKENS:
            assert contrast(colours[text], colours[ground]) >= 7, f"{text} on {ground}"
    assert contrast(colours["--on-accent"], colours["--accent-fill"]) >= 7
    assert contrast(colours["--on-ink"], colours["--ink"]) >= 7
    assert contrast(colours["--edge"], colours["--paper"]) >= 3
    assert contrast(colours["--edge"], colours["--card"]) >= 3


def test_the_sun_mode_is_black_on_white(gallery: Gallery) -> None:
    colours = tokens(gallery("measure&light=sun"), ["--ink", "--ink-2", "--paper", "--card"])
    assert (colours["--ink"], colours["--ink-2"]) == ("#000000", "#000000")
    assert (colours["--paper"], colours["--card"]) == ("#ffffff", "#ffffff")


def test_dark_by_the_phone_and_dark_by_choice_are_the_same(gallery: Gallery) -> None:
    page = gallery("measure")
    sheet = page.evaluate("async () => (await fetch('../styles/tokens.css')).text()")
    names = sorted(set(re.findall(r"(--[\w-]+):", sheet)))
    page.emulate_media(color_scheme="dark")
    by_phone = tokens(page, names)
    page.emulate_media(color_scheme="light")
    light = tokens(page, names)
    page.evaluate("() => { document.documentElement.dataset.light = 'dark'; }")
    assert tokens(page, names) == by_phone != light
    page.emulate_media(color_scheme="dark")
    page.evaluate("() => { document.documentElement.dataset.light = 'light'; }")
    assert tokens(page, names) == light


@pytest.mark.parametrize("light", LIGHTS)
def test_axe_finds_nothing_in_any_state(examined: Gallery, axe: str, light: str) -> None:
    for name in PAGES:
        page = examined(f"{name}&light={light}")
        page.evaluate(axe)
        found = page.evaluate(
            """async () => (await axe.run(document)).violations
              .map((one) => [one.id, one.nodes.map((node) => node.html).slice(0, 3)])"""
        )
        assert found == [], f"{name} in {light}"


@pytest.mark.parametrize("width", [320, 360, 390, 1280])
def test_every_target_is_48_px_and_no_page_scrolls_sideways(gallery: Gallery, screen: Page, width: int) -> None:
    screen.set_viewport_size({"width": width, "height": 700})
    for name in PAGES:
        page = gallery(name)
        assert page.evaluate(SMALL_TARGETS) == [], f"{name} at {width} px"
        assert page.evaluate("() => document.documentElement.scrollWidth") <= width, f"{name} at {width} px"
        cut_off = page.evaluate(
            """() => [...document.querySelectorAll('.screen-body *:not(.visually-hidden):not(svg *)')]
              .filter((one) => !one.closest('.stations'))
              .map((one) => [one.getBoundingClientRect(), one.outerHTML.slice(0, 80)])
              .filter(([box]) => box.right > innerWidth + 1 || box.left < -1)
              .map(([, name]) => name)"""
        )
        assert cut_off == [], f"{name} at {width} px"


@pytest.mark.parametrize("name", ["measure", "centimetres&focus", "second"])
def test_the_keys_of_a_measure_are_all_in_sight_on_a_phone(gallery: Gallery, name: str) -> None:
    page = gallery(name)
    last = page.locator(".keys button").last.bounding_box()
    bar = page.locator(".action-bar").bounding_box()
    assert last is not None
    assert bar is not None
    assert last["y"] + last["height"] <= bar["y"]


def test_at_200_percent_text_nothing_scrolls_sideways(gallery: Gallery, screen: Page) -> None:
    screen.set_viewport_size({"width": 390, "height": 844})
    for name in ("measure", "answer", "form", "second"):
        page = gallery(name)
        page.evaluate("() => { document.documentElement.style.fontSize = '200%'; }")
        assert page.evaluate("() => document.documentElement.scrollWidth") <= 390, name


def test_no_field_is_small_enough_to_make_a_phone_zoom(gallery: Gallery) -> None:
    """Fault B36."""
    page = gallery("form")
    fields = page.locator("input, textarea")
    sizes = fields.evaluate_all("(fields) => fields.map((field) => parseFloat(getComputedStyle(field).fontSize))")
    assert min(sizes) >= 16


def test_no_style_depends_on_100vh_alone(gallery_folder: Path) -> None:
    """Fault B37: where 100vh stands, 100dvh follows and wins."""
    for sheet in gallery_folder.glob("styles/*.css"):
        for rule in re.findall(r"\{[^{}]*\}", sheet.read_text("utf-8")):
            assert rule.count("100vh") == 0 or rule.rindex("100dvh") > rule.rindex("100vh"), sheet.name


def test_the_answer_is_the_largest_thing_on_the_screen(gallery: Gallery) -> None:
    page = gallery("answer")
    sizes = page.evaluate(
        """() => [...document.querySelectorAll('.screen *')]
          .filter((one) => one.childNodes.length && one.checkVisibility())
          .map((one) => [parseFloat(getComputedStyle(one).fontSize), String(one.getAttribute('class'))])"""
    )
    largest = max(sizes)
    assert largest[0] >= 64
    assert all("figure" in str(name) or "fraction" in str(name) for size, name in sizes if size == largest[0])


def test_fractions_are_true_fractions_and_their_text_stays_plain(gallery: Gallery) -> None:
    page = gallery("answer")
    figure = page.get_by_role("img", name="2 1/8 yd")
    assert figure.evaluate("(one) => one.textContent") == "2 1/8 yd"
    wide, true = figure.locator(".fraction").evaluate(
        """(one) => {
          const true_ = one.getBoundingClientRect().width;
          one.style.fontFeatureSettings = '"frac" 0';
          one.style.fontVariantNumeric = 'normal';
          return [one.getBoundingClientRect().width, true_];
        }"""
    )
    assert true < wide * 0.95


def test_the_shipped_font_is_used_and_small(gallery: Gallery, gallery_folder: Path) -> None:
    page = gallery("measure")
    assert (gallery_folder / "fonts" / "inter.woff2").stat().st_size <= FONT_LIMIT_BYTES
    loaded = page.evaluate("() => [...document.fonts].map((face) => [face.family, face.status])")
    assert [name.strip('"') for name, state in loaded if state == "loaded"] == ["Inter"]


def test_the_words_can_be_changed_while_they_are_shown(gallery: Gallery) -> None:
    page = gallery("plan")
    page.evaluate(
        """async () => {
          const { partWords } = await import('../parts/words.js');
          partWords.value = { ...partWords.value, zoomIn: 'Näher' };
        }"""
    )
    expect(page.get_by_role("button", name="Näher")).to_be_visible()
