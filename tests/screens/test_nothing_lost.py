"""What a maker entered is there again after anything short of the phone's death: faults B14, B16, B18–B22."""

from collections.abc import Callable

import pytest
from handset import Phone
from maker import Maker
from playwright.sync_api import Page, expect

# A second of the page's own time, and the store is done with what it was given by then.
A_SECOND_LATER = """async () => {
  await new Promise((over) => setTimeout(over, 1000));
  const { transact } = await import('./store/database.js');
  await transact(['jobs', 'steps'], 'readwrite', () => {});
}"""
JOB = "async () => (await import('./store/session.js')).job.value"

# Hands every opened connection to the test, so that it can drop them as the system does.
CONNECTIONS = """
  window.connections = [];
  const open = IDBFactory.prototype.open;
  IDBFactory.prototype.open = function (...about) {
    const opening = open.apply(this, about);
    opening.addEventListener('success', () => connections.push(opening.result));
    return opening;
  };
"""
# A browser that counts how often it is asked to keep what is stored, and always answers the same.
PERSIST = """
  window.asked = 0;
  StorageManager.prototype.persist = async () => {
    window.asked += 1;
    return %s;
  };
"""
# A maker who presses Back at the first sight of a sheet.
BACK_AT_ONCE = """
  new MutationObserver((_, observer) => {
    if (!document.querySelector('dialog[open]')) return;
    observer.disconnect();
    history.back();
  }).observe(document, { attributes: true, childList: true, subtree: true });
"""
# A newer Plumpline: the same app, one version of the database on.
NEWER = """
  const open = IDBFactory.prototype.open;
  IDBFactory.prototype.open = function (name, version) {
    return open.call(this, name, name === 'plumpline' ? version + 1 : version);
  };
"""


def test_a_killed_app_opens_again_at_the_same_job_station_and_field(
    handset: Phone, maker: Maker, maker_at: Callable[[Page], Maker]
) -> None:
    maker.start_job()
    maker.tape("17 5/8 in")
    maker.press("measure.next", next="height")
    maker.tape("14 in")
    maker.page.evaluate(A_SECOND_LATER)
    address = maker.page.url
    page = handset.relaunch()
    expect(page.get_by_role("slider", name="Height")).to_be_visible()
    assert page.url == address
    expect(page.get_by_role("slider", name="Height")).to_have_attribute("aria-valuenow", "224")
    again = maker_at(page)
    again.press("job.back")
    expect(again.row("Width")).to_contain_text("17 5/8 in")


def test_a_killed_app_opens_again_at_the_sheet_that_was_open(
    handset: Phone, maker: Maker, maker_at: Callable[[Page], Maker]
) -> None:
    maker.start_job()
    maker.go_to("cloth")
    maker.touch(maker.row("Cloth width"))
    maker.tape("54 in")
    maker.page.evaluate(A_SECOND_LATER)
    page = handset.relaunch()
    expect(page.get_by_role("dialog", name="Cloth width")).to_be_visible()
    page.go_back()
    expect(page.get_by_role("dialog")).to_have_count(0)
    expect(maker_at(page).row("Cloth width")).to_contain_text("54 in")


def test_back_pressed_as_a_sheet_opens_closes_no_more_than_the_sheet(maker: Maker) -> None:
    """Fault B21."""
    maker.start_job()
    maker.go_to("cloth")
    maker.page.evaluate(f"() => {{ {BACK_AT_ONCE} }}")
    maker.touch(maker.row("Cloth width"))
    expect(maker.page.get_by_role("dialog")).to_have_count(0)
    expect(maker.find("job.cloth")).to_have_attribute("aria-current", "page")
    expect(maker.row("Cloth width")).to_be_visible()


def test_undo_and_redo_go_many_steps_and_outlive_a_restart(
    handset: Phone, maker: Maker, maker_at: Callable[[Page], Maker]
) -> None:
    maker.start_job()
    maker.tape("17 5/8 in")
    maker.press("measure.next", next="height")
    maker.press("measure.square")
    full = maker.page.evaluate(JOB)
    maker.page.evaluate(A_SECOND_LATER)
    maker = maker_at(handset.relaunch())
    expect(maker.find("job.undo")).to_be_visible()
    while maker.find("job.undo").is_visible():
        maker.press("job.undo")
        maker.page.wait_for_timeout(50)
    assert "width" not in maker.page.evaluate(JOB)["cushions"][0]["insert"]
    while maker.find("job.redo").is_visible():
        maker.press("job.redo")
        maker.page.wait_for_timeout(50)
    assert maker.page.evaluate(JOB) == full


