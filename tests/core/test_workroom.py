"""The workroom's sheets: what a bench has to know of a cover, and the steps in the order a bench takes them.

The order of work (look over, wash, square, cut, overlock, zip first, front, join, taper, turn, press, fill) is common
practice, as are the steps themselves; their figures are those of the cover, worked out anew beside each check.
"""

import re

import pytest
from jobs import EXAMPLES, changed, cloth, covers, example, job

from plumpline import plan
from plumpline.prepared import prepare
from plumpline.workroom import sheet_answer, sheets
from plumpline.workroom.step import STAGES

IN = 25_400_000


def sheets_of(document):
    prepared = prepare(document)
    return [sheet_answer(sheet) for sheet in sheets(prepared.covers, prepared.job)]


def sheet_of(document, number=0):
    return sheets_of(document)[number]


def facts(sheet):
    return {fact["name"]: fact["text"] for fact in sheet["facts"]}


def steps(sheet):
    """The steps by the last part of their id."""
    return {step["id"].rsplit(":", 1)[1]: step for step in sheet["steps"]}


def titles(sheet):
    return [step["title"] for step in sheet["steps"]]


def cautioned(sheet):
    return [caution["code"] for caution in sheet["cautions"]]


def one_cover(closure=None, **cover):
    document = job(covers(2, "18 in", "18 in", smaller_by="1 in"), cloth("54 in", name="linen"))
    document["cushions"][0]["cover"] |= cover | ({"closure": closure} if closure else {})
    return document


def boxed(**cover):
    document = one_cover(**cover)
    document["cushions"][0] |= {"kind": "boxed"}
    document["cushions"][0]["insert"] |= {"thickness": "3 in", "fill": "foam"}
    return document


def bolster(**cover):
    document = one_cover(**cover)
    document["cushions"][0] |= {
        "kind": "bolster",
        "insert": {"shape": "bolster", "diameter": "9 in", "length": "14 in"},
    }
    return changed(document, "/cushions/0/cover/smaller_by", "0 in")


def test_a_plain_cover_is_made_in_the_order_of_the_bench():
    assert titles(sheet_of(example("harbour-room"))) == [
        "Look plain linen over",
        "Square plain linen",
        "Cut the front",
        "Cut the back",
        "Mark tops and middles",
        "Mark the opening",
        "Mark the corner tapers",
        "Sew in the label",
        "Join front and back",
        "Taper the corners",
        "Turn it right side out",
        "Press and measure",
        "Fill it",
        "Sew up the opening",
    ]


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem.removeprefix("job-"))
def test_every_example_comes_in_the_order_of_the_bench_and_has_a_step_but_once(path):
    """Zip before trim, trim before joining, joining before the taper, turning before the filling."""
    for sheet in sheets_of(example(path.stem.removeprefix("job-"))):
        names = [step["id"].rsplit(":", 1)[1] for step in sheet["steps"]]
        assert len(set(names) | {step["id"] for step in sheet["steps"]}) >= len(sheet["steps"])
        assert len({step["id"] for step in sheet["steps"]}) == len(sheet["steps"])
        order = [
            "cut.front",
            "cut.boxing",
            "mark.middles",
            "closure.zip",
            "edge.trim",
            "label",
            "join.ring",
            "join.back",
        ]
        order += ["taper.curve", "turn", "press", "fill", "finish.close"]
        found = [name for name in names if name in order]
        assert found == [name for name in order if name in found]
        assert {"check", "square", "mark.middles", "label", "turn", "press", "fill"} <= set(names)


def test_the_stages_are_named_once():
    assert len(set(STAGES)) == len(STAGES)
    assert STAGES.index("closure") < STAGES.index("edge") < STAGES.index("join") < STAGES.index("taper")


