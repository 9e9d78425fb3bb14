"""The lay plan under fingers, keys and buttons; drawings true to their measures."""

import json
from collections.abc import Callable
from typing import Any

import pytest
from playwright.sync_api import Page, expect

Gallery = Callable[[str], Page]
Box = list[float]


def view(page: Page) -> Box:
    text = page.locator(".plan-drawing").get_attribute("viewBox")
    assert text is not None
    return [float(number) for number in text.split()]


def plan_middle(page: Page) -> tuple[float, float]:
    page.locator(".plan-drawing").scroll_into_view_if_needed()
    box = page.locator(".plan-drawing").bounding_box()
    assert box is not None
    return box["x"] + box["width"] / 2, box["y"] + box["height"] / 2


def test_two_fingers_come_closer_and_fit_shows_all_again(gallery: Gallery, fingers: Any) -> None:
    page = gallery("plan")
    whole = view(page)
    x, y = plan_middle(page)
    fingers(page).pinch(x, y, 80, 240)
    near = view(page)
    assert whole[2] / near[2] == pytest.approx(3, rel=0.1)
    assert near[2] / near[3] == pytest.approx(whole[2] / whole[3])
    page.get_by_role("button", name="Show all").click()
    assert view(page) == whole


def test_the_point_between_the_fingers_stays_where_it_is(gallery: Gallery, fingers: Any) -> None:
    page = gallery("plan")
    x, y = plan_middle(page)
    x += 60
    under = """([x, y]) => {
      const matrix = document.querySelector('.plan-drawing').getScreenCTM().inverse();
      const point = new DOMPoint(x, y).matrixTransform(matrix);
      return [point.x, point.y];
    }"""
    before = page.evaluate(under, [x, y])
    fingers(page).pinch(x, y, 80, 200)
    after = page.evaluate(under, [x, y])
    # 20 mm of cloth are a finger's width at most once it is this near
    assert after == pytest.approx(before, abs=20)


def test_one_finger_moves_a_plan_that_is_near_and_never_off_the_cloth(gallery: Gallery, fingers: Any) -> None:
    page = gallery("plan")
    x, y = plan_middle(page)
    whole = view(page)
    fingers(page).slide(x, y, -100)
    assert view(page) == whole
    for _ in range(2):
        page.get_by_role("button", name="Closer").click()
    before = view(page)
    fingers(page).slide(x, y, -100)
    after = view(page)
    wide = page.locator(".plan-drawing").evaluate("(drawing) => drawing.clientWidth")
    assert after[0] - before[0] == pytest.approx(100 * before[2] / wide, rel=0.02)
    for _ in range(4):
        fingers(page).slide(x + 100, y, -200)
    assert view(page)[0] + view(page)[2] <= whole[0] + whole[2] + 1e-6


def test_keys_move_and_zoom_the_plan(gallery: Gallery) -> None:
    page = gallery("plan")
    whole = view(page)
    page.locator(".plan-frame").focus()
    page.keyboard.press("+")
    page.keyboard.press("+")
    near = view(page)
    assert near[2] < whole[2]
    page.keyboard.press("ArrowLeft")
    page.keyboard.press("ArrowUp")
    moved = view(page)
    assert moved[0] < near[0]
    assert moved[1] < near[1]
    page.keyboard.press("-")
    assert view(page)[2] > moved[2]
    page.keyboard.press("0")
    assert view(page) == whole


@pytest.mark.parametrize("plan", ["plain", "narrow", "printed"])
def test_every_panel_lies_on_the_cloth_to_scale_and_is_named(gallery: Gallery, plan: str) -> None:
    page = gallery(f"plan&plan={plan}")
    cloth, *panels = page.evaluate(
        """() => [...document.querySelectorAll('.plan-cloth, .plan-panel')].map((rect) =>
          ['x', 'y', 'width', 'height'].map((name) => Number(rect.getAttribute(name))))"""
    )
    assert len(panels) == 12
    for x, y, width, height in panels:
        assert width == height == pytest.approx(457.2)
        assert cloth[0] <= x
        assert x + width <= cloth[0] + cloth[2] + 1e-6
        assert cloth[1] <= y
        assert y + height <= cloth[1] + cloth[3] + 1e-6
    names = page.locator(".plan-name").all_text_contents()
    assert len(names) == 12
    texts = page.locator(".plan-drawing text")
    heights = texts.evaluate_all("(texts) => texts.map((text) => parseFloat(text.getAttribute('font-size')))")
    px = view(page)[2] / page.locator(".plan-drawing").evaluate("(drawing) => drawing.clientWidth")
    assert min(heights) / px >= 10


