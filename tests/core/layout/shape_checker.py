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


def body(panel, placement):
    """What a placement covers: ("circle", x and y of its centre, radius) or the corners of its outline."""
    if panel.shape == "circle":
        radius = Fraction(panel.w, 2)
        return "circle", placement.x + radius, placement.y + radius, radius
    corners = [(0, 0), (panel.w, 0), (panel.w, panel.h), (0, panel.h)] if panel.shape == "rect" else panel.shape
    return placed(corners, placement.turn, placement.x, placement.y)


def apart(first, second, gap):
    """Whether two bodies do not overlap and are nowhere nearer to each other than ``gap``."""
    if first[0] != "circle" and second[0] != "circle":
        return not outlines_overlap(first, second) and (gap == 0 or all(
            _square(corner, side) >= gap * gap
            for one, other in ((first, second), (second, first)) for corner in one for side in _sides(other)
        ))
    if first[0] != "circle":
        first, second = second, first
    _, x, y, radius = first
    if second[0] == "circle":
        return (x - second[1]) ** 2 + (y - second[2]) ** 2 >= (radius + second[3] + gap) ** 2
    return not inside(second, x, y) and all(_square((x, y), s) >= (radius + gap) ** 2 for s in _sides(second))


def inside(corners, x, y):
    """Whether a point is inside a polygon: a ray to the right crosses its sides an odd number of times."""
    crossed = [
        a + (c - a) * Fraction(y - b) / (d - b) > x for (a, b), (c, d) in _sides(corners) if (b > y) != (d > y)
    ]
    return sum(crossed) % 2 == 1


def covers(corners, x, y, w, h):
    """Whether a polygon covers a rectangle: on lines across between all heights at which anything changes."""
    box = [(x, y), (x + w, y), (x + w, y + h), (x, y + h)]
    sides = [*_sides(corners), *_sides(box)]
    heights = {Fraction(v) for (_, v), _ in sides}
    heights |= {v for i, a in enumerate(sides) for b in sides[:i] if (v := _crossing(a, b)) is not None}
    lines = [(a + b) / 2 for a, b in pairwise(sorted(v for v in heights if y <= v <= y + h))]
    return all(any(a <= x and x + w <= b for a, b in _spans(corners, line)) for line in lines)


def _square(point, side):
    """The square of the distance of a point from a side."""
    (ax, ay), (bx, by) = side
    dx, dy, px, py = bx - ax, by - ay, point[0] - ax, point[1] - ay
    along = min(max(Fraction(px * dx + py * dy) / (dx * dx + dy * dy), 0), 1)
    return (px - along * dx) ** 2 + (py - along * dy) ** 2


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
