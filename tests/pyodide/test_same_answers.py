"""The same job gives the same answer, byte for byte: on CPython under several hash seeds, and as shipped in Pyodide."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent.parent
EXAMPLES = ROOT / "core/plumpline/schema/examples"
WRITER = Path(__file__).resolve().parent / "write_answers.py"
JOBS = sorted(path.name for path in EXAMPLES.glob("job-*.json"))
SEEDS = ("0", "1", "4294967295")

Answers = dict[tuple[str, str], str]


def read_answers(path: Path) -> Answers:
    lines = map(json.loads, path.read_text("utf-8").splitlines())
    return {(name, request): reply for name, request, reply in lines}


def run_writer(words: list[str | Path], **environment: str) -> None:
    done = subprocess.run(list(map(str, words)), env=os.environ | environment, capture_output=True, text=True)
    assert done.returncode == 0, done.stdout + done.stderr


@pytest.fixture(scope="module")
def on_cpython(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Answers]:
    """The answers on CPython, by hash seed."""
    found = {}
    for seed in SEEDS:
        out = tmp_path_factory.mktemp("cpython") / "answers"
        run_writer([sys.executable, WRITER, EXAMPLES, out], PYTHONHASHSEED=seed)
        found[seed] = read_answers(out)
    return found


@pytest.fixture(scope="module")
def in_pyodide(dist: Path, tmp_path_factory: pytest.TempPathFactory) -> dict[str, Answers]:
    """The answers of the shipped core on the shipped standard library, by hash seed."""
    found = {}
    for seed in SEEDS[:2]:
        out = tmp_path_factory.mktemp("pyodide") / "answers"
        words = ["node", ROOT / "web/packing/python.mjs", WRITER, EXAMPLES, out, dist / "plumpline.zip"]
        run_writer(words, STDLIB=str(dist / "vendor/pyodide/python_stdlib.zip"), HASHSEED=seed)
        found[seed] = read_answers(out)
    return found


@pytest.mark.parametrize(
    ("asked", "holds"),
    [("quick", "cloths"), ("full", "cloths"), ("templates", "pdf"), ("sheet", "pdf"), ("quote", "lines")],
)
@pytest.mark.parametrize("name", JOBS)
def test_a_job_gets_the_same_answer_byte_for_byte_everywhere(
    name: str, asked: str, holds: str, on_cpython: dict[str, Answers], in_pyodide: dict[str, Answers]
) -> None:
    answers = [*on_cpython.values(), *in_pyodide.values()]
    first = answers[0][name, asked]
    assert json.loads(first)["ok"][holds]
    for other in answers[1:]:
        assert other[name, asked] == first


def test_there_is_an_example_of_every_kind() -> None:
    assert JOBS
