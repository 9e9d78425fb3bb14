"""Full-size templates: printed at 100 % they measure what they say, on A4 and on Letter, whatever the size."""

import base64
import json
import os
import subprocess
import sys

import pytest
from jobs import changed, cloth, covers, example, job
from printed import boxes, inked, printer_scaling, texts, texts_again

from plumpline import JobError
from plumpline.__main__ import main
from plumpline.ask import ask
from plumpline.papers import templates
from plumpline.prepared import prepare

IN = 25_400_000
MM = 1_000_000
CLIENT = "Łucja Ñandú ½ €"
# Where the frame of a sheet begins, and the sheet with it, from the left and from below.
FRAME = 23 * MM
BARS = 12 * MM


def one_cover(width="18 in", length="18 in", **more):
    return job(covers(2, width, length, seam="1/2 in", smaller_by="1 in", **more), cloth("54 in"), client=CLIENT)


def tapered(**corners):
    return changed(one_cover(), "/cushions/0/cover/corners", {"kind": "tapered", **corners})


def runs(darkness, pixel):
    """The lengths of the dark runs of a line of pixels, in nm."""
    found, length = [], 0.0
    for dark in [*darkness, 0.0]:
        if dark:
            length += dark * pixel
        elif length:
            found.append(length)
            length = 0.0
    return found


@pytest.mark.reference
@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_b32_every_sheet_measures_2_in_and_5_cm_both_ways(paper):
    written = templates(tapered(), paper)
    for number in range(len(texts(written))):
        page = inked(written, number)
        for measured in (
            runs(page.across((0, BARS), 205 * MM), page.pixel_width),
            runs(page.up((BARS, 0), 250 * MM), page.pixel_height),
        ):
            two_inches, five_centimetres = measured
            assert abs(two_inches - 2 * IN) < 2 * IN / 1000
            assert abs(five_centimetres - 50 * MM) < 50 * MM / 1000


@pytest.mark.reference
@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_a_side_of_18_in_measures_18_in_across_the_joined_sheets(paper):
    """Sheet by sheet, from the edge of the piece to the join, from join to join, and on to the other edge."""
    written = templates(one_cover(), paper)  # 18 in less 1 in, and two seams of 1/2 in
    lines = []
    for number in (1, 2, 3):
        page = inked(written, number)
        lines.append(page.upright_lines(FRAME - 2 * MM, 209 * MM, FRAME + 10 * MM, FRAME + 100 * MM))
    (frame_a, edge_a, _, join_a, _), (frame_b, *_, join_b, _), (frame_c, _, edge_c, _) = lines
    assert abs(frame_a - FRAME) < MM / 10
    side = (join_a - edge_a) + (join_b - frame_b) + (edge_c - frame_c)
    assert abs(side - 18 * IN) < 18 * IN / 1000


@pytest.mark.reference
@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_a_height_of_18_in_measures_18_in_over_the_joined_sheets(paper):
    written = templates(one_cover(), paper)
    lines = []
    for number in (1, 4):
        page = inked(written, number)
        lines.append(page.level_lines(FRAME - 2 * MM, 290 * MM, FRAME + 60 * MM, FRAME + 120 * MM))
    (frame_a, *_, edge_a, _), (_, edge_b, _, join_b, _) = lines
    assert abs((edge_a - frame_a) + (join_b - edge_b) - 18 * IN) < 18 * IN / 1000


@pytest.mark.reference
@pytest.mark.parametrize("taken_out", [texts, texts_again])
def test_b33_the_words_on_a_template_come_out_as_they_were_written(taken_out):
    pages = taken_out(templates(tapered()))
    assert CLIENT in pages[0]
    assert "Cut 2 pieces of each, 18 × 18 in, from cloth 1." in pages[0]
    assert "Seam 1/2 in, as drawn." in pages[0]
    assert "Leave 8 in open" in pages[5]
    assert "cushion 1, front and back" in pages[1]
    for page in pages[1:7]:
        assert "of 6 · print at 100 %" in page
    assert [word for page in pages[1:7] for word in page.split() if word in ("A1", "A2", "A3", "B1", "B2", "B3")] == [
        "A1", "A2", "A3", "B1", "B2", "B3",
    ]  # fmt: skip


