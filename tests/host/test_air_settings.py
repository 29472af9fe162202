"""Every way to name the air: a year, a place, a file of months, a logger; and the shop it was built in."""

from __future__ import annotations

import datetime
import json

import pytest

from movement_core import Year
from movement_core.air.daily import DailyAir
from movement_core.errors import FileError, InputError, UnknownName
from tests.host.test_command_line import GOOD, heartside, save
from workbench_pkg.actions.settings import (
    DEFAULT_YEAR,
    LoggerAnswers,
    air_from_text,
    settings_from_texts,
)


def logged(order="%d/%m/%Y", days=366, start=datetime.date(2025, 1, 1)):
    lines = ["Made by an invented logger", "Date;Time;Temperature [°C];Humidity [%RH]"]
    for i in range(days):
        date = start + datetime.timedelta(days=i)
        for hour in range(24):
            lines.append(f"{date.strftime(order)};{hour:02d}:00;{20 + hour % 3},5;{40 + (i // 30)},0")
    return "\n".join(lines)


def test_names_of_years_and_places():
    assert air_from_text("museum").name == "museum"
    oslo = air_from_text("Oslo")
    assert isinstance(oslo, Year) and "Oslo" in oslo.name
    cooled = air_from_text("Oslo", {"heating_c": 22.0, "humidifier_rh": 40.0})
    assert min(cooled.rh_percent) >= 39.9 and min(cooled.temperature_c) == 22
    with pytest.raises(UnknownName, match="Oslo"):
        air_from_text("Olso")
    with pytest.raises(InputError, match="indoor air already"):
        air_from_text("museum", {"heating_c": 18.0})


def test_a_logger_file_gives_days_and_tells_its_repairs(tmp_path):
    file = tmp_path / "living room.csv"
    text = logged()
    file.write_text(
        text.replace("05/03/2025;04:00;21,5;42,0", "05/03/2025;04:00;21,5;999,0"), encoding="utf-8"
    )
    told = []
    air = air_from_text(str(file), told=told)
    assert isinstance(air, DailyAir)
    assert air.rh_percent[10] == pytest.approx(40, abs=0.1)
    assert len(told) == 1 and "line 1519" in told[0] and "humidity outside" in told[0], told


def test_a_logger_that_leaves_the_order_open_is_asked_about(tmp_path):
    file = tmp_path / "open.csv"
    rows = [f"0{m}/0{d}/2025 12:00,20.0,40.0" for m in (1, 2) for d in (1, 2, 3)]
    file.write_text("date,temperature C,rh %\n" + "\n".join(rows), encoding="utf-8")
    with pytest.raises(FileError, match="dmy"):
        air_from_text(str(file))


def test_a_file_that_is_neither(tmp_path):
    file = tmp_path / "junk.csv"
    file.write_bytes(bytes(range(256)) * 20)
    with pytest.raises(FileError, match=r"junk\.csv"):
        air_from_text(str(file))
    with pytest.raises(FileError, match="cannot be read"):
        air_from_text(str(tmp_path / "gone.csv"))


def test_nothing_said_is_the_usual_year_and_this_day():
    settings = settings_from_texts()
    assert settings.year.name == DEFAULT_YEAR and settings.today == datetime.date.today()
    with pytest.raises(InputError, match="belong together"):
        settings_from_texts(shop="museum")


def test_the_shop_gives_the_moisture_that_was_not_metered(tmp_path):
    path = save(tmp_path, "m.FCStd", GOOD.replace("; built 9", ""))
    plain, shop = (
        json.loads(heartside("check", path, "--format", "json", *more).stdout)["files"][0]["parts"][0]
        for more in ([], ["--shop", "unheated shop, maritime", "--built-on", "2026-02-01"])
    )
    assert plain["missing"] == ["moisture"] and plain["today_mm"] is None and plain["today_range_mm"]
    assert shop["missing"] == [] and 14 < shop["moisture"]["fitted_percent"] < 18
    assert "unheated shop, maritime" in shop["facts"]["fitted"]["reason"]
    assert shop["driest_mm"] < plain["driest_range_mm"][0], "wetter when built than stock plausibly is"


