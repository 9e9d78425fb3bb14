"""Reads a job document by the table of fields: values made exact, every problem found at once, nothing guessed."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Any

from plumpline.dates import is_date
from plumpline.fields import Field
from plumpline.lengths import LengthError, read_length_full
from plumpline.problems import Problem

_SHARE = re.compile(r"(?:(\d{1,9})/(\d{1,9})|(\d{0,3}(?:[.,]\d{1,9})?)( ?%)?)")
_NUMBER = re.compile(r"\d{1,5}(?:[.,]\d{1,3})?")
_LARGEST_RATE = 10
_RATIO = re.compile(r"\d{1,2}(?:[.,]\d{1,6})?")
_LARGEST_RATIO = 10
_RUN = re.compile(r"(\d{1,4})/(\d{1,4})")
# Half of a letter beyond the basic plane: no text has one, and no file can hold it.
_HALF_LETTER = re.compile("[\ud800-\udfff]")
_LONGEST_TEXT = 2000
_LARGEST_SHOWN = 10**15
_MOST_ENTRIES = 500
_MOST_CORNERS = 24

Values = dict[str, Any]


@dataclass
class Reading:
    """What one pass over a document gathers beside its values: problems, and readings that need a question."""

    problems: list[Problem] = field(default_factory=list)
    questions: list[Problem] = field(default_factory=list)

    def problem(self, at: str, code: str, text: str) -> None:
        """Notes one problem and goes on reading."""
        self.problems.append(Problem(at, code, text))


def read_fields(value: object, fields: tuple[Field, ...], at: str, reading: Reading) -> Values:
    """The values of `value` that `fields` knows, exact; a field that is absent or unreadable is absent here."""
    if not isinstance(value, dict):
        reading.problem(at, "not-a-job", "Here a group of named fields was expected.")
        return {}
    known = {entry.name: entry for entry in fields}
    for name in value:
        if name not in known:
            shown = _shown(name)
            reading.problem(f"{at}/{_escaped(shown)}", "unknown-field", f"There is no field called “{shown}” here.")
    values: Values = {}
    for entry in fields:
        if entry.name in value:
            read = _READERS[entry.kind](value[entry.name], entry, f"{at}/{entry.name}", reading)
            if read is not None:
                values[entry.name] = read
        elif entry.required:
            reading.problem(f"{at}/{entry.name}", "missing-field", f"{_sentence(entry)} It is not said.")
    return values


def _escaped(name: str) -> str:
    return name.replace("~", "~0").replace("/", "~1")


def _sentence(entry: Field) -> str:
    return f"“{entry.name}” is missing: {entry.doc}"


def _text(value: object, entry: Field, at: str, reading: Reading) -> str | None:
    if not isinstance(value, str) or len(value) > _LONGEST_TEXT or _HALF_LETTER.search(value):
        reading.problem(at, "not-text", f"“{entry.name}” is a text of at most {_LONGEST_TEXT} whole letters.")
        return None
    return value


def _identity(value: object, entry: Field, at: str, reading: Reading) -> str | None:
    text = _text(value, entry, at, reading)
    if text == "":
        reading.problem(at, "not-text", f"“{entry.name}” cannot be empty.")
        return None
    return text


def _date(value: object, _: Field, at: str, reading: Reading) -> str | None:
    if isinstance(value, str) and is_date(value):
        return value
    reading.problem(at, "not-a-date", f"“{_shown(value)}” is not a day: write year, month and day, as 2026-07-10.")
    return None


def _choice(value: object, entry: Field, at: str, reading: Reading) -> str | None:
    if isinstance(value, str) and value in entry.choices:
        return value
    allowed = ", ".join(entry.choices)
    reading.problem(at, "unknown-value", f"“{_shown(value)}” is not known here. It can be: {allowed}.")
    return None


def _shown(value: object) -> str:
    if isinstance(value, int) and abs(value) >= _LARGEST_SHOWN:
        return "a very large number"
    text = _HALF_LETTER.sub("?", value if isinstance(value, str) else repr(value))
    return text if len(text) <= 40 else text[:39] + "…"


def _constant(value: object, entry: Field, at: str, reading: Reading) -> object | None:
    wanted: object = int(entry.choices[0]) if entry.name == "version" else entry.choices[0]
    if type(value) is type(wanted) and value == wanted:
        return value
    newer = entry.name == "version" and isinstance(value, int) and value > int(entry.choices[0])
    remedy = " It was written by a newer Plumpline: update this one first." if newer else ""
    code = "wrong-version" if entry.name == "version" else "not-a-job"
    reading.problem(at, code, f"“{entry.name}” is “{_shown(value)}”; here it must be {entry.choices[0]}.{remedy}")
    return None


def _count(value: object, _: Field, at: str, reading: Reading) -> int | None:
    if type(value) is int and 1 <= value <= 10_000:
        return value
    reading.problem(at, "not-a-count", f"“{_shown(value)}” is not a number of covers: whole, from 1 to 10000.")
    return None


def _length(value: object, _: Field, at: str, reading: Reading) -> int | None:
    try:
        read = read_length_full(value)  # type: ignore[arg-type]  # what is no text is refused there, in words
    except LengthError as error:
        reading.problem(at, "not-a-length", str(error))
        return None
    for question in read["notices"]:
        reading.questions.append(Problem(at, question["code"], question["text"]))
    return int(read["nm"])


def _positive(value: object, entry: Field, at: str, reading: Reading) -> int | None:
    read = _length(value, entry, at, reading)
    if read == 0:
        reading.problem(at, "not-a-length", "This measure cannot be nothing. Lay the tape again.")
        return None
    return read


def _by_side(value: object, entry: Field, at: str, reading: Reading) -> Values | None:
    if isinstance(value, dict):
        return read_fields(value, entry.fields, at, reading)
    read = _length(value, entry, at, reading)
    return None if read is None else {side.name: read for side in entry.fields}


def _signed(value: object, entry: Field, at: str, reading: Reading) -> int | None:
    if isinstance(value, str) and value.lstrip()[:1] in ("-", "−"):
        read = _length(value.lstrip()[1:], entry, at, reading)
        return None if read is None else -read
    return _length(value, entry, at, reading)


def _grid(value: object, entry: Field, at: str, reading: Reading) -> int | None:
    return 0 if value == "0" else _length(value, entry, at, reading)


def _share(value: object, _: Field, at: str, reading: Reading) -> Fraction | None:
    match = _SHARE.fullmatch(value.strip()) if isinstance(value, str) else None
    share = _share_value(match) if match else None
    if share is None or share >= 1:
        text = f"“{_shown(value)}” is not a share lost in the wash: write 0.03 for three in a hundred."
        reading.problem(at, "not-a-fraction", text)
        return None
    return share


def _rate(value: object, _: Field, at: str, reading: Reading) -> Fraction | None:
    """A part or a multiple of a price: "0.5", "50 %", "150 %". From 1 up it has to say its % to be understood."""
    match = _SHARE.fullmatch(value.strip()) if isinstance(value, str) else None
    rate = _share_value(match) if match else None
    says_so = match is not None and match[4] is not None
    if rate is not None and rate <= _LARGEST_RATE and (rate < 1 or says_so):
        return rate
    code, text = "not-a-fraction", f"“{_shown(value)}” is not a part of a price: write 0.2, or 20 %."
    if rate is not None and not says_so:
        code = "ambiguous-rate"
        text = f"“{_shown(value)}” may mean hundredths or how many times: write it with its sign, as 20 %."
    reading.problem(at, code, text)
    return None


def _number(value: object, _: Field, at: str, reading: Reading) -> Fraction | None:
    """How many, with decimals: "12", "7.5", "7,5"; a mark before three figures is asked about."""
    match = _NUMBER.fullmatch(value.strip()) if isinstance(value, str) else None
    if match is None:
        reading.problem(at, "not-a-number", f"“{_shown(value)}” is not a number of them: write 12, or 7.5.")
        return None
    number = match[0].replace(",", ".")
    whole, _point, part = number.partition(".")
    if len(part) == 3 and not whole.startswith("0"):
        text = f"“{match[0]}” may mean thousands or decimals. Write {whole}{part} or {whole}.{part.rstrip('0') or '0'}."
        reading.problem(at, "ambiguous-amount", text)
        return None
    return Fraction(number)


def _flag(value: object, entry: Field, at: str, reading: Reading) -> bool | None:
    if isinstance(value, bool):
        return value
    reading.problem(at, "unknown-value", f"“{entry.name}” is true or false, not “{_shown(value)}”.")
    return None


def _share_value(match: re.Match[str]) -> Fraction | None:
    top, bottom, decimal, percent = match.groups()
    if top is not None:
        return Fraction(int(top), int(bottom)) if int(bottom) else None
    if not decimal:
        return None
    return Fraction(decimal.replace(",", ".")) / (100 if percent else 1)


def _ratio(value: object, _: Field, at: str, reading: Reading) -> Fraction | None:
    """A number from 1 up, as text or as a number: "2", "2.5", 2.5."""
    text = str(value) if isinstance(value, str | int | float) and not isinstance(value, bool) else ""
    match = _RATIO.fullmatch(text.strip())
    ratio = Fraction(match[0].replace(",", ".")) if match else Fraction(0)
    if 1 <= ratio <= _LARGEST_RATIO:
        return ratio
    reading.problem(at, "not-a-fraction", f"“{_shown(value)}” is not how many times: write 2, or 2.5, up to 10.")
    return None


def _run(value: object, entry: Field, at: str, reading: Reading) -> Fraction | int | None:
    match = _RUN.fullmatch(value.strip()) if isinstance(value, str) else None
    if match is None:
        return _positive(value, entry, at, reading)
    top, bottom = int(match[1]), int(match[2])
    if bottom and 0 < 2 * top <= bottom:
        return Fraction(top, bottom)
    reading.problem(at, "not-a-fraction", f"“{match[0]}” of the side: a taper can start up to the middle, 1/2.")
    return None


def _object(value: object, entry: Field, at: str, reading: Reading) -> Values:
    return read_fields(value, entry.fields, at, reading)


def _list(value: object, entry: Field, at: str, reading: Reading) -> list[Values] | None:
    if not isinstance(value, list) or len(value) > _MOST_ENTRIES:
        reading.problem(at, "not-a-job", f"“{entry.name}” is a list of at most {_MOST_ENTRIES} entries.")
        return None
    return [read_fields(item, entry.fields, f"{at}/{index}", reading) for index, item in enumerate(value)]


def _reach(value: object, entry: Field, at: str, reading: Reading) -> int | str | None:
    """A length above 0, or "all"."""
    return "all" if value == "all" else _positive(value, entry, at, reading)


def _lengths(value: object, entry: Field, at: str, reading: Reading) -> list[int | None] | None:
    """Lengths one after the other; None for each that is not measured yet."""
    if not isinstance(value, list) or len(value) > _MOST_CORNERS:
        reading.problem(at, "not-a-job", f"“{entry.name}” is a list of at most {_MOST_CORNERS} lengths.")
        return None
    return [_yet_to_tape(item, entry, f"{at}/{index}", reading) for index, item in enumerate(value)]


def _yet_to_tape(value: object, entry: Field, at: str, reading: Reading) -> int | None:
    return None if value == "" else _positive(value, entry, at, reading)


def _diagonals(value: object, entry: Field, at: str, reading: Reading) -> list[tuple[int, int, int | None]] | None:
    """Two corners and the length from one to the other; None for a length that is not measured yet."""
    if not isinstance(value, list) or len(value) > _MOST_CORNERS:
        reading.problem(at, "not-a-job", f"“{entry.name}” is a list of at most {_MOST_CORNERS} diagonals.")
        return None
    found = []
    for index, item in enumerate(value):
        if not isinstance(item, list) or len(item) != 3:
            text = "A diagonal is told as two corners and a length: [0, 2, “81 in”]."
            reading.problem(f"{at}/{index}", "not-a-job", text)
            continue
        one, other = (_corner(item[end], entry, f"{at}/{index}/{end}", reading) for end in (0, 1))
        length = _yet_to_tape(item[2], entry, f"{at}/{index}/2", reading)
        if one is not None and other is not None:
            found.append((one, other, length))
    return found


def _corner(value: object, _: Field, at: str, reading: Reading) -> int | None:
    if type(value) is int and 0 <= value < _MOST_CORNERS:
        return value
    text = f"“{_shown(value)}” is not the number of a corner: whole, from 0 for the front left one."
    reading.problem(at, "no-such-corner", text)
    return None


def _corners(value: object, entry: Field, at: str, reading: Reading) -> list[int] | None:
    if not isinstance(value, list) or len(value) > _MOST_CORNERS:
        reading.problem(at, "not-a-job", f"“{entry.name}” is a list of at most {_MOST_CORNERS} corners.")
        return None
    found = [_corner(item, entry, f"{at}/{index}", reading) for index, item in enumerate(value)]
    return [corner for corner in found if corner is not None]


def _ids(value: object, entry: Field, at: str, reading: Reading) -> list[str] | None:
    if not isinstance(value, list) or len(value) > _MOST_ENTRIES:
        reading.problem(at, "not-a-job", f"“{entry.name}” is a list of at most {_MOST_ENTRIES} names.")
        return None
    found = [_identity(item, entry, f"{at}/{index}", reading) for index, item in enumerate(value)]
    return [name for name in found if name is not None]


def _apart(value: object, _: Field, _at: str, _reading: Reading) -> object:
    """What another door reads: nothing is said of it here."""
    return value


_READERS = {
    "text": _text,
    "id": _identity,
    "date": _date,
    "choice": _choice,
    "constant": _constant,
    "count": _count,
    "length": _length,
    "positive": _positive,
    "by_side": _by_side,
    "signed": _signed,
    "reach": _reach,
    "grid": _grid,
    "share": _share,
    "rate": _rate,
    "number": _number,
    "flag": _flag,
    "ratio": _ratio,
    "run": _run,
    "amount": _identity,
    "currency": _identity,
    "object": _object,
    "list": _list,
    "lengths": _lengths,
    "diagonals": _diagonals,
    "corner": _corner,
    "corners": _corners,
    "ids": _ids,
    "apart": _apart,
}