def test_the_steps_say_this_covers_own_numbers():
    """18 in less 1 in and two seams of 1/2 in: cut 18 in; an 8 in opening in the middle of that: from 5 to 13 in."""
    told = steps(sheet_of(example("harbour-room")))
    assert told["cut.front"]["figure"] == "18 × 18 in"
    assert told["cut.front"]["text"].startswith("6 pieces of 18 × 18 in from plain linen.")
    assert told["mark.opening"]["text"] == "Front and back: leave 8 in open, 5 and 13 in from the left cut edge."
    assert told["mark.taper"]["text"] == "Front and back: in 1/2 in at the corner, from 4 1/2 in along the side."
    assert told["join.faces"]["figure"] == "1/2 in"
    assert told["press"]["figure"] == "17 × 17 in"
    assert told["fill"]["figure"] == "18 × 18 in"
    assert "16.2 oz" in told["fill"]["text"]  # 18 × 18 × 5 % (common practice of a pillow workroom)
    assert told["finish.close"]["figure"] == "8 in"


def test_a_step_keeps_its_id_while_figures_change_so_that_its_tick_holds():
    before = sheet_of(example("window-bench"))
    larger = changed(example("window-bench"), "/cushions/0/insert/width", "130 cm")
    after = sheet_of(changed(larger, "/cushions/0/name", "long bench"))
    assert [step["id"] for step in after["steps"]] == [step["id"] for step in before["steps"]]
    assert [step["text"] for step in after["steps"]] != [step["text"] for step in before["steps"]]


def test_a_cloth_is_looked_over_once_for_all_covers_that_are_cut_from_it():
    bench, stool, bolster = ([step["id"] for step in sheet["steps"]] for sheet in sheets_of(example("window-bench")))
    assert "make:cloth:k2:check" in bench
    assert "make:cloth:k2:check" in stool
    assert [id_ for id_ in bolster if id_ in stool] == ["make:cloth:k2:check", "make:cloth:k2:square"]


def test_the_cloth_is_washed_first_or_left_unwashed_as_the_job_says():
    washed = job(covers(1, "18 in", "18 in"), cloth("54 in", shrinkage={"along": "0.03"}, wash="before-cutting"))
    assert steps(sheet_of(washed))["wash"]["title"] == "Wash cloth 1"
    later = changed(washed, "/cloths/0/wash", "after-making")
    assert steps(sheet_of(later))["wash"]["title"] == "Leave cloth 1 unwashed"
    assert "wash" not in steps(sheet_of(one_cover()))


def test_squaring_tells_what_was_allowed_for_it():
    assert "Nothing was allowed" in steps(sheet_of(one_cover()))["square"]["text"]
    told = steps(sheet_of(changed(one_cover(), "/cloths/0/squaring", "2 in")))["square"]["text"]
    assert told.endswith("Both ends together may take 2 in.")


def test_a_sheet_without_a_width_of_the_cloth_asks_for_none():
    """Of two cloths one is not measured yet: the cover waits for it, and its sheet is there all the same."""
    two = job(covers(1, "18 in", "18 in"), [cloth("54 in"), cloth("54 in", id="k2")])
    two = changed(changed(two, "/cushions/0/cover/back/cloth", "k2"), "/cloths/1/width", None)
    first, second = (step for step in sheet_of(two)["steps"] if step["id"].endswith(":check"))
    assert first["figure"] == "54 in wide"
    assert second["figure"] == ""


def test_overlocking_comes_between_cutting_and_the_closure():
    names = list(steps(sheet_of(one_cover({"kind": "zip"}, seam_finish="overlocked"))))
    assert names.index("cut.back") < names.index("overlock") < names.index("closure.zip")


def test_a30_balance_marks_stand_in_the_middle_of_each_edge_and_where_the_boxing_meets_a_corner():
    """A 17 in square boxed in one band that 72 in cloth gives: 68 in round, corners every 17 in, a seam of 1/2 in."""
    wide = changed(boxed(), "/cloths/0/width", "72 in")
    middles, notches = (mark for mark in sheet_of(wide)["marks"] if mark["kind"] in ("centre", "notch"))
    assert middles["pieces"] == ["front", "back", "boxing"]
    assert notches["pieces"] == ["boxing"]
    assert notches["text"] == "Corner of the plate, 17 1/2, 34 1/2 and 51 1/2 in from the left cut edge"
    assert steps(sheet_of(wide))["mark.notch"]["text"].startswith("Boxing: corner of the plate, 17 1/2")


