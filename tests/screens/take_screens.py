"""Takes the pictures in web/screens/: every station at phone and laptop size, light, dark and black on white.

    .venv/bin/python -m pytest tests/screens/take_screens.py

It is no part of the tests, but uses their phone. The job shown is invented: six cushions of a "Harbour room".
"""

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from handset import Phone
from maker import Maker
from playwright.sync_api import Page, expect
from test_main_job import expect_answer, walk_main_job

FOLDER = Path(__file__).resolve().parents[2] / "web" / "screens"
SIZES: dict[str, dict[str, Any]] = {
    "phone": {"viewport": {"width": 390, "height": 844}, "device_scale_factor": 1.5},
    "laptop": {"viewport": {"width": 1280, "height": 800}, "device_scale_factor": 1, "is_mobile": False},
}
LIGHTS = ("light", "dark", "sun")
SETTLED_MS = 700


def write(maker: Maker, station: str, row: str, text: str) -> None:
    maker.go_to(station)
    maker.touch(maker.row(row))
    maker.write(row, text)
    maker.press("job.done")


def make_job(maker: Maker) -> None:
    """The invented job: the main job's walk, with the names and the price of the cloth."""
    walk_main_job(maker)
    write(maker, "measure", "Job name", "Harbour room")
    write(maker, "measure", "Cushion name", "long sofa")
    write(maker, "cloth", "Cloth name", "plain linen")
    maker.touch(maker.row("Price"))
    maker.pad("32.00")
    maker.press("job.done")
    maker.go_to("cut")
    expect_answer(maker.page, "3 1/8 yd")
    maker.touch(maker.page.get_by_role("button", name="Cut the panels 17 5/8 in wide"))
    expect_answer(maker.page, "2 1/8 yd")


def screens(maker: Maker) -> Iterator[str]:
    """Goes from screen to screen, stopping at each; ends where it began, at home."""
    maker.go_home()
    yield "home"
    maker.open_job("Harbour room")
    yield "measure"
    maker.touch(maker.row("Width"))
    yield "measure-width"
    maker.press("job.back")
    maker.touch(maker.row("How many"))
    yield "measure-how-many"
    maker.press("job.back")
    for station in ("cover", "cloth", "cut"):
        maker.go_to(station)
        yield station
    if maker.find("cut.showPlan").is_visible():
        maker.press("cut.showPlan")
        yield "cut-plan"
    maker.press("cut.why")
    yield "cut-how-so"
    maker.press("job.close")
    maker.press("counter.open")
    yield "counter"
    maker.press("job.back")
    maker.press("compare.open")
    expect(maker.page.get_by_text("Each way is planned")).to_be_visible()
    yield "compare"
    maker.press("job.back")
    maker.go_to("make")
    yield "make"
    if maker.find("make.facts").is_visible():
        maker.press("make.facts")
        yield "make-sheet"
    maker.go_to("price")
    yield "price"
    maker.go_home()
    maker.press("home.settings")
    yield "settings"
    maker.press("job.back")


def set_light(page: Page, light: str) -> None:
    page.emulate_media(color_scheme="dark" if light == "dark" else "light")
    chosen = "sun" if light == "sun" else "phone"
    page.evaluate("async (light) => (await import('./store/settings.js')).set('light', light)", chosen)


def take(page: Page, name: str) -> None:
    page.wait_for_timeout(SETTLED_MS)
    page.screenshot(path=FOLDER / f"{name}.png")


@pytest.mark.parametrize("size", SIZES)
def test_take_the_screens(handset: Phone, size: str) -> None:
    FOLDER.mkdir(exist_ok=True)
    maker = Maker(handset.relaunch(**SIZES[size]))
    make_job(maker)
    for light in LIGHTS:
        set_light(maker.page, light)
        for screen in screens(maker):
            if screen == "cut":
                expect(maker.find("cut.why")).to_be_visible()
            take(maker.page, f"{size}-{light}-{screen}")
