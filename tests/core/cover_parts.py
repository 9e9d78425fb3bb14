"""The parts of every kind of cover worked out anew from its entry in a job; shares no code with the core.

Lengths are read by a reader of its own that knows just the plain forms the tests use. What the rule of fit decides is
left open (None): it has tests of its own.
"""

from __future__ import annotations

import cmath
import dataclasses
import math
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

NM = {"mm": 1_000_000, "cm": 10_000_000, "m": 1_000_000_000, "in": 25_400_000, "yd": 914_400_000}


def nm(text):
    """A plain length text in nm."""
    *number, unit = text.replace("−", "-").split()
    sign = -1 if number[0].startswith("-") else 1
    return sign * round(sum((Fraction(part.lstrip("-")) for part in number), Fraction(0)) * NM[unit])


@dataclass(frozen=True)
class Part:
    """A part with its allowances, and how far above its lower edge the point of a centred motif lies; nm or None.

    `middle` is how far right of its left edge that point lies, where that is not its middle. `goes_on` are two points,
    on the part and on the front, from their lower left corners, that show the same place of the pattern; `sewn_at` how
    far in from the left and right edges, and from the lower edge, a front in a row is sewn.
    One of a straight-sided outline is `drawn`: it is as large as its outline, on no grid, to within so many nm, since
    measures that check each other differ a little.
    """

    name: str
    face: Any
    width: Any
    length: Any
    centre: Any
    times: int = 1
    freely: bool = False
    round: bool = False
    middle: Any = None
    drawn: Any = None
    count: Any = None
    goes_on: Any = None
    sewn_at: Any = None


def ring_of(diameter):
    """Once round a circle, in nm: floats are exact enough for cushions, whose ties nobody meets."""
    return round(math.pi * diameter)


class Allowances:
    """What the entry says of seams, or the usual where it says nothing (common practice)."""

    def __init__(self, cushion, job):
        self.job, metric = job, job["units"] != "in"
        self.kind, self.ends = cushion["kind"], cushion["cover"].get("ends")
        cover = cushion["cover"]
        self.closure = cover.get("closure", {"kind": "hand-sewn"})
        self.seam = self._of(cover, "seam", metric, "1.5 cm", "1/2 in")
        self.side = nm(cover["side_seam"]) if "side_seam" in cover else self.seam
        self.zip_seam = self._of(self.closure, "zip_seam", metric, "2 cm", "3/4 in")
        self.hem = self._of(self.closure, "hem", metric, "2.5 cm", "1 in")
        usual = {"zip": self.zip_seam, "ties": self.hem, "open": self.hem}.get(self.closure["kind"], self.seam)
        self.closing = nm(self.closure["seam"]) if "seam" in self.closure else usual

    def grid(self):
        """What cut sizes are rounded up to, in nm."""
        said = self.job.get("grid", "1/8 in" if self.job["units"] == "in" else "1 mm")
        return 1 if said == "0" else nm(said)

    def usable(self, bolt):
        """The usable width of a cloth of the job that does not shrink, in nm."""
        return nm(bolt["width"]) - 2 * nm(bolt.get("selvedge", "1/2 in" if self.job["units"] == "in" else "1 cm"))

    def bolt(self, face):
        """The cloth of a face."""
        return next(bolt for bolt in self.job["cloths"] if bolt["id"] == face["cloth"])

    def _of(self, values, name, metric, cm, inches):
        return nm(values.get(name, cm if metric else inches))


def finished(cushion, names):
    """The finished size by the contract; None where the rule of fit decides."""
    insert, cover = cushion["insert"], cushion["cover"]
    size = [nm(insert[name]) for name in names]
    smaller = cover.get("smaller_by")
    as_it_is = cushion["kind"] == "bolster" or (cushion["kind"] == "boxed" and insert.get("fill") == "foam")
    if smaller is None and as_it_is:  # common practice: foam in a boxed cover and bolsters, 0 smaller
        return size
    if cushion.get("size_from") == "finished" or insert.get("measured") == "old-cover":
        return size
    if insert.get("measured") == "opening":
        return [side - nm(insert.get("clearance", "0 cm")) for side in size]
    if isinstance(smaller, dict):
        return [side - nm(smaller[name]) for side, name in zip(size, names, strict=True)]
    return [side - nm(smaller) for side in size] if smaller else None


