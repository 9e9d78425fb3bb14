"""Faces made of parts: a border round a centre, a band from edge to edge, or flat trim stitched on in from the edge."""

from __future__ import annotations

from dataclasses import replace

from plumpline.cushions.panels import Part, outlined_part
from plumpline.cushions.pieced import Pieced, Portion, portion_of
from plumpline.figures import listed, size
from plumpline.geometry import root
from plumpline.job import HABITS, Cushion, Face, Job
from plumpline.lengths import write_length
from plumpline.problems import Problem
from plumpline.rounded import rounded_outwards

# The parts that can be made of parts: whole faces, and the body of a bolster.
_WHOLE = ("front", "back", "body")


def unmakable(panel: Part, cushion: Cushion, job: Job) -> list[Problem]:
    """Why a face cannot be made of the parts that are asked for."""
    face, at = cushion.cover.face(panel.face_of), f"{cushion.at}/cover/{panel.face_of}/made"
    kind = face.parts.kind
    if kind == "plain":
        return []
    problem = "rules-contradict"
    if panel.shape != "rectangle" or panel.name not in _WHOLE:
        text = "Only a whole square or oblong face is made of parts: leave this plain, or close the cover elsewhere."
        return [Problem(f"{at}/kind", problem, text)]
    if panel.name == "body" and kind != "band":
        return [Problem(f"{at}/kind", problem, "The body of a bolster may have a band, but nothing runs round it.")]
    if face.joined != "none":
        text = "A face is either joined or made of parts: choose one of the two, or run the cloth along the roll."
        return [Problem(f"{at}/kind", problem, text)]
    return _no_room(panel, face, at, job) or _motif_lost(panel, face, at, cushion)


def _no_room(panel: Part, face: Face, at: str, job: Job) -> list[Problem]:
    """The problem of parts that leave nothing of their face."""
    parts, short = face.parts, min(panel.width, panel.length)
    if parts.kind == "border":
        taken, name = 2 * parts.width, "width"
    elif parts.kind == "inset":
        taken, name = 2 * ((parts.from_edge or 0) + parts.width), "from_edge"
    else:
        short = panel.width if parts.lies == "upright" else panel.length
        taken, name = (parts.from_edge or 0) + parts.width, "from_edge" if parts.from_edge else "width"
    if taken < short:
        return []
    takes, side = write_length(taken, job.units), write_length(short, job.units)
    return [Problem(f"{at}/{name}", "parts-too-wide", f"That takes {takes} of {side}: make it narrower.")]


def _motif_lost(panel: Part, face: Face, at: str, cushion: Cushion) -> list[Problem]:
    """The problem of a motif that would stand on a border or a band instead of the face."""
    if not face.has_motif or face.parts.kind == "inset":
        return []
    across, up = panel.middle
    x, y = across + face.offset_across, up + face.offset_along
    own = [portion for portion in _portions(panel, face, cushion) if portion.part.face_of == panel.face_of]
    spans = [(*portion.at, portion.part.width, portion.part.length) for portion in own]
    # The portion that has the middle of the face is the one that is cut by the motif.
    if any(left <= min(x, across) and max(x, across) < left + wide and low <= min(y, up) and max(y, up) < low + high
           for left, low, wide, high in spans):  # fmt: skip
        return []
    text = "The motif would stand where the border or the band is: move the band, or leave the pattern free."
    return [Problem(f"{at}/kind", "rules-contradict", text)]


def made_of_parts(panel: Part, cushion: Cushion, job: Job) -> Pieced | None:
    """The face in its parts, which together have its finished size; None where it is plain."""
    face = cushion.cover.face(panel.face_of)
    if face.parts.kind == "plain":
        return None
    if face.parts.kind == "inset":
        return _inset(panel, face, job)
    portions = _portions(panel, face, cushion)
    places = [portion.part.name.removeprefix(f"{panel.name}-").replace("-", " ") for portion in portions]
    sizes = [size(*portion.part.plain, job.units) for portion in portions]
    cuts = listed([f"{place} {cut}" for place, cut in zip(places, sizes, strict=True)])
    wide, seam = write_length(face.parts.width, job.units), write_length(cushion.cover.seam, job.units)
    line = f"The {panel.name} has a {face.parts.kind} of {wide}; with their seams its parts are cut {cuts}."
    how = _SEWN["band" if face.parts.kind == "band" else face.parts.corners].format(seam=seam)
    return Pieced(tuple(portions), (line,), how, _seams(panel, face))


