"""Backs of other outlines that close across their middle: envelope, buttons, zip on a trapezoid, an L, a U."""

import math
from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from jobs import changed, cloth, covers, job
from printed import texts
from test_outlined import ELL, IN, cross, in_threes, inches, made, of_corners, outlines, pieces, seat

from plumpline import JobError, plan
from plumpline.papers import sheet, templates
from plumpline.prepared import Prepared, prepare

#: 40 in at the front, 20 at the back, 24 deep: by the triple 10, 24, 26 its sides are 26 in, and it is 40 - 20 y / 24
#: wide at a height of y.
TRAPEZOID = inches((0, 0), (40, 0), (30, 24), (10, 24))
#: A seat round a post: a slot 10 in wide, 20 deep, leads in from the back.
AROUND_A_POST = inches((0, 0), (30, 0), (30, 30), (20, 30), (20, 10), (10, 10), (10, 30), (0, 30))

ENVELOPE = {"kind": "envelope", "overlap": "4 in", "hem": "1 in"}
ZIP = {"kind": "zip", "at": "back"}
SEWN_UP = {"kind": "hand-sewn"}


def flat(corners, closure, notches=(), **more):
    """A knife-edge cover of that outline, closed so."""
    return of_corners(corners, notches, kind="knife-edge", cover={"closure": closure, **more.pop("cover", {})}, **more)


def around_a_post(closure, kind="knife-edge", **more):
    across = [(0, 2), (0, 5), (0, 6), (1, 4), (1, 5), (4, 2), (7, 5)]
    corners = AROUND_A_POST
    sides = [f"{math.dist(*ends) / IN:.0f} in" for ends in zip(corners, [*corners[1:], corners[0]], strict=True)]
    taped = [[one, other, f"{math.dist(corners[one], corners[other]) / 1e6:.6f} mm"] for one, other in across]
    return seat(sides, taped, [4, 5], kind, cover={"closure": closure}, **more)


def parts(cover):
    return {piece.part: piece for piece in cover.pieces}


def near(*lengths):
    """To a few hundred nm: the corners follow from lengths that are rounded to a nanometre."""
    return pytest.approx([length * IN for length in lengths], abs=500)


def told(cover):
    return " ".join(cover.cutting)


def plain(text):
    return text.replace("≈ ", "")


def refused(entry):
    with pytest.raises(JobError) as raised:
        plan(job(entry, cloth("80 in")), "quick")
    return {p["at"].removeprefix("/cushions/0/cover/"): (p["code"], plain(p["text"])) for p in raised.value.problems}


# ---- the same rules as for rectangles -------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "closure",
    [
        {"kind": "envelope", "overlap": "4 in", "hem": "1 in"},
        {"kind": "envelope"},
        {"kind": "buttons", "hem": "1 1/2 in"},
        {"kind": "zip", "at": "back"},
        {"kind": "zip", "at": "back", "zip_seam": "5/8 in", "length": "9 in"},
        {"kind": "hand-sewn"},
    ],
)
@pytest.mark.parametrize("kind", ["knife-edge", "boxed"])
def test_a_rectangle_given_by_its_sides_has_the_pieces_of_a_rectangle(closure, kind):
    """17 in and 1/2 in seams are 18 in cut, and the envelope's pieces 12 in with 4 and 1 (home magazine, 2019)."""
    corners = inches((0, 0), (17, 0), (17, 15), (0, 15))
    by_sides = of_corners(corners, kind=kind, fill="polyester", cover={"closure": closure})
    rectangle = covers(1, "17 in", "15 in", kind=kind)
    rectangle["cover"]["closure"] = closure
    rectangle["insert"] |= {"fill": "polyester", **({"thickness": "3 in"} if kind == "boxed" else {})}
    one, other = made(by_sides), made(rectangle)
    back = [part for part in parts(other) if part.startswith("back")]
    assert [part for part in parts(one) if part.startswith("back")] == back
    for part in ("front", *back):
        here, there = parts(one)[part], parts(other)[part]
        assert (here.width, here.length) == pytest.approx((there.width, there.length), abs=500)
        assert len(here.outline) == 4
        assert here.aim == pytest.approx(there.aim, abs=500)
        assert here.count == there.count
    at, to = one.closing, other.closing
    assert (at.kind, at.at, at.overlap, at.allowance) == (to.kind, to.at, to.overlap, to.allowance)
    if at.at == "back":
        assert (at.edge, at.length) == pytest.approx((to.edge, to.length), abs=500)
    assert sorted((sewn.length, sewn.layers) for sewn in one.sewn) == [
        (pytest.approx(length, abs=2000), layers)
        for length, layers in sorted((sewn.length, sewn.layers) for sewn in other.sewn)
    ]


