"""What a way of making the job is before it is planned: what it is called, and what it changes in the document."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from plumpline.job import Cloth, Face
from plumpline.pieces import Piece
from plumpline.prepared import Prepared
from plumpline.remedies import Change

Changes = tuple[Change, ...]


@dataclass(frozen=True)
class Offer:
    """One way: its name, the changes that make the job so, and what is worth knowing before it is taken (`note`).

    `cannot` says why it cannot even be planned, in a maker's words; empty where it can be. `parted` are pieces that may
    be cut in several, whose joins are counted then.
    """

    name: str
    changes: Changes
    note: str = ""
    cannot: str = ""
    parted: tuple[Piece, ...] = ()


@dataclass(frozen=True)
class Group:
    """Ways between which the maker chooses one: what they are about, and the ids of the cloths that they concern.

    `note` is said above them.
    """

    kind: str
    title: str
    cloths: tuple[str, ...]
    offers: tuple[Offer, ...]
    note: str = ""


@dataclass(frozen=True)
class About:
    """The cloth that ways are looked for, with the document and the job as it is."""

    document: dict[str, Any]
    prepared: Prepared
    cloth: Cloth

    def faces(self, *parts: str) -> list[tuple[str, str, Face]]:
        """The faces cut from the cloth, of the parts named or of all: part, place in the document, and the face."""
        return [
            (part, f"{cover.cushion.at}/cover/{part}", face)
            for cover in self.prepared.covers
            for part, face in cover.cushion.cover.faces
            if face.cloth == self.cloth.id and (part in parts or not parts)
        ]
