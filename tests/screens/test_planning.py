"""A large job on the screen: the first plan at once, shorter ones before the eye, and an end to it.

The job is invented: sixty mixed covers, 120 panels, on a print with a half-drop repeat.
"""

import json
from typing import Any

import pytest
from large_job import COVERS, contrast_backs, large_job
from maker import Maker
from playwright.sync_api import Page, expect
from questions import core_state, wait_until

from plumpline import plan

ANSWER_MS = 60_000
# Keeps every answer that is shown: [effort, the lengths laid].
FOLLOW = """async () => {
  const { latest } = await import('./store/answers.js');
  window.shown = [];
  latest.subscribe((now) => {
    if (now?.answer) window.shown.push([now.effort, now.answer.cloths.map(({ laid }) => laid.nm)]);
  });
}"""
EFFORT = "async () => (await import('./store/answers.js')).latest.value?.effort"
LAID = "async () => (await import('./store/answers.js')).answer.value.cloths.map(({ laid }) => laid.nm)"


def bring_in(page: Page, job: dict[str, Any]) -> None:
    wait_until(page, core_state, whole=True)
    file = {"name": "job.json", "mimeType": "", "buffer": json.dumps(job).encode()}
    page.locator("input[type=file]").set_input_files(file)
    expect(page.get_by_text(f"{job['name']} is here.")).to_be_visible(timeout=ANSWER_MS)


def wait_for_the_end(page: Page) -> None:
    wait_until(page, lambda _: {"effort": page.evaluate(EFFORT)}, effort="full")


def laid(job: dict[str, Any], effort: str = "full") -> list[int]:
    return [cloth["laid"]["nm"] for cloth in plan(job, "quick" if effort == "quick" else "full")["cloths"]]


def test_the_first_plan_is_shown_at_once_and_shorter_ones_until_the_search_is_over(maker: Maker) -> None:
    job = large_job()
    assert sum(cushion["quantity"] for cushion in job["cushions"]) == COVERS
    bring_in(maker.page, job)
    maker.page.evaluate(FOLLOW)
    maker.open_job(job["name"])
    maker.go_to("cut")
    wait_for_the_end(maker.page)
    shown = maker.page.evaluate("() => window.shown")
    lengths = [length for _, (length,) in shown]
    assert shown[0][0] in ("quick", "soFar")
    assert [effort for effort, _ in shown[-2:]] == ["soFar", "full"]
    assert lengths[0] == laid(job, "quick")[0]
    assert lengths == sorted(lengths, reverse=True)
    assert lengths[-1] == laid(job)[0] < lengths[0]
    expect(maker.page.get_by_role("img", name="120 panels")).to_have_count(1)


def test_the_search_is_told_and_can_be_stopped_and_taken_up_again(maker: Maker) -> None:
    job = large_job()
    bring_in(maker.page, job)
    maker.open_job(job["name"])
    maker.go_to("cut")
    search = maker.page.get_by_role("group", name="Search for a shorter plan")
    expect(search).to_contain_text("yd so far", timeout=ANSWER_MS)
    maker.press("cut.stop")
    expect(search).to_contain_text("Stopped.")
    stopped = maker.page.evaluate(LAID)
    assert stopped >= laid(job)
    assert stopped <= laid(job, "quick")
    expect(maker.page.locator(".ask-figure")).to_be_visible()
    maker.page.wait_for_timeout(500)
    assert maker.page.evaluate(LAID) == stopped
    maker.press("cut.goOn")
    wait_for_the_end(maker.page)
    assert maker.page.evaluate(LAID) == laid(job)


def test_a_change_of_the_job_ends_the_search_and_is_answered(maker: Maker) -> None:
    job = large_job()
    bring_in(maker.page, job)
    maker.open_job(job["name"])
    maker.go_to("cut")
    expect(maker.find("cut.stop")).to_be_visible(timeout=ANSWER_MS)
    maker.page.evaluate(
        """async () => {
          const { edit } = await import('./store/session.js');
          const { put } = await import('./store/changes.js');
          edit([put('/cloths/k1/width', '60 in')]);
        }"""
    )
    job["cloths"][0]["width"] = "60 in"
    wait_until(maker.page, lambda page: {"laid": page.evaluate(LAID)}, laid=laid(job))


def test_print_and_contrast_backs_have_a_lay_plan_each(maker: Maker) -> None:
    job = contrast_backs()
    bring_in(maker.page, job)
    maker.open_job(job["name"])
    maker.go_to("cut")
    wait_for_the_end(maker.page)
    print_, contrast = plan(job)["cloths"]
    for cloth in (print_, contrast):
        section = maker.page.get_by_role("region", name=cloth["name"], exact=True)
        expect(section.get_by_role("img", name=cloth["ask"]["text"], exact=True)).to_be_visible()
        expect(section).to_contain_text(cloth["proof"]["text"].split(".")[0])
    drawing = maker.page.locator(".one-plan")
    expect(drawing.get_by_role("img", name=f"Lay plan, {print_['usable_width']['text']} across")).to_be_visible()
    expect(drawing.get_by_role("img", name="60 panels")).to_be_visible()
    maker.press("cut.cloth", cloth=contrast["name"])
    expect(drawing.get_by_role("img", name=f"Lay plan, {contrast['usable_width']['text']} across")).to_be_visible()


@pytest.mark.parametrize("size", [{"width": 360, "height": 740}, {"width": 390, "height": 844}])
def test_stop_lies_under_the_thumb(maker: Maker, size: dict[str, int]) -> None:
    maker.page.set_viewport_size(size)
    bring_in(maker.page, large_job())
    maker.open_job(large_job()["name"])
    maker.go_to("cut")
    expect(maker.find("cut.stop")).to_be_visible(timeout=ANSWER_MS)
    box = maker.find("cut.stop").bounding_box()
    assert box is not None
    assert min(box["width"], box["height"]) >= 48
    assert box["y"] > size["height"] * 2 / 3
    assert box["x"] + box["width"] <= size["width"]
