"""Plumpline's one script: sets up, builds, serves, tests and measures. Standard library only.

    python3 build.py setup               make .venv, install the tools and the pinned front-end packages
    python3 build.py build [--out DIR]   make dist/, plain static files for any web host
    python3 build.py serve [--port N]    build, then serve dist/ on this machine, with the right headers
    python3 build.py test [--long]       everything checked: style, types, core, Pyodide, browser
    python3 build.py bench               start, size and plan times, side by side with the bare runtime

Every verb first does whatever set-up it still needs. What was made is remembered by a hash of what it was
made from, so nothing is done twice. Needs git, Python 3.11+, node 20+ with npm.
"""

from __future__ import annotations

import argparse
import contextlib
import functools
import hashlib
import http.server
import json
import os
import re
import shutil
import socket
import subprocess
import sys
import threading
import time
import tomllib
import urllib.parse
import xml.etree.ElementTree as ElementTree
import zipfile
from collections.abc import Callable, Iterator, Mapping, Sequence
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parent
WEB = ROOT / "web"
PACKAGES = WEB / "node_modules"
PYODIDE = PACKAGES / "pyodide"
VENV = ROOT / ".venv"
PYTHON = VENV / ("Scripts/python.exe" if os.name == "nt" else "bin/python")
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))

STARTED = time.monotonic()


def say(text: str) -> None:
    """One line of progress, with the seconds since the start."""
    print(f"[{time.monotonic() - STARTED:6.1f} s] {text}", flush=True)


def run(*command: str | Path, cwd: Path = ROOT, environment: Mapping[str, str] = {}) -> None:
    """Run a command in the foreground; stop everything with its words if it fails."""
    words = [str(word) for word in command]
    done = subprocess.run(words, cwd=cwd, env={**os.environ, **environment}, capture_output=True, text=True)
    if done.returncode:
        raise SystemExit(f"{done.stdout}{done.stderr}\nbuild.py: this failed: {' '.join(words)}")


def digest(*parts: Path | str) -> str:
    """One hash over files (name and content), folders of them, and plain words."""
    total = hashlib.sha256()
    for part in parts:
        if isinstance(part, str):
            total.update(part.encode())
            continue
        for file in sorted(part.rglob("*")) if part.is_dir() else [part]:
            if file.is_file() and "__pycache__" not in file.parts:
                total.update(f"{file.relative_to(part.parent)}\0".encode())
                total.update(hashlib.sha256(file.read_bytes()).digest())
    return total.hexdigest()


def once(stamp: Path, inputs: str, title: str, action: Callable[[], None]) -> None:
    """Do a step unless its stamp says that it was done with these very inputs."""
    if stamp.is_file() and stamp.read_text() == inputs:
        return
    say(title)
    stamp.unlink(missing_ok=True)
    action()
    stamp.parent.mkdir(parents=True, exist_ok=True)
    stamp.write_text(inputs)


@contextlib.contextmanager
def alone(work: Path) -> Iterator[None]:
    """Let one build at a time use a work folder."""
    work.mkdir(parents=True, exist_ok=True)
    with open(work / "lock", "w") as lock:
        with contextlib.suppress(ImportError):  # Windows has no fcntl: there, start one build at a time
            import fcntl

            fcntl.flock(lock, fcntl.LOCK_EX)
        yield


# ---- setting up ---------------------------------------------------------------------------------------------


def make_venv() -> None:
    if PYTHON.exists():
        return
    try:
        run(sys.executable, "-m", "venv", VENV)
    except SystemExit as refusal:
        raise SystemExit(f"{refusal}\nOn Debian and Ubuntu: apt-get install python3-venv") from None


def pip(*words: str | Path) -> None:
    run(PYTHON, "-m", "pip", "--disable-pip-version-check", "--quiet", *words)


def set_up_python() -> None:
    """The virtual environment with the core in it, enough to build."""

    def install() -> None:
        make_venv()
        pip("install", *PROJECT["build-system"]["requires"])
        pip("install", "--no-build-isolation", "--editable", ".")

    key = digest(json.dumps([PROJECT["build-system"], PROJECT["project"]]))
    once(VENV / "core.stamp", key, "Python: making .venv and installing the core", install)