def parts_of(cushion, job):
    """All parts of one cover of the job."""
    make = {
        ("knife-edge", "rectangle"): knife_edge,
        ("knife-edge", "round"): round_knife_edge,
        ("boxed", "rectangle"): boxed_apart,
        ("boxed", "round"): boxed_in_one_band,
        ("boxed", "polygon"): boxed_outline,
        ("knife-edge", "polygon"): flat_outline,
        ("bolster", "bolster"): bolster,
    }[cushion["kind"], cushion["insert"]["shape"]]
    allow = Allowances(cushion, job)
    whole = make(cushion, allow)
    cover = [part for one in whole for part in (made_up(one, allow) or joined(one, allow))]
    return cover + [
        part for layer in cushion["cover"].get("layers", {}) for part in layer_of(cushion, layer, make, allow)
    ]


def layer_of(cushion, layer, make, allow):
    """The parts of a layer: cut like the cover, without its seams, as a zipped cover, or round the pad."""
    face = cushion["cover"]["layers"][layer]
    if layer == "wrap":
        whole = wrap_of(cushion, face, allow)
        return [dataclasses.replace(part, times=whole.times, freely=True) for part in joined(whole, allow)]
    cover = {name: value for name, value in cushion["cover"].items() if name not in ("layers", "edge")}
    cover |= {part: face for part in ("front", "back", "sides") if part in cover}
    if layer == "protector":
        cover["closure"] = {"kind": "zip"}
    plain = {**cushion, "cover": cover}
    sewn, bare = Allowances(plain, allow.job), Allowances(plain, allow.job)
    bare.seam = bare.side = bare.closing = bare.hem = 0
    found = []
    for part, without in zip(make(plain, sewn), make(plain, bare), strict=True):
        may_join = part.name.startswith(("front", "back", "body"))
        portions = joined(part, sewn) if may_join else [part]
        if layer == "interlining":
            portions = [to_the_seam(portion, without, sewn) for portion in portions] if portions[1:] else [without]
        found += portions
    return [dataclasses.replace(part, name=f"{layer}-{part.name}", freely=True, face=face) for part in found]


def to_the_seam(portion, without, sewn):
    """A joined portion less its allowances, as high as the part is without any; joins have the usual seam."""
    at_sides = 2 * sewn.seam if "-middle" in portion.name else sewn.seam + sewn.side
    return dataclasses.replace(portion, width=portion.width - at_sides, length=without.length)


def wrap_of(cushion, face, allow):
    """Two panels that reach half-way down the edge of the pad; round a bolster one that reaches over its ends."""
    insert, seams = cushion["insert"], 2 * allow.seam
    thick = nm(insert.get("thickness", "0 in"))
    if cushion["kind"] == "bolster":
        across, long = nm(insert["diameter"]), nm(insert["length"])
        return Part("wrap", face, long + across, ring_of(across) + seams, 0, freely=True)
    if "diameter" in insert:
        disc = nm(insert["diameter"]) + thick + seams
        return Part("wrap", face, disc, disc, 0, times=2, freely=True, round=True)
    width, length = (nm(insert[name]) + thick + seams for name in ("width", "length"))
    return Part("wrap", face, width, length, 0, times=2, freely=True)