def test_eighteen_inches_make_two_pieces_of_twelve_that_overlap_by_four():
    cover = made(flat(inches((0, 0), (17, 0), (17, 17), (0, 17)), ENVELOPE))
    assert [(piece.width, piece.length) for piece in cover.pieces] == [near(18, 18), near(18, 12), near(18, 12)]
    assert "(18 + 4 overlap + 2 × 1 in hem) ÷ 2 = 12 in each." in plain(told(cover))
    assert "8 1/2 in above its lowest edge; there it is 17 in wide." in plain(told(cover))
    assert "slant" not in told(cover)


@pytest.mark.parametrize("closure", [ENVELOPE, ZIP, SEWN_UP])
@pytest.mark.parametrize(
    "corners",
    [{"kind": "tapered"}, {"kind": "tapered", "run": "3 in", "depth": "1 in"}, {"kind": "rounded", "radius": "3 in"}],
)
def test_corners_of_a_square_given_by_its_sides_are_those_of_a_square_on_a_back_in_two_too(closure, corners):
    by_sides = made(flat(inches((0, 0), (17, 0), (17, 17), (0, 17)), closure, cover={"corners": corners}))
    entry = covers(1, "17 in", "17 in")
    entry["cover"] |= {"closure": closure, "corners": corners}
    for here, there in zip(by_sides.pieces, made(entry).pieces, strict=True):
        assert (here.part, here.width, here.length) == (there.part, there.width, there.length)
        assert sorted(here.outline) == [pytest.approx(point, abs=500) for point in sorted(there.outline)]
        assert here.aim == pytest.approx(there.aim, abs=500)
        tapers = [[mark.text for mark in piece.marks if mark.kind == "taper"] for piece in (here, there)]
        assert len(tapers[0]) == len(tapers[1])


@pytest.mark.reference
@pytest.mark.parametrize("corners", [{"kind": "tapered"}, {"kind": "rounded", "radius": "2 in"}])
def test_two_pieces_with_corners_cover_the_back_with_corners(corners):
    """shapely 2: stitched, the pieces together are the back that is sewn up, corners and all."""
    from shapely import Polygon

    for outline, notches in ((TRAPEZOID, []), (ELL, [3])):
        divided, sewn = (made(flat(outline, one, notches, cover={"corners": corners})) for one in (ENVELOPE, SEWN_UP))
        whole = parts(sewn)["back"]
        pieces_of = [parts(divided)[part] for part in ("back-1", "back-2")]
        stitched = [Polygon(moved(piece.stitched, piece, whole)) for piece in pieces_of]
        closed = Polygon(whole.stitched)
        assert stitched[0].union(stitched[1]).symmetric_difference(closed).area < closed.length * 100
        assert all(Polygon(piece.outline).is_valid for piece in pieces_of)


def test_a_taper_that_does_not_fit_is_told_as_on_a_whole_back():
    found = refused(flat(TRAPEZOID, ENVELOPE, cover={"corners": {"kind": "tapered", "run": "15 in"}}))
    assert {at: code for at, (code, _) in found.items()} == {"corners/run": "corner-too-large"}


# ---- slanted sides --------------------------------------------------------------------------------------------------


