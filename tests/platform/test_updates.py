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


def expect_mark(page: Page, mark: str) -> None:
    expect(page.locator(f"meta[name=mark][content={mark}]")).to_have_count(1, timeout=30_000)


def test_a_new_build_waits_until_it_is_accepted_and_then_replaces_the_old_one(
    phone: Page, handset: Phone, site: Site, release: Callable[..., str]
) -> None:
    wait_until(phone, offline_state, phase="verified")
    old = caches(phone)
    build = release(marked(site, "second"))
    site.served.clear()
    page = handset.open()
    wait_until(page, offline_state, update="waiting", phase="verified")
    expect(page.locator("meta[name=mark]")).to_have_count(0)
    assert WASM not in site.served  # what has not changed is taken over, not fetched again
    page = handset.relaunch()
    expect(page.locator("meta[name=mark]")).to_have_count(0)
    wait_until(page, offline_state, update="waiting", phase="verified")
    page.evaluate("async () => (await import('./boot/offline.js')).acceptUpdate()")
    expect_mark(page, "second")
    wait_until(page, offline_state, phase="verified", update="none")
    assert [name.split()[-1] for name in caches(page)] == [build]
    assert old[0] not in caches(page)
    site.stop()
    page = handset.relaunch(offline=True)
    expect_mark(page, "second")
    assert reading(page) == "17 5/8 in"


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
    old = caches(phone)[0]
    changes = marked(site, "second") | {"boot/starts.js": (site.folder / "boot/starts.js").read_bytes() + b"\n"}
    release(changes, BROKEN[fault].get("after"))
    if "instead" in BROKEN[fault]:
        site.instead["boot/starts.js"] = BROKEN[fault]["instead"]
    if "as text" in BROKEN[fault]:
        site.instead["boot/starts.js"] = (200, "text/plain", changes["boot/starts.js"])
    page = handset.open()
    wait_until(page, offline_state, update="failed", phase="verified")
    assert old in caches(page)
    site.stop()
    page = handset.relaunch(offline=True)
    expect(page.locator("meta[name=mark]")).to_have_count(0)
    assert reading(page) == "17 5/8 in"
    wait_until(page, offline_state, phase="verified")


def test_after_a_broken_update_the_repaired_one_arrives(
    phone: Page, handset: Phone, site: Site, release: Callable[..., str]
) -> None:
    wait_until(phone, offline_state, phase="verified")
    mark = marked(site, "third")
    release(mark, {"licences.txt": b"damaged"})
    page = handset.open()
    wait_until(page, offline_state, phase="verified")
    release(mark | {"licences.txt": b"Changed licences.\n"}, {"licences.txt": b"damaged"})
    page = handset.open()
    wait_until(page, offline_state, update="failed")
    build = release(mark | {"licences.txt": b"Changed licences.\n"})
    page = handset.open()
    wait_until(page, offline_state, update="waiting")
    page.evaluate("async () => (await import('./boot/offline.js')).acceptUpdate()")
    expect_mark(page, "third")
    wait_until(page, offline_state, phase="verified")
    assert [name.split()[-1] for name in caches(page)] == [build]
