"""Rounded and tapered corners of bays, trapezoids, T and L seats: their lines, their ring, what follows from them."""

import math

import pytest
from answer_checker import check
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from jobs import cloth, job
from printed import texts
from test_outlined import (
    ELL,
    TEE,
    answer_to,
    cross,
    dist,
    in_threes,
    inches,
    lines,
    made,
    mm,
    of_corners,
    outlines,
    pieces,
    refused,
    seat,
)

from plumpline import plan
from plumpline.cushions.rims import rims_of
from plumpline.layout.outlines import around_arcs, within_arcs
from plumpline.papers import templates
from plumpline.prepared import Prepared, prepare

IN = 25_400_000
ROUNDED = {"corners": {"kind": "rounded", "radius": "3 in"}}
TAPERED = {"corners": {"kind": "tapered", "depth": "1/2 in", "run": "3 in"}}
SIDES, ACROSS = ["20 in", "15 in", "20 in", "15 in"], [[0, 2, "25 in"]]


def rounded(radius):
    return {"corners": {"kind": "rounded", "radius": radius}}


def tapered(depth, run):
    return {"corners": {"kind": "tapered", "depth": depth, "run": run}}


def by_sides(kind, cover, **more):
    """A square-cornered seat of 20 × 15 in, told by its sides and a diagonal."""
    return seat(SIDES, ACROSS, kind=kind, cover=cover, fill="polyester", **more)


def by_width(kind, cover):
    """The same, told by its width and height."""
    entry = by_sides(kind, cover)
    thick = {name: entry["insert"][name] for name in ("thickness",) if name in entry["insert"]}
    return {
        **entry,
        "insert": {"shape": "rectangle", "width": "20 in", "length": "15 in", "fill": "polyester", **thick},
    }


def exactly(entry, **more):
    """The cover of an entry whose boxing is cut on no grid."""
    prepared = prepare(job(entry, cloth("80 in", **more), grid="0"))
    assert isinstance(prepared, Prepared)
    assert not prepared.problems, prepared.problems
    return prepared.covers[0]


def bands(cover):
    ring = [piece for piece in cover.pieces if piece.part.startswith("boxing")]
    ring += [piece for piece in cover.pieces if piece.part.startswith("zip-band") and int(piece.part[9:]) % 2]
    return sum(piece.width - 2 * piece.seam for piece in ring)


def reach_from(centre, outline, within):
    """How far the points of an outline that lie so near to a place are from it, in inches."""
    return [found / IN for point in outline if (found := math.dist(centre, point)) < within * IN]


def is_round(centre, outline, within, radius):
    """Whether the points of an outline so near to a place are an arc of this radius around it, told by many."""
    found = reach_from(centre, outline, within)
    return len(found) > 8 and found == pytest.approx([radius] * len(found), abs=1e-6)


# ---- rounded --------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("kind", ["knife-edge", "boxed"])
@pytest.mark.parametrize("corners", [ROUNDED, rounded("1/2 in"), rounded("7 1/2 in")])
def test_a_rectangle_told_by_its_sides_is_rounded_as_one_told_by_its_width(kind, corners):
    one, other = (made(entry) for entry in (by_sides(kind, corners), by_width(kind, corners)))
    assert sum(one.outline.sides) == rims_of(other)[0].length
    for piece, same in zip(one.pieces[:2], other.pieces[:2], strict=True):
        assert (piece.width, piece.length) == (same.width, same.length)
        for found, wanted in ((piece.outline, same.outline), (piece.stitched, same.stitched)):
            assert len(found) == len(wanted)
            assert all(min(math.dist(point, there) for there in wanted) < 5 for point in found)


