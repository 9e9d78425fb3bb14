"""Writes what the core answers to every job of a folder, as JSON lines: runs on CPython and inside Pyodide alike.

On CPython: python write_answers.py FOLDER OUT. Inside Pyodide: python.mjs write_answers.py FOLDER OUT APP.zip, where
the core is what the product ships, unpacked from APP.zip.
"""

import json
import sys
from pathlib import Path

REQUESTS = {
    "quick": {"do": "plan", "effort": "quick"},
    "full": {"do": "plan", "effort": "full"},
    "templates": {"do": "templates", "paper": "a4"},
    "sheet": {"do": "sheet", "paper": "letter"},
}


def unpack_core(archive: str) -> None:
    import shutil

    shutil.unpack_archive(archive, "/lib/python3.14/site-packages")


def write_answers(folder: Path, out: Path) -> None:
    from plumpline.ask import ask

    lines = []
    for path in sorted(folder.glob("job-*.json")):
        job = json.loads(path.read_text("utf-8"))
        for name, request in REQUESTS.items():
            lines.append(json.dumps([path.name, name, ask(json.dumps({**request, "job": job}))]))
    out.write_bytes("\n".join(lines).encode())


if "ARGUMENTS" in globals():  # inside Pyodide, where the host's files are under /host
    examples, target, app = (f"/host{word}" for word in ARGUMENTS)  # noqa: F821
    unpack_core(app)
    write_answers(Path(examples), Path(target))
else:
    write_answers(Path(sys.argv[1]), Path(sys.argv[2]))