def set_up_tools() -> None:
    """The test tools, pinned in pyproject.toml."""
    wanted = PROJECT["project"]["optional-dependencies"]["dev"]
    title = "Python: installing the test tools"
    once(VENV / "tools.stamp", digest(*wanted), title, lambda: pip("install", *wanted))


def set_up_packages() -> None:
    """The front-end packages, exactly as the lock file says."""
    node = shutil.which("node") and subprocess.run(["node", "--version"], capture_output=True, text=True).stdout
    if not node or int(node.strip("v\n").split(".")[0]) < 20 or not shutil.which("npm"):
        raise SystemExit(f"build.py: node 20 or newer with npm is needed; found {node or 'none'}")
    key = digest(WEB / "package.json", WEB / "package-lock.json", WEB / ".npmrc")
    title = "npm: fetching the pinned front-end packages"
    once(PACKAGES / ".stamp", key, title, lambda: run(shutil.which("npm") or "npm", "ci", cwd=WEB))


def find_browser() -> str | None:
    """A Chromium that is already here, or None."""
    names = ("chromium", "chromium-browser", "google-chrome", "google-chrome-stable")
    return next(filter(None, map(shutil.which, names)), None)


def set_up_browser() -> None:
    """A Chromium: the one that is here, else the distribution's, else Playwright's own."""
    if find_browser():
        return
    if shutil.which("apt-get") and os.geteuid() == 0:
        say("browser: installing the distribution's Chromium")
        with contextlib.suppress(SystemExit):
            run("apt-get", "update", "-q")
            os.environ["DEBIAN_FRONTEND"] = "noninteractive"
            run("apt-get", "install", "-q", "-y", "--no-install-recommends", "chromium")
    if not find_browser():
        say("browser: installing Playwright's Chromium")
        run(PYTHON, "-m", "playwright", "install", *(["--with-deps"] if os.geteuid() == 0 else []), "chromium")


def set_up() -> None:
    set_up_python()
    set_up_tools()
    set_up_packages()


# ---- building -----------------------------------------------------------------------------------------------

# What the page loads from dist/vendor/, by its place in node_modules.
VENDORED = {
    "preact.mjs": "preact/dist/preact.mjs",
    "preact-hooks.mjs": "preact/hooks/dist/hooks.mjs",
    "htm.mjs": "htm/dist/htm.module.js",
    "signals.mjs": "@preact/signals/dist/signals.module.js",
    "signals-core.mjs": "@preact/signals-core/dist/signals-core.module.js",
    "idb.mjs": "idb/build/index.js",
}
BARE = {
    "preact": "./preact.mjs",
    "preact/hooks": "./preact-hooks.mjs",
    "@preact/signals-core": "./signals-core.mjs",
}
RUNTIME = ("pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm")
# What lies in web/ for the build and the reader, not for the browser.
UNSHIPPED = {
    "node_modules", "packing", "screens", "notices", "package.json", "package-lock.json", ".npmrc", "eslint.config.js"
}  # fmt: skip
# Pressed already, or not worth pressing.
PRESSED = {".png", ".woff2", ".jpg", ".gz", ".br"}
SMALL = 500


def in_pyodide(work: Path, script: Path, *words: str | Path) -> None:
    """Run a Python file inside Pyodide under node, with micropip at hand."""
    micropip = next((work / "wheels").glob("micropip-*.whl"))
    run("node", WEB / "packing/python.mjs", script, *words, environment={"MICROPIP": str(micropip)})


def download_wheels(folder: Path, *words: str) -> None:
    """Wheels that run in Pyodide: pure ones, or built for its platform."""
    info = runtime_info()
    minor = ".".join(info["python"].split(".")[:2])
    platform = f"pyemscripten_{info['abi_version']}_wasm32"
    place = ("--python-version", minor, "--platform", platform, "--platform", "any")
    abi = ("--abi", "cp" + minor.replace(".", ""), "--abi", "none")
    pip("download", *place, *abi, "--only-binary", ":all:", "--dest", folder, *words)


