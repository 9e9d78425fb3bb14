"""A newer build takes over whole, and only when the person accepts it; a broken one never does (faults B26, B27)."""

from collections.abc import Callable

import pytest
from handset import Phone, Site
from playwright.sync_api import Page, expect
from questions import caches, offline_state, reading, wait_until

WASM = "vendor/pyodide/pyodide.asm.wasm"
HTML = b"<!doctype html><title>Error</title><p>The host is being moved."


def marked(site: Site, mark: str) -> dict[str, bytes]:
    """The page of the served build with a mark in its head."""
    page = (site.folder / "index.html").read_bytes()
    assert b"<head>" in page
    return {"index.html": page.replace(b"<head>", f'<head><meta name="mark" content="{mark}">'.encode(), 1)}


def builds(page: Page) -> list[str]:
    """The ids of the builds that are kept."""
    return [name.split()[-1] for name in caches(page) if name.startswith("plumpline ")]


def registration(page: Page) -> dict[str, bool]:
    return page.evaluate(
        "async () => ({ waiting: Boolean((await navigator.serviceWorker.getRegistration()).waiting) })"
    )


def accept(page: Page) -> None:
    page.evaluate("async () => (await import('./boot/offline.js')).acceptUpdate()")


def expect_old(page: Page) -> None:
    """The page is the first build's, which has no mark."""
    expect(page.locator("head title")).to_have_count(1)
    expect(page.locator("meta[name=mark]")).to_have_count(0)


def expect_mark(page: Page, mark: str) -> None:
    expect(page.locator(f"meta[name=mark][content={mark}]")).to_have_count(1, timeout=30_000)


def test_a_new_build_waits_until_it_is_accepted_and_then_replaces_the_old_one(
    phone: Page, handset: Phone, site: Site, release: Callable[..., str]
) -> None:
    wait_until(phone, offline_state, phase="verified")
    build = release(marked(site, "second"))
    site.served.clear()
    page = handset.open()
    wait_until(page, offline_state, update="waiting", phase="verified")
    expect_old(page)
    assert WASM not in site.served  # what has not changed is taken over, not fetched again
    accept(page)
    expect_mark(page, "second")
    wait_until(page, offline_state, phase="verified", update="none")
    assert builds(page) == [build]
    site.stop()
    page = handset.relaunch(offline=True)
    expect_mark(page, "second")
    assert reading(page) == "17 5/8 in"


def test_closing_every_page_does_not_bring_a_new_build_that_was_not_accepted(
    phone: Page, handset: Phone, site: Site, release: Callable[..., str]
) -> None:
    wait_until(phone, offline_state, phase="verified")
    build = release(marked(site, "second"))
    wait_until(handset.open(), offline_state, update="waiting", phase="verified")
    for _ in range(2):
        page = handset.relaunch()
        expect_old(page)
        assert reading(page) == "17 5/8 in"
        wait_until(page, offline_state, update="waiting", phase="verified")
    accept(page)
    expect_mark(page, "second")
    wait_until(page, offline_state, phase="verified", update="none")
    assert builds(page) == [build]


def test_of_two_new_builds_the_newer_one_is_taken(
    phone: Page, handset: Phone, site: Site, release: Callable[..., str]
) -> None:
    wait_until(phone, offline_state, phase="verified")
    second = release(marked(site, "second"))
    wait_until(handset.open(), offline_state, update="waiting", phase="verified")
    handset.relaunch()
    third = release({"index.html": (site.folder / "index.html").read_bytes().replace(b'"second"', b'"third"')})
    page = handset.open()
    wait_until(page, registration, waiting=True)
    expect_old(page)
    accept(page)
    expect_mark(page, "third")
    wait_until(page, offline_state, phase="verified", update="none")
    assert builds(page) == [third]
    assert second != third


BROKEN = {
    "a file of another content": {"after": {"boot/starts.js": b"export {};"}},
    "a file that is missing": {"after": {"boot/starts.js": None}},
    "an error page in the place of a script": {"instead": (200, "text/html", HTML)},
    "a server error": {"instead": (503, "text/html", HTML)},
    "a way round to another page": {"instead": (302, "text/html", b"")},
    "the right script as a text": {"as text": True},
}


@pytest.mark.parametrize("fault", BROKEN)
def test_a_broken_update_leaves_the_old_build_whole(
    phone: Page, handset: Phone, site: Site, release: Callable[..., str], fault: str
) -> None:
    wait_until(phone, offline_state, phase="verified")
    [old] = builds(phone)
    changes = marked(site, "second") | {"boot/starts.js": (site.folder / "boot/starts.js").read_bytes() + b"\n"}
    release(changes, BROKEN[fault].get("after"))
    if "instead" in BROKEN[fault]:
        site.instead["boot/starts.js"] = BROKEN[fault]["instead"]
    if "as text" in BROKEN[fault]:
        site.instead["boot/starts.js"] = (200, "text/plain", changes["boot/starts.js"])
    page = handset.open()
    wait_until(page, offline_state, update="failed", phase="verified")
    assert old in builds(page)
    site.stop()
    page = handset.relaunch(offline=True)
    expect_old(page)
    assert reading(page) == "17 5/8 in"
    wait_until(page, offline_state, phase="verified")


def test_after_a_broken_update_the_repaired_one_arrives(
    phone: Page, handset: Phone, site: Site, release: Callable[..., str]
) -> None:
    wait_until(phone, offline_state, phase="verified")
    mark = marked(site, "third")
    release(mark | {"licences.txt": b"Changed licences.\n"}, {"licences.txt": b"damaged"})
    page = handset.open()
    wait_until(page, offline_state, update="failed", phase="verified")
    build = release(mark | {"licences.txt": b"Changed licences.\n"})
    page = handset.open()
    wait_until(page, offline_state, update="waiting")
    accept(page)
    expect_mark(page, "third")
    wait_until(page, offline_state, phase="verified")
    assert builds(page) == [build]
