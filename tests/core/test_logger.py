"""Logger files: every oddity met in the trade, what is asked instead of guessed, what is reported instead
of hidden.
"""

from __future__ import annotations

import datetime
import random

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.air.logger import LoggerRecord, read_logger
from movement_core.air.logger_days import logged_days, logged_year
from movement_core.air.year import Year
from movement_core.errors import FileError, HeartsideError, InputError

START = datetime.datetime(2024, 1, 20)


def rows(
    form: str, delimiter: str = ",", count: int = 48, minutes: float = 60, start: datetime.datetime = START,
    decimal: str = ".", fahrenheit: bool = False,
) -> list[str]:  # fmt: skip
    lines = []
    for i in range(count):
        moment = start + datetime.timedelta(minutes=minutes * i)
        t = 20 + i % 5 * 0.1
        values = (t * 1.8 + 32 if fahrenheit else t, 45 + i % 7 * 0.1)
        cells = (f"{value:.2f}".replace(".", decimal) for value in values)
        lines.append(delimiter.join([moment.strftime(form), *cells]))
    return lines


def text(heading: str, lines: list[str], before: str = "", end: str = "\n") -> str:
    return before + heading + end + end.join(lines) + end


def kinds(record: LoggerRecord) -> set[str]:
    return {finding.kind for finding in record.findings}


@pytest.mark.parametrize(
    ("data", "order", "first"),
    [
        (text("Date/Time,Temperature (°C),Humidity (%RH)", rows("%Y-%m-%d %H:%M:%S")), "ymd", START),
        (text("timestamp,temp_c,rh", rows("%Y-%m-%dT%H:%M:%SZ")), "ymd", START),
        (
            text("Datum;Zeit;Temperatur °C;rel. Feuchte %", rows("%d.%m.%Y;%H:%M", ";", decimal=","), "Gerät 1\n\n"),
            "dmy",
            START,
        ),
        (text("Date\tTime\tTemp °F\tRH %", rows("%m/%d/%y\t%I:%M %p", "\t", fahrenheit=True)), "mdy", START),
        (text("Time,Temperature_F,Relative_Humidity", rows("%m/%d/%Y %I:%M:%S %p", fahrenheit=True)), "mdy", START),
        (text("Date,Time,Temp(C),RH", rows("%d/%m/%y,%H:%M", count=100)), "dmy", START),
        (text("Date;Time;Temp °C;RH", rows("%d-%b-%Y;%H:%M", ";")), "ymd", START),
        (text("Date,Time,Temp (C),RH", rows("%Y/%m/%d,%H:%M"), end="\r\n"), "ymd", START),
    ],
)  # fmt: skip
def test_forms_met(data: str, order: str, first: datetime.datetime) -> None:
    record = read_logger(data)
    assert record.date_order == order
    assert record.seconds[0] == (first - datetime.datetime(1970, 1, 1)).total_seconds()
    assert np.all(np.diff(record.seconds) == 3600)
    assert record.temperature_c[:3] == pytest.approx([20, 20.1, 20.2], abs=0.01)
    assert record.rh_percent[:3] == pytest.approx([45, 45.1, 45.2], abs=0.01)
    assert record.findings == ()


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "cp1252"])
def test_encodings(encoding: str) -> None:
    data = text("Date;Time;Temp °C;RH", rows("%Y-%m-%d;%H:%M", ";", decimal=",")).encode(encoding)
    assert read_logger(data).temperature_c.size == 48


def test_number_column_quoted_headings_and_dew_point() -> None:
    lines = [f"{i},{line},9.1" for i, line in enumerate(rows("%Y-%m-%d %H:%M"))]
    record = read_logger(text('#,Date Time,"Temp, °C","RH, %","Dew point, °C"', lines))
    assert record.layout.temperature == 2 and record.layout.humidity == 3


def test_separate_half_day_column() -> None:
    lines = []
    for line in rows("%Y-%m-%d %I:%M %p"):
        moment, *values = line.split(",")
        lines.append(",".join([*moment.rsplit(" ", 1), *values]))
    record = read_logger(text("Date Time,Half,Temp C,RH", lines))
    assert np.all(np.diff(record.seconds) == 3600)


def test_spreadsheet_serial_days_and_unix_seconds() -> None:
    serial = [f"{45311 + i / 24:.5f};20.{i % 9};45" for i in range(30)]
    assert read_logger(text("date;temp_c;rh", serial)).seconds[0] == 1705708800
    epoch = [f"{1705708800 + 600 * i};20.{i % 9};45" for i in range(30)]
    assert read_logger(text("timestamp;temp_c;rh", epoch)).seconds[0] == 1705708800