def test_a_zip_in_the_bottom_seam_is_put_in_before_the_faces_are_joined():
    """Common practice: 2 in shorter than the side, so 15 in, in a panel of 18 in: 1 1/2 in from either cut edge."""
    sheet = sheet_of(one_cover({"kind": "zip", "at": "bottom"}))
    told = steps(sheet)
    assert told["closure.zip"]["figure"] == "15 in"
    assert told["mark.zip"]["text"] == "Front and back: zip of 15 in, 1 1/2 and 16 1/2 in from the left cut edge."
    assert "3/4 in seam. Sew up to the mark" in told["closure.zip"]["text"]
    assert "Open the zip" in told["join.faces"]["text"]
    assert list(told).index("closure.zip") < list(told).index("join.faces")
    assert facts(sheet)["Seam"] == "1/2 in, 3/4 in where it closes"
    assert told["turn"]["text"].startswith("Through the zip.")


def test_a_zip_across_the_back_joins_its_two_pieces():
    told = steps(sheet_of(one_cover({"kind": "zip", "at": "back"})))["closure.zip"]["text"]
    assert told.startswith("Lay the two backs face to face along the middle, 3/4 in seam.")


def test_a9_with_its_zip_the_band_is_as_high_as_the_boxing():
    """Boxing cut 3 + 2 · 1/2 = 4 in; two halves of 2 + 3/4 in, less 3/4 in each at the zip, are 4 in again."""
    sheet = sheet_of(boxed(closure={"kind": "zip", "at": "boxing"}))
    told = steps(sheet)
    halves = [piece["size"] for piece in sheet["pieces"] if piece["label"].startswith("zip band")]
    assert halves == ["26 × 2 3/4 in"] * 2
    assert told["closure.band"]["figure"] == "4 in"
    assert "Tack all 25 in of it" in told["closure.zip"]["text"]
    assert "turns its corners 4 in from its seams" in told["join.front"]["text"]
    shorter = boxed(closure={"kind": "zip", "at": "boxing", "length": "20 in"})
    assert "Sew 2 1/2 in at each end, tack the 20 in between" in steps(sheet_of(shorter))["closure.zip"]["text"]


def test_a_box_with_its_zip_at_the_bottom_has_it_between_back_and_boxing():
    told = steps(sheet_of(boxed(closure={"kind": "zip", "at": "bottom"})))
    assert told["closure.zip"]["text"].startswith("Lay the boxing on the back")


def test_the_ring_of_a_boxing_is_measured_before_it_is_sewn_in():
    """2 · 17 + 2 · 17 in round the plates (geometry), as the ring has to be on its seam line."""
    told = steps(sheet_of(boxed()))
    assert told["join.ring"]["figure"] == told["join.front"]["figure"] == "68 in"
    names = list(told)
    assert names.index("join.ring") < names.index("join.front") < names.index("join.back")
    round_seat = changed(changed(boxed(), "/cushions/0/insert/shape", "round"), "/cushions/0/insert/diameter", "16 in")
    told = steps(sheet_of(round_seat))
    assert told["join.ring"]["figure"] == "≈ 47 1/8 in"  # π · 15 = 47.124
    assert told["join.front"]["text"].startswith("Quarter both")
    assert "taper.curve" in told


def test_an_envelope_is_hemmed_laid_over_and_its_upper_piece_comes_out_on_top():
    """Home magazine, 2019: an 18 in front makes two pieces of 12 in, which overlap by 4 in after hems of 1 in."""
    envelope = one_cover({"kind": "envelope", "overlap": "4 in", "hem": "1 in"})
    sheet = sheet_of(changed(envelope, "/cushions/0/cover/smaller_by", "1 in"))
    told = steps(sheet)
    assert told["cut.back"]["figure"] == "18 × 12 in"
    assert "fold 1/2 in under twice" in told["closure.hem"]["text"]
    assert told["closure.overlap"]["figure"] == "4 in"
    assert told["closure.overlap"]["text"].endswith("Closed, the back measures 17 in between the seams to come.")
    assert "Back 1, with the upper edge, lies next to the front" in told["join.faces"]["text"]
    assert "opening downwards" in facts(sheet)["Closing"]


