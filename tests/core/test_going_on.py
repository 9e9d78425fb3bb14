"""Boxing on which the pattern of the front goes on over its top and bottom edge."""

import pytest
from jobs import changed, checked, cloth, covers, facts, job, problems

from plumpline import plan

IN = 25_400_000


def print_(**more):
    """Cloth of 54 in with a motif every 27 in both ways, in columns 13 1/2 and 40 1/2 in from its left edge."""
    repeat = {"repeat": {"across": "27 in", "along": "27 in"}, "start": "choose"}
    return cloth("54 in", **{**repeat, "motifs": [{"id": "m1", "across": "13 1/2 in", "along": "0 in"}], **more})


def seat(pattern="centred", sides="match-front", quantity=1, **cover):
    """A boxed seat of 20 × 20 × 3 in with seams of 1/2 in; its back is cut from another cloth."""
    motif = {"motif": "m1"} if pattern.endswith("centred") else {}
    insert = {"shape": "rectangle", "width": "20 in", "length": "20 in", "thickness": "3 in", "fill": "foam"}
    faces = {"front": {"cloth": "k1", "pattern": pattern, **motif}, "back": {"cloth": "k2"}}
    sides = {"sides": {"pattern": sides}, "boxing": {"kind": "front-and-sides"}}
    made = {"seam": "1/2 in", **faces, **sides, **cover}
    return {"id": "c1", "quantity": quantity, "kind": "boxed", "insert": insert, "cover": made}


def seats(entry, **more):
    return job(entry, [print_(**more), cloth("54 in", id="k2")])


def placed(answer):
    return {e["piece"].removeprefix("c1."): (e["x"] / IN, e["y"] / IN) for e in answer["cloths"][0]["layout"]}


@pytest.mark.parametrize("pattern", ["centred", "alike"])
def test_the_bands_at_top_and_bottom_show_at_their_seams_what_the_front_shows_there(pattern):
    """Hand calculation, everything 21 in wide: the front 21 in long from f on, bands 4 in.

    The front is sewn at f + 1/2 and f + 20 1/2. The bottom band from b on is sewn to it at its upper edge, b + 3 1/2,
    so b = f - 3 or 27 in from there; the top band at its lower edge, b + 1/2, so b = f + 20 or 27 in from there. The
    shortest is 27 in: from f - 3 to f + 24, in the other column than the front. The two side bands find room beside.
    """
    answer = checked(seats(seat(pattern)))
    at = placed(answer)
    (x, f), (below_x, below), (above_x, above) = at["front"], at["boxing-1"], at["boxing-3"]
    assert ((below - (f - 3)) % 27, (above - (f + 20)) % 27) == (0, 0)
    assert ((below_x - x) % 27, (above_x - x) % 27) == (0, 0)
    assert answer["cloths"][0]["laid"]["text"] == "27 in"


def test_boxing_cut_anywhere_takes_less():
    """Beside a front of 21 × 21 in four bands of 21 × 4 in have room: 21 in, where going on takes 27."""
    assert checked(seats(seat(sides="free")))["cloths"][0]["laid"]["text"] == "21 in"


def test_a_stripe_goes_on_and_asks_for_nothing_along_the_roll():
    """Every panel with the stripe begins at 3 or 30 in; front, two bands and the free ones are as short as 21 in."""
    answer = checked(seats(seat("stripe-centred"), repeat={"across": "27 in"}))
    at = placed(answer)
    assert {at[name][0] for name in ("front", "boxing-1", "boxing-3")} <= {3, 30}
    assert answer["cloths"][0]["laid"]["text"] == "21 in"


def test_with_its_zip_in_the_boxing_the_bands_beside_it_are_cut_anywhere():
    answer = checked(seats(seat(closure={"kind": "zip", "at": "boxing"})))
    said = facts(answer)
    assert said["Pattern, boxing"] == "goes on from the face over its top edge"
    assert said["Not matched"] == (
        "boxing 1, boxing 3 and zip band: cut anywhere in the pattern; "
        "the pattern runs on across the seam of the front with boxing 2 and no other seam"
    )


def test_the_sheet_says_which_edge_of_which_band_lies_on_the_front():
    answer = checked(seats(seat()))
    (step,) = [step for step in answer["workroom"][0]["steps"] if step["title"] == "Sew the ring to the front"]
    assert "With its upper edge boxing 1 lies on the bottom edge of the front: pin the pattern first." in step["text"]
    assert "With its lower edge boxing 3 lies on the top edge of the front: pin the pattern first." in step["text"]


