# The label, and the end of the work: trimming the seams, turning, pressing, filling.

from __future__ import annotations

from collections.abc import Iterator

from plumpline.cushions.filling import filling_of
from plumpline.cushions.finish import trimmed_to
from plumpline.figures import told
from plumpline.measures import Measures
from plumpline.workroom.closures import way_in
from plumpline.workroom.identity import code_of, hands_text, label_of
from plumpline.workroom.step import Bench, Step


def steps(bench: Bench) -> Iterator[Step]:
    """The steps that every cover has."""
    label, code = label_of(bench.cover, bench.job), code_of(bench.cover.cushion, bench.job)
    text = f"Into an allowance that stays inside: {label}. Washed, covers look alike without it."
    if bench.cover.cushion.mirrored:
        text += f" Add “mirrored” where it is: {hands_text(bench.cover.cushion)}."
    yield Step("label", "label", "Sew in the label", text, code)
    yield from _trimmed(bench)
    text = f"Through {way_in(bench)}. Push the seams out from inside with something blunt."
    yield Step("turn", "turn", "Turn it right side out", text)
    sewn = _from_seam_to_seam(bench)
    text = f"Seams first, through a cloth; pile only from the back, with steam. From seam to seam it measures {sewn}."
    yield Step("press", "press", "Press and measure", text, sewn)
    yield Step("fill", "fill", "Fill it", _fill(bench), told(bench.cover.pad.size, bench.job.units))


def _from_seam_to_seam(bench: Bench) -> str:
    """What a cover measures once it is turned: its finished size, and a flange beyond that on every side."""
    flange = 2 * bench.cover.cushion.cover.edge.beyond
    over_all = Measures(tuple((name, nm + flange) for name, nm in bench.cover.finished))
    return told(over_all, bench.job.units)


def _trimmed(bench: Bench) -> Iterator[Step]:
    """The step that finishes the allowances once they are sewn."""
    left, finish = bench.told(trimmed_to(bench.job)), bench.cover.cushion.cover.seam_finish
    if finish == "trimmed":
        yield Step("taper", "seams", "Trim the seams", f"All allowances, to {left}; not at a zip or a hem.", left)
    elif finish == "overlocked-together":
        text = f"Both allowances of each seam as one, trimmed to {left} by the knife; not at a zip or a hem."
        yield Step("taper", "seams", "Overlock the seams", text, left)


def _fill(bench: Bench) -> str:
    cushion = bench.cover.cushion
    text = f"With a pad of {told(bench.cover.pad.size, bench.job.units)}, top to top."
    if cushion.insert.fill == "foam" and "wrap" not in cushion.cover.layers:
        return f"{text} A slip-cloth round the foam lets it glide in."
    pad = bench.cover.pad
    filling = filling_of(pad.size, cushion.insert.fill, bench.job.units, pad.outline)
    return f"{text} Filled loose, it takes {filling.text}." if filling else text
