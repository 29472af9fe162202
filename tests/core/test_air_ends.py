"""Air at its ends: long lists of damage in a logger's file, dates and clocks that are none, machines, stays, dew."""

from __future__ import annotations

import datetime

import numpy as np
import pytest

from movement_core.air.daily import DailyAir, days_from_months
from movement_core.air.indoor import Rooms, indoor_year
from movement_core.air.logger import FINDINGS_A_KIND, read_logger
from movement_core.air.logger_days import logged_days, logged_year
from movement_core.air.logger_review import review
from movement_core.air.logger_time import in_order, seconds_of, split_date
from movement_core.air.moist_air import dew_point, humidity_ratio
from movement_core.air.months_table import year_from_table
from movement_core.air.presets import find_year
from movement_core.air.sequence import Stay, in_sequence, steady_air
from movement_core.errors import FileError, InputError
from tests.core.test_logger import START, rows, text

HEAD = "timestamp,temp_c,rh"
FORM = "%Y-%m-%d %H:%M"
MORE = FINDINGS_A_KIND + 7


def spoilt(lines, every, how):
    """The lines, every so many-th spoilt."""
    return [how(line) if number % every == 1 else line for number, line in enumerate(lines)]


def of_kind(record, kind):
    return [finding for finding in record.findings if finding.kind == kind]


def test_lines_that_cannot_be_read_are_written_out_up_to_a_number_and_counted_beyond():
    lines = spoilt(rows(FORM, count=10 * MORE), 10, lambda line: line.rsplit(",", 1)[0] + ",ERR")
    record = read_logger(text(HEAD, lines))
    left_out = of_kind(record, "left out")
    assert len(left_out) == FINDINGS_A_KIND + 1 and "7 more" in left_out[-1].what
    assert left_out[0].line == 3 and "'ERR'" in left_out[0].what
    assert record.seconds.size == 9 * MORE


def test_damage_right_below_the_heading_is_told_and_a_line_of_words_is_none():
    whole, first = rows(FORM, count=40), START.strftime(FORM)
    started = read_logger(text(HEAD, ["started,by,hand", *whole]), temperature_unit="C")
    assert started.findings == () and started.layout.first_line == 3
    record = read_logger(text(HEAD, [f"{first},ERR,ERR", f"{first},20", *whole]), temperature_unit="C")
    assert [(finding.kind, finding.line) for finding in record.findings] == [("left out", 2), ("left out", 3)]
    assert record.seconds.size == 40


def test_impossible_readings_are_left_out_and_counted_likewise():
    lines = spoilt(rows(FORM, count=10 * MORE), 10, lambda line: line.rsplit(",", 1)[0] + ",117")
    record = read_logger(text(HEAD, lines))
    left_out = of_kind(record, "left out")
    assert len(left_out) == FINDINGS_A_KIND + 1 and left_out[-1].what.endswith("7 more")
    assert record.rh_percent.max() < 100


def test_a_file_in_which_too_much_is_impossible_is_refused_with_the_first_place():
    lines = spoilt(rows(FORM, count=60), 3, lambda line: line.rsplit(",", 1)[0] + ",117")
    with pytest.raises(FileError, match="20 of 60") as caught:
        read_logger(text(HEAD, lines))
    assert "line 3, column 3" in str(caught.value)


def test_many_gaps_and_many_stuck_stretches_are_counted_too():
    lines, moment = [], START
    for _ in range(MORE + 1):
        for hour in range(50):
            lines.append(f"{(moment + datetime.timedelta(hours=hour)).strftime(FORM)},20.0,45.0")
        moment += datetime.timedelta(hours=60)
    record = read_logger(text(HEAD, lines))
    gaps, stuck = of_kind(record, "gap"), of_kind(record, "stuck")
    assert len(gaps) == FINDINGS_A_KIND + 1 and "7 more" in gaps[-1].what
    assert FINDINGS_A_KIND <= len(stuck) <= FINDINGS_A_KIND + 1, "the first ones are written out"


def test_no_reading_at_all_is_refused():
    none = np.zeros(0)
    whole = np.zeros(0, dtype=np.int64)
    with pytest.raises(FileError, match="no usable reading"):
        review(whole, none, none, whole, "empty.csv", 5)
    with pytest.raises(FileError):
        read_logger(text(HEAD, []), name="empty.csv")


@pytest.mark.parametrize(
    "words",
    [{"date_order": "ydm"}, {"temperature_unit": "K"}],
)
def test_words_that_settle_nothing_are_refused(words):
    with pytest.raises(InputError, match=r"'(ydm|K)'"):
        read_logger(text(HEAD, rows(FORM)), **words)


def test_something_that_is_no_text_is_refused():
    with pytest.raises(InputError, match="list"):
        read_logger(["2024-01-20 00:00,20,45"])


