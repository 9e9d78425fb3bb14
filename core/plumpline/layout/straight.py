# Lays panels so that every cut runs from edge to edge: bands across, columns in a band, stacks in a column.
"""Three-stage guillotine layouts (Gilmore and Gomory, *Operations Research* 13 (1965) 94-120) by first fit.

Items are laid in a given order: into a stack that still has room, else as a new column of a band, else as a new band
(next-fit and first-fit decreasing height: Coffman, Garey, Johnson and Tarjan, *SIAM J. Computing* 9 (1980) 808-826).
The last band may still grow where that comes out shorter than starting another, which lets staggered columns of a
half-drop share a band. One pass costs O(n·b) for n panels and b bands that still have room. Orders and the least
height of the first band are improved by local search; of equal lengths the plan with fewer distinct cut lines wins,
then the one with the larger single offcut.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from random import Random

from plumpline.layout.budget import Slices
from plumpline.layout.choices import Choice
from plumpline.layout.desk import Desk, Item, Spot, at_residue, rise
from plumpline.layout.places import Variant
from plumpline.layout.search import Search, single_items, start_orders
from plumpline.layout.strip import Cut

OPEN_BANDS = 24


@dataclass
class Column:
    """A column of a band, as wide as its first panel, filled from the cut end up to ``top``."""

    x: int
    w: int
    top: int
    spots: list[Spot]


@dataclass
class Band:
    """A band across the cloth: columns from the left, all within [y, top)."""

    y: int
    top: int
    columns: list[Column] = field(default_factory=list)

    @property
    def right(self) -> int:
        """Where the next column may start."""
        return self.columns[-1].x + self.columns[-1].w if self.columns else 0

    @property
    def reached(self) -> int:
        """How far the panels in it reach."""
        return max(column.top for column in self.columns)


@dataclass(frozen=True)
class Bands:
    """A straight layout and what it is judged by."""

    desk: Desk
    bands: tuple[Band, ...]

    @property
    def spots(self) -> tuple[Spot, ...]:
        """All spots, band by band."""
        return tuple(spot for band in self.bands for column in band.columns for spot in column.spots)

    @property
    def length(self) -> int:
        """The length of cloth it takes."""
        return self.bands[-1].reached - self.desk.strip.gap

    def rank(self) -> tuple[int, int, int]:
        """Length, number of distinct cut lines, and minus the area of the largest single offcut."""
        lines = {(cut.kind, cut.y if cut.kind == "across" else cut.x) for cut in self.cuts()}
        return self.length, len(lines), -self.largest_offcut

    @property
    def largest_offcut(self) -> int:
        """The area of the largest rectangle left beside any bands in a row, or above one column."""
        width, gap = self.desk.strip.width, self.desk.strip.gap
        ends = [band.reached for band in self.bands]
        beside = _largest_in_a_row(
            [(band.y, end, max(width - band.right + gap, 0)) for band, end in zip(self.bands, ends, strict=True)]
        )
        above = (
            column.w * (end - column.top)
            for band, end in zip(self.bands, ends, strict=True)
            for column in band.columns
        )
        return max(beside, *above)

    def cuts(self) -> tuple[Cut, ...]:
        """Every cut in order: a band off the roll, its columns apart, then the panels of each column."""
        made = [cut for band in self.bands for cut in self._cuts_of(band)]
        return tuple(Cut(number, c.kind, c.x, c.y, c.length) for number, c in enumerate(made, start=1))

    def _cuts_of(self, band: Band) -> Iterator[Cut]:
        width, gap = self.desk.strip.width, self.desk.strip.gap
        bottom = min(column.spots[0][3] for column in band.columns)
        top = band.reached - gap
        if bottom > band.y or (band.y and gap):
            yield Cut(0, "across", 0, bottom, width)
        yield Cut(0, "across", 0, top, width)
        edge = 0
        for column in band.columns:
            if column.x > edge:
                yield Cut(0, "along", column.x, bottom, top - bottom)
            edge = column.x + column.w - gap
            if edge < width:
                yield Cut(0, "along", edge, bottom, top - bottom)
        for column in band.columns:
            yield from self._cuts_in(column, bottom, top)

    def _cuts_in(self, column: Column, line: int, top: int) -> Iterator[Cut]:
        gap = self.desk.strip.gap
        whole = column.w - gap
        for kind, variant, x, y in column.spots:
            way = self.desk.kinds[kind].variants[variant]
            end = y + way.h - gap
            if y > line:
                yield Cut(0, "across", column.x, y, whole)
            if end < top:
                yield Cut(0, "across", column.x, end, whole)
            if x > column.x:
                yield Cut(0, "along", x, y, way.h - gap)
            if x + way.w < column.x + column.w:
                yield Cut(0, "along", x + way.w - gap, y, way.h - gap)
            line = end


def _largest_in_a_row(bars: Sequence[tuple[int, int, int]]) -> int:
    """The largest rectangle within bars (start, end, width) that follow one another, each starting at its left edge.

    Found as the largest rectangle under a histogram is: a bar stays open while those behind it are wider and is
    measured once, when a narrower one comes, so the cost is O(b) for b bars.
    """
    largest = reached = 0
    still_open: list[tuple[int, int]] = []
    for bar_start, bar_end, spare in (*bars, (0, 0, 0)):
        start = bar_start
        while still_open and still_open[-1][1] >= spare:
            start, wider = still_open.pop()
            largest = max(largest, wider * (reached - start))
        still_open.append((start, spare))
        reached = bar_end
    return largest


def straight_bands(desk: Desk, order: Sequence[Item], least: int) -> Bands:
    """Lay items in order; the first band is open up to ``least`` from the start."""
    bands: list[Band] = []
    for kind, wanted in order:
        variants = desk.kinds[kind].variants
        ways = range(len(variants)) if wanted < 0 else (wanted,)
        if not any(_into_band(desk, band, kind, ways) for band in bands[-OPEN_BANDS:]):
            _behind(desk, bands, kind, ways, least)
    return Bands(desk, tuple(bands))


def _into_band(desk: Desk, band: Band, kind: int, ways: Sequence[int]) -> bool:
    """Put a panel into a stack or a new column of a band, if it fits below the band's top."""
    for number in ways:
        way = desk.kinds[kind].variants[number]
        if band.y + way.h > band.top:
            continue
        for column in band.columns:
            if column.w < way.w or column.top + way.h > band.top:
                continue
            place = _place(desk, way, column.x, column.x + column.w, column.top)
            if place is not None and place[1] + way.h <= band.top:
                column.spots.append((kind, number, *place))
                column.top = place[1] + way.h
                return True
        place = _place(desk, way, band.right, desk.width, band.y)
        if place is not None and place[1] + way.h <= band.top:
            band.columns.append(Column(place[0], way.w, place[1] + way.h, [(kind, number, *place)]))
            return True
    return False


