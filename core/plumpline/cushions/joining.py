"""A face that is wider than its cloth, joined: with an equal piece at each end, or with one piece at a side."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import accumulate

from plumpline.cloth import cut_across, lay_out, longest_across
from plumpline.cushions.panels import Part
from plumpline.cushions.pieced import Pieced, Portion, portion_of
from plumpline.figures import bare, listed, size
from plumpline.job import HABITS, Cloth, Cushion, Face, Job
from plumpline.lengths import write_length
from plumpline.problems import Problem


@dataclass(frozen=True)
class _Room:
    """What a piece may be wide, its allowances included, in nm: the one with the middle of the face, and any other."""

    main: int
    other: int


def unjoinable(panel: Part, cushion: Cushion) -> list[Problem]:
    """Why a face cannot be joined as it is asked to be."""
    face, at = cushion.cover.face(panel.face_of), f"{cushion.at}/cover/{panel.face_of}"
    if face.joined == "none":
        return []
    if panel.shape != "rectangle":
        text = "A face of this shape is cut in one: choose a wider cloth, or let it be cut whole."
        return [Problem(f"{at}/joined", "rules-contradict", text)]
    if face.join_pattern == "matched" and not face.has_motif:
        text = (
            "Only a face with a motif in its middle can be matched at its joins: centre one, or leave them unmatched."
        )
        return [Problem(f"{at}/join_pattern", "rules-contradict", text)]
    return []


def joined(panel: Part, cushion: Cushion, job: Job) -> Pieced | None:
    """The face in pieces that fit the cloth side by side; None where it is wanted whole, or fits, or none would.

    A join never comes in the middle of a face: at both ends there is an equal piece, or all of what is left over is
    joined on at the right (common practice). What is joined on is never a mere strip.
    """
    face = cushion.cover.face(panel.face_of)
    cloth = job.cloth(face.cloth)
    if face.joined == "none" or cloth.width is None or cloth.lies_aside:
        return None
    room = _room(panel, face, cloth, job)
    if panel.plain[0] <= room.other:
        return None
    divide = {"both-ends": _with_equal_ends, "one-side": _with_one_more}[face.joined]
    widths = divide(panel, room, cushion.cover.seam, HABITS[job.units].narrowest)
    return _pieced(panel, face, widths, cushion, job) if min(widths) > 0 else None


def _room(panel: Part, face: Face, cloth: Cloth, job: Job) -> _Room:
    usable = lay_out(cloth, cloth.width or 0).usable
    main = min(usable, _beside_the_motif(panel, face, cloth))
    return _Room(longest_across(cloth, main, job.grid), longest_across(cloth, usable, job.grid))


def _beside_the_motif(panel: Part, face: Face, cloth: Cloth) -> int:
    """How wide on the cloth the piece with the motif may be, so that some column of motifs lies where it is wanted.

    With a piece at both ends the motif stands in the middle of that piece; else so far from the left edge.
    """
    laid = lay_out(cloth, cloth.width or 0)
    if not face.has_motif or laid.repeat is None or not laid.repeat.across:
        return laid.usable
    motif = next(motif for motif in laid.motifs if motif.id == face.motif)
    offset = cut_across(cloth, face.offset_across, 0)
    columns = range(motif.ox % laid.repeat.across - offset, laid.usable - offset + 1, laid.repeat.across)
    if face.joined == "both-ends":
        return max((2 * min(column, laid.usable - column) for column in columns), default=0)
    aim = cut_across(cloth, panel.edges.left + panel.width // 2, 0)
    return laid.usable - min((column - aim for column in columns if column >= aim), default=0)


def _with_equal_ends(panel: Part, room: _Room, seam: int, narrowest: int) -> list[int]:
    """Finished widths: one piece as wide as the cloth in the middle, or three, five …, and two equal ones beside."""
    whole, middle = panel.width, room.main - 2 * seam
    widest_end = room.other - seam - max(panel.edges.left, panel.edges.right)
    if middle <= 0 or widest_end <= 0:
        return [0]
    count = 1
    while whole - count * middle > 2 * widest_end:
        count += 2
    ends = max(whole - count * middle, 2 * narrowest)
    between = [(whole - ends) * (number + 1) // count - (whole - ends) * number // count for number in range(count)]
    return [ends // 2, *between, ends - ends // 2]


def _with_one_more(panel: Part, room: _Room, seam: int, narrowest: int) -> list[int]:
    """Finished widths: pieces as wide as the cloth from the left, and what is left over."""
    widths = [room.main - panel.edges.left - seam]
    between, last = room.other - 2 * seam, room.other - seam - panel.edges.right
    if min(widths[0], between, last) <= 0:
        return [0]
    while panel.width - sum(widths) > last:
        widths.append(between)
    short = max(0, narrowest - (panel.width - sum(widths)))
    widths[-1] -= short
    return [*widths, panel.width - sum(widths)]


def _names(count: int) -> list[str]:
    between = ["middle"] if count == 3 else [f"middle-{number}" for number in range(1, count - 1)]
    return ["left", *between, "right"]


def _pieced(panel: Part, face: Face, widths: Sequence[int], cushion: Cushion, job: Job) -> Pieced:
    seam = cushion.cover.seam
    starts = [0, *accumulate(widths[:-1])]
    portions: list[Portion] = []
    for name, start, width in zip(_names(len(widths)), starts, widths, strict=True):
        portion = portion_of(panel, name, (start, 0), (width, panel.length), seam, panel.face_of)
        matched = face.has_motif and face.join_pattern == "matched"
        portions.append(replace(portion, shows="the pattern") if matched else portion)
    lines, seams = _lines(panel, face, portions, job), (len(widths) - 1) * panel.plain[1]
    sewn, whole = (write_length(nm, job.units) for nm in (seam, panel.width))
    places = listed([place.replace("-", " ") for place in _names(len(widths))])
    how = f"{places[0].upper()}{places[1:]}, face to face, {sewn} seams, pressed open: finished it is {whole} wide."
    return Pieced(tuple(portions), tuple(lines), f"{how}{_matching(face)}", seams)


def _matching(face: Face) -> str:
    if face.join_pattern != "matched":
        return ""
    return f" Pin the {'pattern' if face.pattern == 'centred' else 'stripes'} together at every join first."


def _lines(panel: Part, face: Face, portions: Sequence[Portion], job: Job) -> list[str]:
    units = job.units
    name = panel.name.replace("-", " ")
    widths = " + ".join(bare(portion.part.width, units) for portion in portions)
    cuts = listed([size(*portion.part.plain, units) for portion in portions])
    whole = write_length(panel.width, units)
    lines = [f"The {name} is wider than the cloth and joined: {widths} = {whole}, cut {cuts}."]
    if face.has_motif:
        lines.append(_across_the_joins(face, job))
    return lines


def _across_the_joins(face: Face, job: Job) -> str:
    """Whether the pattern runs on across the joins; of one that is centred as stripes, how far it does."""
    if face.join_pattern != "matched":
        return "The pattern is not matched at the joins."
    if face.pattern == "centred":
        return "The pattern runs on across the joins."
    along = job.cloth(face.cloth).repeat_along
    return f"The stripes run on across the joins{'; what repeats along them is not matched there' if along else ''}."
