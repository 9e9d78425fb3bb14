"""The command line: `python -m plumpline plan JOB.json` writes the answer as JSON."""

from __future__ import annotations

import argparse
import json
import sys
from pathlib import Path

from plumpline.planning import plan
from plumpline.problems import JobError


def main(arguments: list[str] | None = None) -> int:
    """Runs one command; returns 0, or 1 where the job has problems, which are then written as JSON."""
    parser = argparse.ArgumentParser(prog="plumpline", description="From a cushion job to the cloth to ask for.")
    commands = parser.add_subparsers(dest="command", required=True)
    planning = commands.add_parser("plan", help="the lay plan and the length to ask for")
    planning.add_argument("job", type=Path, metavar="JOB.json", help="a job document")
    planning.add_argument("--effort", choices=("quick", "full"), default="full", help="how long to look")
    asked = parser.parse_args(arguments)
    return _plan(asked.job, asked.effort)


def _plan(path: Path, effort: str) -> int:
    try:
        document = json.loads(path.read_text(encoding="utf-8-sig"))
    except (OSError, ValueError, RecursionError) as error:
        return _write({"problems": [{"at": "", "code": "not-a-job", "text": f"{path} cannot be read: {error}."}]}, 1)
    try:
        return _write(plan(document, "quick" if effort == "quick" else "full"), 0)
    except JobError as error:
        return _write({"problems": error.problems}, 1)


def _write(value: object, code: int) -> int:
    # Written in ASCII, so that it arrives whole wherever the output goes.
    sys.stdout.write(json.dumps(value, indent=2) + "\n")
    return code


if __name__ == "__main__":
    sys.exit(main())