def made_up(part, allow):
    """The parts of a face with a band or a butted border: rectangles that lie side by side on the finished face."""
    made = part.face.get("made", {"kind": "plain"})
    if made["kind"] not in ("border", "band"):
        return []
    seam, low = allow.seam, allow.seam if in_back(allow) else allow.closing
    if allow.kind == "bolster":
        left, right, bottom, top = *[allow.hem if allow.ends == "gathered" else seam] * 2, allow.closing, allow.closing
    elif allow.kind == "boxed":
        left, right, bottom, top = allow.side, allow.side, seam, seam
    else:
        left, right, bottom, top = allow.side, allow.side, low, seam
    w, h = part.width - left - right, part.length - bottom - top
    b = nm(made.get("width", "2 in" if allow.job["units"] == "in" else "5 cm"))
    own, strip = part.face, {"cloth": made.get("cloth", part.face["cloth"])}
    if made["kind"] == "border":
        spans = [("centre", b, b, w - b, h - b, own), ("border-bottom", 0, 0, w, b, strip)]
        spans += [("border-right", w - b, b, w, h - b, strip), ("border-top", 0, h - b, w, h, strip)]
        spans += [("border-left", 0, b, b, h - b, strip)]
    else:
        upright = made.get("lies") == "upright"
        side = w if upright else h
        start = nm(made["from_edge"]) if "from_edge" in made else (side - b) // 2
        along = [("left" if upright else "bottom", 0, start, own), ("band", start, start + b, strip)]
        along.append(("right" if upright else "top", start + b, side, own))
        spans = [
            (name, lo, 0, hi, h, face) if upright else (name, 0, lo, w, hi, face)
            for name, lo, hi, face in along
            if hi > lo
        ]
    found, free = [], {**own, "pattern": "free"}
    for name, x, y, right_end, top_end, face in spans:
        wide = right_end - x + (left if x == 0 else seam) + (right if right_end == w else seam)
        high = top_end - y + (bottom if y == 0 else seam) + (top if top_end == h else seam)
        inside = x <= Fraction(w, 2) < right_end and y <= Fraction(h, 2) < top_end
        shown = face if face is strip or inside else free
        middle, centre = (
            (left if x == 0 else seam) + Fraction(w, 2) - x,
            (bottom if y == 0 else seam) + Fraction(h, 2) - y,
        )
        found.append(Part(f"{part.name}-{name}", shown, wide, high, centre, middle=middle))
    if made["kind"] == "border" and made.get("corners") != "butted":
        found[1:] = mitred(part.name, strip, (w, h, b), (bottom, right, top, left), seam)
    return found


def mitred(name, face, size, outer, seam):
    """The strips of a border whose ends are cut at half a right angle, where a seam s reaches s x root 2 further."""
    w, h, b = size
    found = []
    for side, long, out in zip(("bottom", "right", "top", "left"), (w, h, w, h), outer, strict=True):
        along, across = long + 2 * (out + round(seam * math.sqrt(2))), out + b + seam
        wide, high = (along, across) if side in ("bottom", "top") else (across, along)
        found.append(Part(f"{name}-border-{side}", face, wide, high, None, drawn=100))
    return found


def joined(part, allow):
    """The part in the pieces that its face asks for where the cloth is too narrow; for cloths that do not shrink."""
    way = part.face.get("joined", "none")
    bolt = allow.bolt(part.face)
    grid, usable = allow.grid(), allow.usable(bolt)
    if way == "none" or part.width <= usable // grid * grid or bolt.get("up") in ("left", "right"):
        return [part]
    face, seam, side = part.width - 2 * allow.side, allow.seam, allow.side
    columns = [Fraction(usable, 2)]
    if part.face.get("pattern") in ("centred", "stripe-centred"):
        motif = next(m for m in bolt["motifs"] if m["id"] == part.face["motif"])
        first, step = nm(motif["across"]) - (nm(bolt["width"]) - usable) // 2, nm(bolt["repeat"]["across"])
        columns = [first + step * number for number in range(-99, 99) if 0 <= first + step * number <= usable]
    least = 4 * NM["in"] if allow.job["units"] == "in" else 10 * NM["cm"]
    if way == "both-ends":
        main = max(2 * min(column, usable - column) for column in columns) // grid * grid - 2 * seam
        ends = max(Fraction(face - main, 2), least)
        assert ends <= usable - seam - side, "three pieces are all that is worked out here"
        finished = [ends, face - 2 * ends, ends]
    else:
        aim = side + Fraction(face, 2)
        lost = min((column - aim for column in columns if column >= aim), default=0)
        lost *= part.face.get("pattern") in ("centred", "stripe-centred")
        first = (usable - lost) // grid * grid - side - seam
        finished = [min(first, face - least), max(face - first, least)]
    places = ["left", "middle", "right"] if len(finished) == 3 else ["left", "right"]
    start, pieces, free = Fraction(0), [], {**part.face, "pattern": "free"}
    for place, wide in zip(places, finished, strict=True):
        left, right = (side if place == "left" else seam), (side if place == "right" else seam)
        inside = start <= Fraction(face, 2) < start + wide
        look = part.face if inside or part.face.get("join_pattern") != "free" else free
        middle = left + Fraction(face, 2) - start
        pieces.append(Part(f"{part.name}-{place}", look, left + wide + right, part.length, part.centre, middle=middle))
        start += wide
    return pieces


