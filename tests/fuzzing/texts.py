"""Words, tables, settings, loggers' files and years, right and wrong, and who reads them."""

from __future__ import annotations

import json
import random
from collections.abc import Callable
from pathlib import Path

from movement_core.air.logger import read_logger
from movement_core.air.logger_days import logged_days, logged_year
from movement_core.air.months_table import is_months_table, year_from_table
from movement_core.piece.contact.joints import KINDS as JOINTS
from movement_core.piece.joint_table import joints_from_table
from movement_core.piece.tag_sources import (
    tags_from_properties,
    tags_from_table,
    tags_from_text,
    values_by_word,
    without_tag,
)
from movement_core.piece.tags import PROPERTY_WORDS, WORDS
from tests.fuzzing import spoiling
from workbench_pkg.actions.settings import LoggerAnswers, settings_from_texts
from workbench_pkg.batch.inside.settings_file import WORDS as SETTINGS
from workbench_pkg.batch.inside.settings_file import read_settings

VALUES = (
    "white oak", "black walnut", "Quercus alba", "oak", "x", "-z", "+y", "1 0 0", "0 0 0", "flat", "quarter", "show",
    "back", "centre", "oil", "show oil; back none", "shellac", "curly", "heated home", "museum", "1 2 3 4 5 6", "0 -70",
)  # fmt: skip
NAMES = ("Shelf", "Rail", 'Äste \'n "x"', "a;b", "", "=cmd", "Shelf\nRail", "中" * 50)
AIRS = ("museum", "heated maritime home", "none.csv", "nowhere", "Oslo", "../x.csv", "a\0.csv", "")
ROOMS = {
    "heating": "heating_c",
    "cooling": "cooling_c",
    "humidify": "humidifier_rh",
    "dehumidify": "dehumidifier_rh",
}
LIMITS = ("gap most", "working gap least", "nothing", "")


def _value(rng: random.Random) -> str:
    return rng.choice(
        (rng.choice(VALUES), " ".join(spoiling.number(rng) for _ in range(rng.choice((1, 1, 2, 3, 6)))))
    )


def tag(rng: random.Random, folder: Path) -> Callable[[], object]:
    items = [
        f"{rng.choice(list(WORDS))}{rng.choice((' ', ':', '=', ''))}{_value(rng)}"
        for _ in range(rng.randrange(9))
    ]
    label = spoiling.text(rng, f"{rng.choice(NAMES)} wood{{{rng.choice(VALUES)}; {'; '.join(items)}}}")

    def read() -> None:
        values_by_word(tags_from_text("part", label, "label"))
        without_tag(label)

    return read


def properties(rng: random.Random, folder: Path) -> Callable[[], object]:
    kinds = (
        lambda: _value(rng),
        lambda: spoiling.text(rng, _value(rng)),
        lambda: rng.choice((0.0, -1.0, 1e308, float("nan"), float("inf"), 9.0, 10**400, True, None)),
        lambda: tuple(rng.choice((0.0, 1.0, float("nan"), 1e30)) for _ in range(rng.randrange(7))),
    )
    said = {name: rng.choice(kinds)() for name in rng.sample(sorted(PROPERTY_WORDS), rng.randrange(1, 12))}
    return lambda: values_by_word(tags_from_properties("part", said))


def tag_table(rng: random.Random, folder: Path) -> Callable[[], object]:
    columns = ["part", *rng.sample(sorted(WORDS), rng.randrange(6))]
    rng.shuffle(columns)
    rows = [[_value(rng) for _ in columns] for _ in range(rng.randrange(6))]
    comma = rng.choice(",;")
    text = spoiling.text(rng, "\n".join(comma.join(row) for row in [columns, *rows]))
    return lambda: tags_from_table(text, "table.csv")


def joint_table(rng: random.Random, folder: Path) -> Callable[[], object]:
    rows = [["part", "other", "kind"]]
    rows += [
        [rng.choice(NAMES), rng.choice(NAMES), rng.choice(list(JOINTS))] for _ in range(rng.randrange(6))
    ]
    comma = rng.choice(",;")
    text = spoiling.text(rng, "\n".join(comma.join(row) for row in rows))
    return lambda: joints_from_table(text, "joints.csv")