def test_a_trapezoid_is_worked_out_by_hand():
    """24 in are cut 25, so each piece is (25 + 4 + 2) ÷ 2 = 15 1/2 in. The upper one ends at 24 - 14 = 10 in, where the
    trapezoid is 31 2/3 wide, the lower one at 14, where it is 28 1/3: 30 on an average."""
    cover = made(flat(TRAPEZOID, ENVELOPE))
    upper, lower = parts(cover)["back-1"], parts(cover)["back-2"]
    assert [upper.length, lower.length] == near(15.5, 15.5)
    assert cover.closing.edge == pytest.approx(30 * IN, abs=500)
    assert level_sides(upper) == near(Fraction(95, 3), 20)
    assert level_sides(lower) == near(40, Fraction(85, 3))
    assert "It is divided level from side to side, 12 in above its lowest edge; there it is 30 in wide." in plain(
        told(cover)
    )


def level_sides(piece):
    """The sides of the stitching line that lie level, from the lowest up."""
    line = piece.stitched
    ends = [side for side in zip(line, [*line[1:], line[0]], strict=True) if abs(side[0][1] - side[1][1]) < 5]
    return [math.dist(*side) for side in sorted(ends, key=lambda side: side[0][1])]


def widths_at(piece, *heights):
    """How wide a piece is cut at some heights."""
    found = []
    for height in heights:
        level = height * IN
        sides = zip(piece.outline, [*piece.outline[1:], piece.outline[0]], strict=True)
        xs = [
            ax + Fraction((bx - ax) * (level - ay), by - ay)
            for (ax, ay), (bx, by) in sides
            if ay != by and min(ay, by) <= level <= max(ay, by)
        ]
        found.append((max(xs) - min(xs)) / IN)
    return found


def test_the_ends_of_a_hem_are_cut_as_it_is_folded_so_that_turned_it_ends_at_the_side_seams():
    """The cut edges lie 1/2 × 26 / 24 in beyond the seams, so at a height of y the trapezoid is cut 40 - 20 y / 24 +
    26 / 24 in wide. Folded under twice by 1/2 in, the hem of the lower piece, which ends at 14 in, lies on what is
    between 13 1/2 and 14, and its cut edge at the fold."""
    cover = made(flat(TRAPEZOID, ENVELOPE))
    lower, upper = parts(cover)["back-2"], parts(cover)["back-1"]

    def cut(y):
        return 40 - Fraction(20, 24) * y + Fraction(26, 24)

    # From the fold on: 1/4 in, 1/2 in, where it is folded again, and almost 1 in; 1/2 in of seam lie below its front.
    wide = [cut(Fraction(y)) for y in ("14", "13.75", "13.5", "13.75", "14")]
    found = widths_at(lower, *(Fraction(14.5) + Fraction(n, 4) for n in range(5)))
    assert found == [pytest.approx(one, abs=1e-4) for one in wide]
    wide = [cut(Fraction(y)) for y in ("10", "10.25", "10.5", "10.25", "10")]
    found = widths_at(upper, *(1 - Fraction(n, 4) for n in range(5)))
    assert found == [pytest.approx(one, abs=1e-4) for one in wide]
    assert "Where its sides slant, the ends of the hems are cut as folded" in told(cover)
    assert [mark.text for piece in (upper, lower) for mark in piece.marks if mark.kind == "hem"] == [
        "1 in for the hem, its ends cut as it is folded"
    ] * 2


def test_edges_without_a_hem_end_where_they_lie():
    """(25 + 4) ÷ 2 in each."""
    cover = made(flat(TRAPEZOID, {**ENVELOPE, "hem": "0 in"}))
    for part in ("back-1", "back-2"):
        assert parts(cover)[part].length == pytest.approx(14.5 * IN, abs=500)
        assert len(parts(cover)[part].outline) == 4


