"""Pieces of any part and shape on a cloth: what the lay plan goes by, how it may turn them, and what is said of it."""

from dataclasses import replace

import pytest
from jobs import changed, cloth, covers, job

from plumpline import JobError, plan
from plumpline.answer import cloth_answer
from plumpline.layout.budget import to_its_end
from plumpline.layplan import plan_cloth, strip_of
from plumpline.prepared import Prepared, prepare

IN = 25_400_000
WORK = 20_000


def pieces_of(document):
    """The pieces of a job, the cloth they lie on, and the job."""
    prepared = prepare(document)
    assert isinstance(prepared, Prepared)
    bolt = prepared.job.cloths[0]
    return prepared.pieces_on(bolt), bolt, prepared.job


def square(side, width, quantity=2, **more):
    return job(covers(quantity, side, side, seam="1/8 in"), cloth(width, **more), grid="0")


def answer_for(pieces, bolt, whole):
    return cloth_answer(to_its_end(plan_cloth(bolt, pieces, (), WORK)), whole)


def test_half_squares_cut_by_their_outline_lie_two_in_the_place_of_one():
    """Four triangles of half a square each on cloth one square wide: two squares of length."""
    pieces, bolt, whole = pieces_of(square("9 3/4 in", "10 in", direction="two-way"))
    side = 10 * IN
    half = ((0, 0), (side, 0), (0, side))
    assert all((piece.width, piece.length) == (side, side) for piece in pieces)
    turned = [replace(piece, shape="outline", outline=half) for piece in pieces]
    # A half turn of a free rectangle changes nothing, that of an outline does.
    answer = answer_for(turned, bolt, whole)
    assert answer["laid"]["nm"] == 20 * IN
    assert answer["across"] is None
    outlines = {entry["turn"]: entry["outline"] for entry in answer["layout"]}
    assert outlines == {0: [[0, 0], [side, 0], [0, side]], 180: [[side, side], [0, side], [side, 0]]}


def test_round_pieces_lie_staggered_where_that_is_shorter():
    """Five circles 10 in across on 15 in: staggered by √(10² − 5²) = 8.66 in a row, under 45 in; as squares 50."""
    pieces, bolt, whole = pieces_of(square("9 3/4 in", "15 in", quantity=1))
    octagon = ((3, 0), (7, 0), (10, 3), (10, 7), (7, 10), (3, 10), (0, 7), (0, 3))
    outline = tuple((x * IN, y * IN) for x, y in octagon)
    round_ = [replace(pieces[0], count=5, shape="circle", outline=outline)]
    answer = answer_for(round_, bolt, whole)
    assert 44 * IN < answer["laid"]["nm"] < 45 * IN
    assert answer["across"] is None
    assert answer["layout"][0]["outline"] == [list(point) for point in outline]
    assert "outline" not in answer_for(pieces, bolt, whole)["layout"][0]


def test_a_wash_that_takes_more_one_way_leaves_a_round_piece_its_rectangle():
    document = square("9 3/4 in", "30 in", shrinkage={"along": "0.1"}, wash="after-making")
    pieces, bolt, whole = pieces_of(document)
    shapes = [replace(piece, shape="circle") for piece in pieces]
    laid = to_its_end(plan_cloth(bolt, shapes, (), WORK)).laid
    assert {panel.shape for panel in strip_of(bolt, tuple(shapes), laid).panels} == {"rect"}
    assert answer_for(shapes, bolt, whole)["across"] == 3


def test_a_piece_that_turns_freely_need_not_lie_as_the_faces_do():
    """Two faces of 18 x 10 in lie turned alike; a strip of 18 x 5 beside them may lie otherwise."""
    document = job(covers(1, "17 in", "9 in"), cloth("23 in", direction="any"), grid="0")
    pieces, bolt, whole = pieces_of(document)
    strip = replace(
        pieces[0], id="c1.strip", part="strip-1", width=20 * IN, length=5 * IN,
        upright=(20 * IN, 5 * IN), aside=(5 * IN, 20 * IN), turns="freely",
    )  # fmt: skip
    answer = answer_for((*pieces, strip), bolt, whole)
    turns = {entry["part"]: entry["turn"] for entry in answer["layout"]}
    assert answer["laid"]["nm"] == 20 * IN
    assert turns["front"] == turns["back"] == 0
    assert turns["strip-1"] == 90
    assert [entry["label"] for entry in answer["layout"] if entry["part"] == "strip-1"] == ["1 strip 1"]


def test_a_round_front_lies_turned_as_the_pieces_of_its_back_do():
    """An envelope back of a 15 in round, 16 x 11 in a piece: on 38 in cloth the two lie beside the disc only turned,
    11 + 11 + 16 in wide, so all of them are turned a quarter."""
    entry = covers(1, "16 in", "16 in")
    entry["insert"] = {"shape": "round", "diameter": "15 in"}
    entry["cover"]["closure"] = {"kind": "envelope", "overlap": "4 in", "hem": "1 in"}
    entry["cover"]["front"] = {"cloth": "k1", "turn": "quarter"}
    laid = plan(job(entry, cloth("38 in", direction="any")))["cloths"][0]
    assert {placed["turn"] for placed in laid["layout"]} == {90}
    assert laid["laid"]["text"] == "16 in"


def test_a_cover_that_cannot_be_read_keeps_every_cloth_it_names_from_being_asked_for():
    document = job([covers(1, "18", "18 in"), covers(1, "18 in", "18 in", id="c2", cloth="k3")], cloth("54 in"))
    document["cloths"] += [cloth("54 in", id="k2"), cloth("54 in", id="k3")]
    document["cushions"][0]["cover"]["back"]["cloth"] = "k2"
    assert [entry["cloth"] for entry in plan(document)["cloths"]] == ["k3"]
    also = changed(document, "/cushions/1/cover/back/cloth", "k2")
    assert [entry["cloth"] for entry in plan(also)["cloths"]] == ["k3"]
    none_left = changed(also, "/cushions/1/cover/front/cloth", "k1")
    with pytest.raises(JobError):
        plan(none_left)
