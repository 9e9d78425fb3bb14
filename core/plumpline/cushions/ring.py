"""The boxing around a boxed cover: a ring of bands as long as the stitched edge of its plates, and its joins."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import accumulate, pairwise
from typing import Literal

from plumpline.cloth import lay_out, longest_across
from plumpline.cushions.closing import Closing
from plumpline.cushions.panels import Edges, Part, cut_out
from plumpline.figures import bare, counted, listed, size
from plumpline.job import HABITS, Cloth, Cushion, Job
from plumpline.lengths import write_length
from plumpline.pieces import Mark, Piece
from plumpline.problems import Problem

Joined = Literal["as the cloth asks", "at every corner"]
Edge = Literal["", "bottom", "top"]


@dataclass(frozen=True)
class Ring:
    """The edge that the boxing is sewn to, in nm: `around` the plates from corner to corner without the zip band.

    The `zip_band` is told by its own stretches from corner to corner; where there is no such band it has none.
    `joined` says whether the stretches may run on round a corner or are joined at each. `plate` is the longest way
    across a plate, and `edge` the measure of the insert that the ring follows from. `edges` names the edge of the front
    that each stretch of `around` lies along, where its pattern can go on over it, and "" for the others.
    """

    around: tuple[int, ...]
    zip_band: tuple[int, ...]
    thickness: int
    plate: int
    edge: str
    joined: Joined = "as the cloth asks"
    edges: tuple[Edge, ...] = ()

    @property
    def stretches(self) -> list[tuple[int, Edge]]:
        """Those of `around` that there are, each with its edge."""
        return [(stretch, self.edges[i] if self.edges else "") for i, stretch in enumerate(self.around) if stretch]

    @property
    def length(self) -> int:
        """All of it: what the boxing has to measure when it is joined."""
        return sum(self.around) + sum(self.zip_band)


@dataclass(frozen=True)
class Run:
    """What lies between two joins: its finished length, and where the corners are along it; in nm.

    `edge` is the edge of the front that it lies along, as `Ring.edges` has it, and `start` where it begins there, from
    the left.
    """

    length: int
    corners: tuple[int, ...] = ()
    edge: Edge = ""
    start: int = 0


@dataclass(frozen=True)
class Bands:
    """The boxing worked out: the bands beside the zip, and those of the zip band, which has two halves of each."""

    plain: tuple[Run, ...]
    zipped: tuple[Run, ...]

    @property
    def joins(self) -> int:
        """How many joins close the ring."""
        return len(self.plain) + len(self.zipped)


def returns_of(cushion: Cushion, job: Job, beside: int) -> int:
    """How far a zip band comes round the corners at its ends, `beside` being the shorter side there, in nm.

    As it is said; else the usual, or all of that side where it is shorter.
    """
    said = cushion.cover.boxing.returns
    return min(HABITS[job.units].returns, beside) if said is None else said


def returns_too_far(cushion: Cushion, job: Job, closing: Closing, beside: int, instead: str = "") -> list[Problem]:
    """The problem of a zip band that comes round further than the shorter side there is long."""
    if closing.at != "boxing" or closing.returns <= beside:
        return []
    returns, side = (write_length(nm, job.units) for nm in (closing.returns, beside))
    text = f"The zip band returns {returns} along a side of {side}: let it return less{instead}."
    return [Problem(f"{cushion.at}/cover/boxing/returns", "rules-contradict", text)]


def bands_of(ring: Ring, cushion: Cushion, job: Job) -> Bands:
    """The ring divided into bands no longer than the cloth gives, joined at corners where that takes no more joins."""
    cover = cushion.cover
    longest = _longest(cushion, job.cloth(cover.face("sides").cloth), job, ring.plate)
    around = [stretch for stretch, _ in ring.stretches]
    if ring.joined == "at every corner":
        plain = [run for stretch, edge in ring.stretches for run in _lying_along(edge, _divided([stretch], longest))]
    else:
        plain = min(_divided(around, longest), _in_equal_parts(around, longest), key=len)
    zip_band = [stretch for stretch in ring.zip_band if stretch]
    return Bands(tuple(plain), tuple(_in_equal_parts(zip_band, longest)) if zip_band else ())


def _lying_along(edge: Edge, runs: list[Run]) -> list[Run]:
    """The runs of one stretch with the edge that they lie along; the ring comes back along the top from the right."""
    ends = list(accumulate(run.length for run in runs))
    starts = [ends[-1] - end if edge == "top" else end - run.length for run, end in zip(runs, ends, strict=True)]
    return [replace(run, edge=edge, start=start) for run, start in zip(runs, starts, strict=True)]


def _longest(cushion: Cushion, cloth: Cloth, job: Job, plate: int) -> int | None:
    """The longest finished band: None where it is to lie along the roll in one length, and any will do.

    Unless it is said otherwise, bands lie across the cloth (common practice). Where they may be turned, or lie on
    their side as the plate does, one may be as long as the `plate` that takes as much of the roll.
    """
    if cloth.width is None or cushion.cover.boxing.run == "along":
        return None
    seam = cushion.cover.seam
    longest = longest_across(cloth, lay_out(cloth, cloth.width).usable, job.grid) - 2 * seam
    if longest <= 0:
        return None
    sides = cushion.cover.face("sides")
    may_turn = cloth.direction == "any" and sides.turn == "quarter" and not sides.goes_on
    return max(longest, plate) if may_turn or cloth.lies_aside else longest


def _divided(stretches: Sequence[int], longest: int | None) -> list[Run]:
    """Stretches from corner to corner as runs of at most `longest`: joined at corners, else in equal parts."""
    runs: list[Run] = []
    together: list[int] = []
    for stretch in stretches:
        if longest is not None and together and sum(together) + stretch > longest:
            runs.extend(_run(together, longest))
            together = []
        together.append(stretch)
    return [*runs, *_run(together, longest)] if together else runs


def _in_equal_parts(stretches: Sequence[int], longest: int | None) -> list[Run]:
    """Stretches from corner to corner as the fewest runs there can be, all as long, wherever the corners come then."""
    length = sum(stretches)
    count = 1 if longest is None else max(1, -(-length // longest))
    ends = [length * number // count for number in range(count + 1)]
    corners = list(accumulate(stretches[:-1]))
    return [
        Run(end - start, tuple(corner - start for corner in corners if start < corner < end))
        for start, end in pairwise(ends)
    ]


def _run(stretches: list[int], longest: int | None) -> list[Run]:
    length = sum(stretches)
    if longest is None or length <= longest:
        return [Run(length, tuple(accumulate(stretches[:-1])))]
    return _in_equal_parts([length], longest)


def boxing_parts(ring: Ring, bands: Bands, cushion: Cushion, closing: Closing) -> list[tuple[Part, Run]]:
    """The parts of the boxing, each with the run it is: thickness + 2 seams high, and a seam at both its joins.

    Each half of a zip band is (boxing height + 2 allowances at the zip) ÷ 2 high (two independent practitioners).
    """
    seam = cushion.cover.seam
    edges = Edges(seam, seam, seam, seam)
    whole = Part("boxing", "sides", (ring.edge, "thickness"), 0, ring.thickness, edges, turns="freely")
    one = len(bands.plain) == 1
    names = ["boxing"] if one else [f"boxing-{number}" for number, _ in enumerate(bands.plain, start=1)]
    found = [(replace(whole, name=name, width=run.length), run) for name, run in zip(names, bands.plain, strict=True)]
    low = ring.thickness // 2
    for number, run in enumerate(bands.zipped):
        half = replace(whole, width=run.length)
        upper = replace(half, name=f"zip-band-{2 * number + 1}", length=low, opens=("bottom",))
        lower = replace(half, name=f"zip-band-{2 * number + 2}", length=ring.thickness - low, opens=("top",))
        found.append((replace(upper, edges=replace(edges, bottom=closing.allowance)), run))
        found.append((replace(lower, edges=replace(edges, top=closing.allowance)), run))
    return found


def boxing_piece(part: Part, run: Run, cushion: Cushion, job: Job) -> Piece:
    """The piece of a part of the boxing, notched where it meets each corner of a plate; at a zip it meets none."""
    piece = cut_out(part, cushion, job, cushion.quantity)
    across = part.plain[0]
    places = [(part.edges.left + corner) * piece.width // across for corner in run.corners]
    levels = [level for edge, level in (("bottom", 0), ("top", piece.length)) if edge not in part.opens]
    notches = [Mark("notch", "Corner of the plate", tuple((at, level) for level in levels)) for at in places]
    return replace(piece, marks=(*piece.marks, *notches))


def _returns_line(closing: Closing, cushion: Cushion, job: Job) -> list[str]:
    """That a zip band returns less than is usual, where nobody said how far."""
    usual = HABITS[job.units].returns
    if closing.at != "boxing" or cushion.cover.boxing.returns is not None or closing.returns == usual:
        return []
    told, instead = (write_length(nm, job.units) for nm in (closing.returns, usual))
    return [f"The zip band returns {told} round each corner, as far as the side beside it goes, instead of {instead}."]


def ring_lines(
    ring: Ring, bands: Bands, parts: Sequence[tuple[Part, Run]], closing: Closing, cushion: Cushion, job: Job
) -> list[str]:
    """How the boxing comes about, and that it closes."""
    units = job.units
    lines = _returns_line(closing, cushion, job)
    if bands.zipped:
        half = parts[-1][0]
        cut = size(half.plain[0], half.plain[1], units)
        at_zip = write_length(half.edges.top, units)
        lines.append(
            f"Zip band of {write_length(sum(ring.zip_band), units)}: {2 * len(bands.zipped)} strips {cut}, "
            f"half of the boxing and {at_zip} at the zip."
        )
    runs = [write_length(run.length, units) for run in bands.plain]
    seam = write_length(parts[0][0].edges.left, units)
    if runs:
        lines.append(f"{counted(len(runs), 'band', 'bands')} of {listed(runs)}, and {seam} at both ends of each.")
    lines.append(f"{counted(bands.joins, 'join closes', 'joins close')} the ring.")
    every = (*bands.zipped, *bands.plain)
    sewn = " + ".join(bare(run.length, units) for run in every) + " = " if len(every) > 1 else ""
    lines.append(f"Joined, the ring measures {sewn}{write_length(ring.length, units)}, once round the plates.")
    return lines
