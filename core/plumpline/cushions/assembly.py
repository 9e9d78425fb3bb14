"""A cover put together from its parts: what is the same for every kind once its pieces are known."""

from __future__ import annotations

from collections.abc import Sequence

from plumpline.cushions.closing import Closing, closing_line
from plumpline.cushions.closing_marks import with_closing
from plumpline.cushions.face_parts import made_of_parts, unmakable
from plumpline.cushions.finish import finish_line, nothing_to_trim
from plumpline.cushions.fit import pad_for
from plumpline.cushions.joining import joined, unjoinable
from plumpline.cushions.made import Made
from plumpline.cushions.panels import Cut, Part, cut_out
from plumpline.cushions.pieced import Pieced, cut_portions
from plumpline.cushions.sizes import Sized
from plumpline.cushions.stitching import Sewn, sewn_to_close
from plumpline.cushions.words import why_cut_larger
from plumpline.job import Cushion, Job
from plumpline.problems import Problem

# The faces that may be made up of several pieces.
FACES = ("front", "back")


def cut_panels(parts: Sequence[Part], cushion: Cushion, closing: Closing, job: Job) -> list[Cut]:
    """The parts cut out, one for each cover, with the marks of the closure."""
    return [
        Cut(part, with_closing(part, cut_out(part, cushion, job, cushion.quantity), closing, job)) for part in parts
    ]


def assembled(
    cushion: Cushion, job: Job, sized: Sized, closing: Closing, cuts: Sequence[Cut], lines: list[str], sewn: list[Sewn]
) -> Made | list[Problem]:
    """The cover of these pieces, or why a face of it cannot be made up as it is asked to be.

    `lines` say how their sizes come about, `sewn` is the stitching of the cover but the closure's.
    """
    faces = [cut.part for cut in cuts if cut.part.face_of in FACES]
    problems = [problem for face in faces for problem in unmakable(face, cushion, job) or unjoinable(face, cushion)]
    problems += nothing_to_trim(cushion, job)
    if problems:
        return list(dict.fromkeys(problems))
    pieced = [(cut, _pieced(cut.part, cushion, job) if cut.part.face_of in FACES else None) for cut in cuts]
    made_up = [(cut.piece.called, face) for cut, face in pieced if face is not None]
    cut_up = [
        one
        for cut, face in pieced
        for one in (cut_portions(cut, face.portions, cushion, job) if face and face.portions else [cut])
    ]
    parts, pieces = [cut.part for cut in cut_up], tuple(cut.piece for cut in cut_up)
    told = [line for _, face in made_up for line in face.lines]
    seams = [Sewn(face.seams, layers=2, what="fastening" if face.trim else "seam") for _, face in made_up]
    return Made(
        cushion=cushion,
        fit=sized.fit,
        pad=pad_for(sized.finished, sized.fit, cushion, job),
        finished=sized.finished,
        closing=closing,
        pieces=pieces,
        cutting=(
            *lines,
            *told,
            *closing_line(closing, job),
            *finish_line(cushion, job),
            *why_cut_larger(parts, pieces, job),
        ),
        sewn=(*sewn, *seams, *sewn_to_close(closing)),
        zips=closing.zips,
        made_up=tuple((name, face.how) for name, face in made_up),
        seams=tuple(seams),
        inset=tuple((name, *face.trim) for name, face in made_up if face.trim),
    )


def _pieced(panel: Part, cushion: Cushion, job: Job) -> Pieced | None:
    """What a face is made up of: its parts, or the pieces it is joined of; None where it is cut whole."""
    return made_of_parts(panel, cushion, job) or joined(panel, cushion, job)
