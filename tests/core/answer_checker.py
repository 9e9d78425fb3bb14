"""Checks a whole answer against its job from first principles; shares no code with the core.

Lengths of the job are read by a reader of its own that knows just the plain forms the tests use. Every rule is
checked as the contract words it: cut sizes, usable width, overlaps, turns, motifs, alike panels, flaws, the wash,
the length to buy and its cost.
"""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise, product
from math import ceil, floor

from cover_parts import NM, nm, parts_of, strips_of

UP_TURN = {"away": 0, "left": 90, "toward": 180, "right": 270}


def check(job, answer):
    """Raises AssertionError where the answer breaks a rule; returns how many panels were checked."""
    metric = job["units"] != "in"
    checked = 0
    for cloth in answer["cloths"]:
        bolt = next(c for c in job["cloths"] if c["id"] == cloth["cloth"])
        rules = _Cloth(bolt, metric)
        panels = _panels(job, rules, bolt["id"], metric)
        for plan in (cloth, cloth["straight"]):
            rules.phase = _phase(rules, plan, cloth)
            _check_layout(rules, panels, _without_strips(plan))
            _check_strips(job, rules, bolt["id"], plan)
            _check_purchase(rules, panels, plan)
            checked += len(plan["layout"])
        _check_straight(rules, cloth["straight"])
        assert cloth["usable_width"]["nm"] == rules.usable
        assert cloth["at_least"]["nm"] <= cloth["laid"]["nm"] <= cloth["straight"]["laid"]["nm"]
        assert cloth["proven"] == (cloth["at_least"]["nm"] == cloth["laid"]["nm"])
        if "piece" in cloth:
            checked += check_piece(job, bolt, cloth["piece"])
    return checked


def check_piece(job, bolt, piece):
    """Asserts that what is laid on a piece in hand stays in it, touches no flaw and makes what is said."""
    metric = job["units"] != "in"
    on_it = _Piece(bolt, metric)
    rules, said = on_it.rules, piece["makes"]
    assert (piece["length"]["nm"], piece["usable_width"]["nm"]) == (on_it.between, rules.usable)
    assert piece["usable_length"]["nm"] == max(on_it.usable, 0)
    wanted = {cushion["id"]: cushion["quantity"] for cushion in job["cushions"] if cushion["id"] in said}
    assert piece["enough"] == (said == wanted)
    assert (piece["spare"] is not None) == piece["enough"]
    panels = {}
    for id_, panel in _panels(job, rules, bolt["id"], metric).items():
        count = Fraction(panel["count"] * said[panel["cushion"]], wanted[panel["cushion"]])
        mirrored = any(cushion.get("mirrored") for cushion in job["cushions"] if cushion["id"] == panel["cushion"])
        laid = sum(entry["piece"] == id_ for entry in piece["layout"])
        assert laid <= panel["count"]
        assert mirrored or laid == count, id_
        panels |= {id_: {**panel, "count": laid}} if laid else {}
    layout = [entry for entry in piece["layout"] if "grain" not in entry]
    rules.phase = _phase(rules, piece, {"cloth": bolt["id"]})
    _check_layout(rules, panels, {"layout": layout})
    for index, entry in enumerate(piece["layout"]):
        assert 0 <= entry["x"] <= entry["x"] + entry["width"] <= rules.usable
        assert 0 <= entry["y"] <= entry["y"] + entry["length"] <= on_it.usable
        for corner in on_it.corners:
            assert _drawn_apart(entry, corner), (entry, corner)
        others = piece["layout"][:index] if "grain" in entry else ()
        assert all(_apart(entry, False, other, False) for other in others)
    if piece["layout"]:
        end = max(entry["y"] + entry["length"] for entry in piece["layout"])
        assert piece["laid"]["nm"] == end
        waits = rules.start == "unknown" and any(rules.hangs_along(p["face"]) for p in panels.values())
        takes = ceil((end + rules.squaring) / rules.along) + (rules.raw_v if waits else 0)
        # What a start that nobody knows takes is a repeat less one unit at worst.
        assert takes <= on_it.between + waits
        assert not piece["enough"] or piece["spare"]["nm"] == max(on_it.between - takes, 0)
    for way in piece["ways_out"]:
        assert way["piece"]["enough"] or sum(way["piece"]["makes"].values()) > sum(said.values())
    return len(piece["layout"])


