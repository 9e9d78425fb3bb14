"""Questions makers have asked in public, with the answers worked out (retold; the page's own errors left out)."""

import pytest
from answer_checker import check
from jobs import cloth, covers, job

from plumpline import plan, read_length


def planned(document):
    answer = plan(document)
    check(document, answer)
    return answer["cloths"][0]


def test_a05_six_inches_less_width_cost_three_eighths_of_a_yard():
    """Two 13 in cushions, 1 in seams, so four panels of 15 in: 60 in takes 4 across, 54 in only 3."""
    two = covers(2, "13 in", "13 in", seam="1 in")
    wide = planned(job(two, cloth("60 in")))
    narrow = planned(job(two, cloth("54 in")))
    assert (wide["across"], wide["laid"]["text"], wide["ask"]["text"]) == (4, "15 in", "1/2 yd")
    assert (narrow["across"], narrow["laid"]["text"], narrow["ask"]["text"]) == (3, "30 in", "7/8 yd")
    usual = planned(job(two, cloth("60 in", selvedge="1/2 in")))
    assert (usual["across"], usual["ask"]["text"]) == (3, "7/8 yd")


def test_a06_one_24_inch_cover_takes_three_quarters_of_a_yard_not_one_and_a_third():
    one = covers(1, "24 in", "24 in")
    assert planned(job(one, cloth("54 in")))["ask"]["text"] == "3/4 yd"
    narrow = planned(job(one, cloth("45 in")))
    assert (narrow["laid"]["text"], narrow["ask"]["text"]) == ("50 in", "1 1/2 yd")


def test_a14_four_velvet_cushions_fit_a_metre_and_a_half_only_if_three_fit_side_by_side():
    """Cut 18 1/2 in: three across need 55 1/2 in usable; 140 cm (55 1/8 in) is too narrow, 54 in takes 188 cm."""
    four = covers(4, "18 in", "18 in", seam="1/4 in")
    enough = planned(job(four, cloth("55 1/2 in")))
    assert (enough["across"], enough["laid"]["text"]) == (3, "55 1/2 in")
    assert enough["needed"]["nm"] <= read_length("150 cm")
    for width in ("140 cm", "54 in"):
        short = planned(job(four, cloth(width)))
        assert (short["across"], short["laid"]["text"]) == (2, "74 in")
        assert short["needed"]["nm"] > read_length("150 cm")


@pytest.mark.parametrize(("size", "ask"), [("18 in", "5/8 yd"), ("20 in", "5/8 yd"), ("24 in", "3/4 yd")])
def test_a15_a_quarter_yard_never_makes_a_cushion(size, ask):
    assert planned(job(covers(1, size, size), cloth("54 in")))["ask"]["text"] == ask


def test_a21_a_cover_to_be_washed_later_is_cut_larger_by_what_the_wash_takes():
    """A 20 cm square washed to 19.2 along and 19.6 across: 46 x 46 after washing is cut 47.9 along, 46.9 across."""
    document = job(
        covers(1, "46 cm", "46 cm", smaller_by="3 cm", seam="1.5 cm"),
        cloth("140 cm", shrinkage={"along": "0.04", "across": "0.02"}, wash="after-making", sold_by="10 cm"),
        units="cm",
        grid="0",
    )
    piece = plan(document)["pieces"][0]
    assert piece["length"]["text"] == "≈ 47.92 cm"
    assert piece["width"]["text"] == "≈ 46.94 cm"
    on_the_grid = plan({**document, "grid": "1 mm"})["pieces"][0]
    assert (on_the_grid["length"]["text"], on_the_grid["width"]["text"]) == ("48 cm", "47 cm")


def test_a21_sixty_inches_that_wash_to_54_still_take_three_panels_of_18_but_only_two_of_18_and_a_half():
    washed = {"shrinkage": {"across": "0.1"}, "wash": "before-cutting"}
    assert planned(job(covers(2, "17 in", "17 in"), cloth("60 in", **washed)))["across"] == 3
    assert planned(job(covers(2, "17 1/2 in", "17 1/2 in"), cloth("60 in", **washed)))["across"] == 2


@pytest.mark.parametrize(("lost", "ask"), [("1/6", "6 yd"), ("0.04", "5 1/4 yd")])
def test_a21_five_yards_left_after_the_wash_need_more_at_the_counter(lost, ask):
    """Ten rows of 18 in are 5 yd: at 6 in lost per yard 6 yd are bought, at 4 % 5 1/4 yd."""
    document = job(covers(5, "17 in", "17 in"), cloth("18 in", shrinkage={"along": lost}, wash="before-cutting"))
    cut = planned(document)
    assert (cut["laid"]["text"], cut["ask"]["text"]) == ("180 in", ask)


@pytest.mark.parametrize(
    ("panel", "repeat", "rows", "pitch"), [(96, 27, 1, 108), (90, 27, 1, 108), (118, 13, 1, 130), (116, 25, 1, 125)]
)
def test_a10_rows_that_match_stand_whole_repeats_apart(panel, repeat, rows, pitch):
    """Four workroom and decorating texts round a cut up to whole repeats: 96 and 90 @ 27, 118 @ 13, 116 @ 25.

    That is the distance from row to row: n rows lay (n - 1) x pitch + panel.
    """
    printed = cloth(
        "54 in",
        repeat={"across": "60 in", "along": f"{repeat} in"},
        motifs=[{"id": "m1", "across": "27 in", "along": "0 in"}],
        start="choose",
    )
    two = covers(rows, "39 in", f"{panel - 1} in", pattern="centred", motif="m1")
    assert planned(job(two, printed))["laid"]["text"] == f"{pitch + panel} in"


def test_common_practice_six_18_inch_covers_take_72_inches_of_54_usable_and_108_of_any_less():
    """Common practice: panels cut at insert size from 54 in of usable cloth: 12 panels, 3 across, 4 rows."""
    six = covers(6, "18 in", "18 in", smaller_by="1 in")
    just = planned(job(six, cloth("54 in")))
    assert (just["across"], just["laid"]["text"], just["proven"]) == (3, "72 in", True)
    less = planned(job(six, cloth("53 15/16 in")))
    assert (less["across"], less["laid"]["text"], less["proven"]) == (2, "108 in", True)


def test_a24_panels_cut_the_size_of_the_pad_make_a_cover_one_inch_smaller():
    """How-to text: panels cut the size of the foam with 1/2 in seams come out 1 in smaller."""
    document = job(covers(1, "18 in", "18 in", smaller_by="1 in"), cloth("54 in"))
    answer = plan(document)
    assert answer["pieces"][0]["width"]["text"] == "18 in"
    assert answer["cushions"][0]["finished"]["width"]["text"] == "17 in"


def test_b42_nine_panels_of_18_fit_54_by_54_exactly():
    """Fault B42: a known grid must be found, with no allowance outside the outer edge unless asked for."""
    document = job(
        [covers(4, "17 in", "17 in"), covers(1, "17 in", "17 in", id="c2", cloth="k2")],
        [cloth("54 in"), cloth("54 in", id="k2")],
    )
    document["cushions"][1]["cover"]["front"]["cloth"] = "k1"
    assert planned(document)["laid"]["text"] == "54 in"