def test_a_selvedge_needs_no_hem():
    no_hem = one_cover({"kind": "open", "hem": "0 in"})
    assert "closure.hem" not in steps(sheet_of(no_hem))
    assert "closure.hem" in steps(sheet_of(changed(no_hem, "/cushions/0/cover/closure/hem", "1 in")))


def test_buttons_have_their_holes_before_and_themselves_after():
    """17 in closed by buttons no further apart than 4 in (common practice): 4, 3.4 in from each other and the ends."""
    sheet = sheet_of(one_cover({"kind": "buttons"}))
    told = steps(sheet)
    assert told["closure.buttonholes"]["figure"] == "4 holes"
    assert "≈ 3 3/8 in from one to the next" in told["closure.buttonholes"]["text"]
    assert told["finish.buttons"]["figure"] == "4 buttons"
    assert "buttoned back" in facts(sheet)["Closing"]
    assert "small-parts" in cautioned(sheet)


def test_ties_are_sewn_to_the_hem_and_the_bottom_stays_open():
    sheet = sheet_of(one_cover({"kind": "ties"}))
    told = steps(sheet)
    assert told["closure.ties"]["figure"] == "2 pairs"  # 17 in by no more than 6 in between (common practice)
    assert told["join.faces"]["text"].endswith("The hemmed bottom stays open.")
    assert facts(sheet)["Closing"] == "tied along the bottom edge"
    assert "cords" in cautioned(sheet)


def test_trim_goes_on_the_front_before_the_cover_is_joined():
    trimmed = one_cover(edge={"kind": "trimmed", "join": "1 in"})
    sheet = sheet_of(trimmed)
    told = steps(sheet)
    assert told["edge.trim"]["figure"] == "68 in"
    assert "on the face of the front" in told["edge.trim"]["text"].lower()
    assert list(told).index("edge.trim") < list(told).index("join.faces")
    assert facts(sheet)["Edge"] == "bought trim on the face of the front"
    both = sheet_of(boxed(edge={"kind": "trimmed", "rims": "both"}))
    assert facts(both)["Edge"] == "bought trim on the faces of front and back"
    ends = sheet_of(bolster(edge={"kind": "trimmed", "rims": "both"}))
    assert facts(ends)["Edge"] == "bought trim on both ends"
    gathered = sheet_of(bolster(ends="gathered", edge={"kind": "trimmed"}))
    assert "edge.trim" not in steps(gathered)


def test_a7_a_bolster_is_sewn_along_first_and_its_ends_set_in():
    """9 × 14 in, 1/2 in seams (sewing tutorial, 2014): ends 10 in, body 15 × 29 1/4 in, on the grid 29 3/8."""
    told = steps(sheet_of(bolster()))  # π · 9 = 28.274
    assert told["cut.end"]["figure"] == "10 in across"
    assert told["cut.body"]["figure"] == "15 × 29 3/8 in"
    assert "≈ 28 1/4 in once round" in told["join.ends"]["text"]
    assert list(told).index("join.body") < list(told).index("join.ends")
    zipped = steps(sheet_of(bolster(closure={"kind": "zip"})))
    assert "join.body" not in zipped
    assert zipped["closure.zip"]["text"].startswith("Fold the body")
    assert "Open the zip" in zipped["join.ends"]["text"]


def test_gathered_ends_have_a_casing_and_nothing_to_notch():
    told = steps(sheet_of(bolster(ends="gathered")))
    assert "turn 1 in under" in told["join.casing"]["text"]
    assert not {"join.ends", "taper.curve", "cut.end"} & set(told)
    assert "cords" in cautioned(sheet_of(bolster(ends="gathered")))


