"""The command line: `python -m plumpline plan JOB.json` and `quote` write JSON, `templates` and `sheet` a PDF."""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

from plumpline.beside.comparing import compare
from plumpline.dialect import WORDINGS, reworded, wording
from plumpline.papers import PAPERS, sheet, templates
from plumpline.planning import Effort, plan
from plumpline.price import quote
from plumpline.problems import JobError


def main(arguments: list[str] | None = None) -> int:
    """Runs one command; returns 0, or 1 where the job has problems, which are then written as JSON."""
    parser = argparse.ArgumentParser(prog="plumpline", description="From a cushion job to the cloth to ask for.")
    commands = parser.add_subparsers(dest="command", required=True)
    planning = commands.add_parser("plan", help="the lay plan and the length to ask for")
    pricing = commands.add_parser("quote", help="the price, line by line")
    for answering in (planning, pricing):
        answering.add_argument("--effort", choices=("quick", "full"), default="full", help="how long to look")
    comparing = commands.add_parser("compare", help="the ways it could be made, side by side")
    papers = [commands.add_parser(name, help=what) for name, (_, what) in _PAPERS.items()]
    for printing in papers:
        printing.add_argument("--paper", choices=PAPERS, default="a4", help="what it is printed on")
        printing.add_argument("--cushion", help="the id of one cover; without it all are printed")
        printing.add_argument("--out", type=Path, required=True, metavar="FILE", help="the PDF to write")
    for command in (planning, pricing, comparing, *papers):
        command.add_argument("--words", choices=WORDINGS, default=WORDINGS[0], help="how the trade's words are said")
        command.add_argument("job", type=Path, metavar="JOB.json", help="a job document")
    asked = parser.parse_args(arguments)
    if asked.command in _ANSWERS:
        answer = _ANSWERS[asked.command]
        return _answered(asked, lambda job: _write(reworded(answer(job, asked.effort), wording(asked.words, job)), 0))
    if asked.command == "compare":
        return _answered(asked, lambda job: _write(reworded(compare(job), wording(asked.words, job)), 0))
    write, _ = _PAPERS[asked.command]
    return _answered(asked, lambda job: _print(write(job, asked.paper, asked.cushion, asked.words), asked.out))


# What is answered as JSON, by the command.
_ANSWERS: dict[str, Callable[[dict[str, Any], Effort], dict[str, Any]]] = {"plan": plan, "quote": quote}

# The papers, each by its command: what writes it, and what it is.
_PAPERS = {
    "templates": (templates, "full-size templates as PDF"),
    "sheet": (sheet, "the workroom's sheet of every cover as PDF"),
}


def _answered(asked: argparse.Namespace, answer: Callable[[dict[str, Any]], int]) -> int:
    path: Path = asked.job
    try:
        document = json.loads(path.read_text(encoding="utf-8-sig"))
    except (OSError, ValueError, RecursionError) as error:
        return _write({"problems": [{"at": "", "code": "not-a-job", "text": f"{path} cannot be read: {error}."}]}, 1)
    try:
        return answer(document)
    except JobError as error:
        return _write(reworded({"problems": error.problems}, wording(asked.words, document)), 1)


def _print(paper: bytes, out: Path) -> int:
    out.write_bytes(paper)
    return 0


def _write(value: object, code: int) -> int:
    # Written in ASCII, so that it arrives whole wherever the output goes.
    sys.stdout.write(json.dumps(value, indent=2) + "\n")
    return code


if __name__ == "__main__":
    sys.exit(main())
