"""Runs inside Pyodide during the build: compiles Python for the browser and packs it, always the same bytes.

ARGUMENTS, set by python.mjs: "stdlib" STOCK.zip OUT.zip, which strips and precompiles the standard library;
or "app" INDEX-URL REQUIREMENT OUT.zip, which lets micropip resolve and install the requirement and packs
what it installed.
"""

import importlib.util
import zipfile
from pathlib import Path

SITE = Path("/lib/python3.14/site-packages")
LIBRARY = "/lib/python314.zip"

# What a cushion maker's worker never imports: tools for programmers, network protocols, processes, archives
# of other systems. `email`, `asyncio`, `zipfile`, `tempfile`, `shutil` and `ssl` look as useless but are
# imported while Pyodide boots or installs; leave them.
UNUSED = {
    "__hello__", "__phello__", "_aix_support", "_pyrepl", "antigravity", "bdb", "cProfile", "cmd", "code",
    "compileall", "ctypes", "doctest", "ftplib", "idlelib", "imaplib", "lib2to3", "mailbox", "modulefinder",
    "multiprocessing", "netrc", "nturl2path", "optparse", "pdb", "pickletools", "poplib", "profile", "pstats",
    "pty", "pyclbr", "pydoc", "pydoc_data", "rlcompleter", "shelve", "site-packages", "smtplib", "socketserver",
    "sqlite3", "tabnanny", "this", "timeit", "trace", "turtle", "unittest", "wave", "webbrowser", "wsgiref",
    "xmlrpc", "zipapp",
}  # fmt: skip
# Text encodings that are kept: Unicode's own, the ones PDF and zip files are written in, and the web's.
ENCODINGS = {
    "__init__", "aliases", "ascii", "base64_codec", "charmap", "cp1252", "cp437", "hex_codec", "idna",
    "iso8859_1", "latin_1", "mac_roman", "punycode", "raw_unicode_escape", "undefined", "unicode_escape",
    "utf_16", "utf_16_be", "utf_16_le", "utf_32", "utf_32_be", "utf_32_le", "utf_7", "utf_8", "utf_8_sig",
    "zlib_codec",
}  # fmt: skip


def is_used(name: str) -> bool:
    """Whether a file of the stock standard library, by its name in the zip, goes to the browser."""
    top, _, rest = name.partition("/")
    if top == "encodings":
        return rest.removesuffix(".py") in ENCODINGS
    return name.endswith(".py") and top.removesuffix(".py") not in UNUSED


def compiled(source: bytes, path: str) -> bytes:
    """The .pyc of a source: hash-based and unchecked, so neither a date nor the source is needed later."""
    code = compile(source, path, "exec", dont_inherit=True)
    return bytes(importlib._bootstrap_external._code_to_hash_pyc(code, importlib.util.source_hash(source), False))


def write_zip(target: Path, files: dict[str, bytes]) -> None:
    """Stored, sorted, with one fixed date: reproducible, and quick to read from."""
    with zipfile.ZipFile(target, "w", zipfile.ZIP_STORED) as archive:
        for name in sorted(files):
            entry = zipfile.ZipInfo(name, (1980, 1, 1, 0, 0, 0))
            entry.create_system = 3
            entry.external_attr = 0o644 << 16
            archive.writestr(entry, files[name])


def pack_stdlib(stock: str, target: str) -> None:
    with zipfile.ZipFile("/host" + stock) as archive:
        sources = {name: archive.read(name) for name in archive.namelist() if is_used(name)}
    files = {f"{name}c": compiled(source, f"{LIBRARY}/{name}") for name, source in sources.items()}
    write_zip(Path("/host" + target), files)
    print(f"standard library: {len(files)} modules kept")


def installed() -> set[Path]:
    return {path for path in SITE.rglob("*") if path.is_file() and "__pycache__" not in path.parts}


def is_record(path: Path) -> bool:
    """Whether a file only says how its package came here: addresses and dates the browser has no use for."""
    is_metadata = path.parent.name.endswith(".dist-info") and path.name != "METADATA"
    return is_metadata or path.name == "py.typed"


async def pack_app(index: str, requirement: str, target: str) -> None:
    import micropip

    before = installed()
    await micropip.install(requirement, index_urls=index)
    files = {}
    for path in installed() - before:
        name = str(path.relative_to(SITE))
        if path.suffix == ".py":
            files[f"{name}c"] = compiled(path.read_bytes(), str(path))
        elif path.suffix == ".so":
            raise SystemExit(f"{name} is not pure Python; the core may only depend on pure packages")
        elif not is_record(path):
            files[name] = path.read_bytes()
    write_zip(Path("/host" + target), files)
    print(f"core: {len(files)} files installed by micropip")


match ARGUMENTS:  # noqa: F821
    case ["stdlib", stock, target]:
        pack_stdlib(stock, target)
    case ["app", index, requirement, target]:
        await pack_app(index, requirement, target)  # noqa: F704