@pytest.mark.reference
@pytest.mark.parametrize(("paper", "box"), [("a4", (595.2756, 841.8898)), ("letter", (612, 792))])
def test_every_sheet_is_exactly_the_paper_and_asks_not_to_be_scaled(paper, box):
    written = templates(example("harbour-room"), paper)
    assert {(media, trim) for media, trim in boxes(written)} == {((0, 0, *box), (0, 0, *box))}
    assert printer_scaling(written) == "/None"


def sheets(written):
    return written.count(b"/Type /Page/")


def test_a_piece_that_fits_one_sheet_takes_one_and_says_on_it_what_it_is():
    small = job(covers(1, "5 in", "5 in"), cloth("54 in"))
    assert sheets(templates(small)) == 1


@pytest.mark.reference
def test_one_sheet_says_on_itself_what_it_is():
    (page,) = texts(templates(job(covers(1, "5 in", "5 in"), cloth("54 in"), name="Harbour room")))
    assert "cushion 1, front and back\nHarbour room\nCut 1 piece of each, 6 × 6 in, from cloth 1." in page
    assert "row A, column 1 · sheet 1 of 1 · print at 100 %" in page


def test_b32_too_large_a_piece_takes_more_sheets_and_is_never_smaller():
    assert sheets(templates(one_cover())) == 1 + 6
    # A sheet of A4 shows 177 by 264 mm of a piece, the next one 167 or 254 mm further on, and 4 mm are left around it.
    assert sheets(templates(one_cover("80 in", "30 in"))) == 1 + 13 * 3


def test_pieces_that_are_not_alike_have_a_template_each():
    shrinking = {"shrinkage": {"along": "0.05"}, "wash": "after-making"}
    two = job(covers(1, "5 in", "5 in"), [cloth("54 in"), cloth("54 in", id="k2", **shrinking)])
    two = changed(two, "/cushions/0/cover/back/cloth", "k2")
    assert sheets(templates(two)) == 2


def test_a_tapered_cover_has_a_template_of_its_corner_too():
    assert sheets(templates(tapered(depth="1/2 in", run="1/4"))) == 1 + 6 + 1


def test_a_corner_too_large_for_one_sheet_is_tiled_like_any_other_piece():
    wide = changed(tapered(depth="1/2 in", run="1/2"), "/cushions/0/insert/width", "30 in")
    # 30 in are five sheets across; half of it and an inch, 16 in, are three, and 9 in + 1 in are one sheet high
    assert sheets(templates(wide)) == (1 + 5 * 2) + (1 + 3)


@pytest.mark.reference
def test_a_corner_that_differs_along_and_up_is_turned_over_for_every_other_corner():
    along = changed(tapered(), "/cushions/0/insert/length", "13 in")
    assert "turned over for every other one" in texts(templates(along))[-1]
    assert "turned over" not in texts(templates(tapered()))[-1]


@pytest.mark.reference
def test_a_long_name_is_shortened_at_the_foot_and_whole_at_the_head():
    long = "the window seat in the little room behind the harbour office, the one with the round end and the old foam"
    page = texts(templates(one_cover(name=long)))[0]
    assert page.replace("\n", " ").count(f"{long}, front and back") == 1
    assert "…" in page


def test_one_cover_can_be_printed_alone():
    two = job([covers(1, "5 in", "5 in"), covers(1, "4 in", "4 in", id="c2")], cloth("54 in"))
    assert sheets(templates(two)) == 2
    assert sheets(templates(two, cushion="c2")) == 1
    with pytest.raises(JobError, match="no cover to print"):
        templates(two, cushion="c3")


def test_the_seam_line_lies_within_each_edge_by_its_own_allowance():
    uneven = changed(one_cover(), "/cushions/0/cover/side_seam", "1/4 in")
    uneven = changed(uneven, "/cushions/0/cover/closure", {"kind": "hand-sewn", "seam": "3/4 in"})
    (piece, _) = prepare(uneven).covers[0].pieces
    left, right, low, high = IN // 4, piece.width - IN // 4, 3 * IN // 4, piece.length - IN // 2
    assert piece.seam_line == ((left, low), (right, low), (right, high), (left, high))


