"""Checks piping from first principles: where it is cut from, and that no rectangle is said to yield too much."""

from itertools import combinations
from math import sqrt
from operator import le

from layout_checker import check


def check_piping(strip, plan):
    """Assert that panels and piping are cut by the rules and that every piping is as long as asked."""
    panels_end = max(q.y + q.h for q in plan.placements)
    pieces = [piece for cut in plan.piping for piece in cut.pieces]
    assert plan.length == max([panels_end, *(piece.y + piece.h for piece in pieces)])
    assert plan.at_least <= plan.length
    check(strip, _Panels(plan, panels_end))
    gap = strip.gap
    for piece in pieces:
        assert piece.x >= 0 <= piece.y
        assert piece.x + piece.w <= strip.width
        assert all(_apart(piece, flaw, 0) for flaw in strip.flaws)
        assert all(_apart(piece, panel, gap) for panel in plan.placements)
    assert all(_apart(one, other, gap) for one, other in combinations(pieces, 2))
    for piping, cut in zip(strip.piping, plan.piping, strict=True):
        lengths = [length for piece in cut.pieces for length in piece.lengths]
        assert cut.length == sum(lengths) - (len(lengths) - 1) * piping.join >= piping.rings * piping.length
        assert len(cut.rings) == piping.rings
        assert all(closes(piping, ring) for ring in cut.rings)
        assert cut.joins == sum(len(ring) - 1 for ring in cut.rings)
        assert can_be_cut([part for ring in cut.rings for part in ring], lengths)
        assert all(length > piping.join for length in lengths) or len(lengths) == 1
        for piece in cut.pieces:
            assert (piece.grain == "bias") == piping.bias
            if piece.grain == "bias":
                assert yields(piece.w, piece.h, piping.width, piece.lengths)
            else:
                length = piece.h if piece.grain == "along" else piece.w
                assert piece.lengths == (length,)
                assert sorted((piece.w, piece.h)) == sorted((length, piping.width))


def closes(piping, ring):
    """Whether lengths joined one after the other make up a ring, with no join where it is to be clear."""
    reached = 0
    for number, length in enumerate(ring):
        if any(low < reached < high for low, high in piping.clear):
            return False
        reached += length - (piping.join if number else 0)
    return reached == piping.length


def can_be_cut(wanted, strips):
    """Whether all these lengths can be cut from the strips, by trying every way to share them out."""
    if not wanted:
        return True
    longest, rest = max(wanted), sorted(wanted)[:-1]
    for strip in sorted({strip for strip in strips if strip >= longest}):
        left = list(strips)
        left.remove(strip)
        if can_be_cut(rest, [*left, strip - longest]):
            return True
    return False


def yields(across, along, width, lengths):
    """Whether some cutting of a rectangle at 45° gives strips at least as long as these.

    A strip between the lines x - y = c and c' = c + width·√2 whose ends run along the roll from x1 to x2 has the
    corners (x1, x1 - c), (x2, x2 - c), (x1, x1 - c') and (x2, x2 - c'), all of which must lie on the rectangle.
    """
    apart = width * sqrt(2)
    for a, b in ((across, along), (along, across)):
        for first in (0, a - b):
            start = first - int((first + b) // apart + 1) * apart
            cuts = [start + k * apart for k in range(int((a + b) / apart) + 3)]
            real = sorted((_span(a, b, c, c + apart) * sqrt(2) for c in cuts), reverse=True)
            if len(lengths) <= len(real) and all(map(le, lengths, (true + 1e-6 for true in real))):
                return True
    return False


def _span(a, b, cut, other):
    low, high = max(0, cut, other), min(a, b + cut, b + other)
    return max(high - low, 0)


def _apart(one, other, gap):
    return (
        one.x >= other.x + other.w + gap or other.x >= one.x + one.w + gap
        or one.y >= other.y + other.h + gap or other.y >= one.y + one.h + gap
    )


class _Panels:
    """The panels of a plan as a plan of their own."""

    def __init__(self, plan, length):
        self.placements, self.phase, self.alike = plan.placements, plan.phase, plan.alike
        self.length, self.at_least = length, 0
