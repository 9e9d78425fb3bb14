"""Ways to cut a face that is wider than its cloth: joined, the pattern matched or not, or along the roll."""

from __future__ import annotations

from plumpline.beside.offers import About, Changes, Group, Offer
from plumpline.figures import listed
from plumpline.job import name_of
from plumpline.layplan import why_not
from plumpline.pieces import Piece
from plumpline.prepared import Prepared, prepare
from plumpline.remedies import Change, changed, ways_to_make_room

_JOINED_PARTS = ("front", "back")


def join_choices(about: About) -> Group | None:
    """The ways to make faces that are too wide for their cloth in one piece; None where there are no such faces."""
    whole = _in_one_piece(about)
    prepared = prepare(changed(about.document, whole)) if whole else about.prepared
    assert isinstance(prepared, Prepared)
    cloth = prepared.job.cloths[about.cloth.index]
    too_wide = [piece for piece in prepared.pieces_on(cloth) if (why_not(cloth, piece) or "").startswith("too-wide")]
    if not too_wide:
        return None
    offers = tuple(
        Offer(words, overruled(whole, changes), _note(changes), parted=tuple(too_wide))
        for words, changes in ways_to_make_room(cloth, too_wide)
    )
    return Group("joins", f"Wider than {name_of(cloth)}", (cloth.id,), offers, _why(too_wide))


def _in_one_piece(about: About) -> Changes:
    """What takes the joins out of the job again, so that all ways are looked at from the same place."""
    faces = [(at, face) for part, at, face in about.faces() if part in _JOINED_PARTS or part.startswith("layers/")]
    whole = [Change(f"{at}/joined", "none") for at, face in faces if face.joined != "none"]
    upright = [Change(f"{about.cloth.at}/up", "away")] if about.cloth.lies_aside else []
    return (*whole, *upright)


def overruled(first: Changes, then: Changes) -> Changes:
    """Changes made one after the other, each place once."""
    later = [change.at for change in then]
    return (*(change for change in first if change.at not in later), *then)


def _note(changes: Changes) -> str:
    turns = any(change.at.endswith("/direction") for change in changes)
    return "Only for cloth without nap, whose pattern has no right way up." if turns else ""


def _why(too_wide: list[Piece]) -> str:
    names = list(dict.fromkeys(piece.called for piece in too_wide))
    which = listed(names)
    return f"The {which} cannot be cut in one piece upright: this is what each way takes."