def test_the_allowance_at_a_zip_is_cut_as_it_is_pressed_open():
    """Half of 24 in, 1/2 in of seam and 3/4 at the zip; the zip 2 in shorter than the 30 in between the seams."""
    cover = made(flat(TRAPEZOID, ZIP))
    upper, lower = parts(cover)["back-1"], parts(cover)["back-2"]
    assert [upper.length, lower.length] == near(13.25, 13.25)
    assert [cover.closing.edge, cover.closing.length] == near(30, 28)
    beyond = Fraction(26, 24)
    # 3/4 in from the fold each is as wide as the trapezoid is cut 3/4 in from the zip on its own side.
    assert widths_at(lower, Fraction(25, 2), Fraction(53, 4)) == [
        pytest.approx(30 + beyond, abs=1e-4),
        pytest.approx(30 + Fraction(20, 24) * Fraction(3, 4) + beyond, abs=1e-4),
    ]
    assert widths_at(upper, Fraction(3, 4), 0) == [
        pytest.approx(30 + beyond, abs=1e-4),
        pytest.approx(30 - Fraction(20, 24) * Fraction(3, 4) + beyond, abs=1e-4),
    ]
    zips = [mark for piece in (upper, lower) for mark in piece.marks if mark.kind == "zip"]
    assert [math.dist(*mark.points) for mark in zips] == near(28, 28)
    assert "half of it each and 3/4 in at the zip: 12 in height become 13 1/4 in." in plain(told(cover))
    assert "the ends of the allowance at the zip are cut as folded" in told(cover)


def test_marks_of_the_back_come_on_the_piece_they_lie_on_and_both_have_the_middle_of_where_they_meet():
    cover = made(flat(TRAPEZOID, {"kind": "envelope", "overlap": "6 in"}))
    upper, lower = parts(cover)["back-1"], parts(cover)["back-2"]
    # The middles of the slanted sides lie 12 in up, and so where the pieces overlap.
    for piece, fold in ((upper, Fraction(0)), (lower, Fraction(piece_height(lower)))):
        (centre,) = [mark for mark in piece.marks if mark.kind == "centre"]
        assert len(centre.points) == 4
        assert any(y == pytest.approx(fold * IN, abs=500) for _, y in centre.points)
        (top,) = [mark for mark in piece.marks if mark.kind == "top"]
        assert top.points[0][1] == piece.length


def piece_height(piece):
    return Fraction(piece.length, IN)


def test_a_motif_stands_at_the_centre_of_the_closed_back_on_both_pieces():
    """The middle of the trapezoid, 20 in from its left corner and 12 up, told from each piece's own corner."""
    printed = {
        "repeat": {"across": "9 in", "along": "9 in"},
        "motifs": [{"id": "m", "across": "1 in", "along": "0 in"}],
    }
    face = {"cloth": "k1", "pattern": "centred", "motif": "m"}
    cover = made(flat(TRAPEZOID, ENVELOPE, cover={"back": face}), start="measured", **printed)
    upper, lower = parts(cover)["back-1"], parts(cover)["back-2"]
    corner = 10 * Fraction(10, 24)  # how far in the left side is where the upper piece ends, at 10 in
    at_fold = Fraction(1, 2) * Fraction(26, 24)  # and what its cut edge lies beyond that, level
    assert list(upper.aim) == near(20 - corner + at_fold, 12 - 10 + 1)
    assert lower.aim[1] == pytest.approx(12.5 * IN, abs=500)
    answer = plan(job(flat(TRAPEZOID, ENVELOPE, cover={"back": face}), cloth("80 in", start="measured", **printed)))
    laid = {entry["piece"]: entry for entry in answer["cloths"][0]["layout"]}
    for piece in (upper, lower):
        place = laid[piece.id]
        assert place["turn"] == 0
        assert (place["x"] + piece.aim[0] - IN) % (9 * IN) == 0
        assert (place["y"] + piece.aim[1]) % (9 * IN) == 0


# ---- L, T and U seats -----------------------------------------------------------------------------------------------


def test_an_ell_is_cut_through_its_arm_and_its_seat_when_the_overlap_reaches_both():
    """50 in from front to back, cut 51: the pieces are (51 + 12 + 2) ÷ 2 = 32 1/2 in. The upper one ends at 19 in,
    below the inner corner at 20, so it is 60 wide there; the lower one at 31, where the arm is 24 wide."""
    cover = made(of_corners(ELL, [3], cover={"closure": {**ENVELOPE, "overlap": "12 in"}}, quantity=2, mirrored=1))
    upper, lower = parts(cover)["back-1"], parts(cover)["back-2"]
    assert [upper.width, upper.length, lower.width, lower.length] == near(61, 32.5, 61, 32.5)
    assert cover.closing.edge == pytest.approx(42 * IN, abs=500)
    assert [len(piece.outline) for piece in (upper, lower)] == [6, 6]
    for piece in (upper, lower):
        assert any(mark.kind == "clip" for mark in piece.marks)
        other = parts(cover)[f"{piece.part}-mirrored"]
        assert sorted((piece.width - x, y) for x, y in piece.outline) == sorted(other.outline)
        assert (piece.count, other.count) == (1, 1)
    assert {"back-1-mirrored", "back-2-mirrored"} <= set(parts(cover))


