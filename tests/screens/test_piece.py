"""A piece in hand: measured by touch, is it enough, what does it make, and what would do; with no signal."""

from typing import Any

from handset import Phone, Site
from maker import FieldMaker
from names import fields
from playwright.sync_api import Locator, Page, expect
from questions import offline_state, wait_until

from plumpline import plan

ANSWER_MS = 60_000


def knife_edges(name: str, quantity: int, size: str, seam: str, piece: dict[str, Any]) -> dict[str, Any]:
    """So many square covers, made as large as their pads, from 54 in cloth with nothing lost at its edges."""
    face = {"cloth": "k1"}
    return {
        "format": "plumpline-job",
        "version": 1,
        "id": "abcdef",
        "name": name,
        "units": "in",
        "cushions": [
            {
                "id": "c1",
                "quantity": quantity,
                "kind": "knife-edge",
                "insert": {"shape": "rectangle", "width": size, "length": size},
                "cover": {"smaller_by": "0 in", "seam": seam, "front": face, "back": face},
            }
        ],
        "cloths": [{"id": "k1", "width": "54 in", "selvedge": "0 in", "squaring": "0 in", "piece": piece}],
    }


# Asked in a public forum: four 18 in velvets "out of 1.5 m", allowance 1/4 in; the width was never said. On 54 in cloth
# two panels of 18 1/2 in lie side by side, so four rows are needed: 74 in, 1.88 m.
VELVETS = knife_edges("Four velvets", 4, "18 in", "1/4 in", {"length": "150 cm"})
# A maker's leftover cloth, and a client who sent six pads of 20 in for it: 21 in panels, two side by side on 54 in, so
# three rows of two in 68 in, and of covers three. Pads of 16 in: 17 in panels, three side by side, 4 rows of 17 = 68.
LEFTOVER = knife_edges("Six pads", 6, "20 in", "1/2 in", {"left": "68 in", "right": "69 in"})


def at_cut(maker: FieldMaker, job: dict[str, Any]) -> Locator:
    """Enters a job whole and goes to Cut: the part that tells of the piece in hand."""
    maker.enter(job)
    maker.go_to("cut")
    part = maker.page.get_by_role("region", name="Is this piece enough?", exact=True)
    expect(part).to_be_visible(timeout=ANSWER_MS)
    return part


def without_signal(handset: Phone, site: Site) -> FieldMaker:
    """A maker at the app from a cold start with no signal."""
    wait_until(handset.open(), offline_state, phase="verified")
    site.stop()
    page = handset.relaunch()
    page.emulate_media(reduced_motion="reduce")
    return FieldMaker(page)


def test_a_metre_and_a_half_is_not_enough_for_four_velvets_and_what_would_do_is_one_touch_away(
    handset: Phone, site: Site
) -> None:
    maker = without_signal(handset, site)
    part = at_cut(maker, VELVETS)
    expect(part.get_by_role("status")).to_have_text("No")
    # 74 in - 150 cm = 187.96 - 150 = 37.96 cm = 14.94 in
    expect(part.get_by_role("img", name="≈ 14 15/16 in", exact=True)).to_be_visible()
    expect(part).to_contain_text("It makes 3 of the 4 covers.")
    expect(part.get_by_role("img", name="6 panels laid on it")).to_be_visible()

    # Four panels instead of eight: two rows of 18 1/2 in, 37 in.
    way = part.get_by_role("button", name="Cut the backs from another cloth")
    expect(way).to_be_visible(timeout=ANSWER_MS)
    maker.touch(way)
    sheet = maker.page.get_by_role("dialog")
    expect(sheet.get_by_role("status")).to_have_text("Yes")
    expect(sheet.get_by_role("img", name="4 panels laid on it")).to_be_visible()
    maker.press("job.close")

    maker.touch(part.get_by_role("button", name="Make 3 of the 4 covers"))
    maker.press("cut.takeWay")
    expect(part.get_by_role("status")).to_have_text("Yes", timeout=ANSWER_MS)
    expect(part).to_contain_text("It makes every cover.")
    maker.press("job.undo")
    expect(part.get_by_role("status")).to_have_text("No", timeout=ANSWER_MS)

    # All that the core offers stands there; another cloth is a new one of the job, which is asked for next.
    for one in plan(VELVETS)["cloths"][0]["piece"]["ways_out"]:
        expect(part.get_by_role("button", name=one["text"])).to_be_visible(timeout=ANSWER_MS)
    maker.touch(way)
    maker.press("cut.takeWay")
    expect(maker.page.get_by_role("button", name="Settle: second cloth, Cloth width")).to_be_visible(timeout=ANSWER_MS)


def test_the_largest_pad_that_a_leftover_piece_takes_is_told_before_anything_is_bought(
    handset: Phone, site: Site
) -> None:
    maker = without_signal(handset, site)
    part = at_cut(maker, LEFTOVER)
    expect(part).to_contain_text("It makes 3 of the 6 covers.")
    way = part.get_by_role("button", name="The largest pad this piece takes is 16 in")
    expect(way).to_be_visible(timeout=ANSWER_MS)
    maker.touch(way)
    expect(maker.page.get_by_role("img", name="12 panels laid on it")).to_be_visible()
    maker.press("cut.takeWay")
    expect(part.get_by_role("status")).to_have_text("Yes", timeout=ANSWER_MS)
    expect(part).to_contain_text("nothing is left")


def test_the_piece_is_drawn_with_the_places_kept_clear_and_edges_that_cannot_be_true_are_said_at_the_edge(
    phone: Page,
) -> None:
    phone.emulate_media(reduced_motion="reduce")
    maker = FieldMaker(phone)
    flaws = [{"corner": "end-right", "width": "12 in", "length": "10 in"},
             {"across": "20 in", "width": "1 in", "length": "all"}]  # fmt: skip
    job = VELVETS | {"cloths": [VELVETS["cloths"][0] | {"piece": {"left": "80 in", "flaws": flaws}}]}
    maker.enter(job)
    maker.go_to("cloth")
    drawing = maker.page.get_by_role("img", name="The piece in hand, 54 in across, 80 in along: 0 panels laid on it")
    expect(drawing).to_be_visible(timeout=ANSWER_MS)
    expect(drawing.locator(".plan-flaw")).to_have_count(2)

    by_pattern = {entry.pattern: entry for entry in fields()}
    # An end 20 in short at the right leaves 80 - 20 = 60 in of the right edge; 10 in was read: 50 in is left over.
    for name, value in (("right", "10 in"), ("slant/start", "0 in"), ("slant/end", "-20 in")):
        maker.set_field(job, job, by_pattern[f"/cloths/*/piece/{name}"], value)
    expect(maker.page.get_by_text("50 in is left over")).to_be_visible(timeout=ANSWER_MS)
