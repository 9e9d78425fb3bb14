"""Choices, steppers, pads, rows, notices, sheets: each used as a maker would use it."""

from collections.abc import Callable

import pytest
from playwright.sync_api import Page, expect

Gallery = Callable[[str], Page]


def inputs(page: Page) -> list[str]:
    told: list[str] = page.evaluate("() => globalThis.gallery.inputs")
    return told


def test_a_choice_is_a_radio_group_for_finger_and_arrow_keys(gallery: Gallery) -> None:
    page = gallery("form")
    group = page.get_by_role("group", name="Filling")
    group.get_by_role("radio", name="down").click()
    expect(group.get_by_role("radio", name="down")).to_be_checked()
    page.keyboard.press("ArrowDown")
    expect(group.get_by_role("radio", name="polyester")).to_be_checked()
    pads = page.get_by_role("radio", name="Pads in hand")
    expect(pads).to_have_accessible_description("Measure the old inserts")
    expect(page.get_by_role("group", name="Units")).to_have_accessible_description("Choose one.")


def test_a_stepper_counts_and_stops_at_its_ends(gallery: Gallery) -> None:
    page = gallery("form")
    number = page.get_by_role("spinbutton", name="How many")
    page.get_by_role("button", name="One more: How many").click()
    expect(number).to_have_text("7")
    number.focus()
    page.keyboard.press("PageUp")
    expect(number).to_have_attribute("aria-valuenow", "17")
    page.keyboard.press("Home")
    expect(number).to_have_text("1")
    less = page.get_by_role("button", name="One less: How many")
    expect(less).to_have_attribute("aria-disabled", "true")
    less.click(force=True)
    expect(number).to_have_text("1")


def test_a_text_field_tells_its_problem_and_keeps_what_was_typed(gallery: Gallery) -> None:
    page = gallery("form")
    notes = page.get_by_label("Notes")
    expect(notes).to_have_accessible_description("Too long by 12 letters.")
    expect(notes).to_have_attribute("aria-invalid", "true")
    client = page.get_by_label("Client")
    client.fill('Łucja Ñandú ½ € <img src=x onerror="alert(1)">')
    expect(client).to_have_value('Łucja Ñandú ½ € <img src=x onerror="alert(1)">')


def test_a_price_is_built_by_keys(gallery: Gallery) -> None:
    page = gallery("pads")
    pad = page.get_by_role("group", name="Price", exact=True)
    for key in ("4", "8", "point", "5"):
        pad.get_by_role("button", name=key, exact=True).click()
    assert inputs(page) == ["4", "48", "48", "48.5"]
    for key in ("0", "0"):
        pad.get_by_role("button", name=key, exact=True).click()
    expect(pad.get_by_text("No smaller coin in this currency.")).to_be_visible()
    expect(pad.locator("output")).to_contain_text("48.50")


def test_a_price_is_typed_on_a_hardware_keyboard_with_either_decimal_sign(gallery: Gallery) -> None:
    page = gallery("pads")
    page.get_by_role("group", name="Price", exact=True).focus()
    page.keyboard.type("7,25")
    expect(page.get_by_role("group", name="Price", exact=True).locator("output")).to_contain_text("7.25")
    page.keyboard.press("Backspace")
    assert inputs(page)[-1] == "7.2"


@pytest.mark.parametrize(
    ("pasted", "kept", "told"),
    [("1.234,56", "1234.56", ""), ("3.350", "3.350", "3.350 can be read in two ways.")],
)
def test_a_pasted_price_is_read_by_the_core_or_asked_about(gallery: Gallery, pasted: str, kept: str, told: str) -> None:
    """Fault B15."""
    page = gallery("pads")
    pad = page.get_by_role("group", name="Price", exact=True)
    pad.evaluate(
        """(pad, text) => {
          const clipboardData = new DataTransfer();
          clipboardData.setData('text', text);
          pad.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
        }""",
        pasted,
    )
    expect(pad.locator("output")).to_contain_text(kept)
    expect(pad.locator("[role=status]")).to_have_text(told)


