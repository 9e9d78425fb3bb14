"""Tipping points: where the width, the size or the repeat changes what is bought, beside hand calculation and trial."""

import copy

import pytest
from jobs import changed, cloth, covers, example, job

from plumpline import plan, read_length
from plumpline.layout.budget import to_its_end
from plumpline.layplan import plan_cloth
from plumpline.prepared import prepare
from plumpline.tipping import tips

IN = 25_400_000
CM = 10_000_000


def tipping(document, number=0):
    return plan(document, tips=True)["cloths"][number]["tipping"]


def ends(entries, field):
    """The intervals of a field: (from, to, what is asked for, proven), lengths in nm."""
    return [
        (entry["from"] and entry["from"]["nm"], entry["to"] and entry["to"]["nm"], entry["ask"], entry["proven"])
        for entry in entries
        if entry["field"] == field
    ]


def said(entries, field):
    return [entry["text"] for entry in entries if entry["field"] == field and entry["text"]]


def nm(text):
    return read_length(text)


# -- widths, by counting how many go side by side ---------------------------------------------------------------------


def test_three_panels_of_18_inches_fit_only_if_the_cloth_is_truly_54_inches():
    # 12 panels of 18: 3 abreast from 54 in on, four rows = 72 in; else 2 abreast, six rows = 108 in (by hand).
    entries = tipping(example("harbour-room"))
    assert ends(entries, "width") == [(None, 54 * IN, "3 yd", True), (54 * IN, None, "2 yd", True)]
    assert said(entries, "width") == ["This only fits if the cloth is truly 54 in wide; narrower, it takes 3 yd."]


def test_narrower_panels_move_the_tip_to_three_times_their_width():
    # 3 x 17 5/8 = 52 7/8, by hand.
    document = changed(example("harbour-room"), "/cushions/0/cover/side_seam", "5/16 in")
    entries = tipping(document)
    assert ends(entries, "width")[1][0] == nm("52 7/8 in")
    assert said(entries, "width")[0] == "52 7/8 in or wider: 2 yd; narrower: 3 yd."


def test_six_inches_less_width_cost_three_eighths_of_a_yard():
    # Two 13 in cushions with 1 in seams, cut 15: four abreast from 60 in on, 15 in; three from 45 in, 30 in (public
    # question board, worked by hand). Sold by the eighth of a yard, 15 in are 1/2 yd and 30 in are 7/8 yd.
    document = job(covers(2, "13 in", "13 in", seam="1 in"), cloth("60 in"))
    entries = tipping(document)
    assert ends(entries, "width") == [(None, 60 * IN, "7/8 yd", True), (60 * IN, None, "1/2 yd", True)]
    narrower = tipping(changed(document, "/cloths/0/width", "54 in"))
    assert ends(narrower, "width") == [(None, 60 * IN, "7/8 yd", True), (60 * IN, None, "1/2 yd", True)]
    assert said(narrower, "width") == ["60 in or wider: 1/2 yd, 3/8 yd less."]


def test_selvedges_move_the_tip_by_both_of_them():
    # With 1/2 in a side the cloth has to measure 61 in for 60 in usable.
    document = job(covers(2, "13 in", "13 in", seam="1 in"), cloth("62 in", selvedge="1/2 in"))
    assert ends(tipping(document), "width")[1][0] == 61 * IN


def test_a_panel_of_25_inches_needs_50_inches_of_width_to_lie_twice():
    # One 24 x 24 cover, cut 25: two abreast from 50 in on, 25 in = 3/4 yd; else 50 in = 1 1/2 yd (by hand).
    document = job(covers(1, "24 in", "24 in"), cloth("54 in"))
    assert ends(tipping(document), "width") == [(None, 50 * IN, "1 1/2 yd", True), (50 * IN, None, "3/4 yd", True)]


def test_the_common_velvet_is_too_narrow_for_three():
    # Four 18 in covers with 1/4 in seams, cut 18 1/2: three abreast from 55 1/2 in on (a maker's mishap; by hand).
    document = job(covers(4, "18 in", "18 in", seam="1/4 in"), cloth("54 in"))
    entries = tipping(document)
    assert ends(entries, "width")[1] == (nm("55 1/2 in"), None, "1 5/8 yd", True)
    assert said(entries, "width") == ["55 1/2 in or wider: 1 5/8 yd, 1/2 yd less."]


def test_cloth_that_shrinks_by_a_tenth_has_to_be_60_inches_wide_for_54_inches():
    # 60 in that becomes 54 in gives three panels of 18 in (a trade glossary's example; 54 / 0.9 = 60).
    washed = {"shrinkage": {"across": "0.1"}, "wash": "before-cutting"}
    document = job(covers(6, "17 in", "17 in"), cloth("60 in", **washed))
    assert ends(tipping(document), "width")[1][0] == 60 * IN


