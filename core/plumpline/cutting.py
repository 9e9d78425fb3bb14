"""The straight plan as it is cut: all full-width cuts first, then each row by itself, equal rows told once."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace

from plumpline.figures import bare, counted, listed, size
from plumpline.layout.strip import Cut, PipingCut
from plumpline.lengths import write_length
from plumpline.pieces import Strips


@dataclass(frozen=True)
class Step:
    """One step at the table: what it is about, and where to cut, in words."""

    title: str
    text: str


Shape = tuple[tuple[str, int, int, int], ...]


def in_cutting_order(cuts: tuple[Cut, ...], usable: int) -> list[Cut]:
    """The cuts numbered anew: those over the full width from the cut end on, then the others row by row.

    Cutting all rows off first is how it is done at the table: a row is then small enough to turn and to fold.
    """
    full = sorted((cut for cut in cuts if _is_full(cut, usable)), key=lambda cut: cut.y)
    rest = [cut for cut in cuts if not _is_full(cut, usable)]
    return [replace(cut, number=number) for number, cut in enumerate(full + rest, start=1)]


def _is_full(cut: Cut, usable: int) -> bool:
    return cut.kind == "across" and cut.length == usable


def steps(cuts: list[Cut], usable: int, units: str) -> list[Step]:
    """The cuts as steps: the full-width ones together, then the rows, those cut alike told once."""
    full = [cut for cut in cuts if _is_full(cut, usable)]
    if not full:
        return []
    title = _numbered("Cut", [cut.number for cut in full])
    places = _places([cut.y for cut in full], units)
    first = Step(title, f"Square the end, then across the full width at {places}.")
    return [first, *_row_steps(cuts, full, units)]


def _row_steps(cuts: list[Cut], full: list[Cut], units: str) -> list[Step]:
    alike: dict[Shape, list[int]] = {}
    floor = 0
    for number, end in enumerate(full, start=1):
        shape = _shape(cuts, floor, end.y)
        if shape:
            alike.setdefault(shape, []).append(number)
        floor = end.y
    if len(alike) == 1 and len(full) > 1 and len(next(iter(alike.values()))) == len(full):
        return _steps_of("Each row", next(iter(alike)), units)
    return [step for shape, numbers in alike.items() for step in _steps_of(_numbered("Row", numbers), shape, units)]


def _shape(cuts: list[Cut], floor: int, end: int) -> Shape:
    """The cuts within one row, counted from its own lower edge: (kind, x, y, length)."""
    inside = [cut for cut in cuts if floor <= cut.y < end and not (cut.kind == "across" and cut.y == floor)]
    return tuple((cut.kind, cut.x, cut.y - floor, cut.length) for cut in inside)


def _numbered(word: str, numbers: list[int]) -> str:
    """ "Row 2", "Rows 1 and 3", "Rows 1 to 6"."""
    if len(numbers) == 1:
        return f"{word} {numbers[0]}"
    if len(numbers) > 2 and numbers[-1] - numbers[0] == len(numbers) - 1:
        return f"{word}s {numbers[0]} to {numbers[-1]}"
    return f"{word}s {listed([str(number) for number in numbers])}"


def _places(places: list[int], units: str) -> str:
    """Several places with the unit once: "18, 36 and 54 in"."""
    return listed([bare(place, units) for place in places[:-1]] + [write_length(places[-1], units)])


def _span(start: int, end: int, units: str) -> str:
    return f"{bare(start, units)} to {write_length(end, units)}"


def _steps_of(rows: str, shape: Shape, units: str) -> list[Step]:
    """One row: along from edge to edge of it, then the strips across, then what is left along; from its lower edge."""
    whole = max((length for kind, _, y, length in shape if kind == "along" and not y), default=0)
    along = [x for kind, x, y, length in shape if kind == "along" and (y, length) == (0, whole)]
    strips: dict[tuple[int, int], list[int]] = {}
    left: dict[tuple[int, int], list[int]] = {}
    for kind, x, y, length in shape:
        if kind == "across":
            strips.setdefault((x, x + length), []).append(y)
        elif (y, length) != (0, whole):
            left.setdefault((y, y + length), []).append(x)
    found = [Step(rows, f"Along at {_places(along, units)}.")] if along else []
    for (start, end), ys in strips.items():
        found.append(Step(f"{rows}, strip {_span(start, end, units)}", f"Across at {_places(ys, units)} of the row."))
    for (low, high), xs in _cut_alike(left):
        found.append(Step(f"{rows}, part {_span(low, high, units)} up", f"Along at {_places(xs, units)}."))
    return found


def _cut_alike(parts: dict[tuple[int, int], list[int]]) -> list[tuple[tuple[int, int], list[int]]]:
    """Parts that follow one another and are cut at the same places told as one."""
    found: list[tuple[tuple[int, int], list[int]]] = []
    for (low, high), xs in parts.items():
        if found and found[-1][1] == xs and found[-1][0][1] == low:
            low = found.pop()[0][0]
        found.append(((low, high), xs))
    return found


# So many kinds of ring are told one by one, if each is of so few strips.
_MOST_TOLD = 4


def strip_steps(strips: Sequence[Strips], letters: Sequence[str], cuts: Sequence[PipingCut], units: str) -> list[Step]:
    """What is cut from what the panels leave, and what each ring is joined from; `letters` tell the covers apart."""
    return [
        Step(
            f"{letter} {one.part}" if letter else f"{one.part[0].upper()}{one.part[1:]}",
            " ".join([_taken(one, cut, units), *_joined(cut, units)]),
        )
        for one, letter, cut in zip(strips, letters, cuts, strict=True)
    ]


def _taken(strips: Strips, cut: PipingCut, units: str) -> str:
    width = write_length(strips.width, units)
    if strips.bias:
        blocks = Counter(size(piece.w, piece.h, units) for piece in cut.pieces)
        told = listed([f"{number} of {block}" if number > 1 else block for block, number in blocks.items()])
        number = counted(sum(len(piece.lengths) for piece in cut.pieces), "strip", "strips")
        these = "this" if len(cut.pieces) == 1 else "these"
        return f"Cut {told}, as drawn, and {these} on the bias into {number} {width} wide."
    lengths = Counter(write_length(piece.lengths[0], units) for piece in cut.pieces)
    told = listed([f"{number} of {length}" for length, number in lengths.items()])
    return f"Cut strips {width} wide, as drawn: {told}."


def _joined(cut: PipingCut, units: str) -> list[str]:
    """Each kind of ring once: "Join 48 + 26 in for each of 2 rings."."""
    rings = Counter(cut.rings)
    if len(rings) > _MOST_TOLD or max(len(ring) for ring in rings) > _MOST_TOLD:
        return [f"Join them to {counted(len(cut.rings), 'ring', 'rings')}, with {counted(cut.joins, 'join', 'joins')}."]
    return [_told(ring, number, units) for ring, number in rings.items()]


def _told(ring: tuple[int, ...], number: int, units: str) -> str:
    lengths = " + ".join([*(bare(length, units) for length in ring[:-1]), write_length(ring[-1], units)])
    return f"{'Join' if len(ring) > 1 else 'Take'} {lengths} for {counted(number, 'ring', 'rings')}."
