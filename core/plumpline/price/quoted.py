"""What a job document says of its price: frozen, exact, in minor units; every problem found at once, at its field."""

from __future__ import annotations

from dataclasses import dataclass, field
from fractions import Fraction

from plumpline.document import Reading, Values, read_fields
from plumpline.fields import EXTRAS, QUOTE
from plumpline.job import Job
from plumpline.lengths import UNITS
from plumpline.money import DECIMALS, MoneyError, to_minor
from plumpline.problems import Problem


@dataclass(frozen=True)
class Rate:
    """So many minor units for one `per`: "each", a length, or a distance."""

    minor: int
    per: str

    @property
    def nm(self) -> int:
        """The length it is for."""
        return UNITS[self.per]


@dataclass(frozen=True)
class Timed:
    """How many minutes one piece of work takes, or a length of it."""

    minutes: Fraction
    per: str | None = None


@dataclass(frozen=True)
class Extra:
    """What is charged beside for covers of a kind: an amount for each, a part of their work, or both."""

    name: str
    amount: int | None
    rate: Fraction | None


@dataclass(frozen=True)
class Item:
    """Anything else on the bill, `count` times."""

    index: int
    text: str
    minor: int
    count: int
    kind: str


@dataclass(frozen=True)
class Tax:
    """Its rate, whether prices have it in them, and whether it is rounded line by line."""

    rate: Fraction
    included: bool
    by_line: bool


@dataclass(frozen=True)
class Markup:
    """What is put on cloth, on all else that is bought, and on hours and overhead."""

    cloth: Fraction
    materials: Fraction
    work: Fraction


@dataclass(frozen=True)
class Quoted:
    """The `quote` of a job; None where something is not said. Left out, a deposit is materials and half of the rest.

    That deposit is common practice: what has to be bought is covered, and half of the making is at stake for both.
    """

    currency: str
    hour: int | None
    overhead: int | None
    handling: Rate | None
    road: Rate | None
    minutes: dict[str, Timed]
    prices: dict[str, Rate]
    markup: Markup
    client_cloths: tuple[str, ...]
    extras: tuple[Extra, ...]
    items: tuple[Item, ...]
    distance: Fraction
    trips: int
    minimum: int | None
    discount_rate: Fraction
    discount_amount: int
    tax: Tax
    deposit_of_materials: Fraction
    deposit_of_making: Fraction


def read_quote(value: object, job: Job) -> Quoted | list[Problem]:
    """The price part of a document, or everything that is wrong with it."""
    reading = Reading()
    values = read_fields(value, QUOTE, "/quote", reading)
    currency = _currency(values, job, reading)
    quoted = _quoted(values, _Amounts(currency, reading), reading)
    _check_cloths(values, currency, job, reading)
    return quoted if not reading.problems else reading.problems


def _currency(values: Values, job: Job, reading: Reading) -> str:
    """That of the price, else that of all priced cloths; empty where there is none to go by."""
    of_cloths = list(dict.fromkeys(cloth.price.currency for cloth in job.cloths if cloth.price is not None))
    said: str = values.get("currency", of_cloths[0] if of_cloths else "")
    if not said:
        reading.problem("/quote/currency", "missing-field", "Say which currency the price is in.")
    elif said not in DECIMALS:
        text = f"“{said}” is no currency that is known. Write its three letters, such as USD, GBP or EUR."
        reading.problem("/quote/currency", "unknown-value", text)
        return ""
    return said


def _check_cloths(values: Values, currency: str, job: Job, reading: Reading) -> None:
    """Cloths of the client's have to be there, and all others priced in the one currency."""
    brought = values.get("client_cloths", [])
    for index, name in enumerate(brought):
        if name not in [cloth.id for cloth in job.cloths]:
            text = f"The job has no cloth “{name}”: choose one it has."
            reading.problem(f"/quote/client_cloths/{index}", "no-such-cloth", text)
    for cloth in job.cloths:
        if currency and cloth.price and cloth.price.currency != currency and cloth.id not in brought:
            other = cloth.price.currency
            text = f"This cloth is priced in {other}, the job in {currency}: enter its price in {currency}."
            reading.problem(f"{cloth.at}/price/currency", "other-currency", text)


