"""A length in hand: what of it can be laid on, which of its measures cannot be true, and how that came about."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from plumpline.cloth import Laid, flaw_as_laid, lay_out, lost_before_cutting
from plumpline.figures import counted
from plumpline.geometry import Point
from plumpline.job import NM_PER_CM, Cloth, Motif, Remnant, RemnantFlaw, name_of
from plumpline.layout.strip import Flaw
from plumpline.lengths import NM_PER_INCH, write_length
from plumpline.problems import Problem

# So far apart two readings of one length may be for the tape's sake; then the shorter one counts.
_TAPE_ERRS = {"in": NM_PER_INCH // 2, "cm": NM_PER_CM, "mm": NM_PER_CM}


@dataclass(frozen=True)
class Edges:
    """Both edges of a length in hand and how far its ends run out of square, made whole; nm.

    What lies `between` the two squared lines is a rectangle. `apart` is by how much the measures contradict each
    other.
    """

    left: int
    right: int
    start: int
    end: int
    between: int
    apart: int = 0


def edges_of(remnant: Remnant) -> Edges | None:
    """The edges, each that was not measured found from the others; None where no length was measured.

    With no end measured out of square the shorter edge counts, as if one end were square and the other took it all.
    A length alone is that of the longer edge.
    """
    start, end = remnant.start or 0, remnant.end or 0
    left, right = remnant.left, remnant.right
    if left is not None and right is not None:
        return _of_both(left, right, remnant)
    if left is None and right is None:
        if remnant.length is None:
            return None
        left = remnant.length - max(0, end - start)
    elif left is None:
        assert right is not None
        left = right - end + start
    return _whole(left, left + end - start, start, end)


def _of_both(left: int, right: int, remnant: Remnant) -> Edges:
    start, end = remnant.start, remnant.end
    if start is None and end is None:
        return Edges(left, right, 0, right - left, min(left, right))
    if start is None:
        assert end is not None
        start = left + end - right
    elif end is None:
        end = right + start - left
    apart = abs(left + end - start - right)
    shorter = min(left, right - end + start)
    return replace(_whole(shorter, shorter + end - start, start, end), apart=apart)


def _whole(left: int, right: int, start: int, end: int) -> Edges:
    return Edges(left, right, start, end, min(left, left + end) - max(0, start))


def width_of(cloth: Cloth, remnant: Remnant) -> int:
    """How wide the piece is: its own width, else that of its cloth."""
    return remnant.width or cloth.width or 0


def remnant_problems(cloth: Cloth, units: str) -> list[Problem]:
    """What cannot be true of the length in hand, or is still to be measured; the purchase does without it."""
    remnant = cloth.remnant
    if remnant is None:
        return []
    at = f"{cloth.at}/piece"
    edges = edges_of(remnant)
    if edges is None:
        text = f"Measure both edges of the piece of {name_of(cloth)} in hand, from end to end."
        return [Problem(f"{at}/left", "missing-length", text), *_unfinished_flaws(remnant, at)]
    problems = [*_edge_problems(cloth, remnant, edges, units), *_unfinished_flaws(remnant, at)]
    width = width_of(cloth, remnant)
    if width - 2 * cloth.selvedge <= 0:
        text = f"The selvedges leave nothing of the piece of {name_of(cloth)}: check its width."
        problems.append(Problem(f"{at}/width", "rules-contradict", text))
    return problems or [*_outside(remnant, width, edges.between, at, units)]


def _edge_problems(cloth: Cloth, remnant: Remnant, edges: Edges, units: str) -> Iterator[Problem]:
    at, width = f"{cloth.at}/piece", width_of(cloth, remnant)
    for name, slant in (("start", remnant.start), ("end", remnant.end)):
        if slant is not None and abs(slant) > width:
            text = f"An end that runs {write_length(abs(slant), units)} out of square on a piece "
            text += f"{write_length(width, units)} wide is no end but a side: measure it again."
            yield Problem(f"{at}/slant/{name}", "edges-disagree", text)
            return
    left, right = (None if nm is None else write_length(nm, units) for nm in (remnant.left, remnant.right))
    if edges.apart > _TAPE_ERRS[units]:
        text = f"Edges of {left} and {right} do not go with ends that far out of square: "
        text += f"{write_length(edges.apart, units)} is left over. Measure one of them again."
        yield Problem(f"{at}/right", "edges-disagree", text)
    elif left and right and abs(edges.left - edges.right) > width:
        text = f"Edges of {left} and {right} would make an end steeper than the piece is wide: measure both again."
        yield Problem(f"{at}/right", "edges-disagree", text)
    elif remnant.length is not None and (left or right) and remnant.length != max(edges.left, edges.right):
        text = f"The length says {write_length(remnant.length, units)}, the edges say otherwise: leave the length out."
        yield Problem(f"{at}/length", "edges-disagree", text)
    elif edges.between <= 0:
        text = "Squared at both ends, nothing is left of this piece: measure how far its ends run out of square again."
        yield Problem(f"{at}/slant/{'start' if edges.start > 0 else 'end'}", "edges-disagree", text)


def _unfinished_flaws(remnant: Remnant, at: str) -> Iterator[Problem]:
    for index, flaw in enumerate(remnant.flaws):
        for name, value in _wanted(flaw):
            if value is None:
                text = f"Measure the {_CALLED[name]} of this place, so that no panel comes to lie on it."
                yield Problem(f"{at}/flaws/{index}/{name}", "missing-field", text)


_CALLED = {"across": "distance from the left edge", "along": "distance from the cut end", "width": "width",
           "length": "length"}  # fmt: skip


def _wanted(flaw: RemnantFlaw) -> Iterator[tuple[str, int | str | None]]:
    """What has to be measured of a flaw: of a corner only how wide and how long it is."""
    if flaw.corner is None:
        yield "across", flaw.across
        if flaw.length != "all":
            yield "along", flaw.along
    yield "width", flaw.width
    yield "length", flaw.length


def _outside(remnant: Remnant, width: int, length: int, at: str, units: str) -> Iterator[Problem]:
    for index, flaw in enumerate(remnant.flaws):
        box = _box(flaw, width, length)
        if box.across < 0 or box.across + box.width > width:
            text = f"This place lies outside the piece, which is {write_length(width, units)} wide."
            yield Problem(f"{at}/flaws/{index}/{'width' if flaw.corner else 'across'}", "flaw-outside", text)
        if box.along < 0 or box.along + box.length > length:
            text = f"This place lies outside the piece: {write_length(length, units)} lies between its squared lines."
            yield Problem(f"{at}/flaws/{index}/{'length' if flaw.corner else 'along'}", "flaw-outside", text)


@dataclass(frozen=True)
class _Box:
    """Where a flaw lies: nm from the left edge and from the squared line at the cut end of the unwashed piece."""

    across: int
    along: int
    width: int
    length: int


def _box(flaw: RemnantFlaw, width: int, length: int) -> _Box:
    wide = flaw.width or 0
    long = length if flaw.length == "all" else flaw.length or 0
    if flaw.corner is None:
        return _Box(flaw.across or 0, 0 if flaw.length == "all" else flaw.along or 0, wide, long)
    end, side = flaw.corner.split("-")
    return _Box(0 if side == "left" else width - wide, 0 if end == "start" else length - long, wide, long)


@dataclass(frozen=True)
class Spread:
    """The length in hand on the table, washed if it is: its cloth, `length` nm of it that can be laid on.

    `laid` is as of any cloth, without flaws; `flaws` are those that stay where they are however long the piece were,
    `corners` those that hang on its other end. `outline` is the piece itself with its crooked ends. All from the left
    usable edge and from the squared cut end.
    """

    cloth: Cloth
    remnant: Remnant
    edges: Edges
    length: int
    laid: Laid
    flaws: tuple[Flaw, ...]
    corners: tuple[Flaw, ...]
    creases: tuple[Flaw, ...]
    outline: tuple[Point, ...]

    @property
    def start_known(self) -> bool:
        """Whether it is known where the pattern stands on the piece."""
        return self.remnant.motif_along is not None

    def all_flaws(self, crease: int) -> tuple[Flaw, ...]:
        """Every place to keep clear of, creases running down `crease` nm."""
        return (*self.flaws, *self.corners, *self.lasting(crease)[len(self.flaws) :])

    def lasting(self, crease: int) -> tuple[Flaw, ...]:
        """What would have to be kept clear of on a longer piece too."""
        return (*self.flaws, *(replace(flaw, h=crease) for flaw in self.creases))


def spread_out(cloth: Cloth, remnant: Remnant) -> Spread:
    """The piece, whose measures do not contradict each other, as it lies to be cut."""
    edges = edges_of(remnant)
    assert edges is not None
    width = width_of(cloth, remnant)
    own = replace(cloth, width=width, motifs=_moved_motifs(cloth, remnant), flaws=())
    along = lost_before_cutting(cloth)[1]
    length = int(edges.between * (1 - along)) - cloth.squaring
    there: dict[str, list[Flaw]] = {"flaws": [], "corners": [], "creases": []}
    for flaw in remnant.flaws:
        box = _box(flaw, width, edges.between)
        laid = flaw_as_laid(cloth, box.across, box.along, box.width, box.length)
        if flaw.length == "all":
            there["creases"].append(laid)
        elif flaw.corner is not None:
            at_end = flaw.corner.startswith("end")
            # An end is squared by an unknown share of `squaring`: at worst none of a corner goes with it.
            laid = replace(laid, y=length - laid.h) if at_end else laid
            laid = _slanted(laid, flaw.corner) if flaw.cut == "slanting" else laid
            there["corners" if at_end else "flaws"].append(laid)
        else:
            there["flaws"].append(laid)
    return Spread(
        own, remnant, edges, length, lay_out(own, width),
        tuple(there["flaws"]), tuple(there["corners"]), tuple(there["creases"]), _outline(own, edges),
    )  # fmt: skip


def _slanted(box: Flaw, corner: str) -> Flaw:
    """A corner cut off: the half of the box that holds the corner of the piece."""
    end, side = corner.split("-")
    left, right, bottom, top = box.x, box.x + box.w, box.y, box.y + box.h
    x, y = left if side == "left" else right, bottom if end == "start" else top
    return Flaw.outlined([(x, y), (left + right - x, y), (x, bottom + top - y)])


def _moved_motifs(cloth: Cloth, remnant: Remnant) -> tuple[Motif, ...]:
    """The motifs where they stand on the piece: the first as it was measured, the others with it."""
    if remnant.motif_along is None or not cloth.motifs:
        return cloth.motifs
    by = remnant.motif_along - cloth.motifs[0].along
    return tuple(replace(motif, along=motif.along + by) for motif in cloth.motifs)


def _outline(cloth: Cloth, edges: Edges) -> tuple[Point, ...]:
    """The piece with its crooked ends; half of what squaring takes is drawn at each."""
    across, along = lost_before_cutting(cloth)
    width = cloth.width or 0
    base = max(0, edges.start)
    corners = ((0, -base), (width, edges.start - base), (width, edges.start - base + edges.right),
               (0, edges.left - base))  # fmt: skip
    half = cloth.squaring // 2
    return tuple((int((x - cloth.selvedge) * (1 - across)), int(y * (1 - along)) - half) for x, y in corners)


def spread_working(spread: Spread, units: str) -> Iterator[str]:
    """From the tape to the part of the piece that can be laid on, in sentences."""
    remnant, edges, cloth = spread.remnant, spread.edges, spread.cloth
    yield _edge_line(remnant, edges, units)
    across, along = lost_before_cutting(cloth)
    if along:
        yield f"Washed before cutting, {write_length(int(edges.between * (1 - along)), units)} of it is left."
    if cloth.squaring:
        ends = write_length(cloth.squaring, units)
        yield f"Less {ends} to square the two ends: {write_length(max(spread.length, 0), units)} to lay panels on."
    wide = write_length(cloth.width or 0, units)
    usable = write_length(spread.laid.usable, units)
    if cloth.selvedge or across:
        yield f"{wide} wide, less the selvedges: {usable} usable."
    else:
        yield f"{wide} wide, and all of it is used, edge to edge."
    number = len(remnant.flaws)
    if number:
        yield f"{counted(number, 'place is', 'places are')} kept clear of: no panel touches a flaw or a cut-out corner."


def _edge_line(remnant: Remnant, edges: Edges, units: str) -> str:
    left, right, start, end, between = (
        write_length(nm, units) for nm in (edges.left, edges.right, abs(edges.start), abs(edges.end), edges.between)
    )
    if remnant.start is not None or remnant.end is not None:
        ends = f"the ends run {start} and {end} out of square"
        return f"Edges of {left} and {right}, and {ends}: {between} lies between the two squared lines."
    if edges.left != edges.right:
        return f"Edges of {left} and {right}: the shorter one counts, {between}."
    said = "Both edges measure" if remnant.left and remnant.right else "It is taken to be square and measures"
    return f"{said} {between}."