def test_day_and_month_are_asked_never_guessed() -> None:
    data = text(
        "Date,Time,Temp(C),RH", rows("%d/%m/%Y,%H:%M", start=datetime.datetime(2024, 3, 1), count=200)
    )
    with pytest.raises(FileError, match="1 March 2024") as caught:
        read_logger(data)
    message = str(caught.value)
    assert "3 January 2024" in message and "date_order='dmy'" in message and "line 2" in message
    march = read_logger(data, date_order="dmy")
    assert march.seconds[0] == (datetime.datetime(2024, 3, 1) - datetime.datetime(1970, 1, 1)).total_seconds()
    with pytest.raises(
        FileError
    ):  # as month-first each midnight is a month's leap, and the 13th has no month
        read_logger(text("Date,Time,Temp(C),RH", rows("%d/%m/%Y,%H:%M", count=300)), date_order="mdy")


def test_two_digit_years_that_could_be_days_are_asked() -> None:
    with pytest.raises(FileError, match="date_order"):
        read_logger(text("Date,Time,Temp(C),RH", rows("%y/%m/%d,%H:%M", count=5)))


def test_unit_is_asked_and_wrong_units_are_refused() -> None:
    with pytest.raises(FileError, match="temperature_unit") as caught:
        read_logger(text("Date,Time,Temp,RH", rows("%Y-%m-%d,%H:%M")))
    assert "column 3" in str(caught.value)
    assert (
        read_logger(text("Date,Time,Temp,RH", rows("%Y-%m-%d,%H:%M")), temperature_unit="c").temperature_c[0]
        == 20
    )
    with pytest.raises(FileError, match="look like °F"):
        read_logger(text("Date,Time,Temp (C),RH", rows("%Y-%m-%d,%H:%M", fahrenheit=True)))
    with pytest.raises(FileError, match="look like °C"):
        read_logger(
            text("Date,Time,Temp (F),RH", [line.replace(",20.", ",2.") for line in rows("%Y-%m-%d,%H:%M")])
        )
    fractions = [line[:-5] + "0.45" for line in rows("%Y-%m-%d,%H:%M")]
    with pytest.raises(FileError, match="fractions"):
        read_logger(text("Date,Time,Temp (C),RH", fractions))


def test_columns_are_asked_where_headings_do_not_tell() -> None:
    data = text("a,b,c,d", rows("%Y-%m-%d,%H:%M"))
    with pytest.raises(FileError, match="columns="):
        read_logger(data, temperature_unit="C")
    assert (
        read_logger(data, temperature_unit="C", columns={"temperature": 3, "humidity": 4}).rh_percent[0] == 45
    )
    two = text("Date,Time,Temp 1 °C,Temp 2 °C,RH", [f"{line},50" for line in rows("%Y-%m-%d,%H:%M")])
    with pytest.raises(FileError, match="2 columns could be the temperature"):
        read_logger(two)
    with pytest.raises(InputError, match="dew"):
        read_logger(data, columns={"dew": 2})


def test_decimal_and_cell_commas_alike_are_refused() -> None:
    with pytest.raises(FileError, match="decimals"):
        read_logger(text("Date,Time,Temp °C,RH", rows("%Y-%m-%d,%H:%M", decimal=",")))


def test_twelve_hour_clock_without_halves_is_refused() -> None:
    with pytest.raises(FileError, match="AM or PM"):
        read_logger(text("Date,Time,Temp °C,RH", rows("%Y-%m-%d,%I:%M", count=200)))


def test_dates_out_of_order_are_refused_and_newest_first_turned_round() -> None:
    lines = rows("%Y-%m-%d,%H:%M", count=200)
    turned = read_logger(text("Date,Time,Temp °C,RH", lines[::-1]))
    assert "order" in kinds(turned) and np.all(np.diff(turned.seconds) > 0)
    random.Random(3).shuffle(lines)
    with pytest.raises(FileError, match="older than the one before") as caught:
        read_logger(text("Date,Time,Temp °C,RH", lines))
    assert "line" in str(caught.value)


