"""What can be wrong with a job, said in a maker's words: every problem has a place, a code and a text."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

# One table of codes, so that a screen can map each to its field and a test can see none is invented on the way.
CODES: dict[str, str] = {
    # what was typed
    "not-a-job": "The document is not a job of this format.",
    "wrong-version": "The document was written by a version that cannot be read here.",
    "unknown-field": "A field that does not exist: a slip of the pen would otherwise be lost without a word.",
    "unknown-value": "A choice that does not exist, or not for this kind of cover.",
    "missing-field": "Something the plan cannot do without.",
    "missing-width": "The width has not been measured.",
    "missing-length": "The height, or the length of a bolster, has not been measured.",
    "missing-diameter": "The diameter has not been measured.",
    "missing-thickness": "The thickness of a boxed cover has not been measured: it is asked for, never assumed.",
    "missing-sides": "A side of a straight-sided outline has not been measured.",
    "missing-diagonal": "A corner of a straight-sided outline is not held by enough measures.",
    "not-a-length": "The text cannot be read as a length.",
    "not-a-fraction": "The text cannot be read as a fraction.",
    "not-a-date": "The text cannot be read as a day.",
    "not-a-count": "The number of pieces is not a whole number from 1 up.",
    "not-an-amount": "The text cannot be read as an amount of money.",
    "ambiguous-amount": "An amount, or a number, that can be read as thousands or as decimals.",
    "ambiguous-rate": "A part of a price that can be read as hundredths or as a multiple.",
    "other-currency": "A cloth is priced in another currency than the job.",
    "not-a-number": "The text cannot be read as a number.",
    "not-text": "A text was expected.",
    "no-such-cloth": "A cover, or another cloth, names a cloth that the job does not have.",
    "no-such-corner": "A corner or side is named that the outline does not have.",
    "no-such-motif": "A cover names a motif that its cloth does not have.",
    "same-id-twice": "Two entries share one id.",
    # what a reading asks back
    "improper-fraction": "11/4 is 2 3/4; 1 1/4 may have been meant.",
    "comma-as-decimal": "1,024 was read as 1.024.",
    "point-as-decimal": "1.024 cm was read with three decimals; thousands may have been meant.",
    "fills-the-larger-unit": "5 ft 14 in was read as 6 ft 2 in.",
    "readings-disagree": "Two readings of the tape differ by more than the pad can.",
    "no-rim": "The cover has no rim that trim could go on.",
    "pack-too-short": "A pack of trim is shorter than the edge it is to go round.",
    "label-differs-from-tape": "The pad is not the size that its label says; the tape counts.",
    "tape-the-pad": "Planned from the size on the label; the pad itself is still to be taped.",
    # what cannot be made
    "sides-do-not-close": "The sides and diagonals of an outline contradict each other, or its corners do.",
    "nothing-left": "The cover would come out with no size left.",
    "opening-too-long": "The opening is longer than the edge it lies in.",
    "zip-longer-than-seam": "The zip is longer than the seam it is sewn into.",
    "overlap-under-hems": "The two pieces of a back overlap by less than their hems.",
    "corner-too-large": "A corner, tapered or rounded, does not fit on the panel.",
    "parts-too-wide": "The border, the band or the trim of a face leaves nothing of it.",
    "too-wide": "A panel is wider than the usable cloth.",
    "too-wide-unless-turned": "A panel fits the cloth only when it is turned.",
    "larger-than-the-repeat": "A panel shows more than one repeat: which point is to be centred?",
    "motif-cannot-be-centred": "No motif lies where this panel could have it at its centre.",
    "rules-contradict": "Two things asked for cannot both be true.",
    "repeat-too-fine": "The repeat is smaller than anything that can be matched by hand.",
    "wider-than-any-cloth": "The width is larger than any cloth is wide.",
    "too-many": "More panels than one lay plan can be made for.",
    "wash-not-said": "The cloth shrinks, but it is not said when it is washed.",
    "cloth-grew": "A test square that is larger after the wash than before.",
    "shrinkage-disagrees": "The test square and the share that was named do not say the same.",
    "flaw-outside": "A flaw lies outside the cloth, or outside the piece in hand.",
    "edges-disagree": "The edges of a piece in hand, and how far its ends run out of square, cannot all be true.",
    "piece-too-narrow": "The piece in hand is too narrow for a panel.",
    # what is worth knowing
    "no-selvedge-margin": "The whole ticket width is planned to the edge.",
    "no-squaring-margin": "Nothing is allowed for squaring the ends.",
    "one-more-would-fit": "A little less seam, and one more panel fits side by side.",
    "wider-cloth": "A slightly wider cloth would need a shorter length.",
    "turning-would-save": "If the cloth has no direction, turning panels saves a length.",
    "joins-can-be-saved": "Laid along the roll, pieces need fewer joins.",
    "start-unknown": "A whole repeat is added because nobody knows where the first cut will fall.",
    "cut-too-short": "What was cut in the shop is too short for the plan.",
    "cut-otherwise": "What was cut is narrower than planned, or in lengths that the plan does not divide among.",
    "cut-crooked": "One edge of what was cut is longer than the other.",
    "short-measure": "What was cut is shorter by the tape than the shop said.",
    "two-batches": "Lengths of one cloth come from several batches.",
    "paid-for-more": "More was paid than the length that was cut costs.",
    "paid-without-price": "An amount was paid for a cloth that has no price, and so no currency.",
    "cut-before-approved": "The cloth was cut before the client approved it.",
    "square-not-measured": "A test square that was marked, but not measured after the wash.",
    "square-lost-much": "A test square lost more than cloth loses in a wash.",
    "far-above-the-floor": "The length is many times what the area of the panels needs.",
    # about the price
    "no-price": "Something that is bought or done has no price yet, so the total is without it.",
    "example-minutes": "The minutes of some work are examples, not the maker's own.",
    "no-such-cover": "An extra is switched on that no cover of the job is for.",
}


@dataclass(frozen=True)
class Problem:
    """One thing that stops a job: a JSON pointer into the document, a code of `CODES`, and what to do.

    `ways_out` are changes of the document that were planned, the one that buys least first, in the form a notice
    carries; `way_out` is the first of them.
    """

    at: str
    code: str
    text: str
    ways_out: tuple[dict[str, Any], ...] = ()

    @property
    def way_out(self) -> dict[str, Any] | None:
        """The way out that buys least."""
        return self.ways_out[0] if self.ways_out else None

    def to_json(self) -> dict[str, Any]:
        """The problem as the plain dict an answer carries."""
        ways = {"way_out": self.way_out, "ways_out": list(self.ways_out)} if self.ways_out else {}
        return {"at": self.at, "code": self.code, "text": self.text, **ways}


class JobError(ValueError):
    """A job that cannot be planned; `.problems` is a list of plain dicts, every problem at once."""

    def __init__(self, problems: Iterable[Problem]) -> None:
        self.problems = [problem.to_json() for problem in problems]
        super().__init__("; ".join(f"{p['at'] or '/'}: {p['text']}" for p in self.problems))
