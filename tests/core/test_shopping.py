"""What is bought beside the cloth, and the list to take to the shops."""

import pytest
from jobs import changed, cloth, covers, example, job

from plumpline import JobError, plan
from plumpline.cushions.filling import filling_of
from plumpline.measures import Measures
from plumpline.prepared import prepare
from plumpline.shopping import materials

IN = 25_400_000
MM = 1_000_000


def bought(document):
    return {material["id"]: material for material in plan(document, "quick")["materials"]}


def test_the_thread_of_a_job_goes_by_its_seams_and_its_cloth():
    """Six covers of 17 in a side are sewn 6 × 68 in through two layers of 0.5 mm with a 3 mm stitch: 2 + 2·1/3 for each
    length (textile teaching: C = 2 + 2·T·S), 15 % for waste."""
    thread = bought(example("harbour-room"))["thread"]
    assert thread["length"]["nm"] == pytest.approx(6 * 68 * IN * (2 + 2 / 3) * 1.15, abs=2)
    assert (thread["quantity"], thread["each"]["nm"]) == (1, 100 * 1000 * MM)
    assert thread["ask"] == "1 spool of thread of 100 m, Tex 40 (ticket 75, cotton ticket 44)"
    assert thread["working"] == (
        "11 3/8 yd of seam × 2.67; 15 % more for ends and waste: 32 m (35 yd), 1 spool of 100 m."
    )


def test_heavier_cloth_takes_a_coarser_needle_a_longer_stitch_and_more_thread():
    """Common practice: 16/100 and 3.5 mm for heavy cloth, 14/90 and 3 mm for medium."""
    plain = example("harbour-room")
    medium, heavy = (bought(changed(plain, "/cloths/0/weight", weight)) for weight in ("medium", "heavy"))
    assert medium["needle"]["ask"] == "Machine needle Nm 90 (US 14)"
    assert medium == bought(plain)
    assert heavy["needle"]["ask"] == "Machine needle Nm 100 (US 16)"
    assert "stitch 3.5 mm" in heavy["needle"]["working"]
    assert heavy["thread"]["length"]["nm"] > medium["thread"]["length"]["nm"]


def test_the_heaviest_cloth_of_a_job_decides_its_needle():
    document = example("size-wanted")
    for index, weight in enumerate(("sheer", "very-heavy")):
        document = changed(document, f"/cloths/{index}/weight", weight)
    assert bought(document)["needle"]["ask"] == "Machine needle Nm 110 (US 18)"


def test_there_is_a_label_for_every_cover():
    assert bought(example("size-wanted"))["label"]["quantity"] == 6
    one = plan(job(covers(1, "18 in", "18 in"), cloth("54 in")), "quick")
    assert one["materials"][-1]["ask"] == "1 label to sew in"


def test_pads_nobody_stocks_come_with_their_filling_by_weight():
    """65 × 44 = 2860 cm² are 443.3 square inches; × 5 % = 22.2 oz (common practice), 628 g; two of them 1257 g."""
    filling = bought(example("size-wanted"))["filling:c2"]
    assert filling["ask"] == "1257 g (44.3 oz) of down"
    assert filling["working"].startswith("628 g (22.2 oz) for each pad. 2860 square centimetres × 0.2197 g = 628 g")
    assert "filling:c1" not in bought(example("size-wanted"))


@pytest.mark.parametrize(("fill", "asked"), [("foam-crumb", "Foam crumb: up to"), ("foam", None), (None, "of filling")])
def test_crumb_is_bought_by_volume_and_a_block_of_foam_needs_no_filling(fill, asked):
    document = changed(example("size-wanted"), "/cushions/1/insert/fill", fill)
    filling = bought(document).get("filling:c2")
    assert filling is None if asked is None else asked in filling["ask"]
    assert filling is None or filling["working"]


def test_every_soft_pad_tells_its_filling_and_foam_does_not():
    cushion = plan(example("harbour-room"), "quick")["cushions"][0]
    assert cushion["filling"]["text"] == "16.2 oz (459 g)"
    assert cushion["filling"]["working"][0]["text"] == "324 square inches × 5 % = 16.2 oz (459 g)."
    foam = changed(example("harbour-room"), "/cushions/0/insert/fill", "foam")
    assert plan(foam, "quick")["cushions"][0]["filling"] is None