def test_each_kind_of_corner_has_its_step_and_its_words():
    square = sheet_of(one_cover())
    rounded = sheet_of(one_cover(corners={"kind": "rounded", "radius": "2 in"}))
    tapered = sheet_of(one_cover(corners={"kind": "tapered", "depth": "3/4 in", "run": "3 1/2 in"}))
    assert "taper.square" in steps(square)
    assert steps(rounded)["taper.rounded"]["figure"] == "2 in"
    assert steps(tapered)["taper.corners"]["figure"] == "3/4 in"
    assert [facts(sheet)["Corners"] for sheet in (square, rounded, tapered)] == [
        "square",
        "rounded by 2 in",
        "tapered: in 3/4 in at the corner, from 3 1/2 in along the side",
    ]
    assert "Corners" not in facts(sheet_of(bolster()))


def test_a47_the_sheet_says_face_back_edge_closing_motif_and_top_edge():
    sheet = sheet_of(example("size-wanted"))
    told = facts(sheet)
    assert (told["Face"], told["Back"], told["Edge"]) == ("half-drop sprig", "plain back", "plain")
    assert told["Closing"] == "sewn up by hand, 20 cm in the bottom seam"
    assert told["Motif, face"] == "between two sprigs, 1.5 cm right and 2 cm down from the middle of the finished face"
    assert "on half-drop sprig the top points toward the cut end, or the other way round" in told["Top edge"]
    assert "plain back has no top" in told["Top edge"]
    alike = facts(sheet_of(example("size-wanted"), 1))
    assert alike["Motif, face"] == "every one shows the same place of the pattern"


def test_a25_one_way_cloth_has_its_top_on_front_and_back_alike():
    """Two chenille faces turned against each other look like two colours where they meet (a maker's own account)."""
    sheet = sheet_of(one_cover())
    assert facts(sheet)["Top edge"] == "arrow up on every piece; on linen the top points away from the cut end"
    (arrow,) = [mark for mark in sheet["marks"] if mark["kind"] == "top"]
    assert arrow["pieces"] == ["front", "back"]
    assert "nap and stretch run the same way on all faces" in steps(sheet)["mark.middles"]["text"]
    for part in ("cut.front", "cut.back"):
        assert "Every top edge lies the way the top of the cloth points." in steps(sheet)[part]["text"]


def test_boxing_may_lie_either_way_on_cloth_that_has_no_way_up():
    told = steps(sheet_of(changed(boxed(), "/cloths/0/direction", "any")))
    assert told["cut.boxing"]["text"].endswith("On this cloth it may lie either way.")
    assert told["cut.front"]["text"].endswith("All faces of the cover lie the same way.")


def test_a43_what_is_not_matched_is_said():
    """A dispute after delivery over plaids that did not match, with nothing in writing (a maker's own account)."""
    told = facts(sheet_of(example("window-bench")))
    assert told["Not matched"].startswith("boxing and zip band: cut anywhere in the pattern;")
    assert facts(sheet_of(example("window-bench"), 2))["Not matched"].startswith("the pattern does not run on")
    assert "Not matched" not in facts(sheet_of(example("harbour-room")))
    assert facts(sheet_of(example("window-bench"), 2))["Motif, ends"] == (
        "motif 1, 1 cm down from the middle of the finished face"
    )
    assert facts(sheet_of(example("window-bench")))["Motif, face"] == "motif 1 in the middle of the finished face"


def test_needle_stitch_and_thread_are_those_of_the_heaviest_cloth():
    """Needle 14 / 90 and 3 mm for furnishing cloth, 16 / 100 and 3.5 mm for heavy cloth (sewing guides)."""
    told = facts(sheet_of(one_cover()))
    assert (told["Needle"], told["Stitch"]) == ("Nm 90 (US 14)", "3 mm, 8.5 to the inch")
    told = facts(sheet_of(changed(one_cover(), "/cloths/0/weight", "heavy")))
    assert told["Needle"] == "Nm 100 (US 16)"
    assert told["Stitch"].startswith("3.5 mm")


def test_other_allowances_at_the_sides_and_where_it_closes_are_told():
    uneven = one_cover({"kind": "hand-sewn", "seam": "1 in"}, side_seam="3/8 in", seam_finish="overlocked")
    told = facts(sheet_of(uneven))
    assert told["Seam"] == "1/2 in, 3/8 in at the sides, 1 in where it closes"
    assert told["Cut edges"] == "overlocked"
    assert "3/8 in at the sides" in steps(sheet_of(uneven))["join.faces"]["text"]


