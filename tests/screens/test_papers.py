"""Papers without a signal: the templates are written on the phone and handed over, on the paper that was set."""

import io
import json
from collections.abc import Callable
from pathlib import Path

import pypdf
from handset import Phone, Site
from maker import Maker
from playwright.sync_api import Page, expect
from questions import offline_state, wait_until

EXAMPLE = Path(__file__).resolve().parents[2] / "core/plumpline/schema/examples/job-harbour-room.json"
CLIENT = "Łucja Ñandú ½ €"
LETTER, A4 = (612.0, 792.0), (595.2756, 841.8898)


def bring_in(page: Page, **changes: object) -> None:
    job = json.loads(EXAMPLE.read_text("utf-8")) | changes
    content = json.dumps(job).encode()
    page.locator("input[type=file]").set_input_files({"name": "job.json", "mimeType": "", "buffer": content})
    expect(page.get_by_text(f"{job['name']} is here.")).to_be_visible(timeout=60_000)


def saved_paper(maker: Maker, control: str) -> tuple[str, pypdf.PdfReader]:
    """Presses one of the papers on Cut: the name of the file that came, and the file."""
    with maker.page.expect_download(timeout=60_000) as download:
        maker.press(control)
    return download.value.suggested_filename, pypdf.PdfReader(io.BytesIO(download.value.path().read_bytes()))


def size_of(paper: pypdf.PdfReader) -> set[tuple[float, float]]:
    return {(float(page.mediabox.width), float(page.mediabox.height)) for page in paper.pages}


def test_templates_are_saved_with_no_signal_on_the_paper_that_was_set(
    phone: Page, site: Site, maker_at: Callable[[Page], Maker]
) -> None:
    maker = maker_at(phone)
    bring_in(phone, client=CLIENT)
    wait_until(phone, offline_state, phase="verified")
    site.stop()
    maker.open_job("Harbour room")
    maker.go_to("cut")
    name, paper = saved_paper(maker, "cut.templates")
    assert name == "Harbour room, templates.pdf"
    assert size_of(paper) == {A4}  # the phone of these tests is British
    assert CLIENT in paper.pages[0].extract_text()
    assert "18 × 18 in" in paper.pages[0].extract_text()
    expect(phone.get_by_role("status").filter(has_text=f"{name} is saved.")).to_be_visible()
    maker.go_home()
    maker.press("home.settings")
    maker.choose("US Letter")
    maker.press("job.back")
    maker.open_job("Harbour room")
    maker.go_to("cut")
    assert size_of(saved_paper(maker, "cut.templates")[1]) == {LETTER}


def test_a_job_that_takes_too_many_sheets_says_so(phone: Page, maker_at: Callable[[Page], Maker]) -> None:
    maker = maker_at(phone)
    job = json.loads(EXAMPLE.read_text("utf-8"))
    (seat,), (cloth,) = job["cushions"], job["cloths"]
    seat["insert"] |= {"width": "80 in", "length": "60 in"}
    seats = [{**seat, "quantity": 1, "id": f"c{number}", "name": f"seat {number}"} for number in range(6)]
    bring_in(phone, cushions=seats, cloths=[cloth | {"width": "110 in"}])
    maker.open_job("Harbour room")
    maker.go_to("cut")
    maker.press("cut.templates")
    expect(phone.get_by_text("print those of one cover at a time")).to_be_visible(timeout=60_000)


def test_an_installed_app_shares_the_templates(handset: Phone, maker_at: Callable[[Page], Maker]) -> None:
    """Fault B31: a refusal for want of a touch asks for one."""
    handset.page.add_init_script("""
      Object.defineProperty(navigator, 'standalone', { value: true });
      navigator.canShare = () => true;
      window.shared = [];
      window.refusals = ['NotAllowedError'];
      navigator.share = async ({ files }) => {
        const refusal = refusals.shift();
        if (refusal) throw new DOMException('no', refusal);
        shared.push([files[0].name, files[0].type, (await files[0].text()).slice(0, 5)]);
      };
    """)
    maker = maker_at(handset.open())
    bring_in(maker.page)
    maker.open_job("Harbour room")
    maker.go_to("cut")
    maker.press("cut.templates")
    maker.press("cut.shareNow")
    expect(maker.find("cut.shareNow")).to_have_count(0)
    assert maker.page.evaluate("() => window.shared") == [["Harbour room, templates.pdf", "application/pdf", "%PDF-"]]


def test_the_templates_of_one_cover_alone_are_chosen_by_touch(phone: Page, maker_at: Callable[[Page], Maker]) -> None:
    maker = maker_at(phone)
    job = json.loads(EXAMPLE.read_text("utf-8"))
    (seat,) = job["cushions"]
    bring_in(phone, cushions=[seat, {**seat, "id": "c2", "name": "short sofa"}])
    maker.open_job("Harbour room")
    maker.go_to("cut")
    expect(maker.find("cut.templates")).to_be_visible(timeout=60_000)
    both, both_pages = saved_paper(maker, "cut.templates")
    maker.touch(maker.row("Which covers"))
    maker.choose("short sofa")
    one, one_pages = saved_paper(maker, "cut.templates")
    assert (both, one) == ("Harbour room, templates.pdf", "Harbour room, short sofa, templates.pdf")
    assert len(both_pages.pages) == 2 * len(one_pages.pages)
    assert "short sofa" in one_pages.pages[0].extract_text()


def test_the_workroom_sheet_of_the_cover_that_is_looked_at_is_saved_with_no_signal(
    phone: Page, site: Site, maker_at: Callable[[Page], Maker]
) -> None:
    maker = maker_at(phone)
    job = json.loads(EXAMPLE.read_text("utf-8"))
    (seat,) = job["cushions"]
    bring_in(phone, client=CLIENT, cushions=[seat, {**seat, "id": "c2", "name": "short sofa"}])
    wait_until(phone, offline_state, phase="verified")
    site.stop()
    maker.open_job("Harbour room")
    maker.go_to("make")
    expect(phone.locator(".identity-code")).to_be_visible(timeout=60_000)
    maker.press("make.cushion", cushion="short sofa")
    name, paper = saved_paper(maker, "make.paper")
    assert name == "Harbour room, short sofa, workroom sheet.pdf"
    text = "".join(page.extract_text() for page in paper.pages)
    assert CLIENT in text
    assert "B2F0C1-B · short sofa" in text
    assert "B2F0C1-A · long sofa · 17" not in text
    maker.touch(maker.row("Which covers"))
    maker.choose("All covers")
    name, paper = saved_paper(maker, "make.paper")
    assert name == "Harbour room, workroom sheet.pdf"
    assert "B2F0C1-A · long sofa · 17" in "".join(page.extract_text() for page in paper.pages)
