"""If Python cannot start, jobs are still read, changed and saved as files: faults B28 and B29."""

import json
from collections.abc import Callable
from pathlib import Path

from handset import Phone, Site
from maker import Maker
from playwright.sync_api import Page, expect
from questions import core_state, wait_until
from test_main_job import expect_answer, walk_main_job

EXAMPLE = Path(__file__).resolve().parents[2] / "core/plumpline/schema/examples/job-harbour-room.json"
DAMAGED = (200, "application/zip", b"damaged on its way")


def test_the_last_answer_is_shown_and_the_job_saved_though_python_fails(
    handset: Phone, site: Site, maker_at: Callable[[Page], Maker]
) -> None:
    # From the very first page on: an offline copy made by then would bring the undamaged core.
    handset.page.add_init_script("delete Navigator.prototype.serviceWorker;")
    maker = maker_at(handset.open())
    walk_main_job(maker)
    expect_answer(maker.page, "3 1/8 yd")
    before = maker.page.evaluate("async () => (await import('./store/session.js')).job.value")
    site.instead["plumpline.zip"] = DAMAGED
    page = handset.open()
    wait_until(page, core_state, phase="failed")
    again = maker_at(page)
    expect_answer(page, "3 1/8 yd")
    expect(page.get_by_text("The arithmetic could not start")).to_be_visible()
    again.go_home()
    expect(page.get_by_text("The arithmetic could not start")).to_be_visible()
    assert again.save_as_file(before["name"]) == before
    forgive_the_worker(handset)


def test_a_file_comes_in_by_its_form_alone_though_python_fails(handset: Phone, site: Site) -> None:
    site.instead["plumpline.zip"] = DAMAGED
    page = handset.open()
    wait_until(page, core_state, phase="failed")
    page.locator("input[type=file]").set_input_files(EXAMPLE)
    expect(page.get_by_text("only the form of the file was checked")).to_be_visible()
    bad = json.dumps(json.loads(EXAMPLE.read_text("utf-8")) | {"cloths": 5})
    page.locator("input[type=file]").set_input_files({"name": "bad.json", "mimeType": "", "buffer": bad.encode()})
    expect(page.get_by_text("“cloths” is missing")).to_be_visible()
    forgive_the_worker(handset)


def test_measures_are_taken_before_python_has_started(
    handset: Phone, site: Site, maker_at: Callable[[Page], Maker]
) -> None:
    site.instead["plumpline.zip"] = DAMAGED
    maker = maker_at(handset.open())
    maker.start_job()
    maker.tape("17 5/8 in")
    spoken = "seventeen and five eighths inches"
    expect(maker.page.get_by_role("slider", name="Width")).to_have_attribute("aria-valuetext", spoken)
    wait_until(maker.page, core_state, phase="failed")
    maker.press("job.back")
    expect(maker.row("Width")).to_contain_text("17 5/8 in")
    forgive_the_worker(handset)


def forgive_the_worker(handset: Phone) -> None:
    """The damaged file is also what the offline copy refuses; both are meant here."""
    handset.faults[:] = [fault for fault in handset.faults if "plumpline.zip" not in fault and "sw.js" not in fault]
