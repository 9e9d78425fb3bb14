"""What build.py makes: the same bytes every time, whole, self-contained, with nothing that should stay behind."""

import gzip
import hashlib
import json
import re
import shutil
import subprocess
import zipfile
from pathlib import Path
from types import ModuleType

import pytest

ROOT = Path(__file__).resolve().parent.parent.parent


def contents(folder: Path) -> dict[str, str]:
    """The hash of every file, by its path."""
    files = sorted(path for path in folder.rglob("*") if path.is_file())
    return {path.relative_to(folder).as_posix(): hashlib.sha256(path.read_bytes()).hexdigest() for path in files}


@pytest.fixture(scope="module")
def fresh(script: ModuleType, dist: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A second build of the same sources that remembers no step of the first, save what was pressed."""
    assert (dist / "sw.js").is_file()  # the first build came before
    work = tmp_path_factory.mktemp("work")
    shutil.copytree(ROOT / ".build/pressed", work / "pressed")
    out = tmp_path_factory.mktemp("again") / "dist"
    script.main(["--work", str(work), "build", "--out", str(out)])
    return out


def test_the_same_sources_give_the_same_bytes(dist: Path, fresh: Path) -> None:
    assert contents(fresh) == contents(dist)


def test_the_service_worker_lists_every_file_with_its_hash(dist: Path) -> None:
    listed = json.loads(re.search(r"const FILES = (\{.*?\});", (dist / "sw.js").read_text(), re.DOTALL)[1])
    kept = {name: value for name, value in contents(dist).items() if not name.endswith((".gz", ".br"))}
    assert listed == {name: value for name, value in kept.items() if name != "sw.js"}
    assert {"index.html", "worker.js", "plumpline.zip", "vendor/pyodide/pyodide.asm.wasm"} <= set(listed)


def test_pressed_copies_unpack_to_their_files(dist: Path) -> None:
    unpack = "process.stdout.write(require('zlib').brotliDecompressSync(require('fs').readFileSync(process.argv[1])))"
    copies = [path for path in dist.rglob("*") if path.suffix in (".gz", ".br")]
    assert dist / "vendor/pyodide/pyodide.asm.wasm.br" in copies
    for copy in copies:
        if copy.suffix == ".gz":
            content = gzip.decompress(copy.read_bytes())
        else:
            content = subprocess.run(["node", "-e", unpack, copy], capture_output=True, check=True).stdout
        assert content == copy.with_suffix("").read_bytes(), copy


def test_what_is_for_the_build_alone_stays_behind(dist: Path) -> None:
    for name in ("node_modules", "packing", "screens", "notices", "package.json", "package-lock.json", ".npmrc"):
        assert not (dist / name).exists()


def test_every_script_loads_its_modules_by_relative_path_from_the_bundle(dist: Path) -> None:
    own = [path for path in dist.rglob("*") if path.suffix in (".js", ".mjs") and "pyodide" not in path.parts]
    loads = re.compile(r"""(?:\bfrom|\bimport|\bimport\() ?["']([\w@./-]+)["']""")
    found = 0
    for path in own:
        for target in loads.findall(path.read_text()):
            assert target.startswith("."), f"{path} loads {target}"
            assert (path.parent / target).is_file(), f"{path} loads {target}, which is not there"
            found += 1
    assert found > len(own)


def test_the_bundle_holds_compiled_python_only_and_no_date(dist: Path) -> None:
    for name in ("plumpline.zip", "vendor/pyodide/python_stdlib.zip"):
        with zipfile.ZipFile(dist / name) as archive:
            entries = archive.infolist()
        assert [entry.filename for entry in entries] == sorted(entry.filename for entry in entries)
        assert {entry.date_time for entry in entries} == {(1980, 1, 1, 0, 0, 0)}
        assert {entry.compress_type for entry in entries} == {zipfile.ZIP_STORED}
        assert not [entry.filename for entry in entries if entry.filename.endswith(".py")]


def test_the_page_carries_the_policy_itself_for_hosts_that_send_no_headers(script: ModuleType, dist: Path) -> None:
    page = (dist / "index.html").read_text()
    carried = re.search(r'<meta http-equiv="Content-Security-Policy" content="([^"]+)">', page)[1]
    assert f"{carried}; frame-ancestors 'none'" == script.POLICY
    assert page.index("Content-Security-Policy") < page.index("<script")


def test_the_licence_of_everything_that_is_shipped_is_shipped_too(dist: Path) -> None:
    text = (dist / "licences.txt").read_text()
    packages = ("preact 11.2.0", "htm 3.1.1", "idb 8.0.4", "@preact/signals 2.11.4", "pydyf 0.13.0")
    for name in ("Plumpline", *packages, "Pyodide", "Python"):
        assert f"\n{name}\n{'=' * len(name)}\n" in "\n" + text
    assert "Mozilla Public License Version 2.0" in text
    assert "PYTHON SOFTWARE FOUNDATION LICENSE" in text
    assert "SIL OPEN FONT LICENSE" in text.upper()


def test_the_lock_file_names_no_registry() -> None:
    lock = (ROOT / "web/package-lock.json").read_text()
    assert '"integrity"' in lock
    assert '"resolved"' not in lock


def test_the_manifest_names_icons_that_are_there(dist: Path) -> None:
    manifest = json.loads((dist / "manifest.webmanifest").read_text())
    assert manifest["start_url"] == manifest["scope"] == "./"
    for icon in manifest["icons"]:
        content = (dist / icon["src"]).read_bytes()
        if icon["type"] == "image/png":
            width, height = int.from_bytes(content[16:20], "big"), int.from_bytes(content[20:24], "big")
            assert f"{width}x{height}" == icon["sizes"]
    assert {icon["purpose"] for icon in manifest["icons"]} == {"any", "maskable"}