class _Piece:
    """A piece in hand from its document: what lies between its squared lines, its flaws and its corners."""

    def __init__(self, bolt, metric):
        piece = bolt["piece"]
        slant = {name: _signed(text) for name, text in piece.get("slant", {}).items()}
        left, right = (nm(piece[name]) if name in piece else None for name in ("left", "right"))
        self.between = _between(left, right, nm(piece["length"]) if "length" in piece else None, slant)
        width = piece.get("width", bolt["width"])
        own = {**bolt, "width": width, "flaws": []}
        if "motif_along" in piece and "motifs" in bolt:
            first = nm(bolt["motifs"][0]["along"])
            by = nm(piece["motif_along"]) - first
            own["motifs"] = [{**m, "along": f"{(nm(m['along']) + by) / NM['mm']} mm"} for m in bolt["motifs"]]
        own["start"] = "measured" if "motif_along" in piece else "unknown"
        self.rules = _Cloth(own, metric)
        self.usable = floor(self.between * self.rules.along) - self.rules.squaring
        self.corners = []
        for flaw in piece.get("flaws", ()):
            self._add(flaw, nm(width))

    def _add(self, flaw, width):
        rules = self.rules
        wide = nm(flaw["width"])
        long = self.between if flaw["length"] == "all" else nm(flaw["length"])
        if "corner" not in flaw:
            x, y = nm(flaw["across"]), 0 if flaw["length"] == "all" else nm(flaw["along"])
            self._box(x, y * rules.along, wide, long * rules.along)
            return
        end, side = flaw["corner"].split("-")
        x = 0 if side == "left" else width - wide
        y = 0 if end == "start" or flaw["length"] == "all" else self.usable - long * rules.along
        self._box(x, y, wide, long * rules.along, flaw["corner"] if flaw.get("cut") == "slanting" else None)

    def _box(self, x, y, wide, long, slanting=None):
        rules = self.rules
        left, w = (x - rules.selvedge) * rules.across, wide * rules.across
        points = [(0, 0), (w, 0), (w, long), (0, long)]
        if slanting:
            # The corner of the box that is the corner of the piece, and its two neighbours.
            at = ["start-left", "start-right", "end-right", "end-left"].index(slanting)
            points = [points[at], points[(at + 1) % 4], points[at - 1]]
        self.corners.append({"x": left, "y": y, "width": w, "length": long, "outline": points})


def _signed(text):
    return -nm(text[1:]) if text.startswith("-") else nm(text)


def _between(left, right, length, slant):
    """What lies between two lines square to the left edge within which the piece is whole; by the shorter reading."""
    start, end = slant.get("start"), slant.get("end")
    if left is not None and right is not None:
        if start is None and end is None:
            return min(left, right)
        start = left + end - right if start is None else start
        end = right + start - left if end is None else end
        left = min(left, right - end + start)
    else:
        start, end = start or 0, end or 0
        if left is None:
            left = right - end + start if right is not None else min(length, length - end + start)
    return min(left, left + end) - max(0, start)


def _lost(shrinkage, direction):
    """Dimensional change of AATCC TM135 and ISO 5077, (after - before) / before, as the fraction that is lost."""
    square = shrinkage.get("square", {})
    if direction not in square:
        return Fraction(shrinkage.get(direction, "0"))
    before, after = square.get(f"before_{direction}", square["before"]), square[direction]
    return Fraction(nm(before) - nm(after), nm(before))


