"""The command line: `python -m plumpline plan JOB.json` writes the answer as JSON, `templates` and `sheet` a PDF."""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

from plumpline.papers import PAPERS, sheet, templates
from plumpline.planning import plan
from plumpline.problems import JobError


def main(arguments: list[str] | None = None) -> int:
    """Runs one command; returns 0, or 1 where the job has problems, which are then written as JSON."""
    parser = argparse.ArgumentParser(prog="plumpline", description="From a cushion job to the cloth to ask for.")
    commands = parser.add_subparsers(dest="command", required=True)
    planning = commands.add_parser("plan", help="the lay plan and the length to ask for")
    planning.add_argument("--effort", choices=("quick", "full"), default="full", help="how long to look")
    papers = [commands.add_parser(name, help=what) for name, (_, what) in _PAPERS.items()]
    for printing in papers:
        printing.add_argument("--paper", choices=PAPERS, default="a4", help="what it is printed on")
        printing.add_argument("--cushion", help="the id of one cover; without it all are printed")
        printing.add_argument("--out", type=Path, required=True, metavar="FILE", help="the PDF to write")
    for command in (planning, *papers):
        command.add_argument("job", type=Path, metavar="JOB.json", help="a job document")
    asked = parser.parse_args(arguments)
    if asked.command == "plan":
        return _answered(asked.job, lambda job: _write(plan(job, asked.effort), 0))
    write, _ = _PAPERS[asked.command]
    return _answered(asked.job, lambda job: _print(write(job, asked.paper, asked.cushion), asked.out))


# The papers, each by its command: what writes it, and what it is.
_PAPERS = {
    "templates": (templates, "full-size templates as PDF"),
    "sheet": (sheet, "the workroom's sheet of every cover as PDF"),
}


def _answered(path: Path, answer: Callable[[dict[str, Any]], int]) -> int:
    try:
        document = json.loads(path.read_text(encoding="utf-8-sig"))
    except (OSError, ValueError, RecursionError) as error:
        return _write({"problems": [{"at": "", "code": "not-a-job", "text": f"{path} cannot be read: {error}."}]}, 1)
    try:
        return answer(document)
    except JobError as error:
        return _write({"problems": error.problems}, 1)


def _print(paper: bytes, out: Path) -> int:
    out.write_bytes(paper)
    return 0


def _write(value: object, code: int) -> int:
    # Written in ASCII, so that it arrives whole wherever the output goes.
    sys.stdout.write(json.dumps(value, indent=2) + "\n")
    return code


if __name__ == "__main__":
    sys.exit(main())
