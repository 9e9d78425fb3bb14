"""The server of build.py, a careful web host: types, policy, ETags, pressed copies, nothing outside its folder."""

import gzip
import http.client
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    (tmp_path / "secret.txt").write_text("not served")
    public = tmp_path / "public"
    public.mkdir()
    (public / "index.html").write_text("<p>Hello")
    (public / "a b.mjs").write_text("export const a = 1;")
    (public / "core.wasm").write_bytes(b"\0asm")
    (public / "long.css").write_text("p { margin: 0 }" * 99)
    (public / "long.css.gz").write_bytes(gzip.compress((public / "long.css").read_bytes()))
    (public / "long.css.br").write_bytes(b"pressed by brotli")
    return public


@pytest.fixture
def get(script: ModuleType, folder: Path) -> Any:
    with script.served(folder) as address:
        place = address.removeprefix("http://").rstrip("/")

        def ask(path: str, method: str = "GET", **headers: str) -> tuple[http.client.HTTPResponse, bytes]:
            connection = http.client.HTTPConnection(place, timeout=10)
            connection.request(method, path, headers={name.replace("_", "-"): value for name, value in headers.items()})
            response = connection.getresponse()
            content = response.read()
            connection.close()
            return response, content

        yield ask


def test_a_folder_is_answered_by_its_index(get: Any) -> None:
    response, content = get("/?from=home")
    assert (response.status, content) == (200, b"<p>Hello")
    assert response.headers["Content-Type"] == "text/html; charset=utf-8"


@pytest.mark.parametrize(
    ("path", "kind"), [("/a%20b.mjs", "text/javascript; charset=utf-8"), ("/core.wasm", "application/wasm")]
)
def test_every_file_has_the_type_that_browsers_insist_on(get: Any, path: str, kind: str) -> None:
    assert get(path)[0].headers["Content-Type"] == kind


@pytest.mark.parametrize("path", ["/", "/core.wasm", "/nowhere"])
def test_every_answer_carries_the_policy(get: Any, path: str) -> None:
    headers = get(path)[0].headers
    assert "default-src 'self'" in headers["Content-Security-Policy"]
    assert "script-src 'self' 'wasm-unsafe-eval';" in headers["Content-Security-Policy"]
    assert "unsafe-inline" not in headers["Content-Security-Policy"]
    assert headers["X-Content-Type-Options"] == "nosniff"
    assert headers["Cache-Control"] == "no-cache"


def test_a_file_that_has_not_changed_is_not_sent_again(get: Any, folder: Path) -> None:
    tag = get("/")[0].headers["ETag"]
    response, content = get("/", If_None_Match=tag)
    assert (response.status, content) == (304, b"")
    (folder / "index.html").write_text("<p>Changed")
    assert get("/", If_None_Match=tag)[0].status == 200


@pytest.mark.parametrize(
    ("accepted", "encoding"), [("gzip, deflate, br", "br"), ("gzip;q=1.0, deflate", "gzip"), ("", None)]
)
def test_the_smallest_copy_the_browser_accepts_is_sent(get: Any, folder: Path, accepted: str, encoding: str) -> None:
    response, content = get("/long.css", Accept_Encoding=accepted)
    suffix = {"br": ".br", "gzip": ".gz", None: ""}[encoding]
    assert response.headers["Content-Encoding"] == encoding
    assert response.headers["Content-Type"] == "text/css; charset=utf-8"
    assert content == (folder / f"long.css{suffix}").read_bytes()


def test_head_gives_the_same_headers_and_no_content(get: Any) -> None:
    response, content = get("/", method="HEAD")
    assert (response.headers["Content-Length"], content) == ("8", b"")


@pytest.mark.parametrize("path", ["/../secret.txt", "/%2e%2e/secret.txt", "/a/../../secret.txt", "//etc/passwd"])
def test_nothing_outside_the_folder_is_served(get: Any, path: str) -> None:
    assert get(path)[0].status == 404


def test_it_listens_on_this_machine_only(script: ModuleType, folder: Path) -> None:
    with script.make_server(folder) as server:
        assert server.server_address[0] == "127.0.0.1"
