"""How covers are closed: zips, envelopes, buttons, ties; what each does to the pieces, and what cannot be."""

import pytest
from answer_checker import check
from jobs import changed, cloth, covers, job

from plumpline import JobError, plan

IN = 25_400_000


def closed(closure, width="18 in", length="18 in", *, seam="1/2 in", wide="80 in", **more):
    """A job of one cover of that finished size with that closure."""
    entry = covers(1, width, length, smaller_by="0 in", seam=seam, **more)
    entry["cover"]["closure"] = closure
    return job(entry, cloth(wide))


def answer_to(document):
    answer = plan(document, "quick")
    assert check(document, answer) > 0
    return answer


def pieces(document):
    return {piece["part"]: piece for piece in answer_to(document)["pieces"]}


def sizes(document):
    return {part: (piece["width"]["text"], piece["length"]["text"]) for part, piece in pieces(document).items()}


def problem(document):
    with pytest.raises(JobError) as raised:
        plan(document)
    (found,) = raised.value.problems
    return found


def working(document):
    return [line["text"] for line in answer_to(document)["cushions"][0]["working"]]


def test_an_eighteen_inch_envelope_back_is_two_pieces_of_twelve_that_overlap_by_four():
    """Home magazine, 2019: an 18 in front takes two back pieces of (18 + 6) / 2 = 12 in; after 1 in hems the net
    overlap is 12 + 12 - 2 - 18 = 4 in."""
    document = closed({"kind": "envelope", "overlap": "4 in", "hem": "1 in"}, "17 in", "17 in")
    assert sizes(document) == {"front": ("18 in", "18 in"), "back-1": ("18 in", "12 in"), "back-2": ("18 in", "12 in")}
    text = "The back is cut in two: (18 + 4 overlap + 2 × 1 in hem) ÷ 2 = 12 in each. "
    assert text + "The upper piece lies outside and opens downwards." in working(document)


def test_a_handbook_adds_one_and_a_half_inches_for_a_zip_in_the_back_and_five_and_a_half_for_an_overlap():
    """A home-sewing handbook (common practice): panels 1 in larger than the finished cover, a back with a zip 1 1/2 in
    more and an overlapping one 5 1/2, which is 3 1/2 in of overlap and two hems of 1 in: 18 in, 19, 20 1/2, 24 1/2."""
    zipped = sizes(closed({"kind": "zip", "at": "back"}))
    assert zipped == {"front": ("19 in", "19 in"), "back-1": ("19 in", "10 1/4 in"), "back-2": ("19 in", "10 1/4 in")}
    overlapping = sizes(closed({"kind": "envelope", "overlap": "3 1/2 in", "hem": "1 in"}))
    assert overlapping["back-1"] == overlapping["back-2"] == ("19 in", "12 1/4 in")


def test_an_envelope_takes_four_inches_up_to_a_sixteen_inch_cover_and_five_above():
    """Common practice: 4 in net overlap up to 16 in, 5 to 6 above."""
    for side, overlap in (("16 in", "4 in"), ("17 in", "5 in")):
        closing = plan(closed({"kind": "envelope"}, side, side), "quick")["cushions"][0]["closing"]
        assert (closing["at"], closing["overlap"]["text"], closing["allowance"]["text"]) == ("back", overlap, "1 in")


def test_the_hems_of_an_envelope_are_marked_at_the_edges_that_stay_open():
    found = pieces(closed({"kind": "envelope", "overlap": "4 in", "hem": "1 in"}, "17 in", "17 in"))
    upper, lower = ([m for m in found[part]["marks"] if m["kind"] == "hem"] for part in ("back-1", "back-2"))
    assert upper[0]["points"] == [[0, IN], [18 * IN, IN]]
    assert lower[0]["points"] == [[0, 11 * IN], [18 * IN, 11 * IN]]
    assert upper[0]["text"] == "1 in for the hem"
    assert [m for m in found["front"]["marks"] if m["kind"] == "hem"] == []


