"""The shortest lay plan of a tiny strip by trying every place of every panel; shares nothing with the engine."""

from itertools import product

from layout_checker import extents, middle, point, repeat_for, touches


def shortest(strip, most):
    """The least length of any plan, known to be at most `most`."""
    while most > 1 and fits(strip, most - 1):
        most -= 1
    return most


def fits(strip, length):
    """Whether all panels of the strip fit into `length`, under any choice the planner has."""
    return any(_laid(strip, length, *choice) for choice in _choices(strip))


def _choices(strip):
    """Every turn of every turn group, every phase, every place of every alike group."""
    turn_groups = sorted({p.turn_group for p in strip.panels if p.turn_group is not None})
    groups = sorted({p.group for p in strip.panels if p.group is not None}) if strip.repeat else []
    repeat = strip.repeat
    across, along = (repeat.across or 1, repeat.along or 1) if repeat else (1, 1)
    places = list(product(range(across), range(along)))
    phases = range(along) if strip.start == "choose" and any(p.motif for p in strip.panels) else [0]
    for turns, phase, chosen in product(
        product((0, 90, 180, 270), repeat=len(turn_groups)), phases, product(places, repeat=len(groups))
    ):
        yield (
            dict(zip(turn_groups, turns, strict=True)),
            phase,
            dict(zip(groups, chosen, strict=True)),
        )


def _laid(strip, length, turns, phase, places):
    masks = [_masks(strip, panel, length, turns, phase, places) for panel in strip.panels]
    copies = [ways for panel, ways in zip(strip.panels, masks, strict=True) for _ in range(panel.qty)]
    return _lay(sorted(copies, key=len), 0, 0, 0)


def _lay(copies, index, taken, least):
    """Lay the copies from `index` on; equal copies in the order of their places, from `least` on."""
    if index == len(copies):
        return True
    ways = copies[index]
    for number in range(least, len(ways)):
        body, reach = ways[number]
        if not taken & body:
            again = index + 1 < len(copies) and copies[index + 1] is ways
            if _lay(copies, index + 1, taken | reach, number if again else 0):
                return True
    return False


def _masks(strip, panel, length, turns, phase, places):
    """For every allowed place the cells of the panel itself, and those with the gap around it."""
    wide, high = strip.width, length
    ways = []
    for turn in panel.turns:
        w, h = extents(panel, turn)
        if panel.turn_group is not None and turn != turns[panel.turn_group]:
            continue
        for x, y in product(range(wide - w + 1), range(high - h + 1)):
            clear = not any(touches(f, x, y, w, h) for f in strip.flaws)
            if clear and _allowed(strip, panel, turn, (x, y), phase, places):
                g = strip.gap
                ways.append((_cells(wide, high, x, y, w, h), _cells(wide, high, x - g, y - g, w + 2 * g, h + 2 * g)))
    return ways


def _cells(wide, high, x, y, w, h):
    row = sum(1 << i for i in range(max(x, 0), min(x + w, wide)))
    return sum(row << (wide * j) for j in range(max(y, 0), min(y + h, high)))


def _allowed(strip, panel, turn, corner, phase, places):
    if panel.motif is not None:
        dx, dy = point(panel, turn)
        spots = [(m.ox, m.oy + phase) for m in strip.motifs if m.id == panel.motif]
        repeat = repeat_for(strip, panel)
        return any(_on(repeat, corner[0] + dx - ox, corner[1] + dy - oy) for ox, oy in spots)
    if panel.group is not None and strip.repeat is not None:
        cx, cy = places[panel.group]
        x, y = middle(panel, turn)
        return _on(repeat_for(strip, panel), corner[0] + x - cx, corner[1] + y - cy)
    return True


def _on(repeat, dx, dy):
    across, along, drop = repeat
    columns = dx // across if across else 0
    return not (across and dx % across) and not (along and (dy - columns * drop) % along)
