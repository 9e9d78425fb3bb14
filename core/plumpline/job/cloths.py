"""The entries of the cloths the covers are cut from: frozen, exact, and read from the values of the document."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from plumpline.document import Reading, Values
from plumpline.job.bought import Bought, read_bought
from plumpline.job.habits import NM_PER_METRE, NM_PER_YARD, Habits
from plumpline.job.remnants import Remnant, read_remnant
from plumpline.lengths import round_half_even
from plumpline.money import MoneyError, to_minor


@dataclass(frozen=True)
class Motif:
    """A point of the pattern: nm from the left edge of the cloth and from the squared cut end."""

    id: str
    name: str
    across: int
    along: int


@dataclass(frozen=True)
class Flaw:
    """A place no panel may touch: nm from the left edge of the cloth and from the cut end."""

    across: int
    along: int
    width: int
    length: int


@dataclass(frozen=True)
class TestSquare:
    """A square marked on the cloth, washed and measured again: nm, None for what is not measured."""

    before_across: int | None
    before_along: int | None
    across: int | None
    along: int | None

    def measures(self, direction: str) -> tuple[int | None, int | None]:
        """How far apart its marks were in that direction ("across", "along") before the wash, and after it."""
        return (self.before_across, self.across) if direction == "across" else (self.before_along, self.along)

    def lost(self, direction: str) -> Fraction | None:
        """The fraction lost in that direction: 1 − after ÷ before, exact; None while it is not measured.

        That is minus the dimensional change of AATCC TM135 and ISO 5077, (after − before) ÷ before.
        """
        before, after = self.measures(direction)
        return None if before is None or after is None else 1 - Fraction(after, before)


@dataclass(frozen=True)
class Shrinkage:
    """What the first wash takes of a cloth: fractions the maker names, and what a test square says."""

    named_across: Fraction | None
    named_along: Fraction | None
    square: TestSquare

    def named(self, direction: str) -> Fraction | None:
        """The fraction that the maker names for that direction; None where none is named."""
        return self.named_across if direction == "across" else self.named_along

    def lost(self, direction: str) -> Fraction:
        """The fraction lost in that direction: by the test square where it is measured, else as named, else none."""
        washed = self.square.lost(direction)
        return washed if washed is not None else self.named(direction) or Fraction(0)


@dataclass(frozen=True)
class Price:
    """The price of `per` nm of cloth, in whole minor units of `currency`."""

    minor: int
    per: int
    per_unit: str
    currency: str


@dataclass(frozen=True)
class Cloth:
    """One cloth as it lies on the bolt, unwashed: lengths in nm, shrinkage as a fraction lost."""

    index: int
    id: str
    name: str
    width: int | None
    selvedge: int
    selvedge_said: bool
    direction: str
    direction_said: bool
    up: str
    weight: str
    weight_said: bool
    repeat_across: int
    repeat_along: int
    drop: int
    motifs: tuple[Motif, ...]
    start: str
    squaring: int
    squaring_said: bool
    shrinkage: Shrinkage
    wash: str | None
    flaws: tuple[Flaw, ...]
    sold_by: int
    price: Price | None
    instead_of: str | None
    remnant: Remnant | None
    bought: tuple[Bought, ...]
    approved: str | None

    @property
    def at(self) -> str:
        """Where the entry stands in the document."""
        return f"/cloths/{self.index}"

    @property
    def shrink_across(self) -> Fraction:
        """The fraction of its width that the first wash takes."""
        return self.shrinkage.lost("across")

    @property
    def shrink_along(self) -> Fraction:
        """The fraction of its length that the first wash takes."""
        return self.shrinkage.lost("along")

    @property
    def lies_aside(self) -> bool:
        """Whether the top of every panel points to a side of the cloth (railroaded)."""
        return self.up in ("left", "right")


def read_cloth(index: int, values: Values, habits: Habits, reading: Reading) -> Cloth:
    """The entry that these values of the document describe."""
    repeat = values.get("repeat", {})
    price = _price(values["price"], f"/cloths/{index}/price", reading) if "price" in values else None
    currency = price.currency if price else None
    return Cloth(
        index=index,
        id=values["id"],
        name=values.get("name", ""),
        width=values.get("width"),
        selvedge=values.get("selvedge", habits.selvedge),
        selvedge_said="selvedge" in values,
        direction=values.get("direction", "one-way"),
        direction_said="direction" in values,
        up=values.get("up", "away"),
        weight=values.get("weight", "medium"),
        weight_said="weight" in values,
        repeat_across=repeat.get("across", 0),
        repeat_along=repeat.get("along", 0),
        drop=repeat.get("drop", 0),
        motifs=tuple(_motif(entry) for entry in values.get("motifs", [])),
        start=values.get("start", "unknown"),
        squaring=values.get("squaring", habits.squaring),
        squaring_said="squaring" in values,
        shrinkage=_shrinkage(values.get("shrinkage", {})),
        wash=values.get("wash"),
        flaws=tuple(Flaw(**entry) for entry in values.get("flaws", [])),
        sold_by=values.get("sold_by", habits.step),
        price=price,
        instead_of=values.get("instead_of"),
        remnant=read_remnant(values["piece"]) if "piece" in values else None,
        bought=read_bought(values.get("bought", []), f"/cloths/{index}/bought", currency, reading),
        approved=values.get("approved"),
    )


def _shrinkage(values: Values) -> Shrinkage:
    square = values.get("square", {})
    before = square.get("before")
    return Shrinkage(
        named_across=values.get("across"),
        named_along=values.get("along"),
        square=TestSquare(square.get("before_across", before), before, square.get("across"), square.get("along")),
    )


def _motif(values: Values) -> Motif:
    return Motif(values["id"], values.get("name", ""), values["across"], values["along"])


def _price(values: Values, at: str, reading: Reading) -> Price | None:
    currency = values["currency"]
    try:
        minor = to_minor(values["amount"], currency)
    except MoneyError as error:
        field = "currency" if error.code == "unknown-currency" else "amount"
        code = "unknown-value" if field == "currency" else "not-an-amount"
        reading.problem(f"{at}/{field}", code, str(error))
        return None
    per = NM_PER_YARD if values["per"] == "yd" else NM_PER_METRE
    return Price(minor, per, values["per"], currency)


def shrunk(length: int, lost: Fraction) -> int:
    """`length` nm after losing the fraction `lost`, rounded once, half to even."""
    return round_half_even(length * (1 - lost))
