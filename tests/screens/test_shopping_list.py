"""The shopping list: what the core asks for, ticked off shop by shop with a finger, and ticked after a restart."""

import json
import re
from collections.abc import Callable
from typing import Any

from handset import Phone
from maker import Maker
from playwright.sync_api import Locator, Page, expect
from test_looks import EXAMPLES, bring_in

from plumpline import plan

ANSWER_MS = 60_000
EXAMPLE = "job-size-wanted"


def open_list(maker: Maker, name: str) -> None:
    maker.open_job(name)
    maker.go_to("cut")
    expect(maker.find("cut.shopping")).to_be_visible(timeout=ANSWER_MS)
    maker.press("cut.shopping")


def line(page: Page, text: str) -> Locator:
    return page.get_by_role("checkbox", name=text, exact=True)


def asked() -> list[str]:
    """The lines of the list, as the core gives them."""
    job: dict[str, Any] = json.loads((EXAMPLES / f"{EXAMPLE}.json").read_text("utf-8"))
    return [entry["text"] for shop in plan(job)["shopping"] for entry in shop["lines"]]


def tick(maker: Maker, text: str) -> None:
    maker.touch(maker.page.locator("label").filter(has=line(maker.page, text)))


def test_what_is_ticked_off_stays_so_after_a_restart_and_what_is_not_does_not(
    handset: Phone, maker_at: Callable[[Page], Maker]
) -> None:
    maker = maker_at(handset.open())
    name = bring_in(maker.page, EXAMPLE)
    open_list(maker, name)
    lines = asked()
    assert len(lines) > 5
    for text in lines:
        expect(line(maker.page, text)).not_to_be_checked()
    for text in (lines[0], lines[2], lines[-1]):
        tick(maker, text)
    tick(maker, lines[2])
    expect(line(maker.page, lines[0])).to_be_checked()
    maker.press("job.close")
    expect(maker.page.get_by_text(f"2 of {len(lines)} bought")).to_be_visible()

    maker = maker_at(handset.relaunch())
    expect(maker.page.get_by_text(f"2 of {len(lines)} bought")).to_be_visible(timeout=ANSWER_MS)
    maker.press("cut.shopping")
    ticked = [text for text in lines if line(maker.page, text).is_checked()]
    assert ticked == [lines[0], lines[-1]]


def test_ticking_plans_nothing_anew_and_leaves_the_job_as_it_was(maker: Maker) -> None:
    name = bring_in(maker.page, EXAMPLE)
    open_list(maker, name)
    text = asked()[0]
    tick(maker, text)
    expect(line(maker.page, text)).to_be_checked()
    maker.press("job.close")
    expect(maker.page.get_by_text(re.compile("This was the answer before"))).to_have_count(0)
    maker.go_home()
    saved = maker.save_as_file(name)
    original = json.loads((EXAMPLES / f"{EXAMPLE}.json").read_text("utf-8"))
    del saved["id"], original["id"]
    assert saved == original
