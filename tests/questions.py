"""Questions to the running app: how its Python and its offline copy are, and what it answers."""

from collections.abc import Callable
from typing import Any

from playwright.sync_api import Page

PATIENCE_MS = 60_000


def core_state(page: Page) -> dict[str, Any]:
    return page.evaluate("async () => (await import('./boot/core.js')).coreState.value")


def offline_state(page: Page) -> dict[str, Any]:
    return page.evaluate("async () => (await import('./boot/offline.js')).offlineState.value")


def ask(page: Page, request: dict[str, Any]) -> Any:
    return page.evaluate("async (request) => (await import('./boot/core.js')).ask(request)", request)


def wait_until(page: Page, state: Callable[[Page], dict[str, Any]], **wanted: object) -> dict[str, Any]:
    """Look again and again until the state says what is wanted; the page itself must not evaluate text (policy)."""
    for _ in range(PATIENCE_MS // 100):
        seen = state(page)
        if all(seen[name] == value for name, value in wanted.items()):
            return seen
        page.wait_for_timeout(100)
    raise AssertionError(f"waited for {wanted}, but it says {seen}")


def caches(page: Page) -> list[str]:
    return page.evaluate("() => caches.keys()")


def reading(page: Page) -> str:
    """One answer of Python: what 17 5/8 is, in sixteenths."""
    return ask(page, {"do": "read", "text": "17,625", "unit": "in"})["ok"]["texts"]["in"]
