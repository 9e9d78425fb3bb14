"""A test square is entered by the tape on the cloth's station, and what it lost is shown there and in "How so?"."""

from maker import FieldMaker
from playwright.sync_api import Page, expect
from test_looks import bring_in

ANSWER_MS = 120_000
MARKED = "Marked before the wash"


def at_the_cloth(phone: Page) -> FieldMaker:
    maker = FieldMaker(phone)
    maker.open_job(bring_in(phone, "job-harbour-room"))
    maker.go_to("cloth")
    return maker


def enter(maker: FieldMaker, name: str, size: str) -> None:
    maker.unfold()
    maker.touch(maker.row(name))
    maker.tape(size)
    maker.press("job.done")


def test_a_washed_square_is_entered_by_touch_and_told_in_percent(phone: Page) -> None:
    """20 cm that became 19.2 along and 19.6 across are 4 % and 2 % (the worked example of a trade glossary)."""
    maker = at_the_cloth(phone)
    for name, size in ((MARKED, "20 cm"), ("Along, after the wash", "19.2 cm"), ("Across, after the wash", "19.6 cm")):
        enter(maker, name, size)
    maker.touch(maker.row("Washed"))
    maker.choose("Before cutting")
    maker.press("job.done")
    for way, lost in (("along", 4), ("across", 2)):
        told = f"Change Shrinks {way}: {lost} %, by the test square"
        expect(maker.row(f"Shrinks {way}")).to_have_accessible_name(told, timeout=ANSWER_MS)
    maker.go_to("cut")
    maker.press("cut.why")
    expect(phone.get_by_text("20 cm became 19.2 cm along: 4 %.")).to_be_visible()


def test_a_square_that_grew_is_said_at_its_measure(phone: Page) -> None:
    maker = at_the_cloth(phone)
    for name, size in ((MARKED, "20 cm"), ("Along, after the wash", "20.2 cm")):
        enter(maker, name, size)
    expect(maker.row("Along, after the wash")).to_have_accessible_description(
        "20 cm became 20.2 cm along: the square grew. Measure it again, pressed flat and dry; cloth that does grow is "
        "planned without this measure.",
        timeout=ANSWER_MS,
    )
