# One thing to buy beside the cloth, as the answer and the list for the shops tell it.

from __future__ import annotations

from dataclasses import dataclass
from typing import Any


@dataclass(frozen=True)
class Material:
    """For which covers, how many, in the words of the shop, and why so much.

    `id` stays the same while the figures change; `more` holds what only this kind has, in the form of the answer.
    """

    id: str
    kind: str
    shop: str
    covers: tuple[str, ...]
    quantity: int
    ask: str
    working: str
    more: tuple[tuple[str, Any], ...] = ()
