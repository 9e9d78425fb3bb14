"""What is charged beside, once it is switched on: for piping, matching, velvet, contrast, and for being quick.

That such things are charged as extras is common practice; how much is the maker's own: an amount for each cover that
the extra is for, a part of the work on those covers, or both.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from fractions import Fraction

from plumpline.cushions.made import Made
from plumpline.figures import counted
from plumpline.money import share, write_money
from plumpline.price.line import Line, Marked, exact_percent, times, unpriced
from plumpline.price.quoted import Extra, Quoted
from plumpline.price.work import WORK, Bench, by_the_hour, minutes_of, work_of
from plumpline.problems import Problem


def _is_piped(cover: Made) -> bool:
    return cover.cushion.cover.edge.kind == "piped"


def _is_matched(cover: Made) -> bool:
    return any(face.pattern != "free" for _, face in cover.cushion.cover.faces)


def _has_contrast(cover: Made) -> bool:
    """Whether more than one cloth shows: faces and their parts, piping and frills, but no layer."""
    shown = {face.cloth for at, face in cover.cushion.cover.faces if not at.startswith("layers/")}
    edge = cover.cushion.cover.edge
    return len(shown | ({edge.cloth} if edge.is_of_strips else set())) > 1


def _any(_: Made) -> bool:
    return True


# What an extra is called, which covers it is for, and what is to be said where there is none.
KINDS: dict[str, tuple[str, Callable[[Made], bool], str]] = {
    "piping": ("Extra for piping", _is_piped, "No cover of this job is piped."),
    "matching": ("Extra for matching", _is_matched, "No cover of this job has its pattern matched or centred."),
    "velvet": ("Extra for velvet", _any, ""),
    "contrast": ("Extra for contrast", _has_contrast, "Every cover of this job is of one cloth."),
    "rush": ("Rush", _any, ""),
}


def extra_lines(bench: Bench, making: Sequence[Line], quoted: Quoted) -> Iterator[Line]:
    """The lines of all extras that are on; `making` is all the work with its overhead, which rush is a part of."""
    for extra in quoted.extras:
        concerned = [cover for cover in bench.covers if KINDS[extra.name][1](cover)]
        if concerned:
            yield from _lines(extra, replace(bench, covers=concerned), bench, making, quoted)


def useless_extras(bench: Bench, quoted: Quoted) -> Iterator[Problem]:
    """Extras that are on although no cover is concerned."""
    for extra in quoted.extras:
        _, concerns, why = KINDS[extra.name]
        if not any(concerns(cover) for cover in bench.covers):
            yield Problem(f"/quote/extras/{extra.name}/on", "no-such-cover", f"{why} This extra charges nothing.")


def _lines(extra: Extra, part: Bench, whole: Bench, making: Sequence[Line], quoted: Quoted) -> Iterator[Line]:
    text, at = KINDS[extra.name][0], f"/quote/extras/{extra.name}"
    covers = WORK["label"].amount(part)
    if extra.amount is None and extra.rate is None:
        why = f"Switched on for {counted(covers, 'cover', 'covers')}. What it costs is not known yet."
        yield unpriced(f"extra:{extra.name}", "making", text, (str(covers), ""), why, f"{at}/amount")
    if extra.amount is not None:
        yield _for_each(extra.name, covers, extra.amount, quoted)
    if extra.rate is not None:
        is_whole = len(part.covers) == len(whole.covers)
        base = _all_work(making) if is_whole else _work_on(part, quoted)
        told = "all the work" if is_whole else f"the work on {counted(covers, 'cover', 'covers')}"
        yield _of_the_work(extra.name, extra.rate, base, told, quoted)


def _all_work(making: Sequence[Line]) -> int | None:
    """All work and overhead, as the lines have it; None while it has no price."""
    total = 0
    for line in making:
        if line.amount is None:
            return None
        total += line.amount
    return total


def _work_on(part: Bench, quoted: Quoted) -> int | None:
    """The work on some of the covers with its overhead, without what the job takes but once."""
    if quoted.hour is None:
        return None
    minutes = minutes_of([done for done in work_of(part, quoted) if WORK[done.name].per_cover])
    hour, overhead = (Marked(paid, quoted.markup.work).price for paid in (quoted.hour, quoted.overhead or 0))
    return by_the_hour(minutes, hour + overhead)


def _for_each(name: str, covers: int, each: int, quoted: Quoted) -> Line:
    amount = each * covers
    return Line(
        code=f"extra:{name}",
        group="making",
        text=KINDS[name][0],
        quantity=str(covers),
        unit="",
        price=each,
        per="each",
        amount=amount,
        costs=0,
        working=f"{write_money(each, quoted.currency)} for each cover it is for; "
        f"{times(counted(covers, 'cover', 'covers'), each, amount, quoted.currency)}.",
        at=f"/quote/extras/{name}/amount",
    )


def _of_the_work(name: str, rate: Fraction, base: int | None, told: str, quoted: Quoted) -> Line:
    code, text, at = f"extra:{name}:rate", KINDS[name][0], f"/quote/extras/{name}/rate"
    part = exact_percent(rate)
    quantity = part.removesuffix(" %")
    if base is None:
        why = f"{part} of {told}, which has no price yet."
        return unpriced(code, "making", text, (quantity, "%"), why, "/quote/rates/hour")
    amount = share(base, rate)
    return Line(
        code=code,
        group="making",
        text=text,
        quantity=quantity,
        unit="%",
        price=base,
        per="whole",
        amount=amount,
        costs=0,
        working=f"{part} of {told}: {times(part, base, amount, quoted.currency)}.",
        at=at,
    )