def runtime_info() -> dict[str, str]:
    """The runtime's own description of itself: version, platform, ABI."""
    lock = json.loads((PYODIDE / "pyodide-lock.json").read_text("utf-8"))
    version = json.loads((PYODIDE / "package.json").read_text("utf-8"))["version"]
    return {**lock["info"], "version": version}


def pack_stdlib(work: Path) -> None:
    """The standard library, stripped, precompiled and stored: half the start time of the stock one."""
    packer = WEB / "packing/pack.py"
    stock = PYODIDE / "python_stdlib.zip"

    def pack() -> None:
        in_pyodide(work, packer, "stdlib", stock, work / "python_stdlib.zip")

    key = digest(packer, PYODIDE / "package.json")
    once(work / "python_stdlib.stamp", key, "runtime: precompiling the standard library", pack)


def write_index(folder: Path, wheels: Path) -> None:
    """A package index of plain files, so that micropip resolves against what pip has downloaded."""
    shutil.rmtree(folder, ignore_errors=True)
    for wheel in sorted(wheels.glob("*.whl")):
        name = wheel.name.split("-")[0].replace("_", "-").lower()
        page = folder / "simple" / name / "index.html"
        page.parent.mkdir(parents=True, exist_ok=True)
        shutil.copy2(wheel, folder / wheel.name)
        checksum = hashlib.sha256(wheel.read_bytes()).hexdigest()
        link = f'<a href="/{wheel.name}#sha256={checksum}">{wheel.name}</a>\n'
        page.write_text((page.read_text() if page.exists() else "<!doctype html>\n") + link)


@contextlib.contextmanager
def served(folder: Path) -> Iterator[str]:
    """Serve a folder on a free port of this machine; gives the address."""
    with make_server(folder) as server:
        thread = threading.Thread(target=server.serve_forever, daemon=True)
        thread.start()
        yield f"http://127.0.0.1:{server.server_port}/"
        server.shutdown()
        thread.join()


def pack_app(work: Path) -> None:
    """The core and its dependencies as micropip installs them inside Pyodide, precompiled, as one zip."""
    packer = WEB / "packing/pack.py"
    wheels = work / "app-wheels"

    def pack() -> None:
        shutil.rmtree(wheels, ignore_errors=True)
        pip("wheel", "--no-deps", "--no-build-isolation", "--wheel-dir", wheels, ROOT)
        if PROJECT["project"]["dependencies"]:
            download_wheels(wheels, *PROJECT["project"]["dependencies"])
        write_index(work / "app-index", wheels)
        name, version = PROJECT["project"]["name"], PROJECT["project"]["version"]
        with served(work / "app-index") as address:
            in_pyodide(work, packer, "app", f"{address}simple", f"{name}=={version}", work / "plumpline.zip")

    key = digest(packer, PYODIDE / "package.json", ROOT / "core", ROOT / "pyproject.toml", ROOT / "README.md")
    once(work / "plumpline.stamp", key, "core: micropip installs it inside Pyodide; precompiling", pack)


def make_readings(work: Path) -> None:
    """Every reading of the tape, written out by the core, for the second before Python runs."""

    def write() -> None:
        program = "from plumpline.readings import dump_readings; print(dump_readings(), end='')"
        text = subprocess.run([str(PYTHON), "-X", "utf8", "-c", program], check=True, stdout=subprocess.PIPE).stdout
        (work / "readings.json").write_bytes(text)

    once(work / "readings.stamp", digest(ROOT / "core"), "core: writing out the tape's readings", write)


def vendored_text(name: str, source: str) -> str:
    """A vendored module that loads its neighbours by relative path and names no source map."""
    source = re.sub(r"(?m)^//# sourceMappingURL=.*\n?", "", source)

    def relative(match: re.Match[str]) -> str:
        if match[3] not in BARE:
            raise SystemExit(f"build.py: {name} loads “{match[3]}”, which is not vendored")
        return f"{match[1]}{match[2]}{BARE[match[3]]}{match[2]}"

    return re.sub(r"((?:\bfrom|\bimport) ?)([\"'])([@a-z][^\"']*)\2", relative, source)


def copy_web(dist: Path) -> None:
    def unshipped(folder: str, names: list[str]) -> set[str]:
        notes = {name for name in names if name.endswith(".md")}
        return notes | (UNSHIPPED & set(names) if Path(folder) == WEB else set())

    shutil.copytree(WEB, dist, ignore=unshipped)


