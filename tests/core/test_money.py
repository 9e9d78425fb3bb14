"""Money: what a typed price means, when the maker is asked, and that no minor unit is lost."""

from fractions import Fraction

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from plumpline.lengths import read_length
from plumpline.money import DECIMALS, MoneyError, cost, read_money, share, to_minor, write_money

often = settings(max_examples=400, deadline=None, derandomize=True)
currencies = st.sampled_from(sorted(DECIMALS))


def refused(text, currency="USD"):
    """The error with which an amount is refused."""
    with pytest.raises(MoneyError) as caught:
        read_money(text, currency)
    return caught.value


def test_decimals_are_those_of_iso_4217():
    """ISO 4217 list one, as published on 1 January 2026; the forint has two there, whatever a phone says."""
    assert [DECIMALS[code] for code in ("USD", "EUR", "GBP", "HUF", "CHF")] == [2, 2, 2, 2, 2]
    assert [DECIMALS[code] for code in ("JPY", "KRW", "CLP", "ISK")] == [0, 0, 0, 0]
    assert [DECIMALS[code] for code in ("KWD", "BHD", "OMR", "JOD", "TND")] == [3, 3, 3, 3, 3]
    not_two = {code for code, decimals in DECIMALS.items() if decimals != 2}
    assert " ".join(sorted(not_two)) == (
        "BHD BIF CLP DJF GNF IQD ISK JOD JPY KMF KRW KWD LYD OMR PYG RWF TND UGX VND VUV XAF XOF XPF"
    )
    assert all(len(code) == 3 and code.isascii() and code.isupper() for code in DECIMALS)


@pytest.mark.parametrize(
    ("text", "amount"),
    [
        ("1.234,56", "1234.56"),
        ("1,234.56", "1234.56"),
        ("1 234,56", "1234.56"),
        ("1'234.56", "1234.56"),
        ("1’234,56", "1234.56"),
        ("1\u202f234,56", "1234.56"),
        ("1234,56", "1234.56"),
        ("1.234.567", "1234567.00"),
        ("1,234,567.8", "1234567.80"),
        ("1,23,456.78", "123456.78"),
        ("32", "32.00"),
        ("32.00", "32.00"),
        ("32,5", "32.50"),
        ("0,75", "0.75"),
        ("1,23", "1.23"),
        (".50", "0.50"),
        ("32.", "32.00"),
        ("32,-", "32.00"),
        ("32,—", "32.00"),
        ("007", "7.00"),
        ("0.350", "0.35"),
        ("1234.500", "1234.50"),
        ("0", "0.00"),
        ("３２，５０", "32.50"),
        ("٣٢٫٥٠", "32.50"),
        ("$32.50", "32.50"),
        ("$.50", "0.50"),
        ("US$ 32.50", "32.50"),
        ("32.50 USD", "32.50"),
        ("usd 32,50.", "32.50"),
    ],
)
def test_a_price_is_read_with_point_or_comma_as_it_is_meant(text, amount):
    """Fault B15."""
    assert read_money(text, "USD") == {"amount": amount, "notices": []}


@pytest.mark.parametrize(
    ("text", "currency", "amount"),
    [
        ("€ 32,50", "EUR", "32.50"),
        ("32,50 €", "EUR", "32.50"),
        ("£32.50", "GBP", "32.50"),
        ("¥3200", "JPY", "3200"),
        ("￥3,200,000", "JPY", "3200000"),
        ("32.00", "JPY", "32"),
        ("kr. 50", "SEK", "50.00"),
        ("50 kr.", "NOK", "50.00"),
        ("12,50 zł", "PLN", "12.50"),
        ("120 KČ", "CZK", "120.00"),
        ("2 500,00 Ft", "HUF", "2500.00"),
        ("Rs. 1,23,456", "INR", "123456.00"),
        ("R$ 12,90", "BRL", "12.90"),
        ("3.5", "KWD", "3.500"),
        ("1.234,567", "KWD", "1234.567"),
        ("KWD 0,250", "KWD", "0.250"),
    ],
)
def test_the_sign_of_the_currency_may_stand_beside_the_figures(text, currency, amount):
    assert read_money(text, currency) == {"amount": amount, "notices": []}


