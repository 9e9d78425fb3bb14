"""The core's tests once more inside Pyodide: all that pass on CPython without a reference library pass there too."""

import json
import subprocess
import sys
from pathlib import Path
from types import ModuleType

import pytest

ROOT = Path(__file__).resolve().parent.parent.parent
HERE = Path(__file__).resolve().parent
CHOICE = ["-m", "not reference and not long"]


@pytest.fixture(scope="module")
def index(script: ModuleType, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A package index of wheels that run in Pyodide: what the core needs, pytest and hypothesis, all as on CPython."""
    wheels, work = ROOT / ".build/wheels-for-tests", ROOT / ".build"
    wanted = requirements(script)
    script.once(work / "wheels-for-tests.stamp", script.digest(*wanted), "fetching the test tools for Pyodide",
                lambda: script.download_wheels(wheels, *wanted))  # fmt: skip
    folder = tmp_path_factory.mktemp("index")
    script.write_index(folder, wheels)
    return folder


def requirements(script: ModuleType) -> list[str]:
    project = script.PROJECT["project"]
    tools = project["optional-dependencies"]["dev"]
    return project["dependencies"] + [tool for tool in tools if tool.startswith(("pytest==", "hypothesis=="))]


def collected_on_cpython() -> list[str]:
    words = [sys.executable, "-m", "pytest", "--collect-only", "-q", *CHOICE, "tests/core"]
    listed = subprocess.run(words, cwd=ROOT, capture_output=True, text=True, check=True).stdout
    return [line for line in listed.splitlines() if "::" in line]


def test_every_core_test_passes_inside_pyodide_too(
    script: ModuleType, index: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    script.main(["build"])
    report = tmp_path / "passed.json"
    micropip = next((ROOT / ".build/wheels").glob("micropip-*.whl"))
    with script.served(index) as address:
        words = ["node", ROOT / "web/packing/python.mjs", HERE / "run_core_tests.py"]
        words += [f"{address}simple", json.dumps(requirements(script)), ROOT, report]
        done = subprocess.run(
            list(map(str, words)), env=script.os.environ | {"MICROPIP": str(micropip)}, capture_output=True, text=True
        )
    assert done.returncode == 0, done.stdout + done.stderr
    passed = json.loads(report.read_text())
    with capsys.disabled():
        print(f"{len(passed)} core tests passed inside Pyodide ", end="")
    assert sorted(passed) == sorted(collected_on_cpython())
    assert passed