def test_an_order_that_makes_a_date_of_what_is_none_in_the_other_is_asked_for():
    """Nine dates can be read both ways, one only as day and month, one only as month and day."""
    dates = [
        "13/05/2024",
        "05/14/2024",
        *(f"0{i}/0{i + 1}/2024" for i in range(1, 8)),
        "08/09/2024",
        "09/10/2024",
    ]
    lines = [f"{date},12:00,20.{i},45" for i, date in enumerate(dates)]
    with pytest.raises(FileError, match="13 May 2024") as caught:
        read_logger(text("Date,Time,Temp(C),RH", lines))
    assert "no date" in str(caught.value)


@pytest.mark.parametrize(
    ("cell", "day"),
    [
        ("2024-Jan-20", datetime.date(2024, 1, 20)),
        ("20-Jan-24", datetime.date(2024, 1, 20)),
        ("Jan 20, 2024", datetime.date(2024, 1, 20)),
        ("5. Mär 1999", datetime.date(1999, 3, 5)),
        ("30-Feb-2024", None),
        ("20-Xyz-2024", None),
        ("1-Jan-1969", None),
        ("yesterday", None),
    ],
)
def test_dates_with_the_name_of_a_month(cell, day):
    found = split_date(cell)
    assert (None if found is None else found[0]) == (None if day is None else day.toordinal())


def test_numbers_of_a_date_stand_in_one_order():
    fields = split_date("03/04/2024")[0]
    assert in_order(fields, "dmy") == datetime.date(2024, 4, 3).toordinal()
    assert in_order(fields, "mdy") == datetime.date(2024, 3, 4).toordinal()
    assert in_order(fields, "ymd") is None
    assert in_order(split_date("2024-03-04")[0], "dmy") is None


@pytest.mark.parametrize(
    ("clock", "seconds"),
    [
        ("12:00 AM", 0), ("12:30 pm", 45000), ("1:00 p.m.", 46800), ("24:00", 86400), ("", 0),
        ("13:00 PM", None), ("0:30 am", None), ("24:01", None), ("7:60", None), ("noon", None),
    ],
)  # fmt: skip
def test_times_of_day(clock, seconds):
    assert seconds_of(clock) == seconds


def test_a_logged_year_is_completed_from_a_year_of_months_as_from_one_of_days():
    """A year of twelve months and the same as days complete a month of readings alike."""
    record = read_logger(text(HEAD, rows(FORM, count=31 * 24, start=datetime.datetime(2024, 1, 1))))
    months = find_year("heated cold-winter home")
    days = DailyAir(
        months.name, days_from_months(months.temperature_c), days_from_months(months.rh_percent), "own"
    )
    one, other = (logged_year(logged_days(record), complete_with=air) for air in (months, days))
    assert one.temperature_c == pytest.approx(other.temperature_c)
    assert one.rh_percent[200] == pytest.approx(days.rh_percent[200])
    assert one.temperature_c[10] == pytest.approx(20.2, abs=0.01)  # what was logged


def test_empty_lines_of_a_table_of_months_count_for_nothing():
    body = "".join(f"{20 + i % 3},{40 + i}\n\n , \n" for i in range(12))
    year = year_from_table("temperature_c,rh_percent\n" + body, "months.csv")
    assert tuple(year.rh_percent) == tuple(range(40, 52))


def test_a_hundred_years_of_stays_are_the_most():
    air = steady_air("attic", 18.0, 55.0)
    first = datetime.date(1900, 1, 1)
    assert (
        in_sequence([Stay("attic", air, first, first + datetime.timedelta(days=36500))]).stays[0].days
        == 36500
    )
    with pytest.raises(InputError, match="hundred years"):
        in_sequence([Stay("attic", air, first, first + datetime.timedelta(days=36501))])


@pytest.mark.parametrize(
    ("rooms", "said", "unsaid"),
    [
        (Rooms(heating_c=None), "unheated", "humidified"),
        (Rooms(cooling_c=26.0, humidifier_rh=40.0, dehumidifier_rh=55.0), "dried to 55 %", "unheated"),
        (Rooms(humidifier_rh=40.0), "humidified to 40 %", "dried"),
    ],
)
def test_a_room_says_how_it_is_kept(rooms, said, unsaid):
    outside = find_year("unheated shop, maritime")
    basis = indoor_year(outside, rooms).basis
    assert said in basis and unsaid not in basis


def test_air_has_no_more_vapour_than_pressure_and_its_dew_lies_in_range():
    with pytest.raises(InputError, match="above the air pressure"):
        humidity_ratio(100.0, 100.0, 90000.0)
    assert humidity_ratio(100.0, 50.0) > 0.5
    with pytest.raises(InputError, match="dew point"):
        dew_point(-50.0, 1.0)
    assert dew_point(20.0, 100.0) == pytest.approx(20.0, abs=1e-3)