def carry_policy(dist: Path) -> None:
    """Put the content policy into the page too, for hosts that send no headers of their own."""
    page = dist / "index.html"
    text, place = page.read_text("utf-8"), '<meta charset="utf-8">'
    if text.count(place) != 1:
        raise SystemExit(f"build.py: index.html must say {place} exactly once")
    policy = POLICY.removesuffix("; frame-ancestors 'none'")  # which only a header can say
    meta = f'{place}\n  <meta http-equiv="Content-Security-Policy" content="{policy}">'
    page.write_text(text.replace(place, meta), "utf-8")


def copy_vendored(dist: Path) -> None:
    (dist / "vendor/pyodide").mkdir(parents=True)
    for name, source in VENDORED.items():
        text = (PACKAGES / source).read_text("utf-8")
        (dist / "vendor" / name).write_text(vendored_text(name, text), "utf-8")
    for name in RUNTIME:
        content = re.sub(rb"(?m)^//# sourceMappingURL=.*\n?", b"", (PYODIDE / name).read_bytes())
        (dist / "vendor/pyodide" / name).write_bytes(content)
    lock = json.dumps({"info": runtime_info(), "packages": {}}, indent=2)
    words = "// The runtime's description of itself, with no package to fetch: made by build.py.\n"
    (dist / "vendor/pyodide/lock.mjs").write_text(f"{words}export default {lock};\n", "utf-8")


def wheel_licences(wheels: Path) -> Iterator[tuple[str, str]]:
    """Name, version and licence of every package that the core needs, as its wheel brings them."""
    for wheel in sorted(wheels.glob("*.whl")):
        name, version = wheel.name.split("-")[:2]
        if name != PROJECT["project"]["name"]:
            with zipfile.ZipFile(wheel) as archive:
                texts = [entry for entry in archive.namelist() if ".dist-info/licenses/" in entry]
                yield f"{name} {version}", "\n".join(archive.read(entry).decode() for entry in texts)


def licences(work: Path) -> str:
    """The licences of everything that dist/ ships, its own first."""
    parts = [("Plumpline", (ROOT / "LICENSE").read_text("utf-8"))]
    for folder in sorted({"/".join(source.split("/")[: 1 + source.startswith("@")]) for source in VENDORED.values()}):
        version = json.loads((PACKAGES / folder / "package.json").read_text("utf-8"))["version"]
        parts.append((f"{folder} {version}", (PACKAGES / folder / "LICENSE").read_text("utf-8")))
    parts += wheel_licences(work / "app-wheels")
    parts += [("The typeface", font.read_text("utf-8")) for font in sorted((WEB / "fonts").glob("*.txt"))]
    parts += [(note.stem, note.read_text("utf-8")) for note in sorted((WEB / "notices").glob("*.txt"))]
    return "\n\n".join(f"{title}\n{'=' * len(title)}\n\n{text.strip()}" for title, text in parts) + "\n"


def files_of(folder: Path) -> list[Path]:
    return sorted(path for path in folder.rglob("*") if path.is_file())


def fill_service_worker(dist: Path) -> str:
    """Write the build's id and the hash of every file into sw.js; gives the id."""
    worker = dist / "sw.js"
    hashes = {
        path.relative_to(dist).as_posix(): hashlib.sha256(path.read_bytes()).hexdigest()
        for path in files_of(dist)
        if path != worker
    }
    text = worker.read_text("utf-8")
    build = digest(text, json.dumps(hashes))[:16]
    for before, after in (("'unbuilt'", f"'{build}'"), ("FILES = {}", f"FILES = {json.dumps(hashes, indent=2)}")):
        if text.count(before) != 1:
            raise SystemExit(f"build.py: sw.js must say {before} exactly once")
        text = text.replace(before, after)
    worker.write_text(text, "utf-8")
    return build


