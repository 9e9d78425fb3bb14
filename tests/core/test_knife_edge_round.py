"""Round knife-edge covers: discs cut d - b + 2s across, their closures and their place on the cloth."""

import math

import pytest
from answer_checker import check
from jobs import changed, cloth, job

from plumpline import JobError, plan

IN = 25_400_000


def round_cover(diameter="16 in", quantity=1, closure=None, **cover):
    face = {"cloth": "k1"}
    made = {"smaller_by": "1 in", "front": face, "back": face, **cover, **({"closure": closure} if closure else {})}
    insert = {"shape": "round", "diameter": diameter}
    return {"id": "c1", "quantity": quantity, "kind": "knife-edge", "insert": insert, "cover": made}


def answer_to(entry, wide="60 in", **more):
    document = job(entry, cloth(wide, **more))
    answer = plan(document, "quick")
    assert check(document, answer) > 0
    return answer


def test_a_disc_is_cut_the_finished_diameter_and_two_seams_across():
    """Cut size of a round: diameter - smaller by + 2 seams; here 16 - 1 + 1 = 16 in (the rule of bolster ends, D + 2s,
    in a general-interest sewing tutorial of 2014)."""
    answer = answer_to(round_cover())
    cushion = answer["cushions"][0]
    assert cushion["finished"] == {"diameter": {"nm": 15 * IN, "text": "15 in"}, "size": "15 in across"}
    assert cushion["smaller_by"]["text"] == "1 in"
    assert [(p["part"], p["width"]["text"], p["length"]["text"]) for p in answer["pieces"]] == [
        ("front", "16 in", "16 in"),
        ("back", "16 in", "16 in"),
    ]
    lines = [line["text"] for line in cushion["working"]]
    assert lines[0] == "Pad 16 in across; 1 in smaller (as you set it): finished 15 in across."
    assert "Seams 1/2 in all round: discs 16 in across." in lines


def test_the_outline_of_a_disc_is_a_circle_and_has_no_tapered_corners():
    for piece in answer_to(round_cover(corners={"kind": "tapered"}))["pieces"]:
        assert all(abs(math.hypot(x - 8 * IN, y - 8 * IN) - 8 * IN) < 3 for x, y in piece["outline"])
        assert len(piece["outline"]) >= 32
        assert {mark["kind"] for mark in piece["marks"]} == {"top", "centre", "opening"}


def test_an_opening_in_a_round_seam_is_marked_on_the_round():
    """8 1/9 in of the 15 in circle: both ends lie on the cut edge, as far apart as the chord over that angle."""
    piece = answer_to(round_cover(closure={"kind": "hand-sewn", "opening": "8 in"}))["pieces"][0]
    ((ax, ay), (bx, by)) = next(mark["points"] for mark in piece["marks"] if mark["kind"] == "opening")
    assert (ay, ax + bx) == (by, 16 * IN)
    angle = 8 / (math.pi * 15) * 2 * math.pi
    assert abs(bx - ax - 2 * 8 * IN * math.sin(angle / 2)) < 3
    assert ay == pytest.approx(8 * IN * (1 - math.cos(angle / 2)), abs=3)


def test_discs_lie_staggered_where_that_is_shorter():
    """Discs of 16 in on 45 in: two beside each other leave room to set the next row into the gaps."""
    answer = answer_to(round_cover(quantity=2), "45 in")["cloths"][0]
    assert answer["laid"]["nm"] < 32 * IN
    assert answer["straight"]["laid"]["nm"] == 32 * IN
    assert all(len(entry["outline"]) >= 32 for entry in answer["layout"])


def test_a_disc_by_itself_is_laid_where_its_motif_stands():
    """One disc has no order to be laid in otherwise, so the search ends, though nothing proves the length: the motif
    stands 5 in behind the cut end, 8 in are wanted, so it is the next one, 25 in on."""
    entry = round_cover(back={"cloth": "k2"})
    entry["cover"]["front"] = {"cloth": "k1", "pattern": "centred", "motif": "m1"}
    motifs = [{"id": "m1", "across": "20 in", "along": "5 in"}]
    print_ = cloth("60 in", repeat={"across": "27 in", "along": "25 in"}, motifs=motifs, start="measured")
    document = job(entry, [print_, cloth("60 in", id="k2")])
    answer = plan(document)
    assert check(document, answer) > 0
    assert answer["cloths"][0]["laid"]["text"] == "38 in"


def test_a_wash_to_come_stretches_the_disc_the_way_it_will_shrink():
    answer = answer_to(round_cover(), shrinkage={"along": "0.1"}, wash="after-making")
    piece = answer["pieces"][0]
    assert (piece["width"]["text"], piece["length"]["text"]) == ("16 in", "17 7/8 in")
    xs, ys = zip(*piece["outline"], strict=True)
    assert (min(xs), max(xs), min(ys), max(ys)) == (0, 16 * IN, 0, piece["length"]["nm"])