def test_a_line_that_would_meet_more_than_two_sides_is_moved_to_the_nearest_place_where_it_does_not():
    """Half of 30 in is 15, in the slot; the floor of the slot, 10 in up, is cut at 10 1/2: 3/4 in below that is 9 3/4,
    and so the lower piece is 9 3/4 + 3/4 + 1/2 = 11 in, the upper one 20 1/4 + 3/4 + 1/2 = 21 1/2."""
    cover = made(around_a_post(ZIP))
    assert [parts(cover)[part].length for part in ("back-1", "back-2")] == near(21.5, 11)
    assert "cut in two, 21 1/2 in and 11 in from edge to edge, each with 3/4 in at the zip." in plain(told(cover))
    assert "9 3/4 in above its lowest edge, not in its middle, so that it meets no more than two sides" in plain(
        told(cover)
    )
    assert [cover.closing.edge, cover.closing.length] == near(30, 28)
    lapped = made(around_a_post(ENVELOPE, kind="boxed"))
    # The lower piece ends 1 in below 10 1/2, the upper one 4 in lower: 9 1/2 + 1 + 1/2 and 24 1/2 + 1 + 1/2.
    assert [parts(lapped)[part].length for part in ("back-1", "back-2")] == near(26, 11)
    assert "26 in and 11 in from edge to edge, each with half of 4 overlap and 1 in hem." in plain(told(lapped))
    assert "The upper piece lies outside and opens downwards." in told(lapped)


def test_a_back_that_has_nowhere_enough_room_is_refused_with_both_numbers():
    """Below the slot lie 10 in."""
    text = "Level lines cross this back at just two of its sides over 10 in at most, "
    far = refused(around_a_post({"kind": "envelope", "overlap": "11 in"}))
    assert far == {
        "closure/overlap": (
            "rules-contradict",
            text + "which is no room to overlap by 11 in with hems of 1 in: overlap it less, or close it in a seam.",
        )
    }
    wide = refused(around_a_post({"kind": "zip", "at": "back", "zip_seam": "6 in"}, kind="boxed"))
    assert wide == {
        "closure/at": (
            "rules-contradict",
            text + "and a zip takes 12 in with the allowance at either side: take less, or close it in a seam.",
        )
    }


# ---- what cannot be -------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("closure", "at", "code", "numbers"),
    [
        ({**ZIP, "length": "31 in"}, "length", "zip-longer-than-seam", ("31 in", "30 in")),
        ({**ENVELOPE, "overlap": "1/2 in"}, "overlap", "overlap-under-hems", ("1/2 in", "1 in")),
        ({**ENVELOPE, "overlap": "25 in"}, "overlap", "rules-contradict", ("25 in", "24 in")),
        ({**ENVELOPE, "at": "bottom"}, "at", "unknown-value", ("back",)),
        ({"kind": "ties", "at": "back"}, "at", "unknown-value", ("bottom",)),
    ],
)
def test_what_cannot_close_is_said_at_its_field_with_both_numbers(closure, at, code, numbers):
    found = refused(flat(TRAPEZOID, closure))
    assert list(found) == [f"closure/{at}"]
    assert found[f"closure/{at}"][0] == code
    assert all(number in found[f"closure/{at}"][1] for number in numbers)


