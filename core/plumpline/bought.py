"""What was cut in the shop and paid, beside the plan: is it enough, of one batch, and approved before it was cut?"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from plumpline.cloth import most_laid, narrowest_width, to_buy
from plumpline.dates import date_in_words
from plumpline.figures import figure, listed
from plumpline.job import Bought, Cloth, Job, Price, name_of
from plumpline.layout.strip import Plan
from plumpline.layplan import ClothPlan
from plumpline.lengths import write_length
from plumpline.money import cost, write_money
from plumpline.problems import Problem

Json = dict[str, Any]


@dataclass(frozen=True)
class Verdict:
    """Whether what was cut is enough (None: not as planned), what is left or missing in nm, and a sentence."""

    enough: bool | None
    text: str
    spare: int | None = None
    short_by: int | None = None


def bought_answer(planned: ClothPlan, job: Job) -> Json | None:
    """The `bought` of a cloth's answer; None where no length is recorded."""
    cloth, units = planned.cloth, job.units
    if not cloth.bought:
        return None
    verdict = _verdict(planned, units)
    cut = sum(one.shorter or 0 for one in cloth.bought)
    return {
        "enough": verdict.enough if verdict else None,
        "spare": None if verdict is None or verdict.spare is None else figure(verdict.spare, units),
        "short_by": None if verdict is None or verdict.short_by is None else figure(verdict.short_by, units),
        "text": verdict.text if verdict else "Say how long what was cut is.",
        "length": figure(cut, units),
        "needed": figure(planned.needed, units),
        "lengths": [{"text": length_text(one, units)} for one in cloth.bought],
        "paid_text": _paid_text(planned),
        "approved_text": approved_text(cloth),
    }


def length_text(one: Bought, units: str) -> str:
    """A length that was cut, in a line: "110 in, 10 July 2026, batch 7, roll 12, cut by Ada"."""
    named = (("batch", one.batch), ("roll", one.roll), ("cut by", one.cut_by))
    parts = [
        write_length(one.shorter, units) if one.shorter else "",
        date_in_words(one.on) if one.on else "",
        *(f"{name} {said}" for name, said in named if said),
    ]
    return ", ".join(filter(None, parts)) or "not measured yet"


def approved_text(cloth: Cloth) -> str:
    """Whether the client has approved that the cloth is cut, and when."""
    return f"Cutting approved {date_in_words(cloth.approved)}." if cloth.approved else "Cutting not approved yet."


def _verdict(planned: ClothPlan, units: str) -> Verdict | None:
    """Whether what was cut takes the plan; None while no length is told."""
    told = [one for one in planned.cloth.bought if one.shorter is not None]
    if not told:
        return None
    least = narrowest_width(planned.cloth, max(_reach(planned.plan), _reach(planned.straight)))
    wide = [one for one in told if one.width is None or one.width >= least]
    if not wide:
        return Verdict(None, _too_narrow(least, units))
    longest = max(one.shorter or 0 for one in wide)
    if longest >= planned.needed or len(told) == 1:
        return _of_one(longest, planned.needed, units)
    if len(wide) < len(told):
        wanted = write_length(least, units)
        return Verdict(None, f"Some of it is narrower than the {wanted} that this plan takes. {_LONGEST}")
    return _of_several([one.shorter or 0 for one in wide], planned, units)


def _reach(plan: Plan) -> int:
    """How far a plan reaches across the usable width, in nm."""
    panels = [placed.x + placed.w for placed in plan.placements]
    return max(panels + [piece.x + piece.w for cut in plan.piping for piece in cut.pieces], default=0)


def _too_narrow(least: int, units: str) -> str:
    return f"It is narrower than the {write_length(least, units)} that this plan takes. {_AS_IN_HAND}"


_AS_IN_HAND = "Plan it as the piece in hand to see what it makes."
_LONGEST = "Plan the longest as the piece in hand to see what it makes."


def _of_one(longest: int, needed: int, units: str) -> Verdict:
    cut, wanted = write_length(longest, units), write_length(needed, units)
    if longest >= needed:
        left = f"{write_length(longest - needed, units)} are" if longest > needed else "nothing is"
        return Verdict(True, f"Enough: {wanted} are needed, {cut} were cut; {left} left.", spare=longest - needed)
    short = write_length(needed - longest, units)
    text = f"Too short by {short}: {wanted} are needed, {cut} were cut. {_AS_IN_HAND}"
    return Verdict(False, text, short_by=needed - longest)


def _of_several(lengths: list[int], planned: ClothPlan, units: str) -> Verdict:
    """Several lengths, none of them enough by itself: the plan may divide among them."""
    cloth = planned.cloth
    total = sum(lengths)
    told = f"{listed([write_length(nm, units) for nm in lengths])} were cut"
    # What hangs on the pattern or on flaws cannot be moved to another length as it lies.
    patterned = planned.laid.repeat is not None and any(piece.face.pattern != "free" for piece in planned.pieces)
    movable = not patterned and not cloth.flaws
    rooms = [most_laid(cloth, nm, 0) for nm in lengths]
    if movable and any(_divides(plan, rooms) for plan in (planned.straight, planned.plan)):
        return Verdict(True, f"Enough: {told}, and the plan divides among them.")
    short = planned.needed_at_least - total
    if movable and short > 0:
        needed = write_length(planned.needed_at_least, units)
        text = f"Too short by {write_length(short, units)} at least: {needed} are needed, {told}."
        return Verdict(False, text, short_by=short)
    return Verdict(None, f"{told}, and the plan does not divide among them as it lies. {_LONGEST}")


