"""Job files in and out: a bad one changes nothing and says why, a good one comes in whole: faults B23–B25, B31, B35."""

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from handset import Phone
from maker import Maker
from playwright.sync_api import Page, expect
from questions import core_state, wait_until

EXAMPLE = Path(__file__).resolve().parents[2] / "core/plumpline/schema/examples/job-harbour-room.json"
CHECKED_MS = 60_000


def example() -> dict[str, Any]:
    job: dict[str, Any] = json.loads(EXAMPLE.read_text("utf-8"))
    return job


def text(**changes: Any) -> str:
    return json.dumps(example() | changes)


def without(name: str) -> str:
    job = example()
    del job[name]
    return json.dumps(job)


def with_cushion(**changes: Any) -> str:
    job = example()
    job["cushions"][0] |= changes
    return json.dumps(job)


BAD = {
    "empty": ("", "The file is empty"),
    "truncated": (EXAMPLE.read_text("utf-8")[:400], "cannot be read as text"),
    "a page": ("<!doctype html><title>Not found</title>", "cannot be read as text"),
    "a number": ("5", "not a Plumpline job"),
    "null": ("null", "not a Plumpline job"),
    "a list": ("[]", "not a Plumpline job"),
    "another format": (text(format="something-else"), "not a Plumpline job"),
    "a newer version": (text(version=2), "version 2 of the format"),
    "no id": (without("id"), "“id” is missing"),
    "no cushions": (without("cushions"), "“cushions” is missing"),
    "no units": (without("units"), "units"),
    "cushions of a wrong type": (text(cushions="six"), "“cushions” is missing"),
    "a cushion of a wrong type": (text(cushions=[5]), "“cushions 1, id” is missing"),
    "a cushion with no insert": (with_cushion(insert=None), "“cushions 1, insert” is missing"),
    "a quantity of a wrong type": (with_cushion(quantity="many"), "number of covers"),
    "an unknown field": (text(thickness="3 in"), "no field called “thickness”"),
    "a length that is none": (with_cushion(insert={"shape": "rectangle", "width": "wide"}), "wide"),
    "a name of a wrong type": (text(name={"en": "Harbour room"}), "text"),
    "a hostile field": (EXAMPLE.read_text("utf-8").replace('"name"', '"__proto__"', 1), "“__proto__”"),
    "a hostile inner field": (text(client={"constructor": {"x": 1}}), "“constructor”"),
    "nested without end": ('{"a":' * 5000 + "1" + "}" * 5000, ""),
}


def pick(page: Page, content: str, name: str = "job.json") -> None:
    page.locator("input[type=file]").set_input_files({"name": name, "mimeType": "", "buffer": content.encode()})


@pytest.fixture
def home(phone: Page) -> Page:
    """Home, with one job in the store and the core running."""
    wait_until(phone, core_state, phase="ready")
    pick(phone, EXAMPLE.read_text("utf-8"))
    expect(phone.get_by_text("Harbour room is here.")).to_be_visible(timeout=CHECKED_MS)
    return phone


def test_a_bad_file_is_refused_with_the_reason_and_changes_no_stored_byte(home: Page, dump: Callable[[], str]) -> None:
    before = dump()
    for name, (content, reason) in BAD.items():
        pick(home, content, f"{name}.json")
        refusal = home.get_by_role("status").filter(has_text=f"{name}.json was not brought in")
        expect(refusal).to_be_visible(timeout=CHECKED_MS)
        expect(refusal).to_contain_text(reason)
        assert dump() == before, name
    assert home.evaluate("() => ({}).x") is None


def test_a_good_file_comes_in_and_goes_out_the_same(home: Page, maker_at: Callable[[Page], Maker]) -> None:
    assert maker_at(home).save_as_file("Harbour room") == example()


def test_a_half_done_job_comes_in_again(home: Page, maker_at: Callable[[Page], Maker]) -> None:
    """Fault B24: what the app itself saves is never refused."""
    maker = maker_at(home)
    maker.start_job()
    maker.go_to("cloth")
    maker.touch(maker.row("Shrinks along"))
    maker.pad("3")
    maker.press("job.done")
    maker.touch(maker.row("Repeat along"))
    maker.tape("25 in")
    maker.press("job.done")
    maker.press("cloth.addMotif")
    maker.press("job.done")
    maker.press("cloth.addFlaw")
    maker.press("job.done")
    maker.go_home()
    name = home.locator(".job-card .job-name").first.inner_text()
    saved = maker.save_as_file(name)
    saved["id"] = "0f0f0f"
    pick(home, json.dumps(saved))
    expect(home.get_by_text(f"{name} is here.")).to_be_visible(timeout=CHECKED_MS)


def test_names_from_a_file_are_only_ever_text(home: Page) -> None:
    """Fault B35."""
    for number, name in enumerate(("<img src=x onerror=alert(1)>", "constructor", "</script><b>bold</b>")):
        pick(home, text(id=f"00000{number}", name=name))
        expect(home.locator(".job-card .job-name").filter(has_text=name)).to_be_visible(timeout=CHECKED_MS)
    assert home.locator(".job-card img, .job-card b").count() == 0


def test_a_job_that_is_here_already_is_kept_beside_or_replaced_as_asked(
    home: Page, maker_at: Callable[[Page], Maker]
) -> None:
    maker = maker_at(home)
    pick(home, text(name="Harbour room, changed"))
    maker.press("home.keepBoth")
    expect(home.locator(".job-card")).to_have_count(2)
    pick(home, text(name="Harbour room, replaced"))
    maker.press("home.replace")
    expect(home.locator(".job-card").filter(has_text="Harbour room, replaced")).to_be_visible()
    expect(home.locator(".job-card")).to_have_count(2)
    maker.open_job("Harbour room, replaced")
    maker.press("job.undo")
    expect(home.get_by_role("heading", name="Harbour room", exact=True)).to_be_visible()


def test_the_picker_takes_any_file(phone: Page) -> None:
    """Fault B25."""
    assert phone.locator("input[type=file]").get_attribute("accept") is None


SHARE = """
  navigator.standalone = true;
  Object.defineProperty(navigator, 'standalone', { value: true });
  navigator.canShare = () => true;
  window.shared = [];
  window.refusals = [%s];
  navigator.share = async ({ files }) => {
    const refusal = refusals.shift();
    if (refusal) throw new DOMException('no', refusal);
    shared.push([files[0].name, await files[0].text()]);
  };
"""


def test_an_installed_app_hands_a_file_to_the_share_sheet(handset: Phone, maker_at: Callable[[Page], Maker]) -> None:
    """Fault B31: no viewer without a way back; a refusal for want of a touch asks for one."""
    handset.page.add_init_script(SHARE % "'AbortError', 'NotAllowedError'")
    maker = maker_at(handset.open())
    maker.start_job()
    maker.go_home()
    name = maker.page.locator(".job-card .job-name").inner_text()
    maker.press("home.more", job=name)
    maker.press("home.share")
    expect(maker.find("home.share")).to_be_visible()
    maker.press("home.share")
    maker.press("home.shareNow")
    expect(maker.find("home.share")).to_be_visible()
    shared = maker.page.evaluate("() => window.shared")
    assert [file for file, _ in shared] == [f"{name}.plumpline.json"]
    assert json.loads(shared[0][1])["name"] == name
    expect(maker.page.get_by_role("dialog", name=name)).to_be_visible()
