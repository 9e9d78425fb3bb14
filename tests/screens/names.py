"""The names of all controls and fields, read from the one file the screens take them from: web/words/controls.js."""

import json
import subprocess
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path
from typing import Any

WEB = Path(__file__).resolve().parent.parent.parent / "web"
# The words of the tape's keys are the parts' own.
EIGHTHS = {
    "1/8": "one eighth",
    "1/4": "one quarter",
    "3/8": "three eighths",
    "1/2": "one half",
    "5/8": "five eighths",
    "3/4": "three quarters",
    "7/8": "seven eighths",
}


@cache
def tables() -> dict[str, Any]:
    """{"controls": {screen: {key: [role, name]}}, "fields": {pattern: {station, name, kind, …}}}, as in the file."""
    program = (
        "import(process.argv[1]).then(({ controls, fields }) => "
        "process.stdout.write(JSON.stringify({ controls, fields })))"
    )
    file = (WEB / "words" / "controls.js").as_uri()
    done = subprocess.run(["node", "-e", program, file], check=True, capture_output=True, text=True)
    found: dict[str, Any] = json.loads(done.stdout)
    return found


@dataclass(frozen=True)
class FieldNames:
    """One field of a job as the screens offer it."""

    pattern: str
    station: str
    name: str
    kind: str
    view: bool = False
    options: dict[str, str] = field(default_factory=dict)


def fields() -> list[FieldNames]:
    """Every field, in the order of the file."""
    return [
        FieldNames(
            pattern, entry["station"], entry["name"], entry["kind"], entry.get("view", False), entry.get("options", {})
        )
        for pattern, entry in tables()["fields"].items()
    ]


def control(key: str, **places: str) -> tuple[str, str]:
    """The role and name of a control such as "home.newJob", its {places} filled."""
    screen, name = key.split(".")
    role, text = tables()["controls"][screen][name]
    return role, text.format(**places)
