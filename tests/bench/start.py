"""Measures the product beside the bare runtime and prints both: start, size, plan times. Run by build.py bench."""

import json
import shutil
import statistics
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from types import ModuleType
from typing import Any

ROOT = Path(__file__).resolve().parent.parent.parent
sys.path.insert(0, str(ROOT / "tests"))

from bench.jobs import mixed_job  # noqa: E402
from conftest import load_build_script  # noqa: E402
from handset import FLAGS, Site  # noqa: E402
from playwright.sync_api import Page, Playwright, sync_playwright  # noqa: E402

from plumpline import plan  # noqa: E402

HERE = Path(__file__).resolve().parent
RUNS = 5
SETTLE_MS = 1500  # the browser writes away what it compiled
PANELS = (12, 60, 200, 1000)
EFFORTS = ("quick", "full")
# What a bare page needs of npm's pyodide.
STOCK = ("pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm", "python_stdlib.zip", "pyodide-lock.json")


def lay_out_ours(script: ModuleType, folder: Path) -> None:
    """The built product, with the page of the measurements in the place of its own."""
    shutil.copytree(ROOT / "dist", folder, ignore=shutil.ignore_patterns("*.gz", "*.br"))
    finish(script, folder)


def lay_out_bare(script: ModuleType, folder: Path) -> None:
    """The stock runtime and a worker that starts it, kept by the same service worker as ours."""
    shutil.copytree(HERE / "bare", folder)
    (folder / "pyodide").mkdir()
    for name in STOCK:
        shutil.copy2(script.PYODIDE / name, folder / "pyodide")
    finish(script, folder)


def finish(script: ModuleType, folder: Path) -> None:
    shutil.copytree(HERE / "page", folder, dirs_exist_ok=True)
    shutil.copy2(ROOT / "web/sw.js", folder)
    script.fill_service_worker(folder)
    script.press(folder, ROOT / ".build")


@contextmanager
def browser(playwright: Playwright, script: ModuleType, profile: Path) -> Iterator[Page]:
    context = playwright.chromium.launch_persistent_context(
        str(profile), executable_path=script.find_browser(), args=FLAGS
    )
    context.set_default_timeout(600_000)
    yield context.pages[0]
    context.close()


def measure_start(playwright: Playwright, script: ModuleType, site: Site, scratch: Path) -> dict[str, float]:
    """A cold start in a fresh profile, then warm ones from what the service worker kept, the server gone; ms.

    The browser is restarted in between. Of the warm starts the second counts: in the first the browser still
    compiles for the files' new place, as it does once after every update.
    """
    profile = scratch / f"profile-{time.monotonic_ns()}"
    request = {"do": "plan", "job": mixed_job(12), "effort": "quick"}
    found = {}
    for state in ("cold", "first warm", "warm"):
        with browser(playwright, script, profile) as page:
            page.goto(site.url)
            page.locator("html[data-ready=yes]").wait_for(state="attached")
            answer = page.evaluate("(request) => start(request)", request)
            assert answer["reply"] == 2 or answer["reply"]["ok"]["cloths"], answer
            found[state] = answer["ms"]
            if state == "cold":
                page.evaluate("() => keep()")
            page.wait_for_timeout(SETTLE_MS)
        site.stop()
    site.start()
    shutil.rmtree(profile)
    return found


def compare_starts(playwright: Playwright, script: ModuleType, sites: dict[str, Site], scratch: Path) -> Any:
    """{"ours" | "bare": {"cold" | "warm": median ms}}, the two measured in turn."""
    runs: dict[str, list[dict[str, float]]] = {name: [] for name in sites}
    for _ in range(RUNS):
        for name, site in sites.items():
            runs[name].append(measure_start(playwright, script, site, scratch))
    return {
        name: {state: statistics.median(run[state] for run in found) for state in ("cold", "warm")}
        for name, found in runs.items()
    }


