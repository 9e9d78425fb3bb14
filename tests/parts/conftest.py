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
STEP_MS = 16
PHONE: dict[str, Any] = {
    "viewport": {"width": 390, "height": 844},
    "has_touch": True,
    "is_mobile": True,
    "device_scale_factor": 2,
    "locale": "en-GB",
}


class Fingers:
    """Fingers on the glass of one page, in CSS pixels: real touch events, sent through the browser's own door."""

    def __init__(self, session: CDPSession) -> None:
        self.session = session

    def touch(self, kind: str, *points: tuple[float, float]) -> None:
        touches = [{"x": x, "y": y, "id": number} for number, (x, y) in enumerate(points)]
        self.session.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": touches})

    def slide(self, x: float, y: float, by: float, hold: float = 0.25) -> None:
        """Slow slide sideways by so many px, held still before the finger leaves."""
        self.touch("touchStart", (x, y))
        self.move(x, y, by, steps=20)
        time.sleep(hold)
        self.touch("touchEnd")

    def flick(self, x: float, y: float, by: float) -> None:
        """Fast slide sideways; the finger leaves while it moves."""
        self.touch("touchStart", (x, y))
        self.move(x, y, by, steps=5)
        self.touch("touchEnd")

    def move(self, x: float, y: float, by: float, steps: int) -> None:
        for step in range(1, steps + 1):
            self.touch("touchMove", (x + by * step / steps, y))
            time.sleep(STEP_MS / 1000)

    def pinch(self, x: float, y: float, apart: float, to: float) -> None:
        """Two fingers around a point, from one distance to another."""
        steps = 10
        self.touch("touchStart", (x - apart / 2, y), (x + apart / 2, y))
        for step in range(1, steps + 1):
            now = apart + (to - apart) * step / steps
            self.touch("touchMove", (x - now / 2, y), (x + now / 2, y))
            time.sleep(STEP_MS / 1000)
        self.touch("touchEnd")


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
