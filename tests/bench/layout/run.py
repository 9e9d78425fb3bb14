"""Measures lay plans beside rectpack and CP-SAT and prints the table. Run by `build.py bench layout`.

Processor seconds of one core (for CP-SAT, which has both, wall seconds); the pieces come in a fixed shuffled order;
every layout, the peers' too, is judged by `judge`, which shares nothing with the engine. Results are merged into
.build/bench-layout.json as soon as a family is done, so a part can be measured anew.
"""

import argparse
import json
import math
import os
import platform
import sys
import tempfile
import time
from operator import ge
from pathlib import Path
from random import Random
from typing import Any

ROOT = Path(__file__).resolve().parent.parent.parent.parent
sys.path[:0] = [str(ROOT / "core"), str(ROOT / "tests")]

from bench.layout.inside import milliseconds  # noqa: E402
from bench.layout.judge import length_of  # noqa: E402
from bench.layout.peers import by_cp_sat, by_rectpack  # noqa: E402
from bench.layout.problems import FAMILIES, Problem  # noqa: E402
from conftest import load_build_script  # noqa: E402

from plumpline.layout import Budget, Panel, Planner, Strip, lay  # noqa: E402

RESULTS = ROOT / ".build/bench-layout.json"
LIBRARY = ("ngcut", "cgcut", "gcut", "beng")
TRADE = ("trade", "unseen")
# Families, processor seconds, the mean and the worst of length over best known that are to be reached.
ROWS: tuple[tuple[tuple[str, ...], float, float, float], ...] = (
    (("C",), 0.3, 1.012, math.inf),
    (("C",), 2, 1.007, math.inf),
    (("C",), 10, 1.005, math.inf),
    (("N",), 0.3, 1.005, math.inf),
    (("N",), 2, 1.0015, math.inf),
    (LIBRARY, 1, 1.003, math.inf),
    (("ngcut",), 1, 1.0, 1.0),
    (("ngcut",), 10, 1.0, 1.0),
    (TRADE, 0.3, 1.004, 1.03),
    (TRADE, 1, math.inf, math.inf),
    (TRADE, 3, 1.002, 1.015),
)
# The share of a row's problems that are to be at the best known length, proven, and proven to the selling step.
COUNTS: dict[tuple[tuple[str, ...], float], tuple[float, float, float]] = {
    (("ngcut",), 10): (1, 10 / 12, 0),
    (TRADE, 1): (0, 0.6, 0.72),
}
PEER_SECONDS = 10.0
FIRST = {"24": 20.0, "200": 100.0, "1000": 500.0, "N13": 500.0}  # panels, and the most milliseconds
MOST_TIMES_SLOWER = 4.5
CURVE = (100, 200, 400, 800, 1600, 3000)
COMPARED = (("C", "C4-1"), ("N", "N7"), ("trade", "p05"), ("trade", "p12"), ("trade", "p15"), ("trade", "p17"))


def keep(found: dict[str, Any]) -> None:
    """Write what was measured so far, with the machine and the day."""
    found["machine"] = f"{machine()}, {time.strftime('%Y-%m-%d')}"
    RESULTS.parent.mkdir(exist_ok=True)
    RESULTS.write_text(json.dumps(found, indent=1) + "\n", "utf-8")


def measure(problem: Problem, seconds: float) -> dict[str, Any]:
    began, wall = time.process_time(), time.perf_counter()
    answer = lay(problem.instance, seconds=seconds)
    used = time.process_time() - began
    length = length_of(problem.instance, answer["layout"])
    if length != answer["length"] or answer["at_least"] > min(length, problem.best_known):
        raise SystemExit(f"{problem.name}: the answer {answer['length']} ≥ {answer['at_least']} does not hold")
    return {
        "name": problem.name, "best_known": problem.best_known, "step": problem.step, "length": length,
        "at_least": answer["at_least"], "proof": answer["proof"]["name"], "processor": round(used, 3),
        "wall": round(time.perf_counter() - wall, 3),
    }  # fmt: skip


def measure_rows(asked: argparse.Namespace, found: dict[str, Any]) -> None:
    for family, seconds in dict.fromkeys((family, seconds) for families, seconds, _, _ in ROWS for family in families):
        if (asked.only and family not in asked.only) or seconds > asked.most:
            continue
        results = []
        for problem in FAMILIES[family]():
            results.append(measure(problem, seconds))
            last = results[-1]
            print(f"{family} {last['name']:8} {seconds:4} s {last['length']:6} ≥ {last['at_least']}", flush=True)
        found["ours"][f"{family} {seconds}"] = results
        keep(found)