@pytest.mark.parametrize(
    ("text", "currency", "choices"),
    [
        ("3.350", "USD", ("3350.00", "3.35")),
        ("3,350", "EUR", ("3350.00", "3.35")),
        ("1,234", "USD", ("1234.00",)),
        ("$ 1,234", "USD", ("1234.00",)),
        ("100.000", "EUR", ("100000.00", "100.00")),
        ("1,234", "JPY", ("1234",)),
        ("3.000", "JPY", ("3000", "3")),
        ("1,234", "KWD", ("1234.000", "1.234")),
    ],
)
def test_a_lone_mark_before_three_figures_is_asked_about(text, currency, choices):
    """Fault B15: 3.350 was once read as 3350 without a word."""
    error = refused(text, currency)
    assert error.code == "ambiguous-amount"
    assert error.choices == choices
    assert str(error) == f"“{text}” may mean thousands or decimals. Write {' or '.join(choices)}."


def test_a_point_before_three_figures_is_shown_where_the_currency_has_three_decimals():
    assert read_money("3.350", "KWD") == {
        "amount": "3.350",
        "notices": [{"code": "point-as-decimal", "text": "“3.350” was read as 3.350: the point as decimals."}],
    }


def test_a_lone_space_before_three_figures_is_read_as_thousands_and_shown():
    assert read_money("3 350", "USD") == {
        "amount": "3350.00",
        "notices": [{"code": "space-as-thousands", "text": "“3 350” was read as 3350.00: the space as thousands."}],
    }


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("", "empty"),
        (" \u00a0", "empty"),
        ("abc", "not-an-amount"),
        ("$", "not-an-amount"),
        (".", "not-an-amount"),
        (",", "not-an-amount"),
        ("--", "not-an-amount"),
        ("5-", "not-an-amount"),
        ("1e3", "not-an-amount"),
        ("1/2", "not-an-amount"),
        ("½", "not-an-amount"),
        ("5²", "not-an-amount"),
        ("12 34", "not-an-amount"),
        ("1,2,3", "not-an-amount"),
        ("0,123,456", "not-an-amount"),
        ("1.234,567.89", "not-an-amount"),
        ("1,234.567,89", "not-an-amount"),
        ("1 234,567,890", "not-an-amount"),
        ("12$34", "not-an-amount"),
        ("32 per yd", "not-an-amount"),
        ("32 apples", "not-an-amount"),
        ("USD.50", "not-an-amount"),
        ("9" * 41, "not-an-amount"),
        ("9" * 16, "too-large"),
        ("-5", "negative"),
        ("$ -5", "negative"),
        ("−0,50", "negative"),
        ("0.355", "too-many-decimals"),
        ("1.23456", "too-many-decimals"),
        ("€ 32", "other-currency"),
        ("32 EUR", "other-currency"),
        ("kr 5", "other-currency"),
        (None, "not-text"),
        (32.5, "not-text"),
        (True, "not-text"),
    ],
)
def test_what_is_not_an_amount_is_refused_and_never_read_as_nothing(text, code):
    """Fault B15: 0,75 was once read as 0."""
    error = refused(text)
    assert error.code == code
    assert error.text == text


@pytest.mark.parametrize(
    ("text", "currency", "message"),
    [
        ("32 apples", "USD", "“32 apples” is not an amount. Write figures and decimals only, such as 1234.50."),
        ("3" * 41, "USD", f"“{'3' * 23}…” is not an amount. Write figures and decimals only, such as 1234.50."),
        ("32.5", "JPY", "JPY has no decimals. Write the amount with no more than that."),
        ("32.555", "JPY", "“32.555” may mean thousands or decimals. Write 32555."),
        ("0.1234", "KWD", "KWD has 3 decimals. Write the amount with no more than that."),
        ("€ 32", "USD", "“€” is not USD, the currency of this price. Write the amount in USD."),
    ],
)
def test_a_refused_amount_says_what_to_write(text, currency, message):
    assert str(refused(text, currency)) == message


@pytest.mark.parametrize("currency", ["XYZ", "usd", "", None, 840, ["USD"]])
def test_a_currency_that_is_not_known_is_refused_everywhere(currency):
    for ask in (
        lambda: read_money("32", currency),
        lambda: to_minor("32", currency),
        lambda: write_money(32, currency),
    ):
        with pytest.raises(MoneyError) as caught:
            ask()
        assert caught.value.code == "unknown-currency"


@pytest.mark.parametrize(
    ("amount", "currency", "minor"),
    [
        ("32.00", "USD", 3200),
        ("32", "USD", 3200),
        ("0.05", "USD", 5),
        ("32.5", "USD", 3250),
        ("3200", "JPY", 3200),
        ("3.350", "KWD", 3350),
        ("1.234,56", "USD", 123_456),
        ("1234.500", "USD", 123_450),
        ("999999999999999.99", "USD", 99_999_999_999_999_999),
    ],
)
def test_an_amount_of_a_job_is_whole_minor_units(amount, currency, minor):
    """In a job document a point means decimals, so 3.350 KWD needs no question."""
    assert to_minor(amount, currency) == minor


