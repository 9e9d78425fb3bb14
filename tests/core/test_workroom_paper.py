"""The workroom's sheet on paper: all that the sheet says comes out of the PDF as it was written, on A4 and Letter."""

import base64
import json

import pytest
from jobs import changed, cloth, covers, example, job
from printed import boxes, texts, texts_again

from plumpline import JobError
from plumpline.__main__ import main
from plumpline.ask import ask
from plumpline.papers import sheet
from plumpline.prepared import prepare
from plumpline.workroom import sheet_answer, sheets

CLIENT = "Łucja Ñandú ½ €"


def on_one_line(pages):
    return " ".join(" ".join(pages).split())


def sheets_of(document):
    prepared = prepare(document)
    return [sheet_answer(one) for one in sheets(prepared.covers, prepared.job)]


@pytest.mark.reference
@pytest.mark.parametrize("taken_out", [texts, texts_again])
def test_b33_the_clients_name_comes_out_of_the_paper_as_it_was_written(taken_out):
    document = changed(example("harbour-room"), "/client", CLIENT)
    pages = taken_out(sheet(document))
    assert f"Harbour room · {CLIENT}" in pages[0]


@pytest.mark.reference
def test_everything_on_the_sheet_is_on_the_paper_and_comes_out_again():
    document = example("window-bench")
    told = on_one_line(texts(sheet(document))).replace("- ", "-")
    for one in sheets_of(document):
        assert one["label"] in told
        words = [fact["text"] for fact in one["facts"]] + [mark["text"] for mark in one["marks"]]
        words += [step["text"] for step in one["steps"]] + [step["title"] for step in one["steps"]]
        words += [caution["text"] for caution in one["cautions"]] + [piece["size"] for piece in one["pieces"]]
        assert len(words) > 50
        for text in words:
            assert text.replace("- ", "-") in told


@pytest.mark.reference
def test_each_cover_begins_on_a_page_of_its_own_and_one_can_be_printed_alone():
    document = example("window-bench")
    pages = texts(sheet(document))
    first = [page for page in pages if "Sew in: " in page]
    for name, page in zip(("A · bench", "B · stool", "C · bolster"), first, strict=True):
        assert f"Sew in: C07A2E-{name}" in page
        assert "page 1" in page
    alone = texts(sheet(document, cushion="c2"))
    assert "Sew in: C07A2E-B · stool" in alone[0]
    assert not any("bolster" in page for page in alone)
    assert [page.count(f"page {number}") for number, page in enumerate(alone, start=1)] == [1] * len(alone)


@pytest.mark.reference
def test_near_twins_are_told_apart_on_paper_too_also_when_one_is_printed_alone():
    two = [covers(1, width, "20 in", id=id_, name=name) for id_, name, width in TWINS]
    (page, *_) = texts(sheet(job(two, cloth("54 in")), cushion="c2"))
    assert "Easily taken for another: 1/8 in more in width than AAAAAA-A, left." in page


TWINS = (("c1", "left", "20 in"), ("c2", "right", "20 1/8 in"))


@pytest.mark.reference
@pytest.mark.parametrize(("paper", "box"), [("a4", (595.2756, 841.8898)), ("letter", (612, 792))])
def test_every_page_is_exactly_the_paper(paper, box):
    assert {media for media, _ in boxes(sheet(example("garden-rounds"), paper))} == {(0, 0, *box)}


def test_the_same_job_gives_the_same_bytes():
    document = example("size-wanted")
    assert sheet(document) == sheet(document)
    assert sheet(document) != sheet(document, "letter")


def test_a_job_without_a_cover_to_print_says_so():
    with pytest.raises(JobError, match="no cover to print"):
        sheet(example("harbour-room"), cushion="c9")
    with pytest.raises(ValueError, match="not 'a3'"):
        sheet(example("harbour-room"), "a3")
    with pytest.raises(JobError):
        sheet({})


def test_the_command_writes_the_same_file(tmp_path):
    source, out = tmp_path / "job.json", tmp_path / "out.pdf"
    source.write_text(json.dumps(example("harbour-room")), encoding="utf-8")
    assert main(["sheet", str(source), "--paper", "letter", "--cushion", "c1", "--out", str(out)]) == 0
    assert out.read_bytes() == sheet(example("harbour-room"), "letter")


def test_a_screen_gets_the_file_in_base_64():
    reply = json.loads(ask(json.dumps({"do": "sheet", "job": example("harbour-room"), "paper": "a4"})))
    assert base64.b64decode(reply["ok"]["pdf"]) == sheet(example("harbour-room"))