def test_bands_that_go_on_are_joined_at_the_corners_though_one_band_was_asked_for():
    parts = [p["part"] for p in checked(seats(seat(boxing={"kind": "band"})))["pieces"] if p["cloth"] == "k1"]
    assert parts == ["front", "boxing-1", "boxing-2", "boxing-3", "boxing-4"]


@pytest.mark.parametrize(
    "more",
    [
        {"up": "left"},
        {"up": "toward", "direction": "two-way"},
        {"direction": "any"},
        {"shrinkage": {"along": "0.03", "across": "0.01"}, "wash": "after-making", "up": "right"},
        {"repeat": {"across": "13 1/2 in", "along": "24 in", "drop": "12 in"}},
    ],
)
@pytest.mark.parametrize("pattern", ["centred", "alike"])
def test_it_goes_on_however_the_cloth_lies(pattern, more):
    entry = seat(pattern, quantity=2)
    if pattern == "centred":
        entry["cover"]["front"]["offset"] = {"across": "-1 1/2 in", "along": "2 in"}
    checked(seats(entry, **more), "quick")


def test_a_long_front_joined_and_matched_has_its_bands_in_as_many_parts():
    """A bench of 77 in on cloth of 54 in: the bands are divided in two, and go on from the face part by part."""
    entry = seat(boxing={"kind": "front-and-sides"})
    entry["insert"]["width"] = "77 in"
    entry["cover"]["front"] |= {"joined": "both-ends", "join_pattern": "matched"}
    document = job(entry, [print_(), cloth("90 in", id="k2")])
    at = placed(checked(document))
    (x, f) = at["front-middle"]
    middle = x + next(p["width"]["nm"] for p in plan(document)["pieces"] if p["part"] == "front-middle") / IN / 2
    # The middle of the front lies 38 1/2 in from its left seam; each half of a band begins 0 or 38 1/2 in from there.
    for name, start, up in (("boxing-1", 0, -3), ("boxing-2", 38.5, -3), ("boxing-4", 38.5, 20), ("boxing-5", 0, 20)):
        band_x, band_y = at[name]
        assert (band_x + 0.5 - (middle - 38.5 + start)) % 27 == 0, name
        assert (band_y - (f + up)) % 27 == 0, name


# ---- what cannot be ------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("at", "value", "said"),
    [
        ("/cushions/0/cover/sides/cloth", "k2", "cut from the same cloth"),
        ("/cushions/0/cover/front/pattern", "free", "cut anywhere in its pattern"),
        ("/cushions/0/cover/front/made", {"kind": "band", "width": "3 in"}, "another part"),
        ("/cushions/0/cover/front/joined", "one-side", "stops at the joins"),
        ("/cushions/0/insert", {"shape": "round", "diameter": "18 in", "thickness": "3 in"}, "square or oblong cover"),
    ],
)
def test_what_boxing_cannot_go_on_from_is_said_at_its_pattern(at, value, said):
    document = changed(seats(seat("alike")), at, value)
    ((where, code, text),) = problems(document)
    assert (where, code) == ("/cushions/0/cover/sides/pattern", "rules-contradict")
    assert said in text


def test_a_band_with_no_room_where_it_would_go_on_is_said_so():
    """A column 10 1/4 in from the edge: the front, 20 1/2 in wide, begins there; the band with wider seams cannot."""
    entry = seat(side_seam="1/4 in", seam="1 in")
    motifs = [{"id": "m1", "across": "10 1/4 in", "along": "0 in"}]
    found = problems(seats(entry, repeat={"across": "54 in", "along": "27 in"}, motifs=motifs))
    assert {(at, code) for at, code, _ in found} == {("/cushions/0/cover/sides/pattern", "motif-cannot-be-centred")}
    assert found[0][2].startswith("The boxing 1 cannot go on with the pattern of the front: wherever that lies,")


def test_no_other_cover_has_a_face_that_goes_on():
    document = job(covers(1, "18 in", "18 in", pattern="match-front"), print_())
    assert {(at, code) for at, code, _ in problems(document)} == {
        (f"/cushions/0/cover/{part}/pattern", "unknown-value") for part in ("front", "back")
    }