def test_status_letters_gaps_repeats_jumps_and_stuck_sensors_are_reported_with_their_lines() -> None:
    lines = rows("%Y-%m-%d,%H:%M", count=24 * 12)
    lines[10] = lines[10].rsplit(",", 2)[0] + ",ERR,---"
    lines[20] = lines[20].rsplit(",", 2)[0] + ",20.1 °C,45.0 %"
    lines[30] = lines[30].rsplit(",", 2)[0] + ",20.1,45.9"
    lines.insert(31, lines[30])
    lines[50] = lines[50].rsplit(",", 2)[0] + ",35.0,80.0"
    lines[60] = lines[60].rsplit(",", 1)[0] + ",104"
    del lines[80:92]
    for i in range(120, 180):
        lines[i] = lines[i].rsplit(",", 2)[0] + ",20.00,45.00"
    record = read_logger(text("Date,Time,Temp °C,RH", lines))
    assert kinds(record) == {"left out", "repeat", "jump", "gap", "stuck"}
    at = {(finding.kind, finding.line) for finding in record.findings}
    assert {
        ("left out", 12),
        ("left out", 62),
        ("repeat", 33),
        ("jump", 52),
        ("gap", 82),
        ("stuck", 122),
    } <= at
    bad = next(finding for finding in record.findings if finding.line == 12)
    assert bad.column == 3 and "ERR" in bad.what


def test_a_stuck_humidity_sensor_beside_a_moving_temperature() -> None:
    lines = [
        f"2024-01-{1 + i // 24:02d},{i % 24:02d}:00,{15 + 5 * np.sin(i / 4):.2f},47.0" for i in range(24 * 6)
    ]
    record = read_logger(text("Date,Time,Temp °C,RH", lines))
    assert any(finding.kind == "stuck" and "humidity" in finding.what for finding in record.findings)


def test_clock_set_back_in_autumn() -> None:
    lines = rows("%Y-%m-%d,%H:%M", count=300, minutes=30)
    again = lines[98:100]
    record = read_logger(text("Date,Time,Temp °C,RH", lines[:100] + again + lines[100:]))
    assert {"order", "repeat"} <= kinds(record)


@pytest.mark.parametrize(
    "data",
    [b"", "", "   \n \n", bytes(range(256)) * 40, b"\x89PNG\r\n\x1a\n\x00\x00", "PK\x03\x04zip", "hello\nworld\n",
     "<html><body>Date,Time</body></html>", "Date,Time,Temp C,RH\n", b"\xff\xfe\x00", '"""""",\n",,,"'],
)  # fmt: skip
def test_junk_is_refused_with_its_place(data: str | bytes) -> None:
    with pytest.raises(FileError, match=r"line \d+, column \d+"):
        read_logger(data)


def test_half_damaged_file_is_refused() -> None:
    lines = rows("%Y-%m-%d,%H:%M", count=100)
    lines[4::2] = ["x,y,z,w"] * len(lines[4::2])
    with pytest.raises(FileError, match="48 of 100 lines") as caught:
        read_logger(text("Date,Time,Temp °C,RH", lines))
    assert "line 6, column 1" in str(caught.value)


def test_days_are_means_of_hours_whatever_the_steps() -> None:
    """Twelve hours at 10 °C logged every minute, twelve at 20 °C every hour: the mean is 15, not 10.2."""
    first = rows("%Y-%m-%d,%H:%M", count=720, minutes=1)
    first = [",".join([*line.split(",")[:2], f"10.{i % 2}", "40"]) for i, line in enumerate(first)]
    then = rows("%Y-%m-%d,%H:%M", count=12, start=START + datetime.timedelta(hours=12))
    then = [",".join([*line.split(",")[:2], f"20.{i % 2}", "60"]) for i, line in enumerate(then)]
    days = logged_days(read_logger(text("Date,Time,Temp °C,RH", first + then)))
    assert days.temperature_c[0] == pytest.approx(15.05, abs=0.01) and days.rh_percent[0] == pytest.approx(50)


def test_short_days_are_missing_and_said() -> None:
    days = logged_days(read_logger(text("Date,Time,Temp °C,RH", rows("%Y-%m-%d,%H:%M", count=60))))
    assert np.isfinite(days.moisture).tolist() == [True, True, False]
    assert any(finding.kind == "few" for finding in days.findings)


