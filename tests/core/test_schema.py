"""The JSON Schemas agree with the core: examples and answers are valid, and the shipped copy is the current one."""

import json
from importlib.metadata import version
from pathlib import Path

import pytest
from jobs import EXAMPLES, changed, example
from quotes import FULL

import plumpline
from plumpline import plan, quote
from plumpline.schema import job_schema

FOLDER = Path(plumpline.__file__).parent / "schema"


def test_the_shipped_schema_is_made_from_the_table_of_fields():
    shipped = json.loads((FOLDER / "job.schema.json").read_text(encoding="utf-8"))
    assert shipped == job_schema()


@pytest.mark.reference
@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_every_example_and_its_answer_are_valid(path):
    """Validated with jsonschema, the reference implementation of JSON Schema for Python."""
    from jsonschema import Draft202012Validator

    document = json.loads(path.read_text(encoding="utf-8"))
    answers = Draft202012Validator(json.loads((FOLDER / "plan.schema.json").read_text(encoding="utf-8")))
    Draft202012Validator(job_schema()).validate(document)
    for effort in ("quick", "full"):
        answers.validate(plan(document, effort))


@pytest.mark.reference
@pytest.mark.parametrize("rounding", ["line", "document"])
def test_a_job_with_a_price_and_the_price_are_valid(rounding):
    from jsonschema import Draft202012Validator

    document = {**example("reading-corner"), "quote": {**FULL, "tax": {"rate": "20 %", "rounding": rounding}}}
    Draft202012Validator(job_schema()).validate(document)
    prices = Draft202012Validator(json.loads((FOLDER / "quote.schema.json").read_text(encoding="utf-8")))
    prices.validate(quote(document, "quick"))
    prices.validate(quote({**document, "quote": {"currency": "USD"}}, "quick"))


@pytest.mark.reference
@pytest.mark.parametrize(
    ("at", "value"),
    [("/units", "ell"), ("/cushions/0/quantity", 0), ("/selvege", "1 in"), ("/version", 2), ("/quote/tip", "1")],
)
def test_the_schema_refuses_what_the_core_refuses(at, value):
    from jsonschema import Draft202012Validator

    assert not Draft202012Validator(job_schema()).is_valid(changed(example("harbour-room"), at, value))


@pytest.mark.reference
def test_the_core_names_the_version_of_its_package():
    assert plumpline.__version__ == version("plumpline")
