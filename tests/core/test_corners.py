"""Rounded corners: where they are stitched and cut, what they take off the edge; and corners of backs in two pieces."""

import math

import pytest
from jobs import cloth, covers, job

from plumpline import JobError, plan
from plumpline.prepared import Prepared, prepare

IN = 25_400_000
ROUNDED = {"kind": "rounded", "radius": "3 in"}


def cover(corners, width="18 in", length="14 in", **more):
    entry = covers(1, width, length)
    entry["cover"] |= {"corners": corners, **more}
    return entry


def boxed(corners, **more):
    entry = cover(corners, **more)
    entry["kind"] = "boxed"
    entry["insert"]["thickness"] = "3 in"
    return entry


def pieces(entry, **bolt):
    prepared = prepare(job(entry, cloth("100 in", **bolt), grid="0"))
    assert isinstance(prepared, Prepared), prepared
    return {piece.part: piece for piece in prepared.covers[0].pieces}, prepared.covers[0]


def problems(entry):
    with pytest.raises(JobError) as raised:
        plan(job(entry, cloth("100 in")))
    return {(p["at"].removeprefix("/cushions/0/cover/"), p["code"]) for p in raised.value.problems}


def outside(outline, width, height, radius, left=0, bottom=0):
    """The points of an outline that are not on a rounded rectangle with this lower left corner, within 1/10 mm."""
    off = []
    for x, y in outline:
        x, y = x - left, y - bottom
        dx = max(radius - x, x - (width - radius), 0)
        dy = max(radius - y, y - (height - radius), 0)
        on_arc = dx and dy and abs(math.hypot(dx, dy) - radius) < 100_000
        on_side = min(x, width - x, y, height - y) == 0 and not (dx and dy)
        off += [] if on_arc or on_side else [(x, y)]
    return off


def test_a_rounded_corner_is_stitched_at_its_radius_and_cut_a_seam_larger():
    found, _ = pieces(cover(ROUNDED))
    front = found["front"]
    assert (front.width, front.length, len(front.outline) > 30) == (19 * IN, 15 * IN, True)
    assert outside(front.outline, 19 * IN, 15 * IN, 7 * IN // 2) == []
    assert outside(front.seam_line, 18 * IN, 14 * IN, 3 * IN, IN // 2, IN // 2) == []
    lines = [line["text"] for line in plan(job(cover(ROUNDED), cloth("100 in")), "quick")["cushions"][0]["working"]]
    assert "Corners rounded by 3 in where they are stitched, cut by 3 1/2 in." in lines


def test_a_wider_allowance_at_the_zip_leaves_the_stitched_corner_round():
    found, _ = pieces(cover(ROUNDED, closure={"kind": "zip", "zip_seam": "1 in"}))
    front = found["front"]
    assert front.length == 31 * IN // 2
    assert outside(front.seam_line, 18 * IN, 14 * IN, 3 * IN, IN // 2, IN) == []


def test_corners_are_rounded_by_two_inches_unless_another_radius_is_said():
    """Common practice (from memory): 2 in, or 5 cm."""
    usual, _ = pieces(cover({"kind": "rounded"}))
    said, _ = pieces(cover({"kind": "rounded", "radius": "2 in"}))
    assert usual["front"].outline == said["front"].outline


def test_the_outer_corners_alone_of_a_back_in_two_pieces_are_rounded_or_tapered():
    for corners in (ROUNDED, {"kind": "tapered", "depth": "1/2 in", "run": "1/4"}):
        found, _ = pieces(cover(corners, closure={"kind": "envelope", "overlap": "4 in", "hem": "1 in"}))
        upper, lower = found["back-1"], found["back-2"]
        assert {(0, 0), (upper.width, 0)} <= set(upper.outline)
        assert {(0, lower.length), (lower.width, lower.length)} <= set(lower.outline)
        assert (upper.width, upper.length) not in upper.outline
        assert (0, 0) not in lower.outline


def test_the_taper_of_half_a_back_is_that_of_the_whole_face():
    """A quarter of the 15 in that the whole face is cut high, as on the front, not of its own piece."""
    corners = {"kind": "tapered", "depth": "1/2 in", "run": "1/4"}
    found, _ = pieces(cover(corners, closure={"kind": "zip", "at": "back"}))
    taper = {part: next(m for m in piece.marks if m.kind == "taper") for part, piece in found.items()}
    assert taper["front"].points == taper["back-2"].points
    assert taper["front"].points[2] == (0, 15 * IN // 4)
    assert [len([m for m in found[part].marks if m.kind == "taper"]) for part in found] == [4, 2, 2]


def test_the_ring_of_a_rounded_box_is_shorter_by_what_the_corners_take_off():
    """2 (18 + 14) - 8 × 3 + 2 π × 3 = 58.85 in: four sides less their ends, and one whole circle."""
    stitched = 2 * (18 + 14) * IN - 8 * 3 * IN + round(math.pi * 6 * IN)
    for boxing in ({"kind": "band"}, {"kind": "front-and-sides"}):
        for closure in ({"kind": "hand-sewn"}, {"kind": "zip", "at": "boxing"}):
            found, made = pieces(boxed(ROUNDED, boxing=boxing, closure=closure))
            ring = [piece for part, piece in found.items() if part.startswith("boxing") or part == "zip-band-1"]
            assert sum(piece.width - IN for piece in ring) == stitched
            around = next(line for line in made.cutting if line.startswith("Once round"))
            assert "less 8 × 3 in, and 2 π × 3 in" in around
    assert outside(found["front"].outline, 19 * IN, 15 * IN, 7 * IN // 2) == []


def test_rounded_corners_of_a_round_cover_are_nothing():
    entry = cover(ROUNDED)
    entry["insert"] = {"shape": "round", "diameter": "18 in"}
    plain = cover({"kind": "square"})
    plain["insert"] = entry["insert"]
    assert pieces(entry)[0] == pieces(plain)[0]


def test_a_radius_of_half_the_side_is_the_largest():
    ends, _ = pieces(cover({"kind": "rounded", "radius": "7 in"}))
    assert outside(ends["front"].outline, 19 * IN, 15 * IN, 15 * IN // 2) == []
    assert problems(cover({"kind": "rounded", "radius": "7 1/8 in"})) == {("corners/radius", "corner-too-large")}
    assert problems(boxed({"kind": "rounded", "radius": "8 in"})) == {("corners/radius", "corner-too-large")}


def test_a_taper_that_is_deeper_than_it_runs_or_longer_than_its_half_is_refused():
    for run in ("1/2 in", "8 in"):
        corners = {"kind": "tapered", "depth": "1/2 in", "run": run}
        assert problems(cover(corners)) == {("corners/run", "corner-too-large")}


def test_a_boxed_plate_is_not_tapered():
    assert problems(boxed({"kind": "tapered"})) == {("corners/kind", "unknown-value")}


def test_a_wash_to_come_stretches_the_rounded_corner_too():
    found, _ = pieces(cover(ROUNDED), shrinkage={"along": "0.1"}, wash="after-making")
    front = found["front"]
    tops = [y for _, y in front.outline]
    assert max(tops) == front.length > 15 * IN
    assert front.outline != pieces(cover(ROUNDED))[0]["front"].outline
