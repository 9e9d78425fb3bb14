"""The wording of a text: the trade's words as they are said in Britain, where all texts are made, or in America."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from typing import Any

#: How an answer or a paper can be worded, by language tag (BCP 47).
WORDINGS = ("en-GB", "en-US")

Wording = Callable[[str], str]

# What is said otherwise in American workrooms and dictionaries (common practice). Where two words go together the pair
# stands before the word alone.
_AMERICAN = {
    "piping cord": "welt cord",
    "piping strips": "welt strips",
    "double piping": "double welt",
    "an overlocked": "a serged",
    "piping": "welting",
    "piped": "welted",
    "pipe": "welt",
    "zip": "zipper",
    "zips": "zippers",
    "zipped": "zippered",
    "frill": "ruffle",
    "frills": "ruffles",
    "frilled": "ruffled",
    "haberdashery": "notions",
    "selvedge": "selvage",
    "selvedges": "selvages",
    "overlock": "serge",
    "overlocked": "serged",
    "overlocking": "serging",
    "tack": "baste",
    "tacked": "basted",
    "tacking": "basting",
    "mitre": "miter",
    "mitres": "miters",
    "mitred": "mitered",
    "fibre": "fiber",
    "centre": "center",
    "centres": "centers",
    "centred": "centered",
    "metre": "meter",
    "metres": "meters",
    "centimetre": "centimeter",
    "centimetres": "centimeters",
    "millimetre": "millimeter",
    "millimetres": "millimeters",
    "anticlockwise": "counterclockwise",
    "neighbours": "neighbors",
}
# Where an answer keeps texts for a maker: everything else is a number, or a name that programs know things by.
_TEXTS = (
    *("approved_text", "ask", "do", "figure", "label", "makes_text", "name", "on", "other", "pieces"),
    *("rule", "size", "text", "title", "twins", "when", "working"),
)
# Where a job keeps what its maker wrote, which nobody rewords.
_OWN = ("name", "client", "notes", "text", "batch", "roll", "cut_by")


def wording(language: str, job: Any) -> Wording:
    """What puts a text of an answer to `job` into the words of a language, one of `WORDINGS`; else a `ValueError`.

    The names that the maker gave are left as they are, wherever they stand in a text.
    """
    if language not in WORDINGS:
        raise ValueError(f"the words are one of {', '.join(WORDINGS)}, not {language!r}")
    if language == "en-GB":
        return str
    own = sorted(filter(None, map(str.strip, _own_words(job))), key=lambda name: (-len(name), name))
    known = "|".join(re.escape(words) for words in [*own, *_AMERICAN])
    pattern = re.compile(rf"(?<!\w)(?:{known})(?!\w)", re.IGNORECASE)
    return lambda text: pattern.sub(_american, text) if text not in own else text


def _own_words(value: Any) -> Iterator[str]:
    if isinstance(value, dict):
        for key, inside in value.items():
            if key in _OWN and isinstance(inside, str):
                yield inside
            else:
                yield from _own_words(inside)
    elif isinstance(value, list):
        for inside in value:
            yield from _own_words(inside)


def _american(found: re.Match[str]) -> str:
    """The American for a word, a capital where it had one; a name that is none of these words stays."""
    word = found.group()
    said = _AMERICAN.get(word.lower(), word)
    return said[0].upper() + said[1:] if word[0].isupper() else said


def reworded(answer: Any, said: Wording, is_text: bool = False) -> Any:
    """A copy of an answer, or of a list of problems, with every text of it put into other words."""
    if isinstance(answer, dict):
        return {key: reworded(value, said, key in _TEXTS) for key, value in answer.items()}
    if isinstance(answer, list):
        return [reworded(value, said, is_text) for value in answer]
    return said(answer) if is_text and isinstance(answer, str) else answer
