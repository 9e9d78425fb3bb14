"""Seats of other outlines: bays, trapezoids, T and L seats from sides and diagonals; closure, hands and the ring."""

import math
import re

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from jobs import changed, cloth, job
from printed import texts

from plumpline import JobError, plan
from plumpline.cushions.rims import rims_of
from plumpline.papers import templates
from plumpline.prepared import Prepared, prepare

IN = 25_400_000

#: A maker's bay (case A40): 90 in wide at the front, 60 at the back, 31 deep, so its sides are √(15² + 31²) = 34.44 in
#: and its diagonals √(75² + 31²) = 81.15 in; taped to the nearest 1/8 in.
BAY = ["90 in", "34 1/2 in", "60 in", "34 1/2 in"]
BAY_ACROSS = [[0, 2, "81 1/8 in"], [1, 3, "81 1/8 in"]]


def seat(sides=BAY, across=BAY_ACROSS, notches=(), kind="boxed", cloth="k1", fill="foam", **more):
    """One entry of a straight-sided seat; `cover` among `more` goes into its cover."""
    face = {"cloth": cloth}
    thick = {"thickness": "3 in"} if kind == "boxed" else {}
    insert = {"shape": "polygon", "sides": list(sides), "diagonals": [list(one) for one in across], "fill": fill}
    made = {"smaller_by": "0 in", "seam": "1/2 in", "front": dict(face), "back": dict(face), **more.pop("cover", {})}
    return {
        "id": "c1",
        "quantity": 1,
        "kind": kind,
        "insert": {**insert, **({"notches": list(notches)} if notches else {}), **thick},
        "cover": made,
        **more,
    }


def of_corners(corners, notches=(), kind="boxed", **more):
    """A seat taped exactly, in nm as mm texts: its sides, and every corner from the first."""
    count = len(corners)
    sides = [mm(corners[i], corners[(i + 1) % count]) for i in range(count)]
    return seat(sides, [[0, i, mm(corners[0], corners[i])] for i in range(2, count - 1)], notches, kind, **more)


def mm(one, other):
    nm = math.isqrt((one[0] - other[0]) ** 2 + (one[1] - other[1]) ** 2)
    return f"{nm // 10**6}.{nm % 10**6:06d} mm"


def inches(*corners):
    return [(x * IN, y * IN) for x, y in corners]


ELL = inches((0, 0), (60, 0), (60, 20), (24, 20), (24, 50), (0, 50))


def answer_to(entry, wide="80 in", **more):
    return plan(job(entry, cloth(wide, **more)), "quick")


def lines(answer):
    return " ".join(line["text"] for line in answer["cushions"][0]["working"])


def pieces(answer):
    return {piece["part"]: piece for piece in answer["pieces"]}


def refused(entry):
    with pytest.raises(JobError) as raised:
        answer_to(entry)
    return {p["at"].removeprefix("/cushions/0/"): (p["code"], p["text"]) for p in raised.value.problems}


def made(entry, **more):
    prepared = prepare(job(entry, cloth("80 in", **more)))
    assert isinstance(prepared, Prepared)
    assert not prepared.problems, prepared.problems
    return prepared.covers[0]


# ---- the maker's bay ------------------------------------------------------------------------------------------------


def test_a_bay_window_bench_has_plates_of_its_outline_and_a_ring_of_its_sides():
    """Case A40: 90 + 34 1/2 + 60 + 34 1/2 = 219 in round; the zip band is back + 8 in (a practitioner)."""
    answer = answer_to(seat(cover={"closure": {"kind": "zip", "at": "boxing"}}), "100 in")
    found = pieces(answer)
    assert found["zip-band-1"]["width"]["text"] == "69 in"
    assert found["boxing-1"]["length"]["text"] == "4 in"
    assert "= 219 in, once round the plates." in lines(answer)
    assert "They close within ≈ 1/8 in." in lines(answer)
    assert "Stitched: AB 90 in, BC 34 1/2 in, CD 60 in and DA 34 1/2 in." in lines(answer)
    assert len(found["front"]["outline"]) == 4


