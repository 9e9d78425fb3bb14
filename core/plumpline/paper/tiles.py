# How a shape larger than a sheet is divided: tiles that overlap and together cover all of it, empty ones left out.
"""Tiles lie in rows and columns from the upper left; lengths in nm, points in the shape's own coordinates."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from plumpline.figures import letters_for
from plumpline.geometry import Point


@dataclass(frozen=True)
class Tile:
    """One sheet's share of a shape: its row and column, both from 0, and its lower left corner."""

    row: int
    column: int
    corner: Point

    @property
    def row_name(self) -> str:
        """Its row as a letter, so that no name reads as a fraction."""
        return letters_for(self.row + 1)

    @property
    def name(self) -> str:
        """What is printed on it: "B3"."""
        return f"{self.row_name}{self.column + 1}"


@dataclass(frozen=True)
class Window:
    """The part of a sheet a tile is printed in: its size, and how far neighbours overlap."""

    width: int
    height: int
    overlap: int

    @property
    def step(self) -> Point:
        """From one tile to the next, across and up."""
        return self.width - self.overlap, self.height - self.overlap


def tiles(outline: Sequence[Point], window: Window, room: int) -> list[Tile]:
    """The tiles that show some of the area within an outline, row by row from the top, with `room` left around it.

    The rows and columns stand evenly about the shape, so that no sheet has only a sliver of it.
    """
    starts = [
        _starts(min(values) - room, max(values) + room, step, overlap=window.overlap)
        for values, step in zip(zip(*outline, strict=True), window.step, strict=True)
    ]
    columns, rows = starts
    places = [(row, column, (x, y)) for row, y in enumerate(reversed(rows)) for column, x in enumerate(columns)]
    return [Tile(*place) for place in places if _shows(outline, place[2], window)]


def _starts(first: int, last: int, step: int, overlap: int) -> list[int]:
    count = max(1, -(-(last - first - overlap) // step))
    before = (count * step + overlap - (last - first)) // 2
    return [first - before + number * step for number in range(count)]


def _shows(outline: Sequence[Point], corner: Point, window: Window) -> bool:
    """Whether any of the area within an outline lies in a window: a side passes through it, or it is all within."""
    middle = 2 * corner[0] + window.width, 2 * corner[1] + window.height
    sides = list(pairwise([*outline, *outline[:1]]))
    return any(_passes(side, corner, window) for side in sides) or _holds(sides, middle)


def _passes(side: tuple[Point, Point], corner: Point, window: Window) -> bool:
    """Whether a side runs through the open window (Liang and Barsky, ACM Transactions on Graphics 3, 1984)."""
    first, last = Fraction(0), Fraction(1)
    for axis, size in ((0, window.width), (1, window.height)):
        start, run = side[0][axis], side[1][axis] - side[0][axis]
        enters, leaves = corner[axis] - start, corner[axis] + size - start
        if run == 0:
            if not enters < 0 < leaves:
                return False
            continue
        near, far = sorted((Fraction(enters, run), Fraction(leaves, run)))
        first, last = max(first, near), min(last, far)
    return first < last


def _holds(sides: Sequence[tuple[Point, Point]], twice: Point) -> bool:
    """Whether a point, given by twice its coordinates, lies within the sides: a ray meets an odd number of them."""
    x, y = twice
    odd = False
    for (ax, ay), (bx, by) in sides:
        if (2 * ay > y) != (2 * by > y):
            rise = by - ay
            met = (y - 2 * ay) * (bx - ax) - (x - 2 * ax) * rise
            odd ^= met * rise > 0
    return odd
