"""Faces made of parts: their finished areas add up to the face, and each part is cut with its own seams."""

import math

import pytest
from answer_checker import check
from jobs import changed, cloth, covers, job

from plumpline import JobError, plan
from plumpline.prepared import Prepared, prepare

IN = 25_400_000


def faced(made, *, size=("18 in", "14 in"), kind="knife-edge", pattern=None, **cover):
    """A job of one cover whose front is made so, border and band from a second cloth."""
    entry = covers(2, *size)
    entry["kind"] = kind
    if kind == "boxed":
        entry["insert"] |= {"thickness": "3 in", "fill": "foam"}
    if kind == "bolster":
        entry["insert"] = {"shape": "bolster", "diameter": "8 in", "length": "20 in"}
    entry["cover"]["front"] |= {"made": {"cloth": "k2", **made} if made["kind"] in ("border", "band") else made}
    if pattern:
        entry["cover"]["front"] |= {"pattern": "centred", "motif": "m1", **pattern}
    entry["cover"] |= cover
    printed = {"repeat": {"across": "27 in", "along": "20 in"}, "start": "choose"} if pattern else {}
    if pattern:
        printed["motifs"] = [{"id": "m1", "across": "13 in", "along": "0 in"}]
    return job(entry, [cloth("54 in", **printed), cloth("54 in", id="k2")])


def fronts(document):
    prepared = prepare(document)
    assert isinstance(prepared, Prepared)
    return {piece.part: piece for piece in prepared.covers[0].pieces if piece.part.startswith(("front", "body"))}


def sizes(document):
    return {part: (piece.width / IN, piece.length / IN) for part, piece in fronts(document).items()}


def finished_area(pieces):
    from shapely.geometry import Polygon

    return sum(Polygon(piece.seam_line).area for piece in pieces.values()) / IN**2


@pytest.mark.parametrize(
    "made",
    [
        {"kind": "border", "width": "3 in", "corners": "butted"},
        {"kind": "border", "width": "3 in", "corners": "mitred"},
        {"kind": "border"},
        {"kind": "band", "width": "5 in"},
        {"kind": "band", "width": "5 in", "lies": "upright"},
        {"kind": "band", "width": "5 in", "lies": "upright", "from_edge": "2 in"},
        {"kind": "band", "width": "5 in", "from_edge": "0 in"},
    ],
)
@pytest.mark.parametrize("kind", ["knife-edge", "boxed"])
@pytest.mark.reference
def test_the_finished_areas_of_the_parts_add_up_to_the_finished_face(made, kind):
    """A face of 18 x 14 in has 252 square inches however it is made; the grid may add to a mitred strip (shapely)."""
    pieces = fronts({**faced(made, kind=kind), "grid": "0"})
    assert len(pieces) > 1
    assert finished_area(pieces) == pytest.approx(252, rel=1e-6)


def test_a_butted_border_is_cut_with_its_seams():
    """18 x 14 in with 3 in all round: centre 12 x 8, bottom and top 18 x 3, sides 3 x 8; 1 in of seams to each."""
    document = faced({"kind": "border", "width": "3 in", "corners": "butted"})
    assert sizes(document) == {
        "front-centre": (13, 9),
        "front-border-bottom": (19, 4),
        "front-border-right": (4, 9),
        "front-border-top": (19, 4),
        "front-border-left": (4, 9),
    }
    check(document, plan(document, "quick"))


@pytest.mark.reference
def test_a_mitred_strip_reaches_a_seam_and_its_mitre_further_than_the_face():
    """At half a right angle a seam s reaches s + s x root 2 beyond the corner: 18 + 2 x (1/2 + 0.7071) = 20.414 in."""
    from shapely.geometry import Polygon

    pieces = fronts({**faced({"kind": "border", "width": "3 in"}), "grid": "0"})
    reach = 0.5 + 0.5 * math.sqrt(2)
    for name, side in (("bottom", 18), ("right", 14), ("top", 18), ("left", 14)):
        piece = pieces[f"front-border-{name}"]
        along, across = sorted((piece.width / IN, piece.length / IN), reverse=True)
        assert along == pytest.approx(side + 2 * reach, abs=1e-6)
        assert across == pytest.approx(4)
        # The seam stands 1/2 in inside the cut edge all round.
        cut, sewn = Polygon(piece.outline), Polygon(piece.seam_line)
        assert cut.exterior.distance(sewn) / IN == pytest.approx(0.5, abs=1e-6)
        assert sewn.area / IN**2 == pytest.approx((side + side - 6) / 2 * 3, rel=1e-6)


