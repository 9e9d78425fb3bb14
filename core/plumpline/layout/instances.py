# Reads lay-plan instances written as plain JSON, lays them, and writes the answers: the engine on its own.
"""The engine without the rest of Plumpline.

Two ways of writing an instance are read. A *trade* instance has ``id``, ``usable_width``, ``panels``
({``id``, ``w``, ``h``, ``qty``, ``rotation`` none/half/quarter, ``motif``, ``motif_dx``, ``motif_dy``}), ``repeat``
({``h``, ``v``, ``drop``, ``ox``, ``oy``}: points at (ox + i·h, oy + j·v + drop where i is odd)) and ``gap``; further
``flaws`` ({``x``, ``y``, ``w``, ``h``}, or {``points``} with the corners [x, y] of an outline), ``start`` (measured,
choose, unknown), ``motifs`` ({``id``, ``ox``, ``oy``}) with ``motif_id`` of a panel and ``motif_axes`` (both, across,
along: which way it is to stand on its motif), ``group``, ``apart`` ([right, up]: from its motif point, or its centre,
to the point that lies on the repeat), ``turn_group``,
``shape`` ("rect", "circle" or a list of corners [x, y] that span w × h), ``strips`` ({``width``, ``length``, ``join``,
``bias``}: piping) and ``straight``. A *strip-packing family* instance has ``name``, ``width`` and ``items`` of
[w, h, copies], nothing turned. All measures are whole numbers of one unit.

With ``fit``, a given length, the question is what fits into it. ``sets`` may then say what is of use only as a whole:
how many equal sets the quantities make (left out: as many as they can), or a list of sets, {panel: copies} each.
"""

from __future__ import annotations

import argparse
import json
import time
from collections.abc import Callable, Mapping, Sequence
from dataclasses import asdict
from pathlib import Path
from typing import Any, cast

from plumpline.layout.budget import Budget
from plumpline.layout.cut_end import lost_to_start
from plumpline.layout.fit import Fit, TooMany, equal_sets, fit_sets
from plumpline.layout.outlines import outline_of
from plumpline.layout.solve import lay_plan, straight_plan
from plumpline.layout.strip import (
    Axes,
    CannotLay,
    Flaw,
    Motif,
    Panel,
    Piping,
    Plan,
    Repeat,
    Shape,
    StraightPlan,
    Strip,
)

TURNS_OF = {"none": (0,), "half": (0, 180), "quarter": (0, 90)}
PLAIN_MOTIF = "motif"
LEAST_SECONDS = 1e-9
NOTHING = Plan(0, 0, "nothing-laid", {}, ())


def lay(
    instance: Mapping[str, Any], seconds: float = 0.3, seed: int = 0, work: int | None = None
) -> dict[str, Any]:
    """Lay one instance: at most ``seconds`` of processor time, or exactly ``work`` counted units.

    Returns ``id``, ``length``, ``at_least``, ``proven``, ``proof`` (``name``, ``data``), ``seconds``, ``work``,
    ``layout`` ({``panel``, ``x``, ``y``, ``turn``}), ``phase`` and ``alike``; with ``straight`` also ``cuts``,
    with ``strips`` the same again: their ``pieces`` ({``x``, ``y``, ``w``, ``h``, ``grain`` along, across or bias,
    ``lengths`` of the strips cut from it}), ``joins`` and joined ``length``.
    With ``start`` "unknown" the plan is that of a chosen start, ``ask`` ({``length``, ``at_least``}) what to ask for.
    With ``fit`` these are of the most complete sets found to fit, and ``fits`` (all of them), ``sets`` (how many),
    ``chosen`` (which, from 0), ``left`` (the length left) and ``fit_proof`` come with them: {``sets``, ``name``,
    ``data``} for the least count of sets proven not to fit, or "layout" for all of them where it is the proof; null
    where neither was found. Raises ``ValueError`` for a field that is not understood and ``CannotLay`` where no layout
    exists.
    """
    strip = strip_of(instance)
    began = time.process_time()
    clock = None if work is not None else lambda: (time.process_time() - began) / max(seconds, LEAST_SECONDS)
    budget = Budget(work or 0, clock=clock)
    if instance.get("fit"):
        found = fit_sets(strip, instance["fit"], _sets(instance, strip), budget, seed)
        plan, more = found.plan or NOTHING, _fit_answer(found)
    else:
        planner: Callable[[Strip, Budget, int], Plan] = straight_plan if instance.get("straight") else lay_plan
        plan = planner(strip, budget, seed)
        more = _ask(strip, plan) if strip.start == "unknown" else {}
    answer: dict[str, Any] = {
        "id": _name(instance),
        "length": plan.length,
        "at_least": plan.at_least,
        "proven": plan.proven,
        "proof": {"name": plan.proof_name, "data": plan.proof_data},
        "seconds": round(time.process_time() - began, 4),
        "work": plan.work,
        "phase": plan.phase,
        "alike": {group: list(place) for group, place in plan.alike.items()},
        "layout": [{"panel": p.panel, "x": p.x, "y": p.y, "turn": p.turn} for p in plan.placements],
        **more,
    }
    if isinstance(plan, StraightPlan):
        answer["cuts"] = [asdict(cut) for cut in plan.cuts]
    if plan.piping:
        answer["strips"] = [asdict(cut) for cut in plan.piping]
    return answer


def _ask(strip: Strip, plan: Plan) -> dict[str, Any]:
    lost = lost_to_start(strip)
    return {"ask": {"length": plan.length + lost.most, "at_least": plan.at_least + lost.least}}