def test_a_year_from_a_logger_and_from_part_of_one() -> None:
    seldom = rows("%Y-%m-%d,%H:%M", count=2 * 366, minutes=720, start=datetime.datetime(2024, 1, 1))
    hourly = rows("%Y-%m-%d,%H:%M", count=24 * 366, start=datetime.datetime(2024, 1, 1))
    year = logged_year(logged_days(read_logger(text("Date,Time,Temp °C,RH", hourly))))
    assert year.temperature_c.shape == (365,) and year.temperature_c == pytest.approx(20.2, abs=0.1)
    with pytest.raises(InputError, match="January"):
        logged_year(logged_days(read_logger(text("Date,Time,Temp °C,RH", seldom))))
    part = read_logger(text("Date,Time,Temp °C,RH", hourly[: 24 * 100]))
    with pytest.raises(InputError, match=r"May.*complete_with"):
        logged_year(logged_days(part))
    other = Year("neighbour", (10,) * 12, (70,) * 12, "invented")
    whole = logged_year(logged_days(part), complete_with=other)
    assert whole.rh_percent[50] == pytest.approx(45, abs=1) and whole.rh_percent[250] == pytest.approx(70)
    assert "neighbour" in whole.basis and "December" in whole.basis


def test_long_file_in_one_pass() -> None:
    """A hundred thousand lines, one a second; a million are in the benchmark."""
    lines = rows("%Y-%m-%d,%H:%M:%S", count=100_000, minutes=1 / 60)
    assert read_logger(text("Date,Time,Temp °C,RH", lines)).seconds.size == 100_000


SOUND = text("Date,Time,Temp °C,RH", rows("%Y-%m-%d,%H:%M", count=40), "Logger 7\nSerial;12\n\n")


def test_mutated_files_never_crash_and_never_invent() -> None:
    """Seeded damage: cut, doubled, swapped and replaced pieces. Either a clear error or readings of the
    file.
    """
    rng = random.Random(11)
    alphabet = ",;\t\n\"'.:/-0123456789 APMCF%°\x00eé﻿"
    refused = 0
    for _ in range(400):
        data = list(SOUND)
        for _ in range(rng.randint(1, 12)):
            at = rng.randrange(len(data))
            match rng.randint(0, 3):
                case 0:
                    del data[at : at + rng.randint(1, 40)]
                case 1:
                    data[at:at] = rng.choices(alphabet, k=rng.randint(1, 6))
                case 2:
                    data[at] = rng.choice(alphabet)
                case _:
                    data[at:at] = data[max(0, at - 60) : at]
        try:
            record = read_logger("".join(data))
        except HeartsideError as error:
            refused += 1
            assert str(error).strip()
        else:
            assert np.all(np.diff(record.seconds) > 0)
            assert np.all((record.rh_percent >= 0) & (record.rh_percent <= 100))
            assert np.all((record.lines >= 1) & (record.lines <= len(data)))
    assert 20 < refused < 380


@settings(max_examples=150, deadline=None)
@given(st.one_of(st.binary(max_size=400), st.text(max_size=400)))
def test_anything_at_all_is_refused_clearly(data: str | bytes) -> None:
    try:
        record = read_logger(
            data, temperature_unit="C", date_order="ymd", columns={"temperature": 1, "humidity": 2}
        )
    except HeartsideError as error:
        assert str(error).strip()
    else:
        assert record.seconds.size


@settings(max_examples=60, deadline=None)
@given(
    st.sampled_from(["%Y-%m-%d %H:%M:%S", "%Y/%m/%d,%H:%M", "%d %b %Y;%H:%M", "%d.%m.%Y;%H:%M:%S"]),
    st.integers(5, 120),
    st.integers(1, 60),
    st.datetimes(datetime.datetime(2001, 1, 13), datetime.datetime(2060, 1, 1)),
)
def test_what_was_written_is_read(form: str, count: int, minutes: int, start: datetime.datetime) -> None:
    start = start.replace(second=0, microsecond=0)
    delimiter = ";" if ";" in form else ","
    heading = delimiter.join(["Date", *(["Time"] if delimiter in form else []), "Temp °C", "RH"])
    order = "dmy" if "." in form else None
    record = read_logger(text(heading, rows(form, delimiter, count, minutes, start)), date_order=order)
    assert record.seconds.size == count
    assert record.seconds[0] == (start - datetime.datetime(1970, 1, 1)).total_seconds()
    assert np.all(np.diff(record.seconds) == 60 * minutes)


def test_a_heading_is_found_by_the_names_given_for_its_columns() -> None:
    text = "when,first,second\n" + "\n".join(f"2025-01-{d:02d} 12:00,{d},40" for d in range(13, 25))
    record = read_logger(text, temperature_unit="C", columns={"temperature": "First", "humidity": "second"})
    assert record.temperature_c.tolist() == list(range(13, 25))
    with pytest.raises(InputError, match="'third'"):
        read_logger(text, temperature_unit="C", columns={"temperature": "third", "humidity": "second"})