def twins(*sizes):
    entries = [
        covers(1, width, "20 in", id=f"c{number}", name=name) for number, (name, width) in enumerate(sizes, start=1)
    ]
    return sheets_of(job(entries, cloth("54 in")))


def test_a46_covers_an_eighth_apart_have_codes_of_their_own_and_tell_how_they_differ():
    """Near-identical cushions of two pieces differ slightly in width, so covers get swapped (a seating maker)."""
    left, right, other = twins(("left seat", "20 in"), ("right seat", "20 1/8 in"), ("back", "24 in"))
    assert left["label"] == "AAAAAA-A · left seat · 20 × 20 in"
    assert right["label"] == "AAAAAA-B · right seat · 20 1/8 × 20 in"
    assert left["twins"] == ["1/8 in less in width than AAAAAA-B, right seat."]
    assert right["twins"] == ["1/8 in more in width than AAAAAA-A, left seat."]
    assert other["twins"] == []
    assert steps(left)["label"]["figure"] == left["code"] == "AAAAAA-A"


def test_covers_of_one_size_in_two_cloths_are_told_apart_too():
    one, two = twins(("day", "20 in"), ("night", "20 in"))
    assert one["twins"] == ["The same size as AAAAAA-B, night."]
    assert two["code"] != one["code"]


def test_a_box_is_no_twin_of_a_flat_cover():
    both = job([covers(1, "20 in", "20 in"), covers(1, "20 in", "20 in", id="c2")], cloth("54 in"))
    both = changed(changed(both, "/cushions/1/kind", "boxed"), "/cushions/1/insert/thickness", "2 in")
    assert [sheet["twins"] for sheet in sheets_of(both)] == [[], []]


def test_the_answer_has_the_sheet_of_every_cover_while_it_is_found_and_after():
    document = example("harbour-room")
    assert plan(document)["workroom"] == plan(document, "quick")["workroom"] == sheets_of(document)


def test_the_letter_of_a_code_is_that_of_its_pieces_on_the_lay_plan():
    answer = plan(example("window-bench"), "quick")
    labels = {entry["cushion"]: entry["label"] for one in answer["cloths"] for entry in one["layout"]}
    for sheet in answer["workroom"]:
        assert labels[sheet["cushion"]].startswith(sheet["code"].rsplit("-", 1)[1])


def test_every_piece_of_the_answer_is_on_its_sheet():
    for path in EXAMPLES:
        answer = plan(example(path.stem.removeprefix("job-")), "quick")
        told = [(piece["piece"], piece["count"]) for sheet in answer["workroom"] for piece in sheet["pieces"]]
        assert told == [(piece["id"], piece["count"]) for piece in answer["pieces"]]


def test_the_slip_cloth_belongs_to_foam_and_a_weight_to_loose_filling():
    assert "slip-cloth" in steps(sheet_of(boxed()))["fill"]["text"]
    assert "Filled loose" in steps(sheet_of(one_cover()))["fill"]["text"]
    # 9 in across and 14 in long hold 890.6 cu in; by the rule 16.2 oz fill 1111 of them.
    poured = "With a pad of 9 in across, 14 in long, top to top. Filled loose, it takes 13 oz (368 g)."
    assert steps(sheet_of(bolster()))["fill"]["text"] == poured


def test_cautions_apply_where_they_apply():
    plain = cautioned(sheet_of(one_cover()))
    assert plain == ["blades", "needles", "children", "fire", "labels"]
    assert set(cautioned(sheet_of(one_cover({"kind": "zip"})))) - set(plain) == {"small-parts"}
    assert set(cautioned(sheet_of(one_cover(edge={"kind": "trimmed"})))) - set(plain) == {"cords"}


def test_cautions_about_the_law_send_to_the_local_rule_and_name_none():
    """Rules differ by place and change: the tool only points to them."""
    for document in (one_cover({"kind": "buttons"}), boxed(), one_cover({"kind": "ties"})):
        for caution in sheet_of(document)["cautions"]:
            if caution["code"] not in ("blades", "needles"):
                assert "your local rule" in caution["text"]
            assert not re.search(r"CFR|SI \d|Regulation|\d{4}", caution["when"] + caution["text"])


