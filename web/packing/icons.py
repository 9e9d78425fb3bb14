"""Draws web/icons/*.png from icon.svg with the test browser: .venv/bin/python web/packing/icons.py

Run it by hand after changing icon.svg and commit what it writes. The maskable icon has no rounded ground and a
smaller mark, so that a phone may cut it to any shape.
"""

import shutil
from pathlib import Path

from playwright.sync_api import sync_playwright

ICONS = Path(__file__).resolve().parent.parent / "icons"
GROUND = 'rx="96" '
SAFE = 'id="mark" transform="translate(51 51) scale(0.8)" '


def main() -> None:
    drawing = (ICONS / "icon.svg").read_text("utf-8")
    full = drawing.replace(GROUND, "").replace('id="mark" ', SAFE)
    wanted = {("icon", 192): drawing, ("icon", 512): drawing, ("maskable", 512): full, ("touch", 180): full}
    browser = shutil.which("chromium") or shutil.which("google-chrome")
    with sync_playwright() as running:
        chromium = running.chromium.launch(executable_path=browser, args=["--no-sandbox"])
        for (name, size), svg in wanted.items():
            page = chromium.new_page(viewport={"width": size, "height": size})
            page.set_content(f"<style>body{{margin:0}}svg{{display:block;width:100vw}}</style>{svg}")
            page.screenshot(path=ICONS / f"{name}-{size}.png", omit_background=True)
        chromium.close()


main()