def test_what_an_outline_does_not_have_is_refused_and_not_forgotten():
    seams = refused(flat(TRAPEZOID, ENVELOPE, cover={"side_seam": "1 in"}))
    assert seams["side_seam"][0] == "rules-contradict"
    assert not isinstance(made(flat(TRAPEZOID, ENVELOPE, cover={"side_seam": "1/2 in"})), list)
    border = {"cloth": "k1", "made": {"kind": "border"}}
    edge = {"kind": "flanged", "flange": "1 in"}
    assert set(refused(flat(TRAPEZOID, ENVELOPE, cover={"front": border, "edge": edge}))) == {"front/made/kind"}
    assert set(refused(flat(TRAPEZOID, ENVELOPE, cover={"back": border}))) == {"back/made/kind"}
    in_pieces = flat(TRAPEZOID, ENVELOPE, cover={"back": {"cloth": "k1", "joined": "one-side"}})
    assert set(refused(in_pieces)) == {"back/joined"}


def test_a_zip_band_returns_as_far_as_its_sides_go_where_nobody_said_how_far():
    """A practitioner's 4 in on sides of 2 1/2: all of them; 20 + 2 × 2 1/2 = 25 in. What is said is never changed."""
    deep = 5 * IN // 2
    entry = of_corners([(0, 0), (20 * IN, 0), (20 * IN, deep), (0, deep)], cover={"closure": {"kind": "zip"}})
    cover = made(entry)
    assert [cover.closing.returns, cover.closing.edge] == near(2.5, 25)
    text = "The zip band returns 2 1/2 in round each corner, as far as the side beside it goes, instead of 4 in."
    assert text in plain(told(cover))
    assert plan(job(entry, cloth("80 in")), "quick")["cushions"][0]["closing"]["returns"]["nm"] == cover.closing.returns
    said = changed({"x": entry}, "/x/cover/boxing", {"returns": "4 in"})["x"]
    assert refused(said)["boxing/returns"][0] == "rules-contradict"
    rectangle = covers(1, "20 in", "3 in", kind="boxed")
    rectangle["insert"]["thickness"], rectangle["cover"]["closure"] = "2 in", {"kind": "zip"}
    assert made(rectangle).closing.edge == 26 * IN
    assert "instead of" not in told(made(of_corners(TRAPEZOID, cover={"closure": {"kind": "zip"}})))


# ---- edges, layers, papers ------------------------------------------------------------------------------------------


@pytest.mark.reference
def test_a_flange_goes_on_round_both_pieces_and_the_zip_lies_within_it():
    """shapely 2: closed, the two pieces cover the outline moved out by the flange; the zip is 2 in shorter than the
    30 in that the trapezoid is wide inside its flange."""
    from shapely import Polygon

    cover = made(flat(TRAPEZOID, ZIP, cover={"edge": {"kind": "flanged", "flange": "2 in"}}))
    wanted = Polygon(TRAPEZOID).buffer(2 * IN, join_style="mitre", mitre_limit=50)
    stitched = [Polygon(parts(cover)[part].stitched) for part in ("back-1", "back-2")]
    assert sum(shape.area for shape in stitched) == pytest.approx(wanted.area, rel=1e-7)
    assert [cover.closing.edge, cover.closing.length] == near(30, 28)
    for part in ("back-1", "back-2"):
        (mark,) = [mark for mark in parts(cover)[part].marks if mark.kind == "zip"]
        assert math.dist(*mark.points) == pytest.approx(28 * IN, abs=500)
    lapped = made(flat(TRAPEZOID, ENVELOPE, cover={"edge": {"kind": "flanged", "flange": "2 in"}}))
    assert [parts(lapped)[part].length for part in ("back-1", "back-2")] == near(17.5, 17.5)  # (29 + 4 + 2) ÷ 2


def test_piping_and_layers_go_with_a_back_in_two_pieces():
    layers = {name: {"cloth": "k1"} for name in ("lining", "interlining", "protector")}
    edge = {"kind": "piped", "join": "2 in"}
    cover = made(flat(TRAPEZOID, ENVELOPE, cover={"layers": layers, "edge": edge}))
    found = parts(cover)
    for part in ("back-1", "back-2"):
        assert found[f"lining-{part}"].outline == found[part].outline
        assert len(found[f"interlining-{part}"].outline) == 4
    assert [found[f"interlining-{part}"].length for part in ("back-1", "back-2")] == near(14, 14)
    assert "protector-back" in found
    assert cover.strips[0].length == pytest.approx((40 + 26 + 20 + 26 + 2) * IN, abs=500)
    assert "closed in the middle of side AB." in told(cover)
    (hems,) = [sewn for sewn in cover.sewn if sewn.layers == 6]  # three of the cover and three of its lining
    assert hems.length == pytest.approx(60 * IN, abs=1000)


