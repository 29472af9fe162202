"""A maker's own months from a CSV table."""

from __future__ import annotations

import pytest

from movement_core.air.months_table import year_from_table
from movement_core.errors import InputError

ROWS = [(20, 30 + i) for i in range(12)]


def _table(heading="temperature_c,rh_percent", rows=ROWS, separator=","):
    return "\n".join([heading, *(separator.join(str(v) for v in row) for row in rows)])


def test_twelve_months_make_a_year():
    year = year_from_table(_table(), "mine.csv")
    assert year.rh_percent[0] == 30 and year.rh_percent[11] == 41
    assert year.name == "mine.csv"


def test_fahrenheit_by_heading():
    year = year_from_table(_table("temperature_f,rh_percent", [(68, 40)] * 12), "f.csv")
    assert year.temperature_c[0] == pytest.approx(20)


def test_semicolons_with_decimal_commas_and_a_byte_order_mark():
    text = "\ufeff" + _table("month;temperature_c;rh_percent", [(i + 1, "20,5", 40) for i in range(12)], ";")
    assert year_from_table(text, "m.csv").temperature_c[0] == pytest.approx(20.5)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "line 1"),
        ("temp,rh\n20,40", "temperature_c"),
        (_table(rows=ROWS[:11]), "11 monthly"),
        (_table(rows=ROWS * 2), "24 monthly"),
        (_table(rows=[(20, "forty"), *ROWS[1:]]), "line 2, column rh_percent"),
        (_table(rows=[(20, 140), *ROWS[1:]]), "January"),
        (_table(rows=[(68, 40)] * 12), "temperature_f"),
        (_table(rows=[("nan", 40)] * 12), "no temperature"),
        (_table(rows=[(20, 0.4)] * 12), "write 40 for 40 %"),
        (_table(rows=[("20", "5", 40)] * 12), "3 cells under a heading of 2"),
        (_table("month,temperature_c,rh_percent", [("May", 20, 40)] * 12), "where January should"),
    ],
)
def test_bad_tables_say_where(text, said):
    with pytest.raises(InputError, match=said):
        year_from_table(text, "bad.csv")