@dataclass(frozen=True)
class _Amounts:
    """Reads amounts in one currency; without one there is nothing to read them by."""

    currency: str
    reading: Reading = field(repr=False)

    def of(self, values: Values, at: str, name: str = "amount") -> int | None:
        """The amount of that name in minor units; None where it is not said, or not understood."""
        if name not in values or not self.currency:
            return None
        try:
            return to_minor(values[name], self.currency)
        except MoneyError as error:
            code = "ambiguous-amount" if error.code == "ambiguous-amount" else "not-an-amount"
            self.reading.problem(f"{at}/{name}", code, str(error))
            return None

    def rate(self, values: Values, at: str) -> Rate | None:
        """An amount with what it is for."""
        minor = self.of(values, at)
        return None if minor is None else Rate(minor, values.get("per", "each"))


def _quoted(values: Values, amounts: _Amounts, reading: Reading) -> Quoted:
    rates, travel = values.get("rates", {}), values.get("travel", {})
    markup, deposit = values.get("markup", {}), values.get("deposit", {})
    discount, tax = values.get("discount", {}), values.get("tax", {})
    prices = {kind: amounts.rate(price, f"/quote/prices/{kind}") for kind, price in values.get("prices", {}).items()}
    _check_parts(discount, "/quote/discount", ("rate",), reading)
    _check_parts(deposit, "/quote/deposit", ("materials", "making"), reading)
    return Quoted(
        currency=amounts.currency,
        hour=amounts.of(rates, "/quote/rates", "hour"),
        overhead=amounts.of(rates, "/quote/rates", "overhead"),
        handling=amounts.rate(rates.get("handling", {}), "/quote/rates/handling"),
        road=amounts.rate(rates.get("travel", {}), "/quote/rates/travel"),
        minutes={name: Timed(timed["minutes"], timed.get("per")) for name, timed in _timed(values)},
        prices={kind: price for kind, price in prices.items() if price is not None},
        markup=Markup(*(markup.get(name, Fraction(0)) for name in ("cloth", "materials", "work"))),
        client_cloths=tuple(values.get("client_cloths", ())),
        extras=tuple(_extras(values.get("extras", {}), amounts)),
        items=tuple(_items(values.get("items", []), amounts)),
        distance=travel.get("distance", Fraction(0)),
        trips=travel.get("trips", 1),
        minimum=amounts.of(values, "/quote", "minimum"),
        discount_rate=discount.get("rate", Fraction(0)),
        discount_amount=amounts.of(discount, "/quote/discount") or 0,
        tax=Tax(tax.get("rate", Fraction(0)), tax.get("included", False), tax.get("rounding") == "line"),
        deposit_of_materials=deposit.get("materials", Fraction(1)),
        deposit_of_making=deposit.get("making", Fraction(1, 2)),
    )


def _check_parts(values: Values, at: str, names: tuple[str, ...], reading: Reading) -> None:
    """What is a part of something cannot be more than all of it."""
    for name in names:
        if values.get(name, 0) > 1:
            reading.problem(f"{at}/{name}", "not-a-fraction", "This cannot be more than all of it: 100 %.")


def _timed(values: Values) -> list[tuple[str, Values]]:
    """The work whose minutes are said and understood."""
    return [(name, timed) for name, timed in values.get("operations", {}).items() if "minutes" in timed]


def _extras(values: Values, amounts: _Amounts) -> list[Extra]:
    """Those that are switched on; the amounts of the others are read as well, since they may be wrong."""
    found = []
    for entry in EXTRAS:
        extra = values.get(entry.name, {})
        amount = amounts.of(extra, f"/quote/extras/{entry.name}")
        found += [Extra(entry.name, amount, extra.get("rate"))] if extra.get("on") else []
    return found


def _items(entries: list[Values], amounts: _Amounts) -> list[Item]:
    found = []
    for index, entry in enumerate(entries):
        minor = amounts.of(entry, f"/quote/items/{index}")
        if minor is not None:
            item = Item(index, entry.get("text", ""), minor, entry.get("count", 1), entry.get("kind", "bought"))
            found.append(item)
    return found
