# Before anything is cut: looking the cloth over, washing it, squaring its end. Done once for all covers of a cloth.

from __future__ import annotations

from collections.abc import Iterator

from plumpline.cloth import lay_out
from plumpline.job import Cloth, name_of
from plumpline.workroom.step import Bench, Step


def steps(bench: Bench) -> Iterator[Step]:
    """The steps for each cloth of the cover."""
    for cloth in bench.cloths:
        yield _check(cloth, bench)
        yield from _wash(cloth)
        yield _square(cloth, bench)


def _check(cloth: Cloth, bench: Bench) -> Step:
    text = "In daylight, face up, all of its length: mark every flaw with a thread at the selvedge."
    if cloth.width is None:
        return Step("check", "check", f"Look {name_of(cloth)} over", text, cloth=cloth.id)
    usable = bench.told(lay_out(cloth, cloth.width).usable)
    text += f" Once it is ready to cut, {usable} have to lie between the selvedges."
    return Step("check", "check", f"Look {name_of(cloth)} over", text, f"{bench.told(cloth.width)} wide", cloth.id)


def _wash(cloth: Cloth) -> Iterator[Step]:
    if cloth.wash == "before-cutting":
        text = "As the finished cover will be washed, then dry and press it flat; all sizes are of washed cloth."
        yield Step("wash", "wash", f"Wash {name_of(cloth)}", text, cloth=cloth.id)
    elif cloth.wash == "after-making":
        text = "Its pieces are cut larger by what the first wash of the cover will take."
        yield Step("wash", "wash", f"Leave {name_of(cloth)} unwashed", text, cloth=cloth.id)


def _square(cloth: Cloth, bench: Bench) -> Step:
    text = "Draw a thread, or lay a square on the selvedge, and cut the end straight across."
    if cloth.squaring:
        text += f" Both ends together may take {bench.told(cloth.squaring)}."
    else:
        text += " Nothing was allowed for it: take as little as can be."
    return Step("square", "square", f"Square {name_of(cloth)}", text, cloth=cloth.id)