def test_buttons_are_counted_along_the_line():
    answer = plan(job(flat(TRAPEZOID, {"kind": "buttons"}), cloth("80 in")), "quick")
    closing = answer["cushions"][0]["closing"]
    assert (closing["at"], closing["side"], plain(closing["edge"]["text"])) == ("back", None, "30 in")
    assert plain(closing["up"]["text"]) == "12 in"
    assert any(line["kind"] == "buttons" for line in answer["materials"])


@pytest.mark.reference
def test_the_sheet_and_the_templates_say_how_the_back_closes():
    """Read with pypdf."""
    document = job(flat(TRAPEZOID, {"kind": "buttons"}), cloth("80 in"))
    told_on_sheet = " ".join(texts(sheet(document, "a4")))
    assert "buttoned back" in told_on_sheet
    assert "its ends cut as it is folded" in told_on_sheet
    on_templates = " ".join(texts(templates(document, "a4")))
    assert "back 1" in on_templates
    assert "back 2" in on_templates
    assert "1 in for the hem, its ends cut as it is folded." in on_templates


def test_a_wash_after_making_draws_the_pieces_out_as_it_does_the_front():
    """3 % along: everything is cut 1 / 0.97 longer, hem and all."""
    washed = {"shrinkage": {"along": "0.03"}, "wash": "after-making"}
    cover = made(flat(TRAPEZOID, ENVELOPE), **washed)
    assert [piece.length for piece in cover.pieces] == near(
        *(Fraction(n) / Fraction("0.97") for n in ("25", "15.5", "15.5"))
    )
    (hem,) = [mark for mark in parts(cover)["back-1"].marks if mark.kind == "hem"]
    assert [y for _, y in hem.points] == near(*[1 / Fraction("0.97")] * 2)


def test_laid_out_by_their_outlines_the_pieces_of_a_bay_take_less_than_their_rectangles():
    answer = plan(job(flat(TRAPEZOID, ENVELOPE), cloth("60 in", direction="any")), "quick")
    found = pieces(answer)
    assert all("outline" in entry for entry in answer["cloths"][0]["layout"])
    assert {"front", "back-1", "back-2"} == set(found)


# ---- properties -----------------------------------------------------------------------------------------------------


@st.composite
def backs(draw):
    """A random outline whose back closes across it in some way, and the same one sewn up."""
    corners = draw(outlines())
    turns = [cross(before, corner, after) for before, corner, after in in_threes(corners)]
    assume(all(abs(turn) > IN * IN for turn in turns))
    notches = [i for i, turn in enumerate(turns) if turn < 0]
    closure = draw(
        st.sampled_from(
            [
                {"kind": "envelope", "overlap": "3 in", "hem": "1 in"},
                {"kind": "envelope", "overlap": "1 in", "hem": "1/2 in"},
                {"kind": "buttons"},
                {"kind": "zip", "at": "back", "zip_seam": "1/2 in", "length": "1 in"},
            ]
        )
    )
    kind = draw(st.sampled_from(["knife-edge", "boxed"]))
    made_so = [of_corners(corners, notches, kind=kind, cover={"closure": one}) for one in (closure, SEWN_UP)]
    prepared = [prepare(job(entry, cloth("80 in", direction="any"), grid="0")) for entry in made_so]
    assert all(isinstance(one, Prepared) for one in prepared)
    assume(not any(one.problems for one in prepared))
    return closure, *(one.covers[0] for one in prepared)


def moved(points, piece, whole):
    """Points of a piece as they lie on the whole back, by the point in its middle that the motif stands on."""
    return [(x + whole.aim[0] - piece.aim[0], y + whole.aim[1] - piece.aim[1]) for x, y in points]