def test_rounds_go_by_their_area_and_what_has_no_rule_says_nothing():
    """π · 9² = 254.47 square inches, × 5 % = 12.7 oz."""
    round_pad = filling_of(Measures((("diameter", 18 * IN),)), "feather", "in")
    assert round_pad.text == "12.7 oz (361 g)"
    assert "Paulsen" in round_pad.geometry[-1]
    assert filling_of(Measures((("thickness", 9 * IN),)), "feather", "in") is None


@pytest.mark.parametrize(
    ("pad", "cubic_inches", "ounces"),
    [
        ((("width", 20), ("length", 18), ("thickness", 4)), 1440, "21"),
        ((("diameter", 16), ("thickness", 3)), 603, "8.8"),
        ((("diameter", 9), ("length", 18)), 1145, "16.7"),
    ],
)
def test_boxes_and_bolsters_are_filled_as_closely_as_a_square_by_the_rule(pad, cubic_inches, ounces):
    """16.2 oz (5 % of 324) in the 1111.05 cu in of Robin's formula: 0.014581 oz to the cubic inch."""
    size = Measures(tuple((name, inches * IN) for name, inches in pad))
    soft = filling_of(size, "feather", "in")
    assert soft.text.startswith(f"{ounces} oz (")
    assert soft.working[0].startswith(f"The pad holds {cubic_inches} cu in (")
    assert soft.weight / 28_349_523_125 == pytest.approx(cubic_inches * 16.2 / 1111.05, rel=1e-3)
    poured = filling_of(size, "foam-crumb", "in")
    assert (poured.weight, poured.text.split(" (")[0]) == (None, f"{cubic_inches} cu in")
    assert filling_of(size, "foam", "in") is None


def test_a_straight_sided_box_is_filled_by_its_own_face():
    """Half of a square of 20 in, 3 in thick: 600 cu in and not 1200."""
    box = Measures((("width", 20 * IN), ("length", 20 * IN), ("thickness", 3 * IN)))
    triangle = ((0, 0), (20 * IN, 0), (0, 20 * IN))
    assert filling_of(box, "polyester", "in", triangle).working[0].startswith("The pad holds 600 cu in")


@pytest.mark.parametrize(
    ("kind", "insert", "asked"),
    [
        ("boxed", {"shape": "rectangle", "width": "25 in", "length": "18 in", "thickness": "4 in"}, "26 × 19 × 4 in"),
        ("boxed", {"shape": "round", "diameter": "20 in", "thickness": "3 in"}, "21 in across, 3 in thick"),
        ("bolster", {"shape": "bolster", "diameter": "9 in", "length": "18 in"}, "10 in across, 19 in long"),
    ],
)
def test_a_wanted_size_orders_the_pad_and_its_filling_for_every_kind(kind, insert, asked):
    entry = covers(2, "20 in", "18 in", smaller_by="1 in")
    entry |= {"kind": kind, "size_from": "finished", "insert": {**insert, "fill": "polyester"}}
    made = {one["kind"]: one for one in plan(job(entry, cloth("54 in")), "quick")["materials"]}
    assert made["pad"]["ask"] == f"2 pads of {asked}"
    assert made["filling"]["ask"].endswith("of polyester")


BOX = {"shape": "rectangle", "width": "18 in", "length": "20 in", "thickness": "3 in"}
ROLL = {"shape": "bolster", "diameter": "6 in", "length": "16 in"}