# How the parts are sewn together; at a mitre the seams end where they meet, so that the corner opens flat.
_SEWN = {
    "band": "The band between its neighbours, {seam} seams, pressed away from the band.",
    "butted": "The strips at both sides to the centre first, then bottom and top right across; {seam} seams.",
    "mitred": "Each strip to its side of the centre, with {seam} seams that end {seam} from its corners; then the "
    "mitres, from the inner corner outwards.",
}


def _portions(panel: Part, face: Face, cushion: Cushion) -> list[Portion]:
    make = _with_band if face.parts.kind == "band" else _with_border
    return make(panel, face, cushion.cover.seam)


def _with_band(panel: Part, face: Face, seam: int) -> list[Portion]:
    """What lies on one side of the band, the band, and what lies on the other; a band at an edge has one neighbour."""
    upright, strip = face.parts.lies == "upright", f"{panel.face_of}/made"
    side = panel.width if upright else panel.length
    start = (side - face.parts.width) // 2 if face.parts.from_edge is None else face.parts.from_edge
    end = start + face.parts.width
    first, last = ("left", "right") if upright else ("bottom", "top")
    spans = [(first, 0, start, panel.face_of), ("band", start, end, strip), (last, end, side, panel.face_of)]
    portions = []
    for name, low, high, face_of in spans:
        if high > low:
            at = (low, 0) if upright else (0, low)
            cut = (high - low, panel.length) if upright else (panel.width, high - low)
            portions.append(portion_of(panel, name, at, cut, seam, face_of))
    return portions


def _with_border(panel: Part, face: Face, seam: int) -> list[Portion]:
    w, h, b, strip = panel.width, panel.length, face.parts.width, f"{panel.face_of}/made"
    centre = portion_of(panel, "centre", (b, b), (w - 2 * b, h - 2 * b), seam, panel.face_of)
    if face.parts.corners == "mitred":
        return [centre, *_mitred(panel, b, seam, strip)]
    return [
        centre,
        portion_of(panel, "border-bottom", (0, 0), (w, b), seam, strip),
        portion_of(panel, "border-right", (w - b, b), (b, h - 2 * b), seam, strip),
        portion_of(panel, "border-top", (0, h - b), (w, b), seam, strip),
        portion_of(panel, "border-left", (0, b), (b, h - 2 * b), seam, strip),
    ]


def _mitred(panel: Part, b: int, seam: int, strip: str) -> list[Portion]:
    """The four strips with their ends cut at half a right angle, each told from its outer side on."""
    w, h, outer = panel.width, panel.length, panel.edges
    inner = ((b, b), (w - b, b), (w - b, h - b), (b, h - b))
    corners = ((0, 0), (w, 0), (w, h), (0, h))
    sides = (("bottom", outer.bottom), ("right", outer.right), ("top", outer.top), ("left", outer.left))
    found = []
    for number, (name, allowance) in enumerate(sides):
        after = (number + 1) % 4
        shape = (corners[number], corners[after], inner[after], inner[number])
        part = outlined_part(
            f"{panel.name}-border-{name}", strip, rounded_outwards(shape, 0), (allowance, seam, seam, seam)
        )
        corner = min(x for x, _ in shape), min(y for _, y in shape)
        found.append(Portion(replace(part, measured=panel.measured, corners=()), corner, "anything"))
    return found


def _seams(panel: Part, face: Face) -> int:
    """How long the seams between the parts are."""
    w, h, b = panel.width, panel.length, face.parts.width
    if face.parts.kind == "band":
        along = h if face.parts.lies == "upright" else w
        return along * (len(_with_band(panel, face, 0)) - 1)
    if face.parts.corners == "butted":
        return 2 * w + 2 * (h - 2 * b)
    return 2 * (w - 2 * b) + 2 * (h - 2 * b) + 4 * root(2 * b * b)


def _inset(panel: Part, face: Face, job: Job) -> Pieced:
    """Flat trim stitched along both its edges, mitred by a fold at each corner: its outer edge goes round the face."""
    inwards, units, joint = face.parts.from_edge or 0, job.units, HABITS[job.units].trim_join
    around = 2 * (panel.width - 2 * inwards) + 2 * (panel.length - 2 * inwards)
    wide, far, once, join = (write_length(nm, units) for nm in (face.parts.width, inwards, around, joint))
    line = f"Trim {wide} wide lies {far} in from the edge of the {panel.name}: {once} once round, {join} to join it."
    how = f"Pin the trim {far} in from the seam line, fold a mitre at each corner, and stitch along both its edges."
    return Pieced((), (line,), how, 2 * around, (face.parts.width, around + joint))
