"""Measures how long the screen stands still while sixty covers are planned and drawn. Run by build.py bench frames."""

import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent.parent
sys.path[:0] = [str(ROOT / "tests"), str(ROOT / "tests/screens")]

from conftest import load_build_script  # noqa: E402
from handset import Phone, Site  # noqa: E402
from large_job import large_job  # noqa: E402
from maker import Maker  # noqa: E402
from playwright.sync_api import Page, sync_playwright  # noqa: E402
from test_planning import bring_in, wait_for_the_end  # noqa: E402

RUNS = 5
LONG_MS = 50
BUSY_MS = 2 * LONG_MS
SETTLE_MS = 300
# Every task that holds up the main thread for more than 50 ms is an entry of its own, by the browser's own count.
WATCH = """window.longTasks = [];
new PerformanceObserver((list) => {
  for (const { duration } of list.getEntries()) window.longTasks.push(duration);
}).observe({ type: 'longtask' });"""
HOLD_UP = "(ms) => { setTimeout(() => { const end = performance.now() + ms; while (performance.now() < end); }); }"


def look_at_the_whole_plan(maker: Maker) -> None:
    """From the list of jobs to Cut, until the search is over; then every way of looking at the plan."""
    maker.go_to("cut")
    wait_for_the_end(maker.page)
    maker.press("cut.showPlan")
    maker.choose("Straight cuts")
    for name in ("Closer", "Further away", "Show all"):
        maker.press_named(name)
        maker.page.wait_for_timeout(SETTLE_MS)
    maker.press("cut.why")
    maker.press("job.close")


def held_up(page: Page) -> list[float]:
    """The long tasks since the last question, ms."""
    page.wait_for_timeout(SETTLE_MS)
    found: list[float] = page.evaluate("() => window.longTasks.splice(0)")
    return found


def measure(phone: Phone) -> list[list[float]]:
    """The long tasks of each run; a task made long on purpose is seen first, or nothing below would mean anything."""
    phone.page.add_init_script(WATCH)
    page = phone.open()
    maker = Maker(page)
    runs = []
    for number in range(RUNS):
        job = large_job(f"Function room {number}, invented", f"60f00{number}")
        bring_in(page, job)
        held_up(page)
        page.evaluate(HOLD_UP, BUSY_MS)
        assert max(held_up(page)) > LONG_MS, "the browser does not tell of long tasks"
        maker.open_job(job["name"])
        look_at_the_whole_plan(maker)
        runs.append(held_up(page))
        maker.go_home()
    return runs


def main() -> None:
    script = load_build_script()
    with tempfile.TemporaryDirectory() as name, sync_playwright() as playwright:
        site = Site(script, ROOT / "dist")
        phone = Phone(playwright, Path(name) / "profile", script.find_browser(), site)
        runs = measure(phone)
        phone.close()
        site.stop()
        assert phone.faults == []
    print(f"\nTasks of more than {LONG_MS} ms on the main thread, from the list of jobs to the whole plan and back")
    for number, tasks in enumerate(runs, start=1):
        print(f"run {number}: {', '.join(f'{task:.0f} ms' for task in tasks) or 'none'}")


if __name__ == "__main__":
    main()