@pytest.mark.parametrize(
    ("kind", "insert", "fill", "smaller_by", "ask", "sold"),
    [
        # Sizes as they are sold, common practice, from memory. A box of foam serves only where it is the size wanted.
        ("boxed", BOX, "foam", "0 in", "18 × 20 × 3 in", "sold in this size"),
        ("boxed", {**BOX, "width": "17 3/4 in"}, "foam", "0 in", "17 3/4 × 20 × 3 in", "have it made"),
        ("boxed", {**BOX, "thickness": "2 3/4 in"}, "polyester", "1 in", "19 × 21 × 2 3/4 in", "have it made"),
        # A soft one may be up to 1 in larger either way: 17 + 1/2 by 19 + 1/2 in.
        ("boxed", {**BOX, "width": "17 in", "length": "19 in"}, "polyester", "1/2 in", "18 × 20 × 3 in", "next size"),
        ("boxed", {**BOX, "width": "16 3/4 in"}, "polyester", "0 in", "16 3/4 × 20 × 3 in", "have it made"),
        ("boxed", {"shape": "round", "diameter": "15 in", "thickness": "2 in"}, "foam", "0 in", "15 in", "this size"),
        ("bolster", ROLL, "polyester", "0 in", "6 in across, 16 in long", "sold in this size"),
        ("bolster", {**ROLL, "length": "15 in"}, "polyester", "0 in", "6 in across, 16 in long", "next size"),
        ("bolster", {**ROLL, "diameter": "6 1/2 in"}, "foam", "0 in", "6 1/2 in across, 16 in", "have it made"),
    ],
)
def test_boxes_and_bolsters_are_ordered_at_a_stocked_size_where_one_serves(kind, insert, fill, smaller_by, ask, sold):
    entry = covers(2, "20 in", "18 in", smaller_by=smaller_by, kind=kind, size_from="finished")
    entry["insert"] = {**insert, "fill": fill}
    made = {one["kind"]: one for one in plan(job(entry, cloth("54 in")), "quick")["materials"]}
    assert made["pad"]["ask"].startswith(f"2 pads of {ask}")
    assert sold in made["pad"]["working"]
    assert made["pad"]["stocked"] == (sold != "have it made")


def test_metric_boxes_and_bolsters_are_sold_in_centimetres():
    """Common practice, from memory: seat pads of 40 × 40 × 4 cm and bolsters of 15 cm by 40."""
    box = {"shape": "rectangle", "width": "40 cm", "length": "40 cm", "thickness": "4 cm", "fill": "foam"}
    roll = {"shape": "bolster", "diameter": "15 cm", "length": "40 cm", "fill": "feather"}
    for kind, insert in (("boxed", box), ("bolster", roll)):
        entry = covers(1, "20 cm", "18 cm", smaller_by="0 cm", kind=kind, size_from="finished", seam="1.5 cm")
        entry["insert"] = insert
        made = plan(job(entry, cloth("140 cm", sold_by="10 cm"), units="cm"), "quick")["materials"]
        assert next(one for one in made if one["kind"] == "pad")["stocked"]


def test_a_bed_pillow_is_told_that_the_rule_asks_too_much():
    """Bed-pillow tables: 16 to 20 oz for 20 × 26 in, where the rule gives 26."""
    pillow = filling_of(Measures((("width", 26 * IN), ("length", 20 * IN))), "down", "in")
    assert "a bed pillow of this size takes less, 16 to 20 oz" in pillow.working[1]


def test_zips_are_bought_as_chain_with_sliders_or_ready_made():
    """Common practice: a zip is 2 in shorter than its side of 17 in, and chain takes an inch more for its ends; six of
    them 96 in. The next ready-made zip has 16 in and is shortened."""
    document = changed(example("harbour-room"), "/cushions/0/cover/closure", {"kind": "zip"})
    zips = bought(document)["zip"]
    assert zips["ask"] == "2 3/4 yd of zip chain and 6 sliders"
    assert (zips["quantity"], zips["length"]["nm"]) == (6, 96 * IN)
    assert zips["working"] == (
        "Chain 6 × 16 in, 1 in of each for its ends: 96 in; 6 sliders. "
        "Or ready-made: 6 zips of 16 in, shortened to 15 in."
    )


def test_the_zips_of_a_metric_job_are_looked_for_among_metric_ones():
    """42 cm of opening: chain of 44.5 cm, or ready-made 45 cm."""
    closure = {"kind": "zip", "length": "42 cm"}
    zips = bought(changed(example("size-wanted"), "/cushions/0/cover/closure", closure))["zip"]
    assert zips["for"] == ["c1"]
    assert zips["ask"] == "1.78 m of zip chain and 4 sliders"
    assert zips["working"].endswith("4 zips of 45 cm, shortened to 42 cm.")


def test_buttons_and_ties_stand_at_equal_distances_along_their_edge():
    """Common practice: buttons no more than 4 in apart, ties no more than 6, each tie 10 in long; an edge of 17."""
    buttoned = bought(changed(example("harbour-room"), "/cushions/0/cover/closure", {"kind": "buttons"}))["buttons:c1"]
    assert buttoned["ask"] == "24 buttons"
    assert "4 on an edge of 17 in, ≈ 3 3/8 in from one to the next" in buttoned["working"]
    tied = bought(changed(example("harbour-room"), "/cushions/0/cover/closure", {"kind": "ties"}))["ties:c1"]
    assert tied["quantity"] == 24
    assert tied["length"]["nm"] == 240 * IN
    assert tied["ask"] == "6 3/4 yd of tape for ties"
    assert tied["working"].startswith("2 pairs: 2 on an edge of 17 in")