def _place(desk: Desk, way: Variant, left: int, right: int, y: int) -> tuple[int, int] | None:
    """The first x from ``left`` at which the way ends by ``right``, and its lowest row from ``y`` on."""
    flaws, gap = desk.strip.flaws, desk.strip.gap
    if way.columns is None:
        return (left, rise(flaws, gap, way, left, y)) if left + way.w <= right else None
    index = bisect_left(way.columns, (left, -1))
    if index == len(way.columns) or way.columns[index][0] + way.w > right:
        return None
    x, residue = way.columns[index]
    return x, rise(flaws, gap, at_residue(way, residue), x, y)


def _behind(desk: Desk, bands: list[Band], kind: int, ways: Sequence[int], least: int) -> None:
    """Put a panel behind all bands: as a new band, or by letting the last one grow if that ends sooner."""
    start = bands[-1].reached if bands else 0
    ends: list[tuple[int, int, int, int, int]] = []
    for number in ways:
        way = desk.kinds[kind].variants[number]
        for grows in range(2 if bands else 1):
            place = _lowest(desk, way, bands[-1].right, bands[-1].y) if grows else _lowest(desk, way, 0, start)
            if place is not None:
                ends.append((place[1] + way.h, grows, number, *place))
    end, grows, number, x, y = min(ends)
    column = Column(x, desk.kinds[kind].variants[number].w, end, [(kind, number, x, y)])
    if grows:
        bands[-1].columns.append(column)
        bands[-1].top = max(bands[-1].top, end)
        return
    if bands:
        bands[-1].top = start
    bands.append(Band(start, max(end, 0 if bands else least), [column]))


