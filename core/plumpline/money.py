"""Money: amounts read as makers write them, kept in whole minor units, written with all their decimals.

The decimals are ISO 4217's (list one as published on 1 January 2026), not those of a phone's own tables:
those leave the forint without any. Funds and units of account are left out.
"""

from __future__ import annotations

import re
from fractions import Fraction
from typing import Any

from plumpline.lengths import round_half_up
from plumpline.typed import plain_text

_TWO_DECIMALS = """
    AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF
    CNY COP CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL
    HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT
    MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB
    SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH
    USD UYU UZS VED VES WST XCD XCG YER ZAR ZMW ZWG
"""
_NO_DECIMALS = "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF"
_THREE_DECIMALS = "BHD IQD JOD KWD LYD OMR TND"

#: Decimals of each currency, by its ISO 4217 code.
DECIMALS = (
    dict.fromkeys(_TWO_DECIMALS.split(), 2)
    | dict.fromkeys(_NO_DECIMALS.split(), 0)
    | dict.fromkeys(_THREE_DECIMALS.split(), 3)
)

# Signs written beside an amount, and the currencies each may stand for.
_DOLLARS = (
    "USD ARS AUD BBD BMD BND BSD BZD CAD CLP COP FJD GYD HKD JMD KYD LRD MXN NAD NZD SBD SGD SRD TTD TWD XCD"
)
_SIGNS = {
    "$": _DOLLARS,
    "£": "GBP EGP FKP GIP LBP SDG SHP SSP SYP",
    "€": "EUR",
    "¥": "JPY CNY",
    "￥": "JPY CNY",
    "₹": "INR",
    "₩": "KRW KPW",
    "₺": "TRY",
    "₽": "RUB",
    "₴": "UAH",
    "₪": "ILS",
    "₫": "VND",
    "₱": "PHP",
    "₦": "NGN",
    "₵": "GHS",
    "₡": "CRC",
    "₲": "PYG",
    "₸": "KZT",
    "฿": "THB",
    "us$": "USD",
    "a$": "AUD",
    "c$": "CAD",
    "hk$": "HKD",
    "nz$": "NZD",
    "r$": "BRL",
    "s$": "SGD",
    "nt$": "TWD",
    "fr": "CHF XAF XOF XPF",
    "ft": "HUF",
    "kr": "SEK NOK DKK ISK",
    "kč": "CZK",
    "lei": "RON MDL",
    "r": "ZAR",
    "rm": "MYR",
    "rp": "IDR",
    "rs": "INR LKR MUR NPR PKR SCR",
    "zł": "PLN",
}

_MOST_CHARACTERS = 40
_MOST_FIGURES = 15

_AMOUNT = re.compile(
    r"""\ *(?P<minus>-?)\ *
    (?P<before>[^0-9.,'\ -]*)(?:\.(?=\ ))?\ *(?P<minus_after>-?)
    (?P<figures>[0-9.,'\ ]*?)(?:[.,]-{1,2})?\ *
    (?P<after>[^0-9.,'\ -]*)\.?\ *""",
    re.VERBOSE,
)
_WHOLE = re.compile(
    r"[0-9]+|[1-9][0-9]{0,2}([ '.,])[0-9]{3}(?:\1[0-9]{3})*|[1-9][0-9]?(?:,[0-9]{2})+,[0-9]{3}"
)
_STORED = re.compile(r"[0-9]+(?:\.([0-9]+))?")


class MoneyError(ValueError):
    """A text that is not read as an amount, or a currency that is not known; `code` says which.

    `choices` are the amounts an `ambiguous-amount` may stand for, for the maker to tap one.
    """

    def __init__(self, code: str, message: str, text: object, choices: tuple[str, ...] = ()) -> None:
        super().__init__(message)
        self.code = code
        self.text = text
        self.choices = choices


def read_money(text: str, currency: str) -> dict[str, Any]:
    """The amount a maker typed: {"amount": "1234.56", "notices": [{"code", "text"}]}.

    Point, comma, spaces, apostrophes and the currency's sign are read in every usual order. Where a lone mark
    before three figures may mean thousands or decimals, the maker is asked (`ambiguous-amount`); nothing is
    ever read as 0 that was not written as 0. Raises `MoneyError`.
    """
    decimals = _decimals(currency)
    figures = _figures(text, currency)
    whole, part = _split(figures, text, currency)
    part = part.rstrip("0")
    if len(part) > decimals:
        message = f"{currency} has {_decimals_in_words(decimals)}. Write the amount with no more than that."
        raise MoneyError("too-many-decimals", message, text)
    amount = _amount(int(whole or "0"), part, decimals)
    return {"amount": amount, "notices": _notices(figures, amount)}


def to_minor(amount: str, currency: str) -> int:
    """An amount as a job document carries it ("32.00"), in whole minor units of the currency.

    There a point always means decimals; anything else is read as `read_money` reads it. Raises `MoneyError`.
    """
    decimals = _decimals(currency)
    stored = _STORED.fullmatch(amount) if isinstance(amount, str) and len(amount) <= _MOST_FIGURES else None
    if stored is None or len(stored[1] or "") > decimals:
        amount = read_money(amount, currency)["amount"]
    return int(Fraction(amount) * 10**decimals)