def measure_peers(asked: argparse.Namespace, found: dict[str, Any]) -> None:
    for family in ("C", "N", *LIBRARY):
        if asked.only and family not in asked.only:
            continue
        for problem in FAMILIES[family]():
            width, pieces = problem.instance["width"], problem.pieces
            simple, used = by_rectpack(width, pieces, PEER_SECONDS)
            model, is_proven, wall = by_cp_sat(width, pieces, PEER_SECONDS)
            length = length_of(problem.instance, simple)
            exact = length_of(problem.instance, model) if model else None
            found["peers"][problem.name] = {
                "family": family, "best_known": problem.best_known, "rectpack": length,
                "rectpack_processor": round(used, 3), "cp_sat": exact, "cp_sat_proven": is_proven,
                "cp_sat_wall": round(wall, 3),
            }  # fmt: skip
            print(f"{problem.name:8} rectpack {length} in {used:.1f} s, CP-SAT {exact} in {wall:.1f} s", flush=True)
        keep(found)


def measure_fifths(found: dict[str, Any]) -> None:
    """Ours in a fifth of the time where rectpack needs more than a second and a half."""
    for family in ("C", "N"):
        for problem in FAMILIES[family]():
            peer = found["peers"].get(problem.name)
            if peer and peer["rectpack_processor"] > 1.5:
                peer["ours_in_a_fifth"] = measure(problem, peer["rectpack_processor"] / 5)["length"]


def mixed(panels: int) -> Strip:
    random = Random(panels)
    sizes = [(200 + random.randrange(400), 150 + random.randrange(450)) for _ in range(panels)]
    return Strip(1400, tuple(Panel(f"p{i}", w, h, 1) for i, (w, h) in enumerate(sizes)))


def first_plan(strip: Strip) -> float:
    """Processor milliseconds to the first plan: the least of three."""
    times = []
    for _ in range(3):
        began = time.process_time()
        planner = Planner(strip, Budget(1))
        next(planner.steps(), None)
        assert planner.plan().placements
        times.append((time.process_time() - began) * 1000)
    return min(times)


def measure_speed(found: dict[str, Any]) -> None:
    found["first"] = {panels: first_plan(mixed(int(panels))) for panels in FIRST if panels.isdigit()}
    giant = FAMILIES["N13"]()[0].instance
    panels = tuple(Panel(str(i), w, h, qty) for i, (w, h, qty) in enumerate(giant["items"]))
    found["first"]["N13"] = first_plan(Strip(giant["width"], panels))
    found["curve"] = {str(panels): first_plan(mixed(panels)) for panels in CURVE}


def measure_pyodide(found: dict[str, Any]) -> None:
    script = load_build_script()
    chosen = [next(p for p in FAMILIES[family]() if p.name == name).instance for family, name in COMPARED]
    native = milliseconds(chosen)
    with tempfile.TemporaryDirectory() as folder:
        given, answer = Path(folder) / "given.json", Path(folder) / "answer.json"
        given.write_text(json.dumps(chosen))
        script.in_pyodide(ROOT / ".build", Path(__file__).parent / "inside.py", ROOT, given, answer)
        inside = json.loads(answer.read_text())
    found["pyodide"] = {
        name: [round(ours, 1), round(theirs, 1)]
        for (_, name), ours, theirs in zip(COMPARED, native, inside, strict=True)
    }


def gather(families: tuple[str, ...], seconds: float, found: dict[str, Any]) -> list[dict[str, Any]]:
    parts = [found["ours"].get(f"{family} {seconds}") for family in families]
    return [result for part in parts if part for result in part] if all(parts) else []