def test_a_number_beyond_its_most_is_shown_with_a_message(gallery: Gallery) -> None:
    page = gallery("pads")
    pad = page.get_by_role("group", name="Panels", exact=True)
    for key in ("3", "0", "1"):
        pad.get_by_role("button", name=key, exact=True).click()
    expect(pad.locator("output")).to_contain_text("301")
    expect(pad.locator("[role=status]")).to_have_text("The most is 200.")


def test_a_row_opens_what_it_tells(gallery: Gallery) -> None:
    page = gallery("answer")
    page.get_by_role("button", name="Change Usable width: 54 in").click()
    page.get_by_role("button", name="Change Repeat: not set").click()
    page.get_by_role("button", name="Other bolts Compare 2").click()
    assert inputs(page) == ["width", "repeat", "bolts"]


def test_a_notice_says_its_level_in_words_and_offers_the_way_out_in_one_tap(gallery: Gallery) -> None:
    page = gallery("answer")
    expect(page.get_by_text("Check this")).to_be_visible()
    expect(page.get_by_text("This stops the plan")).to_be_visible()
    way_out = "Cut the panels 17 5/8 in wide (side seams 5/16 in). ask for 2 1/8 yd · saves 1 yd"
    page.get_by_role("button", name=way_out).click()
    assert page.evaluate("() => globalThis.gallery.wayOuts") == 1


@pytest.fixture
def sheet_page(gallery: Gallery) -> Page:
    page = gallery("sheet")
    page.get_by_role("button", name="Change Usable width: 17 5/8 in").click()
    expect(page.get_by_role("dialog", name="Usable width")).to_be_visible()
    return page


def closed(page: Page) -> None:
    expect(page.get_by_role("dialog")).to_have_count(0)
    expect(page.get_by_role("button", name="Change Usable width")).to_be_focused()
    page.wait_for_timeout(100)
    assert page.evaluate("() => history.state?.sheet ?? null") is None


def test_escape_closes_a_sheet(sheet_page: Page) -> None:
    sheet_page.keyboard.press("Escape")
    closed(sheet_page)


def test_the_back_button_closes_a_sheet_and_stays_on_the_page(sheet_page: Page) -> None:
    """Fault B21: the phone's back button is the way back inside the app."""
    sheet_page.evaluate("() => history.back()")
    closed(sheet_page)
    expect(sheet_page.get_by_role("heading", name="A sheet")).to_be_visible()


def test_its_cross_and_a_touch_beside_it_close_a_sheet(sheet_page: Page) -> None:
    sheet_page.get_by_role("button", name="Close").click()
    closed(sheet_page)
    sheet_page.get_by_role("button", name="Change Usable width").click()
    expect(sheet_page.get_by_role("dialog")).to_be_visible()
    sheet_page.touchscreen.tap(195, 12)
    closed(sheet_page)


def test_behind_a_sheet_everything_is_inert_and_the_keyboard_stays_inside(sheet_page: Page) -> None:
    for _ in range(40):
        sheet_page.keyboard.press("Tab")
        assert sheet_page.evaluate("() => document.activeElement.matches('body, dialog *')")
    behind = sheet_page.locator("main > .screen-body > label input").bounding_box()
    assert behind is not None
    touched = "([x, y]) => document.elementFromPoint(x, y).closest('dialog') !== null"
    assert sheet_page.evaluate(touched, [behind["x"] + 5, behind["y"] + 5])


def test_a_sheet_can_be_opened_and_closed_again_and_again(gallery: Gallery) -> None:
    page = gallery("sheet")
    length = page.evaluate("() => history.length")
    for _ in range(3):
        page.get_by_role("button", name="Change Usable width").click()
        page.get_by_role("button", name="Done").click()
        closed(page)
    assert page.evaluate("() => history.length") <= length + 1
