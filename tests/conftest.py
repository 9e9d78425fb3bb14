"""What every test may use: the --long switch, the built product, a server of it, and a phone that opens it."""

import importlib.util
import shutil
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from types import ModuleType

import pytest
from handset import Phone, Site
from playwright.sync_api import Page, Playwright, expect, sync_playwright

ROOT = Path(__file__).resolve().parent.parent
# How long a page may take to show what is waited for; a busy machine needs it, no test is slower for it.
expect.set_options(timeout=30_000)


def pytest_addoption(parser: pytest.Parser) -> None:
    parser.addoption("--long", action="store_true", help="also run the full-count tests marked `long`")


def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    for item in items:
        if "playwright" in getattr(item, "fixturenames", ()):
            item.add_marker("browser")
    if config.getoption("--long"):
        return
    chosen = [item for item in items if not item.get_closest_marker("long")]
    config.hook.pytest_deselected(items=[item for item in items if item.get_closest_marker("long")])
    items[:] = chosen


def load_build_script() -> ModuleType:
    """build.py as a module: it is a script at the top of the repository, not a package."""
    spec = importlib.util.spec_from_file_location("build", ROOT / "build.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules["build"] = module
    spec.loader.exec_module(module)
    return module


@pytest.fixture(scope="session")
def script() -> ModuleType:
    """build.py as a module."""
    return load_build_script()


@pytest.fixture(scope="session")
def dist(script: ModuleType, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The built product, made once for the whole run, in a folder no other build touches."""
    folder = tmp_path_factory.mktemp("product") / "dist"
    script.main(["build", "--out", str(folder)])
    return folder


@pytest.fixture
def site(script: ModuleType, dist: Path) -> Iterator[Site]:
    """A server of the built product: .url, .stop(), .start()."""
    place = Site(script, dist)
    yield place
    place.stop()


@pytest.fixture(scope="session")
def playwright() -> Iterator[Playwright]:
    with sync_playwright() as running:
        yield running


@pytest.fixture
def handset(script: ModuleType, playwright: Playwright, site: Site, tmp_path: Path) -> Iterator[Phone]:
    """The phone itself: .page, .open(), .kill(), .relaunch(), .forgive(); fails the test for any fault."""
    device = Phone(playwright, tmp_path / "profile", script.find_browser(), site)
    yield device
    device.close()
    assert device.faults == []


@pytest.fixture
def phone(handset: Phone) -> Page:
    """A page of a phone with a fresh profile, opened at the app."""
    return handset.open()


@pytest.fixture
def relaunch(handset: Phone) -> Callable[..., Page]:
    """Kills the browser and opens the app again on the same profile; gives the new page."""
    return handset.relaunch


@pytest.fixture
def release(script: ModuleType, dist: Path, site: Site, tmp_path: Path) -> Callable[..., str]:
    """Puts another build in the place of the one that is served: release({"path": bytes}) gives its id.

    Files are written before the service worker is filled in, so it is a whole build of its own. A file named in
    `after` is damaged afterwards: its hash in the service worker is then another; None takes the file away.
    """
    number = iter(range(1, 100))

    def put(changes: dict[str, bytes], after: dict[str, bytes | None] | None = None) -> str:
        folder = tmp_path / f"release-{next(number)}"
        shutil.copytree(dist, folder, ignore=shutil.ignore_patterns("*.gz", "*.br"))
        shutil.copy2(ROOT / "web/sw.js", folder / "sw.js")
        for path, content in changes.items():
            (folder / path).write_bytes(content)
        build: str = script.fill_service_worker(folder)
        for path, damaged in (after or {}).items():
            if damaged is None:
                (folder / path).unlink()
            else:
                (folder / path).write_bytes(damaged)
        site.stop()
        site.folder = folder
        site.start()
        return build

    return put
