"""Keys, units, messages and hardware keyboards of one measure."""

import re
from collections.abc import Callable
from typing import Any

import pytest
from playwright.sync_api import Page, expect

Gallery = Callable[[str], Page]

TO_CENTIMETRES = "Unit: inches. Change to centimetres"
TO_INCHES = "Unit: centimetres. Change to inches"


def press_keys(page: Page, *names: str) -> None:
    for name in names:
        page.get_by_role("button", name=name, exact=True).click()


def big_figure(page: Page) -> Any:
    return page.locator(".reading .figure-l")


@pytest.mark.parametrize(
    ("keys", "text"),
    [
        (["1", "8"], "18 in"),
        (["1", "8", "five eighths"], "18 5/8 in"),
        (["1", "8", "five eighths", "three quarters"], "18 3/4 in"),
        (["1", "8", "five eighths", "five eighths"], "18 in"),
        (["1", "8", "five eighths", "one sixteenth more"], "18 11/16 in"),
        (["1", "8", "five eighths", "one sixteenth more", "one sixteenth more"], "18 5/8 in"),
        (["1", "8", "one sixteenth more"], "18 1/16 in"),
        (["five eighths", "2", "1"], "21 in"),
        (["1", "8", "five eighths", "Delete the last key"], "18 in"),
        (["1", "8", "Delete the last key", "Delete the last key", "7"], "7 in"),
        (["0", "1", "7"], "17 in"),
        (["1", "2", "0"], "120 in"),
    ],
)
def test_keys_build_the_reading(gallery: Gallery, stored: Any, keys: list[str], text: str) -> None:
    page = gallery("empty")
    press_keys(page, *keys)
    stored(page, text)
    assert big_figure(page).get_attribute("aria-label") != "no reading yet"
    assert big_figure(page).inner_text().replace("\n", "") == text


def test_a_fraction_key_amends_what_the_tape_was_slid_to(gallery: Gallery, stored: Any) -> None:
    page = gallery("measure")
    expect(page.get_by_role("button", name="five eighths")).to_have_attribute("aria-pressed", "true")
    press_keys(page, "one quarter")
    stored(page, "17 1/4 in")
    press_keys(page, "2", "2")
    stored(page, "22 in")


def test_the_delete_key_can_empty_the_measure(gallery: Gallery, stored: Any) -> None:
    page = gallery("measure")
    press_keys(page, *["Delete the last key"] * 3)
    stored(page, "")
    expect(page.get_by_text("Slide the tape, or use the keys")).to_be_visible()
    expect(page.get_by_role("slider")).to_have_attribute("aria-valuetext", "no reading yet")


@pytest.mark.parametrize(
    ("typed", "text"),
    [
        ("17 5/8", "17 5/8 in"),
        ("17-5/8", "17 5/8 in"),
        ("17 11/16", "17 11/16 in"),
        ("5/8", "5/8 in"),
        ("17.625", "17.625 in"),
        ("17,625", "17.625 in"),
        ("11/4", "11/4 in"),
    ],
)
def test_a_hardware_keyboard_types_a_reading(gallery: Gallery, stored: Any, typed: str, text: str) -> None:
    page = gallery("empty&focus")
    page.keyboard.type(typed)
    stored(page, text)


def test_an_unfinished_fraction_is_shown_as_typed_and_keeps_the_last_reading(gallery: Gallery, stored: Any) -> None:
    page = gallery("empty&focus")
    page.keyboard.type("17 5/")
    stored(page, "17 in")
    expect(big_figure(page)).to_have_text("17 5/ in")
    page.keyboard.press("Backspace")
    page.keyboard.type("/4")
    expect(big_figure(page)).to_have_text("17 5/4 in")
    expect(page.get_by_text("17 5/4 in can be read in two ways.")).to_be_visible()