class _Cloth:
    def __init__(self, bolt, metric):
        self.bolt = bolt
        lost = bolt.get("shrinkage", {})
        across, along = _lost(lost, "across"), _lost(lost, "along")
        before = bolt.get("wash") == "before-cutting"
        self.across, self.along = (1 - across, 1 - along) if before else (Fraction(1), Fraction(1))
        self.cut_across, self.cut_along = (Fraction(1), Fraction(1)) if before else (1 - across, 1 - along)
        self.selvedge = nm(bolt.get("selvedge", "1 cm" if metric else "1/2 in"))
        self.squaring = nm(bolt.get("squaring", "5 cm" if metric else "2 in"))
        self.usable = floor((nm(bolt["width"]) - 2 * self.selvedge) * self.across)
        repeat = bolt.get("repeat", {})
        self.h = round(nm(repeat.get("across", "0 cm")) * self.across)
        self.v = round(nm(repeat.get("along", "0 cm")) * self.along)
        self.drop = round(nm(repeat.get("drop", "0 cm")) * self.along)
        self.raw_v = nm(repeat.get("along", "0 cm"))
        self.direction = bolt.get("direction", "one-way")
        self.base = UP_TURN[bolt.get("up", "away")]
        self.start = bolt.get("start", "unknown")
        self.phase = 0

    def motif(self, id_):
        entry = next(m for m in self.bolt["motifs"] if m["id"] == id_)
        x = round((nm(entry["across"]) - self.selvedge) * self.across)
        return x, round(nm(entry["along"]) * self.along)

    def same_place(self, dx, dy):
        """Whether two points so far apart show the same place of the repeat."""
        column = 0
        if self.h:
            column, rest = divmod(dx, self.h)
            if rest:
                return False
        return not self.v or (dy - column * self.drop) % self.v == 0

    def hangs_along(self, face):
        """Whether a face asks for a place along the roll: a stripe does only where it runs across the cloth."""
        pattern = face.get("pattern")
        return pattern == "centred" or (pattern == "stripe-centred" and self.base in (90, 270))

    def same_stripe(self, dx, dy):
        """Whether two points so far apart show the same stripe: along the roll, or across it where tops lie aside."""
        return not dy % self.v if self.base in (90, 270) else not dx % self.h

    def flaws(self):
        for flaw in self.bolt.get("flaws", ()):
            x, y = (nm(flaw["across"]) - self.selvedge) * self.across, nm(flaw["along"]) * self.along
            yield x, y, x + nm(flaw["width"]) * self.across, y + nm(flaw["length"]) * self.along


def _phase(rules, plan, cloth):
    """What was added to every motif's place along, as far as the answer's `start` tells it."""
    if plan["start"] is None or rules.start == "measured":
        return 0
    assert plan["start"]["motif"] in [m["id"] for m in rules.bolt["motifs"]], cloth["cloth"]
    return plan["start"]["along"]["nm"] - rules.motif(plan["start"]["motif"])[1]


def _up(size, grid):
    return ceil(size / grid) * grid if grid else ceil(size)


def _panels(job, rules, cloth, metric):
    grid = job.get("grid", "1 mm" if metric else "1/8 in")
    grid = 0 if grid == "0" else nm(grid)
    panels = {}
    for cushion in job["cushions"]:
        for part in parts_of(cushion, job):
            if part.face["cloth"] != cloth:
                continue
            w, h = part.width, part.length
            panels[f"{cushion['id']}.{part.name}"] = {
                "count": part.count or cushion["quantity"] * part.times,
                "drawn": part.drawn,
                "face": part.face,
                "cushion": cushion["id"],
                "freely": part.freely,
                "round": part.round,
                "upright": w and _chalked(part, w / rules.cut_across, h / rules.cut_along, grid),
                "aside": w and _chalked(part, h / rules.cut_across, w / rules.cut_along, grid),
                "lower": w and part.centre and Fraction(part.centre, h),
                "goes_on": part.goes_on,
                "sewn_at": part.sewn_at,
                "plain": (w, h),
                "left": Fraction(1, 2) if part.middle is None else Fraction(part.middle, w),
            }
    return panels