def test_a_zip_in_the_bottom_seam_takes_its_own_allowance_and_is_two_inches_shorter_than_the_side():
    """Common practice: 3/4 in at the zip, the zip 2 in shorter than the finished side."""
    document = closed({"kind": "zip"})
    assert sizes(document) == {"front": ("19 in", "19 1/4 in"), "back": ("19 in", "19 1/4 in")}
    cushion = answer_to(document)["cushions"][0]
    assert cushion["opening"] is None
    assert (cushion["closing"]["at"], cushion["closing"]["length"]["text"]) == ("bottom", "16 in")
    assert "A zip of 16 in in the bottom seam, which is 18 in long." in working(document)
    (zip_mark,) = [mark for mark in pieces(document)["back"]["marks"] if mark["kind"] == "zip"]
    assert zip_mark["points"] == [[3 * IN // 2, 0], [35 * IN // 2, 0]]


def test_a_seam_said_for_the_closing_edge_goes_before_the_usual_one_of_a_zip():
    assert sizes(closed({"kind": "zip", "seam": "1 in"}))["front"] == ("19 in", "19 1/2 in")
    assert sizes(closed({"kind": "zip", "zip_seam": "5/8 in"}))["front"] == ("19 in", "19 1/8 in")


def test_a_zip_across_the_back_leaves_two_halves_with_the_zip_seam_at_each():
    """9 in of finished back + 1/2 in seam + 3/4 in at the zip."""
    document = closed({"kind": "zip", "at": "back"})
    half = ("19 in", "10 1/4 in")
    assert sizes(document) == {"front": ("19 in", "19 in"), "back-1": half, "back-2": half}
    assert "The back is cut in two, half of it each and 3/4 in at the zip: 9 in height become 10 1/4 in." in working(
        document
    )
    assert "A zip of 16 in across the back, which is 18 in long." in working(document)


def test_a_short_side_gets_a_zip_of_its_whole_length():
    closing = plan(closed({"kind": "zip"}, "2 in", "9 in"), "quick")["cushions"][0]["closing"]
    assert closing["length"]["text"] == "2 in"


def test_ties_and_open_bottoms_take_a_hem_instead_of_a_seam():
    for kind, words in (("ties", "closed with ties"), ("open", "left open")):
        document = closed({"kind": kind, "hem": "2 in"})
        assert sizes(document)["front"] == ("19 in", "20 1/2 in")
        assert f"The bottom edges are hemmed and {words}: each takes 2 in for its hem." in working(document)


def test_buttons_close_a_back_that_overlaps_by_their_stand():
    """Common practice (from memory): the edges of a buttoned back overlap by 1 1/2 in, each with a hem of 1 in."""
    each = ("19 in", "11 1/4 in")
    usual = plan(closed({"kind": "buttons"}), "quick")
    assert usual["cushions"][0]["closing"]["overlap"]["text"] == "1 1/2 in"
    said = sizes(closed({"kind": "buttons", "overlap": "1 1/2 in"}))
    assert said == {"front": ("19 in", "19 in"), "back-1": each, "back-2": each}


@pytest.mark.parametrize(
    ("closure", "at", "code", "numbers"),
    [
        ({"kind": "zip", "length": "19 in"}, "length", "zip-longer-than-seam", ("19 in", "18 in")),
        ({"kind": "zip", "at": "back", "length": "19 in"}, "length", "zip-longer-than-seam", ("19 in", "18 in")),
        ({"kind": "envelope", "overlap": "1/2 in"}, "overlap", "overlap-under-hems", ("1/2 in", "1 in")),
        ({"kind": "envelope", "overlap": "20 in"}, "overlap", "rules-contradict", ("20 in", "18 in")),
        ({"kind": "hand-sewn", "opening": "19 in"}, "opening", "opening-too-long", ("19 in", "18 in")),
        ({"kind": "hand-sewn", "at": "back"}, "at", "unknown-value", ("bottom",)),
        ({"kind": "envelope", "at": "bottom"}, "at", "unknown-value", ("back",)),
    ],
)
def test_what_cannot_close_is_said_at_its_field_with_both_numbers(closure, at, code, numbers):
    found = problem(closed(closure))
    assert (found["at"], found["code"]) == (f"/cushions/0/cover/closure/{at}", code)
    assert all(number in found["text"] for number in numbers)


def test_a_motif_stands_at_the_centre_of_the_closed_back_on_both_its_pieces():
    for closure in ({"kind": "envelope", "overlap": "5 in"}, {"kind": "zip", "at": "back"}):
        document = closed(closure, wide="54 in", pattern="centred", motif="m1")
        document["cloths"][0] |= {
            "repeat": {"across": "27 in", "along": "24 in"},
            "motifs": [{"id": "m1", "across": "13 1/2 in", "along": "5 in"}],
            "start": "measured",
        }
        answer = answer_to(document)  # the checker looks where the motif comes to stand
        assert len(answer["cloths"][0]["layout"]) == 3


def test_a_centimetre_job_takes_round_centimetres_for_zip_and_hem():
    """Common practice: 2 cm at a zip, zips 5 cm shorter than the side; hems 2.5 cm, 10 cm overlap up to 40 cm."""
    document = job(covers(1, "40 cm", "40 cm", smaller_by="0 cm", seam="1.5 cm"), cloth("150 cm"), units="cm")
    zipped = plan(changed(document, "/cushions/0/cover/closure", {"kind": "zip"}), "quick")
    assert zipped["pieces"][0]["length"]["text"] == "43.5 cm"
    assert zipped["cushions"][0]["closing"]["length"]["text"] == "35 cm"
    envelope = plan(changed(document, "/cushions/0/cover/closure", {"kind": "envelope"}), "quick")
    assert envelope["cushions"][0]["closing"]["overlap"]["text"] == "10 cm"
    assert envelope["pieces"][1]["length"]["text"] == "29 cm"