@pytest.mark.reference
def test_mitred_strips_fit_together_round_the_centre_without_gap_or_overlap():
    from shapely.geometry import Polygon
    from shapely.ops import unary_union

    pieces = fronts({**faced({"kind": "border", "width": "3 in"}), "grid": "0"})
    corners = {"bottom": (0, 0), "right": (15, 0), "top": (0, 11), "left": (0, 0), "centre": (3, 3)}
    placed = []
    for name, (x, y) in corners.items():
        line = pieces["front-centre" if name == "centre" else f"front-border-{name}"].seam_line
        left, bottom = min(px for px, _ in line), min(py for _, py in line)
        placed.append(Polygon([((px - left) / IN + x, (py - bottom) / IN + y) for px, py in line]))
    whole = unary_union([part.buffer(1e-7) for part in placed])
    assert whole.area == pytest.approx(252, abs=1e-4)
    assert whole.bounds == pytest.approx((0, 0, 18, 14), abs=1e-5)


def test_a_mitred_border_is_laid_out_and_told():
    document = faced({"kind": "border", "width": "3 in"})
    answer = plan(document)
    check(document, answer)
    strips = [entry for entry in answer["cloths"][1]["layout"] if entry["part"].startswith("front-border")]
    assert len(strips) == 8
    assert all(len(entry["outline"]) == 4 for entry in strips)
    titles = {step["title"]: step["text"] for step in answer["workroom"][0]["steps"]}
    assert "the mitres, from the inner corner outwards" in titles["Make up the front"]
    assert any("has a border of 3 in" in line["text"] for line in answer["cushions"][0]["working"])


@pytest.mark.parametrize(
    ("made", "cut"),
    [
        ({"kind": "band", "width": "5 in"}, {"bottom": (19, 5.5), "band": (19, 6), "top": (19, 5.5)}),
        (
            {"kind": "band", "width": "4 in", "lies": "upright", "from_edge": "2 in"},
            {"left": (3, 15), "band": (5, 15), "right": (13, 15)},
        ),
        ({"kind": "band", "width": "4 in", "from_edge": "0 in"}, {"band": (19, 5), "top": (19, 11)}),
    ],
)
def test_a_band_lies_in_the_middle_or_where_it_is_said(made, cut):
    """14 - 5 in leave 4 1/2 above and below; a band at the edge has one neighbour. Each part with 1/2 in seams."""
    document = faced(made)
    assert sizes(document) == {f"front-{name}": size for name, size in cut.items()}
    check(document, plan(document, "quick"))


def test_a_bolster_may_have_a_band_round_its_body():
    document = faced({"kind": "band", "width": "4 in", "lies": "upright"}, kind="bolster")
    assert {part: wide for part, (wide, _) in sizes(document).items()} == {
        "body-left": 9,
        "body-band": 5,
        "body-right": 9,
    }
    check(document, plan(document, "quick"))


def test_the_motif_stands_on_the_centre_and_the_border_is_cut_anyhow():
    document = faced({"kind": "border", "width": "2 in", "corners": "butted"}, pattern={"offset": {"across": "1 in"}})
    answer = plan(document, "quick")
    check(document, answer)
    pieces = fronts(document)
    assert pieces["front-centre"].face.pattern == "centred"
    assert {piece.face.pattern for part, piece in pieces.items() if "border" in part} == {"free"}


def test_a_border_takes_its_cloth_from_the_face_where_none_is_said():
    document = faced({"kind": "border", "width": "2 in", "corners": "butted"})
    del document["cushions"][0]["cover"]["front"]["made"]["cloth"]
    assert {piece.face.cloth for piece in fronts(document).values()} == {"k1"}


def test_trim_set_in_leaves_the_face_whole_and_is_bought_by_its_outer_edge():
    """18 x 14 in, 3 in from the edge: 2 x 12 + 2 x 8 = 40 in round and 1 in to join, twice; 82 in are 2.28 yd."""
    document = faced({"kind": "inset", "width": "1 in", "from_edge": "3 in"})
    assert sizes(document) == {"front": (19, 15)}
    answer = plan(document, "quick")
    (trim,) = [one for one in answer["materials"] if one["kind"] == "trim"]
    assert (trim["each"]["text"], trim["length"]["text"], trim["quantity"]) == ("41 in", "82 in", 2)
    assert trim["ask"] == "2 3/8 yd of flat trim, 1 in wide"
    usual = plan(faced({"kind": "inset"}), "quick")["materials"]
    assert [one["each"]["text"] for one in usual if one["kind"] == "trim"] == ["49 in"]


