# The sheet's facts: face, back, edge, closing, motif, the top edge, what is not matched, seam, stitch, needle, thread.

from __future__ import annotations

from collections.abc import Iterator

from plumpline.bought import approved_text, length_text
from plumpline.cushions.finish import trimmed_to
from plumpline.cushions.flowing import row_of
from plumpline.figures import listed
from plumpline.haberdashery import sewing_of
from plumpline.job import Cloth, Face, name_of
from plumpline.materials.sewing import needle_text, stitch_text, thread_text
from plumpline.pieces import Piece
from plumpline.workroom.corners import corner_text
from plumpline.workroom.edges import edge_text
from plumpline.workroom.identity import hands_text
from plumpline.workroom.step import Bench, family_name, family_of

Fact = tuple[str, str]


def facts(bench: Bench) -> Iterator[Fact]:
    """Each fact by its name and its words, in the order of the sheet."""
    yield from _faces(bench)
    yield from _bought(bench)
    yield "Edge", edge_text(bench)
    yield "Closing", closing_text(bench)
    if corner_text(bench):
        yield "Corners", corner_text(bench)
    if bench.cover.cushion.mirrored:
        yield "Hands", hands_text(bench.cover.cushion)
    yield from _motifs(bench)
    yield "Top edge", _top(bench)
    yield from _not_matched(bench)
    yield "Seam", _seam(bench)
    yield "Cut edges", _finish(bench)
    sewing = sewing_of(bench.cover, bench.job)
    yield "Stitch", stitch_text(sewing.stitch)
    yield "Needle", needle_text(sewing.needle)
    yield "Thread", thread_text(sewing.tex)


def _finish(bench: Bench) -> str:
    left = bench.told(trimmed_to(bench.job))
    return {
        "plain": "left as they are",
        "overlocked": "overlocked",
        "trimmed": f"trimmed to {left} once sewn",
        "overlocked-together": f"trimmed to {left} once sewn, the two overlocked together",
    }[bench.cover.cushion.cover.seam_finish]


# What the faces are called on the sheet, by kind of cover where they have other names there.
_FACES = {
    "front": "Face",
    "back": "Back",
    "sides": "Sides",
    "front/made": "Border or band, face",
    "back/made": "Border or band, back",
    "layers/lining": "Lining",
    "layers/interlining": "Interlining",
    "layers/protector": "Protector",
    "layers/wrap": "Slip-cloth",
}
_CALLED = {
    ("boxed", "sides"): "Boxing",
    ("bolster", "front"): "Body",
    ("bolster", "sides"): "Ends",
}


def _faces(bench: Bench) -> Iterator[Fact]:
    kind = bench.cover.cushion.kind
    for part, face in bench.cover.cushion.cover.faces:
        yield _CALLED.get((kind, part), _FACES[part]), name_of(bench.job.cloth(face.cloth))


def _bought(bench: Bench) -> Iterator[Fact]:
    """What was cut of each cloth, so that its batch is known at the bench, and whether it may be cut into."""
    for cloth in bench.cloths:
        if cloth.bought:
            yield f"Cut of {name_of(cloth)}", "; ".join(length_text(one, bench.job.units) for one in cloth.bought)
        if cloth.bought or cloth.approved:
            yield f"Approval, {name_of(cloth)}", approved_text(cloth)


def closing_text(bench: Bench) -> str:
    """How and where the cover is closed, with its figures."""
    closing = bench.cover.closing
    if closing.kind == "hand-sewn":
        return f"sewn up by hand, {bench.told(closing.length)} {closing.words}"
    if closing.kind == "zip":
        return f"zip of {bench.told(closing.length)} {closing.words}"
    if closing.kind == "envelope":
        return f"envelope back, {bench.told(closing.overlap)} overlap, upper piece outside, opening downwards"
    if closing.kind == "buttons":
        return f"buttoned back, {bench.told(closing.overlap)} overlap, upper piece outside"
    return {"ties": "tied along the bottom edge", "open": "bottom edge hemmed and left open"}[closing.kind]


def _motifs(bench: Bench) -> Iterator[Fact]:
    for part, face in bench.cover.cushion.cover.faces:
        name = _CALLED.get((bench.cover.cushion.kind, part), _FACES[part])
        if face.has_motif:
            yield f"{'Motif' if face.pattern == 'centred' else 'Stripe'}, {name.lower()}", _centred(face, bench)
        elif face.pattern == "flow":
            yield f"Pattern, {name.lower()}", _in_a_row(bench)
        elif face.goes_on:
            edges = listed([edge for edge in ("top", "bottom") if any(p.goes_on == edge for p in bench.cover.pieces)])
            yield f"Pattern, {name.lower()}", f"goes on from the face over its {edges} edge"
        elif face.pattern == "alike":
            yield f"Motif, {name.lower()}", "every one shows the same place of the pattern"