def knife_edge(cushion, allow):
    size = finished(cushion, ("width", "length"))
    if size is None:
        return [Part(part, cushion["cover"][part], None, None, None) for part in ("front", "back")]
    w, h = (side + 2 * flange_of(cushion, allow) for side in size)
    bottom = allow.seam if in_back(allow) else allow.closing
    width = w + 2 * allow.side
    middle, high = bottom + Fraction(h, 2), h + bottom + allow.seam
    front = Part("front", cushion["cover"]["front"], width, high, middle, sewn_at=(allow.side, bottom))
    return [front, *back_of(cushion, allow, width, h, bottom, allow.seam)]


def flange_of(cushion, allow):
    """By the contract cut sizes are larger by 2 × the flange; left out, it is 2 in or 5 cm (common practice)."""
    edge = cushion["cover"].get("edge", {"kind": "plain"})
    if edge["kind"] != "flanged":
        return 0
    return nm(edge.get("flange", "5 cm" if allow.job["units"] != "in" else "2 in"))


def round_knife_edge(cushion, allow):
    size = finished(cushion, ("diameter",))
    if size is None:
        return [Part(part, cushion["cover"][part], None, None, None, round=True) for part in ("front", "back")]
    d = size[0] + 2 * flange_of(cushion, allow)
    across, seam = d + 2 * allow.seam, allow.seam
    front = Part("front", cushion["cover"]["front"], across, across, Fraction(across, 2), round=True)
    return [front, *back_of(cushion, allow, across, d, seam, seam, round=not in_back(allow))]


def boxed_apart(cushion, allow):
    """A boxed cover whose boxing is joined at corners, or in equal parts where that takes fewer joins."""
    cover, seam = cushion["cover"], allow.seam
    w, h = finished(cushion, ("width", "length"))
    thick = nm(cushion["insert"]["thickness"])
    side_face = {"cloth": cover["front"]["cloth"], **cover.get("sides", {})}
    width = w + 2 * allow.side
    on, boxing = side_face.get("pattern") == "match-front", cover.get("boxing", {})
    top_face = {**cover["front"], "turn": "none"} if on else cover["front"]
    front = Part("front", top_face, width, h + 2 * seam, seam + Fraction(h, 2), sewn_at=(allow.side, seam))
    parts = [front, *back_of(cushion, allow, width, h, seam, seam)]
    around, high = [w, h, w, h], thick + 2 * seam
    if on:
        side_face, boxing = {**side_face, "pattern": "free"}, {**boxing, "kind": "front-and-sides"}
    zipped = allow.closure.get("at") == "boxing" or (allow.closure["kind"] == "zip" and not in_back(allow))
    if zipped:
        returns = nm(cover.get("boxing", {}).get("returns", "4 in" if allow.job["units"] == "in" else "10 cm"))
        around = [length for length in (h - returns, w, h - returns) if length]
        half = Fraction(high, 2) + allow.closing
        low, wide = Fraction(thick, 2), w + 2 * returns + 2 * seam
        parts.append(Part("zip-band-1", side_face, wide, half, allow.closing + low / 2, freely=True))
        parts.append(Part("zip-band-2", side_face, wide, half, seam + low / 2, freely=True))
    sides = around
    # Bands that go on from the front lie as it does, so none is reckoned longer for being turned.
    around = bands_of(around, max(w, h), {**side_face, "turn": "half"} if on else side_face, boxing, allow)
    for number, length in enumerate(around, 1):
        name = "boxing" if len(around) == 1 else f"boxing-{number}"
        part = Part(name, side_face, length + 2 * seam, high, Fraction(high, 2), freely=True)
        if on and len(around) == len(sides) and number == (2 if zipped else 3):
            points = (seam + Fraction(w, 2), seam), (allow.side + Fraction(w, 2), seam + h)
            part = dataclasses.replace(part, face=top_face, goes_on=points)
        if on and len(around) == len(sides) and number == 1 and not zipped:
            points = (seam + Fraction(w, 2), seam + thick), (allow.side + Fraction(w, 2), seam)
            part = dataclasses.replace(part, face=top_face, goes_on=points)
        parts.append(part)
    return parts


