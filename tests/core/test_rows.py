"""Fronts in a row along a sofa or a bench: the pattern of each goes on where that of the one before it ends."""

import pytest
from jobs import changed, checked, cloth, covers, facts, job, problems

IN = 25_400_000


def print_(**more):
    repeat = {"repeat": {"across": "27 in", "along": "25 in"}, "start": "choose"}
    return cloth("54 in", **{**repeat, **more})


def row(*widths, height="17 in", **more):
    """Covers of these widths in inches, cut an inch wider, 18 in high; their backs are cut from another cloth."""
    found = []
    for number, width in enumerate(widths, 1):
        entry = covers(1, f"{width} in", height, id=f"c{number}", name=f"seat {number}")
        entry["cover"] |= {"front": {"cloth": "k1", "pattern": "flow"}, "back": {"cloth": "k2"}, **more}
        found.append(entry)
    return found


def benches(entries, **more):
    return job(entries, [print_(**more), cloth("54 in", id="k2")])


def placed(answer):
    entries = {e["piece"]: e for e in answer["cloths"][0]["layout"]}
    return {piece: (e["x"] / IN, e["y"] / IN) for piece, e in entries.items()}


def test_every_front_begins_in_the_repeat_where_the_one_before_it_ends():
    """Hand calculation: finished 20, 22 and 16 in wide, sewn 1/2 in from their edges, on a repeat of 27 in.

    From the left edge of the first panel the second one lies 20 in on, the third 42, that is 15 in, up to whole
    repeats. All show the same place along: rows 25 in apart. Two panels of 21 and 23 in lie side by side only if one
    begins 21 to 31 in from the first: 20 + 27 is too far on 54 in of cloth, and 7 before it is too near; the first and
    the third at x and x + 15 or x + 42 are too near or too far as well, as are the second and the third, 22 in on or 5
    before: but 22 in is less than the 23 of the second. So each has a row: 2 × 25 + 18 = 68 in.
    """
    answer = checked(benches(row(20, 22, 16)))
    at = placed(answer)
    first, second, third = (at[f"c{number}.front"] for number in (1, 2, 3))
    assert ((second[0] - first[0]) % 27, (third[0] - first[0]) % 27) == (20, 15)
    assert ((second[1] - first[1]) % 25, (third[1] - first[1]) % 25) == (0, 0)
    assert (answer["cloths"][0]["laid"]["text"], answer["cloths"][0]["start"]) == ("68 in", None)


def test_fronts_as_wide_as_the_repeat_lie_as_they_stand():
    """Finished 26 in wide on a repeat of 26 in: every front shows the same place of the pattern."""
    at = placed(checked(benches(row(26, 26), repeat={"across": "26 in"})))
    assert (at["c1.front"][0] - at["c2.front"][0]) % 26 == 0


def test_fronts_of_other_heights_stand_on_one_line():
    """A front 4 in higher shows the same place at its lower seam: its panel begins on the same rows."""
    entries = row(20, 20)
    entries[1]["insert"]["length"] = "21 in"
    at = placed(checked(benches(entries)))
    assert (at["c1.front"][1] - at["c2.front"][1]) % 25 == 0


def test_a_drop_and_the_wash_and_the_way_the_cloth_lies_are_counted_in():
    washed = {"shrinkage": {"along": "0.03", "across": "0.02"}}
    for more in (
        {"repeat": {"across": "13 1/2 in", "along": "24 in", "drop": "12 in"}},
        {"up": "left"},
        {"up": "toward", "direction": "two-way"},
        {"direction": "any"},
        {**washed, "wash": "after-making", "up": "right"},
        {**washed, "wash": "before-cutting"},
    ):
        checked(benches(row(19, 20, 17, side_seam="5/8 in"), **more), "quick")


def test_the_boxing_of_a_seat_in_a_row_goes_on_from_its_front():
    entries = row(20, 22, sides={"pattern": "match-front"})
    for entry in entries:
        entry["kind"] = "boxed"
        entry["insert"]["thickness"] = "3 in"
    checked(benches(entries), "quick")


def test_a_flanged_front_flows_from_edge_to_edge():
    at = placed(checked(benches(row(16, 16, edge={"kind": "flanged", "flange": "2 in"})), "quick"))
    assert (at["c2.front"][0] - at["c1.front"][0]) % 27 == 20


def test_the_sheet_says_where_in_the_row_a_front_stands():
    answer = checked(benches(row(20, 22)), "quick")
    assert facts(answer, 0)["Pattern, face"] == "number 1 of 2 in the row, from the left"
    assert facts(answer, 1)["Pattern, face"] == "number 2 of 2 in the row, from the left; goes on from seat 1"
    said = facts(answer, 1)["Not matched"]
    assert said == "the pattern runs on from cover to cover, and does not run on across any seam"


def test_another_order_of_the_job_is_another_row():
    one, other = row(20, 24)
    there, back = (placed(checked(benches(entries), "quick")) for entries in ([one, other], [other, one]))
    assert (there["c2.front"][0] - there["c1.front"][0]) % 27 == 20
    assert (back["c1.front"][0] - back["c2.front"][0]) % 27 == 24


# ---- what cannot be ------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("at", "value", "said"),
    [
        ("/cushions/1/quantity", 2, "give each an entry, in the order they stand"),
        ("/cushions/1/cover/front/made", {"kind": "band", "width": "3 in"}, "cut in one piece"),
        ("/cushions/1/cover/front/joined", "one-side", "cut in one piece"),
        ("/cushions/1/insert", {"shape": "round", "diameter": "18 in"}, "square and oblong"),
    ],
)
def test_what_has_no_place_in_a_row_is_said_at_its_pattern(at, value, said):
    ((where, code, text),) = problems(changed(benches(row(20, 22)), at, value))
    assert (where, code) == ("/cushions/1/cover/front/pattern", "rules-contradict")
    assert said in text


def test_a_row_needs_a_repeat():
    found = problems(benches(row(20, 22), repeat={}))
    assert {at for at, _, _ in found} == {f"/cushions/{number}/cover/front/pattern" for number in (0, 1)}
    assert found[0][2].startswith("A row of fronts needs the repeat of cloth 1")


def test_a_row_that_the_cloth_has_no_columns_for_is_said_so():
    """Panels of 41 in on 54 leave 13 in to move; each begins 40 in after the one before, on a repeat of 60."""
    found = problems(benches(row(40, 40), repeat={"across": "60 in", "along": "25 in"}))
    assert [(at, code) for at, code, _ in found] == [("/cushions/0/cover/front/pattern", "motif-cannot-be-centred")]
    assert found[0][2].startswith("The front and what goes on from it have no place in the pattern together")
