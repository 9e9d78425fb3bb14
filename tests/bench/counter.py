"""Measures how soon a change at the counter is answered, natively and in the browser. Run by build.py bench counter."""

import statistics
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parent.parent.parent
sys.path[:0] = [str(ROOT / "tests"), str(ROOT / "tests/bench")]

from bench.jobs import mixed_job  # noqa: E402
from conftest import load_build_script  # noqa: E402
from handset import Site  # noqa: E402
from playwright.sync_api import sync_playwright  # noqa: E402
from start import browser, lay_out_ours  # noqa: E402

from plumpline import plan  # noqa: E402
from plumpline.beside.comparing import compare  # noqa: E402

RUNS = 5
PANELS = 24  # of twelve covers
AIMS = {"CPython": 100, "browser": 500}
REPEAT = {
    "repeat": {"across": "13 1/2 in", "along": "25 in"},
    "motifs": [{"id": "m1", "across": "6 in", "along": "0 in"}],
    "start": "choose",
}
# What is tapped at the counter, as a change of the cloth.
CHANGES: dict[str, dict[str, Any]] = {
    "true width 53 1/2 in": {"width": "53 1/2 in"},
    "repeat 13 1/2 × 25 in": REPEAT,
    "free to turn": {"direction": "any"},
}
Ask = Callable[[dict[str, Any]], float]


def job_with(change: dict[str, Any], pattern: str = "free") -> dict[str, Any]:
    job = mixed_job(PANELS)
    job["cloths"][0] |= change
    motif = {"motif": "m1"} if pattern == "centred" else {}
    for cushion in job["cushions"]:
        cushion["cover"]["front"] |= {"pattern": pattern, **motif}
    return job


def questions() -> dict[str, dict[str, Any]]:
    """What is asked, by name: the first plan after each change, then the ways side by side."""
    found: dict[str, dict[str, Any]] = {
        name: {"do": "plan", "job": job_with(change), "effort": "quick"} for name, change in CHANGES.items()
    }
    found["fronts centred"] = {"do": "plan", "job": job_with(REPEAT, "centred"), "effort": "quick"}
    found["ways side by side, searched to the end"] = {"do": "compare", "job": job_with(REPEAT, "centred")}
    bolts = job_with(REPEAT, "centred")
    bolts["cloths"] += [
        bolts["cloths"][0] | {"id": name, "width": width, "instead_of": "k1"}
        for name, width in (("k2", "48 in"), ("k3", "60 in"))
    ]
    found["the same with three bolts"] = {"do": "compare", "job": bolts}
    return found


def on_cpython(question: dict[str, Any]) -> float:
    since = time.perf_counter()
    if question["do"] == "plan":
        plan(question["job"], question["effort"])
    else:
        compare(question["job"])
    return (time.perf_counter() - since) * 1000


def times(ask: Ask) -> dict[str, float]:
    """The median of five, ms."""
    return {name: statistics.median(ask(question) for _ in range(RUNS)) for name, question in questions().items()}


def in_browser() -> dict[str, float]:
    script = load_build_script()
    with tempfile.TemporaryDirectory() as name, sync_playwright() as playwright:
        lay_out_ours(script, Path(name) / "ours")
        site = Site(script, Path(name) / "ours")
        with browser(playwright, script, Path(name) / "profile") as page:
            page.goto(site.url)
            page.locator("html[data-ready=yes]").wait_for(state="attached")
            page.evaluate("(request) => start(request)", {"do": "plan", "job": mixed_job(PANELS), "effort": "quick"})

            def ask(question: dict[str, Any]) -> float:
                answer = page.evaluate("(request) => ask(request)", question)
                assert answer["reply"]["ok"], answer
                return float(answer["ms"])

            found = times(ask)
        site.stop()
    return found


def main() -> None:
    found = {"CPython": times(on_cpython), "browser": in_browser()}
    print(f"\n{PANELS // 2} covers: from the question to the core's answer, ms (median of {RUNS})")
    print(f"{'':42}" + "".join(f"{place:>12}" for place in found))
    for name in found["CPython"]:
        print(f"{name:42}" + "".join(f"{ms[name]:12.0f}" for ms in found.values()))
    print(f"{'aim for a change':42}" + "".join(f"{AIMS[place]:12}" for place in found))


if __name__ == "__main__":
    main()