def _divides(plan: Plan, rooms: list[int]) -> bool:
    """Whether the plan comes apart at level lines into parts that the lengths hold: the longest first, first fit."""
    left = sorted((room for room in rooms if room > 0), reverse=True)
    for part in sorted(_parts(plan), reverse=True):
        place = next((index for index, room in enumerate(left) if room >= part), None)
        if place is None:
            return False
        left[place] -= part
    return True


def _parts(plan: Plan) -> list[int]:
    """How long each part of a plan is between level lines that nothing lies across, in nm."""
    spans = [(placed.y, placed.y + placed.h) for placed in plan.placements]
    spans += [(piece.y, piece.y + piece.h) for cut in plan.piping for piece in cut.pieces]
    parts: list[list[int]] = []
    for start, end in sorted(spans):
        if parts and start < parts[-1][1]:
            parts[-1][1] = max(parts[-1][1], end)
        else:
            parts.append([start, end])
    return [end - start for start, end in parts]


def _paid_text(planned: ClothPlan) -> str | None:
    """What was paid, beside what the plan costs; None where no price is known or nothing is paid."""
    cloth, price = planned.cloth, planned.cloth.price
    amounts = [one.paid for one in cloth.bought if one.paid is not None]
    if price is None or not amounts:
        return None
    paid, plan = sum(amounts), cost(planned.buy, price.minor, price.per)
    if paid == plan:
        return f"Paid {_money(paid, price)}, as planned."
    apart = f"{_money(abs(paid - plan), price)} {'more' if paid > plan else 'less'}"
    return f"Paid {_money(paid, price)}, planned {_money(plan, price)}: {apart}."


def _money(minor: int, price: Price) -> str:
    return f"{write_money(minor, price.currency)} {price.currency}"


def bought_warnings(planned: ClothPlan, job: Job) -> Iterator[Problem]:
    """What is to be seen to before the cloth is cut into: too short, too narrow, two batches, paid for more."""
    cloth, units = planned.cloth, job.units
    verdict = _verdict(planned, units)
    if verdict is not None and not verdict.enough:
        code = "cut-too-short" if verdict.enough is False else "cut-otherwise"
        yield Problem(f"{cloth.at}/bought", code, verdict.text)
    yield from _uneven(cloth, units)
    batches = list(dict.fromkeys(one.batch.casefold() for one in cloth.bought if one.batch))
    if len(batches) > 1:
        text = f"{len(batches)} batches of {name_of(cloth)}: lay them side by side in daylight, and cut front and back "
        text += "of each cover from one of them."
        yield Problem(f"{cloth.at}/bought", "two-batches", text)
    yield from _paid_for_more(cloth, units)
    yield from _cut_unapproved(cloth, job)


def _uneven(cloth: Cloth, units: str) -> Iterator[Problem]:
    """Edges that differ, and less than the shop said."""
    for number, one in enumerate(cloth.bought):
        at = f"{cloth.at}/bought/{number}"
        if one.left is not None and one.right is not None and one.left != one.right:
            longer, shorter = (write_length(nm, units) for nm in (one.longer or 0, min(one.left, one.right)))
            text = f"Cut crooked: {longer} along one edge, {shorter} along the other, and the shorter one counts. "
            text += "Have it cut square before you leave."
            yield Problem(f"{at}/{'left' if one.left < one.right else 'right'}", "cut-crooked", text)
        elif one.length is not None and (one.longer or 0) < one.length:
            said, taped = (write_length(nm, units) for nm in (one.length, one.longer or 0))
            text = f"Said to be {said}, taped {taped}: have it put right before you leave."
            yield Problem(f"{at}/length", "short-measure", text)


def _paid_for_more(cloth: Cloth, units: str) -> Iterator[Problem]:
    price = cloth.price
    for number, one in enumerate(cloth.bought):
        if price is None or one.paid is None or one.longer is None:
            continue
        due = cost(to_buy(cloth, one.longer), price.minor, price.per)
        if one.paid > due:
            cut = write_length(one.longer, units)
            text = f"{_money(one.paid, price)} were paid, but the {cut} that were cut cost {_money(due, price)}: "
            text += "measure again, and look at the receipt."
            yield Problem(f"{cloth.at}/bought/{number}/paid", "paid-for-more", text)


def _cut_unapproved(cloth: Cloth, job: Job) -> Iterator[Problem]:
    """Cut is the point of no return (terms that workrooms publish): a client who is named approves it first."""
    days = [one.on for one in cloth.bought if one.on]
    if cloth.bought and job.client and not cloth.approved:
        text = f"{job.client} has not approved that {name_of(cloth)} is cut: what is cut cannot go back."
        yield Problem(f"{cloth.at}/approved", "cut-before-approved", text)
    if cloth.approved and days and min(days) < cloth.approved:
        text = f"Cut {date_in_words(min(days))}, before the client approved it {date_in_words(cloth.approved)}: "
        text += "what is cut cannot go back."
        yield Problem(f"{cloth.at}/approved", "cut-before-approved", text)
