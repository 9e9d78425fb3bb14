"""Times the same counted work of the engine natively and inside Pyodide (there with ARGUMENTS from python.mjs)."""

import json
import sys
import time
from pathlib import Path
from typing import Any

WORK = 300_000


def milliseconds(instances: list[dict[str, Any]]) -> list[float]:
    """How long each instance takes for the same counted work; the first one is laid once before, to warm up."""
    from plumpline.layout import lay

    lay(instances[0], work=WORK // 10)
    times = []
    for instance in instances:
        began = time.process_time()
        lay(instance, work=WORK)
        times.append((time.process_time() - began) * 1000)
    return times


if "ARGUMENTS" in globals():
    repository, given, answer = ARGUMENTS  # type: ignore[name-defined]  # noqa: F821
    sys.path.insert(0, f"/host{repository}/core")
    sys.dont_write_bytecode = True
    Path("/host" + answer).write_text(json.dumps(milliseconds(json.loads(Path("/host" + given).read_text()))))