def test_an_ell_is_rounded_where_it_points_outwards_and_clipped_where_it_turns_in():
    """By hand: 2 (60 + 50) in less 5 × (2 × 3 - 3 π / 2) in is 213.56 in; its cut corners have 3 1/2 in."""
    cover = exactly(of_corners(ELL, [3], cover=ROUNDED))
    front = cover.pieces[0]
    assert sum(cover.outline.sides) / IN == pytest.approx(213.5619, abs=1e-4)
    assert bands(cover) == sum(cover.outline.sides) == rims_of(cover)[0].length
    assert is_round((3.5 * IN, 3.5 * IN), front.outline, 4, 3.5)
    assert is_round((3.5 * IN, 3.5 * IN), front.stitched, 3.2, 3)
    assert (front.width, front.length) == pytest.approx((61 * IN, 51 * IN), abs=3)
    clip = next(mark for mark in front.marks if mark.kind == "clip")
    assert clip.points[1] == pytest.approx((24.5 * IN, 20.5 * IN), abs=3)
    told = " ".join(cover.cutting)
    assert "Corners rounded by 3 in where they are stitched, cut by 3 1/2 in." in told
    assert "once round, 220 in less ≈ 6 7/16 in is ≈ 213 9/16 in." in told
    assert "Corner D turns inwards and stays as it is, clipped up to the seam." in told
    square = made(of_corners(ELL, [3]))
    assert not [line for line in square.cutting if "orner" in line and "Sides from" not in line]


def test_a_tee_has_two_corners_that_stay():
    cover = made(of_corners(TEE, [3, 6], kind="knife-edge", cover=rounded("1 in")))
    assert "Corners D and G turn inwards and stay as they are, clipped up to the seam." in cover.cutting
    assert cover.outline.radii == (IN, IN, IN, 0, IN, IN, 0, IN)


def test_the_allowance_of_a_zip_grows_round_the_corners_at_its_ends():
    closure = {"kind": "zip", "side": 0, "zip_seam": "1 in"}
    cover = made(by_sides("knife-edge", {**ROUNDED, "closure": closure}))
    front = cover.pieces[0]
    near = reach_from((3.5 * IN, 4 * IN), front.outline, 4.5)
    assert (min(near), max(near)) == pytest.approx((3.5, 4), abs=1e-6)
    assert front.length == 16.5 * IN
    assert is_round((3.5 * IN, 4 * IN), front.stitched, 3.2, 3)
    told = " ".join(cover.cutting)
    assert "cut by 4 in and 3 1/2 in. At both ends of the closing edge the allowance grows evenly" in told


def test_a_zip_lies_in_the_middle_of_its_side_and_goes_on_round_its_corners_if_it_is_longer():
    """A side of 20 in between corners of 3 in has 14 straight, and 14 + 3 π / 2 = 18.71 in to the corners' middles."""
    short, long = (
        made(by_sides("knife-edge", {**ROUNDED, "closure": {"kind": "zip", "side": 0, "length": length}}))
        for length in ("12 in", "16 in")
    )
    ends = {}
    for name, cover in (("short", short), ("long", long)):
        ends[name] = next(mark.points for mark in cover.pieces[0].marks if mark.kind == "zip")
        assert cover.closing.edge / IN == pytest.approx(18.7124, abs=1e-4)
    assert [x / IN for x, _ in ends["short"]] == pytest.approx([4.5, 16.5], abs=1e-6)
    assert math.dist(ends["long"][0], (3.5 * IN, 3.75 * IN)) / IN == pytest.approx(3, abs=1e-6)
    assert ends["long"][0][1] > ends["short"][0][1]
    usual = made(by_sides("knife-edge", {**ROUNDED, "closure": {"kind": "zip"}}))
    assert usual.closing.length == usual.closing.edge - 2 * IN
    too_long = by_sides("knife-edge", {**ROUNDED, "closure": {"kind": "zip", "length": "19 in"}})
    assert refused(too_long)["cover/closure/length"][0] == "zip-longer-than-seam"


def test_a_hem_lies_along_what_is_straight_of_its_side():
    cover = made(by_sides("knife-edge", {**ROUNDED, "closure": {"kind": "open", "side": 0}}))
    hem = next(mark.points for mark in cover.pieces[0].marks if mark.kind == "hem")
    assert [x / IN for x, _ in hem] == pytest.approx([3.5, 17.5])


