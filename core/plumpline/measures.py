"""Named measures of a thing: lengths in nm by the name of their field, in the order they are told, and their words."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass


@dataclass(frozen=True)
class Word:
    """A measure in words: what it is called, and how a thing is by it: "width", "wide"."""

    noun: str
    adjective: str


_WORDS = {
    "width": Word("width", "wide"),
    "length": Word("height", "high"),
    "diameter": Word("diameter", "across"),
    "thickness": Word("thickness", "thick"),
}


def word_of(name: str, beside: tuple[str, ...]) -> Word:
    """The words for a measure by the name of its field, `beside` the other measures: a bolster is not high but long."""
    return Word("length", "long") if name == "length" and "diameter" in beside else _WORDS[name]


@dataclass(frozen=True)
class Measures:
    """Lengths in nm by name, such as width and length, or diameter; what was not measured is not there."""

    named: tuple[tuple[str, int], ...] = ()

    def __iter__(self) -> Iterator[tuple[str, int]]:
        return iter(self.named)

    def __getitem__(self, name: str) -> int:
        return dict(self.named)[name]

    def get(self, name: str) -> int | None:
        """The measure of that name, or None."""
        return dict(self.named).get(name)

    def plus(self, more: Measures) -> Measures:
        """Each measure with the one of the same name in `more` added to it."""
        return Measures(tuple((name, nm + (more.get(name) or 0)) for name, nm in self.named))

    def only(self, names: tuple[str, ...]) -> Measures:
        """The measures of those names, in that order, as far as there are any."""
        known = dict(self.named)
        return Measures(tuple((name, known[name]) for name in names if name in known))

    @property
    def names(self) -> tuple[str, ...]:
        """The names alone."""
        return tuple(name for name, _ in self.named)

    @property
    def lengths(self) -> tuple[int, ...]:
        """The lengths alone."""
        return tuple(nm for _, nm in self.named)
