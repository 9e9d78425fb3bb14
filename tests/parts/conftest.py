"""The gallery of parts on a phone: a server of it, opening one of its pages, and fingers on the glass."""

import shutil
import time
from collections.abc import Callable, Iterator
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest
from handset import FLAGS, Site
from playwright.sync_api import Browser, CDPSession, Page, Playwright, expect

HERE = Path(__file__).resolve().parent
AXE = HERE.parent.parent / "web" / "node_modules" / "axe-core" / "axe.min.js"
STEP_SECONDS = 0.016
PHONE: dict[str, Any] = {
    "viewport": {"width": 390, "height": 844},
    "has_touch": True,
    "is_mobile": True,
    "device_scale_factor": 2,
    "locale": "en-GB",
}


class Fingers:
    """Fingers on the glass of one page, in CSS pixels: real touch events, sent through the browser's own door.

    Each event carries the time at which a hand would have made it, so a busy machine moves no slower.
    """

    def __init__(self, session: CDPSession) -> None:
        self.session = session
        self.now = 0.0

    def touch(self, kind: str, *points: tuple[float, float]) -> None:
        touches = [{"x": x, "y": y, "id": number} for number, (x, y) in enumerate(points)]
        when = {"timestamp": self.now}
        self.session.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": touches, **when})

    def start(self, *points: tuple[float, float], lasting: float = 0.0) -> None:
        """The fingers come down, so long ago that a movement of `lasting` seconds ends now."""
        self.now = time.time() - lasting
        self.touch("touchStart", *points)

    def move(self, x: float, y: float, by: float, steps: int) -> None:
        for step in range(1, steps + 1):
            self.now += STEP_SECONDS
            self.touch("touchMove", (x + by * step / steps, y))

    def lift(self, after: float = STEP_SECONDS) -> None:
        self.now += after
        self.touch("touchEnd")

    def slide(self, x: float, y: float, by: float) -> None:
        """Slow slide sideways by so many px, held still before the finger leaves."""
        hold = 0.3
        self.start((x, y), lasting=20 * STEP_SECONDS + hold)
        self.move(x, y, by, steps=20)
        self.lift(after=hold)

    def flick(self, x: float, y: float, by: float) -> None:
        """Fast slide sideways; the finger leaves while it moves."""
        self.start((x, y), lasting=6 * STEP_SECONDS)
        self.move(x, y, by, steps=5)
        self.lift()

    def pinch(self, x: float, y: float, apart: float, to: float) -> None:
        """Two fingers around a point, from one distance to another."""
        steps = 10
        self.start((x - apart / 2, y), (x + apart / 2, y), lasting=(steps + 1) * STEP_SECONDS)
        for step in range(1, steps + 1):
            self.now += STEP_SECONDS
            reach = (apart + (to - apart) * step / steps) / 2
            self.touch("touchMove", (x - reach, y), (x + reach, y))
        self.lift()


@pytest.fixture(scope="session")
def gallery_folder(dist: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """What the gallery needs of the product, with the gallery beside it."""
    folder = tmp_path_factory.mktemp("gallery")
    for part in ("vendor", "parts", "styles", "fonts"):
        shutil.copytree(dist / part, folder / part, ignore=shutil.ignore_patterns("*.br", "*.gz"))
    shutil.copy(dist / "readings.json", folder)
    shutil.copytree(HERE / "gallery", folder / "gallery")
    return folder


@pytest.fixture(scope="session")
def gallery_site(script: ModuleType, gallery_folder: Path) -> Iterator[Site]:
    """A server of the gallery, for the whole run."""
    place = Site(script, gallery_folder)
    yield place
    place.stop()


@pytest.fixture(scope="session")
def chromium(script: ModuleType, playwright: Playwright) -> Iterator[Browser]:
    """One browser for all tests of the parts; each test has a profile of its own."""
    browser = playwright.chromium.launch(executable_path=script.find_browser(), args=FLAGS)
    yield browser
    browser.close()


@pytest.fixture
def screen(chromium: Browser) -> Iterator[Page]:
    """An empty page held like a phone; fails the test for any error and any breach of the content policy."""
    faults: list[str] = []
    context = chromium.new_context(**PHONE)
    context.on("console", lambda message: faults.append(message.text) if message.type == "error" else None)
    context.on("weberror", lambda error: faults.append(f"uncaught: {error.error}"))
    yield context.new_page()
    context.close()
    assert faults == []


@pytest.fixture
def examined(chromium: Browser, gallery_site: Site) -> Iterator[Callable[[str], Page]]:
    """As `gallery`, without the content policy: the accessibility checker sets styles of its own."""
    context = chromium.new_context(**PHONE, bypass_csp=True)
    yield gallery_opener(context.new_page(), gallery_site)
    context.close()


@pytest.fixture
def gallery(screen: Page, gallery_site: Site) -> Callable[[str], Page]:
    """Opens one page of the gallery, e.g. `gallery("measure")`, and waits until it is drawn."""
    return gallery_opener(screen, gallery_site)


def gallery_opener(page: Page, site: Site) -> Callable[[str], Page]:
    def open_page(name: str) -> Page:
        page.goto(f"{site.url}gallery/index.html?page={name}")
        page.locator("html[data-ready]").wait_for(state="attached")
        page.evaluate("() => document.fonts.ready")
        return page

    return open_page


@pytest.fixture
def fingers() -> Callable[[Page], Fingers]:
    """Fingers for a page."""
    return lambda page: Fingers(page.context.new_cdp_session(page))


@pytest.fixture(scope="session")
def axe() -> str:
    """The source of the accessibility checker."""
    return AXE.read_text("utf-8")


@pytest.fixture
def stored() -> Callable[[Page, str], None]:
    """Expects a text to be the value the page keeps."""
    return lambda page, text: expect(page.locator("[data-stored]")).to_have_text(text)