def _odd(rng: random.Random, depth: int = 0) -> object:
    plain = (
        None,
        True,
        -1,
        0,
        5,
        1e308,
        10**30,
        "",
        "museum",
        "2026-03-15",
        float("nan"),
        float("inf"),
        "a\0b",
    )
    if depth < 3 and rng.random() < 0.3:
        inner = [_odd(rng, depth + 1) for _ in range(rng.randrange(4))]
        return inner if rng.random() < 0.5 else {str(value): value for value in inner}
    return rng.choice(plain)


def settings(rng: random.Random, folder: Path) -> Callable[[], object]:
    said: dict[str, object] = {}
    for name in rng.sample(sorted(SETTINGS), rng.randrange(6)):
        said[name] = rng.choice(
            (_odd(rng), rng.choice(AIRS), rng.uniform(0, 40), f"2026-0{rng.randrange(10)}-11")
        )
    if rng.random() < 0.6:
        said["limits"] = rng.choice((_odd(rng), {rng.choice(LIMITS): _odd(rng)}))
    text = spoiling.text(rng, json.dumps(said, indent=rng.choice((None, 1)), ensure_ascii=rng.random() < 0.5))
    path = folder / "heartside.json"
    raw = text.encode("utf-8", "surrogatepass")
    path.write_bytes(spoiling.data(rng, raw) if rng.random() < 0.1 else raw)

    def read() -> None:
        found = read_settings(path)
        said = found.words
        settings_from_texts(
            said.get("year"),
            said.get("date"),
            said.get("moisture"),
            shop=said.get("shop"),
            built_on=said.get("built-on"),
            rooms={field: said[word] for word, field in ROOMS.items() if word in said},
            answers=LoggerAnswers(
                said.get("date-order"), said.get("temperature-unit"), said.get("columns"), None
            ),
        )

    return read


HEADINGS = (
    "Date,Temperature (°C),Humidity (%)",
    "Time;Temp °F;RH %",
    "date,time,temperature_c,rh",
    "No.,a,b",
    "",
)


def logger(rng: random.Random, folder: Path) -> Callable[[], object]:
    comma = rng.choice(",;\t")
    step, shape = rng.choice((1, 10, 60, 1440)), rng.randrange(5)
    lines = [rng.choice(HEADINGS).replace(",", comma)]
    for i in range(rng.choice((0, 1, 3, 40, 120))):
        minutes = i * step
        day, hour, minute = 1 + minutes // 1440 % 28, minutes // 60 % 24, minutes % 60
        month = 1 + minutes // 1440 // 28 % 12
        stamp = (
            f"2025-{month:02}-{day:02} {hour:02}:{minute:02}",
            f"{day}.{month}.2025 {hour}:{minute:02}:00",
            f"{month}/{day}/25 {hour % 12 or 12}:{minute:02} {'AP'[hour > 11]}M",
            f"2025-{month:02}-{day:02}T{hour:02}:{minute:02}:00Z",
            str(45000 + minutes / 1440),
        )[shape]
        cells = [stamp, f"{20 + i % 7 / 3:.1f}", f"{45 + i % 11:.1f}"]
        if rng.random() < 0.05:
            cells[rng.randrange(3)] = spoiling.number(rng)
        lines.append(comma.join(cells))
    text = spoiling.text(rng, rng.choice(("\n", "\r\n")).join(lines))
    raw: str | bytes = text
    if rng.random() < 0.3:
        raw = spoiling.data(rng, text.encode(rng.choice(("utf-8", "utf-16", "utf-16-le")), "surrogatepass"))
    keywords: dict[str, object] = {}
    if rng.random() < 0.6:
        keywords = {"date_order": rng.choice(("ymd", "dmy", "mdy")), "temperature_unit": rng.choice("CF")}
    if rng.random() < 0.4:
        keywords["columns"] = {
            "date": rng.choice((1, "Date", 0, 99)),
            "temperature": 2,
            "humidity": rng.choice((3, -1)),
        }

    def read() -> None:
        logged_year(logged_days(read_logger(raw, **keywords)))  # type: ignore[arg-type]

    return read


def months(rng: random.Random, folder: Path) -> Callable[[], object]:
    comma = rng.choice(",;")
    rows = [["month", rng.choice(("temperature_c", "temperature_f")), "rh_percent"]]
    for i in range(rng.choice((12, 12, 11, 13, 0))):
        odd = rng.random() < 0.05
        rows.append([str(i + 1), spoiling.number(rng) if odd else f"{18 + i % 4}", f"{40 + i}"])
    text = spoiling.text(rng, "\n".join(comma.join(row) for row in rows))

    def read() -> None:
        is_months_table(text)
        year_from_table(text, "year.csv")

    return read