def test_a_sharp_corner_rounded_reaches_less_far_and_the_finished_size_says_so():
    """The bay's front corners have tan α = 31 / 15: a round of 6 in reaches 6 (1 / sin α + 1 / tan α - 1) less far,
    by hand 6 (1.1109 + 0.4839 - 1) = 3.569 in at each."""
    cover = made(seat(kind="knife-edge", cover=rounded("6 in")))
    assert cover.finished["width"] / IN == pytest.approx(90 - 2 * 3.569, abs=0.1)
    assert cover.pieces[0].width == pytest.approx(cover.finished["width"] + IN, abs=IN // 254)
    assert made(seat(kind="knife-edge")).finished["width"] / IN == pytest.approx(90, abs=0.1)


@pytest.mark.reference
def test_rounded_plates_are_what_shapely_makes_of_the_seat():
    """shapely 2: swept by a disc of the radius from within, then moved out by the seam with its inner corner sharp."""
    from shapely import Polygon
    from shapely.affinity import translate

    front = made(of_corners(ELL, [3], cover=ROUNDED)).pieces[0]
    swept = Polygon(ELL).buffer(-3 * IN, quad_segs=256).buffer(3 * IN, quad_segs=256)
    wanted = translate(swept, IN / 2, IN / 2)
    assert Polygon(front.stitched).symmetric_difference(wanted).area < 1e-4 * wanted.area
    cut = wanted.buffer(IN / 2, join_style="mitre", mitre_limit=50)
    assert Polygon(front.outline).symmetric_difference(cut).area < 1e-4 * cut.area


def tangent(before, corner, after):
    """The tangent of half the angle that an outline turns by, and that angle."""
    turn = math.atan2(cross(before, corner, after), sum(
        (corner[k] - before[k]) * (after[k] - corner[k]) for k in (0, 1)
    ))  # fmt: skip
    return math.tan(turn / 2), turn


@settings(max_examples=40, deadline=None)
@given(
    corners=outlines(), tenths=st.integers(1, 40), returns=st.integers(0, 3), apart=st.booleans(), narrow=st.booleans()
)
def test_the_joined_ring_of_a_rounded_seat_is_its_stitched_edge_to_the_nanometre(
    corners, tenths, returns, apart, narrow
):
    """Once round by trigonometry: the sides less 2 r tan(turn / 2), and r · turn, for every corner that points out."""
    turns = [cross(before, corner, after) for before, corner, after in in_threes(corners)]
    assume(all(abs(turn) > IN * IN for turn in turns))
    notches = [i for i, turn in enumerate(turns) if turn < 0]
    boxing = {"kind": "front-and-sides" if apart else "band", "returns": f"{returns} in"}
    cover = {"closure": {"kind": "zip"}, "boxing": boxing, **rounded(f"{tenths / 10} in")}
    prepared = prepare(
        job(of_corners(corners, notches, cover=cover), cloth("30 in" if narrow else "80 in", direction="any"), grid="0")
    )
    assert isinstance(prepared, Prepared)
    assume(not prepared.problems)
    found, radius = prepared.covers[0], tenths * IN // 10
    sharp = found.outline.corners
    bends = [tangent(*three) for three in in_threes(sharp)]
    sides = sum(dist(one, other) for one, other in zip(sharp, [*sharp[1:], sharp[0]], strict=True))
    taken = sum(2 * round(radius * share) for share, turn in bends if turn > 0)
    arcs = round(radius * math.fsum(turn for _, turn in bends if turn > 0))
    assert bands(found) == sum(found.outline.sides) == sides - taken + arcs


def test_a_radius_that_does_not_fit_is_refused_with_what_it_takes_and_what_there_is():
    found = refused(of_corners(ELL, [3], cover=rounded("11 in")))
    assert list(found) == ["cover/corners/radius"]
    code, text = found["cover/corners/radius"]
    assert code == "corner-too-large"
    assert "11 in take 22 in of side BC, which has 20 in: round them by 10 in at most." in text.replace("≈ ", "")
    assert made(of_corners(ELL, [3], kind="knife-edge", cover=rounded("9 7/8 in")))
    triangle = seat(["4 in", "5 in", "3 in"], [], kind="knife-edge", cover={**rounded("1 1/8 in"), "seam": "1/8 in"})
    text = refused(triangle)["cover/corners/radius"][1]
    assert "take 4 1/2 in of side AB, which has 4 in: round them by 1 in at most" in text


def test_beside_a_corner_that_turns_inwards_the_seam_takes_its_part_of_the_side():
    """The ledge of an ear is 3 in wide and its seam takes 1/2 in at the clip: 2 1/2 in are left for the corner."""
    tee = of_corners(TEE, [3, 6], kind="knife-edge", cover=rounded("3 in"))
    text = refused(tee)["cover/corners/radius"][1]
    assert "take 6 in of side BC, which has 4 in: round them by 2 in at most" in text.replace("≈ ", "")
    eared = inches((0, 0), (32, 0), (32, 8), (29, 8), (29, 24), (3, 24), (3, 8), (0, 8))
    sides = [mm(*ends) for ends in zip(eared, [*eared[1:], eared[0]], strict=True)]
    across = [[i, j, mm(eared[i], eared[j])] for i, j in ((0, 2), (0, 3), (1, 6), (1, 7), (3, 5), (4, 6))]
    told = refused(seat(sides, across, [3, 6], kind="knife-edge", cover=rounded("2 5/8 in")))["cover/corners/radius"][1]
    assert "take 2 5/8 in of side CD, which has 2 1/2 in: round them by 2 1/2 in at most" in told.replace("≈ ", "")


def test_a_round_that_would_cut_into_a_corner_that_turns_inwards_is_refused():
    """A notch that comes to 4 √2 = 5.66 in of the outer corner: a round of r lies r (√2 - 1) from it, so r is 13.66."""
    blunt = inches((0, 0), (60, 0), (60, 40), (4, 4), (40, 60), (0, 60))
    text = refused(of_corners(blunt, [3], kind="knife-edge", cover=rounded("14 in")))["cover/corners/radius"][1]
    assert "Corners rounded by 14 in would run into corner D: round them by" in text
    assert text.endswith("round them by 13 5/8 in at most.")
    assert made(of_corners(blunt, [3], kind="knife-edge", cover=rounded("13 5/8 in")))


# ---- tapered --------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("run", ["1/4", "3 in", "1/2"])
def test_a_rectangle_told_by_its_sides_is_tapered_as_one_told_by_its_width(run):
    one, other = (
        made(entry)
        for entry in (by_sides("knife-edge", tapered("1/2 in", run)), by_width("knife-edge", tapered("1/2 in", run)))
    )
    for piece, same in zip(one.pieces, other.pieces, strict=True):
        assert len(piece.outline) == len(same.outline)
        for found, wanted in ((piece.outline, same.outline), (piece.seam_line, same.seam_line)):
            assert all(min(math.dist(point, there) for there in wanted) < 5 for point in found)
        tapers, theirs = ([sorted(m.points) for m in p.marks if m.kind == "taper"] for p in (piece, same))
        for points, wanted in zip(sorted(tapers), sorted(theirs), strict=True):
            assert all(math.dist(a, b) < 5 for a, b in zip(points, wanted, strict=True))


def test_a_taper_lies_its_depth_within_both_sides_at_any_angle():
    """At a corner of 60° the bisector goes in by depth ÷ sin 30° = 2 × the depth."""
    cover = made(seat(["30 in"] * 3, [], kind="knife-edge", cover=TAPERED))
    front = cover.pieces[0]
    start, corner, end = next(mark.points for mark in front.marks if mark.kind == "taper")
    raw = (end[0] - 3 * IN, 0)
    assert end[1] == 0
    assert math.dist(raw, corner) == pytest.approx(IN, abs=3)
    assert corner[1] == pytest.approx(IN // 2, abs=2)
    assert math.dist(raw, start) == pytest.approx(3 * IN, abs=3)
    assert cross(raw, start, corner) / (3 * IN) == pytest.approx(-IN / 2, abs=3)
    # Its raw corners stood out further: by 3 in less what the start lies along, so the piece is so much narrower.
    assert min(x for x, _ in front.outline) == 0
    assert max(x for x, _ in front.outline) == front.width
    assert len(front.outline) == 9
    assert "In 1/2 in at the corner, from 3 in along the side" in {mark.text for mark in front.marks}


def test_the_seam_of_a_taper_lies_inside_of_it_by_the_allowance_of_its_side():
    cover = made(by_sides("knife-edge", {**TAPERED, "closure": {"kind": "zip", "side": 0, "zip_seam": "3/4 in"}}))
    front = cover.pieces[0]
    assert len(front.around) == len(front.outline) == len(front.stitched) == 12
    ends = zip(front.outline, [*front.outline[1:], front.outline[0]], front.stitched, front.around, strict=True)
    for one, other, sewn, allowance in ends:
        assert cross(one, other, sewn) / math.dist(one, other) == pytest.approx(allowance, abs=10)
    assert sorted(set(front.around)) == [IN // 2, 3 * IN // 4]
    assert front.around.count(3 * IN // 4) == 3


def test_corners_that_turn_inwards_or_hardly_at_all_are_not_tapered():
    """A front in two stretches that meet almost straight on, at 2 · atan(4 / 30) = 15°: it has no ear there."""
    front = inches((0, 0), (30, -4), (60, 0), (60, 20), (24, 20), (24, 50), (0, 50))
    cover = made(of_corners(front, [4], kind="knife-edge", cover=TAPERED))
    tapers = [mark for mark in cover.pieces[0].marks if mark.kind == "taper"]
    assert len(tapers) == 5
    assert "Corner B is too blunt to have an ear, and stays as it is." in cover.cutting
    assert "Corner E turns inwards and stays as it is, clipped up to the seam." in cover.cutting


def test_sides_that_a_taper_starts_at_by_a_share_of_each_are_told_by_name_on_both_faces():
    cover = made(of_corners(ELL, [3], kind="knife-edge", cover=tapered("1/2 in", "1/4")))
    texts_of = [{mark.text for mark in piece.marks if mark.kind == "taper"} for piece in cover.pieces]
    told = "In 1/2 in at the corner, from 15 1/4 in along AB, 5 1/4 in along BC, 9 in along CD, 7 1/2 in along DE, "
    assert [text.replace("≈ ", "") for text in texts_of[0]] == [f"{told}6 1/4 in along EF and 12 3/4 in along FA"]
    assert texts_of[0] == texts_of[1]


def test_a_face_that_a_taper_makes_smaller_is_not_said_to_be_cut_larger():
    """An outline lies on no grid; what the sharp corners of a wedge lose makes it differ from its box all the same."""
    wedge = inches((0, 0), (40, 0), (30, 24), (10, 24))
    cover = made(of_corners(wedge, [], kind="knife-edge", cover=tapered("1/2 in", "3 in")))
    assert cover.pieces[0].width < made(of_corners(wedge, [], kind="knife-edge")).pieces[0].width
    assert not [line for line in cover.cutting if "up to the next" in line]


def test_a_taper_past_the_middle_or_too_deep_for_where_it_starts_is_refused_with_its_numbers():
    found = refused(of_corners(ELL, [3], kind="knife-edge", cover=tapered("1/2 in", "11 in")))
    code, text = found["cover/corners/run"]
    assert code == "corner-too-large"
    assert "Side BC is cut 21 in: tapers that start 11 in from its ends would meet." in text.replace("≈ ", "")
    assert "Start them 10 1/2 in from the corner at most." in text.replace("≈ ", "")
    deep = refused(of_corners(ELL, [3], kind="knife-edge", cover=tapered("2 in", "3 in")))["cover/corners/depth"]
    assert deep[0] == "corner-too-large"
    assert "At corner A a taper that starts 3 in along is less than 1 1/2 in deep, not 2 in" in deep[1].replace(
        "≈ ", ""
    )
    # At 60° its corner comes to lie on the line from 3 in to 3 in at 3 / 2 · sin 60° = 1.299 in.
    sharp = seat(["30 in"] * 3, [], kind="knife-edge", cover=tapered("1 1/4 in", "3 in"))
    assert made(sharp)
    steep = seat(["30 in"] * 3, [], kind="knife-edge", cover=tapered("1 5/16 in", "3 in"))
    assert "less than ≈ 1 5/16 in deep" in refused(steep)["cover/corners/depth"][1]
    # Beside a short side it would start behind itself before that: 4 in · tan 30° = 2.3, not 4 · 11 · sin 60° / 15.
    kite = [(0, 0), (44 * IN, 0), (8 * IN, math.isqrt(192 * IN * IN))]
    near = {"kind": "knife-edge", "cover": {**tapered("2 7/16 in", "1/4"), "seam": "0.1 mm"}}
    text = refused(of_corners(kite, [], **near))["cover/corners/depth"][1]
    assert "At corner A a taper that starts 4 in along is less than 2 5/16 in deep" in text.replace("≈ ", "")


def test_a_box_is_not_tapered():
    found = refused(seat(cover=TAPERED))
    assert found["cover/corners/kind"][0] == "unknown-value"
    assert "no ears to taper away" in found["cover/corners/kind"][1]


# ---- what follows from them -----------------------------------------------------------------------------------------


@pytest.mark.parametrize("corners", [ROUNDED, tapered("1/2 in", "1/4")])
def test_mirrored_pairs_have_their_corners_mirrored(corners):
    cover = made(of_corners(ELL, [3], kind="knife-edge", quantity=2, mirrored=1, cover=corners))
    found = {piece.part: piece for piece in cover.pieces}
    for part in ("front", "back"):
        piece, other = found[part], found[f"{part}-mirrored"]
        for one, turned in ((piece.outline, other.outline), (piece.seam_line, other.seam_line)):
            assert sorted((piece.width - x, y) for x, y in one) == sorted(turned)
        assert len(other.around) == len(piece.around)
        assert piece.around == other.around[::-1]


def test_a_rounded_seat_that_is_its_own_mirror_image_serves_both_hands():
    cover = made(by_sides("boxed", ROUNDED, quantity=2, mirrored=1))
    assert [piece.part for piece in cover.pieces[:2]] == ["front", "back"]


def test_layers_have_the_corners_of_their_cover():
    layers = {name: {"cloth": "k2"} for name in ("lining", "interlining", "protector")}
    entry = of_corners(ELL, [3], cover={**ROUNDED, "layers": layers, "closure": {"kind": "zip"}})
    answer = plan(job(entry, [cloth("80 in", direction="any"), cloth("80 in", id="k2", direction="any")]), "quick")
    found = pieces(answer)
    assert found["lining-front"]["outline"] == found["front"]["outline"] == found["protector-front"]["outline"]
    inner = found["interlining-front"]["outline"]
    assert is_round((3 * IN, 3 * IN), inner, 3.2, 3)


def test_the_rounded_flange_of_an_ell_is_stitched_off_that_much_inside():
    """Over all 64 × 54 in; within corners of 3 in a flange of 2 in leaves 1 in, one of 4 in leaves them sharp."""
    for flange, radius in (("2 in", 1), ("4 in", 0)):
        edge = {"kind": "flanged", "flange": flange}
        entry = of_corners(ELL, [3], kind="knife-edge", quantity=2, mirrored=1, cover={**ROUNDED, "edge": edge})
        cover = made(entry)
        for piece in cover.pieces:
            line = next(mark.points for mark in piece.marks if mark.kind == "flange")
            assert max(x for x, _ in line) - min(x for x, _ in line) == pytest.approx(60 * IN, abs=3)
            assert len(line) == 6 if radius == 0 else len(line) > 30
        front, (left, low) = cover.pieces[0], (2.5 * IN, 2.5 * IN)
        assert front.width == pytest.approx((61 + 2 * int(flange[0])) * IN, abs=3)
        assert is_round((3.5 * IN, 3.5 * IN), front.outline, 3.7, 3.5)
        if radius:
            line = next(mark.points for mark in front.marks if mark.kind == "flange")
            near = reach_from((left + IN, low + IN), line, 1.1)
            assert near == pytest.approx([1] * len(near), abs=1e-6)
            assert len(near) > 8
    assert "over all the cover is 64 in by 54 in" in lines(answer_to({
        **entry, "cover": {**entry["cover"], "edge": {"kind": "flanged", "flange": "2 in"}}
    }, "100 in")).replace("≈ ", "")  # fmt: skip


def test_piping_is_as_long_as_the_rounded_edge_on_the_bias_and_has_no_join_near_its_corners():
    """Common practice: on the bias round a curve, no join within 3 in of a corner, here of the middle of its arc."""
    entry = by_sides("boxed", {**ROUNDED, "edge": {"kind": "piped", "cord": "5/32 in"}, "closure": {"kind": "zip"}})
    cover = made(entry)
    (rim, _), (strips,) = rims_of(cover), cover.strips
    side, end = 14 * IN + 3 * math.pi / 2 * IN, 9 * IN + 3 * math.pi / 2 * IN
    assert strips.bias
    assert strips.length == pytest.approx(2 * (side + end) + 2 * IN, abs=2)
    assert rim.corners == pytest.approx((side / 2, side / 2 + end, side * 1.5 + end, side * 1.5 + 2 * end), abs=4)
    low, high = strips.clear[0]
    assert (low + high) / 2 == pytest.approx(side / 2 + IN, abs=4)
    assert high - low == 6 * IN


def test_a_ring_in_one_band_is_notched_at_the_middles_of_the_corners():
    cover = exactly(by_sides("boxed", ROUNDED), direction="any")
    (band,) = [piece for piece in cover.pieces if piece.part.startswith("boxing")]
    notches = [mark.points[0][0] - IN // 2 for mark in band.marks if mark.kind == "notch"]
    first, second, third, _ = cover.outline.sides
    assert notches == [first, first + second, first + second + third]


@pytest.mark.reference
def test_the_template_of_a_tapered_ell_has_its_tapers_and_no_template_of_a_corner():
    ell = inches((0, 0), (14, 0), (14, 4), (4, 4), (4, 12), (0, 12))
    flat = of_corners(ell, [3], kind="knife-edge", cover=tapered("1/4 in", "1 1/2 in"))
    told = " ".join(texts(templates(job(flat, cloth("54 in")), "letter")))
    assert "In 1/4 in at the corner, from 1 1/2 in along the side." in told
    assert ": corner" not in told
    rounded_ell = of_corners(ell, [3], kind="knife-edge", cover=rounded("1 in"))
    told = " ".join(texts(templates(job(rounded_ell, cloth("54 in")), "letter")))
    assert "top and grain" in told
    assert "Clip in to the stitching line." in told


def steps_of(answer, key):
    return next(step for sheet in answer["workroom"] for step in sheet["steps"] if step["id"].endswith(key))


def test_the_sheet_tells_how_the_corners_are_made():
    flat = answer_to(of_corners(ELL, [3], kind="knife-edge", cover=TAPERED))
    facts = {fact["name"]: fact["text"] for fact in flat["workroom"][0]["facts"]}
    assert facts["Corners"] == "tapered: in 1/2 in at the corner, from 3 in along the side"
    text = steps_of(flat, "taper.corners")["text"]
    assert "Lay the corners of front and back on each other: they have to be alike." in text
    assert text.endswith("Where a corner turns inwards, snip into it up to the seam.")
    box = answer_to(of_corners(ELL, [3], cover=ROUNDED))
    text = steps_of(box, "taper.rounded")["text"]
    assert text.startswith("Snip the allowance round each corner of 3 in")
    assert text.endswith("Where a corner turns inwards, snip into it up to the seam.")


def test_a_wash_to_come_draws_the_rounded_corners_out_too():
    washed = {"shrinkage": {"along": "0.1"}, "wash": "after-making"}
    front = made(of_corners(ELL, [3], cover=ROUNDED), **washed).pieces[0]
    assert front.length == pytest.approx(51 * IN / 0.9, abs=4)
    assert max(y for _, y in front.outline) == front.length
    assert max(y for _, y in front.stitched) == pytest.approx(50.5 * IN / 0.9, abs=4)


# ---- on the cloth ---------------------------------------------------------------------------------------------------


@pytest.mark.reference
@pytest.mark.parametrize("corners", [ROUNDED, rounded("9 in"), tapered("1/2 in", "1/4")])
def test_laid_plates_never_overlap_stay_on_the_cloth_and_cover_no_more_than_is_claimed(corners):
    """Checked with shapely 2 on the true outlines of the answer as they lie, rounded corners and all."""
    from shapely import Polygon, box
    from shapely.affinity import translate

    flat = {"kind": "knife-edge", "quantity": 2, "mirrored": 1}
    answer = plan(job(of_corners(ELL, [3], cover=corners, **flat), cloth("64 in", direction="any")), "quick")
    found = answer["cloths"][0]
    laid = [translate(Polygon(place["outline"]), place["x"], place["y"]) for place in found["layout"]]
    on_cloth = box(-1, -1, found["usable_width"]["nm"] + 1, found["laid"]["nm"] + 1)
    assert all(on_cloth.contains(shape) for shape in laid)
    for number, one in enumerate(laid):
        assert all(one.intersection(other).area < 1e6 for other in laid[:number])
    for place, shape in zip(found["layout"], laid, strict=True):
        room = place["room"]
        within = box(room["x"], room["y"], room["x"] + room["width"], room["y"] + room["length"])
        assert shape.buffer(2).contains(translate(within, place["x"], place["y"]))
    assert found["at_least"]["nm"] * found["usable_width"]["nm"] >= sum(shape.area for shape in laid) * 0.98
    assert found["at_least"]["nm"] <= found["laid"]["nm"]


@pytest.mark.reference
@pytest.mark.parametrize("entry", [
    *(of_corners(ELL, [3], cover=rounded(radius)) for radius in ("1/2 in", "3 in", "10 in")),
    *(seat(kind="knife-edge", cover={**rounded(radius), "closure": {"kind": "zip"}}) for radius in ("1/4 in", "12 in")),
])  # fmt: skip
def test_what_is_planned_around_arcs_holds_them_and_what_bounds_go_by_lies_within(entry):
    """shapely 2: the one contains the true outline and fills the same box, the other is contained by it."""
    from shapely import Polygon

    for piece in made(entry).pieces[:2]:
        true, around, within = map(Polygon, (piece.outline, around_arcs(piece.outline), within_arcs(piece.outline)))
        assert around.is_valid
        assert true.difference(around).area == 0
        assert within.difference(true).area < 1e-9 * true.area
        assert around.bounds == true.bounds == within.bounds
        assert len(around_arcs(piece.outline)) <= 18
        assert within.area > 0.97 * true.area > 0.95 * around.area


def test_rounded_seats_lie_no_longer_than_square_ones():
    for direction in ("one-way", "any"):
        square, round_ = (
            answer_to(of_corners(ELL, [3], quantity=2, cover=corners), "64 in", direction=direction)
            for corners in ({}, rounded("9 in"))
        )
        assert round_["cloths"][0]["laid"]["nm"] <= square["cloths"][0]["laid"]["nm"]


def test_the_second_opinion_of_the_tests_agrees_about_a_rounded_bay():
    cover = {**ROUNDED, "closure": {"kind": "zip", "side": 2}, "boxing": {"kind": "front-and-sides", "returns": "4 in"}}
    bay = inches((0, 0), (90, 0), (75, 31), (15, 31))
    entry = of_corners(bay, [], cover={**cover, "sides": {"cloth": "k1"}})
    document = job(entry, cloth("100 in"))
    assert check(document, plan(document, "quick")) > 0