def bands_of(sides, plate, face, boxing, allow):
    """The finished lengths of the bands of a boxing with these sides."""
    bolt = allow.bolt(face)
    longest = allow.usable(bolt) // allow.grid() * allow.grid() - 2 * allow.seam
    turns = bolt.get("direction") == "any" and face.get("turn", "quarter") == "quarter"
    if turns or bolt.get("up") in ("left", "right"):
        longest = max(longest, plate)
    if boxing.get("run") == "along":
        longest = sum(sides)
    if boxing.get("kind") == "front-and-sides":
        return [part for side in sides for part in _equally(side, longest)]
    together, bands = [], []
    for side in sides:
        if together and sum(together) + side > longest:
            bands, together = [*bands, sum(together)], []
        together.append(side)
    bands = [part for band in [*bands, sum(together)] for part in _equally(band, longest)]
    fewest = _equally(sum(sides), longest)
    return fewest if len(fewest) < len(bands) else bands


def _equally(length, longest):
    count = math.ceil(Fraction(length) / longest)
    return [Fraction(length, count)] * count


def boxed_in_one_band(cushion, allow):
    """A round boxed cover, its zip, if that is in the boxing, opening half of it."""
    (d,) = finished(cushion, ("diameter",))
    cover, seam = cushion["cover"], allow.seam
    across, high = d + 2 * seam, nm(cushion["insert"]["thickness"]) + 2 * seam
    front = Part("front", cover["front"], across, across, Fraction(across, 2), round=True)
    back = back_of(cushion, allow, across, d, seam, seam, round=not in_back(allow))
    ends = {"cloth": cover["front"]["cloth"], **cover.get("sides", {})}
    around, halves = ring_of(d), []
    if allow.closure["kind"] == "zip" and allow.closure.get("at", "boxing") == "boxing":
        wide, half = around // 2 + 2 * seam, Fraction(high, 2) + allow.closing
        halves = [Part(f"zip-band-{number}", ends, wide, half, 0, freely=True) for number in (1, 2)]
        around -= around // 2
    bands = bands_of([around], d, ends, cover.get("boxing", {}), allow)
    names = ["boxing"] if len(bands) == 1 else [f"boxing-{number}" for number, _ in enumerate(bands, 1)]
    ring = [
        Part(name, ends, band + 2 * seam, high, Fraction(high, 2), freely=True)
        for name, band in zip(names, bands, strict=True)
    ]
    return [front, *back, *ring, *halves]


def flat_outline(cushion, allow):
    """A knife-edge cover of straight sides at the size of its pad, closed at the side that is said or across it."""
    at = None if in_back(allow) else allow.closure.get("side", 0)
    allowances = [allow.closing if side == at else allow.seam for side in range(len(cushion["insert"]["sides"]))]
    return outlined_faces(cushion, allow, allowances)