def row(families: tuple[str, ...], seconds: float, mean: float, worst: float, found: dict[str, Any]) -> list[str]:
    results = gather(families, seconds, found)
    if not results:
        return []
    ratios = [r["length"] / r["best_known"] for r in results]
    reached = sum(ratios) / len(ratios)
    steps = sum(-(-r["length"] // r["step"]) == -(-r["at_least"] // r["step"]) for r in results)
    proven = sum(r["length"] == r["at_least"] for r in results)
    best = sum(ratio <= 1 for ratio in ratios)
    counts = COUNTS.get((families, seconds), (0, 0, 0))
    is_met = reached <= mean and max(ratios) <= worst
    is_met = is_met and all(map(ge, (best, proven, steps), (share * len(results) for share in counts)))
    aims = [f"{aim:g}" for aim in (mean, worst) if aim < math.inf]
    aims += [f"{share:.0%} {what}" for share, what in zip(counts, HEAD[-3:], strict=True) if share]
    return [
        "+".join(families), f"{seconds:g}", f"{mean_of([r['processor'] for r in results]):.2f}",
        f"{mean_of([r['wall'] for r in results]):.2f}", f"{len(results)}", f"{reached:.4f}", f"{max(ratios):.4f}",
        " / ".join(aims) or "–", word(is_met) if aims else "–",
        f"{best}", f"{proven}", f"{steps}",
    ]  # fmt: skip


HEAD = ["problems", "at s", "used", "wall", "n", "mean", "worst", "aim", "", "at best", "proven", "to the step"]


def peers_table(found: dict[str, Any]) -> list[list[str]]:
    """Mean length over best known of ours at the shortest time beside the peers', and where we are longer."""
    rows = [["problems", "ours", "at s", "rectpack", "processor s", "CP-SAT", "laid", "proven", "longer than rectpack",
             "longer in a fifth"]]  # fmt: skip
    for family, seconds in (("C", 0.3), ("N", 0.3), *((name, 1) for name in LIBRARY)):
        ours = {r["name"]: r for r in gather((family,), seconds, found)}
        peers = {name: peer for name, peer in found["peers"].items() if peer["family"] == family}
        if not ours or not peers:
            continue
        exact = [p["cp_sat"] / p["best_known"] for p in peers.values() if p["cp_sat"]]
        rows.append([
            family, f"{mean_of([r['length'] / r['best_known'] for r in ours.values()]):.4f}", f"{seconds:g}",
            f"{mean_of([p['rectpack'] / p['best_known'] for p in peers.values()]):.4f}",
            f"{mean_of([p['rectpack_processor'] for p in peers.values()]):.2f}",
            f"{mean_of(exact):.4f}" if exact else "–", f"{len(exact)} of {len(peers)}",
            f"{sum(p['cp_sat_proven'] for p in peers.values())}",
            f"{sum(ours[name]['length'] > p['rectpack'] for name, p in peers.items() if name in ours)}",
            f"{sum(p.get('ours_in_a_fifth', 0) > p['rectpack'] for p in peers.values())}",
        ])  # fmt: skip
    return rows


def word(is_met: bool) -> str:
    return "met" if is_met else "missed"


def mean_of(values: list[float]) -> float:
    return sum(values) / len(values)


def show(rows: list[list[str]], markdown: bool) -> None:
    widths = [max(len(cell) for cell in column) for column in zip(*rows, strict=True)]
    for number, cells in enumerate(rows):
        padded = [cell.ljust(width) for cell, width in zip(cells, widths, strict=True)]
        print(f"| {' | '.join(padded)} |" if markdown else "  ".join(padded).rstrip())
        if markdown and number == 0:
            print(f"| {' | '.join('-' * width for width in widths)} |")
    print()


def report(found: dict[str, Any], markdown: bool) -> None:
    print(f"\n{found.get('machine', 'nothing is measured yet')}\n")
    show([HEAD, *(cells for given in ROWS if (cells := row(*given, found)))], markdown)
    if found["peers"]:
        show(peers_table(found), markdown)
    if "first" in found:
        first, curve = found["first"], found["curve"]
        show([["first plan, panels", *first], ["processor ms", *(f"{ms:.1f}" for ms in first.values())],
              ["aim", *(f"{FIRST[panels]:g}" for panels in first)],
              ["", *(word(ms <= FIRST[panels]) for panels, ms in first.items())]], markdown)  # fmt: skip
        per = [f"{1000 * ms / (int(n) * math.log2(int(n))):.2f}" for n, ms in curve.items()]
        show([["one pass, panels", *curve], ["processor ms", *(f"{ms:.1f}" for ms in curve.values())],
              ["µs ÷ n log₂ n", *per]], markdown)  # fmt: skip
    if "pyodide" in found:
        show([["same work, ms", *found["pyodide"]], ["CPython", *(f"{a:.0f}" for a, _ in found["pyodide"].values())],
              ["Pyodide", *(f"{b:.0f}" for _, b in found["pyodide"].values())],
              ["times slower", *(f"{b / a:.1f}" for a, b in found["pyodide"].values())],
              [f"at most {MOST_TIMES_SLOWER}",
               *(word(b <= MOST_TIMES_SLOWER * a) for a, b in found["pyodide"].values())]], markdown)  # fmt: skip


def machine() -> str:
    names = [line.split(":")[1].strip() for line in _lines("/proc/cpuinfo") if line.startswith("model name")]
    processor = names[0] if names else platform.processor() or platform.machine()
    return f"{processor}, {os.cpu_count()} processors, {platform.python_implementation()} {platform.python_version()}"


def _lines(path: str) -> list[str]:
    return Path(path).read_text().splitlines() if Path(path).exists() else []


def main() -> None:
    parser = argparse.ArgumentParser(prog="build.py bench layout")
    parser.add_argument("--only", nargs="*", choices=tuple(FAMILIES), help="these families alone")
    parser.add_argument("--most", type=float, default=math.inf, help="leave out rows of more seconds than these")
    parser.add_argument("--parts", nargs="*", choices=("ours", "peers", "speed", "pyodide"),
                        default=("ours", "peers", "speed", "pyodide"))  # fmt: skip
    parser.add_argument("--print", action="store_true", dest="shown", help="print what was measured before")
    parser.add_argument("--markdown", action="store_true", help="print tables as the README has them")
    asked = parser.parse_args()
    found = json.loads(RESULTS.read_text()) if RESULTS.exists() else {"ours": {}, "peers": {}}
    if not asked.shown:
        if "ours" in asked.parts:
            measure_rows(asked, found)
        if "peers" in asked.parts:
            measure_peers(asked, found)
            measure_fifths(found)
        if "speed" in asked.parts:
            measure_speed(found)
        if "pyodide" in asked.parts:
            measure_pyodide(found)
        keep(found)
    report(found, asked.markdown)


main()
