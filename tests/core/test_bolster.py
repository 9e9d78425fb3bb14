"""Bolsters with flat ends: the body rolled round the pad, the discs at its ends, and their closure."""

import math

import pytest
from answer_checker import check
from jobs import cloth, job

from plumpline import JobError, plan

IN = 25_400_000


def bolster(diameter="9 in", length="14 in", **cover):
    insert = {"shape": "bolster", "diameter": diameter, "length": length}
    made = {"seam": "1/2 in", "front": {"cloth": "k1"}, **cover}
    return {"id": "c1", "quantity": 1, "kind": "bolster", "insert": insert, "cover": made}


def answer_to(entry, wide="60 in", **more):
    document = job(entry, cloth(wide, **more), grid="0")
    answer = plan(document, "quick")
    assert check(document, answer) > 0
    return answer


def sizes(answer):
    return {piece["part"]: (piece["width"]["nm"] / IN, piece["length"]["nm"] / IN) for piece in answer["pieces"]}


def problems(entry, **more):
    with pytest.raises(JobError) as raised:
        plan(job(entry, cloth("60 in", **more)))
    return {(p["at"].removeprefix("/cushions/0/"), p["code"]) for p in raised.value.problems}


def test_the_seams_come_after_the_multiplication_by_pi():
    """A general-interest sewing tutorial (2014 and later): form 9 in across, 14 in long, 1/2 in seams: two circles of
    10 in, body 15 x 29 1/4 in (29.27; exactly 9 π + 1 = 29.274). π (9 + 1) would be 2.14 in too long."""
    found = sizes(answer_to(bolster()))
    assert found["end-1"] == found["end-2"] == (10, 10)
    assert found["body"][0] == 15
    assert found["body"][1] == pytest.approx(29.274, abs=0.0005)
    assert abs(found["body"][1] - 29.25) < 1 / 32


def test_a_bolster_is_covered_at_its_own_size_unless_the_maker_says_otherwise():
    cushion = answer_to(bolster())["cushions"][0]
    assert (cushion["finished"]["size"], cushion["rule"]) == (
        "9 in across, 14 in long",
        "a bolster is covered at its own size",
    )
    assert cushion["working"][0]["text"].startswith("Pad 9 in across, 14 in long; the same size")
    smaller = answer_to(bolster(smaller_by={"diameter": "1/2 in", "length": "1 in"}))
    assert sizes(smaller)["end-1"] == (9.5, 9.5)
    assert sizes(smaller)["body"] == (14, pytest.approx(8.5 * math.pi + 1))
    text = smaller["cushions"][0]["working"][0]["text"]
    assert "1/2 in smaller in diameter, 1 in in length (as you set it)" in text


def test_a_zip_lies_in_the_seam_along_the_body_and_takes_its_allowance_there():
    answer = answer_to(bolster(closure={"kind": "zip"}))
    assert sizes(answer)["body"] == (15, pytest.approx(9 * math.pi + 1.5))
    assert answer["cushions"][0]["closing"]["length"]["text"] == "12 in"
    body, end, _ = answer["pieces"]
    marked = [mark["points"] for mark in body["marks"] if mark["kind"] == "zip"]
    top = body["length"]["nm"]
    assert marked == [
        [[3 * IN // 2, 0], [27 * IN // 2, 0]],
        [[3 * IN // 2, top], [27 * IN // 2, top]],
    ]
    assert {mark["kind"] for mark in end["marks"]} == {"top", "centre"}
    lines = [line["text"] for line in answer["cushions"][0]["working"]]
    assert "A zip of 12 in in the seam along the body, which is 14 in long." in lines
    assert "Seams 1/2 in at every edge, 3/4 in along the body: body 15 × ≈ 29 3/4 in, ends 10 in across." in lines


def test_the_ends_are_cut_from_their_own_cloth_and_may_show_a_motif_in_their_middle():
    print_ = {
        "repeat": {"across": "27 in", "along": "24 in"},
        "motifs": [{"id": "m1", "across": "13 1/2 in", "along": "5 in"}],
        "start": "measured",
    }
    entry = bolster(sides={"pattern": "centred", "motif": "m1"})
    answer_to(entry, **print_)  # the checker looks where the motif comes to stand
    entry["cover"]["sides"]["offset"] = {"across": "5 in"}
    assert problems(entry, **print_) == {("cover/sides/offset/across", "rules-contradict")}
    other = bolster(sides={"cloth": "k2"})
    document = job(other, [cloth("60 in"), cloth("20 in", id="k2")])
    assert {p["part"]: p["cloth"] for p in plan(document, "quick")["pieces"]} == {
        "body": "k1",
        "end-1": "k2",
        "end-2": "k2",
    }


def test_a_gathered_bolster_is_its_body_reaching_to_the_middle_of_each_end():
    """Common practice (from memory): length + 2 × half the diameter, and a casing of 1 in at both ends."""
    entry = bolster(ends="gathered", sides={"cloth": "k2"})
    answer = answer_to(entry)
    assert sizes(answer) == {"body": (25, pytest.approx(9 * math.pi + 1))}
    lines = [line["text"] for line in answer["cushions"][0]["working"]]
    assert "The body reaches over each end to its middle, 4 1/2 in, and has 1 in there for a casing." in lines
    document = job(entry, [cloth("60 in"), {"id": "k2"}])
    assert [c["cloth"] for c in plan(document, "quick")["cloths"]] == ["k1"]
    assert [n["code"] for n in plan(document, "quick")["notices"] if n["level"] == "stop"] == []


def test_what_is_missing_of_a_bolster_is_asked_for():
    entry = bolster()
    entry["insert"] = {"shape": "bolster"}
    assert problems(entry) == {("insert/diameter", "missing-diameter"), ("insert/length", "missing-length")}


def test_a_bolster_is_no_rectangle_and_has_no_envelope():
    entry = bolster()
    entry["insert"] = {"shape": "rectangle", "width": "20 in", "length": "20 in"}
    assert problems(entry) == {("insert/shape", "unknown-value")}
    assert problems(bolster(closure={"kind": "envelope"})) == {("cover/closure/kind", "unknown-value")}


def test_a_bolster_longer_than_the_cloth_is_wide_is_said_at_its_length():
    assert problems(bolster(length="62 in")) == {("insert/length", "too-wide-unless-turned")}
    assert problems(bolster("20 in", "62 in")) == {("insert/length", "too-wide")}


def test_a_cover_with_a_back_has_to_say_what_its_back_is_cut_from():
    entry = bolster()
    entry |= {"kind": "knife-edge", "insert": {"shape": "rectangle", "width": "20 in", "length": "20 in"}}
    assert problems(entry) == {("cover/back", "missing-field")}
    entry["cover"]["back"] = {}
    assert problems(entry) == {("cover/back/cloth", "missing-field")}
    entry["cover"]["back"] = 3
    assert problems(entry) == {("cover/back", "not-a-job")}