def test_a_round_envelope_back_is_two_pieces_of_the_disc():
    """(16 + 4 + 2) / 2 = 11 in each, and of the disc around the centre of the closed back."""
    answer = answer_to(round_cover(closure={"kind": "envelope", "overlap": "4 in", "hem": "1 in"}))
    upper, lower = answer["pieces"][1:]
    assert [(p["part"], p["width"]["text"], p["length"]["text"]) for p in (upper, lower)] == [
        ("back-1", "16 in", "11 in"),
        ("back-2", "16 in", "11 in"),
    ]
    for piece, centre in ((upper, 3 * IN), (lower, 8 * IN)):
        ys = [y for _, y in piece["outline"]]
        assert (min(ys), max(ys)) == (0, 11 * IN)
        assert all(math.hypot(x - 8 * IN, y - centre) <= 8 * IN + 3 for x, y in piece["outline"])
        on_the_round = [p for p in piece["outline"] if abs(math.hypot(p[0] - 8 * IN, p[1] - centre) - 8 * IN) < 3]
        assert len(on_the_round) >= len(piece["outline"]) - 2


def test_a_zip_across_a_round_back_is_two_inches_shorter_than_the_diameter():
    answer = answer_to(round_cover(closure={"kind": "zip", "at": "back"}))
    assert [p["length"]["text"] for p in answer["pieces"]] == ["16 in", "8 3/4 in", "8 3/4 in"]
    assert answer["cushions"][0]["closing"]["length"]["text"] == "13 in"


def test_a_zip_in_the_round_seam_leaves_the_disc_as_it_is():
    answer = answer_to(round_cover(closure={"kind": "zip", "length": "20 in"}))
    assert answer["pieces"][0]["width"]["text"] == "16 in"
    closing = answer["cushions"][0]["closing"]
    assert (closing["edge"]["nm"], closing["allowance"]["text"]) == (round(math.pi * 15 * IN), "1/2 in")


def problems(entry):
    with pytest.raises(JobError) as raised:
        plan(job(entry, cloth("60 in")))
    return {(p["at"].removeprefix("/cushions/0/"), p["code"]) for p in raised.value.problems}


def test_a_round_that_was_not_measured_is_asked_for_its_diameter():
    entry = round_cover()
    del entry["insert"]["diameter"]
    entry["insert"]["width"] = "16 in"  # what was measured of another shape stays, and does not count
    assert problems(entry) == {("insert/diameter", "missing-diameter")}


def test_a_round_edge_cannot_be_hemmed_open():
    for kind in ("ties", "open"):
        assert problems(round_cover(closure={"kind": kind})) == {("cover/closure/kind", "unknown-value")}


def test_nothing_is_left_of_a_round_made_too_small():
    assert problems(round_cover("1 in")) == {("cover/smaller_by", "nothing-left")}


def test_a_motif_off_the_disc_and_a_zip_too_long_are_both_said():
    entry = round_cover(closure={"kind": "zip", "length": "60 in"})
    entry["cover"]["front"] = {"cloth": "k1", "pattern": "centred", "motif": "m1", "offset": {"across": "9 in"}}
    document = job(entry, cloth("60 in", repeat={"along": "20 in"}))
    document["cloths"][0]["motifs"] = [{"id": "m1", "across": "20 in", "along": "0 in"}]
    with pytest.raises(JobError) as raised:
        plan(document)
    assert [p["code"] for p in raised.value.problems] == ["rules-contradict", "zip-longer-than-seam"]


def test_a_round_disc_is_too_wide_by_its_diameter():
    with pytest.raises(JobError) as raised:
        plan(job(round_cover("61 in"), cloth("60 in")))
    assert {(p["at"], p["code"]) for p in raised.value.problems} == {("/cushions/0/insert/diameter", "too-wide")}


def test_the_pad_to_order_for_a_round_is_the_next_round_one_sold():
    answer = plan(changed(job(round_cover("15 in"), cloth("60 in")), "/cushions/0/size_from", "finished"), "quick")
    pad = answer["materials"][0]
    assert (pad["size"], pad["stocked"]) == ("16 in across", True)
    large = plan(changed(job(round_cover("29 in"), cloth("60 in")), "/cushions/0/size_from", "finished"), "quick")
    assert (large["materials"][0]["size"], large["materials"][0]["stocked"]) == ("30 in across", False)


def test_two_readings_of_a_diameter_that_disagree_are_asked_about():
    entry = round_cover()
    entry["insert"] |= {"again": {"diameter": "17 in", "width": "3 in"}, "width": "9 in"}
    asked = [n["at"] for n in answer_to(entry)["notices"] if n["code"] == "readings-disagree"]
    assert asked == ["/cushions/0/insert/diameter"]


@pytest.mark.parametrize(
    ("kind", "insert"),
    [
        ("knife-edge", {"shape": "round", "diameter": "16 in"}),
        ("boxed", {"shape": "round", "diameter": "16 in", "thickness": "2 in"}),
        ("bolster", {"shape": "bolster", "diameter": "8 in", "length": "20 in"}),
    ],
)
def test_a_cover_without_two_sides_takes_no_seam_of_their_own(kind, insert):
    entry = round_cover(sides={"cloth": "k1"}) | {"kind": kind, "insert": insert}
    if kind == "bolster":
        del entry["cover"]["back"]
    assert plan(job(entry, cloth("60 in")), "quick")["pieces"]
    with pytest.raises(JobError) as refusal:
        plan(job(changed(entry, "/cover/side_seam", "1/4 in"), cloth("60 in")), "quick")
    told = [(p["at"], p["code"]) for p in refusal.value.problems]
    assert told == [("/cushions/0/cover/side_seam", "rules-contradict")]