def press(dist: Path, work: Path) -> None:
    """Lay a .gz and a .br copy beside every file that gains by it; pressing is remembered by content."""
    store = work / "pressed"
    store.mkdir(exist_ok=True)
    wanted = {}
    for path in files_of(dist):
        if path.suffix not in PRESSED and path.stat().st_size >= SMALL:
            wanted[path] = store / hashlib.sha256(path.read_bytes()).hexdigest()
    missing = [path for path, kept in wanted.items() if not Path(f"{kept}.br").exists()]
    if missing:
        say(f"pressing {len(missing)} files")
        pairs = [word for path in missing for word in (path, wanted[path])]
        run("node", WEB / "packing/press.mjs", *pairs)
    for path, kept in wanted.items():
        for suffix in (".gz", ".br"):
            shutil.copyfile(f"{kept}{suffix}", f"{path}{suffix}")


def assemble(dist: Path, work: Path) -> None:
    """Lay the static files together in a new folder, then put it in the place of the old one."""
    say("bundle: putting dist together")
    fresh = work / "dist"
    shutil.rmtree(fresh, ignore_errors=True)
    copy_web(fresh)
    carry_policy(fresh)
    copy_vendored(fresh)
    shutil.copyfile(work / "python_stdlib.zip", fresh / "vendor/pyodide/python_stdlib.zip")
    shutil.copyfile(work / "plumpline.zip", fresh / "plumpline.zip")
    shutil.copyfile(work / "readings.json", fresh / "readings.json")
    (fresh / "licences.txt").write_text(licences(work), "utf-8")
    build = fill_service_worker(fresh)
    press(fresh, work)
    shutil.rmtree(dist, ignore_errors=True)
    dist.parent.mkdir(parents=True, exist_ok=True)
    shutil.move(fresh, dist)
    say(f"build {build}: {sum(path.suffix not in ('.gz', '.br') for path in files_of(dist))} files in {dist}")


def build(dist: Path, work: Path) -> None:
    set_up_python()
    set_up_packages()
    wanted = PROJECT["tool"]["plumpline"]["micropip"]
    title = "runtime: fetching micropip"
    once(work / "micropip.stamp", wanted, title, lambda: download_wheels(work / "wheels", "--no-deps", wanted))
    pack_stdlib(work)
    pack_app(work)
    make_readings(work)
    assemble(dist, work)


# ---- serving ------------------------------------------------------------------------------------------------

POLICY = (
    "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; worker-src 'self'; "
    "img-src 'self' blob: data:; object-src 'none'; base-uri 'none'; frame-ancestors 'none'"
)
TYPES = {
    ".html": "text/html; charset=utf-8",
    ".js": "text/javascript; charset=utf-8",
    ".mjs": "text/javascript; charset=utf-8",
    ".css": "text/css; charset=utf-8",
    ".json": "application/json",
    ".webmanifest": "application/manifest+json",
    ".wasm": "application/wasm",
    ".svg": "image/svg+xml",
    ".png": "image/png",
    ".woff2": "font/woff2",
    ".zip": "application/zip",
    ".txt": "text/plain; charset=utf-8",
}