@pytest.mark.reference
def test_the_seam_line_of_a_tapered_panel_keeps_its_distance_all_round():
    from shapely import Polygon

    for piece in prepare(tapered(depth="1/2 in", run="5 in")).covers[0].pieces:
        kept = Polygon(piece.outline).buffer(-IN / 2, join_style="mitre", mitre_limit=20)
        assert kept.symmetric_difference(Polygon(piece.seam_line)).area < MM * MM / 100


@pytest.mark.reference
def test_every_mark_of_a_round_cover_in_two_backs_stands_on_its_edge():
    from shapely import Point, Polygon

    pieces = prepare(example("garden-rounds")).covers[0].pieces
    assert {piece.part for piece in pieces} == {"front", "back-1", "back-2"}
    for piece in pieces:
        edge = Polygon(piece.outline).exterior
        for mark in piece.marks:
            assert all(edge.distance(Point(point)) < MM / 5 for point in mark.points), (piece.part, mark)


@pytest.mark.reference
def test_a_round_piece_is_cut_true_to_a_tenth_of_a_millimetre():
    from shapely import Point, Polygon

    disc = prepare(example("garden-rounds")).covers[0].pieces[0]
    radius = disc.width / 2
    drawn, true = Polygon(disc.outline), Point(radius, radius).buffer(radius, quad_segs=1000)
    assert drawn.exterior.hausdorff_distance(true.exterior) < MM / 10 + MM / 100


def test_a_job_with_problems_says_them():
    with pytest.raises(JobError) as caught:
        templates({})
    assert caught.value.problems
    with pytest.raises(JobError, match="Measure the width"):
        templates(changed(one_cover(), "/cushions/0/insert/width", None))


def test_more_sheets_than_anybody_prints_are_not_made():
    many = job([covers(1, "80 in", "60 in", id=f"c{number}") for number in range(8)], cloth("90 in"))
    with pytest.raises(JobError, match=r"take \d+ sheets: print those of one cover at a time"):
        templates(many)


def test_a_paper_there_is_not_is_refused():
    with pytest.raises(ValueError, match="paper is one of a4, letter, not 'a3'"):
        templates(one_cover(), "a3")


def test_the_same_job_gives_the_same_bytes():
    assert templates(tapered()) == templates(tapered())
    assert templates(tapered()) != templates(tapered(), "letter")


@pytest.mark.reference
def test_the_command_writes_the_same_file_under_every_hash_seed(tmp_path):
    source = tmp_path / "job.json"
    source.write_text(json.dumps(tapered()), encoding="utf-8")
    for seed in ("0", "4294967295"):
        out = tmp_path / f"{seed}.pdf"
        words = [sys.executable, "-m", "plumpline", "templates", str(source), "--paper", "letter", "--out", str(out)]
        subprocess.run(words, env=os.environ | {"PYTHONHASHSEED": seed}, check=True)
        assert out.read_bytes() == templates(tapered(), "letter")


def test_the_command_prints_one_cover_and_says_what_is_wrong(tmp_path, capsys):
    source, out = tmp_path / "job.json", tmp_path / "out.pdf"
    source.write_text(json.dumps(one_cover()), encoding="utf-8")
    assert main(["templates", str(source), "--cushion", "c1", "--out", str(out)]) == 0
    assert out.read_bytes() == templates(one_cover())
    assert main(["templates", str(source), "--cushion", "c9", "--out", str(out)]) == 1
    assert json.loads(capsys.readouterr().out)["problems"][0]["code"] == "missing-field"


def asked(**request):
    return json.loads(ask(json.dumps({"do": "templates", **request})))


def test_a_screen_gets_the_file_in_base_64():
    reply = asked(job=one_cover(), paper="letter")
    assert base64.b64decode(reply["ok"]["pdf"]) == templates(one_cover(), "letter")


def test_a_screen_is_told_what_is_wrong():
    assert asked(job={}, paper="a4")["problems"]
    assert asked(job=one_cover(), paper="a3")["problems"][0]["code"] == "unknown-value"
    assert asked(job=one_cover(), paper="a4", cushion="c2")["problems"][0]["code"] == "missing-field"