def _chalked(part, width, length, grid):
    return (width, length) if part.drawn else (_up(width, grid), _up(length, grid))


def _is_cut(panel, entry, wanted):
    """Whether a panel has its size: to the nanometre, or as near as its measures allow where it is drawn."""
    if not panel["drawn"]:
        return (entry["width"], entry["length"]) == wanted
    _, _, width, length = _extents(entry["outline"])
    assert (width, length) == (entry["width"], entry["length"])
    return all(abs(size - asked) < panel["drawn"] for size, asked in zip((width, length), wanted, strict=True))


def _extents(outline):
    xs, ys = [x for x, _ in outline], [y for _, y in outline]
    return min(xs), min(ys), max(xs), max(ys)


def _check_layout(rules, panels, plan):
    placed = {}
    for entry in plan["layout"]:
        panel = panels[entry["piece"]]
        placed.setdefault(entry["piece"], []).append(entry)
        sideways = (entry["turn"] - rules.base) % 360
        _check_turn(rules, panel, sideways)
        wanted = panel["upright"] if entry["turn"] in (0, 180) else panel["aside"]
        assert wanted is None or _is_cut(panel, entry, wanted), entry
        assert entry["x"] >= 0, entry
        assert entry["y"] >= 0, entry
        assert entry["x"] + entry["width"] <= rules.usable, entry
        for x, y, right, end in rules.flaws():
            flaw = {"x": x, "y": y, "width": right - x, "length": end - y}
            assert _apart(entry, _lies_round(panel, entry), flaw, False), ("flaw", entry)
        if panel["face"].get("pattern") in ("centred", "stripe-centred") and not panel["goes_on"]:
            _check_centred(rules, panel, entry)
    for id_, panel in panels.items():
        copies = sorted(entry["copy"] for entry in placed.get(id_, ()))
        assert copies == list(range(1, panel["count"] + 1)), id_
    _check_apart(panels, plan["layout"])
    _check_alike(rules, panels, placed)
    _check_going_on(rules, panels, placed)
    _check_row(rules, panels, placed)
    _check_same_turn(rules, panels, placed)


def _without_strips(plan):
    return {**plan, "layout": [entry for entry in plan["layout"] if "grain" not in entry]}


def _check_strips(job, rules, cloth, plan):
    """Strips lie clear of everything, are as wide as asked, and joined they make up every ring."""
    cut = [entry for entry in plan["layout"] if "grain" in entry]
    assert plan["laid"]["nm"] == max(entry["y"] + entry["length"] for entry in plan["layout"])
    for index, entry in enumerate(cut):
        assert entry["x"] >= 0
        assert entry["y"] >= 0
        assert entry["x"] + entry["width"] <= rules.usable
        others = [*cut[:index], *_without_strips(plan)["layout"]]
        assert all(_apart(entry, False, other, False) for other in others), entry
        for x, y, right, end in rules.flaws():
            assert _apart(entry, False, {"x": x, "y": y, "width": right - x, "length": end - y}, False), entry
    wanted = {f"{cushion['id']}.{strips.name}": strips for cushion in job["cushions"]
              for strips in strips_of(cushion, job) if strips.cloth == cloth}  # fmt: skip
    assert {entry["piece"] for entry in cut} == set(wanted)
    for id_, strips in wanted.items():
        _check_rings(rules, strips, [entry for entry in cut if entry["piece"] == id_])


def _check_rings(rules, strips, cut):
    lost = min(rules.cut_across, rules.cut_along)
    lengths = []
    for entry in cut:
        here = [length["nm"] for length in entry["strips"]]
        lengths += here
        assert (entry["grain"] == "bias") == strips.bias
        if entry["grain"] == "bias":
            # A bound by area, and by the longest line at 45°; what a block yields has tests of its own.
            assert sum(here) * strips.width <= entry["width"] * entry["length"], entry
            assert max(here) ** 2 <= 2 * min(entry["width"], entry["length"]) ** 2, entry
        else:
            sides = (entry["width"], entry["length"])
            across, length = sides if entry["grain"] == "along" else sides[::-1]
            assert across >= strips.width / lost, entry
            assert here == [length]
    if strips.ring is not None:
        joins = max(0, len(lengths) - strips.count)
        assert sum(lengths) - joins * strips.join >= floor(strips.count * strips.ring / lost), cut