def test_a_round_panel_is_drawn_round_and_named_like_any_other(gallery: Gallery) -> None:
    """A circle fills π/4 of the square around it."""
    page = gallery("plan&plan=round")
    filled = page.locator(".plan-panel").evaluate_all(
        """(all) => all.map((one) => {
          const box = one.getBBox(), points = 40;
          let inside = 0;
          for (let i = 0; i < points; i++) for (let j = 0; j < points; j++) {
            const point = new DOMPoint(box.x + (i + 0.5) * box.width / points, box.y + (j + 0.5) * box.height / points);
            if (one.isPointInFill(point)) inside += 1;
          }
          return inside / points ** 2;
        })"""
    )
    assert filled == pytest.approx([3.14159 / 4] * 6 + [1], abs=0.02)
    names = page.locator(".plan-name").all_text_contents()
    assert names == ["1", "1", "2", "2", "3", "3", "1 boxing"]


def test_the_cut_end_lies_nearest_to_the_maker(gallery: Gallery) -> None:
    page = gallery("plan")
    cut_end = page.get_by_text("cut end").bounding_box()
    first = page.locator(".plan-panel").first.bounding_box()
    last = page.locator(".plan-panel").last.bounding_box()
    assert cut_end["y"] > first["y"] > last["y"]  # type: ignore[index]


def test_arrows_point_to_the_tops_of_the_panels(gallery: Gallery) -> None:
    page = gallery("plan&plan=printed")
    places = page.locator(".plan-arrow").evaluate_all("(all) => all.map((one) => one.getAttribute('transform'))")
    assert [place.split("rotate")[1] for place in places] == ["(180)", "(270)"] * 6


def test_cuts_are_numbered_in_order_and_no_marker_hides_another(gallery: Gallery) -> None:
    page = gallery("plan")
    assert page.locator(".plan-cut text").all_text_contents() == [str(number) for number in range(1, 13)]
    markers = page.locator(".plan-cut circle")
    circles = markers.evaluate_all("(all) => all.map((one) => one.getBoundingClientRect().toJSON())")
    for place, one in enumerate(circles):
        for other in circles[place + 1 :]:
            apart_x = abs(one["x"] + one["width"] / 2 - other["x"] - other["width"] / 2)
            apart_y = abs(one["y"] + one["height"] / 2 - other["y"] - other["height"] / 2)
            needed = (one["width"] + other["width"]) / 2 - 2.5
            assert (apart_x**2 + apart_y**2) ** 0.5 >= needed, json.dumps([one, other])


def test_what_is_left_over_is_named_with_its_size(gallery: Gallery) -> None:
    page = gallery("plan&plan=narrow")
    expect(page.locator(".plan-offcut text")).to_have_text("left: 17 × 108 in")


def test_the_drawn_cushion_has_its_true_proportion(gallery: Gallery) -> None:
    page = gallery("drawings")
    faces = page.locator(".drawing-face").evaluate_all(
        "(all) => all.map((face) => face.getBBox()).map((box) => box.width / box.height)"
    )
    assert faces == pytest.approx([1, 18 / 12, 1, 60 / 15], rel=0.01)
    expect(page.get_by_role("img", name="Drawing of the cushion: 18 in wide, 12 1/8 in high")).to_be_visible()
    expect(page.get_by_text("opening 8 in")).to_be_visible()


BOX_OF = """(all) => all.map((one) => {
  const parts = [...one.querySelectorAll('.drawing-face, .drawing-boxing')].map((part) => part.getBBox());
  const edge = (pick, of) => pick(...parts.map(of));
  const x = edge(Math.min, (box) => box.x), y = edge(Math.min, (box) => box.y);
  return [edge(Math.max, (box) => box.x + box.width) - x, edge(Math.max, (box) => box.y + box.height) - y];
})"""
# What is seen of a depth: lengths that run back are drawn at two fifths, to the right and up; a round face likewise;
# the end of a bolster at 34 hundredths of its diameter.
BACK, END = 0.4, 0.34
SEEN = {
    "knife-edge rectangle": (20, 16),
    "knife-edge round": (16, 16),
    "boxed rectangle": (24 + 22 * BACK, 4 + 22 * BACK),
    "bench": (60 + 18 * BACK, 3 + 18 * BACK),
    "cube": (18 + 18 * BACK, 18 + 18 * BACK),
    "boxed round": (16, 3 + 16 * BACK),
    "bolster": (20 + 8 * END, 8),
}


