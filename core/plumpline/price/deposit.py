"""What is paid before the work begins: materials in full and half of the making, unless the maker says otherwise.

That much is common practice; it is not paid back once the cloth is cut.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from plumpline.money import share, write_money
from plumpline.price.adjusted import added
from plumpline.price.line import Line, exact_percent
from plumpline.price.quoted import Quoted
from plumpline.price.tax import Taxed


def deposit(lines: Sequence[Line], sums: Taxed, quoted: Quoted) -> int:
    """The deposit in minor units, its tax with it; all of the total where all is asked for, and never more."""
    whole = added(lines)
    asked = _materials(lines) * quoted.deposit_of_materials + _making(lines) * quoted.deposit_of_making
    return share(sums.total, min(Fraction(1), asked / whole)) if whole else 0


def deposit_working(sums: Taxed, paid: int, quoted: Quoted) -> str:
    """How the deposit comes about."""
    materials, making = exact_percent(quoted.deposit_of_materials), exact_percent(quoted.deposit_of_making)
    told, rest = write_money(paid, quoted.currency), write_money(sums.total - paid, quoted.currency)
    return f"Deposit: {materials} of the materials and {making} of all else, with its tax: {told}. Then {rest} is left."


def _materials(lines: Sequence[Line]) -> int:
    return added([line for line in lines if line.group == "materials"])


def _making(lines: Sequence[Line]) -> int:
    """All that is no material; what is taken off comes off the making as far as there is some."""
    return max(0, added([line for line in lines if line.group == "making"]))