def _check_turn(rules, panel, turn):
    allowed = {"one-way": {0}, "two-way": {0, 180}, "any": {0, 90, 180, 270}}[rules.direction]
    face = panel["face"]
    allowed &= {"none": {0}, "half": {0, 180}, "quarter": {0, 90, 180, 270}}[face.get("turn", "quarter")]
    if face.get("pattern", "free") != "free":
        allowed &= {0, 180}
    assert turn in allowed, (turn, face)


def _check_centred(rules, panel, entry):
    """The motif stands at the centre of the finished face, plus the offset, to within a nanometre or two.

    A stripe does so from side to side of the face, and nothing is asked of it up and down.
    """
    if panel["upright"] is None:
        return
    offset, striped = panel["face"].get("offset", {}), panel["face"]["pattern"] == "stripe-centred"
    w, h = panel["upright"]
    across = w * panel["left"] + nm(offset.get("across", "0 cm")) / rules.cut_across
    along = h * panel["lower"] + nm(offset.get("along", "0 cm")) / rules.cut_along
    u, z = across / w, along / h
    ux, uz = {0: (u, z), 90: (1 - z, u), 180: (1 - u, 1 - z), 270: (z, 1 - u)}[entry["turn"]]
    x, y = entry["x"] + ux * entry["width"], entry["y"] + uz * entry["length"]
    ox, oy = rules.motif(panel["face"]["motif"])
    near = [(floor(x) + i - ox, floor(y) + j - oy - rules.phase) for i in range(-2, 3) for j in range(-2, 3)]
    same = rules.same_stripe if striped else rules.same_place
    assert any(same(dx, dy) for dx, dy in near), entry


def _lies_round(panel, entry):
    return panel["round"] and entry["width"] == entry["length"]