@pytest.mark.reference
@settings(max_examples=60, deadline=None)
@given(backs())
def test_closed_the_two_pieces_are_the_back_and_lie_over_each_other_as_far_as_they_should(drawn):
    """shapely 2: stitched, the pieces together cover the back and nothing else; what both cover is the overlap. Cut,
    each is the back as far as its fold and, folded there, its hem lies on it from cut edge to cut edge."""
    from shapely import Polygon, box
    from shapely.affinity import scale, translate

    closure, divided, sewn = drawn
    whole = parts(sewn)["back"]
    closed, pieces_of = Polygon(whole.stitched), [parts(divided)[part] for part in ("back-1", "back-2")]
    stitched = [Polygon(moved(piece.stitched, piece, whole)) for piece in pieces_of]
    slack = closed.length * 10  # ten nanometres all round
    assert stitched[0].union(stitched[1]).symmetric_difference(closed).area < slack
    overlap = divided.closing.overlap
    low, high = stitched[0].bounds[1], stitched[1].bounds[3]
    assert high - low == pytest.approx(overlap, abs=4)
    between = closed.intersection(box(-1e12, low, 1e12, high)) if overlap else Polygon()
    assert stitched[0].intersection(stitched[1]).area == pytest.approx(between.area, abs=slack)
    deep = divided.closing.allowance
    for piece, fold, way in zip(pieces_of, (low, high), (1, -1), strict=True):
        cut = Polygon(moved(piece.outline, piece, whole))
        assert cut.is_valid
        beyond = box(-1e12, fold, 1e12, 1e12) if way > 0 else box(-1e12, -1e12, 1e12, fold)
        body, flap = cut.intersection(beyond), cut.difference(beyond)
        assert body.symmetric_difference(Polygon(whole.outline).intersection(beyond)).area < slack * 100
        folds = [fold] if closure["kind"] == "zip" else [fold - way * deep / 2, fold]
        for line in folds:
            outer = box(-1e12, -1e12, 1e12, line) if way > 0 else box(-1e12, line, 1e12, 1e12)
            turned = scale(flap.intersection(outer), yfact=-1, origin=(0, line))
            flap = flap.difference(outer).union(turned)
        lying = flap.intersection(beyond)
        reached = deep if closure["kind"] == "zip" else deep / 2
        wanted = body.intersection(translate(box(-1e12, 0, 1e12, reached), 0, fold - (0 if way > 0 else reached)))
        # Ends that stand out by less than 1/32 in are cut straight on.
        assert wanted.symmetric_difference(lying).area < 2 * reached * IN / 32 + slack


@settings(max_examples=40, deadline=None)
@given(backs())
def test_every_side_is_sewn_to_the_front_all_along_by_one_piece_or_the_other(drawn):
    """Along each side the stretches of both pieces together reach from corner to corner; nothing else is sewn in."""
    _, divided, sewn = drawn
    whole = parts(sewn)["back"]
    stretches = []
    for part in ("back-1", "back-2"):
        piece = parts(divided)[part]
        line = moved(piece.stitched, piece, whole)
        sides = list(zip(line, [*line[1:], line[0]], strict=True))
        fold = min(y for _, y in line) if part == "back-1" else max(y for _, y in line)
        stretches += [side for side in sides if not side[0][1] == side[1][1] == fold]
    for start, end in zip(whole.stitched, [*whole.stitched[1:], whole.stitched[0]], strict=True):
        length = math.dist(start, end)
        spans = sorted(
            tuple(sum((p[k] - start[k]) * (end[k] - start[k]) for k in (0, 1)) / length for p in side)
            for side in stretches
            if all(abs(cross(start, end, p)) < 5 * length for p in side)
            and (side[1][0] - side[0][0]) * (end[0] - start[0]) + (side[1][1] - side[0][1]) * (end[1] - start[1]) > 0
        )
        spans = [span for span in spans if span[1] > 3 and span[0] < length - 3]
        assert spans[0][0] == pytest.approx(0, abs=3)
        assert max(high for _, high in spans) == pytest.approx(length, abs=3)
        assert all(low <= high + 3 for (_, high), (low, _) in pairwise(spans))
