"""Boxed covers: plates, a ring of boxing that closes to the nanometre, zip bands, and where the joins lie."""

import math

import pytest
from answer_checker import check
from hypothesis import given, settings
from hypothesis import strategies as st
from jobs import cloth, job

from plumpline import JobError, plan
from plumpline.prepared import Prepared, prepare

IN = 25_400_000


def boxed(size, quantity=1, *, id="c1", **cover):
    """An entry of boxed covers: size is (width, length, thickness) or (diameter, thickness)."""
    names = ("width", "length", "thickness") if len(size) == 3 else ("diameter", "thickness")
    insert = {"shape": "rectangle" if len(size) == 3 else "round", **dict(zip(names, size, strict=True))}
    face = {"cloth": "k1"}
    made = {"smaller_by": "0 in", "seam": "1/2 in", "front": dict(face), "back": dict(face), **cover}
    return {"id": id, "quantity": quantity, "kind": "boxed", "insert": {**insert, "fill": "foam"}, "cover": made}


ZIP = {"kind": "zip", "at": "boxing"}
APART = {"kind": "front-and-sides", "returns": "0 in"}


def answer_to(entries, wide="54 in", **more):
    return plan(job(entries, cloth(wide, **more)), "quick")


def sizes(answer):
    return {piece["part"]: (piece["width"]["text"], piece["length"]["text"]) for piece in answer["pieces"]}


def lines(answer):
    return [line["text"] for line in answer["cushions"][0]["working"]]


def problems(entry, **more):
    with pytest.raises(JobError) as raised:
        plan(job(entry, cloth("54 in", **more)))
    return {(p["at"].removeprefix("/cushions/0/"), p["code"]) for p in raised.value.problems}


# ---- published sizes ----------------------------------------------------------------------------------------------