def test_a40_the_sides_of_the_bay_are_34_44_inches_and_stand_at_64_2_degrees():
    """Case A40: 90 in wide, 60 at the back, 31 deep: √(15² + 31²) = 34.44 in, and atan(31 / 15) = 64.2 degrees."""
    cover = made(of_corners(inches((0, 0), (90, 0), (75, 31), (15, 31))))
    _, (x1, y1), (x2, y2), _ = cover.outline.corners
    assert round(math.hypot(x2 - x1, y2 - y1) / IN, 2) == 34.44
    assert round(math.degrees(math.atan2(y2 - y1, x1 - x2)), 1) == 64.2


@pytest.mark.reference
def test_plates_are_shapelys_mitred_buffer_of_the_seat():
    """shapely 2: the cut outline is the stitched one moved out by the seam at every side, corners kept sharp."""
    from shapely import Polygon

    for entry, corners in ((of_corners(ELL, [3]), ELL), (seat(), None)):
        cover = made(entry)
        front = next(piece for piece in cover.pieces if piece.part == "front")
        stitched = Polygon(front.stitched)
        if corners:
            assert stitched.area == pytest.approx(Polygon(corners).area, rel=1e-9)
        wanted = stitched.buffer(IN / 2, join_style="mitre", mitre_limit=50)
        assert Polygon(front.outline).symmetric_difference(wanted).area < 1e-8 * wanted.area
        assert (front.width, front.length) == pytest.approx(
            (wanted.bounds[2] - wanted.bounds[0], wanted.bounds[3] - wanted.bounds[1]), abs=3
        )


def test_an_ell_of_whole_inches_is_cut_as_squared_paper_shows():
    """Counted on squared paper: an L of 60 × 50 in, its arm 24 wide, is cut 61 × 51 with 1/2 in seams, its notch at
    (25, 21) from the lower left corner of what is cut."""
    front = pieces(answer_to(of_corners(ELL, [3])))["front"]
    assert (front["size"].replace("≈ ", "")) == "61 × 51 in"
    assert front["outline"][3] == pytest.approx([25 * IN, 21 * IN], abs=3)
    clip = next(mark for mark in front["marks"] if mark["kind"] == "clip")
    wanted = [25 * IN, 21 * IN], [24.5 * IN, 20.5 * IN]
    assert clip["points"] == [pytest.approx(point, abs=3) for point in wanted]


def test_the_back_is_the_mirror_image_of_the_front():
    cover = made(seat(["40 in", "20 in", "30 in", "25 in"], [[0, 2, "42 in"]]))
    front, back = cover.pieces[:2]
    assert sorted((front.width - x, y) for x, y in front.outline) == sorted(back.outline)
    assert sorted(front.outline) != sorted(back.outline)


def test_what_makes_it_smaller_comes_off_the_whole_width_and_height_half_on_each_side():
    """A rectangle given by its sides comes out as the rectangle does: (w - b) × (l - b)."""
    sides = ["20 in", "15 in", "20 in", "15 in"]
    by_sides = made(seat(sides, [[0, 2, "25 in"]], kind="knife-edge", fill="polyester", cover={"smaller_by": "1 in"}))
    assert by_sides.finished.lengths == (19 * IN, 14 * IN)
    assert [piece.width for piece in by_sides.pieces] == [20 * IN, 20 * IN]
    two = {"smaller_by": {"width": "1 in", "length": "2 in"}}
    assert made(seat(sides, [[0, 2, "25 in"]], kind="knife-edge", cover=two)).finished.lengths == (19 * IN, 13 * IN)


