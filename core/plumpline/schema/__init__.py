"""The JSON Schema of the job document, made from the table of fields; `job.schema.json` beside it is its copy."""

from __future__ import annotations

from typing import Any

from plumpline.fields import JOB, VERSION, Field

Schema = dict[str, Any]

_TEXTS = {
    "length": "A length as text with its unit, 0 or more: “17 5/8 in”, “45.5 cm”.",
    "positive": "A length as text with its unit, above 0: “17 5/8 in”, “45.5 cm”.",
    "signed": "A length as text with its unit; a minus sign in front turns it round.",
    "reach": "A length as text with its unit, above 0, or “all”.",
    "grid": "A length as text with its unit, or “0” for none.",
    "share": "A share as text, from 0 up to but not including 1: “0.03”.",
    "ratio": "A number from 1 to 10, also as text: “2.5”.",
    "rate": "A part of a price as text: “0.2” or “20 %”; from 1 up with its sign, “150 %”.",
    "number": "A number as text, with decimals where it has some: “7.5”.",
    "run": "A fraction of the side as text, “1/4”, or a length with its unit.",
    "date": "A day as ISO 8601 text: “2026-07-10”.",
    "amount": "An amount of money as text with the decimals of its currency.",
    "currency": "A currency code of ISO 4217.",
}

_LENGTH: Schema = {"type": "string", "$comment": _TEXTS["positive"] + " Empty where it is not measured yet."}
_CORNER: Schema = {"type": "integer", "minimum": 0}
_DIAGONAL: Schema = {"type": "array", "prefixItems": [_CORNER, _CORNER, _LENGTH], "minItems": 3, "maxItems": 3}


def job_schema() -> Schema:
    """The schema of a job document of this version (JSON Schema, draft 2020-12)."""
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "$id": f"plumpline-job-{VERSION}",
        "title": "A Plumpline job",
        **_object(JOB),
    }


def _object(fields: tuple[Field, ...]) -> Schema:
    return {
        "type": "object",
        "properties": {field.name: {"description": field.doc, **_value(field)} for field in fields},
        "required": [field.name for field in fields if field.required],
        "additionalProperties": False,
    }


def _value(field: Field) -> Schema:
    if field.kind == "object":
        return _object(field.fields)
    if field.kind == "by_side":
        return {"anyOf": [{"type": "string", "minLength": 1}, _object(field.fields)]}
    if field.kind == "list":
        return {"type": "array", "items": _object(field.fields)}
    if field.kind == "lengths":
        return {"type": "array", "items": _LENGTH}
    if field.kind == "diagonals":
        return {"type": "array", "items": _DIAGONAL}
    if field.kind == "corner":
        return _CORNER
    if field.kind == "corners":
        return {"type": "array", "items": _CORNER}
    if field.kind == "choice":
        return {"enum": list(field.choices)}
    if field.kind == "constant":
        return {"const": VERSION if field.name == "version" else field.choices[0]}
    if field.kind == "count":
        return {"type": "integer", "minimum": 1}
    if field.kind == "ratio":
        return {"type": ["string", "number"], **_note(field)}
    if field.kind == "flag":
        return {"type": "boolean"}
    if field.kind == "ids":
        return {"type": "array", "items": {"type": "string", "minLength": 1}}
    if field.kind == "apart":
        return _object(field.fields)
    return {"type": "string", "minLength": 0 if field.kind == "text" else 1, **_note(field)}


def _note(field: Field) -> Schema:
    note = _TEXTS.get(field.kind)
    return {"$comment": note} if note else {}
