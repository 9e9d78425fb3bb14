"""The tape under a finger, under keys, and its motion by itself."""

import itertools
from collections.abc import Callable
from typing import Any

from playwright.sync_api import Page, expect

INCH_PX = 84
SIXTEENTH_PX = INCH_PX / 16

Gallery = Callable[[str], Page]


def middle(page: Page) -> tuple[float, float]:
    box = page.locator(".tape-strip").bounding_box()
    assert box is not None
    return box["x"] + box["width"] / 2, box["y"] + box["height"] / 2


def press_keys(page: Page, *names: str) -> None:
    for name in names:
        page.get_by_role("button", name=name, exact=True).click()


def inputs(page: Page) -> list[str]:
    told: list[str] = page.evaluate("() => globalThis.gallery.inputs")
    return told


def at_rest(page: Page) -> str:
    """The stored text once it has stopped changing."""
    last = ""
    for _ in range(60):
        page.wait_for_timeout(250)
        now = page.locator("[data-stored]").inner_text()
        if now == last:
            return now
        last = now
    raise AssertionError("the tape never came to rest")


def tick_places(page: Page, share_down: float) -> list[float]:
    """Middles of the dark marks along one line of the canvas, in CSS pixels."""
    places: list[float] = page.evaluate(
        """(share) => {
          const canvas = document.querySelector('.tape-strip');
          const dpr = canvas.width / canvas.clientWidth;
          const data = canvas.getContext('2d').getImageData(0, Math.round(canvas.height * share), canvas.width, 1).data;
          const dark = (x) => data[4 * x] + data[4 * x + 1] + data[4 * x + 2] < 330;
          const middles = [];
          for (let x = 0; x < canvas.width; x += 1) {
            if (!dark(x)) continue;
            const start = x;
            while (x < canvas.width && dark(x)) x += 1;
            middles.push((start + x) / 2 / dpr);
          }
          return middles;
        }""",
        share_down,
    )
    return places


def test_a_slow_slide_ends_at_seventeen_and_five_eighths(gallery: Gallery, fingers: Any, stored: Any) -> None:
    page = gallery("empty")
    press_keys(page, "1", "7")
    page.wait_for_timeout(700)
    x, y = middle(page)
    fingers(page).slide(x + 60, y, -10 * SIXTEENTH_PX)
    stored(page, "17 5/8 in")
    expect(page.get_by_role("slider")).to_have_attribute("aria-valuetext", "seventeen and five eighths inches")


def test_a_finger_that_lies_beside_the_mark_is_drawn_to_it(gallery: Gallery, fingers: Any, stored: Any) -> None:
    page = gallery("measure")
    x, y = middle(page)
    fingers(page).slide(x, y, -(6 * SIXTEENTH_PX + 0.4 * SIXTEENTH_PX))
    stored(page, "18 in")
    page.wait_for_timeout(700)
    centre = page.locator(".tape-strip").bounding_box()["width"] / 2  # type: ignore[index]
    assert min(abs(place - centre) for place in tick_places(page, 0.29)) < 0.6


def test_a_flick_coasts_on_and_ends_on_a_mark(gallery: Gallery, fingers: Any) -> None:
    page = gallery("measure")
    x, y = middle(page)
    fingers(page).flick(x + 80, y, -120)
    text = at_rest(page)
    rows = page.evaluate("async () => (await (await fetch('../readings.json')).json()).in.rows.map((row) => row[0])")
    moved_px = (rows.index(text) - rows.index("17 5/8 in")) * SIXTEENTH_PX
    assert moved_px > 140, f"a flick of 120 px went {moved_px} px"


def test_without_motion_a_flick_goes_only_as_far_as_the_finger(gallery: Gallery, fingers: Any) -> None:
    page = gallery("measure")
    page.emulate_media(reduced_motion="reduce")
    x, y = middle(page)
    fingers(page).flick(x + 80, y, -16 * SIXTEENTH_PX)
    assert at_rest(page) in {"18 1/2 in", "18 9/16 in", "18 5/8 in"}


def test_however_it_is_flicked_it_rests_exactly_on_a_mark_of_the_tape(gallery: Gallery) -> None:
    page = gallery("measure")
    strays = page.evaluate(
        """async () => {
          const { TapeMotion } = await import('../parts/tape-motion.js');
          let seed = 7;
          const random = () => { seed = (seed * 16807) % 2147483647; return seed / 2147483647; };
          const strays = [];
          const pxPerNm = 84 / 25400000;
          for (const grid of [{ step: 1587500, last: 1920, pxPerNm }, { step: 1000000, last: 3000, pxPerNm }]) {
            const stray = (place) => place % grid.step || place < 0 || place > grid.last * grid.step;
            for (let flick = 0; flick < 300; flick += 1) {
              const motion = new TapeMotion(Math.floor(random() * grid.last) * grid.step, grid);
              let now = 0;
              motion.press(0, now);
              const speed = (random() - 0.5) * 6;
              for (let step = 1; step < 8; step += 1) motion.drag(speed * (now += 16), now);
              motion.release(now, { momentum: true });
              while (motion.moving && now < 20000) motion.frame(now += 16);
              if (motion.moving || stray(motion.place)) strays.push(motion.place);
            }
          }
          return strays;
        }"""
    )
    assert strays == []