def _apart(one, one_is_round, other, other_is_round):
    """Whether two panels lie apart: as circles where they are, else as rectangles. All lengths doubled."""
    boxes = [(2 * e["x"], 2 * e["y"], 2 * (e["x"] + e["width"]), 2 * (e["y"] + e["length"])) for e in (one, other)]
    (x0, y0, x1, y1), (u0, v0, u1, v1) = boxes
    if x1 <= u0 or u1 <= x0 or y1 <= v0 or v1 <= y0:
        return True
    # The nearest that a round's middle comes to the other panel, or to its middle if that is round too.
    spans = [((b[0] + b[2]) // 2,) * 2 + ((b[1] + b[3]) // 2,) * 2 if r else (b[0], b[2], b[1], b[3])
             for b, r in zip(boxes, (one_is_round, other_is_round), strict=True)]  # fmt: skip
    gaps = [max(spans[1][k] - spans[0][k + 1], spans[0][k] - spans[1][k + 1], 0) for k in (0, 2)]
    radii = one["width"] * one_is_round + other["width"] * other_is_round
    return radii > 0 and gaps[0] ** 2 + gaps[1] ** 2 >= radii**2


def _check_apart(panels, layout):
    round_ = [_lies_round(panels[entry["piece"]], entry) for entry in layout]
    for index, one in enumerate(layout):
        for other, other_is_round in zip(layout[:index], round_, strict=False):
            drawn = panels[one["piece"]]["drawn"] or panels[other["piece"]]["drawn"]
            apart = _apart(one, round_[index], other, other_is_round)
            assert apart or (drawn and _drawn_apart(one, other)), (one, other)


def _corners(entry):
    """The outline of a panel where it lies, all lengths doubled so that the middles of its sides are whole."""
    w, h = entry["width"], entry["length"]
    outline = entry.get("outline", ((0, 0), (w, 0), (w, h), (0, h)))
    return [(2 * (entry["x"] + x), 2 * (entry["y"] + y)) for x, y in outline]


def _drawn_apart(one, other):
    """Whether two outlines lie apart: no sides cross, and no corner or middle of a side lies within the other."""
    shapes = _corners(one), _corners(other)
    first, second = ([(a, b) for a, b in zip(shape, [*shape[1:], shape[0]], strict=True)] for shape in shapes)
    if any(_cross(*one_side, *other_side) for one_side in first for other_side in second):
        return False
    return not any(_is_within(point, second) for point in _points(first)) and not any(
        _is_within(point, first) for point in _points(second)
    )


def _cross(a, b, c, d):
    return _turn(a, b, c) * _turn(a, b, d) < 0 and _turn(c, d, a) * _turn(c, d, b) < 0


def _points(sides):
    return [point for (ax, ay), (bx, by) in sides for point in ((ax, ay), ((ax + bx) // 2, (ay + by) // 2))]


def _turn(a, b, c):
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def _is_within(point, sides):
    """Whether a point lies inside an outline and not on its sides, by counting the sides to the right of it."""
    x, y = point
    for (ax, ay), (bx, by) in sides:
        on_line = _turn((ax, ay), (bx, by), point) == 0
        if on_line and min(ax, bx) <= x <= max(ax, bx) and min(ay, by) <= y <= max(ay, by):
            return False
    crossed = [(_turn(a, b, point) > 0) == (b[1] > a[1]) for a, b in sides if (a[1] <= y) != (b[1] <= y)]
    return sum(crossed) % 2 == 1


def _check_alike(rules, panels, placed):
    groups = {}
    for id_, entries in placed.items():
        face = panels[id_]["face"]
        if face.get("pattern") == "alike" and not panels[id_]["goes_on"]:
            key = ("group", face["group"]) if face.get("group") else ("cover", panels[id_]["cushion"])
            groups.setdefault(key, []).extend(entries)
    for entries in groups.values():
        first = entries[0]
        for entry in entries[1:]:
            assert entry["turn"] == first["turn"]
            dx = entry["x"] - first["x"] + (entry["width"] // 2 - first["width"] // 2)
            dy = entry["y"] - first["y"] + (entry["length"] // 2 - first["length"] // 2)
            near = [(dx + i, dy + j) for i in (-1, 0, 1) for j in (-1, 0, 1)]
            assert any(rules.same_place(x, y) for x, y in near), (first, entry)


def _check_going_on(rules, panels, placed):
    """Boxing shows at its seam the place of the pattern that the front shows there, of whichever cover of the entry."""
    for id_, entries in placed.items():
        own, front = panels[id_], f"{panels[id_]['cushion']}.front"
        for entry, whole in product(entries if own["goes_on"] else (), placed.get(front, ())):
            assert entry["turn"] == whole["turn"] == rules.base
            (x, y), (u, z) = (_place(e, point, panels[p]["plain"])
                for e, p, point in zip((entry, whole), (id_, front), own["goes_on"], strict=True))  # fmt: skip
            near = [(floor(x - u) + i, floor(y - z) + j) for i in range(-3, 4) for j in range(-3, 4)]
            same = rules.same_stripe if own["face"]["pattern"] == "stripe-centred" else rules.same_place
            assert any(same(dx, dy) for dx, dy in near), (entry, whole)


def _check_row(rules, panels, placed):
    """Each front in a row begins, at its lower left seam, with what the one before it, in the job, ends with."""
    row = [(panels[id_], placed[id_][0]) for id_ in panels if id_ in placed and id_.endswith(".front")
           and panels[id_]["face"].get("pattern") == "flow"]  # fmt: skip
    for (one, left), (other, right) in pairwise(row):
        assert left["turn"] == right["turn"] == rules.base
        x, y = _sewn(left, one["sewn_at"], 1)
        u, z = _sewn(right, other["sewn_at"], 0)
        near = [(x - u + i, y - z + j) for i in range(-2, 3) for j in range(-2, 3)]
        assert any(rules.same_place(dx, dy) for dx, dy in near), (left, right)


def _sewn(entry, at, end):
    """Where the lower left (0) or right (1) corner of the stitching line lies on the cloth."""
    aside, w, h = entry["turn"] in (90, 270), entry["width"], entry["length"]
    wide, high = (h, w) if aside else (w, h)
    u, z = (wide - at[0] if end else at[0]), at[1]
    x, y = {0: (u, z), 90: (high - z, u), 180: (wide - u, high - z), 270: (z, wide - u)}[entry["turn"]]
    return entry["x"] + x, entry["y"] + y


def _place(entry, point, plain):
    """Where a point of a panel of that plain size, told from its lower left corner, lies on the cloth."""
    u, z = Fraction(point[0]) / plain[0], Fraction(point[1]) / plain[1]
    ux, uz = {0: (u, z), 90: (1 - z, u), 180: (1 - u, 1 - z), 270: (z, 1 - u)}[entry["turn"]]
    return entry["x"] + ux * entry["width"], entry["y"] + uz * entry["length"]


def _check_same_turn(rules, panels, placed):
    """On cloth that may be turned any way, all free faces of one cushion lie turned alike."""
    if rules.direction != "any":
        return
    turns = {}
    for id_, entries in placed.items():
        if not panels[id_]["freely"]:
            turns.setdefault(panels[id_]["cushion"], set()).update(entry["turn"] for entry in entries)
    assert all(len(found) == 1 for found in turns.values()), turns


def _check_purchase(rules, panels, plan):
    needed = ceil((plan["laid"]["nm"] + rules.squaring) / rules.along)
    if rules.start == "unknown" and any(rules.hangs_along(panel["face"]) for panel in panels.values()):
        needed += rules.raw_v
    assert plan["needed"]["nm"] == needed
    step = nm(rules.bolt["sold_by"])
    assert plan["buy"]["nm"] == ceil(Fraction(needed, step)) * step
    price = rules.bolt.get("price")
    if price:
        digits = len(price["amount"].partition(".")[2])
        minor = Fraction(price["amount"]) * 10**digits * plan["buy"]["nm"] / NM[price["per"]]
        assert Fraction(plan["cost"]["amount"]) * 10**digits == floor(minor + Fraction(1, 2))


def _check_straight(rules, straight):
    """Every cut of the straight plan runs clear of all panels, and cutting leaves each panel alone in its part."""
    parts = [(0, 0, rules.usable, max(straight["laid"]["nm"], 1))]
    for cut in straight["cuts"]:
        across = cut["kind"] == "across"
        for index, (x, y, w, h) in enumerate(parts):
            if across and x == cut["x"] and w == cut["length"] and y < cut["y"] < y + h:
                parts[index : index + 1] = [(x, y, w, cut["y"] - y), (x, cut["y"], w, y + h - cut["y"])]
                break
            if not across and y == cut["y"] and h == cut["length"] and x < cut["x"] < x + w:
                parts[index : index + 1] = [(x, y, cut["x"] - x, h), (cut["x"], y, x + w - cut["x"], h)]
                break
        else:
            assert across, cut
            assert cut["y"] in (0, straight["laid"]["nm"]), cut  # the end of the last row is a cut as well
    for entry in _without_strips(straight)["layout"]:
        box = entry["x"], entry["y"], entry["width"], entry["length"]
        assert box in parts, box
    for entry in straight["layout"]:
        right, end = entry["x"] + entry["width"], entry["y"] + entry["length"]
        whole = [(x, y, w, h) for x, y, w, h in parts if x <= entry["x"] and right <= x + w and y <= entry["y"]]
        assert any(end <= y + h for _, y, _, h in whole), entry