def test_the_command_line_takes_a_logger_and_rooms(tmp_path):
    path = save(tmp_path, "m.FCStd", GOOD)
    (tmp_path / "log.csv").write_text(logged(), encoding="utf-8")
    run = heartside("check", path, "--year", tmp_path / "log.csv")
    assert run.returncode == 0 and "log.csv" in run.stdout and "logger" in run.stdout
    run = heartside("check", path, "--year", "Oslo", "--humidify", "40")
    assert run.returncode == 0 and "humidified to 40 %" in run.stdout
    run = heartside("check", path, "--year", "Oslo", "--heating", "68")
    assert run.returncode == 2 and "°F" in run.stdout


def bare_log(tmp_path, months=12):
    """A logger's file that names neither columns nor units nor the order of its dates."""
    start = datetime.date(2025, 1, 1)
    lines = ["when,first,second"]
    for i in range(30 * months + 5):
        date = start + datetime.timedelta(days=i)
        lines += [
            f"{date:%Y-%m-%d} {hour:02d}:00,{68 + hour % 3}.5,{40 + i // 30}" for hour in range(0, 24, 2)
        ]
    file = tmp_path / "bare.csv"
    file.write_text("\n".join(lines), encoding="utf-8")
    return file


def test_what_a_logger_leaves_open_is_asked_in_options_and_answered_by_them(tmp_path):
    model = save(tmp_path, "m.FCStd", GOOD)
    file = bare_log(tmp_path, months=6)
    asked = [
        ("--columns temperature=NUMBER", ["--columns", "temperature=2,humidity=3"]),
        ("--temperature-unit F", ["--temperature-unit", "f"]),
        ("--complete-with AIR", ["--complete-with", "Oslo", "--heating", "21"]),
    ]
    answers = []
    for question, answer in asked:
        run = heartside("check", model, "--year", file, *answers)
        assert run.returncode == 2 and question in run.stdout, run.stdout
        assert not any(word in run.stdout for word in ("temperature_unit", "complete_with", "columns={"))
        answers += answer
    run = heartside("check", model, "--year", file, *answers)
    assert run.returncode == 0 and "taken from indoors in Oslo" in " ".join(run.stdout.split()), run.stdout
    by_heading = ["temperature=First,humidity=second" if "=" in answer else answer for answer in answers]
    assert heartside("check", model, "--year", file, *by_heading).stdout == run.stdout


def test_the_order_of_dates_is_asked_in_an_option(tmp_path):
    file = tmp_path / "open.csv"
    rows = [f"0{m}/0{d}/2025 12:00,20.0,40.0" for m in (1, 2) for d in (1, 2, 3)]
    file.write_text("date,temperature C,rh %\n" + "\n".join(rows), encoding="utf-8")
    run = heartside("stock", "white oak", "--thickness", 27, "--reading", 8, "--year", file)
    assert run.returncode == 2 and "--date-order dmy" in run.stdout and "date_order" not in run.stdout


@pytest.mark.parametrize("columns", ["temp=2", "temperature", "temperature=", ""])
def test_columns_that_are_none(columns):
    run = heartside("check", "m.FCStd", "--columns", columns)
    assert run.returncode == 2 and "temperature=3,humidity=4" in run.stderr


def test_what_is_said_of_nothing_is_refused(tmp_path):
    months = tmp_path / "months.csv"
    months.write_text("temperature_c,rh_percent\n" + "20,40\n" * 12, encoding="utf-8")
    log = tmp_path / "log.csv"
    log.write_text(logged(), encoding="utf-8")
    rooms = {"heating_c": 20.0}
    for year, more in ((None, rooms), ("museum", rooms), (str(months), rooms), (str(log), rooms)):
        with pytest.raises(InputError, match="place"):
            settings_from_texts(year, rooms=more)
    for year in (None, "museum", "Oslo", str(months)):
        with pytest.raises(InputError, match="no logger"):
            settings_from_texts(year, answers=LoggerAnswers(temperature_unit="C"))
    settings = settings_from_texts(
        "museum", shop=str(log), built_on="2026-02-01", answers=LoggerAnswers(date_order="dmy")
    )
    assert settings.shop is not None