class StaticFiles(http.server.BaseHTTPRequestHandler):
    """Serves one folder as a careful web host would: types, policy, ETags, pre-pressed copies."""

    protocol_version = "HTTP/1.1"
    disable_nagle_algorithm = True

    def __init__(self, *details: Any, folder: Path, prefix: str) -> None:
        self.folder = folder.resolve()
        self.prefix = prefix
        super().__init__(*details)

    def do_GET(self) -> None:
        self.wfile.write(self.answer())

    def do_HEAD(self) -> None:
        self.answer()

    def answer(self) -> bytes:
        """Send the head of the answer; gives the content that belongs to it."""
        file = self.file()
        if file is None:
            content = b"There is no such file here.\n"
            self.head(404, {"Content-Type": TYPES[".txt"], "Content-Length": str(len(content))})
            return content
        content, encoding = self.pressed(file)
        tag = f'"{hashlib.sha256(content).hexdigest()[:24]}"'
        about = {"Content-Type": TYPES.get(file.suffix, "application/octet-stream"), "ETag": tag}
        if encoding:
            about["Content-Encoding"] = encoding
        if self.headers.get("If-None-Match") == tag:
            self.head(304, about)
            return b""
        self.head(200, about | {"Content-Length": str(len(content))})
        return content

    def file(self) -> Path | None:
        """The file a request asks for, or None if there is none inside the folder."""
        path = urllib.parse.unquote(self.path.split("?")[0].split("#")[0])
        if not path.startswith(self.prefix):
            return None
        file = (self.folder / path.removeprefix(self.prefix)).resolve()
        if file.is_dir():
            file /= "index.html"
        return file if file.is_relative_to(self.folder) and file.is_file() else None

    def pressed(self, file: Path) -> tuple[bytes, str]:
        """The content to send and how it is encoded: the smallest copy the browser accepts."""
        accepted = {word.split(";")[0].strip() for word in self.headers.get("Accept-Encoding", "").split(",")}
        for encoding, suffix in (("br", ".br"), ("gzip", ".gz")):
            copy = Path(f"{file}{suffix}")
            if encoding in accepted and copy.is_file():
                return copy.read_bytes(), encoding
        return file.read_bytes(), ""

    def head(self, status: int, about: dict[str, str]) -> None:
        self.send_response(status)
        fixed = {
            "Content-Security-Policy": POLICY,
            "X-Content-Type-Options": "nosniff",
            "Referrer-Policy": "no-referrer",
            "Cache-Control": "no-cache",
            "Vary": "Accept-Encoding",
        }
        for name, value in (fixed | about).items():
            self.send_header(name, value)
        self.end_headers()

    def log_message(self, *details: Any) -> None:
        """Say nothing: the address printed at the start is all a person needs."""


class Server(http.server.ThreadingHTTPServer):
    daemon_threads = True
    block_on_close = False

    def __init__(self, *details: Any) -> None:
        self.connections: set[socket.socket] = set()
        super().__init__(*details)

    def process_request(self, request: Any, client_address: Any) -> None:
        self.connections.add(request)
        super().process_request(request, client_address)

    def shutdown_request(self, request: Any) -> None:
        self.connections.discard(request)
        super().shutdown_request(request)

    def cut_connections(self) -> None:
        """End the conversations that browsers keep open, as a machine does that is switched off."""
        for request in list(self.connections):
            with contextlib.suppress(OSError):
                request.shutdown(socket.SHUT_RDWR)

    def handle_error(self, request: Any, client_address: Any) -> None:
        """A browser that hangs up in the middle of a file is no fault; anything else is."""
        if not isinstance(sys.exception(), ConnectionError):
            super().handle_error(request, client_address)


def make_server(
    folder: Path, port: int = 0, prefix: str = "/", handler: type[StaticFiles] = StaticFiles
) -> Server:
    """A server of a folder, on this machine only; port 0 is a free one, prefix the path it is mounted at."""
    return Server(("127.0.0.1", port), functools.partial(handler, folder=folder, prefix=prefix))


def serve(dist: Path, port: int) -> None:
    try:
        server = make_server(dist, port)
    except OSError as error:
        raise SystemExit(f"build.py: port {port} cannot be used ({error.strerror}); try --port 0") from None
    with server:
        say("serving; stop with Ctrl+C")
        print(f"\n    http://localhost:{server.server_port}/\n", flush=True)
        with contextlib.suppress(KeyboardInterrupt):
            server.serve_forever()


# ---- testing and measuring ----------------------------------------------------------------------------------


def section(title: str, *command: str | Path, cwd: Path = ROOT) -> bool:
    """Run one part of the tests with its words on the screen; whether it passed."""
    print(f"\n{f' {title} ':=^100}", flush=True)
    return subprocess.run([str(word) for word in command], cwd=cwd).returncode == 0


def count(reports: Path) -> dict[str, int]:
    """How the tests ended, summed over pytest's reports."""
    total = dict.fromkeys(("tests", "failures", "errors", "skipped"), 0)
    for report in reports.glob("*.xml"):
        for suite in ElementTree.parse(report).getroot().iter("testsuite"):
            for name in total:
                total[name] += int(suite.get(name, 0))
    return total