def size(files: list[Path]) -> dict[str, int]:
    """Bytes of the files as they are, and as a host sends them pressed."""

    def sent(path: Path, suffix: str) -> int:
        copy = Path(f"{path}{suffix}")
        return (copy if copy.exists() else path).stat().st_size

    kinds = {"raw": "", "gz": ".gz", "br": ".br"}
    return {kind: sum(sent(path, suffix) for path in files) for kind, suffix in kinds.items()}


def compare_sizes(script: ModuleType, bare: Path) -> Any:
    ours = [path for path in script.files_of(ROOT / "dist") if path.suffix not in (".gz", ".br")]
    return {"ours": size(ours), "bare": size([bare / "pyodide" / name for name in STOCK])}


def plan_times(one: Callable[[dict[str, Any], str], float]) -> Any:
    """{panels: {effort: ms}}; a plan of less than a second is the median of five."""
    found: dict[int, dict[str, float]] = {}
    for panels in PANELS:
        found[panels] = {}
        for effort in EFFORTS:
            first = one(mixed_job(panels), effort)
            times = [first] + ([one(mixed_job(panels), effort) for _ in range(4)] if first < 1000 else [])
            found[panels][effort] = statistics.median(times)
    return found


def on_cpython(job: dict[str, Any], effort: str) -> float:
    since = time.perf_counter()
    plan(job, effort)
    return (time.perf_counter() - since) * 1000


def in_browser(playwright: Playwright, script: ModuleType, site: Site, scratch: Path) -> Any:
    with browser(playwright, script, scratch / "profile-plans") as page:
        page.goto(site.url)
        page.locator("html[data-ready=yes]").wait_for(state="attached")
        page.evaluate("(request) => start(request)", {"do": "plan", "job": mixed_job(12), "effort": "quick"})

        def one(job: dict[str, Any], effort: str) -> float:
            answer = page.evaluate("(request) => ask(request)", {"do": "plan", "job": job, "effort": effort})
            assert answer["reply"]["ok"]["cloths"]
            return float(answer["ms"])

        return plan_times(one)


def show(found: dict[str, Any]) -> None:
    print(f"\nFrom creating the worker to the first answer, ms (median of {RUNS}; warm: browser restarted, no network)")
    print(f"{'':28}{'cold':>10}{'warm':>10}")
    for name, title in (("ours", "Plumpline, a plan"), ("bare", "bare runtime, 1 + 1")):
        times = found["start"][name]
        print(f"{title:28}{times['cold']:10.0f}{times['warm']:10.0f}")
    print(f"\nSize, bytes\n{'':28}{'raw':>12}{'gzip':>12}{'brotli':>12}")
    for name, title in (("ours", "Plumpline, everything"), ("bare", "bare runtime")):
        sizes = found["size"][name]
        print(f"{title:28}{sizes['raw']:12,}{sizes['gz']:12,}{sizes['br']:12,}")
    print("\nOne plan of mixed sizes, ms")
    columns = [(place, effort) for place in found["plan"] for effort in EFFORTS]
    print(f"{'panels':>8}" + "".join(f"{f'{place}, {effort}':>18}" for place, effort in columns))
    for panels in PANELS:
        times = [found["plan"][place][panels][effort] for place, effort in columns]
        print(f"{panels:8}" + "".join(f"{ms:18.0f}" for ms in times))


def main() -> None:
    script = load_build_script()
    with tempfile.TemporaryDirectory() as name, sync_playwright() as playwright:
        scratch = Path(name)
        lay_out_ours(script, scratch / "ours")
        lay_out_bare(script, scratch / "bare")
        sites = {kind: Site(script, scratch / kind) for kind in ("ours", "bare")}
        found = {
            "start": compare_starts(playwright, script, sites, scratch),
            "size": compare_sizes(script, scratch / "bare"),
            "plan": {
                "CPython": plan_times(on_cpython),
                "browser": in_browser(playwright, script, sites["ours"], scratch),
            },
        }
        for site in sites.values():
            site.stop()
    (ROOT / ".build/bench.json").write_text(json.dumps(found, indent=2) + "\n")
    show(found)


if __name__ == "__main__":
    main()