def test_cloth_narrower_than_a_panel_has_no_plan():
    # 40 in covers with 1/2 in seams are cut 41.
    entries = tipping(job(covers(1, "40 in", "20 in"), cloth("45 in")))
    assert ends(entries, "width") == [(None, 41 * IN, None, True), (41 * IN, None, "1 1/4 yd", True)]
    assert said(entries, "width") == ["41 in or wider: 1 1/4 yd; narrower, it does not fit."]
    exact = tipping(job(covers(1, "40 in", "20 in"), cloth("41 in")))
    assert said(exact, "width") == ["This only fits if the cloth is truly 41 in wide."]


# -- sizes ------------------------------------------------------------------------------------------------------------


def test_covers_a_little_smaller_save_an_eighth_and_any_larger_cost_a_yard():
    # Four rows: 4 x 16 7/8 = 67 1/2 in = 1 7/8 yd, 4 x 18 = 72 in = 2 yd; 18 1/8 lie only twice on 54 in: six rows of
    # 18 1/8 are 108 3/4 in, 3 1/8 yd, and of 18 3/4 in 112 1/2 in still (by hand).
    entries = tipping(example("harbour-room"))
    assert ends(entries, "size") == [
        (-9 * IN // 4 + 1, -9 * IN // 8 + 1, "1 7/8 yd", True),
        (-9 * IN // 8 + 1, 1, "2 yd", True),
        (1, 3 * IN // 4 + 1, "3 1/8 yd", True),
    ]
    assert said(entries, "size") == [
        "Covers 1 1/8 in smaller save 1/8 yd.",
        "Covers any larger take 1 1/8 yd more.",
    ]


def test_a_cover_may_grow_until_it_leaves_the_cloth():
    # Cut 41 of 45 in: 4 in more is all there is; its length then is 25 in, still 3/4 yd; at 20 in it was 21, 5/8 yd.
    entries = tipping(job(covers(1, "40 in", "20 in"), cloth("45 in")))
    assert said(entries, "size")[-1].startswith("Covers more than ")
    wide = tipping(job(covers(1, "40 in", "40 in"), cloth("41 in", sold_by="5 yd")))
    assert said(wide, "size") == ["Covers any larger do not fit."]


def test_where_a_smaller_cover_could_not_be_made_nothing_is_proven_of_it():
    # An opening of 12 in does not go into an edge much shorter than 13 in.
    entry = covers(2, "13 in", "13 in")
    entry["cover"]["closure"] = {"kind": "hand-sewn", "opening": "12 in"}
    own = next(one for one in tipping(job(entry, cloth("54 in"))) if one["own"] and one["field"] == "size")
    assert (own["from"], own["proven"]) == (None, False)


# -- repeats ----------------------------------------------------------------------------------------------------------


def test_a_repeat_tips_where_five_of_them_and_a_panel_fill_the_length_sold():
    # Six rows of 18 in panels, centred: 5 r + 18 / 0.97 as bought. 4 1/8 yd = 148 1/2 in and 4 yd = 144 in, so
    # 25.0887 < r <= 25.9887 (by hand); 4 1/4 yd reaches to 26.8887, 3 7/8 yd to 24.1887.
    entries = tipping(example("printed-panels"))
    tips_at = [(nm(f"{length} in") * 97 - 18 * IN * 100) // (5 * 97) for length in ("139.5", "144", "148.5", "153")]
    found = ends(entries, "repeat.along")
    assert [entry[2:] for entry in found] == [("4 yd", True), ("4 1/8 yd", True), ("4 1/4 yd", True)]
    edges = [found[0][0], found[0][1], found[1][1], found[2][1]]
    assert all(abs(edge - tip) <= 2 for edge, tip in zip(edges, tips_at, strict=True))
    assert said(entries, "repeat.along") == [
        "A repeat shorter than ≈ 25 1/16 in: 4 yd.",
        "A repeat longer than ≈ 26 in: 4 1/4 yd.",
    ]


def repeated(along, pattern="centred", **more):
    """Eight 45 cm panels on a print 45 cm across, its motif 23.5 cm from the edge (after an upholsterer's notes)."""
    print_ = {
        "repeat": {"across": "45 cm", "along": along},
        "motifs": [{"id": "m1", "across": "23.5 cm", "along": "0 cm"}],
        "start": "choose",
    }
    motif = "m1" if pattern == "centred" else None
    entry = covers(4, "43 cm", "43 cm", seam="1 cm", smaller_by="0 cm", pattern=pattern, motif=motif)
    return job(entry, cloth("137 cm", sold_by="10 cm", selvedge="0 cm", squaring="0 cm", **print_, **more), units="cm")


def test_a_repeat_shorter_than_the_panel_takes_two_repeats_a_row():
    # Three rows: 2 r + 45 cm. At r = 52 that is 149 cm; from r < 45 on every row needs two repeats, 4 r + 45 (by hand).
    document = repeated("46 cm")
    entries = ends(tipping(document), "repeat.along")
    own = next(entry for entry in entries if entry[2] == "1.4 m")
    assert own == (45 * CM, nm("47.5 cm") + 1, "1.4 m", True)
    below = next(entry for entry in entries if entry[1] == 45 * CM)
    assert below[2] == "2.3 m"


def test_where_nothing_hangs_on_the_repeat_no_repeat_tips_it():
    entries = tipping(repeated("52 cm", pattern="free"))
    assert ends(entries, "repeat.along") == [(None, None, "1.4 m", True)]


def test_an_unknown_start_adds_the_repeat_once_more():
    # 3 r + 45 <= 210 up to r = 55, and > 200 from r = 51 2/3 on.
    document = changed(repeated("52 cm"), "/cloths/0/start", "unknown")
    own = next(one for one in ends(tipping(document), "repeat.along") if one[2] == "2.1 m")
    assert own == (155 * CM // 3 + 1, 55 * CM + 1, "2.1 m", True)


@pytest.mark.parametrize("pattern", ["alike", "centred"])
def test_alike_panels_tip_like_centred_ones(pattern):
    own = next(one for one in ends(tipping(repeated("46 cm", pattern=pattern)), "repeat.along") if one[2] == "1.4 m")
    assert own[:2] == (45 * CM, nm("47.5 cm") + 1)


def test_a_repeat_that_grows_to_the_height_of_the_panel_saves_a_repeat_a_row():
    # At 44 cm a row of 45 cm panels takes two repeats, 4 r + 45 = 221 cm; from 45 cm on one, 2 r + 45 = 135 (by hand).
    entries = [entry for entry in ends(tipping(repeated("44 cm")), "repeat.along") if entry[1] == 45 * CM]
    assert entries == [(nm("43.75 cm") + 1, 45 * CM, "2.3 m", True)]


def test_where_a_coarse_step_covers_every_repeat_there_is_no_tip():
    # Up to 55 cm at the most 2 r + 45 = 155 cm, and below 45 cm at the most 4 r + 45 = 225: all within 3 m (by hand).
    document = repeated("46 cm")
    document["cloths"][0]["sold_by"] = "3 m"
    assert ends(tipping(document), "repeat.along") == [(None, None, "3 m", True)]


def test_flaws_lie_where_they_were_measured_so_the_repeat_is_not_followed_past_them():
    more = {"flaws": [{"across": "0 cm", "along": "60 cm", "width": "10 cm", "length": "5 cm"}]}
    document = repeated("52 cm", **more)
    document["cloths"][0]["start"] = "measured"
    entries = tipping(document)
    assert ends(entries, "repeat.along") == []
    assert ends(entries, "width")


# -- other things cut, and work that does not suffice -----------------------------------------------------------------


def piped(quantity, **more):
    entry = covers(quantity, "17 in", "17 in")
    entry["cover"]["edge"] = {"kind": "piped", "cord": "5/32 in", "strip": "straight", **more}
    return entry


def test_strips_between_the_panels_tip_with_them():
    # Two faces of 18 in lie side by side on 54 in with 18 in beside them for the strips; on 36 in nothing is left.
    entries = tipping(job(piped(1), cloth("54 in")))
    assert ends(entries, "width")
    assert all(entry["ask"] for entry in entries)


def test_cloth_for_nothing_but_strips_has_tips_of_its_own():
    document = job(piped(2, cloth="k2"), [cloth("54 in"), cloth("45 in", id="k2")])
    entries = tipping(document, 1)
    assert next(entry["ask"] for entry in entries if entry["own"]) == plan(document)["cloths"][1]["ask"]["text"]


def test_rounds_that_interlock_are_followed_as_far_as_a_tape_can_tell():
    entry = covers(5, "15 in", "15 in")
    entry["insert"] = {"shape": "round", "diameter": "15 in"}
    document = job(entry, cloth("45 in"))
    own = next(one for one in tipping(document) if one["own"] and one["field"] == "width")
    assert own["from"] is None or own["from"]["nm"] <= 45 * IN
    assert own["to"] is None or own["to"]["nm"] > 45 * IN


@pytest.mark.parametrize("work", [0, 3_000, 20_000])
def test_what_the_work_does_not_reach_is_not_told(work):
    prepared = prepare(two_sizes())
    cloth_ = prepared.job.cloths[0]
    planned = to_its_end(plan_cloth(cloth_, prepared.pieces_on(cloth_), (), 15_000))
    entries = to_its_end(tips(prepared.job, planned, work))
    assert len(entries) < len(tipping(two_sizes()))
    if work == 0:
        assert entries == []


# -- by trial: every sixteenth of an inch around each tip -------------------------------------------------------------


def two_sizes():
    return job([covers(3, "17 in", "17 in"), covers(2, "11 in", "19 in", id="c2")], cloth("54 in"))


def washed():
    more = {"shrinkage": {"across": "0.02", "along": "0.04"}, "wash": "before-cutting", "squaring": "2 in"}
    return job(covers(3, "17 in", "15 in"), cloth("56 in", selvedge="1/2 in", **more))


def chalked_larger():
    more = {"shrinkage": {"across": "0.02", "along": "0.04"}, "wash": "after-making"}
    return job(covers(2, "16 in", "16 in"), cloth("52 in", **more), grid="1/16 in")


def boxed():
    return job(
        {
            "id": "c1",
            "quantity": 2,
            "kind": "boxed",
            "insert": {"shape": "rectangle", "width": "20 in", "length": "20 in", "thickness": "3 in"},
            "cover": {"smaller_by": "0 in", "seam": "1/2 in", "front": {"cloth": "k1"}, "back": {"cloth": "k1"}},
        },
        cloth("54 in"),
    )


def half_drop():
    more = {
        "repeat": {"across": "14 in", "along": "16 in", "drop": "8 in"},
        "motifs": [{"id": "m1", "across": "7 in", "along": "3 in"}],
        "start": "choose",
    }
    return job(covers(2, "12 in", "12 in", pattern="centred", motif="m1"), cloth("54 in", **more))


def centred_beside_free():
    more = {
        "repeat": {"across": "27 in", "along": "20 in"},
        "motifs": [{"id": "m1", "across": "13 1/2 in", "along": "0 in"}],
        "start": "measured",
    }
    front = covers(3, "17 in", "17 in", pattern="centred", motif="m1")
    front["cover"]["back"] = {"cloth": "k1", "pattern": "free"}
    return job(front, cloth("54 in", **more))


BY_TRIAL = [two_sizes, washed, chalked_larger, boxed, half_drop, centred_beside_free]


def with_value(document, field, value):
    """The job with one value set to so many nm, or every cover larger by so many."""
    document = copy.deepcopy(document)
    as_text = f"{value / IN:.12f} in"
    if field == "width":
        document["cloths"][0]["width"] = as_text
    elif field == "repeat.along":
        document["cloths"][0]["repeat"]["along"] = as_text
    else:
        for cushion in document["cushions"]:
            for name in ("width", "length"):
                cushion["insert"][name] = f"{(nm(cushion['insert'][name]) + value) / IN:.12f} in"
    return document


def bought(document):
    return plan(document, "quick")["cloths"][0]["ask"]["text"]


@pytest.mark.parametrize("make", BY_TRIAL)
@pytest.mark.parametrize("field", ["width", "size", "repeat.along"])
def test_planning_at_every_sixteenth_around_a_tip_finds_no_other(make, field):
    document = make()
    entries = [entry for entry in tipping(document) if entry["field"] == field]
    assert entries or field == "repeat.along"
    step = IN // 16
    for entry in entries:
        low, high = (entry[end] and entry[end]["nm"] for end in ("from", "to"))
        near = {edge // step * step + step * k for edge in (low, high) if edge is not None for k in range(-2, 3)}
        for value in sorted(near):
            if (low is None or low <= value) and (high is None or value < high):
                assert bought(with_value(document, field, value)) == entry["ask"], (value / IN, entry)


def test_stripes_that_repeat_across_alone_tip_where_a_panel_leaves_the_width():
    """A stripe centred every 6 in: panels of 10 in take their columns from the stripes, not from the cut end."""
    bolt = cloth("54 in", repeat={"across": "6 in", "along": "0 in"}, start="choose")
    bolt["motifs"] = [{"id": "m1", "across": "9 in", "along": "0 in"}]
    document = job(covers(2, "9 in", "9 in", pattern="centred", motif="m1"), bolt)
    entries = [entry for entry in tipping(document) if entry["field"] == "width"]
    own = next(entry for entry in entries if entry["own"])
    assert own["ask"] == plan(document)["cloths"][0]["ask"]["text"]