def trimmed(side, edge):
    """Four covers of that side, trimmed."""
    entry = covers(4, side, side)
    entry["cover"]["edge"] = {"kind": "trimmed", **edge}
    return job(entry, cloth("60 in"))


@pytest.mark.parametrize(("joins", "packs"), [("none", "4 packs"), ("one", "3 packs")])
def test_a42_trim_in_packs_with_and_without_a_hidden_join(joins, packs):
    """Case A42: 54 in round each of 4 cushions, packs of 2 1/2 yd. 4 packs whole, 3 with one hidden join a cushion."""
    edge = {"join": "0 in", "pack": "2 1/2 yd", "hidden_joins": joins}
    trim = bought(trimmed("13 1/2 in", edge))["trim:c1"]
    assert trim["ask"] == f"{packs} of trim of 90 in"
    assert trim["length"]["nm"] == trim["quantity"] * 90 * IN
    with_ends = bought(trimmed("13 1/2 in", {**edge, "join": "1 in"}))["trim:c1"]
    assert with_ends["ask"] == trim["ask"]


def test_trim_by_the_length_takes_each_ring_with_its_join_and_some_to_spare():
    """54 in and 1 in where the ends meet, four times, 5 % more: 231 in (common practice)."""
    trim = bought(trimmed("13 1/2 in", {}))["trim:c1"]
    assert (trim["quantity"], trim["length"]["nm"]) == (4, 231 * IN)
    assert trim["ask"] == "6 1/2 yd of trim"
    assert trim["working"] == "54 in round the edge + 1 in for the join = 55 in; × 4, 5 % more: 231 in."


def test_a_box_is_trimmed_at_the_front_or_at_both_rims_and_a_bolster_at_its_ends():
    bench = changed(example("window-bench"), "/cushions/1/cover/edge", {"kind": "trimmed", "rims": "both"})
    both = bought(bench)["trim:c2"]
    front = bought(changed(bench, "/cushions/1/cover/edge/rims", "front"))["trim:c2"]
    assert both["quantity"] == 2 * front["quantity"] == 2 * bench["cushions"][1]["quantity"]
    assert both["length"]["nm"] == pytest.approx(2 * front["length"]["nm"], abs=1)
    ends = changed(bench, "/cushions/2/cover/edge", {"kind": "trimmed", "rims": "both", "join": "0 cm"})
    # An 18 cm bolster, from which nothing is taken off by the rule: π · 18 = 56.549 cm round each end, 5 % to spare.
    count = 2 * bench["cushions"][2]["quantity"]
    assert bought(ends)["trim:c3"]["length"]["nm"] == pytest.approx(count * 56.548668 * 10_000_000 * 1.05, rel=1e-6)


def codes(document):
    return [notice["code"] for notice in plan(document, "quick")["notices"]]


def test_a_pack_that_is_too_short_is_said_with_both_lengths_and_the_trim_bought_by_the_length():
    short = trimmed("28 in", {"pack": "2 1/2 yd"})
    (notice,) = [n for n in plan(short, "quick")["notices"] if n["code"] == "pack-too-short"]
    assert notice["at"] == "/cushions/0/cover/edge/pack"
    assert "takes 113 in, a pack holds 90 in" in notice["text"]
    assert "yd of trim" in bought(short)["trim:c1"]["ask"]
    assert "pack-too-short" not in codes(trimmed("28 in", {"pack": "2 1/2 yd", "hidden_joins": "one"}))


def test_gathered_ends_have_no_rim_to_trim():
    rolls = changed(example("garden-rounds"), "/cushions/2/cover/edge", {"kind": "trimmed", "pack": "2 yd"})
    assert "no-rim" in codes(rolls)
    assert "trim:c3" not in bought(rolls)