def test_pressing_back_twice_in_a_form_keeps_five_measures(maker: Maker) -> None:
    """Fault B21."""
    maker.start_job()
    maker.tape("18 in")
    maker.press("measure.next", next="height")
    maker.tape("16 1/2 in")
    maker.press("job.back")
    maker.go_to("cover")
    for name, text in (("Seam allowance", "5/8 in"), ("Opening", "7 in")):
        maker.touch(maker.row(name))
        maker.tape(text)
        maker.press("job.done")
    maker.touch(maker.row("Smaller than the pad by"))
    maker.tape("3/4 in")
    entered = maker.page.evaluate(JOB)
    maker.page.go_back()
    expect(maker.page.get_by_role("dialog")).to_have_count(0)
    maker.page.go_back()
    expect(maker.find("job.measure")).to_have_attribute("aria-current", "page")
    maker.go_home()
    maker.open_job()
    maker.go_to("cover")
    expect(maker.row("Smaller than the pad by")).to_contain_text("3/4 in")
    assert maker.page.evaluate(JOB) == entered
    assert entered["cushions"][0]["insert"] == {"shape": "rectangle", "width": "18 in", "length": "16 1/2 in"}
    assert entered["cushions"][0]["cover"]["closure"]["opening"] == "7 in"


def test_back_on_the_phone_leads_from_the_field_to_the_station_to_home(maker: Maker) -> None:
    maker.start_job()
    maker.tape("18 in")
    maker.page.go_back()
    expect(maker.row("Width")).to_be_visible()
    maker.page.go_back()
    expect(maker.find("home.newJob")).to_be_visible()


def test_switching_units_twenty_times_changes_no_stored_byte(maker: Maker, dump: Callable[[], str]) -> None:
    """Fault B14."""
    maker.start_job()
    maker.tape("17 5/8 in")
    maker.page.evaluate(A_SECOND_LATER)
    before = dump()
    for _ in range(10):
        maker.switch_unit("cm")
        maker.switch_unit("in")
    maker.page.evaluate(A_SECOND_LATER)
    assert dump() == before


def test_a_dropped_database_connection_is_opened_again(handset: Phone, maker_at: Callable[[Page], Maker]) -> None:
    """Fault B18."""
    handset.page.add_init_script(CONNECTIONS)
    maker = maker_at(handset.open())
    maker.start_job()
    maker.tape("18 in")
    maker.page.evaluate("() => connections.forEach((connection) => connection.close())")
    maker.press("measure.next", next="height")
    maker.tape("12 in")
    maker.page.evaluate(A_SECOND_LATER)
    expect(maker.page.get_by_text("Not saved")).to_have_count(0)
    page = handset.relaunch()
    expect(page.get_by_role("slider", name="Height")).to_have_attribute("aria-valuenow", "192")


def test_what_cannot_be_saved_says_so_stays_and_is_saved_when_it_can_be(handset: Phone, maker: Maker) -> None:
    """Faults B18 and B20: a refused write is told, and nothing on the screen is lost."""
    maker.start_job()
    maker.page.evaluate(
        """() => {
          window.transaction = IDBDatabase.prototype.transaction;
          IDBDatabase.prototype.transaction = () => { throw new DOMException('gone', 'InvalidStateError'); };
        }"""
    )
    maker.tape("18 in")
    expect(maker.page.get_by_role("alert")).to_contain_text("Not saved")
    expect(maker.page.get_by_role("slider", name="Width")).to_have_attribute("aria-valuenow", "288")
    maker.page.evaluate("() => { IDBDatabase.prototype.transaction = window.transaction; }")
    maker.press("home.again")
    expect(maker.page.get_by_text("Not saved")).to_have_count(0)
    maker.page.evaluate(A_SECOND_LATER)
    page = handset.relaunch()
    expect(page.get_by_role("slider", name="Width")).to_have_attribute("aria-valuenow", "288")


def test_a_full_phone_is_told_in_words(maker: Maker) -> None:
    """Fault B20: a write that is broken off for want of room settles, and says why."""
    maker.start_job()
    maker.page.evaluate(
        """() => {
          const put = IDBObjectStore.prototype.put;
          IDBObjectStore.prototype.put = function (...about) {
            if (this.name !== 'jobs') return put.apply(this, about);
            throw new DOMException('full', 'QuotaExceededError');
          };
        }"""
    )
    maker.tape("18 in")
    expect(maker.page.get_by_role("alert")).to_contain_text("no room left")
    expect(maker.page.get_by_role("slider", name="Width")).to_have_attribute("aria-valuenow", "288")


