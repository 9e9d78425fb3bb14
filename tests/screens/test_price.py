"""Price: the lines as the core tells them, what is said by touch, and all of it with no signal."""

import json
from collections.abc import Callable
from typing import Any

from handset import Phone, Site
from maker import FieldMaker, Maker
from names import fields
from playwright.sync_api import Page, expect
from questions import offline_state, wait_until
from test_looks import EXAMPLES, bring_in

from plumpline import plan
from plumpline.price import priced

ANSWER_MS = 60_000
EXAMPLE = "job-bay-window"


def document(example: str = EXAMPLE) -> dict[str, Any]:
    job: dict[str, Any] = json.loads((EXAMPLES / f"{example}.json").read_text("utf-8"))
    return job


def price_of(job: dict[str, Any]) -> dict[str, Any]:
    """What the core says of the price, for the lengths of its first good plan."""
    bought = {entry["cloth"]: entry["buy"]["nm"] for entry in plan(job, "quick")["cloths"]}
    return priced(job, bought)


def to_price(maker: Maker, name: str) -> None:
    maker.open_job(name)
    maker.go_to("price")


def say(maker: FieldMaker, job: dict[str, Any], pattern: str, value: Any) -> None:
    """Enters one field of the price, and says the same in the document."""
    entry = next(entry for entry in fields() if entry.pattern == pattern)
    maker.set_field(job, job, entry, value)
    *way, last = pattern.strip("/").split("/")
    place = job
    for part in way:
        place = place.setdefault(part, {})
    place[last] = value


def told(page: Page) -> list[tuple[str, str]]:
    """The lines that are shown, each with its amount."""
    rows = page.locator(".price .row-opens > button:not([aria-label])")
    return [(row.locator(".row-label").inner_text(), row.locator(".row-value").inner_text()) for row in rows.all()]


def expected(price: dict[str, Any]) -> list[tuple[str, str]]:
    in_order = [line for group in ("materials", "making") for line in price["lines"] if line["group"] == group]
    return [(line["text"], line["amount"] or "no price yet") for line in in_order]


def test_a_price_is_made_by_touch_with_no_signal_and_every_line_tells_its_working(
    handset: Phone, site: Site, maker_at: Callable[[Page], Maker]
) -> None:
    first = maker_at(handset.open())
    name = bring_in(first.page, EXAMPLE)
    wait_until(first.page, offline_state, phase="verified")
    site.stop()
    maker = FieldMaker(handset.relaunch())
    to_price(maker, name)
    job = document()
    say(maker, job, "/quote/rates/hour", "36")
    job["quote"]["currency"] = "USD"  # as in the settings, since no cloth has a price
    say(maker, job, "/quote/markup/cloth", "50 %")
    say(maker, job, "/quote/tax/rate", "20 %")
    price = price_of(job)
    total = maker.page.locator(".price .figure")
    expect(total).to_have_attribute("aria-label", f"{price['total']} {price['currency']}", timeout=ANSWER_MS)
    page = maker.page
    assert [amount for _, amount in told(page)] == [amount for _, amount in expected(price)]
    line = next(line for line in price["lines"] if line["code"] == "work:cut")
    maker.touch(page.get_by_role("button", name=f"{line['text']} {line['amount']}", exact=True))
    expect(page.get_by_role("dialog")).to_contain_text(line["working"])
    maker.press("price.change", field="Cut out, minutes")
    expect(page.get_by_role("dialog")).to_contain_text("Cut out, minutes")
    maker.pad("4")
    maker.press("job.done")
    job["quote"]["operations"] = {"cut": {"minutes": "4"}}
    price = price_of(job)
    expect(total).to_have_attribute("aria-label", f"{price['total']} {price['currency']}", timeout=ANSWER_MS)
    maker.go_home()
    assert maker.save_as_file(name)["quote"] == job["quote"]


def test_what_has_no_price_yet_is_settled_from_the_bar(phone: Page) -> None:
    maker = FieldMaker(phone)
    job = document()
    name = bring_in(phone, EXAMPLE)
    to_price(maker, name)
    say(maker, job, "/quote/rates/hour", "36")
    job["quote"]["currency"] = "USD"  # as in the settings, since no cloth has a price
    first, *others = [notice for notice in price_of(job)["notices"] if notice["code"] == "no-price"]
    expect(phone.locator(".action-bar .button-primary")).to_be_visible(timeout=ANSWER_MS)
    expect(phone.get_by_text(first["text"])).to_be_visible()
    expect(phone.get_by_text("no price yet, so the total is without it")).to_have_count(1)
    expect(phone.get_by_text(f"{len(others)} more lines have no price yet.")).to_be_visible()
    maker.touch(phone.locator(".action-bar .button-primary"))
    expect(phone.get_by_role("dialog")).to_be_visible()


def test_rates_that_are_kept_are_those_of_new_jobs(phone: Page) -> None:
    maker = FieldMaker(phone)
    name = bring_in(phone, EXAMPLE)
    to_price(maker, name)
    job = document()
    say(maker, job, "/quote/rates/hour", "42.50")
    say(maker, job, "/quote/extras/rush/on", True)
    maker.press("price.keep")
    maker.go_home()
    maker.start_job()
    maker.press("job.back")
    maker.go_to("price")
    maker.unfold()
    expect(maker.row("An hour of work")).to_have_accessible_name("Change An hour of work: 42.50")
    expect(maker.row("Rush")).to_have_accessible_name("Change Rush: not set")
