"""What the tests of the screens share: a maker at the app, the accessibility checker, the store's bytes."""

from collections.abc import Callable
from pathlib import Path

import pytest
from handset import Phone
from maker import Maker
from playwright.sync_api import Page

AXE = Path(__file__).resolve().parents[2] / "web" / "node_modules" / "axe-core" / "axe.min.js"

# Everything in the database as one text, in the order of its stores and keys.
DUMP = """() => new Promise((resolve, reject) => {
  const opening = indexedDB.open('plumpline');
  opening.onerror = () => reject(opening.error);
  opening.onsuccess = () => {
    const database = opening.result;
    const stores = [...database.objectStoreNames];
    const work = database.transaction(stores);
    const found = stores.map((name) => [name, work.objectStore(name).getAllKeys(), work.objectStore(name).getAll()]);
    work.oncomplete = () => {
      database.close();
      resolve(JSON.stringify(found.map(([name, keys, values]) => [name, keys.result, values.result])));
    };
  };
})"""


@pytest.fixture
def maker(phone: Page) -> Maker:
    """A maker at the app's first screen."""
    return Maker(phone)


@pytest.fixture
def maker_at() -> Callable[[Page], Maker]:
    """A maker at another page: after a restart, in a second tab."""
    return Maker


@pytest.fixture
def dump(handset: Phone) -> Callable[[], str]:
    """The store, whole, as one text."""
    return lambda: handset.page.evaluate(DUMP)


@pytest.fixture(scope="session")
def axe() -> str:
    """The source of the accessibility checker."""
    return AXE.read_text("utf-8")