def write_money(minor: int, currency: str) -> str:
    """Whole minor units as an amount with all decimals of the currency: 6400 in USD is "64.00"."""
    decimals = _decimals(currency)
    whole, part = divmod(abs(minor), 10**decimals)
    return ("-" if minor < 0 else "") + _amount(whole, f"{part:0{decimals}d}" if decimals else "", decimals)


def share(minor: int, rate: Fraction) -> int:
    """`rate` times an amount in minor units, rounded half up to a whole one: a tax, or a part of a price."""
    return round_half_up(minor * rate)


def cost(length: int, price: int, per: int) -> int:
    """What `length` nm cost at `price` minor units for each `per` nm, rounded half up to a minor unit."""
    return share(price, Fraction(length, per))


def _decimals(currency: str) -> int:
    decimals = DECIMALS.get(currency) if isinstance(currency, str) else None
    if decimals is None:
        message = "This currency is not known. Write its three letters, such as USD, GBP or EUR."
        raise MoneyError("unknown-currency", message, currency)
    return decimals


def _decimals_in_words(decimals: int) -> str:
    return f"{decimals} decimals" if decimals else "no decimals"


def _amount(whole: int, part: str, decimals: int) -> str:
    return f"{whole}.{part.ljust(decimals, '0')}" if decimals else str(whole)


def _figures(text: str, currency: str) -> str:
    """The figures of an amount with their marks, without sign and spaces around them."""
    if not isinstance(text, str):
        raise MoneyError("not-text", "An amount is written as text, such as 32.00.", text)
    plain = plain_text(text).text
    amount = _AMOUNT.fullmatch(plain) if len(text) <= _MOST_CHARACTERS else None
    if amount is None:
        raise _not_an_amount(text)
    figures = amount["figures"].strip()
    if (amount["minus"] or amount["minus_after"]) and figures:
        raise MoneyError("negative", "A price cannot be below zero. Write it without the minus sign.", text)
    if amount["before"][-1:].isalpha() and figures.startswith((".", ",")):
        raise _not_an_amount(text)  # "kr.50" is 50 to some and 0.50 to others
    for sign in (amount["before"], amount["after"]):
        _refuse_another_currency(sign.lower(), text, currency)
    return figures


def _refuse_another_currency(sign: str, text: str, currency: str) -> None:
    meant = _SIGNS.get(sign, sign.upper()).split()
    if not sign or currency in meant:
        return
    if sign not in _SIGNS and sign.upper() not in DECIMALS:
        raise _not_an_amount(text)
    message = (
        f"“{sign.upper()}” is not {currency}, the currency of this price. Write the amount in {currency}."
    )
    raise MoneyError("other-currency", message, text)


def _split(figures: str, text: str, currency: str) -> tuple[str, str]:
    """The figures before and after the decimal mark, thousands marks taken out."""
    last = max(figures.rfind("."), figures.rfind(","))
    mark = figures[last] if last >= 0 else ""
    whole, part = figures, ""
    if mark and figures.count(mark) == 1:
        whole, part = figures[:last], figures[last + 1 :]
        if _may_be_thousands(whole, part) and not _is_stored(figures, currency):
            raise _ambiguous(text, whole, part, currency)
    if (whole and not _WHOLE.fullmatch(whole)) or not (whole or part) or not (part or "0").isdigit():
        raise _not_an_amount(text)
    whole = re.sub(r"[^0-9]", "", whole)
    if len(whole) > _MOST_FIGURES:
        raise MoneyError("too-large", "This amount is too large for a price. Check the figures.", text)
    return whole, part


def _may_be_thousands(whole: str, part: str) -> bool:
    return len(part) == 3 and 1 <= len(whole) <= 3 and whole.isdigit() and not whole.startswith("0")


def _is_stored(figures: str, currency: str) -> bool:
    """Where a currency has three decimals, a point before three figures is the ordinary way to write it."""
    return DECIMALS[currency] == 3 and "." in figures


def _ambiguous(text: str, whole: str, part: str, currency: str) -> MoneyError:
    decimals = DECIMALS[currency]
    choices = [_amount(int(whole + part), "", decimals)]
    if len(part.rstrip("0")) <= decimals:
        choices.append(_amount(int(whole), part.rstrip("0"), decimals))
    ways = " or ".join(choices)
    message = f"“{text.strip()}” may mean thousands or decimals. Write {ways}."
    return MoneyError("ambiguous-amount", message, text, tuple(choices))


def _not_an_amount(text: str) -> MoneyError:
    shown = text.strip()
    if not shown:
        return MoneyError(
            "empty", "No amount is written here yet. Write it with its decimals, such as 32.50.", text
        )
    shown = shown if len(shown) <= 24 else shown[:23] + "…"
    message = f"“{shown}” is not an amount. Write figures and decimals only, such as 1234.50."
    return MoneyError("not-an-amount", message, text)


def _notices(figures: str, amount: str) -> list[dict[str, str]]:
    """What was read in one of two possible ways and is to be shown."""
    if re.fullmatch(r"[0-9]+ [0-9]+", figures):
        return [
            {
                "code": "space-as-thousands",
                "text": f"“{figures}” was read as {amount}: the space as thousands.",
            }
        ]
    whole, _, part = figures.partition(".")
    if _may_be_thousands(whole, part):
        return [
            {"code": "point-as-decimal", "text": f"“{figures}” was read as {amount}: the point as decimals."}
        ]
    return []