def test_centimetres_take_a_point_and_a_millimetre(gallery: Gallery, stored: Any) -> None:
    page = gallery("centimetres")
    press_keys(page, "4", "5", "point")
    stored(page, "45 cm")
    expect(big_figure(page)).to_have_text("45. cm")
    press_keys(page, "5")
    stored(page, "45.5 cm")
    expect(page.locator(".reading-other")).to_have_text(re.compile("in$"))
    press_keys(page, "7")
    expect(page.get_by_text("A millimetre is the finest mark on this tape.")).to_be_visible()
    stored(page, "45.5 cm")
    press_keys(page, "one millimetre more", "one millimetre more", "one millimetre less")
    stored(page, "45.6 cm")
    press_keys(page, "point five")
    stored(page, "45.5 cm")


def test_a_keyboard_that_offers_only_a_comma_writes_centimetres(gallery: Gallery, stored: Any) -> None:
    """Fault B01 and B03: comma and point are both read."""
    page = gallery("centimetres&focus")
    page.keyboard.type("45,5")
    stored(page, "45.5 cm")
    page.get_by_role("slider").focus()
    page.keyboard.press("Home")
    page.keyboard.type("17.5")
    stored(page, "17.5 cm")


def test_twenty_changes_of_unit_leave_what_was_typed_byte_for_byte(gallery: Gallery, stored: Any) -> None:
    """Fault B14."""
    page = gallery("measure")
    before = page.locator("[data-stored]").evaluate("(kept) => [...new TextEncoder().encode(kept.textContent)]")
    for _ in range(10):
        press_keys(page, TO_CENTIMETRES, TO_INCHES)
    after = page.locator("[data-stored]").evaluate("(kept) => [...new TextEncoder().encode(kept.textContent)]")
    assert after == before
    assert page.evaluate("() => globalThis.gallery.inputs") == []
    press_keys(page, TO_CENTIMETRES)
    stored(page, "17 5/8 in")
    expect(page.locator(".reading-other")).to_have_text("≈ 44.77 cm")


def test_what_is_longer_than_the_tape_stays_with_a_message(gallery: Gallery, stored: Any) -> None:
    page = gallery("empty")
    press_keys(page, "1", "3", "0")
    stored(page, "130 in")
    expect(page.get_by_text("The tape ends at 120 in. 130 in is kept as typed.")).to_be_visible()
    expect(page.locator(".reading-other")).to_have_text("330.2 cm")
    press_keys(page, "five eighths")
    stored(page, "130 5/8 in")


def test_a_measure_above_the_most_is_kept_with_a_message(gallery: Gallery, stored: Any) -> None:
    page = gallery("empty")
    press_keys(page, "6", "1")
    expect(page.get_by_text("This is more than 60 in. 61 in is kept as typed.")).to_be_visible()
    stored(page, "61 in")


def test_the_core_is_asked_for_what_the_table_does_not_hold(gallery: Gallery) -> None:
    page = gallery("long")
    expect(page.locator(".reading-other")).to_have_text("330.2 cm")
    expect(page.get_by_role("slider")).to_have_attribute("aria-valuetext", "130 in")


def test_the_phones_keyboard_is_never_opened(gallery: Gallery) -> None:
    page = gallery("measure&focus")
    press_keys(page, "1", "8", "five eighths")
    assert page.locator(".measure :is(input, textarea, select, [contenteditable])").count() == 0


def test_two_readings_stand_side_by_side_and_each_can_be_written(gallery: Gallery, stored: Any) -> None:
    page = gallery("second")
    first = page.get_by_role("button", name="1st reading")
    second = page.get_by_role("button", name="2nd reading")
    expect(second).to_have_attribute("aria-pressed", "true")
    press_keys(page, "1", "8")
    expect(second).to_contain_text("18 in")
    expect(first).to_contain_text("17 5/8 in")
    stored(page, "17 5/8 in")
    first.click()
    press_keys(page, "1", "9")
    stored(page, "19 in")
    expect(second).to_contain_text("18 in")
    boxes = [one.bounding_box() for one in (first, second)]
    assert boxes[0]["y"] == boxes[1]["y"]


def test_a_problem_from_the_core_is_told_at_the_measure(gallery: Gallery) -> None:
    page = gallery("problem")
    told = page.locator(".measure").get_by_role("status")
    expect(told).to_have_text("The front is 130 in wide; this cloth has 54 in.")