def _in_a_row(bench: Bench) -> str:
    """Where in its row a front stands, and which it goes on from."""
    cushion = bench.cover.cushion
    row = row_of(cushion, bench.job)
    place = row.index(cushion)
    text = f"number {place + 1} of {len(row)} in the row, from the left"
    return f"{text}; goes on from {name_of(row[place - 1])}" if place else text


def _centred(face: Face, bench: Bench) -> str:
    motifs = bench.job.cloth(face.cloth).motifs
    named = [motif.name or f"motif {number}" for number, motif in enumerate(motifs, 1) if motif.id == face.motif]
    upright = "" if face.pattern == "centred" else ", upright"
    motif = f"{named[0] if named else 'the motif'}{upright}"  # a cloth that could not be read has none
    sides = [
        f"{bench.told(abs(offset))} {more if offset > 0 else less}"
        for offset, more, less in ((face.offset_across, "right", "left"), (face.offset_along, "up", "down"))
        if offset
    ]
    middle = "the middle of the finished face"
    return f"{motif}, {listed(sides)} from {middle}" if sides else f"{motif} in {middle}"


_UP = {
    "away": "away from the cut end",
    "toward": "toward the cut end",
    "left": "to the left edge",
    "right": "to the right edge",
}


def _top(bench: Bench) -> str:
    """How the arrow that every piece has lies on each cloth."""
    lies = [_lies(cloth) for cloth in bench.cloths if cloth.direction != "any"]
    without = [name_of(cloth) for cloth in bench.cloths if cloth.direction == "any"]
    if without:
        lies.append(
            f"{listed(without)} {'has' if len(without) == 1 else 'have'} no top, but all faces lie the same way"
        )
    return f"arrow up on every piece; {'; '.join(lies)}"


def _lies(cloth: Cloth) -> str:
    also = ", or the other way round" if cloth.direction == "two-way" else ""
    return f"on {name_of(cloth)} the top points {_UP[cloth.up]}{also}"


def _not_matched(bench: Bench) -> Iterator[Fact]:
    """Parts that show a pattern and are cut without looking at it, and seams that it does not run on across."""
    patterned = [piece for piece in bench.cover.pieces if _has_repeat(piece, bench)]
    along = any(bench.job.cloth(piece.face.cloth).repeat_along for piece in patterned)
    if patterned:
        anywhere = _cut("free", "cut anywhere in the pattern", patterned)
        anywhere += _cut("stripe-centred", "up and down anywhere in the pattern", patterned) if along else ""
        going_on = [piece.called for piece in patterned if piece.goes_on]
        across = ["the joins within a face"] if any(_is_matched(piece) for piece in patterned) else []
        across += [f"the seam of the front with {listed(going_on)}"] if going_on else []
        runs = f"runs on across {listed(across)} and no other seam" if across else "does not run on across any seam"
        flows = "runs on from cover to cover, and " if any(p.face.pattern == "flow" for p in patterned) else ""
        yield "Not matched", f"{anywhere}the pattern {flows}{runs}"


def _is_matched(piece: Piece) -> bool:
    return bool(piece.portion_of) and piece.face.join_pattern == "matched"


def _cut(pattern: str, how: str, pieces: list[Piece]) -> str:
    """How the parts of that pattern are cut, if there are any."""
    others = {family_of(piece) for piece in pieces if piece.goes_on}
    names = dict.fromkeys(
        piece.called if family_of(piece) in others else family_name(family_of(piece))
        for piece in pieces
        if piece.face.pattern == pattern
    )
    return f"{listed(list(names))}: {how}; " if names else ""


def _has_repeat(piece: Piece, bench: Bench) -> bool:
    cloth = bench.job.cloth(piece.face.cloth)
    return bool(cloth.repeat_across or cloth.repeat_along)


def _seam(bench: Bench) -> str:
    cover, closing = bench.cover.cushion.cover, bench.cover.closing
    text = bench.told(cover.seam)
    if cover.side_seam != cover.seam:
        text += f", {bench.told(cover.side_seam)} at the sides"
    if closing.kind in ("hand-sewn", "zip") and closing.allowance != cover.seam:
        text += f", {bench.told(closing.allowance)} where it closes"
    return text
