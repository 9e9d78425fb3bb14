"""Checks the certificate of a lower bound, as the core's bounds describe it; imports nothing of the core."""

from fractions import Fraction
from itertools import product
from math import ceil

from layout_checker import extents, middle, point, repeat_for


class Case:
    """The ways (w, h, columns, residue, anchor) each panel can lie in, for some turns and some leftmost panel."""

    def __init__(self, strip, turns, left):
        self.strip, self.turns, self.left = strip, turns, left
        self.room = strip.width + strip.gap
        self.ways = {p.id: [way for turn in self.allowed(p) for way in self._ways(p, turn)] for p in strip.panels}

    def allowed(self, panel):
        turn = self.turns.get(panel.turn_group)
        return [t for t in panel.turns if turn in (None, t) and extents(panel, t)[0] <= self.strip.width]

    def _ways(self, panel, turn):
        strip, repeat, (w, h) = self.strip, self.strip.repeat, extents(panel, turn)
        size = (w + strip.gap, h + strip.gap)
        if panel.motif is not None:
            dx, dy = point(panel, turn)
            corners = [(m.ox - dx, m.oy - dy) for m in strip.motifs if m.id == panel.motif]
            anchor = "" if panel.axes == "across" else "motif"
        elif panel.group is not None and repeat is not None and self.left:
            leftmost = next(p for p in strip.panels if p.id == self.left["panel"])
            (x, y), first = middle(panel, turn), middle(leftmost, self.left["turn"])[0]
            corners = [(first - x, -y)]
            anchor = f"group:{panel.group}"
        elif panel.group and repeat is not None and repeat.along > 1 and not (repeat.across and repeat.drop):
            return [(*size, None, -middle(panel, turn)[1] % repeat.along, f"group:{panel.group}")]
        else:
            return [(*size, None, None, "")]
        across, along, drop = repeat_for(strip, panel)
        step, ways = along or 1, {}
        for x, y in corners:
            if not across:
                ways[y % step] = None
                continue
            for column in range(x % across, strip.width - w + 1, across):
                ways.setdefault((y + (column - x) // across * drop) % step, []).append(column)
        return [(*size, columns, residue if along > 1 else None, anchor) for residue, columns in ways.items()]

    def weights(self, data):
        """The listed weight of every way, panel by panel."""
        listed = {(e["panel"], e["w"], e["h"], e.get("residue")): Fraction(*e["weight"]) for e in data["weights"]}
        gap = self.strip.gap
        plain = {key[:3]: weight for key, weight in listed.items() if key[3] is None}
        return {
            p: [listed.get((p, w - gap, h - gap, r), plain.get((p, w - gap, h - gap), 0)) for w, h, _, r, _ in ways]
            for p, ways in self.ways.items()
        }

    def heaviest(self, weights, room, size, columns):
        """The greatest weight of a set of panels that fits within `room`, by counts or by size and weight."""
        if columns:
            return self._heaviest_in_columns(weights, room)
        best = {0: Fraction(0)}
        for panel in self.strip.panels:
            bars = [(size(way), x) for way, x in zip(self.ways[panel.id], weights[panel.id], strict=True) if x]
            for _ in range(panel.qty if bars else 0):
                pairs = [(used + wide, weight + x) for used, weight in best.items() for wide, x in [(0, 0), *bars]]
                best, top = {}, Fraction(-1)
                for used, weight in sorted(pairs, key=lambda pair: (pair[0], -pair[1])):
                    if used <= room and weight > top:
                        best[used] = top = weight
        return max(best.values())

    def _heaviest_in_columns(self, weights, room):
        panels = self.strip.panels
        items = [(p, w, x) for p in panels for w, x in zip(self.ways[p.id], weights[p.id], strict=True) if x]
        level, heaviest = {(0,) * len(items): (0, Fraction(0))}, Fraction(0)
        while level:
            following = {}
            for counts, (right, weight) in level.items():
                heaviest = max(heaviest, weight)
                for i, (panel, way, extra) in enumerate(items):
                    if sum(c for c, item in zip(counts, items, strict=True) if item[0] is panel) < panel.qty:
                        starts = [right] if way[2] is None else [x for x in sorted(way[2]) if x >= right][:1]
                        for end in (x + way[0] for x in starts if x + way[0] <= room):
                            more = (*counts[:i], counts[i] + 1, *counts[i + 1 :])
                            if end < following.get(more, (room + 1,))[0]:
                                following[more] = (end, weight + extra)
            level = following
        return heaviest

    def least(self, weights, need):
        """What all panels must contribute: for each the least weight × need of its ways."""
        pairs = {p: list(zip(ways, weights[p], strict=True)) for p, ways in self.ways.items()}
        return sum(p.qty * min(x * need(way) for way, x in pairs[p.id]) for p in self.strip.panels)

    def fits_one(self, weights, data):
        """Whether no set that fits side by side weighs more than 1."""
        return self.heaviest(weights, self.room, lambda way: way[0], data["columns"]) <= 1


def accepts_proof(strip, at_least, name, data, turns=None, left=None):
    """Whether the certificate proves the bound on `strip`; a search is left to brute force and CP-SAT."""
    if name in ("exhaustive", "row-sections"):
        return data["length"] == at_least
    if name == "each-way":
        groups = sorted({p.turn_group for p in strip.panels if p.turn_group is not None})
        options = [sorted({t for p in strip.panels if p.turn_group == g for t in p.turns}) for g in groups]
        ways = (dict(zip(groups, chosen, strict=True)) for chosen in product(*options))
        return all(_covered(strip, way, at_least, data["cases"]) for way in ways)
    case = Case(strip, turns or {}, left or {})
    return PROOFS[name](case, data) >= at_least


def _tallest(case, data):
    measured = case.strip.start == "measured"
    ways = case.ways[data["panel"]]
    return min(w[1] + (w[3] if w[4] == "motif" and w[3] and measured else 0) for w in ways) - case.strip.gap


def _area(case, _):
    area = sum(p.qty * min(way[0] * way[1] for way in case.ways[p.id]) for p in case.strip.panels)
    return ceil(Fraction(area, case.room)) - case.strip.gap


def _rows(case, data):
    weights = case.weights(data)
    assert case.fits_one(weights, data)
    return ceil(case.least(weights, lambda way: way[1])) - case.strip.gap


def _stacks(case, data):
    weights, room = case.weights(data), data["below"] - 1 + case.strip.gap
    assert case.heaviest(weights, room, lambda way: way[1], 0) <= 1
    assert case.least(weights, lambda way: way[0]) > case.room
    return data["below"]


def _lines(case, data):
    weights, d, anchor = case.weights(data), data["distance"], data.get("anchor")
    v = case.strip.repeat.along if anchor else d

    def before(way):
        return (data["first"] - way[3]) % v if way[4] == anchor else 0

    def covers(way):
        if way[4] != anchor:
            return way[1] // d
        return min(len(range(start, way[1], d)) for start in range(before(way), before(way) + d, v))

    assert case.fits_one(weights, data)
    assert case.least(weights, covers) > data["rows"] - 1
    weighty = [w for p, ways in case.ways.items() for w, x in zip(ways, weights[p], strict=True) if x]
    if not anchor:
        return data["rows"] * d - case.strip.gap
    assert d % v == 0 <= data["first"] < v
    measured = anchor == "motif" and case.strip.start == "measured"
    lead = data["first"] + d - v if measured else min(before(w) for w in weighty)
    tail = min((w[1] - before(w) - 1) % v + 1 if w[4] == anchor else 1 for w in weighty)
    return lead + (data["rows"] - 1) * d + tail - case.strip.gap


def _possible_lengths(case, data):
    strip, least, end = case.strip, data["least"], data["length"] + case.strip.gap
    assert accepts_proof(strip, least["at_least"], least["name"], least["data"], case.turns, case.left)
    sides = [pair for f in strip.flaws for pair in zip(f.outline, f.outline[1:] + f.outline[:1], strict=True)]
    assert all(0 in (a - c, b - d) for (a, b), (c, d) in sides), "a slant has no last row"
    ends = {0} | {f.y + y for f in strip.flaws for _, y in f.outline or [(0, f.h)]}
    for way in (w for ways in case.ways.values() for w in ways if w[3] is not None):
        assert (way[4], strip.start) == ("motif", "measured")
        ends |= set(range(way[3] + way[1], end, strip.repeat.along))
    for p in (panel for panel in strip.panels for _ in range(panel.qty)):
        ends |= {e + w[1] for e in ends for w in case.ways[p.id] if w[3] is None and e + w[1] < end}
    assert not any(least["at_least"] <= e - strip.gap < data["length"] for e in ends)
    return data["length"]


def _covered(strip, turns, at_least, cases):
    """Whether some case, or one for each panel that can lie leftmost, bounds the plans with these turns."""
    with_motif = {p.turn_group for p in strip.panels if p.motif is not None or any(p.apart)}
    here = Case(strip, turns, {})
    if not all(here.ways.values()):
        return True
    same = [c for c in cases if all(
        t == turns[g] or (g not in with_motif and (t - turns[g]) % 180 == 0) for g, t in c["turns"].items()
    )]
    for c in same:
        assert c["at_least"] >= at_least
        assert accepts_proof(strip, c["at_least"], c["name"], c["data"], c["turns"], c["left"])
    if any(not c["left"] for c in same):
        return True
    panels = {p.id: p for p in strip.panels}
    lefts = {middle(panels[c["left"]["panel"]], c["left"]["turn"])[0] % strip.repeat.across for c in same}
    return len({p.group for p in strip.panels}) == 1 and not strip.flaws and all(
        middle(p, t)[0] % strip.repeat.across in lefts
        or not all(Case(strip, turns, {"panel": p.id, "turn": t}).ways.values())
        for p in strip.panels for t in here.allowed(p)
    )


PROOFS = {
    "tallest": _tallest, "area": _area, "wider-than-half": _rows, "rows": _rows, "stacks": _stacks,
    "spaced-rows": _lines, "residue-rows": _lines, "possible-lengths": _possible_lengths,
}
