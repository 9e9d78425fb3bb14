"""A test square of the cloth that was marked, washed and measured again: what it says, and what cannot be."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from plumpline.figures import percent
from plumpline.job import Cloth
from plumpline.lengths import write_length
from plumpline.problems import Problem

_DIRECTIONS = ("along", "across")
# A share that is named agrees with a square if it does so to a tenth of a percent, as finely as anyone names one.
_AGREES_WITHIN = Fraction(1, 2000)
# More than any cloth loses: raw cotton is said to lose up to 6 in of a yard, a sixth (common practice).
_MOST_LOST = Fraction(1, 4)


def square_lines(cloth: Cloth, units: str) -> list[str]:
    """What the square says, a sentence for each direction: "20 cm became 19.2 cm along: 4 %."."""
    return [
        f"{_became(cloth, direction, units)}: {percent(lost)}."
        for direction in _DIRECTIONS
        if (lost := cloth.shrinkage.square.lost(direction)) is not None
    ]


def _became(cloth: Cloth, direction: str, units: str) -> str:
    before, after = (_as_taped(nm or 0, units) for nm in cloth.shrinkage.square.measures(direction))
    return f"{before} became {after} {direction}"


def _as_taped(nm: int, units: str) -> str:
    """A length in the units of the job, or in those of the other tape where only that one holds it exactly."""
    texts = [write_length(nm, unit) for unit in (units, "cm", "in")]
    return next((text for text in texts if not text.startswith("≈")), texts[0])


def square_problems(cloth: Cloth, units: str) -> list[Problem]:
    """What cannot be true of the square, at the measure of it that is most likely to be wrong."""
    found = [problem for direction in _DIRECTIONS for problem in _problems(cloth, direction, units)]
    return [*_unmarked(cloth), *found]


def _unmarked(cloth: Cloth) -> Iterator[Problem]:
    measures = [cloth.shrinkage.square.measures(direction) for direction in _DIRECTIONS]
    if any(before is None and after is not None for before, after in measures):
        text = "Say how far apart the marks of the test square were made before the wash."
        yield Problem(f"{cloth.at}/shrinkage/square/before", "missing-field", text)


def _problems(cloth: Cloth, direction: str, units: str) -> Iterator[Problem]:
    square, at = cloth.shrinkage.square, f"{cloth.at}/shrinkage"
    lost, named = square.lost(direction), cloth.shrinkage.named(direction)
    if lost is not None and lost < 0:
        text = f"{_became(cloth, direction, units)}: the square grew. Measure it again, pressed flat and dry; "
        text += "cloth that does grow is planned without this measure."
        yield Problem(f"{at}/square/{direction}", "cloth-grew", text)
    elif lost is not None and named is not None and abs(lost - named) > _AGREES_WITHIN:
        text = f"{_became(cloth, direction, units)}: {percent(lost)}, but {percent(named)} is entered here. "
        text += "Clear it, and the test square counts."
        yield Problem(f"{at}/{direction}", "shrinkage-disagrees", text)


def square_questions(cloth: Cloth, units: str) -> Iterator[Problem]:
    """What is to be looked at once more: a side not measured yet, and one that lost more than cloth does."""
    square, at = cloth.shrinkage.square, f"{cloth.at}/shrinkage/square"
    for direction in _DIRECTIONS:
        before, after = square.measures(direction)
        lost = square.lost(direction)
        if before is not None and after is None and cloth.shrinkage.named(direction) is None:
            text = f"The test square is not measured {direction} yet, so nothing is allowed for the wash there."
            yield Problem(f"{at}/{direction}", "square-not-measured", text)
        elif lost is not None and lost > _MOST_LOST:
            text = f"{_became(cloth, direction, units)}: {percent(lost)} is more than cloth loses in a wash. "
            text += "Check both measures and their units."
            yield Problem(f"{at}/{direction}", "square-lost-much", text)