def test_an_amount_of_a_job_is_asked_about_like_a_typed_one():
    with pytest.raises(MoneyError) as caught:
        to_minor("3.350", "USD")
    assert caught.value.code == "ambiguous-amount"
    with pytest.raises(MoneyError) as caught:
        to_minor(32, "USD")
    assert caught.value.code == "not-text"


def test_minor_units_are_written_with_all_decimals_of_the_currency():
    assert write_money(6400, "USD") == "64.00"
    assert write_money(5, "USD") == "0.05"
    assert write_money(-5, "USD") == "-0.05"
    assert write_money(6400, "JPY") == "6400"
    assert write_money(-6400, "JPY") == "-6400"
    assert write_money(6400, "KWD") == "6.400"


def test_two_yards_at_32_a_yard_cost_64():
    assert write_money(cost(read_length("2 yd"), to_minor("32.00", "USD"), read_length("1 yd")), "USD") == "64.00"
    assert cost(read_length("4 1/8 yd"), 3200, read_length("1 yd")) == 13_200


def test_half_a_cent_is_charged_as_a_cent():
    assert cost(read_length("1/8 yd"), 3204, read_length("1 yd")) == 401
    assert cost(read_length("1/8 yd"), 3203, read_length("1 yd")) == 400
    assert cost(read_length("10 cm"), 1995, read_length("1 m")) == 200


def test_a_length_of_the_other_system_is_charged_exactly():
    """1.95 m at 32.00 a yard: 1.95 / 0.9144 × 32 = 68.2415 (1 yd = 0.9144 m: NBS, 1959)."""
    assert cost(read_length("1.95 m"), 3200, read_length("1 yd")) == 6824


def test_a_fifth_of_302_is_60_40_and_not_a_cent_more():
    """Fault B40: binary fractions made it 60.41."""
    assert share(to_minor("302.00", "USD"), Fraction(20, 100)) == 6040


def test_138_66_with_19_per_cent_is_165_01():
    """Fault B40: one screen said 165.00."""
    net = to_minor("138.66", "EUR")
    assert write_money(net + share(net, Fraction(19, 100)), "EUR") == "165.01"


def test_tax_is_rounded_up_from_half_a_cent():
    """1.0649 → 1.06 and 1.0650 → 1.07: Streamlined Sales and Use Tax Agreement, section 324."""
    assert share(10_649, Fraction(1, 100)) == 106
    assert share(10_650, Fraction(1, 100)) == 107


@often
@given(currencies, st.integers(0, 10**12))
def test_every_amount_is_written_and_read_back_to_the_last_minor_unit(currency, minor):
    assert to_minor(write_money(minor, currency), currency) == minor


@often
@given(currencies, st.integers(0, 10**9), st.sampled_from([(",", "."), (".", ","), (" ", ","), ("'", ".")]))
def test_thousands_and_decimals_are_told_apart_in_every_country(currency, minor, marks):
    decimals = DECIMALS[currency]
    whole, part = divmod(minor, 10**decimals)
    text = f"{whole:,}".replace(",", marks[0]) + (f"{marks[1]}{part:0{decimals}d}" if decimals else "")
    try:
        assert to_minor(read_money(text, currency)["amount"], currency) == minor
    except MoneyError as error:
        lone_mark = sum(text.count(mark) for mark in ".,") == 1 and text[-4] in ".,"
        if not lone_mark:
            raise AssertionError(text) from error


@often
@given(st.text(max_size=45) | st.text("0123456789.,' -$€kr", max_size=16), currencies)
@example("kr.50", "SEK")
def test_any_text_is_an_amount_or_refused_and_is_0_only_when_written_so(text, currency):
    try:
        amount = read_money(text, currency)["amount"]
    except MoneyError:
        return
    assert write_money(to_minor(amount, currency), currency) == amount
    if Fraction(amount) == 0:
        assert not any(character.isdecimal() and int(character) for character in text)


@often
@given(st.integers(0, 10**11), st.integers(0, 10**7), st.sampled_from([10**9, 914_400_000, 25_400_000]))
def test_a_cost_is_within_half_a_minor_unit_of_the_exact_one(length, price, per):
    exact = Fraction(length * price, per)
    assert -Fraction(1, 2) < cost(length, price, per) - exact <= Fraction(1, 2)
