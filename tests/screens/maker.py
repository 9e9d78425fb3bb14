"""A maker with one finger: finds controls by role and name as controls.js gives them, and counts the touches."""

import json
import re
from fractions import Fraction
from typing import Any

from names import EIGHTHS, FieldNames, control, fields
from playwright.sync_api import Locator, Page, expect

from plumpline.fields import FACES_OF

Document = dict[str, Any]
MEASURE = re.compile(r"(?P<whole>[\d.]*) ?(?P<part>\d+/\d+)? (?P<unit>in|cm)")


class Maker:
    """Drives one page by touch alone. `touches` counts every tap; nothing is typed but names, by `write`."""

    def __init__(self, page: Page) -> None:
        self.page = page
        self.touches = 0

    def find(self, key: str, **places: str) -> Locator:
        role, name = control(key, **places)
        return self.page.get_by_role(role, name=name, exact=True)  # type: ignore[arg-type]

    def touch(self, target: Locator) -> None:
        target.tap()
        self.touches += 1

    def press(self, key: str, **places: str) -> None:
        self.touch(self.find(key, **places))

    def press_named(self, name: str) -> None:
        self.touch(self.page.get_by_role("button", name=name, exact=True))

    def choose(self, name: str) -> None:
        """Touches the label around a radio button, as a finger does."""
        radio = self.page.get_by_role("radio", name=name, exact=True)
        self.touch(self.page.locator("label").filter(has=radio))

    # ---- whole steps -----------------------------------------------------------------------------------------

    def start_job(self, start: str = "home.padsInHand") -> None:
        self.press("home.newJob")
        _, name = control(start)
        self.touch(self.page.get_by_role("button", name=re.compile(f"^{name}")))
        expect(self.page.get_by_role("slider")).to_be_visible()

    def open_job(self, name: str = "") -> None:
        """Opens a job from the list: its button begins with its name and tells how many covers it makes."""
        self.touch(self.page.get_by_role("button", name=re.compile(rf"^{re.escape(name)}.* \d+ covers? · ")))

    def go_to(self, station: str) -> None:
        self.press(f"job.{station}")
        expect(self.find(f"job.{station}")).to_have_attribute("aria-current", "page")

    def tape(self, text: str) -> None:
        """Reads a length off by the keys: "17 5/8 in", "45.5 cm"."""
        match = MEASURE.fullmatch(text)
        assert match, f"the tape has no keys for “{text}”"
        self.switch_unit(match["unit"])
        for sign in match["whole"]:
            self.press_named("point" if sign == "." else sign)
        if match["part"]:
            self.fraction_key(match["part"])

    def switch_unit(self, unit: str) -> None:
        now, other = ("inches", "centimetres") if unit == "cm" else ("centimetres", "inches")
        switch = self.page.get_by_role("button", name=f"Unit: {now}. Change to {other}", exact=True)
        if switch.count():
            self.touch(switch)

    def fraction_key(self, part: str) -> None:
        sixteenths = Fraction(part) * 16
        eighth = Fraction(int(sixteenths) // 2, 8)
        if eighth:
            self.press_named(EIGHTHS[f"{eighth.numerator}/{eighth.denominator}"])
        if sixteenths % 2:
            self.press_named("one sixteenth more")

    def pad(self, amount: str) -> None:
        for sign in amount:
            self.press_named("point" if sign == "." else sign)

    def write(self, name: str, text: str) -> None:
        self.page.get_by_role("textbox", name=name, exact=True).fill(text)

    def row(self, name: str) -> Locator:
        return self.page.get_by_role("button", name=re.compile(f"^Change {re.escape(name)}: "))

    def save_as_file(self, job_name: str) -> Document:
        """Saves a job from the list as a file, and reads the file."""
        self.press("home.more", job=job_name)
        with self.page.expect_download() as download:
            self.press("home.share")
        document: Document = json.loads(download.value.path().read_text("utf-8"))
        assert download.value.suggested_filename.endswith(".json")
        self.press("job.close")
        return document

    def go_home(self) -> None:
        while not self.find("home.newJob").is_visible():
            before = self.page.url
            self.press("job.back")
            expect(self.page).not_to_have_url(before)


class FieldMaker(Maker):
    """Enters a whole job document, field for field, wherever the screens offer each field."""

    def enter(self, job: Document) -> None:
        self.start_job()
        self.press("job.back")
        self.enter_fields(job, job, "/", skip=("/quote",))
        for number, cloth in enumerate(job["cloths"]):
            self.go_to("cloth")
            if number:
                self.press("cloth.add")
            self.enter_cloth_entry(job, cloth)
        for number, cushion in enumerate(job["cushions"]):
            self.enter_cushion(job, cushion, number)
        for number, cloth in enumerate(job["cloths"]):
            self.enter_purchase(job, cloth, number)
        if "quote" in job:
            self.enter_price(job)

    def enter_price(self, job: Document) -> None:
        self.enter_fields(job, job, "/", only=("/quote",))
        for number, item in enumerate(job["quote"].get("items", [])):
            self.press("price.addItem")
            self.press("job.done")
            group = self.page.get_by_role("group", name=f"On the bill {number + 1}", exact=True)
            self.enter_fields(job, item, "/quote/items/*/", inside=group)

    def enter_purchase(self, job: Document, cloth: Document, number: int) -> None:
        """What was cut of a cloth and paid, each length, and when the client approved it."""
        if "bought" not in cloth and "approved" not in cloth:
            return
        self.go_to("cut")
        self.unfold()
        name = f"Cut and paid: {cloth.get('name', f'Cloth {number + 1}')}"
        region = self.page.get_by_role("region", name=name, exact=True)
        for place, entry in enumerate(cloth.get("bought", [])):
            self.touch(region.get_by_role("button", name=control("cloth.addBought")[1], exact=True))
            self.press("job.done")
            group = region.get_by_role("group", name=f"Length {place + 1}", exact=True)
            self.enter_fields(job, entry, "/cloths/*/bought/*/", inside=group)
        self.enter_fields(job, cloth, "/cloths/*/", only=("/cloths/*/approved",), inside=region)

    def enter_cloth_entry(self, job: Document, cloth: Document) -> None:
        later = ("/cloths/*/start",)
        bought = ("/cloths/*/bought", "/cloths/*/approved")
        self.enter_fields(job, cloth, "/cloths/*/", skip=("/cloths/*/motifs", "/cloths/*/flaws", *later, *bought))
        for kind, add, called in (("motifs", "cloth.addMotif", "Motif"), ("flaws", "cloth.addFlaw", "Flaw")):
            for entry_number, entry in enumerate(cloth.get(kind, [])):
                self.press(add)
                self.press("job.done")
                group = self.page.get_by_role("group", name=f"{called} {entry_number + 1}", exact=True)
                self.enter_fields(job, entry, f"/cloths/*/{kind}/*/", inside=group)
        self.enter_fields(job, cloth, "/cloths/*/", only=later)
        for number, place in enumerate(cloth.get("piece", {}).get("flaws", [])):
            self.enter_place(job, place, number)

    def enter_place(self, job: Document, place: Document, number: int) -> None:
        """A flaw of the piece in hand, or a corner cut out of it."""
        self.unfold()
        self.press("cloth.addCorner" if "corner" in place else "cloth.addPlace")
        self.press("job.done")
        group = self.page.get_by_role("group", name=f"Place {number + 1} on the piece", exact=True)
        self.enter_fields(job, place, "/cloths/*/piece/flaws/*/", inside=group)

    def enter_cushion(self, job: Document, cushion: Document, number: int) -> None:
        self.go_to("measure")
        if number:
            self.press("measure.add")
            self.press("job.back")
        name = cushion.get("name", f"Cushion {number + 1}")
        first = ("kind", "insert", "name", "quantity", "mirrored", "size_from")
        measured = tuple(f"/cushions/*/{name}" for name in first)
        self.enter_fields(job, cushion, "/cushions/*/", only=measured)
        if cushion["insert"]["shape"] == "polygon":
            self.enter_outline_measures(job, cushion)
        self.go_to("cover")
        if number:
            self.touch(self.page.get_by_role("button", name=name, exact=True))
        self.enter_fields(job, cushion, "/cushions/*/", skip=measured)

    def enter_outline_measures(self, job: Document, cushion: Document) -> None:
        """Every side and every way across of a straight-sided outline, each at its own row."""
        taped = {entry.pattern.split("/")[4]: entry for entry in fields() if "/insert/" in entry.pattern[:20]}
        insert = cushion["insert"]
        count = len(insert["sides"])
        for side, length in enumerate(insert["sides"]):
            self.set_field(job, cushion, taped["sides"].between(side, (side + 1) % count), length)
        for one, other, length in insert["diagonals"]:
            self.set_field(job, cushion, taped["diagonals"].between(one, other), length)

    def enter_fields(
        self,
        job: Document,
        values: Document,
        prefix: str,
        skip: tuple[str, ...] = (),
        only: tuple[str, ...] = ("",),
        inside: Locator | None = None,
    ) -> None:
        """Sets every field of `values` whose pattern begins with `prefix`, in the order of the screens."""
        for entry in fields():
            rest = entry.pattern.removeprefix(prefix)
            if rest == entry.pattern or "*" in rest or entry.pattern.startswith(skip or ("none",)):
                continue
            if not entry.pattern.startswith(only):
                continue
            value = value_at(values, rest) if on_cover(values, rest) else None
            if value is not None and not isinstance(value, dict):
                self.set_field(job, values, entry, value, inside)

    def unfold(self) -> None:
        """Touches the heading of every group of fields that is folded away."""
        folded = self.page.locator("details:not([open]) > summary")
        while folded.count():
            self.touch(folded.first)

    # ---- one field -------------------------------------------------------------------------------------------

    def set_field(
        self, job: Document, values: Document, entry: FieldNames, value: Any, inside: Locator | None = None
    ) -> None:
        if not self.find(f"job.{entry.station}").get_attribute("aria-current"):
            self.go_to(entry.station)
        self.unfold()
        second = "/again/" in entry.pattern
        name = entry.called(values.get("kind", "")).removesuffix(", 2nd reading")
        row = self.row(name)
        self.touch(row if inside is None else inside.get_by_role("button", name=re.compile(f"^Change {name}: ")))
        if second:
            self.press("measure.again")
        getattr(self, f"enter_{entry.kind}")(job, values, entry, value)
        self.press("job.back" if entry.view else "job.done")
        if not entry.view:
            expect(self.page.get_by_role("dialog")).to_have_count(0)

    def enter_text(self, _job: Document, _values: Document, entry: FieldNames, value: str) -> None:
        self.write(entry.name, value)

    enter_date = enter_text

    def enter_choice(self, _job: Document, _values: Document, entry: FieldNames, value: str) -> None:
        self.choose(entry.options[value])

    enter_times = enter_choice

    def enter_count(self, _job: Document, _values: Document, entry: FieldNames, value: int) -> None:
        for _ in range(value - entry.least):
            self.press_named(f"One more: {entry.name}")

    def enter_outline(self, _job: Document, values: Document, _entry: FieldNames, value: list[int]) -> None:
        """Begins with a bay, gives it its sides and lets its corners turn, then tapes what is to be taped across."""
        insert = values["insert"]
        for _ in range(len(insert["sides"]) - 4):
            self.press_named("One more: Sides")
        for corner in value:
            self.press("measure.turnsInwards", corner="ABCDEFGHIJKL"[corner])
        wanted = ["".join("ABCDEFGHIJKL"[end] for end in one[:2]) for one in insert["diagonals"]]
        name = re.compile("^Tape from corner to corner: ")
        for toggle in self.page.get_by_role("button", name=name).all():
            ends = (toggle.get_attribute("aria-label") or "").split(": ")[1]
            if (toggle.get_attribute("aria-pressed") == "true") != (ends in wanted):
                self.touch(toggle)

    def enter_side(self, _job: Document, values: Document, _entry: FieldNames, value: int) -> None:
        count = len(values["insert"]["sides"])
        self.choose("ABCDEFGHIJKL"[value] + "ABCDEFGHIJKL"[(value + 1) % count])

    def enter_measure(self, _job: Document, _values: Document, _entry: FieldNames, value: str) -> None:
        self.tape(value)

    def enter_signed(self, _job: Document, _values: Document, entry: FieldNames, value: str) -> None:
        self.choose(entry.options["-" if value.startswith("-") else ""])
        self.tape(value.removeprefix("-"))

    def enter_length(self, _job: Document, _values: Document, entry: FieldNames, value: str) -> None:
        if value in entry.options:
            self.choose(entry.options[value])
            return
        self.choose(control("job.otherLength")[1])
        self.tape(value)

    def enter_money(self, _job: Document, _values: Document, _entry: FieldNames, value: str) -> None:
        self.pad(value)

    def enter_percent(self, _job: Document, _values: Document, _entry: FieldNames, value: str) -> None:
        percent = Fraction(value) * 100
        self.pad(str(percent) if percent.denominator == 1 else str(float(percent)))

    def enter_rate(self, _job: Document, _values: Document, _entry: FieldNames, value: str) -> None:
        self.pad(value.removesuffix(" %"))

    def enter_number(self, _job: Document, _values: Document, _entry: FieldNames, value: str) -> None:
        self.pad(value)

    def enter_flag(self, _job: Document, _values: Document, entry: FieldNames, value: bool) -> None:
        self.choose(entry.options["true" if value else "false"])

    def enter_cloths(self, job: Document, _values: Document, _entry: FieldNames, value: list[str]) -> None:
        for number, cloth in enumerate(job["cloths"]):
            if cloth["id"] in value:
                self.press("price.isClients", cloth=cloth.get("name", f"Cloth {number + 1}"))

    def enter_currency(self, _job: Document, _values: Document, _entry: FieldNames, value: str) -> None:
        self.choose(value)

    def enter_cloth(self, job: Document, _values: Document, _entry: FieldNames, value: str) -> None:
        number = next(at for at, cloth in enumerate(job["cloths"]) if cloth["id"] == value)
        self.choose(job["cloths"][number].get("name", f"Cloth {number + 1}"))

    def enter_motif(self, job: Document, values: Document, entry: FieldNames, value: str) -> None:
        cover, part = values["cover"], entry.pattern.split("/")[4]
        used = cover[part].get("cloth", cover["front"]["cloth"])
        cloth = next(cloth for cloth in job["cloths"] if cloth["id"] == used)
        number = next(at for at, motif in enumerate(cloth["motifs"]) if motif["id"] == value)
        self.choose(cloth["motifs"][number].get("name", f"Motif {number + 1}"))


def on_cover(values: Document, path: str) -> bool:
    """Whether a field belongs to a part that the cover of this kind has: a bolster keeps a back it does not have."""
    *_, part = ("", *path.split("/")[:2])
    return part not in ("front", "back", "sides") or part in FACES_OF[values["kind"]]


def value_at(values: Document, path: str) -> Any:
    found: Any = values
    for name in path.split("/"):
        found = found.get(name) if isinstance(found, dict) else None
    return found