def seam_of(made):
    (found,) = [one for one in plan(faced(made), "quick")["materials"] if one["kind"] == "thread"]
    return found["length"]["nm"]


@pytest.mark.parametrize(
    ("made", "sewn"),
    [
        ({"kind": "band", "width": "5 in"}, 36),
        ({"kind": "band", "width": "5 in", "lies": "upright", "from_edge": "0 in"}, 14),
        ({"kind": "border", "width": "3 in", "corners": "butted"}, 2 * 18 + 2 * 8),
        ({"kind": "border", "width": "3 in", "corners": "mitred"}, 2 * 12 + 2 * 8 + 4 * 3 * math.sqrt(2)),
        ({"kind": "inset", "width": "1 in", "from_edge": "3 in"}, 80),
    ],
)
def test_thread_is_bought_for_the_seams_between_the_parts(made, sewn):
    """Through two layers of 0.5 mm, 2 + 2 / 3 for each length of seam and 15 % for waste, on two covers."""
    more = (seam_of(made) - seam_of({"kind": "plain"})) / IN
    assert more == pytest.approx(2 * sewn * (2 + 2 / 3) * 1.15, rel=1e-6)


def test_a_tapered_bordered_face_is_tapered_once_it_is_whole():
    corners = {"corners": {"kind": "tapered"}}
    document = faced({"kind": "border", "width": "1 in", "corners": "butted"}, **corners)
    document["cushions"][0]["cover"]["back"]["made"] = {"kind": "border", "width": "1 in"}
    facts = {fact["name"]: fact["text"] for fact in plan(document, "quick")["workroom"][0]["facts"]}
    assert facts["Corners"] == "tapered: in 1/2 in at the corner, once the face is made up"


# ---- what cannot be --------------------------------------------------------------------------------------------------


def problems(document):
    with pytest.raises(JobError) as raised:
        plan(document)
    return [(problem["at"].removeprefix("/cushions/0/cover/"), problem["code"]) for problem in raised.value.problems]


@pytest.mark.parametrize(
    ("made", "at"),
    [
        ({"kind": "border", "width": "7 in"}, "width"),
        ({"kind": "band", "width": "14 in"}, "width"),
        ({"kind": "band", "width": "4 in", "from_edge": "10 in"}, "from_edge"),
        ({"kind": "band", "width": "18 in", "lies": "upright"}, "width"),
        ({"kind": "inset", "width": "1 in", "from_edge": "6 in"}, "from_edge"),
    ],
)
def test_parts_that_leave_nothing_of_the_face_are_refused_with_both_figures(made, at):
    document = faced(made)
    assert problems(document) == [(f"front/made/{at}", "parts-too-wide")]


def test_parts_that_a_face_cannot_have_are_refused_where_they_are_asked_for():
    border = {"kind": "border"}
    rolled = faced(border, kind="bolster")
    assert problems(rolled) == [("front/made/kind", "rules-contradict")]
    round_ = changed(faced(border), "/cushions/0/insert", {"shape": "round", "diameter": "16 in"})
    assert problems(round_) == [("front/made/kind", "rules-contradict")]
    joined = changed(faced(border), "/cushions/0/cover/front/joined", "one-side")
    assert problems(joined) == [("front/made/kind", "rules-contradict")]
    split = changed(faced({"kind": "plain"}), "/cushions/0/cover/back/made", {"kind": "band"})
    split["cushions"][0]["cover"]["closure"] = {"kind": "envelope"}
    assert problems(split) == [("back/made/kind", "rules-contradict")]


@pytest.mark.parametrize(
    ("made", "offset"),
    [({"kind": "band", "width": "4 in"}, "0 in"), ({"kind": "border", "width": "3 in"}, "7 in")],
)
def test_a_motif_that_would_stand_on_the_border_or_the_band_is_refused(made, offset):
    document = faced(made, pattern={"offset": {"across": offset}})
    assert problems(document) == [("front/made/kind", "rules-contradict")]


def test_trim_and_motif_may_lie_on_each_other():
    document = faced({"kind": "inset"}, pattern={})
    assert "front" in sizes(document)
