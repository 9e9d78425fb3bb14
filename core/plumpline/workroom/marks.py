# What is chalked on the pieces: the top-edge arrow, balance marks, notches, the opening, the corner taper.

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from plumpline.figures import bare, listed
from plumpline.pieces import Mark, Piece
from plumpline.workroom.step import Bench, Step, family_name, family_of


@dataclass(frozen=True)
class Chalked:
    """A mark with the pieces that it is chalked on, in words (`on`) and each by itself, and where on them."""

    kind: str
    on: str
    pieces: tuple[str, ...]
    text: str


def chalked(bench: Bench) -> list[Chalked]:
    """Every mark of the cover, those of the same words on several pieces together."""
    together: dict[tuple[str, str], list[Piece]] = {}
    for piece in bench.cover.pieces:
        for kind, text in _of_piece(piece, bench):
            together.setdefault((kind, text), []).append(piece)
    return [
        Chalked(kind, _called(pieces, bench), tuple(piece.called for piece in pieces), text)
        for (kind, text), pieces in together.items()
    ]


def _called(pieces: list[Piece], bench: Bench) -> str:
    """Several pieces in words: all of a family by its name, all there are as every piece."""
    if len(pieces) == len(bench.cover.pieces) > 2:
        return "every piece"
    whole = [family for family in dict.fromkeys(map(family_of, pieces)) if set(bench.parts(family)) <= set(pieces)]
    names = (family_name(family_of(piece)) if family_of(piece) in whole else piece.called for piece in pieces)
    return listed(list(dict.fromkeys(names)))


def _of_piece(piece: Piece, bench: Bench) -> Iterator[tuple[str, str]]:
    """The kinds of marks on a piece with their words, and of those along a straight edge how far from the left."""
    alike: dict[tuple[str, str], list[Mark]] = {}
    for mark in piece.marks:
        alike.setdefault((mark.kind, _SAID.get(mark.kind, mark.text)), []).append(mark)
    for (kind, text), marks in alike.items():
        yield kind, text if piece.shape != "rectangle" or kind not in _ALONG_AN_EDGE else _placed(text, marks, bench)


# What a mark is called on the sheet, where that is not what stands beside it on the piece.
_SAID = {"top": "Arrow to the top edge"}
_ALONG_AN_EDGE = ("opening", "zip", "notch")


def _placed(text: str, marks: list[Mark], bench: Bench) -> str:
    places = list(dict.fromkeys(x for mark in marks for x, _ in mark.points))
    told = listed([*(bare(place, bench.job.units) for place in places[:-1]), bench.told(places[-1])])
    return f"{text}, {told} from the left cut edge"


def steps(bench: Bench) -> Iterator[Step]:
    """A step for the marks of every piece, then one for each other kind that the cover has."""
    text = "On the back of every piece: its name, a stroke at the middle of each edge, and an arrow to its top edge, "
    text += "so that nap and stretch run the same way on all faces."
    yield Step("mark", "mark.middles", "Mark tops and middles", text)
    marks = chalked(bench)
    for kind, title in _TITLES.items():
        told = [f"{mark.on.capitalize()}: {_within(mark.text)}." for mark in marks if mark.kind == kind]
        if told:
            yield Step("mark", f"mark.{kind}", title, " ".join(told), _figure(kind, bench))


_TITLES = {
    "notch": "Mark the corners on the boxing",
    "clip": "Mark the corners to clip",
    "opening": "Mark the opening",
    "zip": "Mark the zip",
    "hem": "Mark the hems",
    "taper": "Mark the corner tapers",
    "flange": "Mark the flange",
}


def _within(text: str) -> str:
    """A text as it goes on after a colon."""
    return f"{text[0].lower()}{text[1:]}"


def _figure(kind: str, bench: Bench) -> str:
    """Of an opening or a zip its length, of a hem what it takes, of a taper its depth."""
    cover = bench.cover
    figures = {
        "opening": cover.closing.length,
        "zip": cover.closing.length,
        "hem": cover.closing.allowance,
        "taper": cover.cushion.cover.corners.depth,
        "flange": cover.cushion.cover.edge.beyond,
    }
    return bench.told(figures[kind]) if kind in figures else ""
