"""Checks lay plans from first principles; imports nothing of the core, so it shares none of its faults.

A strip and a plan are read by their attributes alone. `check` asserts that a plan keeps every rule; `check_cuts` that
its cuts run from edge to edge and set every panel free.
"""

from itertools import combinations

from shape_checker import apart, body, outlines_overlap


def check(strip, plan):
    """Assert that `plan` lays every panel of `strip` by the rules and is as long as it says."""
    panels = {p.id: p for p in strip.panels}
    assert sorted((q.panel, q.copy) for q in plan.placements) == sorted(
        (p.id, copy) for p in strip.panels for copy in range(1, p.qty + 1)
    )
    assert plan.phase == 0 or strip.start in ("choose", "unknown")
    for q in plan.placements:
        panel = panels[q.panel]
        assert q.turn in panel.turns
        assert (q.w, q.h) == extents(panel, q.turn)
        assert q.x >= 0
        assert q.y >= 0
        assert q.x + q.w <= strip.width
        for f in strip.flaws:
            clear = panel.shape != "rect" and apart(body(panel, q), flaw_corners(f), 0)
            assert clear or not touches(f, q.x, q.y, q.w, q.h), "on a flaw"
        if panel.motif is not None:
            px, py = point(panel, q.turn)
            spots = [(m.ox, m.oy + plan.phase) for m in strip.motifs if m.id == panel.motif]
            at = (q.x + px, q.y + py)
            assert any(_same_place(strip, panel, at, spot) for spot in spots), "off the motif"
        if panel.group is not None and strip.repeat is not None:
            x, y = middle(panel, q.turn)
            centre = q.x + x, q.y + y
            assert _same_place(strip, panel, centre, plan.alike[panel.group]), "not alike"
    for a, b in combinations(plan.placements, 2):
        g, bodies = strip.gap, [body(panels[q.panel], q) for q in (a, b)]
        clear = a.x >= b.x + b.w + g or b.x >= a.x + a.w + g or a.y >= b.y + b.h + g or b.y >= a.y + a.h + g
        shaped = panels[a.panel].shape != "rect" or panels[b.panel].shape != "rect"
        assert clear or (shaped and apart(*bodies, g)), f"{a} overlaps {b}"
        together = panels[a.panel].turn_group
        assert together is None or together != panels[b.panel].turn_group or a.turn == b.turn
    assert plan.length == max(q.y + q.h for q in plan.placements)
    assert plan.at_least <= plan.length


def check_cuts(strip, plan):
    """Assert that the cuts, made in order on the roll, each divide one piece and leave every panel by itself."""
    pieces = [(0, 0, strip.width, plan.length + 1)]
    for number, cut in enumerate(plan.cuts, start=1):
        assert cut.number == number
        across = cut.kind == "across"
        for x1, y1, x2, y2 in pieces:
            whole = (x1, x2 - x1) if across else (y1, y2 - y1)
            inside = y1 < cut.y < y2 if across else x1 < cut.x < x2
            if inside and whole == ((cut.x if across else cut.y), cut.length):
                pieces.remove((x1, y1, x2, y2))
                first, second = (x1, y1, x2, cut.y), (x1, cut.y, x2, y2)
                pieces += [first, second] if across else [(x1, y1, cut.x, y2), (cut.x, y1, x2, y2)]
                break
        else:
            raise AssertionError(f"{cut} does not run from edge to edge of a piece")
    for q in plan.placements:
        assert (q.x, q.y, q.x + q.w, q.y + q.h) in pieces, f"{q} is not cut out"
    assert plan.full_width_cuts == sum(c.kind == "across" and c.length == strip.width for c in plan.cuts)


def touches(flaw, x, y, w, h):
    """Whether a rectangle lies on a flaw: on its rectangle or, if it has an outline, on what is inside that."""
    if x >= flaw.x + flaw.w or flaw.x >= x + w or y >= flaw.y + flaw.h or flaw.y >= y + h:
        return False
    return not flaw.outline or outlines_overlap(flaw_corners(flaw), [(x, y), (x + w, y), (x + w, y + h), (x, y + h)])


def flaw_corners(flaw):
    corners = flaw.outline or [(0, 0), (flaw.w, 0), (flaw.w, flaw.h), (0, flaw.h)]
    return [(a + flaw.x, b + flaw.y) for a, b in corners]


def extents(panel, turn):
    return (panel.w, panel.h) if turn % 180 == 0 else (panel.turned or (panel.h, panel.w))


def point(panel, turn):
    w, h = extents(panel, turn)
    across, along = panel.dy * w // panel.h, panel.dx * h // panel.w
    return _moved(panel, turn, *{
        0: (panel.dx, panel.dy), 180: (w - panel.dx, h - panel.dy), 90: (w - across, along), 270: (across, h - along)
    }[turn])


def middle(panel, turn):
    """The point that alike panels share: the middle, rounded down, or what lies `apart` from it."""
    w, h = extents(panel, turn)
    return _moved(panel, turn, w // 2, h // 2)


def _moved(panel, turn, x, y):
    """A point moved by what lies `apart`, a quarter turned as often as the panel is."""
    right, up = panel.apart
    for _ in range(turn // 90):
        right, up = -up, right
    return x + right, y + up


def repeat_for(strip, panel):
    """What binds a panel across, along and by the drop: a stripe binds one way, and then no drop can matter."""
    repeat = strip.repeat
    across = 0 if panel.axes == "along" else repeat.across
    return across, 0 if panel.axes == "across" else repeat.along, repeat.drop if panel.axes == "both" else 0


def _same_place(strip, panel, a, b):
    """Whether two points are the same point of the repeat, up to whole repeats and the drop."""
    (across, along, drop), dx, dy = repeat_for(strip, panel), a[0] - b[0], a[1] - b[1]
    columns, off = divmod(dx, across) if across else (0, 0)
    return off == 0 and (not along or (dy - columns * drop) % along == 0)
