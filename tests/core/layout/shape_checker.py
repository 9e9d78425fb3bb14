"""Checks shapes from first principles in fractions; imports nothing of the core.

Two outlines overlap if they do on some line across, and between two neighbouring heights at which a corner lies or two
sides cross nothing changes but the lengths: so one line halfway between each two such heights decides.
"""

from fractions import Fraction
from itertools import pairwise


def outlines_overlap(first, second):
    """Whether the insides of two simple polygons have a point in common."""
    sides = [*_sides(first), *_sides(second)]
    heights = {Fraction(y) for (_, y), _ in sides}
    heights |= {y for i, a in enumerate(sides) for b in sides[:i] if (y := _crossing(a, b)) is not None}
    for below, above in pairwise(sorted(heights)):
        y = (below + above) / 2
        spans, others = _spans(first, y), _spans(second, y)
        if any(max(a, c) < min(b, d) for a, b in spans for c, d in others):
            return True
    return False


def placed(corners, turn, x, y):
    """Corners turned anticlockwise about nothing in particular, the lower left of what they span put at (x, y)."""
    for _ in range(turn // 90):
        corners = [(-b, a) for a, b in corners]
    left, bottom = min(a for a, _ in corners), min(b for _, b in corners)
    return [(a - left + x, b - bottom + y) for a, b in corners]


def shape_area(corners):
    """The area of a simple polygon by the shoelace formula."""
    return abs(Fraction(sum(a * d - c * b for (a, b), (c, d) in _sides(corners)), 2))


def _sides(corners):
    return list(pairwise([*corners, corners[0]]))


def _crossing(one, other):
    """The height at which the lines of two sides cross, if they do."""
    ((ax, ay), (bx, by)), ((cx, cy), (dx, dy)) = one, other
    turn = (bx - ax) * (dy - cy) - (by - ay) * (dx - cx)
    if turn == 0:
        return None
    return ay + (by - ay) * Fraction((cx - ax) * (dy - cy) - (cy - ay) * (dx - cx), turn)


def _spans(corners, y):
    """Where a line across at ``y``, which meets no corner, is inside."""
    xs = sorted(a + (c - a) * (y - b) / (d - b) for (a, b), (c, d) in _sides(corners) if min(b, d) < y < max(b, d))
    return list(zip(xs[::2], xs[1::2], strict=True))
