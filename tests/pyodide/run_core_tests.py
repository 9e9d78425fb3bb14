"""Runs inside Pyodide: the tests of tests/core that need no reference library, with the core's own source.

ARGUMENTS, set by python.mjs: the package index, the requirements (JSON), the repository, the report to write.
The report is a list, in JSON, of the ids of the tests that passed. The value of the last line is pytest's exit code.
"""

import json
import sys
from pathlib import Path

import micropip

index, requirements, repository, report = ARGUMENTS  # noqa: F821
await micropip.install(json.loads(requirements), index_urls=index)  # noqa: F704

import pytest  # noqa: E402

ROOT = Path("/host" + repository)
sys.dont_write_bytecode = True
sys.path.insert(0, str(ROOT / "core"))


class Inside:
    """A pytest plugin: no example database here, no deadline on this slower machine; notes which tests passed."""

    def __init__(self):
        self.passed = []

    def pytest_configure(self):
        from hypothesis import settings

        settings.register_profile("inside", database=None, deadline=None)
        settings.load_profile("inside")

    def pytest_runtest_logreport(self, report):
        if report.when == "call" and report.passed:
            self.passed.append(report.nodeid)


inside = Inside()
words = [f"--rootdir={ROOT}", f"--config-file={ROOT}/pyproject.toml", f"--confcutdir={ROOT}/tests/core"]
words += ["-p", "no:cacheprovider", "-p", "no:faulthandler", "--capture=sys", "-q", "-m", "not reference and not long"]
code = pytest.main([*words, str(ROOT / "tests/core")], plugins=[inside])
Path("/host" + report).write_text(json.dumps(inside.passed))
int(code)
