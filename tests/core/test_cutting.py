"""The straight plan told as it is cut: rows off first, equal rows once, every cut in the words of the table."""

from answer_checker import check
from jobs import cloth, covers, example, job

from plumpline import plan
from plumpline.cutting import in_cutting_order, steps
from plumpline.layout.strip import Cut

IN = 25_400_000


def told(document):
    return [(step["title"], step["text"]) for step in plan(document)["cloths"][0]["straight"]["steps"]]


def test_equal_rows_are_told_once():
    assert told(example("harbour-room")) == [
        ("Cuts 1 to 4", "Square the end, then across the full width at 18, 36, 54 and 72 in."),
        ("Each row", "Along at 18 and 36 in."),
    ]


def test_a_single_row_is_a_row_of_its_own():
    assert told(job(covers(1, "17 in", "17 in"), cloth("54 in"))) == [
        ("Cut 1", "Square the end, then across the full width at 18 in."),
        ("Row 1", "Along at 18 and 36 in."),
    ]


def test_a_panel_as_wide_as_the_cloth_needs_no_cut_along():
    assert told(job(covers(1, "53 in", "17 in"), cloth("54 in"))) == [
        ("Cuts 1 and 2", "Square the end, then across the full width at 18 and 36 in.")
    ]


def cut(kind, x, y, length):
    return Cut(0, kind, x * IN, y * IN, length * IN)


def test_rows_come_off_first_and_are_numbered_first():
    mixed = (cut("across", 0, 10, 50), cut("along", 20, 0, 10), cut("across", 0, 30, 50), cut("along", 25, 10, 20))
    ordered = in_cutting_order(mixed, 50 * IN)
    assert [(c.number, c.kind, c.y // IN) for c in ordered] == [
        (1, "across", 10),
        (2, "across", 30),
        (3, "along", 0),
        (4, "along", 10),
    ]


def test_a_row_tells_its_strips_and_what_is_left_in_them():
    cuts = (
        cut("across", 0, 20, 50),
        cut("along", 16, 0, 20),
        cut("across", 16, 8, 34),
        cut("along", 30, 8, 12),
        cut("across", 0, 40, 50),
        cut("across", 0, 60, 50),
        cut("along", 25, 20, 20),
        cut("along", 25, 40, 20),
    )
    found = steps(in_cutting_order(cuts, 50 * IN), 50 * IN, "in")
    assert [(step.title, step.text) for step in found[1:]] == [
        ("Row 1", "Along at 16 in."),
        ("Row 1, strip 16 to 50 in", "Across at 8 in of the row."),
        ("Row 1, part 8 to 20 in up", "Along at 30 in."),
        ("Rows 2 and 3", "Along at 25 in."),
    ]


def test_the_numbers_of_the_answer_follow_the_order_at_the_table():
    for laid in plan(example("flawed-bolt"))["cloths"]:
        cuts = laid["straight"]["cuts"]
        assert [entry["number"] for entry in cuts] == list(range(1, len(cuts) + 1))
        full = [entry["full_width"] for entry in cuts]
        assert full == sorted(full, reverse=True)
        assert sum(full) == laid["straight"]["full_width_cuts"]


def test_a_plan_that_comes_apart_by_straight_cuts_is_the_straight_plan():
    """Two staggered columns of a half-drop part by one long cut: rows would take 90 in, the columns take 78."""
    printed = cloth(
        "54 in",
        repeat={"across": "27 in", "along": "24 in", "drop": "12 in"},
        motifs=[{"id": "m1", "across": "13 1/2 in", "along": "0 in"}],
        start="choose",
    )
    document = job(covers(3, "17 in", "17 in", pattern="centred", motif="m1"), printed)
    answer = plan(document)
    check(document, answer)
    laid = answer["cloths"][0]
    assert (laid["laid"]["text"], laid["straight"]["laid"]["text"]) == ("78 in", "78 in")
    told_ = [(step["title"], step["text"]) for step in laid["straight"]["steps"]]
    assert told_[:3] == [
        ("Cut 1", "Square the end, then across the full width at 78 in."),
        ("Row 1", "Along at 4 1/2, 22 1/2, 31 1/2 and 49 1/2 in."),
        ("Row 1, strip 4 1/2 to 22 1/2 in", "Across at 18, 24, 42, 48 and 66 in of the row."),
    ]


def test_a_crease_down_the_cloth_is_cut_beside_and_not_rowed_around():
    crease = {"across": "18 in", "along": "0 in", "width": "1 in", "length": "100 in"}
    document = job(covers(1, "17 in", "17 in"), cloth("54 in", start="measured", flaws=[crease]))
    answer = plan(document)
    check(document, answer)
    assert answer["cloths"][0]["straight"]["laid"]["text"] == "18 in"