def test(work: Path, extra: Sequence[str]) -> int:
    """Everything, section by section; all sections run even when one fails. Gives the exit code."""
    reports = work / "reports"
    shutil.rmtree(reports, ignore_errors=True)

    def pytest(name: str) -> tuple[str | Path, ...]:
        return (PYTHON, "-m", "pytest", f"--junitxml={reports / name}.xml", *extra)

    abreast = ("-n", "auto")
    measured = ("--cov", "--cov-report=", "--cov-fail-under=0")
    others = [folder for folder in sorted((ROOT / "tests").iterdir()) if list(folder.glob("**/test_*.py"))]
    others = [folder for folder in others if folder.name not in ("core", "pyodide")]
    passed = {
        "style": section("style of Python: ruff", PYTHON, "-m", "ruff", "check", "."),
        "types": section("types of Python: mypy", PYTHON, "-m", "mypy"),
        "scripts": section("style of JavaScript: eslint", "node", "node_modules/eslint/bin/eslint.js", ".", cwd=WEB),
        "core": section("the core on CPython", *pytest("core"), *abreast, *measured, "tests/core"),
        "coverage": section("lines and branches reached", PYTHON, "-m", "coverage", "report"),
        "pyodide": section("the core inside Pyodide", *pytest("pyodide"), "tests/pyodide"),
        # A machine that is busy with something else can hold a browser up past all patience: one second try, and told.
        "browser": section("the product in a browser", *pytest("browser"), *abreast, "--reruns=1", "-rR", *others),
    }
    print(f"\n{' summary ':=^100}")
    for name, has_passed in passed.items():
        print(f"{name:<12}{'passed' if has_passed else 'FAILED'}")
    total = count(reports)
    failed = total["failures"] + total["errors"]
    good = total["tests"] - failed - total["skipped"]
    parts = [f"{failed} failed"] if failed else []
    parts += [f"{good} passed"] + ([f"{total['skipped']} skipped"] if total["skipped"] else [])
    closing = f" {', '.join(parts)} in {time.monotonic() - STARTED:.2f}s "
    print(f"{closing:=^100}")
    return 0 if all(passed.values()) else 1


def bench(what: str, words: Sequence[str]) -> int:
    """Measure the start, frames, the counter or, beside what else lays rectangles, lay plans; gives the exit code."""
    if what in ("start", "frames", "counter"):
        return 0 if section("measuring", PYTHON, ROOT / f"tests/bench/{what}.py", *words) else 1
    peers = PROJECT["project"]["optional-dependencies"]["bench"]
    once(VENV / "peers.stamp", digest(*peers), "Python: installing the peers", lambda: pip("install", *peers))
    return 0 if section("measuring lay plans", PYTHON, ROOT / "tests/bench/layout/run.py", *words) else 1


def main(words: Sequence[str]) -> int:
    parser = argparse.ArgumentParser(description="Sets up, builds, serves, tests and measures Plumpline.")
    parser.add_argument("--work", type=Path, default=ROOT / ".build", help="where finished steps are remembered")
    verbs = parser.add_subparsers(dest="verb", required=True)
    verbs.add_parser("setup", help="install everything the other verbs need")
    verbs.add_parser("build", help="make dist/").add_argument("--out", type=Path, default=ROOT / "dist")
    verbs.add_parser("serve", help="build and serve on localhost").add_argument("--port", type=int, default=8000)
    verbs.add_parser("test", help="check everything").add_argument("--long", action="store_true")
    measured = verbs.add_parser("bench", help="measure start, frames, answers at the counter, or lay plans")
    measured.add_argument("what", nargs="?", choices=("start", "frames", "counter", "layout"), default="start")
    measured.add_argument("words", nargs=argparse.REMAINDER, help="for the measurement itself, such as --help")
    asked = parser.parse_args(words)
    work, dist = asked.work.resolve(), (asked.out if asked.verb == "build" else ROOT / "dist").resolve()
    with alone(work):
        if asked.verb in ("setup", "test", "bench"):
            set_up()
        if asked.verb in ("test", "bench"):
            set_up_browser()
        if asked.verb != "setup":
            build(dist, work)
    match asked.verb:
        case "serve":
            serve(dist, asked.port)
        case "test":
            return test(work, ["--long"] if asked.long else [])
        case "bench":
            return bench(asked.what, asked.words)
    return 0


if __name__ == "__main__":
    raise SystemExit(main(sys.argv[1:]))