def _sets(instance: Mapping[str, Any], strip: Strip) -> Sequence[Mapping[str, int]]:
    """The sets that ``sets`` names, or stands for by their number."""
    for other in ("straight", "strips"):
        if instance.get(other):
            raise ValueError(f"{_name(instance)}: 'fit' and '{other}' cannot be asked together")
    sets = instance.get("sets", 0)
    return equal_sets(strip, sets) if isinstance(sets, int) else sets


def _fit_answer(found: Fit) -> dict[str, Any]:
    proof = TooMany(found.wanted, "layout", {}) if found.fits else found.too_many
    return {
        "work": found.work,
        "fits": found.fits,
        "sets": len(found.sets),
        "chosen": list(found.sets),
        "left": found.left,
        "fit_proof": None if proof is None else asdict(proof),
    }


def _name(instance: Mapping[str, Any]) -> str:
    return str(instance["id"] if "id" in instance else instance["name"])


def strip_of(instance: Mapping[str, Any]) -> Strip:
    """The strip that an instance describes."""
    if "items" in instance:
        panels = tuple(Panel(str(i), w, h, copies) for i, (w, h, copies) in enumerate(instance["items"]))
        return Strip(instance["width"], panels)
    repeat, motifs = _repeat(instance)
    return Strip(
        instance["usable_width"],
        tuple(_panel(_name(instance), panel) for panel in instance["panels"]),
        repeat,
        motifs,
        instance.get("start", "measured"),
        tuple(_flaw(f) for f in instance.get("flaws", ())),
        instance.get("gap", 0),
        tuple(
            Piping(p["width"], p["length"], p.get("join", 0), p.get("bias", False)) for p in instance.get("strips", ())
        ),
    )


def _flaw(flaw: Mapping[str, Any]) -> Flaw:
    return Flaw.outlined(flaw["points"]) if "points" in flaw else Flaw(flaw["x"], flaw["y"], flaw["w"], flaw["h"])


def _panel(name: str, panel: Mapping[str, Any]) -> Panel:
    motif = panel.get("motif_id") or (PLAIN_MOTIF if panel.get("motif") else None)
    return Panel(
        panel["id"], panel["w"], panel["h"], panel["qty"], TURNS_OF[panel.get("rotation", "none")], motif,
        panel.get("motif_dx", 0), panel.get("motif_dy", 0), panel.get("group"), panel.get("turn_group"),
        shape=_shape(name, panel), axes=_axes(name, panel), apart=tuple(panel.get("apart", (0, 0))),
    )


def _axes(name: str, panel: Mapping[str, Any]) -> Axes:
    axes = panel.get("motif_axes", "both")
    if axes not in ("both", "across", "along"):
        raise ValueError(f"{name}: the 'motif_axes' of {panel['id']} are neither 'both' nor 'across' nor 'along'")
    return cast(Axes, axes)


def _shape(name: str, panel: Mapping[str, Any]) -> Shape:
    shape = panel.get("shape", "rect")
    if shape in ("rect", "circle"):
        return cast(Shape, shape)
    if isinstance(shape, str):
        raise ValueError(f"{name}: the 'shape' of {panel['id']} is neither 'rect' nor 'circle' nor a list of corners")
    return outline_of(shape)


def _repeat(instance: Mapping[str, Any]) -> tuple[Repeat | None, tuple[Motif, ...]]:
    """The repeat, with columns that drop only where i is odd written as a lattice.

    With a half drop (or none) i·drop and "drop where i is odd" name the same points; any other drop makes two motifs
    in a repeat of twice the width.
    """
    given = instance.get("repeat") or {}
    across, along, drop = given.get("h", 0), given.get("v", 0), given.get("drop", 0)
    motifs = [Motif(PLAIN_MOTIF, given.get("ox", 0), given.get("oy", 0))]
    motifs += [Motif(m["id"], m["ox"], m["oy"]) for m in instance.get("motifs", ())]
    if not across and not along:
        return None, ()
    if not across or not along:
        return Repeat(across, along), tuple(motifs)
    if 2 * drop % along == 0:
        return Repeat(across, along, drop), tuple(motifs)
    dropped = [Motif(m.id, m.ox + across, m.oy + drop) for m in motifs]
    return Repeat(2 * across, along), (*motifs, *dropped)


def lay_all(instances: Sequence[Mapping[str, Any]], seconds: float, seed: int) -> list[dict[str, Any]]:
    """Lay every instance; one that cannot be laid is answered by its ``problem``."""
    answers = []
    for instance in instances:
        try:
            answers.append(lay(instance, seconds, seed))
        except CannotLay as problem:
            text = {"panel": problem.panel, "code": problem.code, "text": str(problem)}
            answers.append({"id": _name(instance), "problem": text})
    return answers


def main(arguments: Sequence[str] | None = None) -> int:
    """The command ``python -m plumpline.layout INSTANCES.json --seconds 0.3 --out RESULTS.json``."""
    parser = argparse.ArgumentParser(prog="plumpline.layout", description="Lay panels on a strip of cloth.")
    parser.add_argument("instances", type=Path, help="a JSON file with one instance or a list under 'instances'")
    parser.add_argument("--seconds", type=float, default=0.3, help="processor seconds for each instance")
    parser.add_argument("--seed", type=int, default=0, help="start of the chance used in the search")
    parser.add_argument("--out", type=Path, help="where to write the answers; else standard output")
    given = parser.parse_args(arguments)
    document = json.loads(given.instances.read_text(encoding="utf-8"))
    answers = lay_all(document.get("instances", [document]), given.seconds, given.seed)
    text = json.dumps({"results": answers}, indent=1, ensure_ascii=False)
    if given.out is None:
        print(text)
    else:
        given.out.write_text(text + "\n", encoding="utf-8")
    return 0
