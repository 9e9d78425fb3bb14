"""Ready for no signal: one whole, checked copy of the app, which opens and works with the server gone."""

from collections.abc import Iterator
from pathlib import Path
from types import ModuleType

import pytest
from handset import Phone, Site
from playwright.sync_api import Page, Playwright, expect
from questions import caches, core_state, offline_state, reading, wait_until

MEGABYTE = 1_000_000


def bundled(dist: Path) -> set[str]:
    """Every file of a build that is kept: not the service worker itself, not the copies for the web host."""
    files = {path.relative_to(dist).as_posix() for path in dist.rglob("*") if path.is_file()}
    return {name for name in files if name != "sw.js" and not name.endswith((".gz", ".br"))}


def kept(page: Page, site: Site) -> set[str]:
    urls = page.evaluate("async (name) => (await (await caches.open(name)).keys()).map((key) => key.url)", cache(page))
    return {url.removeprefix(site.url) for url in urls} - {"?files"}


def cache(page: Page) -> str:
    """The name of the one build's cache."""
    [name] = [name for name in caches(page) if name.startswith("plumpline ")]
    return name


def lose(page: Page, file: str) -> None:
    page.evaluate("async ([name, file]) => (await caches.open(name)).delete(file)", [cache(page), file])


def test_every_file_of_the_build_is_kept_before_the_app_says_it_is_ready(phone: Page, site: Site, dist: Path) -> None:
    state = wait_until(phone, offline_state, phase="verified")
    assert kept(phone, site) == bundled(dist)
    assert state["done"] == state["total"] == len(bundled(dist))
    assert core_state(phone)["whole"] is True


def test_with_the_server_gone_and_no_network_a_cold_start_opens_the_app_and_python_answers(
    phone: Page, handset: Phone, site: Site
) -> None:
    wait_until(phone, offline_state, phase="verified")
    site.stop()
    page = handset.relaunch(offline=True)
    assert reading(page) == "17 5/8 in"
    assert wait_until(page, offline_state, phase="verified")["total"] > 0
    page = handset.open("?shared=1#anywhere")
    assert reading(page) == "17 5/8 in"


def test_a_file_that_the_browser_lost_is_fetched_again(phone: Page, handset: Phone, site: Site, dist: Path) -> None:
    wait_until(phone, offline_state, phase="verified")
    lose(phone, "readings.json")
    assert kept(phone, site) == bundled(dist) - {"readings.json"}
    page = handset.open()
    wait_until(page, offline_state, phase="verified")
    assert kept(page, site) == bundled(dist)


def test_ready_is_not_said_while_a_lost_file_cannot_be_fetched(phone: Page, handset: Phone, site: Site) -> None:
    wait_until(phone, offline_state, phase="verified")
    lose(phone, "licences.txt")
    site.stop()
    page = handset.open()
    state = wait_until(page, offline_state, phase="failed")
    assert state["code"] == "broken"
    assert state["done"] == state["total"] - 1


def test_a_save_that_broke_off_goes_on_where_it_stopped(handset: Phone, site: Site) -> None:
    site.instead["licences.txt"] = (500, "text/plain", b"overloaded")  # the page itself never reads it
    page = handset.open()
    wait_until(page, offline_state, phase="failed", code="broken")
    wait_until(page, core_state, whole=True)
    site.instead.clear()
    site.served.clear()
    page.evaluate("() => dispatchEvent(new Event('online'))")
    wait_until(page, offline_state, phase="verified")
    assert "licences.txt" in site.served
    assert [path for path in site.served if path < "licences.txt"] == []


def test_a_device_without_room_is_told_so(handset: Phone, site: Site) -> None:
    session = handset.context.new_cdp_session(handset.page)
    session.send("Storage.overrideQuotaForOrigin", {"origin": site.url.rstrip("/"), "quotaSize": 4 * MEGABYTE})
    page = handset.open()
    state = wait_until(page, offline_state, phase="failed")
    assert state["code"] == "full"
    expect(page.get_by_text("this device has no room left")).to_be_visible()
    assert reading(page) == "17 5/8 in"


@pytest.fixture
def house(script: ModuleType, dist: Path, playwright: Playwright, tmp_path: Path) -> Iterator[Phone]:
    """A phone at an app that is mounted below the root of its host."""
    site = Site(script, dist, "/shop/tools/")
    device = Phone(playwright, tmp_path / "profile", script.find_browser(), site)
    yield device
    device.close()
    site.stop()
    assert device.faults == []


def test_the_app_works_below_any_path_of_its_host(house: Phone) -> None:
    wait_until(house.open(), offline_state, phase="verified")
    house.site.stop()
    page = house.relaunch()
    assert reading(page) == "17 5/8 in"
    assert cache(page).startswith(f"plumpline {house.site.url} ")