def test_a_seat_is_told_of_furniture_and_a_scatter_cushion_of_its_filling():
    def fire(document):
        return next(c for c in sheet_of(document)["cautions"] if c["code"] == "fire")["text"]

    assert "count as furniture" in fire(boxed())
    assert fire(one_cover()).startswith("The filling")
    assert "count as furniture" in fire(changed(one_cover(), "/cushions/0/insert/fill", "foam"))


def test_a_motif_of_a_cloth_that_could_not_be_read_is_still_a_motif():
    document = changed(example("printed-panels"), "/cloths/0/name", 5)
    document["cloths"].append({"id": "k9", "width": "54 in"})
    document["cushions"].append(
        {**document["cushions"][0], "id": "c9", "cover": {"front": {"cloth": "k9"}, "back": {"cloth": "k9"}}}
    )
    facts = [fact["text"] for fact in plan(document, "quick")["workroom"][0]["facts"]]
    assert "the motif in the middle of the finished face" in facts


def piped(document, **edge):
    return changed(document, "/cushions/0/cover/edge", {"kind": "piped", "cloth": "k2", **edge})


def in_two_cloths(document):
    return changed(document, "/cloths", [*document["cloths"], cloth("54 in", id="k2", name="ochre")])


def test_piping_is_on_the_front_before_the_zip_that_lies_under_it():
    """Common practice: in a piped cover the piping is on the front, the zip on the back under it."""
    told = steps(sheet_of(piped(in_two_cloths(one_cover({"kind": "zip"})))))
    names = list(told)
    assert names.index("edge.strips") < names.index("edge.piping") < names.index("closure.zip")
    assert names.index("closure.zip") < names.index("join.faces")
    assert told["closure.zip"]["text"].startswith("Face down on the edged side of the front,")
    assert "Turn 3/4 in of the back under" in told["closure.zip"]["text"]
    assert told["closure.zip"]["figure"] == "15 in"


@pytest.mark.parametrize(("rims", "under"), [("front", False), ("both", True)])
def test_a_zip_in_the_back_seam_of_a_box_lies_under_piping_only_where_that_rim_is_piped(rims, under):
    document = piped(in_two_cloths(boxed(closure={"kind": "zip", "at": "bottom"})), rims=rims)
    told = steps(sheet_of(document))
    assert ("Turn 1/2 in of the boxing under" in told["closure.zip"]["text"]) == under
    assert (list(told).index("edge.piping") < list(told).index("closure.zip")) == under


def test_piping_at_the_ends_of_a_bolster_leaves_the_zip_along_its_body_as_it_is():
    told = steps(sheet_of(piped(in_two_cloths(bolster(closure={"kind": "zip"})), rims="both")))
    assert told["closure.zip"]["text"].startswith("Fold the body")
    assert list(told).index("closure.zip") < list(told).index("edge.piping")


def test_the_cloth_of_piping_is_looked_over_and_squared_like_any_other():
    sheet = sheet_of(piped(in_two_cloths(one_cover())))
    assert {"make:cloth:k1:check", "make:cloth:k2:check", "make:cloth:k2:square"} <= {s["id"] for s in sheet["steps"]}
    assert "on ochre the top points away" in facts(sheet)["Top edge"]


def test_cloths_without_a_top_are_told_together():
    """The bench of the parlour: a print with a top, and three cloths that may lie any way."""
    told = facts(sheet_of(example("parlour-bench")))["Top edge"]
    assert told == (
        "arrow up on every piece; on print the top points away from the cut end; "
        "plain, calico and stockinette have no top, but all faces lie the same way"
    )


def test_layers_are_cut_after_what_is_seen_and_a_slip_cloth_is_put_on_once():
    told = steps(sheet_of(example("parlour-bench")))
    names = list(told)
    assert names.index("cut.boxing") < names.index("cut.interlining") < names.index("cut.wrap")
    assert told["cut.wrap"]["title"] == "Cut the slip-cloth"
    assert "slip-cloth" not in told["fill"]["text"]


