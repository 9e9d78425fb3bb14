"""Writes what the core answers to every job of a folder, as JSON lines: runs on CPython and inside Pyodide alike.

On CPython: python write_answers.py FOLDER OUT. Inside Pyodide: python.mjs write_answers.py FOLDER OUT APP.zip, where
the core is what the product ships, unpacked from APP.zip.
"""

import json
import sys
from pathlib import Path

# A price on any of the jobs, with figures of our own invention.
PRICE = {
    "currency": "USD",
    "rates": {"hour": "36.00", "overhead": "4.50", "travel": {"amount": "0.65", "per": "mi"}},
    "operations": {"make_piping": {"minutes": "2", "per": "ft"}, "cut": {"minutes": "3.5"}},
    "prices": {
        "thread": {"amount": "4.20"},
        "zip": {"amount": "2.75", "per": "yd"},
        "cord": {"amount": "0.80", "per": "m"},
    },
    "markup": {"cloth": "0.5", "materials": "40 %", "work": "10 %"},
    "extras": {"piping": {"on": True, "rate": "7.5 %"}, "rush": {"on": True, "amount": "5.00", "rate": "25 %"}},
    "items": [{"text": "Castors", "amount": "12.50", "count": 3}],
    "travel": {"distance": "12.5", "trips": 2},
    "minimum": "150.00",
    "discount": {"rate": "5 %"},
    "tax": {"rate": "8.875 %", "rounding": "line"},
}

REQUESTS = {
    "quick": {"do": "plan", "effort": "quick"},
    "full": {"do": "plan", "effort": "full"},
    "templates": {"do": "templates", "paper": "a4"},
    "sheet": {"do": "sheet", "paper": "letter"},
}


def unpack_core(archive: str) -> None:
    import shutil

    shutil.unpack_archive(archive, "/lib/python3.14/site-packages")


def price_request(job: dict) -> dict:
    """Two yards of each cloth, priced in the currency of the price."""
    cloths = [{**cloth, "price": {"amount": "32.00", "per": "yd", "currency": "USD"}} for cloth in job["cloths"]]
    bought = {cloth["id"]: 72 * 25_400_000 for cloth in cloths}
    return {"do": "quote", "job": {**job, "cloths": cloths, "quote": PRICE}, "bought": bought}


def write_answers(folder: Path, out: Path) -> None:
    from plumpline.ask import ask

    lines = []
    for path in sorted(folder.glob("job-*.json")):
        job = json.loads(path.read_text("utf-8"))
        for name, request in REQUESTS.items():
            lines.append(json.dumps([path.name, name, ask(json.dumps({**request, "job": job}))]))
        lines.append(json.dumps([path.name, "quote", ask(json.dumps(price_request(job)))]))
    out.write_bytes("\n".join(lines).encode())


if "ARGUMENTS" in globals():  # inside Pyodide, where the host's files are under /host
    examples, target, app = (f"/host{word}" for word in ARGUMENTS)  # noqa: F821
    unpack_core(app)
    write_answers(Path(examples), Path(target))
else:
    write_answers(Path(sys.argv[1]), Path(sys.argv[2]))