def _lowest(desk: Desk, way: Variant, left: int, y: int) -> tuple[int, int] | None:
    """The column from ``left`` on in which the way lies lowest, leftmost among equals."""
    if way.columns is None:
        return _place(desk, way, left, desk.width, y)
    flaws, gap = desk.strip.flaws, desk.strip.gap
    rows = [(rise(flaws, gap, at_residue(way, r), x, y), x) for x, r in way.columns if x >= left]
    return min(rows)[::-1] if rows else None


@dataclass
class StraightSearch:
    """Local search over orders and the least height of the first band."""

    search: Search
    random: Random
    found: Bands | None = None
    rank: tuple[int, int, int] = (0, 0, 0)

    def run(self, choices: Sequence[Choice]) -> Slices[Bands]:
        """The best straight layout within the budget; always at least one."""
        starts = []
        for choice in choices:
            starts.append(self._start(choice))
            yield
        for _, choice, order, least in sorted(starts, key=lambda s: s[0])[:2]:
            yield from self._climb(choice, order, least)
        assert self.found is not None
        return self.found

    def _start(self, choice: Choice) -> tuple[tuple[int, int, int], Choice, list[Item], int]:
        desk = self.search.desk(choice)
        tried: list[tuple[tuple[int, int, int], Choice, list[Item], int]] = []
        for order in start_orders(desk):
            for least in self._heights(desk):
                if not tried or not self._over:
                    items = single_items(desk, order)
                    tried.append((self._try(desk, items, least), choice, items, least))
        return min(tried, key=lambda t: t[0])

    def _heights(self, desk: Desk) -> list[int]:
        """Least heights of the first band worth trying: none, or so many of one panel behind each other."""
        lengths = sorted({v.h for kind in desk.kinds for v in kind.variants})
        count = sum(kind.qty for kind in desk.kinds)
        return [0, *dict.fromkeys(h * times for times in (2, 3, 4, count) for h in lengths)][:16]

    @property
    def _over(self) -> bool:
        best = self.search.best
        reached = self.found is not None and best is not None and self.found.length <= best.at_least
        return reached or self.search.budget.over

    def _try(self, desk: Desk, items: list[Item], least: int) -> tuple[int, int, int]:
        bands = straight_bands(desk, items, least)
        self.search.budget.spend(20 + 14 * len(items))
        if self.found is not None and bands.length > self.rank[0]:
            return bands.length, 0, 0
        self.search.budget.spend(5 * len(items))
        rank = bands.rank()
        if self.found is None or rank < self.rank:
            self.found, self.rank = bands, rank
        return rank

    def _climb(self, choice: Choice, order: list[Item], least: int) -> Slices[None]:
        desk = self.search.desk(choice)
        heights = self._heights(desk)
        rank = self._try(desk, order, least)
        for _ in range(40 * len(order) + 400):
            if self._over:
                return
            items, height = self._changed(desk, order, least, heights)
            new = self._try(desk, items, height)
            if new <= rank:
                order, least, rank = items, height, new
            if self.search.budget.slice_done():
                yield

    def _changed(
        self, desk: Desk, order: list[Item], least: int, heights: list[int]
    ) -> tuple[list[Item], int]:
        items, chance = list(order), self.random.random()
        i, j = int(self.random.random() * len(items)), int(self.random.random() * len(items))
        variants = len(desk.kinds[items[i][0]].variants)
        if chance < 0.1:
            return items, heights[int(self.random.random() * len(heights))]
        if chance < 0.25 and variants > 1:
            items[i] = (items[i][0], int(self.random.random() * (variants + 1)) - 1)
        elif chance < 0.6:
            items[i], items[j] = items[j], items[i]
        else:
            items.insert(j, items.pop(i))
        return items, least