def test_overlocked_edges_take_thread_for_the_way_round_every_piece():
    """C = 5 + 4·S·(W + T) for a three-thread overedge (textile teaching), W 5 mm, T 0.5 mm, 3 mm stitches: 12.33."""
    plain = example("harbour-room")
    overlocked = bought(changed(plain, "/cushions/0/cover/seam_finish", "overlocked"))["thread"]
    cut = changed(changed(plain, "/cushions/0/cover/seam_finish", "overlocked"), "/cushions/0/cover/corners", None)
    square = bought(cut)["thread"]
    more = square["length"]["nm"] - bought(plain)["thread"]["length"]["nm"]
    assert more == pytest.approx(12 * 4 * 18 * IN * (5 + 4 * 5.5 / 3) * 1.15, abs=2)
    assert overlocked["length"]["nm"] < square["length"]["nm"]
    assert "of overlocked edge × 12.33" in overlocked["working"]


def test_the_list_goes_shop_by_shop_and_its_lines_keep_their_names():
    answer = plan(example("size-wanted"), "quick")
    assert [shop["name"] for shop in answer["shopping"]] == ["Cloth", "Haberdashery", "Pads and filling"]
    lines = [line for shop in answer["shopping"] for line in shop["lines"]]
    assert [line["id"] for line in lines[:2]] == ["cloth:k1", "cloth:k2"]
    assert lines[0]["text"].endswith("of half-drop sprig, 138 cm wide")
    assert {line["id"] for line in lines[2:]} == set(bought(example("size-wanted")))
    assert len({line["id"] for line in lines}) == len(lines)
    more = plan(changed(example("size-wanted"), "/cushions/0/quantity", 9), "quick")
    assert [line["id"] for shop in more["shopping"] for line in shop["lines"]] == [line["id"] for line in lines]


def test_a_job_without_covers_buys_nothing():
    assert materials([], prepare(example("harbour-room")).job) == []


def thread_of(finish, **cover):
    entry = covers(2, "18 in", "18 in")
    entry["cover"] |= {"seam_finish": finish, "closure": {"kind": "zip"}, **cover}
    answer = plan(job(entry, [cloth("54 in"), cloth("54 in", id="k2")]), "quick")
    (found,) = [one for one in answer["materials"] if one["kind"] == "thread"]
    lines = [line["text"] for line in answer["cushions"][0]["working"]]
    return found["length"]["nm"], lines, [step["title"] for step in answer["workroom"][0]["steps"]]


def test_seams_overlocked_together_take_one_edge_where_edge_by_edge_takes_two():
    """5 + 4 (5 mm + T) / 3 mm by the textile teaching of `thread`: T is two layers, or one, of 0.5 mm, and 15 % waste.

    Together: four seams of 18 in on each of two covers. By itself: round the two panels of each, 19 x 19 1/4 in.
    """
    plain, nothing_said, _ = thread_of("plain")
    together, said, steps = thread_of("overlocked-together")
    ratio = {layers: 5 + 4 * (5 + layers * 0.5) / 3 for layers in (1, 2)}
    assert (together - plain) / 25.4e6 == pytest.approx(1.15 * 2 * 72 * ratio[2], rel=1e-3)
    assert (thread_of("overlocked")[0] - plain) / 25.4e6 == pytest.approx(1.15 * 4 * 76.5 * ratio[1], rel=1e-3)
    assert "Once sewn, the allowances are trimmed to 1/4 in and the two overlocked together." in said
    assert "Overlock the seams" in steps
    assert not any("trimmed" in line for line in nothing_said)


def test_trimming_takes_no_thread_and_a_step_of_its_own():
    trimmed, said, steps = thread_of("trimmed")
    assert trimmed == thread_of("plain")[0]
    assert "Once sewn, the allowances are trimmed to 1/4 in." in said
    assert steps.index("Trim the seams") > steps.index("Join front and back")


def test_a_lining_is_overlocked_as_one_with_its_face_and_an_interlining_not_at_all():
    layers = {"lining": {"cloth": "k2"}, "interlining": {"cloth": "k2"}}
    plain, lined = thread_of("plain", layers=layers)[0], thread_of("overlocked", layers=layers)[0]
    assert (lined - plain) / 25.4e6 == pytest.approx(1.15 * 4 * 76.5 * (5 + 4 * (5 + 2 * 0.5) / 3), rel=1e-3)


def test_seams_that_are_least_already_cannot_be_trimmed():
    entry = covers(1, "18 in", "18 in", seam="1/4 in")
    entry["cover"]["seam_finish"] = "trimmed"
    with pytest.raises(JobError) as raised:
        plan(job(entry, cloth("54 in")))
    assert [(p["at"], p["code"]) for p in raised.value.problems] == [
        ("/cushions/0/cover/seam_finish", "rules-contradict")
    ]