def test_a_size_that_is_wanted_orders_a_pad_larger_all_round_and_fills_its_true_area():
    """By the trade's rule 5 % of the square inches are ounces: a right triangle of 30 × 40 in holds 600, so 30 oz."""
    answer = answer_to(
        seat(["40 in", "30 in", "50 in"], [], kind="knife-edge", fill="polyester", size_from="finished"), "60 in"
    )
    cushion = answer["cushions"][0]
    assert cushion["filling"]["text"].startswith("30 oz")
    assert cushion["pad_outline"] == cushion["outline"]
    assert [line["kind"] for line in answer["materials"]][:2] == ["pad", "filling"]
    assert cushion["filling"]["geometry"] == []
    crumb = answer_to(seat(["40 in", "30 in", "50 in"], [], kind="knife-edge", fill="foam-crumb"), "60 in")
    assert crumb["cushions"][0]["filling"] is None
    larger = made(seat(["40 in", "30 in", "50 in"], [], size_from="finished", cover={"smaller_by": "1 in"}))
    (x, y) = larger.pad.outline[1]
    assert larger.pad.stocked is None
    assert x > 41 * IN > y


# ---- closing and hands ----------------------------------------------------------------------------------------------


def test_a_zip_takes_its_own_allowance_on_the_side_it_lies_on():
    """The contract: the allowance of each edge is the seam, but at the closing edge that of the zip, 3/4 in."""
    closure = {"kind": "zip", "side": 2}
    cover = made(seat(kind="knife-edge", cover={"closure": closure}))
    assert [piece.around for piece in cover.pieces] == [
        (IN // 2, IN // 2, 3 * IN // 4, IN // 2),
        (IN // 2, 3 * IN // 4, IN // 2, IN // 2),
    ]
    zip_mark = next(mark for mark in cover.pieces[0].marks if mark.kind == "zip")
    (ax, ay), (bx, by) = zip_mark.points
    assert math.hypot(bx - ax, by - ay) == pytest.approx(58 * IN, abs=4)
    assert cover.closing.words == "in the seam at side CD"


def test_a_hem_lies_along_the_side_that_stays_open():
    cover = made(seat(kind="knife-edge", cover={"closure": {"kind": "open", "side": 1}}))
    front = cover.pieces[0]
    hem = next(mark for mark in front.marks if mark.kind == "hem")
    assert hem.points == (front.stitched[1], front.stitched[2])


def test_a_box_without_a_zip_in_its_boxing_is_closed_in_the_seam_of_its_back():
    cover = made(seat(cover={"closure": {"kind": "hand-sewn"}}))
    assert cover.closing.words == "in the seam of the back at side CD"
    assert cover.closing.edge == 60 * IN


def test_a_pair_is_cut_in_both_hands_and_what_has_none_is_cut_alike():
    """Face side up: the front of the mirrored one has the outline of the other's back."""
    pair = of_corners(ELL, [3], quantity=2, mirrored=1)
    answer = answer_to(pair)
    found = pieces(answer)
    assert found["front"]["count"] == found["front-mirrored"]["count"] == 1
    assert sorted(found["front-mirrored"]["outline"]) == sorted(found["back"]["outline"])
    assert sum(piece["count"] for part, piece in found.items() if part.startswith("front")) == 2
    assert "1 of 2 are made the other way round: their pieces are mirrored." in lines(answer)
    square = seat(["20 in"] * 4, [[0, 2, "28 1/4 in"]], quantity=2, mirrored=1)
    assert pieces(answer_to(square))["boxing-1"]["count"] == 2
    whole = pieces(answer_to(of_corners(ELL, [3], quantity=2, mirrored=2)))
    assert "front" not in whole
    assert whole["front-mirrored"]["count"] == 2


def test_a_motif_off_the_middle_stands_mirrored_too():
    printed = {
        "repeat": {"across": "9 in", "along": "9 in"},
        "motifs": [{"id": "m", "across": "1 in", "along": "0 in"}],
    }
    face = {"cloth": "k1", "pattern": "centred", "motif": "m", "offset": {"across": "2 in"}}
    cover = made(of_corners(ELL, [3], quantity=2, mirrored=1, cover={"front": face}), **printed)
    front, turned = cover.pieces[:2]
    assert turned.part == "front-mirrored"
    assert front.aim[0] + turned.aim[0] == front.width


# ---- edges and layers -----------------------------------------------------------------------------------------------


def test_layers_follow_the_outline_and_an_interlining_ends_at_the_stitching_line():
    layers = {name: {"cloth": "k2"} for name in ("lining", "interlining", "protector", "wrap")}
    entry = of_corners(ELL, [3], quantity=2, mirrored=1, cover={"layers": layers, "closure": {"kind": "zip"}})
    answer = plan(job(entry, [cloth("80 in", direction="any"), cloth("80 in", id="k2", direction="any")]), "quick")
    found = pieces(answer)
    assert found["lining-front"]["outline"] == found["front"]["outline"]
    assert sorted(found["lining-front-mirrored"]["outline"]) == sorted(found["back"]["outline"])
    stitched = found["interlining-front"]["outline"]
    assert [pytest.approx(corner, abs=50) for corner in ELL] == [tuple(corner) for corner in stitched]
    assert found["wrap"]["size"].replace("≈ ", "") == "64 × 54 in"  # 60 × 50 and, at each edge, half of 3 in and 1/2 in
    assert found["wrap"]["count"] == 4


@pytest.mark.reference
def test_a_flange_goes_on_beyond_the_outline_and_is_stitched_off_along_it():
    """shapely 2: the cut outline is the finished one moved out by flange and seam together, corners kept sharp."""
    from shapely import Polygon

    edge = {"kind": "flanged", "flange": "2 in"}
    flanged = of_corners(ELL, [3], kind="knife-edge", quantity=2, mirrored=1, cover={"edge": edge})
    found = pieces(answer_to(flanged))
    wanted = Polygon(ELL).buffer(2.5 * IN, join_style="mitre", mitre_limit=50)
    assert Polygon(found["front"]["outline"]).area == pytest.approx(wanted.area, rel=1e-7)
    for part in ("front", "front-mirrored"):
        inner = next(mark["points"] for mark in found[part]["marks"] if mark["kind"] == "flange")
        assert Polygon(inner).area == pytest.approx(Polygon(ELL).area, rel=1e-7)
    assert "over all the cover is 64 in by 54 in" in lines(answer_to(flanged)).replace("≈ ", "")
    assert "and 2 in for the flange" in lines(answer_to(flanged))


def test_piping_goes_round_both_rims_from_the_middle_of_the_closing_side():
    """219 in round: twice that, and 2 in where the ends of each ring meet (a magazine gives 4 in, workrooms 1 to 2)."""
    edge = {"kind": "piped", "rims": "both", "cloth": "k2", "cord": "5/32 in", "join": "2 in"}
    entry = seat(cover={"edge": edge, "closure": {"kind": "zip"}})
    bolts = [cloth("100 in", direction="any"), cloth("54 in", id="k2", direction="any")]
    answer = plan(job(entry, bolts), "quick")
    cord = next(line for line in answer["materials"] if line["kind"] == "cord")
    assert "219 in" in cord["working"]
    assert {one["cloth"] for one in answer["cloths"]} == {"k1", "k2"}
    prepared = prepare(job(entry, bolts))
    rim, other = rims_of(prepared.covers[0])
    assert "the ring is closed in the middle of side CD." in lines(answer)
    assert rim == other
    assert rim.length == 219 * IN
    assert rim.corners == tuple(IN * half // 2 for half in (60, 129, 309, 378))


@pytest.mark.reference
def test_the_template_of_an_ell_is_its_outline_with_the_arrow_inside_and_its_corner_to_clip():
    """A small L whose middle lies outside of it: its arms are 3 in wide, so half-way up only the left one is there."""
    ell = inches((0, 0), (14, 0), (14, 3), (3, 3), (3, 12), (0, 12))
    paper = templates(job(of_corners(ell, [3], kind="knife-edge"), cloth("54 in")), "letter")
    told = " ".join(texts(paper))
    assert "Clip in to the stitching line." in told
    assert "top and grain" in told
    assert "15 × 13 in" in told.replace("≈ ", "")


# ---- what cannot be -------------------------------------------------------------------------------------------------


def test_what_is_not_taped_yet_is_asked_for_at_its_own_place():
    assert refused(seat([], [])) == {
        "insert/sides": ("missing-sides", "Measure the sides of cushion 1, one after the other from the front left.")
    }
    assert refused(seat(["90 in", "", "60 in", ""])) == {
        "insert/sides/1": ("missing-sides", "Measure the side BC of cushion 1."),
        "insert/sides/3": ("missing-sides", "Measure the side DA of cushion 1."),
    }
    asked = ("missing-diagonal", "The sides alone do not hold cushion 1: tape a diagonal to corner C too.")
    assert refused(seat(BAY, [])) == {"insert/diagonals": asked}
    assert refused(seat(BAY, [[0, 2, ""], [1, 3, ""]])) == {"insert/diagonals/0/2": asked}
    assert "Nothing checks these measures" in lines(answer_to(seat(BAY, [[0, 2, "81 1/8 in"]]), "100 in"))


def test_a_diagonal_misread_by_four_inches_is_named_with_both_numbers():
    """By Pythagoras 81.15 in; 85 1/8 in was read."""
    found = refused(seat(BAY, [[0, 2, "85 1/8 in"], [1, 3, "81 1/8 in"]]))
    code, text = found["insert/diagonals/0/2"]
    assert code == "sides-do-not-close"
    assert "If diagonal AC is misread" in text
    assert re.search(r"it is ≈ 81 \d/\d in, not 85 1/8 in", text)


def test_measures_that_cannot_meet_are_each_named_with_what_they_can_be():
    """The way round the other corner is 60 + 34 1/2 = 94 1/2 in, shorter than 90 + 34 1/2."""
    long = refused(seat(BAY, [[0, 2, "130 in"]]))
    said = "The diagonal AC is 130 in, but by the other measures it can be 94 1/2 in at most: tape it again."
    assert long["insert/diagonals/0/2"][1] == said
    short = refused(seat(["20 in", "20 in", "5 in", "10 in"], [[2, 0, "28 in"]]))
    assert any("at least" in text or "at most" in text for _, text in short.values())
    assert {code for code, _ in short.values()} == {"sides-do-not-close"}


def test_a_corner_that_turns_the_other_way_is_named():
    assert "corner C of cushion 1 does not turn inwards" in refused(seat(notches=[2]))["insert/notches"][1]
    ell = of_corners(ELL, [])
    assert {code for code, _ in refused(ell).values()} == {"sides-do-not-close"}


def test_measures_of_which_more_than_one_is_wrong_are_all_taped_again():
    """A rectangle of 40 × 30 × 50 in with one more corner on its side; two of its measures are 5 in out."""
    sides, across = ["20 in", "20 in", "30 in", "40 in", "30 in"], [[0, 2, "40 in"], [0, 3, "55 in"], [1, 3, "36 in"]]
    found = refused(seat(sides, [*across, [1, 4, "41 in"], [2, 4, "50 in"]]))
    assert "tape them all again" in found["insert/sides"][1]


def test_corners_and_sides_that_there_are_not_are_refused():
    found = refused(seat(across=[[0, 9, "3 in"], [0, 1, "90 in"], [0, 2, "81 1/8 in"]], notches=[7]))
    assert {at: code for at, (code, _) in found.items()} == {
        "insert/diagonals/0": "no-such-corner",
        "insert/diagonals/1": "no-such-corner",
        "insert/notches/0": "no-such-corner",
    }
    assert "cover/closure/side" in refused(seat(cover={"closure": {"kind": "zip", "side": 4}}))


@pytest.mark.parametrize(
    ("field", "value", "at", "code"),
    [
        ("sides", "90 in", "insert/sides", "not-a-job"),
        ("sides", ["0 in"] * 4, "insert/sides/0", "not-a-length"),
        ("diagonals", "none", "insert/diagonals", "not-a-job"),
        ("diagonals", [[0, 2]], "insert/diagonals/0", "not-a-job"),
        ("diagonals", [["A", 2, "1 in"]], "insert/diagonals/0/0", "no-such-corner"),
        ("notches", "D", "insert/notches", "not-a-job"),
        ("notches", [-1], "insert/notches/0", "no-such-corner"),
    ],
)
def test_what_cannot_be_read_as_sides_corners_or_diagonals_is_refused_where_it_stands(field, value, at, code):
    assert refused(changed({"x": seat()}, f"/x/insert/{field}", value)["x"])[at][0] == code


def test_what_an_outline_cannot_be_given_is_said_at_its_field():
    assert refused(seat(cover={"smaller_by": "40 in"}))["cover/smaller_by"][0] == "nothing-left"
    assert "loses a side" in refused(of_corners(ELL, [3], cover={"smaller_by": "22 in"}))["cover/smaller_by"][1]
    assert refused(seat(quantity=1, mirrored=2))["mirrored"][0] == "rules-contradict"
    assert refused(seat(cover={"closure": {"kind": "ties"}}))["cover/closure/kind"][0] == "unknown-value"
    closure = {"kind": "zip"}
    boxing = {"returns": "40 in"}
    far = refused(seat(cover={"closure": closure, "boxing": boxing}))["cover/boxing/returns"]
    assert far[1].startswith("The zip band returns 40 in along a side of 34 1/2 in")
    assert "insert/thickness" in refused(changed({"x": seat()}, "/x/insert/thickness", None)["x"])
    in_pieces = seat(cover={"front": {"cloth": "k1", "joined": "one-side"}})
    assert refused(in_pieces)["cover/front/joined"][0] == "rules-contradict"
    assert refused(seat([], [], kind="knife-edge"))["insert/sides"][0] == "missing-sides"
    long = {"closure": {"kind": "zip", "length": "95 in"}}
    assert refused(seat(kind="knife-edge", cover=long))["cover/closure/length"][0] == "zip-longer-than-seam"


def test_seams_that_meet_in_a_slot_are_refused():
    half = IN // 2
    slot = [(0, 0), (20, 0), (20, 10), (10.5, 10), (10.5, 5), (9.5, 5), (9.5, 10), (0, 10)]
    corners = [(int(2 * x) * half, int(2 * y) * half) for x, y in slot]
    across = [[i, j, mm(corners[i], corners[j])] for i, j in ((0, 2), (0, 4), (2, 4), (0, 5), (5, 7))]
    sides = [mm(*ends) for ends in zip(corners, [*corners[1:], corners[0]], strict=True)]
    narrow = {"closure": {"side": 0, "kind": "zip"}, "boxing": {"returns": "0 in"}}
    assert not isinstance(made(seat(sides, across, [4, 5], cover=narrow)), list)
    wide = seat(sides, across, [4, 5], cover={**narrow, "seam": "3/4 in"})
    assert refused(wide)["cover/seam"][0] == "rules-contradict"


#: A T seat: 32 in at the front, 4 in deep ears, a back 24 in wide and 24 in from front to back.
TEE = inches((0, 0), (32, 0), (32, 4), (28, 4), (28, 24), (4, 24), (4, 4), (0, 4))


@pytest.mark.parametrize(
    ("corners", "notches", "across"),
    [
        (TEE, [3, 6], [(0, 2), (0, 3), (1, 6), (1, 7), (3, 5), (4, 6)]),
        (ELL, [3], [(0, 2), (0, 3), (0, 4), (3, 5)]),
        (inches((0, 0), (40, 0), (30, 20), (10, 20)), [], [(0, 2), (1, 3)]),
    ],
)
def test_a_tee_and_an_ell_close_from_the_diagonals_that_are_proposed_for_them(corners, notches, across):
    sides = [mm(*ends) for ends in zip(corners, [*corners[1:], corners[0]], strict=True)]
    found = made(seat(sides, [[i, j, mm(corners[i], corners[j])] for i, j in across], notches, kind="knife-edge"))
    assert math.dist(*found.outline.corners[:2]) == pytest.approx(math.dist(*corners[:2]), abs=3)
    assert [pytest.approx(corner, abs=50) for corner in corners] == list(found.outline.corners)


def test_trim_goes_once_round_the_outline():
    trimmed = seat(kind="knife-edge", cover={"edge": {"kind": "trimmed", "join": "1 in"}})
    trim = next(line for line in answer_to(trimmed, "100 in")["materials"] if line["kind"] == "trim")
    assert trim["length"]["nm"] >= 220 * IN
    assert "219 in" in trim["working"]


# ---- properties -----------------------------------------------------------------------------------------------------


@st.composite
def outlines(draw):
    """Stars around a middle on whole quarter inches: every outline with a point that sees all of it."""
    count = draw(st.integers(3, 8))
    turns = [(i + draw(st.floats(0, 0.7))) / count for i in range(count)]
    reach = [draw(st.integers(12, 40)) for _ in range(count)]
    return [
        (round(4 * r * math.cos(2 * math.pi * t)) * IN // 4, round(4 * r * math.sin(2 * math.pi * t)) * IN // 4)
        for t, r in zip(turns, reach, strict=True)
    ]


@settings(max_examples=40, deadline=None)
@given(corners=outlines(), returns=st.integers(0, 3), apart=st.booleans(), narrow=st.booleans())
def test_the_joined_ring_is_the_stitched_perimeter_to_the_nanometre(corners, returns, apart, narrow):
    """The bands less the seam at each of their ends add up to the sides of the stitching line, each in whole nm."""
    turns = [cross(before, corner, after) for before, corner, after in in_threes(corners)]
    assume(all(abs(turn) > IN * IN for turn in turns))
    notches = [i for i, turn in enumerate(turns) if turn < 0]
    boxing = {"kind": "front-and-sides" if apart else "band", "returns": f"{returns} in"}
    entry = of_corners(corners, notches, cover={"closure": {"kind": "zip"}, "boxing": boxing})
    prepared = prepare(job(entry, cloth("30 in" if narrow else "80 in", direction="any"), grid="0"))
    assert isinstance(prepared, Prepared)
    assume(not prepared.problems)
    cover = prepared.covers[0]
    front = cover.pieces[0].stitched
    bands = [piece for piece in cover.pieces if piece.part.startswith("boxing")]
    upper = [piece for piece in cover.pieces if piece.part.startswith("zip-band") and int(piece.part[9:]) % 2]
    ring = sum(piece.width - 2 * piece.seam for piece in (*bands, *upper))
    assert ring == sum(dist(one, other) for one, other in zip(front, [*front[1:], front[0]], strict=True))


def test_the_zip_band_of_an_outline_is_notched_at_the_corners_it_turns():
    """The bay, closed at its back of 60 in: 4 in and 64 in from the seam of 1/2 in."""
    cover = made(seat(cover={"closure": {"kind": "zip"}}))
    half = next(piece for piece in cover.pieces if piece.part == "zip-band-2")
    notches = [mark.points for mark in half.marks if mark.kind == "notch"]
    assert [round(x / IN, 2) for ((x, _),) in notches] == [4.5, 64.5]
    assert all(y == 0 for ((_, y),) in notches)


def in_threes(corners):
    return zip([corners[-1], *corners], corners, [*corners[1:], corners[0]], strict=False)


def dist(a, b):
    """The nearest whole number to the root of a sum of squares, by whole numbers."""
    square = (a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2
    whole = math.isqrt(square)
    return whole + (square - whole * whole > whole)


def cross(o, a, b):
    return (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0])


@pytest.mark.reference
def test_laid_plates_never_overlap_and_stay_on_the_cloth():
    """Checked with shapely 2 on the outlines of the answer as they lie."""
    from shapely import Polygon, box
    from shapely.affinity import translate

    answer = plan(job(of_corners(ELL, [3], quantity=2, mirrored=1), cloth("64 in", direction="any")), "quick")
    found = answer["cloths"][0]
    laid = []
    for place in found["layout"]:
        shape = Polygon(place["outline"]) if "outline" in place else box(0, 0, place["width"], place["length"])
        laid.append(translate(shape, place["x"], place["y"]))
    cloth_area = box(-1, -1, found["usable_width"]["nm"] + 1, found["laid"]["nm"] + 1)
    assert all(cloth_area.contains(shape) for shape in laid)
    for number, one in enumerate(laid):
        for other in laid[:number]:
            assert one.intersection(other).area < 1e6
