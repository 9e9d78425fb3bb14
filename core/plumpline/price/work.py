"""The work of a job, piece by piece: how much of each the covers take, how many minutes, and what these cost.

The pieces of work are those that workrooms price by (common practice). The minutes stand in the maker's own rate card;
where one is missing an example is taken and said to be one.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from plumpline.cushions.made import Made
from plumpline.cushions.rims import edged_rims, rims_of
from plumpline.fields import OPERATIONS
from plumpline.figures import counted
from plumpline.haberdashery import overlocked_length
from plumpline.job import Job
from plumpline.lengths import UNITS, decimal_text, round_half_up
from plumpline.money import share, write_money
from plumpline.price.line import Line, Marked, in_decimals, unpriced
from plumpline.price.quoted import Quoted, Timed


@dataclass(frozen=True)
class Bench:
    """What there is to work on: covers, the job they are of, and the length bought of each cloth, in nm."""

    covers: Sequence[Made]
    job: Job
    bought: dict[str, int]


def _covers(bench: Bench) -> int:
    count = 0
    for cover in bench.covers:
        count += cover.cushion.quantity
    return count


def _for_each(bench: Bench, number: Callable[[Made], int]) -> int:
    """A number of each cover, for all of them together."""
    total = 0
    for cover in bench.covers:
        total += number(cover) * cover.cushion.quantity
    return total


def _panels(bench: Bench, counts: Callable[[str], bool]) -> int:
    """The panels of all covers whose pattern counts."""
    total = 0
    for cover in bench.covers:
        for piece in cover.pieces:
            total += piece.count if counts(piece.face.pattern) else 0
    return total


def _cloth(bench: Bench) -> int:
    total = 0
    for length in bench.bought.values():
        total += length
    return total


def _around(cover: Made, *kinds: str) -> int:
    """Along the edges of one cover that are made in one of these kinds."""
    rims = edged_rims(cover) if cover.cushion.cover.edge.kind in kinds else ()
    return len(rims) * rims[0].length if rims else 0


def _piping(bench: Bench) -> int:
    total = 0
    for cover in bench.covers:
        for strips in cover.strips:
            total += strips.length * strips.count if strips.part == "piping" else 0
    return total


def _seams(cover: Made) -> int:
    total = 0
    for sewn in cover.sewn:
        total += sewn.length if sewn.what == "seam" else 0
    return total


def _corners(cover: Made) -> int:
    total = 0
    for rim in rims_of(cover):
        total += len(rim.corners)
    return total


@dataclass(frozen=True)
class Operation:
    """A piece of work: in words, the word for one and for several, and how much there is of it, else its length.

    `per_cover` tells the work on the covers themselves from what a job takes but once.
    """

    text: str
    words: tuple[str, str]
    amount: Callable[[Bench], int]
    per_cover: bool = True


_BY_LENGTH = ("", "")
_JOB, _CLOTH = ("job", "jobs"), ("cloth", "cloths")
_PANEL, _COVER = ("panel", "panels"), ("cover", "covers")
_CLOSED = ("zip", "open")

WORK: dict[str, Operation] = {
    "consult": Operation("Consult and measure", _JOB, lambda _: 1, per_cover=False),
    "order": Operation("Order and check the cloth", _CLOTH, lambda bench: len(bench.bought), per_cover=False),
    "press_cloth": Operation("Press the cloth", _BY_LENGTH, _cloth, per_cover=False),
    "square": Operation("Square the ends", _CLOTH, lambda bench: len(bench.bought), per_cover=False),
    "place": Operation("Place the pattern", _PANEL, lambda bench: _panels(bench, lambda pattern: pattern != "free")),
    "cut": Operation("Cut out", _PANEL, lambda bench: _panels(bench, lambda _: True)),
    "overlock": Operation("Overlock", _BY_LENGTH, lambda bench: overlocked_length(bench.covers, bench.job)),
    "make_piping": Operation("Make the piping", _BY_LENGTH, _piping),
    "attach_piping": Operation(
        "Attach piping or trim",
        _BY_LENGTH,
        lambda bench: _for_each(bench, lambda cover: _around(cover, "piped", "trimmed")),
    ),
    "frill": Operation(
        "Gather and attach the frill",
        _BY_LENGTH,
        lambda bench: _for_each(bench, lambda cover: _around(cover, "frilled")),
    ),
    "zip": Operation("Put in zips", ("zip", "zips"), lambda bench: _for_each(bench, lambda cover: len(cover.zips))),
    "close": Operation(
        "Make the closures",
        ("closure", "closures"),
        lambda bench: _for_each(bench, lambda cover: int(cover.closing.kind not in _CLOSED)),
    ),
    "make_up": Operation("Make up", _BY_LENGTH, lambda bench: _for_each(bench, _seams)),
    "corners": Operation("Trim and turn corners", ("corner", "corners"), lambda bench: _for_each(bench, _corners)),
    "fill": Operation("Fill", _COVER, _covers),
    "press": Operation("Press what is made", _COVER, _covers),
    "label": Operation("Sew in labels", ("label", "labels"), _covers),
    "pack": Operation("Pack", _COVER, _covers),
    "deliver": Operation("Deliver", _JOB, lambda _: 1, per_cover=False),
    "fit": Operation("Fit at the client's", _COVER, _covers),
}

# Examples of our own to begin from: minutes for one, by the yard where it goes by the length. No maker's figures.
EXAMPLES: dict[str, Timed] = {
    name: Timed(Fraction(minutes), "yd" if WORK[name].words == _BY_LENGTH else None)
    for name, minutes in (
        ("consult", "30"),
        ("order", "15"),
        ("press_cloth", "2"),
        ("square", "5"),
        ("place", "4"),
        ("cut", "3"),
        ("overlock", "2"),
        ("make_piping", "6"),
        ("attach_piping", "8"),
        ("frill", "15"),
        ("zip", "15"),
        ("close", "10"),
        ("make_up", "6"),
        ("corners", "1"),
        ("fill", "3"),
        ("press", "3"),
        ("label", "2"),
        ("pack", "3"),
        ("deliver", "0"),
        ("fit", "0"),
    )
}


@dataclass(frozen=True)
class Done:
    """A piece of work that the job has: how much of it, and the whole minutes, rounded once and half up."""

    name: str
    amount: int
    timed: Timed
    example: bool

    @property
    def exact(self) -> Fraction:
        """Its minutes before they are rounded."""
        per = UNITS[self.timed.per] if self.timed.per else 1
        return self.timed.minutes * Fraction(self.amount, per)

    @property
    def minutes(self) -> int:
        """Whole minutes."""
        return round_half_up(self.exact)

    def told(self) -> str:
        """ "12 panels × 3 min", "≈ 14 3/8 yd × 6 min a yd"."""
        each = decimal_text(self.timed.minutes)
        if self.timed.per:
            return f"{in_decimals(self.amount, self.timed.per)} × {each} min for each {self.timed.per}"
        return f"{counted(self.amount, *WORK[self.name].words)} × {each} min"


def work_of(bench: Bench, quoted: Quoted) -> list[Done]:
    """All work that these covers take, in the order of the bench."""
    found = []
    for name in (entry.name for entry in OPERATIONS):
        amount, timed = WORK[name].amount(bench), quoted.minutes.get(name)
        done = Done(name, amount, timed or EXAMPLES[name], timed is None)
        found += [done] if done.exact else []
    return found


def work_lines(done: Sequence[Done], quoted: Quoted) -> Iterator[Line]:
    """A line for each piece of work, then what the workroom costs in those hours."""
    for one in done:
        yield _work_line(one, quoted)
    if quoted.overhead is not None:
        yield _overhead_line(minutes_of(done), quoted)


def minutes_of(done: Sequence[Done]) -> int:
    """All minutes together."""
    total = 0
    for one in done:
        total += one.minutes
    return total


def by_the_hour(minutes: int | Fraction, an_hour: int) -> int:
    """What so many minutes cost, half up to a minor unit."""
    return share(an_hour, Fraction(minutes) / 60)


def _work_line(done: Done, quoted: Quoted) -> Line:
    code, text = f"work:{done.name}", WORK[done.name].text
    example = " (an example: put in your own)" if done.example else ""
    told, minutes = f"{done.told()}{example} = {done.minutes} min", str(done.minutes)
    if quoted.hour is None:
        why = f"{told}. What an hour costs is not known yet."
        return replace(unpriced(code, "making", text, (minutes, "min"), why, "/quote/rates/hour"), example=done.example)
    hour = Marked(quoted.hour, quoted.markup.work)
    amount = by_the_hour(done.minutes, hour.price)
    return Line(
        code=code,
        group="making",
        text=text,
        quantity=minutes,
        unit="min",
        price=hour.price,
        per="h",
        amount=amount,
        costs=by_the_hour(done.minutes, hour.paid),
        working=f"{told}, at {hour.working('an hour', quoted.currency)}: {write_money(amount, quoted.currency)}.",
        at=f"/quote/operations/{done.name}/minutes",
        example=done.example,
        own=True,
    )


def _overhead_line(minutes: int, quoted: Quoted) -> Line:
    rate = Marked(quoted.overhead or 0, quoted.markup.work)
    amount = by_the_hour(minutes, rate.price)
    told = f"{minutes} min of work, at {rate.working('an hour', quoted.currency)}"
    return Line(
        code="overhead",
        group="making",
        text="Workroom costs",
        quantity=str(minutes),
        unit="min",
        price=rate.price,
        per="h",
        amount=amount,
        costs=by_the_hour(minutes, rate.paid),
        working=f"{told}: {write_money(amount, quoted.currency)}.",
        at="/quote/rates/overhead",
    )