def test_two_tabs_on_one_job_lose_no_field(handset: Phone, maker: Maker, maker_at: Callable[[Page], Maker]) -> None:
    maker.start_job()
    maker.page.evaluate(A_SECOND_LATER)
    assert handset.context
    other = maker_at(handset.context.new_page())
    # The second tab hears nothing of the first: its first write must find out by itself.
    other.page.add_init_script("delete globalThis.BroadcastChannel;")
    other.page.goto(maker.page.url)
    expect(other.page.get_by_role("slider", name="Width")).to_be_visible()
    maker.page.bring_to_front()
    maker.tape("18 in")
    maker.page.evaluate(A_SECOND_LATER)
    other.page.bring_to_front()
    other.page.goto(other.page.url.replace("width", "length"))
    expect(other.page.get_by_role("slider", name="Height")).to_be_visible()
    other.tape("12 in")
    other.page.evaluate(A_SECOND_LATER)
    insert = {"shape": "rectangle", "width": "18 in", "length": "12 in"}
    assert other.page.evaluate(JOB)["cushions"][0]["insert"] == insert


def test_a_change_in_one_tab_is_seen_in_the_other(handset: Phone, maker: Maker) -> None:
    maker.start_job()
    maker.page.evaluate(A_SECOND_LATER)
    assert handset.context
    other = handset.context.new_page()
    other.goto(maker.page.url)
    expect(other.get_by_role("slider", name="Width")).to_be_visible()
    maker.page.bring_to_front()
    maker.tape("18 in")
    expect(other.get_by_role("slider", name="Width")).to_have_attribute("aria-valuenow", "288")


def test_an_open_tab_gives_way_to_a_newer_database(handset: Phone, maker: Maker) -> None:
    """Fault B19, the older tab."""
    assert handset.context
    newer = handset.context.new_page()
    newer.add_init_script(NEWER)
    newer.goto(handset.site.url)
    expect(newer.get_by_role("button", name="New job")).to_be_visible()
    maker.page.bring_to_front()
    expect(maker.page.get_by_text("A newer Plumpline was opened in another tab")).to_be_visible()


def test_a_tab_that_holds_the_database_back_is_named_and_waited_for(handset: Phone) -> None:
    """Fault B19, the newer tab: it says what to close, and goes on by itself."""
    assert handset.context
    holder = handset.context.new_page()
    holder.goto(handset.site.url + "readings.json")
    holder.evaluate(
        """() => new Promise((done) => {
          window.held = indexedDB.open('plumpline');
          held.onsuccess = () => done();
        })"""
    )
    handset.page.bring_to_front()
    handset.page.add_init_script(NEWER)
    page = handset.open()
    expect(page.get_by_text("Close the other tab")).to_be_visible(timeout=2000)
    holder.close()
    handset.forgive("favicon.ico")
    expect(page.get_by_text("Close the other tab")).to_have_count(0)
    expect(page.get_by_text("No jobs yet")).to_be_visible()


@pytest.mark.parametrize("answer", [True, False])
def test_storage_is_asked_to_last_and_its_answer_shown(
    handset: Phone, answer: bool, maker_at: Callable[[Page], Maker]
) -> None:
    """Fault B16."""
    handset.page.add_init_script(PERSIST % str(answer).lower())
    maker = maker_at(handset.open())
    maker.start_job()
    maker.tape("18 in")
    maker.page.evaluate(A_SECOND_LATER)
    assert maker.page.evaluate("() => window.asked") == 1
    maker.go_home()
    maker.press("home.settings")
    words = "the browser has promised" if answer else "has not promised"
    expect(maker.page.get_by_text(words)).to_be_visible()


def test_a_deleted_job_can_be_brought_back(handset: Phone, maker: Maker, maker_at: Callable[[Page], Maker]) -> None:
    maker.start_job()
    maker.tape("18 in")
    maker.go_home()
    name = maker.page.locator(".job-card .job-name").inner_text()
    maker.press("home.more", job=name)
    maker.press("home.remove")
    expect(maker.page.get_by_text("No jobs yet")).to_be_visible()
    maker = maker_at(handset.relaunch())
    maker.press("home.undoDelete", job=name)
    maker.open_job(name)
    expect(maker.row("Width")).to_contain_text("18 in")


def test_a_duplicate_is_a_job_of_its_own(maker: Maker) -> None:
    maker.start_job()
    maker.tape("18 in")
    maker.go_home()
    name = maker.page.locator(".job-card .job-name").inner_text()
    maker.press("home.more", job=name)
    maker.press("home.duplicate")
    copy = maker.page.get_by_role("button", name=f"{name}, copy 1 cover")
    expect(copy).to_be_visible()
    first, second = maker.save_as_file(name), maker.save_as_file(f"{name}, copy")
    assert first.pop("id") != second.pop("id")
    assert second.pop("name") == f"{first.pop('name')}, copy"
    assert first == second