def test_a_mark_on_all_of_a_part_is_told_by_the_name_of_the_part():
    """The protector of the parlour's bench is in seven pieces, all of which have the arrow; interlining has none."""
    (arrow,) = [mark for mark in sheet_of(example("parlour-bench"))["marks"] if mark["kind"] == "top"]
    assert arrow["on"] == "front, back, boxing, protector and slip-cloth"
    (arrow,) = [mark for mark in sheet_of(example("window-bench"))["marks"] if mark["kind"] == "top"]
    assert arrow["on"] == "every piece"
    (opening, _) = [mark for mark in sheet_of(example("parlour-bench"))["marks"] if mark["kind"] == "opening"]
    assert opening["on"] == "back left"


def test_a_flange_is_measured_with_the_rest_until_it_is_stitched_off():
    """73 × 48 cm with a flange of 5 cm on every side: 83 × 58 cm from seam to seam."""
    told = steps(sheet_of(example("guest-room")))
    assert told["press"]["figure"] == "83 × 58 cm"
    assert list(told).index("press") < list(told).index("edge.flange") < list(told).index("fill")


@pytest.mark.parametrize(
    ("finish", "title"), [("trimmed", "Trim the seams"), ("overlocked-together", "Overlock the seams")]
)
def test_allowances_are_finished_once_they_are_sewn_and_before_the_cover_is_turned(finish, title):
    """After sewing, the allowances of a seam can still be cut back or run through the overlocker (common practice)."""
    sheet = sheet_of(one_cover(seam_finish=finish))
    names = list(steps(sheet))
    assert steps(sheet)["seams"]["title"] == title
    assert "overlock" not in names
    assert names.index("join.faces") < names.index("seams") < names.index("turn")
    assert steps(sheet)["seams"]["figure"] in facts(sheet)["Cut edges"]


def test_a_cover_with_an_outline_of_its_own_is_cut_by_its_template():
    told = steps(sheet_of(example("bay-window")))
    assert "Each by the full-size template that bears its name" in told["cut.front"]["text"]
    assert "template" not in told["cut.boxing"]["text"]
    assert "turns inwards" not in told["taper.square"]["text"]


def test_mirrored_covers_are_told_from_the_others_from_the_cutting_to_the_label():
    """An L-shaped corner seat, one of two the other way round: its boxing is one for both, its plates are not."""
    sheet = sheet_of(example("bay-window"), 1)
    told = steps(sheet)
    assert told["cut.front"]["text"].startswith("Front: 1 piece of ")
    assert "; front mirrored: 1 piece of " in told["cut.front"]["text"]
    assert "irrored" not in told["cut.boxing"]["text"]
    assert facts(sheet)["Hands"] == "1 as measured, 1 mirrored"
    assert "Add “mirrored” where it is: 1 as measured, 1 mirrored." in told["label"]["text"]
    assert told["join.ring"]["text"].startswith("6 joins")  # five bands and the zip band, whatever the hand
    assert "turns inwards, snip into it" in told["taper.square"]["text"]
    both = sheet_of(changed(example("bay-window"), "/cushions/1/mirrored", 2), 1)
    assert facts(both)["Hands"] == "2 mirrored"
    assert steps(both)["closure.band"]["figure"] == told["closure.band"]["figure"] == "4 in"
    assert "Hands" not in facts(sheet_of(example("bay-window")))


def test_a_closed_back_is_measured_by_the_cover_whatever_its_front_is_made_of():
    """A banded front is cut in three pieces, a round one has a diameter, and a flange of 5 cm goes on at both ends."""

    def closed(document, number=0):
        lapped = changed(document, f"/cushions/{number}/cover/closure", {"kind": "envelope"})
        return steps(sheet_of(lapped, number))["closure.overlap"]["text"]

    assert "measures 11 in between" in closed(example("parlour-bench"), 2)
    assert "measures 15 in between" in closed(example("garden-rounds"))
    assert "measures 58 cm between" in closed(example("guest-room"))
