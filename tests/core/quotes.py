"""Prices the tests are made of: a job whose lines are only what a test puts on its bill, and a full rate card."""

from __future__ import annotations

from jobs import cloth, covers, job

from plumpline.fields import OPERATIONS, PRICES
from plumpline.price import priced

# No work and no materials: every minute and every price is said to be nothing.
NO_WORK = {entry.name: {"minutes": "0", **({"per": "yd"} if len(entry.fields) > 1 else {})} for entry in OPERATIONS}
NO_MATERIALS = {entry.name: {"amount": "0"} for entry in PRICES}


def bare(**quote):
    """A job of one cover whose bill has nothing but what `quote` puts there."""
    taken = {"currency": "USD", "rates": {"hour": "0"}, "operations": NO_WORK, "prices": NO_MATERIALS, **quote}
    price = {"amount": "0.00", "per": "yd", "currency": taken["currency"]}
    return job(covers(1, "18 in", "18 in"), cloth("54 in", price=price), quote=taken)


def item(amount, count=1, kind="work", text="A thing"):
    """An entry of `items`."""
    return {"text": text, "amount": amount, "count": count, "kind": kind}


def bill(*items, **quote):
    """The price of a job with these items alone on its bill; lines that come to nothing are left out."""
    return without_nothing(priced(bare(items=list(items), **quote), {"k1": 0}))


def without_nothing(answer):
    """The answer without the lines that are nothing in it."""
    lines = [line for line in answer["lines"] if line["amount"] is None or line["amount"].strip("0.")]
    return {**answer, "lines": lines}


#: Every field of a price, with figures of our own invention.
FULL = {
    "currency": "USD",
    "rates": {
        "hour": "36.00",
        "overhead": "4.50",
        "handling": {"amount": "6.00", "per": "yd"},
        "travel": {"amount": "0.65", "per": "mi"},
    },
    "operations": {
        "consult": {"minutes": "40"},
        "order": {"minutes": "20"},
        "press_cloth": {"minutes": "2.5", "per": "yd"},
        "square": {"minutes": "6"},
        "place": {"minutes": "5"},
        "cut": {"minutes": "3.5"},
        "overlock": {"minutes": "1.5", "per": "yd"},
        "make_piping": {"minutes": "2", "per": "ft"},
        "attach_piping": {"minutes": "3", "per": "ft"},
        "frill": {"minutes": "14", "per": "m"},
        "zip": {"minutes": "14"},
        "close": {"minutes": "9"},
        "make_up": {"minutes": "5", "per": "yd"},
        "corners": {"minutes": "0.75"},
        "fill": {"minutes": "4"},
        "press": {"minutes": "3"},
        "label": {"minutes": "1.5"},
        "pack": {"minutes": "2"},
        "deliver": {"minutes": "25"},
        "fit": {"minutes": "5"},
    },
    "prices": {
        "thread": {"amount": "4.20"},
        "needle": {"amount": "0.90"},
        "zip": {"amount": "2.75", "per": "yd"},
        "trim": {"amount": "9.50", "per": "each"},
        "cord": {"amount": "0.80", "per": "m"},
        "buttons": {"amount": "0.45"},
        "ties": {"amount": "0.60", "per": "ft"},
        "label": {"amount": "0.20"},
        "pad": {"amount": "8.00"},
        "filling": {"amount": "11.00"},
    },
    "markup": {"cloth": "0.5", "materials": "40 %", "work": "10 %"},
    "client_cloths": [],
    "extras": {
        "piping": {"on": True, "amount": "4.00"},
        "matching": {"on": True, "amount": "7.50"},
        "velvet": {"on": True, "rate": "0.15"},
        "contrast": {"on": True, "amount": "6.00", "rate": "5 %"},
        "rush": {"on": True, "rate": "25 %"},
    },
    "items": [item("12.50", 2, "bought", "Castors"), item("15.00", text="Take the old covers apart")],
    "travel": {"distance": "12.5", "trips": 2},
    "minimum": "80.00",
    "discount": {"rate": "5 %", "amount": "3.00"},
    "tax": {"rate": "8.875 %", "included": False, "rounding": "document"},
    "deposit": {"materials": "100 %", "making": "50 %"},
}