def outlined_faces(cushion, allow, allowances):
    """Front and back of straight sides in both hands; a back that closes across it is cut in two by a level line."""
    mirrored, radius = cushion.get("mirrored", 0), radius_of(cushion["cover"])
    corners, apart = corners_of(cushion["insert"])
    hands = {"": cushion["quantity"] - mirrored, "-mirrored": mirrored}
    whole = rounded_box(corners, radius, allowances)
    halves = halves_of(moved_out(corners, allowances), allow) if in_back(allow) else {"back": whole}
    sizes = {"front": whole, **halves}
    # Arcs are drawn by chords that may lie 1/10 mm within them.
    drawn = 2 * apart + 100 + (NM["mm"] // 5 if radius else 0)
    return [
        Part(f"{name}{hand}", cushion["cover"][name[:5].rstrip("-")], *size, None, drawn=drawn, count=count)
        for name, size in sizes.items()
        for hand, count in hands.items()
        if count
    ]


def halves_of(cut, allow):
    """The boxes of both pieces of a back that overlap: (cut length + overlap + 2 hems) ÷ 2 high, each as wide as the
    outline is, cut, anywhere on its own side of where its hem is folded; the hem lies within that."""
    low, high = min(corner.imag for corner in cut), max(corner.imag for corner in cut)
    each = (high - low + nm(allow.closure["overlap"])) / 2 + allow.hem
    folds = {"back-1": (high - each + allow.hem, 1), "back-2": (low + each - allow.hem, -1)}
    return {name: (width_beyond(cut, *fold), each) for name, fold in folds.items()}


def width_beyond(cut, level, way):
    """How wide an outline reaches above a level (`way` 1) or below it (-1)."""
    across = [corner.real for corner in cut if (corner.imag - level) * way >= 0]
    for one, other in zip(cut, [*cut[1:], cut[0]], strict=True):
        if min(one.imag, other.imag) < level < max(one.imag, other.imag):
            share = (level - one.imag) / (other.imag - one.imag)
            across.append((one + (other - one) * share).real)
    return max(across) - min(across)


def radius_of(cover):
    corners = cover.get("corners", {})
    return nm(corners["radius"]) if corners.get("kind") == "rounded" else 0


def boxed_outline(cushion, allow):
    """A boxed seat of straight sides at the size of its pad, whose boxing is joined at corners."""
    cover, insert, seam = cushion["cover"], cushion["insert"], allow.seam
    plates = outlined_faces(cushion, allow, [seam] * len(insert["sides"]))
    sides = rounded_sides([nm(side) for side in insert["sides"]], corners_of(insert)[0], radius_of(cover))
    face, thick = cover["sides"], nm(insert["thickness"])
    high, middle, halves = thick + 2 * seam, Fraction(1, 2), []
    if in_back(allow):
        back = 2  # the side that runs furthest to the left, in the seats that are worked out here
        around = [*sides[back:], *sides[:back]]
    else:
        at, returns = allow.closure["side"], nm(cover["boxing"]["returns"])
        after = [*sides[at + 1 :], *sides[:at]]
        around = [after[0] - returns, *after[1:-1], after[-1] - returns]
        wide, half = sides[at] + 2 * (returns + seam), Fraction(high, 2) + allow.closing
        halves = [Part(f"zip-band-{number}", face, wide, half, middle, freely=True) for number in (1, 2)]
    bands = [
        Part(f"boxing-{number}", face, stretch + 2 * seam, high, middle, freely=True)
        for number, stretch in enumerate(around, 1)
    ]
    return [*plates, *halves, *bands]


def corners_of(insert):
    """The corners of an outline in nm, by trying every way to lay each of them: the one whose measures and turns fit.

    Floats, exact to a hundredth of a nanometre for seats. The second answer is how far its measures are apart.
    """
    sides = [nm(side) for side in insert["sides"]]
    count = len(sides)
    lengths = {(i, (i + 1) % count): side for i, side in enumerate(sides)}
    lengths |= {(one, other): nm(length) for one, other, length in insert["diagonals"]}
    lengths |= {(other, one): length for (one, other), length in lengths.items()}
    found = _laid({0: 0j, 1: complex(sides[0])}, count, lengths)
    wanted = [corner in insert.get("notches", ()) for corner in range(count)]
    turning = [corners for corners in found if [turn < 0 for turn in _turns(corners)] == wanted]
    fitting = [corners for corners in turning if not any(_cross(corners, one, other) for one, other in lengths)]
    best = min(fitting, key=lambda corners: _worst(corners, lengths))
    return best, _worst(best, lengths)


def _laid(known, count, lengths):
    """Every way to lay the corners that are not known yet."""
    if len(known) == count:
        return [[known[corner] for corner in range(count)]]
    for corner in range(count):
        held = [other for other in known if (other, corner) in lengths and corner not in known]
        if len(held) > 1:
            one, other = held[:2]
            places = _meeting(known[one], known[other], lengths[one, corner], lengths[other, corner])
            return [laid for place in places for laid in _laid({**known, corner: place}, count, lengths)]
    raise AssertionError("the outline is not held")


def _meeting(one, other, from_one, from_other):
    apart = abs(other - one)
    along = (from_one**2 - from_other**2 + apart**2) / (2 * apart)
    aside = math.sqrt(from_one**2 - along**2)
    ahead = (other - one) / apart
    return [one + ahead * complex(along, way * aside) for way in (1, -1)]


def _turns(corners):
    count = len(corners)
    return [
        ((corners[i] - corners[i - 1]).conjugate() * (corners[(i + 1) % count] - corners[i])).imag for i in range(count)
    ]


def _cross(corners, one, other):
    """Whether a tape held so crosses a side: such a ring may meet every measure too, but diagonals lie inside."""
    count = len(corners)
    sides = [(i, (i + 1) % count) for i in range(count)]
    tape = corners[one], corners[other]
    return any(
        _either_side(*tape, corners[start], corners[end]) and _either_side(corners[start], corners[end], *tape)
        for start, end in sides
        if not {start, end} & {one, other}
    )


def _either_side(start, end, left, right):
    ahead = (end - start).conjugate()
    return ((ahead * (left - start)).imag > 0) != ((ahead * (right - start)).imag > 0)


def _worst(corners, lengths):
    return max(abs(abs(corners[one] - corners[other]) - length) for (one, other), length in lengths.items())


def moved_out(corners, allowances):
    """The outline with every side moved outwards by an allowance of its own, corners kept sharp."""
    count = len(corners)
    ahead = [(corners[(i + 1) % count] - corners[i]) / abs(corners[(i + 1) % count] - corners[i]) for i in range(count)]
    moved = []
    for i, corner in enumerate(corners):
        turn = (ahead[i - 1].conjugate() * ahead[i]).imag
        moved.append(corner + (allowances[i] * ahead[i - 1] - allowances[i - 1] * ahead[i]) / turn)
    return moved


def rounded_sides(sides, corners, radius):
    """Every side from the middle of one corner to the next, corners that turn outwards rounded, by trigonometry."""
    turns = [math.atan2(turn, along) for turn, along in zip(_turns(corners), _alongs(corners), strict=True)]
    taken = [radius * math.tan(turn / 2) if turn > 0 else 0 for turn in turns]
    arcs = [radius * turn if turn > 0 else 0 for turn in turns]
    ends = [arc / 2 - take for arc, take in zip(arcs, taken, strict=True)]
    after = [*ends[1:], ends[0]]
    return [side + start + end for side, start, end in zip(sides, ends, after, strict=True)]


def rounded_box(corners, radius, allowances):
    """The box around an outline rounded and moved out: at a corner that is a round, what its arc reaches of it.

    Where the allowances of its two sides differ, that of the arc grows from one to the other, but never past the sides.
    """
    sharp = moved_out(corners, allowances)
    if not radius:
        return box_around(sharp)
    middles = moved_out(corners, [-radius] * len(corners))
    points, count = [], len(corners)
    for i, turn in enumerate(_turns(corners)):
        if turn < 0:
            points.append(sharp[i])
            continue
        before, after = corners[i] - corners[i - 1], corners[(i + 1) % count] - corners[i]
        start, angle = cmath.phase(before) - math.pi / 2, cmath.phase(after / before)
        one, other = radius + allowances[i - 1], radius + allowances[i]
        for step in range(1000):
            turned = angle * step / 999
            offs = (one, turned), (other, angle - turned)
            sides = [side / math.cos(off) for side, off in offs if off < math.pi / 2]
            reach = min(one + (other - one) * step / 999, *sides)
            points.append(middles[i] + cmath.rect(reach, start + turned))
    return box_around(points)


def _alongs(corners):
    count = len(corners)
    return [
        ((corners[i] - corners[i - 1]).conjugate() * (corners[(i + 1) % count] - corners[i])).real for i in range(count)
    ]


def box_around(corners):
    across, up = [corner.real for corner in corners], [corner.imag for corner in corners]
    return max(across) - min(across), max(up) - min(up)


def bolster(cushion, allow):
    d, length = finished(cushion, ("diameter", "length"))
    cover, end = cushion["cover"], d + 2 * allow.seam
    high = ring_of(d) + 2 * allow.closing
    if cover.get("ends") == "gathered":
        return [Part("body", cover["front"], length + d + 2 * allow.hem, high, Fraction(high, 2))]
    ends = {"cloth": cover["front"]["cloth"], **cover.get("sides", {})}
    return [
        Part("body", cover["front"], length + 2 * allow.seam, high, Fraction(high, 2)),
        *(Part(f"end-{n}", ends, end, end, Fraction(end, 2), freely=True, round=True) for n in (1, 2)),
    ]


def in_back(allow):
    """Whether the back comes in two pieces."""
    return allow.closure["kind"] in ("envelope", "buttons") or allow.closure.get("at") == "back"


def back_of(cushion, allow, width, height, bottom, top, **more):
    """The back: whole, in two halves with a zip between them, or in two pieces that overlap."""
    face, middle = cushion["cover"]["back"], Fraction(height, 2)
    if not in_back(allow):
        return [Part("back", face, width, height + bottom + top, bottom + middle, **more)]
    if allow.closure["kind"] == "zip":
        lower = height - height // 2
        return [
            Part("back-1", face, width, height // 2 + allow.closing + top, allow.closing + middle - lower, **more),
            Part("back-2", face, width, lower + allow.closing + bottom, bottom + middle, **more),
        ]
    each = round(Fraction(height + bottom + top + nm(allow.closure["overlap"]) + 2 * allow.hem, 2))
    return [
        Part("back-1", face, width, each, each - top - middle, **more),
        Part("back-2", face, width, each, bottom + middle, **more),
    ]


@dataclass(frozen=True)
class Strips:
    """What is cut in strips: how wide, and so many rings, each so long with what closes it (None: by a rule of fit)."""

    name: str
    cloth: str
    count: int
    width: int
    ring: Any
    join: int
    bias: bool


def strips_of(cushion, job):
    """All that is cut in strips for one entry."""
    edge = cushion["cover"].get("edge", {"kind": "plain"})
    make = {"piped": _piping, "frilled": _frill}.get(edge["kind"])
    return [make(cushion, edge, job)] if make else []


def _piping(cushion, edge, job):
    """By the contract: π · (cord + cloth) + 2 seams, up to 1/4 in or 5 mm."""
    metric = job["units"] != "in"
    cloth = edge.get("cloth", cushion["cover"]["front"]["cloth"])
    weight = next(entry for entry in job["cloths"] if entry["id"] == cloth).get("weight")
    tenths = {None: 0, "sheer": 2, "light": 3, "medium": 5, "heavy": 10, "very-heavy": 15}[weight]
    thick = nm(edge["thickness"]) if "thickness" in edge else tenths * NM["mm"] // 10
    cord = nm(edge.get("cord", "4 mm" if metric else "5/32 in"))
    twice = 2 if edge.get("cords") == "double" else 1
    step = nm("5 mm" if metric else "1/4 in")
    width = step * math.ceil((math.pi * twice * (cord + thick) + 2 * Allowances(cushion, job).seam) / step)
    around, curved = _around(cushion)
    closing = nm(edge.get("join", "5 cm" if metric else "2 in"))
    across = nm("25 mm" if metric else "1 in")
    return Strips(
        name="piping",
        cloth=cloth,
        count=_rims(cushion, edge) * cushion["quantity"],
        width=width,
        ring=around and around + closing,
        join=across if edge.get("joined") == "straight" else width,
        bias=edge.get("strip", "bias" if curved else "straight") == "bias",
    )


def _frill(cushion, edge, job):
    """Doubled: 2 · depth + 2 seams; single: depth + seam + hem; as long as the edge × fullness and what closes it."""
    metric = job["units"] != "in"
    seam, depth = Allowances(cushion, job).seam, nm(edge.get("depth", "7.5 cm" if metric else "3 in"))
    hem = nm(edge.get("hem", "1.5 cm" if metric else "1/2 in"))
    fullness = Fraction(str(edge.get("fullness", {"gathered": 2, "pleated": 3}[edge.get("gather", "gathered")])))
    around, _ = _around(cushion)
    return Strips(
        name="frill",
        cloth=edge.get("cloth", cushion["cover"]["front"]["cloth"]),
        count=_rims(cushion, edge) * cushion["quantity"],
        width=depth + seam + hem if edge.get("frill") == "hemmed" else 2 * depth + 2 * seam,
        ring=around and around * fullness + 2 * seam,
        join=2 * seam,
        bias=edge.get("strip") == "bias",
    )


def _rims(cushion, edge):
    usual = "both" if cushion["kind"] == "bolster" else "front"
    return 2 if cushion["kind"] != "knife-edge" and edge.get("rims", usual) == "both" else 1


def _around(cushion):
    """Once round a rim along the stitching line, and whether it is curved; each side of an outline to 2 nm."""
    if cushion["insert"]["shape"] == "polygon":
        radius, taped = radius_of(cushion["cover"]), [nm(side) for side in cushion["insert"]["sides"]]
        corners, apart = corners_of(cushion["insert"])
        off = 2 + (apart if radius else 0)
        return sum(int(side) - off for side in rounded_sides(taped, corners, radius)), radius > 0
    if cushion["insert"]["shape"] != "rectangle":
        size = finished(cushion, ("diameter",))
        return (ring_of(size[0]) if size else None), True
    size, corners = finished(cushion, ("width", "length")), cushion["cover"].get("corners", {})
    if corners.get("kind") != "rounded":
        return (2 * sum(size) if size else None), False
    radius = nm(corners["radius"])
    return (2 * sum(size) - 8 * radius + ring_of(2 * radius) if size else None), True