def test_the_magnet_holds_a_slow_finger_and_lets_a_fast_one_pass(gallery: Gallery) -> None:
    page = gallery("measure")
    slow, fast, halfway = page.evaluate(
        """async () => {
          const { TapeMotion } = await import('../parts/tape-motion.js');
          const motion = new TapeMotion(0, { step: 1000, last: 100, pxPerNm: 1 });
          return [motion.drawnToMark(10250, 0), motion.drawnToMark(10250, 900), motion.drawnToMark(10500, 0)];
        }"""
    )
    assert 10000 <= slow < 10120
    assert fast == 10250
    assert halfway == 10500


def test_a_touch_without_a_slide_changes_nothing(gallery: Gallery, fingers: Any, stored: Any) -> None:
    page = gallery("measure")
    x, y = middle(page)
    fingers(page).slide(x, y, 0)
    page.wait_for_timeout(500)
    stored(page, "17 5/8 in")
    assert inputs(page) == []


def test_both_scales_are_true_to_each_other(gallery: Gallery) -> None:
    """1 in = 2.54 cm (International yard and pound agreement, 1959), so a centimetre is the inch's px ÷ 2.54."""
    page = gallery("measure")
    page.wait_for_timeout(300)
    halves = [b - a for a, b in itertools.pairwise(tick_places(page, 0.29))]
    centimetres = [b - a for a, b in itertools.pairwise(tick_places(page, 0.83))]
    assert len(halves) >= 7
    assert len(centimetres) >= 10
    assert all(abs(gap - INCH_PX / 2) <= 1 for gap in halves), halves
    assert all(abs(gap - INCH_PX / 2.54) <= 1 for gap in centimetres), centimetres


def test_arrow_keys_move_by_a_sixteenth_and_by_an_inch(gallery: Gallery, stored: Any) -> None:
    page = gallery("measure")
    page.get_by_role("slider").focus()
    for key, text in [
        ("ArrowRight", "17 11/16 in"),
        ("ArrowUp", "17 3/4 in"),
        ("ArrowLeft", "17 11/16 in"),
        ("Shift+ArrowRight", "18 11/16 in"),
        ("PageUp", "19 11/16 in"),
        ("PageDown", "18 11/16 in"),
        ("Home", "0 in"),
        ("ArrowLeft", "0 in"),
        ("End", "120 in"),
        ("ArrowRight", "120 in"),
    ]:
        page.keyboard.press(key)
        stored(page, text)


def test_arrow_keys_move_by_a_millimetre_and_by_a_centimetre(gallery: Gallery, stored: Any) -> None:
    page = gallery("centimetres")
    page.get_by_role("slider").focus()
    steps = [("ArrowRight", "44.9 cm"), ("ArrowRight", "45 cm"), ("PageDown", "44 cm"), ("Shift+ArrowLeft", "43 cm")]
    for key, text in steps:
        page.keyboard.press(key)
        stored(page, text)


def test_the_next_mark_is_counted_from_where_the_tape_lies(gallery: Gallery, stored: Any) -> None:
    """17 5/8 in is 44.7675 cm, so on the centimetre scale the next marks are 44.8 and 44.7 cm."""
    page = gallery("measure")
    press_keys(page, "Unit: inches. Change to centimetres")
    page.get_by_role("slider").focus()
    page.keyboard.press("ArrowRight")
    stored(page, "44.8 cm")


def test_numbers_are_not_said_while_the_tape_moves(gallery: Gallery, fingers: Any) -> None:
    page = gallery("measure")
    page.evaluate(
        """() => {
          globalThis.spoken = [];
          const live = document.querySelector('[aria-live]');
          const watched = { childList: true, characterData: true, subtree: true };
          new MutationObserver(() => globalThis.spoken.push(live.textContent)).observe(live, watched);
        }"""
    )
    x, y = middle(page)
    hand = fingers(page)
    hand.start((x, y), lasting=0.5)
    hand.move(x, y, -8 * SIXTEENTH_PX, steps=30)
    expect(page.locator(".reading .figure-l")).to_have_text("18 1/8 in")
    assert page.evaluate("() => globalThis.spoken") == []
    hand.lift(after=0.3)
    page.wait_for_timeout(1500)
    assert page.evaluate("() => globalThis.spoken") == ["eighteen and an eighth inches, ≈ 46.04 cm"]


def test_the_page_still_scrolls_beside_the_strip(gallery: Gallery) -> None:
    page = gallery("measure")
    assert page.locator(".tape-strip").evaluate("(strip) => getComputedStyle(strip).touchAction") == "none"
    assert page.locator(".keys").evaluate("(keys) => getComputedStyle(keys).touchAction") == "auto"


def test_a_tape_at_rest_is_not_redrawn(gallery: Gallery) -> None:
    page = gallery("measure")
    page.wait_for_timeout(600)
    frames = page.evaluate(
        """async () => {
          let frames = 0;
          const fill = CanvasRenderingContext2D.prototype.clearRect;
          CanvasRenderingContext2D.prototype.clearRect = function (...box) {
            frames += 1;
            return fill.apply(this, box);
          };
          await new Promise((done) => setTimeout(done, 500));
          return frames;
        }"""
    )
    assert frames == 0
