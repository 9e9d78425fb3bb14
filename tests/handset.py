"""A phone that opens the app, and a server of the app that can be taken away: the classes behind the fixtures."""

import contextlib
import os
import signal
import threading
from pathlib import Path
from types import ModuleType
from typing import Any

from playwright.sync_api import BrowserContext, ConsoleMessage, Error, Page, Playwright, Request

FLAGS = [
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]
# What the browser itself says about a request that failed because a test took the signal away.
SIGNAL_WORDS = ("net::ERR_INTERNET_DISCONNECTED", "net::ERR_CONNECTION_REFUSED")


class Site:
    """A server of one folder that can be stopped and started again at the same address.

    Attributes: `url`, the address of the app with its closing slash; `folder`, what is served; `served`, the
    paths asked for so far; `instead`, answers in the place of a file's: {path: (status, content type, content)};
    `held`, events by path: such an answer waits until its event is set.
    """

    def __init__(self, script: ModuleType, folder: Path, prefix: str = "/") -> None:
        self.script = script
        self.folder = folder
        self.prefix = prefix
        self.served: list[str] = []
        self.instead: dict[str, tuple[int, str, bytes]] = {}
        self.held: dict[str, threading.Event] = {}
        self.port = 0
        self.server: Any = None
        self.start()
        self.url = f"http://localhost:{self.port}{prefix}"

    def handler(self) -> type:
        site = self

        class Watched(self.script.StaticFiles):
            def answer(self) -> bytes:
                path = self.path.split("?")[0].removeprefix(site.prefix)
                site.served.append(path)
                if path in site.held:
                    site.held[path].wait()
                if path not in site.instead:
                    return super().answer()
                status, kind, content = site.instead[path]
                about = {"Content-Type": kind, "Content-Length": str(len(content))}
                self.head(status, about | ({"Location": "index.html"} if status == 302 else {}))
                return content

        return Watched

    def start(self) -> None:
        if self.server:
            return
        self.server = self.script.make_server(self.folder, self.port, self.prefix, self.handler())
        self.port = self.server.server_port
        self.thread = threading.Thread(target=self.server.serve_forever, kwargs={"poll_interval": 0.05}, daemon=True)
        self.thread.start()

    def stop(self) -> None:
        """The server is gone: new connections are refused and open ones are cut."""
        if self.server is None:
            return
        for event in self.held.values():
            event.set()
        self.server.shutdown()
        self.server.server_close()
        self.server.cut_connections()
        self.thread.join()
        self.server = None


class Phone:
    """A headless Chromium held like a phone: 390 × 844, touch, with a profile that outlives its restarts.

    Attributes: `page`, the open page; `faults`, everything a page must never do (errors, breaches of the
    content policy, requests to another origin), checked when the test ends; a test that provokes some takes
    them out with `forgive`.
    """

    def __init__(self, playwright: Playwright, profile: Path, browser: str | None, site: Site) -> None:
        self.playwright = playwright
        self.profile = profile
        self.browser = browser
        self.site = site
        self.faults: list[str] = []
        self.requests: list[str] = []
        self.context: BrowserContext | None = None
        self.page: Page = self.start()

    def start(self, **choices: object) -> Page:
        """Start the browser on the same profile, with a blank page."""
        settings = {
            "viewport": {"width": 390, "height": 844},
            "has_touch": True,
            "is_mobile": True,
            "device_scale_factor": 2,
            "locale": "en-GB",
            "service_workers": "allow",
        } | choices
        context = self.playwright.chromium.launch_persistent_context(
            str(self.profile), executable_path=self.browser, args=FLAGS, **settings
        )
        self.context = context
        context.set_default_timeout(60_000)
        context.on("request", self.watch_request)
        context.on("console", self.watch_console)
        context.on("weberror", lambda error: self.faults.append(f"uncaught: {error.error}"))
        self.page = context.pages[0]
        return self.page

    def watch_request(self, request: Request) -> None:
        self.requests.append(request.url)
        own = (self.site.url, "data:", f"blob:{self.site.url}", "about:")
        if not request.url.startswith(own):
            self.faults.append(f"request to another origin: {request.url}")

    def watch_console(self, message: ConsoleMessage) -> None:
        if message.type == "error" and not any(words in message.text for words in SIGNAL_WORDS):
            self.faults.append(f"console: {message.text} ({message.location.get('url', '')})")

    def forgive(self, words: str) -> None:
        """Take out the faults that contain these words; there must be one, or the test proves nothing."""
        kept = [fault for fault in self.faults if words not in fault]
        assert len(kept) < len(self.faults), f"no fault says “{words}”: {self.faults}"
        self.faults[:] = kept

    def open(self, path: str = "") -> Page:
        self.page.goto(self.site.url + path)
        return self.page

    def close(self) -> None:
        if self.context:
            self.context.close()
        self.context = None

    def kill(self) -> None:
        """End the browser as a phone does that needs the memory: no page gets to say goodbye."""
        for process in processes_with(str(self.profile)):
            os.kill(process, signal.SIGKILL)
        with contextlib.suppress(Error):  # it may have noticed already
            self.close()
        self.context = None

    def relaunch(self, path: str = "", **choices: object) -> Page:
        """Kill the browser, start it cold on the same profile, and open the app again."""
        self.kill()
        self.start(**choices)
        return self.open(path)


def processes_with(profile: str) -> list[int]:
    """The processes of the browser that was started with this profile folder."""
    found = []
    for entry in Path("/proc").glob("[0-9]*"):
        try:
            words = (entry / "cmdline").read_bytes().decode(errors="replace").split("\0")
        except OSError:
            continue  # it ended while we looked
        if f"--user-data-dir={profile}" in words:
            found.append(int(entry.name))
    return found