def test_every_kind_is_drawn_in_its_true_proportion(gallery: Gallery) -> None:
    boxes = gallery("kinds").locator(".cushion-drawing").evaluate_all(BOX_OF)
    ratios = [width / height for width, height in boxes[: len(SEEN)]]
    assert ratios == pytest.approx([width / height for width, height in SEEN.values()], rel=0.01)


def test_every_kind_is_named_by_its_measures(gallery: Gallery) -> None:
    page = gallery("kinds")
    for name in (
        "Drawing of the cushion: 20 in wide, 16 in high",
        "Drawing of the round cushion: 16 in across",
        "Drawing of the boxed cushion: 24 in wide, 22 in deep, 4 in thick",
        "Drawing of the round boxed cushion: 16 in across, 3 in thick",
        "Drawing of the bolster: 8 in across, 20 in long",
    ):
        expect(page.get_by_role("img", name=name)).to_be_visible()
    expect(page.get_by_role("img", name="Drawing of a cushion that is not measured yet")).to_have_count(3)


def test_a_cushion_with_a_measure_missing_is_dashed_and_no_other(gallery: Gallery) -> None:
    dashed = (
        gallery("kinds")
        .locator(".cushion-drawing")
        .evaluate_all("(all) => all.map((one) => one.querySelectorAll('.drawing-unsure').length > 0)")
    )
    assert dashed == [False] * len(SEEN) + [True] * 3 + [False]


def test_a_measure_is_written_at_its_own_line_and_the_one_being_taken_stands_out(gallery: Gallery) -> None:
    drawing = gallery("kinds").get_by_role("img", name="24 in wide, 22 in deep")
    assert sorted(drawing.locator(".dimension text").all_text_contents()) == ["22 in", "24 in", "4 in"]
    expect(drawing.locator(".dimension-focused")).to_have_text("24 in")


@pytest.mark.parametrize(("closing", "drawn"), [("zip", ".drawing-zip-slider"), ("envelope", ".drawing-flap")])
def test_how_a_cover_closes_is_drawn_on_every_kind(gallery: Gallery, closing: str, drawn: str) -> None:
    page = gallery(f"kinds&edge=piped&closing={closing}")
    drawings = page.locator(".cushion-drawing").filter(has=page.locator("[data-closing]"))
    expect(drawings.locator(drawn)).to_have_count(len(SEEN) + 2)
    both_rims = page.get_by_role("img", name="Drawing of the round boxed cushion").locator(".drawing-cord")
    expect(both_rims).to_have_count(2)


def test_a_frill_stands_out_behind_every_kind_and_a_flange_round_the_flat_ones(gallery: Gallery) -> None:
    page = gallery("kinds&edge=frilled")
    drawings = page.locator(".cushion-drawing").filter(has=page.locator(".drawing-frill"))
    assert drawings.count() >= len(SEEN)
    page = gallery("kinds&edge=flanged")
    flat = page.locator(".cushion-drawing").filter(has=page.locator(".drawing-flange"))
    assert 0 < flat.count() < page.locator(".cushion-drawing").count()
    whole, face = flat.first.evaluate(
        "(one) => ['.drawing-flange', '.drawing-face'].map((part) => one.querySelector(part).getBBox().width)"
    )
    assert whole > face > 0


def test_the_flange_of_another_outline_stands_out_to_proportion(gallery: Gallery) -> None:
    """Where it is not said it is a tenth of the shorter side: 2.4 in of a bay of 40 by 24 in."""
    widths = []
    for edge in ("piped", "flanged"):
        bay = gallery(f"kinds&edge={edge}").get_by_role("img", name="Drawing of the shaped cushion: 4 sides")
        widths.append(bay.locator(".drawing-face").evaluate("(face) => face.getBBox().width"))
    assert widths[1] < widths[0]
    edge, ground = (
        float(bay.locator(f".drawing-flange-{part}").get_attribute("stroke-width") or 0) for part in ("edge", "ground")
    )
    assert (edge + ground) / 4 == pytest.approx(widths[1] * 2.4 / 40, rel=0.01)


def test_a_zip_is_drawn_as_long_as_it_is(gallery: Gallery) -> None:
    """10 in of a side of 20 in: half of it."""
    drawing = gallery("kinds&closing=zip").get_by_role("img", name="20 in wide, 16 in high")
    zip_width, face_width = drawing.evaluate(
        "(one) => ['.drawing-zip-teeth', '.drawing-face'].map((part) => one.querySelector(part).getBBox().width)"
    )
    assert zip_width / face_width == pytest.approx(10 / 20, rel=0.01)
