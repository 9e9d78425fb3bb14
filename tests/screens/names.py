"""The names of all controls and fields, read from the one file the screens take them from: web/words/controls.js."""

import json
import subprocess
from dataclasses import dataclass, field, replace
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
def told_by(file: str) -> dict[str, Any]:
    """Everything that a file of web/ holds as plain data."""
    program = "import(process.argv[1]).then((all) => process.stdout.write(JSON.stringify(all)))"
    done = subprocess.run(["node", "-e", program, (WEB / file).as_uri()], check=True, capture_output=True, text=True)
    found: dict[str, Any] = json.loads(done.stdout)
    return found


def tables() -> dict[str, Any]:
    """{"controls": {screen: {key: [role, name]}}, "fields": {pattern: {station, name, kind, …}}}, as in the file."""
    return told_by("words/controls.js")


@dataclass(frozen=True)
class FieldNames:
    """One field of a job as the screens offer it."""

    pattern: str
    station: str
    name: str
    kind: str
    view: bool = False
    options: dict[str, str] = field(default_factory=dict)
    names: dict[str, str] = field(default_factory=dict)
    least: int = 1

    def between(self, one: int, other: int) -> "FieldNames":
        """The field of a measure from one corner of an outline to another, called by them."""
        return replace(self, name=self.name.format(ends=chr(ord("A") + one) + chr(ord("A") + other)))

    def called(self, kind: str) -> str:
        """Its name on a cushion of that kind."""
        return self.names.get(kind, self.name)


def fields() -> list[FieldNames]:
    """Every field, in the order of the file."""
    known = FieldNames.__dataclass_fields__
    return [
        FieldNames(pattern, **{key: value for key, value in entry.items() if key in known})
        for pattern, entry in tables()["fields"].items()
    ]


def control(key: str, **places: str) -> tuple[str, str]:
    """The role and name of a control such as "home.newJob", its {places} filled."""
    screen, name = key.split(".")
    role, text = tables()["controls"][screen][name]
    return role, text.format(**places)