def test_a_boat_bench_is_cut_as_its_published_answer_says():
    """A worked answer on a public DIY question board: pad 32 5/8 x 14 5/8 x 3 in, seams 5/8 in, zip strips 3 in: 2 of
    33 7/8 x 15 7/8; 1 of 33 7/8 x 4 1/4; 2 of 33 7/8 x 3; 2 of 15 7/8 x 4 1/4."""
    bench = boxed(
        ("32 5/8 in", "14 5/8 in", "3 in"), seam="5/8 in", closure={**ZIP, "zip_seam": "7/8 in"}, boxing=APART
    )
    answer = answer_to(bench, "45 in")
    assert sizes(answer) == {
        "front": ("33 7/8 in", "15 7/8 in"),
        "back": ("33 7/8 in", "15 7/8 in"),
        "boxing-1": ("15 7/8 in", "4 1/4 in"),
        "boxing-2": ("33 7/8 in", "4 1/4 in"),
        "boxing-3": ("15 7/8 in", "4 1/4 in"),
        "zip-band-1": ("33 7/8 in", "3 in"),
        "zip-band-2": ("33 7/8 in", "3 in"),
    }
    assert answer["cloths"][0]["laid"] == {"nm": 185 * IN // 4, "text": "46 1/4 in"}
    assert answer["cloths"][0]["proven"]


def test_the_boat_bench_takes_36_inches_where_its_bands_may_be_turned():
    """Found and proved by a constraint solver for the same pieces: 36 in on 45 in cloth."""
    bench = boxed(
        ("32 5/8 in", "14 5/8 in", "3 in"), seam="5/8 in", closure={**ZIP, "zip_seam": "7/8 in"}, boxing=APART
    )
    found = plan(job(bench, cloth("45 in", direction="any")))["cloths"][0]
    assert (found["laid"]["nm"], found["proven"]) == (36 * IN, True)


def test_four_boat_benches_take_168_inches_one_way():
    """Case A03, proven by a constraint solver: 168 in on 54 in, 4 3/4 yd, not four times 46 1/4 and a spare yard."""
    four = boxed(
        ("32 5/8 in", "14 5/8 in", "3 in"), 4, seam="5/8 in", closure={**ZIP, "zip_seam": "7/8 in"}, boxing=APART
    )
    found = answer_to(four)["cloths"][0]
    assert (found["laid"]["nm"], found["ask"]["text"]) == (168 * IN, "4 3/4 yd")


def test_four_boat_benches_take_at_most_116_and_a_quarter_inches_where_each_may_be_turned_by_itself():
    """Case A03, found by a constraint solver; its bound is 115 1/2. The faces of one entry are turned together, so
    benches that may each lie their own way are entries of their own."""
    one = boxed(
        ("32 5/8 in", "14 5/8 in", "3 in"), seam="5/8 in", closure={**ZIP, "zip_seam": "7/8 in"}, boxing=APART
    )
    benches = [{**one, "id": f"c{number}"} for number in (1, 2, 3, 4)]
    found = plan({**job(one, cloth("54 in", direction="any")), "cushions": benches})["cloths"][0]
    assert 231 * IN // 2 <= found["laid"]["nm"] <= 465 * IN // 4
    assert (found["ask"]["text"], found["buy_proven"]) == ("3 1/4 yd", True)


def test_a_boxing_band_with_its_zip_unit_goes_once_round_a_twelve_inch_top():
    """A newsgroup practitioner, 11 May 2008: 12 in square top, 1/2 in seams: panels 13 x 13, circumference 48, zip
    strip cut 16, so the other strip is cut 34; 15 + 33 = 48."""
    answer = answer_to(boxed(("12 in", "12 in", "3 in"), closure=ZIP, boxing={"kind": "band", "returns": "1 1/2 in"}))
    assert sizes(answer)["front"] == ("13 in", "13 in")
    assert sizes(answer)["zip-band-1"][0] == "16 in"
    assert sizes(answer)["boxing"][0] == "34 in"
    assert "Joined, the ring measures 15 + 33 = 48 in, once round the plates." in lines(answer)


def test_a_boxing_of_four_and_a_quarter_takes_zip_strips_of_two_and_seven_eighths():
    """Two independent practitioner texts: (4 1/4 + 1 1/2) / 2 = 2 7/8 in, half of the boxing and 3/4 in."""
    answer = answer_to(boxed(("12 in", "12 in", "3 1/4 in"), closure=ZIP))
    assert sizes(answer)["zip-band-1"][1] == sizes(answer)["zip-band-2"][1] == "2 7/8 in"


def test_a_zip_band_is_eight_inches_longer_than_the_back():
    """A practitioner's rule: zip length = back + 8 in, so that it comes 4 in round each corner."""
    answer = answer_to(boxed(("24 in", "24 in", "6 in"), closure=ZIP), "80 in")
    assert sizes(answer)["zip-band-1"][0] == "33 in"
    closing = answer["cushions"][0]["closing"]
    assert (closing["at"], closing["edge"]["text"], closing["length"]["text"]) == ("boxing", "32 in", "32 in")
    assert (answer["cushions"][0]["opening"], closing["allowance"]["text"]) == (None, "3/4 in")


def test_three_seats_of_24_x_24_x_6_take_three_yards_and_an_eighth():
    """Case A07: 6 plates 25 x 25, 9 bands 25 x 7, 6 zip halves 25 x 4: at most 111 in on 54 in, bound 110."""
    seats = boxed(("24 in", "24 in", "6 in"), 3, closure={**ZIP, "zip_seam": "1/2 in"}, boxing=APART)
    answer = plan(job(seats, cloth("54 in", direction="any")))
    plates = {"front": ("25 in", "25 in"), "back": ("25 in", "25 in")}
    bands = {f"boxing-{number}": ("25 in", "7 in") for number in (1, 2, 3)}
    assert sizes(answer) == {**plates, **bands, "zip-band-1": ("25 in", "4 in"), "zip-band-2": ("25 in", "4 in")}
    assert answer["cloths"][0]["laid"]["nm"] <= 111 * IN
    assert answer["cloths"][0]["ask"]["text"] == "3 1/8 yd"


def test_a_rocker_takes_46_inches_turned_and_58_one_way():
    """Case A08, proven by a constraint solver: seat 19 x 19 and back 21 x 21, 3 in thick, on 54 in."""
    rocker = [
        boxed(("19 in", "19 in", "3 in"), boxing=APART),
        boxed(("21 in", "21 in", "3 in"), boxing=APART, id="c2"),
    ]
    assert answer_to(rocker)["cloths"][0]["laid"]["text"] == "58 in"
    assert plan(job(rocker, cloth("54 in", direction="any")))["cloths"][0]["laid"]["text"] == "46 in"


def test_the_three_rules_for_foam_in_conflict_are_three_answers():
    """Case A28, foam 24 x 36 x 3 with 1/2 in seams: 1/4 in off each side cuts plates of 24 1/2 x 36 1/2; cutting the
    plates to the size of the foam makes a cover of 23 x 35; an old cover is copied."""
    a = answer_to(boxed(("24 in", "36 in", "3 in"), smaller_by="1/2 in"))
    assert (sizes(a)["front"], a["cushions"][0]["finished"]["size"]) == (
        ("24 1/2 in", "36 1/2 in"),
        "23 1/2 × 35 1/2 × 3 in",
    )
    b = answer_to(boxed(("24 in", "36 in", "3 in"), smaller_by="1 in"))
    assert (sizes(b)["front"], b["cushions"][0]["finished"]["size"]) == (("24 in", "36 in"), "23 × 35 × 3 in")
    copied = boxed(("23 1/2 in", "35 1/4 in", "3 in"))
    copied["insert"]["measured"] = "old-cover"
    del copied["cover"]["smaller_by"]
    c = answer_to(copied)
    assert c["cushions"][0]["finished"]["size"] == "23 1/2 × 35 1/4 × 3 in"
    assert "Old cover, seam to seam: 23 1/2 × 35 1/4 × 3 in" in lines(c)[0]


def test_foam_in_a_boxed_cover_is_covered_at_its_own_size():
    """Common practice: foam in a boxed cover, 0 smaller; other fillings as in any cover."""
    entry = boxed(("24 in", "24 in", "3 in"))
    del entry["cover"]["smaller_by"]
    assert answer_to(entry)["cushions"][0]["rule"] == "foam in a boxed cover"
    assert sizes(answer_to(entry))["front"] == ("25 in", "25 in")
    entry["insert"]["fill"] = "polyester"
    assert answer_to(entry)["cushions"][0]["finished"]["size"] == "23 × 23 × 3 in"


def test_a_round_seat_of_45_inches_round_takes_a_band_of_46():
    """Case A34: edge 45 in, so 45 / π = 14.32 in across; with 1/2 in for its join at both ends 46 in, not 45."""
    answer = answer_to(boxed(("363.828 mm", "3 in")), "60 in", direction="two-way")
    band = next(piece for piece in answer["pieces"] if piece["part"] == "boxing")
    assert (band["width"]["text"], band["length"]["text"]) == ("46 in", "4 in")
    assert any(line.startswith("Once round the discs: π × ≈ 14 5/16 = ≈ 45 in") for line in lines(answer))


# ---- it closes ----------------------------------------------------------------------------------------------------

LENGTHS = st.integers(min_value=150_000_000, max_value=1_500_000_000)
CLOSURES = st.sampled_from([None, ZIP, {"kind": "zip", "at": "back"}, {"kind": "envelope"}])


@st.composite
def cushions(draw):
    """Boxed covers of every make, as prepared on cloth of any width without a grid; with the seam in nm."""
    seam = draw(st.integers(5_000_000, 20_000_000))
    size = draw(st.one_of(st.tuples(LENGTHS, LENGTHS), st.tuples(LENGTHS)))
    thickness = draw(st.integers(20_000_000, 200_000_000))
    boxing = {
        "kind": draw(st.sampled_from(["band", "front-and-sides"])),
        "returns": draw(st.sampled_from(["0 cm", "8 cm"])),
    }
    entry = boxed([f"{in_mm(nm)} mm" for nm in (*size, thickness)], boxing=boxing, seam=f"{in_mm(seam)} mm")
    closure = draw(CLOSURES)
    if closure:
        entry["cover"]["closure"] = closure
    wide = cloth(
        draw(st.sampled_from(["45 in", "54 in", "118 in"])), direction=draw(st.sampled_from(["one-way", "any"]))
    )
    prepared = prepare(job(entry, wide, grid="0"))
    assert isinstance(prepared, Prepared)
    return prepared, seam, thickness


def in_mm(nm):
    """Nanometres as a decimal text in mm."""
    return f"{nm // 1_000_000}.{nm % 1_000_000:06d}"


@settings(max_examples=200, deadline=None, derandomize=True)
@given(cushions())
def test_the_joined_ring_equals_the_stitched_edge_of_the_plates_to_the_nanometre(made):
    prepared, seam, thickness = made
    (cover,) = prepared.covers
    pieces = {piece.part: piece for piece in cover.pieces}
    front = pieces["front"]
    if front.shape == "circle":
        stitched = round(math.pi * (front.width - 2 * seam))
    else:
        stitched = 2 * (front.width - 2 * seam) + 2 * (front.length - 2 * seam)
    ring = [piece for part, piece in pieces.items() if part.startswith("boxing")]
    halves = [piece for part, piece in pieces.items() if part.startswith("zip-band")]
    assert sum(piece.width - 2 * seam for piece in ring + halves[::2]) == stitched
    assert all(piece.length == thickness + 2 * seam for piece in ring)
    zip_seam = 19_050_000  # 3/4 in
    for upper, lower in zip(halves[::2], halves[1::2], strict=True):
        assert upper.width == lower.width
        assert upper.length + lower.length == thickness + 2 * seam + 2 * zip_seam
        assert abs(upper.length - lower.length) <= 1
    bolt = prepared.job.cloths[0]
    longest = bolt.width if bolt.direction == "one-way" else max(bolt.width, front.width, front.length)
    assert all(piece.width <= longest for piece in ring + halves)


# ---- joins --------------------------------------------------------------------------------------------------------


def test_a_band_longer_than_the_cloth_is_joined_at_the_corners():
    """Twice round 30 x 20 in is 100 in; on 54 in at most 53 in finished, so joins where 30 + 20 end."""
    answer = answer_to(boxed(("30 in", "20 in", "3 in")))
    assert sizes(answer)["boxing-1"] == sizes(answer)["boxing-2"] == ("51 in", "4 in")
    notches = [mark for mark in answer["pieces"][2]["marks"] if mark["kind"] == "notch"]
    assert [mark["points"] for mark in notches] == [[[61 * IN // 2, 0], [61 * IN // 2, 4 * IN]]]
    assert "2 bands of 50 in and 50 in, and 1/2 in at both ends of each." in lines(answer)
    assert "2 joins close the ring." in lines(answer)


def test_a_side_longer_than_the_cloth_is_joined_in_equal_parts():
    """A 77 in bench on 54 in cloth: two bands of 38 1/2 in for a long side, one of 18 in for a short one."""
    bench = boxed(("77 in", "18 in", "3 in"), boxing=APART, **{part: {"cloth": "k2"} for part in ("front", "back")})
    bench["cover"]["sides"] = {"cloth": "k1"}
    document = job(bench, [cloth("54 in"), cloth("90 in", id="k2")])
    widths = [p["width"]["text"] for p in plan(document, "quick")["pieces"] if p["part"].startswith("boxing")]
    assert widths == ["39 1/2 in", "39 1/2 in", "19 in", "39 1/2 in", "39 1/2 in", "19 in"]


def test_a_zip_band_longer_than_the_cloth_is_joined_too():
    bench = boxed(("77 in", "18 in", "3 in"), closure=ZIP, front={"cloth": "k2"}, back={"cloth": "k2"})
    bench["cover"]["sides"] = {"cloth": "k1"}
    answer = plan(job(bench, [cloth("54 in"), cloth("90 in", id="k2")]), "quick")
    bands = [p["width"]["text"] for p in answer["pieces"] if p["part"].startswith("zip-band")]
    assert bands == ["43 1/2 in"] * 4
    assert "Zip band of 85 in: 4 strips 43 1/2 × 2 3/4 in, half of the boxing and 3/4 in at the zip." in lines(answer)


def corners_on(answer, part):
    """Where the corners of the plates are notched on a part, in inches from its lower left corner."""
    (piece,) = (piece for piece in answer["pieces"] if piece["part"] == part)
    notches = [mark["points"] for mark in piece["marks"] if mark["kind"] == "notch"]
    return [[(x / IN, y / IN) for x, y in points] for points in notches]


def test_a30_a_zip_band_is_notched_where_it_turns_the_corners_of_the_plates_and_not_at_its_zip():
    """Common practice, balance marks where a ring meets a corner: 4 in and 4 + 18 in from the seam of 1/2 in.

    The half above the zip has the zip at its lower edge, the other at its upper one; both are 2 3/4 in high.
    """
    answer = answer_to(boxed(("18 in", "18 in", "3 in"), closure=ZIP))
    assert corners_on(answer, "zip-band-1") == [[(4.5, 2.75)], [(22.5, 2.75)]]
    assert corners_on(answer, "zip-band-2") == [[(4.5, 0)], [(22.5, 0)]]
    told = [(mark["pieces"], mark["text"]) for mark in answer["workroom"][0]["marks"] if mark["kind"] == "notch"]
    assert (["zip band 1", "zip band 2"], "Corner of the plate, 4 1/2 and 22 1/2 in from the left cut edge") in told


def test_each_piece_of_a_joined_zip_band_has_the_corners_that_come_on_it():
    """77 + 2 × 4 in are 85, in two bands of 42 1/2: corners 4 in along, and 81 - 42 1/2 = 38 1/2 along the second."""
    bench = boxed(("77 in", "18 in", "3 in"), closure=ZIP, front={"cloth": "k2"}, back={"cloth": "k2"})
    bench["cover"]["sides"] = {"cloth": "k1"}
    answer = plan(job(bench, [cloth("54 in"), cloth("90 in", id="k2")]), "quick")
    assert corners_on(answer, "zip-band-1") == [[(4.5, 2.75)]]
    assert corners_on(answer, "zip-band-4") == [[(39, 0)]]


def test_a_zip_band_that_turns_no_corner_has_no_notch():
    as_long_as_the_side = boxed(("18 in", "18 in", "3 in"), closure=ZIP, boxing={"returns": "0 in"})
    assert corners_on(answer_to(as_long_as_the_side), "zip-band-1") == []


def test_a_band_may_be_as_long_as_a_plate_that_lies_along_the_roll():
    """Where nothing has a direction, a bench of 77 in is laid along the roll, and its bands need no joins either."""
    bench = boxed(("77 in", "18 in", "3 in"), boxing=APART)
    answer = plan(job(bench, cloth("54 in", direction="any")), "quick")
    assert sizes(answer)["boxing-1"] == ("78 in", "4 in")
    narrowed = boxed(("77 in", "18 in", "3 in"), boxing=APART, sides={"turn": "none"})
    answer = plan(job(narrowed, cloth("54 in", direction="any")), "quick")
    assert sizes(answer)["boxing-1"] == ("39 1/2 in", "4 in")


def test_a_band_has_as_few_joins_as_the_cloth_allows_wherever_the_corners_come_then():
    """Once round is 190 in: on 54 in cloth four bands of 47 1/2 in, where joins at the corners would make six."""
    bench = boxed(("77 in", "18 in", "3 in"), back={"cloth": "k2"}, front={"cloth": "k2"}, sides={"cloth": "k1"})
    answer = plan(job(bench, [cloth("54 in"), cloth("90 in", id="k2")]), "quick")
    bands = [piece for piece in answer["pieces"] if piece["part"].startswith("boxing")]
    assert [band["width"]["text"] for band in bands] == ["48 1/2 in"] * 4
    notches = [[m["points"][0][0] for m in b["marks"] if m["kind"] == "notch"] for b in bands]
    at_corners = [47.5 * n + x / IN - 0.5 for n, points in enumerate(notches) for x in points]
    assert at_corners == [77, 172]  # the third, at 95 in, is where two bands meet


def test_on_railroaded_cloth_a_band_is_as_long_as_a_plate_and_in_one_length_where_that_is_said():
    bench = boxed(("77 in", "18 in", "3 in"))
    railroaded = cloth("54 in", up="left")
    assert sizes(plan(job(bench, railroaded), "quick"))["boxing-1"] == ("64 3/8 in", "4 in")
    bench["cover"]["boxing"] = {"run": "along"}
    assert sizes(plan(job(bench, railroaded), "quick"))["boxing"] == ("191 in", "4 in")


def test_boxing_for_which_no_cloth_was_measured_is_left_whole():
    answer = job(boxed(("30 in", "20 in", "3 in")), {"id": "k1"})
    with pytest.raises(JobError) as raised:
        plan(answer)
    assert [p["code"] for p in raised.value.problems] == ["missing-width"]
    narrow = job(boxed(("30 in", "20 in", "3 in")), cloth("1/2 in"))
    with pytest.raises(JobError) as raised:
        plan(narrow)
    assert {p["code"] for p in raised.value.problems} == {"too-wide"}


def test_returns_that_take_all_of_a_side_leave_a_band_for_the_front_alone():
    answer = answer_to(boxed(("20 in", "8 in", "3 in"), closure=ZIP, boxing={"kind": "band", "returns": "8 in"}))
    assert sizes(answer)["boxing"] == ("21 in", "4 in")
    assert sizes(answer)["zip-band-1"][0] == "37 in"


# ---- the pad, the cloth and what cannot be --------------------------------------------------------------------------


def test_a_missing_thickness_is_asked_for_and_never_assumed():
    entry = boxed(("24 in", "24 in", "3 in"))
    del entry["insert"]["thickness"]
    assert problems(entry) == {("insert/thickness", "missing-thickness")}


def test_a_boxed_cover_says_everything_that_is_missing_at_once():
    entry = boxed(("24 in", "24 in", "3 in"))
    entry["insert"] = {"shape": "rectangle"}
    missing = {("insert/width", "missing-width"), ("insert/length", "missing-length")}
    assert problems(entry) == missing | {("insert/thickness", "missing-thickness")}
    entry["insert"] = {"shape": "round", "thickness": "3 in"}
    assert problems(entry) == {("insert/diameter", "missing-diameter")}


@pytest.mark.parametrize(
    ("cover", "at", "code"),
    [
        ({"closure": {"kind": "ties"}}, "cover/closure/kind", "unknown-value"),
        ({"closure": {"kind": "envelope", "at": "boxing"}}, "cover/closure/at", "unknown-value"),
        ({"closure": {**ZIP, "length": "33 in"}}, "cover/closure/length", "zip-longer-than-seam"),
        ({"closure": ZIP, "boxing": {"kind": "band", "returns": "25 in"}}, "cover/boxing/returns", "rules-contradict"),
        ({"smaller_by": "24 in"}, "cover/smaller_by", "nothing-left"),
    ],
)
def test_what_a_boxed_cover_cannot_have_is_said_at_its_field(cover, at, code):
    assert problems(boxed(("24 in", "24 in", "3 in"), **cover)) == {(at, code)}


def test_a_zip_longer_than_a_round_ring_is_refused():
    entry = boxed(("10 in", "3 in"), closure={**ZIP, "length": "40 in"})
    assert problems(entry) == {("cover/closure/length", "zip-longer-than-seam")}


def test_a_knife_edge_has_no_boxing_to_put_a_zip_in():
    entry = boxed(("24 in", "24 in", "3 in"), closure=ZIP)
    entry["kind"] = "knife-edge"
    assert problems(entry) == {("cover/closure/at", "unknown-value")}


def test_a_square_plate_and_a_round_one_of_one_size_are_told_apart_by_the_shape():
    entry = boxed(("24 in", "24 in", "3 in"))
    entry["insert"]["shape"] = "round"
    entry["insert"]["diameter"] = "24 in"
    assert sizes(answer_to(entry, "80 in"))["front"] == ("25 in", "25 in")


def test_the_sides_are_cut_from_the_cloth_of_the_front_unless_they_say_another():
    entry = boxed(("20 in", "20 in", "3 in"), back={"cloth": "k2"})
    document = job(entry, [cloth("54 in"), cloth("54 in", id="k2"), cloth("54 in", id="k3")])
    cloths = {p["part"]: p["cloth"] for p in plan(document, "quick")["pieces"]}
    assert cloths == {"front": "k1", "back": "k2", "boxing-1": "k1", "boxing-2": "k1"}
    entry["cover"]["sides"] = {"cloth": "k3", "turn": "half"}
    document["cushions"] = [entry]
    assert {p["cloth"] for p in plan(document, "quick")["pieces"] if p["part"].startswith("boxing")} == {"k3"}


def test_a_round_boxed_seat_has_a_zip_over_half_of_its_ring():
    """Common practice: half of the ring opens, so that the foam goes in; the band as long as the zip."""
    answer = answer_to(boxed(("16 in", "3 in"), closure=ZIP), "60 in")
    around = round(math.pi * 16 * IN)
    assert answer["cushions"][0]["closing"]["length"]["nm"] == around // 2
    assert answer["cushions"][0]["finished"]["size"] == "16 in across, 3 in thick"
    assert sizes(answer)["front"] == ("17 in", "17 in")
    said = answer_to(boxed(("16 in", "3 in"), closure={**ZIP, "length": "20 in"}), "60 in")
    assert sizes(said)["zip-band-1"] == ("21 in", "2 3/4 in")


def test_a_zip_all_round_leaves_no_other_band():
    """A ring that opens all round, as a made up extreme: only the two halves of the zip band remain."""
    around = round(math.pi * 16 * IN)
    text = f"{in_mm(around)} mm"
    answer = answer_to(boxed(("16 in", "3 in"), closure={**ZIP, "length": text}), "60 in")
    assert set(sizes(answer)) == {"front", "back", "zip-band-1", "zip-band-2"}
    assert "1 join closes the ring." in lines(answer)


def test_a_boxed_back_may_be_an_envelope_or_have_a_zip_across():
    envelope = boxed(("18 in", "18 in", "3 in"), closure={"kind": "envelope", "overlap": "4 in", "hem": "1 in"})
    assert sizes(answer_to(envelope))["back-1"] == ("19 in", "12 1/2 in")
    zipped = boxed(("16 in", "3 in"), closure={"kind": "zip", "at": "back"})
    assert sizes(answer_to(zipped))["back-2"] == ("17 in", "9 1/4 in")


def test_a_zip_between_back_and_boxing_lies_within_their_seam():
    answer = answer_to(boxed(("18 in", "18 in", "3 in"), closure={"kind": "zip", "at": "bottom"}))
    assert sizes(answer)["back"] == sizes(answer)["front"] == ("19 in", "19 in")
    closing = answer["cushions"][0]["closing"]
    assert (closing["length"]["text"], closing["allowance"]["text"]) == ("16 in", "1/2 in")
    marked = {p["part"]: [m["kind"] for m in p["marks"]] for p in answer["pieces"]}
    assert ("zip" in marked["back"], "zip" in marked["front"]) == (True, False)


def test_the_pad_to_order_for_a_boxed_cover_is_made_to_measure():
    entry = boxed(("20 in", "20 in", "3 in"), smaller_by="1/2 in")
    entry["size_from"] = "finished"
    pad = next(m for m in answer_to(entry)["materials"] if m["kind"] == "pad")
    assert (pad["size"], pad["stocked"]) == ("20 1/2 × 20 1/2 × 3 in", False)


def test_a_motif_can_stand_in_the_middle_of_the_boxing():
    entry = boxed(("20 in", "20 in", "3 in"), closure=ZIP, boxing=APART)
    entry["cover"]["sides"] = {"pattern": "centred", "motif": "m1"}
    print_ = {
        "repeat": {"across": "27 in", "along": "24 in"},
        "motifs": [{"id": "m1", "across": "13 1/2 in", "along": "5 in"}],
        "start": "measured",
    }
    document = job(entry, cloth("54 in", **print_))
    assert check(document, plan(document, "quick")) > 0
    entry["cover"]["sides"]["offset"] = {"along": "2 in"}
    assert problems(entry, **print_) == {("cover/sides/offset/along", "rules-contradict")}
